//! How the machine stands while the boom is up: frame and axles on the ground as it lies.

use crate::context::Context;
use geometry::{DVec3, Pose};
use machine::{Lock, SupportState};
use quantity::Si;
use site::footing::Footing;
use stability::{RearAxleState, Stance, Support, gravity_for_slopes};

/// Boom angle by which the lock of a rear axle may come earlier or later than the manual says, rad: pointer
/// and switch (our own figure, 3°).
const TRIGGER_ERROR: f64 = 0.052;

/// One way in which frame and axles may stand, within what is known of the ground.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Attitude {
    /// Roll of the front axle against the frame, left side down, rad; 0 where the frame is not levelled.
    pub(crate) front_roll: f64,
    /// Roll of the rear axle against the frame, following the ground, rad.
    pub(crate) rear_roll: f64,
    /// Unit vector of gravity in the frame.
    pub(crate) gravity: DVec3,
}

impl Attitude {
    pub(crate) fn stance(&self, state: SupportState, rear: RearAxleState) -> Stance {
        Stance { support: Support { state, rear }, front_roll: self.front_roll, rear_roll: self.rear_roll }
    }
}

/// The frame made upright on the front axle, as far as it goes.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Levelled {
    /// Roll of the ground under the front axle at most, to either side, the survey's accuracy included, rad.
    pub(crate) ground: f64,
    /// How far the frame can be levelled to either side, rad.
    pub(crate) range: f64,
    /// Roll of the frame that may stay, lowest and highest, left side down, rad.
    pub(crate) residual: [f64; 2],
}

/// `None` where the lift does not ask for it, or the machine cannot: on pads the frame follows the pads.
pub(crate) fn levelled(ctx: &Context<'_>, ground: &Footing) -> Option<Levelled> {
    let by = ctx.machine.levelling.filter(|_| ctx.lift.levelled && ctx.lift.support == SupportState::Tyres)?;
    let (range, error) = (by.range.si(), by.indicator_error.si());
    let [low, high] = [ground.across.low, ground.across.high].map(libm::atan);
    // The indicator may be off, and what is beyond the stop stays. Counted together.
    let stays = |roll: f64| roll - roll.clamp(-range, range);
    Some(Levelled { ground: low.abs().max(high.abs()), range, residual: [stays(low) - error, stays(high) + error] })
}

/// The frame as it stands once it is levelled: turned about the pin of the front axle, whose wheels stay
/// where they are.
pub(crate) fn footing_levelled(ctx: &Context<'_>, ground: &Footing, levelled: &Levelled) -> Footing {
    let pin = ctx.machine.levelling.map_or(0.0, |l| l.pin_height);
    turned_upright(ground, levelled, ctx.machine.front.x, pin)
}

/// The same for a front axle at `x` with its pin at height `pin`, m.
fn turned_upright(ground: &Footing, levelled: &Levelled, x: f64, pin: f64) -> Footing {
    let nominal = libm::atan(ground.across.nominal);
    let stays = nominal - nominal.clamp(-levelled.range, levelled.range);
    let [low, high] = levelled.residual;
    let old = ground.site_from_machine;
    // Left side up by what levelling takes, about an axis along the machine through the pin.
    let (s, c) = libm::sincos(nominal - stays);
    let turned = Pose::from_axes(DVec3::X, DVec3::new(0.0, c, s), DVec3::ZERO);
    let at = DVec3::new(x, 0.0, pin);
    let about = Pose { translation: at - turned.turn(at), ..turned };
    let rear = [ground.rear_across.low, ground.rear_across.high].map(libm::atan);
    Footing {
        site_from_machine: old * about,
        across: evidence::Ranged { low: libm::tan(low), nominal: libm::tan(stays), high: libm::tan(high) },
        twist: (rear[1] - low).abs().max((rear[0] - high).abs()),
        ..ground.clone()
    }
}

/// Every corner of the ground's heights within their accuracy, with the frame as it stands on them.
pub(crate) fn attitudes(ground: &Footing, levelled: Option<&Levelled>) -> Vec<Attitude> {
    let rolls = |low: f64, high: f64| [libm::atan(low), libm::atan(high)];
    let front = rolls(ground.across.low, ground.across.high);
    let rear = rolls(ground.rear_across.low, ground.rear_across.high);
    // Roll of the frame; the front axle is rigid to a frame that is not levelled.
    let frame = levelled.map_or(front, |l| l.residual);
    let front_rolls = match levelled {
        Some(l) => [front[0] - l.residual[1], front[1] - l.residual[0]].map(|r| r.clamp(-l.range, l.range)),
        None => [0.0; 2],
    };
    let rear_rolls = [rear[0] - frame[1], rear[1] - frame[0]];
    let mut all = Vec::with_capacity(16);
    for along in ends([ground.along.low, ground.along.high]) {
        for roll in ends(frame) {
            let gravity = gravity_for_slopes(along, libm::tan(roll));
            for front_roll in ends(front_rolls) {
                all.extend(ends(rear_rolls).map(|rear_roll| Attitude { front_roll, rear_roll, gravity }));
            }
        }
    }
    all
}

/// Both ends of a range, or its one value.
fn ends([low, high]: [f64; 2]) -> impl Iterator<Item = f64> {
    core::iter::once(low).chain((high.to_bits() != low.to_bits()).then_some(high))
}

