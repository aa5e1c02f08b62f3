//! Steering modes, and how a machine turns in each.
//!
//! Rolling without slip at low speed (common textbook model, the "bicycle" with both wheels of an axle taken
//! together): the middle of a turn lies where the axles of all wheels meet, `L` is the wheelbase, `δ` the
//! steering angle of an axle.
//!
//! - Two wheels: the middle lies on the line of the axle that does not steer; the middle of that axle is
//!   the **pivot**, whose way has the radius `R = L / tan δ` and is tangent to the heading.
//! - Four wheels, both axles by the same angle against each other: the pivot lies halfway between the
//!   axles, and `R = (L/2) / tan δ`: half as much at the same angle.
//! - Crab, both axles by the same angle alike: no turn; the machine moves at `δ` to its heading.

use serde::{Deserialize, Serialize};

/// A steering mode.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize, schemars::JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum Steering {
    /// One axle steers.
    TwoWheel,
    /// Both axles steer against each other.
    FourWheel,
    /// Both axles steer alike.
    Crab,
}

impl Steering {
    /// Every one.
    pub const ALL: [Self; 3] = [Self::TwoWheel, Self::FourWheel, Self::Crab];
}

/// Which way a machine is driven.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize, schemars::JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum Gear {
    /// Boom first.
    Forward,
    /// Tail first.
    Reverse,
}

impl Gear {
    /// That of a signed length.
    pub fn of(length: f64) -> Self {
        if length < 0.0 { Self::Reverse } else { Self::Forward }
    }
}

/// The axle that steers with two wheels.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, schemars::JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum SteeredAxle {
    /// The front one.
    Front,
    /// The rear one.
    Rear,
}

/// What a machine can do with its wheels. `None`: it has not that mode, or nobody knows how far it goes;
/// either way it is not used.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Turning {
    /// Which axle steers with two wheels.
    pub steered: SteeredAxle,
    /// Least radius of the pivot's way with two wheels, m.
    pub two_wheel: Option<f64>,
    /// Least radius of the pivot's way with four wheels, m.
    pub four_wheel: Option<f64>,
    /// Greatest angle of the way to the heading in crab, rad.
    pub crab: Option<f64>,
}

impl Turning {
    /// Least radius of the pivot's way in a mode, m; `None` in crab and where it cannot.
    pub fn radius(&self, steering: Steering) -> Option<f64> {
        let radius = match steering {
            Steering::TwoWheel => self.two_wheel,
            Steering::FourWheel => self.four_wheel,
            Steering::Crab => None,
        };
        radius.filter(|r| *r > 0.0 && r.is_finite())
    }
}
