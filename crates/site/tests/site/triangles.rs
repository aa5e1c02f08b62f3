//! Surfaces of triangles: against every triangle asked in turn, against SciPy, and odd faces.

use geometry::{DVec2, DVec3};
use site::{Ring, RingKind, Tin, TinDoubts, TinError};

/// Small seeded generator (splitmix64).
struct Dice(u64);
impl Dice {
    fn unit(&mut self) -> f64 {
        self.0 = self.0.wrapping_add(0x9E37_79B9_7F4A_7C15);
        let mut z = self.0;
        z = (z ^ (z >> 30)).wrapping_mul(0xBF58_476D_1CE4_E5B9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94D0_49BB_1331_11EB);
        ((z ^ (z >> 31)) >> 11) as f64 / (1_u64 << 53) as f64
    }
    fn place(&mut self, size: f64) -> DVec2 {
        DVec2::new(self.unit(), self.unit()) * size
    }
}

/// Height by asking every triangle; `Err` for a place nearer than a micrometre to an edge, where
/// round-off may decide.
fn by_brute_force(tin: &Tin, at: DVec2) -> Result<Option<f64>, ()> {
    let mut found = None;
    for [a, b, c] in tin.triangles() {
        let edges = [(a, b), (b, c), (c, a)].map(|(p, q)| {
            let along = (q - p).truncate();
            along.perp_dot(at - p.truncate()) / along.length()
        });
        let least = edges.into_iter().fold(f64::INFINITY, f64::min);
        if least.abs() < 1e-6 {
            return Err(());
        }
        if least > 0.0 {
            let normal = (b - a).cross(c - a);
            found = Some(a.z - normal.truncate().dot(at - a.truncate()) / normal.z);
        }
    }
    Ok(found)
}

fn clouds(dice: &mut Dice) -> Vec<(Tin, f64)> {
    let mut made = Vec::new();
    for round in 0..12 {
        let size = [30.0, 400.0, 3.0][round % 3];
        let origin = [DVec2::ZERO, DVec2::new(24_525_000.0, 6_876_000.0)][round % 2];
        let points: Vec<DVec3> = (0..300)
            .map(|i| {
                // Rows of needles, clusters, and evenly spread.
                let at = match round % 4 {
                    0 => DVec2::new(dice.unit(), f64::from(i % 4) / 4.0) * size,
                    1 if i % 2 == 0 => dice.place(size / 50.0),
                    2 => DVec2::new(f64::from(i % 20), f64::from(i / 20)) * size / 20.0,
                    _ => dice.place(size),
                };
                (origin + at).extend(10.0 * dice.unit())
            })
            .collect();
        made.push((Tin::new(&points, size / [3.0, 100.0][round / 6]).unwrap(), size));
    }
    made
}

#[test]
fn heights_are_those_of_the_triangle_found_by_asking_all() {
    let mut dice = Dice(7);
    let (mut known, mut holes) = (0, 0);
    for (tin, size) in clouds(&mut dice) {
        let (low, _) = tin.bounds().unwrap();
        for _ in 0..400 {
            let at = low + dice.place(size * 1.1) - DVec2::splat(size * 0.05);
            let Ok(expected) = by_brute_force(&tin, at) else { continue };
            match (tin.height(at), expected) {
                (Some(got), Some(z)) => {
                    // Needles are steep: a step of a coordinate in the millions is 4e-9 m.
                    assert!((got - z).abs() < 1e-4, "{at}: {got} for {z}");
                    known += 1;
                }
                (None, None) => holes += 1,
                (got, z) => panic!("{at}: {got:?} for {z:?}"),
            }
        }
    }
    assert!(known > 1000 && holes > 1000, "{known} known, {holes} holes");
}

#[test]
fn corners_and_edges_of_every_triangle_are_known() {
    let mut dice = Dice(8);
    let mut asked = 0;
    for (tin, _) in clouds(&mut dice) {
        for corners in tin.triangles() {
            for i in 0..3 {
                let (p, q) = (corners[i], corners[(i + 1) % 3]);
                let z = tin.height(p.truncate()).unwrap_or_else(|| panic!("corner {p}"));
                assert!((z - p.z).abs() < 1e-4, "{p}: {z}");
                let on = p.lerp(q, dice.unit());
                let z = tin.height(on.truncate()).unwrap_or_else(|| panic!("edge at {on}"));
                assert!((z - on.z).abs() < 1e-3, "{on}: {z}");
                asked += 1;
            }
        }
    }
    assert!(asked > 5000, "{asked}");
}

