//! Outlines with holes, cut into outlines without.

use crate::chart_polygon::{contains, edges};
use geometry::DVec2;

/// Cuts an outline (the first ring) with holes (the others) into plain outlines, from corner to corner:
/// no new corners, so that neighbours keep sharing theirs. `None` if no such cut is found.
pub(crate) fn without_holes(rings: Vec<Vec<DVec2>>) -> Option<Vec<Vec<DVec2>>> {
    let mut open = vec![rings];
    let mut done = Vec::new();
    while let Some(mut rings) = open.pop() {
        if rings.len() < 2 {
            done.append(&mut rings);
            continue;
        }
        let (hole, [first, second]) = cuts(&rings)?;
        let (outer, inner) = (&rings[0], &rings[hole]);
        // Along the outline from one cut to the other, back along the side of the hole that faces it.
        let turned = same_turn(outer, inner);
        let halves = [(first, second), (second, first)].map(|(from, to)| {
            let mut half = walk(outer, from.0, to.0, true);
            half.extend(walk(inner, to.1, from.1, !turned));
            // A hole that touches the outline is cut there at no length.
            half.dedup();
            if half.first() == half.last() {
                half.pop();
            }
            half
        });
        let others: Vec<Vec<DVec2>> =
            rings.iter().enumerate().filter(|(i, _)| *i != 0 && *i != hole).map(|(_, r)| r.clone()).collect();
        let [a, b] = halves;
        let (in_a, in_b) = others.into_iter().partition(|r| holds(&a, r));
        open.push(with_holes(a, in_a));
        open.push(with_holes(b, in_b));
    }
    Some(done)
}

fn with_holes(outline: Vec<DVec2>, holes: Vec<Vec<DVec2>>) -> Vec<Vec<DVec2>> {
    std::iter::once(outline).chain(holes).collect()
}

fn holds(outline: &[DVec2], ring: &[DVec2]) -> bool {
    ring.iter().all(|p| contains(outline, *p))
}

fn same_turn(a: &[DVec2], b: &[DVec2]) -> bool {
    (doubled_area(a) > 0.0) == (doubled_area(b) > 0.0)
}

fn doubled_area(ring: &[DVec2]) -> f64 {
    edges(ring).map(|(a, b)| a.perp_dot(b)).sum()
}

/// Corners from one to another, both included.
fn walk(ring: &[DVec2], from: usize, to: usize, forward: bool) -> Vec<DVec2> {
    let n = ring.len();
    let mut at = from;
    let mut out = vec![ring[at]];
    while at != to {
        at = if forward { (at + 1) % n } else { (at + n - 1) % n };
        out.push(ring[at]);
    }
    out
}

/// A cut: corner of the outline, corner of the hole.
type Cut = (usize, usize);

/// A hole and two cuts from it to the outline that meet nothing and not each other.
fn cuts(rings: &[Vec<DVec2>]) -> Option<(usize, [Cut; 2])> {
    let outer = &rings[0];
    for (hole, inner) in rings.iter().enumerate().skip(1) {
        let mut all: Vec<(f64, Cut)> = Vec::with_capacity(outer.len() * inner.len());
        for (i, p) in outer.iter().enumerate() {
            all.extend(inner.iter().enumerate().map(|(k, q)| (p.distance_squared(*q), (i, k))));
        }
        all.sort_by(|a, b| a.0.total_cmp(&b.0));
        let clear = |(i, k): Cut| rings.iter().all(|r| edges(r).all(|e| !crosses((outer[i], inner[k]), e)));
        let Some(first) = all.iter().map(|(_, cut)| *cut).find(|cut| clear(*cut)) else { continue };
        let from = (outer[first.0], inner[first.1]);
        let second = all.iter().map(|(_, cut)| *cut).find(|(i, k)| {
            let cut = (outer[*i], inner[*k]);
            *i != first.0 && *k != first.1 && !crosses(cut, from) && clear((*i, *k))
        });
        if let Some(second) = second {
            return Some((hole, [first, second]));
        }
    }
    None
}

/// True if two segments share a point other than a common end.
fn crosses((a, b): (DVec2, DVec2), (c, d): (DVec2, DVec2)) -> bool {
    let side = |p: DVec2, q: DVec2, r: DVec2| (q - p).perp_dot(r - p);
    let within = |p: DVec2, q: DVec2, r: DVec2| {
        r != p && r != q && side(p, q, r).abs() <= 1e-9 * (q - p).length() && (r - p).dot(r - q) < 0.0
    };
    if within(a, b, c) || within(a, b, d) || within(c, d, a) || within(c, d, b) {
        return true;
    }
    if a == c || a == d || b == c || b == d {
        return false;
    }
    (side(a, b, c) > 0.0) != (side(a, b, d) > 0.0) && (side(c, d, a) > 0.0) != (side(c, d, b) > 0.0)
}
