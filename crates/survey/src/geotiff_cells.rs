//! The cells of a GeoTIFF: which are kept, what their numbers mean, and decoding them.

use crate::cloud_header::count;
use crate::crs::{is_on_earth, is_plausible};
use crate::geotiff::{MOST_SWELL, Source, decode_failed};
use crate::notes::{Notes, Refused};
use crate::options::Window;
use crate::text;
use geometry::DVec2;
use quantity::Quantity;
use std::ops::Range;
use tiff::decoder::DecodingResult;
use tiff::tags::Tag;

/// Most cells that are kept, 4 bytes each. A larger grid needs a window.
const MOST_CELLS: usize = 60_000_000;

/// What the file says about its numbers.
pub(crate) struct Band {
    nodata: Option<f64>,
    /// Unit of the heights, as written.
    pub(crate) unit: Option<String>,
    scale: f64,
    offset: f64,
}

impl Band {
    /// Tag 42113 holds the number for "no data", tag 42112 a small XML of `<Item …>` (both GDAL's).
    pub(crate) fn read(source: &mut Source<'_>) -> Self {
        let nodata = source.get_tag_ascii_string(Tag::Unknown(42113)).ok();
        let items = source.get_tag_ascii_string(Tag::Unknown(42112)).unwrap_or_default();
        let item = |role: &str| {
            let at = items.find(&format!("role=\"{role}\""))?;
            let value = items[at..].split_once('>')?.1.split_once('<')?.0.trim();
            (!value.is_empty()).then(|| value.to_owned())
        };
        let number = |role: &str| item(role).and_then(|v| v.parse().ok()).filter(|v: &f64| v.is_finite());
        Self {
            nodata: nodata.and_then(|t| t.trim_matches(['\0', ' ']).parse().ok()),
            unit: item("unittype"),
            scale: number("scale").unwrap_or(1.0),
            offset: number("offset").unwrap_or(0.0),
        }
    }

    /// True where the stored number means that there is none. The tag holds decimals, the cells
    /// often 32 bits.
    fn is_nodata(&self, stored: f64) -> bool {
        stored.is_nan() || self.nodata.is_some_and(|n| stored == n || stored == f64::from(n as f32))
    }
}

/// The grid in metres, and which of the file's cells are kept.
pub(crate) struct Placed {
    /// Cell size, m.
    pub(crate) cell: DVec2,
    /// Outermost cell centres of the whole file.
    pub(crate) low: DVec2,
    pub(crate) high: DVec2,
    /// Centre of the north-west cell that is kept.
    pub(crate) north_west: DVec2,
    /// Kept columns of the file.
    pub(crate) kept_cols: Range<usize>,
    /// Kept rows, counted from the north.
    pub(crate) kept_rows: Range<usize>,
    /// The file's rows run north.
    south_up: bool,
    height_factor: f64,
}

/// How a file's cells are laid out, in metres of the site frame, or in the file's own numbers where
/// they are carried over one by one.
pub(crate) struct Layout {
    /// Centre of cell (0, 0).
    pub(crate) first: DVec2,
    /// Cell size, positive.
    pub(crate) cell: DVec2,
    /// Rows run north.
    pub(crate) south_up: bool,
    /// Only what lies in and just around it is kept.
    pub(crate) window: Option<Window>,
    /// Metres in a unit of height.
    pub(crate) height_factor: f64,
}

impl Placed {
    pub(crate) fn new(layout: &Layout, (cols, rows): (usize, usize), notes: &mut Notes<'_>) -> Result<Self, Refused> {
        let Layout { first, cell, south_up, window, height_factor } = *layout;
        let span = DVec2::new((cols - 1) as f64 * cell.x, (rows - 1) as f64 * cell.y);
        let low = if south_up { first } else { DVec2::new(first.x, first.y - span.y) };
        let high = low + span;
        if !is_on_earth(low.extend(0.0)) || !is_on_earth(high.extend(0.0)) {
            let message =
                text::NOT_ON_EARTH.with("east", Quantity::number(high.x)).with("north", Quantity::number(high.y));
            return Err(notes.refuse("survey::coordinates-absurd", message, text::DO_EXPORT_AGAIN));
        }
        let (mut kept_cols, mut kept_rows) = (0..cols, 0..rows);
        if let Some(window) = window {
            kept_cols = between(window.min.x - low.x, window.max.x - low.x, cell.x, cols);
            kept_rows = between(high.y - window.max.y, high.y - window.min.y, cell.y, rows);
        }
        if kept_cols.is_empty() || kept_rows.is_empty() {
            let message = text::WINDOW_EMPTY
                .with("west", quantity::metres(low.x))
                .with("south", quantity::metres(low.y))
                .with("east", quantity::metres(high.x))
                .with("north", quantity::metres(high.y));
            return Err(notes.refuse("survey::window-empty", message, text::DO_CHECK_WINDOW));
        }
        let cells = kept_cols.len() * kept_rows.len();
        if cells > MOST_CELLS {
            let message = text::TOO_MANY_POINTS.with("points", cells).with("most", MOST_CELLS);
            return Err(notes.refuse("survey::too-many-points", message, text::DO_STATE_WINDOW));
        }
        let north_west = DVec2::new(low.x + kept_cols.start as f64 * cell.x, high.y - kept_rows.start as f64 * cell.y);
        Ok(Self { cell, low, high, north_west, kept_cols, kept_rows, south_up, height_factor })
    }
}

/// Indices of cells from `from` to `to` (m from the first centre), one more on both sides.
fn between(from: f64, to: f64, cell: f64, count: usize) -> Range<usize> {
    let last = count as f64 - 1.0;
    let (a, b) = ((from / cell).floor() - 1.0, (to / cell).ceil() + 1.0);
    if !(b >= 0.0 && a <= last) {
        return 0..0;
    }
    a.max(0.0) as usize..b.min(last) as usize + 1
}

