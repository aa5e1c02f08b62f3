//! Real plan files: counts and areas of their own description, and shapely's numbers.

use crate::reference::{bytes, codes, files, present, validation};
use geometry::DVec2;
use site::PlanArea;
use survey::{Attribute, Epsg, Feature, GroundOptions, LengthUnit, PlanReading, Shape, read_plan, read_shapefile};

/// A millimetre: the files are rounded to one.
const MILLIMETRE: f64 = 0.001;

fn site(code: u16) -> GroundOptions {
    GroundOptions { site_crs: Some(Epsg(code)), ..GroundOptions::default() }
}

/// Features and codes of the warnings, or the code of the refusal.
type Outcome = Result<(usize, &'static [&'static str]), &'static str>;

/// File, site system, and what it gives.
#[rustfmt::skip]
const FILES: &[(&str, Option<u16>, Outcome)] = &[
    ("lines/bayreuth_north_power_wgs84.geojson", None, Err("survey::degrees")),
    ("lines/bayreuth_north_power_wgs84.geojson", Some(25832), Ok((464, &["survey::datums-differ"]))),
    ("lines/bayreuth_window_400m_buildings_epsg25832.geojson", None, Ok((77, &[]))),
    ("lines/bayreuth_window_400m_buildings_epsg25832.geojson", Some(25832), Ok((77, &[]))),
    ("lines/bayreuth_window_400m_buildings_epsg25832.geojson", Some(25830), Err("survey::outside-area")),
    ("lines/bayreuth_window_400m_power_epsg25832.geojson", None, Ok((9, &[]))),
    ("plans/alexandria_buildings.geojson", None, Err("survey::degrees")),
    ("plans/alexandria_buildings.geojson", Some(26918), Ok((84, &["survey::datums-differ"]))),
    ("plans/delft_bare_ground_epsg28992.geojson", None, Ok((81, &[]))),
    ("plans/delft_barriers_epsg28992.geojson", None, Ok((57, &[]))),
    ("plans/delft_bridges_epsg28992.geojson", None, Ok((3, &[]))),
    ("plans/delft_buildings_epsg28992.geojson", None, Ok((160, &[]))),
    ("plans/delft_buildings_epsg28992.geojson", Some(28992), Ok((160, &[]))),
    ("plans/delft_buildings_wgs84.geojson", None, Err("survey::degrees")),
    ("plans/delft_buildings_wgs84.geojson", Some(28992), Ok((160, &["survey::datums-differ"]))),
    ("plans/delft_roads_epsg28992.geojson", None, Ok((151, &[]))),
    ("plans/delft_water_epsg28992.geojson", None, Ok((3, &[]))),
];

#[test]
fn every_plan_is_read_or_refused_as_stated() {
    if !present() {
        return;
    }
    for (path, code, outcome) in FILES {
        let options = GroundOptions { site_crs: code.map(Epsg), ..GroundOptions::default() };
        match (read_plan(path, &bytes(path), &options), outcome) {
            (Ok(got), Ok((count, warnings))) => {
                assert_eq!((got.features.len(), codes(&got.notes)), (*count, warnings.to_vec()), "{path}");
                assert_eq!(got.facts.layers.values().sum::<u64>(), *count as u64, "{path}");
            }
            (Err(faults), Err(expected)) => assert_eq!(codes(&faults).last(), Some(expected), "{path}"),
            (Ok(_), Err(_)) => panic!("{path} for {code:?} was read"),
            (Err(faults), Ok(_)) => panic!("{path} for {code:?}: {:?}", codes(&faults)),
        }
    }
    for path in ["plans", "lines"].iter().flat_map(|f| files(f, &["geojson"])) {
        assert!(FILES.iter().any(|row| row.0 == path), "{path} has no row");
    }
}

fn read(path: &str, code: Option<u16>) -> PlanReading {
    let options = GroundOptions { site_crs: code.map(Epsg), ..GroundOptions::default() };
    read_plan(path, &bytes(path), &options).unwrap()
}

fn area(feature: &Feature) -> Option<PlanArea> {
    let plan = |ring: &Vec<survey::PlanPoint>| ring.iter().map(|p| p.at).collect();
    match &feature.shape {
        Shape::Area { outer, holes } => Some(PlanArea { outer: plan(outer), holes: holes.iter().map(plan).collect() }),
        _ => None,
    }
}

fn areas(reading: &PlanReading) -> Vec<PlanArea> {
    reading.features.iter().filter_map(area).collect()
}

fn total(reading: &PlanReading) -> f64 {
    areas(reading).iter().map(PlanArea::area).sum()
}

fn expected() -> serde_json::Value {
    serde_json::from_slice(&validation("shapes/plan_shapes.json")).unwrap()
}

