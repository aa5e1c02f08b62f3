//! Hatching and clipping, computed as plain lines: no pattern elements, so that it prints alike
//! everywhere.

use crate::svg::Px;

/// Parallel lines at `degrees` from the horizontal, `spacing` px apart, inside a polygon
/// (even-odd rule). The family is anchored at the picture's origin, so that neighbours align.
pub(crate) fn hatch(polygon: &[Px], degrees: f64, spacing: f64) -> Vec<(Px, Px)> {
    hatch_rings(&[polygon], degrees, spacing)
}

/// The same inside an outline with holes.
pub(crate) fn hatch_rings<R: AsRef<[Px]>>(rings: &[R], degrees: f64, spacing: f64) -> Vec<(Px, Px)> {
    let mut out = Vec::new();
    if rings.iter().all(|ring| ring.as_ref().len() < 3) || spacing < 1.0 {
        return out;
    }
    let angle = degrees.to_radians();
    let (sin, cos) = (libm::sin(angle), libm::cos(angle));
    // Along the hatching u, across it v.
    let turn = |p: &Px| (p.0 * cos + p.1 * sin, p.1 * cos - p.0 * sin);
    let turned: Vec<Vec<Px>> = rings.iter().map(|ring| ring.as_ref().iter().map(turn).collect()).collect();
    let low = turned.iter().flatten().map(|p| p.1).fold(f64::INFINITY, f64::min);
    let high = turned.iter().flatten().map(|p| p.1).fold(f64::NEG_INFINITY, f64::max);
    if !(low.is_finite() && high.is_finite()) || (high - low) / spacing > 2000.0 {
        return out;
    }
    // Half a step off whole multiples, so that a line seldom runs through a corner.
    let mut k = (low / spacing).floor();
    loop {
        let v = (k + 0.5) * spacing;
        k += 1.0;
        if v > high {
            return out;
        }
        let mut hits: Vec<f64> = turned
            .iter()
            .flat_map(|ring| edges(ring))
            .filter(|(a, b)| (a.1 <= v) != (b.1 <= v))
            .map(|(a, b)| a.0 + (b.0 - a.0) * (v - a.1) / (b.1 - a.1))
            .collect();
        hits.sort_by(f64::total_cmp);
        for pair in hits.chunks_exact(2) {
            if pair[1] - pair[0] > 0.5 {
                let back = |u: f64| (u * cos - v * sin, u * sin + v * cos);
                out.push((back(pair[0]), back(pair[1])));
            }
        }
    }
}

/// The part of a segment inside a rectangle (Liang and Barsky 1984), if any.
pub(crate) fn clip_segment(a: Px, b: Px, r: crate::labels::Rect) -> Option<(Px, Px)> {
    let (dx, dy) = (b.0 - a.0, b.1 - a.1);
    let (mut from, mut to) = (0.0_f64, 1.0_f64);
    for (p, q) in [(-dx, a.0 - r.x), (dx, r.x + r.w - a.0), (-dy, a.1 - r.y), (dy, r.y + r.h - a.1)] {
        if p == 0.0 {
            if q < 0.0 {
                return None;
            }
        } else if p < 0.0 {
            from = from.max(q / p);
        } else {
            to = to.min(q / p);
        }
    }
    (from <= to).then_some(((a.0 + dx * from, a.1 + dy * from), (a.0 + dx * to, a.1 + dy * to)))
}

/// A polygon cut to a rectangle (Sutherland and Hodgman 1974).
pub(crate) fn clip_polygon(polygon: &[Px], r: crate::labels::Rect) -> Vec<Px> {
    let mut points = polygon.to_vec();
    // Signed distance inside each side; linear, so the cut is at the ratio of distances.
    let sides: [&dyn Fn(Px) -> f64; 4] = [&|p| p.0 - r.x, &|p| r.x + r.w - p.0, &|p| p.1 - r.y, &|p| r.y + r.h - p.1];
    for inside in sides {
        let mut kept = Vec::with_capacity(points.len() + 4);
        for (a, b) in edges(&points) {
            let (da, db) = (inside(a), inside(b));
            if da >= 0.0 {
                kept.push(a);
            }
            if (da >= 0.0) != (db >= 0.0) {
                let t = da / (da - db);
                kept.push((a.0 + (b.0 - a.0) * t, a.1 + (b.1 - a.1) * t));
            }
        }
        points = kept;
    }
    points
}

/// True if a point lies in a polygon (even-odd rule).
pub(crate) fn contains(polygon: &[Px], p: Px) -> bool {
    edges(polygon)
        .filter(|(a, b)| (a.1 <= p.1) != (b.1 <= p.1))
        .filter(|(a, b)| p.0 < a.0 + (b.0 - a.0) * (p.1 - a.1) / (b.1 - a.1))
        .count()
        % 2
        == 1
}

/// A circle as a polygon.
pub(crate) fn circle(c: Px, r: f64, corners: usize) -> Vec<Px> {
    (0..corners)
        .map(|i| {
            let a = core::f64::consts::TAU * i as f64 / corners as f64;
            (c.0 + r * libm::cos(a), c.1 + r * libm::sin(a))
        })
        .collect()
}

/// Edges of a closed polygon.
pub(crate) fn edges(points: &[Px]) -> impl Iterator<Item = (Px, Px)> + '_ {
    (0..points.len()).map(|i| (points[i], points[(i + 1) % points.len()]))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::labels::Rect;

    const SQUARE: [Px; 4] = [(0.0, 0.0), (100.0, 0.0), (100.0, 100.0), (0.0, 100.0)];

    #[test]
    fn hatching_fills_a_square_and_stays_in_it() {
        for degrees in [0.0, 45.0, -45.0, 90.0] {
            let lines = hatch(&SQUARE, degrees, 10.0);
            assert!(lines.len() >= 10, "{degrees}°: {}", lines.len());
            for (a, b) in lines {
                for p in [a, b] {
                    assert!((-1e-9..=100.0 + 1e-9).contains(&p.0) && (-1e-9..=100.0 + 1e-9).contains(&p.1));
                }
            }
        }
    }

    #[test]
    fn hatching_leaves_a_notch_free() {
        // A "U": the line through the notch comes in two pieces.
        let u =
            [(0.0, 0.0), (30.0, 0.0), (30.0, 60.0), (60.0, 60.0), (60.0, 0.0), (90.0, 0.0), (90.0, 90.0), (0.0, 90.0)];
        let through_notch = hatch(&u, 0.0, 10.0).into_iter().filter(|(a, _)| (a.1 - 35.0).abs() < 0.1).count();
        assert_eq!(through_notch, 2);
    }

    #[test]
    fn a_square_cut_to_a_quarter_has_its_area() {
        let cut = clip_polygon(&SQUARE, Rect { x: 50.0, y: 50.0, w: 200.0, h: 200.0 });
        let area: f64 = edges(&cut).map(|(a, b)| a.0 * b.1 - b.0 * a.1).sum::<f64>() / 2.0;
        assert!((area.abs() - 2500.0).abs() < 1e-9);
    }

    #[test]
    fn segments_are_cut_at_the_frame() {
        let r = Rect { x: 0.0, y: 0.0, w: 10.0, h: 10.0 };
        assert_eq!(clip_segment((-5.0, 5.0), (15.0, 5.0), r), Some(((0.0, 5.0), (10.0, 5.0))));
        assert_eq!(clip_segment((-5.0, 15.0), (15.0, 15.0), r), None);
    }
}
