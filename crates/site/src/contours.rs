//! Lines of equal height by marching squares.
//!
//! Each square of four cell centres is cut where the height between two neighbours, taken as
//! linear, passes the level (the method is common knowledge; Lorensen and Cline 1987 have it in
//! space). A square with an unknown corner is a hole: lines end at it. Where two opposite corners
//! are above and two below, the mean of the four decides which pair is joined. Every piece runs with
//! the higher ground on its left, so that an edge begins one piece at most and ends one at most.

use crate::Grid;
use geometry::DVec2;

/// All lines of one level.
#[derive(Debug, Clone, PartialEq)]
pub struct Contour {
    /// The level, m.
    pub level: f64,
    /// Its lines.
    pub lines: Vec<ContourLine>,
}

/// One line. The higher ground lies on its left.
#[derive(Debug, Clone, PartialEq)]
pub struct ContourLine {
    /// Points in order, m; of a closed line the first is not repeated.
    pub points: Vec<DVec2>,
    /// True if the last point joins the first.
    pub closed: bool,
}

impl ContourLine {
    /// Length in plan, m.
    pub fn length(&self) -> f64 {
        let open: f64 = self.points.windows(2).map(|w| w[0].distance(w[1])).sum();
        match (self.closed, self.points.first(), self.points.last()) {
            (true, Some(first), Some(last)) => open + last.distance(*first),
            _ => open,
        }
    }
}

/// Multiples of `step` from `low` to `high`, at most `most` of them (then the lowest); none where a
/// number is not finite or the step not positive.
pub fn round_levels(low: f64, high: f64, step: f64, most: usize) -> Vec<f64> {
    if !(low.is_finite() && high.is_finite() && step.is_finite() && step > 0.0) {
        return Vec::new();
    }
    let first = (low / step).ceil();
    (0..most).map(|i| (first + i as f64) * step).take_while(|level| *level <= high).collect()
}

/// Lines of equal height at each of `levels`, m; levels that are not finite are left out, the rest
/// come back rising. A cell exactly at a level counts as above it.
///
/// Memory grows with the crossings: at most two pieces a square and level. Levels beyond 65,000 are
/// left out.
pub fn contours(grid: &Grid, levels: &[f64]) -> Vec<Contour> {
    let mut levels: Vec<f64> = levels.iter().copied().filter(|level| level.is_finite()).collect();
    levels.sort_by(f64::total_cmp);
    levels.dedup();
    levels.truncate(usize::from(HOLE) - 1);
    let pieces = pieces(grid, &levels);
    // Which piece begins at an edge. Written anew for each level and never cleared: an entry of an
    // earlier level names a piece that does not begin there, and is known by that.
    let mut begins = vec![0_u32; 2 * grid.heights.len()];
    levels
        .iter()
        .zip(&pieces)
        .map(|(level, pieces)| Contour { level: *level, lines: joined(grid, *level, pieces, &mut begins) })
        .collect()
}

/// Class of a cell whose height is not known.
const HOLE: u16 = u16::MAX;

/// A piece of a line from one edge to another. An edge is `2·cell` for the one to the cell's east,
/// `2·cell + 1` for the one to its south.
type Piece = (usize, usize);

/// For each cell the number of levels at or below its height.
fn classes(grid: &Grid, levels: &[f64]) -> Vec<u16> {
    let mut class = 0_usize;
    let of = |z: &f32| {
        if !z.is_finite() {
            return HOLE;
        }
        let z = f64::from(*z);
        // Neighbours are alike: walking from the last class is shorter than searching.
        while class < levels.len() && levels[class] <= z {
            class += 1;
        }
        while class > 0 && levels[class - 1] > z {
            class -= 1;
        }
        class as u16
    };
    grid.heights.iter().map(of).collect()
}

fn pieces(grid: &Grid, levels: &[f64]) -> Vec<Vec<Piece>> {
    let mut out = vec![Vec::new(); levels.len()];
    if grid.rows < 2 || grid.cols < 2 {
        return out;
    }
    let classes = classes(grid, levels);
    let cols = grid.cols;
    for row in 0..grid.rows - 1 {
        let north = &classes[row * cols..(row + 1) * cols];
        let south = &classes[(row + 1) * cols..(row + 2) * cols];
        for col in 0..cols - 1 {
            let corners = [north[col], north[col + 1], south[col + 1], south[col]];
            let low = corners[0].min(corners[1]).min(corners[2]).min(corners[3]);
            let high = corners[0].max(corners[1]).max(corners[2]).max(corners[3]);
            if low == high || high == HOLE {
                continue;
            }
            let cell = row * cols + col;
            for level in low..high {
                let case = (0..4).fold(0_u8, |case, i| case | (u8::from(corners[i] > level) << i));
                let level = usize::from(level);
                let joined = matches!(case, 5 | 10) && mean(grid, cell) >= levels[level];
                for (from, to) in ways(case, joined).into_iter().flatten() {
                    out[level].push((edge(cell, cols, from), edge(cell, cols, to)));
                }
            }
        }
    }
    out
}

