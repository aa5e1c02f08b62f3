//! What the operator does, in order, in the terms of the cab.

use crate::checks::{angle, metres};
use crate::context::Context;
use crate::posed::Posed;
use crate::{Task, text};
use evidence::{Message, TextId};
use machine::AttachmentKind;
use quantity::{Quantity, Si};

/// Drive in, level read, trial lift, raise, extend, set down, withdraw. Empty if the boom does not
/// get there: nobody is told how to do a lift that cannot be done.
pub(crate) fn steps(ctx: &Context<'_>, posed: &Posed) -> Vec<Message> {
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
    match ctx.lift.task {
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

/// How the tool lets go of the load.
fn lets_go(ctx: &Context<'_>) -> TextId {
    match ctx.attachment.map(|a| &a.kind) {
        _ if ctx.hung() => text::STEP_UNHOOK,
        Some(AttachmentKind::Bucket(_)) => text::STEP_TIP_OUT,
        Some(AttachmentKind::Clamp(_)) => text::STEP_OPEN_CLAMP,
        Some(AttachmentKind::Other(_)) => text::STEP_TOOL_OFF,
        _ => text::STEP_WITHDRAW,
    }
}

/// How the tool takes the load.
fn takes(ctx: &Context<'_>) -> TextId {
    match ctx.attachment.map(|a| &a.kind) {
        _ if ctx.hung() => text::STEP_HOOK_ON,
        Some(AttachmentKind::Bucket(_)) => text::STEP_FILL_BUCKET,
        Some(AttachmentKind::Clamp(_)) => text::STEP_CLOSE_CLAMP,
        Some(AttachmentKind::Other(_)) => text::STEP_TOOL_ON,
        _ => text::STEP_ENTER_FORKS,
    }
}
