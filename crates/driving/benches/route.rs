//! Routes on 50 seeded maps of 800 × 800 cells of 0.25 m and 72 headings, with boxes in the way and hills that cost.
//!
//! Prints times of the target's field and of the search, and their growth at three sizes. Asserts that every way
//! is free at poses 0.1 m apart, and that each map has one. Beside the time of the search stands that which OMPL's
//! planners took on the same maps, with the same collision test and cost, on the machine of `ompl_times.csv`
//! (`validation/driving/ompl_routes.cpp`), where ours was measured too: the ratio is of that machine.
//!
//! With the argument `list`: seed, cost and time (ms) of each way by length and cost alone, for that program.
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

/// See the script that made it.
const OMPL: &str = include_str!("../../../validation/driving/ompl_times.csv");

fn main() {
    if std::env::args().any(|arg| arg == "list") {
        return list();
    }
    for (n, count) in [(200, 20), (400, 20), (800, 50)] {
        sized(n, count);
    }
    ompl();
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

/// What OMPL took on the first maps of 800 × 800 cells, and ours on the same machine.
fn ompl() {
    let rows: Vec<Vec<f64>> = OMPL
        .lines()
        .filter(|l| !l.starts_with('#'))
        .map(|l| l.split(',').map(|v| v.parse().unwrap()).collect())
        .collect();
    let median = |column: &dyn Fn(&Vec<f64>) -> f64| {
        let mut of: Vec<f64> = rows.iter().map(column).collect();
        of.sort_by(f64::total_cmp);
        of[of.len() / 2]
    };
    println!("recorded on one machine, {} of these maps, by cost alone, medians:", rows.len());
    println!("  ours: {:.1} ms", median(&|r| r[2]));
    for (name, at) in [("RRT*", 3), ("BIT*", 5), ("RRTConnect, first way", 7)] {
        let found = rows.iter().filter(|r| r[at].is_finite()).count();
        let as_cheap = rows.iter().filter(|r| r[at] <= r[1] * (1.0 + 1e-6)).count();
        let (time, ratio) = (median(&|r| r[at + 1]), median(&|r| r[at] / r[1]));
        println!(
            "  OMPL {name}: {time:.0} ms, found a way on {found}, as cheap as ours on {as_cheap}; cost over ours {ratio:.2}"
        );
    }
}

/// Changes of gear and reverse count nothing: what OMPL's planners look for.
fn by_cost_alone() -> Settings {
    Settings { reverse: 1.0, gear_change: 0.0, ..Settings::default() }
}

fn list() {
    for seed in 1..=50 {
        let case = maps::case(seed, 800, true);
        let field = TargetField::prepare(&case.map, &case.vehicle, case.to);
        let begin = Instant::now();
        let found =
            route(&case.map, &case.vehicle, &field, case.from, &by_cost_alone(), &mut |_| ControlFlow::Continue(()));
        let took = begin.elapsed().as_secs_f64() * 1e3;
        println!("{seed},{:.3},{took:.2}", found.unwrap().cost);
    }
}
