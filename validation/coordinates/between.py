"""Points from one coordinate system straight into another, and how PROJ gets there.

The operation is the best one that needs no grid file (network off): for each side the one to WGS 84
at the middle of its area. For pairs of one datum it is PROJ's own between the two; `direct_differs_m` is
how far PROJ's own operation straight from datum to datum, where it knows one, lies from the way by WGS 84.
usage: between.py > between.json
"""

import json
import re

import pyproj
from pyproj import CRS, network
from pyproj.aoi import AreaOfInterest
from pyproj.transformer import TransformerGroup

network.set_network_enabled(False)
PAIRS = [
    (28992, 4326), (2154, 4326), (25832, 4326), (32620, 4326), (26918, 4326), (25830, 4326), (3794, 4326),
    (3878, 4326), (2994, 4326), (2263, 4326), (27700, 4326), (31467, 25832), (4326, 28992), (4269, 26918),
    (25832, 25833), (28992, 25831),
]


def size(crs):
    return {"degree": 1.0}.get(crs.axis_info[0].unit_name, crs.axis_info[0].unit_conversion_factor)


def best(source, target, at):
    box = AreaOfInterest(at[0] - 1e-4, at[1] - 1e-4, at[0] + 1e-4, at[1] + 1e-4)
    return TransformerGroup(source, target, always_xy=True, area_of_interest=box).transformers[0]


def step(transformer):
    found = re.search(r"proj=helmert (.*?)(?= step|$)", transformer.definition)
    return "seven parameters: " + found.group(1) if found else "null"


pairs = []
for a, b in PAIRS:
    source, target = CRS.from_epsg(a), CRS.from_epsg(b)
    area = (target if a in (4326, 4269) else source).area_of_use
    west, south, east, north = area.bounds
    middle = ((west + east) / 2, (south + north) / 2)
    operation = best(source, target, middle)
    projector = best(CRS.from_epsg(4326), source, middle)
    same = source.geodetic_crs == target.geodetic_crs or 4326 in (a, b)
    first, second = best(source, CRS.from_epsg(4326), middle), best(CRS.from_epsg(4326), target, middle)
    points, differs = [], 0.0
    for i in range(5):
        for j in range(5):
            lon, lat = west + (0.1 + 0.2 * i) * (east - west), south + (0.1 + 0.2 * j) * (north - south)
            x, y = projector.transform(lon, lat)
            u, v = operation.transform(x, y)
            if not same:
                direct = (u, v)
                u, v = second.transform(*first.transform(x, y))
                differs = max(differs, ((u - direct[0]) ** 2 + (v - direct[1]) ** 2) ** 0.5)
            s, t = size(source), size(target)
            points.append([round(x * s, 9), round(y * s, 9), round(u * t, 9), round(v * t, 9)])
    steps = [operation] if same else [first, second]
    pairs.append({"from": a, "to": b, "operation": " then ".join(o.description for o in steps),
                  "accuracy_m": sum(o.accuracy for o in steps), "datum_step": " then ".join(step(o) for o in steps),
                  "direct_differs_m": round(differs, 3), "points": points})
text = json.dumps({"made_with": f"pyproj {pyproj.__version__}, PROJ {pyproj.proj_version_str}", "units": "m or degrees, east first",
                   "pairs": pairs})
print(text.replace('{"from"', '\n{"from"').replace('"points": [', '"points": [\n'))
