//! What the operator does, in order, in the terms of the cab.

use crate::checks::{angle, metres};
use crate::context::Context;
use crate::posed::Posed;
use crate::{BoomMovement, Task, text};
use evidence::{Message, TextId};
use machine::AttachmentKind;
use quantity::{Quantity, Si};

/// Drive in, level read, trial lift, raise, extend, set down, withdraw. Empty if the boom does not
/// get there: nobody is told how to do a lift that cannot be done.
///
/// Where the movement is not the plain one, each of its steps is told.
pub(crate) fn steps(ctx: &Context<'_>, posed: &Posed, moves: Option<&BoomMovement>) -> Vec<Message> {
    let (Ok([above, down]), Some(movement)) = (posed.reach, &posed.movement) else { return Vec::new() };
    let heading = geometry::heading_to_degrees(ctx.stand.heading).to_radians();
    let mut out = vec![text::STEP_DRIVE_IN.with("heading", Quantity::new(heading, quantity::Dimension::Angle))];
    match ctx.lift.support {
        machine::SupportState::Tyres => {}
        machine::SupportState::Stabilizers => out.push(text::STEP_STABILIZERS.message()),
        machine::SupportState::Outriggers => out.push(text::STEP_OUTRIGGERS.message()),
    }
    if posed.levelled.is_some() {
        out.push(text::STEP_LEVEL_FRAME.message());
    }
    if ctx.lift.axle_locked {
        out.push(text::STEP_LOCK_AXLE.message());
    }
    let Some(tolerance) = crate::checks::chart::choose(ctx, Some(posed)).map(|c| c.level) else { return Vec::new() };
    out.push(
        text::STEP_READ_LEVEL
            .with("across", angle(tolerance.sideways.si()))
            .with("along", angle(tolerance.fore_aft.si())),
    );
    let clear = metres(ctx.clear());
    let other = moves.filter(|m| !m.plain);
    if let Some(moves) = other {
        out.extend(in_order(ctx, moves));
    }
    match ctx.lift.task {
        _ if other.is_some() => {}
        Task::SetDown => {
            if ctx.hung() {
                out.push(text::STEP_HANG_PLUMB.message());
            }
            out.push(text::STEP_TRIAL_LIFT.message());
            out.push(text::STEP_RAISE.with("angle", angle(above.angle)));
            out.push(text::STEP_EXTEND.with("extension", metres(above.extension)));
            out.push(
                text::STEP_SET_DOWN
                    .with("height", clear)
                    .with("angle", angle(down.angle))
                    .with("extension", metres(down.extension)),
            );
            out.push(lets_go(ctx).message());
        }
        Task::PickUp => {
            out.push(text::STEP_RAISE.with("angle", angle(movement.free.angle)));
            out.push(text::STEP_EXTEND.with("extension", metres(movement.free.extension)));
            if ctx.hung() {
                out.push(text::STEP_HANG_PLUMB.message());
            }
            out.push(takes(ctx).message());
            out.push(text::STEP_TRIAL_LIFT.message());
            out.push(text::STEP_TAKE_AWAY.with("height", clear));
        }
    }
    if posed.levelled.is_some() || ctx.lift.axle_locked {
        out.push(text::STEP_UNLOCK.message());
    }
    if let Some(gust) = crate::remedies::stop_gust(ctx.lift) {
        out.push(text::STEP_STOP_WHEN.with("gust", Quantity::new(gust, quantity::Dimension::Speed)));
    }
    out
}

/// The steps of a movement that is not the plain one, with the trial lift as soon as the load is on the boom.
fn in_order(ctx: &Context<'_>, moves: &BoomMovement) -> Vec<Message> {
    let mut out = vec![text::STEP_WAY_ORDER.message()];
    let mut on = false;
    for (number, step) in moves.steps.iter().enumerate() {
        // The first position is where it starts from.
        let moved = number > 0;
        let taken = step.loaded && !on;
        // A load that is picked up is on the boom once the forks are under it.
        if taken && ctx.hung() {
            out.push(text::STEP_HANG_PLUMB.message());
        }
        if moved {
            out.push(step.what.clone());
        }
        if taken {
            out.push(text::STEP_TRIAL_LIFT.message());
        }
        on = step.loaded;
    }
    out.push(text::STEP_WAY_CARRY.message());
    out
}

/// How the tool lets go of the load.
pub(crate) fn lets_go(ctx: &Context<'_>) -> TextId {
    match ctx.attachment.map(|a| &a.kind) {
        _ if ctx.hung() => text::STEP_UNHOOK,
        Some(AttachmentKind::Bucket(_)) => text::STEP_TIP_OUT,
        Some(AttachmentKind::Clamp(_)) => text::STEP_OPEN_CLAMP,
        Some(AttachmentKind::Other(_)) => text::STEP_TOOL_OFF,
        _ => text::STEP_WITHDRAW,
    }
}

/// How the tool takes the load.
pub(crate) fn takes(ctx: &Context<'_>) -> TextId {
    match ctx.attachment.map(|a| &a.kind) {
        _ if ctx.hung() => text::STEP_HOOK_ON,
        Some(AttachmentKind::Bucket(_)) => text::STEP_FILL_BUCKET,
        Some(AttachmentKind::Clamp(_)) => text::STEP_CLOSE_CLAMP,
        Some(AttachmentKind::Other(_)) => text::STEP_TOOL_ON,
        _ => text::STEP_ENTER_FORKS,
    }
}
