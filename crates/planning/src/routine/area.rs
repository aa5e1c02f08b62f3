//! The cells of a routine's area, asked for every corner of its family.

use super::corners::{Corners, corners, landings, lift_of};
use crate::context::Context;
use crate::posed::{Posed, pose};
use crate::stand_field::{FieldCell, FieldGrid, FieldSpec, StandField, StandSearch, Worker};
use crate::{Job, Reason, Routine};
use evidence::{Ranged, Status};

/// Side of a cell, m: no wider than the stand's usual error to both sides.
pub(super) const CELL: f64 = 0.2;

/// How far the boom may point off the landing, rad.
pub(super) const TURNED: f64 = core::f64::consts::PI / 180.0;

/// What a routine came to, in memory.
pub struct RoutineCheck<'r> {
    pub(super) routine: &'r Routine,
    /// `None`: its load is not in the job.
    pub(super) corners: Option<Corners>,
    /// One for each landing of the routine.
    pub(super) landings: Vec<OfLanding>,
}

/// A routine at one of its landings.
pub(super) struct OfLanding {
    /// Index in `Job::landings`.
    pub(super) landing: usize,
    /// Cells of the routine's area with the worst of every corner; the rest is not yet known. `None` where nothing can be
    /// looked at.
    pub(super) field: Option<StandField>,
}

/// Checks a routine at every corner of its family, in cells of 0.2 m. The same job always gives the same.
pub fn check_routine<'r>(job: &Job, routine: &'r Routine) -> RoutineCheck<'r> {
    check_in_cells(job, routine, CELL)
}

pub(super) fn check_in_cells<'r>(job: &Job, routine: &'r Routine, cell: f64) -> RoutineCheck<'r> {
    let corners = corners(job, routine);
    let of_landing = |landing: usize| OfLanding {
        landing,
        field: corners.as_ref().and_then(|c| field(job, routine, c, landing, cell)),
    };
    let landings = landings(job, routine).into_iter().map(of_landing).collect();
    RoutineCheck { routine, corners, landings }
}

/// `None` if machine or landing are not in the job, or the area lies too far from it.
fn field(job: &Job, routine: &Routine, corners: &Corners, landing: usize, cell: f64) -> Option<StandField> {
    let (job, first) = corners.job(job);
    let centre = job.landings.get(landing)?.at;
    let far = routine.stands.outer.iter().map(|p| p.distance(centre)).fold(0.0, f64::max);
    let spec = FieldSpec { radius: far + cell, cell };
    let mut whole: Option<StandField> = None;
    for load in first..job.loads.len() {
        let lift = lift_of(&job, routine, load, landing);
        let search = StandSearch::new(&job, &lift, spec)?;
        let mut field = whole.take().unwrap_or_else(|| search.field());
        let ctx = Context::new(&job, &lift)?;
        let mut worker = Worker::new();
        for i in cells(routine, &field.grid) {
            let before = field.cell(i);
            // What one load is refused for, no other mends.
            if before.by.is_none() {
                let asked = ask(&search, &ctx, routine, i, &mut worker);
                field.fill([(i, worse(before, asked))]);
            }
        }
        join(&mut field.everywhere, &search.field().everywhere);
        whole = Some(field);
    }
    whole
}

/// Cells whose middle lies in the routine's area.
pub(super) fn cells(routine: &Routine, grid: &FieldGrid) -> Vec<usize> {
    let Some((low, high)) = routine.stands.bounds() else { return Vec::new() };
    let side = grid.side();
    // Columns or rows between two coordinates.
    let span = |low: f64, high: f64, centre: f64| {
        let at = |v: f64| ((v - centre) / grid.cell + grid.half as f64).clamp(0.0, side as f64);
        (at(low).floor() as usize)..(at(high).ceil() as usize + 1).min(side)
    };
    let columns = span(low.x, high.x, grid.centre.x);
    let rows = span(low.y, high.y, grid.centre.y);
    let all = rows.flat_map(|row| columns.clone().map(move |column| row * side + column));
    all.filter(|i| grid.inside(*i) && routine.stands.contains(grid.at(*i))).collect()
}

/// The single check, straight and turned, and the routine's own limit of the ground.
fn ask(search: &StandSearch<'_>, ctx: &Context<'_>, routine: &Routine, i: usize, worker: &mut Worker) -> FieldCell {
    let mut cell = search.ask(i, worker);
    for turn in [TURNED, -TURNED] {
        if cell.by.is_none() {
            cell = worse(cell, search.ask_turned(i, turn, worker));
        }
    }
    if cell.by.is_some() {
        return cell;
    }
    let steep = match pose(&Context { stand: search.stand(i), ..*ctx }) {
        Ok(posed) => within_limit(&posed, routine.ground),
        Err(_) => Status::CannotTell,
    };
    if steep > Status::Condition { FieldCell { placed: Some(steep), by: Some(Reason::Level) } } else { cell }
}

/// Steepest slope of the ground under the machine, as a slope: along and across with the ground's accuracy and the stand's
/// error, together.
pub(super) fn steepest(posed: &Posed) -> f64 {
    let most = |r: Ranged| r.low.abs().max(r.high.abs());
    libm::hypot(most(posed.ground.along), most(posed.ground.across).max(most(posed.ground.rear_across)))
}

fn within_limit(posed: &Posed, most: f64) -> Status {
    let slope = steepest(posed);
    if slope.is_nan() || most.is_nan() {
        Status::CannotTell
    } else if slope <= most {
        Status::Go
    } else {
        Status::NoGo
    }
}

/// The worse of two answers for one place; what is not yet known counts as nothing said.
fn worse(a: FieldCell, b: FieldCell) -> FieldCell {
    let by = match (a.by, b.by) {
        (Some(x), Some(y)) => Some(x.min(y)),
        (x, y) => x.or(y),
    };
    FieldCell { placed: a.placed.max(b.placed), by }
}

/// What no stand can mend, of all corners: each check once, with its worst status, worst first.
fn join(all: &mut Vec<(&'static str, Status)>, more: &[(&'static str, Status)]) {
    for (id, status) in more {
        match all.iter_mut().find(|(known, _)| known == id) {
            Some((_, worst)) => *worst = (*worst).max(*status),
            None => all.push((id, *status)),
        }
    }
    all.sort_by_key(|(_, status)| core::cmp::Reverse(*status));
}
