//! A way cut into pieces that are each short enough to be read on the chart and weighed at their ends.
//!
//! Between the ends of a piece no point of boom or load lies farther off the straight line than [`off`]. Where every
//! mass moves on a straight line, a load factor or tilt that is enough at both ends is enough between them: both ask
//! that a sum of mass times place lies on one side of a plane, and what holds at two places holds between (mechanics;
//! half-spaces are convex). So each piece counts at its ends, with the load farther out and higher by what it may lie
//! off. The chart is read for the box round both ends, wider by the same.

use crate::context::Context;
use crate::movement::{Leg, Passed};
use machine::{Attachment, BoomPosition};
use quantity::Si;

/// Longest piece: angle (rad) and extension (m).
pub(crate) const LONGEST: (f64, f64) = (2.5 * core::f64::consts::PI / 180.0, 0.25);

/// Every piece of the legs. One with an end out of the boom's reach stands there as no number, which no check passes. While the boom is retracted only the ends count and where it is level: there reach and
/// height are greatest, as on the plain movement.
pub(crate) fn of(ctx: &Context<'_>, attachment: &Attachment, legs: &[Leg]) -> Vec<Passed> {
    let mut out = Vec::with_capacity(48);
    for leg in legs {
        let (Some(from), Some(to)) = (leg.at(ctx, attachment, 0.0), leg.at(ctx, attachment, 1.0)) else {
            out.push(Passed::out_of_reach());
            continue;
        };
        if from.extension <= 0.0 && to.extension <= 0.0 {
            out.extend([from, to].map(Passed::alone));
            if from.angle.min(to.angle) < 0.0 && from.angle.max(to.angle) > 0.0 {
                out.push(Passed::alone(BoomPosition { angle: 0.0, ..from }));
            }
            continue;
        }
        let (angle, extension) = ((to.angle - from.angle).abs(), (to.extension - from.extension).abs());
        let count = (angle / LONGEST.0).max(extension / LONGEST.1).ceil().clamp(1.0, 400.0) as usize;
        let at = |i: usize| leg.at(ctx, attachment, i as f64 / count as f64);
        for i in 0..count {
            let (Some(boom), Some(until)) = (at(i), at(i + 1)) else {
                out.push(Passed::out_of_reach());
                continue;
            };
            // Extended or retracted alone, every mass moves straight: both ends of the leg are enough.
            let weighed = [i == 0 || angle > 0.0, i + 1 == count];
            out.push(Passed { boom, until, off: off(ctx, leg, boom, until), weighed });
        }
    }
    out
}

/// Most that a point of boom or load lies off the straight line between its places at both ends, m: an eighth of its
/// greatest acceleration over the piece, `ρ·Δθ² + 2·Δe·Δθ` where angle and extension run evenly. Where the tool point
/// runs straight both change by as much again.
pub(crate) fn off(ctx: &Context<'_>, leg: &Leg, from: BoomPosition, to: BoomPosition) -> f64 {
    let boom = &ctx.machine.boom;
    let radius = libm::hypot(boom.head_along + boom.extension_max.si(), boom.head_below);
    let (angle, extension) = ((to.angle - from.angle).abs(), (to.extension - from.extension).abs());
    let even = (radius * angle * angle + 2.0 * extension * angle) / 8.0;
    match leg {
        Leg::Even(..) => even,
        Leg::Straight { .. } => 2.0 * even,
    }
}
