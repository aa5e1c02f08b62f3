//! Bearing of one pad: nanoseconds against the target of a microsecond; the most cautious of five authors against one of
//! them; and a pad on a profile of three layers. Answers are compared.
#![allow(missing_docs, clippy::unwrap_used, clippy::print_stdout, reason = "a bench prints")]
#![allow(clippy::disallowed_methods, reason = "a bench reads the clock")]

use evidence::{Silent, Working};
use ground::{
    BearingCase, Footprint, GroundState, Layer, Load, Method, PadOnProfile, Profile, Stated, Strength,
    bearing_on_profile, least_bearing, ultimate_bearing,
};
use std::hint::black_box;
use std::time::Instant;

const CASES: usize = 20_000;

/// Seeded pads: soils, sizes; half of them under leaning forces.
fn cases() -> Vec<BearingCase> {
    let mut seed = 20_270_412_u64;
    let mut next = move || {
        seed = seed.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
        (seed >> 11) as f64 / (1u64 << 53) as f64
    };
    (0..CASES)
        .map(|i| {
            let width = 0.3 + next();
            let base = Footprint::Rectangle { width, length: width * (1.0 + next()) };
            let strength = if i % 2 == 0 {
                Strength::Undrained { c_u: 2e4 + 1e5 * next() }
            } else {
                Strength::Drained { cohesion: 5e3 * next(), friction: 0.4 + 0.3 * next() }
            };
            BearingCase {
                load: Load {
                    vertical: 1e5,
                    horizontal: [if i % 4 < 2 { 0.0 } else { 500.0 * next() }, 0.0],
                    eccentricity: [0.1 * next(), 0.0],
                },
                overburden: 5e3 * next(),
                ..BearingCase::on_the_surface(base, 1e5, strength, 18e3)
            }
        })
        .collect()
}

/// Median nanoseconds a call over 9 runs.
fn median(mut run: impl FnMut(), calls: usize) -> f64 {
    let mut times: Vec<f64> = (0..9)
        .map(|_| {
            let start = Instant::now();
            run();
            start.elapsed().as_secs_f64() * 1e9 / calls as f64
        })
        .collect();
    times.sort_by(f64::total_cmp);
    times[4]
}

fn main() {
    let cases = cases();
    println!("bearing of one pad, {CASES} pads, median of 9 runs; target 1000 ns");
    let mut one = [0.0; 5];
    for (k, method) in Method::ALL.into_iter().enumerate() {
        one[k] = median(
            || {
                for case in &cases {
                    let _ = black_box(ultimate_bearing(black_box(case), method, &mut Silent));
                }
            },
            CASES,
        );
        println!("  {:<24} {:.0} ns, {:.3} of the target", method.citation(), one[k], one[k] / 1e3);
    }
    let all = median(
        || {
            for case in &cases {
                let _ = black_box(least_bearing(black_box(case), &mut Silent));
            }
        },
        CASES,
    );
    let sum: f64 = one.iter().sum();
    println!(
        "  the least of five        {all:.0} ns, {:.3} of the target, {:.2} of one after the other",
        all / 1e3,
        all / sum
    );
    let traced = median(
        || {
            for case in &cases[..CASES / 20] {
                let _ = black_box(least_bearing(black_box(case), &mut Working::default()));
            }
        },
        CASES / 20,
    );
    println!("  the same with working    {traced:.0} ns, {:.1} times", traced / all);
    for case in &cases {
        let least = least_bearing(case, &mut Silent).unwrap().resistance;
        let search = Method::ALL.iter().filter_map(|m| Some(ultimate_bearing(case, *m, &mut Silent).ok()?.resistance));
        assert_eq!(least, search.fold(f64::INFINITY, f64::min), "answers differ");
    }
    profile();
}

fn profile() {
    let layer = |top: f64, thickness: f64, c_u: f64| Layer {
        top,
        thickness,
        unit_weight: 18e3,
        stated: Stated { undrained: Some(c_u), drained: Some((2e3, 0.45)) },
        stiffness: None,
    };
    let profile = Profile {
        layers: vec![layer(0.0, 0.4, 90e3), layer(0.4, 0.5, 30e3), layer(0.9, 5.0, 60e3)],
        water: Some(0.7),
        state: GroundState::AsStated,
    };
    let pad = PadOnProfile {
        base: Footprint::Rectangle { width: 0.6, length: 0.6 },
        load: Load { vertical: 1e5, ..Load::default() },
        depth: 0.0,
        slope: 0.0,
    };
    let ns = median(
        || {
            for _ in 0..1000 {
                let _ = black_box(bearing_on_profile(black_box(&pad), &profile, &mut Silent));
            }
        },
        1000,
    );
    println!("  on three layers, two strengths each: {ns:.0} ns");
}
