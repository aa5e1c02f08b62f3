//! Text to quantity.

use crate::number::{self, Number};
use crate::units::{self, Conversion, Found, Unit};
use crate::{Dimension, ParseError, Quantity};
use core::f64::consts::FRAC_PI_2;
use core::ops::Range;

/// Reads `text` as a quantity of `dimension`.
///
/// SI and US customary units, always written out (only [`Dimension::Number`] has none). Feet with inches
/// (`5 ft 6 in`, `5'6"`, `5'-6 1/2"`) and pounds with ounces go together. Decimal point or comma; groups of three
/// by thin or plain spaces, or by the mark that is not the decimal one. Nothing is guessed from a locale: `1,200 kg`
/// may be one tonne or one kilogram, and is refused. `ton` alone is refused; `t`, `short ton`, `long ton` are not.
///
/// Slopes: `7 %`, `1:8` (rise to run), `1V:8H`, `4°` (tan). Angles: `4 deg`, `0.07 rad`, `7 %` (atan).
/// Densities may be unit weights, `18 kN/m3`, at standard gravity.
///
/// ```
/// use quantity::{parse, Dimension, ParseError};
/// assert!((parse("24 in", Dimension::Length)?.si - 0.6096).abs() < 1e-12);
/// assert_eq!(parse("3,2 t", Dimension::Mass)?.si, 3200.0);
/// assert_eq!(parse("1:8", Dimension::Slope)?.si, 0.125);
/// let error = parse("15 kN", Dimension::Pressure).unwrap_err();
/// assert_eq!(error.span(), 3..5);
/// assert!(matches!(error, ParseError::WrongDimension { found: Dimension::Force, .. }));
/// # Ok::<(), ParseError>(())
/// ```
///
/// # Errors
/// [`ParseError`] says what is wrong and where in `text`.
pub fn parse(text: &str, dimension: Dimension) -> Result<Quantity, ParseError> {
    let start = skip_spaces(text, 0);
    let end = start + text[start..].trim_end().len();
    if start == end {
        return Err(ParseError::Empty { span: 0..text.len() });
    }
    let text = &text[..end];
    let number = number::read(text, start)?;
    let si = if dimension == Dimension::Slope
        && let Some(slope) = ratio(text, &number)?
    {
        slope
    } else if dimension == Dimension::Number {
        plain_number(text, &number)?
    } else {
        with_unit(text, &number, dimension)?
    };
    if si.is_finite() { Ok(Quantity::new(si, dimension)) } else { Err(ParseError::NotFinite { span: number.span }) }
}

/// [`parse`] for what cannot be below zero: masses, radii, strengths.
///
/// # Errors
/// As [`parse`], and [`ParseError::Negative`].
pub fn parse_non_negative(text: &str, dimension: Dimension) -> Result<Quantity, ParseError> {
    let quantity = parse(text, dimension)?;
    if quantity.si < 0.0 { Err(ParseError::Negative { span: trimmed(text) }) } else { Ok(quantity) }
}

/// [`parse`] for what must be above zero: wheelbases, capacities, factors.
///
/// # Errors
/// As [`parse_non_negative`], and [`ParseError::Zero`].
pub fn parse_positive(text: &str, dimension: Dimension) -> Result<Quantity, ParseError> {
    let quantity = parse_non_negative(text, dimension)?;
    if quantity.si == 0.0 { Err(ParseError::Zero { span: trimmed(text) }) } else { Ok(quantity) }
}

fn trimmed(text: &str) -> Range<usize> {
    let start = skip_spaces(text, 0);
    start..start + text[start..].trim_end().len()
}

fn skip_spaces(text: &str, from: usize) -> usize {
    text.len() - text[from..].trim_start().len()
}

fn plain_number(text: &str, number: &Number) -> Result<f64, ParseError> {
    let rest = skip_spaces(text, number.span.end);
    if rest == text.len() {
        return Ok(number.value);
    }
    Err(unit_error(text, rest..text.len(), Dimension::Number))
}

/// `1:8` or `1V:8H`, if that is what follows; rise over run.
fn ratio(text: &str, rise: &Number) -> Result<Option<f64>, ParseError> {
    let letter = |at: usize, letters: [char; 2]| {
        let at = skip_spaces(text, at);
        if text[at..].starts_with(letters) { (at + 1, true) } else { (at, false) }
    };
    let (colon, marked_first) = letter(rise.span.end, ['V', 'v']);
    let colon = skip_spaces(text, colon);
    if !text[colon..].starts_with(':') {
        return Ok(None);
    }
    let second_at = skip_spaces(text, colon + 1);
    if second_at == text.len() {
        return Err(ParseError::NoNumber { span: colon..text.len() });
    }
    let run = number::read(text, second_at)?;
    let (end, marked_second) = letter(run.span.end, ['H', 'h']);
    let rest = skip_spaces(text, end);
    if rest < text.len() {
        return Err(ParseError::Trailing { span: rest..text.len(), text: text[rest..].to_owned() });
    }
    if run.value < 0.0 {
        return Err(ParseError::BadNumber { span: run.span });
    }
    if run.value == 0.0 {
        return Err(ParseError::TooSteep { span: rise.span.start..end });
    }
    let marked = marked_first && marked_second;
    // Excavation rules write 1.5:1 for run to rise; only 1:n is rise to run everywhere.
    if !marked && (rise.value.abs() != 1.0 || run.value < 1.0) {
        return Err(ParseError::AmbiguousRatio { span: rise.span.start..end });
    }
    Ok(Some(rise.value / run.value))
}