#[test]
fn val_shapely_areas_of_every_shape() {
    if !present() {
        return;
    }
    let expected = expected();
    let files = expected["areas_m2"].as_object().unwrap();
    assert_eq!(files.len(), 9, "a file went missing");
    for (path, list) in files {
        let code = match path.as_str() {
            "plans/delft_buildings_wgs84.geojson" => Some(28992),
            "plans/alexandria_buildings.geojson" => Some(26918),
            _ => None,
        };
        let found = areas(&read(path, code));
        let list = list.as_array().unwrap();
        assert_eq!(found.len(), list.len(), "{path}");
        for (i, (area, expected)) in found.iter().zip(list).enumerate() {
            let (got, expected) = (area.area(), expected.as_f64().unwrap());
            assert!((got - expected).abs() < MILLIMETRE, "{path}, area {i}: got {got}, expected {expected}");
            assert_eq!(area.check(), Ok(()), "{path}, area {i}");
        }
    }
}

#[test]
fn val_totals_of_the_data_description() {
    if !present() {
        return;
    }
    for (path, code, expected) in [
        ("plans/delft_buildings_epsg28992.geojson", None, 8654.03),
        ("plans/delft_water_epsg28992.geojson", None, 16_065.53),
        ("plans/delft_roads_epsg28992.geojson", None, 7747.80),
        ("plans/delft_bridges_epsg28992.geojson", None, 125.90),
        ("plans/delft_bare_ground_epsg28992.geojson", None, 7651.58),
        ("plans/delft_barriers_epsg28992.geojson", None, 379.37),
        ("lines/bayreuth_window_400m_buildings_epsg25832.geojson", None, 10_893.8),
        ("plans/alexandria_buildings.geojson", Some(26918), 25_664.5),
    ] {
        let got = total(&read(path, code));
        assert!((got - expected).abs() < 0.06, "{path}: got {got}, expected {expected}");
    }
    let degrees = read("plans/delft_buildings_wgs84.geojson", Some(28992));
    assert!((total(&degrees) / 8654.03 - 1.0).abs() < 0.001);
    assert_eq!(degrees.facts.unit, None);
    // The same corners, carried to degrees and back: within the eighth decimal, 1 mm.
    let metres = read("plans/delft_buildings_epsg28992.geojson", None);
    for (a, b) in metres.features.iter().zip(&degrees.features) {
        for (p, q) in a.shape.points().zip(b.shape.points()) {
            // Another hand converted the file, with another shift for the datum: 0.25 m is what the shifts leave open.
            assert!(p.at.distance(q.at) < 0.3, "{} {}", p.at, q.at);
        }
    }
}

#[test]
fn val_shapely_distances_to_the_power_line() {
    if !present() {
        return;
    }
    let buildings = read("lines/bayreuth_window_400m_buildings_epsg25832.geojson", None);
    let power = read("lines/bayreuth_window_400m_power_epsg25832.geojson", None);
    let line = power.features.iter().find(|f| f.name.as_deref() == Some("way/31574335")).unwrap();
    assert_eq!(line.attributes["voltage"], Attribute::Text("110000".to_owned()));
    assert_eq!(line.attributes["voltage"].number(), Some(110_000.0));
    let axis: Vec<DVec2> = line.shape.points().map(|p| p.at).collect();
    let expected = expected();
    let distances = expected["line_to_building_m"].as_object().unwrap();
    assert_eq!(distances.len(), 77);
    let mut found = Vec::new();
    for building in &buildings.features {
        let name = building.name.clone().unwrap();
        let got = area(building).unwrap().distance_to_line(&axis);
        let expected = distances[&name].as_f64().unwrap();
        assert!((got - expected).abs() < 1e-5, "{name}: got {got}, expected {expected}");
        found.push((name, got));
    }
    for (id, expected) in [
        ("200340202", 0.0),
        ("200340613", 0.0),
        ("200340204", 2.08),
        ("200340200", 5.37),
        ("200337716", 13.68),
        ("200340612", 16.82),
    ] {
        let got = found.iter().find(|(name, _)| name.ends_with(id)).unwrap().1;
        assert!((got - expected).abs() < 0.006, "{id}: {got}");
    }
    let within = |reach: f64| found.iter().filter(|(_, d)| *d <= reach).count();
    assert_eq!((within(5.0), within(30.0)), (3, 11));
    let mut near: Vec<&str> = found.iter().filter(|(_, d)| *d <= 30.0).map(|(name, _)| name.as_str()).collect();
    near.sort_unstable();
    let buffered: Vec<&str> =
        expected["within_buffer_of_30_m"].as_array().unwrap().iter().map(|v| v.as_str().unwrap()).collect();
    assert_eq!(near, buffered);
}

