//! The table beside a Shapefile: dBASE III, as Shapefiles use it.

use crate::feature::Attribute;
use crate::notes::{Notes, Refused};
use crate::text;
use std::collections::BTreeMap;

/// The rows, in order of the shapes.
pub(crate) struct Table {
    pub(crate) rows: Vec<BTreeMap<String, Attribute>>,
}

struct Field {
    name: String,
    kind: u8,
    length: usize,
}

/// How the bytes of a text are read.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Encoding {
    Utf8,
    /// Windows-1252, and ISO 8859-1 with it: they differ only in bytes that 8859-1 does not use.
    Western,
    /// Only what all code pages share.
    Unknown,
}

/// Reads a table. The code page is what the `.cpg` says, else the mark in the header of the table.
pub(crate) fn read(bytes: &[u8], cpg: Option<&[u8]>, notes: &mut Notes<'_>) -> Result<Table, Refused> {
    if bytes.len() < 33 {
        return Err(notes.refuse("survey::truncated", text::TABLE_CUT, text::DO_COPY_AGAIN));
    }
    let short = |at: usize| usize::from(u16::from_le_bytes([bytes[at], bytes[at + 1]]));
    let count = u32::from_le_bytes([bytes[4], bytes[5], bytes[6], bytes[7]]) as usize;
    let (start, width) = (short(8), short(10));
    let needed = count.saturating_mul(width).saturating_add(start);
    if start < 33 || width == 0 || start > bytes.len() {
        return Err(notes.refuse("survey::damaged", text::TABLE_ABSURD, text::DO_COPY_AGAIN));
    }
    if needed > bytes.len() {
        let message = text::TRUNCATED.with("needed", needed).with("found", bytes.len());
        return Err(notes.refuse("survey::truncated", message, text::DO_COPY_AGAIN));
    }
    let encoding = encoding(bytes[29], cpg);
    let mut fields = Vec::new();
    let mut total = 1;
    for field in bytes[32..start].chunks_exact(32).take_while(|f| f[0] != 0x0D) {
        let end = field[..11].iter().position(|b| *b == 0).unwrap_or(11);
        let (name, _) = decode(&field[..end], encoding);
        let length = usize::from(field[16]);
        total += length;
        fields.push(Field { name, kind: field[11].to_ascii_uppercase(), length });
    }
    if total > width {
        return Err(notes.refuse("survey::damaged", text::TABLE_ABSURD, text::DO_COPY_AGAIN));
    }
    let mut unreadable = 0_usize;
    let mut rows = Vec::with_capacity(count);
    for row in bytes[start..needed].chunks_exact(width) {
        let mut at = 1;
        let mut values = BTreeMap::new();
        for field in &fields {
            let (text, clean) = decode(&row[at..at + field.length], encoding);
            at += field.length;
            unreadable += usize::from(!clean);
            values.insert(field.name.clone(), value(field.kind, &text));
        }
        rows.push(values);
    }
    if unreadable > 0 {
        let message = text::TABLE_WORDS.with("count", unreadable);
        notes.warn("survey::code-page", message, text::DO_GIVE_CODE_PAGE);
    }
    Ok(Table { rows })
}

fn value(kind: u8, text: &str) -> Attribute {
    let plain = text.trim_matches(['\0', ' ']);
    if plain.is_empty() {
        return Attribute::Nothing;
    }
    match kind {
        // A number that does not fit is written as stars.
        b'N' | b'F' => plain.parse().ok().filter(|n: &f64| n.is_finite()).map_or(Attribute::Nothing, Attribute::Number),
        b'L' => match plain {
            "T" | "t" | "Y" | "y" => Attribute::YesNo(true),
            "F" | "f" | "N" | "n" => Attribute::YesNo(false),
            _ => Attribute::Nothing,
        },
        _ => Attribute::Text(plain.to_owned()),
    }
}

fn encoding(mark: u8, cpg: Option<&[u8]>) -> Encoding {
    if let Some(cpg) = cpg {
        let word: String =
            String::from_utf8_lossy(cpg).chars().filter(char::is_ascii_alphanumeric).collect::<String>().to_lowercase();
        return match word.as_str() {
            "utf8" | "65001" | "cp65001" => Encoding::Utf8,
            "1252" | "cp1252" | "windows1252" | "ansi1252" | "iso88591" | "88591" | "latin1" => Encoding::Western,
            _ => Encoding::Unknown,
        };
    }
    match mark {
        0x03 | 0x57 | 0x58 | 0x59 => Encoding::Western,
        _ => Encoding::Unknown,
    }
}

/// Windows-1252, 0x80 to 0x9F; 0 where it has no character.
const WESTERN: [u16; 32] = [
    0x20AC, 0, 0x201A, 0x0192, 0x201E, 0x2026, 0x2020, 0x2021, 0x02C6, 0x2030, 0x0160, 0x2039, 0x0152, 0, 0x017D, 0, 0,
    0x2018, 0x2019, 0x201C, 0x201D, 0x2022, 0x2013, 0x2014, 0x02DC, 0x2122, 0x0161, 0x203A, 0x0153, 0, 0x017E, 0x0178,
];

/// The text, and whether every byte of it could be read.
fn decode(bytes: &[u8], encoding: Encoding) -> (String, bool) {
    match encoding {
        // A text cut at the field's length may end inside a character.
        _ if bytes.is_ascii() => (String::from_utf8_lossy(bytes).into_owned(), true),
        Encoding::Utf8 => {
            let text = String::from_utf8_lossy(bytes);
            let clean = !text.trim_end_matches(char::REPLACEMENT_CHARACTER).contains(char::REPLACEMENT_CHARACTER);
            (text.trim_end_matches(char::REPLACEMENT_CHARACTER).to_owned(), clean)
        }
        Encoding::Western => {
            let letter = |b: &u8| match b {
                0x80..=0x9F => char::from_u32(u32::from(WESTERN[usize::from(b - 0x80)])).unwrap_or('\u{FFFD}'),
                b => char::from(*b),
            };
            (bytes.iter().map(letter).collect(), true)
        }
        Encoding::Unknown => {
            let letter = |b: &u8| if b.is_ascii() { char::from(*b) } else { char::REPLACEMENT_CHARACTER };
            (bytes.iter().map(letter).collect(), false)
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn umlauts_by_code_page() {
        let utf8 = encoding(0, Some(b"UTF-8\r\n"));
        assert_eq!(decode("Straße".as_bytes(), utf8), ("Straße".to_owned(), true));
        assert_eq!(decode(b"Stra\xDFe \x80", encoding(0x57, None)), ("Straße €".to_owned(), true));
        assert_eq!(decode(b"Stra\xDFe", encoding(0, Some(b"ISO 8859-1"))).0, "Straße");
        assert_eq!(decode(b"Stra\xE1e", encoding(0x02, None)), ("Stra\u{FFFD}e".to_owned(), false));
        assert_eq!(decode(b"plain", encoding(0xC9, None)), ("plain".to_owned(), true));
        assert_eq!(decode(b"cut \xC3", utf8), ("cut ".to_owned(), true));
    }

    #[test]
    fn values_by_kind() {
        assert_eq!(value(b'N', "  12.5"), Attribute::Number(12.5));
        assert_eq!(value(b'N', "****"), Attribute::Nothing);
        assert_eq!(value(b'L', "T"), Attribute::YesNo(true));
        assert_eq!(value(b'L', "?"), Attribute::Nothing);
        assert_eq!(value(b'C', "  "), Attribute::Nothing);
        assert_eq!(value(b'D', "20240131"), Attribute::Text("20240131".to_owned()));
    }
}
