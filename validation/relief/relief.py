"""Slope, aspect, hillshade and contours of real height grids, from GDAL and contourpy.

Reads the reference data folder beside the project (../shared/data from the project root) and
writes statistics.csv, cells.csv and contours.csv here: derived numbers, no heights.

  python3 validation/relief/relief.py

Made with GDAL 3.6.2 (osgeo), contourpy 1.3.3, shapely 2.2.0, NumPy 1.24.2.
Cells: GDAL's DEMProcessing (what gdaldem runs), Horn, no edges; slope in percent, aspect in degrees
clockwise from north, hillshade with azimuth 315 and altitude 45, whose value is 1 + 254 times the
light given back, rounded; 0 is unknown. A file with rows that run north is turned first.
Contours: levels half a centimetre off round ones, so that no cell lies at a level. contourpy (serial;
squares with an unknown corner left out; saddles by the mean) gives the length. GDAL's contour
generator goes on for half a cell beyond the outermost centres and into holes: its lines are cut to
the box of the centres, and its length stands only for files without holes. It joins ambiguous
saddles without asking the mean, so that its lengths differ a little there. Points are of GDAL there,
else of contourpy.
"""

import csv
import math
import pathlib

import contourpy
import numpy as np
import shapely
from osgeo import gdal, ogr

gdal.UseExceptions()
HERE = pathlib.Path(__file__).parent
DATA = HERE.parent.parent.parent / "shared" / "data" / "terrain"
SEED = 20261130
SAMPLE = 240
# File, undeclared value of unknown cells, contour step in m.
FILES = [
    ("slovenia_dtm_1m.tif", None, 5.0),
    ("slovenia_dtm_1m_nan_nodata.tif", None, 5.0),
    ("alexandria_dtm_2m.tif", None, 1.0),
    ("bilbao_dem_5m.tif", None, 10.0),
    ("montpellier_tile_77055_627760_dtm_50cm.tif", None, 0.1),
    ("derived_delft_ground_1m.tif", None, 0.25),
    ("odd/town_surface_5m_nodata_plus9999.tif", None, 5.0),
    ("odd/southup_undeclared_minus9999.tif", -9999.0, 0.25),
]


def load(name, undeclared):
    """Heights from the north-west as float32 with NaN, and the geotransform."""
    source = gdal.Open(str(DATA / name))
    band = source.GetRasterBand(1)
    z = band.ReadAsArray().astype(np.float32)
    for value in (band.GetNoDataValue(), undeclared):
        if value is not None and not math.isnan(value):
            z[z == np.float32(value)] = np.nan
    frame = list(source.GetGeoTransform())
    if frame[5] > 0:
        z = np.flipud(z).copy()
        frame[3] += frame[5] * z.shape[0]
        frame[5] = -frame[5]
    return z, frame


def memory(z, frame):
    out = gdal.GetDriverByName("MEM").Create("", z.shape[1], z.shape[0], 1, gdal.GDT_Float32)
    out.SetGeoTransform(frame)
    out.GetRasterBand(1).WriteArray(z)
    out.GetRasterBand(1).SetNoDataValue(float("nan"))
    return out


def process(source, kind, unknown, **options):
    out = gdal.DEMProcessing("", source, kind, format="MEM", **options)
    values = out.GetRasterBand(1).ReadAsArray().astype(np.float64)
    values[values == unknown] = np.nan
    return values


def gdal_lines(source, level, box):
    folder = ogr.GetDriverByName("Memory").CreateDataSource("")
    layer = folder.CreateLayer("c")
    gdal.ContourGenerate(source.GetRasterBand(1), 0, 0, [level], 1, float("nan"), layer, -1, -1)
    lines = shapely.MultiLineString([f.GetGeometryRef().GetPoints() for f in layer])
    return shapely.intersection(lines, box)


def main():
    random = np.random.default_rng(SEED)
    statistics, cells, contours = [], [], []
    for name, undeclared, step in FILES:
        z, frame = load(name, undeclared)
        source = memory(z, frame)
        slope = process(source, "slope", -9999.0, slopeFormat="percent")
        aspect = process(source, "aspect", -9999.0)
        shade = process(source, "hillshade", 0.0)
        known = np.isfinite(slope)
        steepest = np.unravel_index(np.nanargmax(slope), slope.shape)
        statistics.append([name, int(known.sum()), f"{slope[known].mean():.6f}", f"{slope[known].std():.6f}",
                           f"{slope[known].max():.5f}", *map(int, steepest), f"{np.nanmean(shade):.5f}"])
        # Cells anywhere, and for files with holes as many beside one.
        rows, cols = z.shape
        picks = [(int(i) // cols, int(i) % cols) for i in random.choice(rows * cols, SAMPLE, replace=False)]
        holes = np.argwhere(~np.isfinite(z))
        if len(holes):
            for i in random.choice(len(holes), min(60, len(holes)), replace=False):
                r, c = holes[i] + random.integers(-2, 3, 2)
                picks.append((int(np.clip(r, 0, rows - 1)), int(np.clip(c, 0, cols - 1))))
        for r, c in picks:
            cells.append([name, r, c, *("" if math.isnan(v) else f"{v:.5f}" for v in (slope[r, c], aspect[r, c])),
                          "" if math.isnan(shade[r, c]) else int(shade[r, c])])
        x = frame[0] + (np.arange(cols) + 0.5) * frame[1]
        y = frame[3] + (np.arange(rows) + 0.5) * frame[5]
        box = shapely.box(x.min(), y.min(), x.max(), y.max())
        generator = contourpy.contour_generator(x, y, np.ma.masked_invalid(z.astype(np.float64)), name="serial",
                                                corner_mask=False)
        low, high = np.nanmin(z), np.nanmax(z)
        levels = np.arange(math.ceil(low / step), math.floor(high / step) + 1) * step + 0.005
        whole = not len(holes)
        for level in (float(v) for v in levels if v < high):
            lines = shapely.MultiLineString([line for line in generator.lines(level) if len(line) > 1])
            theirs = gdal_lines(source, level, box) if whole else lines
            if lines.length == 0.0:
                continue
            points = [theirs.interpolate(s, normalized=True) if theirs.geom_type == "LineString" else
                      shapely.line_interpolate_point(max(theirs.geoms, key=lambda g: g.length), s, normalized=True)
                      for s in (0.13, 0.48, 0.81)]
            contours.append([name, f"{level:.4f}", f"{lines.length:.4f}", f"{theirs.length:.4f}" if whole else "",
                             *(f"{v:.4f}" for p in points for v in (p.x, p.y))])
    head = {
        "statistics": ["file", "cells", "mean_percent", "deviation_percent", "steepest_percent", "row", "col", "mean_shade"],
        "cells": ["file", "row", "col", "slope_percent", "aspect_degrees", "shade"],
        "contours": ["file", "level_m", "length_contourpy_m", "length_gdal_m", "x1", "y1", "x2", "y2", "x3", "y3"],
    }
    for table, rows in (("statistics", statistics), ("cells", cells), ("contours", contours)):
        with open(HERE / f"{table}.csv", "w", newline="") as file:
            writer = csv.writer(file, lineterminator="\n")
            writer.writerow(head[table])
            writer.writerows(rows)


main()
