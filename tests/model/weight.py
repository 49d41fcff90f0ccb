"""Weight of the parts and where the instrument balances.

Each part is a mass in g and the place of its middle, mm from the nut line.  Volumes come from adaptive
quadrature.  What no parameter tells is as the list of dimensions says; densities in kg/m3.
"""

import math

from scipy.integrate import quad

from tables import THREADS, WOODS

STEEL, BRASS, ALUMINIUM, NICKEL_SILVER = 7850.0, 8490.0, 2710.0, 8700.0
TUNER, SHORT_PEG, TAILPIECE = 40.0, 28.0, 45.0


def disc(diameter):
    return math.pi / 4 * diameter ** 2


class Weights:
    def __init__(self, build, plan, masses):
        self.build, self.plan, self.p, self.rows, self.masses = build, plan, build.p, build.rows, masses

    def pot(self):
        """Masses alone."""
        p, rows = self.p, self.rows
        across, radius, band = p["rim.outer_diameter"], rows["head.radius"], p["head.band"]
        film = p["head.thickness"] * (math.pi * radius ** 2 + math.pi * across * p["head.collar"])
        edge = band ** 2 * ALUMINIUM if p["head.material"] == "film" else disc(band) * STEEL
        head = film * p["head.density"] + edge * math.pi * (p["head.nominal"] + band)
        rod = p["hooks.rod"]
        hook = disc(rod) * rows["hooks.blank"] * STEEL + 3 * disc(rod) * p["hooks.nut_height"] * BRASS
        block = p["shoes.height"] * (p["shoes.width"] * (p["shoes.stand_off"] + rod) - disc(rod))
        bolt = disc(THREADS[p["shoes.thread"]][0]) * (p["rim.wall"] + p["shoes.stand_off"] / 2)
        joint = p["joint.stick_section"] ** 2 * WOODS[p["neck.wood"]][0]
        if p["joint.kind"] == "rods":
            joint = p["joint.rod_count"] * disc(p["joint.rod_diameter"]) * STEEL
        ring = p["rim.tone_ring_rod"]
        fittings = p["hooks.count"] * (hook + block * BRASS + bolt * STEEL)
        even = head + joint * across + disc(ring) * math.pi * (across - ring) * BRASS
        even = even * 1e-6 + rows["rim.mass"] + rows["hoop.mass"]
        return {"even": even, "fittings": fittings * 1e-6, "bridge": p["bridge.mass"], "tailpiece": TAILPIECE}

    def neck(self, side):
        """Pairs of mass and moment."""
        p, rows, plan, neck = self.p, self.rows, self.plan, side.neck
        wood, top = WOODS[p["neck.wood"]][0] * 1e-6, WOODS[p["neck.board_wood"]][0] * 1e-6
        rim, start, board = rows["neck.nut_to_rim"], neck.heel, p["fretboard.thickness"]
        channel = p["neck.rod_width"] * p["neck.rod_depth"] if neck.has_rod else 0.0
        low, high = neck.channel
        reach = (high - low, (high ** 2 - low ** 2) / 2) if high > low else (0.0, 0.0)
        yield [channel * m * (0.55 * STEEL * 1e-6 - wood) for m in reach]
        yield [wood * m for m in self._moments(lambda x: self._wood(neck, x, start, rim), rim, start)]
        yield [top * board * m for m in self._moments(plan.width, rows["neck.board_length"], start)]
        section = 0.7 * p["frets.crown_height"] * p["frets.crown_width"] + 0.5 * p["frets.tang_depth"]
        for n in range(1, 1 if self.build.fretless else self.build.last + 1):
            fret = section * rows["frets.length[%d]" % n] * NICKEL_SILVER * 1e-6
            yield fret, fret * self.build.position(n)
        yield from self._head(wood, top)

    def _wood(self, neck, x, start, rim):
        p, width = self.p, self.plan.width(x)
        depth = neck.thickness(min(x, start)) - p["fretboard.thickness"]
        t = max(0.0, (x - start) / (rim - start))
        block = (width + p["joint.heel_cap_width"]) / 2
        full = p["joint.heel_depth"] - p["fretboard.thickness"]
        return (depth + (full - depth) * t * t) * (width * neck.quarter[0] * (1 - t) + block * t)

    def _moments(self, section, end, start):
        inside = [x for x in ([start] + (list(self.plan.ramp()) if self.plan.has_short else [])) if 0 < x < end]
        options = {"points": sorted(inside), "epsrel": 1e-11, "epsabs": 0.0, "limit": 400}
        return [quad(lambda x, k=k: section(x) * x ** k, 0.0, end, **options)[0] for k in (0, 1)]

    def _head(self, wood, top):
        p, plan, rows = self.p, self.plan, self.rows
        lean = math.cos(math.radians(p["headstock.angle"]))
        a, b, length = p["nut.width"], p["headstock.width"], p["headstock.length"]
        sheet = wood * (p["headstock.thickness"] - p["headstock.overlay"]) + top * p["headstock.overlay"]
        face = sheet * length * (a + b) / 2
        along = sheet * length ** 2 * (a / 6 + b / 3)
        yield face, -face * p["nut.thickness"] - along * lean
        for i in range(1, plan.count + 1):
            if i > plan.full and p["fifth.route"] == "side_peg":
                yield SHORT_PEG, SHORT_PEG * (plan.start - p["fifth.peg_distance"])
            else:
                yield TUNER, -TUNER * (p["nut.thickness"] + rows["headstock.post_x[%d]" % i] * lean)

    def strings(self):
        end = self.plan.length + self.p["tailpiece.anchor"]
        for i, mass in self.masses.items():
            begin = self.plan.start if i > self.plan.full else 0.0
            yield mass * (end - begin), mass * (end ** 2 - begin ** 2) / 2


def weight_rows(build, plan, side, masses):
    weights = Weights(build, plan, masses)
    pot = weights.pot()
    build.row("mass.pot", sum(pot.values()))
    if not side.solved:
        return
    p = build.p
    neck, wires = list(weights.neck(side)), list(weights.strings())
    build.row("mass.neck", sum(m for m, _ in neck))
    total = sum(pot.values()) + sum(m for m, _ in neck + wires)
    radius = p["rim.outer_diameter"] / 2
    count = int(p["hooks.count"])
    hooks = sum(build.rows["hooks.x[%d]" % k] for k in range(1, count + 1)) / count
    behind = (p["bridge.offset"] + p["tailpiece.anchor"] + radius) / 2
    about_centre = pot["fittings"] * hooks + pot["bridge"] * p["bridge.offset"] + pot["tailpiece"] * behind
    centre = build.rows["neck.nut_to_rim"] + radius
    moment = sum(pot.values()) * centre + about_centre + sum(m for _, m in neck + wires)
    build.row("mass.total", total)
    build.row("mass.balance", moment / total)
