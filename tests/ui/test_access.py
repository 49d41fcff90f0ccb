#!/usr/bin/python3
"""test_access.py RIMWRIGHT: a whole design, from a new build to its papers, by what a screen reader and a switch can
do: every control is found by its name, pressed by its action and written into as text.  No pointer, no key."""

import json
import os
import re
import sys
import time
import warnings

sys.path.insert(0, os.path.join(os.path.dirname(os.path.abspath(__file__)), "..", "support"))
from cases import expect, open_window, run  # noqa: E402
from drive import asked, interfaces, name_of, place, role, wait, walk  # noqa: E402

warnings.simplefilter("ignore", DeprecationWarning)
RIMWRIGHT = sys.argv[1]
DESIGN = [  # group, value, what is written, what the file holds
    ("Scale and frets", "Scale length", "660", ("scale.length", 660)),
    ("Scale and frets", "Number of frets", "20", ("frets.count", 20)),
    ("Rim", "Rim outside diameter", "11 13/16 in", ("rim.outer_diameter", 300.0375)),
    ("Rim", "Wall thickness", "15", ("rim.wall", 15)),
    ("Hooks and shoes", "Number of hooks", "20", ("hooks.count", 20)),
    ("Bridge and tailpiece", "Bridge height", "16.5", ("bridge.height", 16.5)),
]


def editable(window, name):
    """The text of that name that can be written into."""
    return wait(lambda: next((node for node, _ in walk(window.root) if "EditableText" in interfaces(node)
                              and name_of(node) == name and min(place(node)[2:]) > 0), None), "“%s”" % name)


def write(window, name, text):
    node = editable(window, name)
    expect(asked(node.get_editable_text_iface().set_text_contents, text), "“%s” takes no text" % name)
    asked(node.get_action_iface().do_action, 0)


def open_group(window, group, value):
    if not any(name_of(node) == value and "EditableText" in interfaces(node) and min(place(node)[2:]) > 0
               for node, _ in walk(window.root)):
        window.activate(group)


def design(window):
    for group, value, text, _ in DESIGN:
        open_group(window, group, value)
        write(window, value, text)
        time.sleep(0.3)


def read_what_follows(window):
    """The number of a dimension, and a finding, are there to be read."""
    window.activate("Dimensions")
    write(window, "Find a dimension", "rim.circumference")
    window.await_words("^942.6")  # pi 300.0375 = 942.596
    window.activate(next(name_of(node) for node, _ in walk(window.root) if name_of(node).startswith("Findings")))
    window.await_words("^Note$")


def answer_file(window, title, path):
    wait(lambda: title in window.windows(), "the dialog " + title)
    time.sleep(0.5)
    write(window, "Name:", path)
    if title in window.windows():
        window.activate("Save", window=title)
    wait(lambda: title not in window.windows(), "the dialog to go")


def save(window, path):
    window.activate("Save")
    answer_file(window, "Save the build", path)
    wait(lambda: os.path.exists(path), "the file")
    with open(path, encoding="utf-8") as file:
        parameters = json.load(file)["parameters"]
    for _, value, _, (parameter, number) in DESIGN:
        expect(abs(parameters[parameter] - number) < 1e-9, "%s is %s" % (value, parameters[parameter]))


def papers(window, path):
    window.activate("Papers")
    wait(lambda: "Papers" in window.windows(), "the window of the papers")
    window.activate(next(name_of(node) for node, way in walk(window.root) if re.match("Save", name_of(node))
                         and role(node) == "push button" and len(way) > 1 and name_of(way[1]) == "Papers"))
    answer_file(window, "Save the papers", path)
    wait(lambda: os.path.exists(path), "the papers")
    with open(path, "rb") as file:
        expect(file.read(5) == b"%PDF-", "no PDF")


def case_from_a_new_build_to_its_papers(window, folder):
    window.activate("Menu")
    window.activate("New", kind="menu item")
    design(window)
    read_what_follows(window)
    save(window, os.path.join(folder, "mine.rimwright"))
    papers(window, os.path.join(folder, "mine.pdf"))
    expect(window.nameless() == [], "without a name: %s" % window.nameless())


sys.exit(run(globals(), lambda folder: [open_window(RIMWRIGHT), folder]))
