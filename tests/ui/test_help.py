#!/usr/bin/python3
"""test_help.py RIMWRIGHT: the tour of a first start, the guide, and the meaning of a value, on the present display."""

import os
import sys
import time

sys.path.insert(0, os.path.join(os.path.dirname(os.path.abspath(__file__)), "..", "support"))
from cases import expect, finish, open_window, run  # noqa: E402
from drive import wait  # noqa: E402

RIMWRIGHT = sys.argv[1]
MEMORY = os.path.join(os.environ["XDG_CONFIG_HOME"], "rimwright", "window.ini")


def first_start():
    with open(MEMORY, "w", encoding="utf-8"):
        return open_window(RIMWRIGHT)


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
    window = open_window(RIMWRIGHT)
    time.sleep(2)
    expect(not window.says("^This is a complete build$"), "shown round again")


def case_tour_left():
    """It can be left at once, and had again from the menu."""
    window = first_start()
    window.await_words("^This is a complete build$")
    window.activate("Leave the tour")
    window.await_no_words("^This is a complete build$")
    window.click("Menu")
    window.activate("Short tour", kind="menu item")
    window.await_words("^This is a complete build$")


def case_tour_by_keys():
    """Enter goes on, Escape leaves."""
    window = first_start()
    window.await_words("^This is a complete build$")
    window.keys("Return")
    window.await_words("^Every value stands in the form$")
    window.keys("Escape")
    window.await_no_words("^Every value stands in the form$")


def case_window_closed_during_the_tour():
    window = first_start()
    window.await_words("^This is a complete build$")
    window.keys("ctrl+w")
    wait(lambda: window.process.poll() is not None, "the program to end")


def case_guide():
    window = open_window(RIMWRIGHT)
    window.keys("F1")
    wait(lambda: "Guide" in window.windows(), "the guide")
    window.await_words("^This guide follows one build")
    window.click_words("^Hoop and hooks$")
    window.await_words("^The hoop is bent to the head as it is")
    window.keys("Escape")
    wait(lambda: "Guide" not in window.windows(), "the guide to close")


def case_meaning():
    """The chosen value says what it means, and in which range it may be."""
    window = open_window(RIMWRIGHT)
    window.click("Rim")
    window.click("Rim outside diameter")
    window.await_words("^Turned outside of the wood$")
    window.await_words("^120 to 450 mm$")


sys.exit(run(globals(), lambda _: [], sys.argv[2:]))
