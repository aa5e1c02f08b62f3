//! Time of a plan sheet of one lift: the first in a process, and later ones with other numbers.
#![allow(clippy::unwrap_used, clippy::print_stdout, reason = "a bench prints")]

#[path = "../../drawing/tests/sample/mod.rs"]
mod sample;

use quantity::UnitSystem;
use report::{PaperSize, Printer};
use std::time::{Duration, Instant};
use wording::{Language, Wording};

const ROUNDS: usize = 25;

fn main() {
    let wording = Wording::new(Language::English, UnitSystem::Si);
    let print = |round: usize| -> Duration {
        // Every document has other numbers, so that nothing is a mere repetition.
        let mut lift = sample::bricks();
        lift.load.mass_kg.nominal += round as f64;
        lift.findings[1].reserve = Some(0.05 + 0.001 * round as f64);
        if let Some(scene) = &mut lift.elevation {
            scene.load_centre.1 += 0.001 * round as f64;
        }
        let mut plan = sample::plan(vec![lift]);
        plan.digest = format!("{round:064x}");
        let start = Instant::now();
        let pdf = Printer::new().and_then(|p| p.plan_sheet(&plan, &wording, PaperSize::A4)).unwrap();
        let time = start.elapsed();
        assert!(pdf.starts_with(b"%PDF-") && pdf.len() > 20_000, "the bench makes real documents");
        time
    };
    let cold = print(0);
    let mut warm: Vec<Duration> = (1..=ROUNDS).map(print).collect();
    warm.sort();
    let median = warm[ROUNDS / 2];
    println!("plan sheet of one lift, cold: {:.1} ms", cold.as_secs_f64() * 1e3);
    println!(
        "plan sheet of one lift, warm: {:.1} ms median, {:.1} to {:.1} ms, {} documents; cold / warm = {:.1}",
        median.as_secs_f64() * 1e3,
        warm[0].as_secs_f64() * 1e3,
        warm[ROUNDS - 1].as_secs_f64() * 1e3,
        ROUNDS,
        cold.as_secs_f64() / median.as_secs_f64()
    );
}
