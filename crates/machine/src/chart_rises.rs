//! Where a chart's capacity rises with reach or height: legitimate (backward stability, structure),
//! but more often a slip. It is pointed out, to be confirmed.

use crate::Zone;
use crate::chart_faults::SLIVER;
use crate::chart_polygon::edges;
use geometry::DVec2;

/// A zone with more capacity than one that lies nearer at the same height, or lower at the same reach.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Rise {
    /// The zone with less, nearer or lower.
    pub from: usize,
    /// The zone with more, farther or higher.
    pub to: usize,
    /// With what it rises.
    pub with: RisesWith,
    /// Where the higher zone begins, (reach, height), m.
    pub at: DVec2,
}

/// The direction of a rise.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum RisesWith {
    /// With reach.
    Reach,
    /// With height.
    Height,
}

/// Every pair of zones that follow each other along a level or an upright line with rising capacity.
/// Lines are tried between all neighbouring corners, so that no pair is missed; strips narrower than a
/// drawing error do not count.
pub fn rises(zones: &[Zone]) -> Vec<Rise> {
    let mut out = Vec::new();
    along(zones, RisesWith::Reach, |p| p, &mut out);
    along(zones, RisesWith::Height, |p| DVec2::new(p.y, p.x), &mut out);
    out
}

/// Rises along the first coordinate of `turn`.
fn along(zones: &[Zone], with: RisesWith, turn: impl Fn(DVec2) -> DVec2, out: &mut Vec<Rise>) {
    let mut heights: Vec<f64> = zones.iter().flat_map(|z| &z.outline).map(|p| turn(*p).y).collect();
    heights.sort_by(f64::total_cmp);
    heights.dedup_by(|a, b| *a - *b < SLIVER);
    // Edges from the lower end up, by that end.
    let mut waiting: Vec<(DVec2, DVec2, usize)> = Vec::new();
    for (i, zone) in zones.iter().enumerate() {
        waiting.extend(edges(&zone.outline).map(|(a, b)| {
            let (a, b) = (turn(a), turn(b));
            if a.y <= b.y { (a, b, i) } else { (b, a, i) }
        }));
    }
    waiting.sort_by(|a, b| b.0.y.total_cmp(&a.0.y));
    let mut active: Vec<(DVec2, DVec2, usize)> = Vec::new();
    for pair in heights.windows(2) {
        let y = f64::midpoint(pair[0], pair[1]);
        while let Some(edge) = waiting.pop_if(|e| e.0.y <= y) {
            active.push(edge);
        }
        active.retain(|e| e.1.y > y);
        let mut crossings: Vec<(usize, f64)> =
            active.iter().map(|(a, b, zone)| (*zone, a.x + (y - a.y) / (b.y - a.y) * (b.x - a.x))).collect();
        crossings.sort_by(|a, b| a.0.cmp(&b.0).then(a.1.total_cmp(&b.1)));
        let pieces = crossings.chunks(2).filter(|c| c.len() == 2 && c[0].0 == c[1].0);
        let mut strips: Vec<(f64, usize)> =
            pieces.filter(|c| c[1].1 - c[0].1 > SLIVER).map(|c| (c[0].1, c[0].0)).collect();
        strips.sort_by(|a, b| a.0.total_cmp(&b.0));
        for pair in strips.windows(2) {
            let ((_, from), (x, to)) = (pair[0], pair[1]);
            let more = zones[to].capacity.value > zones[from].capacity.value;
            if more && !out.iter().any(|r| r.from == from && r.to == to && r.with == with) {
                out.push(Rise { from, to, with, at: turn(DVec2::new(x, y)) });
            }
        }
    }
}
