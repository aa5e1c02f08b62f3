//! Does the boom point at the landing, from a side that is allowed.

use super::parts::feet;
use super::{angle, metres, reserve, within};
use crate::context::Context;
use crate::posed::{NotPosed, Posed};
use crate::{Stand, StandsOn, Task, text};
use evidence::{Finding, Source, Status};
use geometry::{DVec2, DVec3, wrapped};
use quantity::{Dimension, Quantity};
use site::PlanArea;

/// How far a pick-up may miss the load's middle, m: more would load one blade (ours).
const PICK_UP_MISS: f64 = 0.20;

/// Numbers of the approach check.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Approach {
    /// Sideways miss of the landing's middle by the load, side shift and stand error counted, m.
    pub(crate) miss: f64,
    /// Room on either side of the load on the landing, m; negative: it does not fit.
    pub(crate) allowed: f64,
    /// Size of the load and of the landing, (along, across), m, where the load does not fit.
    pub(crate) too_small: Option<(DVec2, DVec2)>,
    /// How far the boom alone can pull the forks out, and how far they lie under the load, m, where
    /// that is too short.
    pub(crate) stuck: Option<(f64, f64)>,
    /// Angle off the allowed direction, rad, and its tolerance.
    pub(crate) turn: Option<(f64, f64)>,
    /// Room between machine and landing in plan, the stand error taken off, m, where that is too little and nothing else
    /// refuses.
    pub(crate) into: Option<f64>,
    pub(crate) behind: bool,
}

/// Room that stays between the machine and what the landing stands on, m (common practice).
const ROOM: f64 = 0.30;

pub(crate) fn approach(ctx: &Context<'_>, posed: &Posed) -> Approach {
    approach_from(ctx, posed.target, posed.movement.as_ref().map(|m| m.withdrawal))
}

/// The same for the tool's place at the landing, machine frame, m, and how far the forks come out and must, where that is
/// known.
fn approach_from(ctx: &Context<'_>, target: DVec3, withdrawal: Option<(f64, f64)>) -> Approach {
    let mut found = pointed(ctx, target, withdrawal);
    // What is refused already need not be measured.
    if found.status() <= Status::Condition {
        let turned = found.turn.and(ctx.landing.approach).map(|a| a.heading);
        let gap = landing_ahead(ctx, turned) - ctx.policy.stand_error;
        // Also what is not a number is in it.
        found.into = (gap < ROOM || gap.is_nan()).then_some(gap);
    }
    found
}

/// Whether the boom points at the landing as it should, without the machine's own room beside it.
pub(crate) fn pointed(ctx: &Context<'_>, target: DVec3, withdrawal: Option<(f64, f64)>) -> Approach {
    let turn = ctx.landing.approach.map(|a| (wrapped(ctx.stand.heading - a.heading).abs(), a.tolerance));
    // The load lies square to the machine: turned against the landing it takes more room. Without a
    // stated direction the landing's smaller side counts for both.
    let (sin, cos) = libm::sincos(turn.map_or(0.0, |(off, _)| off));
    let (depth, width) = (ctx.load.depth, ctx.load.width);
    let load = DVec2::new(depth * cos.abs() + width * sin.abs(), width * cos.abs() + depth * sin.abs());
    let landing = match turn {
        Some(_) => ctx.landing.size,
        None => DVec2::splat(ctx.landing.size.min_element()),
    };
    // A hung load hangs with its centre of gravity under the hook, not with its middle.
    let most = |r: evidence::Ranged| r.low.abs().max(r.high.abs());
    let (aside, ahead) = match ctx.load.hanging {
        Some(_) => (most(ctx.load.centre_left), most(ctx.load.centre_ahead)),
        None => (0.0, 0.0),
    };
    let load = load + DVec2::new(2.0 * ahead, 0.0);
    let picks_up = ctx.lift.task == Task::PickUp;
    let too_small = (!picks_up && (load.x > landing.x + FIT || load.y > landing.y + FIT)).then_some((load, landing));
    let stuck = withdrawal.filter(|(room, length)| *room + 0.01 < *length);
    Approach {
        miss: (target.y - ctx.lift.side_shift).abs() + ctx.policy.stand_error + aside,
        allowed: if picks_up { PICK_UP_MISS } else { (landing.y - load.y) / 2.0 },
        too_small,
        stuck,
        turn,
        into: None,
        behind: target.x <= ctx.machine.front.x,
    }
}

