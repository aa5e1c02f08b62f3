//! What the operator does, in order, in the terms of the cab.

use crate::checks::{angle, metres};
use crate::context::Context;
use crate::posed::Posed;
use crate::{Task, text};
use evidence::Message;
use quantity::{Quantity, Si};

/// Drive in, level read, trial lift, raise, extend, set down, withdraw. Empty if the boom does not
/// get there: nobody is told how to do a lift that cannot be done.
pub(crate) fn steps(ctx: &Context<'_>, posed: &Posed) -> Vec<Message> {
    let (Ok([above, down]), Some(movement)) = (posed.reach, &posed.movement) else { return Vec::new() };
    let heading = geometry::heading_to_degrees(ctx.lift.stand.heading).to_radians();
    let mut out = vec![text::STEP_DRIVE_IN.with("heading", Quantity::new(heading, quantity::Dimension::Angle))];
    match ctx.lift.support {
        machine::SupportState::Tyres => {}
        machine::SupportState::Stabilizers => out.push(text::STEP_STABILIZERS.message()),
        machine::SupportState::Outriggers => out.push(text::STEP_OUTRIGGERS.message()),
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
            out.push(if ctx.hung() { text::STEP_UNHOOK } else { text::STEP_WITHDRAW }.message());
        }
        Task::PickUp => {
            out.push(text::STEP_RAISE.with("angle", angle(movement.free.angle)));
            out.push(text::STEP_EXTEND.with("extension", metres(movement.free.extension)));
            if ctx.hung() {
                out.push(text::STEP_HANG_PLUMB.message());
            }
            let take = if ctx.hung() { text::STEP_HOOK_ON } else { text::STEP_ENTER_FORKS };
            out.push(take.message());
            out.push(text::STEP_TRIAL_LIFT.message());
            out.push(text::STEP_TAKE_AWAY.with("height", clear));
        }
    }
    if let Some(gust) = crate::remedies::stop_gust(ctx.lift) {
        out.push(text::STEP_STOP_WHEN.with("gust", Quantity::new(gust, quantity::Dimension::Speed)));
    }
    out
}