/// What is counted of a lock of the rear axle.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum LockCounted {
    /// Nothing locks it, or nothing is to: free.
    Free,
    /// Locked, as somebody tried it today.
    Locked,
    /// It should be locked, but nobody tried it: free and locked, the worse counts.
    NotTried,
}

/// What is counted at a boom angle (rad).
pub(crate) fn lock(ctx: &Context<'_>, angle: f64) -> LockCounted {
    if ctx.lift.support == SupportState::Outriggers {
        // No tyre carries: the frame stands on four pads.
        return LockCounted::Locked;
    }
    let when_tried = || if ctx.unit.lock_tried.is_some() { LockCounted::Locked } else { LockCounted::NotTried };
    let own = match ctx.machine.rear.lock {
        Lock::Operator if ctx.lift.axle_locked => when_tried(),
        Lock::Never | Lock::Operator => LockCounted::Free,
        Lock::AboveBoomAngle => match ctx.machine.rear.lock_angle.map(|a| a.si()) {
            Some(trigger) if angle > trigger + TRIGGER_ERROR => when_tried(),
            Some(trigger) if angle < trigger - TRIGGER_ERROR => LockCounted::Free,
            // Around it, or not known where it is: both.
            Some(_) | None => LockCounted::NotTried,
        },
        Lock::Unknown => LockCounted::NotTried,
    };
    match own {
        LockCounted::Free if locked_by_pads(ctx) => {
            // Which of two locks was tried nobody states: where another one is fitted, it was that one.
            if ctx.machine.rear.lock == Lock::Never { when_tried() } else { LockCounted::NotTried }
        }
        other => other,
    }
}

/// True if the stabilizers, which this lift has down, lock the rear axle.
pub(crate) fn locked_by_pads(ctx: &Context<'_>) -> bool {
    ctx.lift.support == SupportState::Stabilizers && ctx.machine.stabilizers.as_ref().is_some_and(|s| !s.rear_axle_free)
}

impl LockCounted {
    /// The states that count.
    pub(crate) fn states(self) -> &'static [RearAxleState] {
        match self {
            Self::Free => &[RearAxleState::Free],
            Self::Locked => &[RearAxleState::Locked],
            Self::NotTried => &[RearAxleState::Free, RearAxleState::Locked],
        }
    }
}

#[cfg(test)]
mod tests {
    #![allow(clippy::unwrap_used, reason = "tests")]
    use super::*;
    use geometry::DVec2;
    use site::footing::{Contacts, Heights, on_heights};

    /// Turned about a pin at `pin` above the axle by `roll`, left side down.
    fn rolled(p: DVec3, pin: f64, roll: f64) -> DVec3 {
        let (s, c) = libm::sincos(roll);
        let z = p.z - pin;
        DVec3::new(p.x, p.y * c + z * s, pin - p.y * s + z * c)
    }

    #[test]
    fn levelling_leaves_the_front_wheels_where_they_are() {
        let contacts = Contacts { front_x: 0.0, front_half: 1.0, rear_x: -3.0, rear_half: 1.0 };
        let heights = Heights { at: [9.9, 10.1, 9.8, 10.2], accuracy: 0.0, surface: 0 };
        let ground = on_heights(DVec2::new(5.0, 3.0), 0.7, &contacts, heights);
        for range in [0.05_f64, 0.3] {
            let roll = libm::atan(0.1);
            let stays = (roll - range).max(0.0);
            let by = Levelled { ground: roll, range, residual: [stays, stays] };
            let footing = turned_upright(&ground, &by, 0.0, 0.65);
            for y in [1.0, -1.0] {
                let wheel = DVec3::new(0.0, y, 0.0);
                let before = ground.site_from_machine * wheel;
                let after = footing.site_from_machine * rolled(wheel, 0.65, roll - stays);
                assert!((before - after).length() < 1e-12, "{before} {after}");
            }
            let up = footing.site_from_machine.turn(DVec3::Y).z;
            assert!((up + libm::sin(stays)).abs() < 1e-3, "left end falls by what stays: {up}");
            // The rear axle, 11.3 degrees on the ground, against a frame that is upright.
            assert!((footing.twist - (libm::atan(0.2) - stays)).abs() < 1e-12);
        }
    }

    #[test]
    fn every_corner_of_a_sloping_ground_is_an_attitude() {
        let contacts = Contacts { front_x: 0.0, front_half: 1.0, rear_x: -3.0, rear_half: 1.0 };
        let heights = |accuracy| Heights { at: [9.9, 10.1, 9.8, 10.2], accuracy, surface: 0 };
        let on = |accuracy| on_heights(DVec2::ZERO, 0.0, &contacts, heights(accuracy));
        assert_eq!(attitudes(&on(0.0), None).len(), 1);
        let one = attitudes(&on(0.0), None)[0];
        assert!((one.rear_roll - (libm::atan(0.2) - libm::atan(0.1))).abs() < 1e-12);
        assert_eq!(one.front_roll.to_bits(), 0.0_f64.to_bits());
        assert_eq!(attitudes(&on(0.02), None).len(), 8);
        let by = Levelled { ground: 0.2, range: 0.3, residual: [-0.01, 0.01] };
        let all = attitudes(&on(0.02), Some(&by));
        assert_eq!(all.len(), 16);
        // The front axle follows the ground, against a frame that is upright within what stays.
        let furthest = all.iter().map(|a| a.front_roll).fold(0.0, f64::max);
        assert!((furthest - (libm::atan(on(0.02).across.high) + 0.01)).abs() < 1e-12);
    }
}
