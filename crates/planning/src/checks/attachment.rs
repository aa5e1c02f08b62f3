//! The attachment: the maker's, locked, strong enough.

use super::lock::{Lock, lock};
use super::{kilograms, reserve, within};
use crate::context::Context;
use crate::text;
use evidence::{Finding, Source, Status};
use quantity::Si;

/// What attachment and machine carry at this load's centre by their own plates, kg.
fn capacity(ctx: &Context<'_>, attachment: &machine::Attachment) -> f64 {
    let centre = if ctx.load.hanging.is_some() { 0.0 } else { ctx.load.centre_ahead.high };
    attachment.capacity_at_kg(centre).min(ctx.machine.greatest_capacity.si())
}

pub(crate) fn status(ctx: &Context<'_>) -> Status {
    let Some(attachment) = ctx.attachment else { return Status::NoGo };
    let lock = match lock(ctx) {
        Lock::Open => Status::Stop,
        Lock::NotSeen | Lock::Changed => Status::Condition,
        Lock::Closed => Status::Go,
    };
    lock.max(within(ctx.load.mass_kg.high, capacity(ctx, attachment)))
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
    let looked = |id: evidence::TextId| {
        Finding::new("attachment", status, id.with("attachment", &attachment.name)).remedy(text::DO_SEE_LOCK)
    };
    let finding = match (status, lock(ctx)) {
        (Status::Stop, _) => looked(text::ATTACHMENT_OPEN),
        (Status::NoGo | Status::CannotTell, _) => {
            measured(Finding::new("attachment", status, said(text::ATTACHMENT_OVERLOADED)))
                .remedy(text::DO_LIGHTEN.with("mass", kilograms(capacity * ctx.load.mass_kg.nominal / mass)))
        }
        (Status::Condition, Lock::Changed) => looked(text::ATTACHMENT_CHANGED),
        (Status::Condition, _) => looked(text::ATTACHMENT_NOT_SEEN),
        (Status::Go, _) => measured(Finding::new("attachment", status, said(text::ATTACHMENT_FIT))),
    };
    finding.source(Source::Input {
        place: format!("{} {}", ctx.machine.id, attachment.id),
        certainty: evidence::Certainty::Plate,
    })
}
