//! The worst place of a load that may stand anywhere along a stretch of a beam, with a proven bound.
//!
//! A shift of a force `F` by `du` acts like the couple `F·du`. Under a unit couple the moments over the supports
//! are at most 2: in every row of the three-moment equation the diagonal exceeds its neighbours by at least
//! `(f_i + f_j)/6`, `f = L/EI`, and the couple's own term is at most `f_i/3`. With the jump of 1 itself no moment
//! exceeds 3, no shear `5/L` of the shortest span, no deflection `3L²/8EI` in a span. These are Lipschitz
//! constants of the extremes by the load's place: halving intervals until none can hold more proves the answer.

use crate::beam::{Beam, BeamLoad, Solved, Span};
use crate::landing_range::Ranges;
use crate::text;
use evidence::Faults;
use quantity::Dimension;

/// A strip of a load that moves as one; positions from the load's own left end.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct MovingStrip {
    /// Where it begins, m.
    pub from: f64,
    /// Where it ends, m.
    pub to: f64,
    /// Force on it, N.
    pub force: f64,
}

/// What is to be greatest.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Effect {
    /// Sagging moment, N·m.
    Sagging,
    /// Size of the hogging moment, N·m.
    Hogging,
    /// Size of the shear, N.
    Shear,
    /// Force on the support of that number from the left, N.
    Reaction(usize),
    /// Force that would have to hold the support of that number down, N.
    Lift(usize),
    /// Deflection down, m.
    Sag,
}

/// The worst found, and what no place exceeds.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct WorstPlace {
    /// Greatest value found.
    pub reached: f64,
    /// No place gives more than this: what a check has to use.
    pub bound: f64,
    /// Where the load's left end then stands, m from the beam's left tip.
    pub place: f64,
}

impl WorstPlace {
    /// No effect at all.
    pub(crate) const NOTHING: Self = Self { reached: 0.0, bound: 0.0, place: 0.0 };

    /// The greater, or what is no number.
    pub(crate) fn or(self, other: Self) -> Self {
        if other.bound > self.bound || other.bound.is_nan() { other } else { self }
    }
}

/// Evaluations after which the bound is taken as it stands: it stays a bound, only wider.
const MOST_EVALUATIONS: usize = 50_000;

impl Effect {
    fn of(self, s: &Solved) -> f64 {
        match self {
            Self::Sagging => s.sagging().value,
            Self::Hogging => -s.hogging().value,
            Self::Shear => s.shear().value.abs(),
            Self::Reaction(i) => s.reactions.get(i).map_or(f64::NAN, |r| r.force),
            Self::Lift(i) => s.reactions.get(i).map_or(f64::NAN, |r| -r.force),
            Self::Sag => s.sag().value,
        }
    }

    /// Greatest change of the effect for 1 m of shift of `force`, and its size if the load stood at its worst,
    /// to measure a tolerance by.
    /// `densest` (N/m): what may slide off a tip; at a tip nothing but an overhang is felt, and the end support.
    fn steepness(self, beam: &Beam, force: f64, densest: f64) -> (f64, f64) {
        let longest = beam.spans().iter().map(|s| s.length).fold(0.0, f64::max);
        let shortest = beam.spans().iter().map(|s| s.length).fold(f64::INFINITY, f64::min);
        let reach = beam.overhangs().into_iter().flatten();
        let out = reach.clone().map(|s| s.length).fold(0.0, f64::max);
        let arm = reach.clone().map(|s| s.length).fold(longest / 4.0, f64::max);
        match self {
            Self::Sagging | Self::Hogging => (3.0 * force + densest * out, force * arm),
            Self::Shear => (5.0 * force / shortest + densest * (2.0 + 2.0 * out / shortest), force),
            Self::Reaction(_) | Self::Lift(_) => {
                (10.0 * force / shortest + densest * (1.0 + 10.0 * out / shortest), force)
            }
            Self::Sag => {
                let spans = beam.spans();
                let bow = |s: &Span| 3.0 * s.length * s.length / (8.0 * s.stiffness);
                let turn = spans.iter().map(|s| 3.0 * s.length / (2.0 * s.stiffness)).fold(0.0, f64::max);
                let tip = |s: Span| turn * s.length + 1.5 * s.length * s.length / s.stiffness;
                let most = reach.map(tip).chain(spans.iter().map(bow)).fold(0.0, f64::max);
                ((force + densest * out) * most, force * most * arm / 3.0)
            }
        }
    }
}

