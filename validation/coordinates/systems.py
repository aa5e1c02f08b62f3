"""Table of coordinate systems for the survey readers, and points to check them by.

Facts (parameters, areas of use, datum shifts) are those of the EPSG dataset as PROJ states them; the
operation to WGS 84 is the best one that needs no grid file, at the middle of the system's area.

usage: systems.py TABLE POINTS [LEFT_OUT]
TABLE: crates/survey/src/epsg_systems.tsv; POINTS: systems.csv beside this script;
LEFT_OUT: left_out.csv beside this script, codes that the project's own projection misses by more
than 1 cm; they stay out of the table. With the option --all, POINTS holds nine points a system.
"""

import csv
import re
import sys
import warnings
from concurrent.futures import ProcessPoolExecutor
from pathlib import Path

import pyproj
from pyproj import CRS, network
from pyproj.aoi import AreaOfInterest
from pyproj.database import query_crs_info
from pyproj.enums import PJType
from pyproj.transformer import TransformerGroup

network.set_network_enabled(False)
warnings.simplefilter("ignore")
UNITS = {1.0: "m", 0.3048: "ft", 1200 / 3937: "us-ft"}
DATUM_ELLIPSOID = {"WGS84": "WGS84", "NAD83": "GRS80", "NAD27": "clrk66"}


def unit(crs):
    axis = crs.axis_info[0]
    if axis.unit_name == "degree":
        return "deg"
    for size, name in UNITS.items():
        if abs(axis.unit_conversion_factor - size) < 1e-12:
            return name
    return None


def shift(transformer):
    """Seven parameters (position vector: m, arc seconds, parts per million) or why not."""
    text = transformer.definition
    if "Ballpark" in transformer.description:
        return "none"
    helmert = re.findall(r"proj=helmert([^|]*?)(?= step|$)", text)
    if re.search(r"proj=(hgridshift|gridshift|molobadekas|deformation|defmodel|tinshift|affine|geogoffset)", text):
        return None
    if not helmert:
        return "0 0 0 0 0 0 0" if "proj=push" not in text else None
    if len(helmert) != 1:
        return None
    part = dict(p.split("=") for p in helmert[0].split() if "=" in p)
    if any(k.startswith("d") or k == "t_epoch" for k in part):
        return None
    sign = -1 if part.get("convention") == "coordinate_frame" else 1
    # The step stands inverted where the operation was defined the other way round.
    whole = text[: text.find("proj=helmert")].rsplit("step", 1)[-1]
    if "inv" in whole.split():
        return None
    value = lambda k: float(part.get(k, 0))
    numbers = [value("x"), value("y"), value("z"), sign * value("rx"), sign * value("ry"), sign * value("rz"), value("s")]
    return " ".join(f"{n + 0.0:.12g}" for n in numbers)


