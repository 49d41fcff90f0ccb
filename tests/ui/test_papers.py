#!/usr/bin/python3
"""test_papers.py RIMWRIGHT [CASE...]: works in the window of the papers as a maker does, on the present display.

Each case starts the program anew, and the program must not have written a word to standard error.  What was
saved is read back with poppler's programs.
"""

import os
import re
import subprocess
import sys
import time

sys.path.insert(0, os.path.join(os.path.dirname(os.path.abspath(__file__)), "..", "support"))
from cases import expect, run  # noqa: E402
from drive import Failure, Program, role, wait, walk, words_of, x  # noqa: E402

RIMWRIGHT = sys.argv[1]
PAGE = r"^Page (\d+) of (\d+): (.+)$"


class Papers(Program):
    """The program with the window of the papers open."""

    def __init__(self):
        super().__init__(RIMWRIGHT)
        wait(lambda: self.has("Rim"), "the form")
        self.keys("ctrl+p")
        wait(lambda: "Papers" in self.windows(), "the papers")
        self.await_words(PAGE)

    def only(self, sheet):
        self.click("Choose no sheet", window="Papers")
        self.await_words("^No sheet is chosen$")
        self.click(sheet, "check box", window="Papers")
        self.await_words(r"^Page 1 of \d+: %s$" % sheet)

    def pick(self, name, steps):
        """Goes so many rows down in a drop-down, by keys."""
        self.reveal(name)
        self.click(name, "combo box", window="Papers")
        self.keys(*["Down"] * steps, "Return")
        time.sleep(0.4)

    def reveal(self, name):
        """Scrolls the form until a control is in sight."""
        for _ in range(12):
            spot = self.on_screen(*self.find(name, window="Papers"))
            if spot[1] < 740:
                return
            x("xdotool", "mousemove", "150", "300", "click", "5")
            time.sleep(0.2)
        raise Failure("“%s” does not come into sight" % name)

    def save(self, path):
        self.keys("ctrl+s")
        self.answer_file("Save the papers", path, "ctrl+a")

    def save_folder(self, path):
        self.keys("ctrl+s")
        self.answer_file("Save the papers in a folder", path, "ctrl+l")


def read(program, *words):
    return subprocess.run([program, *words], capture_output=True, text=True, check=True).stdout


def case_sheets_and_pages(window, folder):
    """Sheets are chosen, pages turned by button and key."""
    window.only("Rim strip")
    window.click("Next page", window="Papers")
    window.await_words(r"^Page 2 of \d+: Rim strip$")
    window.keys("ctrl+End")
    wait(lambda: window.says(r"^Page (\d+) of \1: Rim strip$"), "the last page")
    window.keys("Page_Up", "ctrl+Home")
    window.await_words(r"^Page 1 of \d+: Rim strip$")


def case_zoom(window, folder):
    """Nearer is nearer, by button, key and wheel; the whole page comes back."""
    def percent():
        labels = (words_of(node) for node, _ in walk(window.root) if role(node) == "label")
        return next((int(label[:-2]) for label in labels if re.fullmatch(r"\d+ %", label)), 0)
    whole = percent()
    expect(whole > 0, "no percentage")
    window.click("Nearer", window="Papers")
    wait(lambda: abs(percent() - 1.25 * whole) <= 1, "a quarter more than %d %%" % whole)
    window.point("Page", "image", window="Papers")
    x("xdotool", "click", "4")
    wait(lambda: abs(percent() - 1.5625 * whole) <= 2, "the wheel's quarter")
    x("xdotool", "mousedown", "1")
    for step in range(6):
        x("xdotool", "mousemove_relative", "--", "-10", "-6")
        time.sleep(0.02)
    x("xdotool", "mouseup", "1")
    window.keys("0")
    wait(lambda: percent() == whole, "the whole page")


