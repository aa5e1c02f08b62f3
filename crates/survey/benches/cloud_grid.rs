//! A cloud into a ground grid of 0.25 m with its slopes: time, growth and peak memory at 1, 4 and 10
//! million points (ten a square metre, eight of ten ground), plain and compressed; against laspy
//! with numpy's bincount (`validation/clouds/grid.py`) in the same run, and at one million against
//! our own brute force. Time passed and time of the processors: the peer decompresses on all of them,
//! and on a busy machine only the second can be compared. Where python3 or its packages are missing, it says so.

#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::print_stdout,
    clippy::disallowed_methods,
    reason = "a bench measures time and prints its result"
)]

use site::slopes;
use std::collections::BTreeMap;
use std::path::{Path, PathBuf};
use std::process::Command;
use std::time::Instant;
use survey::{CloudGrid, GroundOptions, LengthUnit, grid_cloud, read_cloud};

const CELL: f64 = 0.25;
const ROUNDS: usize = 3;

fn main() {
    // Tests build and start every target; only `cargo bench` says so.
    if !std::env::args().any(|a| a == "--bench") {
        return;
    }
    for compressed in [false, true] {
        let mut before: Option<(f64, f64)> = None;
        for million in [1_u32, 4, 10] {
            let count = million * 1_000_000;
            let name = format!("counterpoise-bench-{million}-million.{}", if compressed { "laz" } else { "las" });
            let path = std::env::temp_dir().join(name);
            std::fs::write(&path, made_cloud(count, compressed)).unwrap();
            forget_peak();
            let (Times { seconds, busy, for_slopes }, cells, sum) = ours(&path);
            let peak = peak_mib();
            print!("{million} million points, {}: {:.2} s", if compressed { "LAZ" } else { "LAS" }, seconds);
            print!(" and {for_slopes:.2} s for slopes");
            print!(", {:.1} million points a second", f64::from(million) / seconds);
            if let Some((points, time)) = before {
                print!(", {:.2} times the time for {:.1} times the points", seconds / time, f64::from(count) / points);
            }
            match peak {
                Some(mib) => {
                    print!(", peak {mib:.0} MiB with the file");
                    assert!(mib < 1024.0, "a gibibyte is the limit");
                }
                None => print!(", peak memory not told by this system"),
            }
            before = Some((f64::from(count), seconds));
            match peer(&path) {
                Some((peer, peer_cells, peer_sum, peer_busy)) => {
                    assert_eq!(cells, peer_cells, "both fill the same cells");
                    assert!((sum - peer_sum).abs() < 1e-6 * sum.abs(), "{sum} against {peer_sum}");
                    println!(
                        "; laspy and numpy {peer:.2} s without slopes, lowest and highest: ours is {:.2} times as fast",
                        peer / seconds
                    );
                    if let Some(busy) = busy {
                        println!(
                            "  of the processors {busy:.2} s against {peer_busy:.2} s: {:.2} times as fast",
                            peer_busy / busy
                        );
                    }
                }
                None => println!("; peer missing: pip install 'laspy[lazrs]' numpy"),
            }
            if million == 1 && !compressed {
                brute(&path, cells, sum);
            }
            std::fs::remove_file(&path).unwrap();
        }
    }
}

fn options() -> GroundOptions {
    GroundOptions { units: Some(LengthUnit::Metre), ..GroundOptions::default() }
}

/// Best seconds.
struct Times {
    /// For the grid.
    seconds: f64,
    /// Of the processor for it, where the system tells.
    busy: Option<f64>,
    for_slopes: f64,
}

/// Best seconds, cells with ground, sum of their heights.
fn ours(path: &Path) -> (Times, u64, f64) {
    let mut best = Times { seconds: f64::INFINITY, busy: None, for_slopes: f64::INFINITY };
    let mut result = (0, 0.0);
    for _ in 0..ROUNDS {
        let (begin, work) = (Instant::now(), processor_seconds());
        let bytes = std::fs::read(path).unwrap();
        let CloudGrid { grid, cells, .. } =
            grid_cloud(&[(&path.to_string_lossy(), &bytes)], &options(), CELL).expect("a readable cloud");
        best.seconds = best.seconds.min(begin.elapsed().as_secs_f64());
        if let (Some(from), Some(to)) = (work, processor_seconds()) {
            best.busy = Some(best.busy.unwrap_or(f64::INFINITY).min(to - from));
        }
        let begin = Instant::now();
        let steepest = slopes(&grid).into_iter().filter(|s| s.is_finite()).fold(0.0, f32::max);
        best.for_slopes = best.for_slopes.min(begin.elapsed().as_secs_f64());
        assert!(steepest > 0.0, "the ground is not flat");
        let means = cells.iter().filter_map(|c| c.mean());
        result = means.fold((0, 0.0), |(n, sum), z| (n + 1, sum + z));
    }
    (best, result.0, result.1)
}

