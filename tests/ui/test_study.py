#!/usr/bin/python3
"""test_study.py RIMWRIGHT [CASE...]: works with the studies of the set-up by pointer and keys, on the present display.

What is expected is worked out here, from the definitions, or is what the command line says of the same build, which
is tested apart.
"""

import csv
import io
import math
import os
import re
import subprocess
import sys
import tempfile
import time

sys.path.insert(0, os.path.join(os.path.dirname(os.path.abspath(__file__)), "..", "support"))
from cases import expect, open_window, run  # noqa: E402
from drive import asked, name_of, place, role, wait, walk, x  # noqa: E402

RIMWRIGHT = sys.argv[1]
STUDIES = ["Pitch of the frets", "Action along the neck", "Pull and stress of the strings", "Sag of the head",
           "Hooks and tightening", "Movement over the seasons", "Notes and slots against equal temperament", "What if",
           "Another tuning"]


def listed(name, *options):
    """A study as the command line writes it: a list of rows, by the titles of columns."""
    text = subprocess.run([RIMWRIGHT, "study", name, "--format", "csv", *options], check=True, capture_output=True,
                          text=True).stdout
    return list(csv.DictReader(io.StringIO(text)))


def click_at(spot):
    x("xdotool", "mousemove", "--sync", str(spot[0]), str(spot[1]), "click", "1")
    time.sleep(0.2)


def open_page(window):
    """The tab of the drawer, not the group of the form that is called the same."""
    tab = [found for found in walk(window.root) if role(found[0]) == "push button" and name_of(found[0]) == "Set-up"]
    click_at(window.on_screen(*tab[-1]))
    wait(lambda: window.has("Study", "combo box"), "the studies")


def choose(window, drop_down, number):
    """An item by its place: what is in a list that hangs out can't be pointed at."""
    window.click(drop_down, "combo box")
    time.sleep(0.4)
    window.keys("Home", *["Down"] * number)
    window.keys("Return")
    time.sleep(0.3)


def study(window, title):
    choose(window, "Study", STUDIES.index(title))
    return wait(lambda: plot(window, title), "the plot “%s”" % title)


def plot(window, title):
    for node, path in walk(window.root):
        if role(node) == "image" and name_of(node) == title and min(place(node)[2:]) > 0:
            return node, path
    return None


def heard(window, title):
    found = plot(window, title)
    return asked(found[0].get_description, default="").replace("\u00a0", " ") if found else ""


def case_walk_with_keys(window):
    """Arrows go from number to number, and what is heard is the number of the table."""
    title = "Action along the neck"
    node, path = study(window, title)
    click_at(window.on_screen(node, path))
    window.keys("Escape")  # what the pointer tells
    rows = listed("action")
    column = "Long strings, strings on, mm"
    first = next(i for i, row in enumerate(rows) if row[column])
    for key, row in (("Home", first), ("Right", first + 1), ("Right", first + 2), ("End", len(rows) - 1)):
        window.keys(key)
        words = "Fret %s · Long strings, strings on: %.2f mm" % (rows[row]["Fret"], float(rows[row][column]))
        wait(lambda: heard(window, title) == words, "“%s”, not “%s”" % (words, heard(window, title)))
    window.keys("Down")
    wait(lambda: "neck unbent" in heard(window, title), "the next line")
    window.keys("Escape")
    wait(lambda: heard(window, title).startswith("Strings over the frets: from"), "the whole plot")


