//! How the axles stand under the frame: straight, levelled, or locked at an angle.
//!
//! All points are in the machine frame, which is the frame of the sprung body: where an axle is rolled
//! against it, the axle's contacts and its own weight move, the body does not.

use crate::Support;
use geometry::DVec3;
use machine::{BodyKind, Machine};

/// A support state with the roll of each axle against the frame. Roll is positive with the axle's
/// left end lower, as on ground that falls to the left under an upright frame, rad.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Stance {
    /// Tyres, stabilizers or outriggers; rear axle free or locked.
    pub support: Support,
    /// Front axle against the frame, by frame levelling, about the levelling pin.
    pub front_roll: f64,
    /// Rear axle against the frame, about its pin. For a locked axle the angle at which it locked.
    pub rear_roll: f64,
}

impl From<Support> for Stance {
    /// Both axles straight.
    fn from(support: Support) -> Self {
        Self { support, front_roll: 0.0, rear_roll: 0.0 }
    }
}

impl Stance {
    /// A frame made upright by levelling on ground that falls to the left by `slope` rad: both axles
    /// follow the ground.
    pub fn levelled(support: Support, slope: f64) -> Self {
        Self { support, front_roll: slope, rear_roll: slope }
    }

    /// A body's centre with its axle rolled, m.
    pub(crate) fn moved(&self, machine: &Machine, kind: BodyKind, centre: DVec3) -> DVec3 {
        match kind {
            BodyKind::FrontAxle => rolled(centre, front_pin(machine), self.front_roll),
            BodyKind::RearAxle => rolled(centre, machine.rear.pin_height, self.rear_roll),
            BodyKind::Frame | BodyKind::Upper => centre,
        }
    }
}

/// Height of the pin about which the frame is levelled on the front axle, m; 0 where there is none
/// (the roll is then 0 too).
pub(crate) fn front_pin(machine: &Machine) -> f64 {
    machine.levelling.map_or(0.0, |l| l.pin_height)
}

/// A point turned about a longitudinal axis through (0, 0, `pin`), left side down by `roll`.
pub(crate) fn rolled(p: DVec3, pin: f64, roll: f64) -> DVec3 {
    if roll == 0.0 {
        return p;
    }
    let (s, c) = libm::sincos(roll);
    let z = p.z - pin;
    DVec3::new(p.x, p.y * c + z * s, pin - p.y * s + z * c)
}
