#!/usr/bin/env python3
"""cutting.py RIMWRIGHT: how long plans for cutting the built-in build take, from the start of the program to its
end, from a shelf with plenty and from one with too little.  Run by `meson test --benchmark`."""

import statistics
import subprocess
import sys
import time
from pathlib import Path

ROUNDS = 7
SHELVES = Path(__file__).resolve().parents[2] / "data"


def seconds(program, shelf):
    start = time.monotonic()
    done = subprocess.run([program, "cut", "--shelf", shelf], stdout=subprocess.DEVNULL, check=False)
    if done.returncode not in (0, 1):  # 1: the stock will not do
        raise SystemExit("%s: exit status %d" % (shelf, done.returncode))
    return time.monotonic() - start


def main():
    for name, shelf in (("plenty", "shelf.csv"), ("too little", "shelf-short.csv")):
        took = sorted(seconds(sys.argv[1], SHELVES / shelf) for _ in range(ROUNDS))
        print("%-20s least %.3f s, median %.3f s" % (name, took[0], statistics.median(took)))


main()
