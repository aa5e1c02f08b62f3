//! The ground surface. A hole is a hole: nothing is filled in.

use geometry::{DVec2, DVec3};
use spade::Triangulation as _;

/// The ground of a site: one or more surfaces, the first that knows a point answers.
#[derive(Debug, Clone, Default)]
pub struct Ground {
    /// Surfaces in order of priority.
    pub surfaces: Vec<GroundSource>,
}

/// One surface with what is known of it.
#[derive(Debug, Clone)]
pub struct GroundSource {
    /// File or name.
    pub name: String,
    /// The surface.
    pub terrain: Terrain,
    /// Height accuracy (largest error to reckon with at a wheel), m.
    pub accuracy: f64,
    /// Date of the survey, as written.
    pub date: Option<String>,
}

/// A height surface.
#[derive(Debug, Clone)]
pub enum Terrain {
    /// Regular grid.
    Grid(Grid),
    /// Triangulated points.
    Tin(Tin),
}

/// A regular height grid. `heights`: rows × cols, row-major from the north-west corner, m;
/// NaN where nothing is known. Heights belong to cell centres.
#[derive(Debug, Clone, PartialEq)]
pub struct Grid {
    /// Centre of the north-west cell, m.
    pub north_west: DVec2,
    /// Cell size (east, north), both positive, m.
    pub cell: DVec2,
    /// Number of rows.
    pub rows: usize,
    /// Number of columns.
    pub cols: usize,
    /// Heights.
    pub heights: Vec<f32>,
}

impl Terrain {
    /// Ground height at a point, m; `None` where nothing is known.
    pub fn height(&self, at: DVec2) -> Option<f64> {
        match self {
            Self::Grid(g) => g.height(at),
            Self::Tin(t) => t.height(at),
        }
    }
    /// Smallest and largest corner of what is covered, m.
    pub fn bounds(&self) -> Option<(DVec2, DVec2)> {
        match self {
            Self::Grid(g) => Some(g.bounds()),
            Self::Tin(t) => t.bounds(),
        }
    }
}

impl Ground {
    /// Height and the surface that gave it.
    pub fn height(&self, at: DVec2) -> Option<(f64, &GroundSource)> {
        self.surfaces.iter().find_map(|s| s.terrain.height(at).map(|z| (z, s)))
    }
}

impl Grid {
    /// Bilinear height between the four cell centres around `at`; `None` outside the centres or
    /// where any of the four that counts is unknown.
    pub fn height(&self, at: DVec2) -> Option<f64> {
        let c = (at.x - self.north_west.x) / self.cell.x;
        let r = (self.north_west.y - at.y) / self.cell.y;
        if !(c >= 0.0 && r >= 0.0) {
            return None;
        }
        let (c0, r0) = (c.floor(), r.floor());
        let (fc, fr) = (c - c0, r - r0);
        let (c0, r0) = (c0 as usize, r0 as usize);
        let mut z = 0.0;
        for (dr, wr) in [(0, 1.0 - fr), (1, fr)] {
            for (dc, wc) in [(0, 1.0 - fc), (1, fc)] {
                let w = wr * wc;
                // A weight of zero asks nothing of that cell: points on the last row stay known.
                if w > 0.0 {
                    z += w * self.cell(r0 + dr, c0 + dc)?;
                }
            }
        }
        Some(z)
    }
    /// Height of a cell; `None` outside or unknown.
    pub fn cell(&self, row: usize, col: usize) -> Option<f64> {
        if row >= self.rows || col >= self.cols {
            return None;
        }
        let z = f64::from(self.heights[row * self.cols + col]);
        z.is_finite().then_some(z)
    }
    /// Smallest and largest cell centre, m.
    pub fn bounds(&self) -> (DVec2, DVec2) {
        let span = DVec2::new((self.cols.max(1) - 1) as f64 * self.cell.x, (self.rows.max(1) - 1) as f64 * self.cell.y);
        (
            DVec2::new(self.north_west.x, self.north_west.y - span.y),
            DVec2::new(self.north_west.x + span.x, self.north_west.y),
        )
    }
}

/// Why points make no surface.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum TinError {
    /// Fewer than three points that are not in one line.
    TooFewPoints,
    /// A coordinate is NaN, infinite or too large to triangulate.
    BadCoordinate {
        /// Index of the point.
        index: usize,
    },
}

/// A Delaunay triangulation of ground points (spade). Triangles with an edge longer than
/// `longest_edge` are holes: what lies between far points is not known.
#[derive(Clone)]
pub struct Tin {
    triangulation: spade::DelaunayTriangulation<Vertex, (), (), (), spade::HierarchyHintGenerator<f64>>,
    longest_edge: f64,
    origin: DVec2,
}

