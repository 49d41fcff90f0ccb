#!/usr/bin/python3
"""test_canvas.py RIMWRIGHT: drags the drawing with a real pointer and real keys, on the present display.

Each case starts the program anew on a file of the built-in build; what came of a drag is read from the file
that is saved after it.  What is expected is worked out here from the geometry: how many millimetres a pixel
is, and what the drag of an edge means for its parameter.
"""

import math
import os
import sys

sys.path.insert(0, os.path.join(os.path.dirname(os.path.abspath(__file__)), "..", "support"))
from cases import expect, run  # noqa: E402
from desk import Desk  # noqa: E402
from drive import name_of, wait, x  # noqa: E402

RIMWRIGHT = sys.argv[1]
SNAP = 0.5  # mm; a drag goes to whole steps, so half of it may be lost, and a pixel's part


def near(value, wanted, tolerance, what):
    expect(abs(value - wanted) <= tolerance, "%s is %g, not %g" % (what, value, wanted))


def check_drag(desk, grip, key, pull, wanted, tolerance=SNAP):
    """Drags, looks at the file, undoes with one step and looks again."""
    before = desk.saved(key)
    desk.drag(grip, *pull)
    after = desk.saved(key)
    expect(after != before, "%s has not moved" % grip)
    near(after, wanted, tolerance, grip)
    desk.keys("ctrl+z")
    expect(desk.saved(key) == before, "one step of undo does not take back the drag of " + grip)


def case_drags_in_plan(desk):
    mm = 1 / desk.pixels_per_mm()
    check_drag(desk, "bridge.offset", "bridge.offset", (30, 0), 54 + 30 * mm)
    check_drag(desk, "scale.length", "scale.length", (-20, 0), 650 + 20 * mm)
    check_drag(desk, "tailpiece.anchor", "tailpiece.anchor", (-15, 0), 60 - 15 * mm)
    # The outer strings stand the spread apart, about the axis.
    check_drag(desk, "bridge.spread", "bridge.spread", (0, 6), 42 + 2 * 6 * mm)
    # The bass edge at the nut is a string's pitch and the margin from the axis, a pitch being
    # (width - 2 margins)/3.
    check_drag(desk, "nut.width", "nut.width", (0, 5), 32 + 3 * 5 * mm, 2 * SNAP)
    # A pull straight outwards, at 133 degrees from the neck.
    out = [round(28 * part) for part in (-math.cos(math.radians(133)), -math.sin(math.radians(133)))]
    check_drag(desk, "rim.outer_diameter", "rim.outer_diameter", out, 279 + 2 * math.hypot(*out) * mm, 2 * SNAP)


def case_drags_in_side_view(desk):
    mm = 1 / desk.pixels_per_mm()
    check_drag(desk, "rim.height", "rim.height", (0, 12), 64 + 12 * mm)
    check_drag(desk, "head.collar", "head.collar", (0, 4), 9.5 + 4 * mm)
    check_drag(desk, "shoes.below_edge", "shoes.below_edge", (0, 6), 33 + 6 * mm)
    check_drag(desk, "joint.heel_depth", "joint.heel_depth", (0, 10), 62 + 10 * mm)
    check_drag(desk, "joint.rod_spacing", "joint.rod_spacing", (0, 6), 25 + 6 * mm)
    check_drag(desk, "neck.thickness_first", "neck.thickness_first", (0, 6), 21 + 6 * mm)


def case_count_is_whole(desk):
    """The last fret is dragged to where the 17th stands: two places of the row L (1 - 2^(-n/12))."""
    away = 650 * (2 ** (-17 / 12) - 2 ** (-19 / 12))
    check_drag(desk, "frets.count", "frets.count", (-round(away * desk.pixels_per_mm()), 0), 17, 0)


def case_derived_value(desk):
    """The neck angle is worked out: dragging the nut down asks for a higher bridge, and says so."""
    before = desk.saved("bridge.height")
    desk.hold("neck.angle", 0, 12)
    x("xdotool", "mouseup", "1")
    desk.settle()
    expect(desk.saved("bridge.height") > before, "the bridge has not become higher")
    expect(desk.saved("neck.angle") == 2.5, "the angle that is not used has changed")
    desk.keys("ctrl+z")
    expect(desk.saved("bridge.height") == before, "undo does not take back the bridge")


def case_escape_puts_back(desk):
    before = desk.saved("bridge.offset")
    desk.hold("bridge.offset", 40, 0)
    desk.keys("Escape")
    x("xdotool", "mouseup", "1")
    desk.settle()
    expect(desk.saved("bridge.offset") == before, "Escape does not put the bridge back")
    desk.keys("ctrl+z")
    expect(desk.saved("bridge.offset") == before, "a drag that was put back is a step of undo")


def case_fine_drag(desk):
    """With Shift the grip goes a tenth of the way, in steps of 0.1 mm."""
    mm = 1 / desk.pixels_per_mm()
    x("xdotool", "keydown", "shift")
    try:
        desk.drag("bridge.offset", 30, 0)
    finally:
        x("xdotool", "keyup", "shift")
    near(desk.saved("bridge.offset"), 54 + 3 * mm, 0.2, "bridge.offset")


