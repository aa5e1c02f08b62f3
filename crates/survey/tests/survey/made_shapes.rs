//! Plan files made here: what is mended, left out and refused; and seeded mutations.

use crate::made::Dice;
use crate::mutations::mutated;
use crate::reference::codes;
use geometry::DVec2;
use survey::{Attribute, Epsg, GroundOptions, LengthUnit, PlanReading, Shape, read_plan, read_shapefile};

fn metres() -> GroundOptions {
    GroundOptions { units: Some(LengthUnit::Metre), ..GroundOptions::default() }
}

fn json(geometry: &str) -> String {
    format!(
        r#"{{"type":"FeatureCollection","crs":{{"type":"name","properties":{{"name":"EPSG:28992"}}}},"features":[{{"type":"Feature","properties":{{"name":"shed"}},"geometry":{geometry}}}]}}"#
    )
}

fn read(text: &str) -> Result<PlanReading, Vec<String>> {
    read_plan("plans/site.geojson", text.as_bytes(), &GroundOptions::default()).map_err(|faults| {
        assert!(faults.list.iter().all(|f| f.hint.is_some() && f.place.file == "plans/site.geojson"));
        codes(&faults).into_iter().map(str::to_owned).collect()
    })
}

fn corners(shape: &Shape) -> Vec<DVec2> {
    shape.points().map(|p| p.at).collect()
}

#[test]
fn every_kind_of_geometry() {
    let reading = read(&json(
        r#"{"type":"GeometryCollection","geometries":[
            {"type":"Point","coordinates":[1,2,3]},
            {"type":"MultiPoint","coordinates":[[1,2],[3,4,5]]},
            {"type":"LineString","coordinates":[[0,0],[10,0,4]]},
            {"type":"MultiLineString","coordinates":[[[0,0],[1,1]],[[5,5],[6,6]]]},
            {"type":"Polygon","coordinates":[[[0,0],[9,0],[9,9],[0,9],[0,0]],[[1,1],[2,1],[2,2],[1,1]]]},
            {"type":"MultiPolygon","coordinates":[[[[20,0],[29,0],[29,9],[20,0]]],[[[40,0],[49,0],[49,9],[40,0]]]]}
        ]}"#,
    ))
    .unwrap();
    assert_eq!(codes(&reading.notes), Vec::<&str>::new());
    assert_eq!(reading.features.len(), 9);
    assert!(reading.features.iter().all(|f| f.name.as_deref() == Some("shed") && f.layer == "site" && f.place == 1));
    assert!(matches!(&reading.features[0].shape, Shape::Point(p) if p.height == Some(3.0)));
    assert!(matches!(&reading.features[6].shape, Shape::Area { outer, holes } if outer.len() == 4 && holes.len() == 1));
    assert_eq!((reading.facts.min, reading.facts.max), ([0.0, 0.0], [49.0, 9.0]));
}

