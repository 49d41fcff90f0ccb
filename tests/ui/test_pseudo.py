#!/usr/bin/python3
"""test_pseudo.py RIMWRIGHT: shows the window in a language that is nobody's, wordy and in brackets, on the present
display.  Words without brackets were not translated; a button narrower than in a wide window cuts its words short."""

import os
import re
import sys
import tempfile

HERE = os.path.dirname(os.path.abspath(__file__))
sys.path.insert(0, os.path.join(HERE, "..", "support"))
import pseudo  # noqa: E402
from cases import expect, finish, run  # noqa: E402
from drive import CONTROLS, Program, name_of, place, wait, words_of  # noqa: E402
from visit import shown  # noqa: E402

RIMWRIGHT = sys.argv[1]
ROOT = os.path.join(HERE, "..", "..")

# What is the same in every language.
OURS = {
    "Rimwright",  # the program's name
    "Minimize", "Minimieren", "Maximize", "Maximieren", "Close", "Schließen",  # buttons of the toolkit
    "GtkLabel",  # a label without text
}
WIDE, USUAL = 2000, 1280


def said(window):
    """All that is to be read in a window, and what its controls are called."""
    for node, kind, _ in shown(window.root):
        if kind == "label":
            yield words_of(node)
        elif kind in CONTROLS:
            yield name_of(node)


def left_out(texts):
    return sorted({word for text in texts for word in pseudo.outside(text)} - OURS)


def all_translated(window, where):
    texts = set(said(window))
    expect(any(pseudo.OPEN in text for text in texts), where + " does not speak the language")
    print("# %s: %d texts" % (where, len(texts)))
    expect(not left_out(texts), "%s says in English: %s" % (where, ", ".join(left_out(texts))))


def button_widths(window):
    return {words_of(node): place(node)[2] for node, kind, button in shown(window.root) if button and kind == "label"}


def start(width):
    with open(os.path.join(os.environ["XDG_CONFIG_HOME"], "rimwright", "window.ini"), "w", encoding="utf-8") as file:
        file.write("[window]\ntoured=1\nwidth=%d\nheight=780\n" % width)
    window = Program(RIMWRIGHT)
    wait(lambda: window.has(pseudo.longer("Rim")), "the form")
    return window


def case_window(window):
    """Form, header, foot and findings."""
    window.click(pseudo.longer("Rim"))
    window.await_words(re.escape(pseudo.longer("Rim height")))
    all_translated(window, "the window")


def case_steps(window):
    window.click(pseudo.longer("Steps"))
    window.await_words(re.escape(pseudo.longer("Mark as made")))
    all_translated(window, "the page of steps")


def case_papers(window):
    window.keys("ctrl+p")
    wait(lambda: pseudo.longer("Papers") in window.windows(), "the papers")
    window.await_words(r"1 .* \d+: ")
    all_translated(window, "the window of papers")


def case_room(window):
    """Buttons have room for long words."""
    narrow = button_widths(window)
    finish(window)
    wide = button_widths(start(WIDE))
    both = narrow.keys() & wide.keys()
    expect(len(both) > 20, "only %d buttons are to be compared" % len(both))
    cut = sorted(text for text in both if narrow[text] < wide[text] - 1)
    expect(not cut, "cut short: " + ", ".join(cut))


def main():
    with tempfile.TemporaryDirectory() as folder:
        os.environ.update(RIMWRIGHT_LOCALE_DIR=pseudo.catalogue(ROOT, folder), LANGUAGE="de")
        return run(globals(), lambda _: [start(USUAL)], sys.argv[2:])


sys.exit(main())
