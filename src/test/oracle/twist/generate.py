#!/usr/bin/env python3
"""Horizontals twisted by eccentric glass, and lites on two blocks, solved with CalculiX, written as CSV.

Usage: python3 generate.py > ../../resources/mechanics/twist-oracle.csv     (needs ccx, made with 2.20; some minutes)

Bars: E 69.6 GPa, Poisson's ratio 0.33; every node of both end sections is held in the plane of the section and free
along the bar, so that the ends do not twist and are free to warp. Two equal weights stand at a from either end, off the
shear center by e. A solid bar is made of C3D20R elements, the weight on its side face; a thin-walled tube of S8R elements
with stiff plates across it where the weights stand on one wall, so that the section keeps its shape; an I-section of S8R
elements with the weight in its web and its torque as a couple on both flanges. Rotations are those of a section's two
sides. J, Cw and I are the textbook ones: series for the rectangle, Bredt and S t^3/3 for the tube, thin strips for the I, less 0.105 t^4 for each free
edge.
  bar,name: E I, G J, E Cw (N m2, N m2, N m4), L, a (m), P (N), e (m), rotation at mid-span, rotation at a weight (rad),
  deflection of the axis at mid-span (m)
Lites: plane stress, 10 mm thick, 2500 kg/m3, on two blocks about 0.1 m long that are free to slide.
  lite,name: W, H, f (m, m, 1), tension at the bottom edge half-way between blocks, greatest tension at the top edge (Pa)
"""

import math
import os
import subprocess
import tempfile

E, NU = 69600.0, 0.33  # MPa; lengths in mm, forces in N
G = E / (2 * (1 + NU))


class Mesh:
    def __init__(self):
        self.number, self.nodes, self.elements = {}, [], []

    def node(self, x, y, z):
        key = (round(x, 4), round(y, 4), round(z, 4))
        if key not in self.number:
            self.number[key] = len(self.nodes) + 1
            self.nodes.append(key)
        return self.number[key]

    def shell(self, corners):
        """S8R from four corners in order."""
        c = corners
        mids = [tuple((p + q) / 2 for p, q in zip(c[i], c[(i + 1) % 4])) for i in range(4)]
        return [self.node(*p) for p in c + mids]

    def brick(self, x0, x1, y0, y1, z0, z1):
        c = [(x0, y0, z0), (x1, y0, z0), (x1, y1, z0), (x0, y1, z0), (x0, y0, z1), (x1, y0, z1), (x1, y1, z1), (x0, y1, z1)]
        edges = [(0, 1), (1, 2), (2, 3), (3, 0), (4, 5), (5, 6), (6, 7), (7, 4), (0, 4), (1, 5), (2, 6), (3, 7)]
        mids = [tuple((p + q) / 2 for p, q in zip(c[i], c[j])) for i, j in edges]
        return [self.node(*p) for p in c + mids]

    def along(self, **at):
        """Numbers of the nodes with the coordinates given."""
        place = {"x": 0, "y": 1, "z": 2}
        return [n + 1 for n, p in enumerate(self.nodes) if all(abs(p[place[k]] - v) < 1e-3 for k, v in at.items())]


def grid(low, high, n):
    return [low + (high - low) * i / n for i in range(n + 1)]


def run(deck, kind="displacements"):
    with tempfile.TemporaryDirectory() as folder:
        with open(os.path.join(folder, "m.inp"), "w") as f:
            f.write("\n".join(deck) + "\n")
        subprocess.run(["ccx", "m"], cwd=folder, check=True, stdout=subprocess.PIPE)
        table, inside = {}, False
        if kind == "displacements":
            with open(os.path.join(folder, "m.dat")) as f:
                for line in f:
                    parts = line.split()
                    if parts and parts[0] == "displacements":
                        inside = True
                    elif inside and len(parts) == 4:
                        table[int(parts[0])] = [float(v) for v in parts[1:]]
        else:
            with open(os.path.join(folder, "m.frd")) as f:
                for line in f:
                    if line.startswith(" -4"):
                        inside = "STRESS" in line
                    elif line.startswith(" -3"):
                        inside = False
                    elif inside and line.startswith(" -1"):
                        table[int(line[3:13])] = [float(line[13 + 12 * i:25 + 12 * i]) for i in range(6)]
        return table


