"""Goes through all that the program shows: every page of the drawer, every row of the form, every window and question."""

import time

from drive import children, place, role, wait

PAGES = ["Dimensions", "Steps", "Set-up", "Care", "Stock", "Compare"]  # the findings are shown at first
SETTLED = 0.7  # seconds until what was asked for has been laid out
LINES = 25  # of a long list: the others are made in the same way
BUTTONS = {"push button", "toggle button", "radio button", "page tab"}


def english(text):
    return text


def shown(node, inside="", seen=True, button=False):
    """What is on the screen, its role, and whether it is a button or in one.  What a drop-down would offer is left out.
    A page of a stack has no place of its own, though what is on it has; what is hidden has none, and all in it."""
    kind, here = role(node), not inside or min(place(node)[2:]) > 0
    if not here and not seen:
        return
    button = button or kind in BUTTONS
    if here:
        yield node, kind, button
    inside = children(node) if kind != "combo box" else []
    for child in inside[:LINES] if kind == "list" else inside:
        yield from shown(child, kind, here, button)


def form(window):
    """All rows at once: the name of every parameter in the file has a point in it."""
    window.keys("ctrl+f")
    window.write(".")
    time.sleep(2 * SETTLED)
    yield "the form"
    window.keys("ctrl+a", "Delete", "Escape")


def page(window, title):
    window.activate(title)
    time.sleep(SETTLED)


def drawer(window, say):
    for title in PAGES:
        page(window, say(title))
        yield "the page " + title
    page(window, say("Steps"))
    window.click(say("Shown"))
    window.keys("Down", "Return")
    time.sleep(SETTLED)
    yield "the page of what has changed since papers left"


def beside(window):
    window.keys("ctrl+b")
    time.sleep(SETTLED)
    yield "the second sheet"
    window.keys("ctrl+b")


def opened(window, what, *keys):
    """A window of the program's own, by keys; Escape closes it."""
    before = len(window.windows())
    window.keys(*keys)
    wait(lambda: len(window.windows()) > before, what)
    time.sleep(2 * SETTLED)
    yield what
    window.keys("Escape")
    wait(lambda: len(window.windows()) == before, what + " to close")


def chosen(window, say, item):
    """What an item of the menu shows."""
    before = len(window.windows())
    window.keys("F10")
    time.sleep(SETTLED)
    window.activate(say(item), kind="menu item")
    wait(lambda: len(window.windows()) > before, item)
    time.sleep(SETTLED)
    yield item
    window.keys("Escape")
    wait(lambda: len(window.windows()) == before, item + " to close")


def question(window, say):
    """What is asked before work is lost."""
    window.keys("ctrl+f", "ctrl+a")
    window.write("rim.wall")
    time.sleep(2 * SETTLED)
    window.enter(say("Wall thickness"), "15")
    window.keys("Return")
    yield from opened(window, "the question about unsaved work", "ctrl+w")


def everything(window, say=english):
    """Shows one thing after the other, and says what it is.  What is left behind is a window with unsaved work."""
    yield "the window"
    yield from drawer(window, say)
    yield from beside(window)
    yield from opened(window, "the papers", "ctrl+p")
    yield from opened(window, "the guide", "F1")
    yield from opened(window, "the keys", "ctrl+question")
    for item in ("Name of the build…", "About Rimwright"):
        yield from chosen(window, say, item)
    yield from form(window)
    yield from question(window, say)

