"""The peer of the grid bench, and reference values for its test: numpy's bincount over laspy points.

  python3 validation/clouds/grid.py time CELL FILE...   best seconds of three, cells with ground, sum of means,
                                                        best seconds of all processors
  python3 validation/clouds/grid.py write               grid.csv here, from ../shared/data

Reads the file, takes class 2, and gives the mean height of every cell of CELL m whose edges lie at
multiples of CELL. grid.csv: 60 seeded cells of the 0.5 m grid of both Delft clouds: the middle of
the cell, number of ground points, mean, lowest, highest; the last line is the whole grid.
Made with laspy 2.7.0. Needs: pip install "laspy[lazrs]" numpy
"""

import pathlib
import sys
import time

import laspy
import numpy as np

HERE = pathlib.Path(__file__).parent
DATA = HERE.parent.parent.parent / "shared" / "data" / "pointcloud"


def ground(path):
    cloud = laspy.read(path)
    keep = np.asarray(cloud.classification) == 2
    return np.asarray(cloud.x)[keep], np.asarray(cloud.y)[keep], np.asarray(cloud.z)[keep]


def gridded(x, y, z, cell):
    col = np.floor(x / cell).astype(np.int64)
    row = np.floor(y / cell).astype(np.int64)
    west, south = col.min(), row.min()
    cols = int(col.max() - west) + 1
    index = (row - south) * cols + (col - west)
    size = cols * (int(row.max() - south) + 1)
    count = np.bincount(index, minlength=size)
    with np.errstate(invalid="ignore", divide="ignore"):
        mean = np.bincount(index, weights=z, minlength=size) / count
    return index, count, mean, west, south, cols


if sys.argv[1] == "time":
    cell = float(sys.argv[2])
    for path in sys.argv[3:]:
        best, busy = float("inf"), float("inf")
        for _ in range(3):
            begin, work = time.perf_counter(), time.process_time()
            _, count, mean, *_ = gridded(*ground(path), cell)
            best, busy = min(best, time.perf_counter() - begin), min(busy, time.process_time() - work)
        print(best, int((count > 0).sum()), float(np.nansum(mean)), busy)
else:
    parts = [ground(DATA / f"delft_ahn3_{side}.laz") for side in ("west", "east")]
    x, y, z = (np.concatenate(p) for p in zip(*parts))
    # Coordinates are whole millimetres; half a tenth keeps points on a cell's edge on its east side.
    index, count, mean, west, south, cols = gridded(np.round(x, 3) + 5e-5, np.round(y, 3) + 5e-5, z, 0.5)
    known = np.flatnonzero(count)
    rng = np.random.default_rng(20261130)
    with open(HERE / "grid.csv", "w") as out:
        out.write("# numpy over laspy points, see grid.py; m\neast,north,points,mean,lowest,highest\n")
        for i in np.sort(rng.choice(known, 60, replace=False)):
            inside = z[index == i]
            at = ((i % cols + west + 0.5) * 0.5, (i // cols + south + 0.5) * 0.5)
            out.write(f"{at[0]:.2f},{at[1]:.2f},{len(inside)},{mean[i]:.4f},{inside.min():.3f},{inside.max():.3f}\n")
        out.write(f"all,cells,{len(known)},{mean[known].mean():.5f},{z.min():.3f},{z.max():.3f}\n")
