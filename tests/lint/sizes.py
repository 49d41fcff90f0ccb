#!/usr/bin/env python3
"""Checks that no function has more than 60 lines and no file more than 600.

sizes.py ROOT.  C functions are told by GNU style: their braces stand alone in the first column.  Tables
(*.def), catalogues and corpora are no code and not counted.
"""

import ast
import sys
from pathlib import Path

FOLDERS, LONGEST_FUNCTION, LONGEST_FILE = ("app", "ui", "engine", "tests"), 60, 600


def c_functions(lines):
    start = None
    for number, line in enumerate(lines, 1):
        if line == "{":
            start = number
        elif line == "}" and start is not None:
            yield start, number - start - 1
            start = None


def python_functions(text):
    for node in ast.walk(ast.parse(text)):
        if isinstance(node, (ast.FunctionDef, ast.AsyncFunctionDef)):
            yield node.lineno, node.end_lineno - node.lineno


def main():
    root, faults, files = Path(sys.argv[1]), [], 0
    for path in sorted(path for folder in FOLDERS for path in (root / folder).rglob("*")):
        script = path.is_file() and not path.suffix and path.read_bytes()[:2] == b"#!"
        if not (script or path.suffix in (".c", ".h", ".py", ".sh", ".ui", ".css")):
            continue
        text, name = path.read_text(encoding="utf-8"), path.relative_to(root)
        lines = text.splitlines()
        files += 1
        if len(lines) > LONGEST_FILE:
            faults.append("%s: %d lines, at most %d" % (name, len(lines), LONGEST_FILE))
        functions = python_functions(text) if path.suffix == ".py" else c_functions(lines)
        for start, length in functions:
            if length > LONGEST_FUNCTION:
                faults.append("%s:%d: a function of %d lines, at most %d"
                              % (name, start, length, LONGEST_FUNCTION))
    print("\n".join(faults) or "%d files within bounds" % files)
    return 1 if faults or not files else 0


sys.exit(main())
