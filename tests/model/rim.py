"""Rows of the rim: segments, staves or plies, holes, mass."""

import math

from tables import WOODS


class Rim:
    def __init__(self, build):
        p = build.p
        self.build, self.kind = build, p["rim.construction"]
        self.outer = p["rim.outer_diameter"] / 2
        self.inner = build.row("rim.inner_diameter", p["rim.outer_diameter"] - 2 * p["rim.wall"]) / 2
        self.allowance, self.number = p["rim.turning_allowance"], int(p["rim.segments"])
        build.row("rim.circumference", math.pi * p["rim.outer_diameter"])
        self.woods = p["rim.course_wood"] if self.kind == "segments" else p["rim.course_wood"][:1]
        self.turn = {}

    def rows(self):
        if self.kind != "plies":
            self._mitred()
        if self.kind == "segments":
            self._courses()
        elif self.kind == "staves":
            self.build.row("rim.stave.length", self.build.p["rim.height"] + 2 * self.allowance)
        else:
            self._plies()
        self._turning()
        self.build.row("rim.mass", self._mass())

    def _mitred(self):
        build, p, n = self.build, self.build.p, self.number
        theta, out = math.pi / n, self.outer + self.allowance
        self.mitre = math.radians(build.row("rim.segment.mitre", 180.0 / n))
        least = build.row("rim.segment.min_width", out - (self.inner - self.allowance) * math.cos(theta))
        self.width = p["rim.strip_width"] or least
        self.long = build.row("rim.segment.outer_edge", 2 * out * math.tan(theta))
        self.short = build.row("rim.segment.inner_edge", self.long - 2 * self.width * math.tan(theta))
        error = n * math.radians(p["rim.mitre_error"])
        build.row("rim.joint_gap", 2 * out * math.sin(error))
        if n % 2 == 0:
            build.row("rim.half_trim", self.width / math.cos(self.mitre) * math.sin(error / 2))
            build.row("rim.half_oval", 2 * out * math.sin(error / 2))

    def _courses(self):
        build, p, n = self.build, self.build.p, self.number
        middle, cut = (self.long + self.short) / 2, p["shop.kerf"] / math.cos(self.mitre)
        build.row("rim.segment.feed", middle + cut)
        build.row("rim.course.strip", n * middle + (n + 1) * cut + self.width * math.tan(self.mitre))
        for k, thick in enumerate(p["rim.course_thickness"], 1):
            build.row("rim.course.rough[%d]" % k, thick + p["rim.flatten_allowance"])
            turn = math.fmod((k - 1) * p["rim.course_turn"] * 360.0 / n, 360.0 / n)
            self.turn[k] = build.row("rim.course.turn[%d]" % k, turn)
        build.row("rim.blank_height", sum(p["rim.course_thickness"]))

    def _plies(self):
        build, p = self.build, self.build.p
        ply = p["rim.ply_thickness"]
        count = build.row("rim.ply.count", math.ceil((p["rim.wall"] + 2 * self.allowance) / ply))
        for k in range(1, int(count) + 1):
            radius = self.inner - self.allowance + (k - 0.5) * ply
            build.row("rim.ply.length[%d]" % k, 2 * math.pi * radius + p["rim.ply_scarf"])

    def _turning(self):
        corner = 1.0 if self.kind == "plies" else math.cos(math.pi / self.number)
        swing = self.build.row("rim.corner_diameter", 2 * (self.outer + self.allowance) / corner)
        self.build.row("rim.spindle_limit", 60000 * self.build.p["shop.rim_speed"] / (math.pi * swing))

    def layers(self):
        """(top, bottom, wood) of all that is left within the rim's height, mm down from the wood's top edge."""
        p, height, found, top = self.build.p, self.build.p["rim.height"], [], 0.0
        if self.kind != "segments":
            return [(0.0, height, self.woods[0])]
        for thick, wood in zip(p["rim.course_thickness"], self.woods):
            if top < height:
                found.append((top, min(top + thick, height), wood))
            top += thick
        return found

    def _mass(self):
        area = math.pi * (self.outer ** 2 - self.inner ** 2)
        return sum(area * (low - high) * WOODS[wood][0] for high, low, wood in self.layers()) * 1e-6

    def load_rows(self, head_tension, head_radius):
        """The rim as a thin ring: W. Young and R. Budynas, Roark's Formulas; S. Timoshenko, Strength of Materials."""
        build, p = self.build, self.build.p
        b, h, ring = self.outer - self.inner, p["rim.height"], p["rim.tone_ring_height"]
        if b <= 0 or self.inner <= 0:
            return
        if self.kind == "segments":
            kept = [(low - high, WOODS[wood][1]) for high, low, wood in self.layers()]
            modulus = 1000 * sum(t * e for t, e in kept) / sum(t for t, _ in kept)
        else:
            grain = 0.0985 if self.kind == "staves" else 1.0  # upright: the middle of 0.132 and 0.065 across it
            modulus = 1000 * grain * WOODS[self.woods[0]][1]
        q, middle, arm = head_tension / 1000, (self.outer + self.inner) / 2, h / 2 + ring
        inertia_up, inertia_flat = b * h ** 3 / 12, h * b ** 3 / 12
        build.row("rim.head_squeeze", q * head_radius ** 2 / (modulus * b * h))
        turn = q * arm * middle ** 2 / (modulus * inertia_up)
        build.row("rim.head_roll", turn * arm)
        build.row("rim.load_stress", q * head_radius / (b * h) + modulus * turn / middle * h / 2)
        build.row("rim.buckling", 3 * modulus * inertia_flat / middle ** 3 / q)
        pull = build.rows["strings.tension_total"]
        build.row("rim.string_oval", (math.pi / 4 - 2 / math.pi) * pull * middle ** 3 / (modulus * inertia_flat))

    def hole_rows(self, angles, bolt_depth, rods):
        """angles of the shoes in degrees, None: not known; rods: (depth, width) at the neck and at the tail."""
        if self.kind != "segments":
            return
        bolts = [(angle, bolt_depth, self.build.p["shoes.bolt_hole"]) for angle in angles or [None]]
        holes = bolts + [(angle, depth, width) for depth, width in rods for angle in (0.0, 180.0)]
        faces = [low for _, low, _ in self.layers()[:-1]]
        gaps = [abs(depth - face) - width / 2 for _, depth, width in holes for face in faces]
        self.build.row("rim.hole_to_glue_line", min(gaps) if gaps else None)
        if angles:
            arcs = [self._to_joint(hole, k) for hole in holes for k in self._passed(hole)]
            self.build.row("rim.hole_to_joint", min(arcs) if arcs else None)

    def _passed(self, hole):
        """Courses that a hole passes."""
        _, depth, width = hole
        return [k for k, (high, low, _) in enumerate(self.layers(), 1)
                if depth - width / 2 < low and depth + width / 2 > high]

    def _to_joint(self, hole, k):
        angle, _, width = hole
        step = 360.0 / self.number
        away = math.remainder(angle - step / 2 - self.turn[k], step)
        return self.outer * math.radians(abs(away)) - width / 2
