"""Drives a program on the present display as a person does: finds its controls by what they are called,
through the accessibility bus, and presses, types and turns the wheel with real events of the pointer and the
keyboard."""

import os
import re
import shutil
import subprocess
import sys
import time

try:
    import gi

    gi.require_version("Atspi", "2.0")
    from gi.repository import Atspi, GLib
except (ImportError, ValueError) as missing:
    print("1..0 # SKIP %s" % missing)
    sys.exit(77)

CONTROLS = {"push button", "check box", "entry", "text", "combo box", "slider"}
PATIENCE = 20  # seconds that anything may take


class Failure(AssertionError):
    """What was waited for did not come."""


def asked(call, *args, default=None):
    """What a call to the bus answers.  A control may just have gone: that is an answer, not a fault."""
    try:
        answer = call(*args)
        return default if answer is None else answer
    except GLib.Error:
        return default


def wait(condition, what):
    """The first answer of condition that is true."""
    end = time.monotonic() + PATIENCE
    while True:
        answer = condition()
        if answer:
            return answer
        if time.monotonic() > end:
            raise Failure("gave up waiting for " + what)
        time.sleep(0.05)


def x(*command):
    return subprocess.run(command, check=True, capture_output=True, text=True).stdout


def active_title():
    """The title of the window that has the keyboard, or nothing."""
    return subprocess.run(["xdotool", "getactivewindow", "getwindowname"], check=False, capture_output=True,
                          text=True).stdout.strip()


def children(node):
    found = (asked(node.get_child_at_index, i) for i in range(asked(node.get_child_count, default=0)))
    return [child for child in found if child]


def walk(node, path=()):
    """A control and all in it; the many items of a drop-down only where it is asked for itself."""
    yield node, path
    for child in children(node) if not path or role(node) != "combo box" else []:
        yield from walk(child, path + (node,))


def role(node):
    return asked(node.get_role_name, default="")


def states(node):
    present = asked(node.get_state_set)
    return {state.value_nick for state in present.get_states()} if present else set()


def interfaces(node):
    return asked(node.get_interfaces, default=[])


def text_of(node):
    if "Text" not in interfaces(node):
        return ""
    text = node.get_text_iface()
    return asked(text.get_text, 0, max(asked(text.get_character_count, default=0), 0), default="")


def words_of(label):
    """What a label says: its name, which is one question to the bus where its text would be four."""
    return asked(label.get_name, default="").replace("\xa0", " ")


def labels_in(node):
    return [words_of(inner) for inner, _ in walk(node) if role(inner) == "label" and words_of(inner)]


def name_of(node):
    """As a person would say it.  GTK 4.8 calls a control without a name after its type, and puts the text of
    a button with a mnemonic twice."""
    name = asked(node.get_name, default="")
    for label in labels_in(node) if "_" in name else []:
        if name.replace("_", "", 1) in (label, "%s %s" % (label, label)):
            return label
    if name and not re.fullmatch(r"(Gtk|Gdk|Rw|[A-Z][a-z]+)[A-Z]\w+", name):
        return name
    return next(iter(labels_in(node)), "") if role(node) in CONTROLS else ""


def place(node):
    """x, y, width, height in its window; nothing is wide that is not to be seen."""
    if "Component" not in interfaces(node):
        return 0, 0, 0, 0
    box = asked(node.get_component_iface().get_extents, Atspi.CoordType.WINDOW)
    return (box.x, box.y, box.width, box.height) if box else (0, 0, 0, 0)


