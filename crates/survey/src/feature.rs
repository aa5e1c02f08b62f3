//! Shapes of a plan file: what is drawn, on which layer, with what is said of it.

use crate::LengthUnit;
use crate::reading::UnitSource;
use evidence::Faults;
use geometry::DVec2;
use serde::Serialize;
use std::collections::BTreeMap;

/// A plan file as read: shapes in the site frame, m, with what is known of the file.
#[derive(Debug, Clone)]
pub struct PlanReading {
    /// Every shape, in file order.
    pub features: Vec<Feature>,
    /// What was found.
    pub facts: PlanFacts,
    /// Warnings; none of them an error.
    pub notes: Faults,
}

/// One shape.
#[derive(Debug, Clone, PartialEq)]
pub struct Feature {
    /// Layer (DXF), or the name that the file groups by; empty where it has none.
    pub layer: String,
    /// Name or id, if the file gives one.
    pub name: Option<String>,
    /// The shape.
    pub shape: Shape,
    /// What the file says of it, by name.
    pub attributes: BTreeMap<String, Attribute>,
    /// Line of the file, or number of the record, from 1.
    pub place: usize,
}

/// A shape in plan, m in the site frame.
#[derive(Debug, Clone, PartialEq)]
pub enum Shape {
    /// One place.
    Point(PlanPoint),
    /// A line of two points or more.
    Line(Vec<PlanPoint>),
    /// A closed outline of three corners or more, the first not repeated at the end; each hole alike.
    Area {
        /// Outer ring.
        outer: Vec<PlanPoint>,
        /// Holes.
        holes: Vec<Vec<PlanPoint>>,
    },
    /// A face in space of three or four corners, as in a surface drawn by hand.
    Face(Vec<PlanPoint>),
    /// A text with its place.
    Text {
        /// Where it stands.
        at: PlanPoint,
        /// What it says.
        words: String,
    },
}

/// A point of a plan, m. Height is `None` where the file has none; a flat drawing's 0 is none.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct PlanPoint {
    /// East and north.
    pub at: DVec2,
    /// Height.
    pub height: Option<f64>,
}

/// A value that the file gives beside a shape.
#[derive(Debug, Clone, PartialEq)]
pub enum Attribute {
    /// Words.
    Text(String),
    /// A number, in whatever unit the file means.
    Number(f64),
    /// Yes or no.
    YesNo(bool),
    /// Named, and left empty.
    Nothing,
}

/// What was found in a plan file, to be shown beside the shapes.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct PlanFacts {
    /// Kind of file.
    pub kind: crate::FileKind,
    /// Unit of the file and who says so; `None` for degrees that were projected.
    pub unit: Option<(LengthUnit, UnitSource)>,
    /// Coordinate system as the file or the job names it.
    pub crs: Option<String>,
    /// Smallest corner of all shapes, m in the site frame.
    pub min: [f64; 2],
    /// Largest corner, m.
    pub max: [f64; 2],
    /// Shapes by layer.
    pub layers: BTreeMap<String, u64>,
    /// What the file holds and was not read, by its kind, with how many.
    pub left_out: BTreeMap<String, u64>,
}

impl Attribute {
    /// The number, also of a text that is one.
    pub fn number(&self) -> Option<f64> {
        match self {
            Self::Number(n) => Some(*n),
            Self::Text(t) => t.trim().parse().ok(),
            Self::YesNo(_) | Self::Nothing => None,
        }
        .filter(|n| n.is_finite())
    }
}

impl Shape {
    /// Every point of it.
    pub fn points(&self) -> Box<dyn Iterator<Item = &PlanPoint> + '_> {
        match self {
            Self::Point(p) | Self::Text { at: p, .. } => Box::new(std::iter::once(p)),
            Self::Line(points) | Self::Face(points) => Box::new(points.iter()),
            Self::Area { outer, holes } => Box::new(outer.iter().chain(holes.iter().flatten())),
        }
    }
}
