//! Relief of made grids: exact on planes, honest about holes, whole lines.

use geometry::{DVec2, DVec3};
use site::{
    Grid, Ground, GroundSource, Sun, Terrain, Tin, aspects, contours, hillshade, round_levels, slope_classes, slopes,
};
use std::f64::consts::{FRAC_PI_2, PI, TAU};

fn made(rows: usize, cols: usize, cell: DVec2, z: impl Fn(f64, f64) -> f64) -> Grid {
    let north_west = DVec2::new(100.0, 500.0);
    let at = |i: usize| ((i % cols) as f64 * cell.x, -((i / cols) as f64) * cell.y);
    let heights = (0..rows * cols).map(|i| z(at(i).0, at(i).1) as f32).collect();
    Grid { north_west, cell, rows, cols, heights }
}

#[test]
fn a_plane_has_its_slope_direction_and_light_everywhere() {
    // East 3 %, north 4 %: 5 % uphill to the north-east, and down to the south-west.
    let grid = made(6, 9, DVec2::new(2.0, 0.5), |x, y| 0.03 * x + 0.04 * y);
    let inner = |values: Vec<f32>| -> Vec<f64> {
        assert_eq!(values.len(), 54);
        values.into_iter().filter(|v| v.is_finite()).map(f64::from).collect()
    };
    let slope = inner(slopes(&grid));
    assert_eq!(slope.len(), 4 * 7, "the rim has none");
    assert!(slope.iter().all(|s| (s - 0.05).abs() < 1e-6), "{slope:?}");
    let down = PI + libm::atan2(0.03, 0.04);
    assert!(inner(aspects(&grid)).iter().all(|a| (a - down).abs() < 1e-5));
    // Light by hand: normal (-0.03, -0.04, 1) and sun (-½, ½, √½).
    let by_hand = (0.5 * 0.03 - 0.5 * 0.04 + 0.5_f64.sqrt()) / 1.0025_f64.sqrt();
    assert!(inner(hillshade(&grid, Sun::default())).iter().all(|s| (s - by_hand).abs() < 1e-6));
}

#[test]
fn downhill_by_the_compass() {
    for (east, north, expected) in [(0.0, -0.1, 0.0), (-0.1, 0.0, FRAC_PI_2), (0.0, 0.1, PI), (0.1, 0.0, 1.5 * PI)] {
        let grid = made(3, 3, DVec2::ONE, |x, y| east * x + north * y);
        let got = f64::from(aspects(&grid)[4]);
        assert!((got - expected).abs() < 1e-6 && got < TAU, "{east} {north}: {got}");
    }
    let level = made(3, 3, DVec2::ONE, |_, _| 7.0);
    assert!(aspects(&level)[4].is_nan(), "level ground falls nowhere");
    assert_eq!(slopes(&level)[4], 0.0);
}

#[test]
fn ground_turned_from_the_sun_is_dark_and_not_less() {
    let steep = made(3, 3, DVec2::ONE, |x, y| 5.0 * (y - x));
    assert_eq!(hillshade(&steep, Sun::default())[4], 0.0);
    let shade = hillshade(&steep, Sun { azimuth: 135.0_f64.to_radians(), altitude: 10.0_f64.to_radians() })[4];
    assert!(shade > 0.9, "{shade}");
}

#[test]
fn nine_cells_lose_their_slope_by_one_hole() {
    let mut grid = made(7, 7, DVec2::ONE, |x, _| x);
    grid.heights[3 * 7 + 3] = f32::NAN;
    for values in [slopes(&grid), hillshade(&grid, Sun::default())] {
        assert_eq!(values.iter().filter(|v| v.is_finite()).count(), 25 - 9);
    }
    grid.heights[3 * 7 + 3] = f32::INFINITY;
    assert_eq!(slopes(&grid).iter().filter(|v| v.is_finite()).count(), 25 - 9);
    for (rows, cols) in [(0, 0), (1, 5), (5, 2)] {
        let small = made(rows, cols, DVec2::ONE, |x, y| x + y);
        assert!(slopes(&small).iter().all(|v| v.is_nan()));
        assert_eq!(contours(&small, &[0.5]).len(), 1);
    }
}

#[test]
fn classes_count_the_limits_that_are_passed() {
    let classes = slope_classes(&[0.0, 0.05, 0.051, 0.2, f32::NAN], &[0.05, 0.10]);
    assert_eq!(classes, [Some(0), Some(0), Some(1), Some(2), None]);
}

#[test]
fn contours_of_a_cone_are_closed_rings_of_its_radius() {
    let grid = made(201, 201, DVec2::splat(0.5), |x, y| 20.0 - libm::hypot(x - 50.0, y + 50.0));
    let all = contours(&grid, &round_levels(-15.0, 19.0, 5.0, 100));
    let levels: Vec<f64> = all.iter().map(|c| c.level).collect();
    assert_eq!(levels, [-15.0, -10.0, -5.0, 0.0, 5.0, 10.0, 15.0]);
    for contour in &all {
        let radius = 20.0 - contour.level;
        assert_eq!(contour.lines.len(), 1);
        let line = &contour.lines[0];
        assert!(line.closed && (line.length() / (TAU * radius) - 1.0).abs() < 0.002, "{radius}: {}", line.length());
        // Higher ground, the middle, on the left.
        let middle = grid.north_west + DVec2::new(50.0, -50.0);
        for w in line.points.windows(2) {
            assert!((w[1] - w[0]).perp_dot(middle - w[0]) > 0.0);
            assert!((w[0].distance(middle) - radius).abs() < 0.01);
        }
    }
}

