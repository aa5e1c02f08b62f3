//! Least force on each wheel or pad, and what holds against what overturns, over all corners.
//!
//! A contact that carries next to nothing is the first sign of tipping that can be seen. It is a condition
//! here; how much is left before it tips, load factor and tilt say.

use super::level::contact_names;
use super::newtons;
use super::statics::{Corner, Statics, side};
use crate::context::Context;
use crate::posed::{NotPosed, Posed};
use crate::standing::lock;
use crate::text;
use evidence::{Finding, Source, Status, Step, Trace, Working};
use machine::Attachment;
use quantity::{Dimension, Quantity};
use stability::{
    LEVEL, LoadOnBoom, Masses, Support, TippingLine, TipsOver, machine_and_load, reactions, restoring_moment,
    tipping_lines,
};

/// Share of what a contact carries level, boom carried and no load, below which it counts as light (our own
/// figure).
pub(crate) const LIGHT: f64 = 0.05;

const SIDES: [TipsOver; 4] = [TipsOver::Front, TipsOver::Rear, TipsOver::Left, TipsOver::Right];
/// Which of [`SIDES`] each tipping line belongs to, in the order of the lines.
const SIDE_OF: [usize; 6] = [0, 1, 2, 3, 2, 3];

/// Least of all corners.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Least {
    /// Least force on each contact, N, below zero where the ground would have to pull; the wind's share
    /// taken off.
    pub(crate) force: [f64; 4],
    /// Corner that leaves least tilt over each side, by the bound that the search uses.
    worst: [Option<Worst>; 4],
}

/// The worst corner over a side.
#[derive(Debug, Clone, Copy)]
struct Worst {
    looks: f64,
    line: usize,
    corner: Corner,
    load: Option<LoadOnBoom>,
}

/// How a corner looks over a line, the less the worse: the sine of the tilt that remains at least, or below
/// -1 where that bound says no more, by the moment that is left.
pub(super) fn looks(corner: &Corner, sine: f64, line: &TippingLine) -> f64 {
    if sine > -1.0 {
        return sine;
    }
    let left = restoring_moment(&corner.loading, line);
    // Any rising function that stays below.
    -2.0 + libm::atan(left * 1e-5) / core::f64::consts::FRAC_PI_2
}

impl Least {
    /// Before any corner.
    pub(crate) const NONE: Self = Self { force: [f64::INFINITY; 4], worst: [None; 4] };

    /// Forces of one more corner.
    pub(super) fn forces(&mut self, force: [f64; 4]) {
        for (least, force) in self.force.iter_mut().zip(force) {
            // A force that is not a number stays one.
            if force < *least || force.is_nan() {
                *least = force;
            }
        }
    }

    /// How one more corner looks over each line.
    pub(super) fn looks(&mut self, looks: [f64; 6], corner: Corner, load: Option<LoadOnBoom>) {
        for (line, looks) in looks.into_iter().enumerate() {
            let worst = &mut self.worst[SIDE_OF[line]];
            if worst.is_none_or(|w| looks < w.looks || looks.is_nan()) {
                *worst = Some(Worst { looks, line, corner, load });
            }
        }
    }
}

/// Forces of the level machine, boom carried and no load, N.
pub(super) fn level_forces(ctx: &Context<'_>, posed: &Posed, attachment: &Attachment) -> [f64; 4] {
    let masses = Masses::of(ctx.machine, attachment, posed.carry);
    let rear = lock(ctx, posed.carry.angle).states()[0];
    reactions(ctx.machine, Support { state: ctx.lift.support, rear }, &masses, LEVEL).force
}

/// The contact with the least share of what it carries level, and that share; what is no number first.
fn lightest(ctx: &Context<'_>, statics: &Statics, posed: &Posed, attachment: &Attachment) -> (usize, f64) {
    let level = level_forces(ctx, posed, attachment);
    let mut worst = (0, f64::INFINITY);
    for (i, (least, level)) in statics.least.force.into_iter().zip(level).enumerate() {
        let share = if level > 0.0 { least / level } else { f64::NAN };
        if worst.1.is_nan() {
            break;
        }
        if share < worst.1 || share.is_nan() {
            worst = (i, share);
        }
    }
    worst
}

