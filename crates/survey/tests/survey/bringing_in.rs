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
        only: None,
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

/// Whatever comes first, plan or ground: the same tops.
#[test]
fn ground_that_comes_after_the_plan_settles_its_heights() {
    let rule = |layer: &str, height| LayerRule {
        layer: layer.into(),
        only: None,
        becomes: Becomes::Thing(ThingKind::Building),
        height,
        width: Some(1.0),
    };
    let rules = vec![rule("buildings", HeightFrom::AboveGround(9.0)), rule("low", HeightFrom::Level(97.0))];
    let options = BringOptions { rules, ..options() };
    let tops = |stored: &StoredSite| -> Vec<Option<f64>> {
        stored.site.surroundings.things.iter().map(site::Thing::top).collect()
    };
    let plans: [(&str, &[u8]); 2] = [("buildings.geojson", PLAN), ("low.geojson", PLAN)];
    let levels: [(&str, &[u8]); 1] = [("levels.csv", LEVELS)];
    let early = bring_in(&StoredSite::default(), &plans, &options).unwrap();
    assert_eq!((early.plans[0].1.without_ground, early.stored.waiting.len()), (3, 6));
    assert_eq!(tops(&early.stored), [None, None, None, Some(97.0), Some(97.0), Some(97.0)]);
    // Kept, read again, and the ground brought in with another call.
    let kept = read_stored("plot.site", &write_stored(&early.stored).unwrap()).unwrap();
    let late = bring_in(&kept, &levels, &options).unwrap();
    let together = bring_in(&StoredSite::default(), &[plans[0], plans[1], levels[0]], &options).unwrap();
    assert_eq!(tops(&late.stored), tops(&together.stored));
    assert_eq!((late.settled.from_ground, late.settled.below_ground, late.stored.waiting.len()), (3, 3, 0));
    assert_eq!(tops(&late.stored)[3], None, "97 m lies 3 m under the ground: another datum or unit");
    let again = bring_in(&late.stored, &levels, &options).unwrap();
    assert_eq!((tops(&again.stored), again.settled), (tops(&late.stored), survey::SettledTops::default()));
    // What is taken off the site waits no more, and ground elsewhere settles nothing.
    let gone = bring_in(&early.stored, &plans[1..], &options).unwrap();
    assert_eq!(gone.stored.waiting.len(), 6);
    let far: [(&str, &[u8]); 1] = [("far.csv", b"point,e [m],n [m],z [m]\n1,900,0,100\n2,930,0,100\n3,930,30,101\n")];
    assert_eq!(bring_in(&early.stored, &far, &options).unwrap().stored.waiting.len(), 6);
    // A site with the plan joined to one with the ground.
    let ground = bring_in(&StoredSite::default(), &levels, &options).unwrap();
    let joined = bring_in(&ground.stored, &[("plot.site", &write_stored(&early.stored).unwrap())], &options).unwrap();
    assert_eq!((tops(&joined.stored), joined.stored.waiting.len()), (tops(&late.stored), 0));
}

#[test]
fn shapes_of_one_file_are_told_apart_by_an_attribute() {
    let rule = |value: &str, becomes| LayerRule {
        layer: "*".into(),
        only: Some(survey::OnlyWhere { attribute: "ID".into(), value: value.into() }),
        becomes,
        height: HeightFrom::Unknown,
        width: None,
    };
    let rules = vec![
        rule("h1", Becomes::Thing(ThingKind::Fence)),
        rule("h*", Becomes::NoGo),
        rule("nobody", Becomes::Thing(ThingKind::Wall)),
    ];
    let brought =
        bring_in(&StoredSite::default(), &[("yard.geojson", PLAN)], &BringOptions { rules, ..options() }).unwrap();
    let around = &brought.stored.site.surroundings;
    assert_eq!((around.things.len(), around.things[0].kind, around.zones.len()), (1, ThingKind::Fence, 1));
    let placed = &brought.plans[0].1;
    assert_eq!(placed.idle_rules, ["*, ID=nobody"]);
    assert_eq!(placed.unnamed.values().sum::<u64>(), 1, "the point, of which no rule speaks");
}

/// ETRS89 and WGS 84 have the same shift: nothing is moved, and nothing else may be said.
#[test]
fn what_is_said_of_datums_is_what_was_done() {
    let plan = |code: u32, at: (f64, f64)| {
        format!(
            r#"{{"type":"FeatureCollection","crs":{{"type":"name","properties":{{"name":"urn:ogc:def:crs:EPSG::{code}"}}}},"features":[
{{"type":"Feature","properties":{{}},"geometry":{{"type":"LineString","coordinates":[[{},{}],[{},{}]]}}}}]}}"#,
            at.0,
            at.1,
            at.0 + 0.001,
            at.1 + 0.001
        )
    };
    let said = |from: u32, to: u16, at| {
        let options = GroundOptions { site_crs: Some(survey::Epsg(to)), ..GroundOptions::default() };
        let notes = survey::read_plan("line.geojson", plan(from, at).as_bytes(), &options).unwrap().notes;
        notes.list.into_iter().find(|n| n.code == "survey::datums-differ").map(|n| n.message.id.into_owned())
    };
    assert_eq!(said(4326, 25832, (9.0, 50.0)), Some(survey::text::DATUMS_TAKEN_AS_ONE.id.into()));
    assert_eq!(said(4326, 28992, (5.4, 52.1)), Some(survey::text::DATUMS_DIFFER.id.into()));
    assert_eq!(said(4258, 25832, (9.0, 50.0)), None, "one datum");
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
