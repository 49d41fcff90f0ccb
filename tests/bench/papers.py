#!/usr/bin/env python3
"""papers.py RIMWRIGHT: how long the whole set of papers of the built-in build takes on A4, from the start of the
program to its end.  Run by `meson test --benchmark`."""

import statistics
import subprocess
import sys
import tempfile
import time

ROUNDS = 7


def seconds(program, folder, *options):
    start = time.monotonic()
    subprocess.run([program, "papers", "--into", folder, "--paper", "a4", *options], stdout=subprocess.DEVNULL,
                   check=True)
    return time.monotonic() - start


def report(program, folder, name, *options):
    took = sorted(seconds(program, folder, *options) for _ in range(ROUNDS))
    print("%-20s least %.3f s, median %.3f s" % (name, took[0], statistics.median(took)))


def main():
    with tempfile.TemporaryDirectory() as folder:
        report(sys.argv[1], folder, "PDF")
        report(sys.argv[1], folder, "PDF and SVG", "--svg")


main()
