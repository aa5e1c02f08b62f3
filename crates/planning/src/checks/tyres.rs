//! Tyres as found today: flat ones, pressures off what the machine asks, front tyres off the ground on
//! stabilizers.

use super::pascals;
use crate::context::Context;
use crate::{FrontTyres, text};
use evidence::{Finding, Source, Status, TextId};
use machine::{SupportState, Tyre};
use quantity::Si;
use stability::Springs;

/// Share of the pressure asked that may be missing before it is a condition, and before nothing is lifted
/// (our own figures; charts and statics presume the pressure asked).
const LOW: f64 = 0.10;
const TOO_LOW: f64 = 0.25;
/// The same above it: a hard tyre presses more on the ground, and may burst.
const HIGH: f64 = 0.10;
const TOO_HIGH: f64 = 0.25;

const NAMES: [TextId; 4] =
    [text::WHEEL_FRONT_LEFT, text::WHEEL_FRONT_RIGHT, text::WHEEL_REAR_LEFT, text::WHEEL_REAR_RIGHT];

pub(crate) fn tyre<'a>(ctx: &Context<'a>, wheel: usize) -> &'a Tyre {
    if wheel < 2 { &ctx.machine.front.tyre } else { &ctx.machine.rear.axle.tyre }
}

/// True if the wheel carries in this support state.
fn carries(ctx: &Context<'_>, state: SupportState, wheel: usize) -> bool {
    ctx.machine.pad_area(state, wheel).is_none()
}

/// How much lower the wheels with a flat tyre stand, m: by the height of the sidewall, until the rim carries.
pub(crate) fn lowered(ctx: &Context<'_>) -> [f64; 4] {
    core::array::from_fn(|i| {
        if ctx.unit.flat[i] && carries(ctx, ctx.lift.support, i) { machine::sidewall(tyre(ctx, i)) } else { 0.0 }
    })
}

/// What tyres and pads give: of an axle the softer tyre by the pressures asked and measured, and the ground under it
/// one after the other. What the lean over a side needs is the stiffness of the tyres on that side, which way it may
/// go is not known.
pub(crate) fn springs(ctx: &Context<'_>, state: SupportState) -> Springs {
    let asked = Springs::of(ctx.machine, state);
    let softest = |asked: f64, wheels: [usize; 2]| {
        wheels.into_iter().filter(|i| carries(ctx, state, *i)).fold(asked, |least, i| {
            let Some(measured) = ctx.unit.pressures[i] else { return least };
            let by_measure = machine::tyre_stiffness(&tyre(ctx, i).at(measured));
            // What is no number stays none.
            if by_measure >= least { least } else { by_measure }
        })
    };
    // The ground is asked under what the lift stands on; the rest is driving, boom down.
    let gives = if state == ctx.lift.support { ctx.gives } else { [0.0; 2] };
    let on_ground = |stiffness: f64, gives: f64| if gives == 0.0 { stiffness } else { 1.0 / (1.0 / stiffness + gives) };
    Springs {
        front: on_ground(softest(asked.front, [0, 1]), gives[0]),
        rear: on_ground(softest(asked.rear, [2, 3]), gives[1]),
    }
}

/// Highest pressure that a tyre may have, for the pressure on the ground, Pa.
pub(crate) fn highest(ctx: &Context<'_>, wheel: usize) -> Option<f64> {
    let asked = tyre(ctx, wheel).pressure.map(|p| p.si());
    let measured = ctx.unit.pressures[wheel].map(|p| p.si());
    asked.into_iter().chain(measured).reduce(f64::max)
}

/// How far a measured pressure is off the one asked, as a share of that.
fn off(ctx: &Context<'_>, wheel: usize) -> Option<f64> {
    let (asked, measured) = (tyre(ctx, wheel).pressure?, ctx.unit.pressures[wheel]?);
    Some(measured.si() / asked.si() - 1.0)
}

fn status_of(ctx: &Context<'_>, wheel: usize) -> Status {
    // In every support state: it drives there on its tyres.
    if ctx.unit.flat[wheel] {
        return Status::NoGo;
    }
    match off(ctx, wheel) {
        Some(off) if off.is_nan() => Status::CannotTell,
        Some(off) if !(-TOO_LOW..=TOO_HIGH).contains(&off) => Status::NoGo,
        Some(off) if !(-LOW..=HIGH).contains(&off) => Status::Condition,
        // Within the usual, or nothing to hold it against.
        Some(_) | None => Status::Go,
    }
}

fn front(ctx: &Context<'_>) -> Status {
    if ctx.lift.support != SupportState::Stabilizers {
        return Status::Go;
    }
    match ctx.lift.front_tyres {
        Some(FrontTyres::Clear) => Status::Go,
        Some(FrontTyres::Touching) => Status::NoGo,
        None => Status::Condition,
    }
}

pub(crate) fn status(ctx: &Context<'_>) -> Status {
    (0..4).map(|i| status_of(ctx, i)).chain([front(ctx)]).max().unwrap_or(Status::CannotTell)
}

/// Nothing where no tyre is known to be off.
pub(crate) fn findings(ctx: &Context<'_>) -> Vec<Finding> {
    let mut out = Vec::new();
    for (i, name) in NAMES.into_iter().enumerate() {
        let status = status_of(ctx, i);
        if status == Status::Go {
            continue;
        }
        let seen =
            Source::Input { place: format!("{} today", ctx.machine.id), certainty: evidence::Certainty::Measured };
        if ctx.unit.flat[i] {
            let message = text::TYRE_FLAT.with("wheel", name);
            out.push(Finding::new("tyres", status, message).remedy(text::DO_MEND_TYRE).source(seen));
            continue;
        }
        let pressures = tyre(ctx, i).pressure.zip(ctx.unit.pressures[i]);
        let (asked, measured) = pressures.map_or((f64::NAN, f64::NAN), |(a, m)| (a.si(), m.si()));
        let hard = measured > asked;
        let id = if hard { text::TYRE_HARD } else { text::TYRE_SOFT };
        let remedy = if hard { text::DO_LET_OUT } else { text::DO_INFLATE };
        let message = id.with("wheel", name).with("measured", pascals(measured)).with("asked", pascals(asked));
        out.push(
            Finding::new("tyres", status, message)
                .remedy(remedy.with("asked", pascals(asked)))
                .source(seen)
                .source(Source::CommonPractice),
        );
    }
    let status = front(ctx);
    match ctx.lift.front_tyres {
        _ if status == Status::Go => {}
        Some(_) => out.push(
            Finding::new("tyres", status, text::FRONT_TYRES_TOUCH)
                .remedy(text::DO_LIFT_FRONT_TYRES)
                .source(Source::CommonPractice),
        ),
        None => out.push(
            Finding::new("tyres", status, text::FRONT_TYRES_NOT_SEEN)
                .remedy(text::DO_SEE_FRONT_TYRES)
                .source(Source::CommonPractice),
        ),
    }
    out
}
