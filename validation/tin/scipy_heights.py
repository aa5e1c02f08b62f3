"""Heights in a triangulation, from SciPy.

Makes points with a seed, at the coordinates of a national grid, and asks SciPy's
LinearNDInterpolator (Delaunay triangulation by Qhull) for heights at 800 places. The points are in
general position, so that the triangulation is the only one. Places outside the hull are left empty.

Made with Python 3, numpy 2.4.6 and scipy 1.17.1:

    python3 scipy_heights.py

writes scipy_heights.csv: rows `p,east,north,height` (points) and `q,east,north,height` (places), m.
The file is made up; no survey is in it.
"""

import numpy as np
import scipy
from scipy.interpolate import LinearNDInterpolator

ORIGIN = np.array([24_525_600.0, 6_876_800.0])
rng = np.random.default_rng(20261130)
xy = np.round(rng.uniform(0, 60, (600, 2)) + ORIGIN, 4)
east, north = (xy - ORIGIN).T
z = np.round(124 + 0.05 * east - 0.03 * north + 1.5 * np.sin(east / 7) * np.cos(north / 9) + rng.normal(0, 0.02, 600), 4)

# Relative to the origin, as Qhull would lose digits otherwise.
ask = LinearNDInterpolator(xy - ORIGIN, z)
places = np.round(rng.uniform(-2, 62, (800, 2)) + ORIGIN, 4)
heights = ask(places - ORIGIN)

with open("scipy_heights.csv", "w", encoding="utf-8", newline="\n") as out:
    out.write(f"# scipy {scipy.__version__}, numpy {np.__version__}; scipy_heights.py; m; made up\n")
    for (e, n), h in zip(xy, z):
        out.write(f"p,{e:.4f},{n:.4f},{h:.4f}\n")
    for (e, n), h in zip(places, heights):
        out.write(f"q,{e:.4f},{n:.4f},{'' if np.isnan(h) else f'{h:.9f}'}\n")
