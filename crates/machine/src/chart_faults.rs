//! What is wrong with a chart's zones: overlap, holes, shape, reach.

use crate::chart_polygon::{bounds, edges};
use crate::{Chart, Zone};
use geo::{Area, BooleanOps, Coord, LineString, MultiPolygon, Polygon, Validation};
use geometry::DVec2;

/// Slivers up to this width are drawing error, not holes, m.
pub(crate) const SLIVER: f64 = 0.02;

/// Something wrong with a chart.
#[derive(Debug, Clone, PartialEq)]
pub enum ChartProblem {
    /// No zones at all.
    NoZones,
    /// Fewer than three corners, zero area, or an outline that crosses itself.
    BadOutline {
        /// Zone index.
        zone: usize,
    },
    /// Two zones overlap with different capacities (area m²); the lower would always govern.
    Overlap {
        /// One zone.
        first: usize,
        /// The other.
        second: usize,
        /// Shared area, m².
        area: f64,
        /// A point in it, (reach, height), m.
        at: DVec2,
    },
    /// An area enclosed by zones with no capacity and not declared "not permitted".
    Hole {
        /// Middle of the hole, (reach, height), m.
        at: DVec2,
        /// Area, m².
        area: f64,
    },
    /// Zones that do not join: more than one piece.
    Pieces {
        /// Number of pieces.
        count: usize,
    },
}

/// An outline as a polygon, turning left: a union of polygons that turn both ways loses some of them.
pub(crate) fn polygon(outline: &[DVec2]) -> Polygon<f64> {
    let mut ring: LineString<f64> = outline.iter().map(|p| Coord { x: p.x, y: p.y }).collect();
    if edges(outline).map(|(a, b)| a.perp_dot(b)).sum::<f64>() < 0.0 {
        ring.0.reverse();
    }
    Polygon::new(ring, Vec::new())
}

/// Corners of a ring, the last not repeating the first.
pub(crate) fn outline_of(ring: &LineString<f64>) -> impl Iterator<Item = DVec2> + '_ {
    ring.coords().take(ring.0.len().saturating_sub(1)).map(|c| DVec2::new(c.x, c.y))
}

/// True if an outline has fewer than three corners or no area, or crosses itself.
pub fn outline_is_bad(outline: &[DVec2]) -> bool {
    let p = polygon(outline);
    outline.len() < 3 || p.unsigned_area() < 1e-6 || !p.is_valid()
}

fn union(zones: &[Zone]) -> MultiPolygon<f64> {
    let polygons: Vec<_> = zones.iter().filter(|z| z.outline.len() >= 3).map(|z| polygon(&z.outline)).collect();
    geo::unary_union(polygons.iter())
}

/// The border of all zones together, holes included, as edges. Where zones share an edge there is
/// none. Slivers narrower than 2 cm between zones are closed.
pub(crate) fn border(zones: &[Zone]) -> Vec<(DVec2, DVec2)> {
    // The union rounds; its corners are the zones' own wherever they are as near as that.
    const ROUNDING: f64 = 1e-7;
    let mut own: Vec<DVec2> = zones.iter().flat_map(|z| z.outline.iter().copied()).collect();
    own.sort_by(|a, b| a.x.total_cmp(&b.x));
    let corner = |c: Coord<f64>| {
        let p = DVec2::new(c.x, c.y);
        let near = own.partition_point(|q| q.x < p.x - ROUNDING);
        let mut near = own[near..].iter().take_while(|q| q.x <= p.x + ROUNDING);
        near.find(|q| (q.y - p.y).abs() <= ROUNDING).copied().unwrap_or(p)
    };
    let mut out = Vec::new();
    let mut ring = |r: &LineString<f64>| {
        let corners: Vec<DVec2> = r.coords().map(|c| corner(*c)).collect();
        out.extend(corners.windows(2).map(|pair| (pair[0], pair[1])));
    };
    for p in union(zones) {
        ring(p.exterior());
        for hole in p.interiors().iter().filter(|h| !is_sliver(h)) {
            ring(hole);
        }
    }
    out
}

fn is_sliver(ring: &LineString<f64>) -> bool {
    let area = Polygon::new(ring.clone(), Vec::new()).unsigned_area();
    let length: f64 = ring.lines().map(|l| libm::hypot(l.dx(), l.dy())).sum();
    area <= SLIVER * length * 0.5
}

/// Everything wrong with the zones of a chart, all at once.
pub fn chart_problems(chart: &Chart) -> Vec<ChartProblem> {
    let mut out = Vec::new();
    if chart.zones.is_empty() {
        return vec![ChartProblem::NoZones];
    }
    for (i, zone) in chart.zones.iter().enumerate() {
        if outline_is_bad(&zone.outline) {
            out.push(ChartProblem::BadOutline { zone: i });
        }
    }
    if !out.is_empty() {
        return out;
    }
    for i in 0..chart.zones.len() {
        for j in i + 1..chart.zones.len() {
            let (a, b) = (&chart.zones[i], &chart.zones[j]);
            if a.capacity == b.capacity {
                continue;
            }
            let ((al, ah), (bl, bh)) = (bounds(&a.outline), bounds(&b.outline));
            if al.x >= bh.x || bl.x >= ah.x || al.y >= bh.y || bl.y >= ah.y {
                continue;
            }
            let shared = polygon(&a.outline).intersection(&polygon(&b.outline));
            let area = shared.unsigned_area();
            let length: f64 =
                shared.iter().flat_map(|p| p.exterior().lines()).map(|l| libm::hypot(l.dx(), l.dy())).sum();
            if area > SLIVER * length * 0.5 && area > 1e-6 {
                let at = shared.iter().next().map_or(DVec2::ZERO, |p| middle(p.exterior()));
                out.push(ChartProblem::Overlap { first: i, second: j, area, at });
            }
        }
    }
    let whole = union(&chart.zones);
    if whole.0.len() > 1 {
        out.push(ChartProblem::Pieces { count: whole.0.len() });
    }
    let declared: Vec<_> = chart.not_permitted.iter().filter(|a| a.len() >= 3).map(|a| polygon(a)).collect();
    let declared = geo::unary_union(declared.iter());
    for hole in whole.iter().flat_map(|p| p.interiors().iter()).filter(|h| !is_sliver(h)) {
        let left = Polygon::new(hole.clone(), Vec::new()).difference(&declared);
        if left.unsigned_area() > 1e-4 {
            out.push(ChartProblem::Hole { at: middle(hole), area: left.unsigned_area() });
        }
    }
    out
}

pub(crate) fn middle(ring: &LineString<f64>) -> DVec2 {
    use geo::Centroid;
    ring.centroid().map_or(DVec2::ZERO, |c| DVec2::new(c.x(), c.y()))
}
