"""Sideways pressure of surface loads on a wall plane, by SciPy quadrature of Boussinesq's point load.

Independent of the project's closed forms: line, strip and patch are integrated numerically from the point load
(Poisson's ratio 1/2), then over the height. Writes lateral.csv beside this file.

    pip install scipy==1.17.1 numpy==2.4.6
    python lateral.py
"""
import math
import pathlib
import random

import numpy as np
import scipy
from scipy.integrate import quad

NODES, WEIGHTS = np.polynomial.legendre.leggauss(60)


def point(force, x, y, z):
    r2 = x * x + y * y + z * z
    return 3 * force * x * x * z / (2 * math.pi * r2 ** 2.5)


def pressure(kind, f, off, along, z):
    if kind == "point":
        return point(f, off[0], along[0], z)
    if kind == "line":
        return quad(lambda y: point(f, off[0], y, z), -np.inf, np.inf, epsabs=0, epsrel=1e-9)[0]
    half, mid = (off[1] - off[0]) / 2, (off[1] + off[0]) / 2
    if kind == "strip":
        def inner(x):
            return quad(lambda y: point(f, x, y, z), -np.inf, np.inf, epsabs=0, epsrel=1e-9)[0]
    else:
        hy, my = (along[1] - along[0]) / 2, (along[1] + along[0]) / 2

        def inner(x):
            return float(sum(w * point(f, x, my + hy * n, z) for n, w in zip(NODES, WEIGHTS)) * hy)
    return sum(w * inner(mid + half * n) for n, w in zip(NODES[::1], WEIGHTS)) * half


def resultant(kind, f, off, along, height):
    p = quad(lambda z: pressure(kind, f, off, along, z), 0, height, epsabs=0, epsrel=1e-6, limit=60)[0]
    m = quad(lambda z: z * pressure(kind, f, off, along, z), 0, height, epsabs=0, epsrel=1e-6, limit=60)[0]
    return p, height - m / p


rng = random.Random(7)
out = [f"# made by lateral.py with scipy {scipy.__version__}, numpy {np.__version__}",
       "kind,wall,height_m,load_N_or_N/m_or_Pa,off_near_m,off_far_m,along_from_m,along_to_m,resultant_N/m,above_base_m"]
for i in range(44):
    kind = ("point", "line", "strip", "patch")[i % 4]
    height = round(rng.uniform(1.5, 6), 2)
    near = round(rng.uniform(0.4, 3), 2)
    far = round(near + rng.uniform(0.3, 2), 2)
    y0 = round(rng.uniform(-2, 1), 2)
    y1 = round(y0 + rng.uniform(0.3, 3), 2)
    load = {"point": 40e3, "line": 25e3, "strip": 20e3, "patch": 300e3}[kind]
    wall = ("once", "doubled")[(i // 4) % 2]
    p, h = resultant(kind, load, (near, far), (y0, y1), height)
    p *= 2 if wall == "doubled" else 1
    out.append(f"{kind},{wall},{height},{load},{near},{far},{y0},{y1},{p:.6g},{h:.5f}")
pathlib.Path(__file__).with_suffix(".csv").write_text("\n".join(out) + "\n")