/// All points kept, then one list a cell.
fn brute(path: &Path, cells: u64, sum: f64) {
    let begin = Instant::now();
    let bytes = std::fs::read(path).unwrap();
    let cloud = read_cloud(&path.to_string_lossy(), &bytes, &options()).unwrap();
    let mut lists: BTreeMap<(i64, i64), Vec<f64>> = BTreeMap::new();
    for p in &cloud.ground {
        lists.entry(((p.x / CELL).floor() as i64, (p.y / CELL).floor() as i64)).or_default().push(p.z);
    }
    let total: f64 = lists.values().map(|z| z.iter().sum::<f64>() / z.len() as f64).sum();
    println!("  brute force, every point kept: {:.2} s", begin.elapsed().as_secs_f64());
    assert_eq!(lists.len() as u64, cells);
    assert!((total - sum).abs() < 1e-6 * sum.abs());
}

/// Its seconds, cells, sum of their heights, seconds of the processors.
fn peer(path: &Path) -> Option<(f64, u64, f64, f64)> {
    let script = PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("../../validation/clouds/grid.py");
    let python = std::env::var("PYTHON").unwrap_or_else(|_| "python3".to_owned());
    let output = Command::new(python).arg(script).arg("time").arg(CELL.to_string()).arg(path).output().ok()?;
    let text = String::from_utf8_lossy(&output.stdout).into_owned();
    let mut words = text.split_whitespace();
    let (seconds, cells) = (words.next()?.parse().ok()?, words.next()?.parse().ok()?);
    Some((seconds, cells, words.next()?.parse().ok()?, words.next()?.parse().ok()?))
}

/// Linux: what the processor gave this program, which has one thread.
fn processor_seconds() -> Option<f64> {
    let told = std::fs::read_to_string("/proc/self/schedstat").ok()?;
    Some(told.split_whitespace().next()?.parse::<f64>().ok()? * 1e-9)
}

/// Linux: the peak counts from here on.
fn forget_peak() {
    let _ = std::fs::write("/proc/self/clear_refs", "5");
}

fn peak_mib() -> Option<f64> {
    let status = std::fs::read_to_string("/proc/self/status").ok()?;
    let line = status.lines().find(|l| l.starts_with("VmHWM:"))?;
    Some(line.split_whitespace().nth(1)?.parse::<f64>().ok()? / 1024.0)
}

/// Format 1, in centimetres off the cells' edges: a rolling ground, two points in ten above it.
fn made_cloud(count: u32, compressed: bool) -> Vec<u8> {
    // Ten points a square metre.
    let side = (f64::from(count) / 10.0).sqrt() * 100.0;
    let mut state = 0x9E37_79B9_7F4A_7C15_u64;
    let mut roll = || {
        state ^= state << 13;
        state ^= state >> 7;
        state ^= state << 17;
        (state >> 11) as f64 / (1_u64 << 53) as f64
    };
    let mut builder = las::Builder::from((1, 2));
    builder.point_format = las::point::Format::new(1).unwrap();
    builder.point_format.is_compressed = compressed;
    let plan = las::Transform { scale: 0.01, offset: 0.003 };
    builder.transforms = las::Vector { x: plan, y: plan, z: las::Transform { scale: 0.001, offset: 0.0 } };
    let out = std::io::Cursor::new(Vec::with_capacity(28 * count as usize + 400));
    let mut writer = las::Writer::new(out, builder.into_header().unwrap()).unwrap();
    for i in 0..count {
        // In strips, as flown: neighbours in the file are neighbours on the ground.
        let (x, y) = (roll() * side, (f64::from(i) + 200.0 * roll()) / f64::from(count + 200) * side);
        let ground = 50.0 + 3.0 * (x / 3000.0).sin() + 2.0 * (y / 2000.0).cos();
        let above = roll() < 0.2;
        let point = las::Point {
            x: x.floor() * 0.01 + 0.003,
            y: y.floor() * 0.01 + 0.003,
            z: ground + if above { 5.0 * roll() } else { 0.05 * roll() },
            classification: las::point::Classification::new(if above { 5 } else { 2 }).unwrap(),
            gps_time: Some(f64::from(i) * 1e-6),
            return_number: 1,
            number_of_returns: 1,
            ..las::Point::default()
        };
        writer.write_point(point).unwrap();
    }
    writer.into_inner().unwrap().into_inner()
}
