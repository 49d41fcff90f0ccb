#!/usr/bin/python3
"""test_print_dialog.py RIMWRIGHT [CASE...]: prints papers through the system's dialog, with a real pointer, to a file
as it offers without a printer.  The file is measured with poppler: full size is full size.
"""

import csv
import io
import json
import os
import re
import subprocess
import sys
import time

sys.path.insert(0, os.path.join(os.path.dirname(os.path.abspath(__file__)), "..", "support"))
from cases import expect, run  # noqa: E402
from drive import Failure, Program, wait, x  # noqa: E402

RIMWRIGHT = os.path.abspath(sys.argv[1])  # a case goes to a folder of its own
NEAR = 0.02  # mm: poppler's numbers are good to 0.003 mm
MM = 25.4 / 72


def is_whole(path):
    return subprocess.run(["pdfinfo", path], capture_output=True, check=False).returncode == 0


class Papers(Program):
    """The program with the window of the papers open."""

    def __init__(self, goes_on=False):
        super().__init__(RIMWRIGHT, goes_on=goes_on)
        wait(lambda: self.has("Rim"), "the form")
        self.keys("ctrl+p")
        wait(lambda: "Papers" in self.windows(), "the papers")
        self.await_words(r"^Page \d+ of \d+: ")

    @property
    def errors(self):
        """But for what the system's dialog says of network printers, where there is no system bus to find them on."""
        lines = [line for line in super().errors.splitlines() if line.strip() and "avahi" not in line]
        return "\n".join(lines)

    def only(self, sheet):
        self.click("Choose no sheet", window="Papers")
        self.await_words("^No sheet is chosen$")
        self.click(sheet, "check box", window="Papers")
        self.await_words(r"^Page 1 of \d+: %s$" % sheet)

    def pick_paper(self, steps):
        for _ in range(12):
            spot = self.on_screen(*self.find("Size", "combo box", "Papers"))
            if spot[1] < 740:
                break
            x("xdotool", "mousemove", "150", "300", "click", "5")
            time.sleep(0.2)
        self.click("Size", "combo box", "Papers")
        self.keys(*["Down"] * steps, "Return")
        time.sleep(0.4)

    def print(self, folder, chosen=False):
        """Prints; chosen: the printer is expected to be chosen already.  The path of what came out."""
        path = os.path.join(folder, "output.pdf")
        self.keys("ctrl+p")
        wait(lambda: "Print" in self.windows(), "the dialog")
        if not chosen:
            self.click("Print to File", "label", "Print")
        self.await_words("^Output format:$")
        self.click("Print", "push button", "Print")
        wait(lambda: os.path.exists(path) and is_whole(path), "the file")
        return path


def read(program, *words):
    return subprocess.run([program, *words], capture_output=True, text=True, check=True).stdout


def sizes(path):
    """Of the pages, in points."""
    found = re.findall(r"Page +\d+ size: +([\d.]+) x ([\d.]+)", read("pdfinfo", "-f", "1", "-l", "99", path))
    return [(float(width), float(height)) for width, height in found]


def lines_on(path, page):
    """Straight lines as x0, y0, x1, y1: mm from the upper left corner."""
    svg = read("pdftocairo", "-svg", "-noshrink", "-nocenter", "-f", str(page), "-l", str(page), path, "-")
    lines = []
    for element in re.findall(r"<path [^>]*>", svg):
        data = re.search(r' d="M ([\d.-]+) ([\d.-]+) L ([\d.-]+) ([\d.-]+) ?"', element)
        matrix = re.search(r'transform="matrix\(([^)]*)\)', element)
        if data:
            a, b, c, d, e, f = map(float, re.split("[ ,]+", matrix.group(1))) if matrix else (1, 0, 0, 1, 0, 0)
            x0, y0, x1, y1 = map(float, data.groups())
            lines.append(tuple(MM * value for value in (a * x0 + c * y0 + e, b * x0 + d * y0 + f,
                                                        a * x1 + c * y1 + e, b * x1 + d * y1 + f)))
    return lines


