//! A stand field as a plan keeps it: for pictures, and for whoever reads the plan.

use super::{FieldCell, Reason, StandField};
use crate::text;
use evidence::{Status, TextId};
use serde::{Deserialize, Serialize};

/// The ground around a landing by what a stand there would give. Cells run in rows from south to north, in a row from west
/// to east.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, schemars::JsonSchema)]
pub struct FieldScene {
    /// Middle of the middle cell: the landing, east and north, m.
    pub centre: (f64, f64),
    /// Side of a cell, m.
    pub cell_m: f64,
    /// Cells a row, and rows.
    pub side: usize,
    /// True if the landing states from where it takes loads; else any side was tried.
    pub directed: bool,
    /// What the cells may be.
    pub kinds: Vec<FieldKind>,
    /// How many cells, one after the other, are of which kind: (index in `kinds`, how many).
    pub runs: Vec<(usize, usize)>,
    /// Checks, by the id of their findings, that refuse any stand.
    pub everywhere: Vec<String>,
}

/// What a cell may be.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize, schemars::JsonSchema)]
pub struct FieldKind {
    /// What a stand there would give.
    pub state: FieldState,
    /// What refuses it first.
    pub by: Option<Reason>,
    /// Area of all such cells, m².
    pub area_m2: f64,
}

/// What a stand would give, as far as that goes with the place.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, schemars::JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum FieldState {
    /// Farther from the landing than was looked.
    Outside,
    /// Not yet known: nobody has asked.
    NotYet,
    /// Go.
    Go,
    /// Go with conditions.
    Condition,
    /// An input is missing.
    CannotTell,
    /// No-go.
    NoGo,
}

impl FieldState {
    /// Its name for people.
    pub fn name(self) -> TextId {
        match self {
            Self::Outside => text::FIELD_OUTSIDE,
            Self::NotYet => text::FIELD_NOT_YET,
            Self::Go => text::FIELD_GO,
            Self::Condition => text::FIELD_CONDITION,
            Self::CannotTell => text::FIELD_CANNOT_TELL,
            Self::NoGo => text::FIELD_NO_GO,
        }
    }
}

fn state(cell: FieldCell) -> FieldState {
    match cell.placed {
        None => FieldState::NotYet,
        Some(Status::Go) => FieldState::Go,
        Some(Status::Condition) => FieldState::Condition,
        Some(Status::CannotTell) => FieldState::CannotTell,
        Some(Status::NoGo | Status::Stop) => FieldState::NoGo,
    }
}

impl From<&StandField> for FieldScene {
    fn from(field: &StandField) -> Self {
        let grid = field.grid;
        let area = grid.cell * grid.cell;
        let mut kinds: Vec<FieldKind> = Vec::new();
        let mut runs: Vec<(usize, usize)> = Vec::new();
        for i in 0..grid.side() * grid.side() {
            let inside = grid.inside(i);
            let cell = field.cell(i);
            let (state, by) = if inside { (state(cell), cell.by) } else { (FieldState::Outside, None) };
            let kind = kinds.iter().position(|k| k.state == state && k.by == by).unwrap_or_else(|| {
                kinds.push(FieldKind { state, by, area_m2: 0.0 });
                kinds.len() - 1
            });
            kinds[kind].area_m2 += area;
            match runs.last_mut() {
                Some((last, count)) if *last == kind => *count += 1,
                _ => runs.push((kind, 1)),
            }
        }
        let everywhere =
            field.everywhere.iter().filter(|(_, s)| *s > Status::Condition).map(|(id, _)| (*id).to_owned()).collect();
        Self {
            centre: (grid.centre.x, grid.centre.y),
            cell_m: grid.cell,
            side: grid.side(),
            directed: field.directed,
            kinds,
            runs,
            everywhere,
        }
    }
}

impl FieldScene {
    /// Area by state, m².
    pub fn area_m2(&self, state: FieldState) -> f64 {
        self.kinds.iter().filter(|k| k.state == state).map(|k| k.area_m2).sum()
    }

    /// The kinds that refuse, the greatest area first.
    pub fn refusing(&self) -> Vec<FieldKind> {
        let refuses = |k: &&FieldKind| matches!(k.state, FieldState::NoGo | FieldState::CannotTell);
        let mut out: Vec<FieldKind> = self.kinds.iter().filter(refuses).copied().collect();
        out.sort_by(|a, b| b.area_m2.total_cmp(&a.area_m2));
        out
    }

    /// Whole rows of cells of one kind: kind, row from the south, first column and how many columns.
    pub fn strips(&self) -> Vec<(usize, usize, usize, usize)> {
        let mut out = Vec::new();
        let mut at = 0;
        for &(kind, count) in &self.runs {
            let mut left = count;
            while left > 0 && self.side > 0 {
                let (row, column) = (at / self.side, at % self.side);
                let some = left.min(self.side - column);
                out.push((kind, row, column, some));
                at += some;
                left -= some;
            }
        }
        out
    }
}
