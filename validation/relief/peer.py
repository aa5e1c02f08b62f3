"""The peer of the relief bench: GDAL in memory, or NumPy and contourpy where it is missing.

  python3 validation/relief/peer.py HEIGHTS ROWS COLS STEP

HEIGHTS: little-endian 32-bit floats, row-major from the north-west, cells of 1 m. Prints a line for
each of slope and hillshade together, and contours: name, best seconds of five, and a number that
shows that the same was done (mean slope as rise over run; length of all contours in m).
Needs: GDAL's Python package with NumPy, or numpy and contourpy.
"""

import sys
import time

import numpy as np

ROUNDS = 5


def best(work):
    times = []
    for _ in range(ROUNDS):
        begin = time.perf_counter()
        result = work()
        times.append(time.perf_counter() - begin)
    return min(times), result


def with_gdal(z, step):
    from osgeo import gdal, ogr

    gdal.UseExceptions()
    source = gdal.GetDriverByName("MEM").Create("", z.shape[1], z.shape[0], 1, gdal.GDT_Float32)
    source.SetGeoTransform([0, 1, 0, 0, 0, -1])
    source.GetRasterBand(1).WriteArray(z)

    def relief():
        slope = gdal.DEMProcessing("", source, "slope", format="MEM", slopeFormat="percent")
        shade = gdal.DEMProcessing("", source, "hillshade", format="MEM")
        return slope, shade

    def lines():
        folder = ogr.GetDriverByName("Memory").CreateDataSource("")
        layer = folder.CreateLayer("c")
        gdal.ContourGenerate(source.GetRasterBand(1), step, 0, [], 0, 0, layer, -1, -1)
        return folder, layer

    seconds, (slope, _) = best(relief)
    values = slope.GetRasterBand(1).ReadAsArray().astype(float)
    print("gdal-relief", seconds, values[values >= 0].mean() / 100)
    seconds, (_, layer) = best(lines)
    print("gdal-contours", seconds, sum(f.GetGeometryRef().Length() for f in layer))


def with_numpy(z, step):
    import contourpy

    def relief():
        a, b, c = z[:-2, :-2], z[:-2, 1:-1], z[:-2, 2:]
        d, f = z[1:-1, :-2], z[1:-1, 2:]
        g, h, i = z[2:, :-2], z[2:, 1:-1], z[2:, 2:]
        east = ((c - a) + 2 * (f - d) + (i - g)) / 8
        north = ((a - g) + 2 * (b - h) + (c - i)) / 8
        square = east * east + north * north
        half = np.float32(0.5)
        shade = (np.sqrt(half) + half * east - half * north) / np.sqrt(1 + square)
        return np.sqrt(square), np.maximum(shade, 0)

    def lines():
        generator = contourpy.contour_generator(z=z.astype(float), name="serial")
        levels = np.arange(np.ceil(z.min() / step), np.floor(z.max() / step) + 1) * step
        return [line for level in levels for line in generator.lines(level)]

    seconds, (slope, _) = best(relief)
    print("numpy-relief", seconds, slope.astype(float).mean())
    seconds, found = best(lines)
    print("contourpy-contours", seconds, sum(np.hypot(*np.diff(line, axis=0).T).sum() for line in found))


def main():
    path, rows, cols, step = sys.argv[1], int(sys.argv[2]), int(sys.argv[3]), float(sys.argv[4])
    z = np.fromfile(path, "<f4").reshape(rows, cols)
    for peer in (with_gdal, with_numpy):
        try:
            peer(z, step)
        except ImportError as missing:
            print("missing:", missing, file=sys.stderr)


main()
