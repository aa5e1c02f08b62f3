//! Header and records of a LAS or LAZ file (ASPRS LAS 1.0 to 1.4), checked against the byte
//! length before anything is decoded or allocated.

use crate::crs::CrsStatements;
use crate::geo_keys::{GeoKeys, doubles_from_le, shorts_from_le};
use crate::notes::{Notes, Refused};
use crate::text;
use geometry::DVec3;
use las::raw::Header;

/// Most points that one compressed byte may stand for, beyond [`POINTS_OF_ANY_FILE`]. Real surveys reach
/// about 0.2; a header that declares more than this lies, and would be decoded into memory without end.
pub(crate) const MOST_POINTS_PER_BYTE: u64 = 16;

/// Points that any compressed file may declare: a million at one and the same place reach 141 a byte, a flat
/// raster 84. They take 24 MiB.
const POINTS_OF_ANY_FILE: u64 = 1_000_000;

/// Most points of a file: about a minute of decoding.
pub(crate) const MOST_POINTS: u64 = 1_000_000_000;

/// Sizes of the point formats 0 to 10 without extra bytes (LAS 1.4 R15, tables 7 to 17).
const RECORD_SIZES: [u16; 11] = [20, 28, 26, 34, 57, 63, 30, 36, 38, 59, 67];

/// A LAS or LAZ file whose header holds.
#[derive(Debug)]
pub(crate) struct CloudHeader {
    /// Point records.
    pub(crate) points: u64,
    /// Bytes of a record.
    pub(crate) record_length: usize,
    /// Point format 0 to 10.
    pub(crate) format: u8,
    /// First byte of the point data.
    pub(crate) data_start: usize,
    /// Coordinate = record × scale + offset, in file units.
    pub(crate) scale: DVec3,
    /// See `scale`.
    pub(crate) offset: DVec3,
    /// Smallest and largest corner as the header declares them, file units.
    pub(crate) declared: (DVec3, DVec3),
    /// What the file says about its coordinates.
    pub(crate) crs: CrsStatements,
    /// Present in compressed files.
    pub(crate) laz: Option<laz::LazVlr>,
}

/// Reads and checks the header. Refuses: cut short, absurd counts, no points, unknown formats,
/// scales that are no numbers.
pub(crate) fn read(bytes: &[u8], notes: &mut Notes<'_>) -> Result<CloudHeader, Refused> {
    let Ok(raw) = Header::read_from(bytes) else {
        return Err(notes.refuse("survey::truncated", text::HEADER_CUT, text::DO_COPY_AGAIN));
    };
    let (header_size, data_start) = (usize::from(raw.header_size), raw.offset_to_point_data as usize);
    if raw.header_size < raw.version.header_size() || data_start < header_size || raw.version.major != 1 {
        return Err(notes.refuse("survey::damaged", text::HEADER_ABSURD, text::DO_COPY_AGAIN));
    }
    if data_start > bytes.len() {
        let message = text::TRUNCATED.with("needed", data_start).with("found", bytes.len());
        return Err(notes.refuse("survey::truncated", message, text::DO_COPY_AGAIN));
    }
    let records = read_records(&raw, bytes, notes)?;
    let compressed = raw.point_data_record_format & 0x80 != 0;
    // Bits 6 and 7 mark compression; bit 6 alone was never used.
    let format = raw.point_data_record_format & 0x3F;
    let points = match raw.large_file {
        Some(large) if raw.number_of_point_records == 0 => large.number_of_point_records,
        _ => u64::from(raw.number_of_point_records),
    };
    let least = RECORD_SIZES.get(usize::from(format)).copied();
    if least.is_none_or(|least| raw.point_data_record_length < least) {
        let message = text::POINT_FORMAT
            .with("format", usize::from(format))
            .with("length", usize::from(raw.point_data_record_length));
        return Err(notes.refuse("survey::point-format", message, text::DO_EXPORT_AGAIN));
    }
    let record_length = usize::from(raw.point_data_record_length);
    let scale = DVec3::new(raw.x_scale_factor, raw.y_scale_factor, raw.z_scale_factor);
    let offset = DVec3::new(raw.x_offset, raw.y_offset, raw.z_offset);
    if !scale.is_finite() || !offset.is_finite() || scale.min_element() <= 0.0 {
        return Err(notes.refuse("survey::damaged", text::HEADER_ABSURD, text::DO_EXPORT_AGAIN));
    }
    if points == 0 {
        return Err(notes.refuse("survey::no-points", text::NO_POINTS, text::DO_EXPORT_AGAIN));
    }
    if points < 3 {
        let message = text::TOO_FEW_POINTS.with("points", count(points));
        return Err(notes.refuse("survey::too-few-points", message, text::DO_MORE_POINTS));
    }
    check_length(points, record_length, data_start, compressed, bytes.len(), notes)?;
    let laz = if compressed { Some(laz_record(records.laz, format, &raw, notes)?) } else { None };
    let declared = (DVec3::new(raw.min_x, raw.min_y, raw.min_z), DVec3::new(raw.max_x, raw.max_y, raw.max_z));
    Ok(CloudHeader { points, record_length, format, data_start, scale, offset, declared, crs: records.crs, laz })
}

