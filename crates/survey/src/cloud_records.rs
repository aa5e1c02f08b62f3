//! Point records of a cloud in blocks, plain or decompressed.

use crate::cloud_header::{CloudHeader, count};
use crate::notes::{Notes, Refused};
use crate::text;
use laz::DecompressionSelection;
use laz::laszip::{ChunkTable, CompressorType};
use std::io::{Cursor, Seek as _, SeekFrom};
use std::panic::AssertUnwindSafe;

/// Records decompressed at a time.
const BLOCK: usize = 8192;

/// Hands every record to `visit`, in blocks of whole records, in file order.
///
/// Call [`check_chunks`] first. What the decoder then still stumbles over, a panic of its own
/// included, is a refusal.
pub(crate) fn visit(
    header: &CloudHeader,
    bytes: &[u8],
    notes: &mut Notes<'_>,
    mut visit: impl FnMut(&[u8]),
) -> Result<(), Refused> {
    let total = usize::try_from(header.points).unwrap_or(usize::MAX);
    let Some(vlr) = &header.laz else {
        visit(&bytes[header.data_start..header.data_start + total * header.record_length]);
        return Ok(());
    };
    // The decoder asserts here and there instead of answering with an error.
    let result = std::panic::catch_unwind(AssertUnwindSafe(|| decompress(header, vlr.clone(), bytes, total, visit)));
    let detail = match result {
        Ok(Ok(())) => return Ok(()),
        Ok(Err(error)) => error.to_string(),
        Err(_) => String::from("laz"),
    };
    let message = text::DECODE_FAILED.with("detail", detail);
    Err(notes.refuse("survey::damaged", message, text::DO_COPY_AGAIN))
}

fn decompress(
    header: &CloudHeader,
    vlr: laz::LazVlr,
    bytes: &[u8],
    total: usize,
    mut visit: impl FnMut(&[u8]),
) -> Result<(), laz::LasZipError> {
    let mut source = Cursor::new(bytes);
    source.seek(SeekFrom::Start(header.data_start as u64))?;
    // Only what the ground needs; formats below 6 cannot be taken apart and come whole.
    let wanted = DecompressionSelection::base().decompress_z().decompress_classification().decompress_flags();
    let mut decoder = laz::LasZipDecompressor::selective(source, vlr, wanted)?;
    let mut block = vec![0; BLOCK.min(total) * header.record_length];
    let mut left = total;
    while left > 0 {
        let n = left.min(BLOCK);
        let records = &mut block[..n * header.record_length];
        decoder.decompress_many(records)?;
        visit(records);
        left -= n;
    }
    Ok(())
}

