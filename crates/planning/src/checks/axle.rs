//! The lock of the rear axle: what of it is counted, and why not more.

use super::angle;
use crate::context::Context;
use crate::posed::Posed;
use crate::standing::{LockCounted, lock};
use crate::text;
use evidence::{Finding, Source, Status};
use machine::Lock;
use quantity::Si;

/// What is counted with the boom where the lift needs it; `None` where it does not get there.
fn counted(ctx: &Context<'_>, posed: Option<&Posed>) -> Option<LockCounted> {
    let [above, _] = posed?.reach.ok()?;
    Some(lock(ctx, above.angle))
}

/// A lock that the lift relies on, and that nobody tried, is to be tried first.
pub(crate) fn status(ctx: &Context<'_>) -> Status {
    if ctx.lift.axle_locked && ctx.unit.lock_tried.is_none() { Status::Condition } else { Status::Go }
}

/// Nothing where no lock comes into it.
pub(crate) fn finding(ctx: &Context<'_>, posed: Option<&Posed>) -> Option<Finding> {
    let status = status(ctx);
    let manual = || Source::Input {
        place: format!("{} rear_axle.lock", ctx.machine.id),
        certainty: evidence::Certainty::Manual,
    };
    if status != Status::Go {
        return Some(Finding::new("axle", status, text::AXLE_NOT_TRIED).remedy(text::DO_TRY_LOCK).source(manual()));
    }
    let by = ctx.unit.lock_tried.as_ref()?;
    if counted(ctx, posed)? != LockCounted::Locked || ctx.lift.support == machine::SupportState::Outriggers {
        return None;
    }
    let message = match (ctx.machine.rear.lock, ctx.machine.rear.lock_angle) {
        (Lock::AboveBoomAngle, Some(trigger)) => {
            text::AXLE_LOCKS_ITSELF.with("by", by).with("trigger", angle(trigger.si()))
        }
        _ => text::AXLE_LOCKED.with("by", by),
    };
    let person = Source::Person { name: by.clone(), statement: String::new() };
    Some(Finding::new("axle", status, message).source(manual()).source(person))
}
