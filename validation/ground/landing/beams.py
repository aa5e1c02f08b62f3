"""Random beams with random loads, solved by two general-purpose packages: PyCBA (reactions, moments at the
supports, moment, shear and deflection on a fine grid) and, where the ends allow it, anaStruct (reactions).

Run:  python beams.py > beams.json   (pycba 1.0.2, anastruct 1.7.0)

Lengths m, forces N, stiffness N m2. A beam: ends "simple", "clamped" or the length of an overhang; spans; loads
as [kind, position, force] or [kind, from, to, intensity], positions from the left tip.
"""

import json
import random
import warnings

import numpy as np
import pycba
from anastruct import SystemElements

warnings.filterwarnings("ignore")
rng = random.Random(20260)


def case(number):
    n = 1 + number % 5
    spans = [[round(rng.uniform(0.6, 6.0), 3), round(10 ** rng.uniform(4.5, 7), 0)] for _ in range(n)]
    ends = []
    for _ in range(2):
        kind = rng.choice(["simple", "simple", "clamped", "overhang"])
        ends.append(round(rng.uniform(0.3, 1.5), 3) if kind == "overhang" else kind)
    if n == 1 and ends[0] == "clamped" == ends[1]:
        ends[1] = "simple"
    members = list(spans)
    if not isinstance(ends[0], str):
        members.insert(0, [ends[0], spans[0][1]])
    if not isinstance(ends[1], str):
        members.append([ends[1], spans[-1][1]])
    edges = np.concatenate([[0.0], np.cumsum([m[0] for m in members])])
    loads = []
    for _ in range(rng.randint(1, 4)):
        m = rng.randrange(len(members))
        length = members[m][0]
        if rng.random() < 0.5:
            x = round(rng.uniform(0.05, 0.95) * length, 4)
            loads.append(["point", float(edges[m]) + x, round(rng.uniform(500, 20000), 1), m, x])
        else:
            a = round(rng.uniform(0.0, 0.6) * length, 4)
            c = round(rng.uniform(0.1, 0.38) * length, 4)
            w = round(rng.uniform(500, 15000), 1)
            loads.append(["strip", float(edges[m]) + a, float(edges[m]) + a + c, w, m, a, c])
    return ends, spans, members, edges, loads


def by_pycba(ends, members, edges, loads):
    # Restraints per node: vertical, turning; -1 held, 0 free.
    nodes = len(members) + 1
    fixed = []
    for i in range(nodes):
        tip = (i == 0 and not isinstance(ends[0], str)) or (i == nodes - 1 and not isinstance(ends[1], str))
        clamped = (i == 0 and ends[0] == "clamped") or (i == nodes - 1 and ends[1] == "clamped")
        fixed += [0, 0] if tip else [-1, -1 if clamped else 0]
    matrix = []
    for load in loads:
        if load[0] == "point":
            matrix.append([load[3] + 1, 2, load[2], load[4], 0])
        else:
            matrix.append([load[4] + 1, 3, load[3], load[5], load[6]])
    beam = pycba.BeamAnalysis([m[0] for m in members], [m[1] for m in members], fixed, matrix)
    beam.npts = 20000
    beam.analyze(20000)
    results = beam.beam_results.results
    forces, moments = [], {}
    all_reactions = list(beam.beam_results.R)
    k = 0
    for i in range(nodes):
        if fixed[2 * i] == -1:
            forces.append(float(all_reactions[k]))
            k += 1
        if fixed[2 * i + 1] == -1:
            moments["left" if i == 0 else "right"] = abs(float(all_reactions[k]))
            k += 1
    x, m, v, d = results.x, results.M, results.V, results.D
    shift = m
    return {
        "reactions": forces,
        "clamps": moments,
        "sagging": float(max(shift.max(), 0.0)),
        "hogging": float(min(shift.min(), 0.0)),
        "shear": float(np.abs(v).max()),
        "up_and_down": [float(d.min()), float(d.max())],
    }


def by_anastruct(ends, members, edges, loads):
    marks = sorted(set([float(e) for e in edges] + [p for l in loads for p in ([l[1]] if l[0] == "point" else [l[1], l[2]])]))
    frame = SystemElements()
    elements = []
    for a, b in zip(marks, marks[1:]):
        middle = (a + b) / 2
        ei = members[int(np.searchsorted(edges, middle)) - 1][1]
        elements.append((middle, frame.add_element([[a, 0], [b, 0]], EI=ei, EA=1e12)))
    ids = []
    for i, e in enumerate(edges):
        tip = (i == 0 and not isinstance(ends[0], str)) or (i == len(edges) - 1 and not isinstance(ends[1], str))
        clamped = (i == 0 and ends[0] == "clamped") or (i == len(edges) - 1 and ends[1] == "clamped")
        node = frame.find_node_id([float(e), 0])
        if tip:
            continue
        ids.append(node)
        if clamped:
            frame.add_support_fixed(node)
        elif len(ids) == 1:
            frame.add_support_hinged(node)
        else:
            frame.add_support_roll(node)
    for load in loads:
        if load[0] == "point":
            frame.point_load(frame.find_node_id([load[1], 0]), Fy=-load[2])
    for middle, element in elements:
        w = sum(l[3] for l in loads if l[0] == "strip" and l[1] < middle < l[2])
        if w:
            frame.q_load(q=-w, element_id=element)
    frame.solve()
    return [abs(frame.get_node_results_system(i)["Fy"]) * np.sign(-frame.get_node_results_system(i)["Fy"]) for i in ids]


out = []
for number in range(150):
    ends, spans, members, edges, loads = case(number)
    ours = by_pycba(ends, members, edges, loads)
    second = [float(v) for v in by_anastruct(ends, members, edges, loads)]
    size = sum(abs(r) for r in ours["reactions"])
    apart = min(
        max(abs(a - b) for a, b in zip(ours["reactions"], second)),
        max(abs(a + b) for a, b in zip(ours["reactions"], second)),
    )
    ours["packages_apart"] = apart / size
    keep = [l[:3] if l[0] == "point" else l[:4] for l in loads]
    out.append({"ends": ends, "spans": spans, "loads": keep, **ours})


def short(v):
    if isinstance(v, float):
        return float(f"{v:.9g}")
    if isinstance(v, list):
        return [short(x) for x in v]
    if isinstance(v, dict):
        return {k: short(x) for k, x in v.items()}
    return v


print("[\n" + ",\n".join(json.dumps(short(c)) for c in out) + "\n]")
