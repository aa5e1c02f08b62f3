//! The best stands of a field: checked whole, with how far off they may be.

use super::tolerance::{BY_EYE, BY_EYE_TURNED, StandTolerance, tolerance};
use super::{FieldCell, Reason, StandField, StandSearch};
use crate::boom_path::turns::Turns;
use crate::check::{check_lift_with, governing};
use crate::context::Context;
use crate::{Job, Lift, SetBacks, Stand, Task};
use evidence::{Status, Verdict};
use serde::{Deserialize, Serialize};

/// Checks whose reserve goes with the place: by the others no stand is better than another.
const OF_PLACE: [&str; 12] = [
    "level",
    "chart",
    "load-factor",
    "tilt",
    "contacts",
    "line",
    "ground",
    "settlement",
    "approach",
    "obstacles",
    "edges",
    "buried",
];

/// What refuses a plain movement of the boom and may let another one pass.
const BY_MOVEMENT: [Reason; 3] = [Reason::Line, Reason::Obstacles, Reason::People];

/// A stand that was looked for and found: where, and what it is worth.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, schemars::JsonSchema)]
pub struct FoundStand {
    /// East of the middle of the front axle, m.
    pub east_m: f64,
    /// North, m.
    pub north_m: f64,
    /// Heading, degrees clockwise from north.
    pub heading_deg: f64,
    /// Verdict of the whole check there.
    pub verdict: Verdict,
    /// Least reserve of the checks that go with the place; `null`: none has a number.
    pub reserve: Option<f64>,
    /// The check that governs, by its id.
    pub governing: String,
    /// How far off it may be.
    pub tolerance: StandTolerance,
}

/// Clear ground beyond which more makes a stand no better, m.
const ENOUGH: f64 = 0.5;
/// A reserve beyond which more is no reason to stand elsewhere (ours).
const ENOUGH_LEFT: f64 = 0.1;
/// Stands nearer to each other than this are one, m.
const APART: f64 = 1.5;
/// Stands checked whole, for each that is asked for.
const TRIED: usize = 2;

/// The best stands of a field, the best first, at least 1.5 m from each other: first by verdict, then whether they may be
/// set out by eye, then by the least reserve of the checks that go with the place. Among the cells that pass those are tried
/// first at which the machine may be turned to either side as far as a heading set by eye asks, of these those with most clear
/// ground around them, and of these the nearest to the landing; a better one may have been left out.
pub fn best_stands(
    job: &Job,
    lift: &Lift,
    search: &StandSearch<'_>,
    field: &StandField,
    set_backs: &mut SetBacks,
    count: usize,
) -> Vec<FoundStand> {
    let tried = count.saturating_mul(TRIED);
    let mut of = |cells: Vec<usize>| -> Vec<Checked> {
        cells.into_iter().filter_map(|i| checked(job, lift, search.stand(i), set_backs)).collect()
    };
    let mut checked = of(candidates(search, field, tried, |cell| cell.placed.is_some_and(|s| s <= Status::Condition)));
    if checked.is_empty() {
        // Where only the plain movement meets something another one may pass.
        checked = of(candidates(search, field, tried, |cell| matches!(cell.by, Some(r) if BY_MOVEMENT.contains(&r))));
    }
    checked.sort_by(|a, b| a.verdict.cmp(&b.verdict).then(b.least().total_cmp(&a.least())));
    checked.truncate(count);
    let mut found: Vec<_> = checked.into_iter().filter_map(|c| c.found(job, lift, set_backs)).collect();
    found.sort_by(|a, b| rank(a).cmp(&rank(b)).then(b.least().total_cmp(&a.least())));
    found
}

/// A place as a found stand; `None` for a no-go there, or if the lift refers to what the job does not have.
pub(crate) fn found_at(job: &Job, lift: &Lift, stand: Stand, set_backs: &mut SetBacks) -> Option<FoundStand> {
    checked(job, lift, stand, set_backs)?.found(job, lift, set_backs)
}

/// A stand whose check was made.
struct Checked {
    stand: Stand,
    verdict: Verdict,
    reserve: Option<f64>,
    governing: String,
    turns: Option<Turns>,
}

/// `None` for a no-go, or if the lift refers to what the job does not have.
fn checked(job: &Job, lift: &Lift, stand: Stand, set_backs: &mut SetBacks) -> Option<Checked> {
    let there = lift.from_stand(stand);
    let check = check_lift_with(job, &there, set_backs)?;
    if check.verdict() == Verdict::NoGo {
        return None;
    }
    let findings = check.findings();
    let of_place = |f: &&evidence::Finding| OF_PLACE.contains(&f.check.as_ref());
    let reserves = findings.iter().filter(of_place).filter_map(|f| f.reserve);
    let reserve = reserves.reduce(|a, b| if a.is_nan() || a <= b { a } else { b });
    let governing = findings.get(governing(&findings)).map_or_else(String::new, |f| f.check.to_string());
    Some(Checked { stand, verdict: check.verdict(), reserve, governing, turns: check.ctx.turns })
}

