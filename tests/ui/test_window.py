#!/usr/bin/python3
"""test_window.py RIMWRIGHT [CASE...]: works in the window as a maker does, on the present display.

Each case starts the program anew, and the program must not have written a word to standard error.  Numbers
that are expected are worked out here, from the definitions, not taken from the program.
"""

import json
import math
import os
import sys
import tempfile
import time

sys.path.insert(0, os.path.join(os.path.dirname(os.path.abspath(__file__)), "..", "support"))
from cases import expect, open_window, run  # noqa: E402
from drive import wait, x  # noqa: E402

RIMWRIGHT = sys.argv[1]
DIAMETER = "Rim outside diameter"


def row(window, words, name):
    """Brings the row of a value into view, and clicks into it."""
    window.keys("ctrl+f", "ctrl+a")
    window.write(words)
    time.sleep(0.5)  # the filter waits for a pause
    window.click(name)


def case_typed_value_goes_through(window):
    """A typed diameter changes what is worked out from it: the tape round the rim is pi times as long."""
    window.click("Dimensions")
    window.enter("Find a dimension", "rim.circumference")
    window.await_words("^%.2f$" % (math.pi * 279))
    window.click("Rim")
    window.enter(DIAMETER, "280 + 2*1.5")
    window.await_words("^%.2f$" % (math.pi * 283))
    window.keys("Return")
    window.await_text(DIAMETER, "283")


def case_bad_entry_is_refused(window):
    """What can't be read changes nothing, is complained of beside the row, and gives way to the last value."""
    window.click("Rim")
    window.enter(DIAMETER, "27x")
    window.await_words("“x”")
    window.keys("Tab")
    window.await_text(DIAMETER, "279")
    expect(window.says("^Not saved yet$"), "a refused entry has changed the project")
    window.enter(DIAMETER, "2000")
    window.keys("Return")
    window.await_words("2000 mm is outside 120 to 450 mm")
    window.enter(DIAMETER, "300")
    window.keys("Return")
    window.await_no_words("is outside")


def case_escape_puts_back(window):
    window.click("Rim")
    window.enter(DIAMETER, "300")
    window.await_words("^300 mm, ")
    window.keys("Escape")
    window.await_text(DIAMETER, "279")
    window.await_words("^279 mm, ")
    window.await_words("^Not saved yet$")


def case_undo_and_redo(window):
    """What was typed into one entry is one step, however many keys it took."""
    window.click("Rim")
    window.enter(DIAMETER, "284.5")
    window.keys("Return")
    window.enter("Wall thickness", "12")
    window.keys("Return", "ctrl+z")
    window.await_text("Wall thickness", "14")
    window.await_text(DIAMETER, "284.5")
    window.keys("ctrl+z")
    window.await_text(DIAMETER, "279")
    window.await_words("^Not saved yet$")
    window.keys("ctrl+shift+z")
    window.await_text(DIAMETER, "284.5")
    window.keys("ctrl+y")
    window.await_text("Wall thickness", "12")


def case_units(window):
    """One press shows inches; lengths may be entered in any unit whatever is shown."""
    window.click("Rim")
    window.click("Decimal inches")
    window.await_text(DIAMETER, "%.4f" % (279 / 25.4))
    window.enter(DIAMETER, "12")
    window.keys("Return")
    window.click("Inches and 64ths")
    window.await_text(DIAMETER, "12")
    window.enter(DIAMETER, '11 3/8"')
    window.keys("Return")
    window.await_text(DIAMETER, "11 3/8")
    window.click("Millimetres")
    window.await_text(DIAMETER, "%.3f" % (11.375 * 25.4))


def case_decimal_mark(window):
    """The mark of the locale is shown; both that and the point are read."""
    comma = os.environ.get("LC_ALL", "").startswith("de_DE")
    window.click("Rim")
    window.enter(DIAMETER, "280.5")
    window.keys("Return")
    window.await_text(DIAMETER, "280,5" if comma else "280.5")
    window.enter(DIAMETER, "281,5" if comma else "281.5")
    window.keys("Return")
    window.await_text(DIAMETER, "281,5" if comma else "281.5")
    window.click("Dimensions")
    window.enter("Find a dimension", "rim.circumference")
    window.await_words("^%s$" % ("%.2f" % (math.pi * 281.5)).replace(".", "," if comma else "."))


def case_filter(window):
    """The filter leaves the rows that hold the words, in whatever group."""
    window.keys("ctrl+f")
    window.write("mitre")
    window.find("Mitre error to expect")
    wait(lambda: not window.has("Shop"), "a group without the word to go")
    window.keys("ctrl+a")
    window.write("zzz")
    window.await_words("No value is called that")
    window.keys("Escape")
    window.find("Headstock")
    wait(lambda: not window.has("Mitre error to expect"), "the group to be folded again")


def case_steps_and_wheel(window):
    """Arrows nudge the value that has the focus; the wheel scrolls the form and changes nothing."""
    window.click("Neck")
    window.click("Thickness near the heel")
    window.keys("Up", "Up", "Down")
    window.await_text("Thickness near the heel", "24.1")
    before = window.text("Worked out from the others")
    window.wheel("Worked out from the others", 3)
    expect(window.text("Worked out from the others") == before, "the wheel has changed a value")
    expect(window.text("Thickness near the heel") == "24.1", "the wheel has changed a value")


