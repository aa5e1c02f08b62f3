//! What stands above the ground, heights of buildings, likely conductors, planes.

use crate::made::{Cloud, Dice};
use crate::plain_cloud::plain;
use crate::reference::{bytes, codes, files, present};
use geometry::{DVec2, DVec3};
use site::{Grid, Terrain, fit_plane};
use survey::{
    ClassHeights, ConductorOptions, GroundOptions, LengthUnit, LikelySpan, ThingOptions, building_heights,
    class_heights_in, likely_conductors, read_cloud, read_ground, read_tiles, things_above,
};

const STBARTH: &str = "pointcloud/stbarth_building_site_100m.laz";
const ROOF: &str = "pointcloud/formats/no_crs_class14_on_roof.las";

fn in_metres() -> GroundOptions {
    GroundOptions { units: Some(LengthUnit::Metre), ..GroundOptions::default() }
}

fn things_in_metres() -> ThingOptions {
    ThingOptions { cloud: in_metres(), ..ThingOptions::default() }
}

fn near(got: f64, expected: f64, tolerance: f64, what: &str) {
    assert!((got - expected).abs() <= tolerance, "{what}: got {got}, expected {expected} ± {tolerance}");
}

fn ground_of(path: &str) -> Terrain {
    read_ground(path, &bytes(path), &in_metres()).unwrap().terrain
}

/// Level ground at 10 m, 100 m square from (1000, 2000).
fn level() -> Terrain {
    Terrain::Grid(Grid {
        north_west: DVec2::new(990.0, 2110.0),
        cell: DVec2::splat(120.0),
        rows: 2,
        cols: 2,
        heights: vec![10.0; 4],
    })
}

#[test]
fn val_mast_and_jib_of_st_barth_stand_whatever_their_class() {
    if !present() {
        return;
    }
    let file = bytes(STBARTH);
    let got = things_above(&[(STBARTH, &file)], &ground_of(STBARTH), &things_in_metres()).unwrap();
    let mast = DVec2::new(515_016.2, 1_981_056.4);
    let thing = got
        .things
        .iter()
        .find(|t| t.columns.iter().any(|c| c.at.distance(mast) < 0.5))
        .expect("something stands at the mast");
    near(thing.top.z, 26.55, 0.005, "top of the mast");
    let reach = thing.columns.iter().map(|c| c.at.distance(mast)).fold(0.0, f64::max);
    // Cells are half a metre, and the reach of the table ends at a point.
    near(reach, 29.3, 0.5, "reach of the jib");
    let jib: Vec<f64> = thing.columns.iter().filter(|c| c.at.distance(mast) > 15.0).map(|c| c.top).collect();
    assert!(jib.len() > 50 && jib.iter().all(|z| (22.8..=25.6).contains(z)), "{jib:?}");
    assert!(thing.votes.vegetation > thing.points / 2, "its class says vegetation: {:?}", thing.votes);
    assert_eq!(got.things[0].top, thing.top, "highest first");
    for column in &thing.columns {
        assert!(within(&thing.outline, column.at), "the outline holds {}", column.at);
    }
}

fn within(outline: &[DVec2], at: DVec2) -> bool {
    let pairs = outline.iter().zip(outline.iter().cycle().skip(1));
    pairs.filter(|(a, b)| (a.y > at.y) != (b.y > at.y) && at.x < a.x + (at.y - a.y) / (b.y - a.y) * (b.x - a.x)).count()
        % 2
        == 1
}

