//! Cases as several tests take them.

use evidence::Silent;
use ground::{Bearing, BearingCase, Footprint, Load, Method, Refusal, Strength, ultimate_bearing};

pub(crate) const STRIP: f64 = f64::INFINITY;

pub(crate) fn rectangle(width: f64, length: f64) -> Footprint {
    Footprint::Rectangle { width, length }
}

pub(crate) fn drained(cohesion: f64, degrees: f64) -> Strength {
    Strength::Drained { cohesion, friction: degrees.to_radians() }
}

pub(crate) fn undrained(c_u: f64) -> Strength {
    Strength::Undrained { c_u }
}

/// A base at `depth` in soil of one unit weight without water, the depth credited.
pub(crate) fn buried(base: Footprint, depth: f64, unit_weight: f64, strength: Strength) -> BearingCase {
    BearingCase {
        overburden: unit_weight * depth,
        credited_depth: depth,
        ..BearingCase::on_the_surface(base, 1.0, strength, unit_weight)
    }
}

pub(crate) fn by(case: &BearingCase, method: Method) -> Result<Bearing, Refusal> {
    ultimate_bearing(case, method, &mut Silent)
}

pub(crate) fn load(vertical: f64, horizontal: [f64; 2], eccentricity: [f64; 2]) -> Load {
    Load { vertical, horizontal, eccentricity }
}
