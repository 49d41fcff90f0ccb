#!/usr/bin/python3
"""all.py BUILD: every figure of the program in a build folder, one after another, with how each is measured.
Run by tests/run bench, which gives it a display."""

import os
import platform
import subprocess
import sys
from pathlib import Path

HERE = Path(__file__).resolve().parent

# What a drag costs depends little on the grip; these move a length, the side view, the rim and the hooks.
GRIPS = ["scale.length", "bridge.height", "rim.outer_diameter", "hooks.count"]


def benches(build):
    program, empty = build / "app/rimwright", build / "tests/bench/empty-window"
    return [
        ("Solving, one build: 11 rounds of 500 in one process", [build / "tests/bench/bench-solve"]),
        ("Spread of 10000 builds: in one process, least of 3", [build / "tests/bench/bench-spread"]),
        ("Papers, all: the whole process, 7 times", [HERE / "papers.py", program]),
        ("Cutting plans: the whole process, 7 times", [HERE / "cutting.py", program]),
        ("Start: from main to the first frame, in turn with an empty window, 11 pairs",
         [HERE / "start.py", program, empty]),
        ("Memory: most resident at once", [HERE / "memory.py", program, empty]),
        ("Drag: frames of recorded drags in the real window, from first event to painted",
         [HERE / "drag.py", program, *GRIPS]),
    ]


def processor():
    with open("/proc/cpuinfo", encoding="utf-8") as lines:
        names = [line.split(":")[1].strip() for line in lines if line.startswith("model name")]
    return names[0] if names else platform.machine()


def main():
    print("%s, %d processors; load %.1f before" % (processor(), os.cpu_count(), os.getloadavg()[0]))
    failed = 0
    for title, command in benches(Path(sys.argv[1])):
        if command[0].suffix == ".py":
            command = [sys.executable, "-B", *command]
        done = subprocess.run(list(map(str, command)), capture_output=True, text=True, check=False)
        failed += done.returncode != 0
        print("\n%s" % title)
        print("".join("  %s\n" % line for line in (done.stdout + done.stderr * (done.returncode != 0)).splitlines()),
              end="", flush=True)
    sys.exit(failed > 0)


main()
