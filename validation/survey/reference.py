"""Expected values for the survey readers, from general-purpose libraries.

Reads the reference data folder beside the project (../shared/data from the project root) and
writes reference.json here. Needs: pip install "laspy[lazrs]" numpy scipy rasterio

  python3 validation/survey/reference.py

Heights in triangles: SciPy's LinearNDInterpolator over the class 2 points of both Delft clouds,
at 200 seeded places where the longest edge of SciPy's own triangle is below 1.9 m, and 40 places
where it is above 2.1 m (which our readers must call unknown).
Roof heights: class 6 points inside the footprint shrunk by 0.5 m.
Grid heights: rasterio's cell value at its own cell centre, and a bilinear mean of four by numpy.
"""

import json
import pathlib

import laspy
import numpy as np
import rasterio
from scipy.interpolate import LinearNDInterpolator
from scipy.spatial import Delaunay

HERE = pathlib.Path(__file__).parent
DATA = HERE.parent.parent.parent / "shared" / "data"
SEED = 20260611


def ground(path):
    cloud = laspy.read(DATA / path)
    keep = np.asarray(cloud.classification) == 2
    return np.column_stack([np.asarray(cloud.x), np.asarray(cloud.y), np.asarray(cloud.z)])[keep]


def delft_heights():
    points = np.vstack([ground(f"pointcloud/delft_ahn3_{side}.laz") for side in ("west", "east")])
    origin = np.floor(points[0, :2])
    mesh = Delaunay(points[:, :2] - origin)
    surface = LinearNDInterpolator(mesh, points[:, 2])
    rng = np.random.default_rng(SEED)
    known, unknown = [], []
    while len(known) < 200 or len(unknown) < 40:
        at = rng.uniform((84808.5, 447413.0), (85072.0, 447641.0)).round(3)
        triangle = mesh.find_simplex(at - origin)
        if triangle < 0:
            continue
        corners = points[mesh.simplices[triangle]][:, :2]
        longest = max(np.linalg.norm(corners[i] - corners[i - 1]) for i in range(3))
        if longest < 1.9 and len(known) < 200:
            known.append([*at.tolist(), float(surface(at - origin)[0])])
        elif longest > 2.1 and len(unknown) < 40:
            unknown.append(at.tolist())
    return {"ground_points": len(points), "known": known, "unknown": unknown}


def shrunk(ring, by):
    """Parallel inner ring of a simple polygon, from shapely."""
    import shapely

    inner = shapely.Polygon(ring).buffer(-by, join_style="mitre")
    assert inner.geom_type == "Polygon"
    return [list(p) for p in inner.exterior.coords[:-1]]


def delft_roofs():
    import shapely

    buildings = json.loads((DATA / "plans/delft_buildings_epsg28992.geojson").read_text())
    clouds = [laspy.read(DATA / f"pointcloud/delft_ahn3_{side}.laz") for side in ("west", "east")]
    xyz = np.vstack([np.column_stack([np.asarray(c.x), np.asarray(c.y), np.asarray(c.z)]) for c in clouds])
    xyz = xyz[np.concatenate([np.asarray(c.classification) for c in clouds]) == 6]
    out = []
    for feature in buildings["features"]:
        text = json.dumps(feature["properties"])
        for wanted in ("503100000004637", "503100000026152", "503100000017311"):
            if wanted in text:
                geometry = feature["geometry"]
                rings = geometry["coordinates"][0] if geometry["type"] == "MultiPolygon" else geometry["coordinates"]
                ring = [p[:2] for p in rings[0]]
                inner = shrunk(ring, 0.5)
                inside = shapely.contains_xy(shapely.Polygon(inner), xyz[:, 0], xyz[:, 1])
                z = xyz[inside, 2]
                out.append({
                    "id": wanted, "polygon": inner, "count": int(inside.sum()),
                    "median": float(np.median(z)), "p95": float(np.percentile(z, 95)), "max": float(z.max()),
                })
    assert len(out) == 3, out
    return out


def grid_samples(path, seed):
    rng = np.random.default_rng(seed)
    with rasterio.open(DATA / path) as source:
        z = source.read(1).astype(float)
        if source.nodata is not None:
            z[z == source.nodata] = np.nan
        centres, between = [], []
        while len(centres) < 60 or len(between) < 60:
            row, col = int(rng.integers(1, source.height - 2)), int(rng.integers(1, source.width - 2))
            x, y = source.xy(row, col)
            if np.isfinite(z[row, col]) and len(centres) < 60:
                centres.append([x, y, z[row, col]])
            x2, y2 = source.xy(row + 1, col + 1)
            fc, fr = rng.uniform(0.1, 0.9, 2)
            mean = ((z[row, col] * (1 - fc) + z[row, col + 1] * fc) * (1 - fr)
                    + (z[row + 1, col] * (1 - fc) + z[row + 1, col + 1] * fc) * fr)
            if np.isfinite(mean) and len(between) < 60:
                between.append([x + fc * (x2 - x), y + fr * (y2 - y), mean])
        return {"centres": centres, "between": between}


def main():
    grids = ["terrain/slovenia_dtm_1m.tif", "terrain/alexandria_dtm_2m.tif", "terrain/bilbao_dem_5m.tif",
             "terrain/derived_delft_ground_1m.tif", "terrain/odd/southup_undeclared_minus9999.tif"]
    result = {
        "seed": SEED,
        "delft": delft_heights(),
        "roofs": delft_roofs(),
        "grids": {path: grid_samples(path, SEED + i) for i, path in enumerate(grids)},
    }
    # The south-up grid declares no "no data" number; samples that touch it are left out.
    south = result["grids"]["terrain/odd/southup_undeclared_minus9999.tif"]
    for key in south:
        south[key] = [s for s in south[key] if s[2] > -100]
    (HERE / "reference.json").write_text(json.dumps(result, indent=None, separators=(",", ":")) + "\n")


main()
