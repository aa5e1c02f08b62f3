//! Reading a machine file with four charts, with every check, against the target of 2 ms and against
//! parsing the same text as TOML alone. Prints microseconds and ratios of one run.
#![allow(missing_docs, clippy::unwrap_used, clippy::print_stdout, clippy::panic, reason = "a bench prints")]
#![allow(clippy::disallowed_methods, reason = "a bench reads the clock")]

use std::hint::black_box;
use std::time::Instant;

/// A chart of every form for the 14 m demo machine.
const TABLE: &str = r#"
[[chart]]
attachment = "jib"
support = "stabilizers"
source = "chart"
load_centre = "0 m"
reach_from = "boom-foot"
reach_to = "hook"
height_to = "hook"
level_sideways = "2°"
level_fore_aft = "2°"
unit = "m"
rises = "the bench, against nothing"
[chart.table]
angle_unit = "°"
angles = [0, 10, 20, 30, 40, 50, 60, 70]
extensions = [0, 1.5, 3, 4.5, 6, 7.5, 9]
capacity_unit = "kg"
capacity = [
  [1500, 1500, 1300, 1100, 900, 700, 500],
  [1500, 1500, 1300, 1100, 900, 700, 500],
  [1500, 1500, 1400, 1100, 900, 700, 500],
  [1500, 1500, 1500, 1200, 1000, 800, 600],
  [1500, 1500, 1500, 1300, 1100, 900, 700],
  [1500, 1500, 1500, 1400, 1200, 1000, 800],
  [1500, 1500, 1500, 1500, 1300, 1100, "-"],
  [1500, 1500, 1500, 1500, "-", "-", "-"],
]
"#;

fn median(mut run: impl FnMut(), inner: u32) -> f64 {
    let mut times: Vec<f64> = (0..31)
        .map(|_| {
            let start = Instant::now();
            for _ in 0..inner {
                run();
            }
            start.elapsed().as_secs_f64() / f64::from(inner)
        })
        .collect();
    times.sort_by(f64::total_cmp);
    times[times.len() / 2]
}

fn main() {
    let path = std::path::Path::new(env!("CARGO_MANIFEST_DIR")).join("../../examples/demo-job/machines/demo-14.toml");
    let plain = std::fs::read_to_string(path).unwrap();
    let four = format!("{plain}{TABLE}");
    println!("a machine file, median of 31 runs; target 2 ms");
    for (what, text) in [("three charts of zones", &plain), ("and one by angle and extension", &four)] {
        let (machine, _) = jobfile::read_machine("m.toml", text.as_bytes()).unwrap_or_else(|f| panic!("{:?}", f.list));
        let read = median(|| drop(black_box(jobfile::read_machine("m.toml", black_box(text.as_bytes())))), 5);
        let parse = median(|| drop(black_box(black_box(text.as_str()).parse::<toml::Table>())), 5);
        println!(
            "  {} charts, {what:<32}: {:>6.0} µs, {:.2} of the target; plain TOML {:>5.0} µs, {:.1} times",
            machine.charts.len(),
            read * 1e6,
            read / 2e-3,
            parse * 1e6,
            read / parse,
        );
    }
}
