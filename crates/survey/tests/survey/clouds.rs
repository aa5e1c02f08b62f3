//! Real clouds: values measured with laspy, numpy and SciPy.

use crate::reference::{bytes, codes, expected, files, numbers, present};
use geometry::{DVec2, DVec3};
use survey::{
    ClassHeights, GroundOptions, LengthUnit, UnitSource, Window, class_heights_in, read_cloud, read_ground, read_tiles,
};

/// Heights are compared to a centimetre: what a wheel notices starts above that.
const CENTIMETRE: f64 = 0.01;

const DELFT: [&str; 2] = ["pointcloud/delft_ahn3_west.laz", "pointcloud/delft_ahn3_east.laz"];

fn in_metres() -> GroundOptions {
    GroundOptions { units: Some(LengthUnit::Metre), ..GroundOptions::default() }
}

fn near(got: f64, expected: f64, tolerance: f64, what: &str) {
    assert!((got - expected).abs() <= tolerance, "{what}: got {got}, expected {expected} ± {tolerance}");
}

fn median(mut values: Vec<f64>) -> f64 {
    values.sort_by(f64::total_cmp);
    values[values.len() / 2]
}

#[test]
fn val_delft_two_tiles_one_surface() {
    if !present() {
        return;
    }
    let files = DELFT.map(|path| (path, bytes(path)));
    let tiles = [(files[0].0, files[0].1.as_slice()), (files[1].0, files[1].1.as_slice())];
    let reading = read_tiles(&tiles, &in_metres()).unwrap();
    let facts = &reading.facts;
    assert_eq!((facts.points, facts.ground_points), (848_942, 283_118));
    for (got, expected) in facts.min.iter().zip([84_808.30, 447_412.80, -0.61]) {
        near(*got, expected, CENTIMETRE, "smallest corner");
    }
    for (got, expected) in facts.max.iter().zip([85_072.30, 447_641.30, 26.33]) {
        near(*got, expected, CENTIMETRE, "largest corner");
    }
    assert_eq!(facts.units.horizontal_source, UnitSource::Stated);
    let expected = expected();
    let known = expected["delft"]["known"].as_array().unwrap();
    let unknown = expected["delft"]["unknown"].as_array().unwrap();
    assert_eq!((known.len(), unknown.len()), (200, 40), "a reference place went missing");
    for row in known {
        let [x, y, z] = numbers(row)[..] else { panic!("three numbers a row") };
        let got = reading.terrain.height(DVec2::new(x, y));
        near(got.unwrap_or(f64::NAN), z, CENTIMETRE, &format!("({x}, {y})"));
    }
    for row in unknown {
        let [x, y] = numbers(row)[..] else { panic!("two numbers a row") };
        assert_eq!(reading.terrain.height(DVec2::new(x, y)), None, "({x}, {y}) lies in a long triangle");
    }
}

#[test]
fn val_delft_roofs() {
    if !present() {
        return;
    }
    let files = DELFT.map(|path| (path, bytes(path)));
    let expected = expected();
    let roofs = expected["roofs"].as_array().unwrap();
    assert_eq!(roofs.len(), 3, "a reference roof went missing");
    for roof in roofs {
        let polygon: Vec<DVec2> =
            roof["polygon"].as_array().unwrap().iter().map(|p| DVec2::new(numbers(p)[0], numbers(p)[1])).collect();
        let heights = files
            .iter()
            .map(|(name, bytes)| class_heights_in(name, bytes, &in_metres(), &polygon, 6).unwrap())
            .fold(ClassHeights::default(), ClassHeights::together);
        let number = |key: &str| roof[key].as_f64().unwrap();
        assert_eq!(heights.count() as f64, number("count"), "{}", roof["id"]);
        near(heights.median().unwrap(), number("median"), 1e-6, "median");
        near(heights.quantile(0.95).unwrap(), number("p95"), 1e-6, "95 %");
        near(heights.highest().unwrap(), number("max"), 1e-6, "highest");
    }
    // The same building in the table of the data's own page, which rounds to a centimetre.
    let building = roofs.iter().find(|r| r["id"] == "503100000004637").unwrap();
    near(building["median"].as_f64().unwrap(), 8.63, 0.005, "table");
}

