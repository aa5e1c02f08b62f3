//! Routes on 50 seeded maps of 800 × 800 cells of 0.25 m and 72 headings, with boxes in the way and hills that cost.
//!
//! Prints times of the target's field and of the search, and their growth at three sizes. Asserts that every way
//! is free at poses 0.1 m apart, and that each map has one.
#![allow(
    clippy::unwrap_used,
    clippy::print_stdout,
    clippy::disallowed_methods,
    reason = "a bench measures time and prints it"
)]

#[path = "../tests/driving/maps.rs"]
mod maps;
#[path = "../tests/driving/seeded.rs"]
#[expect(dead_code, reason = "shared with the tests")]
mod seeded;

use driving::{DriveMap, Settings, Spread, TargetField, route};
use std::ops::ControlFlow;
use std::time::Instant;

fn main() {
    for (n, count) in [(200, 20), (400, 20), (800, 50)] {
        sized(n, count);
    }
}

fn sized(n: usize, count: u64) {
    let (mut fields, mut searches, mut looked_at) = (Vec::new(), Vec::new(), Vec::new());
    for seed in 1..=count {
        let case = maps::case(seed, n, true);
        let begin = Instant::now();
        let field = TargetField::prepare(&case.map, &case.vehicle, case.to);
        fields.push(begin.elapsed().as_secs_f64() * 1e3);
        let watch = &mut |_| ControlFlow::Continue(());
        let begin = Instant::now();
        let found = route(&case.map, &case.vehicle, &field, case.from, &Settings::default(), watch);
        searches.push(begin.elapsed().as_secs_f64() * 1e3);
        let found = found.unwrap_or_else(|e| panic!("map {seed} of {n} cells: {e:?}"));
        for on in found.poses(&case.vehicle, 0.1) {
            assert_eq!(case.map.barred(&on.pose, Spread::default()), None, "map {seed} of {n} cells at {:?}", on.pose);
        }
        looked_at.push(found.looked_at as f64);
    }
    let line = |mut of: Vec<f64>| {
        of.sort_by(f64::total_cmp);
        format!("median {:.1}, 90 % {:.1}, most {:.1}", of[of.len() / 2], of[of.len() * 9 / 10], of[of.len() - 1])
    };
    println!("{n} x {n} cells x 72 headings, {count} maps");
    println!("  target's field, ms: {}", line(fields));
    println!("  search, ms:         {}", line(searches));
    println!("  poses looked at:    {}", line(looked_at));
}