fn check_length(
    points: u64,
    record_length: usize,
    data_start: usize,
    compressed: bool,
    length: usize,
    notes: &mut Notes<'_>,
) -> Result<(), Refused> {
    let room = (length - data_start) as u64;
    if compressed {
        if points > room.saturating_mul(MOST_POINTS_PER_BYTE).saturating_add(POINTS_OF_ANY_FILE) {
            let message = text::TOO_FEW_BYTES.with("points", count(points)).with("bytes", count(room));
            return Err(notes.refuse("survey::truncated", message, text::DO_COPY_AGAIN));
        }
    } else {
        let needed = points.saturating_mul(record_length as u64);
        if needed > room {
            let message =
                text::TRUNCATED.with("needed", count(needed.saturating_add(data_start as u64))).with("found", length);
            return Err(notes.refuse("survey::truncated", message, text::DO_COPY_AGAIN));
        }
    }
    if points > MOST_POINTS {
        let message = text::TOO_MANY_POINTS.with("points", count(points)).with("most", count(MOST_POINTS));
        return Err(notes.refuse("survey::too-many-points", message, text::DO_CUT_OUT));
    }
    Ok(())
}

/// A count as an argument of a text.
pub(crate) fn count(n: u64) -> i64 {
    i64::try_from(n).unwrap_or(i64::MAX)
}

/// The record that describes the compression, held against the point format.
fn laz_record(record: Option<&[u8]>, format: u8, raw: &Header, notes: &mut Notes<'_>) -> Result<laz::LazVlr, Refused> {
    let extra = raw.point_data_record_length - RECORD_SIZES[usize::from(format)];
    let read = record.and_then(|data| laz::LazVlr::from_buffer(data).ok());
    let wanted = laz::LazItemRecordBuilder::default_for_point_format_id(format, extra);
    let (Some(vlr), Ok(wanted)) = (read, wanted) else {
        return Err(notes.refuse("survey::damaged", text::COMPRESSION_UNKNOWN, text::DO_EXPORT_PLAIN));
    };
    // Items that don't add up to the record would make the decoder write past its buffers.
    let same = |(a, b): (&laz::LazItem, &laz::LazItem)| a.item_type() == b.item_type() && a.size() == b.size();
    if vlr.items().len() != wanted.len() || !vlr.items().iter().zip(&wanted).all(same) {
        return Err(notes.refuse("survey::damaged", text::COMPRESSION_UNKNOWN, text::DO_EXPORT_PLAIN));
    }
    Ok(in_one_stretch(&vlr).unwrap_or(vlr))
}

/// Old compressors wrote all points in one stretch and a chunk size of zero, which the decoder
/// takes for chunks of variable size and panics over. Any other size is ignored for such files.
fn in_one_stretch(vlr: &laz::LazVlr) -> Option<laz::LazVlr> {
    const ONE_STRETCH: u16 = 1;
    let mut record = Vec::new();
    vlr.write_to(&mut record).ok()?;
    let stretch = record.first_chunk().map(|b| u16::from_le_bytes(*b)) == Some(ONE_STRETCH);
    if !stretch || !vlr.uses_variable_size_chunks() {
        return None;
    }
    record.get_mut(12..16)?.copy_from_slice(&(u32::MAX - 1).to_le_bytes());
    laz::LazVlr::from_buffer(record).ok()
}

struct Records<'a> {
    crs: CrsStatements,
    laz: Option<&'a [u8]>,
}

