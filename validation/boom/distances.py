"""Distances of boom, head, carriage and load to things, by the collision library FCL.

usage: distances.py > distances.csv

1,000 boom positions of the invented machine in examples/demo-job/machines/demo-14.toml, each with one upright thing: a
convex prism near the boom's plane. The kinematics and the parts are written out here. Everything is rounded before
it is asked.

Made with python-fcl 0.7.0.11 and numpy 2.4.6.
"""

import math
import random
import sys
import tomllib
from pathlib import Path

import fcl
import numpy as np

ROOT = Path(__file__).resolve().parents[2]
MACHINE = tomllib.loads((ROOT / "examples/demo-job/machines/demo-14.toml").read_text())
BACKREST, CARRIAGE_HALF = 1.22, 0.65
LOAD = (1.2, 1.0, 0.95)


def metres(text):
    value, unit = text.split()
    assert unit == "m", text
    return float(value)


BOOM, FORKS = MACHINE["boom"], MACHINE["forks"][0]
FOOT = [metres(v) for v in BOOM["foot"]]
ALONG, BELOW = metres(BOOM["head_along"]), metres(BOOM["head_below"])
RADIUS = metres(BOOM["depth"]) / math.sqrt(2.0)
HEEL = [metres(v) for v in FORKS["heel"]]
BLADES = (metres(FORKS["left"]["length"]), metres(FORKS["spread"]))


def capsule(a, b):
    a, b = np.array(a), np.array(b)
    axis = b - a
    length = np.linalg.norm(axis)
    z = axis / length
    x = np.cross([0.0, 1.0, 0.0], z)
    x /= np.linalg.norm(x)
    turn = np.column_stack([x, np.cross(z, x), z])
    return fcl.CollisionObject(fcl.Capsule(RADIUS, length), fcl.Transform(turn, (a + b) / 2))


def box(low, high):
    low, high = np.array(low), np.array(high)
    return fcl.CollisionObject(fcl.Box(*(high - low)), fcl.Transform(np.eye(3), (low + high) / 2))


def parts(angle, extension):
    """Boom, head, carriage, load with blades; forks level."""
    cos, sin = math.cos(angle), math.sin(angle)
    foot = [FOOT[0], 0.0, FOOT[1]]
    end = [FOOT[0] + cos * (ALONG + extension), 0.0, FOOT[1] + sin * (ALONG + extension)]
    head = [end[0] + sin * BELOW, 0.0, end[2] - cos * BELOW]
    x, z = head[0] + HEEL[0], head[2] + HEEL[1]
    back = min(head[0] - x, -0.1)
    half = max(CARRIAGE_HALF, BLADES[1] / 2)
    across = max(LOAD[1], BLADES[1]) / 2
    return [
        capsule(foot, end),
        capsule(end, head),
        box([x + back, -half, z - 0.1], [x, half, z + BACKREST]),
        box([x, -across, z - 0.1], [x + max(LOAD[0], BLADES[0]), across, z + LOAD[2]]),
    ]


def prism(corners, base, top):
    n = len(corners)
    points = np.array([[x, y, base] for x, y in corners] + [[x, y, top] for x, y in corners])
    faces = [[n, *reversed(range(n))], [n, *range(n, 2 * n)]]
    faces += [[4, i, (i + 1) % n, n + (i + 1) % n, n + i] for i in range(n)]
    flat = np.array([v for face in faces for v in face])
    return fcl.CollisionObject(fcl.Convex(points, len(faces), flat), fcl.Transform())


def thing(rng):
    """Corners in plan, counter-clockwise, base and top."""
    middle = (rng.uniform(-2.0, 11.0), rng.uniform(-3.0, 3.0))
    turn = rng.uniform(0.0, math.tau)
    base = round(rng.choice([-5.0, rng.uniform(0.0, 6.0)]), 3)
    top = round(base + rng.uniform(0.2, 5.0) + (5.0 if base < 0 else 0.0), 3)
    n = rng.choice([4, 4, 3, 5, 6])
    spread = (rng.uniform(0.1, 3.0), rng.uniform(0.1, 3.0))
    # On an ellipse: convex, whatever the angles.
    turns = sorted(rng.uniform(0.0, math.tau) for _ in range(n)) if n != 4 else [
        math.pi / 4, 3 * math.pi / 4, 5 * math.pi / 4, 7 * math.pi / 4
    ]
    corners = []
    for a in turns:
        x, y = spread[0] * math.cos(a), spread[1] * math.sin(a)
        corners.append((
            round(middle[0] + x * math.cos(turn) - y * math.sin(turn), 3),
            round(middle[1] + x * math.sin(turn) + y * math.cos(turn), 3),
        ))
    return corners, base, top


def area(c):
    return 0.5 * sum(c[i - 1][0] * c[i][1] - c[i][0] * c[i - 1][1] for i in range(len(c)))


def convex(c):
    n = len(c)
    turn = lambda p, q, r: (q[0] - p[0]) * (r[1] - q[1]) - (q[1] - p[1]) * (r[0] - q[0])
    return all(turn(c[i], c[(i + 1) % n], c[(i + 2) % n]) > 1e-3 for i in range(n))


def distance(a, b):
    request = fcl.DistanceRequest(enable_nearest_points=False)
    found = fcl.distance(a, b, request, fcl.DistanceResult())
    if found > 0.0:
        return found
    return 0.0


rng = random.Random(20270412)
print("angle,extension,base,top,boom,head,carriage,load,corners")
rows = 0
while rows < 1000:
    corners, base, top = thing(rng)
    if area(corners) < 0.02 or not convex(corners):
        continue
    angle = round(rng.uniform(math.radians(-10.0), math.radians(70.0)), 4)
    extension = round(rng.uniform(0.0, 9.3), 3)
    solid = prism(corners, base, top)
    found = [distance(p, solid) for p in parts(angle, extension)]
    # Far things say little: at most one in five.
    if min(found) > 2.0 and rows % 5:
        continue
    plan = " ".join(f"{x:.3f} {y:.3f}" for x, y in corners)
    print(f"{angle},{extension},{base},{top}," + ",".join(f"{d:.6f}" for d in found) + f",{plan}")
    rows += 1
print(f"{rows} rows", file=sys.stderr)
