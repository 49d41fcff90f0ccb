#!/usr/bin/python3
"""The physics of the program against numerical solutions that use none of its formulas.

reference.py PATH/TO/rimwright
Zeros of Bessel functions and integrals for the air from SciPy; the head as a membrane on a grid, with the bridge's
feet as rigid plates; the partials of a stiff string from finite elements.
Prints each comparison; exit 1 where one is off, 77 without python3-scipy.
"""

import json
import math
import subprocess
import sys

try:
    import numpy as np
    from scipy import sparse
    from scipy.integrate import quad
    from scipy.linalg import eigh
    from scipy.sparse.linalg import spsolve
    from scipy.special import jn_zeros, jv
except ImportError:
    print("python3-scipy is not installed")
    sys.exit(77)

wrong = []


def listed(program, **changes):
    command = [program, "list", "--format", "json"]
    for key, value in changes.items():
        command += ["--set", "%s=%s" % (key.replace("__", "."), value)]
    done = subprocess.run(command, capture_output=True, text=True, check=True, timeout=60)
    return {row["id"]: row["value"] for row in json.loads(done.stdout)["dimensions"]}


def compare(what, program, reference, share):
    off = abs(program / reference - 1)
    print("%-44s %12.6g %12.6g  %.1e of %.1e" % (what, program, reference, off, share))
    if not off <= share:
        wrong.append(what)


def air(m):
    """Air that moves with mode (m,1) on one face, over density and radius: incompressible, in a wide baffle."""
    zero = jn_zeros(m, 1)[0]
    slope = (jv(m - 1, zero) - jv(m + 1, zero)) / 2
    norm = jv(m + 1, zero) ** 2 / 2

    def spectrum(k):
        near = abs(k - zero) < 1e-6
        return (norm if near else zero * jv(m, k) * slope / (k * k - zero * zero)) ** 2

    parts = [quad(spectrum, a, b, limit=200)[0] for a, b in zip(np.arange(0, 200, 5.0), np.arange(5, 205, 5.0))]
    return sum(parts) / norm


def head_notes(program):
    """Modes of a circular membrane: P. M. Morse, Vibration and Sound."""
    for m, mode in enumerate(("01", "11", "21")):
        rows = listed(program, head__tap_mode=mode, head__thickness="0.2", head__tension="5200")
        radius = rows["head.radius"] / 1000
        moved = 0.2e-3 * 1390 + 2 * air(m) * 1.2 * radius
        note = jn_zeros(m, 1)[0] / (2 * math.pi * radius) * math.sqrt(5200 / moved)
        compare("note of mode " + mode, rows["head.tap_frequency"], note, 1e-4)


def membrane(radius, feet, half_axes, tension, cells):
    """Sag in mm under 1 N on rigid elliptic feet that sink alike; N/m, mm.

    Five-point differences on a square grid; where a leg of the star crosses the edge, its true length counts
    (G. H. Shortley and R. Weller, J. Appl. Phys. 9 (1938) 334).  All nodes under a foot are one unknown.
    """
    step = 2 * radius / cells
    line = (np.arange(cells + 1) - cells / 2) * step
    x, y = np.meshgrid(line, line, indexing="ij")
    inside = x ** 2 + y ** 2 < (radius - 1e-6) ** 2
    number = -np.ones(x.shape, dtype=int)
    number[inside] = np.arange(inside.sum())
    free = int(inside.sum())
    unknown = np.arange(free)
    under = np.zeros(free, dtype=bool)
    for fx, fy in feet:
        plate = ((x - fx) / half_axes[0]) ** 2 + ((y - fy) / half_axes[1]) ** 2 <= 1
        under |= plate[inside]
    i, j = np.nonzero(inside)
    rows, columns, weights = [], [], []
    diagonal = np.zeros(free)
    for di, dj in ((1, 0), (-1, 0), (0, 1), (0, -1)):
        px, py = line[i], line[j]
        other = number[i + di, j + dj]
        along, across = (px * di + py * dj), (px * dj + py * di)
        reach = np.where(other >= 0, step, np.sqrt(np.maximum(radius ** 2 - across ** 2, 0)) - along)
        conductance = step / np.maximum(reach, 1e-3 * step)
        diagonal += conductance
        joined = other >= 0
        rows.append(unknown[joined])
        columns.append(other[joined])
        weights.append(-conductance[joined])
    matrix = sparse.csr_matrix((np.concatenate(weights), (np.concatenate(rows), np.concatenate(columns))),
                               shape=(free, free)) + sparse.diags(diagonal)
    held, loose = np.nonzero(under)[0], np.nonzero(~under)[0]
    # Unit sag of all feet: the rest follows, and the force is what the held nodes take.
    sag = np.ones(free)
    sag[loose] = spsolve(matrix[loose][:, loose].tocsc(), -matrix[loose][:, held] @ np.ones(len(held)))
    return 1000 / ((matrix @ sag)[held].sum() * tension)


