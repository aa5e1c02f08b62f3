//! What cannot be written is refused, all of it at once; what is only strange is written.

use crate::{read_dxf, read_glb, sample};
use evidence::Faults;
use exchange::{About, Format, export};
use geometry::{DVec2, DVec3};
use site::{Body, Columns, Grid, PlanArea, PlanShape, Site, Terrain, ThingKind, Tin};

fn faults(site: &Site) -> Vec<(String, String)> {
    let all = Format::ALL.map(|f| export(site, f, &About::default()).unwrap_err());
    assert!(all.windows(2).all(|w| w[0] == w[1]), "the same faults in every format");
    let place = |f: &evidence::Fault| (f.code.clone(), f.place.key.clone().unwrap_or_default());
    let Faults { list } = &all[0];
    list.iter().map(place).collect()
}

fn with(shape: PlanShape) -> Site {
    let mut site = sample::site();
    site.surroundings.things = vec![sample::thing("bad", ThingKind::Wall, shape, None, None)].into();
    site
}

#[test]
fn numbers_that_are_none_are_refused_all_at_once() {
    let mut site = sample::site();
    let nan = f64::NAN;
    site.surroundings.things[0].body =
        Body::Upright { shape: sample::area(&[(0.0, 0.0), (nan, 1.0), (1.0, 1.0)]), base: None, top: None };
    if let Body::Upright { top, .. } = &mut site.surroundings.things[3].body {
        *top = Some(f64::INFINITY);
    }
    site.lines[0].spans[1].sag = nan;
    site.landings[1].level = nan;
    site.surroundings.buried[0].cover = Some(evidence::Ranged::exact(nan));
    site.surroundings.zones[2].shape = PlanShape::Round { centre: DVec2::new(1e12, 0.0), radius: 1.0 };
    let expected = ["zone[3]", "buried[1]", "thing[1]", "thing[4]", "line[1]", "landing[2]"]
        .map(|key| ("exchange::not-finite", key));
    let found = faults(&site);
    let found: Vec<_> = found.iter().map(|(code, key)| (code.as_str(), key.as_str())).collect();
    assert_eq!(found, expected);
}

#[test]
fn shapes_without_extent_are_refused() {
    let none = |shape| {
        let found = faults(&with(shape));
        assert_eq!(found, [("exchange::no-extent".to_owned(), "thing[1]".to_owned())]);
    };
    none(sample::area(&[(0.0, 0.0), (1.0, 1.0)]));
    none(sample::area(&[(0.0, 0.0), (1.0, 1.0), (2.0, 2.0)]));
    none(PlanShape::Area(PlanArea::default()));
    none(PlanShape::Strip { course: sample::ring(&[(0.0, 0.0), (5.0, 0.0)]), width: 0.0 });
    none(PlanShape::Strip { course: sample::ring(&[(2.0, 0.0), (2.0, 0.0)]), width: 1.0 });
    none(PlanShape::Strip { course: Vec::new(), width: 1.0 });
    none(PlanShape::Round { centre: sample::p(0.0, 0.0), radius: -1.0 });
}

#[test]
fn columns_and_grids_must_agree_with_their_rows() {
    let mut site = sample::site();
    let columns = Columns { south_west: DVec2::ZERO, cell: 1.0, rows: 3, cols: 3, tops: vec![1.0; 8] };
    site.surroundings.things[12].body = Body::Columns(columns);
    let grid = Grid { north_west: DVec2::ZERO, cell: DVec2::ONE, rows: 2, cols: 2, heights: vec![0.0; 3] };
    site.ground.surfaces[0].terrain = Terrain::Grid(grid);
    let codes: Vec<_> = faults(&site).into_iter().map(|f| f.0).collect();
    assert_eq!(codes, ["exchange::not-finite", "exchange::columns-wrong"]);
}

