//! Files brought into a site together: what becomes of each, again and again, and nothing on a fault.

use crate::made::{Cloud, Raster};
use crate::reference::{bytes, codes, present};
use geometry::DVec2;
use site::{Body, PlanShape, ThingKind};
use survey::{
    Becomes, BringOptions, GroundFilter, GroundOptions, HeightFrom, LayerRule, LengthUnit, StoredSite, Used, bring_in,
    read_stored, write_stored,
};

const LEVELS: &[u8] = b"point,e [m],n [m],z [m]\n1,0,0,100\n2,40,0,100\n3,40,40,101\n4,0,40,101\n5,20,20,100.5\n";
const PLAN: &[u8] = br#"{"type":"FeatureCollection","crs":{"type":"name","properties":{"name":"urn:ogc:def:crs:EPSG::25832"}},
"features":[
{"type":"Feature","properties":{"id":"h1","height":6.5},"geometry":{"type":"Polygon","coordinates":[[[10,10],[20,10],[20,20],[10,20],[10,10]]]}},
{"type":"Feature","properties":{"id":"h2"},"geometry":{"type":"Polygon","coordinates":[[[25,25],[30,25],[30,30],[25,25]]]}},
{"type":"Feature","properties":{"id":"p"},"geometry":{"type":"Point","coordinates":[5,5]}}]}"#;

fn options() -> BringOptions {
    let ground = GroundOptions { longest_edge: Some(50.0), ..GroundOptions::default() };
    BringOptions { ground, accuracy: Some(0.03), plan_accuracy: 0.1, ..BringOptions::default() }
}

#[test]
fn levels_and_a_plan_become_a_site() {
    let files: [(&str, &[u8]); 2] = [("buildings.geojson", PLAN), ("levels.csv", LEVELS)];
    let brought = bring_in(&StoredSite::default(), &files, &options()).unwrap();
    let site = &brought.stored.site;
    assert!((site.ground.height(DVec2::new(20.0, 20.0)).unwrap().0 - 100.5).abs() < 1e-9);
    let tops: Vec<Option<f64>> = site.surroundings.things.iter().map(site::Thing::top).collect();
    assert_eq!(tops.len(), 2, "a point has no size and is left out");
    // The ground at the outline is at most 100.5 m, and its error counts upward.
    let top = tops[0].unwrap();
    assert!((top - (100.5 + 0.03 + 6.5)).abs() < 1e-6, "{top}");
    assert_eq!(tops[1], None, "nobody says how high the second is");
    let placed = &brought.plans[0].1;
    assert_eq!((placed.placed, placed.height_unknown), (2, 1));
    assert_eq!(placed.guessed.values().next(), Some(&Becomes::Thing(ThingKind::Building)));
    assert_eq!(placed.left_out.get("point-without-size"), Some(&1));
    let uses: Vec<Used> = brought.stored.records.iter().map(|r| r.used).collect();
    assert_eq!(uses, [Used::Ground, Used::Plan]);
}

#[test]
fn a_file_brought_in_again_takes_its_old_place() {
    let files: [(&str, &[u8]); 2] = [("buildings.geojson", PLAN), ("levels.csv", LEVELS)];
    let once = bring_in(&StoredSite::default(), &files, &options()).unwrap().stored;
    let rules = vec![LayerRule {
        layer: "*".into(),
        becomes: Becomes::Thing(ThingKind::Store),
        height: HeightFrom::Level(110.0),
        width: Some(2.0),
    }];
    let again = bring_in(&once, &files, &BringOptions { rules, ..options() }).unwrap().stored;
    assert_eq!((again.site.ground.surfaces.len(), again.records.len()), (1, 2));
    let things = &again.site.surroundings.things;
    assert_eq!(things.len(), 3, "the point has a size now, and nothing stands twice");
    assert!(things.iter().all(|t| t.kind == ThingKind::Store && t.top() == Some(110.0)));
    let round = |t: &site::Thing| matches!(&t.body, Body::Upright { shape: PlanShape::Round { radius, .. }, .. } if *radius == 1.0);
    assert!(things.iter().any(round));
    let stored = write_stored(&again).unwrap();
    assert_eq!(read_stored("plot.site", &stored).unwrap().records, again.records);
}

