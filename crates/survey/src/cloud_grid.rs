//! Ground of clouds as a grid, in one pass over the points: memory is the grid and one block.

use crate::cloud::{self, GroundTally};
use crate::cloud_header::count;
use crate::cloud_raster::{MOST_CELLS, RasterPlan};
use crate::cloud_stream::{open_all, visit_all};
use crate::crs::is_plausible;
use crate::doubtful_ground::{self, Column, Doubtful};
use crate::ground_pick::GroundPick;
use crate::notes::{Notes, Refused};
use crate::options::GroundOptions;
use crate::reading::Facts;
use crate::text;
use crate::tiles::joined;
use evidence::Faults;
use geometry::DVec2;
use site::Grid;

/// A ground grid made of clouds.
#[derive(Debug, Clone)]
pub struct CloudGrid {
    /// Mean height of the ground points of each cell; NaN where there is none. Nothing is filled
    /// in. Rows × cols, row-major from the north-west.
    pub grid: Grid,
    /// What each cell is made of, in the same order.
    pub cells: Vec<GroundCell>,
    /// What was found. `cell` and `unknown_cells` are those of the grid.
    pub facts: Facts,
    /// Warnings; none of them an error.
    pub notes: Faults,
}

/// The ground points of a cell.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct GroundCell {
    sum: f64,
    /// Number of ground points.
    pub points: u32,
    /// Lowest of them, m; infinite without points.
    pub lowest: f32,
    /// Highest of them, m; minus infinite without points.
    pub highest: f32,
}

impl GroundCell {
    const EMPTY: Self = Self { sum: 0.0, points: 0, lowest: f32::INFINITY, highest: f32::NEG_INFINITY };

    /// Mean height, m; `None` without points.
    pub fn mean(&self) -> Option<f64> {
        (self.points > 0).then(|| self.sum / f64::from(self.points))
    }

    /// Highest less lowest, m; `None` without points. On a slope this is the fall within the cell;
    /// a step, a kerb or a shrub taken for ground shows in it.
    pub fn spread(&self) -> Option<f64> {
        (self.points > 0).then(|| f64::from(self.highest) - f64::from(self.lowest))
    }

    #[inline]
    fn add(&mut self, z: f64) {
        self.sum += z;
        self.points += 1;
        self.lowest = self.lowest.min(z as f32);
        self.highest = self.highest.max(z as f32);
    }
}

/// Grids the ground points of one or several clouds: cells of `cell` × `cell` m with edges at
/// multiples of the cell size, over all points or over what of the window they cover.
///
/// Ground is class 2, or what the filter of the options finds. Doubtful patches that stand up by
/// cliffs all around become holes, as in [`crate::read_ground`]. No point is stored: 24 bytes a
/// cell, at most 20 million cells.
///
/// # Errors
/// Every fault of every tile; a cell size that cannot be; too many cells; no ground.
pub fn grid_cloud(tiles: &[(&str, &[u8])], options: &GroundOptions, cell: f64) -> Result<CloudGrid, Faults> {
    let pick = GroundPick::of(tiles, options)?;
    let (opened, mut faults) = open_all(tiles, options)?;
    let first = tiles.first().map_or("", |t| t.0);
    let mut notes = Notes::new(first);
    let result = RasterPlan::of(&opened, options.window, cell, MOST_CELLS, &mut notes);
    let (plan, _) = notes.finish(result)?;
    // Without a cell in the window the points are still read, for the extent that is reported.
    let mut cells = vec![GroundCell::EMPTY; plan.map_or(0, |p| p.cells())];
    let mut tallies = vec![GroundTally::default(); opened.len()];
    let (mut low, mut high) = (DVec2::INFINITY, DVec2::NEG_INFINITY);
    let window = options.window;
    // Nearly every point is the first in its cell, so that each waits for memory once: put down in a
    // loop of its own, many of them wait together.
    let mut waiting: Vec<(u32, f64)> = Vec::with_capacity(PUT_DOWN);
    let seen = visit_all(&opened, &mut faults, |tile, frame, sample| {
        let Some(at) = pick.ground(frame, sample) else { return };
        let tally = &mut tallies[tile];
        tally.ground += 1;
        if !is_plausible(at.z) {
            tally.implausible += 1;
        } else if !at.is_finite() {
            tally.without_place += 1;
        } else if window.is_none_or(|w| w.contains(at.truncate()))
            && let Some(i) = plan.and_then(|p| p.index(at.truncate()))
        {
            tally.kept += 1;
            (low, high) = (low.min(at.truncate()), high.max(at.truncate()));
            if waiting.len() == PUT_DOWN {
                put_down(&mut waiting, &mut cells);
            }
            waiting.push((i as u32, at.z));
        }
    })?;
    put_down(&mut waiting, &mut cells);
    let mut together: Option<Facts> = None;
    for ((tile, seen), tally) in opened.iter().zip(&seen).zip(&tallies) {
        let facts = tile.facts(seen, tally.ground);
        together = Some(match together {
            None => facts,
            Some(sum) => joined(sum, &facts),
        });
    }
    let mut notes = Notes::new(first);
    let result = finish(plan, together, cells, &tallies, &pick, (low, high), &mut notes);
    let ((grid, cells, facts), more) = notes.finish(result)?;
    faults.append(more);
    Ok(CloudGrid { grid, cells, facts, notes: faults })
}

