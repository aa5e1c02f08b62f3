//! Why a text is not a quantity.

use crate::Dimension;
use core::ops::Range;

/// Why a text is not a quantity of the wanted dimension. Every variant has the byte range in the text at which
/// a caret should point; `wording::quantity_error` has the words.
#[derive(Debug, Clone, PartialEq)]
pub enum ParseError {
    /// Nothing but spaces.
    Empty {
        /// The whole text.
        span: Range<usize>,
    },
    /// Nothing that reads as a number at the start.
    NoNumber {
        /// What stands there instead.
        span: Range<usize>,
    },
    /// Digits and separators that make no number: `1,23,4`.
    BadNumber {
        /// The number.
        span: Range<usize>,
    },
    /// The number is NaN or infinite, or too large to hold.
    NotFinite {
        /// The number.
        span: Range<usize>,
    },
    /// `1,200`: one thousand two hundred, or one and two tenths.
    AmbiguousSeparator {
        /// The number.
        span: Range<usize>,
        /// The two ways of writing it that are plain and accepted: as thousands, as decimals.
        readings: [String; 2],
    },
    /// A number without a unit, where one is needed. [`crate::unit_examples`] has what may stand there.
    MissingUnit {
        /// The number that has none.
        span: Range<usize>,
        /// What was wanted.
        wanted: Dimension,
    },
    /// A unit that is not known at all.
    UnknownUnit {
        /// The unit.
        span: Range<usize>,
        /// The unit as written.
        unit: String,
        /// The nearest known unit of the wanted dimension.
        nearest: Option<&'static str>,
        /// What was wanted.
        wanted: Dimension,
    },
    /// A unit that means different things to different people: "ton".
    AmbiguousUnit {
        /// The unit.
        span: Range<usize>,
        /// The unit as written.
        unit: String,
        /// Units that say which is meant.
        choices: &'static [&'static str],
    },
    /// A known unit of another dimension.
    WrongDimension {
        /// The unit.
        span: Range<usize>,
        /// The unit as written.
        unit: String,
        /// What it measures.
        found: Dimension,
        /// What was wanted.
        wanted: Dimension,
    },
    /// A ratio such as `2:1` that may be rise to run or run to rise. `1:8` is rise to run.
    AmbiguousRatio {
        /// The ratio.
        span: Range<usize>,
    },
    /// A slope as an angle of 90° or more.
    TooSteep {
        /// The number and its unit.
        span: Range<usize>,
    },
    /// Parts that do not go from large to small: `6 in 5 ft`, `5 ft 14 in`.
    BadParts {
        /// The part that is out of order.
        span: Range<usize>,
    },
    /// More text after a whole quantity.
    Trailing {
        /// What is too much.
        span: Range<usize>,
        /// The same as text.
        text: String,
    },
    /// Below zero, where that cannot be: from [`crate::parse_non_negative`] and [`crate::parse_positive`].
    Negative {
        /// The whole quantity.
        span: Range<usize>,
    },
    /// Zero, where it must be more: from [`crate::parse_positive`].
    Zero {
        /// The whole quantity.
        span: Range<usize>,
    },
}

impl ParseError {
    /// The byte range in the text that the error is about. Always on character boundaries within the text.
    pub fn span(&self) -> Range<usize> {
        match self {
            Self::Empty { span }
            | Self::NoNumber { span }
            | Self::BadNumber { span }
            | Self::NotFinite { span }
            | Self::AmbiguousSeparator { span, .. }
            | Self::MissingUnit { span, .. }
            | Self::UnknownUnit { span, .. }
            | Self::AmbiguousUnit { span, .. }
            | Self::WrongDimension { span, .. }
            | Self::AmbiguousRatio { span }
            | Self::TooSteep { span }
            | Self::BadParts { span }
            | Self::Trailing { span, .. }
            | Self::Negative { span }
            | Self::Zero { span } => span.clone(),
        }
    }

    /// A stable code for faults: `quantity::missing-unit`.
    pub fn code(&self) -> &'static str {
        match self {
            Self::Empty { .. } => "quantity::empty",
            Self::NoNumber { .. } => "quantity::no-number",
            Self::BadNumber { .. } => "quantity::bad-number",
            Self::NotFinite { .. } => "quantity::not-finite",
            Self::AmbiguousSeparator { .. } => "quantity::ambiguous-separator",
            Self::MissingUnit { .. } => "quantity::missing-unit",
            Self::UnknownUnit { .. } => "quantity::unknown-unit",
            Self::AmbiguousUnit { .. } => "quantity::ambiguous-unit",
            Self::WrongDimension { .. } => "quantity::wrong-dimension",
            Self::AmbiguousRatio { .. } => "quantity::ambiguous-ratio",
            Self::TooSteep { .. } => "quantity::too-steep",
            Self::BadParts { .. } => "quantity::bad-parts",
            Self::Trailing { .. } => "quantity::trailing",
            Self::Negative { .. } => "quantity::negative",
            Self::Zero { .. } => "quantity::zero",
        }
    }
}
