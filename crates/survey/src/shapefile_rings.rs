//! Which ring of a Shapefile polygon is a hole, and of which outline.

use crate::shapes::{RawPoint, RawShape};
use geometry::DVec2;

/// Outlines run clockwise, holes counter-clockwise. A hole belongs to the smallest outline around
/// it. Where no outline is around it, or every ring runs counter-clockwise, as some programs write
/// them, it is an outline of its own, unless it lies in another ring.
pub(crate) fn areas(rings: Vec<Vec<RawPoint>>) -> Vec<RawShape> {
    let turned = rings.iter().all(|r| signed_area(r) >= 0.0);
    let (mut outer, mut holes): (Vec<Vec<RawPoint>>, Vec<Vec<RawPoint>>) = if turned {
        // An odd number of rings around it makes a hole.
        let inside = |ring: &Vec<RawPoint>| {
            let around = rings.iter().filter(|r| !std::ptr::eq(*r, ring) && holds(r, ring)).count();
            around % 2 == 1
        };
        let marks: Vec<bool> = rings.iter().map(inside).collect();
        let (holes, outer): (Vec<_>, Vec<_>) = rings.into_iter().zip(marks).partition(|(_, hole)| *hole);
        let plain = |list: Vec<(Vec<RawPoint>, bool)>| list.into_iter().map(|(ring, _)| ring).collect();
        (plain(outer), plain(holes))
    } else {
        rings.into_iter().partition(|r| signed_area(r) < 0.0)
    };
    let mut of: Vec<Vec<Vec<RawPoint>>> = outer.iter().map(|_| Vec::new()).collect();
    let known = outer.len();
    for hole in holes.drain(..) {
        let around = (0..known).filter(|&i| holds(&outer[i], &hole));
        let size = |i: usize| signed_area(&outer[i]).abs();
        if let Some(i) = around.min_by(|&a, &b| size(a).total_cmp(&size(b))) {
            of[i].push(hole);
        } else {
            outer.push(hole);
            of.push(Vec::new());
        }
    }
    outer
        .into_iter()
        .zip(of)
        .map(|(ring, holes)| RawShape::Area(std::iter::once(ring).chain(holes).collect()))
        .collect()
}

/// Positive where a ring runs counter-clockwise.
fn signed_area(ring: &[RawPoint]) -> f64 {
    let Some(first) = ring.first() else { return 0.0 };
    ring.windows(2).map(|w| (w[0].at - first.at).perp_dot(w[1].at - first.at)).sum::<f64>() / 2.0
}

/// True if most corners of `inner` lie in `outer`: they may share some.
fn holds(outer: &[RawPoint], inner: &[RawPoint]) -> bool {
    let corners = |ring: &[RawPoint]| {
        ring.iter().fold((DVec2::INFINITY, DVec2::NEG_INFINITY), |(l, h), p| (l.min(p.at), h.max(p.at)))
    };
    let ((low, high), Some(first)) = (corners(outer), inner.first()) else { return false };
    if first.at.cmplt(low).any() || first.at.cmpgt(high).any() {
        return false;
    }
    let within = inner.iter().filter(|p| contains(outer, p.at)).count();
    within * 2 > inner.len()
}

/// Crossings of a ray to the east, counted even-odd.
fn contains(ring: &[RawPoint], at: DVec2) -> bool {
    let mut inside = false;
    for w in ring.windows(2) {
        let (a, b) = (w[0].at, w[1].at);
        if (a.y > at.y) != (b.y > at.y) && at.x < a.x + (at.y - a.y) / (b.y - a.y) * (b.x - a.x) {
            inside = !inside;
        }
    }
    inside
}

#[cfg(test)]
mod tests {
    use super::*;

    fn square(x: f64, side: f64, clockwise: bool) -> Vec<RawPoint> {
        let mut corners = [(x, x), (x + side, x), (x + side, x + side), (x, x + side), (x, x)];
        if clockwise {
            corners.reverse();
        }
        corners.iter().map(|(x, y)| RawPoint { at: DVec2::new(*x, *y), height: None }).collect()
    }

    fn rings(shapes: &[RawShape]) -> Vec<usize> {
        shapes
            .iter()
            .map(|s| match s {
                RawShape::Area(rings) => rings.len(),
                _ => 0,
            })
            .collect()
    }

    #[test]
    fn a_hole_goes_to_the_outline_around_it() {
        let found = areas(vec![square(0.0, 10.0, true), square(20.0, 5.0, true), square(21.0, 2.0, false)]);
        assert_eq!(rings(&found), [1, 2]);
        // An island in the hole of another outline.
        let found = areas(vec![square(0.0, 30.0, true), square(5.0, 20.0, false), square(10.0, 4.0, true)]);
        assert_eq!(rings(&found), [2, 1]);
    }

    #[test]
    fn rings_the_wrong_way_round_are_told_by_where_they_lie() {
        let found = areas(vec![square(0.0, 10.0, false), square(2.0, 3.0, false), square(50.0, 1.0, false)]);
        assert_eq!(rings(&found), [2, 1]);
    }

    #[test]
    fn a_hole_without_an_outline_is_one() {
        let found = areas(vec![square(0.0, 10.0, true), square(50.0, 1.0, false)]);
        assert_eq!(rings(&found), [1, 1]);
    }
}
