//! Lifts planned on real ground, through the same reading as any job. The survey files lie in the
//! reference data folder beside the project (`../shared/data`); without it these tests are left out,
//! unless CI is set, which makes its absence a failure.

use crate::workspace;
use evidence::{Status, Verdict};
use planning::{Plan, plan_as_stated as plan};
use std::collections::BTreeMap;

pub(crate) fn data(path: &str) -> Option<Vec<u8>> {
    let read = std::fs::read(workspace::path("../shared/data").join(path));
    if read.is_err() {
        assert!(std::env::var_os("CI").is_none(), "reference data missing: {path}");
        eprintln!("left out: needs the reference data folder beside the project ({path})");
    }
    read.ok()
}

/// A job on given survey files: two stands are filled in by the caller.
fn planned(files: &[(&str, Vec<u8>)], job: &str) -> Plan {
    let mut folder: BTreeMap<String, Vec<u8>> = BTreeMap::new();
    for (name, bytes) in files {
        folder.insert((*name).to_owned(), bytes.clone());
    }
    folder.insert("machines/demo-7.toml".into(), workspace::read("examples/demo-job/machines/demo-7.toml"));
    folder.insert("machines/demo-14.toml".into(), workspace::read("examples/demo-job/machines/demo-14.toml"));
    folder.insert("job.toml".into(), job.as_bytes().to_vec());
    match jobfile::read_job(&folder) {
        Ok((job, _)) => plan(&job),
        Err(faults) => panic!("{:#?}", faults.list),
    }
}

const HEAD: &str = r#"
format = "counterpoise-job/1"
name = "Test on real ground"
site = "real ground, invented job"
date = "2027-04-12"
planner = "test"
invented = true
source = "invented"
[lines_complete]
by = "test"
[[machine]]
id = "H7"
file = "machines/demo-7.toml"
inspected_by = "test"
locks = { forks = "locked" }
cab = "sound"
kept = "own"
[[machine]]
id = "H14"
file = "machines/demo-14.toml"
inspected_by = "test"
locks = { forks = "locked", jib = "locked" }
cab = "sound"
kept = "own"
[[load]]
id = "bricks"
name = "Bricks"
mass = "700 kg"
source = "weighed"
size = { depth = "1.00 m", width = "1.00 m", height = "0.80 m" }
centre = ["0.50 m", "0 m", "0.40 m"]
centre_error = "0.02 m"
condition = "sound"
wind_factor = 1.4
[[accept]]
matter = "ground-strength"
by = "test"
statement = "test"
strength = "600 kPa"
"#;

fn landing(id: &str, at: [f64; 2], level: f64) -> String {
    format!(
        "[[landing]]\nid = \"{id}\"\nname = \"{id}\"\nat = [\"{} m\", \"{} m\"]\nlevel = \"{level} m\"\n\
         size = {{ along = \"1.4 m\", across = \"2.0 m\" }}\napproach = \"any\"\nrating = {{ mass = \"2000 kg\", by = \"test\" }}\n\
         occupied = \"0 kg\"\nupstand = \"0 m\"\n",
        at[0], at[1]
    )
}

fn lift(id: &str, machine: &str, landing: &str, at: [f64; 2], heading: f64) -> String {
    format!(
        "[[lift]]\nid = \"{id}\"\nname = \"{id}\"\nmachine = \"{machine}\"\nattachment = \"forks\"\nsupport = \"tyres\"\n\
         load = \"bricks\"\nlanding = \"{landing}\"\nstand = {{ at = [\"{} m\", \"{} m\"], heading = \"{heading}°\" }}\n\
         clear = \"0.3 m\"\nstop_gust = \"10 m/s\"\nstops = []\n",
        at[0], at[1]
    )
}

fn ground(files: &[&str], accuracy: &str) -> String {
    let list = files.iter().map(|f| format!("\"{f}\"")).collect::<Vec<_>>().join(", ");
    let key = if files.len() == 1 { format!("file = {list}") } else { format!("files = [{list}]") };
    format!("[[ground]]\n{key}\nunits = \"m\"\naccuracy = \"{accuracy}\"\n")
}

fn status(plan: &Plan, lift: usize, check: &str) -> Status {
    plan.lifts[lift].findings.iter().filter(|f| f.check == check).map(|f| f.status).max().unwrap()
}

