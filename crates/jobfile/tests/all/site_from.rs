//! A job that takes a stored site, and things, digs, buried things and zones typed into a job.

use crate::folder;
use crate::shown;
use geometry::DVec2;
use site::{Body, Grid, Ground, GroundSource, PlanArea, PlanShape, Site, Support, Terrain, Thing, ThingKind, ZoneRule};
use std::collections::BTreeMap;
use survey::{StoredSite, write_stored};

/// The stored site of the complete job: invented.
fn made() -> Vec<u8> {
    let heights = (0..16).map(|i| 100.0 + 0.01 * i as f32).collect();
    let grid = Grid { north_west: DVec2::new(100.0, 130.0), cell: DVec2::splat(10.0), rows: 4, cols: 4, heights };
    let source = GroundSource {
        name: "grid.tif".into(),
        terrain: Terrain::Grid(grid),
        accuracy: 0.05,
        date: Some("2027-04-01".into()),
    };
    let corners = [(100.0, 100.0), (104.0, 100.0), (104.0, 103.0)];
    let outer = corners.map(|(x, y)| DVec2::new(x, y)).to_vec();
    let shape = PlanShape::Area(PlanArea { outer, holes: Vec::new() });
    let thing = Thing {
        id: "store".into(),
        name: "Store".into(),
        kind: ThingKind::Store,
        body: Body::Upright { shape, base: None, top: Some(103.0) },
        openings: Vec::new(),
        accuracy: 0.1,
        source: "plan.dxf:1".into(),
    };
    let mut site = Site { ground: Ground { surfaces: vec![source] }, ..Site::default() };
    site.name = "Invented".into();
    site.surroundings.things.push(thing);
    write_stored(&StoredSite { site, ..StoredSite::default() }).unwrap()
}

/// `COUNTERPOISE_WRITE_SITE=1` writes it anew.
#[test]
fn the_stored_site_of_the_complete_job_is_what_is_made_here() {
    let path = folder::project().join("crates/jobfile/complete/survey/plot.site");
    if std::env::var_os("COUNTERPOISE_WRITE_SITE").is_some() {
        std::fs::write(&path, made()).unwrap();
    }
    assert_eq!(std::fs::read(&path).unwrap(), made());
}

#[test]
fn a_stored_site_stands_behind_what_the_job_has() {
    let mut files = folder::demo();
    let job = folder::text(&files, "job.toml").replacen("planner", "site_from = \"plot.site\"\nplanner", 1);
    files.insert("job.toml".into(), job.into_bytes());
    files.insert("plot.site".into(), made());
    let (read, _) = jobfile::read_job(&files).unwrap_or_else(|f| panic!("{f:#?}"));
    assert_eq!(read.ground.surfaces.last().unwrap().name, "grid.tif");
    assert!(read.ground.surfaces.len() > 1);
    assert_eq!(read.surroundings.things.last().unwrap().id, "store");
}

#[test]
fn a_broken_stored_site_is_refused_by_name() {
    let mut files = folder::demo();
    let job = folder::text(&files, "job.toml").replacen("planner", "site_from = \"plot.site\"\nplanner", 1);
    files.insert("job.toml".into(), job.into_bytes());
    let mut bytes = made();
    bytes.truncate(bytes.len() - 3);
    files.insert("plot.site".into(), bytes);
    let faults = jobfile::read_job(&files).unwrap_err();
    let fault = faults.list.iter().find(|f| f.code == "survey::truncated").unwrap();
    assert_eq!(fault.place.file, "plot.site");
}

/// The demo job with tables added at its end.
fn with(tables: &str) -> BTreeMap<String, Vec<u8>> {
    let mut files = folder::demo();
    let job = folder::text(&files, "job.toml") + "\n" + tables;
    files.insert("job.toml".into(), job.into_bytes());
    files
}

const TYPED: &str = r#"
[[thing]]
id = "w"
name = "Wall"
kind = "wall"
source = "measured"
unit = "m"
course = [[500.0, 500.0], [510.0, 500.0]]
width = "0.3 m"
top = "unknown"
accuracy = "0.1 m"

[[excavation]]
id = "t"
name = "Trench"
source = "measured"
unit = "m"
outline = [[500.0, 520.0], [501.0, 520.0], [501.0, 530.0], [500.0, 530.0]]
depth = "unknown"
support = "unknown"
by = "D. Digger"

[[zone]]
id = "z"
name = "Path"
source = "stated"
at = ["500 m", "540 m"]
radius = "3 m"
rule = "slope-limit"
slope = "10 %"
times = ["22:00-06:00"]
by = "A. Planner"
"#;

#[test]
fn typed_things_are_read() {
    let (job, _) = jobfile::read_job(&with(TYPED)).unwrap_or_else(|f| panic!("{f:#?}"));
    let around = &job.surroundings;
    let wall = around.things.iter().find(|t| t.id == "w").unwrap();
    assert_eq!(wall.top(), None);
    assert!(wall.source.starts_with("job.toml:"), "{}", wall.source);
    let dig = around.excavations.iter().find(|d| d.id == "t").unwrap();
    assert_eq!((dig.depth, dig.soil, &dig.support), (None, None, &Support::NotKnown));
    let zone = around.zones.iter().find(|z| z.id == "z").unwrap();
    let ZoneRule::SlopeLimit { most } = zone.rule else { panic!("{:?}", zone.rule) };
    assert!((most - 0.1).abs() < 1e-9, "{most}");
    assert!(!zone.applies(Some(12 * 60)) && zone.applies(None));
}

#[test]
fn what_is_wrong_with_typed_things_is_said_all_at_once() {
    let wrong = TYPED
        .replace("[510.0, 500.0]]", "[510.0, 500.0]]\nat = [\"0 m\", \"0 m\"]")
        .replace("[501.0, 520.0], [501.0, 530.0], [500.0, 530.0]", "[501.0, 530.0], [501.0, 520.0], [500.0, 530.0]")
        .replace("22:00-06:00", "22:00")
        .replace("rule = \"slope-limit\"", "rule = \"slope\"");
    let job = folder::text(&with(&wrong), "job.toml");
    let faults = jobfile::read_job(&with(&wrong)).unwrap_err();
    let said = format!("{:#?}", shown::all(&faults, &job));
    for code in ["jobfile::either-or", "jobfile::outline-crosses", "jobfile::bad-time", "jobfile::bad-choice"] {
        assert!(faults.list.iter().any(|f| f.code == code), "{code} is missing: {said}");
    }
}
