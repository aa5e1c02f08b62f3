//! Heights of one class inside a polygon: a roof, a slab, a bridge deck.

use crate::cloud_stream::Tile;
use crate::notes::Notes;
use crate::options::GroundOptions;
use evidence::Faults;
use geometry::DVec2;
use site::quantile;

/// Heights of the points of one class inside a polygon, m.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct ClassHeights {
    sorted: Vec<f64>,
}

impl ClassHeights {
    /// From heights in any order.
    pub(crate) fn of(mut heights: Vec<f64>) -> Self {
        heights.sort_by(f64::total_cmp);
        Self { sorted: heights }
    }
    /// Number of points.
    pub fn count(&self) -> usize {
        self.sorted.len()
    }
    /// Median height; `None` without points.
    pub fn median(&self) -> Option<f64> {
        self.quantile(0.5)
    }
    /// Height that the share `q` of the points do not exceed, linear between neighbours.
    pub fn quantile(&self, q: f64) -> Option<f64> {
        quantile(&self.sorted, q)
    }
    /// Lowest height.
    pub fn lowest(&self) -> Option<f64> {
        self.sorted.first().copied()
    }
    /// Highest height.
    pub fn highest(&self) -> Option<f64> {
        self.sorted.last().copied()
    }
    /// Heights of both, for a building that lies across two tiles.
    #[must_use]
    pub fn together(mut self, other: Self) -> Self {
        self.sorted.extend(other.sorted);
        self.sorted.sort_by(f64::total_cmp);
        self
    }
}

/// Heights of the points of `class` inside `polygon` (corners in order, m, closed by itself; a
/// point on the edge may fall on either side). Withheld points are left out. 6 is a building.
///
/// # Errors
/// Every fault of the file, as for [`crate::read_cloud`]; no points inside is not a fault.
pub fn class_heights_in(
    name: &str,
    bytes: &[u8],
    options: &GroundOptions,
    polygon: &[DVec2],
    class: u8,
) -> Result<ClassHeights, Faults> {
    let mut notes = Notes::new(name);
    let mut sorted = Vec::new();
    let result = Tile::open(name, bytes, options, &mut notes).and_then(|tile| {
        tile.visit(&mut notes, |frame, sample| {
            if (sample.class, sample.withheld) == (class, false) {
                let point = frame.metres(sample.stored);
                if contains(polygon, point.truncate()) {
                    sorted.push(point.z);
                }
            }
        })
    });
    notes.finish(result)?;
    Ok(ClassHeights::of(sorted))
}

/// Crossings of a ray to the east, counted even-odd.
pub(crate) fn contains(polygon: &[DVec2], at: DVec2) -> bool {
    let mut inside = false;
    for (i, a) in polygon.iter().enumerate() {
        let b = polygon[(i + 1) % polygon.len()];
        if (a.y > at.y) != (b.y > at.y) && at.x < a.x + (at.y - a.y) / (b.y - a.y) * (b.x - a.x) {
            inside = !inside;
        }
    }
    inside
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn an_l_shape_contains_its_arms_and_not_its_notch() {
        let corners = [(0.0, 0.0), (4.0, 0.0), (4.0, 1.0), (1.0, 1.0), (1.0, 4.0), (0.0, 4.0)];
        let polygon = corners.map(|(x, y)| DVec2::new(x, y));
        for (x, y, expected) in [(0.5, 3.0, true), (3.0, 0.5, true), (2.0, 2.0, false), (-0.1, 0.5, false)] {
            assert_eq!(contains(&polygon, DVec2::new(x, y)), expected, "({x}, {y})");
        }
        assert!(!contains(&[], DVec2::ZERO));
    }
}
