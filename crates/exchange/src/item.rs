//! What every writer writes: one item for each thing of a site or plan.

use crate::layer::Layer;
use evidence::TextId;
use geometry::{DVec2, DVec3};
use serde::ser::{Serialize, SerializeSeq, Serializer};
use serde_json::Value;
use site::{Opening, PlanArea, PlanShape};

/// One thing.
#[derive(Debug, Clone)]
pub(crate) struct Item {
    pub(crate) layer: Layer,
    /// Id that no other item of the file has: "thing/shed".
    pub(crate) key: String,
    /// Name for people, without what is not known.
    pub(crate) name: String,
    /// What is not known and had to be drawn somehow.
    pub(crate) doubts: Vec<TextId>,
    /// What is known, in a fixed order.
    pub(crate) properties: Properties,
    /// Where it lies, as known.
    pub(crate) shape: Shape,
    /// What stands for it in drawings and models, where heights cannot be left out.
    pub(crate) drawn: Vec<Drawn>,
}

/// Properties in a fixed order, written as a JSON object.
#[derive(Debug, Clone, Default, PartialEq)]
pub(crate) struct Properties(pub(crate) Vec<(&'static str, Value)>);

/// A place whose height may be unknown. In one shape either all heights are known or none is given.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Position(pub(crate) DVec2, pub(crate) Option<f64>);

/// A shape as known, m.
#[derive(Debug, Clone, PartialEq)]
pub(crate) enum Shape {
    /// Its place is not known.
    Nowhere,
    Point(Position),
    Points(Vec<Position>),
    Line(Vec<Position>),
    Lines(Vec<Vec<Position>>),
    /// Rings, the outer first.
    Area(Vec<Vec<Position>>),
}

/// Something drawn, m.
#[derive(Debug, Clone, PartialEq)]
pub(crate) enum Drawn {
    /// Straight up from a shape.
    Upright { shape: PlanShape, base: f64, top: f64, openings: Vec<Opening> },
    /// A hole with sides and a floor.
    Pit { area: PlanArea, floor: f64, edge: f64 },
    /// Level, at a height.
    Level { shape: PlanShape, at: f64 },
    /// On the ground, a little above it; where the ground is not known, at the height given.
    Draped { shape: PlanShape, otherwise: f64 },
    /// A line in space.
    Curve(Vec<DVec3>),
    /// A level cross.
    Cross { at: DVec3, size: f64 },
    /// A column.
    Column { low: DVec3, high: DVec3 },
}

impl Properties {
    pub(crate) fn add(&mut self, name: &'static str, value: impl Into<Value>) {
        self.0.push((name, value.into()));
    }

    /// A number to four decimals; what is no number is `null`.
    pub(crate) fn number(&mut self, name: &'static str, value: impl Into<Option<f64>>) {
        self.0.push((name, value.into().map_or(Value::Null, number)));
    }

    /// A range as three numbers: as given, lowest, highest.
    pub(crate) fn ranged(&mut self, names: [&'static str; 3], range: Option<evidence::Ranged>) {
        let [nominal, low, high] = names;
        self.number(nominal, range.map(|r| r.nominal));
        self.number(low, range.map(|r| r.low));
        self.number(high, range.map(|r| r.high));
    }
}

/// A JSON number to four decimals, without a negative nought; `null` for what is no number.
pub(crate) fn number(value: f64) -> Value {
    serde_json::Number::from_f64(rounded(value)).map_or(Value::Null, Value::Number)
}

/// To four decimals: a tenth of a millimetre.
pub(crate) fn rounded(value: f64) -> f64 {
    (value * 1e4).round() / 1e4 + 0.0
}

impl Serialize for Properties {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.collect_map(self.0.iter().map(|(name, value)| (name, value)))
    }
}

impl Serialize for Position {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        let mut list = serializer.serialize_seq(Some(2 + usize::from(self.1.is_some())))?;
        list.serialize_element(&rounded(self.0.x))?;
        list.serialize_element(&rounded(self.0.y))?;
        if let Some(z) = self.1 {
            list.serialize_element(&rounded(z))?;
        }
        list.end()
    }
}
