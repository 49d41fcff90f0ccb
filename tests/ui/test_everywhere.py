#!/usr/bin/python3
"""test_everywhere.py RIMWRIGHT [CASE...]: goes through every page, window and question, on the present display and in its
language.  Nothing may be complained of on standard error, and nothing may be without a name."""

import csv
import gettext
import os
import subprocess
import sys

HERE = os.path.dirname(os.path.abspath(__file__))
sys.path.insert(0, os.path.join(HERE, "..", "support"))
import visit  # noqa: E402
from cases import expect, run  # noqa: E402
from drive import CONTROLS, Program, asked, name_of, place, wait  # noqa: E402

RIMWRIGHT = sys.argv[1]
ROOT = os.path.join(HERE, "..", "..")
BUTTONS = CONTROLS | {"toggle button", "radio button", "menu item", "check menu item"}


def speak(folder):
    """The program's own words in the language of the display."""
    code = os.environ.get("LC_ALL", "C")[:2]
    source = os.path.join(ROOT, "po", code + ".po")
    if not os.path.exists(source):
        return visit.english
    target = os.path.join(folder, code, "LC_MESSAGES")
    os.makedirs(target)
    subprocess.run(["msgfmt", "-o", os.path.join(target, "rimwright.mo"), source], check=True)
    os.environ["RIMWRIGHT_LOCALE_DIR"] = folder
    return gettext.translation("rimwright", folder, [code]).gettext


def start(folder):
    say = speak(folder)
    window = Program(RIMWRIGHT)
    wait(lambda: window.has(say("Rim")), "the form")
    return window, say


def unnamed(window):
    """Controls that are to be seen and have no name."""
    return ["%s at %s" % (kind, place(node)) for node, kind, _ in visit.shown(window.root)
            if kind in BUTTONS and not name_of(node)]


def case_nothing_is_complained_of(window, say):
    for where in visit.everything(window, say):
        expect(window.process.poll() is None, where + " has ended the program")
        expect(window.errors == "", "%s: %s" % (where, window.errors))


def case_everything_has_a_name(window, say):
    for where in visit.everything(window, say):
        without = unnamed(window)
        expect(not without, "%s: without a name: %s" % (where, without))


def described(window):
    """What is said of every control that takes a value, by its name."""
    return {name_of(node): asked(node.get_description, default="") for node, kind, _ in visit.shown(window.root)
            if kind in ("text", "entry", "combo box")}


def case_every_parameter_is_explained(window, say):
    """Its row in the form says to a screen reader in what unit it is, and what it means."""
    table = subprocess.run([RIMWRIGHT, "parameters", "--format", "csv"], check=True, capture_output=True, text=True)
    rows = list(csv.DictReader(table.stdout.splitlines()))
    expect(len(rows) > 250, "only %d parameters" % len(rows))
    for _ in visit.form(window):
        found = described(window)
    for row in (row for row in rows if row["kind"] != "list" or row["unit"]):
        said = found.get(row["label"])
        expect(row["meaning"], row["id"] + " has no line of help")
        expect(said is not None, "“%s” is not in the form" % row["label"])
        unit = {"deg": "°", "degC": "°C", "kg/m3": "kg/m³"}.get(row["unit"], row["unit"])
        expect(said.startswith(unit) and len(said) > len(unit), "“%s” is said to be “%s”" % (row["label"], said))


if __name__ == "__main__":
    sys.exit(run(globals(), start, sys.argv[2:]))
