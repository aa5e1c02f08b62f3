//! Fork blades under this load: length, load centre, offset, sleeves. Their own state is in `blades`.

use super::{blades, kilograms, metres, reserve, spare, within};
use crate::context::Context;
use crate::text;
use evidence::{Finding, Silent, Source, Status, Step, Trace, Working};
use machine::forks::pair_capacity_kg;
use machine::{AttachmentKind, BLADE_BREADTH, Forks};
use quantity::{Quantity, Si};

fn forks<'a>(ctx: &Context<'a>) -> Option<&'a Forks> {
    match &ctx.attachment?.kind {
        AttachmentKind::Forks(f) => Some(f),
        _ => None,
    }
}

/// Worst offset of the load's centre from the middle of the blades, m. A side shift moves the blades
/// with the load and changes nothing in it.
fn offset(ctx: &Context<'_>) -> f64 {
    let left = ctx.load.centre_left;
    if left.high.abs() >= left.low.abs() { left.high } else { left.low }
}

/// Load deeper than the blades by more than half a blade: the pack is not on them, wherever its centre is.
fn too_deep(ctx: &Context<'_>, forks: &Forks) -> bool {
    ctx.load.depth > forks.length() * 1.5
}

/// Share of the length that carries beyond which the load's centre lies too near the tips (common
/// practice: the centre well within the blades; the figure is ours).
const CENTRE_LIMIT: f64 = 0.75;
/// Share from which that is a condition (ours).
const CENTRE_NEAR: f64 = 0.60;

/// How the load's centre, at its farthest, lies on blades or sleeves.
fn centre_on_blades(ctx: &Context<'_>, forks: &Forks) -> Status {
    let (centre, length) = (ctx.load.centre_ahead.high, forks.length());
    let near = match within(centre, CENTRE_NEAR * length + 1e-9) {
        Status::NoGo => Status::Condition,
        other => other,
    };
    within(centre, CENTRE_LIMIT * length + 1e-9).max(near)
}

/// Width that stands on the blades: the pallet's base where one was built, else the load, m.
fn standing_width(ctx: &Context<'_>) -> f64 {
    ctx.load.base_width.unwrap_or(ctx.load.width)
}

/// Whether what stands on the blades reaches over both of them.
fn over_both(ctx: &Context<'_>, forks: &Forks) -> Status {
    within(forks.over_both(), standing_width(ctx) + 1e-9)
}

/// The farthest load centre of the sleeves' plate, m, where the load's lies beyond it.
fn beyond_sleeves(ctx: &Context<'_>, forks: &Forks) -> Option<f64> {
    let limit = forks.extensions.as_ref()?.load_centre.si();
    (within(ctx.load.centre_ahead.high, limit + 1e-9) != Status::Go).then_some(limit)
}

/// `None` without forks.
pub(crate) fn status(ctx: &Context<'_>) -> Option<Status> {
    let forks = forks(ctx)?;
    let worst = blades::points(ctx, forks).iter().map(blades::Point::status).max().unwrap_or(Status::Go);
    if ctx.load.hanging.is_some() {
        return Some(worst);
    }
    let refused =
        too_deep(ctx, forks) || offset(ctx).abs() >= forks.spread * 0.5 || beyond_sleeves(ctx, forks).is_some();
    let worst = if refused { worst.max(Status::NoGo) } else { worst };
    let worst = worst.max(centre_on_blades(ctx, forks)).max(over_both(ctx, forks));
    let capacity = pair_capacity_kg(forks, ctx.load.centre_ahead.high, offset(ctx), &mut Silent);
    Some(worst.max(capacity.map_or(Status::CannotTell, |capacity| within(ctx.load.mass_kg.high, capacity))))
}

