#!/usr/bin/python3
"""test_nothing_lost.py RIMWRIGHT [CASE...]: unsaved work comes back after a crash, a file that another program has
changed is not overwritten unasked, the version before the last save can be had back.  On the present display."""

import json
import os
import random
import signal
import sys
import time

sys.path.insert(0, os.path.join(os.path.dirname(os.path.abspath(__file__)), "..", "support"))
from cases import expect, finish, open_window, run  # noqa: E402
from drive import wait  # noqa: E402

RIMWRIGHT = sys.argv[1]
DIAMETER = "Rim outside diameter"
BEHIND = 5  # seconds that a draft may be behind the work
KILLS = 8


def start(*arguments, goes_on=False):
    return open_window(RIMWRIGHT, *arguments, goes_on=goes_on)


def set_diameter(window, value):
    if not window.has(DIAMETER):
        window.click("Rim")
    window.enter(DIAMETER, str(value))
    window.keys("Return")
    window.await_text(DIAMETER, str(value))


def kill(window):
    window.process.send_signal(signal.SIGKILL)
    window.process.wait(10)


def example(folder):
    path = os.path.join(folder, "mine.rimwright")
    with open(path, "w", encoding="utf-8") as file:
        os.spawnv(os.P_WAIT, "/bin/sh", ["sh", "-c", '"$0" example > "$1"', RIMWRIGHT, path])
        expect(os.path.getsize(path) > 0, "no example")
    return path


def diameter_in(path):
    with open(path, encoding="utf-8") as file:
        return json.load(file)["parameters"]["rim.outer_diameter"]


def case_killed_work_comes_back(folder):
    """Killed five seconds after a change: the next start says what was changed, and opens it so that it can be
    undone; the file on the disk is as it was."""
    path = example(folder)
    window = start(path)
    set_diameter(window, 301)
    time.sleep(BEHIND)
    kill(window)
    expect(diameter_in(path) == 279, "the file has changed by itself")

    window = start(goes_on=True)
    wait(lambda: "Unsaved work" in window.windows(), "the offer")
    window.await_words("Changed: Rim outside diameter$")
    window.click("Open it", window="Unsaved work")
    window.await_words("^301 mm, ")
    window.await_words("^Changes not saved$")
    window.keys("ctrl+s")
    wait(lambda: diameter_in(path) == 301, "the recovered work in its file")
    window.keys("ctrl+z")
    window.await_words("^279 mm, ")


def case_recovered_work_is_safe_at_once(folder):
    """Killed again right after it was opened, it is offered again."""
    window = start()
    set_diameter(window, 302)
    time.sleep(BEHIND)
    kill(window)
    window = start(goes_on=True)
    wait(lambda: "Unsaved work" in window.windows(), "the offer")
    window.click("Open it", window="Unsaved work")
    window.await_words("^302 mm, ")
    kill(window)
    window = start(goes_on=True)
    wait(lambda: "Unsaved work" in window.windows(), "the second offer")


def case_later_and_never(folder):
    """Put off, it is offered at the next start; deleted, no more."""
    window = start()
    set_diameter(window, 303)
    time.sleep(BEHIND)
    kill(window)
    for button in ("Later", "Delete it"):
        window = start(goes_on=True)
        wait(lambda: "Unsaved work" in window.windows(), "the offer")
        window.click(button, window="Unsaved work")
        wait(lambda: "Unsaved work" not in window.windows(), "the question to go")
        window.await_words("^279 mm, ")
        finish(window)
    window = start(goes_on=True)
    time.sleep(1)
    expect("Unsaved work" not in window.windows(), "deleted work is offered")


def case_saved_work_leaves_no_draft(folder):
    path = example(folder)
    window = start(path)
    set_diameter(window, 304)
    time.sleep(BEHIND)
    window.keys("ctrl+s")
    wait(lambda: diameter_in(path) == 304, "the save")
    window.await_words("^Saved$")
    kill(window)
    window = start(goes_on=True)
    time.sleep(1)
    expect("Unsaved work" not in window.windows(), "saved work is offered")


def case_killed_at_any_moment(folder):
    """What comes back is never more than five seconds old."""
    path = example(folder)
    dice = random.Random(5)
    for _ in range(KILLS):
        window = start(path)
        done = []
        end = time.monotonic() + dice.uniform(3, 8)
        value = 280
        while time.monotonic() < end:
            value += 1
            set_diameter(window, value)
            done.append((time.monotonic(), value))
        killed = time.monotonic()
        kill(window)
        least = max((value for when, value in done if when < killed - BEHIND), default=279)
        window = start(goes_on=True)
        if least == 279 and "Unsaved work" not in window.windows():
            finish(window)
            continue
        wait(lambda: "Unsaved work" in window.windows(), "the offer")
        window.click("Open it", window="Unsaved work")
        window.keys("ctrl+s")
        wait(lambda: diameter_in(path) != 279, "the save")
        expect(least <= diameter_in(path) <= value,
               "%g came back, %d to %d was due" % (diameter_in(path), least, value))
        window.keys("ctrl+z", "ctrl+s")
        wait(lambda: diameter_in(path) == 279, "the file as it was")
        finish(window)


def case_changed_on_the_disk(folder):
    """A file that another program has written is not overwritten unasked; what it wrote is kept even so."""
    path = example(folder)
    window = start(path)
    set_diameter(window, 305)
    with open(path, encoding="utf-8") as file:
        text = file.read()
    with open(path, "w", encoding="utf-8") as file:
        file.write(text.replace('"rim.outer_diameter": 279', '"rim.outer_diameter": 290'))
    window.keys("ctrl+s")
    wait(lambda: "Changed on the disk" in window.windows(), "the question")
    window.click("Cancel", window="Changed on the disk")
    wait(lambda: "Changed on the disk" not in window.windows(), "the question to go")
    expect(diameter_in(path) == 290, "overwritten after Cancel")
    window.keys("ctrl+s")
    wait(lambda: "Changed on the disk" in window.windows(), "the question")
    window.click("Overwrite", window="Changed on the disk")
    wait(lambda: diameter_in(path) == 305, "the save")
    expect(diameter_in(path + "~") == 290, "what the other program wrote is lost")
    set_diameter(window, 306)
    window.keys("ctrl+s")
    wait(lambda: diameter_in(path) == 306, "the next save, without a question")


def case_previous_version(folder):
    """The version before the last save comes back as a step that can be undone."""
    path = example(folder)
    window = start(path)
    set_diameter(window, 307)
    window.keys("ctrl+s")
    wait(lambda: diameter_in(path) == 307, "the save")
    window.click("Menu")
    window.activate("Back to the version before the last save", kind="menu item")
    window.await_text(DIAMETER, "279")
    window.keys("ctrl+z")
    window.await_text(DIAMETER, "307")


sys.exit(run(globals(), lambda folder: [folder], sys.argv[2:]))
