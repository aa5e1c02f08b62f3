//! One cell: what the single check says there, as soon as it is certain.

use super::reason::{Reason, of_check};
use super::{FieldCell, reason};
use crate::check::{check_context, sudden_status};
use crate::checks::{approach, chart, level, load_shape};
use crate::context::Context;
use crate::posed::{aim, posed};
use crate::set_backs::SetBacks;
use evidence::Status;

/// True for a status that refuses.
fn refuses(status: Status) -> bool {
    status > Status::Condition
}

/// What a stand gives. Cheap checks come first and end it where they refuse: each is the same function that the single
/// check asks, with the same numbers, and comes before the later ones in [`super::ORDER`].
pub(super) fn answer(ctx: &Context<'_>, set_backs: &mut SetBacks) -> FieldCell {
    match early(ctx) {
        Some((by, status)) => FieldCell::refused(by, status),
        None => whole(ctx, set_backs),
    }
}

/// What refuses before the movement is looked at.
///
/// How far the ground gives is not counted yet: it makes the box that is read in the chart larger, so what the chart refuses
/// without it, it refuses with it.
fn early(ctx: &Context<'_>) -> Option<(Reason, Status)> {
    let Ok(aimed) = aim(ctx) else { return Some((Reason::Survey, Status::CannotTell)) };
    let approach = approach::approach_from(ctx, aimed.target(), None).status();
    if refuses(approach) {
        return Some((Reason::Approach, approach));
    }
    if !aimed.reaches() {
        return Some((Reason::Reach, Status::NoGo));
    }
    let Ok(posed) = posed(ctx, aimed) else { return Some((Reason::Survey, Status::CannotTell)) };
    let approach = approach::approach(ctx, &posed).status();
    if refuses(approach) {
        return Some((Reason::Approach, approach));
    }
    let level = level::level(ctx, &posed).map_or(Status::CannotTell, |l| l.status(ctx));
    if refuses(level) {
        return Some((Reason::Level, level));
    }
    let chart = chart::status(ctx, Ok(&posed));
    if refuses(chart) {
        return Some((Reason::Chart, chart));
    }
    let tilted = load_shape::tilted(ctx, Some(&posed)).map_or(Status::Go, |s| s.status());
    refuses(tilted).then_some((Reason::Load, tilted))
}

/// The single check.
fn whole(ctx: &Context<'_>, set_backs: &mut SetBacks) -> FieldCell {
    let check = check_context(*ctx, set_backs);
    let statuses = check.at_stand().iter().copied().chain(sudden_status(&check).map(|s| ("sudden", s)));
    let mut placed = Status::Go;
    let mut by: Option<reason::Reason> = None;
    for (id, status) in statuses {
        placed = placed.max(status);
        if refuses(status) {
            let this = of_check(id);
            by = Some(by.map_or(this, |by| by.min(this)));
        }
    }
    FieldCell { placed: Some(placed), by }
}
