#!/usr/bin/env python3
"""Finite-element answers for uniformly loaded plates on four edges, made with CalculiX.

Usage: python3 plates.py [--table plates|points|strips] [--refinement N] [--case NAME ...] > plate-calculix.csv

A quarter of each plate as S8R shell elements, NLGEOM. The middle surface is held flat along the
edges, free to slide and to turn about the edge; rotation about the normal of the edge is held, so
that the normals stay straight along the edge as in Kirchhoff's theory. The mesh is graded toward
edges and corner. Stresses are the nodal averages on the two faces.
"""
import argparse
import math
import os
import subprocess
import sys
import tempfile

# name, long side m, short side m, thickness m, elastic modulus Pa, Poisson's ratio, pressure Pa.
# Thin and wide enough that slopes stay under about 0.1, since the oracle knows large rotations and
# the plate theory only moderate ones.
E, NU = 71.7e9, 0.22


def plate(aspect, load_number, slenderness):
    """Plate of 1 m shorter side with load number q (b/2)^4 / (E t^4)."""
    t = round(1.0 / slenderness, 9)
    return aspect, 1.0, t, E, NU, load_number * E * (2.0 * t) ** 4


CASES = {"worked-1200x1500x5.56": (1.5, 1.2, 0.00556, E, NU, 2500.0)}
for aspect, loads in {
    1.0: [(0.01, 200), (1, 200), (5, 300), (20, 500), (80, 1000), (300, 1500)],
    1.25: [(10, 400), (60, 1000)],
    1.5: [(0.01, 200), (2, 300), (10, 500), (40, 1000), (150, 1500)],
    2.0: [(0.01, 200), (1, 300), (5, 400), (20, 1000), (80, 1500)],
    3.0: [(0.5, 300), (4, 500), (20, 1500), (60, 2000)],
    5.0: [(0.5, 300), (4, 800), (20, 2000), (40, 2500)],
}.items():
    for number, slenderness in loads:
        CASES[f"aspect-{aspect:g}-load-{number:g}"] = plate(aspect, number, slenderness)

# Plates of which the principal stresses are written at several points.
POINT_CASES = ("aspect-1-load-0.01", "aspect-1-load-20", "aspect-1.5-load-40", "aspect-2-load-1", "aspect-3-load-20")
POINTS = [(0, 0), (0.5, 0), (0, 0.5), (0.5, 0.5), (0.8, 0.3), (0.8, 0.8), (0.95, 0.95)]


def strip(width, thickness, sag):
    """Plate of 1 m span held on two edges that sags by about a share of its span."""
    return 1.0, width, thickness, E, NU, sag * 6.4 * E * thickness**3


STRIPS = {
    "strip-width-0.3-sag-0.003": strip(0.3, 0.008, 0.003),
    "strip-width-1-sag-0.003": strip(1.0, 0.008, 0.003),
    "strip-width-2.5-sag-0.003": strip(2.5, 0.008, 0.003),
    "strip-width-1-sag-0.02": strip(1.0, 0.006, 0.02),
    "strip-width-1.6-sag-0.045": strip(1.6, 0.006, 0.045),
}


def graded(length, layer, ratio, largest):
    """Nodes from 0 to length: elements grow from `layer` at the far end by `ratio` to `largest`."""
    sizes, h, total = [], layer, 0.0
    while total < length:
        sizes.append(h)
        total += h
        h = min(h * ratio, largest)
    sizes = [s * length / total for s in reversed(sizes)]
    at = [0.0]
    for s in sizes:
        at.append(at[-1] + s)
    at[-1] = length
    return at


