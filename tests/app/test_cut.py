#!/usr/bin/python3
"""Cutting plans from outside: test_cut.py RIMWRIGHT DATA [--seed N] [--builds N]

Every plan is checked again from the pieces, the shelf and the kerfs alone: nothing overlaps, a kerf lies between
neighbours, the grain runs along the board, defects are left out, the demand is met but for what is said to be missing.
How many bars must be touched is worked out a second time as an integer program, by the HiGHS solver that comes with
SciPy (https://highs.dev; Q. Huangfu & J. A. J. Hall, Math. Prog. Comp. 10 (2018) 119).
"""

import argparse
import csv
import io
import json
import random
import subprocess
import sys
import tempfile
from collections import Counter
from pathlib import Path

import numpy as np
from scipy.optimize import Bounds, LinearConstraint, milp

NEAR = 1e-6
SECTION_NEAR = 0.2  # what counts as the same section
FIELDS = ["name", "kind", "material", "length", "width", "thickness", "count", "avoid", "price", "mass"]


def run(program, shelf, settings=(), form="json"):
    with tempfile.NamedTemporaryFile("w", suffix=".csv", newline="") as file:
        writer = csv.DictWriter(file, FIELDS)
        writer.writeheader()
        writer.writerows(shelf)
        file.flush()
        words = [program, "cut", "--shelf", file.name, "--format", form]
        for setting in settings:
            words += ["--set", setting]
        done = subprocess.run(words, capture_output=True, text=True, check=False)
    assert done.returncode in (0, 1), done.stderr
    return done.returncode, json.loads(done.stdout) if form == "json" else done.stdout


def read_shelf(path):
    with open(path, newline="", encoding="utf-8") as file:
        return list(csv.DictReader(file))


def number(item, field):
    return float(item[field]) if item.get(field) else 0.0


def stretches(item):
    parts = [part.split("..") for part in (item.get("avoid") or "").split(";") if part.strip()]
    return [(float(a), float(b)) for a, b in parts]


# ---- the verifier ----

def check_cut(plan, item, strip, cut):
    piece = plan["pieces"][cut["place"]]
    width, thickness = piece["width"], piece["thickness"]
    if cut["on_edge"]:
        assert piece["on_edge"]
        width, thickness = thickness, width
    assert item["material"] == piece["material"]
    assert abs(cut["width"] - width) < NEAR and strip["to"] - strip["from"] >= width - NEAR
    assert number(item, "thickness") >= thickness - NEAR
    assert cut["to"] - cut["from"] >= piece["length"] - NEAR  # along the board, and so along the grain
    assert cut["from"] >= plan["end_trim"] - NEAR
    assert cut["to"] <= number(item, "length") - plan["end_trim"] + NEAR
    for start, end in stretches(item):
        assert cut["to"] <= start + NEAR or cut["from"] >= end - NEAR
    if piece["run"] > 0:
        assert strip["to"] - strip["from"] <= width + 0.05 + NEAR


def check_strip(plan, item, strip, made):
    cuts = sorted(strip["cuts"], key=lambda cut: cut["from"])
    for cut in cuts:
        check_cut(plan, item, strip, cut)
        made[cut["place"]] += 1
    for before, after in zip(cuts, cuts[1:]):
        assert after["from"] - before["to"] >= plan["cross_kerf"] - NEAR


def check_boards(plan, shelf, made):
    touched = Counter()
    for board in plan["boards"]:
        item = shelf[board["item"]]
        touched[board["item"], board["copy"]] += 1
        assert board["copy"] < int(item["count"] or 1)
        edge = plan["edge_trim"]
        for strip in sorted(board["strips"], key=lambda strip: strip["from"]):
            assert strip["from"] >= edge - NEAR
            assert strip["to"] <= number(item, "width") - plan["edge_trim"] + NEAR
            edge = strip["to"] + plan["rip_kerf"]
            check_strip(plan, item, strip, made)
    assert max(touched.values(), default=1) == 1


def suits(piece, item):
    if item["kind"] != piece["kind"] or piece["material"] not in (None, item["material"]):
        return False
    sides = ["width"] + (["thickness"] if piece["kind"] in ("bar", "tube") else [])
    return all(abs(number(item, side) - piece[side]) <= SECTION_NEAR + NEAR for side in sides)


def check_bars(plan, shelf, made):
    used = Counter()
    for bar in plan["bars"]:
        item = shelf[bar["item"]]
        used[bar["item"]] += bar["times"]
        kerf = 0 if item["kind"] == "wire" else plan["metal_kerf"]
        need = 0
        for cut in bar["cuts"]:
            piece = plan["pieces"][cut["place"]]
            assert piece["kind"] == item["kind"]
            made[cut["place"]] += cut["count"] * bar["times"]
            need += cut["count"] * (piece["length"] + kerf)
        assert need - kerf <= number(item, "length") - 2 * plan["bar_trim"] + 1e-3
    for place, count in used.items():
        assert count <= int(shelf[place]["count"] or 1)


def verify(plan, shelf):
    made = Counter()
    check_boards(plan, shelf, made)
    check_bars(plan, shelf, made)
    for place, piece in enumerate(plan["pieces"]):
        assert made[place] + piece["missing"] == piece["count"], piece
    assert plan["missing"] == sum(piece["missing"] for piece in plan["pieces"])
    for group in plan["groups"]:
        assert group["bound"] <= group["touched"] or group["bound"] < 0


# ---- the integer program ----

