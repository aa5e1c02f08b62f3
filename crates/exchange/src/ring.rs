//! Rings: area, direction, rectangles.

use geometry::{DVec2, DVec3};
use site::PlanArea;

/// Signed area, m²; positive for a ring that runs counter-clockwise.
pub(crate) fn signed_area(ring: &[DVec2]) -> f64 {
    let Some(first) = ring.first() else { return 0.0 };
    // Relative to a corner: eastings of millions would cost digits.
    let twice: f64 = (0..ring.len()).map(|i| (ring[i] - *first).perp_dot(ring[(i + 1) % ring.len()] - *first)).sum();
    twice * 0.5
}

/// The same area by the right-hand rule: outer ring counter-clockwise, holes clockwise.
pub(crate) fn right_handed(area: &PlanArea) -> PlanArea {
    let turned = |ring: &[DVec2], left: bool| {
        let mut ring = ring.to_vec();
        if (signed_area(&ring) > 0.0) != left {
            ring.reverse();
        }
        ring
    };
    PlanArea { outer: turned(&area.outer, true), holes: area.holes.iter().map(|hole| turned(hole, false)).collect() }
}

/// A rectangle from behind to ahead of a place along a heading, and as far to either side.
pub(crate) fn rectangle(at: DVec2, heading: f64, along: (f64, f64), half_width: f64) -> Vec<DVec2> {
    let (s, c) = libm::sincos(heading);
    let (ahead, left) = (DVec2::new(c, s), DVec2::new(-s, c));
    let corner = |x: f64, y: f64| at + ahead * x + left * y;
    vec![
        corner(along.0, -half_width),
        corner(along.1, -half_width),
        corner(along.1, half_width),
        corner(along.0, half_width),
    ]
}

/// Middle of what lies between the smallest and the largest corner.
pub(crate) fn middle(points: impl IntoIterator<Item = DVec3>) -> Option<DVec3> {
    let bounds = points.into_iter().map(|p| (p, p)).reduce(|(l, h), (a, b)| (l.min(a), h.max(b)));
    bounds.map(|(low, high)| (low + high) * 0.5)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn rings_are_turned_and_keep_their_area() {
        let square = |m: f64, d: f64| vec![DVec2::new(m, m), DVec2::new(m, d), DVec2::new(d, d), DVec2::new(d, m)];
        let area = PlanArea { outer: square(0.0, 4.0), holes: vec![square(3.0, 1.0)] };
        let turned = right_handed(&area);
        assert_eq!((signed_area(&turned.outer), signed_area(&turned.holes[0])), (16.0, -4.0));
        assert_eq!(right_handed(&turned), turned);
    }

    #[test]
    fn a_rectangle_looks_along_its_heading() {
        let north = rectangle(DVec2::new(10.0, 20.0), std::f64::consts::FRAC_PI_2, (-3.0, 1.0), 0.5);
        let far = north.iter().fold(f64::NEG_INFINITY, |y, p| y.max(p.y));
        assert!((far - 21.0).abs() < 1e-12 && (signed_area(&north) - 4.0).abs() < 1e-12);
    }
}
