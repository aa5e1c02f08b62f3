"""Random pallets stacked with trimesh: mass, centre and size of each, as an independent computation.

Independent of the project: every base, layer and wrap is a solid box of trimesh with its density set
from its mass; the boxes of a pack are concatenated and trimesh integrates mass and centre over their
surfaces. NumPy's seeded generator draws the packs. Writes packs.csv beside this file: one row a box,
then one row "pack" with the result. Lengths m, masses kg. Frame: x forward from the rearmost face,
y left of the middle of the base, z up from its underside.

    pip install numpy==2.4.6 trimesh==5.2.0
    python packs.py
"""
import pathlib
import numpy as np
import trimesh

PACKS = 300
rng = np.random.default_rng(20271)


def box(size, middle, mass):
    solid = trimesh.creation.box(extents=size)
    solid.apply_translation(middle)
    solid.density = mass / solid.volume
    return solid


rows = ["# made by packs.py with trimesh %s, numpy %s" % (trimesh.__version__, np.__version__),
        "pack,kind,mass,count,depth,width,height,ahead,left,up"]


def row(*values):
    rows.append(",".join(v if isinstance(v, str) else repr(round(float(v), 9)) for v in values))


for n in range(PACKS):
    name = str(n + 1)
    base = rng.uniform([0.6, 0.6, 0.1], [1.4, 1.3, 0.2]).round(4)
    base_mass = round(float(rng.uniform(12, 60)), 2)
    row(name, "base", base_mass, 1, *base, 0, 0, 0)
    solids = [box(base, [0, 0, base[2] / 2], base_mass)]
    top = base[2]
    for _ in range(rng.integers(1, 6)):
        size = (base * rng.uniform(0.4, 1.1, 3)).round(4)
        size[2] = round(float(rng.uniform(0.05, 0.4)), 4)
        count = int(rng.integers(1, 7))
        each = round(float(rng.uniform(3, 260)), 2)
        ahead, left = (rng.uniform(-0.3, 0.3, 2) * base[:2]).round(4)
        # One box a course: the project makes one block of all courses of a layer.
        for k in range(count):
            solids.append(box(size, [ahead, left, top + size[2] * (k + 0.5)], each))
        row(name, "layer", each, count, *size, ahead, left, 0)
        top += size[2] * count
    whole = trimesh.util.concatenate([s.copy() for s in solids])
    low, high = whole.bounds
    if rng.random() < 0.5:
        wrap = round(float(rng.uniform(1, 9)), 2)
        row(name, "wrap", wrap, 1, 0, 0, 0, 0, 0, 0)
        thick = top - base[2]
        solids.append(box([high[0] - low[0], 1.0, thick], [(low[0] + high[0]) / 2, 0, base[2] + thick / 2], wrap))
    mass = np.array([s.mass for s in solids])
    centre = (mass[:, None] * np.array([s.center_mass for s in solids])).sum(axis=0) / mass.sum()
    side = 2 * max(-low[1], high[1])
    row(name, "pack", mass.sum(), 1, high[0] - low[0], side, high[2] - low[2], centre[0] - low[0], centre[1], centre[2])

pathlib.Path(__file__).with_name("packs.csv").write_text("\n".join(rows) + "\n")
