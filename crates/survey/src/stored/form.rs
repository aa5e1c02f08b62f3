//! The head of a stored site: plain numbers and words, so that the rooms inside are free to change.

use serde::{Deserialize, Serialize};
use std::collections::BTreeMap;

/// What was brought in from one file.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct SourceRecord {
    /// File name.
    pub file: String,
    /// Kind of file, as [`crate::FileKind`] is written.
    pub kind: String,
    /// What became of it.
    pub used: Used,
    /// Points, rows, cells or shapes in the file.
    pub count: u64,
    /// Smallest corner east, north (and lowest height, where it has heights), m.
    pub min: Vec<f64>,
    /// Largest corner.
    pub max: Vec<f64>,
    /// Unit of the file, where it has one.
    pub unit: Option<String>,
    /// Coordinate system as the file or the user names it.
    pub crs: Option<String>,
    /// What it holds, by class or layer.
    pub holds: BTreeMap<String, u64>,
    /// What was thrown away, by what it is.
    pub left_out: BTreeMap<String, u64>,
    /// Warnings, as codes with their sentences' ids and arguments.
    pub notes: Vec<evidence::Fault>,
    /// Day of the survey, as given.
    pub date: Option<String>,
    /// Height accuracy as given, m.
    pub accuracy: Option<f64>,
}

/// What became of a file.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Used {
    /// A ground surface.
    Ground,
    /// Things, lines, zones.
    Plan,
    /// Things that stand above the ground, from a cloud.
    Above,
}

pub(super) type Point = [f64; 2];
pub(super) type Point3 = [f64; 3];

#[derive(Debug, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct Head {
    pub(super) name: String,
    pub(super) epsg: Option<u32>,
    pub(super) records: Vec<SourceRecord>,
    /// Left out where nothing waits.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub(super) waiting: Vec<crate::Waiting>,
    pub(super) surfaces: Vec<Surface>,
    pub(super) things: Vec<Thing>,
    pub(super) excavations: Vec<Excavation>,
    pub(super) buried: Vec<Buried>,
    pub(super) zones: Vec<Zone>,
    pub(super) lines: Vec<Line>,
    pub(super) landings: Vec<Landing>,
    pub(super) gates: Vec<Gate>,
}

#[derive(Debug, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct Surface {
    pub(super) name: String,
    pub(super) accuracy: f64,
    pub(super) date: Option<String>,
    pub(super) terrain: Terrain,
}

/// Lists are in blocks, in the order of the head: grids one, triangles two (points, triangles).
#[derive(Debug, Serialize, Deserialize)]
#[serde(deny_unknown_fields, rename_all = "kebab-case")]
pub(super) enum Terrain {
    Grid { north_west: Point, cell: Point, rows: u32, cols: u32 },
    Tin { origin: Point, points: u32, triangles: u32 },
}

#[derive(Debug, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct Thing {
    pub(super) id: String,
    pub(super) name: String,
    pub(super) kind: site::ThingKind,
    pub(super) body: Body,
    pub(super) openings: Vec<Opening>,
    pub(super) accuracy: f64,
    pub(super) source: String,
}

/// Columns have one block each, after those of the surfaces.
#[derive(Debug, Serialize, Deserialize)]
#[serde(deny_unknown_fields, rename_all = "kebab-case")]
pub(super) enum Body {
    Upright { shape: Shape, base: Option<f64>, top: Option<f64> },
    Columns { south_west: Point, cell: f64, rows: u32, cols: u32 },
}

#[derive(Debug, Serialize, Deserialize)]
#[serde(deny_unknown_fields, rename_all = "kebab-case")]
pub(super) enum Shape {
    Area { outer: Vec<Point>, holes: Vec<Vec<Point>> },
    Strip { course: Vec<Point>, width: f64 },
    Round { centre: Point, radius: f64 },
}

#[derive(Debug, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct Opening {
    pub(super) from: Point,
    pub(super) to: Point,
    pub(super) sill: f64,
    pub(super) head: f64,
}

#[derive(Debug, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct Excavation {
    pub(super) id: String,
    pub(super) name: String,
    pub(super) outer: Vec<Point>,
    pub(super) holes: Vec<Vec<Point>>,
    pub(super) depth: Option<evidence::Ranged>,
    pub(super) soil: Option<site::SoilType>,
    pub(super) support: Support,
    pub(super) source: String,
}

#[derive(Debug, Serialize, Deserialize)]
#[serde(deny_unknown_fields, rename_all = "kebab-case")]
pub(super) enum Support {
    None,
    NotKnown,
    Supported { by: Option<String> },
}

#[derive(Debug, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct Buried {
    pub(super) id: String,
    pub(super) name: String,
    pub(super) kind: site::BuriedKind,
    pub(super) shape: Shape,
    pub(super) cover: Option<evidence::Ranged>,
    pub(super) allowed_pressure: Option<f64>,
    pub(super) source: String,
}

#[derive(Debug, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct Zone {
    pub(super) id: String,
    pub(super) name: String,
    pub(super) shape: Shape,
    pub(super) rule: site::ZoneRule,
    /// Minutes from midnight: from, to.
    pub(super) times: Vec<[u16; 2]>,
    pub(super) by: String,
}

#[derive(Debug, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct Line {
    pub(super) name: String,
    /// V.
    pub(super) voltage: Option<f64>,
    pub(super) spans: Vec<Span>,
    pub(super) course: Vec<Point>,
    pub(super) survey_error: f64,
    pub(super) swing: f64,
    pub(super) source: String,
    pub(super) dead: Option<Dead>,
    /// Left out where there is none.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub(super) insulated: Option<Insulated>,
}

#[derive(Debug, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct Insulated {
    pub(super) by: String,
    pub(super) permit: String,
}

#[derive(Debug, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct Span {
    pub(super) from: Point3,
    pub(super) to: Point3,
    pub(super) sag: f64,
}

#[derive(Debug, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct Dead {
    pub(super) owner: String,
    pub(super) permit: String,
    pub(super) visibly_grounded: bool,
}

#[derive(Debug, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct Landing {
    pub(super) id: String,
    pub(super) name: String,
    pub(super) at: Point,
    pub(super) level: f64,
    pub(super) size: Point,
    /// Heading and tolerance, rad.
    pub(super) approach: Option<[f64; 2]>,
    /// kg, and who stated it.
    pub(super) rating: Option<(Option<f64>, String)>,
    /// kg.
    pub(super) occupied: f64,
    pub(super) upstand: f64,
}

#[derive(Debug, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct Gate {
    pub(super) id: String,
    pub(super) name: String,
    pub(super) width: f64,
    pub(super) height: Option<f64>,
    pub(super) clearance: f64,
    pub(super) clearance_above: f64,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub(super) posts: Option<[[f64; 2]; 2]>,
}
