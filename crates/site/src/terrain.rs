//! The ground surface. A hole is a hole: nothing is filled in.

use crate::Tin;
use geometry::DVec2;

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
    /// Triangles.
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
        self.height_on(at).map(|(z, surface)| (z, &self.surfaces[surface]))
    }
    /// Height and the index of the surface that gave it.
    pub fn height_on(&self, at: DVec2) -> Option<(f64, usize)> {
        self.surfaces.iter().enumerate().find_map(|(i, s)| s.terrain.height(at).map(|z| (z, i)))
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