#[test]
fn val_tin_scipy() {
    const DIGITS: f64 = 1e-6; // heights are printed to 1e-9; coordinates of 24.5 million come in steps of 4e-9
    let text = include_str!("../../../../validation/tin/scipy_heights.csv");
    let rows = |kind: &str| -> Vec<(DVec2, Option<f64>)> {
        let row = |l: &str| {
            let f: Vec<&str> = l.split(',').collect();
            (f[0] == kind).then(|| (DVec2::new(f[1].parse().unwrap(), f[2].parse().unwrap()), f[3].parse().ok()))
        };
        text.lines().skip(1).filter_map(row).collect()
    };
    let points: Vec<DVec3> = rows("p").into_iter().map(|(at, z)| at.extend(z.unwrap())).collect();
    let places = rows("q");
    assert_eq!((points.len(), places.len()), (600, 800), "a reference case went missing");
    let tin = Tin::new(&points, f64::INFINITY).unwrap();
    let mut known = 0;
    for (at, expected) in places {
        match (tin.height(at), expected) {
            (Some(got), Some(z)) => {
                assert!((got - z).abs() < DIGITS, "{at}: {got}, SciPy {z}");
                known += 1;
            }
            (None, None) => {}
            (got, z) => panic!("{at}: {got:?}, SciPy {z:?}"),
        }
    }
    assert!(known >= 500, "{known}");
}

fn v(x: f64, y: f64, z: f64) -> DVec3 {
    DVec3::new(x, y, z)
}

#[test]
fn the_last_of_two_points_at_one_place_stands() {
    let points = [v(0.0, 0.0, 1.0), v(4.0, 0.0, 1.0), v(0.0, 4.0, 1.0), v(4.0, 0.0, 3.0)];
    assert_eq!(Tin::new(&points, 10.0).unwrap().height(DVec2::new(4.0, 0.0)), Some(3.0));
    let tin = Tin::with_breaklines(&points, &[vec![v(0.0, 4.0, 9.0), v(0.0, 0.0, 7.0)]], 10.0).unwrap();
    let heights = [[4.0, 0.0], [0.0, 4.0], [0.0, 0.0]].map(|p| tin.height(DVec2::from_array(p)).unwrap());
    assert_eq!((heights, tin.len()), ([3.0, 9.0, 7.0], 3), "breaklines come after points");
}

#[test]
fn a_breakline_is_an_edge_and_a_crossing_one_is_counted() {
    // A kerb 0.2 m high whose points lie far apart, with points of the road close beside it.
    let mut points = Vec::new();
    for i in 0..=20 {
        points.push(v(f64::from(i), 0.7, 0.0));
        points.push(v(f64::from(i), -0.7, 0.2));
    }
    let kerb = [vec![v(0.0, 0.1, 0.0), v(20.0, 0.1, 0.0)], vec![v(0.0, 0.0, 0.2), v(20.0, 0.0, 0.2)]];
    let tin = Tin::with_breaklines(&points, &kerb, 30.0).unwrap();
    for i in 0..200 {
        let x = f64::from(i) / 10.0;
        for (y, z) in [(0.0, 0.2), (0.1, 0.0), (0.05, 0.1), (0.4, 0.0), (-0.3, 0.2)] {
            let got = tin.height(DVec2::new(x, y)).unwrap();
            assert!((got - z).abs() < 1e-9, "{x} {y}: {got}");
        }
    }
    assert_eq!(tin.doubts(), TinDoubts::default());
    let across = [kerb[0].clone(), vec![v(5.0, -5.0, 3.0), v(5.0, 5.0, 3.0)], vec![v(5.0, 5.0, 3.0), v(9.0, 5.0, 3.0)]];
    let tin = Tin::with_breaklines(&points, &across, 30.0).unwrap();
    assert_eq!(tin.doubts().crossing, 1);
    assert_eq!(tin.height(DVec2::new(5.0, 0.1)), Some(0.0), "the first one stands");
    assert_eq!(tin.height(DVec2::new(5.0, 5.0)), Some(3.0), "points stay");
}

#[test]
fn rings_bound_the_surface() {
    let points: Vec<DVec3> = (0..441).map(|i| v(f64::from(i % 21), f64::from(i / 21), 5.0)).collect();
    let square = |kind, low: f64, high: f64| Ring {
        kind,
        corners: [[low, low], [high, low], [high, high], [low, high], [low, low]].map(DVec2::from_array).to_vec(),
    };
    let rings =
        [square(RingKind::Outer, 1.0, 19.0), square(RingKind::Void, 5.0, 15.0), square(RingKind::Island, 8.0, 12.0)];
    let tin = Tin::with_rings(&points, &[], &rings, 2.0).unwrap();
    assert!((tin.plan_area() - (18.0 * 18.0 - 100.0 + 16.0)).abs() < 1e-9);
    let known = [0.5, 3.5, 6.5, 9.5].map(|c| tin.height(DVec2::splat(c)).is_some());
    assert_eq!(known, [false, true, false, true]);
}

#[test]
fn random_breaklines_never_panic() {
    let mut dice = Dice(9);
    for _ in 0..150 {
        // Whole numbers: lines through points, along each other, of no length.
        let mut place = |size: f64| v((dice.unit() * size).floor(), (dice.unit() * size).floor(), dice.unit());
        let points: Vec<DVec3> = (0..30).map(|_| place(12.0)).collect();
        let lines: Vec<Vec<DVec3>> = (0..8).map(|_| (0..4).map(|_| place(12.0)).collect()).collect();
        let tin = Tin::with_breaklines(&points, &lines, 100.0).unwrap();
        // However many lines are left out, the triangles fill the hull without a gap.
        let plain: Vec<DVec3> = points.iter().chain(lines.iter().flatten()).copied().collect();
        assert!((tin.plan_area() - Tin::new(&plain, 100.0).unwrap().plan_area()).abs() < 1e-6);
    }
}

