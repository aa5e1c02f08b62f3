//! Why no capacity is given. Never a number in its place.

use crate::{Method, text};
use evidence::Message;
use quantity::{Dimension, Quantity};

/// What an author's method has no factor for.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Lacks {
    /// Loads that lean.
    Inclination,
    /// Ground that slopes.
    Slope,
    /// Friction above the last row of its table.
    Friction,
}

/// Why no capacity is given.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Refusal {
    /// A value is missing, no number, or none that can be: size zero, weight below zero.
    NoNumber,
    /// The author's method does not cover it; another may.
    NotCovered(Method, Lacks),
    /// The horizontal force is more than the base holds by friction and cohesion, N each.
    Slides {
        /// Horizontal force, N.
        push: f64,
        /// What holds it, N.
        held: f64,
    },
    /// The force falls on the edge of the base or outside.
    OffBase,
    /// The ground slopes more than friction holds, rad each.
    SlopeBeyondFriction {
        /// Slope of the ground, rad.
        slope: f64,
        /// Angle of friction, rad.
        friction: f64,
    },
    /// No strength is stated that counts in this state of the ground.
    NoStrength,
    /// A layer that the load reaches states no modulus of elasticity.
    NoStiffness,
    /// The layers end above the depth that the load reaches, m each.
    NotExplored {
        /// Depth to which layers are stated, m.
        known: f64,
        /// Depth that the load reaches, m.
        needed: f64,
    },
    /// Presumed values are for pads and mats.
    PresumedUnderTyre,
    /// The table presumes nothing for that soil, or gives no lower end.
    NothingPresumed,
    /// The presumed value holds for bases of at least that width, m.
    TooNarrow {
        /// Least width, m.
        least: f64,
    },
    /// A value lies outside what the method was made for.
    OutsideMethod,
    /// Nothing of the pad stands on ground or mat under the force, or the pad reaches over the mat's edge.
    OffMat,
    /// No mat up to that side carries it, m.
    NoMat {
        /// Largest side tried, m.
        side: f64,
    },
}

impl Refusal {
    /// True where another author's method may still answer.
    pub fn of_method(self) -> bool {
        matches!(self, Self::NotCovered(..))
    }

    /// In words.
    pub fn message(self) -> Message {
        let m = |v| Quantity::new(v, Dimension::Length);
        let n = |v| Quantity::new(v, Dimension::Force);
        let rad = |v| Quantity::new(v, Dimension::Angle);
        match self {
            Self::NoNumber => text::BEARING_NO_NUMBER.message(),
            Self::NotCovered(method, lacks) => {
                let id = match lacks {
                    Lacks::Inclination => text::BEARING_LACKS_INCLINATION,
                    Lacks::Slope => text::BEARING_LACKS_SLOPE,
                    Lacks::Friction => text::BEARING_LACKS_FRICTION,
                };
                id.with("author", method.citation())
            }
            Self::Slides { push, held } => text::BEARING_SLIDES.with("push", n(push)).with("held", n(held)),
            Self::OffBase => text::BEARING_OFF_BASE.message(),
            Self::SlopeBeyondFriction { slope, friction } => {
                text::BEARING_SLOPE_BEYOND.with("slope", rad(slope)).with("friction", rad(friction))
            }
            Self::NoStrength => text::BEARING_NO_STRENGTH.message(),
            Self::NoStiffness => text::SETTLEMENT_NO_STIFFNESS.message(),
            Self::NotExplored { known, needed } => {
                text::BEARING_NOT_EXPLORED.with("known", m(known)).with("needed", m(needed))
            }
            Self::PresumedUnderTyre => text::PRESUMED_UNDER_TYRE.message(),
            Self::NothingPresumed => text::PRESUMED_NOTHING.message(),
            Self::TooNarrow { least } => text::PRESUMED_TOO_NARROW.with("least", m(least)),
            Self::OutsideMethod => text::BEARING_OUTSIDE_METHOD.message(),
            Self::OffMat => text::MAT_OFF.message(),
            Self::NoMat { side } => text::MAT_NONE.with("side", m(side)),
        }
    }
}