#[test]
fn a_saddle_is_joined_by_its_mean() {
    // North-west and south-east high; the mean is 0.6.
    let grid = |low: f64| made(2, 2, DVec2::ONE, |x, y| if (x > 0.5) == (y < -0.5) { 1.2 } else { low });
    let lines = |low: f64, level: f64| contours(&grid(low), &[level])[0].lines.clone();
    let ends = |low: f64, level: f64| {
        let mut out: Vec<bool> = lines(low, level)
            .iter()
            // The piece cuts off the corner that it is nearer to; x − y at the middle tells which.
            .map(|l| {
                let m = (l.points[0] + l.points[1]) / 2.0 - DVec2::new(100.5, 499.5);
                m.x * -m.y > 0.0
            })
            .collect();
        out.dedup();
        out
    };
    assert_eq!(lines(0.0, 0.5).len(), 2);
    assert_eq!(ends(0.0, 0.5), [false], "mean above: the low corners are cut off");
    assert_eq!(ends(0.0, 0.7), [true], "mean below: the high corners are cut off");
}

#[test]
fn lines_end_at_holes_and_at_the_rim() {
    let mut grid = made(11, 11, DVec2::ONE, |_, y| y + 5.2);
    let whole = contours(&grid, &[0.0])[0].clone();
    assert_eq!((whole.lines.len(), whole.lines[0].closed), (1, false));
    assert!((whole.lines[0].length() - 10.0).abs() < 1e-6);
    grid.heights[5 * 11 + 5] = f32::NAN;
    let broken = contours(&grid, &[0.0])[0].clone();
    assert_eq!(broken.lines.len(), 2);
    let length: f64 = broken.lines.iter().map(site::ContourLine::length).sum();
    assert!((length - 8.0).abs() < 1e-6, "{length}");
}

#[test]
fn every_line_of_rough_ground_is_closed_or_ends_at_the_rim() {
    let mut state = 7_u64;
    let mut random = || {
        state ^= state << 13;
        state ^= state >> 7;
        state ^= state << 17;
        (state % 7) as f32
    };
    for _ in 0..40 {
        let mut grid = made(13, 17, DVec2::ONE, |_, _| 0.0);
        // Whole heights and whole levels: every cell may lie at a level.
        for z in &mut grid.heights {
            *z = random();
        }
        for contour in contours(&grid, &[0.0, 1.0, 2.5, 3.0, 6.0, f64::NAN]) {
            for line in contour.lines {
                let rim = |p: DVec2| p.x == 100.0 || p.x == 116.0 || p.y == 500.0 || p.y == 488.0;
                let ends = [line.points[0], line.points[line.points.len() - 1]];
                assert!(line.closed || ends.iter().all(|p| rim(*p)), "{line:?}");
            }
        }
    }
}

#[test]
fn levels_are_bounded() {
    assert_eq!(round_levels(0.3, 1.0, 0.25, 10), [0.5, 0.75, 1.0]);
    assert_eq!(round_levels(0.0, 1e9, 0.001, 5).len(), 5);
    for (low, high, step) in [(0.0, 1.0, 0.0), (f64::NAN, 1.0, 1.0), (0.0, f64::INFINITY, 1.0), (2.0, 1.0, 1.0)] {
        assert!(round_levels(low, high, step, 5).is_empty());
    }
}

#[test]
fn a_triangulation_read_off_keeps_its_heights_and_holes_and_its_bound() {
    let points: Vec<DVec3> = (0..441)
        .map(|i| DVec2::new(f64::from(i % 21), f64::from(i / 21)))
        .filter(|p| p.distance(DVec2::splat(10.0)) > 3.0)
        .map(|p| p.extend(0.1 * p.x - 0.2 * p.y))
        .collect();
    let terrain = Terrain::Tin(Tin::new(&points, 1.6).unwrap());
    let grid = Grid::from_terrain(&terrain, None, 0.5, 10_000).unwrap();
    assert_eq!((grid.rows, grid.cols, grid.north_west), (41, 41, DVec2::new(0.0, 20.0)));
    for (row, col) in [(0, 0), (3, 17), (40, 40)] {
        let (x, y) = (col as f64 * 0.5, 20.0 - row as f64 * 0.5);
        assert!((grid.cell(row, col).unwrap() - (0.1 * x - 0.2 * y)).abs() < 1e-5);
    }
    assert_eq!(grid.cell(20, 20), None, "the hole stays");
    assert!(Grid::from_terrain(&terrain, None, 1e-9, 500).unwrap().heights.len() <= 500);
    assert!(Grid::from_terrain(&terrain, None, 0.0, 500).is_none());
    assert!(Grid::from_terrain(&terrain, None, f64::NAN, 500).is_none());
    assert!(Grid::from_ground(&Ground::default(), None, 1.0, 500).is_none());
    let source = GroundSource { name: "made".into(), terrain, accuracy: 0.1, date: None };
    let ground = Ground { surfaces: vec![source] };
    let window = (DVec2::splat(2.0), DVec2::splat(4.0));
    let part = Grid::from_ground(&ground, Some(window), 1.0, 500).unwrap();
    assert_eq!((part.rows, part.cols), (3, 3));
    let (low, high) = part.height_range().unwrap();
    assert!((low + 0.6).abs() < 1e-5 && high.abs() < 1e-5, "{low} {high}");
}
