#!/usr/bin/python3
"""drag.py RIMWRIGHT [GRIP]...: what a frame costs while grips are dragged in the real window, which fills the
present display.

A recorded drag is replayed on one grip after another: out, to and fro, and back.  A frame is counted from its
first event to painted, with solving, drawing, laying out and painting, as processor time of the program's
thread and as time on the clock.  Frames in which nothing was painted anew are left out.
"""

import os
import sys
import time

sys.path.insert(0, os.path.join(os.path.dirname(os.path.abspath(__file__)), "..", "support"))
from desk import Desk  # noqa: E402
from drive import wait, x  # noqa: E402

# Where each grip is pulled, pixels.
PULLS = {
    "scale.length": (-60, 0), "bridge.offset": (60, 0), "rim.outer_diameter": (40, -40), "rim.wall": (30, -30),
    "nut.width": (0, 8), "bridge.spread": (0, 15), "fifth.spacing": (0, 8), "frets.count": (-40, 0),
    "hooks.count": (15, -30), "hooks.tail_gap": (10, 20), "neck.angle": (0, 20), "neck.set_height": (0, -8),
    "bridge.height": (0, -20), "setup.action": (0, -8), "neck.thickness_last": (0, 20),
    "joint.heel_depth": (0, 20), "headstock.angle": (0, -30), "rim.height": (0, 25), "hoop.height": (0, -10),
    "shoes.below_edge": (0, 12), "rim.course_thickness[1]/side": (0, 12),
}

# The recorded drag: at each step how far along the pull the pointer is.
OUT = [i / 30 for i in range(31)]
RECORD = OUT + [1 - 0.4 * (i % 7) / 6 for i in range(20)] + OUT[::-1]
PAUSE = 0.025

LIMIT_MS = 8
WALL, CPU, EVENTS, LAYOUT, PAINT = range(5)
EMPTY_MS = 2  # less than that is a frame that found nothing to do


def fill_display(desk):
    width, height = x("xdotool", "getdisplaygeometry").split()
    window = x("xdotool", "search", "--onlyvisible", "--pid", str(desk.process.pid)).split()[-1]
    x("xdotool", "windowmove", window, "0", "0", "windowsize", window, width, height)
    time.sleep(1)
    desk.settle()
    return width, height


def replay(desk, grip, pull):
    """Drags as recorded; the frames meanwhile, as the times of a line of the trace, in ms."""
    corner, at = desk.corner(), desk.grips()[grip]
    spots = [(round(corner[0] + at[0] + pull[0] * t), round(corner[1] + at[1] + pull[1] * t)) for t in RECORD]
    x("xdotool", "mousemove", *map(str, spots[0]))
    time.sleep(0.3)
    x("xdotool", "mousedown", "1")
    start = os.path.getsize(desk.trace)
    for spot in spots:
        x("xdotool", "mousemove", *map(str, spot))
        time.sleep(PAUSE)
    end = os.path.getsize(desk.trace)
    desk.keys("Escape")
    x("xdotool", "mouseup", "1")
    desk.settle()
    with open(desk.trace, encoding="utf-8") as trace:
        trace.seek(start)
        frames = [line.split(",") for line in trace.read(end - start).splitlines() if line.startswith("frame,")]
    frames = [[int(part) / 1000 for part in f[2:]] for f in frames if len(f) == 7]
    return [f for f in frames if f[CPU] > EMPTY_MS]


def line(name, frames):
    def at(share, which):
        values = sorted(frame[which] for frame in frames)
        return values[min(len(values) - 1, int(len(values) * share))]

    cells = [at(share, which) for which in (CPU, WALL) for share in (0.5, 0.95, 1)]
    return "%-28s %4d %s   %s" % (name, len(frames), " ".join("%6.1f" % cell for cell in cells),
                                  " ".join("%6.1f" % at(0.5, which) for which in (EVENTS, LAYOUT, PAINT)))


def main():
    wanted = sys.argv[2:] or list(PULLS)
    desk = Desk(sys.argv[1], os.environ["HOME"])
    wait(desk.drawing, "the drawing")
    print("window %s x %s, milliseconds a frame" % fill_display(desk))
    print("%-28s %4s  %-20s %-20s   %s" % ("", "", "processor", "clock", "processor, p50"))
    print("%-28s %4s %s   %s" % ("grip", "n", " ".join("%6s" % head for head in ("p50", "p95", "max") * 2),
                                 "events layout  paint"))
    everything = []
    for grip in wanted:
        frames = replay(desk, grip, PULLS[grip])
        everything += frames
        print(line(grip, frames), flush=True)
    print(line("all", everything))
    over = sum(frame[CPU] > LIMIT_MS for frame in everything)
    print("%d of %d frames took more than %d ms of the processor" % (over, len(everything), LIMIT_MS))
    desk.end()


main()
