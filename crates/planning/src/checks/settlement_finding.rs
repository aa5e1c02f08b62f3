//! How far the ground gives, in words: what settles, how the machine leans by it, what to do.

use super::level::{self, contact_names};
use super::settlement::{Settling, Why, held, sides, tolerance};
use super::statics::Statics;
use super::under::{self, Foot, LARGEST_MAT, Under};
use super::{angle, metres, newtons, reserve};
use crate::context::Context;
use crate::posed::{Posed, tool_point};
use crate::text;
use evidence::{Finding, Message, Source, Status, Step, Trace, Working};
use ground::Refusal;
use ground::settlement::head_moves;
use machine::LevelTolerance;
use quantity::{Dimension, Quantity, Si};

/// How high above the contacts the tool comes, m.
fn height(ctx: &Context<'_>, posed: &Posed) -> f64 {
    let (Ok(poses), Some(attachment)) = (posed.reach, ctx.attachment) else { return 0.0 };
    poses.into_iter().map(|boom| tool_point(ctx, attachment, boom).z).fold(0.0, f64::max)
}

/// Side of the smallest square under every contact on which it leans no more than allowed, m.
fn needed_side(
    ctx: &Context<'_>,
    statics: &Statics,
    posed: &Posed,
    tolerance: LevelTolerance,
    feet: &[Foot; 4],
) -> Option<f64> {
    // Under every contact, so no smaller than what stands there.
    let least = feet.iter().flat_map(|f| f.sides).fold(0.0, f64::max);
    let steps = (LARGEST_MAT / ground::needed_mat::SIDE_STEP) as u32;
    (2..=steps).map(|k| f64::from(k) * ground::needed_mat::SIDE_STEP).find(|&side| {
        if side < least {
            return false;
        }
        let wider = feet.map(|f| Foot { sides: [side; 2], ..f });
        let under = under::all(ctx, posed, &wider, statics.force);
        let [Under::Known(a), Under::Known(b), Under::Known(c), Under::Known(d)] = under else { return false };
        let held = held(posed, tolerance, &sides(ctx, statics, posed, &[a, b, c, d]));
        held.demand <= held.limit
    })
}

fn why(why: Why<'_>) -> Message {
    match why {
        Why::NoSoil => text::SETTLEMENT_NO_SOIL.message(),
        Why::Soil(soil, Refusal::NoStiffness | Refusal::NoNumber) => text::SETTLEMENT_NO_STIFFNESS.with("soil", soil),
        Why::Mat(refusal) | Why::Soil(_, refusal) => refusal.message(),
    }
}

fn not_known(ctx: &Context<'_>, posed: &Posed, contact: usize, reason: Why<'_>) -> Finding {
    let wheel = contact_names(ctx)[contact];
    let message = text::SETTLEMENT_NOT_KNOWN.with("wheel", wheel).with("why", why(reason));
    let finding = Finding::new("settlement", Status::Condition, message).source(Source::CommonPractice);
    let Some(tolerance) = tolerance(ctx, posed) else { return finding };
    let lies = level::out_of_level(posed);
    let left = (tolerance.sideways.si() - lies.sideways).min(tolerance.fore_aft.si() - lies.fore_aft).max(0.0);
    finding.remedy(text::DO_WATCH_LEVEL.with("angle", angle(left)))
}