def row(code):
    crs = CRS.from_epsg(code)
    area = crs.area_of_use
    if area is None or unit(crs) is None or len(crs.axis_info) != 2:
        return None
    directions = {a.direction for a in crs.axis_info}
    if directions != {"east", "north"}:
        return None
    try:
        proj = crs.to_proj4()
    except Exception:
        return None
    if not proj or "+axis" in proj or "+nadgrids" in proj:
        return None
    west, south, east, north = area.bounds
    if east < west:
        east += 360
    words = []
    for word in proj.split():
        if word.startswith(("+units", "+no_defs", "+type", "+to_meter", "+vunits", "+towgs84")):
            continue
        if word.startswith("+datum="):
            word = "+ellps=" + DATUM_ELLIPSOID[word[7:]]
        words.append(word)
    middle = ((west + east) / 2, (south + north) / 2)
    if middle[0] > 180:
        middle = (middle[0] - 360, middle[1])
    eps = 1e-4
    if code == 4326:
        steps, accuracy, name = "0 0 0 0 0 0 0", 0, "none needed"
        best = None
    else:
        group = TransformerGroup(
            crs, 4326, always_xy=True,
            area_of_interest=AreaOfInterest(middle[0] - eps, middle[1] - eps, middle[0] + eps, middle[1] + eps),
        )
        if not group.transformers:
            return None
        best = group.transformers[0]
        steps = shift(best)
        if steps is None:
            # A later one in the list may need no more than seven parameters.
            for other in group.transformers[1:]:
                if shift(other) not in (None, "none"):
                    best, steps = other, shift(other)
                    break
            else:
                return None
        accuracy, name = best.accuracy, best.description
    datum = (crs.datum or crs.geodetic_crs.datum).name
    datum = datum.replace(" ensemble", "").replace("World Geodetic System 1984", "WGS 84")
    # Steps of "none" leave the check to the projection alone, on the system's own longitude and latitude.
    check = best
    if steps == "none":
        check = TransformerGroup(crs.geodetic_crs, crs, always_xy=True).transformers[0]
    via = 4326
    if steps == "none":
        via = crs.geodetic_crs.to_epsg()
        if via is None:
            return None
    points = []
    shares = [0.5, 0.12, 0.88] if ALL else [0.12]
    for i, a in enumerate(shares):
        for j, b in enumerate(shares):
            lon, lat = west + a * (east - west), south + b * (north - south)
            if lon > 180:
                lon -= 360
            if not ALL:
                lat = south + 0.88 * (north - south)
            if code == 4326:
                e, n = lon, lat
            elif steps == "none":
                e, n = check.transform(lon, lat)
            else:
                e, n = best.transform(lon, lat, direction="INVERSE")
            size = {"m": 1.0, "ft": 0.3048, "us-ft": 1200 / 3937, "deg": 1.0}[unit(crs)]
            digits = 10 if unit(crs) == "deg" else 5
            if e == e and abs(e) != float("inf"):
                points.append((code, via, f"{lon:.9f}", f"{lat:.9f}", f"{e * size:.{digits}f}", f"{n * size:.{digits}f}"))
    accuracy = "" if accuracy is None or accuracy < 0 or steps == "none" else f"{accuracy:g}"
    line = [str(code), unit(crs), f"{west:g}", f"{south:g}", f"{east:g}", f"{north:g}", datum, steps, accuracy, " ".join(words), crs.name]
    return line, points, name


def guarded(code):
    try:
        return row(code)
    except Exception as error:  # a system that PROJ itself cannot work with
        return str(error)


ALL = "--all" in sys.argv

if __name__ == "__main__":
    table, points, *rest = [a for a in sys.argv[1:] if not a.startswith("--")]
    left_out = set()
    if rest and Path(rest[0]).exists():
        with open(rest[0]) as f:
            left_out = {int(r[0]) for r in csv.reader(f) if r and r[0].isdigit()}
    kinds = [PJType.PROJECTED_CRS, PJType.GEOGRAPHIC_2D_CRS]
    codes = sorted({int(i.code) for i in query_crs_info("EPSG", kinds, allow_deprecated=False)} - left_out)
    header = (f"# Written by validation/coordinates/systems.py with pyproj {pyproj.__version__}, PROJ {pyproj.proj_version_str}; "
              "facts of the EPSG dataset (IOGP).")
    with ProcessPoolExecutor(2) as pool, open(table, "w") as t, open(points, "w") as p:
        print(header, file=t)
        print("# code, unit, west, south, east, north (degrees), datum, shift to WGS 84 (position vector: m, arc seconds, "
              "parts per million; none: not known without a grid), its accuracy (m), projection in metres, name", file=t)
        print(header, file=p)
        print("# code, system of longitude and latitude (the system's own where no shift to WGS 84 is known), longitude, latitude, easting, northing (m; degrees for degrees)", file=p)
        kept = 0
        for found in pool.map(guarded, codes, chunksize=40):
            if not isinstance(found, tuple) or not found[1]:
                continue
            line, rows, _ = found
            print("\t".join(line), file=t)
            for r in rows:
                print(",".join(map(str, r)), file=p)
            kept += 1
        print(kept, "of", len(codes), file=sys.stderr)
