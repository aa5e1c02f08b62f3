//! Coordinate systems: against PROJ, and what is refused.

use crate::made::{Cloud, Raster};
use crate::reference::{codes, validation};
use geometry::{DVec2, DVec3};
use survey::{Epsg, GroundOptions, LengthUnit, LocalGrid, convert, read_cloud, read_ground, read_tiles};

/// What a wheel notices; the projections themselves agree far better.
const CENTIMETRE: f64 = 0.01;
/// A centimetre in degrees of latitude.
const CENTIMETRE_DEGREES: f64 = 9e-8;

fn rows(name: &str) -> Vec<Vec<f64>> {
    let text = String::from_utf8(validation(name)).unwrap();
    text.lines().filter(|l| !l.starts_with('#')).map(|l| l.split(',').map(|v| v.parse().unwrap()).collect()).collect()
}

/// One point of every system, both ways.
#[test]
fn val_pyproj_every_system() {
    let rows = rows("coordinates/systems.csv");
    assert!(rows.len() > 4000, "{}", rows.len());
    let mut far = Vec::new();
    for row in &rows {
        let code = Epsg(row[0] as u16);
        let earth = Epsg(row[1] as u16);
        let (on_earth, plan) = (DVec2::new(row[2], row[3]), DVec2::new(row[4], row[5]));
        let Ok(got) = convert(earth, code, on_earth) else {
            far.push((code, f64::INFINITY));
            continue;
        };
        let miss = got.distance(plan) * if code.is_degrees() == Some(true) { 1.0 / CENTIMETRE_DEGREES } else { 100.0 };
        if miss.is_nan() || miss > 1.0 {
            far.push((code, miss));
            continue;
        }
        let back = convert(code, earth, plan).unwrap_or(DVec2::NAN);
        let east = (back.x - on_earth.x + 540.0).rem_euclid(360.0) - 180.0;
        let miss = (DVec2::new(east * on_earth.y.to_radians().cos(), back.y - on_earth.y)).length();
        if miss.is_nan() || miss > CENTIMETRE_DEGREES {
            far.push((code, miss / CENTIMETRE_DEGREES));
        }
    }
    assert!(far.is_empty(), "{} systems off, in cm: {far:?}", far.len());
}

fn expected() -> serde_json::Value {
    serde_json::from_slice(&validation("coordinates/between.json")).unwrap()
}

/// A raster of points over the area of each system, from one system straight into another.
#[test]
fn val_pyproj_between_systems() {
    let expected = expected();
    let pairs = expected["pairs"].as_array().unwrap();
    assert_eq!(pairs.len(), 16, "a pair went missing");
    for pair in pairs {
        let [from, to] = ["from", "to"].map(|k| Epsg(pair[k].as_u64().unwrap() as u16));
        let points = pair["points"].as_array().unwrap();
        assert_eq!(points.len(), 25);
        for row in points {
            let v: Vec<f64> = row.as_array().unwrap().iter().map(|v| v.as_f64().unwrap()).collect();
            let got = convert(from, to, DVec2::new(v[0], v[1])).unwrap();
            let miss = got.distance(DVec2::new(v[2], v[3]));
            let most = if to.is_degrees() == Some(true) { CENTIMETRE_DEGREES } else { CENTIMETRE };
            assert!(miss <= most, "{from} to {to}, {v:?}: got {got}");
        }
    }
}

fn options(file: Option<u16>, site: u16) -> GroundOptions {
    GroundOptions {
        units: Some(LengthUnit::Metre),
        file_crs: file.map(Epsg),
        site_crs: Some(Epsg(site)),
        ..GroundOptions::default()
    }
}

fn levels(rows: [(f64, f64); 4]) -> Vec<u8> {
    let rows = rows.iter().enumerate().map(|(i, (e, n))| format!("{i},{e},{n},{}", 10.0 + i as f64));
    let rows: Vec<String> = std::iter::once("point,easting,northing,level".to_owned()).chain(rows).collect();
    rows.join("\n").into_bytes()
}

