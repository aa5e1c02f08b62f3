//! The slip circle that holds worst: a grid over exits, entries and curvature, then finer around the best few.
//!
//! A circle is named by where it leaves the ground, where it enters, and how far it turns between: for every
//! centre and radius that cuts the section there is exactly one such triple, and none of them misses the ground.
//! Exits lie on the face (upper parts too: a wheel at the crest breaks off less than the whole face), at the toe and
//! before it; entries reach to [`REACH`] depths behind the crest and as far behind the last load. What lies beyond
//! is not searched. The same section gives the same circle, always.

use crate::edge_text as text;
use crate::input_fault::InputFault;
use crate::slip_circle::{Slice, SlipCircle, SlipSolver};
use crate::slope_section::{SlopeSection, Surcharge};
use crate::wedge::load_values;
use evidence::{Source, Step, Trace};
use libm::atan2;
use quantity::{Dimension, Quantity};
use std::f64::consts::FRAC_PI_2;

/// Depths behind the crest, and behind the last load, to which entries are searched.
pub const REACH: f64 = 3.0;

/// What a search found.
#[derive(Debug, Clone, PartialEq)]
pub struct WorstSlip {
    /// Factor of safety.
    pub factor: f64,
    /// The circle.
    pub circle: SlipCircle,
    /// Its slices, from the exit up.
    pub slices: Vec<Slice>,
    /// Level push of the water in the crack, N per metre, and its arm about the centre, m.
    pub crack: [f64; 2],
    /// Circles tried, and how many of them gave no factor.
    pub tried: usize,
    /// Circles that gave no factor.
    pub refused: usize,
}

/// Exits: share of the face from the crest; above 1 before the toe, in depths from it. A narrow wheel at the crest of a
/// battered face goes down through the first of them.
const EXITS: [f64; 14] = [0.03, 0.06, 0.12, 0.25, 0.42, 0.6, 0.8, 1.0, 1.2, 1.5, 1.9, 2.5, 3.2, 4.0];
/// Shares of the turning that is possible.
const TURNS: [f64; 7] = [0.05, 0.2, 0.36, 0.52, 0.68, 0.84, 0.97];
/// Entries between the crest and the end of the search.
const ENTRIES: usize = 12;
/// Exits dive no steeper than this before the toe, rad. Soil with friction refuses well before, by its `m_α`.
const STEEPEST_EXIT: f64 = 1.3;
/// Starts of the finer search.
const STARTS: usize = 5;

/// Entries within each strip that stands for a load anywhere in it.
const INNER: usize = 6;

/// Step of the turning at which the finer search ends.
const FINEST: f64 = 1e-3;

/// Exit, entry and turning of a circle: share of the face, m, share of what is possible.
type Triple = [f64; 3];

/// The worst circle of a section with strips of load; `None` where no circle gives a factor.
///
/// # Errors
/// Every fault of section and loads.
pub fn worst_slip(
    section: &SlopeSection,
    loads: &[Surcharge],
    trace: &mut impl Trace,
) -> Result<Option<WorstSlip>, Vec<InputFault>> {
    let faults = section.faults(loads);
    if !faults.is_empty() {
        return Err(faults);
    }
    let found = worst_of_sound(section, loads);
    if let Some(w) = &found {
        w.step(loads, trace);
    }
    Ok(found)
}

