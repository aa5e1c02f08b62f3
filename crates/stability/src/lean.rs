//! How much earlier a machine on springs tips than one on rigid contacts. Closed form.
//!
//! At the onset over a line all of the weight stands on that line's two supports, and the others have
//! just lost theirs: the forces are known by where the weight meets the line, and with them how far each
//! end has given. The ground's plane goes through the two given ends and the contact that has just
//! come free: that is how far the body is turned against the ground. The reserve shrinks by the part of
//! this turn about the axis of the worst tilt, while the line, moved up into the body by what its
//! contacts have given, lies a little nearer to the weight (geometry).

use crate::support::{Points, points};
use crate::{Loading, Masses, RearAxleState, Springs, Stance, TippingLine, TipsOver, tilt_reserve};
use evidence::Silent;
use geometry::DVec3;
use machine::{Machine, SupportState};
use quantity::STANDARD_GRAVITY as G;

/// A support of a line: where, and by how much it gives per newton, with the force already on it.
pub(crate) struct End {
    pub(crate) at: DVec3,
    pub(crate) give: f64,
    pub(crate) before: f64,
    /// The pin is a point of the body: its tyres give below it.
    on_body: bool,
}

/// The lean counts 15 % more than the first order gives: with it no case of the search on springs
/// tipped earlier (own comparison, see the tests).
pub(crate) const SECOND_ORDER: f64 = 1.15;

/// Tilt (rad) that the ground may still turn, in the worst direction, until a machine on springs tips
/// over `line`; negative if it tips already. As [`crate::tilt_reserve`], whose rigid contacts hold it
/// longer. Negative infinity where a spring is not a positive number.
pub fn tilt_reserve_on_springs(
    machine: &Machine,
    stance: impl Into<Stance>,
    loading: &Loading,
    line: &TippingLine,
    springs: Springs,
) -> f64 {
    let stance = stance.into();
    if !(springs.front > 0.0 && springs.rear > 0.0) {
        return f64::NEG_INFINITY;
    }
    let rigid = tilt_reserve(loading, line, &mut Silent);
    let p = points(machine, stance);
    let free = stance.support.rear == RearAxleState::Free && stance.support.state != SupportState::Outriggers;
    let (ends, lifted) = ends(&p, line.over, free, &loading.masses, springs);
    let (mass, moment) = loading.masses.counted(line.with_rear_axle);
    let weight = mass * G;

    // Where the weight meets the line at the onset, as a share of the way between its ends.
    let (from, along) = (ends[0].at, ends[1].at - ends[0].at);
    let arm = moment / mass - from;
    let square = along.cross(arm).normalize();
    let falls = (loading.gravity - square * loading.gravity.dot(square)).normalize();
    let share = (arm.cross(falls).dot(square) / along.cross(falls).dot(square)).clamp(0.0, 1.0);
    let give =
        [ends[0].give * (ends[0].before + weight * (1.0 - share)), ends[1].give * (ends[1].before + weight * share)];
    // The axis about which the worst tilt turns.
    let axis = loading.gravity.cross(square).normalize();
    let turned = lifted.map(|t| turn([t, ends[0].at, ends[1].at], [0.0, -give[0], -give[1]]));
    let [a, b] = turned.map(|t| t.dot(axis));
    let (lean, turned) = if a >= b { (a, turned[0]) } else { (b, turned[1]) };
    // It tips between the rigid tilt less the whole lean and the rigid tilt: the springs feel the
    // weight's part square to the ground.
    let cos = |tilt: f64| libm::cos(tilt.clamp(0.0, core::f64::consts::FRAC_PI_2));
    let (most, least) = (cos(rigid - lean.max(0.0)), cos(rigid));
    // The ground's normal in the body: up, turned back.
    let normal = (DVec3::Z - turned.cross(DVec3::Z)).normalize();
    let up = |i: usize| if ends[i].on_body { DVec3::ZERO } else { normal * (give[i] * least) };
    let (a, b) = (ends[0].at + up(0), ends[1].at + up(1));
    let given = TippingLine { point: a, along: (b - a).normalize(), ..*line };
    let soft = tilt_reserve(loading, &given, &mut Silent) - lean.max(0.0) * most * SECOND_ORDER;
    // Where sinking brings the weight nearer to the line than the lean costs, that is not credited.
    if rigid < soft { rigid } else { soft }
}

/// Rotation vector (rad, small) of a plane whose three points move up by `rise`.
pub(crate) fn turn(at: [DVec3; 3], rise: [f64; 3]) -> DVec3 {
    let (u, v) = (at[1] - at[0], at[2] - at[0]);
    let (du, dv) = (rise[1] - rise[0], rise[2] - rise[0]);
    let whole = u.x * v.y - u.y * v.x;
    let (by_x, by_y) = ((du * v.y - dv * u.y) / whole, (u.x * dv - v.x * du) / whole);
    DVec3::new(by_y, -by_x, 0.0)
}

/// The two supports of a line, and the contacts that come free.
pub(crate) fn ends(
    p: &Points,
    over: TipsOver,
    free: bool,
    masses: &Masses,
    springs: Springs,
) -> ([End; 2], [DVec3; 2]) {
    let front = |i: usize| End { at: p.front[i], give: 1.0 / springs.front, before: 0.0, on_body: false };
    let rear = |i: usize| {
        if free {
            // The pin goes down by the mean of its two wheels, which carry the axle besides.
            End { at: p.pin, give: 0.5 / springs.rear, before: masses.axle * G, on_body: true }
        } else {
            End { at: p.rear[i], give: 1.0 / springs.rear, before: 0.0, on_body: false }
        }
    };
    let wheel = |i: usize| End { at: p.rear[i], give: 1.0 / springs.rear, before: 0.0, on_body: false };
    match over {
        TipsOver::Front => ([front(0), front(1)], p.rear),
        TipsOver::Rear => ([wheel(1), wheel(0)], p.front),
        TipsOver::Left => ([rear(0), front(0)], if free { [p.front[1]; 2] } else { [p.front[1], p.rear[1]] }),
        TipsOver::Right => ([front(1), rear(1)], if free { [p.front[0]; 2] } else { [p.front[0], p.rear[0]] }),
    }
}
