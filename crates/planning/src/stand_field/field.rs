//! The answers of a stand field, cell by cell.

use super::Reason;
use evidence::{Status, Verdict};
use geometry::DVec2;

/// Square cells around a landing, in a disc. Rows run from south to north, cells in a row from west to east.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct FieldGrid {
    /// Middle of the disc, m: the landing.
    pub centre: DVec2,
    /// Side of a cell, m.
    pub cell: f64,
    /// Cells to either side of the middle one.
    pub half: usize,
}

impl FieldGrid {
    /// Cells a row, and rows.
    pub fn side(&self) -> usize {
        2 * self.half + 1
    }

    /// Middle of cell `i`, m.
    pub fn at(&self, i: usize) -> DVec2 {
        let side = self.side();
        let steps = |k: usize| k as f64 - self.half as f64;
        self.centre + DVec2::new(steps(i % side), steps(i / side)) * self.cell
    }

    /// True for a cell of the disc: its middle is no farther from the centre than the disc's radius.
    pub fn inside(&self, i: usize) -> bool {
        let side = self.side();
        let [x, y] = [i % side, i / side].map(|k| k.abs_diff(self.half));
        x * x + y * y <= self.half * self.half
    }

    /// The cell that holds a place; `None` outside the disc.
    pub fn cell_at(&self, at: DVec2) -> Option<usize> {
        let steps = (at - self.centre) / self.cell;
        let index = |s: f64| {
            let k = s.round() + self.half as f64;
            (k >= 0.0 && k < self.side() as f64).then_some(k as usize)
        };
        let i = index(steps.y)? * self.side() + index(steps.x)?;
        self.inside(i).then_some(i)
    }

    /// Number of cells in the disc.
    pub fn count(&self) -> usize {
        (0..self.side() * self.side()).filter(|i| self.inside(*i)).count()
    }
}

/// What a stand in the middle of a cell gives.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct FieldCell {
    /// Worst status of the checks that go with the stand; `None`: not yet known.
    pub placed: Option<Status>,
    /// What refuses it first, where that goes with the stand.
    pub by: Option<Reason>,
}

impl FieldCell {
    /// Nobody has asked yet.
    pub const NOT_YET: Self = Self { placed: None, by: None };

    pub(super) fn refused(by: Reason, status: Status) -> Self {
        Self { placed: Some(status), by: Some(by) }
    }
}

/// What a machine finds around a landing.
#[derive(Debug, Clone, PartialEq)]
pub struct StandField {
    /// Where the cells lie.
    pub grid: FieldGrid,
    /// What no stand can mend, or makes any stand a condition: checks by the id of their findings, worst first.
    pub everywhere: Vec<(&'static str, Status)>,
    /// True if the landing states from which direction it takes loads; else any is tried.
    pub directed: bool,
    cells: Vec<FieldCell>,
}

impl StandField {
    pub(super) fn empty(grid: FieldGrid, everywhere: Vec<(&'static str, Status)>, directed: bool) -> Self {
        let cells = vec![FieldCell::NOT_YET; grid.side() * grid.side()];
        Self { grid, everywhere, directed, cells }
    }

    /// Notes answers.
    pub fn fill(&mut self, answers: impl IntoIterator<Item = (usize, FieldCell)>) {
        for (i, answer) in answers {
            if let Some(cell) = self.cells.get_mut(i) {
                *cell = answer;
            }
        }
    }

    /// What a stand in cell `i` gives, as far as it goes with the stand; [`FieldCell::NOT_YET`] outside the disc.
    pub fn cell(&self, i: usize) -> FieldCell {
        self.cells.get(i).copied().unwrap_or(FieldCell::NOT_YET)
    }

    /// Worst status of what no stand can mend.
    pub fn floor(&self) -> Status {
        self.everywhere.iter().map(|(_, s)| *s).max().unwrap_or(Status::Go)
    }

    /// The verdict of the single check with the machine in the middle of cell `i`; `None`: not yet known.
    pub fn verdict(&self, i: usize) -> Option<Verdict> {
        self.cell(i).placed.map(|placed| placed.max(self.floor()).into())
    }

    /// What refuses a stand there first; `None` where nothing does, or it is not yet known.
    pub fn reason(&self, i: usize) -> Option<Reason> {
        let cell = self.cell(i);
        cell.by.or_else(|| (cell.placed.is_some() && self.floor() > Status::Condition).then_some(Reason::Everywhere))
    }

    /// Every cell of the disc with its answer.
    pub fn cells(&self) -> impl Iterator<Item = (usize, FieldCell)> {
        (0..self.cells.len()).filter(|i| self.grid.inside(*i)).map(|i| (i, self.cells[i]))
    }

    /// Cells of the disc that nobody has asked for yet.
    pub fn not_yet(&self) -> usize {
        self.cells().filter(|(_, c)| c.placed.is_none()).count()
    }

    /// Area refused by each reason that goes with the stand, m², the greatest first.
    pub fn why_not(&self) -> Vec<(Reason, f64)> {
        let area = self.grid.cell * self.grid.cell;
        let mut out: Vec<(Reason, f64)> = Vec::new();
        for (_, cell) in self.cells() {
            if let Some(by) = cell.by {
                match out.iter_mut().find(|(r, _)| *r == by) {
                    Some((_, sum)) => *sum += area,
                    None => out.push((by, area)),
                }
            }
        }
        out.sort_by(|a, b| b.1.total_cmp(&a.1).then(a.0.cmp(&b.0)));
        out
    }

    /// Area whose placed checks refuse nothing, m².
    pub fn passing_area(&self) -> f64 {
        let passes = |c: &FieldCell| c.placed.is_some_and(|s| s <= Status::Condition);
        self.cells().filter(|(_, c)| passes(c)).count() as f64 * self.grid.cell * self.grid.cell
    }
}
