"""Best orders of small made jobs by mixed-integer programming: scipy.optimize.milp (HiGHS) of the scipy named in cases.json.

Seconds and grams, as crates/planning/src/order/tasks.rs. Every task is done; the sum of weight times end is least. Ways
between tasks are distances between points, so that they keep the triangle inequality and may be asked of every pair of a
machine's tasks. Writes cases.json beside itself. Run: python order.py
"""

import itertools
import json
import math
import pathlib
import random

import numpy as np
import scipy
from scipy.optimize import Bounds, LinearConstraint, milp

HERE = pathlib.Path(__file__).parent


def made(rng, n):
    machines, landings = rng.choice([1, 2, 2, 3]), rng.choice([1, 2, 3])
    place = [(rng.uniform(0, 300), rng.uniform(0, 300)) for _ in range(n)]
    tasks = []
    for i in range(n):
        release = rng.choice([0, 0, 0, rng.randrange(0, 3000)])
        lasts = rng.randrange(200, 1200)
        due = rng.choice([10**6, 10**6, release + lasts + rng.randrange(1200, 6000)])
        brings = rng.choice([1, 1, 1, -1]) * rng.randrange(200_000, 1_200_000)
        tasks.append(dict(
            machine=rng.randrange(machines), landing=rng.randrange(landings), release=release, due=due, lasts=lasts,
            weight=rng.randrange(1, 10),
            after=[k for k in range(i) if rng.random() < 0.12],
            blocked=[[b, b + rng.randrange(300, 1500)] for b in [rng.randrange(0, 4000)] if rng.random() < 0.25],
            brings=brings, room=rng.randrange(0, 2_500_000) if brings > 0 else None,
        ))
    between = [[0] * n for _ in range(n)]
    clash = [[False] * n for _ in range(n)]
    for i, k in itertools.product(range(n), repeat=2):
        if i == k:
            continue
        if tasks[i]["machine"] == tasks[k]["machine"]:
            # Rounded up, plus one: rounding never breaks the triangle.
            between[i][k] = math.ceil(math.dist(place[i], place[k]) / 1.5) + 1
        elif i < k:
            clash[i][k] = clash[k][i] = rng.random() < 0.35
    return dict(machines=machines, landings=landings, tasks=tasks, between=between, clash=clash)


def best(case):
    tasks, n = case["tasks"], len(case["tasks"])
    big = 40_000
    pairs = [(i, k) for i in range(n) for k in range(i + 1, n)]
    y = {p: n + j for j, p in enumerate(pairs)}  # 1: the first of the pair is before the second
    blocks = [(i, b) for i in range(n) for b in range(len(tasks[i]["blocked"]))]
    z = {q: n + len(pairs) + j for j, q in enumerate(blocks)}  # 1: before the block
    size = n + len(pairs) + len(blocks)
    rows, low, high = [], [], []

    def at_least(terms, bound):
        row = np.zeros(size)
        for at, factor in terms:
            row[at] += factor
        rows.append(row)
        low.append(bound)
        high.append(np.inf)

    def before(i, k):
        """Terms and constant of "i is before k"."""
        return ([(y[i, k], 1.0)], 0.0) if i < k else ([(y[k, i], -1.0)], 1.0)

    for i, k in itertools.permutations(range(n), 2):
        a, b = tasks[i], tasks[k]
        gap = None
        if a["machine"] == b["machine"]:
            gap = a["lasts"] + case["between"][i][k]
        if a["landing"] == b["landing"] or case["clash"][i][k]:
            gap = max(gap or 0, a["lasts"])
        if gap is not None:
            # s_k - s_i >= gap - big (1 - before)
            terms, constant = before(i, k)
            at_least([(k, 1.0), (i, -1.0)] + [(t, -big * f) for t, f in terms], gap - big * (1 - constant))
    for k in range(n):
        for i in tasks[k]["after"]:
            at_least([(k, 1.0), (i, -1.0)], tasks[i]["lasts"])
            if (min(i, k), max(i, k)) in y:
                terms, constant = before(i, k)
                at_least(terms, 1 - constant)
        if tasks[k]["room"] is not None:
            # The sum of what comes before it on its landing is not above its room.
            terms, constant = [], 0.0
            for i in range(n):
                if i != k and tasks[i]["landing"] == tasks[k]["landing"]:
                    t, c = before(i, k)
                    terms += [(at, -f * tasks[i]["brings"]) for at, f in t]
                    constant -= c * tasks[i]["brings"]
            at_least([(at, f / 1000) for at, f in terms], (-tasks[k]["room"] - constant) / 1000)
        for b, (start, end) in enumerate(tasks[k]["blocked"]):
            at_least([(k, -1.0), (z[k, b], -big)], tasks[k]["lasts"] - start - big)
            at_least([(k, 1.0), (z[k, b], big)], end)
    cost = np.zeros(size)
    cost[:n] = [t["weight"] for t in tasks]
    lower = np.array([t["release"] for t in tasks] + [0] * (size - n), dtype=float)
    upper = np.array([min(t["due"] - t["lasts"], big / 2) for t in tasks] + [1] * (size - n), dtype=float)
    if (lower > upper).any():
        return None
    integer = np.ones(size)
    found = milp(cost, constraints=LinearConstraint(np.array(rows), low, high), bounds=Bounds(lower, upper),
                 integrality=integer, options=dict(mip_rel_gap=0.0))
    if found.status != 0:
        return None
    return round(found.fun + sum(t["weight"] * t["lasts"] for t in tasks))


def main():
    rng = random.Random(20270412)
    cases = []
    none = 0
    while len(cases) < 60:
        case = made(rng, rng.choice([3, 4, 5, 6, 7]))
        least = best(case)
        # Some in which not everything can be done stand for that: there no order does all.
        if least is None:
            none += 1
            if none > 12:
                continue
        cases.append(dict(case, least=least))
    out = dict(made_with=f"scipy {scipy.__version__}", cases=cases)
    (HERE / "cases.json").write_text(json.dumps(out, separators=(",", ":")) + "\n")
    print(len(cases), "cases,", sum(c["least"] is None for c in cases), "without an order of all")


if __name__ == "__main__":
    main()
