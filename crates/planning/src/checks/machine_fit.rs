//! Is the machine fit for work today.

use crate::context::Context;
use crate::text;
use evidence::{Finding, Source, Status};

pub(crate) fn status(ctx: &Context<'_>) -> Status {
    if ctx.unit.tagged_out.is_some() {
        Status::Stop
    } else if ctx.unit.inspected_by.is_none() {
        Status::CannotTell
    } else {
        Status::Go
    }
}

pub(crate) fn finding(ctx: &Context<'_>) -> Finding {
    let name = &ctx.machine.name;
    let status = status(ctx);
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