def solve(mesh, groups, length, loads):
    """groups: (type, thickness or None, elements); loads: (node, direction, force)."""
    deck = ["*NODE"] + [f"{i + 1},{p[0]:.6g},{p[1]:.6g},{p[2]:.6g}" for i, p in enumerate(mesh.nodes)]
    number = 0
    for k, (kind, _, elements) in enumerate(groups):
        deck.append(f"*ELEMENT,TYPE={kind},ELSET=E{k}")
        for e in elements:
            number += 1
            line = [number] + e
            deck.append(",".join(map(str, line[:12])) + ("," if len(line) > 12 else ""))
            if len(line) > 12:
                deck.append(",".join(map(str, line[12:])))
    deck += ["*MATERIAL,NAME=M", "*ELASTIC", f"{E},{NU}"]
    for k, (_, thickness, _) in enumerate(groups):
        if thickness is None:
            deck.append(f"*SOLID SECTION,ELSET=E{k},MATERIAL=M")
        else:
            deck += [f"*SHELL SECTION,ELSET=E{k},MATERIAL=M", f"{thickness}"]
    deck.append("*BOUNDARY")
    for x in (0, length):
        deck += [f"{n},2,3" for n in mesh.along(x=x)]
    middle = [n for n in mesh.along(x=length / 2)]
    deck += [f"{middle[0]},1,1"]
    deck += ["*NSET,NSET=ALL"] + [f"{i + 1}," for i in range(len(mesh.nodes))]
    deck += ["*STEP", "*STATIC", "*CLOAD"] + [f"{n},{d},{f:.9g}" for n, d, f in loads]
    deck += ["*NODE PRINT,NSET=ALL", "U", "*END STEP"]
    return run(deck)


def spread(mesh, nodes, force, coordinate):
    """Consistent forces of a uniform line load on the nodes of a row of quadratic edges."""
    row = sorted(nodes, key=lambda n: mesh.nodes[n - 1][coordinate])
    edges = (len(row) - 1) // 2
    share = {}
    for i in range(edges):
        for n, w in zip(row[2 * i:2 * i + 3], (1 / 6, 4 / 6, 1 / 6)):
            share[n] = share.get(n, 0.0) + force * w / edges
    return share


def report(name, inertia, torsion, warping, length, a, p, e, u, left, right, width, axis):
    def rotation(x):
        return (u[left(x)][2] - u[right(x)][2]) / width

    values = (E * inertia * 1e-6, G * torsion * 1e-6, E * warping * 1e-12, length * 1e-3, a * 1e-3, p, e * 1e-3,
              abs(rotation(length / 2)), abs(rotation(a)), abs(axis(length / 2)) * 1e-3)
    print("bar,%s,%s" % (name, ",".join(f"{v:.7g}" for v in values)))


def solid(name, b, h, length, a, p):
    mesh = Mesh()
    xs, ys, zs = grid(0, length, 120), grid(-b / 2, b / 2, 4), grid(-h / 2, h / 2, 6)
    elements = [mesh.brick(x0, x1, y0, y1, z0, z1) for x0, x1 in zip(xs, xs[1:]) for y0, y1 in zip(ys, ys[1:])
                for z0, z1 in zip(zs, zs[1:])]
    loads = []
    for x in (a, length - a):
        loads += [(n, 3, f) for n, f in spread(mesh, mesh.along(x=x, y=b / 2), -p, 2).items()]
    u = solve(mesh, [("C3D20R", None, elements)], length, loads)
    s, l = min(b, h), max(b, h)
    torsion = l * s ** 3 / 3 * (1 - 192 * s / (math.pi ** 5 * l) * sum(
        math.tanh(n * math.pi * l / (2 * s)) / n ** 5 for n in range(1, 40, 2)))
    report(name, b * h ** 3 / 12, torsion, 0, length, a, p, b / 2, u,
           lambda x: mesh.node(x, b / 2, 0), lambda x: mesh.node(x, -b / 2, 0), b, lambda x: u[mesh.node(x, 0, 0)][2])


