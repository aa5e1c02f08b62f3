//! Which way a machine heads that stands somewhere and is to bring its load to a landing.

use crate::context::Context;
use crate::posed::{Aimed, aim};
use crate::{Stand, Task};
use geometry::{DVec2, wrapped};
use machine::Attachment;
use quantity::Si;

/// The heading of each place: straight at the landing, the side shift counted, or as near to that as its approach direction
/// allows. A machine without slew points its boom at the landing, and the load lands square to it.
#[derive(Debug, Clone, Copy)]
pub(super) struct Aim {
    landing: DVec2,
    /// How far to the left of the boom's plane the load is carried, m.
    shift: f64,
    /// Approach heading, and the most that the machine may be turned from it, rad.
    approach: Option<(f64, f64)>,
    /// No boom of that machine reaches a landing farther away in plan, m.
    reach: f64,
}

/// The load comes down as near as this to where it is meant to, sideways, m.
const NEAR: f64 = 0.002;
/// Times that the heading is corrected for a machine that does not stand level.
const CORRECTIONS: usize = 3;

/// Step in which turns are tried, rad.
const STEP: f64 = 0.001;

impl Aim {
    pub(super) fn of(ctx: &Context<'_>) -> Self {
        let approach = ctx.landing.approach.map(|a| (a.heading, most_turned(ctx, a.tolerance)));
        let (boom, tool) = (&ctx.machine.boom, ctx.attachment.map_or(DVec2::ZERO, Attachment::tool_point));
        let long = libm::hypot(boom.head_along + boom.extension_max.si(), boom.head_below) + tool.length();
        let reach = boom.foot.length() + long + ctx.load.depth;
        Self { landing: ctx.landing.at, shift: ctx.lift.side_shift, approach, reach }
    }

    /// Heading of a machine whose front axle stands there, rad counter-clockwise from east: in plan, and then corrected for
    /// how it stands on its ground, so that the load comes down where it is meant to and not beside it.
    pub(super) fn heading(&self, ctx: &Context<'_>, at: DVec2) -> f64 {
        let mut there = *ctx;
        let _ = self.point(&mut there, at);
        there.stand.heading
    }

    /// Puts the machine there with that heading, and gives the boom aimed from there, where that was worked out.
    pub(super) fn point(&self, ctx: &mut Context<'_>, at: DVec2) -> Option<Aimed> {
        ctx.stand = Stand { at, heading: self.from(at) };
        if at.distance(self.landing) > self.reach {
            return None;
        }
        for _ in 0..CORRECTIONS {
            let aimed = aim(ctx).ok()?;
            let target = aimed.target();
            let off = target.y - self.shift;
            // Also what is not a number ends it.
            if !(off.abs() > NEAR && target.x > 0.0) {
                return Some(aimed);
            }
            ctx.stand.heading = self.within(ctx.stand.heading + libm::atan2(off, target.x));
        }
        None
    }

    /// The nearest heading that the landing takes.
    fn within(&self, straight: f64) -> f64 {
        match self.approach {
            None => straight,
            Some((heading, most)) => heading + wrapped(straight - heading).clamp(-most, most),
        }
    }

    fn from(&self, at: DVec2) -> f64 {
        let to = self.landing - at;
        let distance = to.length();
        // The landing lies `shift` to the left of the boom's plane.
        let aside = if distance > self.shift.abs() { libm::asin(self.shift / distance) } else { 0.0 };
        let straight = libm::atan2(to.y, to.x) - aside;
        self.within(straight)
    }

    /// How far a machine that heads so may still be turned to either side before the landing does not take its load, rad;
    /// infinite where nobody states from where it takes loads.
    pub(super) fn slack(&self, heading: f64) -> f64 {
        self.approach.map_or(f64::INFINITY, |(asked, most)| most - wrapped(heading - asked).abs())
    }

    /// True if the landing states from where it takes loads.
    pub(super) fn directed(&self) -> bool {
        self.approach.is_some()
    }
}

/// The most that the machine may be turned from the approach direction: its tolerance, and no more than the load still fits
/// on the landing at; where it fits nowhere the tolerance.
fn most_turned(ctx: &Context<'_>, tolerance: f64) -> f64 {
    if ctx.lift.task == Task::PickUp {
        return tolerance;
    }
    let (depth, width, size) = (ctx.load.depth, ctx.load.width, ctx.landing.size);
    let fits = |turn: f64| {
        let (sin, cos) = libm::sincos(turn);
        depth * cos + width * sin <= size.x && width * cos + depth * sin <= size.y
    };
    if !fits(0.0) {
        return tolerance;
    }
    let steps = (tolerance / STEP).floor().clamp(0.0, 10_000.0) as usize;
    let last = (1..=steps).map(|i| i as f64 * STEP).take_while(|turn| fits(*turn)).last().unwrap_or(0.0);
    if last + STEP > tolerance && fits(tolerance) { tolerance } else { last }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_boom_points_at_the_landing_with_the_load_shifted_aside() {
        let landing = DVec2::new(3.0, 4.0);
        for (shift, at) in [(0.0, DVec2::ZERO), (0.4, DVec2::new(-2.0, 1.0)), (-0.3, DVec2::new(9.0, -5.0))] {
            let aim = Aim { landing, shift, approach: None, reach: 20.0 };
            let (s, c) = libm::sincos(aim.from(at));
            let left = (landing - at).dot(DVec2::new(-s, c));
            assert!((left - shift).abs() < 1e-12, "{left} against {shift}");
            assert!((landing - at).dot(DVec2::new(c, s)) > 0.0, "it points at the landing, not away from it");
        }
    }

    #[test]
    fn a_heading_stays_within_what_the_landing_takes() {
        let aim = Aim { landing: DVec2::ZERO, shift: 0.0, approach: Some((0.2, 0.1)), reach: 20.0 };
        for (at, wanted) in [
            (DVec2::new(-5.0, 0.0), 0.1),
            (DVec2::new(-5.0, -4.0), 0.3),
            (DVec2::new(-5.0, -0.9), libm::atan2(0.9, 5.0)),
            (DVec2::new(5.0, 0.5), 0.3),
        ] {
            assert!((aim.from(at) - wanted).abs() < 1e-9, "{at}: {} against {wanted}", aim.from(at));
        }
    }
}
