#!/usr/bin/python3
"""test_large_text.py RIMWRIGHT: text twice as large as usual, on the present display.  The window keeps to 1280 pixels, and
so does every other; what stands on one line in a wide window is not cut short there."""

import os
import subprocess
import sys

HERE = os.path.dirname(os.path.abspath(__file__))
sys.path.insert(0, os.path.join(HERE, "..", "support"))
from cases import expect, finish, open_window, run  # noqa: E402
from drive import children, name_of, place, words_of  # noqa: E402
from visit import everything, shown  # noqa: E402

RIMWRIGHT = sys.argv[1]
USUAL, WIDE, HEIGHT, FORM = 1280, 2560, 780, 530
DPI = 2 * 96


def start(width):
    with open(os.path.join(os.environ["XDG_CONFIG_HOME"], "rimwright", "window.ini"), "w", encoding="utf-8") as file:
        file.write("[window]\ntoured=1\nwidth=%d\nheight=%d\nform-width=%d\n" % (width, HEIGHT, FORM))
    return open_window(RIMWRIGHT)


def too_wide(window):
    return ["%s: %d" % (name_of(top), place(top)[2]) for top in children(window.root) if place(top)[2] > USUAL]


def case_windows_fit(_):
    """No page asks for more room than a usual screen has."""
    window = start(USUAL)
    for where in everything(window):
        expect(not too_wide(window), "%s: %s" % (where, too_wide(window)))


def lines(window):
    """Width and height of what is written on the buttons of the window."""
    return {words_of(node): place(node)[2:] for node, kind, button in shown(window.root) if button and kind == "label"}


def case_buttons_say_all(_):
    narrow_window = start(USUAL)
    narrow = lines(narrow_window)
    finish(narrow_window)
    wide = lines(start(WIDE))
    both = narrow.keys() & wide.keys()
    expect(len(both) > 20, "only %d buttons are to be compared" % len(both))
    expect(max(wide[text][1] for text in both) > 24, "the text is not large")
    cut = sorted(text for text in both if narrow[text][0] < wide[text][0] - 1 and narrow[text][1] <= wide[text][1])
    expect(not cut, "cut short: " + ", ".join(cut))


if __name__ == "__main__":
    # As a desktop says how large text is.
    subprocess.run(["xprop", "-root", "-f", "RESOURCE_MANAGER", "8s", "-set", "RESOURCE_MANAGER",
                    "Xft.dpi:\t%d\n" % DPI], check=True)
    sys.exit(run(globals(), lambda _: [None], sys.argv[2:]))
