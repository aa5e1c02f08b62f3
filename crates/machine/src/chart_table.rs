//! Charts printed as a table: by boom angle and extension, or by reach and height.
//!
//! A table gives capacities at places; between them nothing is interpolated: in a cell the lowest
//! entry at its corners counts, a cell with a missing corner is declared not permitted, and outside the
//! first and last row and column there is nothing. Neighbouring cells of one capacity are joined to
//! rectangles of the table. All zones share their corners exactly, so that no slivers lie between.

use crate::Zone;
use geometry::DVec2;
use quantity::kilograms;

/// Arcs of one extension are drawn as straight pieces no farther off than this, m.
const ARC_ERROR: f64 = 0.005;

/// A row or column: where it stands, and what is printed beside it.
#[derive(Debug, Clone, PartialEq)]
pub struct TableLine {
    /// Angle (rad) or length (m). Lines rise.
    pub at: f64,
    /// As printed.
    pub label: String,
}

/// A table of capacities.
#[derive(Debug, Clone, PartialEq)]
pub struct ChartTable {
    /// Boom angles, or heights; rising.
    pub rows: Vec<TableLine>,
    /// Extensions, or reaches; rising.
    pub columns: Vec<TableLine>,
    /// Capacity at row and column, kg; `None`: not permitted.
    pub capacity_kg: Vec<Vec<Option<f64>>>,
    /// What its lines are.
    pub axes: TableAxes,
}

/// What rows and columns of a table are.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum TableAxes {
    /// Rows are heights, columns reaches, by the chart's datum.
    HeightReach,
    /// Rows are boom angles above the machine's own horizontal, columns extensions from 0, retracted.
    AngleExtension(Sector),
}

/// Where the chart's point lies for a boom angle and extension, forks level:
/// `centre + (along + e)·(cos θ, sin θ) + below·(sin θ, −cos θ)`, in (reach, height).
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Sector {
    /// The chart's point with the head pin in the boom's foot, m.
    pub centre: DVec2,
    /// Head pin along the boom line, retracted, m.
    pub along: f64,
    /// Head pin below the boom line, m.
    pub below: f64,
}

impl Sector {
    /// The sector of a machine's chart that measures by `datum`.
    pub fn new(
        machine: &crate::Machine,
        attachment: &crate::Attachment,
        datum: &crate::Datum,
        load_centre: f64,
        load_centre_height: Option<f64>,
    ) -> Self {
        let (boom, tool) = (&machine.boom, attachment.tool_point());
        let measured = datum.measured(load_centre, load_centre_height, attachment, 0.0);
        let start = datum.start(machine);
        let at_foot = boom.foot + tool;
        let centre = DVec2::new(at_foot.x + measured.reach.x - start.x, at_foot.y + measured.height.y);
        Self { centre, along: boom.head_along, below: boom.head_below }
    }

    /// (reach, height) for an angle (rad) and extension, m.
    pub fn at(&self, angle: f64, extension: f64) -> DVec2 {
        let (s, c) = libm::sincos(angle);
        self.centre + DVec2::new(c, s) * (self.along + extension) + DVec2::new(s, -c) * self.below
    }

    fn radius(&self, extension: f64) -> f64 {
        libm::hypot(self.along + extension, self.below)
    }
}

/// A zone made from a table, with the place of its lowest entry: (row, column).
#[derive(Debug, Clone, PartialEq)]
pub struct TableZone {
    /// The zone; its name has the labels of its rows and columns.
    pub zone: Zone,
    /// Row and column of the entry that gave its capacity.
    pub entry: (usize, usize),
}

/// The zones of a table; empty where rows or columns do not fit its entries.
pub fn table_zones(table: &ChartTable) -> Vec<TableZone> {
    cells(table).map_or_else(Vec::new, |cells| cells.joined().iter().filter_map(|b| cells.zone(b)).collect())
}

/// What a table leaves empty, as outlines of areas that are not permitted: the cells with a missing
/// corner. They share their corners with the zones of [`table_zones`].
pub fn table_areas(table: &ChartTable) -> Vec<Vec<DVec2>> {
    let Some(cells) = cells(table) else { return Vec::new() };
    cells.joined().iter().filter(|b| b.least.is_none()).map(|b| cells.outline(b)).collect()
}

fn cells(table: &ChartTable) -> Option<Cells<'_>> {
    let fits = table.capacity_kg.len() == table.rows.len()
        && table.capacity_kg.iter().all(|row| row.len() == table.columns.len());
    if !fits || table.rows.len() < 2 || table.columns.len() < 2 {
        return None;
    }
    Some(Cells { table, least: least_at_corners(table) })
}

/// Lowest entry at the corners of a cell, kg, and where it stands: (row, column).
type Least = Option<(f64, (usize, usize))>;