#[test]
fn faces_stand_as_given_and_odd_ones_are_counted() {
    let points =
        [v(0.0, 0.0, 0.0), v(4.0, 0.0, 0.0), v(4.0, 4.0, 0.0), v(0.0, 4.0, 0.0), v(4.0, 0.0, 3.0), v(2.0, 2.0, 0.0)];
    let faces = [
        [0, 2, 1], // clockwise
        [1, 2, 0], // again
        [0, 2, 3],
        [1, 4, 2], // upright
        [0, 0, 1], // a corner twice
        [0, 5, 2], // in line
    ];
    let tin = Tin::from_faces(&points, &faces).unwrap();
    assert_eq!(tin.doubts(), TinDoubts { upright: 3, repeated: 1, ..TinDoubts::default() });
    assert_eq!((tin.triangles().count(), tin.len(), tin.plan_area()), (2, 6, 16.0));
    assert_eq!(tin.height(DVec2::new(2.0, 2.0)), Some(0.0));
    assert_eq!(Tin::from_faces(&points, &[[0, 1, 9]]).unwrap_err(), TinError::BadFace { index: 0 });
    assert_eq!(Tin::from_faces(&points, &[[0, 5, 2]]).unwrap_err(), TinError::NoFaces);
    assert_eq!(Tin::from_faces(&[v(0.0, f64::NAN, 0.0)], &[]).unwrap_err(), TinError::BadCoordinate { index: 0 });
}

#[test]
fn faces_that_cover_each_other_agree_or_nothing_is_known() {
    let mut points: Vec<DVec3> = (0..121).map(|i| v(f64::from(i % 11), f64::from(i / 11), 1.0)).collect();
    let mut faces = Vec::new();
    for c in 0..10_u32 {
        for r in 0..10_u32 {
            let i = r * 11 + c;
            faces.extend([[i, i + 1, i + 12], [i, i + 12, i + 11]]);
        }
    }
    assert_eq!(Tin::from_faces(&points, &faces).unwrap().doubts(), TinDoubts::default());
    // One large face over a part, 5 mm above at one end and 0.5 m at the other.
    points.extend([v(2.1, 2.2, 1.002), v(7.3, 2.2, 1.5), v(2.1, 7.7, 1.002)]);
    faces.push([121, 122, 123]);
    let tin = Tin::from_faces(&points, &faces).unwrap();
    assert_eq!((tin.doubts().overlapping, tin.doubts().overlaps_uncounted), (1, false));
    assert_eq!(tin.height(DVec2::new(1.05, 2.4)), Some(1.0));
    assert!(tin.height(DVec2::new(2.15, 3.4)).is_some(), "they agree");
    assert_eq!(tin.height(DVec2::new(6.15, 2.4)), None, "half a metre apart");
}

#[test]
fn parts_open_again_as_the_same_surface() {
    let mut dice = Dice(10);
    for (tin, size) in clouds(&mut dice) {
        let parts = tin.parts();
        let again =
            Tin::from_parts(parts.origin, parts.points.to_vec(), parts.triangles.to_vec(), parts.doubts).unwrap();
        assert_eq!(again.parts(), parts);
        let (low, _) = tin.bounds().unwrap();
        for _ in 0..50 {
            let at = low + dice.place(size);
            assert_eq!(again.height(at), tin.height(at));
        }
    }
    let square = vec![v(0.0, 0.0, 0.0), v(1.0, 0.0, 0.0), v(1.0, 1.0, 0.0)];
    let open = |points: &[DVec3], t: [u32; 3]| {
        Tin::from_parts(DVec2::ZERO, points.to_vec(), vec![t], TinDoubts::default()).map(|t| t.len())
    };
    assert_eq!(open(&square, [0, 1, 2]), Ok(3));
    assert_eq!(open(&square, [0, 2, 1]), Err(TinError::BadFace { index: 0 }));
    assert_eq!(open(&square, [0, 1, 3]), Err(TinError::BadFace { index: 0 }));
    assert_eq!(open(&[v(0.0, 0.0, f64::INFINITY)], [0, 0, 0]), Err(TinError::BadCoordinate { index: 0 }));
}

#[test]
fn areas_and_slope_of_a_roof() {
    // Two planes of 3 in 4 against each other: each 5 long on the slope, 10 wide.
    let points =
        [v(0.0, 0.0, 0.0), v(10.0, 0.0, 0.0), v(10.0, 4.0, 3.0), v(0.0, 4.0, 3.0), v(10.0, 8.0, 0.0), v(0.0, 8.0, 0.0)];
    let tin = Tin::from_faces(&points, &[[0, 1, 2], [0, 2, 3], [3, 2, 4], [3, 4, 5]]).unwrap();
    assert_eq!((tin.plan_area(), tin.surface_area()), (80.0, 100.0));
    assert!((tin.mean_slope().unwrap() - 0.75).abs() < 1e-12);
}
