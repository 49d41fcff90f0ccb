#!/usr/bin/python3
"""Every build that the program brings along can be built and played by its numbers.

test_examples.py PROGRAM.  Runs without a display.  What is asked of a playable instrument is common practice, no source,
where no definition stands beside it.
"""

import csv
import functools
import json
import subprocess
import sys
import unittest

PROGRAM = sys.argv.pop(1)

# Name, head in inches, strings, frets, hand.
BUILDS = [
    ("default", 11, 5, 19, "right"),
    ("twelve-inch", 12, 5, 19, "right"),
    ("long-neck", 11, 5, 22, "right"),
    ("tenor", 10, 4, 17, "right"),
    ("banjo-ukulele", 8, 4, 16, "right"),
    ("fretless", 13, 5, 0, "right"),
    ("left-handed", 11, 5, 21, "left"),
    ("six-string", 12, 6, 19, "right"),
]


def run(*words, given=None):
    return subprocess.run([PROGRAM, *words], input=given, capture_output=True, timeout=60, check=False)


@functools.lru_cache(None)
def built(name):
    """A build's file, its parameters, and its dimensions by id."""
    file = run("example", name).stdout
    rows = csv.DictReader(run("list", "--format", "csv", "-", given=file).stdout.decode().splitlines())
    return file, json.loads(file)["parameters"], {row["id"]: float(row["value"]) for row in rows if row["value"]}


class Examples(unittest.TestCase):
    def each(self, check):
        for name, *asked in BUILDS:
            with self.subTest(name):
                check(*built(name), *asked)

    def test_nothing_stops_the_build(self):
        def check(file, *_):
            done = run("check", "-", given=file)
            self.assertEqual(done.returncode, 0, done.stdout.decode())
        self.each(check)

    def test_it_is_what_its_name_says(self):
        def check(_, parameters, values, head, strings, frets, hand):
            self.assertAlmostEqual(2 * values["head.radius"], head * 25.4, delta=3)  # a head is a little under its name
            self.assertEqual(sum(key.startswith("strings.tension[") for key in values), strings)
            self.assertEqual(parameters.get("frets.count", 19), frets)
            self.assertEqual(parameters.get("build.handed", "right"), hand)
        self.each(check)

    def test_it_plays_in_tune(self):
        """The octave halves the string, and the bridge stands a little behind twice that, for each string."""
        def check(_, parameters, values, *_others):
            self.assertAlmostEqual(values["frets.position[12]"], parameters.get("scale.length", 650) / 2, places=6)
            for key, back in values.items():
                if key.startswith("bridge.compensation["):
                    self.assertTrue(-1 < back < 12, "%s %g" % (key, back))
        self.each(check)

    def test_it_plays_easily(self):
        """Strings rise from the nut to the last fret, clear of every one, and are held down by the bridge."""
        def check(_, _parameters, values, *_others):
            heights = [height for key, height in values.items() if key.startswith("setup.action[")]
            self.assertGreaterEqual(len(heights), 4)
            self.assertEqual(heights, sorted(heights))
            self.assertGreater(heights[0], 0.3)
            self.assertTrue(1.8 <= values["setup.action[12]"] <= 3.2, values["setup.action[12]"])
            self.assertTrue(5 <= values["bridge.break_angle"] <= 20, values["bridge.break_angle"])
            self.assertTrue(0.55 <= values["bridge.landing"] <= 0.8, values["bridge.landing"])
        self.each(check)

    def test_it_holds(self):
        """No string is near breaking, and the neck leans back by a few degrees at most."""
        def check(_, _parameters, values, *_others):
            shares = [share for key, share in values.items() if key.startswith("strings.strength_share[")]
            self.assertTrue(shares)
            self.assertLess(max(shares), 80)
            self.assertTrue(0 < values["neck.angle"] < 5, values["neck.angle"])
        self.each(check)


if __name__ == "__main__":
    unittest.main()
