//! The lock of the rear axle: what of it is counted, and why not more.

use super::angle;
use crate::context::Context;
use crate::posed::Posed;
use crate::standing::{LockCounted, lock, locked_by_pads};
use crate::text;
use evidence::{Finding, Source, Status};
use machine::Lock;
use quantity::Si;

/// What is counted with the boom where the lift needs it; `None` where it does not get there.
fn counted(ctx: &Context<'_>, posed: Option<&Posed>) -> Option<LockCounted> {
    let [above, _] = posed?.reach.ok()?;
    Some(lock(ctx, above.angle))
}

/// A lock that the lift relies on is an act of the operator's, and to be tried first.
pub(crate) fn status(ctx: &Context<'_>) -> Status {
    if ctx.lift.axle_locked { Status::Condition } else { Status::Go }
}

/// Nothing where no lock comes into it.
pub(crate) fn finding(ctx: &Context<'_>, posed: Option<&Posed>) -> Option<Finding> {
    let status = status(ctx);
    let manual = || Source::Input {
        place: format!("{} rear_axle.lock", ctx.machine.id),
        certainty: evidence::Certainty::Manual,
    };
    let Some(by) = &ctx.unit.lock_tried else {
        let not_tried =
            || Finding::new("axle", status, text::AXLE_NOT_TRIED).remedy(text::DO_TRY_LOCK).source(manual());
        return ctx.lift.axle_locked.then(not_tried);
    };
    if ctx.lift.support == machine::SupportState::Outriggers {
        return None;
    }
    let message = match (counted(ctx, posed)?, ctx.machine.rear.lock_angle) {
        (LockCounted::Free, _) => return None,
        (LockCounted::NotTried, _) => text::AXLE_NOT_COUNTED.message(),
        (LockCounted::Locked, Some(trigger)) if ctx.machine.rear.lock == Lock::AboveBoomAngle => {
            text::AXLE_LOCKS_ITSELF.with("by", by).with("trigger", angle(trigger.si()))
        }
        (LockCounted::Locked, _) if locked_by_pads(ctx) && !ctx.lift.axle_locked => {
            text::AXLE_LOCKED_BY_PADS.with("by", by)
        }
        (LockCounted::Locked, _) => text::AXLE_LOCKED.with("by", by),
    };
    let person = Source::Person { name: by.clone(), statement: String::new() };
    let finding = Finding::new("axle", status, message).source(manual()).source(person);
    Some(if status == Status::Go { finding } else { finding.remedy(text::STEP_LOCK_AXLE) })
}
