//! Height grids from GeoTIFF.

use crate::cloud_header::count;
use crate::crs::CrsStatements;
use crate::geo_keys::GeoKeys;
use crate::geotiff_cells::{Band, Layout, Placed, fill};
use crate::geotiff_frame::{self, Frame, FrameTags};
use crate::geotiff_points;
use crate::kind::FileKind;
use crate::notes::{Notes, Refused};
use crate::options::GroundOptions;
use crate::placement::{Placement, Settled};
use crate::reading::Facts;
use crate::text;
use crate::units::{LengthUnit, UnitStatement};
use geometry::DVec2;
use site::{Grid, Terrain};
use std::collections::BTreeMap;
use std::io::Cursor;
use std::panic::AssertUnwindSafe;
use tiff::ColorType;
use tiff::decoder::{Decoder, Limits};
use tiff::tags::Tag;

/// Most cells of a file, whatever the window.
const MOST_CELLS_IN_FILE: u64 = 1_000_000_000;

/// Most times that deflate and LZW can swell a byte is about 1032 and 2730; more is a lie.
pub(crate) const MOST_SWELL: u64 = 3000;

/// Cells wider than this say little about the ground under four wheels, m. Ours: about a wheelbase.
const COARSE_CELL: f64 = 2.5;

pub(crate) type Source<'a> = Decoder<Cursor<&'a [u8]>>;

/// Reads the first image of a GeoTIFF: as a grid, rows from the north, where its rows and columns
/// stay along east and north; otherwise its cell centres are joined to triangles.
pub(crate) fn terrain(
    bytes: &[u8],
    options: &GroundOptions,
    notes: &mut Notes<'_>,
) -> Result<(Terrain, Facts), Refused> {
    // The decoder asserts here and there instead of answering with an error.
    let result = std::panic::catch_unwind(AssertUnwindSafe(|| read(bytes, options, notes)));
    match result {
        Ok(result) => result,
        Err(_) => Err(notes.refuse("survey::damaged", text::DECODE_FAILED.with("detail", "tiff"), text::DO_COPY_AGAIN)),
    }
}

fn read(bytes: &[u8], options: &GroundOptions, notes: &mut Notes<'_>) -> Result<(Terrain, Facts), Refused> {
    let mut source = open(bytes, notes)?;
    let (cols, rows) = size(&mut source, bytes, notes)?;
    let keys = GeoKeys::new(
        source.get_tag_u16_vec(Tag::Unknown(34735)).unwrap_or_default(),
        source.get_tag_f64_vec(Tag::Unknown(34736)).unwrap_or_default(),
        source.get_tag_ascii_string(Tag::Unknown(34737)).unwrap_or_default().into_bytes(),
    );
    let tags = FrameTags {
        scale: source.get_tag_f64_vec(Tag::Unknown(33550)).unwrap_or_default(),
        ties: source.get_tag_f64_vec(Tag::Unknown(33922)).unwrap_or_default(),
        matrix: source.get_tag_f64_vec(Tag::Unknown(34264)).unwrap_or_default(),
    };
    let frame = geotiff_frame::read(&tags, &keys, (cols, rows), notes)?;
    let band = Band::read(&mut source);
    let mut crs = CrsStatements::default();
    if !keys.is_empty() {
        crs.add_keys(&keys);
    }
    if let Some(unit) = &band.unit {
        let factor = LengthUnit::of_name(unit).map_or(f64::NAN, LengthUnit::metres);
        crs.vertical.push(UnitStatement { factor, place: "band unit" });
    }
    let opposite = frame.first_centre
        + DVec2::new((cols - 1) as f64 * frame.east_per_col, (rows - 1) as f64 * frame.north_per_row);
    let (low, high) = (frame.first_centre.min(opposite), frame.first_centre.max(opposite));
    let Settled { placement, units, crs } = Placement::settle(&crs, (low, high), options, notes)?;
    check_samples(&mut source, notes)?;
    let as_grid = placement.keeps_axes();
    let layout = if as_grid {
        grid_layout(frame, &placement, options)
    } else {
        geotiff_points::layout(frame, (low, high), &placement, options)
    };
    let place = Placed::new(&layout, (cols, rows), notes)?;
    let mut heights = vec![f32::NAN; place.kept_cols.len() * place.kept_rows.len()];
    let tally = fill(&mut source, bytes, (cols, rows), &place, &band, &mut heights, notes)?;
    tally.check(notes)?;
    let cell = if as_grid { place.cell } else { geotiff_points::cell(&place, &placement) };
    if cell.max_element() > COARSE_CELL {
        let message = text::CELLS_COARSE.with("cell", quantity::metres(cell.max_element()));
        notes.warn("survey::coarse-cells", message, text::DO_FINER);
    }
    let half = place.cell / 2.0;
    let (mut min, mut max) = (place.low - half, place.high + half);
    if !as_grid {
        (min, max) = placement.bounds(min, max);
    }
    let facts = Facts {
        kind: FileKind::GeoTiff,
        points: cols as u64 * rows as u64,
        ground_points: tally.known,
        min: min.extend(tally.low).to_array(),
        max: max.extend(tally.high).to_array(),
        units,
        crs,
        unknown_cells: tally.unknown,
        cell: Some(cell.to_array()),
        classes: BTreeMap::new(),
        withheld: 0,
    };
    if !as_grid {
        let terrain = geotiff_points::join(&place, &heights, &placement, cell, options, notes)?;
        return Ok((terrain, facts));
    }
    let grid =
        Grid { north_west: place.north_west, cell, rows: place.kept_rows.len(), cols: place.kept_cols.len(), heights };
    Ok((Terrain::Grid(grid), facts))
}

