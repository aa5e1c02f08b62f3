//! Slope, downhill direction, shade and contours of real grids, against GDAL and contourpy
//! (`validation/relief/relief.py`).

use crate::reference::{bytes, present, table};
use geometry::{DVec2, DVec3, Segment, distance_point_segment};
use site::{Grid, SlopeStatistics, Sun, Terrain, aspects, contours, hillshade, slopes};
use std::collections::BTreeMap;
use survey::{GroundOptions, read_ground};

/// Percent. GDAL sums heights in single precision before it takes differences.
const SLOPE: f64 = 0.02;
/// Statistics over all cells, percent.
const MEAN: f64 = 0.001;
/// Half a step of GDAL's 1 to 255, and as much for single precision.
const SHADE: f64 = 1.0;
/// Lengths of contours, relative.
const LENGTH: f64 = 1e-5;

fn grid(path: &str) -> Grid {
    let path = format!("terrain/{path}");
    match read_ground(&path, &bytes(&path), &GroundOptions::default()).unwrap().terrain {
        Terrain::Grid(grid) => grid,
        Terrain::Tin(_) => panic!("a grid was expected"),
    }
}

/// Rows of a table by file, in which nothing went missing.
fn by_file(name: &str, rows: usize) -> BTreeMap<String, Vec<Vec<f64>>> {
    let table = table(&format!("relief/{name}.csv"));
    assert_eq!(table.len(), rows, "a reference row went missing");
    let mut out: BTreeMap<String, Vec<Vec<f64>>> = BTreeMap::new();
    for row in table {
        let numbers = row[1..].iter().map(|v| v.parse().unwrap_or(f64::NAN)).collect();
        out.entry(row[0].clone()).or_default().push(numbers);
    }
    assert_eq!(out.len(), 8, "a reference file went missing");
    out
}

fn near(got: f64, expected: f64, tolerance: f64, what: &str) {
    assert!((got - expected).abs() <= tolerance, "{what}: got {got}, expected {expected} ± {tolerance}");
}

#[test]
fn val_relief_of_eight_grids_against_gdal() {
    if !present() {
        return;
    }
    let statistics = by_file("statistics", 8);
    let cells = by_file("cells", 2225);
    for (path, all) in &statistics {
        let grid = grid(path);
        let [count, mean, deviation, steepest, row, col, mean_shade] = all[0][..] else { panic!("seven numbers") };
        let own = SlopeStatistics::of(&grid).unwrap();
        assert_eq!(own.cells() as f64, count, "{path}");
        near(own.mean * 100.0, mean, MEAN, path);
        near(own.deviation * 100.0, deviation, MEAN, path);
        near(own.steepest() * 100.0, steepest, SLOPE, path);
        assert_eq!(own.steepest_at, (row as usize, col as usize), "{path}");
        let (slope, aspect, shade) = (slopes(&grid), aspects(&grid), hillshade(&grid, Sun::default()));
        let gray = |v: f32| 1.0 + 254.0 * f64::from(v);
        let known: Vec<f64> = shade.iter().filter(|v| v.is_finite()).map(|v| gray(*v).round()).collect();
        near(known.iter().sum::<f64>() / known.len() as f64, mean_shade, 0.05, path);
        for cell in &cells[path] {
            let [row, col, slope_percent, aspect_degrees, gray_expected] = cell[..] else { panic!("five numbers") };
            let i = row as usize * grid.cols + col as usize;
            let what = format!("{path} row {row} col {col}");
            assert_eq!(slope[i].is_nan(), slope_percent.is_nan(), "{what}: known here and not there");
            assert_eq!(shade[i].is_nan(), gray_expected.is_nan(), "{what}: shaded here and not there");
            if slope_percent.is_nan() {
                continue;
            }
            near(f64::from(slope[i]) * 100.0, slope_percent, SLOPE, &what);
            near(gray(shade[i]), gray_expected, SHADE, &what);
            // The gentler, the less the direction is told by single precision. GDAL leaves out that
            // cells may not be square, which is 0.02° where they are not.
            if aspect_degrees.is_nan() {
                assert!(f64::from(slope[i]) * 100.0 < SLOPE, "{what}: level there");
            } else if slope_percent > SLOPE {
                let turn = f64::from(aspect[i]).to_degrees() - aspect_degrees;
                let turn = (turn + 540.0).rem_euclid(360.0) - 180.0;
                near(turn, 0.0, 0.02 + (SLOPE / slope_percent).atan().to_degrees(), &what);
            }
        }
    }
}

#[test]
fn val_contours_against_contourpy_and_gdal() {
    if !present() {
        return;
    }
    let (mut points, mut off) = (0, 0);
    for (path, rows) in by_file("contours", 88) {
        let grid = grid(&path);
        let cell = grid.cell.max_element();
        let levels: Vec<f64> = rows.iter().map(|row| row[0]).collect();
        for (contour, row) in contours(&grid, &levels).iter().zip(&rows) {
            let what = format!("{path} {} m", row[0]);
            assert_eq!(contour.level, row[0], "{what}");
            let length: f64 = contour.lines.iter().map(site::ContourLine::length).sum();
            near(length, row[1], row[1] * LENGTH + 1e-3, &what);
            // GDAL joins saddles otherwise: a cell or so each.
            if row[2].is_finite() {
                near(length, row[2], row[2] * 0.015 + cell, &what);
            }
            let flat = |p: DVec2| DVec3::new(p.x, p.y, 0.0);
            let pieces: Vec<Segment> = contour
                .lines
                .iter()
                .flat_map(|line| {
                    let close = line.closed.then(|| (line.points[line.points.len() - 1], line.points[0]));
                    line.points.windows(2).map(|w| (w[0], w[1])).chain(close)
                })
                .map(|(a, b)| Segment { a: flat(a), b: flat(b) })
                .collect();
            for p in row[3..].chunks_exact(2) {
                let at = flat(DVec2::new(p[0], p[1]));
                let away = pieces.iter().map(|s| distance_point_segment(at, s)).fold(f64::INFINITY, f64::min);
                assert!(away <= cell, "{what}: {at} lies {away} m from our line");
                points += 1;
                off += usize::from(away > 0.001);
            }
        }
    }
    assert_eq!(points, 88 * 3);
    assert!(off * 20 <= points, "{off} of {points} points lie in saddles joined otherwise");
}