fn least_at_corners(table: &ChartTable) -> Vec<Vec<Least>> {
    let cell = |r: usize, c: usize| {
        let corners = [(r, c), (r, c + 1), (r + 1, c), (r + 1, c + 1)];
        let mut least: Least = None;
        for (i, k) in corners {
            let entry = table.capacity_kg[i][k]?;
            if least.is_none_or(|(kg, _)| entry < kg) {
                least = Some((entry, (i, k)));
            }
        }
        least
    };
    (0..table.rows.len() - 1).map(|r| (0..table.columns.len() - 1).map(|c| cell(r, c)).collect()).collect()
}

struct Cells<'t> {
    table: &'t ChartTable,
    least: Vec<Vec<Least>>,
}

/// Cells of one capacity, or of none: rows and columns from (line) to (line).
struct Block {
    rows: (usize, usize),
    columns: (usize, usize),
    least: Least,
}

impl Block {
    fn kg(&self) -> Option<f64> {
        self.least.map(|(kg, _)| kg)
    }
}

impl Cells<'_> {
    fn kg(&self, row: usize, column: usize) -> Option<f64> {
        self.least.get(row)?.get(column)?.map(|(kg, _)| kg)
    }

    /// Runs of one capacity in each row of cells, joined with equal runs of the row before.
    fn joined(&self) -> Vec<Block> {
        let mut done = Vec::new();
        let mut open: Vec<Block> = Vec::new();
        for (r, row) in self.least.iter().enumerate() {
            let mut runs: Vec<Block> = Vec::new();
            for (c, cell) in row.iter().enumerate() {
                match runs.last_mut() {
                    Some(run) if run.kg() == cell.map(|(kg, _)| kg) => run.columns.1 = c + 1,
                    _ => runs.push(Block { rows: (r, r + 1), columns: (c, c + 1), least: *cell }),
                }
            }
            for run in &mut runs {
                let same = |b: &Block| b.kg() == run.kg() && b.columns == run.columns && b.rows.1 == r;
                if let Some(at) = open.iter().position(same) {
                    let before = open.remove(at);
                    (run.rows.0, run.least) = (before.rows.0, before.least);
                }
            }
            done.append(&mut open);
            open = runs;
        }
        done.append(&mut open);
        done
    }

    /// `None` for cells without capacity.
    fn zone(&self, block: &Block) -> Option<TableZone> {
        let (kg, entry) = block.least?;
        let ((r0, r1), (c0, c1)) = (block.rows, block.columns);
        let (rows, columns) = (&self.table.rows, &self.table.columns);
        let name = format!("{}–{} / {}–{}", rows[r0].label, rows[r1].label, columns[c0].label, columns[c1].label);
        Some(TableZone { zone: Zone { name, capacity: kilograms(kg), outline: self.outline(block) }, entry })
    }

    fn outline(&self, block: &Block) -> Vec<DVec2> {
        let ((r0, r1), (c0, c1)) = (block.rows, block.columns);
        let mut outline = Vec::new();
        // Along the lower row outward, up the outer column, along the upper row inward, down.
        outline.extend((c0..c1).map(|c| self.node(r0, c)));
        for r in r0..r1 {
            outline.push(self.node(r, c1));
            outline.extend(self.between(r, c1));
        }
        outline.extend((c0 + 1..=c1).rev().map(|c| self.node(r1, c)));
        for r in (r0..r1).rev() {
            outline.push(self.node(r + 1, c0));
            outline.extend(self.between(r, c0).into_iter().rev());
        }
        outline
    }

    fn node(&self, row: usize, column: usize) -> DVec2 {
        let (r, c) = (self.table.rows[row].at, self.table.columns[column].at);
        match self.table.axes {
            TableAxes::HeightReach => DVec2::new(c, r),
            TableAxes::AngleExtension(sector) => sector.at(r, c),
        }
    }

    /// Corners between two rows on the line of a column. On an arc the straight pieces lie on the side
    /// that leaves the strip to the neighbour with less.
    fn between(&self, row: usize, column: usize) -> Vec<DVec2> {
        let TableAxes::AngleExtension(sector) = self.table.axes else { return Vec::new() };
        let (from, to) = (self.table.rows[row].at, self.table.rows[row + 1].at);
        let extension = self.table.columns[column].at;
        let radius = sector.radius(extension).max(ARC_ERROR);
        let half = libm::acos(1.0 - (ARC_ERROR / radius).min(0.5));
        let pieces = ((to - from) / (2.0 * half)).ceil().max(1.0);
        let step = (to - from) / pieces;
        let nearer = if column == 0 { None } else { self.kg(row, column - 1) };
        let farther = self.kg(row, column);
        let count = pieces as usize;
        if farther.unwrap_or(-1.0) <= nearer.unwrap_or(-1.0) {
            // Chords, inside the arc.
            (1..count).map(|i| sector.at(from + step * i as f64, extension)).collect()
        } else {
            // Tangents, outside the arc, from the corner and back to it.
            let out = 1.0 / libm::cos(step / 2.0);
            let corner = |i: usize| {
                let on_arc = sector.at(from + step * (i as f64 + 0.5), extension);
                sector.centre + (on_arc - sector.centre) * out
            };
            (0..count).map(corner).collect()
        }
    }
}
