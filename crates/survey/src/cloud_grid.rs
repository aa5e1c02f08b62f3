//! Ground of clouds as a grid, in one pass over the points: memory is the grid and one block.

use crate::cloud::{self, GroundTally};
use crate::cloud_cells::{GroundCell, GroundCells};
use crate::cloud_header::count;
use crate::cloud_raster::{MOST_CELLS, RasterPlan};
use crate::cloud_stream::{open_all, visit_all};
use crate::crs::is_plausible;
use crate::doubtful_ground::{self, Column, Doubtful};
use crate::ground_pick::GroundPick;
use crate::notes::{Notes, Refused};
use crate::options::{GroundOptions, Window};
use crate::reading::Facts;
use crate::text;
use crate::tiles::joined;
use evidence::Faults;
use geometry::{DVec2, DVec3};
use site::Grid;

/// A ground grid made of clouds.
#[derive(Debug, Clone)]
pub struct CloudGrid {
    /// Mean height of the ground points of each cell; NaN where there is none. Nothing is filled
    /// in. Rows × cols, row-major from the north-west.
    pub grid: Grid,
    /// What each cell is made of, in the same order.
    pub cells: GroundCells,
    /// What was found. `cell` and `unknown_cells` are those of the grid.
    pub facts: Facts,
    /// Warnings; none of them an error.
    pub notes: Faults,
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
    let mut gathered = Gathered {
        plan,
        window: options.window,
        cells: GroundCells::empty(plan.map_or(0, |p| p.cells())),
        low: DVec2::INFINITY,
        high: DVec2::NEG_INFINITY,
    };
    let mut tallies = vec![GroundTally::default(); opened.len()];
    let by_class = matches!(pick, GroundPick::Class);
    let seen = visit_all(&opened, &mut faults, |tile, frame, sample| {
        if by_class && frame.is_plain() {
            // The usual case, without the branches that the others need.
            if GroundPick::is_ground_class(sample) {
                let DVec3 { x, y, z } = frame.of_file(sample.stored);
                gathered.add(&mut tallies[tile], x, y, z);
            }
        } else if let Some(at) = pick.ground(frame, sample) {
            gathered.add(&mut tallies[tile], at.x, at.y, at.z);
        }
    })?;
    let mut together: Option<Facts> = None;
    for ((tile, seen), tally) in opened.iter().zip(&seen).zip(&tallies) {
        let facts = tile.facts(seen, tally.ground);
        together = Some(match together {
            None => facts,
            Some(sum) => joined(sum, &facts),
        });
    }
    let mut notes = Notes::new(first);
    let result = finish(gathered, together, &tallies, &pick, &mut notes);
    let ((grid, cells, facts), more) = notes.finish(result)?;
    faults.append(more);
    Ok(CloudGrid { grid, cells, facts, notes: faults })
}

/// What the ground points that go by leave behind.
struct Gathered {
    plan: Option<RasterPlan>,
    window: Option<Window>,
    cells: GroundCells,
    /// Corners of the points that were kept.
    low: DVec2,
    high: DVec2,
}

impl Gathered {
    /// A ground point, m; as three numbers, which stay in registers where a vector would not.
    #[inline]
    fn add(&mut self, tally: &mut GroundTally, x: f64, y: f64, z: f64) {
        let at = DVec2::new(x, y);
        tally.ground += 1;
        if !is_plausible(z) {
            tally.implausible += 1;
        } else if !at.is_finite() {
            tally.without_place += 1;
        } else if self.window.is_none_or(|w| w.contains(at))
            && let Some(i) = self.plan.and_then(|p| p.index(at))
        {
            tally.kept += 1;
            // Not `min` and `max`, which also look whether something is no number.
            self.low.x = if x < self.low.x { x } else { self.low.x };
            self.low.y = if y < self.low.y { y } else { self.low.y };
            self.high.x = if x > self.high.x { x } else { self.high.x };
            self.high.y = if y > self.high.y { y } else { self.high.y };
            self.cells.add(i, z);
        }
    }
}

fn finish(
    gathered: Gathered,
    facts: Option<Facts>,
    tallies: &[GroundTally],
    pick: &GroundPick,
    notes: &mut Notes<'_>,
) -> Result<(Grid, GroundCells, Facts), Refused> {
    let Gathered { plan, mut cells, low, high, .. } = gathered;
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
    let (mut heights, columns) = heights_and_columns(&plan, &cells);
    let doubtful = Doubtful::find(columns, plan.corner, plan.cell * cells_a_column(&plan) as f64);
    doubtful.warn(notes);
    if !doubtful.is_empty() {
        let held: Vec<usize> = (cells.iter().enumerate())
            .filter(|(i, cell)| {
                let at = plan.centre(i / plan.cols, i % plan.cols);
                cell.points > 0 && [cell.lowest, cell.highest].iter().any(|z| doubtful.holds(at, f64::from(*z)))
            })
            .map(|(i, _)| i)
            .collect();
        for i in held {
            cells.clear(i);
            heights[i] = f32::NAN;
        }
    }
    facts.unknown_cells = heights.iter().filter(|z| z.is_nan()).count() as u64;
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

/// Cells of one side of a column: a column is about a metre.
fn cells_a_column(plan: &RasterPlan) -> usize {
    (doubtful_ground::COLUMN / plan.cell).ceil().max(1.0) as usize
}

/// The mean heights (NaN: none), and the cells gathered to columns, in which doubtful ground is looked
/// for. Both at once: the cells of a large grid take long to come from memory.
fn heights_and_columns(plan: &RasterPlan, cells: &GroundCells) -> (Vec<f32>, Vec<Column>) {
    let gather = cells_a_column(plan);
    let mut heights = Vec::with_capacity(cells.len());
    let mut columns: Vec<Column> = Vec::new();
    let mut line = vec![GroundCell::EMPTY; plan.cols.div_ceil(gather)];
    for (row, cells) in cells.rows(plan.cols).enumerate() {
        // Counted along, without a division for every cell.
        let (mut column, mut left) = (0, gather);
        for cell in cells {
            heights.push(cell.mean().map_or(f32::NAN, |z| z as f32));
            if cell.points > 0 {
                line[column].gather(&cell);
            }
            left -= 1;
            if left == 0 {
                (column, left) = (column + 1, gather);
            }
        }
        if (row + 1) % gather == 0 || row + 1 == plan.rows {
            columns.extend(line.iter().enumerate().filter(|(_, c)| c.points > 0).map(|(col, c)| Column {
                row: count((row / gather) as u64),
                col: count(col as u64),
                points: c.points,
                low: f64::from(c.lowest),
                high: f64::from(c.highest),
            }));
            line.fill(GroundCell::EMPTY);
        }
    }
    (heights, columns)
}
