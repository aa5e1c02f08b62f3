//! Loads that are long, that sag, or that run: timbers, sheets, tanks.

use super::{metres, reserve, spare, within};
use crate::context::Context;
use crate::posed::Posed;
use crate::text;
use evidence::{Finding, Source, Status, Step, Trace, Working};
use machine::{AttachmentKind, BoomPosition, kinematics};
use quantity::{Quantity, Si};

/// Loads longer than this are long, m (common practice).
const LONG: f64 = 3.0;

/// Loads wider than so many fork spreads are long as well (common practice).
const SPREADS: f64 = 3.0;

/// Room under sagging ends, m (ours).
const UNDER_ENDS: f64 = 0.10;

/// What shape or contents make of a lift.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) enum Shape {
    /// Long, and nobody stated how far its ends sag.
    NoSag { length: f64 },
    /// Its ends sag; the height over the upstand that it needs, and that is planned.
    Sag { sag: f64, needed: f64, clear: f64 },
    /// Its ends swing wide: reach from the middle of the front axle, and past the machine's side.
    Swings { radius: f64, beside: f64 },
    /// An open tank: rise of the surface at the tilt reckoned with, and the room above it.
    Open { rise: f64, freeboard: f64, side: f64, tilt: f64 },
    /// Partly full, no baffles: it surges.
    Surges { fill: f64, height: f64 },
    /// The stand tilts it farther than it was reckoned with.
    Tilts { stands: f64, tilt: f64 },
}

/// A tank at a stand that tilts it farther, roll or pitch at worst, than its liquid was reckoned with.
pub(crate) fn tilted(ctx: &Context<'_>, posed: Option<&Posed>) -> Option<Shape> {
    let (liquid, stand) = (ctx.load.liquid.as_ref()?, super::level::out_of_level(posed?));
    let stands = stand.sideways.max(stand.fore_aft);
    let within = stands <= liquid.tilt + 1e-9;
    (!within).then_some(Shape::Tilts { stands, tilt: liquid.tilt })
}

pub(crate) fn shapes(ctx: &Context<'_>, posed: Option<&Posed>) -> Vec<Shape> {
    let load = ctx.load;
    let mut out = Vec::new();
    let length = load.width.max(load.depth);
    let spread = ctx.attachment.and_then(|a| match &a.kind {
        AttachmentKind::Forks(f) => Some(f.spread),
        _ => None,
    });
    let hung = load.hanging.is_some();
    let long = length > LONG || spread.is_some_and(|s| load.width > SPREADS * s);
    match load.sag {
        None if long && !hung => out.push(Shape::NoSag { length }),
        None => {}
        Some(sag) => out.push(Shape::Sag { sag, needed: sag + UNDER_ENDS, clear: ctx.lift.clear.si() }),
    }
    if long && let Some(shape) = swings(ctx, length) {
        out.push(shape);
    }
    if let Some(l) = &load.liquid {
        if !l.closed {
            let side = libm::hypot(l.tank.x, l.tank.y);
            out.push(Shape::Open { rise: l.rise(), freeboard: l.freeboard(), side, tilt: l.tilt });
        }
        if l.partly_full() && !l.baffled {
            out.push(Shape::Surges { fill: l.fill, height: l.tank.z });
        }
    }
    out.extend(tilted(ctx, posed));
    out
}

/// Farthest corner of the load in the carry position from the middle of the front axle; a hung load
/// may turn about its hook.
fn swings(ctx: &Context<'_>, length: f64) -> Option<Shape> {
    let carry = &ctx.machine.limits.carry;
    let boom = BoomPosition { angle: carry.angle.si(), extension: 0.0, fork_tilt: 0.0 };
    let tool = kinematics::tool_point(&ctx.machine.boom, ctx.attachment?, boom);
    let (radius, width) = if ctx.load.hanging.is_some() {
        (tool.x.abs() + ctx.load.turning_radius() + ctx.load.swing_below(), length)
    } else {
        (libm::hypot(tool.x + ctx.load.depth, ctx.load.width / 2.0), ctx.load.width)
    };
    let beside = (width / 2.0 - ctx.machine.outline.half_width).max(0.0);
    Some(Shape::Swings { radius, beside })
}