#[test]
fn val_shapely_buildings_to_each_other_and_to_points() {
    if !present() {
        return;
    }
    let buildings = areas(&read("plans/delft_buildings_epsg28992.geojson", None));
    let expected = expected();
    let table = expected["delft_first_30_building_to_building_m"].as_array().unwrap();
    for (i, row) in table.iter().enumerate() {
        for (j, expected) in row.as_array().unwrap().iter().enumerate() {
            let (got, expected) = (buildings[i].distance_to_area(&buildings[j]), expected.as_f64().unwrap());
            assert!((got - expected).abs() < 1e-5, "{i} to {j}: got {got}, expected {expected}");
        }
    }
    for (area, row) in buildings.iter().zip(expected["delft_centroids"].as_array().unwrap()) {
        let centre = DVec2::new(row[0].as_f64().unwrap(), row[1].as_f64().unwrap());
        assert!(area.centroid().unwrap().distance(centre) < 1e-5);
    }
    let points = expected["delft_points"].as_array().unwrap();
    assert!(points.len() > 150);
    for row in points {
        let v: Vec<f64> = row.as_array().unwrap().iter().map(|v| v.as_f64().unwrap()).collect();
        let at = DVec2::new(v[0], v[1]);
        assert_eq!(buildings.iter().filter(|b| b.contains(at)).count() as f64, v[2], "{at}");
        let got = buildings.iter().map(|b| b.distance_to_point(at)).fold(f64::INFINITY, f64::min);
        assert!((got - v[3]).abs() < 1e-5, "{at}: got {got}, expected {}", v[3]);
    }
}

#[test]
fn heights_that_are_missing_stay_missing() {
    if !present() {
        return;
    }
    let reading = read("plans/alexandria_buildings.geojson", Some(26918));
    let heights: Vec<f64> = reading.features.iter().filter_map(|f| f.attributes["HEIGHT"].number()).collect();
    assert_eq!(heights.len(), 82);
    let missing = reading.features.iter().filter(|f| f.attributes["HEIGHT"] == Attribute::Nothing).count();
    assert_eq!(missing, 2);
    let (low, high) = heights.iter().fold((f64::MAX, f64::MIN), |(l, h), z| (l.min(*z), h.max(*z)));
    assert!((low - 3.86).abs() < 0.005 && (high - 17.53).abs() < 0.005);
    assert!(reading.features.iter().all(|f| f.layer == "alexandria_buildings"));
}

#[test]
fn a_shapefile_reads_like_its_geojson() {
    if !present() {
        return;
    }
    let names = ["shp", "dbf", "prj", "cpg", "shx"].map(|e| format!("plans/alexandria_buildings.{e}"));
    let all: Vec<(&str, Vec<u8>)> = names.iter().map(|n| (n.as_str(), bytes(n))).collect();
    let parts: Vec<(&str, &[u8])> = all.iter().map(|(n, b)| (*n, b.as_slice())).collect();
    let shapes = read_shapefile(&parts, &site(26918)).unwrap();
    let json = read("plans/alexandria_buildings.geojson", Some(26918));
    assert_eq!(codes(&shapes.notes), ["survey::datums-differ"]);
    assert_eq!(shapes.features.len(), 84);
    // The GeoJSON is rounded to six decimals, a decimetre.
    assert!((total(&shapes) - 25_664.5).abs() < 30.0, "{}", total(&shapes));
    for (a, b) in shapes.features.iter().zip(&json.features) {
        let (p, q) = (area(a).unwrap().centroid().unwrap(), area(b).unwrap().centroid().unwrap());
        assert!(p.distance(q) < 0.2, "{p} {q}");
        assert_eq!(a.attributes["HEIGHT"].number().is_some(), b.attributes["HEIGHT"].number().is_some());
        if let (Some(x), Some(y)) = (a.attributes["HEIGHT"].number(), b.attributes["HEIGHT"].number()) {
            assert!((x - y).abs() < 1e-6);
        }
    }
    let code = |parts: &[(&str, &[u8])], options: &GroundOptions| {
        codes(&read_shapefile(parts, options).map(|r| r.facts).unwrap_err()).last().unwrap().to_string()
    };
    assert_eq!(code(&parts, &GroundOptions::default()), "survey::degrees");
    assert_eq!(code(&parts[1..], &site(26918)), "survey::no-shp");
    let alone = GroundOptions { units: Some(LengthUnit::Metre), ..site(26918) };
    assert_eq!(code(&parts[..1], &alone), "survey::file-crs-unknown");
    let half = &parts[0].1[..parts[0].1.len() / 2];
    assert_eq!(code(&[(parts[0].0, half)], &site(26918)), "survey::truncated");
    let short = &parts[1].1[..2000];
    assert_eq!(code(&[parts[0], (parts[1].0, short), parts[2]], &site(26918)), "survey::truncated");
    assert_eq!(code(&[parts[0], ("plans/other.dbf", parts[1].1)], &site(26918)), "survey::parts-mixed");
}
