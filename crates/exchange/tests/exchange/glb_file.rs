//! glTF, read back.

use crate::read_glb::{Model, read};
use crate::sample;
use exchange::{About, site_gltf};
use serde_json::Value;

fn sample_model() -> Model {
    read(&site_gltf(&sample::site(), &sample::about()).unwrap())
}

#[test]
fn things_are_solids_of_their_area_times_their_height() {
    let model = sample_model();
    let volume = |name: &str| model.volume(model.node(name));
    // From the lowest ground at a corner (2, 14) to the top.
    let block = 104.0 * (261.5 - sample::height(2.0, 24.0).min(sample::height(2.0, 14.0)));
    assert!((volume("block") - block).abs() < 0.05, "{} {block}", volume("block"));
    assert!((volume("bridge") - 0.96).abs() < 1e-3);
    assert!((volume("slab") - 0.192).abs() < 1e-3);
    assert!((volume("deck") - 14.0 * 0.7).abs() < 0.01, "{}", volume("deck"));
    // The polygon of 24 corners drawn around the circle.
    let round = 24.0 * 1.25 * 1.25 * (std::f64::consts::PI / 24.0).tan() * 7.6;
    assert!((volume("silo") - round).abs() < 0.01);
}

#[test]
fn openings_are_cut_out_of_walls() {
    let model = sample_model();
    let side = |from: f64, to: f64, low: f64, high: f64| {
        let corners = model.corners(model.node("wall"), 4);
        let [ox, oy, oz] = model.origin();
        let at = |t: &[[f64; 3]]| {
            let p: [f64; 3] = std::array::from_fn(|i| t.iter().map(|c| c[i]).sum::<f64>() / 3.0);
            (p[0] + ox - sample::CORNER.x, p[1] + oy - sample::CORNER.y, p[2] + oz)
        };
        let inside =
            |(x, y, z): (f64, f64, f64)| (from..to).contains(&x) && (y - 15.0).abs() < 0.2 && (low..high).contains(&z);
        corners.chunks(3).filter(|t| inside(at(t))).count()
    };
    assert_eq!(side(18.0, 19.5, 251.0, 252.2), 0, "the window is open");
    assert!(side(18.0, 19.5, 250.0, 251.0) >= 2, "below the sill it is closed on both sides");
}

#[test]
fn millimetres_survive_eastings_of_millions() {
    let model = sample_model();
    let [east, north, height] = model.origin();
    assert!((east - sample::CORNER.x).abs() < 60.0 && (north - sample::CORNER.y).abs() < 60.0);
    let corners = model.corners(model.node("bridge"), 4);
    let least = |axis: usize| corners.iter().map(|c| c[axis]).fold(f64::INFINITY, f64::min);
    assert!((least(0) + east - (sample::CORNER.x + 11.0)).abs() < 1e-5);
    assert!((least(1) + north - (sample::CORNER.y + 9.0)).abs() < 1e-5);
    assert!((least(2) + height - 255.0).abs() < 1e-5);
    assert_eq!(model.json["asset"]["extras"]["origin"], model.json["nodes"][0]["extras"]["origin"]);
    assert!(model.json["nodes"][0].get("translation").is_none());
}

#[test]
fn every_node_says_what_it_is() {
    let model = sample_model();
    let oak = model.node("oak");
    assert_eq!(oak["name"], "oak (invented) (height not known)");
    assert_eq!((&oak["extras"]["top_m"], &oak["extras"]["kind"]), (&Value::Null, &Value::from("tree")));
    let top = model.corners(oak, 4).iter().map(|c| c[2]).fold(f64::NEG_INFINITY, f64::max) + model.origin()[2];
    let ground = sample::height(2.0, 2.0).min(sample::height(2.0, 6.0));
    assert!((top - ground - exchange::DRAWN_HEIGHT).abs() < 0.1, "{top} {ground}");
    assert!(model.node("Main gate").get("mesh").is_none());
    assert_eq!(model.json["asset"]["copyright"], "Survey office of Nowhere (invented), open data");
    assert_eq!(model.json["asset"]["extras"]["invented"], true);
}

#[test]
fn zones_lie_on_the_ground_and_lines_hang() {
    let model = sample_model();
    let zone = model.corners(model.node("Zone people"), 4);
    let [ox, oy, oz] = model.origin();
    assert!(zone.len() >= 6);
    for c in &zone {
        let (x, y) = (c[0] + ox - sample::CORNER.x, c[1] + oy - sample::CORNER.y);
        assert!((c[2] + oz - sample::height(x, y) - 0.05).abs() < 0.002, "{x} {y}");
    }
    assert_eq!(model.corners(model.node("Road line"), 1).len(), 48 * 2);
}

#[test]
fn ground_covers_its_cells_but_for_the_hole() {
    let model = sample_model();
    let corners = model.corners(model.node("terrain.tif"), 4);
    let plan =
        |t: &[[f64; 3]]| ((t[1][0] - t[0][0]) * (t[2][1] - t[0][1]) - (t[2][0] - t[0][0]) * (t[1][1] - t[0][1])) * 0.5;
    let area: f64 = corners.chunks(3).map(plan).sum();
    assert!((area - (750.0 - 20.0 * 0.25)).abs() < 1e-3, "{area}");
}

#[test]
fn an_empty_site_is_a_model_without_meshes() {
    let model = read(&site_gltf(&sample::empty(), &About::default()).unwrap());
    assert!(model.bin.is_empty() && model.json.get("meshes").is_none() && model.json.get("buffers").is_none());
    assert_eq!(model.json["nodes"].as_array().unwrap().len(), 1);
}