#[test]
fn val_montpellier_cloud_agrees_with_the_official_grid() {
    if !present() {
        return;
    }
    let path = "pointcloud/montpellier_block/tile_77055_627760.laz";
    let cloud = read_cloud(path, &bytes(path), &GroundOptions::default()).unwrap();
    let grid_path = "terrain/montpellier_tile_77055_627760_dtm_50cm.tif";
    let grid = read_ground(grid_path, &bytes(grid_path), &GroundOptions::default()).unwrap();
    let gaps: Vec<f64> = cloud.ground.iter().filter_map(|p| Some(p.z - grid.terrain.height(p.truncate())?)).collect();
    assert!(gaps.len() > 20_000);
    let mean = gaps.iter().sum::<f64>() / gaps.len() as f64;
    let rms = (gaps.iter().map(|g| g * g).sum::<f64>() / gaps.len() as f64).sqrt();
    near(mean, -0.001, 0.002, "mean of cloud minus grid");
    near(rms, 0.027, 0.003, "rms of cloud minus grid");
}

#[test]
fn val_montpellier_six_tiles() {
    if !present() {
        return;
    }
    let names = files("pointcloud/montpellier_block", &["laz"]);
    let tiles: Vec<(&str, Vec<u8>)> = names.iter().map(|n| (n.as_str(), bytes(n))).collect();
    let tiles: Vec<(&str, &[u8])> = tiles.iter().map(|(n, b)| (*n, b.as_slice())).collect();
    let reading = read_tiles(&tiles, &GroundOptions::default()).unwrap();
    assert_eq!(reading.facts.points, 417_106);
    let classes: Vec<(u8, u64)> = reading.facts.classes.iter().map(|(c, n)| (*c, *n)).collect();
    let expected = [(0, 223), (1, 17_306), (2, 171_189), (3, 7942), (4, 10_857), (5, 98_026), (6, 111_563)];
    assert_eq!(classes, expected);
    let ground: Vec<DVec3> =
        tiles.iter().flat_map(|(n, b)| read_cloud(n, b, &GroundOptions::default()).unwrap().ground).collect();
    let (east, north) = plane(&ground);
    near(east.hypot(north) * 100.0, 0.46, 0.005, "slope in %");
    near(median(ground.iter().map(|p| p.z).collect()), 20.89, 0.005, "median of the ground");
}

#[test]
fn val_quantiles_of_the_ground() {
    if !present() {
        return;
    }
    let cases = [
        ("pointcloud/stbarth_building_site_100m.laz", [1.95, 2.53, 3.41]),
        ("pointcloud/delft_ahn3_west.laz", [-0.10, 0.38, 0.78]),
        ("pointcloud/hillside_370m_extrabytes.laz", [101.98, 107.15, 113.98]),
        ("pointcloud/town_1km_decimated.laz", [46.26, 51.79, 66.29]),
    ];
    for (path, expected) in cases {
        let mut z: Vec<f64> =
            read_cloud(path, &bytes(path), &in_metres()).unwrap().ground.iter().map(|p| p.z).collect();
        z.sort_by(f64::total_cmp);
        for (share, expected) in [0.05, 0.5, 0.95].into_iter().zip(expected) {
            near(z[(share * (z.len() - 1) as f64).round() as usize], expected, CENTIMETRE, path);
        }
    }
}

#[test]
fn val_feet_from_geotiff_keys() {
    if !present() {
        return;
    }
    let path = "pointcloud/formats/autzen_trim_feet_rgb.laz";
    let cloud = read_cloud(path, &bytes(path), &GroundOptions::default()).unwrap();
    let facts = &cloud.facts;
    near(facts.max[0] - facts.min[0], 358.890, 0.001, "width");
    near(facts.max[1] - facts.min[1], 171.511, 0.001, "depth");
    near(median(cloud.ground.iter().map(|p| p.z).collect()), 130.19, CENTIMETRE, "median of the ground");
    assert_eq!(facts.units.horizontal, LengthUnit::Foot);
    assert_eq!(facts.units.vertical_source, UnitSource::AsHorizontal);
    assert!(codes(&cloud.notes).contains(&"survey::height-units-assumed"));
}

