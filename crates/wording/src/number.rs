//! Numbers as a reader of a language writes them.

use crate::Language;
use quantity::{Dimension, Displayed, Quantity, UnitSystem};

/// Stands between a number and its unit, so that no line ends there.
const NO_BREAK_SPACE: char = '\u{a0}';
/// Stands between groups of three digits in Spanish.
const NARROW_SPACE: char = '\u{202f}';

/// A quantity with its unit, which is that of `largest` (SI, of the same dimension), or None if it is not a finite
/// number.
pub(crate) fn quantity(quantity: Quantity, largest: f64, units: UnitSystem, language: Language) -> Option<String> {
    let shown = quantity.display_beside(units, largest);
    shown.digits().map(|digits| with_unit(&localise(&digits, language), shown))
}

/// A quantity of a working, with the digits that repeating it by hand takes; trailing zeros are dropped.
pub(crate) fn worked(quantity: Quantity, units: UnitSystem, language: Language) -> Option<String> {
    let shown = quantity.display_worked(units);
    let digits = shown.digits()?;
    let plain = if digits.contains('.') { digits.trim_end_matches('0').trim_end_matches('.') } else { &digits };
    Some(with_unit(&localise(plain, language), shown))
}

/// The largest of the finite values of `dimension`, in SI and without its sign; 0 where there is none.
pub(crate) fn largest(quantities: impl IntoIterator<Item = Quantity>, dimension: Dimension) -> f64 {
    let sizes = quantities.into_iter().filter(|q| q.dimension == dimension).map(|q| q.si.abs());
    sizes.filter(|s| s.is_finite()).fold(0.0, f64::max)
}

fn with_unit(digits: &str, shown: Displayed) -> String {
    match shown.unit {
        "" => digits.to_owned(),
        // The degree sign stands against the number (ISO 80000-1, 7.2.2), every other symbol apart.
        "°" => format!("{digits}°"),
        unit => format!("{digits}{NO_BREAK_SPACE}{unit}"),
    }
}

/// Decimal mark and grouping of `digits`, which has a point and no groups. A minus becomes the true minus sign.
///
/// English: `12,345.6`. Spanish: `12 345,6` with a narrow space and four digits together, `1234,5`
/// (Ortografía de la lengua española 2010, VIII).
pub(crate) fn localise(digits: &str, language: Language) -> String {
    let (negative, digits) = digits.strip_prefix('-').map_or((false, digits), |d| (true, d));
    let (whole, part) = digits.split_once('.').map_or((digits, None), |(w, p)| (w, Some(p)));
    let (mark, group, from) = match language {
        Language::English => ('.', ',', 4),
        Language::Spanish => (',', NARROW_SPACE, 5),
    };
    let mut out = String::with_capacity(digits.len() + 8);
    if negative {
        out.push('−');
    }
    for (i, digit) in whole.chars().enumerate() {
        if i > 0 && whole.len() >= from && (whole.len() - i).is_multiple_of(3) {
            out.push(group);
        }
        out.push(digit);
    }
    if let Some(part) = part {
        out.push(mark);
        out.push_str(part);
    }
    out
}
