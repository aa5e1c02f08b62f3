//! What general tools found in the same files: `validation/exchange/results.json`, written by the script beside it.

use crate::{content, read_dxf, read_glb, sample};
use exchange::{About, Format, export};
use serde_json::Value;
use std::collections::BTreeMap;
use std::path::PathBuf;

/// One unit of the last digit that the script keeps, and of the last that the files have.
const DIGIT: f64 = 2e-4;

fn results() -> Value {
    let path = PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("../../validation/exchange/results.json");
    serde_json::from_slice(&std::fs::read(path).unwrap()).unwrap()
}

/// The file as it is written now, and what the tools found; proven to be about the same content.
fn file(name: &str) -> (Vec<u8>, Value) {
    let (site, ending) = name.split_once('.').unwrap();
    let format = Format::of_extension(ending).unwrap();
    let (site, about) =
        if site == "site" { (sample::site(), sample::about()) } else { (sample::empty(), About::default()) };
    let bytes = export(&site, format, &about).unwrap();
    let found = results()[name].clone();
    assert_eq!(
        found["content"],
        content::digest(format, &bytes),
        "{name} has changed: let the tools look at it again with validation/exchange/outside.py"
    );
    (bytes, found)
}

fn near(found: &Value, ours: f64, what: &str) {
    let found = found.as_f64().unwrap();
    assert!((found - ours).abs() <= DIGIT + 1e-6 * ours.abs().min(1e4), "{what}: outside {found}, ours {ours}");
}

#[test]
fn val_geojson_opens_in_gdal_with_its_system_and_areas() {
    let (bytes, found) = file("site.geojson");
    let ours: Value = serde_json::from_slice(&bytes).unwrap();
    let features = ours["features"].as_array().unwrap();
    assert_eq!(found["features"].as_u64().unwrap() as usize, features.len());
    assert_eq!((found["crs"].as_str(), found["valid"].as_bool()), (Some("EPSG:25832"), Some(true)));
    let areas = found["areas"].as_object().unwrap();
    assert_eq!(areas.len(), 22);
    for f in features.iter().filter(|f| f["geometry"]["type"] == "Polygon") {
        let rings = f["geometry"]["coordinates"].as_array().unwrap();
        let number = |p: &Value, axis: usize| p[axis].as_f64().unwrap();
        let signed = |ring: &Value| -> f64 {
            let r = ring.as_array().unwrap();
            let off = |i: usize, axis: usize| number(&r[i], axis) - number(&r[0], axis);
            (1..r.len()).map(|i| (off(i - 1, 0) * off(i, 1) - off(i, 0) * off(i - 1, 1)) * 0.5).sum()
        };
        let key = f["id"].as_str().unwrap();
        near(&areas[key], rings.iter().map(signed).sum(), key);
    }
    assert_eq!(found["kinds"]["none"], 2);
    let (_, empty) = file("empty.geojson");
    assert_eq!(empty["features"], 0);
}

#[test]
fn val_dxf_passes_the_audit_of_ezdxf_and_opens_in_gdal() {
    for name in ["site.dxf", "empty.dxf"] {
        let (bytes, found) = file(name);
        let ours = read_dxf::read(&bytes);
        assert_eq!((found["audit_errors"].as_u64(), found["audit_fixes"].as_u64()), (Some(0), Some(0)));
        assert_eq!((&found["units"], &found["version"]), (&Value::from(6), &Value::from("AC1015")));
        for kind in ["3DFACE", "CIRCLE", "LWPOLYLINE", "POINT", "POLYLINE"] {
            let counted = found["entities"].get(kind).and_then(Value::as_u64).unwrap_or(0);
            assert_eq!(counted as usize, ours.count(kind), "{name} {kind}");
        }
        // ezdxf adds a layer of its own.
        let listed: Vec<&str> = found["layers"].as_array().unwrap().iter().filter_map(Value::as_str).collect();
        let mut own: Vec<&str> = ours.layers.iter().map(String::as_str).chain(["Defpoints"]).collect();
        own.sort_unstable();
        assert_eq!(listed, own);
    }
    let (bytes, found) = file("site.dxf");
    let ours = read_dxf::read(&bytes);
    let mut areas: BTreeMap<&str, Vec<f64>> = BTreeMap::new();
    for e in ours.entities.iter().filter(|e| e.kind == "LWPOLYLINE" && e.is_closed()) {
        areas.entry(e.layer()).or_default().push(e.area());
    }
    assert_eq!(found["closed_areas"].as_object().unwrap().len(), areas.len());
    for (layer, mut own) in areas {
        own.sort_by(f64::total_cmp);
        let outside = found["closed_areas"][layer].as_array().unwrap();
        assert_eq!(outside.len(), own.len());
        outside.iter().zip(own).for_each(|(o, a)| near(o, a, layer));
    }
    // Width, sill, head, height of each frame.
    let openings = [[1.5, 250.0, 252.0, 2.0], [1.5, 251.0, 252.2, 1.2], [2.0, 252.0, 254.0, 2.0]];
    let seen = found["openings"].as_array().unwrap();
    assert_eq!(seen.len(), openings.len());
    for (seen, wanted) in seen.iter().zip(openings) {
        (0..4).for_each(|i| near(&seen[i], wanted[i], "opening"));
    }
    near(&found["ground_area_in_plan"], 750.0 - 20.0 * 0.25 + 320.0, "ground");
    let names = found["names"].as_array().unwrap();
    assert_eq!(found["gdal_names"].as_array(), Some(names), "both decode the same");
    assert_eq!(names.len(), 28);
    for name in ["Gerüst \"Süd\" 塔 (U+1F3D7) zwei∖U+0041 50%％d ^J <b>&", "oak (invented) (height not known)"] {
        assert!(names.contains(&Value::from(name)), "{name}");
    }
}

#[test]
fn val_gltf_passes_the_khronos_validator_and_has_its_volumes_in_trimesh() {
    let (bytes, found) = file("site.glb");
    let (_, empty) = file("empty.glb");
    for report in [&found, &empty] {
        assert_eq!((report["errors"].as_u64(), report["warnings"].as_u64()), (Some(0), Some(0)));
    }
    let model = read_glb::read(&bytes);
    let nodes = model.json["nodes"].as_array().unwrap();
    let triangles: usize = nodes.iter().map(|n| model.corners(n, 4).len() / 3).sum();
    assert_eq!(found["triangles"].as_u64().unwrap() as usize, triangles);
    assert_eq!(found["total_triangles"].as_u64().unwrap() as usize, triangles);
    assert_eq!(found["winding"], true);
    let volumes = found["volumes"].as_object().unwrap();
    // Every upright thing without openings: eight outlines, silo, tree and fence. Columns that touch are not one solid.
    assert!(volumes.len() >= 10, "{volumes:?}");
    for (name, volume) in volumes {
        near(volume, model.volume(model.node(name)), name);
    }
    // x east, y up, z south.
    let all: Vec<[f64; 3]> = nodes.iter().flat_map(|n| [model.corners(n, 4), model.corners(n, 1)].concat()).collect();
    let end = |axis: usize, sign: f64| all.iter().map(|c| c[axis] * sign).fold(f64::NEG_INFINITY, f64::max) * sign;
    let ours = [[end(0, -1.0), end(2, -1.0), -end(1, 1.0)], [end(0, 1.0), end(2, 1.0), -end(1, -1.0)]];
    for (corner, own) in ours.iter().enumerate() {
        (0..3).for_each(|axis| near(&found["bounds"][corner][axis], own[axis], "bounds"));
    }
}
