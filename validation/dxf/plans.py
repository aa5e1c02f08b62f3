"""What ezdxf makes of drawings: counts, extents, lengths and areas, for the tests of `survey`.

ezdxf 1.4.5, shapely 2.2.0, Python 3.11. Run: python plans.py <folder of the reference data>
Writes made_r2000.dxf, made_binary.dxf and made_r12.dxf (ours, invented, every entity that is read)
and plans.json beside itself. Lengths and areas in metres, curves flattened to within 1 mm.

length: of everything drawn, outlines too. areas: by layer, of outlines that are closed as drawn
(holes of hatches taken off). rings: of chains of lines and arcs that close, joined by shapely's
linemerge, which like ours joins where exactly two ends meet.
"""

import collections
import io
import json
import math
import pathlib
import sys

import ezdxf
from ezdxf import bbox, path, recover
from ezdxf.render import MeshBuilder
from shapely import make_valid
from shapely.geometry import LineString, MultiLineString, Polygon
from shapely.ops import linemerge

HERE = pathlib.Path(__file__).parent
UNITS = {1: 0.0254, 2: 0.3048, 4: 0.001, 6: 1.0}


def flat(p, distance):
    """Points of a path. ezdxf's own flattening of beziers splits until within the distance."""
    return [(v.x, v.y) for v in p.flattening(distance, segments=16)]


def drawn(entities, layer=None):
    """Entities with inserts resolved; layer 0 in a block is the layer of the insert."""
    for e in entities:
        own = e.dxf.layer
        where = layer if own == "0" and layer else own
        if e.dxftype() == "INSERT":
            for one in e.multi_insert() if e.mcount > 1 else [e]:
                yield from drawn(one.virtual_entities(), where)
        elif e.dxftype() != "ATTDEF":
            yield where, e


def facts(doc, unit):
    step = 0.001 / unit
    msp = doc.modelspace()
    types = collections.Counter(e.dxftype() for e in msp)
    areas = collections.defaultdict(float)
    length, chains, xs, ys, zs = 0.0, collections.defaultdict(list), [], [], []
    points, faces = 0, 0
    for layer, e in drawn(msp):
        kind = e.dxftype()
        if kind == "POINT":
            points += 1
            xs.append(e.dxf.location.x)
            ys.append(e.dxf.location.y)
            zs.append(e.dxf.location.z)
        elif kind in ("3DFACE",):
            faces += 1
            for v in e.wcs_vertices():
                xs.append(v.x), ys.append(v.y), zs.append(v.z)
        elif kind == "POLYLINE" and (e.is_poly_face_mesh or e.is_polygon_mesh):
            mesh = MeshBuilder.from_polyface(e)
            faces += len(mesh.faces)
            for v in mesh.vertices:
                xs.append(v.x), ys.append(v.y), zs.append(v.z)
        elif kind == "HATCH":
            loops = [Polygon(flat(p, step)) for p in path.from_hatch(e)]
            loops.sort(key=lambda p: -p.area)
            for loop in loops:
                depth = sum(other.contains(loop) for other in loops if other is not loop)
                areas[layer] += -loop.area if depth % 2 else loop.area
                length += loop.length * unit
                xs += loop.exterior.xy[0]
                ys += loop.exterior.xy[1]
        elif kind in ("LINE", "ARC", "CIRCLE", "ELLIPSE", "SPLINE", "LWPOLYLINE", "POLYLINE", "SOLID", "TRACE"):
            if kind in ("SOLID", "TRACE"):
                corners = [(v.x, v.y) for v in e.wcs_vertices()]
                shape, closed = corners + corners[:1], True
            else:
                p = path.make_path(e)
                shape = flat(p, step)
                closed = p.is_closed or bool(getattr(e, "closed", False) or getattr(e, "is_closed", False))
                zs += [v.z for v in p.control_vertices()]
            if len(shape) < 2 or LineString(shape).length == 0.0:
                continue
            length += LineString(shape).length * unit
            xs += [x for x, _ in shape]
            ys += [y for _, y in shape]
            if closed and len(shape) > 3:
                areas[layer] += Polygon(shape).area
            elif kind in ("LINE", "ARC"):
                # Ends that differ in the last digits are one place.
                ends = [(round(x / step) * step, round(y / step) * step) for x, y in (shape[0], shape[-1])]
                chains[layer].append(LineString([ends[0]] + shape[1:-1] + [ends[1]]))
    rings = 0.0
    for lines in chains.values():
        merged = linemerge(MultiLineString(lines))
        for line in getattr(merged, "geoms", [merged]):
            if line.is_closed:
                rings += make_valid(Polygon(line)).area
    return {
        "unit": unit,
        "types": dict(sorted(types.items())),
        "points": points,
        "faces": faces,
        "min": [min(xs) * unit, min(ys) * unit],
        "max": [max(xs) * unit, max(ys) * unit],
        "heights": [min(zs, default=0.0) * unit, max(zs, default=0.0) * unit],
        "length": length,
        "areas": {k: v * unit * unit for k, v in sorted(areas.items())},
        "rings": rings * unit * unit,
    }


