//! Triangulation that keeps given lines as edges, and ends at given rings.

use crate::tin::{covers_ground, index};
use crate::tin_points::{Vertex, origin_of, vertices, without_repeats};
use crate::tin_rings::Rings;
use crate::{Ring, Tin, TinDoubts, TinError};
use geometry::{DVec2, DVec3};
use spade::Triangulation as _;
use spade::handles::FixedVertexHandle;

impl Tin {
    /// Triangulates `points` so that every piece of every breakline (x, y, z in m) is an edge, or a
    /// row of edges where points lie on it (constrained Delaunay triangulation, by spade).
    ///
    /// Triangles with an edge longer than `longest_edge` are holes; an edge that is a breakline
    /// does not count, since somebody says how the ground runs along it. Points that share x and y:
    /// the last one stands, breaklines after points. A piece that crosses one placed before is left
    /// out and counted in [`Tin::doubts`]: of two lines that cross at two heights nobody knows
    /// which is right, and their points stay.
    pub fn with_breaklines(points: &[DVec3], breaklines: &[Vec<DVec3>], longest_edge: f64) -> Result<Self, TinError> {
        Self::with_rings(points, breaklines, &[], longest_edge)
    }

    /// The same, ending at `rings`: a triangle is a hole where its middle lies outside of every
    /// outer ring, or in a void and in no island. Give a ring as a breakline too where the surface
    /// should end exactly on it.
    pub fn with_rings(
        points: &[DVec3],
        breaklines: &[Vec<DVec3>],
        rings: &[Ring],
        longest_edge: f64,
    ) -> Result<Self, TinError> {
        let mut all: Vec<DVec3> = points.to_vec();
        let mut pieces = Vec::new();
        for line in breaklines {
            pieces.extend((1..line.len()).map(|i| [all.len() + i - 1, all.len() + i]));
            all.extend(line);
        }
        let origin = origin_of(&all);
        let (unique, place) = without_repeats(&vertices(&all, origin)?);
        if unique.len() < 3 {
            return Err(TinError::TooFewPoints);
        }
        let mut cdt = spade::ConstrainedDelaunayTriangulation::<Vertex>::try_bulk_load_cdt(unique, Vec::new(), |_| {})
            .map_err(|_| TinError::BadCoordinate { index: 0 })?;
        if cdt.num_inner_faces() == 0 {
            return Err(TinError::TooFewPoints);
        }
        let mut doubts = TinDoubts::default();
        for [from, to] in pieces.into_iter().map(|ends| ends.map(|i| place[i])) {
            if from != to {
                let [from, to] = [from, to].map(|i| FixedVertexHandle::from_index(i as usize));
                if !cdt.exists_constraint(from, to) && cdt.try_add_constraint(from, to).is_empty() {
                    doubts.crossing += 1;
                }
            }
        }
        let rings = (!rings.is_empty()).then(|| Rings::new(rings));
        let points: Vec<DVec3> = cdt.vertices().map(|v| v.data().point()).collect();
        let triangles = cdt
            .inner_faces()
            .filter(|f| {
                let short = |e: &spade::handles::DirectedEdgeHandle<'_, _, _, _, _>| {
                    e.length_2() <= longest_edge * longest_edge || e.is_constraint_edge()
                };
                f.adjacent_edges().iter().all(short)
            })
            .map(|f| f.vertices().map(|v| index(v.index())))
            .filter(|t| covers_ground(&points, *t))
            .filter(|t| {
                let corners = t.map(|i| points[i as usize].truncate());
                let middle = corners.iter().sum::<DVec2>() / 3.0 + origin;
                rings.as_ref().is_none_or(|r| r.keep(middle))
            })
            .collect();
        Ok(Self::of(origin, points, triangles, doubts))
    }
}
