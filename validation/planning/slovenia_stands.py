"""Heights and slopes of twelve stands on the Slovenia 1 m terrain, by rasterio and NumPy.

Independent of the project: reads `terrain/slovenia_dtm_1m.tif` of the reference data, interpolates
bilinearly between cell centres, and writes slovenia_stands.csv beside this file.
Machine of the stands: the demo machine Heron 7 (wheelbase 2.45 m, track 1.62 m).

    pip install rasterio==1.4.3 numpy
    python slovenia_stands.py PATH/TO/slovenia_dtm_1m.tif
"""
import sys
import math
import pathlib
import numpy as np
import rasterio

WHEELBASE, HALF = 2.45, 0.81
STANDS = [  # east, north, heading in degrees clockwise from north
    (564500.0, 146500.0, 0.0), (564500.3, 146500.7, 37.0), (564900.0, 146050.0, 90.0),
    (564900.4, 146050.2, 200.0), (564100.0, 146900.0, 0.0), (564100.2, 146900.9, 120.0),
    (564250.5, 146750.5, 45.0), (564250.5, 146750.5, 135.0), (564417.3, 146903.2, 10.0),
    (564417.3, 146903.2, 100.0), (564700.7, 146300.1, 300.0), (564333.3, 146222.2, 261.0),
]

with rasterio.open(sys.argv[1]) as src:
    band, t = src.read(1).astype(np.float64), src.transform


def height(x, y):
    c = (x - t.c) / t.a - 0.5
    r = (y - t.f) / t.e - 0.5
    c0, r0 = math.floor(c), math.floor(r)
    fc, fr = c - c0, r - r0
    w = np.array([[(1 - fr) * (1 - fc), (1 - fr) * fc], [fr * (1 - fc), fr * fc]])
    return float((band[r0:r0 + 2, c0:c0 + 2] * w).sum())


out = ["# made by slovenia_stands.py with rasterio %s, numpy %s" % (rasterio.__version__, np.__version__),
       "east,north,heading_deg,front_left,front_right,rear_left,rear_right,along,across"]
for e, n, h in STANDS:
    a = math.radians(h)
    f, l = np.array([math.sin(a), math.cos(a)]), np.array([-math.cos(a), math.sin(a)])
    p = np.array([e, n])
    z = [height(*(p + f * x + l * y)) for x, y in [(0, HALF), (0, -HALF), (-WHEELBASE, HALF), (-WHEELBASE, -HALF)]]
    along = ((z[0] + z[1]) - (z[2] + z[3])) / 2 / WHEELBASE
    across = (z[1] - z[0]) / (2 * HALF)
    out.append(",".join("%.2f" % v for v in (e, n, h)) + "," + ",".join("%.5f" % v for v in (*z, along, across)))
pathlib.Path(__file__).with_suffix(".csv").write_text("\n".join(out) + "\n")
