//! A stored site comes back as it was, and a broken one is refused.

use crate::reference::{bytes, codes, present};
use geometry::DVec2;
use quantity::{kilovolts, metres};
use site::{
    Body, Buried, BuriedKind, Columns, DayTime, Excavation, Gate, Grid, Ground, GroundSource, Opening, PlanArea,
    PlanShape, PowerLine, Site, SoilType, Span, Support, Surroundings, Terrain, Thing, ThingKind, Tin, Zone, ZoneRule,
};
use survey::{GroundOptions, StoreError, StoredSite, read_ground, read_stored, write_stored};

fn square(at: f64, size: f64) -> PlanArea {
    let corner = |x: f64, y: f64| DVec2::new(at + x, at + y);
    PlanArea { outer: vec![corner(0.0, 0.0), corner(size, 0.0), corner(size, size), corner(0.0, size)], holes: vec![] }
}

/// A made site with one of everything.
fn whole() -> StoredSite {
    let heights = (0..30).map(|i| if i % 7 == 3 { f32::NAN } else { 100.0 + (i as f32) * 0.137 }).collect();
    let north_west = DVec2::new(84_800.25, 447_600.75);
    let grid = Grid { north_west, cell: DVec2::new(0.5, 0.25), rows: 5, cols: 6, heights };
    let points: Vec<geometry::DVec3> = (0..40)
        .map(|i| {
            let (x, y) = (f64::from(i % 8) * 1.37, f64::from(i / 8) * 1.91);
            geometry::DVec3::new(24_525_426.855 + x, 6_876_717.871 + y, 125.0 + 0.01 * f64::from(i * i % 17))
        })
        .collect();
    let tin = Tin::new(&points, 10.0).unwrap();
    let source = |name: &str, terrain| GroundSource {
        name: name.into(),
        terrain,
        accuracy: 0.03,
        date: Some("2027-04-12".into()),
    };
    let thing = |id: &str, body| Thing {
        id: id.into(),
        name: format!("{id}, «näher»"),
        kind: ThingKind::Wall,
        body,
        openings: vec![Opening { from: DVec2::ZERO, to: DVec2::X, sill: 1.0, head: 2.0 }],
        accuracy: 0.05,
        source: "made:1".into(),
    };
    let upright = |shape, top| Body::Upright { shape, base: Some(1.5), top };
    let columns = Columns {
        south_west: DVec2::new(3.0, 4.0),
        cell: 0.5,
        rows: 2,
        cols: 3,
        tops: vec![1.0, f32::NAN, 3.25, 4.5, f32::NAN, -0.5],
    };
    let course = vec![DVec2::ZERO, DVec2::new(4.0, 4.0)];
    let zone = |rule| Zone {
        id: "z".into(),
        name: "zone".into(),
        shape: PlanShape::Round { centre: DVec2::ONE, radius: 2.0 },
        rule,
        times: vec![DayTime { from: 420, to: 570 }],
        by: "made".into(),
    };
    let site = Site {
        name: "Made site".into(),
        epsg: Some(28992),
        ground: Ground { surfaces: vec![source("grid", Terrain::Grid(grid)), source("tin", Terrain::Tin(tin))] },
        lines: vec![PowerLine {
            name: "line".into(),
            voltage: Some(kilovolts(110.0)),
            spans: vec![Span {
                from: geometry::DVec3::new(0.0, 0.0, 12.0),
                to: geometry::DVec3::new(40.0, 0.0, 11.0),
                sag: 0.8,
            }],
            course: course.clone(),
            survey_error: metres(0.5),
            swing: metres(1.0),
            source: String::from("made:1"),
            dead: None,
            insulated: Some(site::Insulation { by: "Grid (invented)".into(), permit: "P-8".into() }),
        }],
        surroundings: Surroundings {
            things: vec![
                thing("area", upright(PlanShape::Area(square(0.0, 5.0)), None)),
                thing("strip", upright(PlanShape::Strip { course, width: 0.3 }, Some(4.0))),
                thing("columns", Body::Columns(columns)),
            ]
            .into(),
            excavations: vec![Excavation {
                id: "e".into(),
                name: "dig".into(),
                outline: square(10.0, 3.0),
                depth: Some(evidence::Ranged::plus_minus(1.8, 0.1)),
                soil: Some(SoilType::TypeC),
                support: Support::Supported { by: None },
                standing: site::OpenSides::default(),
                source: "made".into(),
            }],
            buried: vec![Buried {
                id: "b".into(),
                name: "drain".into(),
                kind: BuriedKind::Pipe,
                shape: PlanShape::Area(square(1.0, 1.0)),
                cover: None,
                allowed_pressure: Some(40_000.0),
                wall: None,
                around: None,
                source: "made".into(),
            }],
            zones: vec![zone(ZoneRule::NoGo), zone(ZoneRule::OneWay { heading: 1.25 })],
        },
        gates: [None, Some([DVec2::new(1.25, 2.5), DVec2::new(5.25, 2.5)])]
            .map(|posts| Gate {
                id: "g".into(),
                name: "gate".into(),
                width: 4.0,
                height: None,
                clearance: 0.3,
                clearance_above: 0.2,
                posts,
            })
            .into(),
        ..Site::default()
    };
    let waiting =
        |thing: &str, over_ground| survey::Waiting { thing: thing.into(), source: "made".into(), over_ground };
    StoredSite { site, records: Vec::new(), waiting: vec![waiting("area", Some(6.5)), waiting("strip", None)] }
}