/// Points that are put into their cells together.
const PUT_DOWN: usize = 4096;

/// Adds heights to their cells, in the order in which they came. A raster has fewer cells than an
/// index counts ([`MOST_CELLS`]).
fn put_down(waiting: &mut Vec<(u32, f64)>, cells: &mut [GroundCell]) {
    for &(i, z) in &*waiting {
        cells[i as usize].add(z);
    }
    waiting.clear();
}

fn finish(
    plan: Option<RasterPlan>,
    facts: Option<Facts>,
    mut cells: Vec<GroundCell>,
    tallies: &[GroundTally],
    pick: &GroundPick,
    (low, high): (DVec2, DVec2),
    notes: &mut Notes<'_>,
) -> Result<(Grid, Vec<GroundCell>, Facts), Refused> {
    let Some(mut facts) = facts else {
        return Err(notes.refuse("survey::no-points", text::NO_POINTS, text::DO_GIVE_KNOWN_KIND));
    };
    let sum = tallies.iter().fold(GroundTally::default(), |a, b| GroundTally {
        ground: a.ground + b.ground,
        implausible: a.implausible + b.implausible,
        without_place: a.without_place + b.without_place,
        kept: a.kept + b.kept,
    });
    sum.check(&facts, notes)?;
    pick.warn(&facts, notes);
    let Some(plan) = plan.filter(|_| sum.kept > 0) else {
        return Err(cloud::refuse_window(&facts, notes));
    };
    cloud::warn_thin_area(sum.kept as f64, high - low, notes);
    let doubtful = doubtful_cells(&plan, &cells);
    doubtful.warn(notes);
    for (i, cell) in cells.iter_mut().enumerate() {
        if cell.points > 0 && !doubtful.is_empty() {
            let at = plan.centre(i / plan.cols, i % plan.cols);
            if doubtful.holds(at, f64::from(cell.highest)) || doubtful.holds(at, f64::from(cell.lowest)) {
                *cell = GroundCell::EMPTY;
            }
        }
    }
    let heights = cells.iter().map(|c| c.mean().map_or(f32::NAN, |z| z as f32)).collect();
    facts.unknown_cells = count(cells.iter().filter(|c| c.points == 0).count() as u64).unsigned_abs();
    facts.cell = Some([plan.cell; 2]);
    let grid = Grid {
        north_west: plan.centre(0, 0),
        cell: DVec2::splat(plan.cell),
        rows: plan.rows,
        cols: plan.cols,
        heights,
    };
    Ok((grid, cells, facts))
}

/// The doubtful ground of a grid: its cells gathered to columns of about a metre.
fn doubtful_cells(plan: &RasterPlan, cells: &[GroundCell]) -> Doubtful {
    let gather = (doubtful_ground::COLUMN / plan.cell).ceil().max(1.0) as usize;
    let mut columns: Vec<Column> = Vec::new();
    let mut line = vec![GroundCell::EMPTY; plan.cols.div_ceil(gather)];
    for (number, rows) in cells.chunks(plan.cols * gather).enumerate() {
        line.fill(GroundCell::EMPTY);
        for (i, cell) in rows.iter().enumerate().filter(|(_, c)| c.points > 0) {
            let sum = &mut line[i % plan.cols / gather];
            sum.points = sum.points.saturating_add(cell.points);
            sum.lowest = sum.lowest.min(cell.lowest);
            sum.highest = sum.highest.max(cell.highest);
        }
        columns.extend(line.iter().enumerate().filter(|(_, c)| c.points > 0).map(|(col, c)| Column {
            row: count(number as u64),
            col: count(col as u64),
            points: c.points,
            low: f64::from(c.lowest),
            high: f64::from(c.highest),
        }));
    }
    Doubtful::find(columns, plan.corner, plan.cell * gather as f64)
}
