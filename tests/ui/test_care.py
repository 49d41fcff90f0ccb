#!/usr/bin/python3
"""test_care.py RIMWRIGHT [CASE...]: works on the page of care as a maker does, on the present display.

Numbers that are expected are worked out here, or asked of the command line.
"""

import csv
import json
import math
import os
import subprocess
import sys
import tempfile
import time

sys.path.insert(0, os.path.join(os.path.dirname(os.path.abspath(__file__)), "..", "support"))
from cases import expect, open_window, run  # noqa: E402
from drive import wait  # noqa: E402

RIMWRIGHT = sys.argv[1]


def spread(*arguments):
    answer = subprocess.run([RIMWRIGHT, "spread", "--format", "json", *arguments], capture_output=True, text=True,
                            check=True)
    return json.loads(answer.stdout)


def page(window, place):
    """Chooses the place-th page of the list, from 0."""
    window.click("Page of care")
    time.sleep(0.4)
    window.keys("Home", *["Down"] * place, "Return")


def sentence(answer):
    """How the page begins, for the numbers of the command line."""
    shim = answer["shim"]
    return r"^Of %d builds, %.1f ± %.1f %% want a shim" % (answer["builds"], 100 * shim["value"], 100 * shim["error"])


def enter(window, name, text):
    window.enter(name, text)
    window.keys("Return")


def case_same_as_command_line(window):
    """The same seed gives the same numbers here and there."""
    window.click("Care")
    window.await_words(sentence(spread()))
    enter(window, "Builds", "2000")
    window.await_words(sentence(spread("--builds", "2000")))
    enter(window, "Seed", "7")
    window.await_words(sentence(spread("--builds", "2000", "--seed", "7")))


def used(answer, size):
    """The share of a limit as the table shows it."""
    return "^%.0f$" % (100 * next(cut["uses_up"] for cut in answer["cuts"] if cut["id"] == size))


def case_care_follows_the_shop(window):
    """Mitres twice as far off use up twice as much of their limit, 2 (Ro + a) N times the error; one step of undo."""
    window.click("Care")
    window.click("Table")
    gap = 2 * (279 / 2 + 3) * 10 * math.pi / 180
    window.await_words("^%.0f$" % (100 * gap * 0.1 / 0.15))
    page(window, 3)
    enter(window, "Setting a mitre", "0.2")
    page(window, 0)
    window.await_words("^%.0f$" % (100 * gap * 0.2 / 0.15))
    window.await_words("^fit, don’t measure$")
    window.keys("ctrl+z")
    window.await_words("^%.0f$" % (100 * gap * 0.1 / 0.15))


def case_limits(window):
    """An action that may be off by more leaves the neck angle more room."""
    window.click("Care")
    window.click("Table")
    window.await_words(used(spread(), "neck.angle"))
    page(window, 4)
    enter(window, "Action may be off by", "1")
    page(window, 0)
    window.await_words(used(spread("--set", "tolerance.action=1"), "neck.angle"))


def case_tables(window):
    """Every chart has its numbers behind it."""
    window.click("Care")
    window.click("Table")
    window.await_words("^Uses up, %$")
    page(window, 1)
    window.await_words("^Standard deviation$")
    window.await_words("^Bridge height that sets the action right$")
    page(window, 2)
    window.await_words("^Share of the spread, %$")
    window.await_words("^Cutting the heel$")


def case_save(window):
    """What is shown goes into a file that other programs read."""
    with tempfile.TemporaryDirectory() as folder:
        path = os.path.join(folder, "care.csv")
        window.click("Care")
        window.await_words(sentence(spread()))
        window.click("Save CSV…")
        window.answer_file("Save the table", path, "ctrl+a")
        wait(lambda: os.path.exists(path), "the file")
        with open(path, encoding="utf-8", newline="") as file:
            rows = {row["id"]: row for row in csv.DictReader(file)}
        told = {cut["id"]: cut for cut in spread()["cuts"]}
        expect(abs(float(rows["neck.angle"]["asked"]) - told["neck.angle"]["asked"]) < 1e-9, "the asked tolerance")
        expect(rows["rim.segment.mitre"]["by_fitting"] == "yes", "what is to be fitted")


def case_stop(window):
    """Builds that take long are broken off, and the window goes on meanwhile."""
    window.click("Care")
    window.await_words(sentence(spread()))
    enter(window, "Builds", "1000000")
    window.find("Stop")
    window.click("Rim")  # the form answers while builds are made
    window.await_words("Wall thickness")
    window.click("Stop")
    wait(lambda: not window.has("Stop"), "the builds to stop")
    window.await_words(sentence(spread()))


def case_impossible(window):
    """A build that can't be strung up says so, and comes back with undo."""
    window.click("Care")
    window.await_words(sentence(spread()))
    window.click("Bridge and tailpiece")
    enter(window, "Bridge beyond the rim’s centre" if window.has("Bridge beyond the rim’s centre")
          else "Bridge beyond the rim's centre", "145")
    window.await_words("The findings say why")
    window.keys("ctrl+z")
    window.await_words(sentence(spread()))


sys.exit(run(globals(), lambda _: [open_window(RIMWRIGHT)], sys.argv[2:]))
