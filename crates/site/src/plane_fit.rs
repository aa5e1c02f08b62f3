//! The plane that lies closest to points: how a piece of ground slopes as a whole.

use geometry::{DVec2, DVec3};

/// A plane `z = at.z + east·(x − at.x) + north·(y − at.y)`, m.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Plane {
    /// Centre of the points; the plane goes through it, m.
    pub at: DVec3,
    /// Rise over run to the east and to the north.
    pub rise: DVec2,
    /// Root mean square of the vertical distances of the points to it, m.
    pub rms: f64,
}

impl Plane {
    /// Steepest slope as rise over run (0.07 is 7 %).
    pub fn slope(&self) -> f64 {
        self.rise.length()
    }

    /// Direction in which it falls, degrees clockwise from north, 0 to 360; `None` if it is level.
    pub fn downhill_azimuth(&self) -> Option<f64> {
        (self.slope() > 0.0).then(|| libm::atan2(-self.rise.x, -self.rise.y).to_degrees().rem_euclid(360.0))
    }

    /// Height of the plane at a place, m.
    pub fn height(&self, at: DVec2) -> f64 {
        self.at.z + self.rise.dot(at - self.at.truncate())
    }
}

/// Least-squares plane through points, m; distances are taken vertically.
///
/// With `x, y, z` from the mean of the points: `Σxx·a + Σxy·b = Σxz`, `Σxy·a + Σyy·b = Σyz` (normal
/// equations). `None` for fewer than three points, all in one line in plan (to 1e-9 of their
/// extent), or with a coordinate that is no number.
///
/// ```
/// # use geometry::DVec3;
/// let ramp = [(0.0, 0.0, 10.0), (10.0, 0.0, 11.0), (0.0, 10.0, 10.0), (10.0, 10.0, 11.0)];
/// let plane = site::fit_plane(&ramp.map(|(x, y, z)| DVec3::new(x, y, z))).unwrap();
/// assert!((plane.slope() - 0.1).abs() < 1e-12); // 10 %
/// assert!((plane.downhill_azimuth().unwrap() - 270.0).abs() < 1e-9); // it falls to the west
/// assert!(plane.rms < 1e-12);
/// ```
pub fn fit_plane(points: &[DVec3]) -> Option<Plane> {
    if points.len() < 3 || points.iter().any(|p| !p.is_finite()) {
        return None;
    }
    let n = points.len() as f64;
    let at = middle(points);
    let (mut xx, mut xy, mut yy, mut xz, mut yz) = (0.0, 0.0, 0.0, 0.0, 0.0);
    for p in points {
        let d = *p - at;
        (xx, xy, yy) = (xx + d.x * d.x, xy + d.x * d.y, yy + d.y * d.y);
        (xz, yz) = (xz + d.x * d.z, yz + d.y * d.z);
    }
    let det = xx * yy - xy * xy;
    let extent = xx + yy;
    if det.is_nan() || det <= 1e-18 * extent * extent {
        return None;
    }
    let rise = DVec2::new((xz * yy - yz * xy) / det, (yz * xx - xz * xy) / det);
    let square = |p: &DVec3| {
        let d = *p - at;
        let off = d.z - rise.dot(d.truncate());
        off * off
    };
    let rms = (points.iter().map(square).sum::<f64>() / n).sqrt();
    rise.is_finite().then_some(Plane { at, rise, rms })
}

/// From the first point, so that coordinates of millions cost no digits.
fn middle(points: &[DVec3]) -> DVec3 {
    let Some(&origin) = points.first() else { return DVec3::NAN };
    origin + points.iter().map(|p| *p - origin).sum::<DVec3>() / points.len() as f64
}

/// How errors of single heights move the least-squares plane of [`fit_plane`].
///
/// The plane is linear in the heights: with `d` the places from their mean and `M = Σ d·dᵀ`, its rise is
/// `Σ M⁻¹·dᵢ·zᵢ`, and its height at place `j` is `Σ (1/n + dⱼᵀ·M⁻¹·dᵢ)·zᵢ` (normal equations).
pub(crate) struct Leverage {
    /// Places from their mean, m.
    places: Vec<DVec2>,
    /// `M⁻¹·dᵢ`, 1/m.
    pulls: Vec<DVec2>,
}

impl Leverage {
    /// `None` where [`fit_plane`] has none.
    pub(crate) fn of(points: &[DVec3]) -> Option<Self> {
        let at = middle(points).truncate();
        let places: Vec<DVec2> = points.iter().map(|p| p.truncate() - at).collect();
        let sum = |of: fn(&DVec2) -> f64| places.iter().map(of).sum::<f64>();
        let (xx, xy, yy) = (sum(|d| d.x * d.x), sum(|d| d.x * d.y), sum(|d| d.y * d.y));
        let det = xx * yy - xy * xy;
        if det.is_nan() || det <= 1e-18 * (xx + yy) * (xx + yy) {
            return None;
        }
        let pull = |d: &DVec2| DVec2::new(yy * d.x - xy * d.y, xx * d.y - xy * d.x) / det;
        let pulls = places.iter().map(pull).collect();
        Some(Self { places, pulls })
    }

    /// The most that the rise in a direction (of length 1) is off, where each height is off by its error at most.
    pub(crate) fn rise_error(&self, errors: &[f64], direction: DVec2) -> f64 {
        self.pulls.iter().zip(errors).map(|(pull, error)| pull.dot(direction).abs() * error).sum()
    }

    /// The most that the distance of point `index` from the plane is off, m.
    pub(crate) fn off(&self, errors: &[f64], index: usize) -> f64 {
        let n = self.places.len() as f64;
        let here = self.places[index];
        let share = |i: usize| f64::from(u8::from(i == index)) - 1.0 / n - here.dot(self.pulls[i]);
        errors.iter().enumerate().map(|(i, error)| share(i).abs() * error).sum()
    }
}

#[cfg(test)]
#[allow(clippy::unwrap_used, reason = "tests")]
mod tests {
    use super::*;

    #[test]
    fn points_that_make_no_plane_give_none() {
        let line = [0.0, 1.0, 2.0, 3.0].map(|t| DVec3::new(5e5 + t, 6e6 + 2.0 * t, t));
        assert_eq!(fit_plane(&line), None);
        assert_eq!(fit_plane(&[DVec3::ONE; 5]), None, "one place");
        assert_eq!(fit_plane(&line[..2]), None);
        assert_eq!(fit_plane(&[DVec3::NAN, DVec3::X, DVec3::Y]), None);
    }

    #[test]
    fn far_coordinates_cost_no_digits() {
        let points: Vec<DVec3> = (0..100)
            .map(|i| {
                let (x, y) = (f64::from(i % 10), f64::from(i / 10));
                DVec3::new(5e5 + x, 6e6 + y, 100.0 - 0.03 * x + 0.04 * y + if i % 2 == 0 { 0.01 } else { -0.01 })
            })
            .collect();
        let plane = fit_plane(&points).unwrap();
        assert!((plane.slope() - 0.05).abs() < 1e-3, "{}", plane.slope());
        assert!((plane.rms - 0.01).abs() < 1e-3);
        assert!((plane.height(DVec2::new(5e5, 6e6)) - 100.0).abs() < 0.01);
        let level = [DVec3::ZERO, DVec3::X, DVec3::Y];
        assert_eq!(fit_plane(&level).unwrap().downhill_azimuth(), None);
    }
}
