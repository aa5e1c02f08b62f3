//! An outline with holes as triangles.

use geometry::DVec2;
use site::PlanArea;
use spade::{ConstrainedDelaunayTriangulation, HasPosition, Point2, Triangulation as _};

/// Corners closer than this are one, m.
const GRAIN: f64 = 1e-6;

/// A corner: where it is triangulated, and where it is, to the bit, so that triangles meet the sides beside them.
#[derive(Debug, Clone, Copy)]
struct Corner {
    near: Point2<f64>,
    own: DVec2,
}

impl HasPosition for Corner {
    type Scalar = f64;
    fn position(&self) -> Point2<f64> {
        self.near
    }
}

/// Triangles of an outline, and of what lies inside at `inside`, counter-clockwise.
///
/// Constrained Delaunay triangulation (spade) of all rings; a triangle belongs if its middle is inside by the even-odd
/// rule, as in [`PlanArea::contains`]. Rings that cross are cut where they do. Empty for an outline without area.
pub(crate) fn triangulate(area: &PlanArea, inside: &[DVec2]) -> Vec<[DVec2; 3]> {
    let Some(origin) = area.outer.first().map(|p| p.floor()) else { return Vec::new() };
    let snap = |v: f64| (v / GRAIN).round() * GRAIN + 0.0;
    let corner = |p: &DVec2| Corner { near: Point2::new(snap(p.x - origin.x), snap(p.y - origin.y)), own: *p };
    let crossing = |near: Point2<f64>| Corner { near, own: DVec2::new(near.x, near.y) + origin };
    let mut mesh = ConstrainedDelaunayTriangulation::<Corner>::new();
    for ring in area.rings() {
        let handles: Vec<_> = ring.iter().filter_map(|p| mesh.insert(corner(p)).ok()).collect();
        for (i, from) in handles.iter().enumerate() {
            let to = handles[(i + 1) % handles.len()];
            if *from != to {
                mesh.add_constraint_and_split(*from, to, crossing);
            }
        }
    }
    for p in inside {
        // A point that cannot be taken only makes the triangles larger.
        let _ = mesh.insert(corner(p));
    }
    let local = PlanArea {
        outer: area.outer.iter().map(|p| *p - origin).collect(),
        holes: area.holes.iter().map(|hole| hole.iter().map(|p| *p - origin).collect()).collect(),
    };
    let belongs = |corners: &[Corner; 3]| {
        let sum = corners.iter().fold(DVec2::ZERO, |sum, c| sum + DVec2::new(c.near.x, c.near.y));
        local.contains(sum / 3.0)
    };
    let faces = mesh.inner_faces().map(|face| face.vertices().map(|v| *v.data()));
    faces.filter(belongs).map(|corners| corners.map(|c| c.own)).collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::ring::signed_area;

    fn area_of(area: &PlanArea) -> f64 {
        triangulate(area, &[]).iter().map(|t| signed_area(t)).sum()
    }
    fn ring(points: &[(f64, f64)]) -> Vec<DVec2> {
        points.iter().map(|(x, y)| DVec2::new(x + 431_000.0, y + 5_700_000.0)).collect()
    }

    #[test]
    fn a_hole_is_left_out() {
        let area = PlanArea {
            outer: ring(&[(0.0, 0.0), (10.0, 0.0), (10.0, 8.0), (0.0, 8.0)]),
            holes: vec![ring(&[(2.0, 2.0), (2.0, 5.0), (6.0, 5.0), (6.0, 2.0)])],
        };
        assert!((area_of(&area) - 68.0).abs() < 1e-6);
    }

    #[test]
    fn a_bow_tie_is_cut_where_it_crosses() {
        let area = PlanArea { outer: ring(&[(0.0, 0.0), (4.0, 4.0), (4.0, 0.0), (0.0, 4.0)]), holes: Vec::new() };
        assert!((area_of(&area) - 8.0).abs() < 1e-6, "{}", area_of(&area));
    }

    #[test]
    fn corners_said_twice_and_lines_do_no_harm() {
        let twice = ring(&[(0.0, 0.0), (0.0, 0.0), (2.0, 0.0), (2.0, 2.0), (2.0, 2.0), (0.0, 2.0)]);
        assert!((area_of(&PlanArea { outer: twice, holes: Vec::new() }) - 4.0).abs() < 1e-6);
        let flat = ring(&[(0.0, 0.0), (1.0, 1.0), (2.0, 2.0)]);
        assert_eq!(area_of(&PlanArea { outer: flat, holes: Vec::new() }), 0.0);
        assert_eq!(area_of(&PlanArea::default()), 0.0);
    }
}
