//! Heights of one class inside a polygon: a roof, a slab, a bridge deck.

use crate::cloud::{self, RecordFrame};
use crate::cloud_records;
use crate::kind::{self, FileKind};
use crate::notes::Notes;
use crate::options::GroundOptions;
use crate::text;
use evidence::Faults;
use geometry::DVec2;
use site::quantile;

/// Heights of the points of one class inside a polygon, m.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct ClassHeights {
    sorted: Vec<f64>,
}

impl ClassHeights {
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
    let result = kind::sniff(name, bytes, &mut notes).and_then(|kind| {
        if !matches!(kind, FileKind::Las | FileKind::Laz) {
            return Err(notes.refuse("survey::not-a-cloud", text::NOT_A_CLOUD, text::DO_GIVE_KNOWN_KIND));
        }
        let (header, units) = cloud::open(bytes, options, &mut notes)?;
        let frame = RecordFrame::new(&header, units);
        cloud_records::visit(&header, bytes, &mut notes, |block| {
            for record in block.chunks_exact(header.record_length) {
                if frame.class(record) == (class, false) {
                    let point = frame.metres(RecordFrame::stored(record));
                    if contains(polygon, point.truncate()) {
                        sorted.push(point.z);
                    }
                }
            }
        })
    });
    notes.finish(result)?;
    sorted.sort_by(f64::total_cmp);
    Ok(ClassHeights { sorted })
}

/// Crossings of a ray to the east, counted even-odd.
fn contains(polygon: &[DVec2], at: DVec2) -> bool {
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