#[test]
fn more_columns_than_a_file_should_hold_are_refused() {
    let mut site = sample::empty();
    let side = 800;
    let tops = vec![5.0; side * side];
    let mut thing = sample::thing("scan", ThingKind::Unnamed, PlanShape::Area(PlanArea::default()), None, None);
    thing.body = Body::Columns(Columns { south_west: DVec2::ZERO, cell: 1.0, rows: side, cols: side, tops });
    site.surroundings.things = vec![thing].into();
    for format in [Format::Dxf, Format::Gltf] {
        let refused = export(&site, format, &About::default()).unwrap_err();
        assert_eq!(refused.list[0].code, "exchange::too-much");
        assert_eq!(refused.list[0].place.key.as_deref(), Some("thing[1]"));
        assert!(refused.list[0].hint.is_some());
    }
}

#[test]
fn properties_that_are_no_numbers_are_null() {
    let mut site = sample::site();
    site.surroundings.things[0].accuracy = f64::NAN;
    let file: serde_json::Value =
        serde_json::from_slice(&export(&site, Format::GeoJson, &About::default()).unwrap()).unwrap();
    let block = file["features"].as_array().unwrap().iter().find(|f| f["id"] == "thing/1/block").unwrap();
    assert_eq!(block["properties"].get("accuracy_m"), Some(&serde_json::Value::Null));
}

#[test]
fn far_eastings_keep_the_tenth_of_a_millimetre() {
    let mut site = sample::empty();
    let at = DVec2::new(33_412_345.123_4, 9_876_543.987_6);
    let outer = vec![at, at + DVec2::new(2.0, 0.0), at + DVec2::new(2.0, 1.0), at + DVec2::new(0.0, 1.0)];
    let shape = PlanShape::Area(PlanArea { outer, holes: Vec::new() });
    site.surroundings.things = vec![sample::thing("far", ThingKind::Store, shape, Some(10.0), Some(11.0))].into();
    let get = |format| export(&site, format, &About::default()).unwrap();
    let text = String::from_utf8(get(Format::GeoJson)).unwrap();
    assert!(text.contains("[33412345.1234,9876543.9876,10.0]"), "{text}");
    let drawing = read_dxf::read(&get(Format::Dxf));
    let outline = drawing.of("LWPOLYLINE", "Thing-store")[0];
    assert_eq!((outline.text(10), outline.text(20)), (Some("33412345.1234"), Some("9876543.9876")));
    let model = read_glb::read(&get(Format::Gltf));
    let node = model.node("far");
    assert!((model.volume(node) - 2.0).abs() < 1e-4, "{}", model.volume(node));
    let east = model.corners(node, 4).iter().map(|c| c[0]).fold(f64::INFINITY, f64::min) + model.origin()[0];
    assert!((east - at.x).abs() < 1e-6, "{east}");
}

#[test]
fn endless_names_are_kept_in_pieces_that_the_format_takes() {
    let mut site = sample::site();
    site.surroundings.things[0].name = "Größe ".repeat(400);
    let drawing = read_dxf::read(&export(&site, Format::Dxf, &About::default()).unwrap());
    let long = drawing.entities.iter().filter(|e| e.kind == "MTEXT").max_by_key(|e| e.pairs.len()).unwrap();
    let whole: String = long.pairs.iter().filter(|(c, _)| [1, 3].contains(c)).map(|(_, v)| v.as_str()).collect();
    assert_eq!(whole, "Gr\\U+00F6\\U+00DFe ".repeat(400));
    let json = String::from_utf8(export(&site, Format::GeoJson, &About::default()).unwrap()).unwrap();
    assert!(json.contains(&site.surroundings.things[0].name));
}

#[test]
fn a_triangulation_alone_is_ground_enough() {
    let mut site = sample::empty();
    let points: Vec<DVec3> = (0..25).map(|i| DVec3::new(f64::from(i % 5), f64::from(i / 5), 7.0)).collect();
    site.ground.surfaces = vec![sample::surface(Terrain::Tin(Tin::new(&points, 2.0).unwrap()), "points", None)];
    let drawing = read_dxf::read(&export(&site, Format::Dxf, &About::default()).unwrap());
    assert_eq!(drawing.count("3DFACE"), 32);
}
