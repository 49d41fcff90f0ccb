#!/usr/bin/env python3
"""Checks that includes point the right way: app -> ui -> engine/io -> engine, within the engine from papers and
studies down to the tables, and within ui from the window down to what all widgets share.

layers.py ROOT.  Each layer may include its own headers and those below.  Outside libraries: the engine
proper sees GLib and the C library, engine/io adds GIO, json-glib, cairo and Pango, ui adds GTK.
"""

import re
import sys
from pathlib import Path

# From the bottom up.
ENGINE = ["table", "project", "model", "check", "making", "stock", "sheet", "draw", "study", "paper"]
WIDGETS = ["base", "document", "canvas", "form", "papers", "drawer", "window"]
LAYERS = ["engine/" + folder for folder in ENGINE] + ["engine/io"] + ["ui/" + folder for folder in WIDGETS] + ["app"]
IO, UI = LAYERS.index("engine/io"), LAYERS.index("ui/" + WIDGETS[0])
OUTSIDE = {"gio": IO, "json-glib": IO, "cairo": IO, "pango": IO, "gtk": UI, "gdk": UI, "gsk": UI, "graphene": UI,
           "adwaita": 99}
GENERATED = re.compile(r".*-(resources|config)\.h")
INCLUDE = re.compile(r'^\s*#\s*include\s*([<"])([^>"]+)[>"]', re.M)


def layer_files(root, layer):
    return (path for path in sorted((root / layer).rglob("*")) if path.suffix in (".c", ".h", ".def"))


def outside_layer(name):
    """The lowest layer that may see a library's header."""
    stem = re.split(r"[/.]", name)[0]
    ranks = [rank for word, rank in OUTSIDE.items() if stem == word or stem.startswith(word)]
    return max(ranks, default=0)


def main():
    root, faults, home = Path(sys.argv[1]), [], {}
    for rank, layer in enumerate(LAYERS):
        for path in layer_files(root, layer):
            if path.name in home and path.suffix == ".h":
                faults.append("%s: a header of that name stands in two layers" % path.relative_to(root))
            home[path.name] = rank
    for folder in ("engine", "ui", "app"):
        for path in layer_files(root, folder):
            if path.parent.relative_to(root).as_posix() not in LAYERS:
                faults.append("%s: stands in no layer" % path.relative_to(root))
    for rank, layer in enumerate(LAYERS):
        for path in layer_files(root, layer):
            for mark, name in INCLUDE.findall(path.read_text(encoding="utf-8")):
                base = Path(name).name
                if mark == "<":
                    needed = outside_layer(name)
                elif base in home:
                    needed = home[base]
                else:
                    needed = rank if GENERATED.fullmatch(base) else 99
                if needed > rank:
                    faults.append("%s: may not include %s" % (path.relative_to(root), name))
    print("\n".join(faults) or "%d files, all includes point the right way" % len(home))
    return 1 if faults or not home else 0


sys.exit(main())
