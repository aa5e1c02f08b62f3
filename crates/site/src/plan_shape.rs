//! Where something lies in plan.

use crate::PlanArea;
use geometry::{DVec2, DVec3, Segment, distance_point_segment};

/// Corners of the polygon that stands for a circle. It is drawn around the circle, so that nothing
/// of it is left out; at 24 corners it is 0.9 % of the radius too large at them.
const ROUND_CORNERS: u32 = 24;

/// Where something lies in plan, m in the site frame.
#[derive(Debug, Clone, PartialEq)]
pub enum PlanShape {
    /// An outline.
    Area(PlanArea),
    /// A strip along a course: a wall, a fence, a pipe, a path. Square ends, mitred by overlap.
    Strip {
        /// Middle line, two points or more.
        course: Vec<DVec2>,
        /// Whole width.
        width: f64,
    },
    /// A circle: a tree, a silo, a shaft.
    Round {
        /// Middle.
        centre: DVec2,
        /// Radius.
        radius: f64,
    },
}

impl PlanShape {
    /// The outlines that cover it: one, or one a piece of a strip.
    pub fn outlines(&self) -> Vec<PlanArea> {
        match self {
            Self::Area(area) => vec![area.clone()],
            Self::Strip { course, width } => course
                .windows(2)
                .filter_map(|w| {
                    let along = (w[1] - w[0]).normalize_or_zero();
                    let (half, left) = (along * (width * 0.5), along.perp() * (width * 0.5));
                    // Each piece reaches half a width past its ends, so that bends leave no gap.
                    let (a, b) = (w[0] - half, w[1] + half);
                    (along != DVec2::ZERO)
                        .then(|| PlanArea { outer: vec![a - left, b - left, b + left, a + left], holes: Vec::new() })
                })
                .collect(),
            Self::Round { centre, radius } => {
                let n = f64::from(ROUND_CORNERS);
                let outside = radius / libm::cos(std::f64::consts::PI / n);
                let corner = |i: u32| {
                    let (s, c) = libm::sincos(std::f64::consts::TAU * f64::from(i) / n);
                    *centre + DVec2::new(c, s) * outside
                };
                vec![PlanArea { outer: (0..ROUND_CORNERS).map(corner).collect(), holes: Vec::new() }]
            }
        }
    }

    /// True inside.
    pub fn contains(&self, at: DVec2) -> bool {
        match self {
            Self::Area(area) => area.encloses(at),
            Self::Strip { .. } => self.outlines().iter().any(|o| o.encloses(at)),
            Self::Round { centre, radius } => centre.distance(at) <= *radius,
        }
    }

    /// Distance in plan from a point, m; 0 inside.
    pub fn distance(&self, at: DVec2) -> f64 {
        if let Self::Round { centre, radius } = self {
            return (centre.distance(at) - radius).max(0.0);
        }
        let flat = |p: DVec2| DVec3::new(p.x, p.y, 0.0);
        let to = |outline: &PlanArea| {
            if outline.encloses(at) {
                return 0.0;
            }
            let edge = |(a, b)| distance_point_segment(flat(at), &Segment { a: flat(a), b: flat(b) });
            outline.edges().map(edge).fold(f64::INFINITY, f64::min)
        };
        self.outlines().iter().map(to).fold(f64::INFINITY, f64::min)
    }

    /// Smallest and largest corner; `None` for a shape without extent.
    pub fn bounds(&self) -> Option<(DVec2, DVec2)> {
        self.outlines().iter().filter_map(PlanArea::bounds).reduce(|(low, high), (l, h)| (low.min(l), high.max(h)))
    }
}
