//! Contacts beside an excavation as rows of wheels along its nearest side.

use super::patches;
use geometry::DVec2;
use ground::stress::Patch;
use ground::wheel_row::WheelRow;
use site::Excavation;

/// Wheels that stand so near to one line along the edge count as one row, m (ours: a tyre's width).
const ONE_ROW: f64 = 0.3;

/// The contacts in rows along the nearest side of the excavation.
pub(super) fn rows(dig: &Excavation, patches: &[Patch; 4]) -> Vec<WheelRow> {
    let middle = |p: &Patch| DVec2::from_array(p.middle);
    let off = |(a, b): (DVec2, DVec2), p: DVec2| {
        let t = ((p - a).dot(b - a) / (b - a).length_squared().max(1e-12)).clamp(0.0, 1.0);
        (a + (b - a) * t - p).length()
    };
    let nearest = |side: (DVec2, DVec2)| patches.iter().map(|p| off(side, middle(p))).fold(f64::INFINITY, f64::min);
    let Some(side) = dig.outline.edges().min_by(|a, b| nearest(*a).total_cmp(&nearest(*b))) else {
        return Vec::new();
    };
    let along = (side.1 - side.0).normalize_or(DVec2::X);
    let square = along.perp();
    // Outer edge of each patch from the side's line, its breadth square to it, its length along it.
    let reach = |p: &Patch, direction: DVec2| {
        let corners = patches::corners(p).map(|c| (c - side.0).dot(direction));
        let (low, high) = corners.iter().fold((f64::INFINITY, f64::NEG_INFINITY), |(l, h), v| (l.min(*v), h.max(*v)));
        (low, high)
    };
    let sign = if patches.iter().map(|p| (middle(p) - side.0).dot(square)).sum::<f64>() < 0.0 { -1.0 } else { 1.0 };
    let mut placed: Vec<(f64, f64, f64, f64, f64)> = patches
        .iter()
        .map(|p| {
            let (near, far) = reach(p, square * sign);
            let (from, to) = reach(p, along);
            (near, far - near, to - from, f64::midpoint(from, to), p.force.max(0.0))
        })
        .collect();
    placed.sort_by(|a, b| a.0.total_cmp(&b.0));
    let first = placed.first().map_or(0.0, |p| p.0);
    let origin = placed.first().map_or(0.0, |p| p.3);
    let mut rows: Vec<WheelRow> = Vec::new();
    for (near, across, length, at, force) in placed {
        let behind = near - first;
        match rows.last_mut().filter(|r| behind - r.behind <= ONE_ROW) {
            Some(row) => {
                // The narrower and shorter of both presses harder.
                row.across = row.across.min(across);
                row.along = row.along.min(length);
                row.contacts.push([at - origin, force]);
            }
            None => rows.push(WheelRow { behind, across, along: length, contacts: vec![[at - origin, force]] }),
        }
    }
    rows
}