def head_sag(program):
    """Feet as ellipses; the capacity radius of a foot holds to a per cent, and the grid to another half."""
    for count in (2, 3):
        rows = listed(program, bridge__feet=str(count), bridge__foot_length="12", bridge__foot_width="8")
        spread, offset = 58.0, 54.0
        feet = [(offset, -spread / 2), (offset, spread / 2)] + ([(offset, 0.0)] if count == 3 else [])
        coarse = membrane(rows["head.radius"], feet, (4.0, 6.0), rows["head.tension"], 240)
        fine = membrane(rows["head.radius"], feet, (4.0, 6.0), rows["head.tension"], 480)
        # The edge of a foot falls between nodes: the error goes with the step.
        compare("sag of %d feet" % count, rows["bridge.sag"] / rows["bridge.down_force"], 2 * fine - coarse, 0.01)


def stiff_string(program):
    """Partials of a stiff string pinned at its ends, from finite elements with cubic shape functions."""
    rows = listed(program, strings__set="D4 0.254 p; B3 0.3 p; G3 0.8 p", scale__length="650")
    wire, length, modulus = 0.8, 650.0, 200e3
    tension, bending = rows["strings.tension[3]"], modulus * math.pi * wire ** 4 / 64
    count, size = 60, 2 * 61
    h = length / count
    stiff, mass = np.zeros((size, size)), np.zeros((size, size))
    bend = bending / h ** 3 * np.array([[12, 6 * h, -12, 6 * h], [6 * h, 4 * h * h, -6 * h, 2 * h * h],
                                        [-12, -6 * h, 12, -6 * h], [6 * h, 2 * h * h, -6 * h, 4 * h * h]])
    pull = tension / (30 * h) * np.array([[36, 3 * h, -36, 3 * h], [3 * h, 4 * h * h, -3 * h, -h * h],
                                          [-36, -3 * h, 36, -3 * h], [3 * h, -h * h, -3 * h, 4 * h * h]])
    even = h / 420 * np.array([[156, 22 * h, 54, -13 * h], [22 * h, 4 * h * h, 13 * h, -3 * h * h],
                               [54, 13 * h, 156, -22 * h], [-13 * h, -3 * h * h, -22 * h, 4 * h * h]])
    for e in range(count):
        part = slice(2 * e, 2 * e + 4)
        stiff[part, part] += bend + pull
        mass[part, part] += even
    keep = [k for k in range(size) if k not in (0, size - 2)]
    squares = eigh(stiff[np.ix_(keep, keep)], mass[np.ix_(keep, keep)], eigvals_only=True, subset_by_index=[0, 9])
    cents = 1200 * math.log2(math.sqrt(squares[9] / squares[0]) / 10)
    compare("10th partial of a stiff string, cents", rows["strings.partial_10[3]"], cents, 2e-3)


def main():
    program = sys.argv[1]
    head_notes(program)
    head_sag(program)
    stiff_string(program)
    return 1 if wrong else 0


if __name__ == "__main__":
    sys.exit(main())