/// Four corners of 20 m in Delft, in EPSG:28992.
const DELFT: [(f64, f64); 4] =
    [(84_900.0, 447_500.0), (84_920.0, 447_500.0), (84_920.0, 447_520.0), (84_900.0, 447_520.0)];

fn refusal(bytes: &[u8], options: &GroundOptions) -> Vec<String> {
    let faults = read_ground("levels.csv", bytes, options).map(|r| r.facts).unwrap_err();
    assert!(faults.list.iter().all(|f| f.hint.is_some()));
    codes(&faults).into_iter().map(str::to_owned).collect()
}

#[test]
fn files_in_different_systems_refuse_to_mix_silently() {
    let bytes = levels(DELFT);
    let metres = GroundOptions { units: Some(LengthUnit::Metre), ..GroundOptions::default() };
    assert!(read_ground("levels.csv", &bytes, &metres).unwrap().notes.list.is_empty());
    assert_eq!(refusal(&bytes, &options(None, 28992)), ["survey::file-crs-unknown"]);
    let only_file = GroundOptions { file_crs: Some(Epsg(28992)), ..metres };
    assert_eq!(refusal(&bytes, &only_file), ["survey::site-crs-unknown"]);
    assert_eq!(refusal(&bytes, &options(Some(28992), 20_000)), ["survey::crs-not-converted"]);
    assert_eq!(refusal(&bytes, &options(Some(28992), 4326)), ["survey::site-in-degrees"]);
    let same = read_ground("levels.csv", &bytes, &options(Some(28992), 28992)).unwrap();
    assert!(same.notes.list.is_empty());
    assert_eq!(same.facts.crs.as_deref(), Some("Amersfoort / RD New (EPSG:28992)"));
}

#[test]
fn levels_come_out_where_they_are_in_the_other_system() {
    let bytes = levels(DELFT);
    let reading = read_ground("levels.csv", &bytes, &options(Some(28992), 25831)).unwrap();
    assert_eq!(codes(&reading.notes), ["survey::datums-differ"]);
    for (i, (e, n)) in DELFT.into_iter().enumerate() {
        let at = convert(Epsg(28992), Epsg(25831), DVec2::new(e, n)).unwrap();
        let height = reading.terrain.height(at).unwrap();
        assert!((height - 10.0 - i as f64).abs() < 1e-6, "corner {i}: {height}");
    }
    let (low, high) = reading.terrain.bounds().unwrap();
    assert!(((high - low) - DVec2::splat(20.0)).abs().max_element() < 1.0, "{low} {high}");
}

#[test]
fn degrees_need_a_site_to_be_projected_to() {
    let degrees = DELFT.map(|(e, n)| {
        let p = convert(Epsg(28992), Epsg(4326), DVec2::new(e, n)).unwrap();
        (p.x, p.y)
    });
    let bytes = levels(degrees);
    assert_eq!(refusal(&bytes, &GroundOptions::default()), ["survey::degrees"]);
    let unknown = GroundOptions { units: None, ..options(Some(4326), 28992) };
    assert_eq!(refusal(&bytes, &unknown), ["survey::units-unknown"], "heights have a unit too");
    let reading = read_ground("levels.csv", &bytes, &options(Some(4326), 28992)).unwrap();
    let height = reading.terrain.height(DVec2::new(84_920.0 - 0.01, 447_520.0 - 0.01)).unwrap();
    assert!((height - 12.0).abs() < 0.01, "{height}");
    assert!(reading.facts.max[0] > 84_919.9 && reading.facts.max[0] < 84_920.1);
}