/// Nothing where no soil is stated, or only tyres stand on what is not known.
pub(crate) fn finding(ctx: &Context<'_>, statics: &Statics, posed: &Posed, settling: &Settling<'_>) -> Option<Finding> {
    let status = settling.status(ctx, posed)?;
    let lean = match &settling.lean {
        Ok(lean) => lean,
        Err(unknown) => return unknown.map(|(contact, reason)| not_known(ctx, posed, contact, reason)),
    };
    let (contact, settles, most) = lean.sides.most;
    let mut working = Working::default();
    // Asked before without steps: each gives a number.
    let _ = under::traced(&lean.feet, contact, most, lean.gives[contact].soil, &mut working);
    let soil = lean.gives[contact].soil;
    let Some(tolerance) = tolerance(ctx, posed) else {
        let message =
            text::SETTLEMENT_NO_TOLERANCE.with("wheel", contact_names(ctx)[contact]).with("settles", metres(settles));
        return Some(Finding::new("settlement", status, message).remedy(text::DO_OTHER_MACHINE).working(working));
    };
    let held = held(posed, tolerance, &lean.sides);
    // The pose in which it leans most may be another.
    for (i, gives) in lean.gives.iter().enumerate() {
        let _ = under::traced(&lean.feet, i, held.by.force, gives.soil, &mut working);
    }
    let moves = head_moves(held.by.settles, held.by.distance, height(ctx, posed), &mut working)
        .map_or(f64::NAN, |(_, moves)| moves);
    working.step(|| Step {
        title: text::WORKING_SETTLED_LEVEL.message(),
        formula: "θ = θ_0 + ω".into(),
        values: vec![("θ_0".into(), angle(held.lies)), ("ω".into(), angle(held.by.tilt))],
        result: ("θ".into(), angle(held.demand)),
        source: Source::Mechanics,
    });
    springs_steps(ctx, statics, settling, &mut working);
    let id = if status == Status::Go { text::SETTLEMENT_WITHIN } else { text::SETTLEMENT_TOO_MUCH };
    let [a, b] = held.by.settles;
    let message = id
        .with("wheel", contact_names(ctx)[contact])
        .with("settles", metres(settles))
        .with("difference", metres((a - b).abs()))
        .with("tilt", angle(held.by.tilt))
        .with("moves", metres(moves))
        .with("total", angle(held.demand))
        .with("tolerance", angle(held.limit));
    let finding = Finding::new("settlement", status, message)
        .measured(angle(held.demand), angle(held.limit), reserve(held.demand, held.limit))
        .source(Source::Person { name: soil.by.clone(), statement: soil.name.clone() })
        .source(Source::from_memory("Steinbrenner 1934; rigid pads after Bowles"))
        .working(working);
    Some(match status {
        Status::Go => finding,
        // No mat makes the stand itself lie better.
        _ if held.lies > held.limit => finding.remedy(text::DO_LEVEL_STAND),
        _ => match needed_side(ctx, statics, posed, tolerance, &lean.feet) {
            Some(side) => finding.remedy(text::DO_MATS_SETTLE.with("side", metres(side))),
            None => finding.remedy(text::DO_BETTER_GROUND),
        },
    })
}

/// The springs that statics reckons with, ground included.
fn springs_steps(ctx: &Context<'_>, statics: &Statics, settling: &Settling<'_>, working: &mut Working) {
    let firm = super::tyres::springs(&Context { gives: [0.0; 2], ..*ctx }, ctx.lift.support);
    let soft = super::statics::springs(ctx);
    let stiffness = |si| Quantity::new(si, Dimension::Stiffness);
    let axles = [(firm.front, soft.front), (firm.rear, soft.rear)];
    for (axle, (alone, together)) in axles.into_iter().enumerate() {
        let wheels = [2 * axle, 2 * axle + 1];
        let most = if statics.force[wheels[0]] >= statics.force[wheels[1]] { wheels[0] } else { wheels[1] };
        let force = statics.force[most];
        working.step(|| Step {
            title: text::WORKING_GROUND_GIVES.with("wheel", contact_names(ctx)[most]),
            formula: "c = 1 / (1/c_0 + s/F)".into(),
            values: vec![
                ("c_0".into(), stiffness(alone)),
                ("s".into(), metres(settling.gives[axle] * force)),
                ("F".into(), newtons(force)),
            ],
            result: ("c".into(), stiffness(together)),
            source: Source::Mechanics,
        });
    }
}
