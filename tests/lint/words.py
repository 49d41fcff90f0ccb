#!/usr/bin/env python3
"""Checks for words that are left over or do not belong: words.py ROOT

Open ends in the code, traces of the machine that it was written on, and exclamation marks on the screen.
"""

import re
import sys
from pathlib import Path

# Written in two parts, so that this file is clean itself.
LEFTOVERS = re.compile("|".join([
    r"\bTO" r"DO\b", r"\bFIX" r"ME\b", r"\bXX" r"X\b", r"\bHA" r"CK\b", r"tran" r"script", r"seed" r" document",
    r"/wo" r"rk/", r"/ho" r"me/", r"\bsha" r"red/", r"\bmod" r"el\.md", r"\bsh" r"op\.md", r"\bphy" r"sics\.md",
    r"\btra" r"de\.md", r"\bde" r"sk\.md"]))
ON_SCREEN = re.compile(r'\b(?:N|C|NC)?_ ?\(\s*("(?:[^"\\]|\\.)*"\s*)+')
EXCLAMATION = re.compile(r"!(?![=])")
TEXT = {".c", ".h", ".def", ".py", ".sh", ".build", ".md", ".ui", ".css", ".xml", ".in", ".po", ".svg",
        ".rimwright", ""}


def faults_of(path, name):
    try:
        text = path.read_text(encoding="utf-8")
    except UnicodeDecodeError:
        return
    for number, line in enumerate(text.splitlines(), 1):
        match = LEFTOVERS.search(line)
        if match:
            yield "%s:%d: %s" % (name, number, match.group())
    if path.suffix in (".c", ".h", ".def"):
        for match in ON_SCREEN.finditer(text):
            if EXCLAMATION.search(match.group()):
                yield "%s:%d: an exclamation mark on the screen" % (name, text[:match.start()].count("\n") + 1)


def main():
    root, faults, files = Path(sys.argv[1]), [], 0
    for path in sorted(root.rglob("*")):
        name = path.relative_to(root)
        outside = name.parts[0] == ".git" or name.parts[0].startswith("build")
        outside = outside or name.match("tests/fuzz/*/*")
        if path.is_file() and not outside and path.suffix in TEXT and "__pycache__" not in name.parts:
            files += 1
            faults += faults_of(path, name)
    print("\n".join(faults) or "%d files are clean" % files)
    return 1 if faults or not files else 0


sys.exit(main())