def case_point_at_a_number(window):
    """The pointer over a bar tells it, and away from the plot nothing is told."""
    title = "Pull and stress of the strings"
    node, path = study(window, title)
    middle, box = window.on_screen(node, path), place(node)
    x("xdotool", "mousemove", "--sync", str(middle[0] - box[2] // 2 + 95), str(middle[1]))
    pull = float(listed("strings")[0]["Pull, N"])
    words = "1 D4 · Pull: %.1f N" % pull
    wait(lambda: heard(window, title) == words, "“%s”, not “%s”" % (words, heard(window, title)))
    x("xdotool", "mousemove", "--sync", str(middle[0]), str(middle[1] - box[3]))
    wait(lambda: heard(window, title).startswith("Pull: from"), "the whole plot")


def case_every_study_is_heard(window):
    """Each plot has a name and a summary, and each table the rows of the study."""
    for title in STUDIES:
        study(window, title)
        wait(lambda: re.search(r": from .+ to ", heard(window, title)), "what “%s” says" % title)
    expect(window.nameless() == [], "without a name: %s" % window.nameless())


def case_what_if(window):
    """The pull of all strings goes by the square of the scale: what gives 10 % more is sqrt (1.1) of it."""
    study(window, "What if")
    total = sum(float(row["Pull, N"]) for row in listed("strings"))
    choose(window, "Result", 7)
    window.await_text("Result", "String pull in all", "combo box")
    choose(window, "Parameter", 0)
    window.await_text("Parameter", "Scale length", "combo box")
    window.enter("Wanted", "%.6f" % (1.1 * total))
    window.await_words("^%.2f mm gives it; now it is 650.00 mm" % (650 * math.sqrt(1.1)))
    window.click("Apply")
    window.await_words("^%.2f mm gives it; now it is %.2f mm" % (650 * math.sqrt(1.1), 650 * math.sqrt(1.1)))
    window.enter("Wanted", "1e6")
    window.await_words("^Out of reach: this gives ")
    window.keys("ctrl+z")
    window.click("Scale and frets")
    window.await_text("Scale length", "650")


def case_another_tuning(window):
    """The pull goes by the square of the frequency: the 2nd string a semitone up, put into the build."""
    study(window, "Another tuning")
    before = float(listed("strings")[1]["Pull, N"])
    window.enter("Notes", "D4 C4 G3 D3")
    window.await_words("^5 notes are wanted")
    window.enter("Notes", "D4 C4 G3 D3 G4")
    window.await_words("^Action at fret 12: .+ was 2.40 mm")
    window.click("Table")
    window.await_words("^%.1f$" % (before * 2 ** (2 / 12)))
    window.click("Apply")
    window.await_no_words("^%.1f$" % before)
    window.keys("ctrl+z")
    window.await_words("^%.1f$" % before)


def case_another_temperament(window):
    """A just scale in slots of each string's own, put into the build, and taken back."""
    study(window, "Notes and slots against equal temperament")
    choose(window, "Temperament", 1)
    window.await_text("Temperament", "Just, five-limit", "combo box")
    window.await_words("^Slots move by up to ")
    choose(window, "Slots", 1)
    window.await_words("frets are in pieces")
    window.click("Apply")
    window.await_no_words("^Slots move by up to ")
    window.click("Scale and frets")
    wait(lambda: window.text("Steps off equal temperament").startswith("11.73; 3.91; 15.64"), "the list of steps")
    window.keys("ctrl+z")
    wait(lambda: window.text("Steps off equal temperament") == "0", "no steps")


def case_set_by_name(window):
    """The menu beside the string set puts a named set into the build; undo takes it back."""
    window.click("Nut and strings")
    window.keys("ctrl+f", "ctrl+a")
    window.write("String set")
    time.sleep(0.5)  # the filter waits for a pause
    before = window.text("String set")
    window.click("Sets of strings by name")
    time.sleep(0.4)
    window.keys("End", "Return")
    wait(lambda: window.text("String set") != before, "another set")
    window.keys("ctrl+z")
    window.await_text("String set", before)


def case_save(window):
    """What the menu saves is what the command line writes."""
    study(window, "Pull and stress of the strings")
    with tempfile.TemporaryDirectory() as folder:
        path = os.path.join(folder, "pulls.csv")
        window.click("Save or print the study")
        time.sleep(0.4)
        window.keys("Down", "Down", "Down", "Return")
        window.answer_file("Save the study", path, "ctrl+a")
        wait(lambda: os.path.exists(path), "the file")
        with open(path, encoding="utf-8", newline="") as file:
            saved = list(csv.DictReader(file))
    expect(saved == listed("strings"), "the file says %s" % saved)


def start(_):
    window = open_window(RIMWRIGHT)
    open_page(window)
    return [window]


sys.exit(run(globals(), start, sys.argv[2:]))
