//! What kind of file it is: by first bytes, then by name.

use crate::notes::{Notes, Refused};
use crate::text;
use serde::Serialize;

/// A kind of survey file.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum FileKind {
    /// Point cloud, plain.
    Las,
    /// Point cloud, compressed.
    Laz,
    /// Height grid.
    GeoTiff,
    /// Level points as text.
    Levels,
    /// Surfaces, survey points and plan features as XML.
    LandXml,
    /// Drawing.
    Dxf,
    /// Shapes as JSON.
    GeoJson,
    /// Shapes with a table beside them.
    Shapefile,
    /// A site that this program stored.
    StoredSite,
}

/// First bytes of a stored site.
pub(crate) const STORED_MAGIC: &[u8] = b"\x89CPSITE\n";

/// First bytes count more than the name: a cloud renamed to `.txt` is a cloud.
pub(crate) fn sniff(name: &str, bytes: &[u8], notes: &mut Notes<'_>) -> Result<FileKind, Refused> {
    if bytes.is_empty() {
        return Err(notes.refuse("survey::empty", text::EMPTY, text::DO_COPY_AGAIN));
    }
    if bytes.starts_with(b"LASF") {
        // Compression is bit 7 of the point format (offset 104); readers check the rest.
        let compressed = bytes.get(104).is_some_and(|format| format & 0x80 != 0);
        return Ok(if compressed { FileKind::Laz } else { FileKind::Las });
    }
    if [b"II*\0", b"MM\0*", b"II+\0", b"MM\0+"].iter().any(|magic| bytes.starts_with(*magic)) {
        return Ok(FileKind::GeoTiff);
    }
    if bytes.starts_with(STORED_MAGIC) {
        return Ok(FileKind::StoredSite);
    }
    if bytes.starts_with(&[0x00, 0x00, 0x27, 0x0A]) {
        return Ok(FileKind::Shapefile);
    }
    let extension = name.rsplit_once('.').map_or(String::new(), |(_, e)| e.to_lowercase());
    if bytes.starts_with(b"AutoCAD Binary DXF") || (extension == "dxf" && !bytes.starts_with(b"AC10")) {
        return Ok(FileKind::Dxf);
    }
    let head = crate::xml_text::head_of(bytes);
    let head = head.trim_ascii_start();
    let head = head.strip_prefix(b"\xEF\xBB\xBF").unwrap_or(head).trim_ascii_start();
    let holds = |word: &[u8]| head.windows(word.len()).any(|w| w == word);
    if head.starts_with(b"<") && holds(b"LandXML") {
        return Ok(FileKind::LandXml);
    }
    if head.starts_with(b"{") && (extension == "geojson" || holds(b"Feature")) {
        return Ok(FileKind::GeoJson);
    }
    if [&b"glTF"[..], b"ISO-10303-21", b"AC10"].iter().any(|magic| head.starts_with(magic)) {
        return Err(notes.refuse("survey::model", text::MODEL, text::DO_OUTLINE_MODEL));
    }
    if [&b"\x89PNG"[..], b"\xFF\xD8\xFF"].iter().any(|magic| head.starts_with(magic)) {
        return Err(notes.refuse("survey::picture", text::PICTURE, text::DO_GIVE_KNOWN_KIND));
    }
    match extension.as_str() {
        "las" | "laz" | "tif" | "tiff" => {
            let message = text::NOT_THE_KIND.with("extension", extension);
            Err(notes.refuse("survey::not-the-kind", message, text::DO_COPY_AGAIN))
        }
        "csv" | "txt" | "xyz" | "pts" | "asc" | "tsv" if !looks_like_other_text(bytes) => Ok(FileKind::Levels),
        _ => Err(notes.refuse("survey::kind-unknown", text::KIND_UNKNOWN, text::DO_GIVE_KNOWN_KIND)),
    }
}

/// XML, JSON and binary files are no level lists, whatever they are called.
fn looks_like_other_text(bytes: &[u8]) -> bool {
    let head = &bytes[..bytes.len().min(4096)];
    let first = head.iter().find(|b| !b.is_ascii_whitespace());
    matches!(first, Some(b'<' | b'{' | b'[')) || (head.contains(&0) && !is_utf16(head))
}

/// UTF-16 text starts with its byte order mark; the level reader says what to do about it.
pub(crate) fn is_utf16(bytes: &[u8]) -> bool {
    bytes.starts_with(&[0xFF, 0xFE]) || bytes.starts_with(&[0xFE, 0xFF])
}