/// Slovenia, 1 m terrain: a stand on the valley floor and one on a hillside. Heights under the
/// wheels and slopes along and across against bilinear interpolation of the same raster by
/// rasterio and NumPy: `validation/planning/slovenia_stands.py`.
#[test]
fn val_slovenia_valley_and_hillside() {
    let Some(tif) = data("terrain/slovenia_dtm_1m.tif") else { return };
    let expected = String::from_utf8(workspace::read("validation/planning/slovenia_stands.csv")).unwrap();
    let mut job = HEAD.to_owned() + &ground(&["dtm.tif"], "0.05 m");
    let rows: Vec<Vec<f64>> = expected
        .lines()
        .filter(|l| !l.starts_with('#'))
        .skip(1)
        .map(|l| l.split(',').map(|c| c.parse().unwrap()).collect())
        .collect();
    assert_eq!(rows.len(), 12, "a reference stand went missing");
    for (i, row) in rows.iter().enumerate() {
        // The landing stands 3 m ahead of the front axle, a metre above the ground there.
        let heading = row[2].to_radians();
        let at = [row[0] + 3.0 * heading.sin(), row[1] + 3.0 * heading.cos()];
        job += &landing(&format!("l{i}"), at, row[3] + 1.0);
        job += &lift(&format!("s{i}"), "H7", &format!("l{i}"), [row[0], row[1]], row[2]);
    }
    let plan = planned(&[("dtm.tif", tif)], &job);
    let mut steep = 0;
    for (row, lift) in rows.iter().zip(&plan.lifts) {
        for (wheel, want) in lift.stand.wheel_heights_m.iter().zip(&row[3..7]) {
            assert!((wheel.unwrap() - want).abs() < 0.01, "{}: height {wheel:?}, rasterio {want}", lift.id);
        }
        let (along, across) = (lift.stand.slope_along.unwrap(), lift.stand.slope_across.unwrap());
        assert!((along.nominal - row[7]).abs() < 0.001, "{}: along {} against {}", lift.id, along.nominal, row[7]);
        assert!((across.nominal - row[8]).abs() < 0.001, "{}: across {} against {}", lift.id, across.nominal, row[8]);
        assert!(across.high - across.low > 0.08, "accuracy of 5 cm is carried to the slope");
        if across.nominal.abs() > 0.10 || along.nominal.abs() > 0.10 {
            steep += 1;
            let level = lift.findings.iter().find(|f| f.check == "level").unwrap();
            assert_eq!(level.status, Status::NoGo, "{}", lift.id);
            assert_eq!(lift.verdict, Verdict::NoGo);
        }
    }
    assert!(steep >= 3, "the set has real slopes");
}

/// Delft, two LiDAR tiles: landing on the roof edge of BAG building 503100000026152, whose height
/// the cloud gives (class 6 inside the footprint: median 7.49, 95th percentile 9.07), from the
/// street beside it. The reading of both tiles and of the roof is proven in `survey`; here the lift
/// stands on it.
#[test]
fn val_delft_roof_from_the_street() {
    let (Some(west), Some(east), Some(plans)) = (
        data("pointcloud/delft_ahn3_west.laz"),
        data("pointcloud/delft_ahn3_east.laz"),
        data("plans/delft_buildings_epsg28992.geojson"),
    ) else {
        return;
    };
    let footprint = footprint(&plans, "503100000026152");
    let options = survey::GroundOptions { units: Some(survey::LengthUnit::Metre), ..survey::GroundOptions::default() };
    let roof = survey::class_heights_in("west.laz", &west, &options, &footprint, 6).unwrap();
    assert_eq!(roof.count(), 945, "class 6 points inside the footprint shrunk by 0.5 m");
    let median = roof.median().unwrap();
    assert!((median - 7.49).abs() < 0.01, "roof median {median}");
    let level = roof.quantile(0.95).unwrap();
    assert!((level - 9.07).abs() < 0.01, "roof p95 {level}");

    let files = [("west.laz", west), ("east.laz", east)];
    let mut job = HEAD.to_owned() + &ground(&["west.laz", "east.laz"], "0.05 m");
    // The table's centre of the building, and stands around it: the street is not everywhere.
    let centre = [84_853.3, 447_546.2];
    job += &landing("roof", centre, level);
    let mut known = 0;
    let turns = 24;
    for i in 0..turns {
        let heading = 360.0 * f64::from(i) / f64::from(turns);
        let (s, c) = heading.to_radians().sin_cos();
        let at = [centre[0] - 9.5 * s, centre[1] - 9.5 * c];
        job += &lift(&format!("h{i}"), "H14", "roof", at, heading);
    }
    let plan = planned(&files, &job);
    for lift in &plan.lifts {
        if lift.stand.wheel_heights_m.iter().all(Option::is_some) {
            known += 1;
            for z in lift.stand.wheel_heights_m.into_iter().flatten() {
                assert!((-0.47..=1.55).contains(&z), "{}: ground of the README is -0.47 to 1.55, got {z}", lift.id);
            }
            if let Some(height) = lift.stand.height_m {
                assert!((height - (level + 0.3)).abs() < 1.8, "height is above the ground under the tyres");
            }
        } else {
            // Houses and the canal are holes: said as cannot tell, never filled in.
            assert_eq!(lift.verdict, Verdict::NoGo);
            assert_eq!(lift.findings.iter().find(|f| f.check == "level").unwrap().status, Status::CannotTell);
        }
    }
    assert!(known >= 3, "some stands in the street are known: {known}");
    assert!(known < 24, "some stands would be in houses or the canal");
    assert_eq!(status(&plan, 0, "line"), Status::Go);
}

/// Outer ring of a building of a GeoJSON file by its id, shrunk by 0.5 m.
fn footprint(geojson: &[u8], id: &str) -> Vec<geometry::DVec2> {
    let json: serde_json::Value = serde_json::from_slice(geojson).unwrap();
    let feature = json["features"]
        .as_array()
        .unwrap()
        .iter()
        .find(|f| f["properties"].as_object().unwrap().values().any(|v| v.to_string().contains(id)))
        .expect("building of the table");
    let mut ring = &feature["geometry"]["coordinates"][0];
    while ring[0][0].is_array() {
        ring = &ring[0];
    }
    let ring = ring.as_array().unwrap().iter();
    let outline = ring.map(|p| geo::Coord { x: p[0].as_f64().unwrap(), y: p[1].as_f64().unwrap() });
    let polygon = geo::Polygon::new(outline.collect(), Vec::new());
    let shrunk = geo::Buffer::buffer(&polygon, -0.5);
    shrunk.0[0].exterior().coords().map(|c| geometry::DVec2::new(c.x, c.y)).collect()
}
