//! What the landing carries: its own rating, with what already lies there.

use super::{kilograms, reserve, within};
use crate::context::Context;
use crate::{Task, text};
use evidence::{Finding, Source, Status};
use quantity::Si;

pub(crate) fn status(ctx: &Context<'_>) -> Status {
    if ctx.lift.task == Task::PickUp {
        return Status::Go;
    }
    match &ctx.landing.rating {
        None => Status::CannotTell,
        Some(r) => within(ctx.load.mass_kg.high + ctx.landing.occupied.si(), r.mass.si()),
    }
}

pub(crate) fn finding(ctx: &Context<'_>) -> Finding {
    let status = status(ctx);
    let name = &ctx.landing.name;
    let load = ctx.load.mass_kg.high;
    if ctx.lift.task == Task::PickUp {
        return Finding::new("landing", status, text::LANDING_RELIEVED.with("landing", name)).source(Source::Mechanics);
    }
    let Some(rating) = &ctx.landing.rating else {
        let message = text::LANDING_NO_RATING.with("landing", name).with("mass", kilograms(load));
        return Finding::new("landing", status, message).remedy(text::DO_ASK_RATING).source(Source::CommonPractice);
    };
    let total = load + ctx.landing.occupied.si();
    let limit = rating.mass.si();
    let id = if status == Status::Go { text::LANDING_CARRIES } else { text::LANDING_OVERLOADED };
    let message =
        id.with("landing", name).with("mass", kilograms(total)).with("rating", kilograms(limit)).with("by", &rating.by);
    let f = Finding::new("landing", status, message)
        .measured(kilograms(total), kilograms(limit), reserve(total, limit))
        .source(Source::Person { name: rating.by.clone(), statement: name.clone() });
    if status == Status::Go { f } else { f.remedy(text::DO_CLEAR_LANDING.with("mass", kilograms(total - limit))) }
}