/// Header of a variable-length record (LAS 1.4 R15, table 4) and of an extended one (table 5).
const RECORD_HEADER: usize = 54;
const EXTENDED_RECORD_HEADER: usize = 60;

/// Texts longer than this are not looked at.
const LONGEST_TEXT: usize = 1 << 20;

fn read_records<'a>(raw: &Header, bytes: &'a [u8], notes: &mut Notes<'_>) -> Result<Records<'a>, Refused> {
    let (start, end) = (usize::from(raw.header_size), raw.offset_to_point_data as usize);
    let declared = raw.number_of_variable_length_records as usize;
    if declared.saturating_mul(RECORD_HEADER) > end - start {
        let message = text::RECORD_COUNT_ABSURD.with("declared", declared).with("room", end - start);
        return Err(notes.refuse("survey::record-count", message, text::DO_EXPORT_AGAIN));
    }
    let mut found = Found::default();
    let mut at = start;
    for index in 0..declared {
        let Some((key, data)) = record(&bytes[..end], at, false) else {
            let message = text::RECORDS_MISSING.with("declared", declared).with("found", index);
            notes.warn("survey::records-missing", message, text::DO_CHECK_CRS);
            break;
        };
        at += RECORD_HEADER + data.len();
        found.add(&key, data);
    }
    if let Some(extended) = raw.evlr.filter(|e| e.number_of_evlrs > 0) {
        let start = usize::try_from(extended.start_of_first_evlr).unwrap_or(usize::MAX);
        if start > bytes.len() {
            let message = text::TRUNCATED.with("needed", start).with("found", bytes.len());
            return Err(notes.refuse("survey::truncated", message, text::DO_COPY_AGAIN));
        }
        let mut at = start;
        for index in 0..extended.number_of_evlrs {
            let Some((key, data)) = record(bytes, at, true) else {
                let message = text::RECORDS_MISSING
                    .with("declared", i64::from(extended.number_of_evlrs))
                    .with("found", i64::from(index));
                notes.warn("survey::records-missing", message, text::DO_CHECK_CRS);
                break;
            };
            at += EXTENDED_RECORD_HEADER + data.len();
            found.add(&key, data);
        }
    }
    Ok(found.records())
}

/// Who wrote a record, and its number.
struct RecordKey {
    user: Vec<u8>,
    id: u16,
}

fn record(bytes: &[u8], at: usize, extended: bool) -> Option<(RecordKey, &[u8])> {
    let size = if extended { EXTENDED_RECORD_HEADER } else { RECORD_HEADER };
    let head = bytes.get(at..at.checked_add(size)?)?;
    let user = head[2..18].split(|&b| b == 0).next().unwrap_or_default().to_vec();
    let id = u16::from_le_bytes([head[18], head[19]]);
    let length = if extended {
        usize::try_from(u64::from_le_bytes([
            head[20], head[21], head[22], head[23], head[24], head[25], head[26], head[27],
        ]))
        .ok()?
    } else {
        usize::from(u16::from_le_bytes([head[20], head[21]]))
    };
    let start = at + size;
    Some((RecordKey { user, id }, bytes.get(start..start.checked_add(length)?)?))
}

#[derive(Default)]
struct Found<'a> {
    directory: &'a [u8],
    doubles: &'a [u8],
    ascii: &'a [u8],
    texts: Vec<String>,
    laz: Option<&'a [u8]>,
}

impl<'a> Found<'a> {
    fn add(&mut self, key: &RecordKey, data: &'a [u8]) {
        match (key.user.as_slice(), key.id) {
            (b"LASF_Projection", 34735) => self.directory = data,
            (b"LASF_Projection", 34736) => self.doubles = data,
            (b"LASF_Projection", 34737) => self.ascii = data,
            (b"LASF_Projection" | b"liblas", 2112) if data.len() <= LONGEST_TEXT => {
                self.texts.push(String::from_utf8_lossy(data).into_owned());
            }
            (b"laszip encoded", 22204) => self.laz = Some(data),
            _ => {}
        }
    }

    fn records(self) -> Records<'a> {
        let mut crs = CrsStatements::default();
        let keys = GeoKeys::new(shorts_from_le(self.directory), doubles_from_le(self.doubles), self.ascii.to_vec());
        if !keys.is_empty() {
            crs.add_keys(&keys);
        }
        for text in &self.texts {
            crs.add_text(text);
        }
        Records { crs, laz: self.laz }
    }
}
