#!/usr/bin/env python3
"""Beams solved with CalculiX, written as CSV: what BeamOracleTest compares with.

Usage: python3 generate.py > ../../resources/mechanics/beam-oracle.csv     (needs ccx, made with 2.20)

Each beam is a row of B32R elements (quadratic, expanded by CalculiX into solids with reduced integration) of a square
section 10 mm deep on spans of metres, Poisson's ratio zero, so that shear adds about 1e-5 to the deflection. The rigidity
is set through Young's modulus. A distributed load enters as its consistent nodal forces. A hinge is two nodes at one
place whose displacements are tied. Deflections and reactions are those of the nodes, bending moments the section forces.
Columns: case, kind, then up to four numbers. Kinds length, support, hinge, rigidity, distributed, force and moment state
the beam in m, N, N m and N m2; deflection, bending and reaction are position and CalculiX's value.
"""

import os
import subprocess
import tempfile

DEPTH = 0.01  # m
ELEMENT = 0.025  # m

CASES = {
    "two unequal spans": dict(
        length=7.0, supports=[0, 3, 7], hinges=[], rigidity=[(0, 5000)],
        distributed=[(0, 7, 300, 300)], forces=[(1.5, 800), (4.5, -650)], moments=[]),
    "both ends overhang": dict(
        length=6.0, supports=[1, 4.5], hinges=[], rigidity=[(0, 8000)],
        distributed=[(0, 2, 900, 200), (3, 6, 0, 700)], forces=[(6, 150)], moments=[]),
    "stepped rigidity": dict(
        length=9.0, supports=[0, 3.5, 6, 9], hinges=[], rigidity=[(0, 3000), (2.5, 12000), (4.25, 6000)],
        distributed=[(0, 9, 0, 1200)], forces=[(8, -900)], moments=[]),
    "two hinges in three spans": dict(
        length=11.0, supports=[0, 3.5, 7.5, 11], hinges=[2.75, 8.25], rigidity=[(0, 9000)],
        distributed=[(0.5, 6, 400, 700), (6, 11, 250, 250)], forces=[(5.25, 1000)], moments=[]),
    "piece hung between two hinges": dict(
        length=11.0, supports=[0, 3.5, 7.5, 11], hinges=[4.5, 6.5], rigidity=[(0, 9000), (3, 4000), (8, 9000)],
        distributed=[(0, 11, 500, 500)], forces=[(5, 600)], moments=[]),
    "moments in the spans": dict(
        length=8.0, supports=[0.5, 3.5, 7], hinges=[], rigidity=[(0, 7000), (5, 3500)],
        distributed=[(2, 8, 400, 100)], forces=[], moments=[(2, 900), (5.5, -700)]),
}


def on_grid(x):
    i = round(2 * x / ELEMENT)
    assert abs(i * ELEMENT / 2 - x) < 1e-9
    return i


