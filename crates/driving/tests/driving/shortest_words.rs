//! Reeds-Shepp's words: against OMPL's lengths, and each word against its end.

use crate::seeded::SplitMix64;
use driving::{PlanPose, shortest, words};
use geometry::wrapped;
use std::f64::consts::PI;

const LENGTHS: &str = include_str!("../../../../validation/driving/shortest_words.csv");
const PAIRS: usize = 10_000;

/// The pairs of poses of the script.
fn pairs() -> Vec<[PlanPose; 2]> {
    let mut rng = SplitMix64(1);
    (0..PAIRS)
        .map(|pair| {
            let size = if pair % 4 == 3 { 1.0 } else { 10.0 };
            [(); 2].map(|()| {
                let (x, y, h) = (rng.unit(), rng.unit(), rng.unit());
                PlanPose::new((2.0 * x - 1.0) * size, (2.0 * y - 1.0) * size, (2.0 * h - 1.0) * PI)
            })
        })
        .collect()
}

/// OMPL 2.0.1, `validation/driving/shortest_words.py`. Never longer than by the last digit written; nor
/// shorter, since both claim the shortest.
#[test]
fn val_shortest_words() {
    let lengths: Vec<f64> = LENGTHS.lines().filter(|l| !l.starts_with('#')).map(|l| l.parse().unwrap()).collect();
    assert_eq!(lengths.len(), PAIRS, "a reference case went missing");
    for ([from, to], ompl) in pairs().iter().zip(lengths) {
        let ours = shortest(from, to, 1.0).length();
        assert!(ours <= ompl + 1e-6, "{from:?} to {to:?}: {ours} m, OMPL {ompl} m");
        assert!(ours >= ompl - 1e-6, "{from:?} to {to:?}: {ours} m is shorter than OMPL's {ompl} m");
    }
}

#[test]
fn every_word_ends_where_it_should_and_the_shortest_is_among_them() {
    for (i, [from, to]) in pairs().iter().enumerate().step_by(7) {
        let radius = 0.5 + (i % 9) as f64;
        let found = words(from, to, radius);
        let least = found.iter().map(driving::Word::length).fold(f64::INFINITY, f64::min);
        assert_eq!(least, shortest(from, to, radius).length());
        let target = from.seen_from(to.at) / radius;
        for word in &found {
            let end = word.end();
            let off = (end.at - target).length() + wrapped(end.heading - (to.heading - from.heading)).abs();
            assert!(off < 1e-6, "{word:?} ends {off} away");
        }
    }
}

#[test]
fn the_way_back_is_as_long_and_so_is_its_mirror_image() {
    let mirrored = |p: &PlanPose| PlanPose::new(p.at.x, -p.at.y, -p.heading);
    for [from, to] in pairs().iter().step_by(5) {
        let length = shortest(from, to, 1.3).length();
        assert!((shortest(to, from, 1.3).length() - length).abs() < 1e-9);
        assert!((shortest(&mirrored(from), &mirrored(to), 1.3).length() - length).abs() < 1e-9);
    }
}

#[test]
fn known_ways() {
    let origin = PlanPose::new(0.0, 0.0, 0.0);
    let cases = [
        (PlanPose::new(5.0, 0.0, 0.0), 5.0, 0),
        (PlanPose::new(-5.0, 0.0, 0.0), 5.0, 0),
        (PlanPose::new(0.0, 4.0, PI), 2.0 * PI, 0),
        // Turning on the spot by half a turn: three turns of 60° each.
        (PlanPose::new(0.0, 0.0, PI), 2.0 * PI, 2),
        (PlanPose::new(0.0, 0.0, 0.0), 0.0, 0),
    ];
    for (to, length, cusps) in cases {
        let word = shortest(&origin, &to, 2.0);
        assert!((word.length() * 2.0 - length).abs() < 1e-9, "{to:?}: {word:?}");
        assert_eq!(word.cusps(), cusps, "{word:?}");
    }
}