class Program:
    """A running program.  errors holds all that it has written to standard error.  It finds no unsaved work of an
    earlier one unless it goes on."""

    started = []  # all that ran, so that whoever runs a case can end them

    def __init__(self, *command, goes_on=False):
        if not goes_on:
            shutil.rmtree(os.environ["XDG_STATE_HOME"], ignore_errors=True)
        self.log = "%s/errors-%d" % (os.environ["HOME"], time.monotonic_ns())
        with open(self.log, "w", encoding="utf-8") as log:
            self.process = subprocess.Popen(command, stderr=log)
        Atspi.init()
        Program.started.append(self)
        self.root = wait(self.on_bus, "the program on the accessibility bus")

    @property
    def errors(self):
        with open(self.log, encoding="utf-8") as log:
            return log.read()

    def on_bus(self):
        if self.process.poll() is not None:
            raise Failure("the program has ended: " + self.errors)
        for node in children(Atspi.get_desktop(0)):
            if asked(node.get_process_id) == self.process.pid and children(node):
                node.set_cache_mask(Atspi.Cache.NONE)  # what is remembered would not follow the window
                return node
        return None

    def windows(self):
        return [asked(node.get_name, default="") for node in children(self.root)]

    def end(self):
        """Ends the program from outside and returns its errors."""
        if self.process.poll() is None:
            self.process.terminate()
            self.process.wait(PATIENCE)
        return self.errors

    # ---- looking ----

    def all(self, name, kind=None, window=None):
        """Every control of that name that is on the screen, with the path to it."""
        for node, path in walk(self.root):
            if window and not (len(path) > 1 and asked(path[1].get_name) == window):
                continue
            fits = role(node) == kind if kind else role(node) in CONTROLS
            if fits and name_of(node) == name and min(place(node)[2:]) > 0:
                yield node, path

    def find(self, name, kind=None, window=None):
        return wait(lambda: next(self.all(name, kind, window), None), "“%s”" % name)

    def has(self, name, kind=None):
        return next(self.all(name, kind), None) is not None

    def says(self, pattern):
        """Whether a label on the screen matches a pattern; hard spaces count as spaces."""
        return any(role(node) == "label" and re.search(pattern, words_of(node)) and min(place(node)[2:]) > 0
                   for node, _ in walk(self.root))

    def text(self, name, kind=None):
        """The text of an entry, or the item that a drop-down shows."""
        node, _ = self.find(name, kind)
        shown = [text_of(inner) for inner, path in walk(node) if role(inner) == "label" and place(inner)[2] > 0
                 and "list item" not in map(role, path)]
        return shown[0] if role(node) == "combo box" and shown else text_of(node)

    def await_text(self, name, text, kind=None):
        try:
            wait(lambda: self.text(name, kind) == text, "")
        except Failure:
            raise Failure("“%s” is “%s”, not “%s”" % (name, self.text(name, kind), text)) from None

    def await_words(self, pattern):
        wait(lambda: self.says(pattern), "the words “%s”" % pattern)

    def await_no_words(self, pattern):
        wait(lambda: not self.says(pattern), "the words “%s” to go" % pattern)

    def nameless(self):
        """Controls that a person who can't see them could not tell."""
        return [role(node) for node, path in walk(self.root)
                if role(node) in CONTROLS and min(place(node)[2:]) > 0 and not name_of(node)
                and "combo box" not in map(role, path)]

    # ---- doing ----

    def on_screen(self, node, path):
        """The middle of a control: the window's place, its invisible border, and the place within."""
        top = (path + (node,))[1]
        title = "^%s$" % re.escape(asked(top.get_name, default=""))
        window = x("xdotool", "search", "--onlyvisible", "--name", title).split()[-1]
        info = x("xwininfo", "-id", window)
        at = {key: int(value) for key, value in re.findall(
            r"(Absolute upper-left X|Absolute upper-left Y|Width|Height): +(-?\d+)", info)}
        frame, box = place(top), place(node)
        border = [max(0, (at["Width"] - frame[2]) // 2), max(0, (at["Height"] - frame[3]) // 2)]
        return (at["Absolute upper-left X"] + border[0] + box[0] + box[2] // 2,
                at["Absolute upper-left Y"] + border[1] + box[1] + box[3] // 2)

    def point(self, name, kind=None, window=None):
        spot = self.on_screen(*self.find(name, kind, window))
        x("xdotool", "mousemove", "--sync", str(spot[0]), str(spot[1]))
        return spot

    def click(self, name, kind=None, window=None):
        self.point(name, kind, window)
        x("xdotool", "click", "1")
        time.sleep(0.1)

    def activate(self, name, kind=None, window=None):
        """Presses as a screen reader does; what of a name has an action."""
        self.find(name, kind, window)
        for node, _ in self.all(name, kind, window):
            actions = node.get_action_iface() if "Action" in interfaces(node) else None
            if actions and asked(actions.get_n_actions, default=0) > 0 and asked(actions.do_action, 0):
                time.sleep(0.1)
                return
        raise Failure("“%s” can't be activated" % name)

    def click_words(self, pattern):
        """Clicks on a label that is no control."""
        label = next(found for found in walk(self.root)
                     if role(found[0]) == "label" and re.search(pattern, words_of(found[0])))
        spot = self.on_screen(*label)
        x("xdotool", "mousemove", "--sync", str(spot[0]), str(spot[1]), "click", "1")
        time.sleep(0.1)

    def wheel(self, name, turns, kind=None):
        self.point(name, kind)
        for _ in range(turns):
            x("xdotool", "click", "5")
        time.sleep(0.3)

    def keys(self, *keys):
        x("xdotool", "key", "--delay", "20", *keys)
        time.sleep(0.1)

    def write(self, text):
        x("xdotool", "type", "--delay", "15", "--", text)
        time.sleep(0.1)

    def answer_file(self, title, path, *before):
        """Types a path into a dialog for a file; before it, the keys that make or clear the place for it."""
        wait(lambda: active_title() == title, "the dialog “%s”" % title)
        for key in before:
            self.keys(key)
        self.write(path)
        dialog = next(node for node in children(self.root) if asked(node.get_name) == title)
        wait(lambda: any(text_of(node).startswith(path) for node, _ in walk(dialog) if role(node) == "text"),
             "the path to be typed")
        self.keys("Return")

    def enter(self, name, text, kind=None):
        """Clicks into an entry and types over what is there."""
        self.click(name, kind)
        self.keys("ctrl+a")
        self.write(text)