#[test]
fn val_us_survey_feet_said_twice() {
    if !present() {
        return;
    }
    let path = "pointcloud/formats/nebraska_usft_house_wkt_and_geotiff_vlrs.las";
    let cloud = read_cloud(path, &bytes(path), &GroundOptions::default()).unwrap();
    assert_eq!(cloud.facts.units.horizontal, LengthUnit::UsSurveyFoot);
    assert_eq!(cloud.facts.units.vertical, LengthUnit::UsSurveyFoot);
    near(LengthUnit::UsSurveyFoot.metres(), 0.304_800_609_601_219_24, 1e-15, "factor");
    near(median(cloud.ground.iter().map(|p| p.z).collect()), 412.810, 0.001, "median of the ground");
    let [w, s, _] = cloud.facts.min;
    let [e, n, _] = cloud.facts.max;
    let all = [DVec2::new(w, s), DVec2::new(e, s), DVec2::new(e, n), DVec2::new(w, n)];
    let roof = class_heights_in(path, &bytes(path), &GroundOptions::default(), &all, 6).unwrap();
    near(roof.quantile(0.995).unwrap(), 426.292, 0.001, "roof");
}

#[test]
fn a_unit_statement_that_lies_needs_a_word_from_the_job() {
    if !present() {
        return;
    }
    let path = "pointcloud/formats/autzen_1065pts.copc.laz";
    let faults = read_cloud(path, &bytes(path), &GroundOptions::default()).unwrap_err();
    assert_eq!(codes(&faults), ["survey::units-contradict"]);
    let options = GroundOptions { units: Some(LengthUnit::Foot), ..GroundOptions::default() };
    let feet = read_cloud(path, &bytes(path), &options).unwrap();
    assert!(codes(&feet.notes).contains(&"survey::units-overridden"));
    // The same points in metres, reprojected: plan differs, heights agree.
    let path = "pointcloud/formats/autzen_utm10.las";
    let metres = read_cloud(path, &bytes(path), &GroundOptions::default()).unwrap();
    let heights = |points: &[DVec3]| {
        let mut z: Vec<f64> = points.iter().map(|p| p.z).collect();
        z.sort_by(f64::total_cmp);
        z
    };
    let (a, b) = (heights(&feet.ground), heights(&metres.ground));
    assert_eq!(a.len(), 276);
    for (a, b) in a.iter().zip(&b) {
        near(*a, *b, CENTIMETRE, "height in feet and in metres");
    }
}

#[test]
fn an_old_file_in_one_stretch_is_read_like_its_new_copy() {
    if !present() {
        return;
    }
    let options = GroundOptions { units: Some(LengthUnit::Foot), ..GroundOptions::default() };
    let [old, new] =
        ["pointcloud/broken/laszip_1_2r0_no_chunk_table.laz", "pointcloud/formats/autzen_1065pts.copc.laz"].map(
            |path| {
                let mut ground = read_cloud(path, &bytes(path), &options).unwrap().ground;
                ground.sort_by(|a, b| a.x.total_cmp(&b.x).then(a.y.total_cmp(&b.y)));
                ground
            },
        );
    assert_eq!(old.len(), 276);
    for (a, b) in old.iter().zip(&new) {
        assert!(a.distance(*b) < 1e-6, "{a} {b}");
    }
}

#[test]
fn val_hillside_plane_and_its_empty_third() {
    if !present() {
        return;
    }
    let path = "pointcloud/hillside_370m_extrabytes.laz";
    let cloud = read_cloud(path, &bytes(path), &GroundOptions::default()).unwrap();
    let (east, north) = plane(&cloud.ground);
    near(east.hypot(north) * 100.0, 3.442, 0.001, "slope in %");
    near((-east).atan2(-north).to_degrees().rem_euclid(360.0), 151.5, 0.05, "downhill azimuth");
    let reading = read_ground(path, &bytes(path), &GroundOptions::default()).unwrap();
    let (low, high) = reading.terrain.bounds().unwrap();
    let known = (0..50)
        .flat_map(|i| (0..50).map(move |j| DVec2::new(f64::from(i) + 0.5, f64::from(j) + 0.5) / 50.0))
        .filter(|share| reading.terrain.height(low + (high - low) * *share).is_some())
        .count();
    // A third of the bounding box is empty; shrubs and the shed leave small holes more.
    assert!((1300..1750).contains(&known), "{known} of 2500 places are known");
}