def case_keys(desk):
    """Every grip can be reached and moved without a pointer; a run of arrows is one step of undo."""
    desk.click_beside()
    words = desk.tab()
    while "Arrow keys" in words and not words.startswith("Bridge beyond"):
        words = desk.tab()
    expect(words.startswith("Bridge beyond the rim's centre 54.0 mm"), "Tab ends at: %s" % words)
    desk.keys("Right", "Up", "Right")
    wait(lambda: "55.5 mm" in desk.describe(), "the bridge to have gone three steps")
    desk.keys("shift+Left")
    wait(lambda: "55.4 mm" in desk.describe(), "a fine step")
    desk.keys("ctrl+Right")
    wait(lambda: "60.0 mm" in desk.describe(), "ten steps")
    expect(desk.saved("bridge.offset") == 60, "the file has another value")
    desk.keys("Escape", "ctrl+z")
    expect(desk.saved("bridge.offset") == 54, "the run of keys is not one step")


def case_typed_value(desk):
    """Enter on a grip opens an entry there, which reads sums and units."""
    desk.drag("bridge.offset", 20, 0)
    desk.keys("Return")
    wait(lambda: desk.has("Bridge beyond the rim's centre", "text"), "the entry")
    desk.write("2 in + 1")
    desk.keys("Return")
    wait(lambda: desk.saved("bridge.offset") == 51.8, "the typed value")


def case_figure_is_typed_over(desk):
    """A click on a dimension's figure opens an entry there; what is worked out says what it follows from."""
    desk.click_at(desk.figures("whole")["scale 650.0"])
    wait(lambda: desk.has("Scale length", "text"), "the entry")
    desk.keys("ctrl+a")
    desk.write("640")
    desk.keys("Return")
    wait(lambda: desk.saved("scale.length") == 640, "the typed scale")
    desk.settle()
    expect("scale 640.0" in desk.figures("whole"), "the drawing does not follow")
    desk.keys("ctrl+z")
    expect(desk.saved("scale.length") == 650, "undo does not take back what was typed")


def case_comparison(desk):
    """What differs from a kept state is listed, and no more once it is put back."""
    desk.click("Compare")
    desk.click("Keep this state")
    desk.drag("bridge.offset", 20, 0)
    desk.await_words(r"Bridge beyond the rim.s centre")
    moved = desk.saved("bridge.offset")
    desk.await_words(r"\+%.2f" % (moved - 54))
    desk.keys("ctrl+z")
    desk.await_words("Nothing differs")


def case_two_sheets(desk):
    """A second sheet beside the first has grips of its own; what is dragged there is the same build."""
    desk.keys("ctrl+b")
    wait(lambda: desk.grips("pot"), "the second sheet")
    desk.settle()
    drawings = [name_of(node) for node, _ in desk.drawings()]
    expect(sorted(drawings) == ["Drawing: Pot section", "Drawing: Whole build"], "there are %s" % drawings)
    desk.drag("bridge.offset", 12, 0)
    expect(desk.saved("bridge.offset") != 54, "the first sheet does not drag any more")
    desk.keys("ctrl+b")
    wait(lambda: len(desk.drawings()) == 1, "the second sheet to go")


def case_finding_shows_its_place(desk):
    """A finding leads to the value at fault: its row is marked, and its grip shows in the drawing."""
    desk.drag("bridge.offset", 45, 0)
    desk.click_words(r"Fret 19 lies .* beyond the end of the board")
    wait(lambda: desk.has("Frets", "text") or desk.has("Number of frets", "text"), "the row of the frets")


def case_all_grips_by_keys(desk):
    """Tab meets as many grips in the whole build as the drawing has there, then leaves the drawing."""
    desk.click_beside()
    met = 0
    while "Arrow keys" in desk.tab():
        met += 1
    expect(met == len(desk.grips("whole")), "Tab meets %d grips of %d" % (met, len(desk.grips("whole"))))


def case_views_by_keys(desk):
    """A digit shows a view, and the selection is kept."""
    desk.drag("bridge.offset", 20, 0)
    for key, title in (("5", "Pot section"), ("7", "Headstock"), ("1", "Whole build")):
        desk.keys(key)
        wait(lambda: name_of(desk.drawing()[0]) == "Drawing: " + title, title)
    desk.keys("7")
    wait(lambda: "headstock.post_first" in desk.grips("headstock"), "the grips of the headstock")


def case_wheel_and_fit(desk):
    """The wheel zooms about the pointer; 0 fits again."""
    corner, bridge = desk.corner(), desk.grips("whole")["bridge.offset"]
    before = desk.pixels_per_mm()
    x("xdotool", "mousemove", str(round(corner[0] + bridge[0])), str(round(corner[1] + bridge[1])))
    x("xdotool", "click", "4", "click", "4")
    desk.settle()
    after = desk.pixels_per_mm()
    near(after / before, 1.15 ** 2, 0.01, "two notches of the wheel")
    moved = desk.grips("whole")["bridge.offset"]
    expect(math.dist(moved, bridge) < 2, "the place under the pointer has moved")
    x("xdotool", "click", "1")
    desk.keys("0")
    desk.settle()
    near(desk.pixels_per_mm(), before, 0.01 * before, "the fitted scale")


sys.exit(run(globals(), lambda folder: [Desk(RIMWRIGHT, folder)], sys.argv[2:]))
