//! What is wrong with a typed quantity, for forms and files: one text for each [`ParseError`].

use evidence::{Message, TextId};
use quantity::{Dimension, ParseError, unit_examples};

/// The message of an error, and what to do about it. `text` is what was parsed.
///
/// ```
/// use quantity::{Dimension, UnitSystem, parse};
/// use wording::{Language, Wording, entry};
/// let text = "1,200 kg";
/// let error = parse(text, Dimension::Mass).unwrap_err();
/// let (message, hint) = entry::explain(&error, text);
/// let wording = Wording::new(Language::English, UnitSystem::Si);
/// assert_eq!(wording.render(&message), "“1,200” can be read in two ways");
/// assert_eq!(wording.render(&hint.unwrap()), "Write 1200 or 1.2, whichever is meant.");
/// ```
pub fn explain(error: &ParseError, text: &str) -> (Message, Option<Message>) {
    let part = text.get(error.span()).unwrap_or(text).trim().to_owned();
    match error {
        ParseError::Empty { .. } => (EMPTY.message(), None),
        ParseError::NoNumber { .. } => (NO_NUMBER.with("part", part), Some(HINT_NUMBER_FIRST.message())),
        ParseError::BadNumber { .. } => (BAD_NUMBER.with("part", part), Some(HINT_PLAIN_DIGITS.message())),
        ParseError::NotFinite { .. } => (NOT_FINITE.with("part", part), Some(HINT_PLAIN_DIGITS.message())),
        ParseError::AmbiguousSeparator { readings: [first, second], .. } => {
            (AMBIGUOUS_SEPARATOR.with("part", part), Some(HINT_EITHER.with("first", first).with("second", second)))
        }
        ParseError::MissingUnit { wanted, .. } => {
            (MISSING_UNIT.with("part", part).with("wanted", dimension(*wanted)), units(*wanted))
        }
        ParseError::UnknownUnit { unit, nearest, wanted, .. } => {
            let hint = nearest.map(|n| HINT_NEAREST.with("nearest", n)).or_else(|| units(*wanted));
            (UNKNOWN_UNIT.with("unit", unit).with("wanted", dimension(*wanted)), hint)
        }
        ParseError::AmbiguousUnit { unit, choices, .. } => {
            (AMBIGUOUS_UNIT.with("unit", unit), Some(HINT_UNITS.with("units", choices.join(", "))))
        }
        ParseError::WrongDimension { unit, found, wanted, .. } => (
            WRONG_DIMENSION.with("unit", unit).with("found", dimension(*found)).with("wanted", dimension(*wanted)),
            units(*wanted),
        ),
        ParseError::AmbiguousRatio { .. } => (AMBIGUOUS_RATIO.with("part", part), Some(HINT_RATIO.message())),
        ParseError::TooSteep { .. } => (TOO_STEEP.with("part", part), None),
        ParseError::BadParts { .. } => (BAD_PARTS.with("part", part), Some(HINT_PARTS.message())),
        ParseError::Trailing { .. } => (TRAILING.with("part", part), Some(HINT_REMOVE.message())),
        ParseError::Negative { .. } => (NEGATIVE.with("part", part), None),
        ParseError::Zero { .. } => (ZERO.with("part", part), None),
    }
}

fn units(dimension: Dimension) -> Option<Message> {
    let examples = unit_examples(dimension);
    (!examples.is_empty()).then(|| HINT_UNITS.with("units", examples.join(", ")))
}

/// The text that names a dimension, with its article: "a length".
pub fn dimension(dimension: Dimension) -> TextId {
    match dimension {
        Dimension::Length => DIMENSION_LENGTH,
        Dimension::Area => DIMENSION_AREA,
        Dimension::Volume => DIMENSION_VOLUME,
        Dimension::Mass => DIMENSION_MASS,
        Dimension::Angle => DIMENSION_ANGLE,
        Dimension::Slope => DIMENSION_SLOPE,
        Dimension::Ratio => DIMENSION_RATIO,
        Dimension::Number => DIMENSION_NUMBER,
        Dimension::Force => DIMENSION_FORCE,
        Dimension::Moment => DIMENSION_MOMENT,
        Dimension::Pressure => DIMENSION_PRESSURE,
        Dimension::Speed => DIMENSION_SPEED,
        Dimension::Voltage => DIMENSION_VOLTAGE,
        Dimension::Density => DIMENSION_DENSITY,
        Dimension::Stiffness => DIMENSION_STIFFNESS,
        Dimension::UnitWeight => DIMENSION_UNIT_WEIGHT,
        Dimension::SecondMoment => DIMENSION_SECOND_MOMENT,
    }
}

