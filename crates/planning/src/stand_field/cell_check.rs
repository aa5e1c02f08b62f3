//! One cell: what the single check says there, as soon as it is certain.

use super::FieldCell;
use super::reason::{Reason, of_check};
use crate::check::{check_context, sudden_status};
use crate::checks::surely::{Surely, surely};
use crate::checks::{
    approach, buried, chart, edges, ground, level, line, load_shape, obstacle, sight, steering, zones,
};
use crate::context::Context;
use crate::posed::{Posed, aim, posed};
use crate::set_backs::SetBacks;
use evidence::Status;

/// What refuses, and how.
type Refusal = (Reason, Status);

/// True for a status that refuses.
fn refuses(status: Status) -> bool {
    status > Status::Condition
}

/// The status so far together with the next one; what refuses ends it.
fn with(so_far: Status, by: Reason, status: Status) -> Result<Status, Refusal> {
    if refuses(status) { Err((by, status)) } else { Ok(so_far.max(status)) }
}

/// What a stand gives. Cheap checks come first and end it where they refuse: each is the same function that the single
/// check asks, with the same numbers, and comes before the later ones in [`super::ORDER`].
///
/// `floor`: the worst status of what no stand can mend. From a condition on a stand counts as no better than a condition.
pub(super) fn answer(ctx: &Context<'_>, floor: Status, set_backs: &mut SetBacks) -> FieldCell {
    let known = early(ctx).and_then(|(posed, so_far)| late(ctx, &posed, (so_far, floor), set_backs));
    let mut cell = match known {
        Err((by, status)) => FieldCell::refused(by, status),
        Ok(Some(placed)) => FieldCell { placed: Some(placed), by: None },
        Ok(None) => whole(ctx, set_backs),
    };
    // The better of the two would go with how it was found out.
    if floor > Status::Go && cell.placed == Some(Status::Go) {
        cell.placed = Some(Status::Condition);
    }
    cell
}

/// What is asked before the movement and the forces: the machine as it stands, and the worst status.
///
/// How far the ground gives is not counted yet: it makes the box that is read in the chart larger, so what the chart refuses
/// without it, it refuses with it.
fn early(ctx: &Context<'_>) -> Result<(Posed, Status), Refusal> {
    const NOT_SURVEYED: Refusal = (Reason::Survey, Status::CannotTell);
    let aimed = aim(ctx).map_err(|_| NOT_SURVEYED)?;
    with(Status::Go, Reason::Approach, approach::approach_from(ctx, aimed.target(), None).status())?;
    if !aimed.reaches() {
        return Err((Reason::Reach, Status::NoGo));
    }
    let posed = posed(ctx, aimed).map_err(|_| NOT_SURVEYED)?;
    let so_far = with(Status::Go, Reason::Approach, approach::approach(ctx, &posed).status())?;
    let level = level::level(ctx, &posed).map_or(Status::CannotTell, |l| l.status(ctx));
    let so_far = with(so_far, Reason::Level, level)?;
    let so_far = with(so_far, Reason::Chart, chart::status(ctx, Ok(&posed)))?;
    let tilted = load_shape::tilted(ctx, Some(&posed)).map_or(Status::Go, |s| s.status());
    Ok((posed, with(so_far, Reason::Load, tilted)?))
}

/// Everything else, where the statics are proven to be go and the forces need not be known exactly; `None` where the whole
/// check has to tell.
fn late(
    ctx: &Context<'_>,
    posed: &Posed,
    (mut so_far, floor): (Status, Status),
    set_backs: &mut SetBacks,
) -> Result<Option<Status>, Refusal> {
    // How far stated soil gives moves the machine, and what it carries goes with the exact forces.
    let Some(attachment) = ctx.attachment.filter(|_| ctx.job.soils.is_empty()) else { return Ok(None) };
    for l in &ctx.job.lines {
        so_far = with(so_far, Reason::Line, line::outcome(ctx, Some(posed), Some(attachment), l).status(ctx, l))?;
    }
    if let Some(status) = obstacle::outcomes(ctx, Some(posed)).status() {
        so_far = with(so_far, Reason::Obstacles, status)?;
    }
    let zones = zones::met(ctx, Some(posed));
    for asked in [Reason::Obstacles, Reason::People] {
        for met in zones.iter().filter(|m| of_check(m.check) == asked) {
            so_far = with(so_far, asked, met.status)?;
        }
    }
    // Whether it is go or a condition is asked only where nothing is a condition already.
    let graded = so_far == Status::Go && floor == Status::Go;
    let Some(Surely { force, status }) = surely(ctx, posed, attachment, graded) else { return Ok(None) };
    so_far = so_far.max(status);
    for met in zones.iter().filter(|m| of_check(m.check) == Reason::Ground) {
        so_far = with(so_far, Reason::Ground, met.status)?;
    }
    let carried = ground::by_person(ctx, Some(force));
    if refuses(carried) && ground::goes_with_force(ctx) {
        return Ok(None);
    }
    so_far = with(so_far, Reason::Ground, carried)?;
    // With forces no less than the exact ones patches are no smaller: what is go with them is go.
    let by_edges = edges::met(ctx, Some(posed), force, set_backs).iter().map(|m| m.status()).max();
    let by_buried = buried::met(ctx, Some(posed), force).iter().map(|m| m.status()).max();
    if by_edges.max(by_buried).is_some_and(|s| s > Status::Go) {
        return Ok(None);
    }
    for status in [steering::status(ctx, Some(posed)), sight::status(ctx, Some(posed))].into_iter().flatten() {
        so_far = with(so_far, Reason::Other, status)?;
    }
    Ok(Some(so_far))
}

/// The single check.
fn whole(ctx: &Context<'_>, set_backs: &mut SetBacks) -> FieldCell {
    let check = check_context(*ctx, set_backs);
    let statuses = check.at_stand().iter().copied().chain(sudden_status(&check).map(|s| ("sudden", s)));
    let mut cell = FieldCell { placed: Some(Status::Go), by: None };
    for (id, status) in statuses {
        cell.placed = cell.placed.max(Some(status));
        if refuses(status) {
            let this = of_check(id);
            cell.by = Some(cell.by.map_or(this, |by| by.min(this)));
        }
    }
    cell
}