fn of_share(share: f64) -> Status {
    if share.is_nan() {
        Status::CannotTell
    } else if share < LIGHT {
        Status::Condition
    } else {
        Status::Go
    }
}

pub(crate) fn status(ctx: &Context<'_>, statics: Option<&Statics>, posed: Option<&Posed>) -> Status {
    match (statics, posed, ctx.attachment) {
        (Some(s), Some(p), Some(a)) => of_share(lightest(ctx, s, p, a).1),
        _ => Status::CannotTell,
    }
}

pub(crate) fn finding(ctx: &Context<'_>, statics: Option<&Statics>, posed: Result<&Posed, &NotPosed>) -> Finding {
    let (Some(s), Ok(p), Some(attachment)) = (statics, posed, ctx.attachment) else {
        return super::statics::not_done("contacts", posed);
    };
    let (i, share) = lightest(ctx, s, p, attachment);
    let wheel = contact_names(ctx)[i];
    let status = of_share(share);
    let (least, level) = (s.least.force[i], level_forces(ctx, p, attachment)[i]);
    let mut working = Working::default();
    if status != Status::Go {
        working.step(|| Step {
            title: text::WORKING_LEAST_FORCE.with("wheel", wheel),
            formula: "q = N_min / N_level".into(),
            values: vec![("N_min".into(), newtons(least)), ("N_level".into(), newtons(level))],
            result: ("q".into(), Quantity::ratio(share)),
            source: Source::Mechanics,
        });
    }
    let ratio = ratios(ctx, s, &mut working);
    let force = newtons(least);
    let message = match status {
        Status::Go => {
            text::CONTACTS_PRESSED.with("wheel", wheel).with("force", force).with("share", Quantity::ratio(share))
        }
        Status::Condition if least > 0.0 => {
            text::CONTACTS_LIGHT.with("wheel", wheel).with("force", force).with("share", Quantity::ratio(share))
        }
        Status::Condition => text::CONTACTS_LIFTED.with("wheel", wheel),
        _ => text::CONTACTS_NO_NUMBER.message(),
    };
    let message = match ratio {
        Some((ratio, over)) if ratio.is_finite() => {
            text::CONTACTS_RATIO.with("what", message).with("ratio", Quantity::number(ratio)).with("side", side(over))
        }
        _ => message,
    };
    let finding = Finding::new("contacts", status, message).source(Source::Mechanics).working(working);
    match status {
        Status::Go => finding,
        Status::Condition => finding.remedy(text::DO_MIND_LIGHT.with("wheel", wheel)),
        _ => finding.remedy(text::DO_OTHER_MACHINE),
    }
}

/// The least moment ratio with its side, each side a step.
fn ratios(ctx: &Context<'_>, s: &Statics, working: &mut Working) -> Option<(f64, TipsOver)> {
    let mut least: Option<(f64, TipsOver)> = None;
    for (over, worst) in SIDES.into_iter().zip(s.least.worst) {
        let Some(Worst { line, corner, load, .. }) = worst else { continue };
        let moments = machine_and_load(&corner.loading, load, &tipping_lines(ctx.machine, corner.stance)[line]);
        let wind = corner.overturning[line];
        let ratio = moments.ratio();
        if least.is_none_or(|(l, _)| ratio < l || ratio.is_nan()) {
            least = Some((ratio, over));
        }
        if ratio.is_finite() {
            let moment = |v: f64| Quantity::new(v, Dimension::Moment);
            working.step(|| Step {
                title: text::WORKING_SIDE_MOMENTS.with("side", side(over)),
                formula: "n = M_h / (M_o + M_w)".into(),
                values: vec![
                    ("M_h".into(), moment(moments.restoring)),
                    ("M_o".into(), moment(moments.overturning - wind)),
                    ("M_w".into(), moment(wind)),
                ],
                result: ("n".into(), Quantity::number(ratio)),
                source: Source::Mechanics,
            });
        }
    }
    least
}
