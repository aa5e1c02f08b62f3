//! The characters of an XML file, in whatever encoding it says.

use crate::notes::{Notes, Refused};
use crate::text;
use encoding_rs::{Encoding, UTF_8, UTF_16BE, UTF_16LE};
use std::borrow::Cow;

/// Decodes the bytes: by their byte order mark, else as their first bytes show UTF-16, else as the
/// XML declaration says, else as UTF-8. Bytes that are not of that encoding are refused: a number
/// may be among them.
pub(crate) fn decode<'a>(bytes: &'a [u8], notes: &mut Notes<'_>) -> Result<Cow<'a, str>, Refused> {
    let (encoding, body) = if let Some((encoding, mark)) = Encoding::for_bom(bytes) {
        (encoding, &bytes[mark..])
    } else if let Some(encoding) = wide(bytes) {
        (encoding, bytes)
    } else if let Some(label) = declared(bytes) {
        let Some(encoding) = Encoding::for_label(label) else {
            let message = text::XML_ENCODING_UNKNOWN.with("encoding", String::from_utf8_lossy(label).into_owned());
            return Err(notes.refuse_line("survey::text-encoding", 1, message, text::DO_SAVE_UTF8));
        };
        // A declaration that could be read byte by byte is not in UTF-16, whatever it says.
        (if encoding == UTF_16LE || encoding == UTF_16BE { UTF_8 } else { encoding }, bytes)
    } else {
        (UTF_8, bytes)
    };
    encoding.decode_without_bom_handling_and_without_replacement(body).ok_or_else(|| {
        let message = text::XML_ENCODING_WRONG.with("encoding", encoding.name());
        notes.refuse("survey::text-encoding", message, text::DO_SAVE_UTF8)
    })
}

/// UTF-16 without a byte order mark: `<` and a zero.
fn wide(bytes: &[u8]) -> Option<&'static Encoding> {
    match bytes {
        [b'<', 0, ..] => Some(UTF_16LE),
        [0, b'<', ..] => Some(UTF_16BE),
        _ => None,
    }
}

/// The encoding that the XML declaration names.
fn declared(bytes: &[u8]) -> Option<&[u8]> {
    let head = &bytes[..bytes.len().min(256)];
    let end = head.windows(2).position(|w| w == b"?>")?;
    let head = head[..end].strip_prefix(b"<?xml")?;
    let word = b"encoding";
    let rest = &head[head.windows(word.len()).position(|w| w == word)? + word.len()..];
    let rest = rest.trim_ascii_start().strip_prefix(b"=")?.trim_ascii_start();
    let (&quote, rest) = rest.split_first().filter(|(q, _)| matches!(q, b'"' | b'\''))?;
    rest.iter().position(|b| *b == quote).map(|end| &rest[..end])
}

/// The first characters in one byte each, for telling kinds apart: every second byte of UTF-16.
pub(crate) fn head_of(bytes: &[u8]) -> Vec<u8> {
    let head = &bytes[..bytes.len().min(8192)];
    let is_wide = wide(head).is_some() || head.starts_with(&[0xFF, 0xFE]) || head.starts_with(&[0xFE, 0xFF]);
    if is_wide { head.iter().copied().filter(|b| *b != 0 && *b < 0x80).collect() } else { head.to_vec() }
}