impl WorstSlip {
    /// Its step: the sums over the slices that make up the factor.
    pub(crate) fn step(&self, loads: &[Surcharge], trace: &mut impl Trace) {
        trace.step(|| {
            let sum = |part: &dyn Fn(&Slice) -> f64| self.slices.iter().map(part).sum::<f64>();
            let length = |v| Quantity::new(v, Dimension::Length);
            let force = |v| Quantity::new(v, Dimension::Stiffness);
            let mut values = vec![
                ("x_c".into(), length(self.circle.centre[0])),
                ("z_c".into(), length(self.circle.centre[1])),
                ("R".into(), length(self.circle.radius)),
                ("ΣW".into(), force(sum(&|s| s.weight))),
                ("ΣQ".into(), force(sum(&|s| s.load))),
                ("Σ [(c·b + (W + Q − u·b)·tan φ) / m_α]".into(), {
                    force(sum(&|s| s.cohesion_and_friction() / s.m_alpha(self.factor)))
                }),
                ("Σ (W + Q)·sin α".into(), force(sum(&|s| (s.weight + s.load) * s.slope[0]))),
                ("V".into(), force(self.crack[0])),
                ("a".into(), length(self.crack[1])),
                ("n".into(), Quantity::number(self.slices.len() as f64)),
            ];
            values.extend(load_values(loads));
            Step {
                title: text::STEP_SLIP_CIRCLE.message(),
                formula: "F = Σ [(c·b + (W + Q − u·b)·tan φ) / m_α] / (Σ (W + Q)·sin α + V·a/R)".into(),
                values,
                result: ("F".into(), Quantity::number(self.factor)),
                source: Source::from_memory("Bishop 1955, simplified method of slices"),
            }
        });
    }
}

/// A search that is going on.
struct Search<'a> {
    solver: SlipSolver<'a>,
    section: &'a SlopeSection,
    reach: f64,
    tried: usize,
    refused: usize,
}

/// The same for a section that was looked at.
pub(crate) fn worst_of_sound(section: &SlopeSection, loads: &[Surcharge]) -> Option<WorstSlip> {
    let (mut search, worst) = Search::over(section, loads, None);
    let (_, triple) = worst?;
    let circle = search.circle(triple)?;
    let factor = search.solver.factor(&circle).ok()?;
    let slices = search.solver.slices().to_vec();
    let crack = search.solver.crack_push(&circle);
    Some(WorstSlip { factor, circle, slices, crack, tried: search.tried, refused: search.refused })
}

/// The least factor, load that helps left out ([`SlipSolver::without_help`]); or any below `required`, the first that
/// is met. NaN where no circle gives one.
pub(crate) fn least_without_help(section: &SlopeSection, loads: &[Surcharge], required: f64) -> f64 {
    Search::over(section, loads, Some(required)).1.map_or(f64::NAN, |(factor, _)| factor)
}

impl<'a> Search<'a> {
    /// Grid, then finer. With `enough` load that helps is left out, and the first factor below it ends the search.
    fn over(section: &'a SlopeSection, loads: &'a [Surcharge], enough: Option<f64>) -> (Self, Option<(f64, Triple)>) {
        let last = loads.iter().map(|s| s.to).fold(0.0, f64::max);
        let reach = last + REACH * section.depth;
        let solver = SlipSolver::new(section, loads);
        let solver = if let Some(required) = enough { solver.without_help(required) } else { solver };
        let mut search = Self { solver, section, reach, tried: 0, refused: 0 };
        // Where strips stand for loads that may be anywhere in them, a slip may begin behind any of those places.
        let entries = entries(section, loads, reach, if enough.is_some() { INNER } else { 0 });
        let ends = |f: f64| enough.is_some_and(|least| f < least);
        let mut best: Vec<(f64, Triple)> = Vec::with_capacity(STARTS + 1);
        for exit in EXITS {
            for entry in &entries {
                let entry = *entry;
                for turn in TURNS {
                    let triple = [exit, entry, turn];
                    let f = search.factor(triple);
                    if ends(f) {
                        return (search, Some((f, triple)));
                    }
                    keep(&mut best, f, triple);
                }
            }
        }
        let mut worst: Option<(f64, Triple)> = None;
        for (f, start) in best {
            let found = search.finer(f, start);
            if worst.is_none_or(|(least, _)| found.0 < least) {
                worst = Some(found);
            }
            if ends(found.0) {
                break;
            }
        }
        (search, worst)
    }
}

