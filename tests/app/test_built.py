#!/usr/bin/env python3
"""test_built.py RIMWRIGHT: the build that comes with the program from first cut to strung, and the commands of the making.

It is lived through again: every reading is given to the plan one after the other, and each must move what still has to be
made and follows from it, and nothing that comes before.  Which is which is said here, from the order of the work.
"""

import csv
import io
import json
import math
import subprocess
import sys
import tempfile
import unittest
from pathlib import Path

PROGRAM = sys.argv.pop(1)

# What a reading moves, and what it must leave alone; in the order in which things came out.
TALE = [
    ("head.nominal", ["hoop.bore", "hoop.strip", "hoop.notch_arc[5]"], ["rim.circumference", "frets.position[7]"]),
    ("rim.segment.outer_edge", ["rim.segment.inner_edge"], ["rim.segment.mitre", "hoop.bore"]),
    ("rim.course_thickness[1]", ["rim.blank_height", "rim.mass"], ["rim.segment.outer_edge", "hoop.bore"]),
    ("rim.outer_diameter", ["rim.circumference", "hooks.arc[5]", "hooks.chord[3]", "joint.hollow"],
     ["hoop.bore", "frets.position[7]"]),
    ("rim.wall", ["rim.inner_diameter", "joint.inside_length"], ["rim.circumference", "hoop.bore"]),
    ("hoop.bore", ["hoop.outer_diameter", "joint.relief_depth", "neck.board_length"], ["rim.circumference"]),
    ("hoop.notch_depth", ["hooks.leg", "hooks.blank", "hooks.cut"], ["hoop.bore", "rim.circumference"]),
    ("neck.angle", ["bridge.height", "joint.heel_angle"], ["rim.circumference", "hoop.bore", "frets.position[7]"]),
    ("fretboard.thickness", ["frets.floor", "neck.facet_side[5]"], ["frets.position[7]", "rim.circumference"]),
    ("frets.position[12]", ["setup.cents[1][12]"], ["frets.position[11]", "rim.circumference"]),
    ("frets.crown_height", ["bridge.height"], ["neck.angle", "rim.circumference"]),
    ("neck.set_height", ["bridge.height", "joint.hole_on_heel[1]"], ["neck.angle", "rim.circumference"]),
    ("shoes.stand_off", ["hooks.lean"], ["hooks.arc[5]", "hooks.leg"]),
    ("bridge.height", ["setup.action[12]", "bridge.break_angle"], ["neck.angle", "rim.circumference"]),
]


def run(*words, text=None):
    return subprocess.run([PROGRAM, *words], capture_output=True, text=True, input=text, check=False)


def listing(project, measured=()):
    words = [word for entry in measured for word in ("--measured", "%s=%.17g" % entry)]
    done = run("list", "-", "--format", "json", *words, text=json.dumps(project))
    assert done.returncode == 0, done.stderr
    return {row["id"]: row for row in json.loads(done.stdout)["dimensions"]}


class Built(unittest.TestCase):
    @classmethod
    def setUpClass(cls):
        cls.project = json.loads(run("example", "as-built").stdout)
        cls.readings = {entry["id"]: sum(entry["readings"]) / len(entry["readings"])
                        for entry in cls.project["measured"]}
        cls.plan = {key: value for key, value in cls.project.items() if key not in ("measured", "made")}

    def test_each_reading_moves_what_is_still_to_make(self):
        measured, before = [], listing(self.plan)
        for name, moves, stays in TALE:
            measured.append((name, self.readings[name]))
            now = listing(self.plan, measured)
            for other in moves:
                self.assertGreater(abs(now[other]["value"] - before[other]["value"]), 1e-4, "%s: %s" % (name, other))
                self.assertEqual(now[other]["planned"], before[other]["planned"])
            for other in stays:
                self.assertEqual(now[other]["value"], before[other]["value"], "%s: %s" % (name, other))
            before = now

    def test_much_came_out_otherwise(self):
        rows = listing(self.project)
        off = [row for row in rows.values() if row["measured"] is not None
               and abs(row["measured"] - row["planned"]) > (row["tolerance"] or 0)]
        parameters = self.project["parameters"]
        off += [name for name, value in self.readings.items()
                if isinstance(parameters.get(name), (int, float)) and abs(parameters[name] - value) > 0.04]
        self.assertGreaterEqual(len(off), 6)

    def test_every_step_is_made(self):
        steps = json.loads(run("steps", "-", "--format", "json", text=json.dumps(self.project)).stdout)["steps"]
        self.assertEqual({step["state"] for step in steps}, {"done"})
        dates = [step["made"] for step in steps]
        self.assertEqual(dates, sorted(dates))

    def test_readings_win_and_what_belongs_goes_with_them(self):
        rows = listing(self.project)
        rim = self.readings["rim.outer_diameter"]
        self.assertAlmostEqual(rows["rim.circumference"]["value"], math.pi * rim, delta=1e-9)
        self.assertAlmostEqual(rows["rim.circumference"]["made"], math.pi * rim, delta=1e-9)
        self.assertIsNone(rows["rim.circumference"]["needed"])

    def test_it_plays(self):
        """Nothing stops it or is likely to be regretted; the action is what is wanted within a quarter of a millimetre."""
        done = run("check", "-", "--format", "json", text=json.dumps(self.project))
        self.assertEqual(done.returncode, 0, done.stdout)
        severities = {finding["severity"] for finding in json.loads(done.stdout)["findings"]}
        self.assertLessEqual(severities, {"note"})
        wanted = self.project["parameters"]["setup.action"]
        self.assertAlmostEqual(listing(self.project)["setup.action[12]"]["value"], wanted, delta=0.25)

    def test_made_parts_hold_against_another_design(self):
        before = listing(self.project)
        words = ["--set", "rim.outer_diameter=310", "--set", "scale.length=700", "--set", "hooks.count=24",
                 "--set", "rim.construction=plies", "--set", "frets.count=22", "--set", "head.nominal=311"]
        done = run("list", "-", "--format", "json", *words, text=json.dumps(self.project))
        now = {row["id"]: row for row in json.loads(done.stdout)["dimensions"]}
        for name, row in before.items():
            if row["made"] is not None:
                self.assertEqual(now[name]["value"], row["value"], name)


