#!/usr/bin/python3
"""test_walk.py RIMWRIGHT [EVENTS [SEED]]: works in the window at random, with real events of pointer and keyboard, on
the present display.  It must neither end, nor write a word to standard error, nor grow without end.

Run by hand, with many events and several seeds: no two walks are the same, even of one seed, as what is pressed
depends on how far the window has come by then.

    tests/support/with-display python3 tests/ui/test_walk.py build/app/rimwright 10000 7
"""

import os
import random
import re
import subprocess
import sys

sys.path.insert(0, os.path.join(os.path.dirname(os.path.abspath(__file__)), "..", "support"))
from cases import open_window  # noqa: E402
from drive import Failure, x  # noqa: E402

RIMWRIGHT = sys.argv[1]
EVENTS = int(sys.argv[2]) if len(sys.argv) > 2 else 1500
SEED = int(sys.argv[3]) if len(sys.argv) > 3 else 1
BATCH = 40
SETTLED = 0.4     # of the walk, after which memory may grow by no more than this, for what undo keeps
GROWTH_MIB = 60
GROWTH_SHARE = 0.5  # or, under a sanitizer that keeps what is freed, by so much of it
KEYS = ["Tab", "shift+Tab", "Return", "space", "Escape", "Up", "Down", "Left", "Right", "Page_Up", "Page_Down", "Home",
        "End", "Delete", "BackSpace", "plus", "minus", "0", "1", "2", "3", "4", "5", "6", "7", "8", "9", "ctrl+z",
        "ctrl+shift+z", "ctrl+1", "ctrl+2", "ctrl+3", "F9", "shift+F9", "ctrl+b", "ctrl+f", "ctrl+a", "F1", "F2",
        "ctrl+p", "ctrl+n"]
HEADER = 56       # px at the top of the screen: what ends the window, and what opens the toolkit's file dialog
# What the toolkit says of its own dialogs for files and printers, of a window off the screen, and of a long list whose
# scroll bar is dragged past what it has laid out.
OF_THE_TOOLKIT = re.compile(r"gtk_tree_|gtk_css_node_insert_after|avahi|gdk_monitor_get_geometry|"
                            r"ListView failed to scroll to given position|^\s*$")
WORDS = ["12", "3/8 in", "0,5", "1e3", "abc", "-4", "2 1/2", "", "280 + 2*1.5"]


def size():
    width, height = re.findall(r"-geometry (\d+)x(\d+)", x("xwininfo", "-root"))[0]
    return int(width), int(height)


def steps(dice, width, height):
    """One event as words for xdotool."""
    kind = dice.random()
    place = ["mousemove", str(dice.randrange(width)), str(dice.randrange(HEADER, height))]
    if kind < 0.35:
        return place + ["click", "1"]
    if kind < 0.55:
        drag = ["mousedown", "1"]
        for _ in range(dice.randrange(1, 6)):
            drag += ["mousemove_relative", "--", str(dice.randrange(-40, 41)), str(dice.randrange(-40, 41))]
        return place + drag + ["mouseup", "1"]
    if kind < 0.65:
        return place + ["click", dice.choice("45")]
    if kind < 0.92:
        return ["key", dice.choice(KEYS)]
    return ["type", "--", dice.choice(WORDS)]


def resident_mib(pid):
    with open("/proc/%d/status" % pid, encoding="utf-8") as status:
        return int(re.search(r"VmRSS:\s+(\d+) kB", status.read())[1]) / 1024


def errors_of(window):
    return "\n".join(line for line in window.errors.splitlines() if not OF_THE_TOOLKIT.search(line))


def go_on(window, number):
    """Whatever asks something is answered by going back.  A window that was closed is opened anew; one that was put
    away comes back."""
    if errors_of(window):
        raise Failure("standard error after %d events: %s" % (number, errors_of(window)))
    if window.process.poll() is not None:
        if window.process.returncode != 0:
            raise Failure("the program has ended with %d after %d events" % (window.process.returncode, number))
        return open_window(RIMWRIGHT)
    x("xdotool", "key", "Escape")
    subprocess.run(["xdotool", "search", "--pid", str(window.process.pid), "--name", ".", "windowmap"], check=False,
                   capture_output=True)
    return window


def walk():
    window, dice, number, settled = open_window(RIMWRIGHT), random.Random(SEED), 0, None
    width, height = size()
    while number < EVENTS:
        for _ in range(BATCH):
            x("xdotool", *steps(dice, width, height))
        number += BATCH
        window = go_on(window, number)
        if settled is None and number >= SETTLED * EVENTS:
            settled = resident_mib(window.process.pid)
    after = resident_mib(window.process.pid)
    window.end()
    if errors_of(window):
        raise Failure("standard error: " + errors_of(window))
    return settled, after


def main():
    print("1..2", flush=True)
    try:
        before, after = walk()
    except Failure as failure:
        print("# seed %d: %s" % (SEED, str(failure).replace("\n", "\n# ")))
        print("not ok 1 - %d events, seed %d" % (EVENTS, SEED))
        return 1
    print("ok 1 - %d events, seed %d" % (EVENTS, SEED))
    grown = "from %.0f to %.0f MiB" % (before, after)
    bounded = after - before < max(GROWTH_MIB, GROWTH_SHARE * before)
    print("%s 2 - memory has grown %s" % ("ok" if bounded else "not ok", grown))
    return 0 if bounded else 1


sys.exit(main())
