#!/usr/bin/python3
"""The command line against anything: test_cli_fuzz.py PROGRAM CORPORA [--seed N] [--runs N]

Command lines are made of its own words and of odd ones, then spoilt byte by byte; project files and tables of stock
come from the corpora of the fuzz targets.  Whatever is asked, the program neither crashes nor hangs: it ends with
status 0, with 1 where a verdict is asked for, or with 2 and one sentence about what is wrong.  A warning of GLib's is
a crash here.  The same seed gives the same command lines.
"""

import argparse
import os
import random
import subprocess
import sys
import tempfile
from collections import Counter
from pathlib import Path

TIMEOUT = 60
LONGEST = 4000

# Each command with what it takes, by and large.
BUILD = [b"--set", b"--measured", b"--help"]
LIST = BUILD + [b"--format", b"--units"]
COMMANDS = {
    b"list": LIST, b"steps": LIST, b"cut": LIST, b"check": LIST + [b"--remedies"],
    b"changes": BUILD + [b"--format"],
    b"spread": LIST + [b"--builds", b"--seed"],
    b"study": LIST + [b"--size"],
    b"what-if": LIST + [b"--size", b"--wanted"],
    b"tuning": LIST + [b"--size", b"--capo"],
    b"papers": BUILD + [b"--units", b"--paper", b"--only", b"--svg", b"--png", b"--record", b"--dpi", b"--hand",
                        b"--revision", b"--margin", b"--overlap", b"--bar-short", b"--bar-long"],
    b"parameters": [b"--format"],
    b"example": [b"--help"],
}
VERDICTS = (b"check", b"cut", b"what-if")  # commands whose status 1 is an answer

# Each option with values that it takes; None for a flag.
OPTIONS = {
    b"--set": [b"rim.wall=9/16 in", b"scale.length=660", b"rim.construction=staves", b"head.nominal=12 in",
               b"rim.outer_diameter=304", b"head.tension=5500", b"neck.wood=walnut_black", b"hooks.count=18"],
    b"--measured": [b"rim.wall=14.2", b"rim.outer_diameter=279.5 mm", b"rim.course_thickness=3;3.1;2.9"],
    b"--format": [b"text", b"json", b"csv", b"svg", b"png", b"pdf"],
    b"--units": [b"mm", b"inch", b"fraction", b"fraction-32", b"fraction-16"],
    b"--paper": [b"a4", b"letter", b"a3"],
    b"--only": [b"pot", b"segment", b"heel", b"cutting"],
    b"--svg": None, b"--png": None, b"--record": None, b"--remedies": None, b"--help": None,
    b"--dpi": [b"72", b"100"],
    b"--hand": [b"build", b"left", b"right"],
    b"--revision": [b"A", b"B2"],
    b"--margin": [b"10"], b"--overlap": [b"12"],
    b"--bar-short": [b"99.6"], b"--bar-long": [b"100.4"],
    b"--builds": [b"100", b"250"],
    b"--seed": [b"1", b"9223372036854775807"],
    b"--size": [b"180x80", b"60x60"],
    b"--wanted": [b"2", b"17 mm", b"-3", b"1e9"],
    b"--capo": [b"0", b"2", b"19", b"20", b"-1"],
}
STUDIES = [b"pitch", b"action", b"strings", b"head", b"hooks", b"seasons", b"temperament"]
ASKED = [b"setup.action[12]", b"bridge.sag", b"head.tap_frequency", b"bridge.compensation[3]", b"hooks.count"]
PARAMETERS = [b"bridge.height", b"neck.angle", b"head.tension", b"hooks.count", b"neck.wood"]
TUNINGS = [b"Double C", b"drop c", b"D4 B3 G3 C3 G4", b"Guitar", b"392;1;2;3;4"]
EXAMPLES = [b"twelve-inch", b"long-neck", b"tenor", b"as-built"]

ODD = [b"", b"-", b"--", b"=", b"==", b"-0", b"0", b"-1", b"nan", b"inf", b"-inf", b"1e999", b"1e-320", b"0x10",
       b"99999999999999999999", b"%s%n%d", b"%", b"a\nb", b"\t", b"\x1b[31m", b"\xff\xfe", b"\xc3", "é".encode(),
       "⅜ in".encode(), b"rim.wall", b"rim.wall=", b"=9", b"rim.wall=1/0", b"rim.course_thickness[0]=3",
       b"rim.course_thickness[99999999999]=3", b"180x", b"x80", b"1e5x1e5", b"9" * LONGEST, b"(" * LONGEST,
       b"/dev/null", b"/", b"/no/such/file.rimwright", b"a" * 300 + b".rimwright"]