#[test]
fn every_fault_of_every_file_and_nothing_brought_in() {
    let files: [(&str, &[u8]); 3] = [
        ("levels.csv", b"e,n,z\n1,2,x\n"),
        ("house.glb", b"glTF\x02\0\0\0"),
        ("buildings.geojson", b"{\"type\":\"Feature\""),
    ];
    let faults =
        bring_in(&StoredSite::default(), &files, &BringOptions::default()).map(|b| b.stored.records).unwrap_err();
    let found = codes(&faults);
    assert!(found.contains(&"survey::model") && found.contains(&"survey::accuracy-not-stated"), "{found:?}");
    assert!(found.contains(&"survey::bad-row"), "{found:?}");
    assert!(faults.list.iter().any(|f| f.place.file == "buildings.geojson"), "{found:?}");
}

/// The 110 kV line over roofs: its course is known, its heights are not, and it is cut near the site.
#[test]
fn a_line_far_longer_than_the_site_is_cut_and_its_heights_stay_unknown() {
    if !present() {
        return;
    }
    let line = bytes("lines/bayreuth_window_400m_power_epsg25832.geojson");
    let levels = b"point,e [m],n [m],z [m]\n1,679200,5543700,340\n2,679600,5543700,340\n3,679600,5544100,341\n4,679200,5544100,341\n";
    let ground =
        GroundOptions { longest_edge: Some(1000.0), units: Some(LengthUnit::Metre), ..GroundOptions::default() };
    let files: [(&str, &[u8]); 2] = [("levels.csv", &levels[..]), ("power.geojson", &line)];
    let brought = bring_in(&StoredSite::default(), &files, &BringOptions { ground, ..options() }).unwrap();
    let lines = &brought.stored.site.lines;
    let wire = lines.iter().find(|l| l.voltage.is_some()).unwrap();
    assert!(wire.spans.is_empty(), "no heights, no spans");
    let long: f64 = wire.course.windows(2).map(|w| w[0].distance(w[1])).sum();
    assert!(long > 474.6 && long < 1500.0, "{long} m of 18.9 km");
    assert_eq!(wire.voltage.map(|v| (quantity::Si::si(&v) / 1000.0).round()), Some(110.0));
}

#[test]
fn a_warning_of_a_cloud_is_said_once() {
    // Metres in the file, feet stated: reading the ground says so, and so does looking above it.
    let bytes = Cloud::default().bytes();
    let ground = GroundOptions {
        units: Some(LengthUnit::Foot),
        ground_filter: Some(GroundFilter::default()),
        ..GroundOptions::default()
    };
    let options = BringOptions { ground, above: true, ..options() };
    let brought = bring_in(&StoredSite::default(), &[("c.las", &bytes)], &options).unwrap();
    let told = codes(&brought.notes);
    assert!(told.contains(&"survey::units-overridden") && told.contains(&"survey::ground-filtered"), "{told:?}");
    for (i, note) in brought.notes.list.iter().enumerate() {
        assert!(!brought.notes.list[i + 1..].contains(note), "twice: {note:?}");
    }
    let above: Vec<_> = brought.stored.records.iter().filter(|r| r.used == Used::Above).collect();
    assert_eq!(above.len(), 1, "the cloud was looked at for what stands above");
}

#[test]
fn a_site_of_a_grid_with_an_infinite_height_opens_again() {
    let mut heights = vec![50.5_f32; 63];
    heights[7] = f32::INFINITY;
    let bytes = Raster { heights: Some(heights), ..Raster::default() }.bytes();
    let brought = bring_in(&StoredSite::default(), &[("grid.tif", &bytes)], &options()).unwrap();
    assert_eq!(codes(&brought.notes), ["survey::implausible-heights"]);
    let again = read_stored("again.site", &write_stored(&brought.stored).unwrap()).unwrap();
    assert_eq!(again.records, brought.stored.records, "the warning is kept with the site");
}