evidence::messages! {
    /// Nothing was typed.
    EMPTY = "entry-empty" [];
    /// `part` is no number, and a number should stand there.
    NO_NUMBER = "entry-no-number" [part];
    /// `part` has digits and separators in an order that makes no number.
    BAD_NUMBER = "entry-bad-number" [part];
    /// `part` is NaN, infinite or too large.
    NOT_FINITE = "entry-not-finite" [part];
    /// `part` may be thousands or decimals.
    AMBIGUOUS_SEPARATOR = "entry-ambiguous-separator" [part];
    /// `part` has no unit; `wanted` (a dimension) is wanted.
    MISSING_UNIT = "entry-missing-unit" [part, wanted];
    /// `unit` is not known; `wanted` is wanted.
    UNKNOWN_UNIT = "entry-unknown-unit" [unit, wanted];
    /// `unit` means different things to different people.
    AMBIGUOUS_UNIT = "entry-ambiguous-unit" [unit];
    /// `unit` measures `found`; `wanted` is wanted.
    WRONG_DIMENSION = "entry-wrong-dimension" [unit, found, wanted];
    /// The ratio `part` may be rise to run or run to rise.
    AMBIGUOUS_RATIO = "entry-ambiguous-ratio" [part];
    /// `part` is as steep as a wall.
    TOO_STEEP = "entry-too-steep" [part];
    /// `part` is not smaller than the part before it.
    BAD_PARTS = "entry-bad-parts" [part];
    /// `part` stands after a whole quantity.
    TRAILING = "entry-trailing" [part];
    /// `part` is below zero.
    NEGATIVE = "entry-negative" [part];
    /// `part` is zero and must be more.
    ZERO = "entry-zero" [part];
    /// Hint: the number stands first.
    HINT_NUMBER_FIRST = "entry-hint-number-first" [];
    /// Hint: digits with one decimal point or comma.
    HINT_PLAIN_DIGITS = "entry-hint-plain-digits" [];
    /// Hint: one of two ways of writing.
    HINT_EITHER = "entry-hint-either" [first, second];
    /// Hint: probably `nearest` was meant.
    HINT_NEAREST = "entry-hint-nearest" [nearest];
    /// Hint: possible units.
    HINT_UNITS = "entry-hint-units" [units];
    /// Hint: 1:n, percent, or marked with V and H.
    HINT_RATIO = "entry-hint-ratio" [];
    /// Hint: from large to small.
    HINT_PARTS = "entry-hint-parts" [];
    /// Hint: take it away.
    HINT_REMOVE = "entry-hint-remove" [];
    /// A length.
    DIMENSION_LENGTH = "entry-dimension-length" [];
    /// An area.
    DIMENSION_AREA = "entry-dimension-area" [];
    /// A volume.
    DIMENSION_VOLUME = "entry-dimension-volume" [];
    /// A mass.
    DIMENSION_MASS = "entry-dimension-mass" [];
    /// An angle.
    DIMENSION_ANGLE = "entry-dimension-angle" [];
    /// A slope.
    DIMENSION_SLOPE = "entry-dimension-slope" [];
    /// A share.
    DIMENSION_RATIO = "entry-dimension-ratio" [];
    /// A plain number.
    DIMENSION_NUMBER = "entry-dimension-number" [];
    /// A force.
    DIMENSION_FORCE = "entry-dimension-force" [];
    /// A moment.
    DIMENSION_MOMENT = "entry-dimension-moment" [];
    /// A pressure.
    DIMENSION_PRESSURE = "entry-dimension-pressure" [];
    /// A speed.
    DIMENSION_SPEED = "entry-dimension-speed" [];
    /// A voltage.
    DIMENSION_VOLTAGE = "entry-dimension-voltage" [];
    /// A density.
    DIMENSION_DENSITY = "entry-dimension-density" [];
    /// A stiffness.
    DIMENSION_STIFFNESS = "entry-dimension-stiffness" [];
    /// A unit weight.
    DIMENSION_UNIT_WEIGHT = "entry-dimension-unit-weight" [];
    /// A second moment of area.
    DIMENSION_SECOND_MOMENT = "entry-dimension-second-moment" [];
}
