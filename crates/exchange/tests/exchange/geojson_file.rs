//! GeoJSON, read back.

use crate::sample;
use exchange::{About, site_geojson};
use serde_json::Value;
use site::{PlanShape, ThingKind};

fn read(site: &site::Site) -> Value {
    serde_json::from_slice(&site_geojson(site, &sample::about()).unwrap()).unwrap()
}

fn features(file: &Value) -> &Vec<Value> {
    file["features"].as_array().unwrap()
}

fn feature<'a>(file: &'a Value, name: &str) -> &'a Value {
    let named = |f: &&Value| f["properties"]["name"].as_str().is_some_and(|n| n.starts_with(name));
    features(file).iter().find(named).unwrap_or_else(|| panic!("no feature {name}"))
}

fn point(p: &Value) -> (f64, f64) {
    (p[0].as_f64().unwrap(), p[1].as_f64().unwrap())
}

/// Signed area of a closed ring.
fn area(ring: &Value) -> f64 {
    let points: Vec<_> = ring.as_array().unwrap().iter().map(point).collect();
    let (x0, y0) = points[0];
    points.windows(2).map(|w| ((w[0].0 - x0) * (w[1].1 - y0) - (w[1].0 - x0) * (w[0].1 - y0)) * 0.5).sum()
}

fn numbers(value: &Value, out: &mut Vec<Value>) {
    match value {
        Value::Number(_) => out.push(value.clone()),
        Value::Array(list) => list.iter().for_each(|v| numbers(v, out)),
        Value::Object(map) => map.values().for_each(|v| numbers(v, out)),
        _ => {}
    }
}

#[test]
fn everything_of_the_site_is_a_feature_with_a_key_of_its_own() {
    let file = read(&sample::site());
    assert_eq!(features(&file).len(), 2 + 6 + 2 + 3 + 13 + 3 + 2 + 1);
    let keys: std::collections::BTreeSet<&str> = features(&file).iter().map(|f| f["id"].as_str().unwrap()).collect();
    assert_eq!(keys.len(), features(&file).len());
    assert_eq!(file["crs"]["properties"]["name"], "urn:ogc:def:crs:EPSG::25832");
    assert_eq!(file["coordinates"], Value::Null);
    assert_eq!(file["invented"], true);
    let notes = file["notes"].to_string();
    for said in ["Not for setting out", "Invented data", "Survey office of Nowhere", "terrain.tif", "Main gate"] {
        assert!(notes.contains(said), "{said}");
    }
}

#[test]
fn without_a_code_the_grid_is_said_to_be_the_sites_own() {
    let file: Value = serde_json::from_slice(&site_geojson(&sample::empty(), &About::default()).unwrap()).unwrap();
    assert_eq!((&file["crs"], &file["coordinates"]), (&Value::Null, &Value::from("site grid, metres")));
    assert_eq!(features(&file).len(), 0);
    assert_eq!(file["invented"], false);
}

#[test]
fn rings_are_closed_and_right_handed_and_keep_their_areas() {
    let file = read(&sample::site());
    let mut seen = 0;
    for f in features(&file).iter().filter(|f| f["geometry"]["type"] == "Polygon") {
        for (i, ring) in f["geometry"]["coordinates"].as_array().unwrap().iter().enumerate() {
            let points = ring.as_array().unwrap();
            assert!(points.len() >= 4 && points.first() == points.last(), "{}", f["id"]);
            assert_eq!(area(ring) > 0.0, i == 0, "{}", f["id"]);
            seen += 1;
        }
    }
    assert_eq!(seen, 23);
    let block = &feature(&file, "block")["geometry"]["coordinates"];
    assert!((area(&block[0]) - 120.0).abs() < 1e-6 && (area(&block[1]) + 16.0).abs() < 1e-6);
    assert!((area(&feature(&file, "Landing bay")["geometry"]["coordinates"][0]) - 1.4 * 2.6).abs() < 1e-3);
}

#[test]
fn coordinates_have_no_more_than_four_decimals_and_are_those_of_the_site() {
    let file = read(&sample::site());
    let mut all = Vec::new();
    for f in features(&file) {
        numbers(&f["geometry"], &mut all);
    }
    assert!(all.len() > 300);
    for value in &all {
        let text = value.to_string();
        assert!(text.split_once('.').is_none_or(|(_, d)| d.len() <= 4) && !text.contains('e'), "{text}");
    }
    let silo = feature(&file, "silo");
    assert_eq!(silo["properties"]["radius_m"], 1.25);
    assert_eq!(silo["properties"]["centre_east_m"], 431_276.0);
    assert_eq!(silo["geometry"]["coordinates"][0][0][2], 250.4);
}

