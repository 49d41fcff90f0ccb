"""The neck under its strings: profile, stiffness, bending, relief and the rod.

The curvature is represented by one interpolating polynomial in each smooth stretch, and integrated
exactly from there.
"""

import bisect

import numpy as np
from numpy.polynomial.chebyshev import Chebyshev
from scipy.integrate import quad
from scipy.optimize import minimize_scalar

from tables import WOODS

DEGREE = 24


class Stretches:
    """v(x) = integral from x to the end of (u - x) k(u) du, for a k that is smooth between the breaks."""

    def __init__(self, curvature, breaks):
        self.breaks, self.pieces = breaks, []
        slope_end = value_end = 0.0
        for a, b in reversed(list(zip(breaks[:-1], breaks[1:]))):
            bend = Chebyshev.interpolate(lambda x, m=(a + b) / 2: curvature(x, m), DEGREE, domain=[a, b])
            turn = bend.integ(lbnd=b)
            slope = slope_end - turn
            drop = slope.integ(lbnd=b)
            value = value_end - drop
            self.pieces.insert(0, value)
            slope_end, value_end = slope(a), value(a)

    def __call__(self, x):
        if x >= self.breaks[-1]:
            return 0.0
        place = bisect.bisect_right(self.breaks, x) - 1
        return float(self.pieces[max(place, 0)](x))

    def along(self, places):
        """The values at many places in rising order, the last of them the end."""
        which = np.searchsorted(self.breaks[1:-1], places, side="right")
        return np.concatenate([piece(places[which == k]) for k, piece in enumerate(self.pieces)])


class Neck:
    def __init__(self, build, plan, nut_to_rim):
        p = build.p
        self.build, self.plan, self.nut_to_rim = build, plan, nut_to_rim
        self.heel = nut_to_rim - p["neck.heel_start"]
        self.side = plan.side_angle(nut_to_rim)
        self.exponent = p["neck.section"]
        self.board = p["fretboard.thickness"]
        self.has_rod = p["neck.rod_present"] == "yes"
        self.channel = (max(p["neck.rod_start"], 0.0), min(nut_to_rim - p["neck.rod_end"], self.heel))
        self.moduli = [1000.0 * WOODS[p[key]][1] for key in ("neck.board_wood", "neck.wood")]
        e = self.exponent
        self.quarter = [quad(lambda u, m=m: (1 - u ** e) ** (m / e) / m, 0, 1, epsabs=1e-12, epsrel=1e-12,
                             limit=200)[0] for m in (1, 2, 3)]

    def thickness(self, x):
        """Board included."""
        first, last = self.build.p["neck.thickness_first"], self.build.p["neck.thickness_last"]
        x1 = self.build.position(1)
        return first + (last - first) * (x - x1) / (self.heel - x1)

    def in_channel(self, x):
        return self.has_rod and self.channel[0] < x < self.channel[1]

    def section(self, x, inside):
        """Bending stiffness in N mm2 and depth of the centroid under the board's surface in mm."""
        p, (board, wood) = self.build.p, self.moduli
        treble, bass = self.plan.halves(x, self.side)
        width, t, d = treble + bass, self.board, self.thickness(x) - self.board
        area, first, second = [q * width * d ** m for m, q in enumerate(self.quarter, 1)]
        if inside:
            rw, rd = p["neck.rod_width"], p["neck.rod_depth"]
            area, first, second = area - rw * rd, first - rw * rd ** 2 / 2, second - rw * rd ** 3 / 3
        # Moments about the board's surface; those of the profile are about the glue line.
        ea = board * width * t + wood * area
        es = board * width * t ** 2 / 2 + wood * (first + t * area)
        ei = board * width * t ** 3 / 3 + wood * (second + 2 * t * first + t * t * area)
        return ei - es * es / ea, es / ea

    def breaks(self):
        places = {0.0, self.heel}
        if self.plan.has_short:
            places |= {self.plan.start, *self.plan.ramp()}
        if self.has_rod:
            places |= set(self.channel)
        return sorted(x for x in places if 0.0 <= x <= self.heel)

    def load(self, tensions, fret_plane):
        """Bends the neck under the strings; fret_plane: bridge top over the plane of the crowns."""
        build, plan = self.build, self.plan
        hn, short = build.p["nut.string_height"], plan.count

        def pull(x, middle):
            stiffness, centroid = self.section(x, self.in_channel(middle))
            line = build.crown + hn + (fret_plane - hn) * x / plan.length
            force = sum(t for i, t in tensions.items() if i <= plan.full or middle > plan.start)
            return force * (line + centroid) / stiffness

        def rod(x, middle):
            return (1.0 if self.in_channel(middle) else 0.0) / self.section(x, self.in_channel(middle))[0]

        breaks = self.breaks()
        self.by_strings, self.by_rod = Stretches(pull, breaks), Stretches(rod, breaks)
        self._set_rod()

    def _gap(self, bend, x):
        return bend(0.0) * (1.0 - x / self.heel) - bend(x)

    def _relief(self, moment):
        """Largest distance under the chord from nut to heel, and where."""
        index = int(np.argmax(self.grid_strings - moment * self.grid_rod))
        low, high = self.grid[max(index - 1, 0)], self.grid[min(index + 1, len(self.grid) - 1)]
        found = minimize_scalar(lambda x: moment * self._gap(self.by_rod, x) - self._gap(self.by_strings, x),
                                bounds=(low, high), method="bounded", options={"xatol": 1e-7})
        return -found.fun, found.x

    def _set_rod(self):
        self.grid = np.linspace(0.0, self.heel, 201)
        self.grid_strings, self.grid_rod = (
            bend(0.0) * (1.0 - self.grid / self.heel) - bend.along(self.grid)
            for bend in (self.by_strings, self.by_rod))
        self.relief_free = self._relief(0.0)[0]
        self.rod_moment = self.build.fact("neck.rod_moment", self._least_moment())

    def _least_moment(self):
        """The relief is a largest of straight lines in the moment: convex, so steps from below meet the root."""
        wanted, moment = self.build.p["setup.relief"], 0.0
        if not self.has_rod or self.channel[0] >= self.channel[1] or self.relief_free <= wanted:
            return 0.0
        for _ in range(60):
            relief, x = self._relief(moment)
            step = (relief - wanted) / self._gap(self.by_rod, x)
            moment += step
            if abs(step) < 1e-10 * max(moment, 1.0):
                break
        return max(moment, 0.0)

    def lift(self, x):
        """v: how far the neck comes up towards the strings, with the rod as set."""
        return self.by_strings(x) - self.rod_moment * self.by_rod(x)

    def least_under_rod(self):
        """Least wood between the channel's corners and the back."""
        p, e = self.build.p, self.exponent
        reach = p["neck.rod_width"] / 2

        def wood(x):
            narrow = np.minimum(*self.plan.halves(x, self.side))
            share = np.clip(1.0 - (reach / narrow) ** e, 0.0, None) ** (1.0 / e)
            return (self.thickness(x) - self.board) * share - p["neck.rod_depth"]

        return least(wood, *self.channel)

    def widest_half(self):
        return -least(lambda x: -np.maximum(*self.plan.halves(x, self.side)), 0.0, self.nut_to_rim)


def least(function, low, high):
    """The least value over an interval: close rows of places, each row over what lies beside the last's best."""
    for _ in range(6):
        places = np.linspace(low, high, 401)
        values = function(places)
        index = int(np.argmin(values))
        low, high = places[max(index - 1, 0)], places[min(index + 1, len(places) - 1)]
    return float(values[index])
