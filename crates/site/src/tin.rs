//! A surface of triangles. What lies in no triangle is not known.

use crate::tin_buckets::Buckets;
use crate::tin_points::{Vertex, origin_of, vertices, without_repeats};
use geometry::{DVec2, DVec3};
use spade::Triangulation as _;

/// Points this near to a triangle count as in it, m. Coordinates of 25 million metres come in steps
/// of 4e-9 m, and a point computed on an edge lies a few such steps beside it. Triangles thinner
/// than this are left out: whatever lies in one lies this near to its neighbours.
pub(crate) const SLACK: f64 = 1e-7;

/// Faces that cover each other are taken as one surface as long as they agree to this, m (ours: the
/// reading of a level).
const AGREE: f64 = 0.01;

/// Why points make no surface.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum TinError {
    /// Fewer than three points that are not in one line.
    TooFewPoints,
    /// No face that covers ground: all of them are degenerate or stand upright.
    NoFaces,
    /// A coordinate is NaN, infinite or too large to triangulate.
    BadCoordinate {
        /// Index of the point: first the points, then those of the breaklines in their order.
        index: usize,
    },
    /// A face names a point that is not there, or (in stored parts) does not run counterclockwise.
    BadFace {
        /// Index of the face.
        index: usize,
    },
    /// More points or faces than are counted in 32 bits.
    TooMany,
}

/// What was left out of a surface, or is doubtful in it.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct TinDoubts {
    /// Faces that cover no ground in plan (degenerate or upright); left out.
    pub upright: usize,
    /// Faces with the same three points as an earlier one; left out.
    pub repeated: usize,
    /// Faces that cover part of an earlier one, deeper than a millimetre; kept. Where the two
    /// disagree by more than 1 cm the height is not known.
    pub overlapping: usize,
    /// The surface has more possible overlaps than are looked at: there may be more.
    pub overlaps_uncounted: bool,
    /// Pieces of breaklines that cross one placed before; left out, their end points stay.
    pub crossing: usize,
}

/// A surface of triangles with a grid of buckets to find them in. Memory grows linearly with the
/// triangles; a height costs the same however many there are, unless triangles are needles.
///
/// Every triangle covers ground in plan and runs counterclockwise. Coordinates are kept in 64 bits
/// relative to an origin near the points: eastings of millions would cost digits.
#[derive(Clone)]
pub struct Tin {
    pub(crate) origin: DVec2,
    /// East and north relative to `origin`; height as it is.
    pub(crate) points: Vec<DVec3>,
    pub(crate) triangles: Vec<[u32; 3]>,
    pub(crate) doubts: TinDoubts,
    pub(crate) buckets: Buckets,
}

/// What a surface consists of, to be stored and opened again by [`Tin::from_parts`].
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct TinParts<'a> {
    /// East and north that `points` are relative to, m.
    pub origin: DVec2,
    /// East and north relative to `origin`, height above datum, m.
    pub points: &'a [DVec3],
    /// Indices of three points each, counterclockwise in plan.
    pub triangles: &'a [[u32; 3]],
    /// What was left out when the surface was made.
    pub doubts: TinDoubts,
}

impl std::fmt::Debug for Tin {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        write!(f, "Tin({} points, {} triangles)", self.points.len(), self.triangles.len())
    }
}

impl Tin {
    /// Delaunay triangulation of `points` (x, y, z in m; by spade). Triangles with an edge longer
    /// than `longest_edge` (m) are holes: what lies between far points is not known. Points that
    /// share x and y: the last one stands.
    pub fn new(points: &[DVec3], longest_edge: f64) -> Result<Self, TinError> {
        let origin = origin_of(points);
        let (vertices, _) = without_repeats(&vertices(points, origin)?);
        let all = spade::DelaunayTriangulation::<Vertex>::bulk_load(vertices)
            .map_err(|_| TinError::BadCoordinate { index: 0 })?;
        if all.num_inner_faces() == 0 {
            return Err(TinError::TooFewPoints);
        }
        let points: Vec<DVec3> = all.vertices().map(|v| v.data().point()).collect();
        let triangles = all
            .inner_faces()
            .filter(|f| f.adjacent_edges().iter().all(|e| e.length_2() <= longest_edge * longest_edge))
            .map(|f| f.vertices().map(|v| index(v.index())))
            .filter(|t| covers_ground(&points, *t))
            .collect();
        Ok(Self::of(origin, points, triangles, TinDoubts::default()))
    }