#[test]
fn val_wires_by_class_on_a_roof_are_a_roof() {
    if !present() {
        return;
    }
    let file = bytes(ROOF);
    let ground = ground_of(ROOF);
    let got = things_above(&[(ROOF, &file)], &ground, &things_in_metres()).unwrap();
    let wired: Vec<_> = got.things.iter().filter(|t| t.votes.wire_or_tower > 0).collect();
    assert_eq!(wired.len(), 1);
    assert_eq!(wired[0].votes.wire_or_tower, 45);
    assert!(wired[0].votes.building > 12_000, "{:?}", wired[0].votes);
    let options = ConductorOptions { cloud: in_metres(), ..ConductorOptions::default() };
    let lines = likely_conductors(&[(ROOF, &file)], &ground, &options).unwrap();
    assert_eq!(lines.spans, [], "points of class 14 on a roof plane are no line");
}

#[test]
fn val_delft_building_heights() {
    if !present() {
        return;
    }
    let names = ["pointcloud/delft_ahn3_west.laz", "pointcloud/delft_ahn3_east.laz"];
    let clouds = names.map(|n| (n, bytes(n)));
    let tiles = [(clouds[0].0, clouds[0].1.as_slice()), (clouds[1].0, clouds[1].1.as_slice())];
    let plan: serde_json::Value = serde_json::from_slice(&bytes("plans/delft_buildings_epsg28992.geojson")).unwrap();
    #[rustfmt::skip]
    let table = [
        (503_100_000_000_035_u64, 7283, [10.59, 13.84, 14.54, 0.29]),
        (503_100_000_022_859, 2164, [12.40, 13.08, 14.11, 1.23]),
        (503_100_000_004_637, 1807, [8.63, 8.76, 10.95, 0.30]),
        (503_100_000_026_152, 945, [7.49, 9.07, 9.46, 0.07]),
        (503_100_000_017_311, 766, [6.97, 9.09, 9.43, 0.08]),
    ];
    for (id, points, expected) in table {
        let feature =
            plan["features"].as_array().unwrap().iter().find(|f| f["properties"]["identificatiebagpnd"] == id);
        let mut outline: Vec<DVec2> = feature.unwrap()["geometry"]["coordinates"][0]
            .as_array()
            .unwrap()
            .iter()
            .map(|p| DVec2::new(p[0].as_f64().unwrap(), p[1].as_f64().unwrap()))
            .collect();
        outline.pop();
        let got = building_heights(&tiles, &outline, &in_metres()).unwrap();
        // A point exactly on the shrunk outline may fall on either side.
        near(got.roof.count() as f64, f64::from(points), 1.0, &format!("points of {id}"));
        let heights = [got.roof.median(), got.roof.quantile(0.95), got.roof.highest(), got.ground.median()];
        for (got, expected) in heights.into_iter().zip(expected) {
            // The table rounds to a centimetre.
            near(got.unwrap(), expected, 0.0051, &format!("{id}"));
        }
    }
}

#[test]
fn val_highest_building_point_of_montpellier() {
    if !present() {
        return;
    }
    let names = files("pointcloud/montpellier_block", &["laz"]);
    let clouds: Vec<(&str, Vec<u8>)> = names.iter().map(|n| (n.as_str(), bytes(n))).collect();
    let tiles: Vec<(&str, &[u8])> = clouds.iter().map(|(n, b)| (*n, b.as_slice())).collect();
    let ground = read_tiles(&tiles, &GroundOptions::default()).unwrap().terrain;
    let got = things_above(&tiles, &ground, &ThingOptions::default()).unwrap();
    let place = DVec2::new(770_521.87, 6_277_544.17);
    let at_place = |c: &&survey::ThingColumn| (c.at - place).abs().max_element() <= 0.25;
    let found = got.things.iter().find_map(|t| t.columns.iter().find(at_place).map(|c| (t, c.top)));
    let (highest, top) = found.expect("something stands there");
    // What stands on the roof is part of the thing, whatever its class.
    assert!(top > 38.785 && highest.top.z >= top, "{top} {}", highest.top);
    assert!(highest.votes.building > 100, "{:?}", highest.votes);
    let cell = [(-0.5, -0.5), (0.5, -0.5), (0.5, 0.5), (-0.5, 0.5)].map(|(x, y)| place + DVec2::new(x, y) * 0.02);
    let around =
        [(-200.0, -200.0), (200.0, -200.0), (200.0, 200.0), (-200.0, 200.0)].map(|(x, y)| place + DVec2::new(x, y));
    for (polygon, what) in [(cell, "there"), (around, "anywhere")] {
        let heights = tiles
            .iter()
            .map(|(n, b)| class_heights_in(n, b, &GroundOptions::default(), &polygon, 6).unwrap())
            .fold(ClassHeights::default(), ClassHeights::together);
        near(heights.highest().unwrap(), 38.79, 0.005, what);
    }
    near(highest.base, 20.9, 0.8, "ground under it");
}

