//! Curves as chords that lie within a tolerance of them.

use core::f64::consts::{PI, TAU};
use geometry::DVec3;

/// Farthest that a chord lies off its curve, m. Ours: finer than anything set out on a site.
pub(crate) const CHORD_TOLERANCE: f64 = 0.01;

/// Most chords of one arc: reached at the tolerance by a full circle of 34 km radius.
const MOST_CHORDS: f64 = 4096.0;

/// Points at angles from `start` over `sweep` (radians) on the ellipse `centre + cos·x + sin·y`,
/// both ends among them. `x` is the longer half axis.
///
/// A chord over the angle d lies `r·(1 − cos(d/2))` off its circle, and an ellipse is a circle
/// pressed together.
pub(crate) fn arc(centre: DVec3, x: DVec3, y: DVec3, start: f64, sweep: f64, tolerance: f64) -> Vec<DVec3> {
    let radius = x.length().max(y.length());
    let step = if tolerance < radius { 2.0 * libm::acos(1.0 - tolerance / radius) } else { PI };
    // At least eight a circle, so that a small one stays round.
    let n = (sweep.abs() / step.min(PI / 4.0)).ceil().clamp(1.0, MOST_CHORDS);
    let n = if n.is_nan() { 1.0 } else { n };
    #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "between 1 and 4096")]
    let count = n as u32;
    (0..=count)
        .map(|i| {
            let angle = start + sweep * f64::from(i) / n;
            centre + x * libm::cos(angle) + y * libm::sin(angle)
        })
        .collect()
}

/// The angle from `start` to `end` counter-clockwise, radians; a full turn where they are the same.
pub(crate) fn sweep(start: f64, end: f64) -> f64 {
    let sweep = libm::fmod(end - start, TAU);
    let sweep = if sweep <= 1e-12 { sweep + TAU } else { sweep };
    sweep.min(TAU)
}

/// The points of an arc from `a` to `b` after `a`, `b` last; `bulge` is the tangent of a quarter of
/// its angle, positive counter-clockwise. Both at one height, z up.
pub(crate) fn bulge(a: DVec3, b: DVec3, bulge: f64, tolerance: f64) -> Vec<DVec3> {
    let chord = b - a;
    if bulge.abs() < 1e-9 || chord.truncate().length_squared() == 0.0 {
        return vec![b];
    }
    // centre = middle + left · c/2 · (1 − b²)/(2b); the angle is 4·atan(b).
    let left = DVec3::new(-chord.y, chord.x, 0.0);
    let centre = (a + b) / 2.0 + left * ((1.0 / bulge - bulge) / 4.0);
    let spoke = a - centre;
    let across = DVec3::new(-spoke.y, spoke.x, 0.0);
    let mut points = arc(centre, spoke, across, 0.0, 4.0 * libm::atan(bulge), tolerance);
    points.remove(0);
    if let Some(last) = points.last_mut() {
        *last = b;
    }
    points
}

/// A B-spline curve; `weights` empty or one for each control point. `None` where the numbers do not
/// make a curve, or one of more than `most` chords. Chords lie within half of the tolerance at the
/// quarters of each piece.
pub(crate) fn spline(
    degree: usize,
    knots: &[f64],
    controls: &[DVec3],
    weights: &[f64],
    (tolerance, most): (f64, usize),
) -> Option<Vec<DVec3>> {
    let whole = (1..=11).contains(&degree)
        && controls.len() > degree
        && knots.len() == controls.len() + degree + 1
        && knots.windows(2).all(|w| w[0] <= w[1])
        && (weights.is_empty() || (weights.len() == controls.len() && weights.iter().all(|&w| w > 0.0)));
    if !whole {
        return None;
    }
    let at = |t: f64, span: usize| point_on(degree, knots, controls, weights, t, span);
    let mut out = Vec::new();
    for span in degree..controls.len() {
        let (from, to) = (knots[span], knots[span + 1]);
        if to <= from {
            continue;
        }
        let start = at(from, span);
        if out.is_empty() {
            out.push(start);
        }
        refine(&|t| at(t, span), (from, start), (to, at(to, span)), (tolerance, most), 0, &mut out);
        if out.len() > most {
            return None;
        }
    }
    (out.len() >= 2 && out.iter().all(|p| p.is_finite())).then_some(out)
}

