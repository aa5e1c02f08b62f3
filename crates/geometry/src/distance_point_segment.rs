//! Distance from a point to a segment.

use crate::Segment;
use glam::DVec3;

/// The point of a segment nearest to `p`, m.
pub fn nearest_on_segment(p: DVec3, segment: &Segment) -> DVec3 {
    let d = segment.b - segment.a;
    let squared = d.length_squared();
    let t = if squared > 0.0 { ((p - segment.a).dot(d) / squared).clamp(0.0, 1.0) } else { 0.0 };
    segment.a + d * t
}

/// Distance from a point to a segment, m.
pub fn distance_point_segment(p: DVec3, segment: &Segment) -> f64 {
    nearest_on_segment(p, segment).distance(p)
}
