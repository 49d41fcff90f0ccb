#!/usr/bin/python3
"""test_ledger.py RIMWRIGHT [CASE...]: measures, marks as made and asks what has changed, as a maker does, on the
present display.

Each case starts the program anew, and the program must not have written a word to standard error.  Numbers that are
expected are worked out here, from the definitions, not taken from the program.
"""

import json
import math
import os
import subprocess
import sys
import time

sys.path.insert(0, os.path.join(os.path.dirname(os.path.abspath(__file__)), "..", "support"))
from cases import expect, open_window, run  # noqa: E402
from drive import Failure, place, wait  # noqa: E402

RIMWRIGHT = sys.argv[1]
RIM = "Measured: Rim outside diameter"


def show_step(window, title):
    """Opens the page of steps and walks the list down to a step."""
    window.click("Steps")
    window.await_words("^Known first: ")
    window.click_words("^[0-9]+  ")
    window.keys("Home")
    for _ in range(21):
        if window.says("^%s$" % title):
            return
        window.keys("Down")
        time.sleep(0.1)
    raise Failure("no step " + title)


def measure(window, name, text, button="Mark as made"):
    """Turns the wheel until an entry can be seen, and types into it."""
    spot = window.point(button)
    for _ in range(20):
        node, path = window.find(name)
        x, y, width, height = place(node)
        frame = place((path + (node,))[1])
        if y + height < frame[3] - 60:
            break
        subprocess.run(["xdotool", "mousemove", str(spot[0] - 100), str(spot[1]), "click", "5"], check=True)
        time.sleep(0.3)
    window.enter(name, text)
    window.keys("Return")


def case_readings_go_through(window, path):
    """Three readings of a rim: their mean and spread are told, and the tape round it is pi times the mean."""
    show_step(window, "Turn the rim")
    measure(window, RIM, "279.4; 279.0; 279.5")
    window.await_words(r"mean 279\.30 mm, spread 0\.50 mm; 0\.30 mm over")
    window.click("Dimensions")
    window.enter("Find a dimension", "rim.circumference")
    window.await_words("^%.2f$" % (math.pi * 279.3))
    window.keys("ctrl+z")


def case_bad_reading_is_refused(window, path):
    show_step(window, "Turn the rim")
    measure(window, RIM, "279.4; 27x")
    window.await_words("“x”")
    expect(window.says("^Saved$"), "a refused reading has changed the project")


def case_made_part_stays(window, path):
    """A rim that is made keeps its size when the design is changed; taking the mark back lets it follow; each is one
    step of undo."""
    show_step(window, "Turn the rim")
    window.click("Mark as made")
    window.await_words("its sizes are fixed")
    window.click("Rim")
    window.enter("Rim outside diameter", "300")
    window.keys("Return")
    window.await_words("^Made, 279 mm$")
    window.await_words("^279 mm, 10 segments")
    show_step(window, "Turn the rim")
    window.click("Not made after all")
    window.await_words("^300 mm, 10 segments")
    window.keys("ctrl+z")
    window.await_words("^279 mm, 10 segments")


def case_next_step_follows(window, path):
    """The first step is the one that can be done; marked as made it makes way for the second."""
    window.click("Steps")
    window.await_words("^Choose head, scale and bridge$")
    window.click("Mark as made")
    window.await_words("^Cut the blanks$")
    window.await_words("^Can be done now$")


def case_since_the_last_papers(window, path):
    """Papers leave; the rim comes out larger; the page tells of the papers that are out of date."""
    window.click("Steps")
    window.click("Shown")
    time.sleep(0.3)
    window.keys("Down", "Return")
    window.await_words("^No papers have left yet")
    window.click("All papers left today")
    window.await_words("^Nothing has changed since the papers of ")
    window.click("Rim")
    window.enter("Rim outside diameter", "280")
    window.keys("Return")
    window.await_words("numbers have changed; papers out of date: ")
    window.await_words("^out of date: ")


def case_kept_in_the_file(window, path):
    """A rim that is marked as made and then measured: what belongs to it goes with the reading, and is kept so."""
    show_step(window, "Turn the rim")
    window.click("Mark as made")
    window.await_words("its sizes are fixed")
    measure(window, RIM, "279.4; 279.0", "Not made after all")
    window.await_words(r"mean 279\.20 mm")
    window.keys("ctrl+s")
    wait(lambda: "made" in json.load(open(path, encoding="utf-8")), "the file")
    project = json.load(open(path, encoding="utf-8"))
    expect(project["measured"][0]["readings"] == [279.4, 279.0], "the readings are others")
    expect(project["made"][0]["step"] == "turn", "another step is made")
    expect(abs(project["made"][0]["values"]["rim.circumference"] - math.pi * 279.2) < 1e-9, "another rim is made")


def start(folder):
    """A window on an empty project, and its file."""
    path = os.path.join(folder, "build.rimwright")
    with open(path, "w", encoding="utf-8") as file:
        file.write('{"rimwright": 1}')
    return open_window(RIMWRIGHT, path), path


sys.exit(run(globals(), start, sys.argv[2:]))
