//! The unit and digits that a person reads.

use crate::Dimension as D;
use crate::{Dimension, FOOT, INCH, POUND, POUND_FORCE, Quantity};
use serde::{Deserialize, Serialize};

/// Longest US length that is shown in inches, m: 3 ft, and what the conversion of it may be off.
const MOST_IN_INCHES: f64 = 3.0 * FOOT + 1e-9;

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
    /// Value in `unit`. NaN and infinity pass through: a printer must not print them as numbers.
    pub value: f64,
    /// Digits after the decimal mark.
    pub decimals: usize,
    /// Unit symbol; "" for plain numbers.
    pub unit: &'static str,
}

impl Displayed {
    /// The number with a decimal point and no grouping, never "-0": `1850`, `0.035`. None if it is not finite.
    pub fn digits(self) -> Option<String> {
        if !self.value.is_finite() {
            return None;
        }
        let text = format!("{:.*}", self.decimals, self.value);
        let zero = text.bytes().all(|b| matches!(b, b'-' | b'0' | b'.'));
        Some(if zero { text.trim_start_matches('-').to_owned() } else { text })
    }
}

impl Dimension {
    /// Value of one SI unit in the unit of `system`, and that unit's symbol: for axes and grids, where every tick
    /// has one unit.
    pub fn axis(self, system: UnitSystem) -> (f64, &'static str) {
        use UnitSystem::{Si, Us};
        match (self, system) {
            (D::Length, Si) => (1.0, "m"),
            (D::Length, Us) => (1.0 / FOOT, "ft"),
            (D::Area, Si) => (1.0, "m²"),
            (D::Area, Us) => (1.0 / (FOOT * FOOT), "ft²"),
            (D::Volume, Si) => (1.0, "m³"),
            (D::Volume, Us) => (1.0 / (FOOT * FOOT * FOOT), "ft³"),
            (D::Mass, Si) => (1.0, "kg"),
            (D::Mass, Us) => (1.0 / POUND, "lb"),
            (D::Angle, _) => (180.0 / core::f64::consts::PI, "°"),
            (D::Slope | D::Ratio, _) => (100.0, "%"),
            (D::Number, _) => (1.0, ""),
            (D::Force, Si) => (1e-3, "kN"),
            (D::Force, Us) => (1.0 / POUND_FORCE, "lbf"),
            (D::Moment, Si) => (1e-3, "kN·m"),
            (D::Moment, Us) => (1.0 / (POUND_FORCE * FOOT), "lbf·ft"),
            (D::Pressure, Si) => (1e-3, "kPa"),
            (D::Pressure, Us) => (FOOT * FOOT / POUND_FORCE, "psf"),
            (D::Speed, Si) => (1.0, "m/s"),
            (D::Speed, Us) => (3600.0 / (5280.0 * FOOT), "mph"),
            (D::Voltage, _) => (1e-3, "kV"),
            (D::Density, Si) => (1.0, "kg/m³"),
            (D::Density, Us) => (FOOT * FOOT * FOOT / POUND, "lb/ft³"),
            (D::Stiffness, Si) => (1e-3, "kN/m"),
            (D::Stiffness, Us) => (FOOT / POUND_FORCE, "lbf/ft"),
            (D::UnitWeight, Si) => (1e-3, "kN/m³"),
            (D::UnitWeight, Us) => (FOOT * FOOT * FOOT / POUND_FORCE, "lbf/ft³"),
            (D::SecondMoment, Si) => (1e8, "cm⁴"),
            (D::SecondMoment, Us) => (1.0 / (INCH * INCH * INCH * INCH), "in⁴"),
        }
    }
}

