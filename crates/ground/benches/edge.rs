//! The worst slip circle of an edge against a plain dense search with the same circles, in the same run. Prints
//! times, circles and ratios; the answers of both are compared.
#![allow(missing_docs, clippy::unwrap_used, clippy::print_stdout, reason = "a bench prints")]
#![allow(clippy::disallowed_methods, reason = "a bench reads the clock")]

use evidence::Silent;
use ground::slip_circle::{SlipCircle, SlipSolver};
use ground::slip_search::{REACH, worst_slip};
use ground::slope_section::{Crack, PoreWater, SlopeLayer, SlopeSection, Surcharge};
use std::hint::black_box;
use std::time::Instant;

fn section(depth: f64, batter: f64, soils: &[(f64, f64)]) -> SlopeSection {
    let layers = soils.iter().enumerate().map(|(i, (c, phi))| SlopeLayer {
        bottom: depth * (i as f64 + 1.0) * 0.6,
        unit_weight: 19e3,
        cohesion: *c,
        friction: phi.to_radians(),
    });
    SlopeSection {
        depth,
        batter,
        layers: layers.collect(),
        firm_base: None,
        water: PoreWater::Table(vec![[-batter - 0.5, -depth], [4.0 * depth, -0.5 * depth]]),
        crack: Crack::default(),
    }
}

/// The least factor of every exit, entry and turning of a dense grid.
fn dense(section: &SlopeSection, loads: &[Surcharge]) -> (f64, usize) {
    let mut solver = SlipSolver::new(section, loads);
    let (mut least, mut tried) = (f64::INFINITY, 0);
    let (w, h) = (section.batter, section.depth);
    let reach = loads.iter().map(|s| s.to).fold(0.0, f64::max) + REACH * h;
    for i in 1..=80 {
        let e = 4.0 * f64::from(i) / 80.0;
        let exit = if e <= 1.0 { [-w * e, -h * e] } else { [-w - (e - 1.0) * h, -h] };
        for j in 1..=160 {
            let entry = [reach * (f64::from(j) / 160.0).powi(2), -section.crack.before(-exit[1]).depth];
            if entry[1] <= exit[1] {
                continue;
            }
            let chord = (entry[1] - exit[1]).atan2(entry[0] - exit[0]);
            let most = (std::f64::consts::FRAC_PI_2 - chord).min(chord + 1.3);
            for k in 1..=60 {
                tried += 1;
                let circle = SlipCircle::through(exit, entry, most * f64::from(k) / 60.0);
                if let Ok(f) = solver.factor(&circle) {
                    least = least.min(f);
                }
            }
        }
    }
    (least, tried)
}

fn median_ms(mut one: impl FnMut()) -> f64 {
    let mut times: Vec<f64> = (0..15)
        .map(|_| {
            let start = Instant::now();
            one();
            start.elapsed().as_secs_f64() * 1e3
        })
        .collect();
    times.sort_by(f64::total_cmp);
    times[7]
}

fn main() {
    let cases = [
        ("upright, clay, wheel at 1 m", section(2.0, 0.0, &[(20e3, 0.0)]), 1.0),
        ("battered, two layers", section(4.0, 2.0, &[(8e3, 26.0), (5e3, 30.0)]), 1.5),
        ("flat, four layers", section(6.0, 9.0, &[(3e3, 28.0), (6e3, 24.0), (2e3, 32.0), (4e3, 25.0)]), 2.0),
        ("battered, soft clay below", section(4.0, 4.0, &[(40e3, 0.0), (18e3, 0.0)]), 1.5),
    ];
    for (name, section, from) in cases {
        let loads = [
            Surcharge { from, to: from + 0.4, pressure: 45e3 },
            Surcharge { from: from + 1.7, to: from + 2.1, pressure: 30e3 },
        ];
        let found = worst_slip(&section, &loads, &mut Silent).unwrap().unwrap();
        let ms = median_ms(|| {
            black_box(worst_slip(black_box(&section), &loads, &mut Silent).unwrap());
        });
        let start = Instant::now();
        let (least, tried) = dense(&section, &loads);
        let dense_ms = start.elapsed().as_secs_f64() * 1e3;
        println!(
            "{name}: {ms:.2} ms, {} circles, F {:.4}; dense {dense_ms:.0} ms, {tried} circles, F {least:.4}; \
             {:.0} times faster, F {:+.2} %",
            found.tried,
            found.factor,
            dense_ms / ms,
            100.0 * (found.factor / least - 1.0)
        );
        assert!(found.factor < least * 1.01, "{name}: missed the worst circle");
    }
}
