//! Fork blades: wear, length, load centre, offset.

use super::{kilograms, metres, reserve, within};
use crate::context::Context;
use crate::text;
use evidence::{Finding, Silent, Source, Status, Step, Trace, Working};
use machine::forks::{BladeProblem, Side, WEAR_LIMIT, blade_problems, pair_capacity_kg};
use machine::{AttachmentKind, Forks};
use quantity::{Quantity, Si};

fn forks<'a>(ctx: &Context<'a>) -> Option<&'a Forks> {
    match &ctx.attachment?.kind {
        AttachmentKind::Forks(f) => Some(f),
        AttachmentKind::Jib(_) => None,
    }
}

/// Worst offset of the load's centre from the middle of the blades, m.
fn offset(ctx: &Context<'_>) -> f64 {
    let left = ctx.load.centre_left;
    if left.high.abs() >= left.low.abs() { left.high } else { left.low }
}

/// Load deeper than the blades by more than half a blade: the centre may still be on them, the pack is not.
fn too_deep(ctx: &Context<'_>, forks: &Forks) -> bool {
    let length = forks.blades.iter().map(|b| b.length.si()).fold(f64::INFINITY, f64::min);
    ctx.load.depth > length * 1.5 || ctx.load.centre_ahead.high > length
}

/// `None` without forks.
pub(crate) fn status(ctx: &Context<'_>) -> Option<Status> {
    let forks = forks(ctx)?;
    let mut worst = Status::Go;
    for problem in blade_problems(forks) {
        worst = worst.max(match problem {
            BladeProblem::Worn(..) => Status::NoGo,
            BladeProblem::Modified(_) => Status::Stop,
            BladeProblem::WearUnknown | BladeProblem::ModifiedUnknown => Status::Condition,
        });
    }
    if ctx.load.hanging.is_some() {
        return Some(worst);
    }
    if too_deep(ctx, forks) || offset(ctx).abs() >= forks.spread * 0.5 {
        worst = worst.max(Status::NoGo);
    }
    let capacity = pair_capacity_kg(forks, ctx.load.centre_ahead.high, offset(ctx), &mut Silent);
    Some(worst.max(within(ctx.load.mass_kg.high, capacity)))
}

fn side(side: Side) -> evidence::TextId {
    if side == Side::Left { text::SIDE_LEFT } else { text::SIDE_RIGHT }
}

/// Every finding about the blades; the capacity one always, the others where they apply.
pub(crate) fn findings(ctx: &Context<'_>) -> Vec<Finding> {
    let Some(forks) = forks(ctx) else { return Vec::new() };
    let iso = || Source::second_hand("ISO 5057");
    let mut out: Vec<Finding> = blade_problems(forks)
        .into_iter()
        .map(|problem| match problem {
            BladeProblem::Worn(s, wear) => {
                let message = text::FORKS_WORN.with("side", side(s)).with("wear", Quantity::ratio(wear));
                let left = machine::forks::worn_capacity_share(wear);
                let mut working = Working::default();
                working.step(|| Step {
                    title: machine::text::STEP_BLADE_WEAR.message(),
                    formula: "s = (1 − w)²".into(),
                    values: vec![("w".into(), Quantity::ratio(wear))],
                    result: ("s".into(), Quantity::ratio(left)),
                    source: Source::Mechanics,
                });
                Finding::new("forks", Status::NoGo, message)
                    .measured(Quantity::ratio(wear), Quantity::ratio(WEAR_LIMIT), reserve(wear, WEAR_LIMIT))
                    .remedy(text::DO_NEW_FORKS)
                    .source(iso())
                    .working(working)
            }
            BladeProblem::Modified(s) => {
                Finding::new("forks", Status::Stop, text::FORKS_MODIFIED.with("side", side(s)))
                    .remedy(text::DO_NEW_FORKS)
                    .source(Source::second_hand("29 CFR 1926.602(c)(1)"))
            }
            BladeProblem::ModifiedUnknown => Finding::new("forks", Status::Condition, text::FORKS_MODIFIED_UNKNOWN)
                .remedy(text::DO_LOOK_AT_FORKS)
                .source(Source::second_hand("29 CFR 1926.602(c)(1)")),
            BladeProblem::WearUnknown => Finding::new("forks", Status::Condition, text::FORKS_WEAR_UNKNOWN)
                .remedy(text::DO_MEASURE_FORKS)
                .source(iso()),
        })
        .collect();
    if ctx.load.hanging.is_some() {
        return out;
    }
    if too_deep(ctx, forks) {
        let length = forks.blades.iter().map(|b| b.length.si()).fold(f64::INFINITY, f64::min);
        let message = text::FORKS_SHORT.with("depth", metres(ctx.load.depth)).with("length", metres(length));
        out.push(
            Finding::new("forks", Status::NoGo, message)
                .measured(metres(ctx.load.depth), metres(length * 1.5), reserve(ctx.load.depth, length * 1.5))
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
    let capacity = pair_capacity_kg(forks, centre, y, &mut working);
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
