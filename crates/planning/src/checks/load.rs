//! The load itself: sound, and on a tool that fits it.

use crate::context::Context;
use crate::text;
use evidence::{Finding, Source, Status};
use machine::Attachment;

pub(crate) fn wrong_tool(ctx: &Context<'_>) -> bool {
    // Slung from forks is not planned here: a hung load needs its own attachment and chart.
    ctx.attachment.is_some_and(|a: &Attachment| a.hangs() != ctx.load.hanging.is_some())
}

pub(crate) fn status(ctx: &Context<'_>) -> Status {
    if wrong_tool(ctx) {
        return Status::NoGo;
    }
    match ctx.load.condition_seen {
        Some(true) => Status::Go,
        Some(false) => Status::NoGo,
        None => Status::Condition,
    }
}

pub(crate) fn finding(ctx: &Context<'_>) -> Finding {
    let status = status(ctx);
    let finding = if wrong_tool(ctx) {
        let name = ctx.attachment.map_or("", |a| a.name.as_str());
        Finding::new("load", status, text::LOAD_WRONG_TOOL.with("attachment", name)).remedy(text::DO_FITTING_TOOL)
    } else {
        match ctx.load.condition_seen {
            Some(true) => Finding::new("load", status, text::LOAD_SOUND),
            Some(false) => Finding::new("load", status, text::LOAD_UNSOUND).remedy(text::DO_REPACK),
            None => Finding::new("load", status, text::LOAD_NOT_SEEN).remedy(text::DO_LOOK_AT_LOAD),
        }
    };
    finding.source(Source::CommonPractice)
}
