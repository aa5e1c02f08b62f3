//! Whether a machine slides before it tips.
//!
//! Friction needed: the force along the ground over the force on it, the machine as one body. Tipping
//! needs `tan θ` of the tilt at its onset in the same direction. The lesser of that and the friction there is
//! comes first. Sliding is no rescue: whatever stops a sliding machine trips it ([`crate::trip_speed`]).

use crate::motion::last_that;
use crate::{Acceleration, Loading, Moving, TippingLine, moving, onset};
use quantity::STANDARD_GRAVITY as G;

/// What comes first as the pull along the ground grows in its direction.
#[derive(Debug, Clone, Copy, PartialEq, Eq, serde::Serialize, serde::Deserialize, schemars::JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum First {
    /// The machine slides.
    Slides,
    /// The machine tips.
    Tips,
}

/// Friction that is needed, there, and at tipping.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Sliding {
    /// Needed now.
    pub needed: f64,
    /// Needed at the onset of tipping in the same direction, without wind; infinite where it does not tip.
    pub at_tipping: f64,
    /// Slides now.
    pub slides: bool,
    /// What comes first; as much of both counts as tipping.
    pub first: First,
}

/// Friction needed under an (apparent) gravity and wind, against `friction`. The wind's greatest force is
/// taken to push in the same direction (safe side). `None` where friction is below zero or anything is no
/// number.
///
/// On level ground at rest, with no direction of its own, tipping is that of the worst direction.
pub fn sliding(loading: &Loading, lines: &[TippingLine], friction: f64) -> Option<Sliding> {
    let g = loading.gravity;
    let weight = loading.masses.total() * G;
    let pull = libm::hypot(g.x, g.y);
    let needed = (weight * pull + loading.wind.greatest_force()) / (weight * -g.z);
    let tan = |azimuth: f64| onset(&loading.masses, lines, azimuth).map_or(f64::INFINITY, |o| libm::tan(o.tilt));
    let at_tipping = if pull > 1e-9 {
        tan(libm::atan2(g.y, g.x))
    } else {
        (0..360_u32).map(|i| tan(f64::from(i).to_radians())).fold(f64::INFINITY, f64::min)
    };
    if needed.is_nan() || at_tipping.is_nan() || friction.is_nan() || friction < 0.0 {
        return None;
    }
    let first = if friction < at_tipping { First::Slides } else { First::Tips };
    // Upside down or on a wall everything slides.
    let slides = needed > friction || g.z >= 0.0;
    Some(Sliding { needed, at_tipping, slides, first })
}

/// What comes first as an acceleration grows in its direction, on whatever the machine stands: at the
/// acceleration that takes all of `friction`, it slides if it does not tip there, nor before.
///
/// `None` where there is no acceleration, or a number is none.
pub fn first_as_it_grows(
    loading: &Loading,
    a: Acceleration,
    friction: f64,
    tips: impl Fn(&Moving, Acceleration) -> bool,
) -> Option<First> {
    let size = libm::hypot(a.ahead, a.left);
    let known = size > 0.0 && size.is_finite() && friction >= 0.0 && loading.gravity.is_finite();
    if !known {
        return None;
    }
    let holds = |times: f64| {
        let g = moving(loading, a.times(times)).loading.gravity;
        g.z < 0.0 && libm::hypot(g.x, g.y) <= friction * -g.z
    };
    // No ground holds ten times its own weight.
    let times = last_that(holds, 10.0 * G / size);
    let at = a.times(times);
    Some(if tips(&moving(loading, at), at) { First::Tips } else { First::Slides })
}
