#!/usr/bin/env python3
"""Counts the tests that meson ran: tally.py LOG..., each LOG a log's path without .json or .junit.xml

Single cases come from the JUnit log.  It does not tell a program that crashed, leaked or hung after its
cases were through: that comes from meson's own log.  Names what failed, and closes with "N passed,
N failed", and ", N skipped" where some were.  A log that is not there counts as a failure.  Exit 0: all
passed, and at least one did.
"""

import json
import sys
import xml.etree.ElementTree as xml
from pathlib import Path

GOOD = {"OK": "passed", "EXPECTEDFAIL": "passed", "SKIP": "skipped", "IGNORED": "skipped"}


def junit_cases(path):
    """Verdicts of single cases, by the name of the test that they are part of."""
    found = {}
    for case in xml.parse(path).getroot().iter("testcase"):
        bad = case.find("failure") is not None or case.find("error") is not None
        verdict = "failed" if bad else "skipped" if case.find("skipped") is not None else "passed"
        test = case.get("classname").partition(".")[2]
        if test:
            found.setdefault(test, []).append((case.get("name"), verdict))
    return found


def cases(log):
    """(name, verdict) of each case in a log."""
    try:
        single = junit_cases(log + ".junit.xml")
        tests = [json.loads(line) for line in Path(log + ".json").read_text("utf-8").splitlines()]
    except (OSError, ValueError, xml.ParseError) as error:
        yield log, "failed: " + str(error)
        return
    for test in tests:
        name, whole = test["name"], GOOD.get(test["result"], "failed")
        parts = single.get(name, [])
        yield from (("%s: %s %s" % (log, name, part), verdict) for part, verdict in parts)
        if not parts or (whole == "failed" and all(verdict != "failed" for _, verdict in parts)):
            yield "%s: %s (%s)" % (log, name, test["result"]), whole
    if not tests:
        yield log, "failed: no test ran"


def main():
    found = [case for log in sys.argv[1:] for case in cases(log)]
    count = {word: sum(1 for _, verdict in found if verdict.startswith(word))
             for word in ("passed", "failed", "skipped")}
    for name, verdict in found:
        if not verdict.startswith("passed"):
            print("%s: %s" % (name, verdict))
    line = "%(passed)d passed, %(failed)d failed" % count
    print(line + (", %(skipped)d skipped" % count if count["skipped"] else ""))
    return 0 if count["passed"] and not count["failed"] else 1


sys.exit(main())