def tube(name, b, h, t, length, a, p):
    """b and h between the middles of the walls."""
    mesh = Mesh()
    xs, ys, zs = grid(0, length, 80), grid(-b / 2, b / 2, 4), grid(-h / 2, h / 2, 8)
    walls = []
    for x0, x1 in zip(xs, xs[1:]):
        for y in (-b / 2, b / 2):
            walls += [mesh.shell([(x0, y, z0), (x1, y, z0), (x1, y, z1), (x0, y, z1)]) for z0, z1 in zip(zs, zs[1:])]
        for z in (-h / 2, h / 2):
            walls += [mesh.shell([(x0, y0, z), (x1, y0, z), (x1, y1, z), (x0, y1, z)]) for y0, y1 in zip(ys, ys[1:])]
    plates = [mesh.shell([(x, y0, z0), (x, y1, z0), (x, y1, z1), (x, y0, z1)]) for x in (a, length - a)
              for y0, y1 in zip(ys, ys[1:]) for z0, z1 in zip(zs, zs[1:])]
    loads = []
    for x in (a, length - a):
        loads += [(n, 3, f) for n, f in spread(mesh, mesh.along(x=x, y=b / 2), -p, 2).items()]
    u = solve(mesh, [("S8R", t, walls), ("S8R", 4 * t, plates)], length, loads)
    round_ = 2 * (b + h)
    torsion = 4 * (b * h) ** 2 * t / round_ + round_ * t ** 3 / 3
    inertia = 2 * (t * h ** 3 / 12 + b * t * (h / 2) ** 2 + b * t ** 3 / 12)
    report(name, inertia, torsion, 0, length, a, p, b / 2, u,
           lambda x: mesh.node(x, b / 2, 0), lambda x: mesh.node(x, -b / 2, 0), b,
           lambda x: (u[mesh.node(x, b / 2, 0)][2] + u[mesh.node(x, -b / 2, 0)][2]) / 2)


def open_section(name, b, h, t, length, a, p, e):
    """I-section; h between the middles of the flanges."""
    mesh = Mesh()
    xs, ys, zs = grid(0, length, 80), grid(-b / 2, b / 2, 6), grid(-h / 2, h / 2, 6)
    walls = []
    for x0, x1 in zip(xs, xs[1:]):
        walls += [mesh.shell([(x0, 0, z0), (x1, 0, z0), (x1, 0, z1), (x0, 0, z1)]) for z0, z1 in zip(zs, zs[1:])]
        for z in (-h / 2, h / 2):
            walls += [mesh.shell([(x0, y0, z), (x1, y0, z), (x1, y1, z), (x0, y1, z)]) for y0, y1 in zip(ys, ys[1:])]
    loads = []
    for x in (a, length - a):
        loads += [(n, 3, f) for n, f in spread(mesh, mesh.along(x=x, y=0), -p, 2).items()]
        for side in (1, -1):
            flange = mesh.along(x=x, z=side * h / 2)
            loads += [(n, 2, f) for n, f in spread(mesh, flange, side * p * e / h, 1).items()]
    u = solve(mesh, [("S8R", t, walls)], length, loads)
    torsion = (2 * b + h) * t ** 3 / 3 - 4 * 0.105 * t ** 4
    warping = 2 * t * b ** 3 / 12 * h ** 2 / 4
    inertia = t * h ** 3 / 12 + 2 * (b * t * (h / 2) ** 2 + b * t ** 3 / 12)

    def rotation(x):
        return (u[mesh.node(x, 0, h / 2)][1] - u[mesh.node(x, 0, -h / 2)][1]) / h

    values = (E * inertia * 1e-6, G * torsion * 1e-6, E * warping * 1e-12, length * 1e-3, a * 1e-3, p, e * 1e-3,
              abs(rotation(length / 2)), abs(rotation(a)), abs(u[mesh.node(length / 2, 0, 0)][2]) * 1e-3)
    print("bar,%s,%s" % (name, ",".join(f"{v:.7g}" for v in values)))


