//! A field that is asked again for other weights of its load.

use super::cell_check::{Kept, answer_again};
use super::search::{FieldSpec, StandSearch, Worker};
use super::{FieldCell, FieldGrid, StandField};
use crate::context::Context;
use crate::{Job, Lift};
use core::ops::ControlFlow;
use evidence::Ranged;
use machine::Load;

/// A field that keeps of every cell what its load's weight does not change: how the machine stands and heads, where the boom
/// is, what the chart leaves, what stands around. Each answer is that of a [`StandSearch`] of a job whose load weighs so.
///
/// Takes some kilobytes for each cell in which the chart carried the load.
pub struct WeighedField<'a> {
    ctx: Context<'a>,
    load: Load,
    grid: FieldGrid,
    kept: Vec<Kept>,
}

impl<'a> WeighedField<'a> {
    /// `None` as for [`StandSearch::new`].
    pub fn new(job: &'a Job, lift: &'a Lift, spec: FieldSpec) -> Option<Self> {
        let StandSearch { ctx, grid, .. } = StandSearch::new(job, lift, spec)?;
        let kept = core::iter::repeat_with(Kept::default).take(grid.side() * grid.side()).collect();
        Some(Self { ctx, load: ctx.load.clone(), grid, kept })
    }

    /// From now on the load weighs so, kg; its size and centre stay.
    pub fn weigh(&mut self, mass_kg: Ranged) {
        self.load.mass_kg = mass_kg;
    }

    /// The whole field with the load as it weighs now, coarse to fine; see [`StandSearch::run`].
    pub fn run(&mut self, progress: &mut dyn FnMut(&StandField, usize, usize) -> ControlFlow<()>) -> StandField {
        let Self { ctx, load, grid, kept } = self;
        let search = StandSearch::of(&ctx.with_load(load), *grid);
        search.run_by(&mut |i, worker| ask(&search, i, kept, worker), progress)
    }
}

/// What a stand in cell `i` gives.
fn ask(search: &StandSearch<'_>, i: usize, kept: &mut [Kept], worker: &mut Worker) -> FieldCell {
    let mut ctx = search.ctx;
    let Some(kept) = kept.get_mut(i) else { return search.ask(i, worker) };
    let at = search.grid.at(i);
    answer_again(&mut ctx, |ctx| search.aim.point(ctx, at), kept, search.floor, &mut worker.set_backs)
}
