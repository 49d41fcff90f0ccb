"""Pitch of fretted notes: a stiff string with pinned ends that is stretched by fretting.

Heights are over the unloaded plane of the crowns.  Formulas: H. Fletcher, JASA 36 (1964) 203, for the
stiffness; G. U. Varieschi and C. M. Gower, Am. J. Phys. 78 (2010) 47, for the way of reckoning.
"""

import math

import numpy as np
from scipy.optimize import brentq, root


class Sounding:
    """One string over the neck: mm, N, kg/m in; mm and N inside (mass per length in kg/mm)."""

    def __init__(self, build, side, i, mass, behind_nut):
        p, plan, string = build.p, side.plan, build.strings[i - 1]
        self.build, self.side, self.i = build, side, i
        self.full = i <= plan.full
        self.origin = 0.0 if self.full else plan.start
        self.first_fret = 1 if self.full else plan.start_fret + 1
        self.open_fret = self.first_fret - 1
        over = p["nut.string_height"] if self.full else p["fifth.start_height"]
        self.nut = over + (side.lifts["nut"] if self.full else side.lifts["short"])
        self.speaking = plan.length - self.origin
        self.whole = self.speaking + behind_nut + p["tailpiece.anchor"]
        self.slips = p["strings.slip"] == "yes"
        self.frequency, self.mass = string.frequency(p["tuning.a4"]), mass / 1000.0
        steel = string.core if string.core else string.outer
        modulus = 1000.0 * (string.modulus or p["strings.modulus"])
        self.stretch = modulus * math.pi * steel ** 2 / 4
        self.stiffness = modulus * math.pi * steel ** 4 / 64
        self.crowns = {}

    def crown(self, n):
        """Place of fret n from the string's start, and how far its crown has come up."""
        if n not in self.crowns:
            place = self.build.slot(self.i, self.open_fret, n)
            self.crowns[n] = place - self.origin, self.side.lift(self.build.position(n))
        return self.crowns[n]

    def cents(self, n, set_back, forward=0.0):
        length = self.speaking + set_back - forward
        open_length = math.hypot(length, self.side.fret_plane - self.nut)
        # Newtons from kg/mm, mm and Hz: a factor of 1/1000.  T (1 + B) is T plus pi^2 EI / l^2.
        tension = (self.mass * (2 * open_length * self.frequency) ** 2 / 1000.0
                   - math.pi ** 2 * self.stiffness / open_length ** 2)
        whole = self.whole if self.slips else length
        slack = whole / (1 + tension / self.stretch)
        place, crown = self.crown(n)
        place -= forward
        back = math.hypot(place, self.nut - crown)
        sounding = math.hypot(length - place, self.side.fret_plane - crown)
        longer = back + sounding - open_length
        pulled = self.stretch * ((whole + longer) / slack - 1)
        mass = self.mass * whole / (whole + longer)
        stiff = math.pi ** 2 * self.stiffness / (pulled * sounding ** 2)
        heard = math.sqrt(pulled * 1000.0 / mass * (1 + stiff)) / (2 * sounding)
        wanted = self.build.interval(self.i, self.open_fret, n)
        return 1200 * math.log2(heard / (self.frequency * 2 ** (wanted / 12)))

    def compensation(self):
        if self.open_fret >= 12:
            return None
        return brentq(lambda x: self.cents(12, x), -40.0, 60.0, xtol=1e-12, rtol=1e-13)


    def both_ends(self, last):
        """Set-back of the bridge and way of the nut forward, for the least squares over 15 frets."""
        frets = range(self.first_fret, min(last, self.first_fret + 14) + 1)
        if len(frets) < 2:
            return None

        def slope(ends):
            rates = []
            for h in np.diag([1e-2, 1e-2]):
                above = np.array([self.cents(n, *(ends + h)) for n in frets])
                below = np.array([self.cents(n, *(ends - h)) for n in frets])
                rates.append((above - below) / (2 * h.sum()))
            here = np.array([self.cents(n, *ends) for n in frets])
            return [rate @ here for rate in rates]

        return root(slope, [1.0, 0.5], tol=1e-11).x


def best_straight(soundings, places, last):
    """Set-back on the axis in mm and tangent of the turn that make all errors least in the square."""
    notes = [(i, n) for i, s in soundings.items() for n in range(s.first_fret, last + 1)]

    def errors(bridge):
        return np.array([soundings[i].cents(n, bridge[0] - bridge[1] * places[i]) for i, n in notes])

    def slope(bridge):
        """Half the gradient of the sum of squares, by central differences in mm and in the tangent."""
        steps = np.diag([1e-2, 1e-4])
        rates = [(errors(bridge + h) - errors(bridge - h)) / (2 * h.sum()) for h in steps]
        return [rate @ errors(bridge) for rate in rates]

    return root(slope, [1.0, 0.0], tol=1e-11).x
