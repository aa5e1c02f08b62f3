//! A grid of heights read off any surface, for pictures.

use crate::{Grid, Ground, Terrain};
use geometry::DVec2;

impl Grid {
    /// Heights of a surface at cell centres from the north-west corner of `window` (smallest and
    /// largest corner, m; `None`: all of the surface), `cell` m apart or farther, so that there are
    /// at most `most` cells. What the surface does not know stays unknown. `None` if nothing has an
    /// extent or the cell is not positive.
    ///
    /// Heights are read at the centres, not averaged: ground between them may be higher or lower.
    pub fn from_terrain(terrain: &Terrain, window: Option<(DVec2, DVec2)>, cell: f64, most: usize) -> Option<Self> {
        Self::read_off(window.or_else(|| terrain.bounds())?, cell, most, |at| terrain.height(at))
    }

    /// The same from a site's ground: the first surface that knows a place answers.
    pub fn from_ground(ground: &Ground, window: Option<(DVec2, DVec2)>, cell: f64, most: usize) -> Option<Self> {
        let all = || {
            let bounds = ground.surfaces.iter().filter_map(|s| s.terrain.bounds());
            bounds.reduce(|(low, high), (l, h)| (low.min(l), high.max(h)))
        };
        Self::read_off(window.or_else(all)?, cell, most, |at| ground.height(at).map(|z| z.0))
    }

    fn read_off(window: (DVec2, DVec2), cell: f64, most: usize, height: impl Fn(DVec2) -> Option<f64>) -> Option<Self> {
        let span = window.1 - window.0;
        if !(span.is_finite() && window.0.is_finite() && span.min_element() >= 0.0 && cell.is_finite() && cell > 0.0) {
            return None;
        }
        // Halving the number a side at worst; the loop ends since the count falls each time.
        let mut cell = cell;
        let (rows, cols) = loop {
            let counts = (span / cell).floor() + DVec2::ONE;
            if counts.x * counts.y <= most.max(1) as f64 {
                break (counts.y as usize, counts.x as usize);
            }
            let factor = (counts.x * counts.y / most.max(1) as f64).sqrt();
            cell *= factor.max(1.02);
        };
        let north_west = DVec2::new(window.0.x, window.1.y);
        let at = |i: usize| north_west + DVec2::new((i % cols) as f64, -((i / cols) as f64)) * cell;
        let heights = (0..rows * cols).map(|i| height(at(i)).map_or(f32::NAN, |z| z as f32)).collect();
        Some(Self { north_west, cell: DVec2::splat(cell), rows, cols, heights })
    }

    /// Lowest and highest known height, m; `None` where nothing is known.
    pub fn height_range(&self) -> Option<(f64, f64)> {
        let known = self.heights.iter().filter(|z| z.is_finite()).map(|z| f64::from(*z));
        known.map(|z| (z, z)).reduce(|(low, high), (z, _)| (low.min(z), high.max(z)))
    }
}
