//! Grids and triangulations: exact on planes, honest about holes.

use geometry::{DVec2, DVec3};
use site::{Grid, Ground, GroundSource, Terrain, Tin, TinError};

#[test]
fn a_plane_of_points_gives_the_plane_everywhere() {
    let z = |x: f64, y: f64| 5.0 + 0.03 * x - 0.07 * y;
    // Eastings of a national grid: the digits must not be lost.
    let (e, n) = (564_000.0, 6_146_000.0);
    let points: Vec<DVec3> = (0..400)
        .map(|i| (f64::from(i % 20) * 1.3, f64::from(i / 20) * 0.9))
        .map(|(x, y)| DVec3::new(e + x, n + y, z(x, y)))
        .collect();
    let tin = Tin::new(&points, 3.0).unwrap();
    for i in 0..1000 {
        let (x, y) = (f64::from(i % 37) * 0.66, f64::from(i % 53) * 0.32);
        let got = tin.height(DVec2::new(e + x, n + y)).unwrap();
        assert!((got - z(x, y)).abs() < 1e-6, "{x} {y}: {got}");
    }
}

#[test]
fn long_triangles_are_holes_and_outside_is_unknown() {
    let mut points = Vec::new();
    for x in 0..10 {
        for y in 0..3 {
            points.push(DVec3::new(f64::from(x), f64::from(y), 1.0));
            points.push(DVec3::new(f64::from(x), f64::from(y) + 20.0, 1.0));
        }
    }
    let tin = Tin::new(&points, 2.0).unwrap();
    assert_eq!(tin.height(DVec2::new(4.5, 1.5)), Some(1.0));
    assert_eq!(tin.height(DVec2::new(4.5, 10.0)), None, "between two far strips");
    assert_eq!(tin.height(DVec2::new(-1.0, 1.0)), None);
    assert_eq!(tin.height(DVec2::new(f64::NAN, 1.0)), None);
    assert_eq!(tin.height(DVec2::new(4.5, 2.0)), Some(1.0), "on the edge of a hole the known side answers");
}

#[test]
fn what_makes_no_surface_is_said() {
    let line: Vec<DVec3> = (0..5).map(|i| DVec3::new(f64::from(i), f64::from(i), 0.0)).collect();
    assert_eq!(Tin::new(&line, 10.0).unwrap_err(), TinError::TooFewPoints);
    assert_eq!(Tin::new(&[], 10.0).unwrap_err(), TinError::TooFewPoints);
    let bad = [DVec3::ZERO, DVec3::new(f64::NAN, 0.0, 0.0), DVec3::Y];
    assert_eq!(Tin::new(&bad, 10.0).unwrap_err(), TinError::BadCoordinate { index: 1 });
}

#[test]
fn an_unknown_cell_is_unknown_and_the_next_surface_may_know() {
    let mut heights = vec![2.0_f32; 25];
    heights[12] = f32::NAN;
    let grid = Grid { north_west: DVec2::new(0.0, 4.0), cell: DVec2::ONE, rows: 5, cols: 5, heights };
    assert_eq!(grid.height(DVec2::new(2.0, 2.0)), None);
    assert_eq!(grid.height(DVec2::new(2.4, 2.4)), None, "any of the four that counts");
    assert_eq!(grid.height(DVec2::new(3.0, 2.0)), Some(2.0), "exactly on a known neighbour");
    assert_eq!(grid.height(DVec2::new(4.0, 0.0)), Some(2.0), "last row and column stay known");
    let flat: Vec<DVec3> =
        [[0.0, 0.0], [4.0, 0.0], [4.0, 4.0], [0.0, 4.0]].map(|p| DVec3::new(p[0], p[1], 7.0)).to_vec();
    let source = |name: &str, terrain| GroundSource { name: name.into(), terrain, accuracy: 0.05, date: None };
    let ground = Ground {
        surfaces: vec![
            source("grid", Terrain::Grid(grid)),
            source("levels", Terrain::Tin(Tin::new(&flat, 10.0).unwrap())),
        ],
    };
    let (z, from) = ground.height(DVec2::new(2.0, 2.0)).unwrap();
    assert_eq!((z, from.name.as_str()), (7.0, "levels"));
}
