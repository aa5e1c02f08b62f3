//! Where a GeoTIFF's cells lie: the tags of OGC 19-008r4 for scale, tie point and matrix.

use crate::geo_keys::GeoKeys;
use crate::notes::{Notes, Refused};
use crate::text;
use geometry::DVec2;

/// Place of the cells in file units. Cell (0, 0) is the first cell of the file.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Frame {
    /// Centre of cell (0, 0).
    pub(crate) first_centre: DVec2,
    /// East per column; positive.
    pub(crate) east_per_col: f64,
    /// North per row; negative where rows run south, as usual.
    pub(crate) north_per_row: f64,
}

/// The tags as numbers; empty where a tag is absent.
#[derive(Debug, Clone, Default, PartialEq)]
pub(crate) struct FrameTags {
    /// 33550: cell size x, y, z.
    pub(crate) scale: Vec<f64>,
    /// 33922: column, row, 0, east, north, height, for each tie point.
    pub(crate) ties: Vec<f64>,
    /// 34264: 4 × 4 matrix, row-major.
    pub(crate) matrix: Vec<f64>,
}

/// Works out the frame. Refuses: no place at all, tie points without scale, turned or skewed
/// grids, columns that run west.
pub(crate) fn read(
    tags: &FrameTags,
    keys: &GeoKeys,
    (cols, rows): (usize, usize),
    notes: &mut Notes<'_>,
) -> Result<Frame, Refused> {
    // Raster type 1 (or none): coordinates belong to cell corners; 2: to cell centres.
    let to_centre = if keys.short(1025) == Some(2) { 0.0 } else { 0.5 };
    let frame = if tags.matrix.len() >= 16 {
        let m = &tags.matrix;
        // A thousandth of a cell over the whole grid is rounding, more is a turned grid.
        let skew = (m[1] * rows as f64).abs().max((m[4] * cols as f64).abs());
        if skew > 1e-3 * m[0].abs().min(m[5].abs()) {
            return Err(notes.refuse("survey::rotated", text::ROTATED, text::DO_WARP));
        }
        Frame {
            first_centre: DVec2::new(m[3] + to_centre * m[0], m[7] + to_centre * m[5]),
            east_per_col: m[0],
            north_per_row: m[5],
        }
    } else if tags.scale.len() >= 2 && tags.ties.len() >= 6 {
        let (east, north) = (tags.scale[0], -tags.scale[1]);
        Frame {
            first_centre: DVec2::new(
                tags.ties[3] + (to_centre - tags.ties[0]) * east,
                tags.ties[4] + (to_centre - tags.ties[1]) * north,
            ),
            east_per_col: east,
            north_per_row: north,
        }
    } else if tags.ties.len() >= 12 {
        return Err(notes.refuse("survey::tie-points-only", text::TIE_POINTS_ONLY, text::DO_WARP));
    } else {
        return Err(notes.refuse("survey::no-georeference", text::NO_GEOREFERENCE, text::DO_GEOREFERENCE));
    };
    let numbers = [frame.first_centre.x, frame.first_centre.y, frame.east_per_col, frame.north_per_row];
    if numbers.iter().any(|v| !v.is_finite()) || frame.east_per_col == 0.0 || frame.north_per_row == 0.0 {
        return Err(notes.refuse("survey::no-georeference", text::NO_GEOREFERENCE, text::DO_GEOREFERENCE));
    }
    if frame.east_per_col < 0.0 {
        return Err(notes.refuse("survey::mirrored", text::MIRRORED, text::DO_WARP));
    }
    Ok(frame)
}

#[cfg(test)]
mod tests {
    #![allow(clippy::unwrap_used, reason = "tests")]
    use super::*;

    fn frame(tags: &FrameTags, raster_type: u16) -> Result<Frame, String> {
        let keys = GeoKeys::new(vec![1, 1, 0, 1, 1025, 0, 1, raster_type], vec![], vec![]);
        let mut notes = Notes::new("grid.tif");
        read(tags, &keys, (10, 10), &mut notes).map_err(|_| notes.into_faults().list[0].code.clone())
    }

    #[test]
    fn corners_move_to_centres_and_centres_stay() {
        let tags =
            FrameTags { scale: vec![2.0, 4.0, 0.0], ties: vec![0.0, 0.0, 0.0, 100.0, 200.0, 0.0], matrix: vec![] };
        assert_eq!(frame(&tags, 1).unwrap().first_centre, DVec2::new(101.0, 198.0));
        assert_eq!(frame(&tags, 2).unwrap().first_centre, DVec2::new(100.0, 200.0));
        assert_eq!(frame(&tags, 2).unwrap().north_per_row, -4.0);
    }

    #[test]
    fn a_tie_point_need_not_be_the_first_cell() {
        let tags =
            FrameTags { scale: vec![2.0, 2.0, 0.0], ties: vec![5.0, 3.0, 0.0, 110.0, 194.0, 0.0], matrix: vec![] };
        assert_eq!(frame(&tags, 1).unwrap().first_centre, DVec2::new(101.0, 199.0));
    }

    #[test]
    fn turned_mirrored_and_placeless_grids_are_refused() {
        let matrix = |a: f64, b: f64| {
            let mut m = vec![0.0; 16];
            (m[0], m[1], m[4], m[5]) = (a, b, b, -1.0);
            FrameTags { matrix: m, ..FrameTags::default() }
        };
        assert_eq!(frame(&matrix(1.0, 0.2), 1).unwrap_err(), "survey::rotated");
        assert_eq!(frame(&matrix(-1.0, 0.0), 1).unwrap_err(), "survey::mirrored");
        assert_eq!(frame(&matrix(f64::NAN, 0.0), 1).unwrap_err(), "survey::no-georeference");
        assert_eq!(frame(&FrameTags::default(), 1).unwrap_err(), "survey::no-georeference");
        let ties = FrameTags { ties: vec![1.0; 24], ..FrameTags::default() };
        assert_eq!(frame(&ties, 1).unwrap_err(), "survey::tie-points-only");
    }
}
