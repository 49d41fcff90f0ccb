#!/usr/bin/python3
"""test_help.py RIMWRIGHT: the tour of a first start, the guide, and the meaning of a value, on the present display."""

import os
import sys
import time

sys.path.insert(0, os.path.join(os.path.dirname(os.path.abspath(__file__)), "..", "support"))
from drive import Failure, Program, wait  # noqa: E402

RIMWRIGHT = sys.argv[1]
MEMORY = os.path.join(os.environ["XDG_CONFIG_HOME"], "rimwright", "window.ini")


def expect(condition, what):
    if not condition:
        raise Failure(what)


def start():
    window = Program(RIMWRIGHT)
    wait(lambda: window.has("Rim"), "the form")
    return window


def first_start():
    with open(MEMORY, "w", encoding="utf-8"):
        return start()


def finish(window):
    errors = window.end()
    expect(errors == "", "standard error: " + errors)


def case_tour_to_its_end():
    """A first start is shown round; the next is not."""
    window = first_start()
    window.await_words("^This is a complete build$")
    for words in ("Every value stands in the form", "What matters most", "Findings, dimensions, steps", "Papers for"):
        window.activate("Next")
        window.await_words("^" + words)
    window.activate("Done")
    window.await_no_words("^Papers for the bench$")
    finish(window)
    window = start()
    time.sleep(2)
    expect(not window.says("^This is a complete build$"), "shown round again")
    finish(window)


def case_tour_left():
    """It can be left at once, and had again from the menu."""
    window = first_start()
    window.await_words("^This is a complete build$")
    window.activate("Leave the tour")
    window.await_no_words("^This is a complete build$")
    window.click("Menu")
    window.activate("Short tour", kind="menu item")
    window.await_words("^This is a complete build$")
    finish(window)


def case_window_closed_during_the_tour():
    window = first_start()
    window.await_words("^This is a complete build$")
    window.keys("ctrl+w")
    wait(lambda: window.process.poll() is not None, "the program to end")
    expect(window.errors == "", "standard error: " + window.errors)


def case_guide():
    window = start()
    window.keys("F1")
    wait(lambda: "Guide" in window.windows(), "the guide")
    window.await_words("^This guide follows one build")
    window.click_words("^Hoop and hooks$")
    window.await_words("^The hoop is bent to the head as it is")
    window.keys("Escape")
    wait(lambda: "Guide" not in window.windows(), "the guide to close")
    finish(window)


def case_meaning():
    """The chosen value says what it means, and in which range it may be."""
    window = start()
    window.click("Rim")
    window.click("Rim outside diameter")
    window.await_words("^Turned outside of the wood$")
    window.await_words("^120 to 450 mm$")
    finish(window)


def main():
    cases = [(name[5:].replace("_", " "), case) for name, case in globals().items() if name.startswith("case_")]
    print("1..%d" % len(cases), flush=True)
    failed = False
    for number, (name, case) in enumerate(cases, 1):
        try:
            case()
            print("ok %d - %s" % (number, name), flush=True)
        except Failure as failure:
            failed = True
            print("# %s" % str(failure).replace("\n", "\n# "))
            print("not ok %d - %s" % (number, name), flush=True)
    return 1 if failed else 0


sys.exit(main())
