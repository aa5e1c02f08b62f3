//! Cells of a map, some closed, with quick and with exact answers for rectangles.

use crate::distance_transform::distances;
use crate::{PlanBox, PlanPose};
use geometry::DVec2;

/// How a raster lies in the site.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct RasterFrame {
    /// South-west corner of the south-western cell, m.
    pub corner: DVec2,
    /// Side of a cell, m, above 0.
    pub cell: f64,
    /// Cells from west to east.
    pub cols: usize,
    /// Cells from south to north.
    pub rows: usize,
}

impl RasterFrame {
    /// How many cells.
    pub fn len(&self) -> usize {
        self.cols * self.rows
    }
    /// True without cells.
    pub fn is_empty(&self) -> bool {
        self.len() == 0
    }
    /// Column and row of a place; `None` outside.
    pub fn column_row(&self, at: DVec2) -> Option<(usize, usize)> {
        let q = (at - self.corner) / self.cell;
        let inside = q.x >= 0.0 && q.y >= 0.0 && q.x < self.cols as f64 && q.y < self.rows as f64;
        inside.then_some((q.x as usize, q.y as usize))
    }
    /// Index of the cell at a place, rows from the south; `None` outside.
    pub fn index(&self, at: DVec2) -> Option<usize> {
        self.column_row(at).map(|(col, row)| row * self.cols + col)
    }
    /// The cell that many columns to the east and rows to the north; `None` outside.
    pub fn beside(&self, index: usize, cols: isize, rows: isize) -> Option<usize> {
        let col = (index % self.cols).checked_add_signed(cols).filter(|c| *c < self.cols)?;
        let row = (index / self.cols).checked_add_signed(rows).filter(|r| *r < self.rows)?;
        Some(row * self.cols + col)
    }
    /// Middle of a cell, m.
    pub fn centre(&self, index: usize) -> DVec2 {
        let (row, col) = (index / self.cols, index % self.cols);
        self.corner + self.cell * DVec2::new(col as f64 + 0.5, row as f64 + 0.5)
    }
}

/// Cells of which some are closed, each for a reason. Outside all cells everything is closed.
#[derive(Debug, Clone)]
pub struct Raster<W> {
    frame: RasterFrame,
    outside: W,
    why: Vec<Option<W>>,
    /// For each row the number of closed cells up to each column.
    counts: Vec<u32>,
    /// m from each cell's middle to the nearest closed cell's middle, the outside too.
    distance: Vec<f32>,
}

/// What is known of a rectangle without looking at every cell.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Quick {
    Clear,
    Met,
    Unsure,
}

impl<W: Copy> Raster<W> {
    /// A raster; `why` tells for each cell, rows from the south, why it is closed.
    ///
    /// # Panics
    /// If `why` has not as many entries as the frame cells.
    pub fn new(frame: RasterFrame, why: Vec<Option<W>>, outside: W) -> Self {
        assert_eq!(why.len(), frame.len(), "one entry for each cell");
        let mut counts = Vec::with_capacity((frame.cols + 1) * frame.rows);
        for row in why.chunks(frame.cols.max(1)) {
            let mut count = 0;
            counts.push(0);
            for cell in row {
                count += u32::from(cell.is_some());
                counts.push(count);
            }
        }
        let distance = bordered(&frame, &why);
        Self { frame, outside, why, counts, distance }
    }

    /// How it lies.
    pub fn frame(&self) -> &RasterFrame {
        &self.frame
    }

    /// Why the cell at a place is closed; `None`: it is open.
    pub fn at(&self, place: DVec2) -> Option<W> {
        self.frame.index(place).map_or(Some(self.outside), |i| self.why[i])
    }

    /// Why a cell is closed; `None`: it is open.
    pub fn cell(&self, index: usize) -> Option<W> {
        self.why[index]
    }

    /// Distances between which the nearest closed point lies from a place, m: `(0, 0)` in a closed cell and outside.
    pub fn clearance(&self, at: DVec2) -> (f64, f64) {
        match self.frame.index(at) {
            Some(i) if self.why[i].is_none() => {
                let half = self.frame.cell * core::f64::consts::FRAC_1_SQRT_2;
                let d = f64::from(self.distance[i]);
                // The place is up to half a diagonal from its cell's middle, the nearest closed point another
                // half from its cell's; the distance is single precision.
                ((d * (1.0 - 1e-6) - 2.0 * half).max(0.0), d * (1.0 + 1e-6) + half)
            }
            _ => (0.0, 0.0),
        }
    }

    /// Distance from a cell's middle to the nearest closed cell's middle, m.
    pub fn distance(&self, index: usize) -> f64 {
        f64::from(self.distance[index])
    }