fn with_unit(text: &str, number: &Number, dimension: Dimension) -> Result<f64, ParseError> {
    let at = skip_spaces(text, number.span.end);
    if at == text.len() {
        return Err(ParseError::MissingUnit { span: number.span.clone(), wanted: dimension });
    }
    if let Found::Unit(unit) = units::find(&text[at..], dimension) {
        return convert(text, number, unit, text.len());
    }
    let Some((unit, end)) = unit_before_more(text, at, dimension) else {
        return Err(unit_error(text, at..text.len(), dimension));
    };
    let first = convert(text, number, unit, end)?;
    parts(text, unit, end, dimension)
        .map(|rest| if number.value.is_sign_negative() { first - rest } else { first + rest })
}

/// Characters of the longest spelling in the table, with room for doubled spaces.
const LONGEST_UNIT: usize = 24;

/// The longest known unit that starts at `at` and is followed by something else.
fn unit_before_more(text: &str, at: usize, dimension: Dimension) -> Option<(&'static Unit, usize)> {
    let ends: Vec<usize> = text[at..].char_indices().map(|(i, _)| at + i).skip(1).take(LONGEST_UNIT).collect();
    ends.into_iter().rev().find_map(|end| {
        let last = text[at..end].chars().next_back()?;
        let joined = last.is_alphanumeric() && text[end..].starts_with(char::is_alphabetic);
        match units::find(&text[at..end], dimension) {
            Found::Unit(unit) if !joined && !last.is_whitespace() => Some((unit, end)),
            _ => None,
        }
    })
}

/// The smaller parts after the first: ` 6 in` of `5 ft 6 in`, as SI, never negative.
fn parts(text: &str, first: &Unit, from: usize, dimension: Dimension) -> Result<f64, ParseError> {
    let (mut sum, mut larger, mut at) = (0.0, one(first), from);
    loop {
        at = skip_spaces(text, at);
        if at == text.len() {
            return Ok(sum);
        }
        let dash = usize::from(text[at..].starts_with('-') && text[at + 1..].starts_with(|c: char| c.is_ascii_digit()));
        let start = at + dash;
        let composed = matches!(dimension, Dimension::Length | Dimension::Mass);
        if !composed || !text[start..].starts_with(|c: char| c.is_ascii_digit()) {
            return Err(ParseError::Trailing { span: at..text.len(), text: text[at..].to_owned() });
        }
        let number = number::read(text, start)?;
        let unit_at = skip_spaces(text, number.span.end);
        if unit_at == text.len() {
            return Err(ParseError::MissingUnit { span: number.span, wanted: dimension });
        }
        let (unit, end) = match units::find(&text[unit_at..], dimension) {
            Found::Unit(unit) => (unit, text.len()),
            _ => unit_before_more(text, unit_at, dimension)
                .ok_or_else(|| unit_error(text, unit_at..text.len(), dimension))?,
        };
        let value = convert(text, &number, unit, end)?;
        if one(unit) >= larger || value >= larger {
            return Err(ParseError::BadParts { span: start..end });
        }
        sum += value;
        larger = one(unit);
        at = end;
    }
}

fn one(unit: &Unit) -> f64 {
    match unit.conversion {
        Conversion::Factor(f) | Conversion::Tangent(f) | Conversion::ArcTangent(f) => f,
    }
}

fn convert(text: &str, number: &Number, unit: &Unit, end: usize) -> Result<f64, ParseError> {
    if unit.coarse && number.like_thousands {
        let written = text[number.span.clone()].trim_start_matches(['+', '-', '−']);
        let (whole, part) = written.split_once('.').unwrap_or((written, ""));
        let readings = number::readings(number.value < 0.0, whole, part);
        return Err(ParseError::AmbiguousSeparator { span: number.span.clone(), readings });
    }
    Ok(match unit.conversion {
        Conversion::Factor(factor) => scaled(number.value, factor),
        Conversion::ArcTangent(factor) => libm::atan(factor * number.value),
        Conversion::Tangent(factor) => {
            let angle = factor * number.value;
            // A hair below 90° is no slope either: 1:1000 of a radian off is 1000 to 1.
            if angle.abs() > FRAC_PI_2 - 1e-3 {
                return Err(ParseError::TooSteep { span: number.span.start..end });
            }
            libm::tan(angle)
        }
    })
}

/// `value · factor`, divided instead where the factor is a power of ten below one, so that `7 %` is exactly 0.07.
fn scaled(value: f64, factor: f64) -> f64 {
    let inverse = (1.0 / factor).round();
    if factor < 1.0 && 1.0 / inverse == factor { value / inverse } else { value * factor }
}

/// What is wrong with the text at `span`, where a unit of `wanted` should stand.
fn unit_error(text: &str, span: Range<usize>, wanted: Dimension) -> ParseError {
    let unit = text[span.clone()].to_owned();
    match units::find(&unit, wanted) {
        Found::Ambiguous(choices) => ParseError::AmbiguousUnit { span, unit, choices },
        Found::Other(found) => ParseError::WrongDimension { span, unit, found, wanted },
        Found::Unit(_) | Found::Nothing => {
            if wanted == Dimension::Number {
                return ParseError::Trailing { span, text: unit };
            }
            let nearest = units::nearest(&unit, wanted);
            ParseError::UnknownUnit { span, unit, nearest, wanted }
        }
    }
}