#[test]
fn a_site_comes_back_as_it_was() {
    let before = whole();
    let bytes = write_stored(&before).unwrap();
    assert_eq!(bytes, write_stored(&before).unwrap(), "the same site, the same bytes");
    let after = read_stored("plot.site", &bytes).unwrap();
    assert_eq!((&after.site.name, after.site.epsg), (&before.site.name, before.site.epsg));
    let (a, b) = (&after.site.surroundings, &before.site.surroundings);
    assert_eq!((&a.excavations, &a.buried, &a.zones), (&b.excavations, &b.buried, &b.zones));
    assert_eq!((&after.site.gates, after.site.gates.len()), (&before.site.gates, 2));
    assert_eq!(a.things[..2], b.things[..2]);
    let (Body::Columns(ca), Body::Columns(cb)) = (&a.things[2].body, &b.things[2].body) else { panic!("columns") };
    assert_eq!(ca.iter().collect::<Vec<_>>(), cb.iter().collect::<Vec<_>>(), "tops in whole millimetres");
    assert_eq!((ca.south_west, ca.cell, ca.rows, ca.cols), (cb.south_west, cb.cell, cb.rows, cb.cols));
    assert_eq!(after.site.lines[0].spans, before.site.lines[0].spans);
    assert_eq!(after.site.lines[0].insulated, before.site.lines[0].insulated);
    assert_eq!((&after.waiting, before.waiting.len()), (&before.waiting, 2));
    assert_eq!(after.site.lines[0].voltage, before.site.lines[0].voltage);
    // Kept to a millimetre: half of it, and the last digit of a grid's 32-bit number.
    for (new, old) in after.site.ground.surfaces.iter().zip(&before.site.ground.surfaces) {
        assert_eq!((&new.name, new.accuracy, &new.date), (&old.name, old.accuracy, &old.date));
        let (low, high) = old.terrain.bounds().unwrap();
        for i in 0..=20 {
            for k in 0..=20 {
                let at = low + (high - low) * DVec2::new(f64::from(i), f64::from(k)) / 20.0;
                match (old.terrain.height(at), new.terrain.height(at)) {
                    (Some(o), Some(n)) => assert!((o - n).abs() < 0.0011, "{at}: {o} {n}"),
                    (None, None) => {}
                    (o, n) => {
                        // On the rim a rounded corner may lie a tenth of a millimetre in or out.
                        let rim = (at - low).min(high - at).min_element();
                        assert!(rim < 1e-3, "{at}: {o:?} {n:?}");
                    }
                }
            }
        }
    }
}

#[test]
fn every_cut_and_every_changed_byte_is_refused_or_harmless() {
    let good = write_stored(&whole()).unwrap();
    for n in 0..good.len() {
        assert!(read_stored("cut.site", &good[..n]).is_err(), "{n} of {} bytes", good.len());
    }
    for i in 8..good.len() {
        let mut bad = good.clone();
        bad[i] ^= 0x40;
        assert!(read_stored("bad.site", &bad).is_err(), "byte {i}");
    }
    let mut long = good.clone();
    long.push(0);
    assert!(read_stored("long.site", &long).is_err());
    let mut newer = good;
    newer[8] = 2;
    assert_eq!(codes(&read_stored("new.site", &newer).unwrap_err()), ["survey::site-version"]);
}

#[test]
fn what_is_not_finite_is_not_stored_as_unknown() {
    let mut stored = whole();
    let Body::Upright { top, .. } = &mut stored.site.surroundings.things[1].body else { panic!("upright") };
    *top = Some(f64::NAN);
    assert_eq!(write_stored(&stored), Err(StoreError::NotFinite));
}

#[test]
fn a_stored_site_is_taken_whole_and_not_as_one_surface() {
    let bytes = write_stored(&whole()).unwrap();
    let refused = read_ground("plot.site", &bytes, &GroundOptions::default()).unwrap_err();
    assert_eq!(codes(&refused), ["survey::stored-site"]);
}

/// What storing costs in bytes, on a real cloud.
#[test]
fn a_real_surface_is_stored_compactly() {
    if !present() {
        return;
    }
    let name = "pointcloud/montpellier_block/tile_77055_627760.laz";
    let raw = bytes(name);
    let reading = read_ground(name, &raw, &GroundOptions::default()).unwrap();
    let points = reading.facts.ground_points as usize;
    let source = GroundSource { name: name.into(), terrain: reading.terrain, accuracy: 0.1, date: None };
    let site = Site { ground: Ground { surfaces: vec![source] }, ..Site::default() };
    let stored = write_stored(&StoredSite { site, ..StoredSite::default() }).unwrap();
    let each = stored.len() as f64 / points as f64;
    // Three coordinates in 64 bits and two triangles of three indexes: 48 bytes.
    assert!(each < 16.0, "{each} bytes a point");
    let back = read_stored("m.site", &stored).unwrap();
    let before = read_ground(name, &raw, &GroundOptions::default()).unwrap().terrain;
    let mut known = 0;
    for i in 0..400 {
        let at = DVec2::new(770_552.0 + 2.3 * f64::from(i % 20), 6_277_552.0 + 2.3 * f64::from(i / 20));
        let (new, old) = (back.site.ground.height(at).map(|h| h.0), before.height(at));
        assert_eq!(new.is_some(), old.is_some(), "{at}");
        if let (Some(new), Some(old)) = (new, old) {
            known += 1;
            // Half a millimetre of height, and a tenth in plan on steep triangles.
            assert!((new - old).abs() < 0.0015, "{at}: {new} {old}");
        }
    }
    assert!(known > 100, "{known}");
}