def write_input(path, case, refinement, two_edges=False):
    a, b, t, e, nu, q = case
    half = min(a, b) / 2.0
    coarse = dict(layer=0.012 * half / refinement, ratio=1.0 + 0.22 / refinement, largest=0.11 * half / refinement)
    xs, ys = graded(a / 2.0, **coarse), graded(b / 2.0, **coarse)

    def fine(at):  # with the mid-side nodes
        out = []
        for lo, hi in zip(at, at[1:]):
            out += [lo, (lo + hi) / 2.0]
        return out + [at[-1]]

    fx, fy = fine(xs), fine(ys)
    ny = len(fy)
    number = lambda i, j: i * ny + j + 1
    used = [(i, j) for i in range(len(fx)) for j in range(ny) if not (i % 2 and j % 2)]
    with open(path, "w") as f:
        f.write("*NODE, NSET=ALL\n")
        for i, j in used:
            f.write(f"{number(i, j)}, {fx[i]:.12g}, {fy[j]:.12g}, 0\n")
        f.write("*ELEMENT, TYPE=S8R, ELSET=PLATE\n")
        k = 0
        for i in range(0, len(fx) - 1, 2):
            for j in range(0, ny - 1, 2):
                k += 1
                n = [number(i + p, j + r) for p, r in
                     ((0, 0), (2, 0), (2, 2), (0, 2), (1, 0), (2, 1), (1, 2), (0, 1))]
                f.write(f"{k}, " + ", ".join(map(str, n)) + "\n")
        f.write(f"*MATERIAL, NAME=M\n*ELASTIC\n{e:.12g}, {nu:.12g}\n")
        f.write(f"*SHELL SECTION, ELSET=PLATE, MATERIAL=M\n{t:.12g}\n*BOUNDARY\n")
        last_x, last_y = len(fx) - 1, ny - 1
        for i, j in used:
            held = set()
            if i == 0:
                held |= {1, 5, 6}
            if j == 0:
                held |= {2, 4, 6}
            if i == last_x:
                held |= {3, 4}
            if j == last_y and not two_edges:
                held |= {3, 5}
            for d in sorted(held):
                f.write(f"{number(i, j)}, {d}, {d}\n")
        linear = q * half**4 / (e * t**4) < 0.02
        f.write("*STEP, NLGEOM, INC=400\n*STATIC\n" + ("1.,1.\n" if linear else "0.05,1.\n"))
        f.write(f"*DLOAD\nPLATE, P, {q:.12g}\n")
        f.write("*NODE FILE, OUTPUT=3D\nU\n*EL FILE, OUTPUT=3D\nS\n*END STEP\n")


def read_last(path):
    """Coordinates, and the last displacements and stresses, of a CalculiX result file."""
    coordinates, blocks, kind = {}, {}, None
    with open(path) as f:
        for line in f:
            if line.startswith("    2C"):
                kind = "nodes"
            elif line.startswith(" -4"):
                kind = line[5:13].strip()
                blocks[kind] = {}
            elif line.startswith(" -3"):
                kind = None
            elif line.startswith(" -1") and kind:
                node = int(line[3:13])
                width = (len(line.rstrip("\n")) - 13) // 12
                values = [float(line[13 + 12 * m: 25 + 12 * m]) for m in range(width)]
                if kind == "nodes":
                    coordinates[node] = values
                else:
                    blocks[kind][node] = values
    return coordinates, blocks["DISP"], blocks["STRESS"]


def greatest_principal(s):
    """Greatest eigenvalue of a symmetric tensor xx yy zz xy yz zx."""
    xx, yy, zz, xy, yz, zx = s
    mean = (xx + yy + zz) / 3.0
    p = math.sqrt((sum((d - mean) ** 2 for d in (xx, yy, zz)) + 2.0 * (xy**2 + yz**2 + zx**2)) / 6.0)
    if p == 0.0:
        return mean
    x, y, z, xy, yz, zx = ((xx - mean) / p, (yy - mean) / p, (zz - mean) / p, xy / p, yz / p, zx / p)
    det = x * (y * z - yz**2) - xy * (xy * z - yz * zx) + zx * (xy * yz - y * zx)
    return mean + 2.0 * p * math.cos(math.acos(max(-1.0, min(1.0, det / 2.0))) / 3.0)