impl Shape {
    pub(crate) fn status(&self) -> Status {
        match *self {
            Self::NoSag { .. } | Self::Swings { .. } | Self::Surges { .. } => Status::Condition,
            Self::Tilts { .. } => Status::CannotTell,
            Self::Sag { needed, clear, .. } => within(needed, clear + 1e-9),
            Self::Open { rise, freeboard, .. } => within(rise, freeboard).max(Status::Condition),
        }
    }

    pub(crate) fn finding(&self) -> Finding {
        let status = self.status();
        match *self {
            Self::NoSag { length } => {
                Finding::new("load", status, text::LOAD_LONG_NO_SAG.with("length", metres(length)))
                    .remedy(text::DO_STATE_SAG)
                    .source(Source::CommonPractice)
            }
            Self::Sag { sag, needed, clear } => {
                let id = if status == Status::Go { text::LOAD_SAG_CLEARS } else { text::LOAD_SAG_STRIKES };
                let mut working = Working::default();
                working.step(|| Step {
                    title: text::WORKING_SAG.message(),
                    formula: "c = s + u".into(),
                    values: vec![("s".into(), metres(sag)), ("u".into(), metres(UNDER_ENDS))],
                    result: ("c".into(), metres(needed)),
                    source: Source::CommonPractice,
                });
                let f = Finding::new(
                    "load",
                    status,
                    id.with("sag", metres(sag)).with("needed", metres(needed)).with("clear", metres(clear)),
                )
                .at_least(metres(needed), metres(clear), spare(needed, clear))
                .source(Source::CommonPractice)
                .working(working);
                if status == Status::Go { f } else { f.remedy(text::DO_CARRY_HIGHER.with("clear", metres(needed))) }
            }
            Self::Swings { radius, beside } => {
                let message = text::LOAD_ENDS_SWING.with("radius", metres(radius)).with("beside", metres(beside));
                Finding::new("load", status, message).remedy(text::DO_SIGNALLER_AT_ENDS).source(Source::CommonPractice)
            }
            Self::Open { rise, freeboard, side, tilt } => {
                let id = if status == Status::Condition { text::LOAD_OPEN_TANK } else { text::LOAD_SPILLS };
                let mut working = Working::default();
                working.step(|| Step {
                    title: text::WORKING_RISE.message(),
                    formula: "r = ½ · b · tan θ".into(),
                    values: vec![("b".into(), metres(side)), ("θ".into(), super::angle(tilt))],
                    result: ("r".into(), metres(rise)),
                    source: Source::Mechanics,
                });
                let message =
                    id.with("rise", metres(rise)).with("room", metres(freeboard)).with("tilt", super::angle(tilt));
                Finding::new("load", status, message)
                    .measured(metres(rise), metres(freeboard), reserve(rise, freeboard).max(-1.0))
                    .remedy(if status == Status::Condition { text::DO_KEEP_LEVEL_TANK } else { text::DO_DRAW_OFF })
                    .source(Source::Mechanics)
                    .working(working)
            }
            Self::Tilts { stands, tilt } => {
                let message = text::LOAD_TILTS.with("stands", super::angle(stands)).with("tilt", super::angle(tilt));
                Finding::new("load", status, message)
                    .measured(super::angle(stands), super::angle(tilt), reserve(stands, tilt).max(-1.0))
                    .remedy(text::DO_STATE_TILT.with("tilt", super::angle(stands)))
                    .source(Source::Mechanics)
            }
            Self::Surges { fill, height } => {
                let share = Quantity::ratio(if height > 0.0 { fill / height } else { 1.0 });
                Finding::new("load", status, text::LOAD_SURGES.with("share", share))
                    .remedy(text::DO_CREEP_TANK)
                    .source(Source::CommonPractice)
            }
        }
    }
}
