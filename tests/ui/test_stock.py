#!/usr/bin/python3
"""test_stock.py RIMWRIGHT SHELF SHORT [CASE...]: fills the stock from tables, plans and mends, on the present display
with real events.  SHELF is a table of stock that will do for the built-in build, SHORT one that will not: its only
cherry that is thick enough is 540 x 70 mm, two strips of 26 mm with five segments each at 86.7 mm a segment, and
twenty are wanted.
"""

import csv
import os
import re
import sys
import tempfile

sys.path.insert(0, os.path.join(os.path.dirname(os.path.abspath(__file__)), "..", "support"))
from cases import expect, open_window, run  # noqa: E402
from drive import asked, name_of, place, role, wait, walk, words_of, x  # noqa: E402

RIMWRIGHT, SHELF, SHORT = sys.argv[1:4]
WILL_DO = r"^The shelf will do\."
WEIGHT = r"The instrument: ([\d.]+) g, balanced ([\d.]+) mm from the nut"
THEN = (r"The instrument then: ([\d.]+) g \(([-−+][\d.]+) g\), "
        r"balanced ([\d.]+) mm \(([-−+][\d.]+) mm\) from the nut")


def rows_of(path):
    """A table of stock as plain values: what is a number counts as one, an empty cell as not there."""
    def value(cell):
        try:
            return float(cell)
        except ValueError:
            return cell

    with open(path, encoding="utf-8", newline="") as file:
        return [{title: value(cell) for title, cell in row.items() if cell} for row in csv.DictReader(file)]


def click_at(spot):
    x("xdotool", "mousemove", "--sync", str(spot[0]), str(spot[1]), "click", "1")


def open_page(window):
    """The tab of the drawer, not the group of the form that is called the same."""
    tab = [found for found in walk(window.root) if role(found[0]) == "push button" and name_of(found[0]) == "Stock"]
    window.frame = tab[-1][1][1]
    click_at(window.on_screen(*tab[-1]))
    label(window, "^The shelf is empty")


def read_table(window, path):
    window.click("Read a table …")
    window.answer_file("Shelf from a table", path, "ctrl+l")


def beside_the_table(window):
    """What holds the verdict, the remedies and the picture; found once, for a walk over the table takes its time."""
    if not hasattr(window, "plan_side"):
        window.plan_side = next(path[-1] for node, path in walk(window.root) if name_of(node) == "Cutting plan")
    return window.plan_side


def label(window, pattern):
    """What was found in a label beside the table, as soon as there is such a label."""
    def found():
        matches = (re.search(pattern, words_of(node)) for node, _ in walk(beside_the_table(window))
                   if role(node) == "label" and min(place(node)[2:]) > 0)
        return next(filter(None, matches), None)

    return wait(found, "the words “%s”" % pattern)


def plan_heard(window):
    """What is said of the picture of the plan, a line for what is missing and for each board and bar."""
    picture = next(node for node, _ in walk(beside_the_table(window)) if name_of(node) == "Cutting plan")
    return asked(picture.get_description, default="").replace("\u00a0", " ").splitlines()


def number(text):
    return float(text.replace("−", "-"))


def presses(window):
    """The buttons of the remedies."""
    return [node for node, _ in walk(beside_the_table(window)) if role(node) == "push button"]


def press(window, wanted):
    """The button for one of the remedies, by what is said of it."""
    button = next(node for node in presses(window) if asked(node.get_description, default="").startswith(wanted))
    click_at(window.on_screen(button, (window.root, window.frame)))


def case_a_shelf_that_will_do(window):
    """Everything wanted is heard of the plan, and nothing is missing."""
    read_table(window, SHELF)
    label(window, WILL_DO)
    expect(presses(window) == [], "a remedy for nothing")
    heard = "; ".join(plan_heard(window))
    expect("missing" not in heard, heard)
    for count, what in ((10, "Segment, course 1"), (10, "Segment, course 2"), (10, "Segment, course 3"), (1, "Neck"),
                        (1, "Fretboard"), (18, "Hook"), (18, "Shoe"), (2, "Rod across the pot"), (19, "Fret")):
        counts = re.findall(r"(\d+) × %s(?=;|$)" % what, heard)
        expect(sum(map(int, counts)) == count, "“%s” %s times, not %d" % (what, counts, count))
    window.keys("ctrl+z")
    label(window, "^The shelf is empty")


def case_a_shelf_that_will_not(window):
    """A remedy says what it does to the instrument, does it, and is undone in one step."""
    read_table(window, SHORT)
    label(window, "^The shelf will not do: 10 pieces are missing")
    short = "Segment, course 3: 10 missing"
    wait(lambda: any(line.startswith(short) for line in plan_heard(window)), short)
    before = label(window, WEIGHT)
    then = label(window, "^Make course 3 of another wood: Sugar maple\\n" + THEN)
    expect(abs(number(then[1]) - number(before[1]) - number(then[2])) < 0.11, "%s g, then %s" % (before[1], then[0]))
    expect(abs(number(then[3]) - number(before[2]) - number(then[4])) < 0.011, "%s mm, then %s" % (before[2], then[0]))
    press(window, "Make course 3 of another wood: Sugar maple")
    label(window, WILL_DO)
    after = label(window, WEIGHT)
    expect(after.groups() == (then[1], then[3]), "%s, not %s" % (after[0], then[0]))
    window.keys("ctrl+z")
    label(window, "^The shelf will not do: 10 pieces are missing")


def case_a_bad_entry(window):
    """A sentence says what is wrong, the plan stays, and a good entry is taken."""
    read_table(window, SHELF)
    label(window, WILL_DO)
    window.click("Name, row 1")
    window.keys("Tab", "Tab", "Tab")  # the table scrolls to what has the focus
    window.await_text("Length, row 1", "1020")
    window.keys("ctrl+a")
    window.write("abc")
    window.keys("Return")
    window.await_words("^Length: “abc” won’t do; ")
    label(window, WILL_DO)
    window.keys("ctrl+a")
    window.write("40 in")
    window.keys("Return")
    window.await_no_words("won’t do; ")
    window.await_text("Length, row 1", "1016")


def case_written_and_read_back(window):
    """What is written is what was read; read again it is the same shelf."""
    with tempfile.TemporaryDirectory() as folder:
        path = os.path.join(folder, "written.csv")
        read_table(window, SHELF)
        label(window, WILL_DO)
        window.click("Write a table …")
        window.answer_file("Shelf as a table", path, "ctrl+a")
        wait(lambda: os.path.exists(path), "the file")
        expect(rows_of(path) == rows_of(SHELF), "the file says %s" % rows_of(path))
        window.keys("ctrl+z")
        label(window, "^The shelf is empty")
        read_table(window, path)
        label(window, WILL_DO)


def start(_):
    window = open_window(RIMWRIGHT)
    open_page(window)
    return [window]


sys.exit(run(globals(), start, sys.argv[4:]))
