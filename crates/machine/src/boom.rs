//! The telescopic boom.

use geometry::{DVec2, DVec3};
use quantity::{Angle, Length, Mass};

/// A telescopic boom in the machine's middle plane.
#[derive(Debug, Clone)]
pub struct Boom {
    /// Foot pin (x, z) in the machine frame, m.
    pub foot: DVec2,
    /// Lowest boom angle.
    pub angle_min: Angle,
    /// Highest boom angle.
    pub angle_max: Angle,
    /// Longest extension.
    pub extension_max: Length,
    /// Sections from the base outwards.
    pub sections: Vec<Section>,
    /// Distance of the head pin along the boom line, retracted, m.
    pub head_along: f64,
    /// Head pin below the boom line (at right angles to it), m.
    pub head_below: f64,
    /// Carriage: mass without attachment.
    pub carriage_mass: Mass,
    /// Carriage centre ahead of and above the head pin, forks level, m (z negative below).
    pub carriage_centre: DVec2,
    /// Outer depth of the boom (side view), m: for drawing, wind and clearance.
    pub depth: f64,
    /// How far the tip may hang or reach beyond the rigid boom under load: order 0.1 to 0.3 m
    /// (common practice), m.
    pub flex: f64,
}

/// A boom section.
#[derive(Debug, Clone)]
pub struct Section {
    /// Its mass.
    pub mass: Mass,
    /// Centre along the boom line from the foot pin, retracted, m.
    pub centre_along: f64,
    /// Share of the extension that it takes: 0 for the base, 1 for the tip.
    pub share: f64,
}

/// Where the boom is.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct BoomPosition {
    /// Angle above the machine's x axis, rad.
    pub angle: f64,
    /// Extension, m.
    pub extension: f64,
    /// Fork tilt above the machine's x axis, rad: 0 with the carriage level in the machine frame.
    pub fork_tilt: f64,
}

impl BoomPosition {
    /// Forks level in the machine frame.
    pub fn level(angle: f64, extension: f64) -> Self {
        Self { angle, extension, fork_tilt: 0.0 }
    }
}

/// A point of the middle plane as a point in the machine frame.
pub(crate) fn in_plane(p: DVec2) -> DVec3 {
    DVec3::new(p.x, 0.0, p.y)
}
