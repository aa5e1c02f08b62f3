//! One full lift check (numbers and status, no working), against the target of 20 µs and against the
//! full findings with working of the same lifts. Prints microseconds and ratios of one run.
#![allow(
    missing_docs,
    clippy::unwrap_used,
    clippy::print_stdout,
    clippy::panic,
    clippy::disallowed_methods,
    reason = "a bench reads the clock"
)]

use planning::{check_lift, plan};
use std::collections::BTreeMap;
use std::hint::black_box;
use std::time::Instant;

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
    let root = std::path::Path::new(env!("CARGO_MANIFEST_DIR")).join("../../examples/demo-job");
    let mut folder: BTreeMap<String, Vec<u8>> = BTreeMap::new();
    for file in ["job.toml", "survey/levels.csv", "machines/demo-7.toml", "machines/demo-14.toml"] {
        folder.insert(file.to_owned(), std::fs::read(root.join(file)).unwrap());
    }
    let (job, _) = jobfile::read_job(&folder).unwrap_or_else(|f| panic!("{:?}", f.list));
    println!("one lift check, median of 31 runs; target 20 µs");
    for lift in &job.lifts {
        let verdict = check_lift(&job, lift).unwrap().verdict();
        let check = median(|| drop(black_box(check_lift(black_box(&job), black_box(lift)))), 200);
        let findings = median(|| drop(black_box(check_lift(&job, lift).unwrap().findings())), 50);
        println!(
            "  {:<42} {:?}: {:>7.2} µs, {:.2} of the target; with findings and working {:.1} times",
            lift.name,
            verdict,
            check * 1e6,
            check / 20e-6,
            findings / check
        );
    }
    let whole = median(|| drop(black_box(plan(&job))), 5);
    println!("  whole plan of {} lifts: {:.0} µs", job.lifts.len(), whole * 1e6);

    let chart = &job.machines[0].machine.charts[0];
    let mut x = 0.0;
    let read = median(
        || {
            x = (x + 0.37) % 9.0;
            let at = geometry::DVec2::new(x, 4.0);
            black_box(chart.read(&machine::ChartPoint { at, low: at - 0.1, high: at + 0.2 }));
        },
        10_000,
    );
    println!("chart read of {} zones: {:.0} ns", chart.zones.len(), read * 1e9);
}