def case_saved_as_chosen(window, folder):
    """The PDF has the pages that were shown, with the revision and date that were given."""
    path = os.path.join(folder, "strip.pdf")
    window.only("Rim strip")
    window.reveal("Revision")
    window.enter("Revision", "C2")
    window.reveal("Date")
    window.enter("Date", "31.5.2026")
    window.keys("Tab")
    expect(window.text("Date") == "31.5.2026", "a date that is none was not left to be mended")
    window.enter("Date", "2026-05-31")
    window.keys("Return")
    window.save(path)
    window.await_words(r"^\d pages saved as %s$" % re.escape(path))
    pages = int(re.search(r"Pages: +(\d+)", read("pdfinfo", path)).group(1))
    expect(window.says(r"^Page 1 of %d: " % pages), "the file has %d pages" % pages)
    text = read("pdftotext", "-layout", path, "-")
    expect(text.count("revision C2") == pages and text.count("2026-05-31") == pages, "revision or date are missing")


def case_units_and_hand(window, folder):
    """Fractions are fractions; for the other hand the treble side comes to lie below the bass side."""
    def heights(path):
        """How far down the page "treble side" and "bass side" stand."""
        boxes = read("pdftotext", "-bbox", path, "-")
        return [float(re.search(r'yMin="([\d.]+)"[^>]*>%s<' % word, boxes).group(1)) for word in ("treble", "bass")]
    right, left = os.path.join(folder, "right.pdf"), os.path.join(folder, "left.pdf")
    window.only("Fretboard")
    window.save(right)
    window.await_words("saved as ")
    window.pick("Hand", 2)
    window.pick("Lengths", 3)
    window.save(left)
    window.await_words("saved as %s$" % re.escape(left))
    treble, bass = heights(right)
    expect(treble < bass, "the treble side lies below")
    treble, bass = heights(left)
    expect(treble > bass, "the board is not mirrored")
    # The board is 448 mm: 17 41/64 in is 448.07 mm.
    expect("all in inches" in read("pdftotext", left, "-") and "17 41/64" in read("pdftotext", left, "-"),
           "no fractions")


def case_full_disk(window, folder):
    """A disk without room is told of in a sentence, and the window goes on."""
    window.only("Pot section")
    window.save("/dev/full")
    wait(lambda: window.has("Replace"), "the question whether to replace")
    window.click("Replace")
    wait(lambda: "Not done" in window.windows(), "the message")
    window.await_words("“full” can't be written: No space left on device")
    window.keys("Escape")
    window.await_words("^Page 1 of 1: Pot section$")


def case_no_such_folder(window, folder):
    """Where no file can be made, none is, and it is said."""
    window.only("Pot section")
    window.save("/proc/pot.pdf")
    wait(lambda: "Not done" in window.windows(), "the message")
    window.await_words("“pot.pdf” can't be written: ")
    window.keys("Escape")


def case_many_files(window, folder):
    """Pictures go to a folder of their own."""
    window.only("Pot section")
    window.reveal("SVG, a file for each sheet")
    window.click("SVG, a file for each sheet", "check box")
    window.save_folder(folder)
    window.await_words(r"^2 files saved in ")
    made = [os.path.join(top, name) for top, _, names in os.walk(folder) for name in names]
    expect(sorted(map(os.path.basename, made)) == ["papers.pdf", "pot.svg"], "there are %s" % made)


def case_stopped(window, folder):
    """Long work shows how far it is and can be stopped; what is there then is whole."""
    window.reveal("PNG, a picture of each sheet")
    window.click("PNG, a picture of each sheet", "check box")
    window.pick("Dots per inch", 3)
    window.save_folder(folder)
    window.click("Stop", window="Papers")
    window.await_words("^The papers were stopped before they were done$")
    for top, _, names in os.walk(folder):
        for name in names:
            expect(not name.startswith("."), "a half file is left")
            if name.endswith(".png"):
                with open(os.path.join(top, name), "rb") as file:
                    expect(file.read().endswith(b"IEND\xaeB`\x82"), "%s is not whole" % name)


def case_names(window, folder):
    """Every control has a name."""
    expect(window.nameless() == [], "without a name: %s" % window.nameless())


sys.exit(run(globals(), lambda folder: [Papers(), folder], sys.argv[2:]))
