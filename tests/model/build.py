"""A build as the statement of the model sees it: parameters, measured values, and the rows worked out."""

import csv
import io
import math
import re

NUMBERS = {"length", "angle", "ratio", "count", "mass", "density", "tension", "frequency", "modulus",
           "temperature", "speed", "volume"}
# Density in kg/m3, modulus in GPa (of steel the parameter), least strength in MPa by diameter in mm; from memory but
# the law for music wire (ASTM A228, in Shigley's Mechanical Engineering Design).
WIRES = {"steel": (7850.0, None, lambda d: 2211.0 * min(max(d, 0.1), 6.5) ** -0.145),
         "nylon": (1140.0, 4.0, lambda d: 500.0), "gut": (1300.0, 6.0, lambda d: 350.0)}
NOTES = ("C", "C#", "D", "D#", "E", "F", "F#", "G", "G#", "A", "A#", "B")
SEMITONES = {"C": -9, "D": -7, "E": -5, "F": -4, "G": -2, "A": 0, "B": 2}


class StringAsBought:
    """One item of strings.set: "D3 0.559 w 0.305 rho=8800 mass=0.0016 short"; lengths in mm."""

    def __init__(self, text):
        fields = text.split()
        self.note, self.outer = fields[0], float(fields[1])
        self.core, self.short, self.wrap, self.mass = None, False, 8800.0, None
        self.density, self.modulus, self.strength = WIRES["steel"]
        rest = fields[2:]
        while rest:
            field = rest.pop(0)
            if field == "w":
                self.core = float(rest.pop(0))
            elif field == "short":
                self.short = True
            elif field.startswith("rho="):
                self.wrap = float(field[4:])
            elif field.startswith("mass="):
                self.mass = float(field[5:])
            elif field in WIRES:
                self.density, self.modulus, self.strength = WIRES[field]
            elif field != "p":
                raise ValueError("no string: " + text)

    def frequency(self, a4):
        match = re.fullmatch(r"([A-G])([#b]?)(-?\d+)", self.note)
        if not match:
            return float(self.note)
        letter, sign, octave = match.groups()
        steps = SEMITONES[letter] + {"": 0, "#": 1, "b": -1}[sign] + 12 * (int(octave) - 4)
        return a4 * 2.0 ** (steps / 12.0)


def read_parameters(text):
    """The table of parameters as CSV: (defaults as text by id, rows by id)."""
    rows = {row["id"]: row for row in csv.DictReader(io.StringIO(text))}
    return {key: row["default"] for key, row in rows.items()}, rows


class Build:
    """Parameters with measured ones in place, and the rows as they are worked out.

    p[id]            value of a parameter
    fact(id, value)  what the model goes on with: the measured value, or else the one worked out
    row(id, value)   the same, and it goes into the list; a value of None is no row
    """

    def __init__(self, table, texts, measured=None):
        self.measured = dict(measured or {})
        self.rows = {}
        self.p = {key: self._value(key, table[key], text) for key, text in texts.items()}
        self.strings = [StringAsBought(item) for item in texts["strings.set"].split(";")]
        self.fretless = self.p["frets.count"] == 0
        self.last = 24 if self.fretless else int(self.p["frets.count"])
        self.crown = 0.0 if self.fretless else self.p["frets.crown_height"]

    def _value(self, key, row, text):
        if row["kind"] in NUMBERS:
            return self.measured.get(key, float(text))
        if key == "rim.course_thickness":
            plan = [float(item) for item in text.split(";")]
            return [self.measured.get("%s[%d]" % (key, k), t) for k, t in enumerate(plan, 1)]
        if row["kind"] == "list":
            return [item.strip() for item in text.split(";")]
        return text.strip()

    def fact(self, key, value):
        return self.measured.get(key, value) if value is not None else None

    def row(self, key, value):
        value = self.fact(key, value)
        if value is not None:
            self.rows[key] = float(value)
        return value

    def off(self, step):
        """Cents off equal temperament of a step, the 1st to the 12th; octaves alike."""
        off = [float(c) for c in self.p["frets.temperament"]]
        return off[(step - 1) % 12] if (step - 1) % 12 < len(off) else 0.0

    @property
    def own_slots(self):
        return self.p["frets.slots"] == "own"

    def semitones(self, n):
        """What fret n is to sound over the nut: equal steps, and what the temperament adds."""
        return n + (self.off(n) / 100 if n > 0 and not self.own_slots else 0.0)

    def interval(self, i, start, n):
        """Semitones from the open note of string i to what it is to sound at fret n."""
        if not self.own_slots:
            return self.semitones(n) - self.semitones(start)
        a4 = self.p["tuning.a4"]
        note = 69 + round(12 * math.log2(self.strings[i - 1].frequency(a4) / a4)) - NOTES.index(self.p["frets.key"])
        return n - start + (self.off(note + n - start) - self.off(note)) / 100

    def slot(self, i, start, n):
        """Nut to the slot of string i at fret n, where slots are its own."""
        if not self.own_slots:
            return self.position(n)
        begin = self.position(start)
        place = begin + (self.p["scale.length"] - begin) * (1 - 2 ** (-self.interval(i, start, n) / 12))
        return self.fact("frets.slot[%d][%d]" % (i, n), place) if n <= self.last else place

    def position(self, n):
        """Nut to fret n; a measured position counts where there is such a row."""
        computed = self.p["scale.length"] * (1.0 - 2.0 ** (-self.semitones(n) / 12.0))
        listed = 1 <= n <= self.last and not self.own_slots
        return self.fact("frets.position[%d]" % n, computed) if listed else computed
