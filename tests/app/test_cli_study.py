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


def listed(*options):
    return {row["id"]: row["value"] for row in json.loads(written("list", "--format", "json", *options))["dimensions"]}


class WhatIf(unittest.TestCase):
    def table(self, *words):
        return list(csv.DictReader(io.StringIO(written("what-if", *words, "--format", "csv").decode(), newline="")))

    def test_solves(self):
        """The value that is told gives what was wanted, put into the build that is held."""
        rows_ = self.table("setup.action[12]", "bridge.height", "--wanted", "2 mm", "--set", "neck.solve_for=action")
        found, = (row for row in rows_ if row["What gives it, mm"] != "")
        height = found["Bridge height, mm"]
        self.assertAlmostEqual(float(found["What gives it, mm"]), 2, 6)
        self.assertAlmostEqual(listed("--set", "neck.solve_for=action", "--set", "bridge.height=" + height)
                               ["setup.action[12]"], 2, 6)

    def test_curve(self):
        """Each row of the curve is a build, the present one among them."""
        rows_ = self.table("head.tap_frequency", "head.tension")
        now, = (row for row in rows_ if row["Now, Hz"] != "")
        self.assertAlmostEqual(float(now["Now, Hz"]), listed()["head.tap_frequency"], 9)
        self.assertAlmostEqual(float(now["Head tension, N/m"]), 6000, 9)
        # f goes with the root of the tension.
        for row in rows_:
            share = float(row["Head tension, N/m"]) / 6000
            self.assertAlmostEqual(float(row["Tap frequency, Hz"]), float(now["Now, Hz"]) * share ** 0.5, 6)

    def test_count(self):
        text = written("what-if", "head.load_per_hook", "hooks.count", "--wanted", "220").decode()
        self.assertIn("comes nearest", text)

    def test_out_of_reach(self):
        done = run("what-if", "head.load_per_hook", "hooks.count", "--set", "hooks.count=18", "--wanted", "220",
                   "--format", "svg")
        self.assertEqual(done.returncode, 0)
        done = run("what-if", "bridge.sag", "head.tension", "--wanted", "500")
        self.assertEqual(done.returncode, 1)
        self.assertIn("out of reach", done.stdout.decode())

    def test_refused(self):
        for words, said in ((["setup.action[12]"], "a result and a parameter"),
                            (["setup.acton[12]", "bridge.height"], "setup.action"),
                            (["setup.action[12]", "bridge.heigth"], "bridge.height"),
                            (["setup.action[12]", "neck.wood"], "neck.wood"),
                            (["rim.stave.length", "bridge.height"], "no rim.stave.length"),
                            (["setup.action[12]", "bridge.height", "--wanted", "two"], "two")):
            done = run("what-if", *words)
            self.assertEqual((done.returncode, done.stdout, done.stderr.count(b"\n")), (2, b"", 1), words)
            self.assertIn(said, done.stderr.decode())


class Tuning(unittest.TestCase):
    def table(self, *words):
        return list(csv.DictReader(io.StringIO(written("tuning", *words, "--format", "csv").decode(), newline="")))

    def test_by_name_and_by_notes(self):
        self.assertEqual(self.table("drop c"), self.table("D4 B3 G3 C3 G4"))

    def test_pull(self):
        """The fourth string from D to C: two semitones, so 2^(-4/12) of the pull."""
        fourth = self.table("Drop C")[3]
        self.assertAlmostEqual(float(fourth["Pull then, N"]), float(fourth["Pull now, N"]) * 2 ** (-4 / 12), 6)

    def test_capo(self):
        """On fret 2 every note is two semitones up, A4 for the short string; its spike stands behind fret 7."""
        self.assertAlmostEqual(float(self.table("Open G", "--capo", "2")[4]["Open note with the capo, Hz"]), 440, 6)
        text = written("tuning", "Open G", "--capo", "2").decode()
        self.assertIn("behind fret 7, %.2f mm" % listed()["frets.position[7]"], text)
        self.assertNotIn("capo", written("tuning", "Open G").decode())

    def test_refused(self):
        for words, said in (([], "a name or notes"), (["D4 B3"], "5 notes are wanted"), (["D4 B3 G3 D3 H4"], "H4"),
                            (["Open G", "--capo", "20"], "from 0 to 19")):
            done = run("tuning", *words)
            self.assertEqual((done.returncode, done.stdout, done.stderr.count(b"\n")), (2, b"", 1), words)
            self.assertIn(said, done.stderr.decode())


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
