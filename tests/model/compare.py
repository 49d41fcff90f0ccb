#!/usr/bin/python3
"""Compares all dimensions that the program lists with an independent statement of the model.

compare.py PATH/TO/rimwright [--builds N] [--seed S] [--only TEXT]
Prints each disagreement with both values.  Exit 0: all agree; 1: some do not; 77: no python3-scipy.
"""

import argparse
import json
import multiprocessing
import re
import subprocess
import sys

try:
    import scipy  # noqa: F401
except ImportError:
    print("python3-scipy is not installed")
    sys.exit(77)

import builds
from build import read_parameters
from statement import dimensions

# Rows that come out of bending, the membrane and the stretch of strings: a share of the value.
PHYSICS = re.compile(r"neck\.(pull_up|relief_unrodded|rod_moment)|nut\.forward|bridge\.(sag|down_force|compensation|best_|back_)")
SHARE, EXACT, CENTS, LEAST = 2e-4, 1e-6, 0.02, 2e-5


def allowed(key, unit, value):
    if unit == "cent":
        return CENTS
    if PHYSICS.match(key):
        return max(SHARE * abs(value), LEAST)
    return EXACT if unit in ("mm", "deg", "") else EXACT * max(abs(value), 1.0)


def ask(program, texts, measured):
    command = [program, "list", "--format", "json"]
    for option, values in (("--set", texts), ("--measured", {k: "%.17g" % v for k, v in measured.items()})):
        for key, value in values.items():
            command += [option, key + "=" + value]
    done = subprocess.run(command, capture_output=True, text=True, check=False, timeout=60)
    if done.returncode != 0:
        raise RuntimeError("exit %d: %s" % (done.returncode, done.stderr.strip()))
    return {row["id"]: row for row in json.loads(done.stdout)["dimensions"]}


def differences(program, table, case):
    name, texts, measured = case
    try:
        theirs = ask(program, texts, measured)
    except RuntimeError as error:
        return ["%s: %s" % (name, error)]
    whole = {key: row["default"] for key, row in table.items()}
    whole.update(texts)
    found = []
    for word, given in (("value", measured), ("planned", {})):
        ours = dimensions(table, whole, given)
        other = {key: row[word] for key, row in theirs.items() if row[word] is not None}
        for key in sorted(ours.keys() ^ other.keys()):
            found.append("%s: %s %s: only in the %s" % (name, word, key, "statement" if key in ours else "program"))
        for key in sorted(ours.keys() & other.keys()):
            if not abs(ours[key] - other[key]) <= allowed(key, theirs[key]["unit"], ours[key]):
                found.append("%s: %s %s: statement %.12g, program %.12g, %s"
                             % (name, word, key, ours[key], other[key], theirs[key]["unit"]))
        if not measured:
            break
    return found


def cases(table, count, seed):
    defaults = {key: row["default"] for key, row in table.items()}
    rng = builds.generator(seed)
    for name, texts in builds.BY_HAND:
        yield name, texts, {}
    for texts, measured in builds.MEASURED_BY_HAND:
        yield "measured %s" % measured, texts, measured
    rows = dimensions(table, defaults)
    for _ in range(count // 2):
        measured = builds.measured_near(rows, rng, 6)
        yield "measured %s" % measured, {}, measured
    for number in range(count):
        texts = builds.random_case(table, rng)
        yield "random %d %s" % (number, texts), texts, {}


def main():
    parser = argparse.ArgumentParser()
    parser.add_argument("program")
    parser.add_argument("--builds", type=int, default=40)
    parser.add_argument("--seed", type=int, default=1)
    parser.add_argument("--only", default="")
    options = parser.parse_args()
    table = read_parameters(subprocess.run([options.program, "parameters", "--format", "csv"],
                                           capture_output=True, text=True, check=True).stdout)[1]
    chosen = [case for case in cases(table, options.builds, options.seed) if options.only in case[0]]
    with multiprocessing.Pool() as pool:
        results = pool.starmap(differences, [(options.program, table, case) for case in chosen])
    for line in (line for result in results for line in result):
        print(line)
    wrong = sum(1 for result in results if result)
    print("%d builds compared, %d disagree" % (len(results), wrong))
    return 1 if wrong or not results else 0


if __name__ == "__main__":
    sys.exit(main())
