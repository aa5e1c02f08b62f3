//! What a grid looks like: downhill direction and shade, by Horn's 3 × 3 gradient.
//!
//! Single precision, with differences of heights taken before sums: they are small, so that they
//! keep the digits that a sum of heights would lose. Ground above sea level of a thousand metres
//! and more has the same slopes as ground near it.

use crate::Grid;

/// Where the light of a shaded picture comes from.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Sun {
    /// Direction that it stands in, rad clockwise from north.
    pub azimuth: f64,
    /// Height above the horizon, rad.
    pub altitude: f64,
}

impl Default for Sun {
    /// North-west, halfway up: the custom of maps.
    fn default() -> Self {
        Self { azimuth: 315.0_f64.to_radians(), altitude: 45.0_f64.to_radians() }
    }
}

/// Downhill direction of every cell, rad clockwise from north in 0 to 2π; NaN where the slope is
/// not known and where the cell is level.
pub fn aspects(grid: &Grid) -> Vec<f32> {
    over_cells(grid, |east, north| {
        if east == 0.0 && north == 0.0 {
            return f32::NAN;
        }
        let turn = libm::atan2f(-east, -north);
        // A hair west of north would round to a whole turn.
        let positive = if turn < 0.0 { turn + std::f32::consts::TAU } else { turn };
        if positive >= std::f32::consts::TAU { 0.0 } else { positive }
    })
}

/// Light that every cell gives back: cosine of the angle between its normal and the sun, 0 (turned
/// away) to 1; NaN where the slope is not known.
///
/// `(sin h − cos h·(g_e·sin α + g_n·cos α)) / √(1 + g_e² + g_n²)`, sun at azimuth α and altitude h,
/// gradient g: Lambert's law (Horn 1981, Proc. IEEE 69(1), 14-47).
pub fn hillshade(grid: &Grid, sun: Sun) -> Vec<f32> {
    let (up, flat) = libm::sincos(sun.altitude);
    let (to_east, to_north) = libm::sincos(sun.azimuth);
    let (up, to_east, to_north) = (up as f32, (flat * to_east) as f32, (flat * to_north) as f32);
    over_cells(grid, |east, north| {
        let shade = (up - (east * to_east + north * to_north)) / (1.0 + east * east + north * north).sqrt();
        // Comparing keeps NaN, which `max` would drop.
        if shade < 0.0 { 0.0 } else { shade }
    })
}

/// A value for every cell from its gradient (rise over run to the east, to the north); NaN at the
/// rim and where any of the nine cells is unknown.
///
/// `∂z/∂x = ((c + 2f + i) − (a + 2d + g)) / 8Δx` with a b c / d e f / g h i from the north-west,
/// `∂z/∂y` alike.
#[inline]
pub(crate) fn over_cells(grid: &Grid, value: impl Fn(f32, f32) -> f32) -> Vec<f32> {
    let (rows, cols) = (grid.rows, grid.cols);
    let mut out = vec![f32::NAN; grid.heights.len()];
    if rows < 3 || cols < 3 {
        return out;
    }
    let per_east = (1.0 / (8.0 * grid.cell.x)) as f32;
    let per_north = (1.0 / (8.0 * grid.cell.y)) as f32;
    let inner = cols - 2;
    for row in 1..rows - 1 {
        let line = |r: usize| &grid.heights[r * cols..(r + 1) * cols];
        let (north, here, south) = (line(row - 1), line(row), line(row + 1));
        // Slices of one length: the loop needs no check of an index, and runs on several cells at once.
        let (a, b, c) = (&north[..inner], &north[1..=inner], &north[2..]);
        let (d, e, f) = (&here[..inner], &here[1..=inner], &here[2..]);
        let (g, h, i) = (&south[..inner], &south[1..=inner], &south[2..]);
        let target = &mut out[row * cols + 1..row * cols + 1 + inner];
        for (k, target) in target.iter_mut().enumerate() {
            // The middle height has no weight: nothing times it is 0, or NaN where it is unknown.
            let known = e[k] * 0.0;
            let east = ((c[k] - a[k]) + 2.0 * (f[k] - d[k]) + (i[k] - g[k]) + known) * per_east;
            let north = ((a[k] - g[k]) + 2.0 * (b[k] - h[k]) + (c[k] - i[k]) + known) * per_north;
            *target = value(east, north);
        }
    }
    out
}
