//! Outlines that cross themselves.

use crate::feature::{PlanPoint, Shape};
use geo::algorithm::bool_ops::FillRule;
use geo::{BooleanOps, Coord, LineString, MultiPolygon, Polygon, Validation};
use geometry::DVec2;

/// Areas smaller than this are left over from rounding, m².
const NOTHING: f64 = 1e-6;

fn ring(points: &[PlanPoint]) -> LineString {
    points.iter().map(|p| Coord { x: p.at.x, y: p.at.y }).collect()
}

fn polygon(outer: &[PlanPoint], holes: &[Vec<PlanPoint>]) -> Polygon {
    Polygon::new(ring(outer), holes.iter().map(|h| ring(h)).collect())
}

/// True where it is clear what is inside (simple features rules, OGC 06-103r4, 6.1.11).
pub(crate) fn is_valid(outer: &[PlanPoint], holes: &[Vec<PlanPoint>]) -> bool {
    polygon(outer, holes).is_valid()
}

/// Everything that an outline encloses, each loop of it, without its holes: an obstacle may come
/// out too large, never too small. Heights of the corners are kept where a corner stays.
pub(crate) fn mend(outer: &[PlanPoint], holes: &[Vec<PlanPoint>]) -> Vec<Shape> {
    // Near the origin, so that large coordinates cost no digits.
    let origin = outer[0].at;
    let moved = |points: &[PlanPoint]| -> Vec<PlanPoint> {
        points.iter().map(|p| PlanPoint { at: p.at - origin, height: p.height }).collect()
    };
    let enclosed = |points: &[PlanPoint]| loops(&polygon(&moved(points), &[]));
    let mut all = enclosed(outer);
    for hole in holes {
        all = all.difference(&enclosed(hole));
    }
    let height = |at: DVec2| outer.iter().find(|p| p.at.distance(at) < 1e-6).and_then(|p| p.height);
    let back = |line: &LineString| -> Vec<PlanPoint> {
        let mut points: Vec<PlanPoint> = line
            .coords()
            .map(|c| DVec2::new(c.x, c.y) + origin)
            .map(|at| PlanPoint { at, height: height(at) })
            .collect();
        points.pop();
        points
    };
    all.iter()
        .filter(|p| geo::Area::unsigned_area(*p) > NOTHING)
        .map(|p| Shape::Area { outer: back(p.exterior()), holes: p.interiors().iter().map(back).collect() })
        .collect()
}

/// The loops of a ring, whichever way round each runs.
fn loops(polygon: &Polygon) -> MultiPolygon {
    polygon.union_with_fill_rule(&MultiPolygon(Vec::new()), FillRule::NonZero)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn points(corners: &[(f64, f64)]) -> Vec<PlanPoint> {
        corners.iter().map(|(x, y)| PlanPoint { at: DVec2::new(85_000.0 + x, 447_000.0 + y), height: None }).collect()
    }

    fn area(shapes: &[Shape]) -> f64 {
        let of = |shape: &Shape| match shape {
            Shape::Area { outer, holes } => geo::Area::unsigned_area(&polygon(outer, holes)),
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
    fn a_line_there_and_back_encloses_nothing() {
        assert!(mend(&points(&[(0.0, 0.0), (4.0, 0.0), (8.0, 0.0)]), &[]).is_empty());
    }
}