def fewest(lengths, stock, kerf):
    """The fewest pieces missing, and then the fewest bars: pieces each go into one bar or into none."""
    n, m = len(lengths), len(stock)
    size = n * m + m
    cost = np.concatenate([np.full(n * m, -(m + 1.0)), np.ones(m)])  # a piece made is worth more than all bars
    once = np.zeros((n, size))
    room = np.zeros((m, size))
    for i in range(n):
        once[i, i * m:(i + 1) * m] = 1
        for k in range(m):
            room[k, i * m + k] = lengths[i] + kerf
    for k in range(m):
        room[k, n * m + k] = -(stock[k] + kerf)
    found = milp(cost, integrality=np.ones(size), bounds=Bounds(0, 1),
                 constraints=[LinearConstraint(once, -np.inf, 1), LinearConstraint(room, -np.inf, 1e-7)],
                 options={"time_limit": 20})
    assert found.status == 0, found.message
    value = round(found.fun)
    made = -(value // (m + 1))
    return n - made, value + made * (m + 1)


def check_fewest(plan, shelf, kind):
    pieces = [(place, piece) for place, piece in enumerate(plan["pieces"]) if piece["kind"] == kind]
    stock = [number(item, "length") - 2 * plan["bar_trim"] for item in shelf
             if item["kind"] == kind and suits(pieces[0][1], item) for _ in range(int(item["count"] or 1))]
    lengths = [piece["length"] for _, piece in pieces for _ in range(int(piece["count"]))]
    missing, bars = fewest(lengths, stock, 0 if kind == "wire" else plan["metal_kerf"])
    touched = sum(bar["times"] for bar in plan["bars"] if shelf[bar["item"]]["kind"] == kind)
    assert missing == sum(piece["missing"] for _, piece in pieces), (missing, lengths, stock)
    assert bars == touched, (bars, touched, lengths, stock)


# ---- the cases ----

def new_item(kind, material, length, width, thickness="", count=1, avoid=""):
    return dict(zip(FIELDS, ["", kind, material, length, width, thickness, count, avoid, "", ""]))


def random_shelf(rand):
    shelf = []
    for _ in range(rand.randint(3, 14)):
        length, start = rand.uniform(150, 1400), rand.uniform(0, 700)
        avoid = "%.1f..%.1f" % (start, start + rand.uniform(10, 150)) if rand.random() < 0.4 else ""
        shelf.append(new_item(rand.choice(["board", "board", "sheet"]),
                              rand.choice(["beech", "cherry_black", "maple_hard", "pear"]), round(length, 1),
                              round(rand.uniform(25, 220), 1), round(rand.uniform(4, 80), 1), rand.randint(1, 2), avoid))
    for _ in range(rand.randint(2, 7)):
        shelf.append(new_item("wire", "brass_cartridge_half_hard", round(rand.uniform(60, 420), 1), 2))
    for _ in range(rand.randint(1, 3)):
        shelf.append(new_item("rod", "steel_mild", round(rand.uniform(300, 1200), 1), 6.35, "", rand.randint(1, 2)))
    return shelf


def random_settings(rand):
    settings = ["rim.segments=%d" % rand.choice([8, 10, 12, 16]), "stock.neck_strips=%d" % rand.randint(1, 4),
                "stock.neck_head=" + rand.choice(["solid", "scarfed"]), "shop.kerf=%.1f" % rand.uniform(0, 4),
                "stock.neck_heel=" + rand.choice(["solid", "stacked"]), "stock.bar_trim=%.1f" % rand.uniform(0, 5),
                "stock.board_strips=%d" % rand.randint(1, 3), "frets.count=%d" % rand.randint(6, 12)]
    if rand.random() < 0.3:
        settings.append("rim.construction=" + rand.choice(["staves", "plies"]))
    return settings


def test_example(program, data):
    shelf = read_shelf(data / "shelf.csv")
    status, plan = run(program, shelf)
    verify(plan, shelf)
    assert status == 0 and plan["missing"] == 0
    check_fewest(plan, shelf, "wire")


def test_short(program, data):
    """A shelf that will not do, and at least three changes each of which makes it do."""
    shelf = read_shelf(data / "shelf-short.csv")
    status, plan = run(program, shelf)
    verify(plan, shelf)
    assert status == 1 and plan["missing"] > 0
    enough = [remedy for remedy in plan["remedies"] if remedy["missing"] == 0]
    assert len(enough) >= 3, plan["remedies"]
    for remedy in enough:
        status, better = run(program, shelf, ["%s=%s" % (change["id"], change["value"]) for change in remedy["changes"]])
        verify(better, shelf)
        assert status == 0 and better["missing"] == 0, remedy


def test_random(program, seed, builds):
    rand = random.Random(seed)
    for _ in range(builds):
        shelf, settings = random_shelf(rand), random_settings(rand)
        _, plan = run(program, shelf, settings)
        verify(plan, shelf)
        check_fewest(plan, shelf, "wire")


def test_forms(program, data):
    shelf = read_shelf(data / "shelf.csv")
    _, plan = run(program, shelf)
    _, table = run(program, shelf, form="csv")
    rows = list(csv.DictReader(io.StringIO(table)))
    wood = sum(int(piece["count"]) for piece in plan["pieces"] if piece["kind"] == "board")
    assert sum(1 for row in rows if row["strip"]) == wood
    _, text = run(program, shelf, form="text")
    assert text.startswith("The shelf will do.")


def main():
    parser = argparse.ArgumentParser()
    parser.add_argument("program")
    parser.add_argument("data", type=Path)
    parser.add_argument("--seed", type=int, default=20260504)
    parser.add_argument("--builds", type=int, default=25)
    options = parser.parse_args()
    test_example(options.program, options.data)
    test_short(options.program, options.data)
    test_forms(options.program, options.data)
    test_random(options.program, options.seed, options.builds)
    print("the example, a short shelf and %d random ones hold" % options.builds)


sys.exit(main())
