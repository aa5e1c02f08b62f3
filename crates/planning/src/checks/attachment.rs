//! The attachment: the maker's, locked, strong enough.

use super::{kilograms, reserve, within};
use crate::context::Context;
use crate::text;
use evidence::{Finding, Source, Status};
use machine::LockSeen;
use quantity::Si;

fn lock(ctx: &Context<'_>) -> LockSeen {
    ctx.unit
        .attachment_lock
        .iter()
        .find(|(id, _)| *id == ctx.lift.attachment)
        .map_or(LockSeen::NotSeen, |(_, seen)| *seen)
}

/// What attachment and machine carry at this load's centre by their own plates, kg.
fn capacity(ctx: &Context<'_>, attachment: &machine::Attachment) -> f64 {
    let centre = if ctx.load.hanging.is_some() { 0.0 } else { ctx.load.centre_ahead.high };
    attachment.capacity_at_kg(centre).min(ctx.machine.greatest_capacity.si())
}

pub(crate) fn status(ctx: &Context<'_>) -> Status {
    let Some(attachment) = ctx.attachment else { return Status::NoGo };
    if lock(ctx) == LockSeen::Open {
        Status::Stop
    } else if within(ctx.load.mass_kg.high, capacity(ctx, attachment)) != Status::Go {
        Status::NoGo
    } else if lock(ctx) == LockSeen::NotSeen {
        Status::Condition
    } else {
        Status::Go
    }
}

pub(crate) fn finding(ctx: &Context<'_>) -> Finding {
    let status = status(ctx);
    let Some(attachment) = ctx.attachment else {
        let known: Vec<_> = ctx.machine.attachments.iter().map(|a| a.id.as_str()).collect();
        let message = text::ATTACHMENT_UNKNOWN
            .with("attachment", &ctx.lift.attachment)
            .with("machine", &ctx.machine.name)
            .with("known", known.join(", "));
        return Finding::new("attachment", status, message)
            .remedy(text::DO_LISTED_ATTACHMENT)
            .source(Source::second_hand("29 CFR 1926.602(c)(1)"));
    };
    let (mass, capacity) = (ctx.load.mass_kg.high, capacity(ctx, attachment));
    let measured = |f: Finding| f.measured(kilograms(mass), kilograms(capacity), reserve(mass, capacity));
    let said = |id: evidence::TextId| {
        id.with("attachment", &attachment.name).with("mass", kilograms(mass)).with("capacity", kilograms(capacity))
    };
    let finding = match (status, lock(ctx)) {
        (Status::Stop, _) => {
            Finding::new("attachment", status, text::ATTACHMENT_OPEN.with("attachment", &attachment.name))
                .remedy(text::DO_SEE_LOCK)
        }
        (Status::NoGo, _) => measured(Finding::new("attachment", status, said(text::ATTACHMENT_OVERLOADED)))
            .remedy(text::DO_LIGHTEN.with("mass", kilograms(capacity * ctx.load.mass_kg.nominal / mass))),
        (Status::Condition, _) => {
            Finding::new("attachment", status, text::ATTACHMENT_NOT_SEEN.with("attachment", &attachment.name))
                .remedy(text::DO_SEE_LOCK)
        }
        _ => measured(Finding::new("attachment", status, said(text::ATTACHMENT_FIT))),
    };
    finding.source(Source::Input {
        place: format!("{} {}", ctx.machine.id, attachment.id),
        certainty: evidence::Certainty::Plate,
    })
}