fn refine(
    at: &dyn Fn(f64) -> DVec3,
    a: (f64, DVec3),
    b: (f64, DVec3),
    limits: (f64, usize),
    depth: u32,
    out: &mut Vec<DVec3>,
) {
    let middle = f64::midpoint(a.0, b.0);
    let off = |t: f64| {
        let p = at(t);
        let chord = b.1 - a.1;
        let along = if chord.length_squared() > 0.0 {
            ((p - a.1).dot(chord) / chord.length_squared()).clamp(0.0, 1.0)
        } else {
            0.0
        };
        (p - a.1 - chord * along).length()
    };
    let worst = [0.25, 0.5, 0.75].map(|f| off(a.0 + (b.0 - a.0) * f)).into_iter().fold(0.0, f64::max);
    if depth >= 10 || (depth >= 1 && worst <= limits.0 / 2.0) || out.len() > limits.1 {
        out.push(b.1);
        return;
    }
    let m = (middle, at(middle));
    refine(at, a, m, limits, depth + 1, out);
    refine(at, m, b, limits, depth + 1, out);
}

/// De Boor's algorithm in homogeneous coordinates (de Boor 1972, from memory).
fn point_on(degree: usize, knots: &[f64], controls: &[DVec3], weights: &[f64], t: f64, span: usize) -> DVec3 {
    let mut d: Vec<(DVec3, f64)> = (span - degree..=span)
        .map(|i| {
            let w = weights.get(i).copied().unwrap_or(1.0);
            (controls[i] * w, w)
        })
        .collect();
    for r in 1..=degree {
        for j in (r..=degree).rev() {
            let i = span - degree + j;
            let width = knots[i + 1 + degree - r] - knots[i];
            let f = if width > 0.0 { (t - knots[i]) / width } else { 0.0 };
            d[j] = (d[j - 1].0 * (1.0 - f) + d[j].0 * f, d[j - 1].1 * (1.0 - f) + d[j].1 * f);
        }
    }
    d[degree].0 / d[degree].1
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn chords_stay_within_the_tolerance() {
        for radius in [0.5, 3.0, 40.0, 5000.0] {
            let points = arc(DVec3::ZERO, DVec3::X * radius, DVec3::Y * radius, 0.3, TAU, 0.01);
            let worst = points.windows(2).map(|w| radius - ((w[0] + w[1]) / 2.0).length()).fold(0.0, f64::max);
            assert!(worst <= 0.01 + 1e-7, "{radius}: {worst}");
            assert!(radius < 1.0 || worst > 0.005, "{radius}: {worst}, more chords than needed");
        }
    }

    #[test]
    fn a_bulge_of_one_is_a_half_circle_to_the_right_of_the_chord() {
        let points = bulge(DVec3::ZERO, DVec3::X * 2.0, 1.0, 0.001);
        let lowest = points.iter().fold(0.0_f64, |m, p| m.min(p.y));
        assert!((lowest + 1.0).abs() < 0.001);
        assert_eq!(points.last(), Some(&(DVec3::X * 2.0)));
        assert_eq!(bulge(DVec3::ZERO, DVec3::X, 0.0, 0.001).len(), 1);
    }

    #[test]
    #[allow(clippy::unwrap_used, reason = "tests")]
    fn a_rational_spline_is_an_exact_quarter_circle() {
        let controls = [DVec3::X, DVec3::new(1.0, 1.0, 0.0), DVec3::Y];
        let weights = [1.0, 0.5_f64.sqrt(), 1.0];
        let points = spline(2, &[0.0, 0.0, 0.0, 1.0, 1.0, 1.0], &controls, &weights, (1e-4, 1000)).unwrap();
        assert!(points.iter().all(|p| (p.length() - 1.0).abs() < 1e-12));
        assert!(points.windows(2).all(|w| ((w[0] + w[1]) / 2.0).length() > 1.0 - 1e-4));
        assert_eq!(spline(2, &[0.0, 0.0, 1.0, 1.0, 1.0], &controls, &[], (1e-4, 1000)), None);
    }

    #[test]
    fn sweeps() {
        assert!((sweep(0.0, 0.0) - TAU).abs() < 1e-12);
        assert!((sweep(3.0 * PI / 2.0, PI / 2.0) - PI).abs() < 1e-12);
        assert!((sweep(0.0, TAU) - TAU).abs() < 1e-12);
    }
}
