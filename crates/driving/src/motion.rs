//! One way of driving with the wheels held: an arc, a straight, a crab's slant.

use crate::{Gear, PlanBox, PlanPose, Spread, Steering, Vehicle};
use geometry::{DVec2, wrapped};

/// A stretch driven with the wheels held.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Motion {
    /// Steering mode.
    pub steering: Steering,
    /// Curvature of the pivot's way, 1/m, left positive; 0 in crab.
    pub curvature: f64,
    /// Angle of the way to the heading in crab, rad, left positive; else 0.
    pub slant: f64,
    /// Length of the pivot's way, m; negative in reverse.
    pub length: f64,
}

impl Motion {
    /// Which way it is driven.
    pub fn gear(&self) -> Gear {
        Gear::of(self.length)
    }

    /// The first part of it, up to a signed `length`.
    #[must_use]
    pub fn up_to(&self, length: f64) -> Self {
        Self { length, ..*self }
    }

    /// The turn and the shift of the machine's origin after `length`, seen from where it began: closed form.
    pub(crate) fn shift(&self, vehicle: &Vehicle, length: f64) -> (f64, DVec2) {
        if self.steering == Steering::Crab {
            let (s, c) = libm::sincos(self.slant);
            return (0.0, DVec2::new(length * c, length * s));
        }
        let pivot = vehicle.pivot(self.steering);
        let turn = self.curvature * length;
        // Below this the next term of the sine, turn²/6 of the length, is under the round-off of a site's metres.
        if turn.abs() < 1e-9 {
            return (turn, DVec2::new(length, (0.5 * length - pivot) * turn));
        }
        let (s, c) = libm::sincos(turn);
        let way = DVec2::new(s, 1.0 - c) / self.curvature;
        (turn, way + DVec2::new(pivot * (1.0 - c), -pivot * s))
    }

    /// The pose after `length` of it from `from`.
    pub fn at(&self, vehicle: &Vehicle, from: &PlanPose, length: f64) -> PlanPose {
        let (turn, shift) = self.shift(vehicle, length);
        PlanPose { at: from.place(shift), heading: wrapped(from.heading + turn) }
    }

    /// The pose at its end.
    pub fn end(&self, vehicle: &Vehicle, from: &PlanPose) -> PlanPose {
        self.at(vehicle, from, self.length)
    }

    /// By how much rectangles must be made larger at a pose of the motion so that they hold them at
    /// every pose up to `half` m before and after it.
    ///
    /// In the frame of the pose a corner at `q` from the turn's middle moves by at most
    /// `|q_y| sin Δ + |q_x| (1 − cos Δ)` along and `|q_x| sin Δ + |q_y| (1 − cos Δ)` across, `Δ = κ · half` up
    /// to a quarter turn (Mechanics); no point of a rectangle moves further than one of its corners.
    pub fn spread(&self, vehicle: &Vehicle, outline: &[PlanBox], half: f64) -> Spread {
        let half = half.abs();
        if self.steering == Steering::Crab {
            let (s, c) = libm::sincos(self.slant);
            return Spread { along: half * c.abs(), across: half * s.abs() };
        }
        if self.curvature == 0.0 {
            return Spread { along: half, across: 0.0 };
        }
        let turn = (self.curvature * half).abs().min(core::f64::consts::FRAC_PI_2);
        let (s, c) = libm::sincos(turn);
        let middle = DVec2::new(vehicle.pivot(self.steering), 1.0 / self.curvature);
        let mut spread = Spread::default();
        for q in outline.iter().flat_map(PlanBox::corners).map(|p| (p - middle).abs()) {
            spread.along = spread.along.max(q.y * s + q.x * (1.0 - c));
            spread.across = spread.across.max(q.x * s + q.y * (1.0 - c));
        }
        spread
    }
}