class Maker:
    """Command lines by chance."""

    def __init__(self, seed, corpora, folder):
        self.chance = random.Random(seed)
        self.projects = sorted((corpora / "project").iterdir())
        self.tables = sorted((corpora / "shelf_csv").iterdir())
        self.folder = folder

    def spoil(self, word):
        """A word with a few bytes of it changed, lost, doubled or new; no word can hold a NUL."""
        word = bytearray(word)
        for _ in range(self.chance.randint(1, 3)):
            at = self.chance.randint(0, len(word))
            kind = self.chance.randrange(4)
            if kind == 0 and at < len(word):
                word[at] = self.chance.randint(1, 255)
            elif kind == 1:
                del word[at:at + self.chance.randint(1, 3)]
            elif kind == 2:
                word[at:at] = word[at // 2:at]
            else:
                word.insert(at, self.chance.randint(1, 255))
        return bytes(word[:LONGEST])

    def value(self, choices):
        """Of an option: mostly one that it takes, spoilt now and then, else an odd one."""
        luck = self.chance.random()
        if luck < 0.1:
            return self.chance.choice(ODD)
        word = self.chance.choice(choices)
        return self.spoil(word) if luck < 0.2 else word

    def project(self):
        """A copy of a project of the corpus, spoilt now and then: --record writes to it."""
        path = self.folder / "project.rimwright"
        whole = self.chance.choice(self.projects).read_bytes()
        path.write_bytes(self.spoil(whole) if self.chance.random() < 0.3 else whole)
        return os.fsencode(path)

    def option(self, command):
        """Mostly one that the command takes."""
        name = self.chance.choice(COMMANDS[command] if self.chance.random() < 0.9 else list(OPTIONS))
        values = OPTIONS[name]
        if self.chance.random() < 0.05:
            name = self.spoil(name)
        if values is None:
            return [name]
        if self.chance.random() < 0.3:
            return [name + b"=" + self.value(values)]
        return [name] + ([self.value(values)] if self.chance.random() < 0.97 else [])

    def words(self):
        """A command and what follows it."""
        command = self.chance.choice(list(COMMANDS))
        words = []
        for _ in range(self.chance.choice([0, 1, 1, 2, 2, 3, 5])):
            words += self.option(command)
        if command == b"papers" and self.chance.random() < 0.9:
            words += [b"--into", os.fsencode(self.folder / "papers")]
        if command == b"cut" and self.chance.random() < 0.8:
            words += [b"--shelf", os.fsencode(self.chance.choice(self.tables))]
        if command in (b"study", b"example") and self.chance.random() < 0.9:
            words.insert(0, self.value(STUDIES if command == b"study" else EXAMPLES))
        if command == b"what-if" and self.chance.random() < 0.9:
            words[:0] = [self.value(ASKED), self.value(PARAMETERS)]
        if command == b"tuning" and self.chance.random() < 0.9:
            words.insert(0, self.value(TUNINGS))
        if self.chance.random() < 0.5:
            words.append(self.chance.choice([b"-", self.project(), self.project(), self.chance.choice(ODD)]))
        return [command] + words

    def line(self):
        """The words, and what stands on standard input."""
        luck = self.chance.random()
        if luck < 0.03:
            return [b"stray" + self.spoil(b"word").translate(None, b"./")], b""
        return self.words(), self.chance.choice(self.projects).read_bytes()


def fault(command, done):
    """What is wrong with the way that a command ended; None if nothing is."""
    lines = done.stderr.decode("utf-8", "surrogateescape").split("\n")
    if done.returncode < 0:
        return "was ended by signal %d" % -done.returncode
    if done.returncode not in ((0, 1, 2) if command in VERDICTS else (0, 2)):
        return "ended with status %d" % done.returncode
    if done.returncode < 2:
        return "succeeded and complained" if done.stderr else None
    if len(lines) != 2 or lines[1] != "":
        return "did not say one line"
    if not lines[0].startswith("rimwright: ") or not lines[0].endswith(".") or len(lines[0]) < 20:
        return "did not say a sentence"
    if any("\udc80" <= letter <= "\udcff" for letter in lines[0]):
        return "did not speak UTF-8"
    return None


def main():
    parser = argparse.ArgumentParser()
    parser.add_argument("program")
    parser.add_argument("corpora", type=Path)
    parser.add_argument("--seed", type=int, default=8)
    parser.add_argument("--runs", type=int, default=300)
    options = parser.parse_args()
    env = {name: value for name, value in os.environ.items() if name not in ("DISPLAY", "WAYLAND_DISPLAY")}
    env.update(G_DEBUG="fatal-warnings", LC_ALL="C.UTF-8")
    program, ends, faults = os.path.abspath(options.program), Counter(), 0

    with tempfile.TemporaryDirectory() as folder:
        maker = Maker(options.seed, options.corpora, Path(folder))
        for number in range(options.runs):
            words, stdin = maker.line()
            try:
                done = subprocess.run([program, *words], input=stdin, capture_output=True, cwd=folder, env=env,
                                      timeout=TIMEOUT, check=False)
                what = fault(words[0], done)
                ends[done.returncode] += 1
            except subprocess.TimeoutExpired:
                done, what = None, "did not end within %d s" % TIMEOUT
            if what is not None:
                faults += 1
                print("run %d: %s\n  %r\n  %r" % (number, what, [word[:200] for word in words],
                                                 done.stderr[-1000:] if done else b""))
    print("%d command lines, seed %d: %s" % (options.runs, options.seed, ", ".join(
        "%d with status %d" % (ends[status], status) for status in sorted(ends))))
    # A chance that only ever fails, or never does, would prove little.
    return 1 if faults > 0 or min(ends[0], ends[2]) < options.runs // 10 else 0


if __name__ == "__main__":
    sys.exit(main())
