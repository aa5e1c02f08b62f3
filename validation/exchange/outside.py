"""What general tools find in the exported sample files.

Writes results.json here. Needs a Rust toolchain, Node with npm, and:

  pip install ezdxf pyogrio shapely trimesh numpy networkx mapbox_earcut
  npm install gltf-validator        (in a folder given as the argument)
  python3 validation/exchange/outside.py FOLDER_WITH_NODE_MODULES

The files come from `cargo run -p exchange --example write_sample`; they are invented and are not kept. Their digests
are, without notes and version (crates/exchange/tests/exchange/content.rs), so that a test knows when these results
belong to other files.

ezdxf audits the drawings and counts entities; GDAL (through pyogrio) opens GeoJSON and DXF; the Khronos glTF validator
checks the models; trimesh and shapely measure them.
"""

import collections
import json
import pathlib
import subprocess
import sys
import tempfile
import warnings

import ezdxf
import ezdxf.recover
import numpy as np
import pyogrio
import shapely
import trimesh

HERE = pathlib.Path(__file__).parent
ROOT = HERE.parent.parent
VALIDATE = """
const validator = require('gltf-validator');
const bytes = new Uint8Array(require('fs').readFileSync(process.argv[1]));
validator.validateBytes(bytes).then((report) => console.log(JSON.stringify({
  version: validator.version(), issues: report.issues, info: report.info })));
"""


def plain(value):
    return round(float(value), 4)


def geojson(path):
    info = pyogrio.read_info(path)
    meta, _, geometry, _ = pyogrio.raw.read(path, columns=[])
    shapes = [None if g is None else shapely.from_wkb(g) for g in geometry]
    raw = json.loads(path.read_text(encoding="utf-8"))
    areas = {
        f["id"]: plain(s.area) for f, s in zip(raw["features"], shapes) if s is not None and s.geom_type == "Polygon"
    }
    kinds = collections.Counter("none" if s is None else s.geom_type for s in shapes)
    known = [s for s in shapes if s is not None]
    return {
        "features": int(info["features"]),
        "crs": info["crs"],
        "kinds": dict(sorted(kinds.items())),
        "valid": all(shapely.is_valid(s) for s in known),
        "areas": areas,
        "bounds": [plain(v) for v in shapely.total_bounds(known)] if known else None,
        "three_dimensional": sum(bool(s.has_z) for s in known),
    }


def dxf(path):
    strict = ezdxf.readfile(path).audit()
    # The reader that decodes letters beyond ASCII.
    drawing, auditor = ezdxf.recover.readfile(path)
    space = drawing.modelspace()
    kinds = collections.Counter(e.dxftype() for e in space)
    areas = collections.defaultdict(list)
    for e in space.query("LWPOLYLINE"):
        if e.closed:
            ring = [(x, y) for x, y, *_ in e.get_points()]
            areas[e.dxf.layer].append(plain(shapely.Polygon(ring).area))
    frames = [[v.dxf.location for v in e.vertices] for e in space.query("POLYLINE") if e.dxf.layer == "Opening"]
    openings = sorted(
        [plain((f[1] - f[0]).vec2.magnitude), plain(f[0].z), plain(f[2].z), plain((f[2] - f[1]).magnitude)] for f in frames
    )
    faces = [list(e.wcs_vertices())[:3] for e in space.query("3DFACE")]
    triangles = np.array([[tuple(v) for v in f] for f in faces]) if faces else np.zeros((0, 3, 3))
    across = np.cross(triangles[:, 1] - triangles[:, 0], triangles[:, 2] - triangles[:, 0])
    with warnings.catch_warnings():
        # GDAL says of each 3DFACE with three corners, the fourth as the third, that its ring was not closed.
        warnings.simplefilter("ignore")
        meta, _, geometry, values = pyogrio.raw.read(path)
    column = {name: list(v) for name, v in zip(meta["fields"], values)}
    seen = [t for t, layer in zip(column["Text"], column["Layer"]) if t and layer != "Notes"]
    return {
        "version": drawing.dxfversion,
        "units": drawing.header["$INSUNITS"],
        "audit_errors": len(strict.errors) + len(auditor.errors),
        "audit_fixes": len(strict.fixes) + len(auditor.fixes),
        "entities": dict(sorted(kinds.items())),
        "layers": sorted(layer.dxf.name for layer in drawing.layers),
        "closed_areas": {k: sorted(v) for k, v in sorted(areas.items())},
        "openings": openings,
        "ground_area_in_plan": plain(across[:, 2].sum() / 2),
        "names": [e.plain_text() for e in space.query("MTEXT") if e.dxf.layer != "Notes"],
        "gdal_features": len(geometry),
        "gdal_names": seen,
    }


def glb(path, modules):
    asked = subprocess.run(
        ["node", "-e", VALIDATE, str(path.resolve())], cwd=modules, check=True, capture_output=True, text=True
    )
    report = json.loads(asked.stdout)
    issues = report["issues"]
    result = {
        "validator": report["version"],
        "errors": issues["numErrors"],
        "warnings": issues["numWarnings"],
        "infos": sorted({m["code"] for m in issues["messages"] if m["severity"] == 2}),
        "total_triangles": report["info"].get("totalTriangleCount", 0),
    }
    if "resources" not in report["info"]:
        return result
    scene = trimesh.load(path, process=False)
    origin = np.array(scene.graph.transforms.node_data.get("origin", [0, 0, 0]), dtype=float)
    volumes, triangles, tight = {}, 0, {}
    for name in sorted(scene.graph.nodes_geometry):
        transform, geometry = scene.graph[name]
        shape = scene.geometry[geometry]
        if not isinstance(shape, trimesh.Trimesh):
            continue
        shape = trimesh.Trimesh(shape.vertices, shape.faces, process=True)
        shape.merge_vertices()
        triangles += len(shape.faces)
        if shape.is_watertight:
            volumes[name] = plain(shape.volume)
            tight[name] = bool(shape.is_winding_consistent)
    result |= {
        "triangles": triangles,
        "volumes": volumes,
        "winding": all(tight.values()),
        "bounds": [[plain(v) for v in corner] for corner in scene.bounds],
        "geometries": len(scene.geometry),
        "identity": bool(np.allclose(origin, 0)),
    }
    return result


def main(modules):
    out = {
        "made_with": {
            "ezdxf": ezdxf.__version__,
            "pyogrio": pyogrio.__version__,
            "gdal": pyogrio.__gdal_version_string__,
            "shapely": shapely.__version__,
            "trimesh": trimesh.__version__,
        }
    }
    with tempfile.TemporaryDirectory() as folder:
        command = ["cargo", "run", "--quiet", "-p", "exchange", "--example", "write_sample", "--", folder]
        subprocess.run(command, cwd=ROOT, check=True)
        digests = json.loads((pathlib.Path(folder) / "digests.json").read_text())
        for name, digest in sorted(digests.items()):
            path = pathlib.Path(folder) / name
            read = {".geojson": geojson, ".dxf": dxf, ".glb": lambda p: glb(p, modules)}[path.suffix]
            out[name] = {"content": digest, **read(path)}
    target = HERE / "results.json"
    target.write_text(json.dumps(out, indent=1, ensure_ascii=False) + "\n", encoding="utf-8")


if __name__ == "__main__":
    main(sys.argv[1])
