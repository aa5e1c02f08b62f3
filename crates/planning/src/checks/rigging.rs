//! Slings of a hung load.

use super::{kilograms, reserve, within};
use crate::context::Context;
use crate::text;
use evidence::{Finding, Silent, Source, Status, Step, Trace, Working};
use machine::Hanging;
use quantity::{Quantity, Si};

/// Mass on the worst sling leg, kg: `W / (n · cos α)`; of three or more legs two carry, since
/// lengths differ (common practice).
pub(crate) fn leg_mass(mass: f64, hanging: &Hanging, trace: &mut impl Trace) -> f64 {
    let legs = f64::from(hanging.legs.clamp(1, 2));
    let alpha = hanging.leg_angle.si();
    let leg = mass / (legs * libm::cos(alpha));
    trace.step(|| Step {
        title: machine::text::STEP_SLING.message(),
        formula: "S = W / (n · cos α),  n at most 2".into(),
        values: vec![
            ("W".into(), kilograms(mass)),
            ("n".into(), Quantity::number(legs)),
            ("α".into(), Quantity::from(hanging.leg_angle)),
        ],
        result: ("S".into(), kilograms(leg)),
        source: Source::Mechanics,
    });
    leg
}

/// Sling legs lean at most this far from the vertical, rad (60°; common practice).
const STEEPEST: f64 = core::f64::consts::FRAC_PI_3;

/// `None` where nothing hangs.
pub(crate) fn status(ctx: &Context<'_>) -> Option<Status> {
    if !ctx.hung() {
        return None;
    }
    let Some(hanging) = &ctx.load.hanging else { return Some(Status::CannotTell) };
    let leg = leg_mass(ctx.load.mass_kg.high, hanging, &mut Silent);
    let carried = within(leg, hanging.leg_limit.si()).max(within(hanging.leg_angle.si(), STEEPEST + 1e-9));
    Some(if hanging.tag_lines { carried } else { carried.max(Status::Condition) })
}

pub(crate) fn findings(ctx: &Context<'_>) -> Vec<Finding> {
    if !ctx.hung() {
        return Vec::new();
    }
    let Some(hanging) = &ctx.load.hanging else {
        return vec![
            Finding::new("rigging", Status::CannotTell, text::RIGGING_NONE)
                .remedy(text::DO_STATE_RIGGING)
                .source(Source::CommonPractice),
        ];
    };
    let mut working = Working::default();
    let leg = leg_mass(ctx.load.mass_kg.high, hanging, &mut working);
    let limit = hanging.leg_limit.si();
    let status = within(leg, limit);
    let id = if status == Status::Go { text::RIGGING_WITHIN } else { text::RIGGING_OVERLOADED };
    let mut finding = Finding::new("rigging", status, id.with("force", kilograms(leg)).with("limit", kilograms(limit)))
        .measured(kilograms(leg), kilograms(limit), reserve(leg, limit))
        .source(Source::Mechanics)
        .working(working);
    if status != Status::Go {
        finding = finding.remedy(text::DO_STRONGER_SLINGS);
    }
    let mut out = vec![finding];
    let lean = hanging.leg_angle.si();
    if within(lean, STEEPEST + 1e-9) != Status::Go {
        let message = text::RIGGING_ANGLE.with("angle", super::angle(lean)).with("limit", super::angle(STEEPEST));
        out.push(
            Finding::new("rigging", within(lean, STEEPEST + 1e-9), message)
                .measured(super::angle(lean), super::angle(STEEPEST), reserve(lean, STEEPEST))
                .remedy(text::DO_STRONGER_SLINGS)
                .source(Source::CommonPractice),
        );
    }
    if !hanging.tag_lines {
        out.push(
            Finding::new("rigging", Status::Condition, text::RIGGING_NO_TAG_LINES)
                .remedy(text::DO_TAG_LINES)
                .source(Source::CommonPractice),
        );
    }
    out
}