def run(case, refinement, two_edges=False):
    with tempfile.TemporaryDirectory() as folder:
        write_input(os.path.join(folder, "plate.inp"), case, refinement, two_edges)
        run = subprocess.run(["ccx", "plate"], cwd=folder, capture_output=True, text=True)
        if "Job finished" not in run.stdout:
            sys.exit("ccx failed:\n" + run.stdout[-2000:] + run.stderr)
        return read_last(os.path.join(folder, "plate.frd"))


def solve(case, refinement):
    t = case[2]
    at, u, s = run(case, refinement)
    centre = [n for n, p in at.items() if math.hypot(p[0], p[1]) < 1e-9]
    deflection = sum(u[n][2] for n in centre) / len(centre)
    faces = []
    for side in (-math.copysign(1.0, deflection), math.copysign(1.0, deflection)):  # loaded, other
        faces.append(max((greatest_principal(s[n]), at[n][0], at[n][1])
                         for n in s if abs(at[n][2] - side * t / 2.0) < 1e-3 * t))
    return abs(deflection), faces[0], faces[1], *movements(at, u, case)


def movements(at, u, case):
    """Volume between deflected and flat plate in m3, and how far the middles of the long and of the
    short edges move in, at the middle surface: the mean of the nodes through the thickness."""
    a, b = case[0], case[1]
    through = {}
    for n, p in at.items():
        through.setdefault((round(p[0], 7), round(p[1], 7)), []).append(u[n])
    middle = {place: [sum(v[i] for v in us) / len(us) for i in range(3)] for place, us in through.items()}

    def node(x, y):
        return min(middle, key=lambda place: math.hypot(place[0] - x, place[1] - y))

    # Serendipity elements: corners count -1/12 of the area, middles of the sides 1/3.
    xs = sorted({x for x, y in middle if y == 0.0})
    ys = sorted({y for x, y in middle if x == 0.0})
    volume = 0.0
    for i in range(0, len(xs) - 1, 2):
        for j in range(0, len(ys) - 1, 2):
            area = (xs[i + 2] - xs[i]) * (ys[j + 2] - ys[j])
            w = lambda p, r: middle[(xs[i + p], ys[j + r])][2]
            volume += area * (sum(w(p, r) for p, r in ((1, 0), (2, 1), (1, 2), (0, 1))) / 3.0
                              - sum(w(p, r) for p, r in ((0, 0), (2, 0), (2, 2), (0, 2))) / 12.0)
    return 4.0 * abs(volume), -middle[node(0.0, b / 2.0)][1], -middle[node(a / 2.0, 0.0)][0]


def in_plane(s):
    """Principal stresses in the plane of the plate."""
    mean, radius = (s[0] + s[1]) / 2.0, math.hypot((s[0] - s[1]) / 2.0, s[3])
    return mean + radius, mean - radius


def face_stresses(at, u, s, t):
    """Principal stresses by place on the loaded face and on the other one."""
    up = math.copysign(1.0, sum(v[2] for v in u.values()))
    return [{(round(p[0], 7), round(p[1], 7)): in_plane(s[n])
             for n, p in at.items() if n in s and abs(p[2] - side * up * t / 2.0) < 1e-3 * t} for side in (-1, 1)]


def point_rows(name, refinement):
    case = CASES[name]
    loaded, other = face_stresses(*run(case, refinement), case[2])
    for xi, eta in POINTS:
        x, y = min(loaded, key=lambda p: math.hypot(p[0] - xi * case[0] / 2.0, p[1] - eta * case[1] / 2.0))
        yield [*case, 2.0 * x / case[0], 2.0 * y / case[1], *loaded[(x, y)], *other[(x, y)]]


def seventh_power(first, second):
    """Tension normal to a crack to the 7th power, averaged over all directions of cracks."""
    n = 72
    mean, radius = (first + second) / 2.0, (first - second) / 2.0
    return sum(max(0.0, mean + radius * math.cos(math.pi * (k + 0.5) / n)) ** 7 for k in range(n)) / n


