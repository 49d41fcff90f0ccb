"""Rows of head, tension hoop, hooks and shoes."""

import math

from scipy.optimize import brentq

from tables import METALS, THREADS

# Nodal diameters: zero of the Bessel function, and the mass of air that moves with the head, per face.
MODES = {"01": (2.404826, 0.7464), "11": (3.831706, 0.3301), "21": (5.135622, 0.2258)}
AIR = 1.2


class Head:
    def __init__(self, build):
        p = build.p
        self.radius = build.row("head.radius", p["rim.outer_diameter"] / 2 - p["rim.crest_inset"])
        self.sheet = p["head.density"] * p["head.thickness"] / 1000
        self.low = self.high = None
        mode = p["head.tap_mode"]
        if p["head.tension_from"] == "tap_frequency":
            heard = build.row("head.tap_frequency", p["head.tap_frequency"])
            self.tension = build.row("head.tension", self._tension(heard, mode))
            band = [self._tension(heard, each) for each in MODES]
            self.low = build.row("head.tension_low", min(band))
            self.high = build.row("head.tension_high", max(band))
        else:
            self.tension = build.row("head.tension", p["head.tension"])
            build.row("head.tap_frequency", self._frequency(self.tension, mode))
        load = build.row("head.load", 2 * math.pi * self.radius / 1000 * self.tension)
        self.per_hook = build.row("head.load_per_hook", load / p["hooks.count"])

    def _per_frequency(self, mode):
        """Root of the moving mass times the way round, over the zero: sqrt(T) for one hertz."""
        zero, beta = MODES[mode]
        radius = self.radius / 1000
        return 2 * math.pi * radius / zero * math.sqrt(self.sheet + 2 * beta * AIR * radius)

    def _tension(self, frequency, mode):
        return (frequency * self._per_frequency(mode)) ** 2

    def _frequency(self, tension, mode):
        return math.sqrt(tension) / self._per_frequency(mode)


class Hoop:
    def __init__(self, build):
        p = build.p
        self.build, thick = build, p["hoop.thickness"]
        self.bore = build.row("hoop.bore", p["head.nominal"] + 2 * p["hoop.clearance"])
        self.outer = build.row("hoop.outer_diameter", self.bore + 2 * thick) / 2
        build.row("hoop.overlap", (p["head.nominal"] + 2 * p["head.band"] - self.bore) / 2)
        build.row("hoop.strip", math.pi * (self.bore + thick) - p["hoop.joint_gap"])
        back = build.row("hoop.springback", p["hoop.springback_test"] or self._springback())
        build.row("hoop.former", self.bore / (1 + back / 100))
        self.top = build.row("hoop.top_over_head", p["hoop.height"] - p["head.collar"] - p["hoop.travel"])
        density = METALS[p["hoop.material"]][2]
        build.row("hoop.mass", math.pi * (self.bore + thick) * thick * p["hoop.height"] * density * 1e-6)

    def _springback(self):
        """Percent; F. J. Gardiner, The springback of metals, Trans. ASME 79 (1957), for a flat bar."""
        thick = self.build.p["hoop.thickness"]
        modulus, yields, _ = METALS[self.build.p["hoop.material"]]
        strain = yields / (1000.0 * modulus * thick)
        after = (self.bore + thick) / 2
        bent = brentq(lambda r: r - after * (4 * (r * strain) ** 3 - 3 * r * strain + 1),
                      0.0, min(after, 0.5 / strain), xtol=1e-13, rtol=1e-14)
        return 100 * (self.bore / (2 * bent - thick) - 1)


