"""Builds to compare on: by hand those that take each branch of the model, and random ones.

A case is a name, parameters as text by id, and measured values by id.  All values are inventions.
"""

import random

from build import NUMBERS
from tables import METALS, THREADS, WOODS

FOUR = "D4 0.254 p; B3 0.305 p; G3 0.33 p; C3 0.559 w 0.305"
SIX = "D4 0.254 p; B3 0.305 p; G3 0.406 p; D3 0.559 w 0.305; A2 0.71 w 0.36 rho=8600; G4 0.241 p short"
THREE = "A4 0.23 p; E4 0.3 p; A3 0.56 w 0.3 mass=0.00152"
LONG_SEVEN = ("E4 0.254 p; B3 0.305 p; G3 0.406 p; D3 0.66 w 0.36; A2 0.86 w 0.41; E2 1.07 w 0.46;"
              " 392 0.254 p short")

NYLON = "D4 0.48 p nylon; B3 0.56 p nylon; G3 0.69 p gut; D3 0.61 w 0.44 nylon rho=8900; G4 0.48 p short nylon"

BY_HAND = [
    ("defaults", {}),
    ("four strings, no short one", {"strings.set": FOUR}),
    ("six strings", {"strings.set": SIX, "nut.width": "38", "bridge.spread": "50"}),
    ("three strings", {"strings.set": THREE, "nut.width": "26", "bridge.spread": "30"}),
    ("seven strings, tunnel", {"strings.set": LONG_SEVEN, "nut.width": "48", "bridge.spread": "60",
                               "bridge.foot_spread": "70", "fifth.route": "tunnel"}),
    ("nylon and gut", {"strings.set": NYLON}),
    ("tunnel", {"fifth.route": "tunnel"}),
    ("short string from 2", {"fifth.start_fret": "2", "fifth.peg_distance": "25"}),
    ("short string from 12", {"fifth.start_fret": "12"}),
    ("steps of a just scale", {"frets.temperament": "11.7; 3.9; 15.6; -13.7; -2; -9.8; 2; 13.7; -15.6; -3.9; -11.7"}),
    ("slots of each string's own", {"frets.slots": "own", "frets.key": "D",
                                    "frets.temperament": "11.7; 3.9; 15.6; -13.7; -2; -9.8; 2; 13.7; -15.6; 17.6; -11.7"}),
    ("meantone in pieces, four strings", {"frets.slots": "own", "frets.key": "A#", "strings.set": FOUR, "frets.temperament":
                                          "-24; -6.8; 10.3; -13.7; 3.4; -20.5; -3.4; -27.4; -10.3; 6.8; -17.1"}),
    ("fretless", {"frets.count": "0"}),
    ("fretless, squares to strings", {"frets.count": "0", "scale.square_to": "strings"}),
    ("ten frets", {"frets.count": "10"}),
    ("bound board", {"fretboard.binding": "1.5", "frets.end_inset": "0"}),
    ("square to strings", {"scale.square_to": "strings"}),
    ("square to strings, tunnel", {"scale.square_to": "strings", "fifth.route": "tunnel"}),
    ("left-handed", {"build.handed": "left"}),
    ("stick", {"joint.kind": "stick"}),
    ("one rod", {"joint.rod_count": "1"}),
    ("staves", {"rim.construction": "staves", "rim.segments": "16"}),
    ("staves of an odd count", {"rim.construction": "staves", "rim.segments": "15", "rim.strip_width": "25"}),
    ("plies", {"rim.construction": "plies"}),
    ("plies, butt joints", {"rim.construction": "plies", "rim.ply_scarf": "0", "rim.ply_thickness": "1.2"}),
    ("odd segments", {"rim.segments": "11"}),
    ("wide strip, one course", {"rim.strip_width": "35", "rim.course_thickness": "66",
                                "rim.course_wood": "maple_hard"}),
    ("four courses and a cap", {"rim.course_thickness": "18; 18; 18; 6",
                                "rim.course_wood": "maple_hard; walnut_black; maple_hard; ebony_african",
                                "rim.height": "57.5"}),
    ("thick stack, short rim", {"rim.height": "40"}),
    ("tone ring", {"rim.tone_ring_height": "6.5", "rim.crest_inset": "8"}),
    ("groove", {"hoop.seat": "groove", "hooks.bend_radius": "5"}),
    ("springback tested", {"hoop.springback_test": "8.5"}),
    ("even hooks", {"hooks.layout": "even"}),
    ("even hooks, neck takes one", {"hooks.layout": "even", "hooks.first": "neck_takes_one",
                                    "hooks.count": "17"}),
    ("odd hooks", {"hooks.count": "19"}),
    ("four hooks", {"hooks.count": "4"}),
    ("tap 01", {"head.tension_from": "tap_frequency", "head.tap_mode": "01", "head.tap_frequency": "260"}),
    ("tap 11", {"head.tension_from": "tap_frequency", "head.tap_mode": "11"}),
    ("tap 21", {"head.tension_from": "tap_frequency", "head.tap_mode": "21", "head.tap_frequency": "640"}),
    ("mode 01 of a tension", {"head.tap_mode": "01"}),
    ("bridge solved for", {"neck.solve_for": "bridge"}),
    ("action solved for", {"neck.solve_for": "action"}),
    ("two feet", {"bridge.feet": "2"}),
    ("bridge at the centre", {"bridge.offset": "0"}),
    ("slack head", {"head.tension": "900"}),
    ("steep tailpiece", {"tailpiece.anchor": "25", "tailpiece.height": "-6"}),
    ("stiff neck", {"setup.neck_flex": "no"}),
    ("stiff neck, bridge solved for", {"setup.neck_flex": "no", "neck.solve_for": "bridge"}),
    ("no slip", {"strings.slip": "no"}),
    ("no rod", {"neck.rod_present": "no"}),
    ("short rod channel", {"neck.rod_start": "60", "neck.rod_end": "200", "setup.relief": "0.1"}),
    ("relief as it comes", {"setup.relief": "1.5"}),
    ("square back", {"neck.section": "3.2"}),
    ("lean back", {"neck.section": "1.5"}),
    ("foot off the head", {"bridge.offset": "140"}),
    ("wood of unknown movement", {"neck.board_wood": "ebony_african"}),
]

