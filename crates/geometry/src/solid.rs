//! Solids that stand for parts of machines and lines.

use crate::{Pose, distance_segment_box, distance_segment_segment};
use glam::DVec3;

/// A straight segment, m.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Segment {
    /// One end.
    pub a: DVec3,
    /// The other end.
    pub b: DVec3,
}

/// All points within `radius` of a segment.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Capsule {
    /// Centre line.
    pub axis: Segment,
    /// Radius, m.
    pub radius: f64,
}

/// A box in any attitude: `outer_from_box` puts its centre and axes, `half` are half its edges, m.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct OrientedBox {
    /// Pose of the box's own frame (origin at its centre).
    pub outer_from_box: Pose,
    /// Half the edges along the box's own axes, m.
    pub half: DVec3,
}

/// A part of a machine or load.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Solid {
    /// A boom section, a hanging load's envelope.
    Capsule(Capsule),
    /// A frame, a cab, a pallet.
    Box(OrientedBox),
}

impl Solid {
    /// The same solid seen from an outer frame.
    #[must_use]
    pub fn moved(&self, outer_from_inner: Pose) -> Self {
        match self {
            Self::Capsule(c) => Self::Capsule(Capsule {
                axis: Segment { a: outer_from_inner * c.axis.a, b: outer_from_inner * c.axis.b },
                radius: c.radius,
            }),
            Self::Box(b) => {
                Self::Box(OrientedBox { outer_from_box: outer_from_inner * b.outer_from_box, half: b.half })
            }
        }
    }

    /// Centre and radius of a sphere that holds the solid.
    pub fn bounding_sphere(&self) -> (DVec3, f64) {
        match self {
            Self::Capsule(c) => ((c.axis.a + c.axis.b) * 0.5, c.axis.a.distance(c.axis.b) * 0.5 + c.radius),
            Self::Box(b) => (b.outer_from_box.translation, b.half.length()),
        }
    }
}

/// Distance from a segment to a solid, m; 0 where they touch or cross.
pub fn distance_segment_solid(segment: &Segment, solid: &Solid) -> f64 {
    match solid {
        Solid::Capsule(c) => (distance_segment_segment(segment, &c.axis) - c.radius).max(0.0),
        Solid::Box(b) => distance_segment_box(segment, b),
    }
}
