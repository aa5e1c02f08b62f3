//! A grid in another coordinate system or turned by the site grid: its cell centres become points.
//! Nothing is resampled, so every height stands where it was measured.

use crate::cloud::MOST_GROUND_POINTS;
use crate::cloud_header::count;
use crate::geotiff_cells::{Layout, Placed};
use crate::geotiff_frame::Frame;
use crate::notes::{Notes, Refused};
use crate::options::{GroundOptions, Window};
use crate::placement::Placement;
use crate::{text, tiles};
use geometry::{DVec2, DVec3};
use site::Terrain;

/// Triangle edges up to this many cell diagonals are joined: a missing cell is bridged as between
/// two neighbours, a hole of more stays a hole.
const DIAGONALS: f64 = 2.0;

/// Cells in the file's own numbers; the window is carried over to them.
pub(crate) fn layout(
    frame: Frame,
    (low, high): (DVec2, DVec2),
    placement: &Placement,
    options: &GroundOptions,
) -> Layout {
    let cell = DVec2::new(frame.east_per_col, frame.north_per_row.abs());
    let window = options.window.map(|window| {
        let reach = edge(cell_at((low + high) / 2.0, cell, placement), options);
        let window = window.grown(reach);
        let (min, max) = placement.file_bounds(window.min, window.max);
        Window { min, max }
    });
    let south_up = frame.north_per_row > 0.0;
    Layout { first: frame.first_centre, cell, south_up, window, height_factor: placement.height(1.0) }
}

/// Cell size in the middle of the grid, m in the site frame.
pub(crate) fn cell(place: &Placed, placement: &Placement) -> DVec2 {
    cell_at((place.low + place.high) / 2.0, place.cell, placement)
}

fn cell_at(at: DVec2, cell: DVec2, placement: &Placement) -> DVec2 {
    let here = placement.plan(at);
    let side = |step: DVec2| placement.plan(at + step).distance(here);
    DVec2::new(side(DVec2::new(cell.x, 0.0)), side(DVec2::new(0.0, cell.y)))
}

/// Longest triangle edge, m.
fn edge(cell: DVec2, options: &GroundOptions) -> f64 {
    options.longest_edge.unwrap_or(DIAGONALS * cell.length())
}

/// Joins the centres of the cells that have a height; `heights`: kept rows × columns from the
/// north-west, m; `cell`: cell size in the site frame, m.
pub(crate) fn join(
    place: &Placed,
    heights: &[f32],
    placement: &Placement,
    cell: DVec2,
    options: &GroundOptions,
    notes: &mut Notes<'_>,
) -> Result<Terrain, Refused> {
    let longest = edge(cell, options);
    let window = options.window.map(|w| w.grown(longest));
    let mut points: Vec<DVec3> = Vec::new();
    let mut without_place = 0_u64;
    for (i, height) in heights.iter().enumerate().filter(|(_, h)| h.is_finite()) {
        let (row, col) = (i / place.kept_cols.len(), i % place.kept_cols.len());
        let at = placement.plan(place.north_west + DVec2::new(col as f64, -(row as f64)) * place.cell);
        if !at.is_finite() {
            without_place += 1;
        } else if window.is_none_or(|w| w.contains(at)) {
            if points.len() as u64 >= MOST_GROUND_POINTS {
                let known = heights.iter().filter(|h| h.is_finite()).count();
                let message = text::TOO_MANY_POINTS.with("points", known).with("most", count(MOST_GROUND_POINTS));
                return Err(notes.refuse("survey::too-many-points", message, text::DO_STATE_WINDOW));
            }
            points.push(at.extend(f64::from(*height)));
        }
    }
    if without_place > 0 {
        let message = text::POINTS_WITHOUT_PLACE.with("count", count(without_place));
        notes.warn("survey::points-without-place", message, text::DO_CHECK_SYSTEMS);
    }
    notes.warn("survey::grid-to-triangles", text::GRID_TO_TRIANGLES, text::DO_CHECK_SYSTEMS);
    tiles::joined_up(&points, longest, notes)
}
