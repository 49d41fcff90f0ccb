#!/usr/bin/python3
"""memory.py RIMWRIGHT EMPTY_WINDOW: the most memory that is resident at once, as the system counts it for an ended
process, of a list, of all papers on A4, of the window until it is first painted, and of an empty GTK window.
Needs a display."""

import os
import subprocess
import sys
import tempfile


def megabytes(*command, **variables):
    process = subprocess.Popen(command, stdout=subprocess.DEVNULL, env={**os.environ, **variables})
    _, status, usage = os.wait4(process.pid, 0)
    if status != 0:
        raise SystemExit("%s: status %d" % (" ".join(command), status))
    return usage.ru_maxrss / 1024


def main():
    program, empty = sys.argv[1:3]
    with tempfile.TemporaryDirectory() as folder:
        rows = [
            ("list", megabytes(program, "list")),
            ("papers", megabytes(program, "papers", "--into", folder, "--paper", "a4")),
            ("window", megabytes(program, RIMWRIGHT_EXIT_AFTER_FIRST_FRAME="1")),
            ("empty window", megabytes(empty)),
        ]
    for name, most in rows:
        print("%-20s most %6.1f MB" % (name, most))


main()
