//! Buckets in which triangles are found: grids of squares, each level twice as coarse.

use crate::tin::{SLACK, index};
use geometry::{DVec2, DVec3};

/// A triangle goes to the finest level on which its box spans no more squares than this each way.
const SPAN: f64 = 2.0;

/// Grids over the triangles. A triangle stands in at most nine squares of one level, and there are
/// at most four squares to a triangle on the finest one, so memory is linear whatever their shapes.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Buckets {
    corner: DVec2,
    levels: Vec<Level>,
}

/// One grid; levels without triangles are not kept.
#[derive(Debug, Clone, PartialEq)]
struct Level {
    cell: f64,
    cols: usize,
    rows: usize,
    /// Where the items of each square start; one more at the end.
    starts: Vec<u32>,
    items: Vec<u32>,
}

impl Buckets {
    /// For triangles that cover ground.
    pub(crate) fn new(points: &[DVec3], triangles: &[[u32; 3]]) -> Self {
        let corners = |t: &[u32; 3]| t.map(|i| points[i as usize].truncate());
        let (mut low, mut high, mut area) = (DVec2::INFINITY, DVec2::NEG_INFINITY, 0.0);
        for t in triangles {
            let [a, b, c] = corners(t);
            (low, high) = (low.min(a).min(b).min(c), high.max(a).max(b).max(c));
            area += (b - a).perp_dot(c - a) / 2.0;
        }
        if triangles.is_empty() {
            return Self { corner: DVec2::ZERO, levels: Vec::new() };
        }
        let corner = low - DVec2::splat(2.0 * SLACK);
        let size = high - low + DVec2::splat(4.0 * SLACK);
        let count = triangles.len() as f64;
        // As large as two triangles, but no more than four squares to a triangle in all.
        let enough = (size.x * size.y / (4.0 * count)).sqrt().max(size.max_element() / (2.0 * count));
        let cell = (2.0 * area / count).sqrt().max(enough).max(SLACK * 8.0);
        let mut cells = Vec::new();
        let mut of_level = vec![cell];
        while of_level.last().is_some_and(|c| c * SPAN < size.max_element()) {
            of_level.push(of_level[of_level.len() - 1] * 2.0);
        }
        let level_of = |t: &[u32; 3]| {
            let [a, b, c] = corners(t);
            let extent = (a.max(b).max(c) - a.min(b).min(c)).max_element();
            of_level.iter().position(|c| extent <= SPAN * c).unwrap_or(of_level.len() - 1)
        };
        let mut by_level: Vec<Vec<u32>> = vec![Vec::new(); of_level.len()];
        for (i, t) in triangles.iter().enumerate() {
            by_level[level_of(t)].push(index(i));
        }
        for (cell, members) in of_level.iter().zip(by_level) {
            if !members.is_empty() {
                let grid = (corner, *cell, (size / *cell).floor());
                cells.push(Level::new(grid, &members, |t| corners(&triangles[t as usize])));
            }
        }
        Self { corner, levels: cells }
    }

    /// Triangles that may hold `q`, or lie within [`SLACK`] of it.
    pub(crate) fn near(&self, q: DVec2) -> impl Iterator<Item = u32> + '_ {
        self.levels.iter().flat_map(move |level| {
            let at = (q - self.corner) / level.cell;
            let inside = at.x >= 0.0 && at.y >= 0.0 && at.x < level.cols as f64 && at.y < level.rows as f64;
            if inside { level.items(at.x as usize, at.y as usize) } else { &[] }.iter().copied()
        })
    }

    /// Number of levels.
    pub(crate) fn levels(&self) -> usize {
        self.levels.len()
    }

    /// The finest level whose squares hold a box of this extent (m) as a triangle's box.
    pub(crate) fn level_for(&self, extent: f64) -> usize {
        self.levels.iter().position(|l| extent <= SPAN * l.cell).unwrap_or(self.levels.len().saturating_sub(1))
    }

    /// Triangles of one level whose squares touch a box; one may come several times.
    pub(crate) fn in_box(&self, level: usize, low: DVec2, high: DVec2) -> impl Iterator<Item = u32> + '_ {
        let level = &self.levels[level];
        let ((c0, c1), (r0, r1)) = level.squares(low - self.corner, high - self.corner);
        (r0..=r1).flat_map(move |r| (c0..=c1).flat_map(move |c| level.items(c, r).iter().copied()))
    }
}

impl Level {
    fn new((corner, cell, last): (DVec2, f64, DVec2), members: &[u32], corners: impl Fn(u32) -> [DVec2; 3]) -> Self {
        let (cols, rows) = (last.x as usize + 1, last.y as usize + 1);
        let mut level = Self { cell, cols, rows, starts: vec![0; cols * rows + 1], items: Vec::new() };
        let visit = |level: &mut Self, found: &mut dyn FnMut(&mut Self, usize, u32)| {
            for &t in members {
                let triangle = corners(t).map(|p| p - corner);
                let [a, b, c] = triangle;
                let ((c0, c1), (r0, r1)) = level.squares(a.min(b).min(c), a.max(b).max(c));
                for r in r0..=r1 {
                    for col in c0..=c1 {
                        if touches(triangle, DVec2::new(col as f64, r as f64) * cell, cell) {
                            found(level, r * cols + col, t);
                        }
                    }
                }
            }
        };
        visit(&mut level, &mut |level, square, _| level.starts[square + 1] += 1);
        for i in 1..level.starts.len() {
            level.starts[i] += level.starts[i - 1];
        }
        level.items = vec![0; level.starts[cols * rows] as usize];
        let mut next = level.starts.clone();
        visit(&mut level, &mut |level, square, t| {
            level.items[next[square] as usize] = t;
            next[square] += 1;
        });
        level
    }

    fn items(&self, col: usize, row: usize) -> &[u32] {
        let square = row * self.cols + col;
        &self.items[self.starts[square] as usize..self.starts[square + 1] as usize]
    }

    /// First and last column, first and last row that a box touches; relative to the corner.
    fn squares(&self, low: DVec2, high: DVec2) -> ((usize, usize), (usize, usize)) {
        let place = |v: f64, n: usize| ((v / self.cell).max(0.0) as usize).min(n - 1);
        (
            (place(low.x - SLACK, self.cols), place(high.x + SLACK, self.cols)),
            (place(low.y - SLACK, self.rows), place(high.y + SLACK, self.rows)),
        )
    }
}

/// True unless an edge of the triangle (counterclockwise) has the whole square beyond it.
fn touches(triangle: [DVec2; 3], low: DVec2, cell: f64) -> bool {
    let half = DVec2::splat(cell / 2.0);
    let [a, b, c] = triangle;
    [(a, b), (b, c), (c, a)].into_iter().all(|(from, to)| {
        let along = to - from;
        let inward = DVec2::new(-along.y, along.x);
        let reach = inward.abs().dot(half) + 2.0 * SLACK * along.length();
        inward.dot(low + half - from) >= -reach
    })
}
