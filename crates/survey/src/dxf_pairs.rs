//! Group codes and values of a DXF file, text or binary, one after another and without copies.
//!
//! Source of the layout: the published DXF reference (from memory), group code ranges and binary
//! form. A line where a group code should stand and does not is skipped and counted, so that a file
//! with stray lines is read on from the next code.

/// First bytes of a binary drawing.
const SENTINEL: &[u8] = b"AutoCAD Binary DXF\r\n\x1a\0";

/// A value beside its group code.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) enum Value<'a> {
    /// As written, without blanks around it; every value of a text file.
    Text(&'a [u8]),
    /// Whole number of a binary file.
    Int(i64),
    /// Number of a binary file.
    Real(f64),
    /// Bytes that mean nothing here.
    Chunk,
}

/// A group code with its value.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Pair<'a> {
    pub(crate) code: i32,
    pub(crate) value: Value<'a>,
    /// Line of the code from 1; in binary files the number of the pair.
    pub(crate) line: usize,
}

#[derive(Debug, Clone, Copy, PartialEq)]
enum Form {
    Text { newline: u8 },
    Binary { wide: bool },
}

/// The bytes and where in them one is.
#[derive(Debug, Clone)]
pub(crate) struct Pairs<'a> {
    bytes: &'a [u8],
    form: Form,
    at: usize,
    line: usize,
    /// Lines skipped because no group code stood there.
    pub(crate) skipped: usize,
    /// The first of these.
    pub(crate) first_skipped: Option<usize>,
    /// The bytes ended inside a pair, or a binary code is none.
    pub(crate) cut: bool,
}

impl<'a> Pairs<'a> {
    pub(crate) fn new(bytes: &'a [u8]) -> Self {
        let (form, at) = if bytes.starts_with(SENTINEL) {
            // Codes have two bytes since R13: the first pair is code 0 with "SECTION".
            let wide = bytes.get(SENTINEL.len() + 1) == Some(&0);
            (Form::Binary { wide }, SENTINEL.len())
        } else {
            let start = if bytes.starts_with(b"\xEF\xBB\xBF") { 3 } else { 0 };
            let newline = if bytes.contains(&b'\n') { b'\n' } else { b'\r' };
            (Form::Text { newline }, start)
        };
        Self { bytes, form, at, line: 1, skipped: 0, first_skipped: None, cut: false }
    }

    /// The same bytes from a place that [`Pairs::place`] gave.
    pub(crate) fn from(&self, place: (usize, usize)) -> Self {
        Self { at: place.0, line: place.1, skipped: 0, first_skipped: None, cut: false, ..self.clone() }
    }

    /// Lines that a pair takes.
    pub(crate) fn lines_each(&self) -> usize {
        if matches!(self.form, Form::Text { .. }) { 2 } else { 1 }
    }

    /// Offset and line of the next pair.
    pub(crate) fn place(&self) -> (usize, usize) {
        (self.at, self.line)
    }