#[test]
fn val_mountain_plane() {
    if !present() {
        return;
    }
    let path = "pointcloud/formats/mountain_293m_utm42.las";
    let cloud = read_cloud(path, &bytes(path), &GroundOptions::default()).unwrap();
    let (east, north) = plane(&cloud.ground);
    near(east.hypot(north) * 100.0, 36.95, 0.01, "slope in %");
    near((-east).atan2(-north).to_degrees().rem_euclid(360.0), 60.0, 0.1, "downhill azimuth");
}

/// Slopes to the east and to the north of the least-squares plane.
fn plane(points: &[DVec3]) -> (f64, f64) {
    let n = points.len() as f64;
    let centre = points.iter().sum::<DVec3>() / n;
    let (mut xx, mut xy, mut yy, mut xz, mut yz) = (0.0, 0.0, 0.0, 0.0, 0.0);
    for p in points {
        let d = *p - centre;
        (xx, xy, yy) = (xx + d.x * d.x, xy + d.x * d.y, yy + d.y * d.y);
        (xz, yz) = (xz + d.x * d.z, yz + d.y * d.z);
    }
    let det = xx * yy - xy * xy;
    ((xz * yy - yz * xy) / det, (yz * xx - xz * xy) / det)
}

#[test]
fn a_window_thins_a_cloud_and_changes_no_height_in_it() {
    if !present() {
        return;
    }
    let path = DELFT[1];
    let window = Window { min: DVec2::new(85_010.0, 447_500.0), max: DVec2::new(85_040.0, 447_540.0) };
    let whole = read_ground(path, &bytes(path), &in_metres()).unwrap();
    let options = GroundOptions { window: Some(window), ..in_metres() };
    let part = read_ground(path, &bytes(path), &options).unwrap();
    assert_eq!(part.facts, whole.facts);
    let mut known = 0;
    for i in 0..400 {
        let share = DVec2::new((f64::from(i) * 0.618).fract(), (f64::from(i) * 0.327).fract());
        let at = window.min + (window.max - window.min) * share;
        let (a, b) = (part.terrain.height(at), whole.terrain.height(at));
        assert_eq!(a.is_some(), b.is_some(), "{at}");
        if let (Some(a), Some(b)) = (a, b) {
            near(a, b, 1e-9, "height");
            known += 1;
        }
    }
    assert!(known > 100, "{known}");
    let far = GroundOptions { window: Some(Window { min: DVec2::ZERO, max: DVec2::splat(50.0) }), ..in_metres() };
    assert_eq!(codes(&read_ground(path, &bytes(path), &far).unwrap_err()), ["survey::window-empty"]);
}

#[test]
fn a_tile_beside_the_window_is_left_out() {
    if !present() {
        return;
    }
    let files = DELFT.map(|path| (path, bytes(path)));
    let tiles = [(files[0].0, files[0].1.as_slice()), (files[1].0, files[1].1.as_slice())];
    let window = Window { min: DVec2::new(85_050.0, 447_500.0), max: DVec2::new(85_060.0, 447_540.0) };
    let reading = read_tiles(&tiles, &GroundOptions { window: Some(window), ..in_metres() }).unwrap();
    assert_eq!(reading.facts.points, 208_432);
    let nowhere = Window { min: DVec2::ZERO, max: DVec2::ONE };
    let faults = read_tiles(&tiles, &GroundOptions { window: Some(nowhere), ..in_metres() }).unwrap_err();
    assert_eq!(codes(&faults), ["survey::window-empty", "survey::window-empty"]);
}
