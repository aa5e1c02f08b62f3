//! Distance between two solids.

use crate::{DVec3, OrientedBox, Segment, Solid, distance_segment_box, distance_segment_segment};

/// Distance between two solids, m; 0 where they touch or cross.
///
/// Closed form. Two convex bodies are nearest between a corner of one and a face of the other or
/// between two edges; if they cross, an edge of one meets the other. All these pairs are among
/// "edge of one against the whole of the other" (Ericson 2005, Real-Time Collision Detection,
/// 5.1 and 5.5; from memory), and segment against box is exact.
///
/// ```
/// use geometry::{distance_solid_solid, DVec3, OrientedBox, Pose, Solid};
/// let at = |x: f64| Solid::Box(OrientedBox { outer_from_box: Pose { translation: DVec3::new(x, 0.0, 0.0), ..Pose::IDENTITY }, half: DVec3::ONE });
/// assert!((distance_solid_solid(&at(0.0), &at(5.0)) - 3.0).abs() < 1e-12);
/// ```
pub fn distance_solid_solid(a: &Solid, b: &Solid) -> f64 {
    match (a, b) {
        (Solid::Capsule(p), Solid::Capsule(q)) => {
            (distance_segment_segment(&p.axis, &q.axis) - p.radius - q.radius).max(0.0)
        }
        (Solid::Capsule(c), Solid::Box(b)) | (Solid::Box(b), Solid::Capsule(c)) => {
            (distance_segment_box(&c.axis, b) - c.radius).max(0.0)
        }
        (Solid::Box(p), Solid::Box(q)) => distance_box_box(p, q),
    }
}

/// Distance between two boxes, m; 0 where they touch or cross. See [`distance_solid_solid`].
pub fn distance_box_box(a: &OrientedBox, b: &OrientedBox) -> f64 {
    let mut least = f64::INFINITY;
    for (edges, other) in [(a.edges(), b), (b.edges(), a)] {
        for edge in &edges {
            least = least.min(distance_segment_box(edge, other));
            if least == 0.0 {
                return 0.0;
            }
        }
    }
    least
}

impl OrientedBox {
    /// Its eight corners in the outer frame.
    pub fn corners(&self) -> [DVec3; 8] {
        std::array::from_fn(|i| {
            let sign = |bit: usize| if i & bit == 0 { -1.0 } else { 1.0 };
            self.outer_from_box * (self.half * DVec3::new(sign(1), sign(2), sign(4)))
        })
    }

    /// Its twelve edges in the outer frame.
    pub fn edges(&self) -> [Segment; 12] {
        // Corners whose numbers differ in one bit share an edge.
        const ENDS: [(usize, usize); 12] =
            [(0, 1), (2, 3), (4, 5), (6, 7), (0, 2), (1, 3), (4, 6), (5, 7), (0, 4), (1, 5), (2, 6), (3, 7)];
        let corner = self.corners();
        ENDS.map(|(i, k)| Segment { a: corner[i], b: corner[k] })
    }
}