/// The greatest `effect` of `moving` with its left end anywhere from `within.0` to `within.1`, on top of `fixed`
/// loads. What hangs over a tip of the beam there is not on it. The bound exceeds what is reached by at most
/// `tolerance`: a share of it, or of a quarter of what the load does to one simple span, whichever is more.
///
/// # Errors
/// What [`Beam::solve`] refuses, a load without length, and places off the beam.
pub fn worst_place(
    beam: &Beam,
    fixed: &[BeamLoad],
    moving: &[MovingStrip],
    within: (f64, f64),
    effect: Effect,
    tolerance: f64,
) -> Result<WorstPlace, Faults> {
    let mut ranges = Ranges::default();
    ranges.take(beam.solve(fixed));
    let length = beam.length();
    let end = moving.iter().map(|s| s.to).fold(0.0, f64::max);
    for (i, s) in moving.iter().enumerate() {
        ranges.within(&format!("moving[{i}].from"), s.from, Dimension::Length, 0.0, 100.0);
        ranges.within(&format!("moving[{i}].to"), s.to, Dimension::Length, 0.0, 100.0);
        ranges.within(&format!("moving[{i}].force"), s.force, Dimension::Force, 0.0, 1e9);
        ranges.ordered(&format!("moving[{i}].to"), s.from, s.to);
    }
    ranges.within("within.from", within.0, Dimension::Length, -end - 1e-9, length);
    ranges.within("within.to", within.1, Dimension::Length, within.0, length);
    ranges.within("tolerance", tolerance, Dimension::Ratio, 1e-6, 0.5);
    if let Effect::Reaction(i) | Effect::Lift(i) = effect
        && i >= beam.supports().len()
    {
        ranges.wrong("landing::beam", "effect", text::LANDING_NO_SUCH_SUPPORT.with("count", beam.supports().len()));
    }
    ranges.done(()).map(|()| search(beam, fixed, moving, within, effect, tolerance))
}

fn search(
    beam: &Beam,
    fixed: &[BeamLoad],
    moving: &[MovingStrip],
    within: (f64, f64),
    effect: Effect,
    tolerance: f64,
) -> WorstPlace {
    let length = beam.length();
    let mut loads = fixed.to_vec();
    let mut value = |u: f64| {
        loads.truncate(fixed.len());
        loads.extend(moving.iter().filter_map(|s| {
            let (from, to) = ((u + s.from).max(0.0), (u + s.to).min(length));
            (to > from).then_some(BeamLoad::Strip { from, to, intensity: s.force / (s.to - s.from) })
        }));
        effect.of(&beam.solved(&loads))
    };
    let force: f64 = moving.iter().map(|s| s.force).sum();
    let densest: f64 = moving.iter().map(|s| s.force / (s.to - s.from)).sum();
    let (steep, size) = effect.steepness(beam, force, densest);
    greatest(&mut value, within, steep, tolerance, size)
}

/// The greatest of a function that changes by at most `steep` for each metre; `size`: what is big for it.
pub(crate) fn greatest(
    value: &mut impl FnMut(f64) -> f64,
    within: (f64, f64),
    steep: f64,
    tolerance: f64,
    size: f64,
) -> WorstPlace {
    let grid = 32;
    let places = (0..=grid).map(|k| within.0 + (within.1 - within.0) * f64::from(k) / f64::from(grid));
    let known: Vec<(f64, f64)> = places.map(|u| (u, value(u))).collect();
    let mut best = known.iter().copied().fold((within.0, f64::NEG_INFINITY), |b, k| if k.1 > b.1 { k } else { b });
    let mut bound = best.1;
    let mut open: Vec<[(f64, f64); 2]> = known.windows(2).map(|p| [p[0], p[1]]).collect();
    let mut left = MOST_EVALUATIONS;
    while let Some([a, b]) = open.pop() {
        let most = f64::midpoint(a.1, b.1) + steep * (b.0 - a.0) / 2.0;
        // Where nothing hogs there is nothing to gain: the load's own size then sets what is near enough.
        let enough = best.1 + tolerance * best.1.abs().max(size / 4.0);
        if most <= enough || left == 0 {
            bound = bound.max(most);
            continue;
        }
        left -= 1;
        let middle = f64::midpoint(a.0, b.0);
        let m = (middle, value(middle));
        if m.1 > best.1 {
            best = m;
        }
        open.extend([[a, m], [m, b]]);
    }
    WorstPlace { reached: best.1, bound: bound.max(best.1), place: best.0 }
}