#[test]
fn slips_are_mended_or_left_out_with_a_note() {
    let mended = |geometry: &str| {
        let reading = read(&json(geometry)).unwrap();
        (codes(&reading.notes).iter().map(|c| (*c).to_owned()).collect::<Vec<_>>(), reading)
    };
    let (notes, reading) =
        mended(r#"{"type":"Polygon","coordinates":[[[0,0],[4,0],[4,0],[4,4],[0,4]],[[1,1],[2,2],[1,1]]]}"#);
    assert_eq!(notes, ["survey::shape-left-out", "survey::repeated-points", "survey::open-rings"]);
    assert_eq!(corners(&reading.features[0].shape).len(), 4);
    let (notes, reading) = mended(r#"{"type":"Polygon","coordinates":[[[0,0],[4,4],[4,0],[0,4],[0,0]]]}"#);
    assert_eq!(notes, ["survey::shape-mended"]);
    assert_eq!(reading.features.len(), 2, "both wings of a bow tie");
    let (notes, reading) = mended(r#"{"type":"MultiLineString","coordinates":[[[3,3],[3,3]],[[0,0],[5,0]]]}"#);
    assert_eq!(notes, ["survey::shape-left-out", "survey::repeated-points"]);
    assert_eq!(reading.features.len(), 1);
}

#[test]
fn what_cannot_be_read_is_refused_all_at_once_and_capped() {
    let bad = r#"{"type":"Feature","properties":{},"geometry":{"type":"LineString","coordinates":[[0,0],["x",1]]}}"#;
    let good = r#"{"type":"Feature","properties":{},"geometry":{"type":"Point","coordinates":[5,5]}}"#;
    let text = |n: usize| {
        let list = vec![bad; n].join(",");
        format!(
            r#"{{"type":"FeatureCollection","crs":{{"type":"EPSG","properties":{{"code":28992}}}},"features":[{good},{list}]}}"#
        )
    };
    assert_eq!(read(&text(3)).unwrap_err(), ["survey::bad-shape"; 3]);
    let many = read(&text(300)).unwrap_err();
    assert_eq!(many.len(), 101);
    assert_eq!(many.last().unwrap(), "survey::more-shapes");
    for (text, code) in [
        ("{\"type\":\"FeatureCollection\",\"features\":[{]}", "survey::json"),
        ("{\"type\":\"FeatureCollection\",\"features\":[NaN]}", "survey::json"),
        ("{\"type\":\"FeatureCollection\",\"features\":[]}", "survey::no-shapes"),
        ("{\"type\":\"FeatureCollection\"}", "survey::not-geojson"),
        ("{\"kind\":\"Feature\"}", "survey::not-geojson"),
        (r#"{"type":"Feature","properties":null,"geometry":null}"#, "survey::no-shapes"),
    ] {
        assert!(read(text).unwrap_err().iter().any(|c| c == code), "{text}");
    }
    let deep = format!(
        "{{\"type\":\"Feature\",\"geometry\":{}",
        "{\"type\":\"GeometryCollection\",\"geometries\":[".repeat(5000)
    );
    assert_eq!(read(&deep).unwrap_err(), ["survey::json"]);
}

#[test]
fn degrees_by_rfc_7946_and_plain_numbers_in_metres() {
    let plain = |coordinates: &str| {
        format!(r#"{{"type":"Feature","properties":{{}},"geometry":{{"type":"Point","coordinates":{coordinates}}}}}"#)
    };
    let at = |text: &str, options: &GroundOptions| {
        read_plan("a.geojson", text.as_bytes(), options)
            .map(|r| corners(&r.features[0].shape)[0])
            .map_err(|f| codes(&f).last().unwrap().to_string())
    };
    let site = GroundOptions { site_crs: Some(Epsg(28992)), ..GroundOptions::default() };
    let delft = plain("[4.36710947,52.01141554,7.5]");
    assert!(at(&delft, &site).unwrap().distance(DVec2::new(84_967.573, 447_497.445)) < 0.3);
    assert_eq!(at(&delft, &GroundOptions::default()).unwrap_err(), "survey::degrees");
    assert_eq!(at(&plain("[52.01141554,4.36710947]"), &site).unwrap_err(), "survey::axes-swapped");
    assert_eq!(at(&plain("[-33.9,151.2]"), &site).unwrap_err(), "survey::axes-swapped");
    let far = plain("[84967.573,447497.445]");
    assert_eq!(at(&far, &GroundOptions::default()).unwrap_err(), "survey::units-unknown");
    assert_eq!(at(&far, &metres()).unwrap(), DVec2::new(84_967.573, 447_497.445));
    assert_eq!(at(&far, &site).unwrap_err(), "survey::file-crs-unknown");
    assert_eq!(at(&plain("[12.5,30.25]"), &metres()).unwrap(), DVec2::new(12.5, 30.25));
}

#[test]
fn names_and_attributes() {
    let text = r#"{"type":"FeatureCollection","crs":{"type":"name","properties":{"name":"EPSG:28992"}},"features":[
        {"type":"Feature","id":7,"properties":{"name":"x"},"geometry":{"type":"Point","coordinates":[1,1]}},
        {"type":"Feature","properties":{"FID":12,"tags":{"a":[1]},"ok":true,"none":null},"geometry":{"type":"Point","coordinates":[1,1]}},
        {"type":"Feature","properties":null,"geometry":{"type":"Point","coordinates":[1,1]}},
        {"type":"Feature","properties":null,"geometry":null}]}"#;
    let reading = read(text).unwrap();
    let names: Vec<Option<&str>> = reading.features.iter().map(|f| f.name.as_deref()).collect();
    assert_eq!(names, [Some("7"), Some("12"), None]);
    let second = &reading.features[1].attributes;
    assert_eq!(second["tags"], Attribute::Text("{\"a\":[1]}".to_owned()));
    assert_eq!((&second["ok"], &second["none"]), (&Attribute::YesNo(true), &Attribute::Nothing));
    assert_eq!(reading.facts.left_out["null"], 1);
    assert_eq!(codes(&reading.notes), ["survey::without-shape"]);
}

/// A Shapefile of records (type and content after the type).
fn shp(kind: u32, contents: &[Vec<u8>]) -> Vec<u8> {
    let mut bytes = vec![0; 100];
    bytes[2..4].copy_from_slice(&[0x27, 0x0A]);
    bytes[28..32].copy_from_slice(&1000_u32.to_le_bytes());
    bytes[32..36].copy_from_slice(&kind.to_le_bytes());
    for (i, content) in contents.iter().enumerate() {
        bytes.extend((i as u32 + 1).to_be_bytes());
        bytes.extend((content.len() as u32 / 2).to_be_bytes());
        bytes.extend(content);
    }
    let words = bytes.len() as u32 / 2;
    bytes[24..28].copy_from_slice(&words.to_be_bytes());
    bytes
}

fn doubles(values: &[f64]) -> Vec<u8> {
    values.iter().flat_map(|v| v.to_le_bytes()).collect()
}

/// Lines or rings, with heights where the kind has them.
fn rings(kind: u32, rings: &[&[(f64, f64)]], heights: &[f64]) -> Vec<u8> {
    let count: usize = rings.iter().map(|r| r.len()).sum();
    let mut content = kind.to_le_bytes().to_vec();
    content.extend(doubles(&[0.0; 4]));
    content.extend((rings.len() as u32).to_le_bytes());
    content.extend((count as u32).to_le_bytes());
    let mut start = 0_u32;
    for ring in rings {
        content.extend(start.to_le_bytes());
        start += ring.len() as u32;
    }
    content.extend(rings.iter().flat_map(|r| r.iter()).flat_map(|(x, y)| doubles(&[*x, *y])));
    if !heights.is_empty() {
        content.extend(doubles(&[0.0, 0.0]));
        content.extend(doubles(heights));
    }
    content
}

fn dbf(mark: u8, names: &[&[u8]]) -> Vec<u8> {
    let mut bytes = vec![0; 32];
    bytes[0] = 3;
    bytes[4..8].copy_from_slice(&(names.len() as u32).to_le_bytes());
    bytes[8..10].copy_from_slice(&65_u16.to_le_bytes());
    bytes[10..12].copy_from_slice(&11_u16.to_le_bytes());
    bytes[29] = mark;
    let mut field = [0; 32];
    field[..4].copy_from_slice(b"NAME");
    (field[11], field[16]) = (b'C', 10);
    bytes.extend(field);
    bytes.push(0x0D);
    for name in names {
        let mut row = [b' '; 11];
        row[1..=name.len()].copy_from_slice(name);
        bytes.extend(row);
    }
    bytes
}

const OUTER: &[(f64, f64)] = &[(0.0, 0.0), (0.0, 9.0), (9.0, 9.0), (9.0, 0.0), (0.0, 0.0)];
const HOLE: &[(f64, f64)] = &[(1.0, 1.0), (3.0, 1.0), (3.0, 3.0), (1.0, 1.0)];

fn shapefile() -> (Vec<u8>, Vec<u8>) {
    let shapes = shp(
        15,
        &[rings(15, &[OUTER, HOLE], &[1.5; 9]), 0_u32.to_le_bytes().to_vec(), rings(15, &[OUTER], &[-1e39; 5])],
    );
    (shapes, dbf(0x57, &[b"Stra\xDFe", b"", b"Hof"]))
}

#[test]
fn shapefile_records_with_heights_holes_and_nothing() {
    let (shapes, table) = shapefile();
    let parts = [("site.shp", shapes.as_slice()), ("site.DBF", table.as_slice())];
    let reading = read_shapefile(&parts, &metres()).unwrap();
    assert_eq!(codes(&reading.notes), ["survey::without-shape"]);
    let names: Vec<Option<&str>> = reading.features.iter().map(|f| f.name.as_deref()).collect();
    assert_eq!(names, [Some("Straße"), Some("Hof")]);
    assert_eq!(reading.features.iter().map(|f| f.place).collect::<Vec<_>>(), [1, 3]);
    let Shape::Area { outer, holes } = &reading.features[0].shape else { panic!("an area") };
    assert_eq!((outer.len(), holes[0].len(), outer[0].height), (4, 3, Some(1.5)));
    assert!(reading.features[1].shape.points().all(|p| p.height.is_none()));
    let few = dbf(0x57, &[b"a", b"b"]);
    let parts = [("site.shp", shapes.as_slice()), ("site.dbf", few.as_slice())];
    assert_eq!(codes(&read_shapefile(&parts, &metres()).unwrap_err()), ["survey::table-differs"]);
    let unknown = dbf(0x01, &[b"Stra\xE1e", b"", b""]);
    let parts = [("site.shp", shapes.as_slice()), ("site.dbf", unknown.as_slice())];
    assert!(codes(&read_shapefile(&parts, &metres()).unwrap().notes).contains(&"survey::code-page"));
}

#[test]
fn points_lines_and_records_that_lie() {
    let point = |kind: u32, values: &[f64]| [kind.to_le_bytes().to_vec(), doubles(values)].concat();
    let read = |bytes: &[u8]| read_plan("a.shp", bytes, &metres());
    let reading = read(&shp(11, &[point(11, &[1.0, 2.0, 3.0, 0.0])])).unwrap();
    assert!(matches!(&reading.features[0].shape, Shape::Point(p) if p.height == Some(3.0)));
    assert_eq!(codes(&reading.notes), ["survey::no-table"]);
    assert_eq!(read(&shp(23, &[rings(23, &[HOLE, OUTER], &[])])).unwrap().features.len(), 2);
    let code = |bytes: &[u8]| {
        let faults = read(bytes).map(|r| r.facts).unwrap_err();
        faults.list.iter().find(|f| f.severity == evidence::Severity::Error).unwrap().code.clone()
    };
    assert_eq!(code(&shp(1, &[point(1, &[f64::NAN, 2.0])])), "survey::bad-shape");
    assert_eq!(code(&shp(1, &[point(7, &[1.0, 2.0])])), "survey::bad-shape");
    let mut many = shp(5, &[rings(5, &[OUTER], &[])]);
    many[148..152].copy_from_slice(&u32::MAX.to_le_bytes());
    assert_eq!(code(&many), "survey::bad-shape");
    let mut long = shp(5, &[rings(5, &[OUTER], &[])]);
    long[104..108].copy_from_slice(&u32::MAX.to_be_bytes());
    assert_eq!(code(&long), "survey::damaged");
    assert_eq!(code(&shp(5, &[rings(5, &[OUTER], &[])])[..90]), "survey::truncated");
    assert_eq!(code(&shp(5, &[rings(5, &[OUTER], &[])])[..150]), "survey::truncated");
    assert_eq!(code(&shp(5, &[])), "survey::no-shapes");
}

/// What a fuzzer calls.
fn target(result: Result<PlanReading, evidence::Faults>) {
    match result {
        Ok(reading) => {
            assert!(!reading.notes.any_error() && !reading.features.is_empty());
            assert!(reading.features.iter().all(|f| f.shape.points().all(|p| p.at.is_finite())));
        }
        Err(faults) => {
            assert!(faults.any_error());
            assert!(faults.list.iter().all(|f| f.hint.is_some() && f.code.starts_with("survey::")));
        }
    }
}

#[test]
fn no_mutation_makes_a_plan_reader_panic() {
    let (shapes, table) = shapefile();
    let seeds = [
        json(r#"{"type":"Polygon","coordinates":[[[0,0],[4,4],[4,0],[0,4],[0,0]],[[1,1],[2,2],[1,1]]]}"#),
        json(r#"{"type":"MultiPolygon","coordinates":[[[[20,0],[29,0],[29,9.5,1e3],[20,0]]]]}"#),
        r#"{"type":"Feature","id":"a","properties":{"h":null},"geometry":{"type":"LineString","coordinates":[[4.36,52.0],[4.37,52.01]]}}"#.to_owned(),
    ];
    let site = GroundOptions { site_crs: Some(Epsg(28992)), ..metres() };
    let mut dice = Dice(0x5EED_2027);
    for _ in 0..700 {
        for seed in &seeds {
            let bytes = mutated(seed.as_bytes(), &mut dice);
            target(read_plan("a.geojson", &bytes, &GroundOptions::default()));
            target(read_plan("a.geojson", &bytes, &site));
        }
        let (a, b) = (mutated(&shapes, &mut dice), mutated(&table, &mut dice));
        target(read_shapefile(&[("a.shp", &a), ("a.dbf", &table)], &metres()));
        target(read_shapefile(&[("a.shp", &shapes), ("a.dbf", &b)], &metres()));
    }
}
