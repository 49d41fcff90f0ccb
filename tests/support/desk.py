"""Drags the drawing of a running program with a real pointer.

Where the grips stand is read from the trace that the program writes where RIMWRIGHT_TRACE names a file; what
came of a drag, from the project's file.
"""

import json
import os
import subprocess
import time

from drive import Failure, Program, asked, name_of, place, role, wait, walk, x

STEPS = 12


class Desk(Program):
    """The program on a file of the built-in build, with its drawing."""

    def __init__(self, program, folder):
        self.path = os.path.join(folder, "build.rimwright")
        with open(self.path, "w", encoding="utf-8") as file:
            subprocess.run([program, "example"], stdout=file, check=True)
        self.trace = os.path.join(folder, "trace")
        open(self.trace, "w", encoding="utf-8").close()
        os.environ["RIMWRIGHT_TRACE"] = self.trace
        super().__init__(program, self.path)
        wait(lambda: self.grips("whole"), "the grips")
        self.settle()

    def drawings(self):
        return [(node, path) for node, path in walk(self.root)
                if role(node) == "image" and name_of(node).startswith("Drawing: ") and min(place(node)[2:]) > 0]

    def drawing(self):
        found = self.drawings()
        return found[0] if found else None

    def settle(self):
        """Waits until the grips stand where they stood a moment before."""
        before = None
        for _ in range(40):
            now = self.grips()
            if now and now == before:
                return
            before = now
            time.sleep(0.15)
        raise Failure("the drawing does not come to rest")

    def places(self, kind, view=None):
        found = {}
        with open(self.trace, encoding="utf-8") as trace:
            for line in trace:
                parts = line.strip().split(",")
                if parts[0] == kind and len(parts) == 5 and view in (None, parts[1]):
                    found[parts[2]] = (float(parts[3]), float(parts[4]))
        return found

    def grips(self, view=None):
        """Where the grips were last seen, pixels from the drawing's corner, by id."""
        return self.places("grip", view)

    def figures(self, view=None):
        """Where the lettering was last seen, by its words."""
        return self.places("figure", view)

    def click_at(self, place):
        """A click on a place of the drawing."""
        corner = self.corner()
        x("xdotool", "mousemove", str(round(corner[0] + place[0])), str(round(corner[1] + place[1])))
        time.sleep(0.2)
        x("xdotool", "click", "1")
        time.sleep(0.2)

    def describe(self):
        return asked(self.drawing()[0].get_description, default="").replace("\u00a0", " ")

    def tab(self):
        """Goes to the next grip; what the drawing then says."""
        before = self.describe()
        self.keys("Tab")
        try:
            return wait(lambda: self.describe() != before and self.describe(), "")
        except Failure:
            return ""

    def click_beside(self):
        """A click on bare paper, which puts the focus on the drawing."""
        corner = self.corner()
        x("xdotool", "mousemove", str(corner[0] + 30), str(corner[1] + 30), "click", "1")
        time.sleep(0.2)

    def corner(self):
        node, path = wait(self.drawing, "the drawing")
        middle, box = self.on_screen(node, path), place(node)
        return middle[0] - box[2] // 2, middle[1] - box[3] // 2

    def pixels_per_mm(self):
        """Bridge and tailpiece are 60 mm apart on the axis."""
        grips = self.grips("whole")
        return (grips["tailpiece.anchor"][0] - grips["bridge.offset"][0]) / 60

    def saved(self, key):
        """The value as the file has it."""
        stamp = os.stat(self.path).st_mtime_ns
        self.keys("ctrl+s")
        end = time.monotonic() + 1
        while os.stat(self.path).st_mtime_ns == stamp and time.monotonic() < end:
            time.sleep(0.05)  # where there is nothing to save the file stays
        with open(self.path, encoding="utf-8") as file:
            return json.load(file)["parameters"][key]

    def hold(self, grip, dx, dy):
        """Presses a grip and drags it by pixels, and holds it there."""
        corner, at = self.corner(), self.grips()[grip]
        start = (round(corner[0] + at[0]), round(corner[1] + at[1]))
        x("xdotool", "mousemove", str(start[0]), str(start[1]))
        time.sleep(0.15)
        x("xdotool", "mousedown", "1")
        for i in range(1, STEPS + 1):
            x("xdotool", "mousemove", str(round(start[0] + dx * i / STEPS)), str(round(start[1] + dy * i / STEPS)))
            time.sleep(0.02)
        time.sleep(0.2)

    def drag(self, grip, dx, dy):
        self.hold(grip, dx, dy)
        x("xdotool", "mouseup", "1")
        self.settle()
