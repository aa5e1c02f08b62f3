//! One cell: what the single check says there, as soon as it is certain.

use super::FieldCell;
use super::reason::{Reason, of_check};
use crate::check::{WIND_LIMIT, check_context, everywhere, sudden_status};
use crate::checks::surely::{Surely, surely};
use crate::checks::{
    approach, bearing, buried, chart, edges, ground, level, line, load_shape, mat_stack, matters, obstacle, rutting,
    settlement, sight, statics, steering, zones,
};
use crate::context::Context;
use crate::posed::{Posed, aim, contacts, posed};
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
    let ctx = &afresh(ctx);
    let known = early(ctx).and_then(|(posed, so_far)| late(ctx, &posed, (so_far, floor), set_backs));
    let mut cell = match known {
        Err((by, status)) => FieldCell::refused(by, status),
        Ok(Some(placed)) => FieldCell { placed: Some(placed), by: None },
        Ok(None) => whole(ctx, set_backs),
    };
    // What is accepted for the lift's own place leaves matters open at any other.
    let open = if ctx.lift.own_place(ctx.stand) { Status::Go } else { matters::status(ctx) };
    if cell.by.is_none() && refuses(open) {
        cell = FieldCell::refused(Reason::Everywhere, open);
    }
    // The better of the two would go with how it was found out.
    if floor > Status::Go && cell.placed == Some(Status::Go) {
        cell.placed = Some(Status::Condition);
    }
    cell
}

/// Without what is known of how the ground gave where the machine stood before.
fn afresh<'a>(ctx: &Context<'a>) -> Context<'a> {
    Context { gives: [0.0; 2], leans: 0.0, ..*ctx }
}

/// What is asked before the movement and the forces: the machine as it stands, and the worst status.
///
/// How far the ground gives is not counted yet: it makes the box that is read in the chart larger, so what the chart refuses
/// without it, it refuses with it.
fn early(ctx: &Context<'_>) -> Result<(Posed, Status), Refusal> {
    const NOT_SURVEYED: Refusal = (Reason::Survey, Status::CannotTell);
    let aimed = aim(ctx).map_err(|_| NOT_SURVEYED)?;
    with(Status::Go, Reason::Approach, approach::pointed(ctx, aimed.target(), None).status())?;
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

/// Everything else, where the statics are proven to refuse nothing; `None` where the whole check has to tell.
fn late(
    ctx: &Context<'_>,
    posed: &Posed,
    (mut so_far, floor): (Status, Status),
    set_backs: &mut SetBacks,
) -> Result<Option<Status>, Refusal> {
    let Some(attachment) = ctx.attachment else { return Ok(None) };
    let mut ctx = *ctx;
    let soil = on_soil(&ctx, posed);
    let mut pressed = None;
    if soil {
        // How far the soil gives moves the machine, and what it carries goes with the forces: these are reckoned in full.
        let Some(forces) = statics::forces(&ctx, posed, attachment) else { return Ok(None) };
        let settling = settlement::settling(&ctx, &forces, posed);
        if let Some(by) = &settling {
            (ctx.gives, ctx.leans) = (by.gives, by.leans());
            so_far = with(so_far, Reason::Chart, chart::status(&ctx, Ok(posed)))?;
        }
        pressed = Some((forces, settling));
    }
    let ctx = &ctx;
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
    let force = match &pressed {
        None => {
            let carried = ground::by_person(ctx, Some(force));
            if refuses(carried) && ground::goes_with_force(ctx) {
                return Ok(None);
            }
            so_far = with(so_far, Reason::Ground, carried)?;
            force
        }
        Some((forces, settling)) => {
            let outcome = bearing::outcome(ctx, forces, posed);
            let carried = ground::status(ctx, Some(forces), Some(posed), outcome.as_ref());
            so_far = with(so_far, Reason::Ground, carried)?;
            let settled = settling.as_ref().and_then(|by| by.status(ctx, posed));
            so_far = with(so_far, Reason::Settlement, settled.unwrap_or(Status::Go))?;
            let ruts = rutting::outcome(ctx, forces, posed).map_or(Status::Go, |r| r.status());
            so_far = with(so_far, Reason::Rutting, ruts)?;
            forces.force
        }
    };
    let by_edges = edges::met(ctx, Some(posed), force, set_backs).iter().map(edges::EdgeMet::status).max();
    let by_buried = buried::met(ctx, Some(posed), force).iter().map(buried::BuriedMet::status).max();
    if !soil && by_edges.max(by_buried).is_some_and(|s| s > Status::Go) {
        // With forces no less than the exact ones patches are no smaller: only what is go with them is certain.
        return Ok(None);
    }
    so_far = with(so_far, Reason::Edges, by_edges.unwrap_or(Status::Go))?;
    so_far = with(so_far, Reason::Buried, by_buried.unwrap_or(Status::Go))?;
    for status in [steering::status(ctx, Some(posed)), sight::status(ctx, Some(posed))].into_iter().flatten() {
        so_far = with(so_far, Reason::Other, status)?;
    }
    Ok(Some(so_far))
}

/// True unless no stated soil comes near the machine, mats and the stand's error counted: then none of it is asked.
fn on_soil(ctx: &Context<'_>, posed: &Posed) -> bool {
    let middle = posed.footing.site_from_machine.translation.truncate();
    let on = contacts(ctx);
    let far = libm::hypot(on.front_x.abs().max(on.rear_x.abs()), on.front_half.max(on.rear_half));
    let [length, width] = mat_stack::outline(ctx).unwrap_or([0.0; 2]);
    let reach = far + libm::hypot(length, width) + ctx.policy.stand_error + PATCH;
    ctx.job.soils.iter().any(|soil| soil.reaches(middle, reach))
}

/// More than any patch of a tyre or pad reaches from its middle, and than levelling moves the machine, m.
const PATCH: f64 = 2.0;

/// True where it is proven, without the whole check, that nothing refuses but the maker's wind limit, which is not asked.
pub(crate) fn refuses_nothing(ctx: &Context<'_>, set_backs: &mut SetBacks) -> bool {
    let ctx = &afresh(ctx);
    let placed = early(ctx).and_then(|(posed, so_far)| late(ctx, &posed, (so_far, Status::Condition), set_backs));
    matches!(placed, Ok(Some(_))) && everywhere(ctx).iter().all(|(id, s)| *id == WIND_LIMIT || !refuses(*s))
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
