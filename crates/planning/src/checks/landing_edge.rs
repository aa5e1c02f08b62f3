//! The edge that the load comes over: closed, opened for it, or open; and who stands behind it.
//!
//! Rules: 29 CFR 1926.502(d) and 1926.501(b)(3) for those in hoisting areas (from memory): guarded, or each tied; the rest
//! common practice.

use crate::context::Context;
use crate::landing_strength::{EdgeGuard, StandsOn};
use crate::{Task, text};
use evidence::{Finding, Message, Source, Status, TextId};
use ground::edge_rules::LEAST_DROP;

/// `None`: there is nothing to say.
pub(crate) fn status(ctx: &Context<'_>) -> Option<Status> {
    let s = ctx.strength();
    // Where a load is taken away nobody has to be beside it, unless somebody says that they are.
    if ctx.lift.task == Task::PickUp && (s.edge.is_none() || s.people.is_none()) {
        return None;
    }
    Some(match s.edge {
        Some(EdgeGuard::AlwaysClosed | EdgeGuard::NoDrop) => Status::Go,
        // Nobody said how many: they count as there.
        Some(EdgeGuard::NoGuard) if s.people_counted() > 0 => Status::NoGo,
        None if on_the_ground(ctx) => return None,
        Some(EdgeGuard::Opened | EdgeGuard::NoGuard) | None => Status::Condition,
    })
}

/// True if the landing is the ground itself, or lies on it lower than a drop that counts. Unknown ground is none.
fn on_the_ground(ctx: &Context<'_>) -> bool {
    let stands = ctx.strength().stands == Some(StandsOn::Ground);
    stands && ctx.job.ground.height(ctx.landing.at).is_some_and(|(h, _)| (ctx.landing.level - h).abs() <= LEAST_DROP)
}

pub(crate) fn finding(ctx: &Context<'_>) -> Option<Finding> {
    let status = status(ctx)?;
    let said = |id: TextId| -> Message { id.with("landing", &ctx.landing.name) };
    let (message, remedies): (_, Vec<TextId>) = match (ctx.strength().edge, status) {
        (Some(EdgeGuard::AlwaysClosed), _) => (said(text::LANDING_EDGE_CLOSED), vec![]),
        (Some(EdgeGuard::NoDrop), _) => (said(text::LANDING_EDGE_NO_DROP), vec![]),
        (Some(EdgeGuard::Opened), _) => (said(text::LANDING_EDGE_OPENED), vec![text::DO_TIE_AT_EDGE]),
        (Some(EdgeGuard::NoGuard), Status::NoGo) => {
            (said(text::LANDING_EDGE_OPEN), vec![text::DO_GUARD_EDGE, text::DO_NOBODY_ON_LANDING])
        }
        (Some(EdgeGuard::NoGuard), _) => (said(text::LANDING_EDGE_OPEN_EMPTY), vec![text::DO_GUARD_EDGE]),
        (None, _) => (said(text::LANDING_EDGE_NOT_STATED), vec![text::DO_STATE_EDGE]),
    };
    let finding = Finding::new("landing-edge", status, message);
    let finding = remedies.into_iter().fold(finding, Finding::remedy);
    Some(finding.source(Source::from_memory("29 CFR 1926.501(b)(3), 1926.502(d)")).source(Source::CommonPractice))
}