def lite(name, width, height, f):
    """Plane stress in N and mm; half of the lite, its middle held along the width."""
    mesh = Mesh()
    nx, nz = 40, min(120, max(16, round(80 * height / width)))
    size = width / 2 / nx
    half_block = size * max(1, round(50 / size))
    xs, zs = grid(0, width / 2, nx), grid(0, height, nz)
    elements = [mesh.shell([(x0, z0, 0), (x1, z0, 0), (x1, z1, 0), (x0, z1, 0)]) for x0, x1 in zip(xs, xs[1:])
                for z0, z1 in zip(zs, zs[1:])]
    deck = ["*NODE"] + [f"{i + 1},{p[0]:.6g},{p[1]:.6g},0" for i, p in enumerate(mesh.nodes)]
    deck.append("*ELEMENT,TYPE=CPS8,ELSET=EA")
    deck += [f"{i + 1}," + ",".join(map(str, e)) for i, e in enumerate(elements)]
    weight = 2500e-12 * 9806.65  # N/mm3
    deck += ["*MATERIAL,NAME=M", "*ELASTIC", "71700,0.22", "*DENSITY", "2.5e-9", "*SOLID SECTION,ELSET=EA,MATERIAL=M", "10.",
             "*BOUNDARY"]
    deck += [f"{n},1,1" for n in mesh.along(x=width / 2)]
    deck.append(f"{mesh.node(f * width, 0, 0)},2,2")
    # the block presses evenly: upward line load of half of the lite over its length, the center held against rounding
    half = weight * 10 * width / 2 * height
    row = [n for n in mesh.along(y=0) if abs(mesh.nodes[n - 1][0] - f * width) < half_block + 1e-3]
    deck += ["*STEP", "*STATIC", "*DLOAD", "EA,GRAV,9806.65,0.,-1.,0.", "*CLOAD"]
    deck += [f"{n},2,{v:.9g}" for n, v in spread(mesh, row, half, 0).items()]
    deck += ["*EL FILE", "S", "*END STEP"]
    stress = run(deck, "stress")
    bottom = stress[mesh.node(width / 2, 0, 0)][0] * 1e6
    top = max(stress[n][0] for n in mesh.along(y=height)) * 1e6
    print("lite,%s,%s" % (name, ",".join(f"{v:.6g}" for v in (width * 1e-3, height * 1e-3, f, bottom, top))))


def main():
    print("# kind,name,then numbers as the generator says")
    solid("solid bar 40 x 60 quarter points", 40, 60, 3000, 750, 400)
    solid("solid bar 40 x 60 eighth points", 40, 60, 3000, 375, 400)
    tube("tube 47 x 97 x 3 quarter points", 47, 97, 3, 3000, 750, 1000)
    tube("tube 47 x 97 x 3 eighth points", 47, 97, 3, 3000, 375, 1000)
    open_section("I 80 x 100 x 6 quarter points", 80, 100, 6, 2400, 600, 600, 20)
    open_section("I 80 x 100 x 6 tenth points", 80, 100, 6, 2400, 240, 600, 20)
    open_section("I 80 x 100 x 6 short", 80, 100, 6, 1200, 300, 600, 20)
    for width, height in ((4000, 500), (3000, 1500), (3000, 2400), (1600, 3200), (800, 4000)):
        for f in (0.25, 0.125, 0.1):
            lite(f"{width} x {height} at {f}", width, height, f)


if __name__ == "__main__":
    main()
