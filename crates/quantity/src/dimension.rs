//! Quantities whose dimension is known at run time.

use crate::{Angle, Area, Force, Length, Mass, Moment, Pressure, Si, Speed, Voltage};
use serde::{Deserialize, Serialize};

/// What a number measures. The unit inside is always the coherent SI one.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Serialize, Deserialize, schemars::JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum Dimension {
    /// Metres.
    Length,
    /// Square metres.
    Area,
    /// Cubic metres.
    Volume,
    /// Kilograms.
    Mass,
    /// Radians.
    Angle,
    /// A slope as rise over run: 0.07 is 7 %.
    Slope,
    /// A plain ratio: 0.07 is 7 %.
    Ratio,
    /// A count or factor without unit, shown as a plain number.
    Number,
    /// Newtons.
    Force,
    /// Newton metres.
    Moment,
    /// Pascals.
    Pressure,
    /// Metres per second.
    Speed,
    /// Volts.
    Voltage,
    /// Kilograms per cubic metre.
    Density,
    /// Newtons per metre.
    Stiffness,
    /// Newtons per cubic metre: unit weight of soil.
    UnitWeight,
    /// Metres to the fourth: second moment of area.
    SecondMoment,
}

impl Dimension {
    /// Symbol of the coherent SI unit ("" where there is none).
    pub fn si_unit(self) -> &'static str {
        match self {
            Self::Length => "m",
            Self::Area => "m²",
            Self::Volume => "m³",
            Self::Mass => "kg",
            Self::Angle => "rad",
            Self::Slope | Self::Ratio | Self::Number => "",
            Self::Force => "N",
            Self::Moment => "N·m",
            Self::Pressure => "Pa",
            Self::Speed => "m/s",
            Self::Voltage => "V",
            Self::Density => "kg/m³",
            Self::Stiffness => "N/m",
            Self::UnitWeight => "N/m³",
            Self::SecondMoment => "m⁴",
        }
    }
}

/// A value with its dimension, SI inside.
///
/// JSON: `{"si": 2.44, "dimension": "length"}`.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize, schemars::JsonSchema)]
pub struct Quantity {
    /// The value in the coherent SI unit of `dimension`.
    pub si: f64,
    /// What it measures.
    pub dimension: Dimension,
}

impl Quantity {
    /// A quantity from its SI value.
    pub fn new(si: f64, dimension: Dimension) -> Self {
        Self { si, dimension }
    }
    /// A plain ratio, 0.07 for 7 %.
    pub fn ratio(value: f64) -> Self {
        Self::new(value, Dimension::Ratio)
    }
    /// A plain number.
    pub fn number(value: f64) -> Self {
        Self::new(value, Dimension::Number)
    }
    /// A slope as rise over run.
    pub fn slope(value: f64) -> Self {
        Self::new(value, Dimension::Slope)
    }
}

macro_rules! from_typed {
    ($($t:ty => $d:ident),*) => {$(
        impl From<$t> for Quantity {
            fn from(q: $t) -> Self { Self::new(q.si(), Dimension::$d) }
        }
    )*};
}
from_typed!(Length => Length, Mass => Mass, Angle => Angle, Force => Force, Moment => Moment,
    Pressure => Pressure, Speed => Speed, Voltage => Voltage, Area => Area);