#[test]
fn swapped_axes_and_far_places_are_refused() {
    let swapped = levels(DELFT.map(|(e, n)| (n, e)));
    for site in [28992, 25831] {
        assert_eq!(refusal(&swapped, &options(Some(28992), site)), ["survey::axes-swapped"], "{site}");
    }
    let degrees = levels([(52.01, 4.36), (52.011, 4.36), (52.011, 4.361), (52.01, 4.361)]);
    assert_eq!(refusal(&degrees, &options(Some(4326), 28992)), ["survey::axes-swapped"]);
    let sydney = levels([(-33.86, 151.2), (-33.861, 151.2), (-33.861, 151.201), (-33.86, 151.201)]);
    assert_eq!(refusal(&sydney, &options(Some(4326), 32756)), ["survey::axes-swapped"]);
    assert_eq!(refusal(&levels(DELFT), &options(Some(4326), 28992)), ["survey::axes-swapped"]);
    let spain = levels(DELFT.map(|(e, n)| (e + 400_000.0, n + 4_000_000.0)));
    assert_eq!(refusal(&spain, &options(Some(25830), 28992)), ["survey::outside-area"]);
}

#[test]
fn the_job_counts_more_than_the_file() {
    let file = Cloud { keys: vec![(1024, 1), (3072, 32632)], east: 500_000.0, ..Cloud::default() };
    let stated = GroundOptions { file_crs: Some(Epsg(32620)), site_crs: Some(Epsg(32620)), ..GroundOptions::default() };
    let cloud = read_cloud("cloud.las", &file.bytes(), &stated).unwrap();
    assert!(codes(&cloud.notes).contains(&"survey::crs-replaced"));
    assert_eq!(cloud.facts.min[..2], [500_000.0, 2000.0]);
    let text = r#"PROJCS["q",GEOGCS["g",UNIT["degree",0.0174]],UNIT["metre",1],AUTHORITY["EPSG","32633"]]"#;
    let both = Cloud { text: Some(text), ..file };
    let site = GroundOptions { site_crs: Some(Epsg(32632)), ..GroundOptions::default() };
    let faults = read_cloud("cloud.las", &both.bytes(), &site).unwrap_err();
    assert_eq!(codes(&faults), ["survey::crs-contradicts"]);
}

#[test]
fn clouds_are_carried_over_point_by_point() {
    // Feet of EPSG:2994, as its definition says, into UTM zone 10.
    let file = Cloud { keys: vec![(1024, 1), (3072, 2994)], east: 637_000.0, ..Cloud::default() };
    let north = 849_000.0 - 2000.0;
    let mut bytes = file.bytes();
    for at in [163, 195, 203] {
        let value = f64::from_le_bytes(bytes[at..at + 8].try_into().unwrap());
        bytes[at..at + 8].copy_from_slice(&(value + north).to_le_bytes());
    }
    let options = GroundOptions { site_crs: Some(Epsg(32610)), ..GroundOptions::default() };
    let cloud = read_cloud("cloud.las", &bytes, &options).unwrap();
    assert_eq!(cloud.ground.len(), 144);
    for (i, p) in cloud.ground.iter().enumerate() {
        let feet = DVec2::new(637_000.0 + (i % 12) as f64, 849_000.0 + (i / 12) as f64);
        let at = convert(Epsg(2994), Epsg(32610), feet * 0.3048).unwrap();
        assert!(p.truncate().distance(at) < 1e-5, "{i}: {p} {at}");
        assert!((p.z - (10.0 + (i % 12) as f64 / 10.0) * 0.3048).abs() < 1e-9);
    }
}