def solve(case, folder):
    n = round(case["length"] / ELEMENT)
    nodes, elements, ties, number = [], [], [], 1
    nodes.append((1, 0.0))
    hinges = {on_grid(h) for h in case["hinges"]}
    for e in range(n):
        start = number
        if 2 * e in hinges:
            number += 1
            nodes.append((number, e * ELEMENT))
            ties.append((start, number))
            start = number
        nodes.append((number + 1, (e + 0.5) * ELEMENT))
        nodes.append((number + 2, (e + 1) * ELEMENT))
        elements.append((start, number + 1, number + 2))
        number += 2
    at = {}
    for node, x in nodes:
        at.setdefault(on_grid(x), node)

    force = {}
    for a, b, qa, qb in case["distributed"]:
        for e in range(on_grid(a) // 2, on_grid(b) // 2):
            q0 = qa + (qb - qa) * (e * ELEMENT - a) / (b - a)
            q1 = qa + (qb - qa) * ((e + 1) * ELEMENT - a) / (b - a)
            # integrals of the quadratic shape functions with a load that runs from q0 to q1
            for node, f in zip(elements[e], (q0 / 6, (q0 + q1) / 3, q1 / 6)):
                force[node] = force.get(node, 0.0) + f * ELEMENT
    for x, f in case["forces"]:
        force[at[on_grid(x)]] = force.get(at[on_grid(x)], 0.0) + f

    deck = ["*NODE"] + [f"{i},{x:.12g},0,0" for i, x in nodes]
    stretches = [(x, ei) for x, ei in case["rigidity"]] + [(case["length"], None)]
    for k, (x, ei) in enumerate(stretches[:-1]):
        deck.append(f"*ELEMENT,TYPE=B32R,ELSET=E{k}")
        for e in range(on_grid(x) // 2, on_grid(stretches[k + 1][0]) // 2):
            deck.append(f"{e + 1}," + ",".join(map(str, elements[e])))
        deck += [f"*MATERIAL,NAME=M{k}", "*ELASTIC", f"{12 * ei / DEPTH ** 4:.12g},0."]
    for k in range(len(case["rigidity"])):
        deck += [f"*BEAM SECTION,ELSET=E{k},MATERIAL=M{k},SECTION=RECT", f"{DEPTH},{DEPTH}", "0,0,1"]
    for a, b in ties:
        for dof in (1, 2, 3):
            deck += ["*EQUATION", "2", f"{a},{dof},1.,{b},{dof},-1."]
    deck += ["*NSET,NSET=ALL", *[f"{i}," for i, _ in nodes], "*BOUNDARY"]
    for s in case["supports"]:
        deck.append(f"{at[on_grid(s)]},2,3")
    # each piece is kept from turning about its own axis, the first from sliding along it
    deck.append(f"{at[on_grid(case['supports'][0])]},1,1")
    for node in [elements[0][0]] + [b for _, b in ties]:
        deck.append(f"{node},4,4")
    deck += ["*STEP", "*STATIC", "*CLOAD"]
    deck += [f"{i},2,{f:.12g}" for i, f in force.items()]
    deck += [f"{at[on_grid(x)]},6,{m:.12g}" for x, m in case["moments"]]
    deck += ["*NODE PRINT,NSET=ALL", "U,RF", "*NODE FILE,OUTPUT=2D", "U", "*EL FILE,SECTION FORCES", "S", "*END STEP"]
    with open(os.path.join(folder, "beam.inp"), "w") as f:
        f.write("\n".join(deck) + "\n")
    subprocess.run(["ccx", "beam"], cwd=folder, check=True, stdout=subprocess.PIPE)

    table, which = {"displacements": {}, "forces": {}}, None
    with open(os.path.join(folder, "beam.dat")) as f:
        for line in f:
            parts = line.split()
            if parts and parts[0] in table:
                which = table[parts[0]]
            elif len(parts) == 4 and which is not None:
                which[int(parts[0])] = float(parts[2])
    bending, inside = {}, False
    with open(os.path.join(folder, "beam.frd")) as f:
        for line in f:
            if line.startswith(" -4"):
                inside = "STRESS" in line
            elif line.startswith(" -3"):
                inside = False
            elif inside and line.startswith(" -1"):
                # its sign there: negative where the side the load points to is in tension
                bending[int(line[3:13])] = -float(line[13 + 4 * 12:13 + 5 * 12])
    return at, table["displacements"], table["forces"], force, bending


def main():
    print("case,kind,a,b,c,d")
    for name, case in CASES.items():
        def row(kind, *numbers):
            print(",".join([name, kind] + [f"{x:.7g}" for x in numbers] + [""] * (4 - len(numbers))))

        row("length", case["length"])
        for kind in ("support", "hinge"):
            for x in case[kind + "s"]:
                row(kind, x)
        for step in case["rigidity"]:
            row("rigidity", *step)
        for load in case["distributed"]:
            row("distributed", *load)
        for kind in ("force", "moment"):
            for load in case[kind + "s"]:
                row(kind, *load)
        with tempfile.TemporaryDirectory() as folder:
            at, deflection, internal, force, bending = solve(case, folder)
        for i in range(0, on_grid(case["length"]) + 1, 20):
            row("deflection", i * ELEMENT / 2, deflection[at[i]])
        # a section force is averaged where it jumps: stations clear of the quarter metres, where loads stand
        for i in range(25, on_grid(case["length"]), 20):
            row("bending", i * ELEMENT / 2, bending[at[i]])
        for x in case["supports"]:
            node = at[on_grid(x)]
            row("reaction", x, force.get(node, 0.0) - internal[node])


if __name__ == "__main__":
    main()
