#!/usr/bin/python3
"""sensitivity.py RIMWRIGHT: the program's sensitivities against the statement of the model.

The statement knows nothing of sensitivities.  Here each size is put into it as measured, a step over and under what
is planned, and the rows are read again: central differences of another model, in another language, with steps of
another length.  Where the bridge comes to stand is found by trying: the place for which the statement itself answers
the nut-to-rim length that was cut.
"""

import json
import multiprocessing
import subprocess
import sys

try:
    from scipy.optimize import newton
except ImportError:
    print("python3-scipy is not installed")
    sys.exit(77)

from build import read_parameters
from statement import dimensions

BUILDS = ({}, {"neck.solve_for": "bridge", "rim.outer_diameter": "304.8", "head.nominal": "305.2",
               "setup.neck_flex": "no", "strings.slip": "no", "scale.square_to": "strings"})
# What is a fact on the bench once it is cut, besides what is varied.
FACTS = ("neck.angle", "bridge.height", "neck.side_angle", "hooks.leg", "hoop.bore", "shoes.hole_below_edge",
         "head.tension")
STEPS = {"deg": 0.02, "mm": 0.04, "N/m": 20.0}
ROWS = {"action": "setup.action[12]", "over_hoop": "strings.over_hoop", "hook_tip": "hooks.tip_over_back",
        "hook_lean": "hooks.lean"}
CUTS = ("neck.angle", "neck.set_height", "neck.nut_to_rim", "bridge.height", "rim.outer_diameter", "nut.string_height",
        "fifth.start_height", "frets.crown_height", "head.tension", "neck.thickness_first", "neck.thickness_last",
        "hooks.leg", "hoop.bore", "hoop.notch_depth", "shoes.stand_off", "rim.height", "shoes.height")
# Of the size of a rate: what curvature leaves between the two steps, and the sag that the program does not count
# when it places the bridge; the last against all but nothing.
RELATIVE, ABSOLUTE = 4e-3, 2e-4
PLACE_ABSOLUTE = 1e-2


def program(path, texts, *arguments):
    sets = [word for key, text in texts.items() for word in ("--set", "%s=%s" % (key, text))]
    return subprocess.run([path, *arguments, *sets], capture_output=True, text=True, check=True).stdout


class Bench:
    """A build of which everything cut is a fact."""

    def __init__(self, table, changes):
        self.table, self.name = table, changes or "built-in build"
        self.texts = dict({key: row["default"] for key, row in table.items()}, **changes)
        plan = dimensions(table, self.texts)
        self.length = plan["neck.nut_to_rim"]
        self.facts = {key: plan[key] for key in FACTS}

    def outcomes(self, off):
        """Rows and the bridge's place, sizes being off by so much."""
        measured = dict(self.facts)
        length = self.length + off.get("neck.nut_to_rim", 0.0)
        for key, by in off.items():
            if key != "neck.nut_to_rim":
                measured[key] = self.planned(key) + by
        place = self.place(measured, length)
        rows = dimensions(self.table, self.texts, dict(measured, **{"bridge.offset": place}))
        return dict({name: rows[row] for name, row in ROWS.items()}, bridge_place=place)

    def planned(self, key):
        return self.facts[key] if key in self.facts else float(self.texts[key])

    def place(self, measured, length):
        def miss(place):
            rows = dimensions(self.table, self.texts, dict(measured, **{"bridge.offset": place}))
            return rows["neck.nut_to_rim"] - length

        near = float(self.texts["bridge.offset"])
        return newton(miss, near, x1=near + 0.1, tol=1e-8)


def differences(bench, cut):
    step = STEPS[cut["unit"]]
    above, below = (bench.outcomes({cut["id"]: by}) for by in (step, -step))
    found = []
    for name in above:
        stated = (above[name] - below[name]) / (2 * step)
        told = cut["rates"][name]
        allowed = RELATIVE * abs(stated) + (PLACE_ABSOLUTE if name == "bridge_place" else ABSOLUTE)
        if not abs(told - stated) <= allowed:
            found.append("%s: %s by %s: the program says %.6g, the statement %.6g"
                         % (bench.name, name, cut["id"], told, stated))
    return found


def cases(path, table):
    for changes in BUILDS:
        answer = json.loads(program(path, changes, "spread", "--builds", "100", "--format", "json"))
        bench = Bench(table, changes)
        for cut in answer["cuts"]:
            if cut["id"] in CUTS:
                yield bench, cut


def main():
    path = sys.argv[1]
    table = read_parameters(program(path, {}, "parameters", "--format", "csv"))[1]
    with multiprocessing.Pool() as pool:
        results = pool.starmap(differences, cases(path, table), chunksize=1)
    wrong = [line for result in results for line in result]
    print("\n".join([*wrong, "%d sizes compared, %d rates disagree" % (len(results), len(wrong))]))
    return 1 if wrong or len(results) != len(BUILDS) * len(CUTS) else 0


if __name__ == "__main__":
    sys.exit(main())
