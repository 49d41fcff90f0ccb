"""Strings and edges of the board in plan: x from the nut line along the axis, y to the treble side."""

import math

import numpy as np


class Plan:
    def __init__(self, build):
        p, strings = build.p, build.strings
        self.build, self.length = build, p["scale.length"]
        self.count = len(strings)
        self.has_short = strings[-1].short
        self.full = self.count - (1 if self.has_short else 0)
        self.margin = p["nut.edge_margin"]
        middle = (self.count + 1) / 2.0
        self.pitch = build.row("strings.nut_pitch",
                               (p["nut.width"] - 2 * self.margin) / (self.full - 1))
        self.nut = {i: build.row("strings.nut_y[%d]" % i, (middle - i) * self.pitch)
                    for i in range(1, self.full + 1)}
        self.bridge = {i: build.row("strings.bridge_y[%d]" % i,
                                    (middle - i) * p["bridge.spread"] / (self.count - 1))
                       for i in range(1, self.count + 1)}
        self.start_fret = int(p["fifth.start_fret"]) if self.has_short else 0
        self.start = build.position(self.start_fret) if self.has_short else 0.0
        if self.has_short:
            self.start_y = build.row("strings.start_y[%d]" % self.count,
                                     self.string(self.full, self.start) - p["fifth.spacing"])
        self.nut_middle = build.fact("neck.offset_at_nut", self.middle(0.0))

    def string(self, i, x):
        if i <= self.full:
            return self.nut[i] + (self.bridge[i] - self.nut[i]) * x / self.length
        return self.start_y + (self.bridge[i] - self.start_y) * (x - self.start) / (self.length - self.start)

    def treble(self, x):
        return self.string(1, x) + self.margin

    def ramp(self):
        """Where the bass edge leaves the last full-length string, and where it has come to the short one."""
        end = self.start - self.build.p["fifth.shoulder"]
        return end - self.build.p["fifth.shoulder_length"], end

    def bass(self, x):
        inner = self.string(self.full, x) - self.margin
        if not self.has_short:
            return inner
        outer = self.string(self.count, x) - self.margin
        begin, end = self.ramp()
        t = np.clip((x - begin) / (end - begin), 0.0, 1.0)
        return inner + (outer - inner) * t * t * (3.0 - 2.0 * t)

    def width(self, x):
        return self.treble(x) - self.bass(x)

    def middle(self, x):
        return (self.treble(x) + self.bass(x)) / 2.0

    def side_angle(self, nut_to_rim):
        """Radians; positive: the headstock end leans to the treble side."""
        slope = (self.middle(nut_to_rim) - self.nut_middle) / nut_to_rim
        degrees = self.build.fact("neck.side_angle", -math.degrees(math.atan(slope)))
        return math.radians(degrees)

    def halves(self, x, side_angle):
        """Half-widths from the centre line to the treble and to the bass edge."""
        centre = self.nut_middle - math.tan(side_angle) * x
        return self.treble(x) - centre, centre - self.bass(x)
