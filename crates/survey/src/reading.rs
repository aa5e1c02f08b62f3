//! What came out of a survey file.

use crate::{FileKind, LengthUnit};
use evidence::Faults;
use serde::Serialize;
use std::collections::BTreeMap;

/// A ground surface with what is known of its file.
#[derive(Debug, Clone)]
pub struct GroundReading {
    /// The surface, m.
    pub terrain: site::Terrain,
    /// What was found.
    pub facts: Facts,
    /// Warnings; none of them an error.
    pub notes: Faults,
}

/// What was found in a file, to be shown beside the surface.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Facts {
    /// Kind of file.
    pub kind: FileKind,
    /// Points, rows or cells read.
    pub points: u64,
    /// Of these, with a ground height (class 2 for clouds), before any window.
    pub ground_points: u64,
    /// Smallest corner (east, north, height) of all points, m; grids: cell edges.
    pub min: [f64; 3],
    /// Largest corner, m.
    pub max: [f64; 3],
    /// Units and where they come from.
    pub units: UnitFacts,
    /// Coordinate system as the file or the job names it.
    pub crs: Option<String>,
    /// Cells without a height (grids).
    pub unknown_cells: u64,
    /// Cell size east and north, m (grids).
    pub cell: Option<[f64; 2]>,
    /// Points per class (clouds).
    pub classes: BTreeMap<u8, u64>,
    /// Points marked as withheld, never used (clouds).
    pub withheld: u64,
}

/// The units that were used.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
pub struct UnitFacts {
    /// Unit of eastings and northings in the file.
    pub horizontal: LengthUnit,
    /// Who says so.
    pub horizontal_source: UnitSource,
    /// Unit of heights in the file.
    pub vertical: LengthUnit,
    /// Who says so.
    pub vertical_source: UnitSource,
}

/// Who names a unit.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum UnitSource {
    /// The job.
    Stated,
    /// The file.
    File,
    /// Nobody: heights taken in the horizontal unit.
    AsHorizontal,
    /// Degrees in the file, projected to metres.
    Projected,
}
