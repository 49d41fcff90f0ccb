#!/usr/bin/env python3
"""Checks that po/POTFILES.in names, sorted, exactly the files that hold text to translate.

potfiles.py ROOT
"""

import re
import sys
from pathlib import Path

C_MARK = re.compile(r'\b(?:N|C|NC)?_ ?\(\s*"|\b(?:n|d)?gettext ?\(\s*"')
UI_MARK = re.compile(r'translatable="(?:yes|true)"')
DATA = (".desktop.in", ".metainfo.xml.in")


def marked(path):
    if path.suffix in (".c", ".h", ".def"):
        return C_MARK.search(path.read_text(encoding="utf-8"))
    if path.suffix == ".ui":
        return UI_MARK.search(path.read_text(encoding="utf-8"))
    return path.name.endswith(DATA)


def main():
    root = Path(sys.argv[1])
    want = sorted(path.relative_to(root).as_posix() for folder in ("app", "data", "engine", "ui")
                  for path in (root / folder).rglob("*") if path.is_file() and marked(path))
    lines = (root / "po" / "POTFILES.in").read_text(encoding="utf-8").splitlines()
    have = [line for line in lines if line and not line.startswith("#")]
    faults = ["%s: holds text, is not listed" % name for name in want if name not in have]
    faults += ["%s: is listed, holds no text or does not exist" % name for name in have if name not in want]
    if have != sorted(set(have)):
        faults.append("not sorted, or a name twice")
    print("\n".join(faults) or "%d files listed" % len(have))
    return 1 if faults or not have else 0


sys.exit(main())
