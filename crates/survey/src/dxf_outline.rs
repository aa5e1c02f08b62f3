//! Outlines of a drawing: repeated corners, too few, crossing themselves.

use geometry::{DVec2, DVec3};

/// Most areas that an outline which crosses itself is taken apart into.
const MOST_PARTS: usize = 16;

/// What a closed outline turns out to be.
#[derive(Debug, Clone, PartialEq)]
pub(crate) enum Outline {
    /// Three corners or more, the first not repeated.
    Area(Vec<DVec3>),
    /// It crosses itself: the areas that it makes when cut where it does. Together they cover all
    /// that it goes around.
    Parts(Vec<Vec<DVec3>>),
    /// It crosses itself too often. The line itself, closed.
    Crossing(Vec<DVec3>),
    /// It has so many corners side by side that nobody looked whether it crosses itself. The line.
    Unchecked(Vec<DVec3>),
    /// It encloses nothing: there and back again. The line.
    Flat(Vec<DVec3>),
    /// All corners in one place.
    Nothing,
}

/// Leaves out corners closer than `near` to the one before. Returns how many.
pub(crate) fn without_repeats(points: &mut Vec<DVec3>, near: f64) -> u64 {
    let before = points.len();
    points.dedup_by(|next, kept| (*next - *kept).length() <= near);
    (before - points.len()) as u64
}

/// Takes a closed outline, its first corner repeated or not. `near`: corners closer than this are
/// one, file units; `least`: smaller areas are none, file units squared; `tests`: how many pairs of
/// edges may still be compared.
pub(crate) fn outline(mut points: Vec<DVec3>, near: f64, least: f64, tests: &mut u64) -> Outline {
    without_repeats(&mut points, near);
    while points.len() > 1 && (points[points.len() - 1] - points[0]).length() <= near {
        points.pop();
    }
    match points.len() {
        0 | 1 => return Outline::Nothing,
        2 => return Outline::Flat(points),
        _ => {}
    }
    let closed = |mut points: Vec<DVec3>| {
        points.push(points[0]);
        points
    };
    match crossing(&points, tests) {
        Ok(None) if area(&points).abs() <= least => Outline::Flat(closed(points)),
        Ok(None) => Outline::Area(points),
        Ok(Some(_)) => match parts(points.clone(), tests) {
            Ok(mut parts) => {
                parts.retain(|part| area(part).abs() > least);
                if parts.is_empty() { Outline::Flat(closed(points)) } else { Outline::Parts(parts) }
            }
            Err(TooMany) => Outline::Crossing(closed(points)),
        },
        Err(TooMany) => Outline::Unchecked(closed(points)),
    }
}

struct TooMany;

/// Cuts an outline where it crosses itself, until no part does.
fn parts(points: Vec<DVec3>, tests: &mut u64) -> Result<Vec<Vec<DVec3>>, TooMany> {
    let mut open = vec![points];
    let mut done = Vec::new();
    while let Some(points) = open.pop() {
        let Some((i, j, at)) = crossing(&points, tests)? else {
            done.push(points);
            continue;
        };
        if done.len() + open.len() + 2 > MOST_PARTS {
            return Err(TooMany);
        }
        let inner: Vec<DVec3> = std::iter::once(at).chain(points[i + 1..=j].iter().copied()).collect();
        let outer: Vec<DVec3> =
            points[..=i].iter().copied().chain(std::iter::once(at)).chain(points[j + 1..].iter().copied()).collect();
        open.push(outer);
        open.push(inner);
    }
    Ok(done)
}

/// Area in plan, positive counter-clockwise.
pub(crate) fn area(points: &[DVec3]) -> f64 {
    let Some(&origin) = points.first() else { return 0.0 };
    let corner = |i: usize| (points[i % points.len()] - origin).truncate();
    (0..points.len()).map(|i| corner(i).perp_dot(corner(i + 1))).sum::<f64>() / 2.0
}

/// Two edges that cross properly, by the number of their first corner, the lower first, and where;
/// touching is no crossing. Edges are sorted by their west end, so that only neighbours are compared.
fn crossing(points: &[DVec3], tests: &mut u64) -> Result<Option<(usize, usize, DVec3)>, TooMany> {
    let n = points.len();
    let mut edges: Vec<_> = (0..n)
        .map(|i| {
            let (a, b) = (points[i].truncate(), points[(i + 1) % n].truncate());
            if a.x <= b.x { (a, b, i) } else { (b, a, i) }
        })
        .collect();
    edges.sort_by(|p, q| p.0.x.total_cmp(&q.0.x));
    for (k, &(a, b, i)) in edges.iter().enumerate() {
        for &(c, d, j) in edges[k + 1..].iter().take_while(|e| e.0.x <= b.x) {
            *tests = tests.checked_sub(1).ok_or(TooMany)?;
            let side = |p: DVec2, q: DVec2, r: DVec2| (q - p).perp_dot(r - p);
            let apart = c.y.min(d.y) > a.y.max(b.y) || c.y.max(d.y) < a.y.min(b.y);
            if !apart && side(a, b, c) * side(a, b, d) < 0.0 && side(c, d, a) * side(c, d, b) < 0.0 {
                let (i, j) = (i.min(j), i.max(j));
                let (from, to) = (points[i], points[i + 1]);
                let (p, q) = (points[j].truncate(), points[(j + 1) % n].truncate());
                let (s, t) = (side(p, q, from.truncate()), side(p, q, to.truncate()));
                return Ok(Some((i, j, from + (to - from) * (s / (s - t)))));
            }
        }
    }
    Ok(None)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn of(corners: &[(f64, f64)]) -> Outline {
        let points = corners.iter().map(|&(x, y)| DVec3::new(x, y, 0.0)).collect();
        outline(points, 1e-4, 1e-6, &mut 1000)
    }

    #[test]
    fn outlines_by_kind() {
        assert!(
            matches!(of(&[(0.0, 0.0), (2.0, 0.0), (2.0, 0.0), (2.0, 2.0), (0.0, 0.0)]), Outline::Area(p) if p.len() == 3)
        );
        assert!(
            matches!(of(&[(0.0, 0.0), (2.0, 2.0), (2.0, 0.0), (0.0, 2.0)]), Outline::Parts(p) if p.len() == 2 && p.iter().all(|t| (area(t).abs() - 1.0).abs() < 1e-12))
        );
        assert!(matches!(of(&[(0.0, 0.0), (2.0, 2.0), (1.0, 1.0)]), Outline::Flat(_)));
        assert!(matches!(of(&[(0.0, 0.0), (2.0, 2.0), (0.0, 0.0)]), Outline::Flat(p) if p.len() == 2));
        assert_eq!(of(&[(1.0, 1.0), (1.0, 1.0), (1.0, 1.0)]), Outline::Nothing);
        // Two squares that touch in a corner: no crossing.
        let touching = [(0.0, 0.0), (1.0, 0.0), (1.0, 1.0), (2.0, 1.0), (2.0, 2.0), (1.0, 2.0), (1.0, 1.0), (0.0, 1.0)];
        assert!(matches!(of(&touching), Outline::Area(_)));
        let square = [(0.0, 0.0), (1.0, 0.0), (1.0, 1.0), (0.0, 1.0)].map(|(x, y)| DVec3::new(x, y, 0.0)).to_vec();
        assert!((area(&square) - 1.0).abs() < 1e-12);
        assert!(matches!(outline(square, 1e-4, 1e-6, &mut 2), Outline::Unchecked(_)));
    }
}