/// Cells in metres of the site frame: units, scale and shift only.
fn grid_layout(frame: Frame, placement: &Placement, options: &GroundOptions) -> Layout {
    Layout {
        first: placement.plan(frame.first_centre),
        cell: placement.length(DVec2::new(frame.east_per_col, frame.north_per_row.abs())),
        south_up: frame.north_per_row > 0.0,
        window: options.window,
        height_factor: placement.height(1.0),
    }
}

fn open<'a>(bytes: &'a [u8], notes: &mut Notes<'_>) -> Result<Source<'a>, Refused> {
    let mut limits = Limits::default();
    limits.decoding_buffer_size = 256 << 20;
    limits.intermediate_buffer_size = 256 << 20;
    limits.ifd_value_size = 8 << 20;
    Decoder::new(Cursor::new(bytes))
        .map(|d| d.with_limits(limits))
        .map_err(|error| decode_failed(&error.to_string(), notes))
}

pub(crate) fn decode_failed(detail: &str, notes: &mut Notes<'_>) -> Refused {
    notes.refuse("survey::damaged", text::DECODE_FAILED.with("detail", detail), text::DO_COPY_AGAIN)
}

/// Columns and rows, held against the byte length and the extent of every strip or tile.
fn size(source: &mut Source<'_>, bytes: &[u8], notes: &mut Notes<'_>) -> Result<(usize, usize), Refused> {
    let (cols, rows) = source.dimensions().map_err(|e| decode_failed(&e.to_string(), notes))?;
    let cells = u64::from(cols) * u64::from(rows);
    if cells == 0 {
        return Err(notes.refuse("survey::no-heights", text::NO_HEIGHTS, text::DO_EXPORT_AGAIN));
    }
    let length = bytes.len() as u64;
    if cells > MOST_CELLS_IN_FILE || cells > length.saturating_mul(MOST_SWELL) {
        let message = text::TOO_FEW_BYTES.with("points", count(cells)).with("bytes", count(length));
        return Err(notes.refuse("survey::truncated", message, text::DO_COPY_AGAIN));
    }
    let mut longs =
        |strip, tile| source.get_tag_u64_vec(strip).or_else(|_| source.get_tag_u64_vec(tile)).unwrap_or_default();
    let offsets = longs(Tag::StripOffsets, Tag::TileOffsets);
    let counts = longs(Tag::StripByteCounts, Tag::TileByteCounts);
    let end = offsets.iter().zip(&counts).map(|(o, n)| o.saturating_add(*n)).max().unwrap_or(0);
    if end > length {
        let message = text::TRUNCATED.with("needed", count(end)).with("found", bytes.len());
        return Err(notes.refuse("survey::truncated", message, text::DO_COPY_AGAIN));
    }
    Ok((cols as usize, rows as usize))
}

/// One band of plain numbers; pictures are refused.
fn check_samples(source: &mut Source<'_>, notes: &mut Notes<'_>) -> Result<(), Refused> {
    let plain = matches!(source.colortype(), Ok(ColorType::Gray(8 | 16 | 32 | 64)));
    // 1 is "0 is black"; 0 would turn the numbers upside down, 3 is a palette.
    let photometric = source.find_tag_unsigned::<u16>(Tag::PhotometricInterpretation).ok().flatten();
    if plain && photometric.is_none_or(|p| p == 1) {
        return Ok(());
    }
    Err(notes.refuse("survey::not-heights", text::NOT_HEIGHTS, text::DO_GIVE_HEIGHTS))
}