/// What does not stand as it should on the blades: beside one of them, or with its centre near the tips.
fn standing(ctx: &Context<'_>, forks: &Forks) -> Vec<Finding> {
    let mut out = Vec::new();
    let status = over_both(ctx, forks);
    if status != Status::Go {
        let (width, needed) = (standing_width(ctx), forks.over_both());
        let mut working = Working::default();
        working.step(|| Step {
            title: text::WORKING_OVER_BOTH.message(),
            formula: "b = s + t".into(),
            values: vec![("s".into(), metres(forks.spread)), ("t".into(), metres(BLADE_BREADTH))],
            result: ("b".into(), metres(needed)),
            source: Source::CommonPractice,
        });
        let message = text::FORKS_LOAD_NARROW.with("width", metres(width)).with("needed", metres(needed));
        out.push(
            Finding::new("forks", status, message)
                .at_least(metres(needed), metres(width), spare(needed, width))
                .remedy(text::DO_NARROWER_FORKS)
                .source(Source::CommonPractice)
                .working(working),
        );
    }
    let status = centre_on_blades(ctx, forks);
    if status != Status::Go {
        let (centre, length) = (ctx.load.centre_ahead.high, forks.length());
        let limit = CENTRE_LIMIT * length;
        let mut working = Working::default();
        working.step(|| Step {
            title: text::WORKING_CENTRE_LIMIT.message(),
            formula: "c ≤ k · l".into(),
            values: vec![("k".into(), Quantity::number(CENTRE_LIMIT)), ("l".into(), metres(length))],
            result: ("c".into(), metres(limit)),
            source: Source::CommonPractice,
        });
        let id = if status == Status::Condition { text::FORKS_CENTRE_FAR } else { text::FORKS_CENTRE_AT_TIPS };
        let message = id.with("centre", metres(centre)).with("length", metres(length)).with("limit", metres(limit));
        out.push(
            Finding::new("forks", status, message)
                .measured(metres(centre), metres(limit), reserve(centre, limit))
                .remedy(if status == Status::Condition { text::DO_CHECK_SEATED } else { text::DO_LONGER_FORKS })
                .source(Source::CommonPractice)
                .working(working),
        );
    }
    out
}

/// Every finding about the blades; the capacity one wherever the stamps are known, the others where they apply.
pub(crate) fn findings(ctx: &Context<'_>) -> Vec<Finding> {
    let Some(forks) = forks(ctx) else { return Vec::new() };
    let mut out: Vec<Finding> = blades::points(ctx, forks).iter().map(|p| p.finding(forks)).collect();
    if ctx.load.hanging.is_some() {
        return out;
    }
    if too_deep(ctx, forks) {
        let length = forks.length();
        let message = text::FORKS_SHORT.with("depth", metres(ctx.load.depth)).with("length", metres(length));
        out.push(
            Finding::new("forks", Status::NoGo, message)
                .measured(metres(ctx.load.depth), metres(length * 1.5), reserve(ctx.load.depth, length * 1.5))
                .remedy(text::DO_LONGER_FORKS)
                .source(Source::CommonPractice),
        );
    }
    out.extend(standing(ctx, forks));
    if let Some(limit) = beyond_sleeves(ctx, forks) {
        let centre = ctx.load.centre_ahead.high;
        let by = forks.extensions.as_ref().map_or("", |e| e.by.as_str());
        let message = text::SLEEVES_CENTRE.with("centre", metres(centre)).with("limit", metres(limit)).with("by", by);
        out.push(
            Finding::new("forks", Status::NoGo, message)
                .measured(metres(centre), metres(limit), reserve(centre, limit))
                .remedy(text::DO_LONGER_FORKS)
                .source(Source::CommonPractice),
        );
    }
    let y = offset(ctx);
    if y.abs() >= forks.spread * 0.5 {
        let message = text::FORKS_OFF_CENTRE.with("offset", metres(y.abs())).with("spread", metres(forks.spread));
        out.push(
            Finding::new("forks", Status::NoGo, message)
                .measured(metres(y.abs()), metres(forks.spread * 0.5), reserve(y.abs(), forks.spread * 0.5))
                .remedy(text::DO_CENTRE_LOAD)
                .source(Source::Mechanics),
        );
    }
    let mut working = Working::default();
    let (mass, centre) = (ctx.load.mass_kg.high, ctx.load.centre_ahead.high);
    // Without a stamp there is no capacity; that it is missing stands above.
    let Some(capacity) = pair_capacity_kg(forks, centre, y, &mut working) else { return out };
    let status = within(mass, capacity);
    let id = if status == Status::Go { text::FORKS_WITHIN } else { text::FORKS_OVERLOADED };
    let message = id.with("mass", kilograms(mass)).with("capacity", kilograms(capacity)).with("centre", metres(centre));
    let mut finding = Finding::new("forks", status, message)
        .measured(kilograms(mass), kilograms(capacity), reserve(mass, capacity))
        .source(Source::CommonPractice)
        .working(working);
    if status != Status::Go {
        finding = finding.remedy(text::DO_LIGHTEN.with("mass", kilograms(capacity * ctx.load.mass_kg.nominal / mass)));
    }
    out.push(finding);
    out
}
