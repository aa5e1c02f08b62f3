//! Reading clouds, as a ratio to general-purpose libraries in the same run.
//!
//! Plain LAS (10 million points made here, 280 MB in the folder for temporary files) against numpy;
//! LAZ of the reference data folder beside the project, `../shared`, against laspy with the laszip
//! library. Both sides read the file, count classes, find the box and give the ground points as
//! 64-bit metres. Best of five each. Where python3 or its packages are missing, only our times are
//! printed.

#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::print_stdout,
    clippy::disallowed_methods,
    reason = "a bench measures time and prints its result"
)]

use std::path::{Path, PathBuf};
use std::process::Command;
use std::time::Instant;
use survey::{GroundOptions, LengthUnit, read_cloud};

const ROUNDS: usize = 5;
const POINTS: u32 = 10_000_000;

fn main() {
    // Tests build and start every target; only `cargo bench` says so.
    if !std::env::args().any(|a| a == "--bench") {
        return;
    }
    let project = PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("../..");
    let made = std::env::temp_dir().join("counterpoise-bench-10-million.las");
    std::fs::write(&made, plain_cloud()).unwrap();
    let data = project.join("../shared/data/pointcloud");
    let files: Vec<PathBuf> =
        [made.clone(), data.join("delft_ahn3_west.laz"), data.join("hillside_370m_extrabytes.laz")]
            .into_iter()
            .filter(|p| p.is_file())
            .collect();
    let peers = peer(&project.join("validation/survey/peer.py"), &files);
    if peers.is_none() {
        println!("peer missing: pip install laspy laszip numpy");
    }
    for (i, path) in files.iter().enumerate() {
        let (seconds, points, ground, sum) = ours(path);
        let name = path.file_name().unwrap().to_string_lossy();
        print!("{name}: {:.1} million points a second ({:.0} ms)", points as f64 / seconds / 1e6, seconds * 1e3);
        match peers.as_ref().map(|p| p[i]) {
            None => println!(),
            Some((peer, peer_points, peer_ground, peer_sum)) => {
                assert_eq!((points, ground), (peer_points, peer_ground), "{name}: both read the same");
                assert!((sum - peer_sum).abs() < 1e-6 * sum.abs(), "{name}: {sum} against {peer_sum}");
                println!("; peer {:.0} ms; ours is {:.2} times as fast", peer * 1e3, peer / seconds);
            }
        }
    }
    std::fs::remove_file(&made).unwrap();
}

/// Best seconds, points, ground points, sum of ground heights.
type Measured = (f64, u64, u64, f64);

fn ours(path: &Path) -> Measured {
    let options = GroundOptions { units: Some(LengthUnit::Metre), ..GroundOptions::default() };
    let mut best = f64::INFINITY;
    let mut result = (0, 0, 0.0);
    for _ in 0..ROUNDS {
        let begin = Instant::now();
        let bytes = std::fs::read(path).unwrap();
        let cloud = read_cloud(&path.to_string_lossy(), &bytes, &options).expect("a readable cloud");
        best = best.min(begin.elapsed().as_secs_f64());
        result = (cloud.facts.points, cloud.ground.len() as u64, cloud.ground.iter().map(|p| p.z).sum());
    }
    (best, result.0, result.1, result.2)
}

fn peer(script: &Path, files: &[PathBuf]) -> Option<Vec<Measured>> {
    let python = std::env::var("PYTHON").unwrap_or_else(|_| "python3".to_owned());
    let output = Command::new(python).arg(script).args(files).output().ok().filter(|o| o.status.success())?;
    let rows: Vec<Measured> = String::from_utf8_lossy(&output.stdout)
        .lines()
        .filter_map(|line| {
            let mut words = line.split_whitespace();
            Some((
                words.next()?.parse().ok()?,
                words.next()?.parse().ok()?,
                words.next()?.parse().ok()?,
                words.next()?.parse().ok()?,
            ))
        })
        .collect();
    (rows.len() == files.len()).then_some(rows)
}

/// LAS 1.2, format 1, in metres: a rolling ground in which three points in ten are class 2.
fn plain_cloud() -> Vec<u8> {
    let mut header = las::raw::Header {
        version: las::Version::new(1, 2),
        header_size: 227,
        offset_to_point_data: 227,
        point_data_record_format: 1,
        point_data_record_length: 28,
        number_of_point_records: POINTS,
        ..las::raw::Header::default()
    };
    (header.x_scale_factor, header.y_scale_factor, header.z_scale_factor) = (0.01, 0.01, 0.01);
    (header.max_x, header.max_y, header.max_z) = (2000.0, 2000.0, 110.0);
    let mut out = Vec::with_capacity(227 + 28 * POINTS as usize);
    header.write_to(&mut out).unwrap();
    let mut state = 0x9E37_79B9_7F4A_7C15_u64;
    for _ in 0..POINTS {
        state ^= state << 13;
        state ^= state >> 7;
        state ^= state << 17;
        let (x, y) = ((state % 200_000) as i32, (state >> 20) as i32 & 0x1FFFF);
        let z = 5000 + (x / 40 + y / 50) % 6000;
        for v in [x, y, z] {
            out.extend_from_slice(&v.to_le_bytes());
        }
        let class = if (state >> 50) % 10 < 3 { 2 } else { 1 };
        out.extend_from_slice(&[0, 0, 0x09, class]);
        out.extend_from_slice(&[0; 12]);
    }
    out
}