class Commands(unittest.TestCase):
    """The commands steps and changes, and the record of papers."""

    def setUp(self):
        self.folder = tempfile.TemporaryDirectory()
        self.addCleanup(self.folder.cleanup)
        self.path = Path(self.folder.name, "build.rimwright")
        self.path.write_text(run("example").stdout, encoding="utf-8")

    def papers(self, *words):
        return run("papers", str(self.path), "--into", self.folder.name, "--only", "rim-strip", "--only", "headstock", *words)

    def test_steps(self):
        steps = json.loads(run("steps", "--format", "json").stdout)["steps"]
        self.assertEqual([step["step"] for step in steps if step["state"] == "possible"], ["choose"])
        self.assertEqual(steps[1]["waits_for"], ["choose"])
        rows = list(csv.reader(io.StringIO(run("steps", "--format", "csv").stdout)))
        self.assertEqual([row[0] for row in rows[1:]], [step["step"] for step in steps])
        self.assertIn("Saw the staves", run("steps", "--set", "rim.construction=staves").stdout)

    def test_backwards(self):
        """A neck that is cut to 1.5 degrees under the planned bridge: the action says so."""
        words = ["--measured", "neck.angle=1.5", "--measured", "bridge.height=16"]
        rows = {row["id"]: row for row in json.loads(run("list", "--format", "json", *words).stdout)["dimensions"]}
        height = "setup.action[12]=%.17g" % rows["setup.action[12]"]["value"]
        told = json.loads(run("steps", "--format", "json", "--measured", height).stdout)["backwards"]
        self.assertAlmostEqual(told["angle"], 1.5, delta=1e-6)
        self.assertGreater(told["shim"], 0)
        self.assertIn("the neck stands at 1.50°", run("steps", "--measured", height).stdout)
        self.assertIsNone(json.loads(run("steps", "--format", "json").stdout)["backwards"])

    def test_nothing_left_yet(self):
        self.assertEqual(run("changes", str(self.path)).stdout, "No papers have left yet\n")
        self.assertEqual(json.loads(run("changes", "--format", "json").stdout),
                         {"since": None, "changes": [], "papers": []})

    def test_papers_are_recorded_only_where_asked(self):
        before = self.path.read_text(encoding="utf-8")
        self.assertEqual(self.papers().returncode, 0)
        self.assertEqual(self.path.read_text(encoding="utf-8"), before)
        self.assertEqual(self.papers("--record").returncode, 0)
        issue = json.loads(self.path.read_text(encoding="utf-8"))["issued"][0]
        self.assertEqual(issue["papers"], ["rim-strip", "headstock"])

    def test_changes(self):
        self.papers("--record")
        done = run("changes", str(self.path), "--format", "json", "--measured", "rim.outer_diameter=280")
        told = json.loads(done.stdout)
        row = next(row for row in told["changes"] if row["id"] == "rim.circumference")
        self.assertAlmostEqual(row["before"], math.pi * 279, delta=1e-9)
        self.assertAlmostEqual(row["now"], math.pi * 280, delta=1e-9)
        changed = {paper["paper"]: paper["changed"] for paper in told["papers"]}
        self.assertIn("rim.circumference", changed["rim-strip"])
        self.assertEqual(changed["headstock"], [])

    def test_record_refused(self):
        for words in (("papers", "--into", self.folder.name, "--record"),
                      ("papers", str(self.path), "--into", self.folder.name, "--record", "--set", "rim.wall=13")):
            done = run(*words)
            self.assertEqual(done.returncode, 2)
            self.assertIn("--record", done.stderr)


unittest.main()