def made(version):
    """An invented drawing in millimetres with every entity that the reader takes."""
    doc = ezdxf.new(version, units=4)
    for name in list(doc.blocks.block_names()):
        if not name.lower().startswith(("*model", "*paper")) and version != "R12":
            try:
                doc.blocks.delete_block(name, safe=False)
            except ezdxf.DXFError:
                pass
    msp = doc.modelspace()
    at = {"layer": "PLAN"}
    old = version == "R12"
    msp.add_point((1000, 2000, 300), dxfattribs=at)
    msp.add_line((0, 0), (40000, 0), dxfattribs=at)
    bulged = [(0, 1000, 0), (20000, 1000, 0.4), (20000, 9000, 0), (0, 9000, -0.3)]
    if old:
        msp.add_polyline2d(bulged, format="xyb", close=True, dxfattribs=at)
    else:
        msp.add_lwpolyline(bulged, format="xyb", close=True, dxfattribs=at)
        msp.add_lwpolyline(bulged, format="xyb", dxfattribs={"layer": "MIRRORED", "extrusion": (0, 0, -1)})
        msp.add_ellipse((30000, 20000), (8000, 3000), 0.4, dxfattribs=at)
        msp.add_ellipse((30000, 30000), (8000, 0), 0.5, 0.5, 4.0, dxfattribs=at)
        msp.add_open_spline([(0, 20000), (5000, 26000), (9000, 14000), (14000, 22000), (20000, 20000)], dxfattribs=at)
        msp.add_rational_spline(
            [(0, 40000), (6000, 48000), (12000, 40000), (18000, 32000)], [1, 2, 0.5, 1], 3, dxfattribs=at
        )
        hatch = msp.add_hatch(dxfattribs={"layer": "HATCHED"})
        hatch.paths.add_polyline_path([(50000, 0), (60000, 0), (60000, 8000, 0.5), (50000, 8000)], flags=1)
        hole = hatch.paths.add_edge_path(flags=16)
        hole.add_arc((55000, 4000), 1500, 0, 360)
        edges = hatch.paths.add_edge_path(flags=1)
        edges.add_line((50000, 20000), (54000, 20000))
        edges.add_arc((54000, 22000), 2000, 270, 90)
        edges.add_line((54000, 24000), (50000, 24000))
        edges.add_arc((50000, 22000), 2000, 90, 270, ccw=True)
    msp.add_arc((10000, 5000), 2500, 20, 290, dxfattribs=at)
    msp.add_circle((10000, 5000), 1200, dxfattribs={"layer": "ROUND"})
    msp.add_circle((70000, 5000), 1200, dxfattribs={"layer": "ROUND", "extrusion": (0, 0, -1)})
    # Tilted: an ellipse in plan.
    msp.add_circle((5000, 1000, 2000), 3000, dxfattribs={"layer": "TILTED", "extrusion": (0, 1, 1)})
    msp.add_polyline3d([(0, 0, 100), (5000, 5000, 600), (9000, 2000, -400)], dxfattribs=at)
    msp.add_3dface([(0, 0, 0), (1000, 0, 50), (1000, 1000, 90), (0, 1000, 20)], dxfattribs={"layer": "FACES"})
    msp.add_3dface([(2000, 0, 0), (3000, 0, 50), (3000, 1000, 90)], dxfattribs={"layer": "FACES"})
    msp.add_solid([(5000, 0), (6000, 0), (5000, 1000), (6000, 1000)], dxfattribs={"layer": "SOLIDS"})
    msp.add_trace([(7000, 0), (8000, 0), (7000, 500), (8500, 900)], dxfattribs={"layer": "SOLIDS"})
    mesh = MeshBuilder()
    mesh.add_mesh(
        vertices=[(0, 0, 0), (4000, 0, 0), (4000, 4000, 200), (0, 4000, 300), (2000, 2000, 1500)],
        faces=[(0, 1, 4), (1, 2, 4), (2, 3, 4), (3, 0, 4)],
    )
    mesh.render_polyface(msp, dxfattribs={"layer": "FACES"})
    net = msp.add_polymesh((3, 4), dxfattribs={"layer": "FACES"})
    for m in range(3):
        for n in range(4):
            net.set_mesh_vertex((m, n), (20000 + 1000 * m, 1000 * n, 100 * m + 30 * n))
    msp.add_text("wall 45%%d", dxfattribs={"layer": "WORDS", "insert": (100, 100)})
    inner = doc.blocks.new("INNER", base_point=(500, 0))
    inner.add_circle((1000, 1000), 700)
    inner.add_line((0, 0), (2000, 500), dxfattribs={"layer": "OWN"})
    inner.add_arc((0, 0), 900, 10, 130)
    outer = doc.blocks.new("OUTER")
    outer.add_blockref("INNER", (3000, 0), dxfattribs={"xscale": -2, "yscale": 1.5, "rotation": 30})
    outer.add_blockref("INNER", (-3000, 0), dxfattribs={"extrusion": (0, 0, -1)})
    where = {"layer": "PLACED", "rotation": 77, "xscale": 1.1, "yscale": -1.1, "zscale": 1.1}
    msp.add_blockref("OUTER", (-20000, 10000), dxfattribs=where)
    grid = {"layer": "PLACED", "row_count": 3, "column_count": 4, "row_spacing": 6000, "column_spacing": 5000}
    msp.add_blockref("INNER", (-40000, -40000), dxfattribs={**grid, "rotation": 15})
    for a, b in [((0, -10000), (9000, -10000)), ((9000, -10000), (9000, -4000)), ((0, -4000), (0, -10000))]:
        msp.add_line(a, b, dxfattribs={"layer": "LOOP"})
    msp.add_arc((4500, -4000), 4500, 0, 180, dxfattribs={"layer": "LOOP"})
    return doc


def main(data):
    out = {}
    for version, name, form in [("R2000", "made_r2000.dxf", "asc"), ("R12", "made_r12.dxf", "asc"),
                                ("R2000", "made_binary.dxf", "bin")]:
        doc = made(version)
        doc.saveas(HERE / name, fmt=form)
        out[name] = facts(doc, 0.001)
    plans = pathlib.Path(data) / "plans"
    inches, metres = {"house_floorplan_units_lie.dxf", "georeferenced_geodata.dxf"}, 1.0
    for file in sorted(plans.glob("*.dxf")) + sorted(plans.glob("dxf_odd/*.dxf")):
        if file.name == "binary_r13.dxf":
            doc = ezdxf.readfile(file)
        else:
            doc, _ = recover.readfile(file)
        unit = 0.0254 if file.name in inches else 0.001 if "local_mm" in file.name else metres
        if file.name == "unreadable_block_scale_zero.dxf":
            continue  # ezdxf divides by its scale of zero.
        out[str(file.relative_to(plans.parent))] = facts(doc, unit)
    (HERE / "plans.json").write_text(json.dumps(out, indent=1) + "\n")


main(sys.argv[1])
