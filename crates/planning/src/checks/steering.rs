//! Weight on the rear axle, which steers, while the load is driven in the carry position.

use super::statics::load_at;
use super::{fitted, newtons};
use crate::context::Context;
use crate::posed::{Posed, tool_point};
use crate::text;
use evidence::{Finding, Source, Status, Step, Trace, Working};
use machine::{Attachment, SupportState};
use quantity::Quantity;
use stability::{LEVEL, LoadOnBoom, Masses, Reactions, RearAxleState, Support, reactions, rear_share};

/// Share of the weight on the rear axle below which it steers badly (common practice).
pub(crate) const ENOUGH: f64 = 0.20;

/// Forces under the wheels at rest on level ground, boom carried, the load at its heaviest and farthest.
fn carried(ctx: &Context<'_>, posed: &Posed, attachment: &Attachment) -> Reactions {
    let boom = posed.carry;
    let at = load_at(ctx, tool_point(ctx, attachment, boom), boom, ahead(ctx), 0.0);
    let load = LoadOnBoom { mass: ctx.load.mass_kg.high, at };
    let masses = Masses::of(ctx.machine, attachment, boom).with(load);
    // It drives on its tyres, whatever it stands on for the lift.
    let support = Support { state: SupportState::Tyres, rear: RearAxleState::Free };
    let all = fitted::changes(ctx, support.into())
        .into_iter()
        .map(|change| reactions(ctx.machine, support, &masses.and(change), LEVEL));
    // The least share; what is no number is the least.
    let key = |r: &Reactions| Some(rear_share(r)).filter(|s| !s.is_nan()).unwrap_or(f64::NEG_INFINITY);
    all.min_by(|a, b| key(a).total_cmp(&key(b))).unwrap_or(Reactions { force: [f64::NAN; 4], stands: false })
}

fn ahead(ctx: &Context<'_>) -> f64 {
    if ctx.load.hanging.is_some() { 0.0 } else { ctx.load.centre_ahead.high }
}

fn of_share(share: f64) -> Status {
    if share.is_nan() {
        Status::CannotTell
    } else if share < ENOUGH {
        Status::Condition
    } else {
        Status::Go
    }
}

/// `None` where the machine cannot be posed: load factor and tilt say so.
pub(crate) fn status(ctx: &Context<'_>, posed: Option<&Posed>) -> Option<Status> {
    Some(of_share(rear_share(&carried(ctx, posed?, ctx.attachment?))))
}

pub(crate) fn finding(ctx: &Context<'_>, posed: Option<&Posed>) -> Option<Finding> {
    let forces = carried(ctx, posed?, ctx.attachment?);
    let share = rear_share(&forces);
    let status = of_share(share);
    let [_, _, left, right] = forces.force;
    let mut working = Working::default();
    working.step(|| Step {
        title: text::WORKING_STEERING.message(),
        formula: "q = (N_3 + N_4) / ΣN_i".into(),
        values: vec![
            ("N_3".into(), newtons(left)),
            ("N_4".into(), newtons(right)),
            ("ΣN_i".into(), newtons(forces.force.iter().sum())),
        ],
        result: ("q".into(), Quantity::ratio(share)),
        source: Source::Mechanics,
    });
    let said =
        |id: evidence::TextId| id.with("share", Quantity::ratio(share)).with("required", Quantity::ratio(ENOUGH));
    let message = match status {
        Status::Go => said(text::STEERING_ENOUGH),
        Status::Condition => said(text::STEERING_LIGHT),
        _ => text::STEERING_CANNOT_TELL.message(),
    };
    let finding = Finding::new("steering", status, message).source(Source::CommonPractice);
    // The share says it all where it is enough.
    Some(if status == Status::Go { finding } else { finding.remedy(text::DO_STEER_CAREFULLY).working(working) })
}
