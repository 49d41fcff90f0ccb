#!/usr/bin/python3
"""The linked model stated a second time, apart from the program, to check the program by.

dimensions(table, texts, measured) answers every row of the dimension list, by its id with the indices
written out, for parameters given as text.  Lengths in mm, angles in degrees in the rows and in radians
inside.  As a script: prints all rows for the defaults in a CSV that has the table of parameters.
"""

import math
import sys

from scipy.special import jnp_zeros

from build import Build, read_parameters
from headstock import Headstock, post_rows
from pitch import Sounding, best_straight
from plan import Plan
from pot import Head, Hooks, Hoop
from rim import Rim
from side import Side
from tables import WOODS
from weight import weight_rows

PLACES = (1, 5, 7, 12)


def dimensions(table, texts, measured=None):
    build = Build(table, texts, measured)
    plan, rim, head, hoop = Plan(build), Rim(build), Head(build), Hoop(build)
    rim.rows()
    masses, tensions = string_rows(build, plan)
    board_rows(build, plan)
    posts = post_rows(build, plan)
    alone_rows(build, plan, rim, head, hoop)
    side = Side(build, plan, tensions, head.radius, head.tension)
    at_rim = heel_half = None
    square_to_neck = build.p["scale.square_to"] == "neck"
    if side.solved:
        side_rows(build, plan, side, rim, head, hoop, tensions)
        at_rim = neck_rows(build, plan, side)
        heel_half = heel_rows(build, side, rim, at_rim)
        pitch_rows(build, side, posts, masses)
    if side.solved or not square_to_neck:
        skew = side.neck.side if square_to_neck else 0.0
        build.row("bridge.line_angle", -math.degrees(skew))
        fret_rows(build, plan, skew)
    moisture_rows(build, rim, at_rim)
    hooks = Hooks(build, head, hoop, rim.outer, heel_half)
    hole_rows(build, rim, hooks)
    rim.load_rows(head.tension, head.radius)
    weight_rows(build, plan, side, masses)
    return build.rows


def string_rows(build, plan):
    """Mass per length in kg/m and tension in N by string."""
    p, masses, tensions = build.p, {}, {}
    for i, string in enumerate(build.strings, 1):
        if string.mass:
            mass = string.mass
        elif string.core:
            wrap = (string.outer - string.core) / 2
            mass = (string.density * math.pi * string.core ** 2 / 4
                    + string.wrap * math.pi ** 2 * wrap * (string.core + wrap) / 4) * 1e-6
        else:
            mass = string.density * math.pi * string.outer ** 2 / 4 * 1e-6
        length = p["scale.length"] * (2.0 ** (-build.semitones(plan.start_fret) / 12.0) if i > plan.full else 1.0)
        masses[i] = mass
        tensions[i] = build.row("strings.tension[%d]" % i,
                                mass * (2 * string.frequency(p["tuning.a4"]) * length / 1000) ** 2)
        wire_rows(build, i, string, tensions[i], length)
    build.row("strings.tension_total", sum(tensions.values()))
    return masses, tensions


def wire_rows(build, i, string, tension, length):
    """Stress and stiffness; R. W. Young, JASA 24 (1952) 267: B goes with (E/rho) d^2/(f^2 l^4)."""
    wire = string.core or string.outer
    stress = build.row("strings.stress[%d]" % i, tension / (math.pi * (wire / 2) ** 2))
    build.row("strings.strength_share[%d]" % i, 100 * stress / string.strength(wire))
    modulus = 1000.0 * (string.modulus or build.p["strings.modulus"])
    stiff = math.pi ** 3 * modulus * wire ** 4 / (64 * tension * length ** 2)
    stiff = build.row("strings.stiffness[%d]" % i, stiff * 1e6) / 1e6
    build.row("strings.partial_10[%d]" % i, 1200 * math.log2(math.sqrt((1 + 100 * stiff) / (1 + stiff))))


def board_rows(build, plan):
    for n in range(1, build.last + 1):
        if not build.own_slots:
            build.row("frets.position[%d]" % n, build.position(n))
        for i in range(1, plan.count + 1) if build.own_slots else ():
            start = 0 if i <= plan.full else plan.start_fret
            if n > start:
                build.row("frets.slot[%d][%d]" % (i, n), build.slot(i, start, n))
    for n in {0, 1, 12, build.last} | ({plan.start_fret} if plan.has_short else set()):
        build.row("neck.width[%d]" % n, plan.width(build.position(n) if n else 0.0))
    if not build.fretless:
        depth = build.row("frets.slot_depth", build.p["frets.tang_depth"] + 0.3)
        build.row("frets.floor", build.p["fretboard.thickness"] - depth)


def pieces(build, plan, n):
    """How many pieces a fret is in: neighbouring strings whose slots are within 0.05 mm share one."""
    if not build.own_slots:
        return 1
    places = [build.slot(i, 0, n) for i in range(1, plan.full + 1)]
    if plan.has_short and n > plan.start_fret:
        places.append(build.slot(plan.count, plan.start_fret, n))
    begun = [places[0]]
    for place in places[1:]:
        if abs(place - begun[-1]) >= 0.05:
            begun.append(place)
    return len(begun)