def case_worked_out(window):
    """What is worked out can't be typed over, and says from what it comes."""
    window.click("Neck")
    window.await_words("^Worked out from bridge height and action$")
    shown = window.text("Neck angle")
    window.enter("Neck angle", "9")
    window.await_text("Neck angle", shown)


def case_findings(window):
    """48 shoes 30 mm wide want 1440 mm of a rim that is 877 mm round: that stops a build, and the foot says so
    until it is undone."""
    row(window, "shoes.width", "Shoe width")
    window.keys("ctrl+a")
    window.write("30")
    window.keys("Return")
    row(window, "hooks.count", "Number of hooks")
    window.keys("ctrl+a")
    window.write("48")
    window.keys("Return")
    window.await_words(r"^\d+ stops?$")
    window.keys("ctrl+z", "ctrl+z")
    window.await_no_words(r"^\d+ stops?$")


def case_results_lead_to_their_numbers(window):
    """Pressing a result at the foot shows it in the list, and in the form where it is a parameter."""
    window.click("Action at 12: 2.40 mm")
    window.await_words("^Action at fret 12$")
    window.click("Neck angle 1.92°")
    window.find("Thickness near the heel")
    window.await_words("^Neck angle as cut$")


def case_groups(window):
    """One group is open at a time; with Control held, as many as are pressed."""
    window.click("Build")
    window.find("Handed")
    window.click("Scale and frets")
    window.find("Scale length")
    wait(lambda: not window.has("Handed"), "the group before to be folded")
    x("xdotool", "keydown", "ctrl")
    window.click("Build")
    x("xdotool", "keyup", "ctrl")
    window.find("Handed")
    expect(window.has("Scale length"), "the other group has been folded")


def case_findings_lead_to_their_rows(window):
    """Choosing a finding opens the form at what it names first: the springback that was not tested."""
    wait(lambda: window.says("bend a test piece"), "the finding")
    window.click_words("bend a test piece")
    window.find("Springback in a test bend")


def case_measured(window):
    """A measured value stands in the list and goes on downstream: pi times a diameter measured larger."""
    window.click("Dimensions")
    window.enter("Find a dimension", "hoop.bore")
    window.enter("Measured: Hoop inside diameter", "282")
    window.keys("Return")
    window.await_text("Measured: Hoop inside diameter", "282.00")
    window.await_words(r"^\+%.2f, out$" % (282 - 279.4 - 2 * 0.75))
    window.enter("Find a dimension", "hoop.outer_diameter")
    window.await_words("^%.2f$" % (282 + 2 * 4.8))
    window.await_words("^Changes not saved$")


def case_save_and_open(window):
    """Saved under a name, opened again by another window, with what was changed."""
    with tempfile.TemporaryDirectory() as folder:
        path = os.path.join(folder, "first.rimwright")
        window.click("Rim")
        window.enter(DIAMETER, "300")
        window.keys("Return", "ctrl+s")
        window.answer_file("Save the build", path, "ctrl+a")
        wait(lambda: os.path.exists(path), "the file")
        window.await_words("^Saved$")
        with open(path, encoding="utf-8") as file:
            expect(json.load(file)["parameters"]["rim.outer_diameter"] == 300, "the value is not in the file")
        window.enter(DIAMETER, "310")
        window.keys("Return", "ctrl+s")
        wait(lambda: '"rim.outer_diameter": 310' in open(path, encoding="utf-8").read(), "the second save")
        window.keys("ctrl+n")
        window.await_text(DIAMETER, "279")
        window.keys("ctrl+o")
        window.answer_file("Open a build", path, "ctrl+l")
        window.await_text(DIAMETER, "310")
        window.await_words("^first$")


def case_damaged_file(window):
    """A file that is no project is refused with a sentence, and the open project stays."""
    with tempfile.NamedTemporaryFile("w", suffix=".rimwright") as file:
        file.write('{ "rimwright": 1, "parameters": {')
        file.flush()
        window.keys("ctrl+o")
        window.answer_file("Open a build", file.name, "ctrl+l")
        wait(lambda: "Not done" in window.windows(), "the message")
        window.await_words("^The build can’t be opened$")
        window.keys("Escape")
        window.await_words("^Not saved yet$")


def case_unsaved_question(window):
    """Unsaved work is asked about; only the answer to go without it ends the window."""
    window.click("Rim")
    window.enter(DIAMETER, "300")
    window.keys("Return", "ctrl+q")
    wait(lambda: "Unsaved changes" in window.windows(), "the question")
    window.click("Cancel", window="Unsaved changes")
    wait(lambda: "Unsaved changes" not in window.windows(), "the question to go")
    expect(window.process.poll() is None, "the window has gone")
    window.keys("ctrl+w")
    wait(lambda: "Unsaved changes" in window.windows(), "the question")
    window.click("Don’t save", window="Unsaved changes")
    wait(lambda: window.process.poll() is not None, "the program to end")
    expect(window.process.returncode == 0, "the program ended with %d" % window.process.returncode)


def case_names(window):
    """Every control has a name, in the form and in the lists."""
    for group in ("Build", "Nut and strings", "Rim", "Hooks and shoes"):
        window.click(group)
        expect(window.nameless() == [], "without a name: %s" % window.nameless())
    window.click("Dimensions")
    window.find("Measured: Fret wire in all")
    expect(window.nameless() == [], "without a name: %s" % window.nameless())


sys.exit(run(globals(), lambda _: [open_window(RIMWRIGHT)], sys.argv[2:]))
