//! Whether a chart that holds farther out of level allows more than one for more level ground: a machine
//! is no better out of level than on level ground, so one of the two was read wrongly.

use crate::chart_faults::{SLIVER, middle, outline_is_bad, polygon};
use crate::{Chart, Zone};
use geo::{Area, BooleanOps, MultiPolygon};
use geometry::DVec2;

/// A place where the chart for rougher ground allows more.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct MoreOutOfLevel {
    /// Zone of the chart that holds farther out of level.
    pub zone: usize,
    /// Zone of the stricter chart that has less there; `None`: nothing is permitted there.
    pub less: Option<usize>,
    /// Where, (reach, height) of the stricter chart, m.
    pub at: DVec2,
}

/// Every zone of `rough` that allows more somewhere than `strict` does at the same place, with the
/// least that `strict` has there. `shift` brings a (reach, height) of `rough` to that of `strict`, m.
/// Strips narrower than a drawing error of 2 cm do not count; charts with bad outlines are not compared.
pub fn more_out_of_level(strict: &Chart, rough: &Chart, shift: DVec2) -> Vec<MoreOutOfLevel> {
    let bad =
        |c: &Chart| c.zones.iter().map(|z| &z.outline).chain(&c.not_permitted).any(|outline| outline_is_bad(outline));
    if !shift.is_finite() || bad(strict) || bad(rough) {
        return Vec::new();
    }
    let none = areas(&strict.not_permitted, DVec2::ZERO);
    let allowed = zones(&strict.zones).difference(&none);
    let rough_none = areas(&rough.not_permitted, shift);
    let mut out = Vec::new();
    for (zone, z) in rough.zones.iter().enumerate() {
        let here = areas(std::slice::from_ref(&z.outline), shift).difference(&rough_none);
        let outside = place(&here.difference(&allowed)).map(|at| MoreOutOfLevel { zone, less: None, at });
        let less = strict.zones.iter().enumerate().filter(|(_, s)| s.capacity.value < z.capacity.value);
        let lowest = less
            .filter_map(|(i, s)| {
                let shared = here.intersection(&polygon(&s.outline));
                place(&shared).map(|at| (s.capacity.value, MoreOutOfLevel { zone, less: Some(i), at }))
            })
            .min_by(|a, b| a.0.total_cmp(&b.0))
            .map(|(_, found)| found);
        out.extend(outside.or(lowest));
    }
    out
}

fn zones(zones: &[Zone]) -> MultiPolygon<f64> {
    geo::unary_union(zones.iter().map(|z| polygon(&z.outline)).collect::<Vec<_>>().iter())
}

fn areas(outlines: &[Vec<DVec2>], shift: DVec2) -> MultiPolygon<f64> {
    let moved = |outline: &Vec<DVec2>| polygon(&outline.iter().map(|p| *p + shift).collect::<Vec<_>>());
    geo::unary_union(outlines.iter().map(moved).collect::<Vec<_>>().iter())
}

/// The middle of the first piece that is no sliver.
fn place(pieces: &MultiPolygon<f64>) -> Option<DVec2> {
    let wide = pieces.iter().find(|p| {
        let length: f64 = p.exterior().lines().map(|l| libm::hypot(l.dx(), l.dy())).sum();
        p.unsigned_area() > (SLIVER * length * 0.5).max(1e-4)
    })?;
    Some(middle(wide.exterior()))
}
