//! What is on the machine today beside or instead of its description, and what it may weigh.

use super::kilograms;
use crate::context::Context;
use crate::text;
use evidence::{Finding, Message, Source, Status};
use machine::Body;
use quantity::Si;
use stability::{Masses, Stance};

/// Bodies whose least mass is told apart; any further ones count together, all full or all at their least.
const APART: usize = 4;

fn missing<'a>(ctx: &Context<'a>) -> impl Iterator<Item = &'a Body> {
    let (machine, without) = (ctx.machine, &ctx.unit.without);
    machine.bodies.iter().filter(|body| without.contains(&body.name))
}

/// Every corner of what may weigh more or less than the description, as what comes on top of it.
pub(crate) fn changes(ctx: &Context<'_>, stance: Stance) -> Vec<Masses> {
    let change = |to: Masses, body: &Body, kg: f64| to.changed(ctx.machine, stance, body, kg);
    let added = &ctx.unit.added;
    let mut always = Masses::default();
    for body in missing(ctx) {
        always = change(always, body, -body.mass.si());
    }
    for body in added {
        always = change(always, body, body.mass.si());
    }
    // What was added is no part of the plan's safety: taken off again it must hold as well.
    let taken_off = added.iter().map(|body| (body, -body.mass.si()));
    let there = ctx.machine.bodies.iter().filter(|body| !ctx.unit.without.contains(&body.name));
    let lighter: Vec<(&Body, f64)> = there
        .filter_map(|body| body.least.map(|least| (body, least.si() - body.mass.si())))
        .chain(taken_off)
        .filter(|(_, less)| *less != 0.0)
        .collect();
    let (apart, together) = lighter.split_at(lighter.len().min(APART));
    let mut all = vec![always];
    let mut double = |bodies: &[(&Body, f64)]| {
        let less = all.iter().map(|masses| bodies.iter().fold(*masses, |to, (body, kg)| change(to, body, *kg)));
        let less: Vec<_> = less.collect();
        all.extend(less);
    };
    apart.chunks(1).for_each(&mut double);
    if !together.is_empty() {
        double(together);
    }
    all
}

pub(crate) fn status(ctx: &Context<'_>) -> Status {
    if missing(ctx).next().is_some() {
        Status::NoGo
    } else if ctx.unit.added.is_empty() {
        Status::Go
    } else {
        Status::Condition
    }
}

/// Nothing where the machine is as described.
pub(crate) fn findings(ctx: &Context<'_>) -> Vec<Finding> {
    let place = || format!("{} today", ctx.machine.id);
    let found = |status, message: Message, remedy: evidence::TextId| {
        Finding::new("machine", status, message)
            .remedy(remedy)
            .source(Source::Input { place: place(), certainty: evidence::Certainty::Measured })
    };
    let without = missing(ctx).map(|body| {
        let message = text::FITTED_WITHOUT.with("body", &body.name).with("mass", kilograms(body.mass.si()));
        found(Status::NoGo, message, text::DO_FIT_AGAIN)
    });
    let added = ctx.unit.added.iter().map(|body| {
        let message = text::FITTED_ADDED.with("body", &body.name).with("mass", kilograms(body.mass.si()));
        found(Status::Condition, message, text::DO_ASK_ADDED)
    });
    without.chain(added).collect()
}
