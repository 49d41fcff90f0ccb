#!/usr/bin/python3
"""test_remedies.py RIMWRIGHT [CASE...]: findings opened, remedies tried and applied, findings accepted, on the present
display with real events.  What comes of it is read from the file that the program saves.
"""

import json
import os
import subprocess
import sys
import time

sys.path.insert(0, os.path.join(os.path.dirname(os.path.abspath(__file__)), "..", "support"))
from cases import expect, run  # noqa: E402
from drive import Program, name_of, place, role, states, wait, walk, x  # noqa: E402

RIMWRIGHT = sys.argv[1]
FINDING = "The shoe nearest to the neck clears the heel"
REMEDY = "Start the hooks 2.5 mm farther from the heel"
REASON = "Reason to leave it as it is"


class Bench(Program):
    """The program on a build whose first hook stands too near to the heel."""

    def __init__(self, folder):
        self.path = os.path.join(folder, "build.rimwright")
        with open(self.path, "w", encoding="utf-8") as file:
            json.dump({"rimwright": 1, "name": "Bench", "parameters": {"hooks.heel_gap": 10}}, file)
        super().__init__(RIMWRIGHT, self.path)
        self.await_words("1 stop|caution")
        self.await_words(FINDING)

    def saved(self):
        """The project as the file has it, saved with the keys."""
        stamp = os.stat(self.path).st_mtime_ns
        self.keys("ctrl+s")
        end = time.monotonic() + 1.5
        while os.stat(self.path).st_mtime_ns == stamp and time.monotonic() < end:
            time.sleep(0.05)
        with open(self.path, encoding="utf-8") as file:
            return json.load(file)

    def gap(self):
        return self.saved()["parameters"]["hooks.heel_gap"]

    def open_finding(self):
        self.click_words(FINDING)
        self.find(REMEDY)

    def to_the_end(self):
        """Turns the wheel over the findings until the last is in view."""
        tab = next(found for found in walk(self.root) if name_of(found[0]).startswith("Findings ")
                   and min(place(found[0])[2:]) > 0)
        spot = self.on_screen(*tab)
        x("xdotool", "mousemove", str(spot[0] + 200), str(spot[1] + 80))
        for _ in range(30):
            x("xdotool", "click", "5")
        time.sleep(0.5)

    def drawing(self):
        """What the drawing looks like, the pointer being anywhere."""
        node, path = next(found for found in walk(self.root)
                          if role(found[0]) == "image" and name_of(found[0]).startswith("Drawing: "))
        middle, box = self.on_screen(node, path), place(node)
        part = "%dx%d+%d+%d" % (box[2], box[3], middle[0] - box[2] // 2, middle[1] - box[3] // 2)
        return subprocess.run(["import", "-window", "root", "-crop", part, "rgb:-"], check=True,
                              capture_output=True).stdout

    def still_drawing(self):
        """The same, once it has come to rest."""
        seen = [self.drawing()]

        def rests():
            time.sleep(0.2)
            seen.append(self.drawing())
            return seen[-1] == seen[-2]

        wait(rests, "the drawing to come to rest")
        return seen[-1]


def differ(one, other):
    """Whether two pictures show something else, apart from how finely it is drawn."""
    return len(one) != len(other) or any(abs(a - b) > 48 for a, b in zip(one, other))


def case_applied_is_one_step(bench):
    """Pressed, a remedy changes the design and the finding goes; one undo takes it back."""
    bench.open_finding()
    bench.click(REMEDY)
    bench.await_no_words(FINDING)
    expect(bench.gap() == 12.5, "the file has %s" % bench.gap())
    bench.keys("ctrl+z")
    bench.await_words(FINDING)
    expect(bench.gap() == 10, "the file has %s" % bench.gap())


def case_tried_on_the_drawing(bench):
    """Pointed at, a remedy is shown as a ghost, and changes nothing; away from it the ghost goes."""
    bench.open_finding()
    bench.point("Save")
    before = bench.still_drawing()
    bench.point(REMEDY)
    wait(lambda: differ(bench.drawing(), before), "the ghost")
    expect(bench.gap() == 10, "trying changed the file: %s" % bench.gap())
    bench.point("Save")
    wait(lambda: not differ(bench.drawing(), before), "the ghost to go")


def case_by_keyboard(bench):
    """Enter opens a finding, Tab goes on to what helps, Enter applies it."""
    bench.open_finding()
    row = next(node for node, _ in walk(bench.root)
               if role(node) == "list item" and name_of(node).find(FINDING) >= 0)
    wait(lambda: "focused" in states(row), "the finding to have the focus")
    bench.keys("Return")
    wait(lambda: not bench.has(REMEDY), "the finding to close")
    bench.keys("Return")
    bench.find(REMEDY)
    bench.keys("Tab")
    wait(lambda: "focused" in states(bench.find(REMEDY)[0]), "the remedy to have the focus")
    bench.keys("Return")
    bench.await_no_words(FINDING)
    expect(bench.gap() == 12.5, "the file has %s" % bench.gap())


def case_accepted(bench):
    """Accepted with a reason, a finding counts no more, is folded below with it, and comes back when asked."""
    bench.open_finding()
    bench.enter(REASON, "enough for my wrench")
    bench.click("Accept")
    bench.await_words("1 accepted finding")
    bench.await_no_words("clears the heel")
    kept = bench.saved()["accepted"]
    expect([(one["rule"], one["about"], one["severity"], one["reason"]) for one in kept]
           == [("hooks.clear_heel", "hooks.heel_gap", "caution", "enough for my wrench")], "the file has %s" % kept)
    bench.to_the_end()
    bench.click_words("1 accepted finding")
    bench.to_the_end()
    bench.await_words("enough for my wrench$")
    bench.click_words("clears the heel")
    bench.find("Accept no more")
    bench.to_the_end()
    bench.click("Accept no more")
    bench.await_no_words("accepted finding")
    bench.await_words(FINDING)
    expect("accepted" not in bench.saved(), "the file still has it")
    bench.keys("ctrl+z")
    bench.await_words("1 accepted finding")


sys.exit(run(globals(), lambda folder: [Bench(folder)], sys.argv[2:]))