#[test]
fn a_grid_in_another_system_becomes_triangles_at_its_cell_centres() {
    let keys = vec![1, 1, 0, 3, 1024, 0, 1, 1, 1025, 0, 1, 1, 3072, 0, 1, 32631];
    let raster = Raster { keys: keys.clone(), ..Raster::default() };
    let far = read_ground("grid.tif", &raster.bytes(), &options(None, 25831)).unwrap_err();
    assert_eq!(codes(&far), ["survey::outside-area"]);
    // The tie point moved to where zone 31 is used.
    let mut matrix = [0.0; 16];
    (matrix[0], matrix[3], matrix[5], matrix[7]) = (1.0, 590_000.0, -1.0, 5_760_000.0);
    let raster = Raster { keys, matrix: Some(matrix), ..Raster::default() };
    let reading = read_ground("grid.tif", &raster.bytes(), &options(None, 28992)).unwrap();
    assert_eq!(codes(&reading.notes), ["survey::datums-differ", "survey::grid-to-triangles"]);
    assert!(matches!(reading.terrain, site::Terrain::Tin(_)));
    for (row, col) in [(1, 1), (3, 4), (5, 7)] {
        let centre = DVec2::new(590_000.5 + f64::from(col), 5_759_999.5 - f64::from(row));
        let at = convert(Epsg(32631), Epsg(28992), centre).unwrap();
        let height = reading.terrain.height(at).unwrap();
        assert!((height - 100.25 - f64::from(col) - f64::from(row) / 4.0).abs() < 1e-4, "{height}");
    }
    let cell = reading.facts.cell.unwrap();
    assert!((cell[0] - 1.0).abs() < 1e-3 && (cell[1] - 1.0).abs() < 1e-3);
    // A window in the site frame keeps what lies in it.
    let middle = convert(Epsg(32631), Epsg(28992), DVec2::new(590_004.5, 5_759_996.5)).unwrap();
    let window = survey::Window { min: middle - DVec2::splat(0.2), max: middle + DVec2::splat(0.2) };
    let part = GroundOptions { window: Some(window), ..options(None, 28992) };
    let part = read_ground("grid.tif", &raster.bytes(), &part).unwrap();
    assert_eq!(
        part.terrain.height(middle).map(|z| (z * 1e3).round()),
        reading.terrain.height(middle).map(|z| (z * 1e3).round())
    );
}

#[test]
fn a_site_grid_shifts_a_grid_and_turns_it_into_triangles() {
    let shift = LocalGrid { rotation: 0.0, scale: 1.0, shift: DVec2::new(-1000.0, -1990.0) };
    let options = GroundOptions { local: Some(shift), ..GroundOptions::default() };
    let bytes = Raster::default().bytes();
    let shifted = read_ground("grid.tif", &bytes, &options).unwrap();
    assert!(matches!(shifted.terrain, site::Terrain::Grid(_)));
    assert_eq!(shifted.terrain.height(DVec2::new(0.5, 9.5)), Some(100.25));
    assert_eq!(shifted.facts.min[..2], [0.0, 3.0]);
    let turn = LocalGrid { rotation: 0.5, scale: 1.0, shift: DVec2::ZERO };
    let turned = read_ground("grid.tif", &bytes, &GroundOptions { local: Some(turn), ..options.clone() }).unwrap();
    let at = turn.site(DVec2::new(1003.5, 1996.5));
    assert!((turned.terrain.height(at).unwrap() - 104.0).abs() < 1e-4);
    let bad = LocalGrid { scale: 0.0, ..turn };
    let faults = read_ground("grid.tif", &bytes, &GroundOptions { local: Some(bad), ..options.clone() }).unwrap_err();
    assert_eq!(codes(&faults), ["survey::local-grid"]);
    let cloud = read_cloud("cloud.las", &Cloud::default().bytes(), &options).unwrap();
    assert_eq!(cloud.ground[0], DVec3::new(0.0, 10.0, 10.0));
    assert_eq!(cloud.facts.min, [0.0, 10.0, 10.0]);
}

#[test]
fn tiles_in_two_systems_are_refused_and_one_site_system_joins_them() {
    let tile = |zone: u16, east: f64| Cloud { keys: vec![(1024, 1), (3072, zone)], east, ..Cloud::default() }.bytes();
    let (west, east) = (tile(32631, 500_000.0), tile(32632, 500_020.0));
    let tiles = [("west.las", west.as_slice()), ("east.las", east.as_slice())];
    let faults = read_tiles(&tiles, &GroundOptions::default()).unwrap_err();
    assert_eq!(codes(&faults), ["survey::tiles-differ"]);
    assert_eq!(faults.list[0].place.file, "east.las");
    let same = tile(32631, 500_012.0);
    let tiles = [("west.las", west.as_slice()), ("east.las", same.as_slice())];
    let options = GroundOptions { site_crs: Some(Epsg(32630)), ..GroundOptions::default() };
    let joined = read_tiles(&tiles, &options).unwrap();
    assert_eq!(joined.facts.ground_points, 288);
}