    fn text_line(&mut self, newline: u8) -> Option<&'a [u8]> {
        let rest = self.bytes.get(self.at..).filter(|r| !r.is_empty())?;
        let end = rest.iter().position(|&b| b == newline);
        self.at += end.map_or(rest.len(), |e| e + 1);
        self.line += 1;
        Some(&rest[..end.unwrap_or(rest.len())])
    }

    fn text_pair(&mut self, newline: u8) -> Option<Pair<'a>> {
        loop {
            let line = self.line;
            let code_line = self.text_line(newline)?;
            let Some(code) = text_code(code_line) else {
                // Blank lines at the very end are no fault.
                if !code_line.trim_ascii().is_empty() || self.at < self.bytes.len() {
                    self.skipped += 1;
                    self.first_skipped = self.first_skipped.or(Some(line));
                }
                continue;
            };
            let Some(value) = self.text_line(newline) else {
                self.cut = true;
                return None;
            };
            return Some(Pair { code, value: Value::Text(value.trim_ascii()), line });
        }
    }

    fn take(&mut self, n: usize) -> Option<&'a [u8]> {
        let found = self.bytes.get(self.at..)?.get(..n)?;
        self.at += n;
        Some(found)
    }

    fn small(&mut self) -> Option<i64> {
        self.take(2).map(|b| i64::from(i16::from_le_bytes([b[0], b[1]])))
    }

    fn binary_pair(&mut self, wide: bool) -> Option<Pair<'a>> {
        let line = self.line;
        let code = if wide {
            self.small()?
        } else {
            match self.take(1)?[0] {
                255 => self.small()?,
                code => i64::from(code),
            }
        };
        let code = i32::try_from(code).ok()?;
        let value = match code {
            0..=9
            | 100..=105
            | 300..=309
            | 320..=369
            | 390..=399
            | 410..=419
            | 430..=439
            | 470..=481
            | 999..=1003
            | 1005..=1009 => {
                let rest = self.bytes.get(self.at..)?;
                let end = rest.iter().position(|&b| b == 0)?;
                self.at += end + 1;
                Value::Text(rest[..end].trim_ascii())
            }
            10..=59 | 110..=149 | 210..=239 | 460..=469 | 1010..=1059 => {
                Value::Real(f64::from_le_bytes(self.take(8)?.try_into().ok()?))
            }
            60..=79 | 170..=179 | 270..=289 | 370..=389 | 400..=409 | 1060..=1070 => Value::Int(self.small()?),
            90..=99 | 420..=429 | 440..=459 | 1071 => {
                Value::Int(i64::from(i32::from_le_bytes(self.take(4)?.try_into().ok()?)))
            }
            160..=169 => Value::Int(i64::from_le_bytes(self.take(8)?.try_into().ok()?)),
            290..=299 => Value::Int(i64::from(self.take(1)?[0])),
            310..=319 | 1004 => {
                let n = usize::from(self.take(1)?[0]);
                self.take(n)?;
                Value::Chunk
            }
            _ => return None,
        };
        self.line += 1;
        Some(Pair { code, value, line })
    }
}

impl<'a> Iterator for Pairs<'a> {
    type Item = Pair<'a>;

    fn next(&mut self) -> Option<Pair<'a>> {
        loop {
            let pair = match self.form {
                Form::Text { newline } => self.text_pair(newline)?,
                Form::Binary { wide } => {
                    let pair = self.binary_pair(wide);
                    if pair.is_none() && self.at < self.bytes.len() {
                        self.cut = true;
                        self.at = self.bytes.len();
                    }
                    pair?
                }
            };
            if pair.code != 999 {
                return Some(pair);
            }
        }
    }
}

/// A group code as text files write it: a short whole number with blanks around.
fn text_code(line: &[u8]) -> Option<i32> {
    let digits = line.trim_ascii();
    if digits.is_empty() || digits.len() > 5 {
        return None;
    }
    let code: i32 = std::str::from_utf8(digits).ok()?.parse().ok()?;
    (-5..=1071).contains(&code).then_some(code)
}

impl<'a> Value<'a> {
    /// The text, if it is one.
    pub(crate) fn text(self) -> Option<&'a [u8]> {
        match self {
            Self::Text(text) => Some(text),
            _ => None,
        }
    }

    /// The number; texts are taken apart.
    pub(crate) fn real(self) -> Option<f64> {
        match self {
            Self::Text(text) => std::str::from_utf8(text).ok()?.parse().ok(),
            #[allow(clippy::cast_precision_loss, reason = "whole numbers of a drawing are small")]
            Self::Int(n) => Some(n as f64),
            Self::Real(x) => Some(x),
            Self::Chunk => None,
        }
    }

    /// The whole number; texts are taken apart.
    pub(crate) fn int(self) -> Option<i64> {
        match self {
            Self::Text(text) => std::str::from_utf8(text).ok()?.parse().ok(),
            Self::Int(n) => Some(n),
            Self::Real(_) | Self::Chunk => None,
        }
    }
}
