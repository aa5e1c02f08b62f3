//! Outlines that cross themselves.

use crate::feature::{PlanPoint, Shape};
use geo::algorithm::bool_ops::FillRule;
use geo::{Area, BooleanOps, Coord, LineString, MultiPolygon, Polygon, Validation};
use geometry::DVec2;

/// Areas smaller than this are left over from rounding, m².
const NOTHING: f64 = 1e-6;

fn ring(points: &[PlanPoint]) -> LineString {
    points.iter().map(|p| Coord { x: p.at.x, y: p.at.y }).collect()
}

fn polygon(outer: &[PlanPoint], holes: &[Vec<PlanPoint>]) -> Polygon {
    Polygon::new(ring(outer), holes.iter().map(|h| ring(h)).collect())
}

/// Above this many corners the exact check, which compares every edge with every other, gives way
/// to a comparison of areas.
const MANY: usize = 200;

/// True where it is clear what is inside (simple features rules, OGC 06-103r4, 6.1.11). An outline
/// of many corners counts as clear where it encloses just the area that its corners add up to.
pub(crate) fn is_valid(outer: &[PlanPoint], holes: &[Vec<PlanPoint>]) -> bool {
    if outer.len() + holes.iter().map(Vec::len).sum::<usize>() <= MANY {
        return polygon(outer, holes).is_valid();
    }
    let from_corners = polygon(&moved(outer, outer), &[]).unsigned_area()
        - holes.iter().map(|h| polygon(&moved(h, outer), &[]).unsigned_area()).sum::<f64>();
    let enclosed = enclosed(outer, holes).unsigned_area();
    (from_corners - enclosed).abs() <= NOTHING * (1.0 + enclosed)
}

/// Everything that an outline encloses, each loop of it, less what its holes enclose. Corners of a
/// mended outline have no heights.
pub(crate) fn mend(outer: &[PlanPoint], holes: &[Vec<PlanPoint>]) -> Vec<Shape> {
    let back = |line: &LineString| -> Vec<PlanPoint> {
        let corners = line.coords().map(|c| PlanPoint { at: DVec2::new(c.x, c.y) + outer[0].at, height: None });
        let mut points: Vec<PlanPoint> = corners.collect();
        points.pop();
        points
    };
    enclosed(outer, holes)
        .iter()
        .filter(|p| p.unsigned_area() > NOTHING)
        .map(|p| Shape::Area { outer: back(p.exterior()), holes: p.interiors().iter().map(back).collect() })
        .collect()
}

/// In coordinates from the first corner of the outline, so that large ones cost no digits.
fn enclosed(outer: &[PlanPoint], holes: &[Vec<PlanPoint>]) -> MultiPolygon {
    let all = loops(&MultiPolygon(vec![polygon(&moved(outer, outer), &[])]));
    if holes.is_empty() {
        return all;
    }
    // One way round, so that holes that overlap do not cancel each other.
    let holes = holes.iter().map(|hole| {
        let mut points = moved(hole, outer);
        if polygon(&points, &[]).signed_area() < 0.0 {
            points.reverse();
        }
        polygon(&points, &[])
    });
    all.difference(&loops(&holes.collect()))
}

fn moved(points: &[PlanPoint], outer: &[PlanPoint]) -> Vec<PlanPoint> {
    points.iter().map(|p| PlanPoint { at: p.at - outer[0].at, height: None }).collect()
}

/// The loops of rings, whichever way round each runs.
fn loops(rings: &MultiPolygon) -> MultiPolygon {
    rings.union_with_fill_rule(&MultiPolygon(Vec::new()), FillRule::NonZero)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn points(corners: &[(f64, f64)]) -> Vec<PlanPoint> {
        corners.iter().map(|(x, y)| PlanPoint { at: DVec2::new(85_000.0 + x, 447_000.0 + y), height: None }).collect()
    }

    fn area(shapes: &[Shape]) -> f64 {
        let of = |shape: &Shape| match shape {
            Shape::Area { outer, holes } => polygon(outer, holes).unsigned_area(),
            _ => 0.0,
        };
        shapes.iter().map(of).sum()
    }

    #[test]
    fn a_bow_tie_becomes_its_two_wings() {
        let bow_tie = points(&[(0.0, 0.0), (4.0, 4.0), (4.0, 0.0), (0.0, 4.0)]);
        assert!(!is_valid(&bow_tie, &[]));
        let mended = mend(&bow_tie, &[]);
        assert_eq!(mended.len(), 2);
        assert!((area(&mended) - 8.0).abs() < 1e-6, "{}", area(&mended));
    }

    #[test]
    fn a_hole_that_sticks_out_is_cut_off() {
        let outer = points(&[(0.0, 0.0), (4.0, 0.0), (4.0, 4.0), (0.0, 4.0)]);
        let hole = points(&[(3.0, 1.0), (6.0, 1.0), (6.0, 2.0), (3.0, 2.0)]);
        let mended = mend(&outer, &[hole]);
        assert!((area(&mended) - 15.0).abs() < 1e-6, "{}", area(&mended));
    }

    #[test]
    fn many_corners_are_told_by_their_area() {
        let circle = |radius: f64, windings: f64| -> Vec<PlanPoint> {
            let at = |i: i32| libm::sincos(f64::from(i) / 1000.0 * windings * std::f64::consts::TAU);
            let grow = |i: i32| radius * (1.0 + (windings - 1.0) * f64::from(i) / 1000.0);
            points(&(0..1000).map(|i| (at(i).0 * grow(i), at(i).1 * grow(i))).collect::<Vec<_>>())
        };
        assert!(is_valid(&circle(20.0, 1.0), &[circle(5.0, 1.0)]));
        assert!(!is_valid(&circle(20.0, 1.0), &[circle(25.0, 1.0)]), "a hole larger than its outline");
        assert!(!is_valid(&circle(20.0, 1.3), &[]), "an outline that runs over itself");
    }

    #[test]
    fn a_line_there_and_back_encloses_nothing() {
        assert!(mend(&points(&[(0.0, 0.0), (4.0, 0.0), (8.0, 0.0)]), &[]).is_empty());
    }
}
