//! Typed quantities, in and out of text. Pure: no I/O, no clock. SI units inside.
//!
//! - [`Length`], [`Mass`], [`Angle`] … : statically typed quantities (uom), with short
//!   constructors ([`metres`]) and readers ([`Si::si`])
//! - [`Quantity`]: a value with its [`Dimension`] known at run time, for findings and working
//! - [`parse`], [`parse_non_negative`], [`parse_positive`]: "24 in", "8000 lb", "1:8", "7 %" to a [`Quantity`],
//!   or a [`ParseError`] that says what is wrong and where
//! - [`UnitSystem`], [`Quantity::display`]: the unit and the digits a person reads

mod dimension;
mod display;
mod error;
mod number;
mod parse;
mod typed;
mod units;

pub use dimension::{Dimension, Quantity};
pub use display::{Displayed, UnitSystem};
pub use error::ParseError;
pub use parse::{parse, parse_non_negative, parse_positive};
pub use typed::{
    Acceleration, Angle, Area, Density, Force, Length, Mass, Moment, Pressure, Si, Speed, Stiffness, Voltage, degrees,
    kilograms, kilovolts, metres, metres_per_second, newtons, pascals, radians,
};
pub use units::{FOOT, INCH, POUND, POUND_FORCE, US_SURVEY_FOOT, unit_examples};

/// Standard acceleration of gravity, m/s² (ISO 80000-3; CGPM 1901).
pub const STANDARD_GRAVITY: f64 = 9.806_65;

#[cfg(test)]
mod tests;
