//! Closed forms of sideways pressure on a wall plane; distances in m from the wall, depth `z` m, pressures Pa.

use libm::{atan, atan2, cos, sqrt};
use std::f64::consts::{PI, TAU};

/// Elastic, once, of an endless strip between the distances `off`: `(p/π)·[β − ab…]` as the difference of two
/// quarter planes, `f(x) = atan(x/z) − x·z/(x² + z²)`; Boussinesq, integrated.
pub(crate) fn elastic_strip(pressure: f64, off: [f64; 2], z: f64) -> f64 {
    let f = |x: f64| atan(x / z) - x * z / (x * x + z * z);
    pressure / PI * (f(off[1]) - f(off[0]))
}

/// Elastic, once, of a rectangle: four corners of
/// `g(l, b) = atan(l·b/(z·R)) − l·b·z/((l² + z²)·R)`, `R² = l² + b² + z²`, over 2π; `l` square to the wall, `b` along
/// it. Boussinesq with Poisson's ratio ½, integrated (Holl 1940, from memory; checked by quadrature).
pub(crate) fn elastic_patch(pressure: f64, off: [f64; 2], along: [f64; 2], z: f64) -> f64 {
    let g = |l: f64, b: f64| {
        let r = sqrt(l * l + b * b + z * z);
        atan2(l * b, z * r) - l * b * z / ((l * l + z * z) * r)
    };
    let [x0, x1] = off;
    let [y0, y1] = along;
    pressure / TAU * (g(x1, y1) - g(x0, y1) - g(x1, y0) + g(x0, y0))
}

/// Terzaghi 1954 (from memory), line load, `m = x/H`, `n = z/H`:
/// `(4q/πH)·m²n/(m² + n²)²` for `m > 0.4`, else `(q/H)·0.203·n/(0.16 + n²)²`.
pub(crate) fn terzaghi_line(per_metre: f64, off: f64, height: f64, z: f64) -> f64 {
    let (m, n) = (off / height, z / height);
    if m > 0.4 {
        let square = m * m + n * n;
        4.0 * per_metre / (PI * height) * m * m * n / (square * square)
    } else {
        let square = 0.16 + n * n;
        0.203 * per_metre / height * n / (square * square)
    }
}

/// Terzaghi 1954 (from memory), point load, at `aside` along the wall from it:
/// `1.77·(P/H²)·m²n²/(m² + n²)³` for `m > 0.4`, else `0.28·(P/H²)·n²/(0.16 + n²)³`; beside it times `cos²(1.1·θ)`,
/// `θ = atan(aside/x)`.
pub(crate) fn terzaghi_point(force: f64, off: f64, aside: f64, height: f64, z: f64) -> f64 {
    let (m, n) = (off / height, z / height);
    let before = if m > 0.4 {
        let square = m * m + n * n;
        1.77 * m * m * n * n / (square * square * square)
    } else {
        let square = 0.16 + n * n;
        0.28 * n * n / (square * square * square)
    };
    let turned = 1.1 * atan2(aside.abs(), off);
    // Beyond a right angle the cosine would grow again.
    let share = if turned < PI / 2.0 { cos(turned) * cos(turned) } else { 0.0 };
    force / (height * height) * before * share
}