    /// Opens a stored surface without triangulating again.
    ///
    /// # Errors
    /// [`TinError::BadCoordinate`] for a point that is not finite, [`TinError::BadFace`] for a
    /// triangle that names a point that is not there or does not run counterclockwise.
    pub fn from_parts(
        origin: DVec2,
        points: Vec<DVec3>,
        triangles: Vec<[u32; 3]>,
        doubts: TinDoubts,
    ) -> Result<Self, TinError> {
        if points.len().max(triangles.len()) > MOST {
            return Err(TinError::TooMany);
        }
        let bad = |p: &DVec3| !p.is_finite() || p.abs().max_element() > LARGEST;
        if let Some(index) = points.iter().position(bad) {
            return Err(TinError::BadCoordinate { index });
        }
        if !origin.is_finite() || origin.abs().max_element() > LARGEST {
            return Err(TinError::BadCoordinate { index: 0 });
        }
        let there = |t: &[u32; 3]| t.iter().all(|&i| (i as usize) < points.len());
        if let Some(index) = triangles.iter().position(|t| !there(t) || !covers_ground(&points, *t)) {
            return Err(TinError::BadFace { index });
        }
        Ok(Self::of(origin, points, triangles, doubts))
    }

    /// What the surface consists of.
    pub fn parts(&self) -> TinParts<'_> {
        TinParts { origin: self.origin, points: &self.points, triangles: &self.triangles, doubts: self.doubts }
    }

    /// From parts that hold what [`Tin`] promises.
    pub(crate) fn of(origin: DVec2, points: Vec<DVec3>, triangles: Vec<[u32; 3]>, doubts: TinDoubts) -> Self {
        let buckets = Buckets::new(&points, &triangles);
        Self { origin, points, triangles, doubts, buckets }
    }

    /// Number of points.
    pub fn len(&self) -> usize {
        self.points.len()
    }
    /// True without points.
    pub fn is_empty(&self) -> bool {
        self.points.is_empty()
    }
    /// What was left out, or is doubtful.
    pub fn doubts(&self) -> TinDoubts {
        self.doubts
    }
    /// Every point, m.
    pub fn points(&self) -> impl Iterator<Item = DVec3> + '_ {
        self.points.iter().map(|p| *p + self.origin.extend(0.0))
    }
    /// Every triangle, its corners in m, counterclockwise in plan.
    pub fn triangles(&self) -> impl Iterator<Item = [DVec3; 3]> + '_ {
        let origin = self.origin.extend(0.0);
        self.triangles.iter().map(move |t| t.map(|i| self.points[i as usize] + origin))
    }
    /// Smallest and largest corner of the points, m.
    pub fn bounds(&self) -> Option<(DVec2, DVec2)> {
        let mut it = self.points.iter().map(|p| p.truncate());
        let first = it.next()?;
        let (low, high) = it.fold((first, first), |(l, h), p| (l.min(p), h.max(p)));
        Some((low + self.origin, high + self.origin))
    }

    /// Area of the triangles in plan, m².
    pub fn plan_area(&self) -> f64 {
        self.areas().map(|(plan, _)| plan).sum()
    }
    /// Area of the triangles in space, m².
    pub fn surface_area(&self) -> f64 {
        self.areas().map(|(_, space)| space).sum()
    }
    /// Mean of the triangles' slopes (rise over run), weighted by their areas in plan; `None`
    /// without triangles.
    pub fn mean_slope(&self) -> Option<f64> {
        // Slope is tan of the angle to the horizontal, and plan area is cos times area in space.
        let run = |plan: f64, space: f64| (space * space - plan * plan).max(0.0).sqrt();
        let (rise, plan) = self.areas().fold((0.0, 0.0), |(r, p), (plan, space)| (r + run(plan, space), p + plan));
        (plan > 0.0).then(|| rise / plan)
    }
    fn areas(&self) -> impl Iterator<Item = (f64, f64)> + '_ {
        self.triangles.iter().map(|t| {
            let [a, b, c] = t.map(|i| self.points[i as usize]);
            let normal = (b - a).cross(c - a);
            (normal.z / 2.0, normal.length() / 2.0)
        })
    }

    /// Linear height in the triangle that holds `at`, m; `None` outside, in a hole, and where two
    /// faces that cover each other disagree by more than 1 cm. On an edge or a corner of a triangle
    /// the height is known.
    pub fn height(&self, at: DVec2) -> Option<f64> {
        let q = at - self.origin;
        if !q.is_finite() {
            return None;
        }
        let ask_all = self.doubts.overlapping > 0 || self.doubts.overlaps_uncounted;
        let mut within: Option<(f64, f64, f64)> = None;
        let mut beside: Option<(f64, u32)> = None;
        for t in self.buckets.near(q) {
            let depth = self.depth(t, q);
            if depth >= 0.0 {
                let z = self.height_in(t, q);
                if !ask_all {
                    return Some(z);
                }
                within = Some(within.map_or((z, z, z), |(first, low, high)| (first, low.min(z), high.max(z))));
            } else if depth >= -SLACK && beside.is_none_or(|(best, _)| depth > best) {
                beside = Some((depth, t));
            }
        }
        match within {
            Some((first, low, high)) => (high - low <= AGREE).then_some(first),
            None => beside.map(|(_, t)| self.height_in(t, q)),
        }
    }

    /// How far inside the triangle: 0 or more within, else minus the distance to the farthest side
    /// that it is beyond, m.
    fn depth(&self, triangle: u32, q: DVec2) -> f64 {
        let [a, b, c] = self.triangles[triangle as usize];
        [(a, b), (b, c), (c, a)].into_iter().fold(0.0, |least: f64, (from, to)| least.min(self.side(from, to, q)))
    }

    /// 0 to the left of an edge, else minus the distance, m. Both triangles of an edge compute it
    /// from the same end, so that no point falls between them.
    fn side(&self, from: u32, to: u32, q: DVec2) -> f64 {
        let (lower, upper) = (from.min(to), from.max(to));
        let (p, r) = (self.points[lower as usize].truncate(), self.points[upper as usize].truncate());
        let cross = (r - p).perp_dot(q - p) * if from < to { 1.0 } else { -1.0 };
        if cross >= 0.0 { 0.0 } else { cross / (r - p).length() }
    }

    fn height_in(&self, triangle: u32, q: DVec2) -> f64 {
        let [a, b, c] = self.triangles[triangle as usize].map(|i| self.points[i as usize]);
        let (ab, ac, aq) = ((b - a).truncate(), (c - a).truncate(), q - a.truncate());
        let area = ab.perp_dot(ac);
        // Beside the triangle by no more than the slack: the height at its rim, not beyond it.
        let (wb, wc) = ((aq.perp_dot(ac) / area).max(0.0), (ab.perp_dot(aq) / area).max(0.0));
        let sum = (wb + wc).max(1.0);
        a.z + wb / sum * (b.z - a.z) + wc / sum * (c.z - a.z)
    }
}

/// Largest coordinate that is taken, m: squares and products of it stay finite by far.
pub(crate) const LARGEST: f64 = 1e12;

/// Most points and most triangles.
pub(crate) const MOST: usize = u32::MAX as usize / 16;

/// True for a triangle that runs counterclockwise in plan and is no needle thinner than [`SLACK`].
pub(crate) fn covers_ground(points: &[DVec3], triangle: [u32; 3]) -> bool {
    let [a, b, c] = triangle.map(|i| points[i as usize].truncate());
    let longest = (b - a).length().max((c - b).length()).max((a - c).length());
    (b - a).perp_dot(c - a) > longest * SLACK
}

pub(crate) fn index(n: usize) -> u32 {
    u32::try_from(n).unwrap_or(u32::MAX)
}