def fret_rows(build, plan, skew):
    """Lengths of the frets, whose lines stand at an angle of skew to the strings' square."""
    p, total = build.p, 0.0
    if build.fretless:
        return
    for n in range(1, build.last + 1):
        width = build.rows.get("neck.width[%d]" % n, plan.width(build.position(n))) / math.cos(skew)
        length, cut = width - 2 * p["frets.end_inset"], pieces(build, plan, n)
        bound = width - 2 * (p["fretboard.binding"] + p["fretboard.tang_clear"])
        length = build.row("frets.length[%d]" % n, length)
        build.row("frets.tang[%d]" % n, bound if p["fretboard.binding"] > 0 else length)
        total += length + 6 * cut
    build.row("frets.wire_total", total)


def alone_rows(build, plan, rim, head, hoop):
    """Rows that need nothing from the side view."""
    p = build.p
    build.row("neck.offset_at_nut", plan.nut_middle)
    build.row("bridge.landing", (p["bridge.offset"] + head.radius) / (2 * head.radius))
    build.row("joint.inside_length", 2 * rim.inner)
    speed = 331.3 * math.sqrt((273.15 + p["setup.temperature"]) / 273.15)
    build.row("head.air_mode", jnp_zeros(1, 1)[0] * speed * 1000 / (2 * math.pi * rim.inner))
    build.row("joint.relief_depth", hoop.outer + p["joint.hoop_relief"] - rim.outer)
    build.row("joint.relief_height",
              p["neck.set_height"] + p["head.collar"] + p["hoop.travel"] + p["joint.hoop_relief"])
    hang, wood = p["headstock.angle"], p["headstock.thickness"] - p["headstock.overlay"]
    drop = (p["headstock.length"] * math.sin(math.radians(hang)) + wood * math.cos(math.radians(hang)))
    build.row("neck.blank_depth",
              max(drop, p["joint.heel_depth"] - p["fretboard.thickness"]) + p["neck.blank_allowance"])
    build.row("finish.flake", p["shop.shellac_volume"] / 1000 * p["shop.shellac_cut"] * 119.826427)


def side_rows(build, plan, side, rim, head, hoop, tensions):
    p = build.p
    build.row("neck.angle", math.degrees(side.angle - side.shim))
    build.row("joint.heel_angle", 90 - build.fact("neck.angle", math.degrees(side.angle - side.shim)))
    build.row("bridge.height", side.height)
    build.row("bridge.break_angle", math.degrees(side.front + side.tail))
    build.row("bridge.down_force", side.force)
    build.row("bridge.sag", side.sag)
    along = build.row("neck.nut_to_rim", side.nut_to_rim)
    if along < plan.length:
        build.row("neck.rim_fret", -12 * math.log2(1 - along / plan.length))
    end = build.row("neck.board_length",
                    along - (hoop.outer - rim.outer + p["fretboard.end_gap"]) / math.cos(side.angle))
    build.row("neck.width_at_end", plan.width(end))
    build.row("neck.pull_up", side.lifts["nut"])
    build.row("neck.relief_unrodded", side.neck.relief_free)
    build.row("neck.rod_moment", side.neck.rod_moment)
    line = side.height - side.sag - (p["bridge.offset"] + hoop.outer) * math.tan(side.front)
    build.row("strings.over_hoop", line - hoop.top)
    for n in {*PLACES, build.last}:
        build.row("setup.action[%d]" % n, side.action(n))
    for key, tension in (("bridge.sag_low", head.high), ("bridge.sag_high", head.low)):
        if tension is not None:
            other = Side(build, plan, tensions, head.radius, tension, sag_counts=False)
            build.row(key, other.sag if other.solved else None)


def neck_rows(build, plan, side):
    """The board's width at the rim."""
    p, neck = build.p, side.neck
    build.row("neck.side_angle", math.degrees(neck.side))
    facet_rows(build, plan, neck)
    if neck.has_rod and neck.channel[0] < neck.channel[1]:
        build.row("neck.under_rod", neck.least_under_rod())
    build.row("neck.blank_width",
              2 * max(neck.widest_half(), 0 if p["headstock.ears"] == "yes" else p["headstock.width"] / 2)
              + p["neck.blank_allowance"])
    return build.row("neck.width_at_rim", plan.width(neck.nut_to_rim))


def facet_rows(build, plan, neck):
    e = neck.exponent
    first = 2 ** (1 - 1 / e) - 1
    ratio = math.tan(math.radians(22.5)) ** (1 / (e - 1))
    u = (1 + ratio ** e) ** (-1 / e)
    second = (1 - u ** (e - 1)) / (ratio * u) ** (e - 1)
    for n in PLACES:
        x = build.position(n)
        thickness = build.row("neck.thickness[%d]" % n, neck.thickness(x))
        if x > neck.heel:
            continue
        treble, bass = plan.halves(x, neck.side)
        for name, part in (("facet", first), ("facet2", second)):
            build.row("neck.%s_side[%d]" % (name, n), part * (thickness - neck.board))
            build.row("neck.%s_back_treble[%d]" % (name, n), part * treble)
            build.row("neck.%s_back_bass[%d]" % (name, n), part * bass)


