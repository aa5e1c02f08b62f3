//! Asking for the cells of a stand field: each by itself, in any order, by any number of workers.

use super::aim::Aim;
use super::cell_check;
use super::{FieldCell, FieldGrid, StandField};
use crate::check::everywhere;
use crate::context::Context;
use crate::{Job, Lift, SetBacks, Stand};
use core::ops::ControlFlow;
use evidence::Status;
use geometry::DVec2;

/// How far and how fine.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct FieldSpec {
    /// Radius about the landing, m.
    pub radius: f64,
    /// Side of a cell, m.
    pub cell: f64,
}

impl Default for FieldSpec {
    /// 15 m in cells of 0.1 m.
    fn default() -> Self {
        Self { radius: 15.0, cell: 0.1 }
    }
}

/// Cells in a row and column at most: 0.1 m over 200 m.
const MOST_CELLS: f64 = 2001.0;

/// What one worker keeps from cell to cell: answers beside excavations. Answers do not depend on it.
#[derive(Debug, Clone, Default)]
pub struct Worker {
    pub(super) set_backs: SetBacks,
}

impl Worker {
    /// A worker that only asks whether wheels may stand where they do.
    pub fn new() -> Self {
        let mut set_backs = SetBacks::default();
        set_backs.only_whether(true);
        Self { set_backs }
    }
}

/// Steps in cells of the passes from coarse to fine.
const PASSES: [usize; 4] = [8, 4, 2, 1];

/// The search for stands of one lift: its machine, attachment, support state, load and landing, wherever the lift itself
/// says that the machine stands.
pub struct StandSearch<'a> {
    pub(super) ctx: Context<'a>,
    pub(super) aim: Aim,
    pub(super) grid: FieldGrid,
    everywhere: Vec<(&'static str, Status)>,
    /// The worst of those.
    pub(super) floor: Status,
}

impl<'a> StandSearch<'a> {
    /// `None` if the lift refers to a machine, load or landing that the job does not have, if the landing's place is not a
    /// number, or if radius or cell are not positive lengths that make at most some million cells.
    pub fn new(job: &'a Job, lift: &'a Lift, spec: FieldSpec) -> Option<Self> {
        let ctx = Context::new(job, lift)?;
        let half = (spec.radius / spec.cell + 1e-9).floor();
        let sound = spec.cell > 0.0 && (1.0..=MOST_CELLS / 2.0).contains(&half) && ctx.landing.at.is_finite();
        if !sound {
            return None;
        }
        let grid = FieldGrid { centre: ctx.landing.at, cell: spec.cell, half: half as usize };
        Some(Self::of(&ctx, grid))
    }

    pub(super) fn of(ctx: &Context<'a>, grid: FieldGrid) -> Self {
        let everywhere = everywhere(ctx);
        let floor = everywhere.iter().map(|(_, s)| *s).max().unwrap_or(Status::Go);
        Self { aim: Aim::of(ctx), grid, everywhere, floor, ctx: *ctx }
    }

    /// The field before anything is asked.
    pub fn field(&self) -> StandField {
        let mut everywhere: Vec<_> = self.everywhere.iter().copied().filter(|(_, s)| *s > Status::Go).collect();
        everywhere.sort_by_key(|(_, s)| core::cmp::Reverse(*s));
        StandField::empty(self.grid, everywhere, self.aim.directed())
    }

    /// The machine in the middle of cell `i`, pointing as it would there.
    pub fn stand(&self, i: usize) -> Stand {
        let at = self.grid.at(i);
        Stand { at, heading: self.aim.heading(&self.ctx, at) }
    }

    /// What a stand in cell `i` gives.
    pub fn ask(&self, i: usize, worker: &mut Worker) -> FieldCell {
        let mut ctx = self.ctx;
        let aimed = self.aim.point(&mut ctx, self.grid.at(i));
        cell_check::answer(&mut ctx, aimed, self.floor, &mut worker.set_backs)
    }

    /// The same with the machine turned from there by so much, rad counter-clockwise.
    pub fn ask_turned(&self, i: usize, turn: f64, worker: &mut Worker) -> FieldCell {
        let Stand { at, heading } = self.stand(i);
        let stand = Stand { at, heading: heading + turn };
        cell_check::answer(&mut Context { stand, ..self.ctx }, None, self.floor, &mut worker.set_backs)
    }

    /// Every cell of the disc in the order in which a picture of it becomes finer: every eighth in both ways, every fourth,
    /// every second, the rest.
    pub fn coarse_to_fine(&self) -> Vec<usize> {
        let side = self.grid.side();
        let mut out = Vec::with_capacity(self.grid.count());
        let mut before = usize::MAX;
        for step in PASSES {
            let on = |k: usize, step: usize| k.abs_diff(self.grid.half).is_multiple_of(step);
            let known = |i: usize| before != usize::MAX && on(i % side, before) && on(i / side, before);
            out.extend(
                (0..side * side)
                    .filter(|i| on(i % side, step) && on(i / side, step) && !known(*i) && self.grid.inside(*i)),
            );
            before = step;
        }
        out
    }

    /// Only what lies by ground that passes in another field, within one of its cells: the rest stays not yet known.
    pub(crate) fn near(&self, coarse: &StandField) -> StandField {
        let passes = |at: DVec2| {
            let cell = coarse.grid.cell_at(at).map(|i| coarse.cell(i));
            cell.and_then(|c| c.placed).is_some_and(|s| s <= Status::Condition)
        };
        let side = [-1.0, 0.0, 1.0].map(|k| k * coarse.grid.cell);
        let by = |at: DVec2| side.iter().any(|x| side.iter().any(|y| passes(at + DVec2::new(*x, *y))));
        let mut field = self.field();
        let mut worker = Worker::new();
        let asked: Vec<usize> = field.cells().map(|(i, _)| i).filter(|i| by(self.grid.at(*i))).collect();
        field.fill(asked.into_iter().map(|i| (i, self.ask(i, &mut worker))));
        field
    }

    /// The whole field by one worker, coarse to fine. `progress` is told the field so far and how many cells are asked of
    /// how many, some hundred times; where it breaks, the rest stays not yet known.
    pub fn run(&self, progress: &mut dyn FnMut(&StandField, usize, usize) -> ControlFlow<()>) -> StandField {
        self.run_by(&mut |i, worker| self.ask(i, worker), progress)
    }

    /// The same, each cell asked in another way.
    pub(super) fn run_by(
        &self,
        ask: &mut dyn FnMut(usize, &mut Worker) -> FieldCell,
        progress: &mut dyn FnMut(&StandField, usize, usize) -> ControlFlow<()>,
    ) -> StandField {
        let mut field = self.field();
        let order = self.coarse_to_fine();
        let mut worker = Worker::new();
        let mut done = 0;
        for some in order.chunks((order.len() / 128).max(1)) {
            let answers: Vec<_> = some.iter().map(|i| (*i, ask(*i, &mut worker))).collect();
            done += answers.len();
            field.fill(answers);
            if progress(&field, done, order.len()).is_break() {
                break;
            }
        }
        field
    }
}
