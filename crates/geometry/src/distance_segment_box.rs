//! Distance from a segment to a box.

use crate::{OrientedBox, Segment};

/// Distance from a segment to a box, m; 0 where they touch or cross.
///
/// Along the segment the squared distance `Σ max(0, |p_i(t)| − h_i)²` is convex and, between the
/// at most six parameters where a coordinate crosses a face, quadratic. The derivative is
/// therefore monotone and piecewise linear: the minimum is found exactly, without iteration.
pub fn distance_segment_box(segment: &Segment, solid: &OrientedBox) -> f64 {
    let inverse = solid.outer_from_box.inverse();
    let a = (inverse * segment.a).to_array();
    let b = (inverse * segment.b).to_array();
    let h = solid.half.to_array();
    let d = [b[0] - a[0], b[1] - a[1], b[2] - a[2]];

    let excess = |i: usize, t: f64| {
        let p = a[i] + d[i] * t;
        if p > h[i] {
            p - h[i]
        } else if p < -h[i] {
            p + h[i]
        } else {
            0.0
        }
    };
    let slope = |t: f64| (0..3).map(|i| excess(i, t) * d[i]).sum::<f64>();
    let distance = |t: f64| (0..3).map(|i| excess(i, t) * excess(i, t)).sum::<f64>().sqrt();

    if slope(0.0) >= 0.0 {
        return distance(0.0);
    }
    if slope(1.0) <= 0.0 {
        return distance(1.0);
    }
    // Breakpoints in order; the sign of the derivative changes in exactly one interval.
    let mut cuts = [1.0_f64; 7];
    let mut n = 0;
    for i in 0..3 {
        if d[i] != 0.0 {
            for face in [-h[i], h[i]] {
                let t = (face - a[i]) / d[i];
                if t > 0.0 && t < 1.0 {
                    cuts[n] = t;
                    n += 1;
                }
            }
        }
    }
    cuts[..n].sort_unstable_by(f64::total_cmp);
    let mut low = 0.0;
    for &high in &cuts[..=n] {
        let (s0, s1) = (slope(low), slope(high));
        if s1 >= 0.0 {
            // Linear between: s0 < 0 ≤ s1.
            let t = if s1 > s0 { low + (high - low) * (-s0 / (s1 - s0)) } else { low };
            return distance(t);
        }
        low = high;
    }
    distance(1.0)
}