def heel_rows(build, side, rim, at_rim):
    """Half the heel's width at the height of the shoes' bolts."""
    p = build.p
    top = build.row("joint.heel_width", at_rim)
    hollow = build.row("joint.hollow", rim.outer - math.sqrt(rim.outer ** 2 - (top / 2) ** 2))
    build.row("neck.blank_length",
              side.neck.nut_to_rim + p["nut.thickness"]
              + p["headstock.length"] * math.cos(math.radians(p["headstock.angle"])) + hollow
              + p["neck.blank_allowance"])
    ring = p["rim.tone_ring_height"]
    depth = p["neck.set_height"] + build.fact("shoes.hole_below_edge", p["shoes.below_edge"] - ring) + ring
    part = min(depth / p["joint.heel_depth"], 1.0)
    return (top + (p["joint.heel_cap_width"] - top) * part) / 2


def pitch_rows(build, side, posts, masses):
    plan = side.plan
    stock = Headstock(build, plan, posts, side.neck.side)
    for i in range(1, plan.full + 1):
        build.row("headstock.bend[%d]" % i, stock.bend(i))
    soundings = {i: Sounding(build, side, i, masses[i], stock.behind_nut(i)) for i in masses}
    for i, sounding in soundings.items():
        build.row("bridge.compensation[%d]" % i, sounding.compensation())
        both = sounding.both_ends(build.last)
        if both is not None:
            build.row("bridge.back_with_nut[%d]" % i, both[0])
            build.row("nut.forward[%d]" % i, both[1])
        for n in range(sounding.first_fret, build.last + 1):
            build.row("setup.cents[%d][%d]" % (i, n), sounding.cents(n, 0.0))
    offset, turn = best_straight(soundings, plan.bridge, build.last)
    build.row("bridge.best_offset", offset)
    build.row("bridge.best_angle", math.degrees(math.atan(turn)))


def hole_rows(build, rim, hooks):
    p, rods = build.p, []
    if p["joint.kind"] == "stick":
        build.row("joint.stick_on_heel", p["neck.set_height"] + p["joint.stick_below"])
        down = build.row("joint.stick_on_rim", p["joint.stick_below"] - p["rim.tone_ring_height"])
        rods.append((down, p["joint.stick_section"]))
    else:
        for k in range(1, int(p["joint.rod_count"]) + 1):
            below = p["joint.rod_upper"] + (k - 1) * p["joint.rod_spacing"]
            build.row("joint.hole_on_heel[%d]" % k, p["neck.set_height"] + below)
            down = build.row("joint.hole_on_rim[%d]" % k, below - p["rim.tone_ring_height"])
            rods.append((down, p["joint.rod_diameter"]))
    rim.hole_rows(hooks.angles, hooks.bolt_depth, rods)


def moisture(celsius, percent):
    """Wood moisture in balance with the air; W. T. Simpson, FPL-RN-0268 (1998); Wood Handbook eq. 4-5."""
    t, h = celsius, percent / 100
    w = 349 + 1.29 * t + 0.0135 * t * t
    k = 0.805 + 0.000736 * t - 2.73e-6 * t * t
    k1 = 6.27 - 0.00938 * t - 0.000303 * t * t
    k2 = 1.91 + 0.0407 * t - 0.000293 * t * t
    a, b = k * h, k1 * k * h
    c = k1 * k2 * (k * h) ** 2
    return 1800 / w * (a / (1 - a) + (b + 2 * c) / (1 + b + c))


def moisture_rows(build, rim, at_rim):
    p = build.p
    shop = moisture(p["setup.temperature"], p["setup.humidity_shop"])
    board = WOODS[p["neck.board_wood"]][3]
    walls = [WOODS[wood][3] for wood in rim.woods]
    for end in ("low", "high"):
        there = build.row("move.moisture_" + end, moisture(p["setup.temperature"], p["setup.humidity_" + end]))
        change = there - shop
        width = build.row("move.board_width_" + end, at_rim and board and at_rim * board * change)
        if end == "low" and width is not None and not build.fretless:
            build.row("move.fret_end", max(0.0, -width / 2 - p["frets.end_inset"]))
        if None not in walls:
            build.row("move.rim_wall_" + end, p["rim.wall"] * max(walls) * change)
        layers = [(low - high, WOODS[wood][3]) for high, low, wood in rim.layers()]
        if rim.kind != "staves" and None not in (ct for _, ct in layers):
            build.row("move.rim_height_" + end, sum(thick * ct for thick, ct in layers) * change)


if __name__ == "__main__":
    with open(sys.argv[1], encoding="utf-8") as file:
        defaults, rows = read_parameters(file.read())
    for key, value in dimensions(rows, defaults).items():
        print("%-28s %.9g" % (key, value))
