//! An area in plan: a building, a water, an excavation. East and north in the site frame, m.

use geo::{Area, Centroid, Coord, Intersects, LineString, Polygon, Validation};
use geometry::DVec2;

/// A closed outline with holes. Corners in order, either way round, the first not repeated at the
/// end; a hole lies inside the outline. Every distance is in plan, in m, and 0 where things touch
/// or overlap; a point in a hole is outside.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct PlanArea {
    /// Outer ring, three corners or more.
    pub outer: Vec<DVec2>,
    /// Inner rings.
    pub holes: Vec<Vec<DVec2>>,
}

/// What is wrong with an outline.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum PlanAreaError {
    /// A ring has fewer than three corners.
    TooFewCorners,
    /// A coordinate is no number.
    NotFinite,
    /// A ring crosses or touches itself, or a hole does not lie inside: what is inside is not clear.
    SelfCrossing,
    /// All corners lie in one line.
    NoArea,
}

impl PlanArea {
    /// Checks the outline. Simple features rules (OGC 06-103r4, 6.1.11) as the `geo` library checks them:
    /// every edge against every other, so this is for outlines of up to some thousand corners.
    ///
    /// # Errors
    /// The first of [`PlanAreaError`] that holds.
    pub fn check(&self) -> Result<(), PlanAreaError> {
        if self.rings().any(|r| r.len() < 3) {
            return Err(PlanAreaError::TooFewCorners);
        }
        if self.rings().flatten().any(|p| !p.is_finite()) {
            return Err(PlanAreaError::NotFinite);
        }
        if self.rings().any(|r| ring_area(r) == 0.0) {
            return Err(PlanAreaError::NoArea);
        }
        if self.polygon().is_valid() { Ok(()) } else { Err(PlanAreaError::SelfCrossing) }
    }

    /// Area without the holes, m².
    pub fn area(&self) -> f64 {
        self.polygon().unsigned_area()
    }

    /// Centre of the area, m; `None` without an area.
    pub fn centroid(&self) -> Option<DVec2> {
        if self.outer.is_empty() {
            return None;
        }
        // Near the origin, so that large coordinates cost no digits.
        let origin = self.outer[0];
        let moved = Self {
            outer: self.outer.iter().map(|p| *p - origin).collect(),
            holes: self.holes.iter().map(|h| h.iter().map(|p| *p - origin).collect()).collect(),
        };
        moved.polygon().centroid().map(|c| DVec2::new(c.x(), c.y()) + origin)
    }

    /// True inside and on the outline, false in a hole.
    pub fn contains(&self, at: DVec2) -> bool {
        self.polygon().intersects(&Coord { x: at.x, y: at.y })
    }

    /// Distance to a point.
    pub fn distance_to_point(&self, at: DVec2) -> f64 {
        if self.contains(at) {
            return 0.0;
        }
        self.edges().map(|(a, b)| point_to_segment(at, a, b)).fold(f64::INFINITY, f64::min)
    }

    /// Distance to a segment from `a` to `b`.
    pub fn distance_to_segment(&self, a: DVec2, b: DVec2) -> f64 {
        if self.contains(a) || self.contains(b) {
            return 0.0;
        }
        self.edges().map(|(c, d)| segment_to_segment(a, b, c, d)).fold(f64::INFINITY, f64::min)
    }

    /// Distance to a line of one point or more; infinite to a line without points.
    pub fn distance_to_line(&self, line: &[DVec2]) -> f64 {
        match line {
            [at] => self.distance_to_point(*at),
            _ => line.windows(2).map(|w| self.distance_to_segment(w[0], w[1])).fold(f64::INFINITY, f64::min),
        }
    }

    /// Distance to another area.
    pub fn distance_to_area(&self, other: &Self) -> f64 {
        let inside = |a: &Self, b: &Self| a.outer.first().is_some_and(|p| b.contains(*p));
        if inside(self, other) || inside(other, self) {
            return 0.0;
        }
        other.edges().map(|(a, b)| self.distance_to_segment(a, b)).fold(f64::INFINITY, f64::min)
    }

    /// Rings, the outer first.
    pub fn rings(&self) -> impl Iterator<Item = &[DVec2]> {
        std::iter::once(self.outer.as_slice()).chain(self.holes.iter().map(Vec::as_slice))
    }

    /// Every edge of every ring, the closing one too.
    pub fn edges(&self) -> impl Iterator<Item = (DVec2, DVec2)> + '_ {
        self.rings().flat_map(|ring| (0..ring.len()).map(move |i| (ring[i], ring[(i + 1) % ring.len()])))
    }

    /// Smallest and largest corner; `None` without corners.
    pub fn bounds(&self) -> Option<(DVec2, DVec2)> {
        let first = *self.outer.first()?;
        Some(self.outer.iter().fold((first, first), |(low, high), p| (low.min(*p), high.max(*p))))
    }

    /// As [`Self::contains`], by crossings of a ray to the east counted even-odd: fast, and a point on
    /// an edge may fall on either side.
    pub fn encloses(&self, at: DVec2) -> bool {
        let crosses = |&(a, b): &(DVec2, DVec2)| {
            (a.y > at.y) != (b.y > at.y) && at.x < a.x + (at.y - a.y) / (b.y - a.y) * (b.x - a.x)
        };
        self.edges().filter(crosses).count() % 2 == 1
    }

    fn polygon(&self) -> Polygon {
        let ring = |points: &[DVec2]| -> LineString { points.iter().map(|p| Coord { x: p.x, y: p.y }).collect() };
        Polygon::new(ring(&self.outer), self.holes.iter().map(|h| ring(h)).collect())
    }
}

