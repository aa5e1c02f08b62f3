//! The stand field: every cell against the single check at its place, whatever is proven without it.

use super::never_pass::{demo, whole_demo};
use super::samples::Seeded;
use core::ops::ControlFlow;
use evidence::Verdict;
use planning::{FieldSpec, Job, Reason, SetBacks, StandField, StandSearch, Worker, check_lift_with, refused_first};

/// Verdict and first reason of the single check with the machine in the middle of the cell.
fn single(job: &Job, lift: usize, search: &StandSearch<'_>, i: usize, kept: &mut SetBacks) -> (Verdict, Option<Reason>) {
    let mut at = job.lifts[lift].clone();
    at.stand = search.stand(i);
    let check = check_lift_with(job, &at, kept).unwrap();
    (check.verdict(), refused_first(&check))
}

fn whole(search: &StandSearch<'_>) -> StandField {
    search.run(&mut |_, _, _| ControlFlow::Continue(()))
}

/// Asserts some cells; how many of them pass.
fn equal(job: &Job, lift: usize, search: &StandSearch<'_>, cells: &[usize]) -> usize {
    let mut kept = SetBacks::default();
    let mut worker = Worker::new();
    let mut field = search.field();
    let mut passing = 0;
    for &i in cells {
        field.fill([(i, search.ask(i, &mut worker))]);
        let (verdict, reason) = single(job, lift, search, i, &mut kept);
        let at = search.stand(i);
        assert_eq!(field.verdict(i), Some(verdict), "lift {lift} cell {i} at {at:?}: {:?} {reason:?}", field.cell(i));
        assert_eq!(field.reason(i), reason, "lift {lift} cell {i} at {at:?}");
        passing += usize::from(verdict != Verdict::NoGo);
    }
    passing
}
