//! Text to quantity.

use crate::{Dimension, Quantity};

/// Why a text is not a quantity of the wanted dimension.
#[derive(Debug, Clone, PartialEq)]
pub enum ParseError {
    /// Nothing that reads as a number at the start.
    NoNumber,
    /// The number is NaN or infinite.
    NotFinite,
    /// A number without a unit, where one is needed. The hint names `expected` units.
    MissingUnit,
    /// A unit that is not known at all.
    UnknownUnit {
        /// The text after the number.
        unit: String,
    },
    /// A known unit of another dimension.
    WrongDimension {
        /// What the unit measures.
        found: Dimension,
        /// The text after the number.
        unit: String,
    },
}

/// Reads `text` as a quantity of `dimension`.
pub fn parse(text: &str, dimension: Dimension) -> Result<Quantity, ParseError> {
    let _ = (text, dimension);
    Err(ParseError::NoNumber)
}