#[test]
fn thin_things_are_seen_and_noise_is_not() {
    let mut points = Vec::new();
    for i in 0..10_000 {
        points.push((DVec3::new(1000.0 + f64::from(i % 100), 2000.0 + f64::from(i / 100), 10.0), 2));
    }
    // A pole of four points, a shed, a crane's jib over the shed, one bird, noise, grass.
    for k in 1..=4 {
        points.push((DVec3::new(1020.3, 2020.3, 10.0 + 2.0 * f64::from(k)), 1));
    }
    for i in 0..400 {
        points.push((DVec3::new(1050.0 + f64::from(i % 20) * 0.5, 2050.0 + f64::from(i / 20) * 0.5, 13.0), 6));
    }
    for i in 0..60 {
        points.push((DVec3::new(1040.0 + f64::from(i) * 0.5, 2055.2, 30.0), 5));
    }
    points.push((DVec3::new(1080.0, 2080.0, 60.0), 1));
    points.extend([(DVec3::new(1070.0, 2020.0, 50.0), 7), (DVec3::new(1071.0, 2020.0, 50.0), 18)]);
    points.push((DVec3::new(1090.0, 2090.0, 10.4), 3));
    let file = plain(&points);
    let got = things_above(&[("c.las", &file)], &level(), &ThingOptions::default()).unwrap();
    let tops: Vec<f64> = got.things.iter().map(|t| t.top.z).collect();
    assert_eq!(tops, [30.0, 18.0, 13.0], "jib, pole, shed");
    assert_eq!((got.things[1].points, got.things[1].columns.len(), got.things[1].outline.len()), (4, 1, 4));
    assert_eq!(got.lone_points, 1);
    assert_eq!(codes(&got.notes), ["survey::lone-points"]);
    assert_eq!(got.things[2].base, 10.0);
    // Points of class 2 that the surface does not hold stand above it too.
    let shed_as_ground: Vec<_> = points.iter().map(|&(p, c)| (p, if c == 6 { 2 } else { c })).collect();
    let file = plain(&shed_as_ground);
    let got = things_above(&[("c.las", &file)], &level(), &ThingOptions::default()).unwrap();
    assert!(got.things.iter().any(|t| t.top.z == 13.0), "a roof of class 2");
}