/// Places on the surface at which circles begin: closer together near the crest, at both edges of every load, and at up
/// to so many places within each, a tenth of the depth apart or more.
fn entries(section: &SlopeSection, loads: &[Surcharge], reach: f64, within: usize) -> Vec<f64> {
    let mut out: Vec<f64> = (1..=ENTRIES)
        .map(|i| {
            let share = i as f64 / ENTRIES as f64;
            reach * share * share
        })
        .collect();
    out.extend(loads.iter().flat_map(|s| [s.from.max(0.02 * section.depth), s.to + 0.01 * section.depth]));
    for s in loads.iter().filter(|_| within > 0) {
        let inner = ((s.to - s.from) / (0.1 * section.depth)).floor().clamp(0.0, within as f64);
        out.extend((1..=inner as usize).map(|i| s.from + (s.to - s.from) * i as f64 / (inner + 1.0)));
    }
    out.sort_by(f64::total_cmp);
    out.dedup();
    out
}

/// Keeps the best starts, of different exits: neighbours in the grid lead to the same place.
fn keep(best: &mut Vec<(f64, Triple)>, f: f64, triple: Triple) {
    if !f.is_finite() {
        return;
    }
    if let Some(same) = best.iter_mut().find(|(_, t)| t[0] == triple[0]) {
        if f < same.0 {
            *same = (f, triple);
        }
    } else {
        best.push((f, triple));
    }
    best.sort_by(|a, b| a.0.total_cmp(&b.0));
    best.truncate(STARTS);
}

impl Search<'_> {
    fn circle(&self, [exit, entry, turn]: Triple) -> Option<SlipCircle> {
        let s = self.section;
        let from = if exit <= 1.0 {
            [-s.batter * exit, -s.depth * exit]
        } else {
            [-s.batter - (exit - 1.0) * s.depth, -s.depth]
        };
        let to = [entry, -s.crack.before(-from[1]).depth];
        // A vertical chord, or one that the crack cuts off.
        if to[1] <= from[1] + 1e-9 * s.depth || to[0] <= from[0] + 1e-9 * s.depth {
            return None;
        }
        let chord = atan2(to[1] - from[1], to[0] - from[0]);
        let most = (FRAC_PI_2 - chord).min(chord + STEEPEST_EXIT);
        Some(SlipCircle::through(from, to, turn * most))
    }

    fn factor(&mut self, triple: Triple) -> f64 {
        self.tried += 1;
        let found = self.circle(triple).and_then(|c| self.solver.factor(&c).ok());
        if found.is_none() {
            self.refused += 1;
        }
        found.unwrap_or(f64::INFINITY)
    }

    /// One value after the other, a step up or down while that helps, then on in the direction of the whole sweep;
    /// where nothing helps, half the steps.
    fn finer(&mut self, mut f: f64, mut at: Triple) -> (f64, Triple) {
        let depth = self.section.depth;
        let mut steps = [0.12, 0.12 * depth.max(0.3 * at[1]), 0.1];
        let bounds = [[0.02, 1.0 + REACH], [1e-3 * depth, self.reach], [0.005, 1.0]];
        let bounded = |i: usize, value: f64| value.clamp(bounds[i][0], bounds[i][1]);
        while steps[2] > FINEST {
            let before = at;
            for i in 0..3 {
                for sign in [1.0, -1.0] {
                    let mut next = at;
                    next[i] = bounded(i, at[i] + sign * steps[i]);
                    let g = if next[i] == at[i] { f64::INFINITY } else { self.factor(next) };
                    if g < f {
                        (f, at) = (g, next);
                        break;
                    }
                }
            }
            if at == before {
                steps = steps.map(|s| s / 2.0);
                continue;
            }
            // Valleys run askew of the three values: what helped in each is tried again in all at once.
            loop {
                let mut next = at;
                for i in 0..3 {
                    next[i] = bounded(i, 2.0 * at[i] - before[i]);
                }
                let g = if next == at { f64::INFINITY } else { self.factor(next) };
                if g >= f {
                    break;
                }
                (f, at) = (g, next);
            }
        }
        (f, at)
    }
}