impl Quantity {
    /// The value in the unit of `system`, with the digits this trade reads.
    ///
    /// Small values get more digits, so that a line's sag of 0.035 m or a reserve of 0.4 % does not vanish.
    ///
    /// US lengths up to 3 ft are inches with one decimal: load centres (24 in, 36 in), offsets, fork wear and tape
    /// readings are spoken of in inches, and nothing here says which length is which. Above that they are feet with two
    /// decimals, not feet and inches: levels and tapes on US sites are read in hundredths of a foot (3 mm), one decimal
    /// would hide 3 cm of a clearance, and decimals can be added and compared at sight.
    ///
    /// US pressures from 1,000 psf on are rounded to 10 psf: no tyre or soil is known better.
    pub fn display(self, system: UnitSystem) -> Displayed {
        self.display_beside(system, self.si)
    }

    /// The value with at least five significant digits, in the unit of [`Dimension::axis`]: for the steps of a
    /// working, so that whoever repeats them by hand arrives at the printed result.
    pub fn display_worked(self, system: UnitSystem) -> Displayed {
        const DIGITS: i32 = 5;
        let (factor, unit) = self.dimension.axis(system);
        let value = self.si * factor;
        let size = value.abs();
        // A whole number and nothing need no decimals; beyond nine decimals nothing here means anything.
        let decimals = if !size.is_finite() || size == 0.0 || value.fract() == 0.0 {
            0
        } else {
            let mut leading = 0;
            let mut power = 1.0;
            while power * 10.0 <= size {
                power *= 10.0;
                leading += 1;
            }
            while power > size && leading > -9 {
                power /= 10.0;
                leading -= 1;
            }
            (DIGITS - 1 - leading).clamp(0, 9) as usize
        };
        Displayed { value, decimals, unit }
    }

    /// As [`Quantity::display`], in the unit that `largest` (SI, of the same dimension) is shown in: values that stand
    /// in one sentence or table get one unit, `0.03 ft` beside `4.32 ft` and not `0.3 in`.
    #[expect(clippy::match_same_arms, reason = "a table, read by dimension")]
    pub fn display_beside(self, system: UnitSystem, largest: f64) -> Displayed {
        let (factor, unit) = self.dimension.axis(system);
        let value = self.si * factor;
        let size = value.abs();
        let step = |small: usize, limit: f64, large: usize| if size > 0.0 && size < limit { small } else { large };
        let decimals = match (self.dimension, system) {
            (D::Length, UnitSystem::Us) if largest.abs() <= MOST_IN_INCHES => {
                return Displayed { value: self.si / INCH, decimals: 1, unit: "in" };
            }
            (D::Length, _) => step(3, 0.1, 2),
            (D::Area, UnitSystem::Si) => step(4, 0.1, 2),
            (D::Area | D::Volume, UnitSystem::Us) => step(2, 10.0, 1),
            (D::Volume, UnitSystem::Si) => 3,
            (D::Mass | D::Density, _) => step(1, 10.0, 0),
            (D::Angle, _) => 1,
            (D::Slope, _) => step(2, 1.0, 1),
            (D::Ratio, _) => step(1, 10.0, 0),
            (D::Number, _) if size >= 1000.0 || (size > 0.0 && value.fract() == 0.0) => 0,
            (D::Number, _) => step(4, 0.1, 2),
            (D::UnitWeight | D::SecondMoment, _) => step(2, 1.0, 1),
            (D::Force | D::Moment, UnitSystem::Si) => step(2, 1.0, 1),
            (D::Force | D::Moment | D::Stiffness, _) => 0,
            (D::Pressure, UnitSystem::Us) if size >= 1000.0 => {
                return Displayed { value: (value / 10.0).round() * 10.0, decimals: 0, unit };
            }
            (D::Pressure, _) => step(2, 1.0, step(1, 10.0, 0)),
            (D::Speed, UnitSystem::Si) => 1,
            (D::Speed, UnitSystem::Us) => step(1, 10.0, 0),
            (D::Voltage, _) => step(2, 1.0, usize::from((value - value.round()).abs() >= 0.05)),
        };
        Displayed { value, decimals, unit }
    }
}