#[test]
fn what_is_not_known_is_null_and_is_said() {
    let file = read(&sample::site());
    for (name, nulls, label) in [
        ("oak", vec!["base_m", "top_m"], "oak (invented) (height not known)"),
        ("far fence", vec!["top_m", "heights_are"], "far fence (invented) (ground level not known) (height not known)"),
        ("Trench B", vec!["depth_m", "depth_low_m", "soil", "support"], "Trench B (depth not known)"),
        ("Buried cable", vec!["cover_m", "allowed_pressure_pa"], "Buried cable (depth not known)"),
        (
            "Line nobody has measured",
            vec!["voltage_v", "lowest_m"],
            "Line nobody has measured (voltage not known) (height not known)",
        ),
        ("Landing any way", vec!["approach_heading_deg"], "Landing any way (direction not known)"),
        ("levels.csv", vec!["date"], "levels.csv"),
    ] {
        let properties = &feature(&file, name)["properties"];
        for null in nulls {
            assert_eq!(properties.get(null), Some(&Value::Null), "{name} {null}");
        }
        assert_eq!(properties["label"], label);
    }
    let mut drawn = Vec::new();
    numbers(&feature(&file, "far fence")["geometry"], &mut drawn);
    assert_eq!(drawn.len(), 4, "no heights where none are known");
    assert_eq!(feature(&file, "Line somewhere")["geometry"], Value::Null);
    assert_eq!(feature(&file, "Main gate")["geometry"], Value::Null);
}

#[test]
fn what_is_known_stands_in_the_properties() {
    let file = read(&sample::site());
    let property = |name: &str, key: &str| feature(&file, name)["properties"][key].clone();
    assert_eq!(property("Trench A", "depth_low_m"), 1.6);
    assert_eq!(property("Trench A", "support_by"), "B. Roux (invented)");
    assert_eq!(property("Zone people", "times"), "07:00-09:30, 16:00-01:00");
    assert_eq!(property("Zone one-way", "heading_deg"), 90.0);
    assert_eq!(property("Road line", "voltage_v"), 11_000.0);
    assert_eq!(property("Road line", "sag_m"), serde_json::json!([0.8, 0.9]));
    assert_eq!(property("wall", "openings")[0][4], 251.0);
    assert_eq!(property("terrain.tif", "heights_not_known"), 12);
    assert_eq!(property("terrain.tif", "lowest_m"), 249.75);
    let scan = feature(&file, "Scan");
    assert_eq!(scan["geometry"]["coordinates"].as_array().unwrap().len(), 9);
    assert_eq!(scan["geometry"]["coordinates"][0], serde_json::json!([431_270.25, 5_703_520.75, 253.0]));
}

#[test]
fn a_conductor_hangs_by_its_sag_and_no_chord_lies_above_it() {
    let file = read(&sample::site());
    let lines = &feature(&file, "Road line")["geometry"]["coordinates"];
    let first = lines[0].as_array().unwrap();
    let z = |i: usize| first[i][2].as_f64().unwrap();
    assert_eq!(first.len(), 25);
    let sag = f64::midpoint(259.0, 260.5) - z(12);
    assert!((0.8..0.803).contains(&sag), "{sag}");
    assert!(z(0) <= 259.0 && z(0) > 258.997);
}

#[test]
fn names_are_kept_to_the_letter() {
    let file = read(&sample::site());
    assert_eq!(feature(&file, "Gerüst")["properties"]["name"], sample::ODD_NAME);
}

#[test]
fn a_buried_pipe_lies_under_the_ground_over_each_of_its_corners() {
    let file = read(&sample::site());
    let pipe = feature(&file, "Buried pipe");
    assert_eq!(pipe["properties"]["heights_are"], "crown, by the cover as given");
    let z = pipe["geometry"]["coordinates"][1][2].as_f64().unwrap();
    assert!((z - (sample::height(12.0, 8.5) - 0.9)).abs() < 1e-3, "{z}");
}

#[test]
fn every_kind_of_thing_has_a_layer_of_its_own() {
    let mut site = sample::empty();
    let square = PlanShape::Round { centre: sample::p(0.0, 0.0), radius: 1.0 };
    let kinds = [
        ThingKind::Building,
        ThingKind::Wall,
        ThingKind::Fence,
        ThingKind::Scaffold,
        ThingKind::Floor,
        ThingKind::Bridge,
        ThingKind::Tree,
        ThingKind::Mast,
        ThingKind::Plant,
        ThingKind::Store,
        ThingKind::Fuel,
        ThingKind::TruckBay,
        ThingKind::Unnamed,
    ];
    site.surroundings.things = kinds.iter().map(|k| sample::thing("x", *k, square.clone(), None, Some(1.0))).collect();
    let file = read(&site);
    let layers: std::collections::BTreeSet<String> =
        features(&file).iter().map(|f| f["properties"]["layer"].to_string()).collect();
    assert_eq!(layers.len(), kinds.len());
}