def strip_row(case, refinement):
    at, u, s = run(case, refinement, two_edges=True)
    a, b, t = case[:3]
    faces = face_stresses(at, u, s, t)
    xs = sorted({x for x, y in faces[1] if y == 0.0})
    ys = sorted({y for x, y in faces[1] if x == 0.0})
    integral = 0.0
    for face in faces:
        for i in range(0, len(xs) - 1, 2):
            for j in range(0, len(ys) - 1, 2):
                f = lambda p, r: seventh_power(*face[(xs[i + p], ys[j + r])])
                integral += 4.0 * (xs[i + 2] - xs[i]) * (ys[j + 2] - ys[j]) * (
                    sum(f(p, r) for p, r in ((1, 0), (2, 1), (1, 2), (0, 1))) / 3.0
                    - sum(f(p, r) for p, r in ((0, 0), (2, 0), (2, 2), (0, 2))) / 12.0)
    sag = lambda y: abs(min((math.hypot(p[0], p[1] - y), u[n][2]) for n, p in at.items())[1])
    greatest = max((v[0], place) for place, v in faces[1].items())
    print("greatest tension at", greatest[1], file=sys.stderr)
    return [*case, sag(0.0), sag(b / 2.0), *faces[1][(0.0, 0.0)], greatest[0], integral]


GIVEN = "thickness_m,elasticModulus_Pa,poissonRatio,pressure_Pa"


def table_of_points(names, refinement):
    print(f"name,longSide_m,shortSide_m,{GIVEN},xi,eta,loadedGreater_Pa,loadedLesser_Pa,otherGreater_Pa,otherLesser_Pa")
    for name in names or POINT_CASES:
        for row in point_rows(name, refinement):
            print(name, *(f"{v:.9g}" for v in row), sep=",", flush=True)


def table_of_strips(names, refinement):
    print(f"name,span_m,width_m,{GIVEN},centreDeflection_m,edgeDeflection_m,centreGreater_Pa,centreLesser_Pa,"
          "greatestTension_Pa,failureIntegral_Pa7m2")
    for name in names or STRIPS:
        print(name, *(f"{v:.9g}" for v in strip_row(STRIPS[name], refinement)), sep=",", flush=True)


def main():
    options = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    options.add_argument("--refinement", type=float, default=1.5)
    options.add_argument("--case", action="append")
    options.add_argument("--table", choices=("plates", "points", "strips"), default="plates")
    options.add_argument("--write-input", metavar="FILE", help="only write the solver's input for the one --case")
    chosen = options.parse_args()
    if chosen.write_input:
        write_input(chosen.write_input, CASES[chosen.case[0]], chosen.refinement)
        return
    print("# CalculiX 2.20, S8R; made by src/test/oracle/plate/plates.py")
    if chosen.table != "plates":
        {"points": table_of_points, "strips": table_of_strips}[chosen.table](chosen.case, chosen.refinement)
        return
    print("name,longSide_m,shortSide_m,thickness_m,elasticModulus_Pa,poissonRatio,pressure_Pa,"
          "centreDeflection_m,tensionLoadedFace_Pa,tensionOtherFace_Pa,displacedVolume_m3,longEdgePullIn_m,shortEdgePullIn_m")
    for name in chosen.case or CASES:
        case = CASES[name]
        w, loaded, other, *moved = solve(case, chosen.refinement)
        print(name, *(f"{v:.9g}" for v in case), f"{w:.7g}", f"{loaded[0]:.7g}", f"{other[0]:.7g}", *(f"{v:.7g}" for v in moved),
              sep=",", flush=True)
        print(name, f"w/t {w / case[2]:.5g}; loaded face at {loaded[1:]}, other face at {other[1:]}", file=sys.stderr, flush=True)


if __name__ == "__main__":
    main()