#[test]
fn things_and_lines_refuse_what_cannot_be() {
    let file = Cloud::default().bytes();
    let tiles: [(&str, &[u8]); 1] = [("c.las", &file)];
    let things = |ground: &Terrain, options: &ThingOptions| {
        let faults = things_above(&tiles, ground, options).map(|t| t.things.len()).unwrap_err();
        codes(&faults).into_iter().map(str::to_owned).collect::<Vec<_>>()
    };
    for options in [
        ThingOptions { above: f64::NAN, ..ThingOptions::default() },
        ThingOptions { step: -1.0, ..ThingOptions::default() },
    ] {
        assert_eq!(things(&level(), &options), ["survey::option"]);
    }
    let tiny = ThingOptions { cell: f64::NAN, ..ThingOptions::default() };
    assert_eq!(things(&level(), &tiny), ["survey::cell-size"]);
    let Terrain::Grid(mut unknown) = level() else { panic!("a grid") };
    unknown.heights.fill(f32::NAN);
    assert_eq!(things(&Terrain::Grid(unknown), &ThingOptions::default()), ["survey::no-ground-under"]);
    let faults = building_heights(&tiles, &[DVec2::ZERO, DVec2::NAN, DVec2::ONE], &in_metres()).unwrap_err();
    assert_eq!(codes(&faults), ["survey::outline"]);
    let options = ConductorOptions { tolerance: f64::INFINITY, ..ConductorOptions::default() };
    let faults = likely_conductors(&tiles, &level(), &options).map(|l| l.spans).unwrap_err();
    assert_eq!(codes(&faults), ["survey::option"]);
    // Too few points, all at one place, a damaged tile: a reason or nothing, and an end.
    let same = plain(&[(DVec3::new(1001.0, 2001.0, 30.0), 1); 500]);
    let got = things_above(&[("s.las", &same)], &level(), &ThingOptions::default()).unwrap();
    assert_eq!((got.things.len(), got.things[0].points), (1, 500));
    let lines = likely_conductors(&[("s.las", &same)], &level(), &ConductorOptions::default()).unwrap();
    assert_eq!(lines.spans, []);
    let cut = things_above(&[("c.las", &file[..file.len() / 2])], &level(), &ThingOptions::default()).unwrap_err();
    assert_eq!(codes(&cut), ["survey::truncated"]);
}

/// Points on `z = c·cosh(x/c)` between two places, `every` metres, with noise up to `noise`.
fn catenary(from: DVec3, to: DVec3, c: f64, every: f64, noise: f64, dice: &mut Dice) -> (Vec<(DVec3, u8)>, f64) {
    let length = from.truncate().distance(to.truncate());
    let half = length / 2.0;
    let sag = c * (libm::cosh(half / c) - 1.0);
    let mut jitter = |n: f64| (dice.below(2001) as f64 / 1000.0 - 1.0) * n;
    let points = (0..=(length / every) as usize)
        .map(|i| {
            let s = i as f64 * every;
            let hang = c * (libm::cosh((s - half) / c) - 1.0) - sag;
            let at = from.lerp(to, s / length) + DVec3::Z * hang;
            (at + DVec3::new(jitter(noise), jitter(noise), jitter(noise)), 1)
        })
        .collect();
    (points, sag)
}

/// Level ground, two houses with pitched roofs and trees, every class 0 or 1.
fn village(dice: &mut Dice) -> Vec<(DVec3, u8)> {
    let mut points = Vec::new();
    let mut roll = |span: f64| dice.below(100_000) as f64 / 100_000.0 * span;
    for _ in 0..20_000 {
        points.push((DVec3::new(1000.0 + roll(100.0), 2000.0 + roll(100.0), 10.0), 2));
    }
    for (x, y) in [(1015.0, 2020.0), (1060.0, 2070.0)] {
        for _ in 0..2500 {
            let (u, v) = (roll(12.0), roll(9.0));
            points.push((DVec3::new(x + u, y + v, 18.0 - (v - 4.5).abs() * 0.7 + roll(0.05)), 0));
        }
    }
    for _ in 0..12 {
        let crown = DVec3::new(1005.0 + roll(90.0), 2005.0 + roll(90.0), 14.0 + roll(4.0));
        for _ in 0..600 {
            let off = DVec3::new(roll(2.0) - 1.0, roll(2.0) - 1.0, roll(2.0) - 1.0);
            if off.length() <= 1.0 {
                points.push((crown + off * 3.0, 1));
            }
        }
    }
    points
}

fn lines_in(points: &[(DVec3, u8)]) -> Vec<LikelySpan> {
    let file = plain(points);
    let got = likely_conductors(&[("c.las", &file)], &level(), &ConductorOptions::default()).unwrap();
    assert_eq!(codes(&got.notes).len(), usize::from(!got.spans.is_empty()), "a suggestion comes with a warning");
    got.spans
}

