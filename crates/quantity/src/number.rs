//! A written number: sign, digits, decimal point or comma, groups of three, exponent, fraction.

use crate::ParseError;
use core::ops::Range;

/// A number at the start of a text.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Number {
    pub(crate) value: f64,
    /// Bytes of the whole text that it takes.
    pub(crate) span: Range<usize>,
    /// True for `1.200`: a decimal point with just three digits after it and no leading zero.
    pub(crate) like_thousands: bool,
}

/// Reads the number that starts at byte `from` of `text`, which is no space.
pub(crate) fn read(text: &str, from: usize) -> Result<Number, ParseError> {
    let rest = &text[from..];
    let sign_length = rest.chars().next().filter(|c| matches!(c, '+' | '-' | '−')).map_or(0, char::len_utf8);
    let negative = sign_length > 0 && !rest.starts_with('+');
    let start = from + sign_length;
    if let Some(length) = not_finite(&text[start..]) {
        return Err(ParseError::NotFinite { span: from..start + length });
    }
    let digits_end = start + digits_length(&text[start..]);
    if !text[start..digits_end].contains(|c: char| c.is_ascii_digit()) {
        let end = from + rest.find(char::is_whitespace).unwrap_or(rest.len());
        return Err(ParseError::NoNumber { span: from..end });
    }
    let span = from..digits_end;
    let (plain, like_thousands) = plain_digits(&text[start..digits_end], negative, &span)?;
    let exponent = exponent_length(&text[digits_end..]);
    let mut end = digits_end + exponent;
    let mut value = parse_plain(&plain, &text[digits_end..end], &(from..end))?;
    if exponent == 0
        && plain.bytes().all(|b| b.is_ascii_digit())
        && let Some((fraction, length)) = fraction_after(&text[end..], value)
    {
        value = fraction;
        end += length;
    }
    Ok(Number {
        value: if negative { -value } else { value },
        span: from..end,
        like_thousands: like_thousands && exponent == 0,
    })
}

/// Length of a written NaN or infinity.
fn not_finite(text: &str) -> Option<usize> {
    let word: String = text.chars().take_while(char::is_ascii_alphabetic).collect();
    let known = ["nan", "inf", "infinity"].contains(&word.to_ascii_lowercase().as_str());
    if known { Some(word.len()) } else { text.starts_with('∞').then_some('∞'.len_utf8()) }
}

fn is_group_space(c: char) -> bool {
    matches!(c, ' ' | '\u{a0}' | '\u{2009}' | '\u{202f}')
}

/// Bytes of digits, points, commas, and spaces that stand between groups of three digits.
fn digits_length(text: &str) -> usize {
    let mut end = 0;
    loop {
        end += text[end..].find(|c: char| !matches!(c, '0'..='9' | '.' | ',')).unwrap_or(text.len() - end);
        let before = text[..end].bytes().rev().take_while(u8::is_ascii_digit).count();
        let mut after = text[end..].chars();
        let Some(space) = after.next().filter(|c| is_group_space(*c) && (1..=3).contains(&before)) else { return end };
        let group = after.as_str();
        let digits = group.bytes().take_while(u8::is_ascii_digit).count();
        // `5 123/1000` would be a fraction, and points or commas before a spaced group are no grouping.
        if digits != 3 || group[digits..].starts_with(['/', '⁄']) || text[..end].contains(['.', ',']) {
            return end;
        }
        end += space.len_utf8() + digits;
    }
}