/// Distance in plan from frame, tyres and pads to what landings stand on, m: to this one's rectangle, whose long way
/// `heading` gives, without a heading to the circle around it; to every other one of the job that does not lie on the ground
/// itself. What carries a landing stands below it.
fn landing_ahead(ctx: &Context<'_>, heading: Option<f64>) -> f64 {
    let machine = outlines(ctx);
    let far = |area: &PlanArea| machine.iter().map(|m| m.distance_to_area(area)).fold(f64::INFINITY, lesser);
    let from_circle =
        |at: DVec2, radius: f64| machine.iter().map(|m| m.distance_to_point(at)).fold(f64::INFINITY, lesser) - radius;
    let of = |landing: &site::Landing, heading: Option<f64>| {
        let half = landing.size / 2.0;
        match heading {
            Some(heading) => far(&rectangle(landing.at, heading, (-half.x, half.x), half.y)),
            None => from_circle(landing.at, half.length()),
        }
    };
    let own = match ctx.strength().stands {
        // On the ground itself only the load is in the way.
        Some(StandsOn::Ground) => {
            let half = DVec2::new(ctx.load.depth, ctx.load.width) / 2.0;
            far(&rectangle(ctx.landing.at, ctx.stand.heading, (-half.x, half.x), half.y))
        }
        _ => of(ctx.landing, heading),
    };
    let near = |l: &site::Landing| l.at.distance(ctx.stand.at) < REACH + l.size.length();
    let others = ctx.job.landings.iter().zip(&ctx.job.strengths).enumerate();
    others
        .filter(|(i, (l, s))| *i != ctx.lift.landing && s.stands != Some(StandsOn::Ground) && near(l))
        .map(|(_, (landing, _))| of(landing, landing.approach.map(|a| a.heading)))
        .fold(own, lesser)
}

/// No part of a machine's frame or pads reaches farther from the middle of its front axle, m.
const REACH: f64 = 15.0;

/// The lesser of two distances; NaN is worse than any.
fn lesser(a: f64, b: f64) -> f64 {
    if a.is_nan() || a < b { a } else { b }
}

/// A rectangle about a place: along a heading from `x0` to `x1`, so far to either side, m.
fn rectangle(at: DVec2, heading: f64, (x0, x1): (f64, f64), half: f64) -> PlanArea {
    let (sin, cos) = libm::sincos(heading);
    let (ahead, left) = (DVec2::new(cos, sin), DVec2::new(-sin, cos));
    let corners = [(x0, -half), (x1, -half), (x1, half), (x0, half)];
    PlanArea { outer: corners.map(|(x, y)| at + ahead * x + left * y).to_vec(), holes: Vec::new() }
}

/// The machine in plan: frame with tyres, and each pair of legs that is down.
fn outlines(ctx: &Context<'_>) -> Vec<PlanArea> {
    let o = &ctx.machine.outline;
    let Stand { at, heading } = ctx.stand;
    let front = o.front.max(ctx.machine.front_face());
    let mut out = vec![rectangle(at, heading, (o.rear, front), o.half_width)];
    out.extend(feet(ctx).map(|foot| rectangle(at, heading, foot.along, foot.half)));
    out
}

/// Sizes closer than this are the same, m.
const FIT: f64 = 1e-6;

impl Approach {
    fn past(&self) -> bool {
        within(self.miss, self.allowed + FIT) != Status::Go
    }

    pub(crate) fn status(&self) -> Status {
        let turned = self.turn.is_some_and(|(off, tolerance)| off > tolerance + 1e-9);
        let past = self.past();
        let refused = self.behind || turned || past || self.too_small.is_some() || self.stuck.is_some();
        let refused = refused || self.into.is_some();
        if refused { Status::NoGo } else { Status::Go }
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
    let to_landing = ctx.landing.at - ctx.stand.at;
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
    if let Some((load, landing)) = a.too_small {
        let message = text::APPROACH_TOO_SMALL
            .with("width", metres(load.y))
            .with("depth", metres(load.x))
            .with("across", metres(landing.y))
            .with("along", metres(landing.x));
        return Finding::new("approach", Status::NoGo, message).remedy(text::DO_LARGER_LANDING).source(practice);
    }
    if let Some((room, length)) = a.stuck {
        let message = text::APPROACH_NO_WITHDRAWAL.with("room", metres(room)).with("length", metres(length));
        return Finding::new("approach", Status::NoGo, message)
            .at_least(metres(length), metres(room), super::spare(length, room))
            .remedy(text::DO_FARTHER.with("distance", metres(length - room)))
            .source(practice);
    }
    let miss = a.miss;
    if a.past() {
        let message = text::APPROACH_PAST.with("offset", metres(miss)).with("allowed", metres(a.allowed.max(0.0)));
        return Finding::new("approach", Status::NoGo, message)
            .measured(metres(miss), metres(a.allowed), reserve(miss, a.allowed))
            .remedy(turn())
            .source(practice);
    }
    if let Some(gap) = a.into {
        return Finding::new(
            "approach",
            Status::NoGo,
            text::APPROACH_INTO.with("room", metres(gap.max(0.0))).with("asked", metres(ROOM)),
        )
        .at_least(metres(ROOM), metres(gap.max(0.0)), super::spare(ROOM, gap))
        .remedy(text::DO_STAND_CLEAR.with("distance", metres(ROOM - gap)))
        .source(practice);
    }
    let id = if a.turn.is_some() { text::APPROACH_SQUARE } else { text::APPROACH_ANY };
    let f = Finding::new("approach", Status::Go, id.with("offset", metres(miss))).source(practice);
    if a.turn.is_some() { f } else { f.remedy(text::DO_STATE_APPROACH) }
}