    /// The closed cell nearest to the one at a place, by their middles; `None` where none is closed or the edge is
    /// nearer.
    pub fn nearest(&self, at: DVec2) -> Option<usize> {
        let (col, row) = self.frame.column_row(at)?;
        let reach = (f64::from(self.distance[row * self.frame.cols + col]) / self.frame.cell).ceil() as usize;
        let mut best: Option<(usize, usize)> = None;
        for r in row.saturating_sub(reach)..=(row + reach).min(self.frame.rows - 1) {
            for c in col.saturating_sub(reach)..=(col + reach).min(self.frame.cols - 1) {
                let i = r * self.frame.cols + c;
                let (dr, dc) = (r.abs_diff(row), c.abs_diff(col));
                let far = dr * dr + dc * dc;
                if self.why[i].is_some() && best.is_none_or(|(least, _)| far < least) {
                    best = Some((far, i));
                }
            }
        }
        best.map(|(_, cell)| cell)
    }

    /// Why a rectangle of a machine at a pose may not lie there: exact for the closed cells as squares with
    /// their edges. `None`: it meets none.
    pub fn meets(&self, body: &PlanBox, pose: &PlanPose) -> Option<W> {
        match self.quick(body, pose) {
            Quick::Clear => None,
            Quick::Met | Quick::Unsure => self.meets_convex(&body.corners_at(pose)),
        }
    }

    /// Discs along the middle line: those that hold the rectangle clear it, those inside it meet.
    fn quick(&self, body: &PlanBox, pose: &PlanPose) -> Quick {
        let (s, c) = libm::sincos(pose.heading);
        let (length, w) = (body.front - body.rear, body.half_width);
        // As many squares side by side as the rectangle is long: discs about them are little wider than it.
        let discs = (length / (1.5 * w)).ceil().clamp(1.0, 12.0);
        if discs.is_nan() || !pose.is_finite() {
            // No disc would be looked at: what is no number is never clear.
            return Quick::Unsure;
        }
        let step = length / discs;
        let around = (w * w + 0.25 * step * step).sqrt();
        let mut clear = true;
        for k in 0..discs as usize {
            let x = body.rear + step * (k as f64 + 0.5);
            let (least, most) = self.clearance(pose.at + DVec2::new(c * x, s * x));
            if most < w.min(0.5 * step) {
                return Quick::Met;
            }
            clear &= least > around;
        }
        if clear { Quick::Clear } else { Quick::Unsure }
    }

    /// Why a convex outline (corners in order, either way round) may not lie there.
    ///
    /// Row by row: the part of the outline within a row's band is convex, so the cells it meets are
    /// those between its westernmost and easternmost points.
    pub fn meets_convex(&self, corners: &[DVec2]) -> Option<W> {
        let f = &self.frame;
        let q = |p: DVec2| (p - f.corner) / f.cell;
        let (mut low, mut high) = (f64::INFINITY, f64::NEG_INFINITY);
        for p in corners.iter().map(|p| q(*p)) {
            if !(p.x >= 0.0 && p.y >= 0.0 && p.x < f.cols as f64 && p.y < f.rows as f64) {
                return Some(self.outside);
            }
            (low, high) = (low.min(p.y), high.max(p.y));
        }
        for row in low.floor() as usize..=high.floor() as usize {
            let (south, north) = (row as f64, row as f64 + 1.0);
            let (mut west, mut east) = (f64::INFINITY, f64::NEG_INFINITY);
            for i in 0..corners.len() {
                let (a, b) = (q(corners[i]), q(corners[(i + 1) % corners.len()]));
                let (a, b) = if a.y <= b.y { (a, b) } else { (b, a) };
                if b.y < south || a.y > north {
                    continue;
                }
                let x = |y: f64| if b.y > a.y { a.x + (y - a.y) / (b.y - a.y) * (b.x - a.x) } else { a.x };
                let (at_south, at_north) = (x(south.max(a.y)), if b.y > a.y { x(north.min(b.y)) } else { b.x });
                west = west.min(at_south).min(at_north);
                east = east.max(at_south).max(at_north);
            }
            if west <= east {
                let (c0, c1) = (west.max(0.0) as usize, (east.max(0.0) as usize).min(f.cols - 1));
                let counts = &self.counts[row * (f.cols + 1)..];
                if counts[c1 + 1] > counts[c0] {
                    let cells = &self.why[row * f.cols..];
                    return cells[c0..=c1].iter().find_map(|w| *w);
                }
            }
        }
        None
    }
}

/// Distances with a ring of closed cells around, which stands for the outside.
fn bordered<W>(frame: &RasterFrame, why: &[Option<W>]) -> Vec<f32> {
    let (rows, cols) = (frame.rows + 2, frame.cols + 2);
    let marked = |i: usize| {
        let (row, col) = (i / cols, i % cols);
        let inside = row > 0 && col > 0 && row <= frame.rows && col <= frame.cols;
        !inside || why[(row - 1) * frame.cols + col - 1].is_some()
    };
    let all = distances(marked, rows, cols);
    let cell = frame.cell as f32;
    let inner = all.chunks(cols).skip(1).take(frame.rows);
    inner.flat_map(|row| row[1..=frame.cols].iter().map(|d| d * cell)).collect()
}
