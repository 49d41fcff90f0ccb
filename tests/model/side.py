"""The side view: neck angle, bridge, action, sag of the head, and the neck's bending, all at once."""

import math

import numpy as np
from scipy.optimize import brentq

from neck import Neck


def compliance(build, radius, tension):
    """Sag in mm for one newton on the bridge; None where a foot stands outside the head."""
    p = build.p
    half = p["bridge.foot_spread"] / 2
    feet = [(p["bridge.offset"], y) for y in ([0.0, half, -half] if p["bridge.feet"] == 3 else [half, -half])]
    if any(math.hypot(*foot) >= radius for foot in feet):
        return None
    own = (p["bridge.foot_length"] + p["bridge.foot_width"]) / 4
    size = len(feet)
    system, right = np.zeros((size + 1, size + 1)), np.zeros(size + 1)
    for i, (xi, yi) in enumerate(feet):
        for j, (xj, yj) in enumerate(feet):
            # |P - Q*| |Q| without the division by |Q|, good at the centre too.
            far = math.sqrt((xi * xi + yi * yi) * (xj * xj + yj * yj) / radius ** 2
                            - 2 * (xi * xj + yi * yj) + radius ** 2)
            near = own if i == j else math.hypot(xi - xj, yi - yj)
            system[i, j] = 1000.0 * math.log(far / near) / (2 * math.pi * tension)
        system[i, size], system[size, i] = -1.0, 1.0
    right[size] = 1.0
    return float(np.linalg.solve(system, right)[size])


class Side:
    """A state in balance; solved is False where there is none."""

    def __init__(self, build, plan, tensions, radius, head_tension, sag_counts=True):
        p = build.p
        self.build, self.plan, self.tensions, self.sag_counts = build, plan, tensions, sag_counts
        self.run = p["bridge.offset"] + p["rim.outer_diameter"] / 2
        self.solve_for = free(build)
        self.give = compliance(build, radius, head_tension)
        self.flex = p["setup.neck_flex"] == "yes"
        self.shim = math.atan2(p["joint.shim"], p["joint.heel_depth"])
        self.lifts = dict.fromkeys(("nut", "action", "short"), 0.0)
        self.neck, self.solved = None, False
        if self.give is None:
            return
        for _ in range(100):
            self.sag = self._find_sag()
            if self.sag is None:
                return
            self._place(self.sag)
            self.neck = Neck(build, plan, self.nut_to_rim)
            self.neck.load(tensions, self.fret_plane)
            before, self.lifts = self.lifts, self._lifts()
            if max(abs(before[key] - self.lifts[key]) for key in before) < 1e-12:
                self.solved = True
                return

    def lift(self, x):
        return self.neck.lift(x) if self.flex else 0.0

    def _lifts(self):
        return {"nut": self.build.fact("neck.pull_up", self.lift(0.0)),
                "action": self.lift(self._action_place()),
                "short": self.lift(self.plan.start) if self.plan.has_short else 0.0}

    def _action_place(self):
        return self.build.position(int(self.build.p["setup.action_fret"]))

    def _wanted_fret_plane(self):
        p, x = self.build.p, self._action_place()
        t = x / self.plan.length
        nut = p["nut.string_height"] + self.lifts["nut"]
        return (p["setup.action"] + self.lifts["action"] - nut * (1 - t)) / t

    def _place(self, sag):
        """Angle, bridge and what hangs on them for a given sag; False where no angle will do."""
        p = self.build.p
        self.angle, self.height = math.radians(p["neck.angle"]) + self.shim, p["bridge.height"]
        over = None if self.solve_for == "action" else self._wanted_fret_plane() + self.build.crown
        if self.solve_for == "bridge":
            rise = (over + self.run * math.sin(self.angle)) / math.cos(self.angle)
            self.height = rise + sag + p["neck.set_height"]
        rise = self.height - sag - p["neck.set_height"]
        if self.solve_for == "angle":
            if abs(over) > math.hypot(self.run, rise):
                return False
            self.angle = math.acos(over / math.hypot(self.run, rise)) - math.atan2(self.run, rise)
        self.fret_plane = rise * math.cos(self.angle) - self.run * math.sin(self.angle) - self.build.crown
        self.nut_to_rim = self.build.fact(
            "neck.nut_to_rim",
            self.plan.length - (self.run * math.cos(self.angle) + rise * math.sin(self.angle)))
        self._slopes(sag)
        return True

    def _slopes(self, sag):
        p, plan, length = self.build.p, self.plan, self.plan.length
        rise = self.fret_plane - p["nut.string_height"] - self.lifts["nut"]
        self.front = self.angle + math.atan(rise / length)
        self.tail = math.atan((self.height - sag - p["tailpiece.height"]) / p["tailpiece.anchor"])
        if plan.has_short:
            rise = self.fret_plane - p["fifth.start_height"] - self.lifts["short"]
            self.front_short = self.angle + math.atan(rise / (length - plan.start))
        force = sum(t * (math.sin(self.front if i <= plan.full else self.front_short) + math.sin(self.tail))
                    for i, t in self.tensions.items())
        self.force = self.build.fact("bridge.down_force", force)

    def _excess(self, sag):
        if not self._place(sag):
            return None
        return self.force * self.give - sag

    def _find_sag(self):
        """The balance nearest to no sag at all, bracketed from there in steps."""
        if self.sag_counts and "bridge.sag" in self.build.measured:
            sag = self.build.measured["bridge.sag"]
            return sag if self._place(sag) else None
        here, excess = 0.0, self._excess(0.0)
        if excess is None:
            return None
        step = math.copysign(0.25, excess)
        for _ in range(2000):
            beyond = self._excess(here + step)
            if beyond is None:
                return None
            if (beyond > 0) != (excess > 0):
                return brentq(self._excess, here, here + step, xtol=1e-13, rtol=1e-14)
            here += step
        return None

    def action(self, n):
        x = self.build.position(n)
        t = x / self.plan.length
        nut = self.build.p["nut.string_height"] + self.lifts["nut"]
        return nut * (1 - t) + self.fret_plane * t - self.lift(x)


def free(build):
    """What is worked out from the others: what was measured stands, and the next one free takes its place."""
    keys = {"angle": "neck.angle", "bridge": "bridge.height"}
    wanted = build.p["neck.solve_for"]
    if keys.get(wanted) not in build.measured:
        return wanted
    other = "bridge" if wanted == "angle" else "angle"
    return "action" if keys[other] in build.measured else other
