//! What is driven: axles, turning, outline with the load.

use crate::{PlanPose, SteeredAxle, Steering, Turning};
use geometry::DVec2;

/// A rectangle of the outline in the machine frame, m.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct PlanBox {
    /// Rearmost x.
    pub rear: f64,
    /// Foremost x.
    pub front: f64,
    /// Half the width, to either side of the middle.
    pub half_width: f64,
}

/// How far a rectangle is made larger on every side, m.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Spread {
    /// Ahead and behind.
    pub along: f64,
    /// To either side.
    pub across: f64,
}

/// A machine as it is driven.
#[derive(Debug, Clone, PartialEq)]
pub struct Vehicle {
    /// Distance between the axles, m.
    pub wheelbase: f64,
    /// How it turns.
    pub turning: Turning,
    /// Outline in plan: body, and what sticks out in front with the boom in carry position. The first is
    /// the body.
    pub outline: Vec<PlanBox>,
}

/// Why a vehicle cannot be driven.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum VehicleError {
    /// Wheelbase or an edge of the outline is no number, or a rectangle has no area.
    Outline,
    /// No steering mode with a known least radius.
    NoTurning,
}

impl PlanBox {
    /// The rectangle made larger.
    #[must_use]
    pub fn spread(&self, by: Spread) -> Self {
        Self { rear: self.rear - by.along, front: self.front + by.along, half_width: self.half_width + by.across }
    }

    /// Corners in the machine frame, counter-clockwise from the rear right.
    pub fn corners(&self) -> [DVec2; 4] {
        let w = self.half_width;
        [(self.rear, -w), (self.front, -w), (self.front, w), (self.rear, w)].map(|(x, y)| DVec2::new(x, y))
    }

    /// Corners in the site frame, in the same order.
    pub fn corners_at(&self, pose: &PlanPose) -> [DVec2; 4] {
        let (s, c) = libm::sincos(pose.heading);
        self.corners().map(|p| pose.at + DVec2::new(c * p.x - s * p.y, s * p.x + c * p.y))
    }

    /// True if a point of the machine frame lies in it or on its edge.
    pub fn contains(&self, point: DVec2) -> bool {
        (self.rear..=self.front).contains(&point.x) && point.y.abs() <= self.half_width
    }
}

impl Vehicle {
    /// Checks what the search relies on.
    ///
    /// # Errors
    /// The first of [`VehicleError`] that holds.
    pub fn check(&self) -> Result<(), VehicleError> {
        let sound = |b: &PlanBox| {
            [b.rear, b.front, b.half_width].iter().all(|v| v.is_finite()) && b.front > b.rear && b.half_width > 0.0
        };
        if !(self.wheelbase > 0.0 && self.wheelbase.is_finite())
            || self.outline.is_empty()
            || !self.outline.iter().all(sound)
        {
            return Err(VehicleError::Outline);
        }
        if self.tightest().is_none() { Err(VehicleError::NoTurning) } else { Ok(()) }
    }

    /// x of the pivot in a mode, m: the point whose way is tangent to the heading and has the mode's radius.
    pub fn pivot(&self, steering: Steering) -> f64 {
        match (steering, self.turning.steered) {
            (Steering::TwoWheel, SteeredAxle::Front) => -self.wheelbase,
            (Steering::TwoWheel, SteeredAxle::Rear) => 0.0,
            (Steering::FourWheel | Steering::Crab, _) => -0.5 * self.wheelbase,
        }
    }

    /// The pivot in the site with the machine at a pose: place, and the heading.
    pub fn pivot_at(&self, steering: Steering, pose: &PlanPose) -> PlanPose {
        PlanPose { at: pose.place(DVec2::new(self.pivot(steering), 0.0)), heading: pose.heading }
    }

    /// The machine's pose with the pivot at a pose.
    pub fn with_pivot(&self, steering: Steering, pivot: &PlanPose) -> PlanPose {
        PlanPose { at: pivot.place(DVec2::new(-self.pivot(steering), 0.0)), heading: pivot.heading }
    }

    /// The mode that turns tightest and its radius, m.
    pub fn tightest(&self) -> Option<(Steering, f64)> {
        let modes = [Steering::TwoWheel, Steering::FourWheel];
        let known = modes.into_iter().filter_map(|m| self.turning.radius(m).map(|r| (m, r)));
        known.min_by(|a, b| a.1.total_cmp(&b.1))
    }

    /// Radius of the largest disc about a point of the middle line that lies in the body, m; not above 0 where
    /// the point lies outside.
    pub fn inscribed(&self, x: f64) -> f64 {
        self.outline.iter().map(|b| (x - b.rear).min(b.front - x).min(b.half_width)).fold(0.0, f64::max)
    }

    /// Greatest width of the outline, m.
    pub fn width(&self) -> f64 {
        2.0 * self.outline.iter().map(|b| b.half_width).fold(0.0, f64::max)
    }
}