/// The table of chunks against the file: inside it, as many chunks as points ask for, and no chunk
/// or layer longer than the bytes there are. The decoder would allocate whatever they declare.
pub(crate) fn check_chunks(header: &CloudHeader, bytes: &[u8], notes: &mut Notes<'_>) -> Result<(), Refused> {
    let Some(vlr) = &header.laz else { return Ok(()) };
    let damaged = |notes: &mut Notes<'_>| notes.refuse("survey::damaged", text::CHUNKS_WRONG, text::DO_COPY_AGAIN);
    // Layered items come in chunks of layers, all others in plain ones; see `items` for the type.
    let layered = header.format >= 6;
    let compressor = compressor_of(vlr);
    let fits = match compressor {
        Some(CompressorType::LayeredChunked) => layered,
        Some(CompressorType::PointWiseChunked | CompressorType::PointWise) => !layered,
        _ => false,
    };
    if !fits {
        return Err(notes.refuse("survey::damaged", text::COMPRESSION_UNKNOWN, text::DO_EXPORT_PLAIN));
    }
    let start = header.data_start;
    if compressor == Some(CompressorType::PointWise) {
        // One stretch without a table.
        return Ok(());
    }
    let table_start = match table_position(bytes, start) {
        Some(at) if at.saturating_add(8) <= bytes.len() => at,
        Some(at) => {
            let message = text::TRUNCATED.with("needed", at).with("found", bytes.len());
            return Err(notes.refuse("survey::truncated", message, text::DO_COPY_AGAIN));
        }
        None => return Err(notes.refuse("survey::no-chunk-table", text::NO_CHUNK_TABLE, text::DO_COMPRESS_AGAIN)),
    };
    let chunks = u64::from(u32_at(bytes, table_start + 4).unwrap_or(0));
    let variable = vlr.uses_variable_size_chunks();
    let expected = if variable { None } else { Some(header.points.div_ceil(u64::from(vlr.chunk_size()))) };
    // A chunk holds at least one point and its first point is stored plain.
    let most = (((table_start - start) / header.record_length.max(1)) as u64).min(header.points);
    if chunks == 0 || chunks > most || expected.is_some_and(|n| n != chunks) {
        return Err(damaged(notes));
    }
    let mut source = Cursor::new(bytes);
    let table = source
        .seek(SeekFrom::Start(table_start as u64))
        .and_then(|_| {
            std::panic::catch_unwind(AssertUnwindSafe(|| ChunkTable::read(&mut source, variable)))
                .unwrap_or_else(|_| Err(std::io::Error::other("laz")))
        })
        .map_err(|_| damaged(notes))?;
    let mut at = start as u64 + 8;
    let mut points = 0_u64;
    for chunk in &table {
        let end = at.checked_add(chunk.byte_count).filter(|&end| end <= table_start as u64);
        let Some(end) = end else { return Err(damaged(notes)) };
        if layered && !layers_fit(header, bytes, at, end) {
            return Err(damaged(notes));
        }
        at = end;
        points = points.saturating_add(chunk.point_count);
    }
    if variable && points != header.points {
        let message = text::CHUNK_POINTS_WRONG.with("declared", count(header.points)).with("found", count(points));
        return Err(notes.refuse("survey::damaged", message, text::DO_COPY_AGAIN));
    }
    Ok(())
}

/// The sizes of all layers of a chunk against its bytes: first point plain, number of points, then
/// one size a layer. They fill the chunk: the decoder looks for the next one where they end, and would
/// take for its sizes, and allocate, whatever stands there.
fn layers_fit(header: &CloudHeader, bytes: &[u8], start: u64, end: u64) -> bool {
    let extra = header.record_length - [30, 36, 38, 59, 67][usize::from(header.format) - 6];
    let layers = [9, 10, 11, 10, 12][usize::from(header.format) - 6] + extra;
    let (Ok(start), Ok(end)) = (usize::try_from(start), usize::try_from(end)) else { return false };
    let sizes = start + header.record_length + 4;
    let data = sizes + 4 * layers;
    if data > end {
        return false;
    }
    let total: u64 = (0..layers).filter_map(|i| u32_at(bytes, sizes + 4 * i)).map(u64::from).sum();
    total == (end - data) as u64
}

/// Where the table of chunks is: stated before the first chunk, or in the last eight bytes where
/// the writer could not go back. `None` if neither points behind the data.
fn table_position(bytes: &[u8], data_start: usize) -> Option<usize> {
    let at = |position: usize| {
        let b = bytes.get(position..position.checked_add(8)?)?;
        let value = i64::from_le_bytes([b[0], b[1], b[2], b[3], b[4], b[5], b[6], b[7]]);
        usize::try_from(value).ok().filter(|&v| v > data_start)
    };
    at(data_start).or_else(|| at(bytes.len().checked_sub(8)?))
}

fn u32_at(bytes: &[u8], at: usize) -> Option<u32> {
    let b = bytes.get(at..at.checked_add(4)?)?;
    Some(u32::from_le_bytes([b[0], b[1], b[2], b[3]]))
}

/// The compressor stands in the first two bytes of its record; the crate keeps it to itself.
fn compressor_of(vlr: &laz::LazVlr) -> Option<CompressorType> {
    let mut record = Vec::new();
    vlr.write_to(&mut record).ok()?;
    match record.first_chunk().map(|b| u16::from_le_bytes(*b))? {
        1 => Some(CompressorType::PointWise),
        2 => Some(CompressorType::PointWiseChunked),
        3 => Some(CompressorType::LayeredChunked),
        _ => None,
    }
}
