//! Fork blades under this load: length, load centre, offset, sleeves. Their own state is in `blades`.

use super::{blades, kilograms, metres, reserve, within};
use crate::context::Context;
use crate::text;
use evidence::{Finding, Silent, Source, Status, Working};
use machine::forks::pair_capacity_kg;
use machine::{AttachmentKind, Forks};
use quantity::Si;

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

/// Load deeper than the blades by more than half a blade: the centre may still be on them, the pack is not.
fn too_deep(ctx: &Context<'_>, forks: &Forks) -> bool {
    let length = forks.length();
    ctx.load.depth > length * 1.5 || ctx.load.centre_ahead.high > length
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
    let capacity = pair_capacity_kg(forks, ctx.load.centre_ahead.high, offset(ctx), &mut Silent);
    Some(worst.max(capacity.map_or(Status::CannotTell, |capacity| within(ctx.load.mass_kg.high, capacity))))
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
