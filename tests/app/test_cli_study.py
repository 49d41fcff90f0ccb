#!/usr/bin/python3
"""The command study, from outside: tables that agree with the dimension list, pictures of the size asked for.

test_cli_study.py PROGRAM.  Runs without a display.
"""

import csv
import io
import json
import re
import struct
import subprocess
import sys
import unittest

PROGRAM = sys.argv.pop(1) if len(sys.argv) > 1 else None
STUDIES = ("pitch", "action", "strings", "head", "hooks", "seasons", "temperament")


def run(*words):
    return subprocess.run([PROGRAM, *words], capture_output=True, timeout=60, check=False)


def written(*words):
    done = run(*words)
    if done.returncode != 0:
        raise AssertionError("%s: %s" % (" ".join(words), done.stderr.decode()))
    return done.stdout


def rows(name, *options):
    text = written("study", name, "--format", "csv", *options).decode()
    assert text.endswith("\r\n")
    return list(csv.DictReader(io.StringIO(text, newline=""), strict=True))


class Tables(unittest.TestCase):
    def test_agrees_with_the_list(self):
        listed = {row["id"]: row["value"]
                  for row in json.loads(written("list", "--format", "json"))["dimensions"]}
        action = {row["Fret"]: row["Long strings, strings on, mm"] for row in rows("action")}
        for fret in ("1", "5", "7", "12"):
            self.assertAlmostEqual(float(action[fret]), listed["setup.action[%s]" % fret], 9)
        for i, row in enumerate(rows("strings"), 1):
            self.assertAlmostEqual(float(row["Pull, N"]), listed["strings.tension[%d]" % i], 9)

    def test_json_is_the_csv(self):
        for name in STUDIES:
            whole = json.loads(written("study", name, "--format", "json"))
            table = rows(name)
            self.assertEqual(whole["study"], name)
            self.assertEqual(len(whole["rows"]), len(table))
            for column in whole["columns"]:
                title = ", ".join(filter(None, (column["title"], column["unit"].replace("N mm", "N·mm")
                                                .replace("N m", "N·m"))))
                for value, row in zip(column["values"], table):
                    self.assertEqual(row[title] == "", value is None)
                    if value is not None:
                        self.assertEqual(float(row[title]), value)

    def test_inches(self):
        mm, inches = rows("seasons"), rows("seasons", "--units", "inch")
        for a, b in zip(mm, inches):
            self.assertAlmostEqual(float(a["Rim wall: change, mm"]) / 25.4, float(b["Rim wall: change, in"]), 6)

    def test_seasons_agree_with_the_list(self):
        listed = {row["id"]: row["value"]
                  for row in json.loads(written("list", "--format", "json"))["dimensions"]}
        table = {row["Humidity of the air, %"]: row for row in rows("seasons")}
        shop, dry = table["50"], table["30"]
        self.assertAlmostEqual(float(shop["Long strings over fret 12, mm"]), listed["setup.action[12]"], 9)
        self.assertAlmostEqual(float(dry["Moisture of the wood, %"]), listed["move.moisture_low"], 9)
        self.assertAlmostEqual(float(dry["Board width at the rim: change, mm"]), listed["move.board_width_low"], 9)

    def test_text(self):
        for name in STUDIES:
            self.assertIn("[1]", written("study", name).decode())


class Pictures(unittest.TestCase):
    def test_svg(self):
        for name in STUDIES:
            text = written("study", name, "--format", "svg", "--size", "150x60").decode()
            self.assertRegex(text, r'<svg[^>]* width="150mm"[^>]* height="60mm"')
            self.assertNotIn("nan", text)

    def test_png(self):
        """200 dots to the inch: 7.874 to the mm."""
        picture = written("study", "head", "--format", "png", "--size", "127x50.8")
        self.assertEqual(picture[:8], b"\x89PNG\r\n\x1a\n")
        self.assertEqual(struct.unpack(">II", picture[16:24]), (1000, 400))

    def test_pdf(self):
        """72 points to the inch."""
        document = written("study", "pitch", "--format", "pdf", "--size", "254x127")
        box = re.search(rb"/MediaBox \[ ?0 0 ([0-9.]+) ([0-9.]+)", document)
        self.assertAlmostEqual(float(box[1]), 720, 3)
        self.assertAlmostEqual(float(box[2]), 360, 3)


class Refused(unittest.TestCase):
    def refused(self, words, *patterns):
        done = run(*words)
        self.assertEqual(done.returncode, 2)
        self.assertEqual(done.stdout, b"")
        self.assertEqual(done.stderr.count(b"\n"), 1)
        for pattern in patterns:
            self.assertIn(pattern, done.stderr.decode())

    def test_words(self):
        self.refused(["study"], "name of a study")
        self.refused(["study", "acton"], "action")
        self.refused(["study", "action", "--format", "gif"], "gif")
        self.refused(["study", "action", "--size", "10x10"], "180x80")
        self.refused(["study", "action", "--size", "180"], "180x80")
        self.refused(["study", "action", "a", "b"], "too many")

    def test_what_cannot_be_worked_out(self):
        self.refused(["study", "action", "--set", "rim.outer_diameter=120", "--set", "bridge.foot_spread=100"],
                     "can't be worked out")


if __name__ == "__main__":
    unittest.main()
