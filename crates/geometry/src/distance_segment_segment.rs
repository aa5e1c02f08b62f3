//! Distance between two segments.

use crate::Segment;

/// Distance between two segments, m. Closed form: minimum of a convex quadratic over the unit
/// square, by clamping (Ericson 2005, Real-Time Collision Detection, 5.1.9; from memory).
pub fn distance_segment_segment(p: &Segment, q: &Segment) -> f64 {
    let d1 = p.b - p.a;
    let d2 = q.b - q.a;
    let r = p.a - q.a;
    let (a, e, f) = (d1.length_squared(), d2.length_squared(), d2.dot(r));
    let (s, t);
    if a <= f64::EPSILON && e <= f64::EPSILON {
        return r.length();
    }
    if a <= f64::EPSILON {
        s = 0.0;
        t = (f / e).clamp(0.0, 1.0);
    } else {
        let c = d1.dot(r);
        if e <= f64::EPSILON {
            t = 0.0;
            s = (-c / a).clamp(0.0, 1.0);
        } else {
            let b = d1.dot(d2);
            let denom = a * e - b * b;
            // Near-parallel: any s serves; the clamped t below still gives the true minimum.
            let s0 = if denom > 1e-14 * a * e { ((b * f - c * e) / denom).clamp(0.0, 1.0) } else { 0.0 };
            let t0 = (b * s0 + f) / e;
            if t0 < 0.0 {
                t = 0.0;
                s = (-c / a).clamp(0.0, 1.0);
            } else if t0 > 1.0 {
                t = 1.0;
                s = ((b - c) / a).clamp(0.0, 1.0);
            } else {
                t = t0;
                s = s0;
            }
        }
    }
    (p.a + d1 * s).distance(q.a + d2 * t)
}