/// Digits with at most one decimal point, and whether it looks like thousands.
fn plain_digits(written: &str, negative: bool, span: &Range<usize>) -> Result<(String, bool), ParseError> {
    let bad = || ParseError::BadNumber { span: span.clone() };
    let spaced = written.contains(is_group_space);
    let text: String = written.chars().filter(|c| !is_group_space(*c)).collect();
    let points = text.matches('.').count();
    let commas = text.matches(',').count();
    let (decimal, grouping) = match (points, commas) {
        (0, 0) => return Ok((text, false)),
        (1, 0) => (Some('.'), None),
        (0, 1) => (Some(','), None),
        (_, 0) => (None, Some('.')),
        (0, _) => (None, Some(',')),
        (1, _) if text.rfind('.') > text.rfind(',') => (Some('.'), Some(',')),
        (_, 1) if text.rfind(',') > text.rfind('.') => (Some(','), Some('.')),
        _ => return Err(bad()),
    };
    let (whole, part) = match decimal {
        Some(mark) => text.split_once(mark).map_or((text.as_str(), None), |(w, p)| (w, Some(p))),
        None => (text.as_str(), None),
    };
    if part.is_some_and(str::is_empty) {
        return Err(bad());
    }
    let digits = match grouping {
        None => whole.to_owned(),
        Some(mark) => {
            let groups: Vec<&str> = whole.split(mark).collect();
            let sound =
                groups.iter().enumerate().all(|(i, g)| if i == 0 { (1..=3).contains(&g.len()) } else { g.len() == 3 });
            if spaced || !sound || groups[0].starts_with('0') {
                return Err(bad());
            }
            groups.concat()
        }
    };
    let Some(part) = part else { return Ok((digits, false)) };
    let like_thousands =
        grouping.is_none() && part.len() == 3 && (1..=3).contains(&digits.len()) && !digits.starts_with('0');
    if like_thousands && decimal == Some(',') {
        return Err(ParseError::AmbiguousSeparator { span: span.clone(), readings: readings(negative, &digits, part) });
    }
    Ok((format!("{digits}.{part}"), like_thousands))
}

/// The two plain ways of writing `whole` and three more digits: as thousands, and as decimals that nobody takes for
/// thousands.
pub(crate) fn readings(negative: bool, whole: &str, part: &str) -> [String; 2] {
    let sign = if negative { "-" } else { "" };
    let decimals = match part.trim_end_matches('0') {
        "" => format!("{sign}{whole}"),
        short if short.len() == 3 => format!("{sign}{whole}.{short}0"),
        short => format!("{sign}{whole}.{short}"),
    };
    [format!("{sign}{whole}{part}"), decimals]
}

fn exponent_length(text: &str) -> usize {
    if !text.starts_with(['e', 'E']) {
        return 0;
    }
    let sign = usize::from(text[1..].starts_with(['+', '-']));
    let digits = text[1 + sign..].bytes().take_while(u8::is_ascii_digit).count();
    if digits == 0 { 0 } else { 1 + sign + digits }
}

fn parse_plain(digits: &str, exponent: &str, span: &Range<usize>) -> Result<f64, ParseError> {
    let value: f64 = format!("{digits}{exponent}").parse().map_err(|_| ParseError::BadNumber { span: span.clone() })?;
    if value.is_finite() { Ok(value) } else { Err(ParseError::NotFinite { span: span.clone() }) }
}

/// `/4` after 3, or ` 1/2` after 6: the value with it, and its length.
fn fraction_after(text: &str, value: f64) -> Option<(f64, usize)> {
    let number = |t: &str| -> Option<(f64, usize)> {
        let digits = t.bytes().take_while(u8::is_ascii_digit).count();
        (1..=4).contains(&digits).then(|| t[..digits].parse().ok().map(|v| (v, digits)))?
    };
    let slash = |t: &str| t.chars().next().filter(|c| matches!(c, '/' | '⁄')).map(char::len_utf8);
    let (whole, numerator, at) = if slash(text).is_some() {
        (0.0, value, 0)
    } else {
        let spaces = text.len() - text.trim_start().len();
        let (numerator, digits) = number(text.get(spaces..)?).filter(|_| spaces > 0)?;
        (value, numerator, spaces + digits)
    };
    let slash = slash(&text[at..])?;
    let (denominator, digits) = number(&text[at + slash..])?;
    let end = at + slash + digits;
    let mixed_sound = at == 0 || numerator < denominator;
    let ends = !text[end..].starts_with(|c: char| c.is_ascii_digit() || matches!(c, '.' | ','));
    (denominator > 0.0 && mixed_sound && ends).then(|| (whole + numerator / denominator, end))
}