/// Cells counted while they are read.
pub(crate) struct Tally {
    pub(crate) known: u64,
    pub(crate) unknown: u64,
    implausible: u64,
    /// An implausible number that stands in the file, as an example.
    example: f64,
    /// Lowest height, m.
    pub(crate) low: f64,
    /// Highest height, m.
    pub(crate) high: f64,
    whole: bool,
}

impl Tally {
    /// Warns of odd numbers; refuses a grid without a height.
    pub(crate) fn check(&self, notes: &mut Notes<'_>) -> Result<(), Refused> {
        if self.implausible > 0 {
            let message = text::CELLS_IMPLAUSIBLE
                .with("count", count(self.implausible))
                .with("value", Quantity::number(self.example));
            notes.warn("survey::implausible-heights", message, text::DO_DECLARE_NODATA);
        }
        if self.known == 0 {
            return Err(notes.refuse("survey::no-heights", text::NO_HEIGHTS, text::DO_CHECK_HEIGHTS));
        }
        if self.whole && self.low < self.high {
            notes.warn("survey::whole-heights", text::HEIGHTS_WHOLE, text::DO_FINER);
        }
        Ok(())
    }
}

/// Decodes the strips or tiles that hold kept cells.
pub(crate) fn fill(
    source: &mut Source<'_>,
    bytes: &[u8],
    (cols, rows): (usize, usize),
    place: &Placed,
    band: &Band,
    heights: &mut [f32],
    notes: &mut Notes<'_>,
) -> Result<Tally, Refused> {
    let (width, depth) = source.chunk_dimensions();
    let (width, depth) = (width as usize, depth as usize);
    if width == 0 || depth == 0 || width.saturating_mul(depth) as u64 > bytes.len() as u64 * MOST_SWELL {
        return Err(decode_failed("tile size", notes));
    }
    let mut tally = Tally {
        known: 0,
        unknown: 0,
        implausible: 0,
        example: 0.0,
        low: f64::INFINITY,
        high: f64::NEG_INFINITY,
        whole: band.scale == 1.0,
    };
    let kept_width = place.kept_cols.len();
    let across = cols.div_ceil(width);
    // The file's own row of a row counted from the north, and back.
    let turned = |row: usize| if place.south_up { rows - 1 - row } else { row };
    for down in 0..rows.div_ceil(depth) {
        let file_rows = down * depth..(down * depth + depth).min(rows);
        if !file_rows.clone().any(|r| place.kept_rows.contains(&turned(r))) {
            continue;
        }
        for over in 0..across {
            let file_cols = over * width..(over * width + width).min(cols);
            if file_cols.end <= place.kept_cols.start || file_cols.start >= place.kept_cols.end {
                continue;
            }
            let index = u32::try_from(down * across + over).unwrap_or(u32::MAX);
            let chunk = source.read_chunk(index).map_err(|e| decode_failed(&e.to_string(), notes))?;
            let stride = file_cols.len();
            let (length, value) = values(&chunk);
            if length < stride * file_rows.len() {
                return Err(decode_failed("tile size", notes));
            }
            for file_row in file_rows.clone() {
                let row = turned(file_row);
                if !place.kept_rows.contains(&row) {
                    continue;
                }
                let line = (row - place.kept_rows.start) * kept_width;
                for file_col in file_cols.start.max(place.kept_cols.start)..file_cols.end.min(place.kept_cols.end) {
                    let stored = value((file_row - file_rows.start) * stride + file_col - file_cols.start);
                    let slot = line + file_col - place.kept_cols.start;
                    heights[slot] = tally.take(stored, band, place.height_factor);
                }
            }
        }
    }
    Ok(tally)
}

impl Tally {
    /// The height in metres, NaN where there is none.
    fn take(&mut self, stored: f64, band: &Band, factor: f64) -> f32 {
        if band.is_nodata(stored) {
            self.unknown += 1;
            return f32::NAN;
        }
        let height = (stored * band.scale + band.offset) * factor;
        if !is_plausible(height) {
            self.unknown += 1;
            self.implausible += 1;
            self.example = stored;
            return f32::NAN;
        }
        self.known += 1;
        self.low = self.low.min(height);
        self.high = self.high.max(height);
        self.whole &= stored.fract() == 0.0;
        height as f32
    }
}

/// Number of samples, and the sample at an index.
fn values(chunk: &DecodingResult) -> (usize, Box<dyn Fn(usize) -> f64 + '_>) {
    match chunk {
        DecodingResult::U8(v) => (v.len(), Box::new(|i| f64::from(v[i]))),
        DecodingResult::U16(v) => (v.len(), Box::new(|i| f64::from(v[i]))),
        DecodingResult::U32(v) => (v.len(), Box::new(|i| f64::from(v[i]))),
        DecodingResult::U64(v) => (v.len(), Box::new(|i| v[i] as f64)),
        DecodingResult::I8(v) => (v.len(), Box::new(|i| f64::from(v[i]))),
        DecodingResult::I16(v) => (v.len(), Box::new(|i| f64::from(v[i]))),
        DecodingResult::I32(v) => (v.len(), Box::new(|i| f64::from(v[i]))),
        DecodingResult::I64(v) => (v.len(), Box::new(|i| v[i] as f64)),
        DecodingResult::F16(v) => (v.len(), Box::new(|i| f64::from(v[i].to_f32()))),
        DecodingResult::F32(v) => (v.len(), Box::new(|i| f64::from(v[i]))),
        DecodingResult::F64(v) => (v.len(), Box::new(|i| v[i])),
    }
}