#[derive(Debug, Clone, Copy)]
struct Vertex {
    position: spade::Point2<f64>,
    z: f64,
}
impl spade::HasPosition for Vertex {
    type Scalar = f64;
    fn position(&self) -> spade::Point2<f64> {
        self.position
    }
}

impl std::fmt::Debug for Tin {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        write!(f, "Tin({} points, longest edge {} m)", self.triangulation.num_vertices(), self.longest_edge)
    }
}

impl Tin {
    /// Triangulates `points` (x, y, z in m). Points that share x and y: the last one stands.
    pub fn new(points: &[DVec3], longest_edge: f64) -> Result<Self, TinError> {
        // Relative to the first point: eastings of millions would cost the predicates digits.
        let origin = points.first().map_or(DVec2::ZERO, |p| p.truncate().floor());
        let mut vertices = Vec::with_capacity(points.len());
        for (index, p) in points.iter().enumerate() {
            let v = Vertex { position: spade::Point2::new(p.x - origin.x, p.y - origin.y), z: p.z };
            if !p.is_finite() || spade::validate_vertex(&v).is_err() {
                return Err(TinError::BadCoordinate { index });
            }
            vertices.push(v);
        }
        let triangulation =
            spade::DelaunayTriangulation::bulk_load(vertices).map_err(|_| TinError::BadCoordinate { index: 0 })?;
        if triangulation.num_inner_faces() == 0 {
            return Err(TinError::TooFewPoints);
        }
        Ok(Self { triangulation, longest_edge, origin })
    }

    /// Number of points.
    pub fn len(&self) -> usize {
        self.triangulation.num_vertices()
    }
    /// True without points (never after [`Tin::new`]).
    pub fn is_empty(&self) -> bool {
        self.len() == 0
    }

    /// Linear height in the triangle that holds `at`; `None` outside or in a hole.
    pub fn height(&self, at: DVec2) -> Option<f64> {
        use spade::PositionInTriangulation as P;
        let q = spade::Point2::new(at.x - self.origin.x, at.y - self.origin.y);
        if !(q.x.is_finite() && q.y.is_finite()) {
            return None;
        }
        let face = match self.triangulation.locate(q) {
            P::OnVertex(v) => return Some(self.triangulation.vertex(v).data().z),
            P::OnFace(f) => self.triangulation.face(f),
            P::OnEdge(e) => {
                let edge = self.triangulation.directed_edge(e);
                let sides = [edge.face(), edge.rev().face()];
                sides.into_iter().filter_map(|f| f.as_inner()).find(|f| self.short_edges(f))?
            }
            P::OutsideOfConvexHull(_) | P::NoTriangulation => return None,
        };
        if !self.short_edges(&face) {
            return None;
        }
        let [a, b, c] = face.vertices().map(|v| *v.data());
        let (p, q1, q2) = (a.position, b.position, c.position);
        let area = (q1.x - p.x) * (q2.y - p.y) - (q2.x - p.x) * (q1.y - p.y);
        let wb = ((q.x - p.x) * (q2.y - p.y) - (q2.x - p.x) * (q.y - p.y)) / area;
        let wc = ((q1.x - p.x) * (q.y - p.y) - (q.x - p.x) * (q1.y - p.y)) / area;
        Some(a.z + wb * (b.z - a.z) + wc * (c.z - a.z))
    }

    /// Triangles of which the height is known: corners (x, y, z in m), counter-clockwise seen from above.
    pub fn triangles(&self) -> impl Iterator<Item = [DVec3; 3]> + '_ {
        let corner = |v: &Vertex| DVec3::new(v.position.x + self.origin.x, v.position.y + self.origin.y, v.z);
        let known = self.triangulation.inner_faces().filter(|f| self.short_edges(f));
        known.map(move |f| f.vertices().map(|v| corner(v.data())))
    }

    fn short_edges(&self, face: &spade::handles::FaceHandle<'_, spade::handles::InnerTag, Vertex, (), (), ()>) -> bool {
        face.adjacent_edges().iter().all(|e| e.length_2() <= self.longest_edge * self.longest_edge)
    }

    /// Smallest and largest corner of the points, m.
    pub fn bounds(&self) -> Option<(DVec2, DVec2)> {
        let mut it = self.triangulation.vertices().map(|v| DVec2::new(v.position().x, v.position().y));
        let first = it.next()?;
        let (low, high) = it.fold((first, first), |(l, h), p| (l.min(p), h.max(p)));
        Some((low + self.origin, high + self.origin))
    }
}
