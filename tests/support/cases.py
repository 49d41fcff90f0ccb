"""Runs the cases of a test of the window, and says how each went in the protocol that meson reads.

A case is a function case_...() and works on what was started for it.  It fails where what it expects does not come, and
where a program that ran in it has written a word to standard error.
"""

import tempfile
import traceback

from drive import Failure, Program, wait


def expect(condition, what):
    if not condition:
        raise Failure(what)


def open_window(*command, goes_on=False):
    """A program whose form is to be seen."""
    window = Program(*command, goes_on=goes_on)
    wait(lambda: window.has("Rim"), "the form")
    return window


def finish(window):
    errors = window.end()
    expect(errors == "", "standard error: " + errors)


def fault(case, start):
    """What is wrong in a case, or nothing.  No program outlives it."""
    with tempfile.TemporaryDirectory() as folder:
        try:
            case(*start(folder))
            for program in Program.started:
                finish(program)
            return ""
        except Failure as failure:
            return str(failure)
        except Exception:  # pylint: disable=broad-exception-caught
            return traceback.format_exc()
        finally:
            for program in Program.started:
                program.end()
            Program.started.clear()


def run(module, start, wanted=()):
    """Runs the cases in a module's globals(), all or those that are named.  start(folder) answers what a case is called
    with; the folder is the case's own, and goes with it.  Returns the exit status."""
    cases = {name[5:].replace("_", " "): case for name, case in module.items() if name.startswith("case_")}
    names = [name for name in cases if not wanted or name in wanted]
    failed = not names
    print("1..%d" % len(names), flush=True)
    for number, name in enumerate(names, 1):
        wrong = fault(cases[name], start)
        if wrong:
            failed = True
            print("# " + wrong.strip().replace("\n", "\n# "))
        print("%s %d - %s" % ("not ok" if wrong else "ok", number, name), flush=True)
    return 1 if failed else 0