#[test]
fn conductors_made_as_catenaries_are_suggested() {
    let mut dice = Dice(0xCA7E);
    let village = village(&mut dice);
    assert_eq!(lines_in(&village), [], "houses and trees hang nowhere");
    // One conductor slanting over the village, span 96 m, c = 400 m: sag 2.9 m.
    let (from, to) = (DVec3::new(1002.0, 2040.0, 27.0), DVec3::new(1096.0, 2060.0, 29.0));
    let (line, sag) = catenary(from, to, 400.0, 0.6, 0.04, &mut dice);
    let count = line.len() as f64;
    let mut points = village.clone();
    points.extend(line);
    let spans = lines_in(&points);
    assert_eq!(spans.len(), 1, "{spans:?}");
    let span = spans[0];
    let ends = |a: DVec3, b: DVec3| span.from.distance(a) + span.to.distance(b);
    assert!(ends(from, to).min(ends(to, from)) < 1.5, "{span:?}");
    // A parabola through a catenary of this sag is 2 mm off; the noise is 23 mm rms.
    near(span.sag, sag, 0.1, "sag");
    near(span.rms, 0.023, 0.01, "rms");
    assert!(span.points as f64 > 0.9 * count, "{} of {count}", span.points);
    near(span.span().sag, span.sag, 0.0, "as a span");
    // Three side by side, and one over another.
    let mut points = village;
    let mut sags = Vec::new();
    for (aside, up) in [(-1.0, 0.0), (0.0, 0.0), (1.0, 0.0), (0.0, -1.2)] {
        let shift = DVec3::new(-0.2 * aside, aside, up);
        let (line, sag) = catenary(from + shift, to + shift, 500.0, 0.5, 0.03, &mut dice);
        points.extend(line);
        sags.push(sag);
    }
    let spans = lines_in(&points);
    assert_eq!(spans.len(), 4, "{spans:?}");
    for span in spans {
        near(span.sag, sags[0], 0.15, "sag of one of four");
    }
}

#[test]
fn a_straight_rope_or_a_wall_is_no_conductor() {
    let mut points = Vec::new();
    for i in 0..200 {
        points.push((DVec3::new(1010.0 + f64::from(i) * 0.3, 2050.0, 20.0), 1));
    }
    for i in 0..6000 {
        points.push((DVec3::new(1010.0 + f64::from(i % 300) * 0.2, 2070.0, 14.5 + f64::from(i / 300) * 0.3), 1));
    }
    assert_eq!(lines_in(&points), []);
}

#[test]
fn regress_no_conductors_where_none_are() {
    if !present() {
        return;
    }
    let mut paths = vec![STBARTH.to_owned(), "pointcloud/delft_ahn3_east.laz".to_owned()];
    paths.extend(files("pointcloud/montpellier_block", &["laz"]));
    for path in paths {
        let options = ConductorOptions { cloud: in_metres(), ..ConductorOptions::default() };
        let file = bytes(&path);
        let got = likely_conductors(&[(path.as_str(), &file)], &ground_of(&path), &options).unwrap();
        assert_eq!(got.spans, [], "{path}");
    }
}

#[test]
fn val_planes_of_two_hills() {
    if !present() {
        return;
    }
    let cases = [
        ("pointcloud/formats/mountain_293m_utm42.las", 36.95, 60.0, 7.87, 0.005),
        ("pointcloud/hillside_370m_extrabytes.laz", 3.442, 151.5, 0.709, 0.0005),
    ];
    for (path, slope, azimuth, rms, digit) in cases {
        let ground = read_cloud(path, &bytes(path), &GroundOptions::default()).unwrap().ground;
        let plane = fit_plane(&ground).unwrap();
        near(plane.slope() * 100.0, slope, digit, path);
        near(plane.downhill_azimuth().unwrap(), azimuth, 0.05, path);
        near(plane.rms, rms, digit, path);
    }
}
