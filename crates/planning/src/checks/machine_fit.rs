//! Is the machine fit for work today: inspected, not tagged out, seat belt, roll-over frame and door sound.

use crate::context::Context;
use crate::{CabSeen, text};
use evidence::{Finding, Source, Status};

fn inspection(ctx: &Context<'_>) -> Status {
    if ctx.unit.tagged_out.is_some() {
        Status::Stop
    } else if ctx.unit.inspected_by.is_none() {
        Status::CannotTell
    } else {
        Status::Go
    }
}

fn cab(ctx: &Context<'_>) -> Status {
    match ctx.unit.cab {
        CabSeen::Sound => Status::Go,
        CabSeen::NotSeen => Status::Condition,
        CabSeen::Faulty => Status::NoGo,
    }
}

pub(crate) fn status(ctx: &Context<'_>) -> Status {
    inspection(ctx).max(cab(ctx))
}

/// The inspection, and the cab where it is not known to be sound.
pub(crate) fn findings(ctx: &Context<'_>) -> Vec<Finding> {
    let mut out = vec![inspected(ctx)];
    let status = cab(ctx);
    let seen = |id: evidence::TextId| id.with("machine", &ctx.machine.name);
    match ctx.unit.cab {
        CabSeen::Sound => {}
        CabSeen::NotSeen => out.push(
            Finding::new("machine", status, seen(text::CAB_NOT_SEEN))
                .remedy(text::DO_LOOK_AT_CAB)
                .source(Source::CommonPractice),
        ),
        CabSeen::Faulty => out.push(
            Finding::new("machine", status, seen(text::CAB_FAULTY))
                .remedy(text::DO_REPAIR)
                .source(Source::CommonPractice),
        ),
    }
    out
}

fn inspected(ctx: &Context<'_>) -> Finding {
    let name = &ctx.machine.name;
    let status = inspection(ctx);
    match (&ctx.unit.tagged_out, &ctx.unit.inspected_by) {
        (Some(reason), _) => {
            let message = text::MACHINE_TAGGED_OUT.with("machine", name).with("reason", reason);
            Finding::new("machine", status, message).remedy(text::DO_REPAIR).source(Source::CommonPractice)
        }
        (None, Some(by)) => {
            let message = text::MACHINE_INSPECTED.with("machine", name).with("by", by);
            let source = Source::from_memory("29 CFR 1910.178(q)(7)");
            Finding::new("machine", status, message).source(source)
        }
        (None, None) => {
            let message = text::MACHINE_NOT_INSPECTED.with("machine", name);
            let source = Source::from_memory("29 CFR 1910.178(q)(7)");
            Finding::new("machine", status, message).remedy(text::DO_INSPECT).source(source)
        }
    }
}