impl Checked {
    fn least(&self) -> f64 {
        sure(self.reserve)
    }

    fn found(self, job: &Job, lift: &Lift, set_backs: &mut SetBacks) -> Option<FoundStand> {
        let Self { stand, verdict, reserve, governing, turns } = self;
        let ctx = Context { stand, turns, ..Context::new(job, lift)? };
        let tolerance = tolerance(&ctx, set_backs);
        let verdict = if led(&ctx, &tolerance) { verdict } else { verdict.max(Verdict::GoWithConditions) };
        Some(FoundStand {
            east_m: stand.at.x,
            north_m: stand.at.y,
            heading_deg: geometry::heading_to_degrees(stand.heading),
            verdict,
            reserve,
            governing,
            tolerance,
        })
    }
}

/// Verdict, in which it counts already whether a stand must be set out by tape; then whether it may be by eye.
fn rank(found: &FoundStand) -> (Verdict, bool) {
    (found.verdict, !found.tolerance.by_eye())
}

/// A reserve to compare by: what has none, or is not a number, comes last.
fn sure(reserve: Option<f64>) -> f64 {
    reserve.filter(|r| !r.is_nan()).unwrap_or(f64::NEG_INFINITY)
}

impl FoundStand {
    fn least(&self) -> f64 {
        sure(self.reserve)
    }

    /// True if another one has no better verdict, is no easier to set out, and keeps no more where this one keeps little.
    pub(crate) fn as_good_as(&self, other: &Self) -> bool {
        rank(self) <= rank(other) && self.least() >= other.least().min(ENOUGH_LEFT)
    }

    /// True if it comes before another one.
    pub(crate) fn better_than(&self, other: &Self) -> bool {
        (rank(self), -self.least()) < (rank(other), -other.least())
    }
}

/// True where a stand need not be set out by tape. Forks that are driven into a load are led by sight of it: there only the
/// place counts.
pub(crate) fn led(ctx: &Context<'_>, tolerance: &StandTolerance) -> bool {
    // Another reason than the aim is not seen from the seat.
    let aimed = matches!(tolerance.turn_by, None | Some(Reason::Approach));
    tolerance.by_eye() || (ctx.lift.task == Task::PickUp && aimed && tolerance.disc_m >= BY_EYE - 1e-9)
}

/// Cells that may do, most promising first, each at least [`APART`] from those before it.
fn candidates(
    search: &StandSearch<'_>,
    field: &StandField,
    count: usize,
    may: impl Fn(FieldCell) -> bool,
) -> Vec<usize> {
    let grid = field.grid;
    let mut passing: Vec<_> = field
        .cells()
        .filter(|(_, cell)| may(*cell))
        .map(|(i, cell)| {
            let clear = clear_around(field, i, &may);
            let steps = (clear.min(ENOUGH) * 10.0).round() as i64;
            let turned = field.directed && search.aim.slack(search.stand(i).heading) < BY_EYE_TURNED - 1e-9;
            (cell.placed, (turned, -steps), grid.at(i).distance(grid.centre), i)
        })
        .collect();
    passing.sort_by(|a, b| (a.0, a.1).cmp(&(b.0, b.1)).then(a.2.total_cmp(&b.2)).then(a.3.cmp(&b.3)));
    let mut out: Vec<usize> = Vec::new();
    for (.., i) in passing {
        if out.len() == count {
            break;
        }
        if out.iter().all(|o| grid.at(*o).distance(grid.at(i)) >= APART) {
            out.push(i);
        }
    }
    out
}

/// Distance to the nearest cell that does not pass, as far as [`ENOUGH`] and a cell, m.
fn clear_around(field: &StandField, i: usize, may: &impl Fn(FieldCell) -> bool) -> f64 {
    let grid = field.grid;
    let reach = (ENOUGH / grid.cell).ceil() as i64 + 1;
    let at = grid.at(i);
    let mut least = f64::INFINITY;
    for dy in -reach..=reach {
        for dx in -reach..=reach {
            let there = at + geometry::DVec2::new(dx as f64, dy as f64) * grid.cell;
            let passes = grid.cell_at(there).is_some_and(|k| may(field.cell(k)));
            if !passes {
                least = least.min(there.distance(at));
            }
        }
    }
    least
}
