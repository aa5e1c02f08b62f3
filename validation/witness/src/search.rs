//! The tilt at which a machine no longer stands, by halving.

use geometry::DVec3;

/// Unit vector of gravity with the ground tilted by `tilt` down towards `azimuth` (rad, from ahead to
/// the left).
pub fn gravity(tilt: f64, azimuth: f64) -> DVec3 {
    DVec3::new(tilt.sin() * azimuth.cos(), tilt.sin() * azimuth.sin(), -tilt.cos())
}

/// Largest tilt asked for, rad.
const MOST: f64 = 0.8;
/// Halvings: the tilt is known to ± 0.8 rad / 2¹² = 0.011°.
const HALVINGS: usize = 11;

/// Middle of the last interval; `None` where it stands at the largest tilt.
pub(crate) fn onset(stands: impl Fn(f64) -> bool) -> Option<f64> {
    if !stands(0.0) {
        return Some(0.0);
    }
    if stands(MOST) {
        return None;
    }
    let (mut low, mut high) = (0.0, MOST);
    for _ in 0..HALVINGS {
        let middle = f64::midpoint(low, high);
        if stands(middle) { low = middle } else { high = middle }
    }
    Some(f64::midpoint(low, high))
}
