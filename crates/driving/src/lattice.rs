//! Steps that the search takes, and which poses count as the same.

use crate::clear::Spreaded;
use crate::{DriveMap, Gear, Motion, PlanPose, Settings, Steering, Vehicle};
use core::f64::consts::TAU;
use geometry::{DVec2, wrapped};

/// A step with where it leads, worked out once.
#[derive(Debug, Clone)]
pub(crate) struct Step {
    pub(crate) spreaded: Spreaded,
    pub(crate) gear: Gear,
    turn: f64,
    shift: DVec2,
}

impl Step {
    pub(crate) fn motion(&self) -> &Motion {
        &self.spreaded.motion
    }

    /// The pose after it; `sin_cos` of the heading before.
    pub(crate) fn end(&self, from: &PlanPose, (s, c): (f64, f64)) -> PlanPose {
        let d = self.shift;
        let at = from.at + DVec2::new(c * d.x - s * d.y, s * d.x + c * d.y);
        PlanPose { at, heading: wrapped(from.heading + self.turn) }
    }
}

/// Every step: in each mode straight, at half and at full lock, to either side, both ways. Turns end on whole
/// headings of the lattice, so that a pose stays near the middle of its cell.
pub(crate) fn steps<M: DriveMap>(map: &M, vehicle: &Vehicle, settings: &Settings) -> Vec<Step> {
    let heading = TAU / f64::from(settings.headings.max(4));
    let mut out = Vec::new();
    for steering in Steering::ALL {
        let mut ways = Vec::new();
        if let Some(radius) = vehicle.turning.radius(steering) {
            ways.push((0.0, 0.0, settings.step));
            for share in [1.0, 0.5] {
                let curvature = share / radius;
                let turns = (settings.step * curvature / heading - 1e-9).ceil().max(1.0);
                let length = turns * heading / curvature;
                ways.extend([(curvature, 0.0, length), (-curvature, 0.0, length)]);
            }
        }
        if let Some(most) = vehicle.turning.crab.filter(|a| steering == Steering::Crab && *a > 0.0) {
            ways.extend([1.0, 0.5, -0.5, -1.0].map(|share| (0.0, share * most, settings.step)));
        }
        for (curvature, slant, length) in ways {
            for gear in [Gear::Forward, Gear::Reverse] {
                let length = if gear == Gear::Reverse { -length } else { length };
                let motion = Motion { steering, curvature, slant, length };
                let (turn, shift) = motion.shift(vehicle, length);
                let spreaded = Spreaded::new(map, vehicle, motion, settings.step.max(length.abs()));
                out.push(Step { spreaded, gear, turn, shift });
            }
        }
    }
    out
}

/// Which poses count as the same.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Lattice {
    place: f64,
    headings: f64,
}

impl Lattice {
    pub(crate) fn new(settings: &Settings, place: f64) -> Self {
        Self { place, headings: f64::from(settings.headings.max(4)) }
    }

    /// Key of a pose reached in a gear and a mode. Places within 2²³ cells of the origin, either way, are told
    /// apart; the search knows no other.
    pub(crate) fn key(&self, pose: &PlanPose, gear: Gear, steering: Steering) -> u64 {
        let place = |v: f64| ((v / self.place).floor() as i64 & 0xff_ffff) as u64;
        let turns = pose.heading / TAU;
        let heading = ((turns - turns.floor()) * self.headings + 0.5).floor() % self.headings;
        let state = (gear as u64) << 2 | steering as u64;
        place(pose.at.x) << 40 | place(pose.at.y) << 16 | (heading as u64 & 0x1fff) << 3 | state & 0x7
    }
}