class Hooks:
    def __init__(self, build, head, hoop, outer, heel_half_width):
        """heel_half_width: of the heel at the height of the bolts, mm; None where the side has no balance."""
        self.build, self.hoop, self.outer = build, hoop, outer
        self.heel_half = heel_half_width
        self._lengths(head)
        self.angles = self._angles()
        if self.angles:
            self._round()

    def _angles(self):
        build, p = self.build, self.build.p
        count = int(p["hooks.count"])
        if p["hooks.layout"] == "even":
            straddle = p["hooks.first"] == "straddle"
            plain = [(k - 0.5) * 360 / count if straddle else k * 360 / (count + 1) for k in range(1, count + 1)]
        elif self.heel_half is None:
            return None
        else:
            first = math.degrees(math.asin(self.heel_half / self.outer) + p["hooks.heel_gap"] / self.outer)
            last = 180 - math.degrees(p["hooks.tail_gap"] / self.outer)
            side = count // 2
            one = [first + (last - first) * j / (side - 1) for j in range(side)]
            plain = one + ([180.0] if count % 2 else []) + [360 - a for a in reversed(one)]
        return [build.row("hooks.angle[%d]" % k, a) for k, a in enumerate(plain, 1)]

    def _round(self):
        build, p, ro = self.build, self.build.p, self.outer
        following = self.angles[1:] + [self.angles[0] + 360]
        for k, (angle, beyond) in enumerate(zip(self.angles, following), 1):
            a = math.radians(angle)
            build.row("hooks.arc[%d]" % k, ro * a)
            build.row("hooks.x[%d]" % k, -ro * math.cos(a))
            build.row("hooks.y[%d]" % k, ro * math.sin(a))
            build.row("hooks.chord[%d]" % k, 2 * ro * abs(math.sin(math.radians(beyond - angle) / 2)))
            if p["hoop.seat"] == "notches":
                build.row("hoop.notch_arc[%d]" % k, self.hoop.outer * a)
        half = p["shoes.width"] / 2
        to_neck = min(abs(math.remainder(a, 360)) for a in self.angles)
        to_tail = min(abs(math.remainder(a - 180, 360)) for a in self.angles)
        if self.heel_half is not None:
            build.row("hooks.heel_clearance",
                      ro * (math.radians(to_neck) - math.asin(self.heel_half / ro)) - half)
        build.row("hooks.tail_clearance", ro * math.radians(to_tail) - p["tailpiece.width"] / 2 - abs(p["tailpiece.offset"])
                  - half)

    def _lengths(self, head):
        build, p = self.build, self.build.p
        rod, bend = p["hooks.rod"], p["hooks.bend_radius"]
        seat = build.row("hooks.seat_offset",
                         max(0.0, bend - p["hoop.edge_round"]) * (1 - math.sqrt(0.5)))
        claw = p["hoop.height"] - p["head.collar"] - p["hoop.notch_depth"] + seat + rod / 2
        self.bolt_depth = build.row("shoes.hole_below_edge", p["shoes.below_edge"] - p["rim.tone_ring_height"])
        bolt = self.bolt_depth + p["rim.tone_ring_height"]
        leg = build.row("hooks.leg", claw + bolt + p["shoes.height"] / 2
                        + p["hooks.nut_height"] + p["hooks.spare"])
        tangent = bend + rod / 2
        blank = build.row("hooks.blank", leg + p["hooks.claw"] - 2 * tangent
                          + math.pi / 2 * (bend + p["hooks.k_factor"] * rod))
        cut = build.row("hooks.cut", blank + 2 * p["hooks.trim"])
        build.row("hooks.thread_length", p["hooks.nut_height"] + p["hooks.spare"] + p["hoop.travel"]
                  + p["hooks.reserve"])
        build.row("hooks.rod_total", p["hooks.count"] * (cut + p["shop.rod_kerf"]))
        tight = claw - p["hoop.travel"]
        out = self.outer + p["shoes.stand_off"] - (self.hoop.outer + seat + rod / 2)
        build.row("hooks.lean", math.degrees(math.atan(out / (tight + bolt))))
        build.row("hooks.tip_over_back", tight - leg + p["rim.tone_ring_height"] + p["rim.height"])
        build.row("hooks.stress", head.per_hook / THREADS[p["hooks.thread"]][2])
        # Nut factors by finish and scatter of ten bolts turned alike: Shigley, tables 8-15 and 8-14.
        for end, factor in (("", 0.2), ("_low", 0.12), ("_high", 0.3)):
            build.row("hooks.torque" + end, factor * head.per_hook * THREADS[p["hooks.thread"]][0])
        for end, sign in (("_low", -1), ("_high", 1)):
            build.row("hooks.load" + end, head.per_hook * (1 + sign * 2 * 0.084))
        build.row("shoes.tap_drill", THREADS[p["shoes.thread"]][3])
