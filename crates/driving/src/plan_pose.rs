//! Where a machine is in plan, and which way it looks.

use geometry::DVec2;

/// A pose in plan: the middle of the front axle (the machine frame's origin) and the heading.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct PlanPose {
    /// East and north of the middle of the front axle, m.
    pub at: DVec2,
    /// Inside angle (rad counter-clockwise from east).
    pub heading: f64,
}

impl PlanPose {
    /// A pose from its parts.
    pub fn new(east: f64, north: f64, heading: f64) -> Self {
        Self { at: DVec2::new(east, north), heading }
    }

    /// A point of the machine frame (forward, left) in the site, m.
    pub fn place(&self, point: DVec2) -> DVec2 {
        let (s, c) = libm::sincos(self.heading);
        self.at + DVec2::new(c * point.x - s * point.y, s * point.x + c * point.y)
    }

    /// A point of the site in the machine frame, m.
    pub fn seen_from(&self, point: DVec2) -> DVec2 {
        let (s, c) = libm::sincos(self.heading);
        let d = point - self.at;
        DVec2::new(c * d.x + s * d.y, c * d.y - s * d.x)
    }

    /// True if every number is one.
    pub fn is_finite(&self) -> bool {
        self.at.is_finite() && self.heading.is_finite()
    }
}
