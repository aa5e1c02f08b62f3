//! Exact extremes of moment, shear and deflection against brute force: the same beam sampled at 2,000 places
//! each, and the worst place of a pallet against 2,000 places tried. Prints the ratio of one run; what the
//! samples miss is printed too, and no sample may exceed the exact answer.
#![allow(missing_docs, clippy::unwrap_used, clippy::print_stdout, reason = "a bench prints")]
#![allow(clippy::disallowed_methods, reason = "a bench reads the clock")]

use ground::beam::{Beam, BeamLoad, Span};
use ground::worst_place::{Effect, MovingStrip, worst_place};
use std::hint::black_box;
use std::time::Instant;

const SAMPLES: u32 = 2000;

fn median(mut run: impl FnMut()) -> f64 {
    let mut times: Vec<f64> = (0..15)
        .map(|_| {
            let start = Instant::now();
            run();
            start.elapsed().as_secs_f64() * 1e6
        })
        .collect();
    times.sort_by(f64::total_cmp);
    times[7]
}

fn main() {
    for spans in [1, 3, 5] {
        let beam = Beam::equal(spans, Span { length: 2.4, stiffness: 5e5 }).unwrap();
        let long = beam.length();
        let loads = [
            BeamLoad::Strip { from: 0.0, to: long, intensity: 400.0 },
            BeamLoad::Strip { from: 0.3 * long, to: 0.3 * long + 0.8, intensity: 6e3 },
            BeamLoad::Point { at: 0.71 * long, force: 1100.0 },
        ];
        let exact = || {
            let s = beam.solve(&loads).unwrap();
            [s.sagging().value, -s.hogging().value, s.shear().value.abs(), s.sag().value]
        };
        let sampled = || {
            let s = beam.solve(&loads).unwrap();
            let mut most = [0.0_f64; 4];
            for k in 0..=SAMPLES {
                let x = long * f64::from(k) / f64::from(SAMPLES);
                let (m, v, y) = (s.moment_at(x).unwrap(), s.shear_at(x).unwrap(), s.sag_at(x).unwrap());
                for (most, v) in most.iter_mut().zip([m, -m, v.abs(), y]) {
                    *most = most.max(v);
                }
            }
            most
        };
        let (a, b) = (exact(), sampled());
        let missed = a.iter().zip(&b).map(|(a, b)| (a - b) / a.max(1e-12)).fold(0.0, f64::max);
        assert!(a.iter().zip(&b).all(|(a, b)| *b <= a * (1.0 + 1e-9) + 1e-9), "a sample exceeds the extreme");
        let (fast, slow) = (
            median(|| {
                black_box(exact());
            }),
            median(|| {
                black_box(sampled());
            }),
        );
        println!(
            "{spans} spans, extremes: {fast:.1} µs, sampled {slow:.0} µs, {:.0} times; samples miss {missed:.1e}",
            slow / fast
        );

        let moving = [0.0, 0.45, 0.9].map(|from| MovingStrip { from, to: from + 0.1, force: 4e3 });
        let last = long - 1.0;
        let proven = || worst_place(&beam, &loads[..1], &moving, (0.0, last), Effect::Sagging, 0.002).unwrap();
        let tried = || {
            let place = |k: u32| {
                let u = last * f64::from(k) / f64::from(SAMPLES);
                let strip = |s: &MovingStrip| BeamLoad::Strip {
                    from: u + s.from,
                    to: (u + s.to).min(long),
                    intensity: s.force / (s.to - s.from),
                };
                let all: Vec<_> = loads[..1].iter().copied().chain(moving.iter().map(strip)).collect();
                beam.solve(&all).unwrap().sagging().value
            };
            (0..=SAMPLES).map(place).fold(0.0, f64::max)
        };
        let (a, b) = (proven(), tried());
        assert!(b <= a.bound && a.reached >= b * 0.998, "{a:?} {b}");
        let (fast, slow) = (
            median(|| {
                black_box(proven());
            }),
            median(|| {
                black_box(tried());
            }),
        );
        println!(
            "{spans} spans, worst place with its proof: {fast:.0} µs, {SAMPLES} places without one {slow:.0} µs, {:.1} times",
            slow / fast
        );
    }
}
