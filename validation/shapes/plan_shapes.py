"""Areas, plan distances and containment in real plan files, by shapely.

usage: plan_shapes.py DATA > plan_shapes.json   (DATA: the folder of the reference data)
"""

import json
import sys
from pathlib import Path

import pyproj
import shapely
from pyproj import Transformer, network
from shapely.geometry import Point, shape
from shapely.ops import transform

network.set_network_enabled(False)
DATA = Path(sys.argv[1])


def features(name, site=None):
    collection = json.loads((DATA / name).read_text())
    move = Transformer.from_crs(4326, site, always_xy=True).transform if site else None
    shapes = [(f, shape(f["geometry"])) for f in collection["features"] if f["geometry"]]
    return [(f, transform(move, s) if move else s) for f, s in shapes]


areas = {}
for name, site in [
    ("plans/delft_buildings_epsg28992.geojson", None), ("plans/delft_water_epsg28992.geojson", None),
    ("plans/delft_roads_epsg28992.geojson", None), ("plans/delft_bridges_epsg28992.geojson", None),
    ("plans/delft_bare_ground_epsg28992.geojson", None), ("plans/delft_barriers_epsg28992.geojson", None),
    ("plans/delft_buildings_wgs84.geojson", 28992), ("plans/alexandria_buildings.geojson", 26918),
    ("lines/bayreuth_window_400m_buildings_epsg25832.geojson", None),
]:
    areas[name] = [round(p.area, 6) for _, s in features(name, site) for p in getattr(s, "geoms", [s])]

buildings = features("lines/bayreuth_window_400m_buildings_epsg25832.geojson")
axis = next(s for f, s in features("lines/bayreuth_window_400m_power_epsg25832.geojson") if f["properties"].get("power") == "line")
zone = axis.buffer(30, quad_segs=64)
delft = [s for _, s in features("plans/delft_buildings_epsg28992.geojson")]
print(json.dumps({
    "made_with": f"shapely {shapely.__version__}, GEOS {shapely.geos_version_string}, pyproj {pyproj.__version__}",
    "areas_m2": areas,
    "line_to_building_m": {f["id"]: round(s.distance(axis), 6) for f, s in buildings},
    "within_buffer_of_30_m": sorted(f["id"] for f, s in buildings if zone.intersects(s)),
    "delft_first_30_building_to_building_m": [[round(a.distance(b), 6) for b in delft[:30]] for a in delft[:30]],
    "delft_centroids": [[round(s.centroid.x, 6), round(s.centroid.y, 6)] for s in delft],
    "delft_points": [[x, y, sum(s.intersects(Point(x, y)) for s in delft), round(min(s.distance(Point(x, y)) for s in delft), 6)]
                     for x in range(84830, 85056, 15) for y in range(447460, 447622, 15)],
}).replace('], "', '],\n"').replace('}, "', '},\n"'))