/// Mean of a square's corners, m.
fn mean(grid: &Grid, cell: usize) -> f64 {
    let z = |i: usize| f64::from(grid.heights[i]);
    0.25 * (z(cell) + z(cell + 1) + z(cell + grid.cols) + z(cell + grid.cols + 1))
}

#[derive(Clone, Copy)]
enum Side {
    North,
    East,
    South,
    West,
}

/// The pieces in a square by which corners are above (1 north-west, 2 north-east, 4 south-east,
/// 8 south-west), higher ground on the left.
fn ways(case: u8, joined: bool) -> [Option<(Side, Side)>; 2] {
    use Side::{East, North, South, West};
    let one = |from, to| [Some((from, to)), None];
    let two = |a, b| [Some(a), Some(b)];
    match (case, joined) {
        (1, _) => one(West, North),
        (2, _) => one(North, East),
        (3, _) => one(West, East),
        (4, _) => one(East, South),
        (6, _) => one(North, South),
        (7, _) => one(West, South),
        (8, _) => one(South, West),
        (9, _) => one(South, North),
        (11, _) => one(South, East),
        (12, _) => one(East, West),
        (13, _) => one(East, North),
        (14, _) => one(North, West),
        (5, true) => two((East, North), (West, South)),
        (5, false) => two((West, North), (East, South)),
        (10, true) => two((North, West), (South, East)),
        (10, false) => two((North, East), (South, West)),
        _ => [None, None],
    }
}

fn edge(cell: usize, cols: usize, side: Side) -> usize {
    match side {
        Side::North => 2 * cell,
        Side::South => 2 * (cell + cols),
        Side::West => 2 * cell + 1,
        Side::East => 2 * (cell + 1) + 1,
    }
}

/// Where the level passes an edge, m.
fn crossing(grid: &Grid, level: f64, edge: usize) -> DVec2 {
    let cell = edge / 2;
    let (row, col) = ((cell / grid.cols) as f64, (cell % grid.cols) as f64);
    let to_south = edge % 2 == 1;
    let a = f64::from(grid.heights[cell]);
    let b = f64::from(grid.heights[if to_south { cell + grid.cols } else { cell + 1 }]);
    let t = ((level - a) / (b - a)).clamp(0.0, 1.0);
    let (row, col) = if to_south { (row + t, col) } else { (row, col + t) };
    DVec2::new(grid.north_west.x + col * grid.cell.x, grid.north_west.y - row * grid.cell.y)
}

/// Pieces of one level joined to lines: the open ones from their beginning, then the closed ones.
fn joined(grid: &Grid, level: f64, pieces: &[Piece], begins: &mut [u32]) -> Vec<ContourLine> {
    for (i, piece) in pieces.iter().enumerate() {
        begins[piece.0] = i as u32;
    }
    let next = |piece: &Piece| {
        let at = begins[piece.1] as usize;
        pieces.get(at).is_some_and(|other| other.0 == piece.1).then_some(at)
    };
    let mut follows = vec![false; pieces.len()];
    for at in pieces.iter().filter_map(next) {
        follows[at] = true;
    }
    let mut used = vec![false; pieces.len()];
    let mut lines = Vec::new();
    let opens = (0..pieces.len()).filter(|i| !follows[*i]);
    for first in opens.chain(0..pieces.len()) {
        if used[first] {
            continue;
        }
        let closed = follows[first];
        let mut points = vec![crossing(grid, level, pieces[first].0)];
        let mut at = Some(first);
        while let Some(i) = at.filter(|i| !used[*i]) {
            used[i] = true;
            points.push(crossing(grid, level, pieces[i].1));
            at = next(&pieces[i]);
        }
        // Where a line runs through a cell centre, two edges give one point.
        points.dedup();
        if closed && points.len() > 1 && points.first() == points.last() {
            points.pop();
        }
        if points.len() > 1 {
            lines.push(ContourLine { points, closed });
        }
    }
    lines
}
