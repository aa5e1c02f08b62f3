//! The unit and digits that a person reads.

use crate::{Dimension, Quantity};
use serde::{Deserialize, Serialize};

/// Units chosen once for a reader; never mixed on a screen.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize, Deserialize, schemars::JsonSchema)]
#[serde(rename_all = "lowercase")]
pub enum UnitSystem {
    /// Metres, kilograms, kilonewtons, kilopascals.
    #[default]
    Si,
    /// US customary: feet, pounds, pounds-force, pounds per square foot, miles per hour.
    Us,
}

/// A number ready to print: `value` rounded to `decimals`, with its unit symbol.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Displayed {
    /// Value in `unit`.
    pub value: f64,
    /// Digits after the decimal mark.
    pub decimals: usize,
    /// Unit symbol; "" for plain numbers.
    pub unit: &'static str,
}

impl Quantity {
    /// The value in the unit of `system`, with the digits this trade reads.
    pub fn display(self, system: UnitSystem) -> Displayed {
        use Dimension as D;
        use UnitSystem::{Si, Us};
        let (factor, decimals, unit) = match (self.dimension, system) {
            (D::Length, Si) => (1.0, 2, "m"),
            (D::Length, Us) => (1.0 / 0.3048, 1, "ft"),
            (D::Area, Si) => (1.0, 2, "m²"),
            (D::Area, Us) => (1.0 / 0.092_903_04, 1, "ft²"),
            (D::Volume, Si) => (1.0, 3, "m³"),
            (D::Volume, Us) => (1.0 / 0.028_316_846_592, 1, "ft³"),
            (D::Mass, Si) => (1.0, 0, "kg"),
            (D::Mass, Us) => (1.0 / 0.453_592_37, 0, "lb"),
            (D::Angle, _) => (180.0 / core::f64::consts::PI, 1, "°"),
            (D::Slope, _) => (100.0, 1, "%"),
            (D::Ratio, _) => (100.0, 0, "%"),
            (D::Number, _) => (1.0, 2, ""),
            (D::Force, Si) => (1e-3, 1, "kN"),
            (D::Force, Us) => (1.0 / 4.448_221_615_260_5, 0, "lbf"),
            (D::Moment, Si) => (1e-3, 1, "kN·m"),
            (D::Moment, Us) => (1.0 / (4.448_221_615_260_5 * 0.3048), 0, "lbf·ft"),
            (D::Pressure, Si) => (1e-3, 0, "kPa"),
            (D::Pressure, Us) => (0.3048 * 0.3048 / 4.448_221_615_260_5, 0, "lbf/ft²"),
            (D::Speed, Si) => (1.0, 1, "m/s"),
            (D::Speed, Us) => (1.0 / 0.447_04, 0, "mph"),
            (D::Voltage, _) => (1e-3, if self.si.abs() < 1000.0 { 2 } else { 0 }, "kV"),
            (D::Density, Si) => (1.0, 0, "kg/m³"),
            (D::Density, Us) => (0.028_316_846_592 / 0.453_592_37, 1, "lb/ft³"),
            (D::Stiffness, Si) => (1e-3, 0, "kN/m"),
            (D::Stiffness, Us) => (0.3048 / 4.448_221_615_260_5, 0, "lbf/ft"),
        };
        Displayed { value: self.si * factor, decimals, unit }
    }
}
