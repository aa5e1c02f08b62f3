"""The peer of the reader bench: numpy for LAS, laspy with the laszip library for LAZ.

  python3 validation/survey/peer.py FILE...

Does what our reader does: counts classes, finds the box of all points, and gives the ground points
(class 2) as 64-bit metres. Prints for each file: best seconds of five, points, ground points, and
the sum of the ground heights, so that the bench can see that both did the same.
Needs: pip install laspy laszip numpy
"""

import sys
import time

import laspy
import numpy as np

ROUNDS = 5


def las_with_numpy(path):
    """Plain LAS of point format 1, straight from the bytes."""
    data = np.fromfile(path, dtype=np.uint8)
    start = int(data[96:100].view("<u4")[0])
    count = int(data[107:111].view("<u4")[0])
    scale = data[131:155].view("<f8")
    offset = data[155:179].view("<f8")
    record = np.dtype([("xyz", "<i4", 3), ("intensity", "<u2"), ("flags", "u1"), ("class", "u1"), ("rest", "V12")])
    points = data[start : start + count * record.itemsize].view(record)
    classes = np.bincount(points["class"] & 0x1F, minlength=32)
    xyz = points["xyz"]
    box = [(xyz[:, i].min() * scale[i] + offset[i], xyz[:, i].max() * scale[i] + offset[i]) for i in range(3)]
    ground = (points["class"] & 0x9F) == 2
    return count, classes, box, xyz[ground] * scale + offset


def laz_with_laszip(path):
    cloud = laspy.read(path, laz_backend=laspy.LazBackend.Laszip)
    classification = np.asarray(cloud.classification)
    classes = np.bincount(classification, minlength=32)
    box = [(np.asarray(a).min(), np.asarray(a).max()) for a in (cloud.x, cloud.y, cloud.z)]
    ground = classification == 2
    xyz = np.column_stack([np.asarray(cloud.x)[ground], np.asarray(cloud.y)[ground], np.asarray(cloud.z)[ground]])
    return len(classification), classes, box, xyz


for path in sys.argv[1:]:
    read = laz_with_laszip if path.endswith(".laz") else las_with_numpy
    best = float("inf")
    for _ in range(ROUNDS):
        begin = time.perf_counter()
        count, classes, box, ground = read(path)
        best = min(best, time.perf_counter() - begin)
    print(best, count, len(ground), float(ground[:, 2].sum()))