/// Area of one ring, m²: half the sum of the cross products from its first corner.
fn ring_area(ring: &[DVec2]) -> f64 {
    ring.windows(2).map(|w| (w[0] - ring[0]).perp_dot(w[1] - ring[0])).sum::<f64>().abs() / 2.0
}

fn point_to_segment(at: DVec2, a: DVec2, b: DVec2) -> f64 {
    let along = b - a;
    let length = along.length_squared();
    let share = if length > 0.0 { ((at - a).dot(along) / length).clamp(0.0, 1.0) } else { 0.0 };
    at.distance(a + along * share)
}

fn segment_to_segment(a: DVec2, b: DVec2, c: DVec2, d: DVec2) -> f64 {
    let line = |p: DVec2, q: DVec2| geo::Line::new(Coord { x: p.x, y: p.y }, Coord { x: q.x, y: q.y });
    if line(a, b).intersects(&line(c, d)) {
        return 0.0;
    }
    let ends = [(a, c, d), (b, c, d), (c, a, b), (d, a, b)];
    ends.into_iter().map(|(p, q, r)| point_to_segment(p, q, r)).fold(f64::INFINITY, f64::min)
}

#[cfg(test)]
mod tests {
    #![allow(clippy::unwrap_used, reason = "tests")]
    use super::*;

    fn ring(corners: &[(f64, f64)]) -> Vec<DVec2> {
        corners.iter().map(|(x, y)| DVec2::new(*x, *y)).collect()
    }

    fn square(x: f64, y: f64, side: f64) -> Vec<DVec2> {
        ring(&[(x, y), (x + side, y), (x + side, y + side), (x, y + side)])
    }

    fn with_yard() -> PlanArea {
        PlanArea { outer: square(0.0, 0.0, 10.0), holes: vec![square(4.0, 4.0, 2.0)] }
    }

    #[test]
    fn a_yard_is_outside() {
        let area = with_yard();
        assert_eq!(area.check(), Ok(()));
        assert_eq!(area.area(), 96.0);
        assert!((area.centroid().unwrap() - DVec2::splat(5.0)).length() < 1e-12);
        let inside = [(1.0, 1.0, true), (5.0, 5.0, false), (4.0, 5.0, true), (0.0, 3.0, true), (10.1, 3.0, false)];
        for (x, y, expected) in inside {
            assert_eq!(area.contains(DVec2::new(x, y)), expected, "({x}, {y})");
        }
        assert_eq!(area.distance_to_point(DVec2::new(5.0, 5.0)), 1.0);
        assert_eq!(area.distance_to_point(DVec2::new(13.0, 14.0)), 5.0);
        assert_eq!(area.distance_to_segment(DVec2::new(-5.0, 2.0), DVec2::new(20.0, 2.5)), 0.0);
        assert_eq!(area.distance_to_segment(DVec2::new(-5.0, 12.0), DVec2::new(20.0, 12.0)), 2.0);
        assert_eq!(area.distance_to_line(&[]), f64::INFINITY);
        assert_eq!(area.distance_to_line(&[DVec2::new(-3.0, 5.0)]), 3.0);
    }

    #[test]
    fn areas_beside_inside_and_around_each_other() {
        let area = with_yard();
        let beside = PlanArea { outer: square(13.0, 14.0, 1.0), holes: vec![] };
        assert_eq!(area.distance_to_area(&beside), 5.0);
        let in_yard = PlanArea { outer: square(4.5, 4.5, 1.0), holes: vec![] };
        assert_eq!(area.distance_to_area(&in_yard), 0.5);
        let in_wall = PlanArea { outer: square(1.0, 1.0, 1.0), holes: vec![] };
        assert_eq!((area.distance_to_area(&in_wall), in_wall.distance_to_area(&area)), (0.0, 0.0));
    }

    #[test]
    fn outlines_that_say_nothing_clear() {
        let check = |outer: &[(f64, f64)]| PlanArea { outer: ring(outer), holes: vec![] }.check().unwrap_err();
        assert_eq!(check(&[(0.0, 0.0), (1.0, 1.0)]), PlanAreaError::TooFewCorners);
        assert_eq!(check(&[(0.0, 0.0), (1.0, 1.0), (2.0, 2.0)]), PlanAreaError::NoArea);
        assert_eq!(check(&[(0.0, 0.0), (f64::NAN, 1.0), (2.0, 0.0)]), PlanAreaError::NotFinite);
        let bow_tie = [(0.0, 0.0), (4.0, 3.0), (4.0, 0.0), (0.0, 4.0)];
        assert_eq!(check(&bow_tie), PlanAreaError::SelfCrossing);
        let hole_outside = PlanArea { outer: square(0.0, 0.0, 4.0), holes: vec![square(9.0, 9.0, 1.0)] };
        assert_eq!(hole_outside.check(), Err(PlanAreaError::SelfCrossing));
    }
}
