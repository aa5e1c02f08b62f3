//! A machine whose upper part turns: its statics change with the turn, and are not computed here.

use crate::context::Context;
use crate::text;
use evidence::{Finding, Source, Status};

/// `None` for a machine that does not turn its upper part.
pub(crate) fn status(ctx: &Context<'_>) -> Option<Status> {
    ctx.machine.slew.map(|_| Status::CannotTell)
}

pub(crate) fn finding(ctx: &Context<'_>) -> Option<Finding> {
    status(ctx).map(|status| {
        Finding::new("slewing", status, text::SLEWING_NOT_COMPUTED.with("machine", &ctx.machine.name))
            .remedy(text::DO_SLEWING)
            .source(Source::Mechanics)
    })
}
