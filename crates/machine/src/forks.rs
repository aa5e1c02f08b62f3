//! What fork blades carry.
//!
//! The pair carries twice the lower blade, derated by moment beyond the blade's stamped load
//! centre (moment physics; common practice). With the load's centre `y` off the middle of a pair
//! `s` apart the worse blade takes the share `½ + |y|/s` (lever rule). A heel worn by 10 % or
//! more takes the pair out of service (ISO 5057); section modulus falls with the square.

use crate::{Forks, text};
use evidence::{Source, Step, Trace};
use quantity::{Dimension, Quantity, Si};

pub use crate::blade_limits::{
    ANGLE_LIMIT_DEG, BENT_LIMIT, BladeProblem, CLOSED_LIMIT_DEG, INTERVAL_MONTHS, Look, PROOF_EDGE_KG, Side, TIP_LIMIT,
    WEAR_LIMIT, YIELD_FACTOR, blade_problems, check_overdue, proof_factor,
};

/// Bending capacity that remains of a blade worn by `wear` (share of thickness): the section
/// modulus goes with the square of the thickness.
pub fn worn_capacity_share(wear: f64) -> f64 {
    (1.0 - wear) * (1.0 - wear)
}

/// Load (kg) that the pair carries with its centre `centre_ahead` m from the fork face and
/// `centre_left` m off the middle.
///
/// `2 · C · min(1, c₀ / c)` for each blade's stamp, over twice the worse share. Infinite is never
/// returned; an offset beyond half the spread gives the single blade's capacity over more than 1.
/// Sleeves carry no more than half their own plate over the same share. `None`: a stamp is missing.
pub fn pair_capacity_kg(forks: &Forks, centre_ahead: f64, centre_left: f64, trace: &mut impl Trace) -> Option<f64> {
    let stamps = [forks.blades[0].capacity?, forks.blades[1].capacity?];
    let per_blade = |i: usize| {
        let c0 = forks.blades[i].load_centre.si();
        stamps[i].si() * if centre_ahead > c0 { c0 / centre_ahead } else { 1.0 }
    };
    let worst = usize::from(per_blade(0) > per_blade(1));
    let lower = per_blade(worst);
    let share = 0.5 + centre_left.abs() / forks.spread;
    let pair = lower / share;
    trace.step(|| Step {
        title: text::STEP_BLADE_MOMENT.message(),
        formula: "C_b = C · min(1, c₀ / c)".into(),
        values: vec![
            ("C".into(), Quantity::from(stamps[worst])),
            ("c₀".into(), Quantity::from(forks.blades[worst].load_centre)),
            ("c".into(), Quantity::new(centre_ahead, Dimension::Length)),
        ],
        result: ("C_b".into(), Quantity::new(lower, Dimension::Mass)),
        source: Source::CommonPractice,
    });
    trace.step(|| Step {
        title: text::STEP_BLADE_SHARE.message(),
        formula: "a = ½ + |y| / s".into(),
        values: vec![
            ("y".into(), Quantity::new(centre_left, Dimension::Length)),
            ("s".into(), Quantity::new(forks.spread, Dimension::Length)),
        ],
        result: ("a".into(), Quantity::number(share)),
        source: Source::Mechanics,
    });
    trace.step(|| Step {
        title: text::STEP_BLADE_PAIR.message(),
        formula: "W_f = C_b / a".into(),
        values: vec![("C_b".into(), Quantity::new(lower, Dimension::Mass)), ("a".into(), Quantity::number(share))],
        result: ("W_f".into(), Quantity::new(pair, Dimension::Mass)),
        source: Source::Mechanics,
    });
    let Some(sleeves) = &forks.extensions else { return Some(pair) };
    let capacity = pair.min(sleeves.capacity.si() / (2.0 * share));
    trace.step(|| Step {
        title: text::STEP_SLEEVES.message(),
        formula: "W = min(W_f, C_s / 2a)".into(),
        values: vec![
            ("W_f".into(), Quantity::new(pair, Dimension::Mass)),
            ("C_s".into(), Quantity::from(sleeves.capacity)),
            ("a".into(), Quantity::number(share)),
        ],
        result: ("W".into(), Quantity::new(capacity, Dimension::Mass)),
        source: Source::Mechanics,
    });
    Some(capacity)
}