def has_line(lines, *wanted):
    return any(all(abs(have - want) < NEAR for have, want in zip(line, wanted)) for line in lines)


def check_bars(lines, height):
    """On a page that lies across, with margins of 10 mm: bars begin 19 mm from the left and 34 mm over the foot."""
    level, upright = height - 29.5, height - 34
    for mm in (0, 100):
        expect(has_line(lines, 19 + mm, level, 19 + mm, level - 3.2), "the level bar's mark at %d mm is off" % mm)
        expect(has_line(lines, 14.5, upright - mm, 11.3, upright - mm), "the upright bar's mark at %d mm is off" % mm)
    expect(has_line(lines, 19 + 101.6, level, 19 + 101.6, level + 3.2), "the mark at 4 in is off")


def arcs_of_hooks():
    rows = json.loads(read(RIMWRIGHT, "list", "--format", "json"))["dimensions"]
    return [row["value"] for row in rows if row["id"].startswith("hooks.arc[")]


def holes_on(lines):
    """The middles of the level lines through holes for shoe bolts, which reach 3 mm past the hole."""
    rows = csv.DictReader(io.StringIO(read(RIMWRIGHT, "parameters", "--format", "csv")))
    hole = next(float(row["default"]) for row in rows if row["id"] == "shoes.bolt_hole")
    return sorted((x0 + x1) / 2 for x0, y0, x1, y1 in lines
                  if abs(y1 - y0) < NEAR and abs(abs(x1 - x0) - hole - 6) < NEAR)


def case_full_size(window, folder):
    """All pages of the rim strip: both bars, and holes as far apart as the engine has them round the rim."""
    arcs, seen = arcs_of_hooks(), set()
    window.only("Rim strip")
    path = window.print(folder)
    pages = sizes(path)
    expect(len(pages) > 2 and all(abs(w - 297 / MM) < 0.1 and abs(h - 210 / MM) < 0.1 for w, h in pages),
           "the pages are %s" % pages)
    for page in range(1, len(pages) + 1):
        lines = lines_on(path, page)
        check_bars(lines, 210)
        holes = holes_on(lines)
        expect(len(holes) > 1, "page %d has no holes" % page)
        # Seen from outside, the first hook is the last on the strip.
        fits = [k for k in range(len(arcs) - len(holes) + 1)
                if all(abs(holes[0] - hole - (arcs[k + len(holes) - 1 - i] - arcs[k + len(holes) - 1])) < NEAR
                       for i, hole in enumerate(holes))]
        expect(fits, "the holes of page %d are not as far apart as they should be: %s" % (page, holes))
        seen.add(len(holes))
    expect(seen, "nothing was measured")


def case_page_setup_kept(window, folder):
    """Paper and printer of one run are those of the next; what is printed then is full size again."""
    window.only("Rim strip")
    window.pick_paper(6)
    window.await_words(r"^Page 1 of \d+: Rim strip$")
    first = window.print(folder)
    letter = [(792.0, 612.0)] * len(sizes(first))
    expect(sizes(first) == letter, "the pages are %s" % sizes(first))
    os.remove(first)
    window.end()
    window = Papers(goes_on=True)
    expect(window.text("Size", "combo box") == "Letter", "the paper is %s" % window.text("Size", "combo box"))
    if window.says(r"^Page 1 of \d+: General arrangement$"):
        window.only("Rim strip")
    second = window.print(folder, chosen=True)
    expect(sizes(second) == letter, "the pages are %s" % sizes(second))
    check_bars(lines_on(second, 1), 215.9)


def forget_papers():
    """No case goes on with another's printer and the file that it wrote."""
    config = os.environ.get("XDG_CONFIG_HOME") or os.path.expanduser("~/.config")
    memory = os.path.join(config, "rimwright", "papers.ini")
    if os.path.exists(memory):
        os.remove(memory)


def start(folder):
    forget_papers()
    os.chdir(folder)  # where the dialog proposes to write
    return [Papers(), folder]


if os.environ.get("DISPLAY") is None:
    raise Failure("there is no display")
sys.exit(run(globals(), start, sys.argv[2:]))
