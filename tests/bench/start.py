#!/usr/bin/python3
"""start.py RIMWRIGHT EMPTY_WINDOW: milliseconds from main to the first painted frame, of the program and of an
empty GTK window in turn, with the ratio pair by pair.  Needs a display."""

import os
import statistics
import subprocess
import sys

PAIRS = 11


def first_frame(program):
    environment = dict(os.environ, RIMWRIGHT_EXIT_AFTER_FIRST_FRAME="1")
    done = subprocess.run([program], env=environment, capture_output=True, text=True, check=True, timeout=30)
    return float(done.stdout.split()[0])


def main():
    program, empty = sys.argv[1:3]
    first_frame(program), first_frame(empty)  # once each to warm up
    pairs = [(first_frame(program), first_frame(empty)) for _ in range(PAIRS)]
    ratios = [ours / theirs for ours, theirs in pairs]
    print("program      median %6.1f ms" % statistics.median(p[0] for p in pairs))
    print("empty window median %6.1f ms" % statistics.median(p[1] for p in pairs))
    print("ratio        median %6.2f, least %.2f" % (statistics.median(ratios), min(ratios)))


main()
