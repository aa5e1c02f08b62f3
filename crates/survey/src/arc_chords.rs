//! Circular arcs as chords.

use crate::feature::PlanPoint;
use geometry::DVec2;
use std::f64::consts::{PI, TAU};

/// Most chords of one arc; a full circle of 1 km radius within 1 cm needs 703.
const MOST_CHORDS: f64 = 5000.0;

/// Points from `start` to `end` around `centre`, both included, so that no chord leaves the arc by
/// more than `within` (all in one unit). Chords of an arc of radius `r` that span the angle `a`
/// leave it by `r·(1 − cos(a/2))`.
///
/// Radii that differ at both ends, and heights, run linearly with the angle. Where start and end are
/// one point, an arc whose stated `length` is longer than half a circle is a full one, any other is
/// nothing.
pub(crate) fn chords(
    start: PlanPoint,
    end: PlanPoint,
    centre: DVec2,
    clockwise: bool,
    length: Option<f64>,
    within: f64,
) -> Vec<PlanPoint> {
    let (from, to) = (start.at - centre, end.at - centre);
    let (first, last) = (from.length(), to.length());
    let angle = |v: DVec2| libm::atan2(v.y, v.x);
    let sign = if clockwise { -1.0 } else { 1.0 };
    let mut turn = ((angle(to) - angle(from)) * sign).rem_euclid(TAU);
    // A hair before the start is the start: the two ends are one point, rounded.
    let is_point = (start.at - end.at).length() <= within;
    if is_point {
        turn = if length.is_some_and(|l| l > PI * first) { TAU } else { 0.0 };
    }
    let radius = first.max(last);
    let step = if radius > within { 2.0 * libm::acos(1.0 - within / radius) } else { PI };
    let count = (turn / step).ceil().clamp(1.0, MOST_CHORDS);
    let mut points = vec![start];
    for i in 1..count as usize {
        let share = i as f64 / count;
        let (sin, cos) = libm::sincos(angle(from) + sign * turn * share);
        let r = first + (last - first) * share;
        let height = start.height.zip(end.height).map(|(a, b)| a + (b - a) * share);
        points.push(PlanPoint { at: centre + DVec2::new(cos, sin) * r, height });
    }
    points.push(end);
    points
}

#[cfg(test)]
mod tests {
    use super::*;

    fn point(x: f64, y: f64) -> PlanPoint {
        PlanPoint { at: DVec2::new(x, y), height: Some(x) }
    }

    #[test]
    fn a_quarter_stays_within_a_centimetre_either_way_round() {
        for (clockwise, share) in [(false, 0.25), (true, 0.75)] {
            let (start, end) = (point(110.0, 50.0), point(100.0, 60.0));
            let points = chords(start, end, DVec2::new(100.0, 50.0), clockwise, None, 0.01);
            assert_eq!((points[0], points[points.len() - 1]), (start, end));
            let mut length = 0.0;
            for pair in points.windows(2) {
                let middle = (pair[0].at + pair[1].at) / 2.0 - DVec2::new(100.0, 50.0);
                assert!((middle.length() - 10.0).abs() <= 0.01 + 1e-9);
                length += (pair[1].at - pair[0].at).length();
            }
            assert!((length / (20.0 * PI) - share).abs() < 0.001, "{length}");
        }
    }

    #[test]
    fn both_ends_in_one_point() {
        let p = point(1.0, 0.0);
        assert_eq!(chords(p, p, DVec2::ZERO, false, Some(0.001), 0.01).len(), 2);
        assert!(chords(p, p, DVec2::ZERO, false, Some(6.2), 0.01).len() > 10);
    }
}
