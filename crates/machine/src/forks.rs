//! What fork blades carry.
//!
//! The pair carries twice the lower blade, derated by moment beyond the blade's stamped load
//! centre (moment physics; common practice). With the load's centre `y` off the middle of a pair
//! `s` apart the worse blade takes the share `½ + |y|/s` (lever rule). A heel worn by 10 % or
//! more takes the pair out of service (ISO 5057); section modulus falls with the square.

use crate::{Forks, text};
use evidence::{Source, Step, Trace};
use quantity::{Dimension, Quantity, Si};

/// Wear at which a blade goes out of service, as a share of its thickness (ISO 5057).
pub const WEAR_LIMIT: f64 = 0.10;

/// A blade.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Side {
    /// Left blade.
    Left,
    /// Right blade.
    Right,
}

/// What is wrong with a blade before any load.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum BladeProblem {
    /// Worn by this share of the thickness.
    Worn(Side, f64),
    /// Modified.
    Modified(Side),
    /// Wear not measured on one or both.
    WearUnknown,
    /// Nobody stated whether one or both are unmodified.
    ModifiedUnknown,
}

/// Problems of the blades, worst first.
pub fn blade_problems(forks: &Forks) -> Vec<BladeProblem> {
    let mut out = Vec::new();
    let mut unknown = false;
    for (side, blade) in [Side::Left, Side::Right].into_iter().zip(&forks.blades) {
        if blade.modified == Some(true) {
            out.push(BladeProblem::Modified(side));
        }
        match (blade.thickness_new, blade.thickness_now) {
            (Some(new), Some(now)) => {
                let wear = 1.0 - now.si() / new.si();
                if wear >= WEAR_LIMIT - 1e-12 {
                    out.push(BladeProblem::Worn(side, wear));
                }
            }
            _ => unknown = true,
        }
    }
    if unknown {
        out.push(BladeProblem::WearUnknown);
    }
    if forks.blades.iter().any(|b| b.modified.is_none()) {
        out.push(BladeProblem::ModifiedUnknown);
    }
    out
}

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
pub fn pair_capacity_kg(forks: &Forks, centre_ahead: f64, centre_left: f64, trace: &mut impl Trace) -> f64 {
    let per_blade = |i: usize| {
        let blade = &forks.blades[i];
        let c0 = blade.load_centre.si();
        blade.capacity.si() * if centre_ahead > c0 { c0 / centre_ahead } else { 1.0 }
    };
    let worst = usize::from(per_blade(0) > per_blade(1));
    let lower = per_blade(worst);
    let share = 0.5 + centre_left.abs() / forks.spread;
    let capacity = lower / share;
    trace.step(|| Step {
        title: text::STEP_BLADE_MOMENT.message(),
        formula: "C_b = C · min(1, c₀ / c)".into(),
        values: vec![
            ("C".into(), Quantity::from(forks.blades[worst].capacity)),
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
        result: ("W_f".into(), Quantity::new(capacity, Dimension::Mass)),
        source: Source::Mechanics,
    });
    capacity
}