MEASURED_BY_HAND = [
    ({"neck.solve_for": "angle"}, {"neck.angle": 1.7}),
    ({"neck.solve_for": "angle"}, {"bridge.height": 16.6}),
    ({"neck.solve_for": "angle"}, {"neck.angle": 1.7, "bridge.height": 16.6}),
    ({"neck.solve_for": "bridge"}, {"bridge.height": 16.6}),
    ({"neck.solve_for": "bridge"}, {"neck.angle": 1.7}),
    ({"neck.solve_for": "bridge"}, {"neck.angle": 1.7, "bridge.height": 16.6}),
    ({"neck.solve_for": "action"}, {"neck.angle": 2.1}),
    ({"neck.solve_for": "action"}, {"neck.angle": 2.1, "bridge.height": 16.6}),
    ({}, {"bridge.sag": 2.0}),
    ({"neck.solve_for": "bridge"}, {"bridge.sag": 2.0, "bridge.down_force": 60.0}),
    ({"head.tension_from": "tap_frequency"}, {"head.tension": 5200.0}),
    ({"head.tension_from": "tap_frequency"}, {"head.tap_frequency": 480.0}),
    ({"head.tension_from": "tap_frequency"}, {"bridge.sag": 1.9}),
    ({}, {"head.tap_frequency": 480.0}),
    ({"setup.neck_flex": "no"}, {"neck.pull_up": 0.3}),
    ({}, {"rim.course_thickness[2]": 23.1, "rim.outer_diameter": 278.4, "rim.wall": 13.6}),
]

# Numbers whose middle ground is not a share of the default.
RANGES = {
    "frets.count": (10, 24), "fifth.start_fret": (3, 8), "hooks.count": (8, 28), "rim.segments": (6, 20),
    "joint.rod_count": (1, 2), "bridge.feet": (2, 3), "setup.action_fret": (5, 17), "rim.course_turn": (0, 1),
    "setup.humidity_low": (20, 40), "setup.humidity_high": (55, 80), "neck.set_height": (0.5, 5),
    "rim.strip_width": (27, 34), "rim.tone_ring_height": (0, 6), "hoop.springback_test": (0, 15),
    "neck.rod_start": (-10, 30), "head.tension": (3000, 9000), "neck.section": (1.5, 3.2),
    "setup.relief": (0.05, 0.5), "fretboard.binding": (0, 2), "bridge.offset": (40, 65),
}
STRINGS = [FOUR, SIX, THREE]

CHOICES = {
    "build.handed": ("right", "left"), "scale.square_to": ("neck", "strings"),
    "fifth.route": ("side_peg", "tunnel"), "strings.slip": ("yes", "no"),
    "neck.solve_for": ("angle", "bridge", "action"), "neck.rod_present": ("yes", "no"),
    "rim.construction": ("segments", "staves", "plies"), "head.material": ("film", "skin"),
    "head.tension_from": ("tension", "tap_frequency"), "head.tap_mode": ("01", "11", "21"),
    "hoop.seat": ("notches", "groove"), "hooks.layout": ("even", "sides"),
    "hooks.first": ("straddle", "neck_takes_one"), "joint.kind": ("rods", "stick"),
    "setup.neck_flex": ("yes", "no"), "headstock.ears": ("yes", "no"),
}


def random_case(table, rng):
    texts = {}
    for key, row in table.items():
        if rng.random() < 0.6:
            continue
        if key in CHOICES:
            texts[key] = rng.choice(CHOICES[key])
        elif row["kind"] == "wood":
            texts[key] = rng.choice(sorted(WOODS))
        elif row["kind"] == "metal":
            texts[key] = rng.choice(sorted(METALS))
        elif row["kind"] == "thread":
            texts[key] = rng.choice(sorted(THREADS))
        elif row["kind"] in NUMBERS:
            texts[key] = random_number(key, row, rng)
    if rng.random() < 0.3:
        texts["strings.set"] = rng.choice(STRINGS)
    if rng.random() < 0.4:
        count = rng.randint(1, 5)
        texts["rim.course_thickness"] = "; ".join("%.17g" % rng.uniform(11, 26) for _ in range(count))
        texts["rim.course_wood"] = "; ".join(rng.choice(sorted(WOODS)) for _ in range(count))
    return texts


def random_number(key, row, rng):
    low, high = RANGES.get(key, (None, None))
    if low is None:
        default = float(row["default"])
        reach = 0.12 * abs(default) or 2 * float(row["step"])
        low, high = max(float(row["min"]), default - reach), min(float(row["max"]), default + reach)
    if row["kind"] == "count":
        return str(rng.randint(int(low), int(high)))
    return "%.17g" % rng.uniform(low, high)


def measured_near(rows, rng, count):
    """Measured values a little off the planned ones, for count rows."""
    found = {}
    for key in rng.sample(sorted(rows), count):
        value = rows[key]
        if key != "rim.ply.count":
            found[key] = value + rng.choice((-1, 1)) * max(0.004 * abs(value), 0.02)
    return found


def generator(seed):
    return random.Random(seed)
