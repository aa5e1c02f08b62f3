//! Slope with hillshade, and contours, of 1,000 × 1,000 cells made here, as a ratio to GDAL in
//! memory and to NumPy and contourpy in the same run (`validation/relief/peer.py`). Best of five
//! each, and both sides' results are compared. What is missing is left out and said.

#![allow(
    clippy::unwrap_used,
    clippy::print_stdout,
    clippy::disallowed_methods,
    reason = "a bench measures time and prints its result"
)]

use geometry::DVec2;
use site::{ContourLine, Grid, Sun, contours, hillshade, round_levels, slopes};
use std::path::PathBuf;
use std::process::Command;
use std::time::Instant;

const ROUNDS: usize = 5;
const SIDE: usize = 1000;
const STEP: f64 = 1.0;

fn main() {
    // Tests build and start every target; only `cargo bench` says so.
    if !std::env::args().any(|a| a == "--bench") {
        return;
    }
    let z = |i: usize| {
        let (x, y) = ((i % SIDE) as f64, (i / SIDE) as f64);
        200.0 + 25.0 * (x / 90.0).sin() * (y / 70.0).cos() + 2.0 * (x / 7.0).sin() + 0.01 * x + 0.0003
    };
    let heights: Vec<f32> = (0..SIDE * SIDE).map(|i| z(i) as f32).collect();
    let grid = Grid { north_west: DVec2::ZERO, cell: DVec2::ONE, rows: SIDE, cols: SIDE, heights };
    let (relief, (slope, shade)) = best(|| (slopes(&grid), hillshade(&grid, Sun::default())));
    assert!(shade.iter().filter(|v| v.is_finite()).count() == (SIDE - 2) * (SIDE - 2));
    let known: Vec<f64> = slope.iter().filter(|v| v.is_finite()).map(|v| f64::from(*v)).collect();
    let mean = known.iter().sum::<f64>() / known.len() as f64;
    let (low, high) = grid.height_range().unwrap();
    let levels = round_levels(low, high, STEP, 1000);
    let (lines, found) = best(|| contours(&grid, &levels));
    let length: f64 = found.iter().flat_map(|c| &c.lines).map(ContourLine::length).sum();
    println!("slope and hillshade: {:.2} ms; contours: {:.1} ms, {length:.0} m", relief * 1e3, lines * 1e3);

    let path = std::env::temp_dir().join("counterpoise-bench-relief.f32");
    let bytes: Vec<u8> = grid.heights.iter().flat_map(|z| z.to_le_bytes()).collect();
    std::fs::write(&path, bytes).unwrap();
    let script = PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("../../validation/relief/peer.py");
    let python = std::env::var("PYTHON").unwrap_or_else(|_| "python3".to_owned());
    let side = SIDE.to_string();
    let output = Command::new(python).arg(script).arg(&path).args([&side, &side, &STEP.to_string()]).output();
    std::fs::remove_file(&path).unwrap();
    let text = output.map(|o| String::from_utf8_lossy(&o.stdout).into_owned()).unwrap_or_default();
    if text.is_empty() {
        println!("peer missing: GDAL's Python package, or pip install numpy contourpy");
    }
    for line in text.lines() {
        let words: Vec<&str> = line.split_whitespace().collect();
        let [name, seconds, result] = words[..] else { continue };
        let (seconds, result): (f64, f64) = (seconds.parse().unwrap(), result.parse().unwrap());
        let (ours, own) = if name.ends_with("relief") { (relief, mean) } else { (lines, length) };
        // GDAL's contours go on for half a cell beyond the outermost centres.
        let tolerance = if name == "gdal-contours" { 5e-3 } else { 1e-4 };
        assert!((own / result - 1.0).abs() < tolerance, "{name}: {own} against {result}");
        println!("{name}: {:.2} ms; ours is {:.1} times as fast", seconds * 1e3, seconds / ours);
    }
}

/// Best seconds, and the result.
fn best<T>(work: impl Fn() -> T) -> (f64, T) {
    let mut best = f64::INFINITY;
    let mut result = work();
    for _ in 0..ROUNDS {
        let begin = Instant::now();
        result = work();
        best = best.min(begin.elapsed().as_secs_f64());
    }
    (best, result)
}
