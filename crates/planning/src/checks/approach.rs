//! Does the boom point at the landing, from a side that is allowed.

use super::{angle, metres, reserve};
use crate::context::Context;
use crate::posed::{NotPosed, Posed};
use crate::text;
use evidence::{Finding, Source, Status};
use quantity::{Dimension, Quantity};

/// Numbers of the approach check.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Approach {
    /// Sideways miss of the landing's middle, m, positive left.
    pub(crate) offset: f64,
    /// Room on either side of the load on the landing, m.
    pub(crate) allowed: f64,
    /// Angle off the allowed direction, rad, and its tolerance.
    pub(crate) turn: Option<(f64, f64)>,
    pub(crate) behind: bool,
}

pub(crate) fn approach(ctx: &Context<'_>, posed: &Posed) -> Approach {
    let turn = ctx.landing.approach.map(|a| {
        let full = core::f64::consts::TAU;
        let off = libm::fmod(ctx.lift.stand.heading - a.heading, full);
        let off = if off > full / 2.0 {
            off - full
        } else if off < -full / 2.0 {
            off + full
        } else {
            off
        };
        (off.abs(), a.tolerance)
    });
    Approach {
        offset: posed.target.y,
        allowed: ((ctx.landing.size.y - ctx.load.width) / 2.0).max(0.0),
        turn,
        behind: posed.target.x <= ctx.machine.front.x,
    }
}

impl Approach {
    pub(crate) fn status(&self) -> Status {
        let turned = self.turn.is_some_and(|(off, tolerance)| off > tolerance + 1e-9);
        if self.behind || turned || self.offset.abs() > self.allowed { Status::NoGo } else { Status::Go }
    }
}

pub(crate) fn finding(ctx: &Context<'_>, posed: Result<&Posed, &NotPosed>) -> Finding {
    let posed = match posed {
        Ok(posed) => posed,
        Err(not) => {
            return Finding::new("approach", Status::CannotTell, text::APPROACH_NOT_CHECKED.with("why", not.why()))
                .remedy(not.remedy())
                .source(Source::Mechanics);
        }
    };
    let a = approach(ctx, posed);
    let to_landing = ctx.landing.at - ctx.lift.stand.at;
    let heading = geometry::heading_to_degrees(libm::atan2(to_landing.y, to_landing.x));
    let turn = || text::DO_TURN.with("heading", Quantity::new(heading.to_radians(), Dimension::Angle));
    let practice = Source::CommonPractice;
    if a.behind {
        return Finding::new("approach", Status::NoGo, text::APPROACH_BEHIND).remedy(turn()).source(practice);
    }
    if let Some((off, tolerance)) = a.turn.filter(|(off, tolerance)| *off > *tolerance + 1e-9) {
        let message = text::APPROACH_WRONG_SIDE.with("angle", angle(off)).with("tolerance", angle(tolerance));
        let asked = ctx.landing.approach.map_or(0.0, |d| geometry::heading_to_degrees(d.heading));
        return Finding::new("approach", Status::NoGo, message)
            .measured(angle(off), angle(tolerance), reserve(off, tolerance))
            .remedy(text::DO_TURN.with("heading", Quantity::new(asked.to_radians(), Dimension::Angle)))
            .source(practice);
    }
    let miss = a.offset.abs();
    if miss > a.allowed {
        let message = text::APPROACH_PAST.with("offset", metres(miss)).with("allowed", metres(a.allowed));
        return Finding::new("approach", Status::NoGo, message)
            .measured(metres(miss), metres(a.allowed), reserve(miss, a.allowed))
            .remedy(turn())
            .source(practice);
    }
    let id = if a.turn.is_some() { text::APPROACH_SQUARE } else { text::APPROACH_ANY };
    let f = Finding::new("approach", Status::Go, id.with("offset", metres(miss))).source(practice);
    if a.turn.is_some() { f } else { f.remedy(text::DO_STATE_APPROACH) }
}
