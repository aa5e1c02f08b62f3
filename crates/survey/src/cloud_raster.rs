//! Where the cells of a raster over clouds lie, planned before any point is decoded.

use crate::cloud_header::count;
use crate::cloud_stream::Tile;
use crate::crs::is_on_earth;
use crate::notes::{Notes, Refused};
use crate::options::Window;
use crate::text;
use geometry::DVec2;
use quantity::Quantity;

/// Most cells of a ground raster. At 24 bytes a cell it stays under half a gigabyte, and 0.25 m
/// cells cover a square kilometre.
pub(crate) const MOST_CELLS: u64 = 20_000_000;

/// Smallest and largest cell, m.
const CELLS: std::ops::RangeInclusive<f64> = 0.01..=1000.0;

/// Rows from the north, columns from the west; cell edges at multiples of the cell size, so that
/// rasters of neighbouring windows fit together.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct RasterPlan {
    /// North-west corner (not centre), m.
    pub(crate) corner: DVec2,
    pub(crate) cell: f64,
    /// Number of the southmost row and the westmost column, counted from the origin.
    first: DVec2,
    pub(crate) rows: usize,
    pub(crate) cols: usize,
}

/// See [`number`].
const HAIR: f64 = 1e-6;

/// Cells are counted in whole sizes from the origin; a point on an edge belongs to the cell to the
/// north and east of it. The millionth of a cell keeps decimal coordinates on the side where their
/// last binary digit does not: 0.3 m is on the edge of a cell of 0.1 m.
fn number(at: DVec2, cell: f64) -> DVec2 {
    (at / cell + HAIR).floor()
}

impl RasterPlan {
    /// A raster of at most `most` cells that holds all tiles, or what of them lies in the window;
    /// `None` if nothing does.
    pub(crate) fn of(
        tiles: &[Tile<'_>],
        window: Option<Window>,
        cell: f64,
        most: u64,
        notes: &mut Notes<'_>,
    ) -> Result<Option<Self>, Refused> {
        if !CELLS.contains(&cell) {
            let message = text::CELL_SIZE.with("cell", Quantity::number(cell));
            return Err(notes.refuse("survey::cell-size", message, text::DO_STATE_CELL));
        }
        let corners = tiles.iter().map(Tile::bounds).reduce(|(l, h), (l2, h2)| (l.min(l2), h.max(h2)));
        let Some((mut low, mut high)) = corners else { return Ok(None) };
        if !is_on_earth(low.extend(0.0)) || !is_on_earth(high.extend(0.0)) {
            let message =
                text::NOT_ON_EARTH.with("east", Quantity::number(high.x)).with("north", Quantity::number(high.y));
            return Err(notes.refuse("survey::coordinates-absurd", message, text::DO_EXPORT_AGAIN));
        }
        if let Some(window) = window {
            (low, high) = (low.max(window.min), high.min(window.max));
        }
        // NaN in the window fails too.
        if !(low.x <= high.x && low.y <= high.y) {
            return Ok(None);
        }
        let (first, last) = (number(low, cell), number(high, cell));
        let size = last - first + DVec2::ONE;
        let cells = size.x * size.y;
        if cells > most as f64 {
            let message = text::TOO_MANY_CELLS
                .with("cell", quantity::metres(cell))
                .with("east", quantity::metres(high.x - low.x))
                .with("north", quantity::metres(high.y - low.y))
                .with("cells", count(cells.min(1e18) as u64))
                .with("most", count(most));
            return Err(notes.refuse("survey::too-many-cells", message, text::DO_WINDOW_OR_CELL));
        }
        let corner = DVec2::new(first.x, last.y + 1.0) * cell;
        Ok(Some(Self { corner, cell, first, rows: size.y as usize, cols: size.x as usize }))
    }

    pub(crate) fn cells(&self) -> usize {
        self.rows * self.cols
    }

    /// Row and column; `None` outside.
    #[inline]
    pub(crate) fn row_col(&self, at: DVec2) -> Option<(usize, usize)> {
        // `first` is whole, so cutting off is the floor of `number`, and costs no call.
        let DVec2 { x: col, y: up } = at / self.cell + HAIR - self.first;
        // Also false for NaN.
        if col >= 0.0 && up >= 0.0 {
            let (up, col) = (up as usize, col as usize);
            if up < self.rows && col < self.cols {
                return Some((self.rows - 1 - up, col));
            }
        }
        None
    }

    /// Row-major index; `None` outside.
    #[inline]
    pub(crate) fn index(&self, at: DVec2) -> Option<usize> {
        self.row_col(at).map(|(row, col)| row * self.cols + col)
    }

    /// Middle of a cell, m.
    pub(crate) fn centre(&self, row: usize, col: usize) -> DVec2 {
        self.corner + DVec2::new(col as f64 + 0.5, -(row as f64) - 0.5) * self.cell
    }
}
