//! Rigid transforms between frames.

use glam::{DMat3, DVec3};
use std::ops::Mul;

/// A rigid transform: rotation, then translation (m).
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Pose {
    /// Rotation; columns are the axes of the inner frame seen from the outer one.
    pub rotation: DMat3,
    /// Origin of the inner frame in the outer one, m.
    pub translation: DVec3,
}

impl Pose {
    /// The transform that changes nothing.
    pub const IDENTITY: Self = Self { rotation: DMat3::IDENTITY, translation: DVec3::ZERO };

    /// From the axes `x` (forward) and `left` (made square to `x`) and an origin, all in the outer frame.
    ///
    /// # Panics
    /// Never; parallel axes give NaN, which the caller's checks refuse.
    pub fn from_axes(x: DVec3, left: DVec3, origin: DVec3) -> Self {
        let x = x.normalize();
        let z = x.cross(left).normalize();
        Self { rotation: DMat3::from_cols(x, z.cross(x), z), translation: origin }
    }

    /// The inverse transform.
    #[must_use]
    pub fn inverse(&self) -> Self {
        let r = self.rotation.transpose();
        Self { rotation: r, translation: -(r * self.translation) }
    }

    /// Turns a direction into the outer frame (no translation).
    pub fn turn(&self, direction: DVec3) -> DVec3 {
        self.rotation * direction
    }
}

impl Mul<DVec3> for Pose {
    type Output = DVec3;
    fn mul(self, point: DVec3) -> DVec3 {
        self.rotation * point + self.translation
    }
}

impl Mul for Pose {
    type Output = Self;
    fn mul(self, inner: Self) -> Self {
        Self { rotation: self.rotation * inner.rotation, translation: self * inner.translation }
    }
}

/// Heading at the edges (degrees clockwise from north) to the inside angle
/// (radians counter-clockwise from east).
pub fn heading_from_degrees(clockwise_from_north_deg: f64) -> f64 {
    (90.0 - clockwise_from_north_deg).to_radians()
}

/// Inside angle (radians counter-clockwise from east) to a heading in [0°, 360°).
pub fn heading_to_degrees(ccw_from_east: f64) -> f64 {
    (90.0 - ccw_from_east.to_degrees()).rem_euclid(360.0)
}

/// The same angle in `[-π, π)`, rad.
pub fn wrapped(angle: f64) -> f64 {
    use core::f64::consts::{PI, TAU};
    let turns = ((angle + PI) / TAU).floor();
    let a = angle - turns * TAU;
    // Round-off of the product may end a hair outside.
    if a >= PI {
        a - TAU
    } else if a < -PI {
        a + TAU
    } else {
        a
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn headings_turn_round_and_back() {
        assert!((heading_from_degrees(90.0)).abs() < 1e-12, "east is zero inside");
        assert!((heading_to_degrees(heading_from_degrees(217.5)) - 217.5).abs() < 1e-9);
    }

    #[test]
    fn an_angle_is_wrapped_to_half_a_turn_either_way() {
        use core::f64::consts::{PI, TAU};
        for (angle, same) in
            [(0.3, 0.3), (-0.3, -0.3), (PI, -PI), (4.0, 4.0 - TAU), (-9.0, -9.0 + TAU), (100.5 * PI, 0.5 * PI)]
        {
            let got = wrapped(angle);
            assert!((got - same).abs() < 1e-9 && (-PI..PI).contains(&got), "{angle}: {got}");
        }
        assert!(wrapped(f64::NAN).is_nan());
    }

    #[test]
    fn inverse_undoes() {
        let p = Pose::from_axes(DVec3::new(1.0, 2.0, 0.1), DVec3::new(-2.0, 1.0, 0.05), DVec3::new(3.0, -4.0, 5.0));
        let q = DVec3::new(0.3, -7.0, 2.0);
        assert!((p.inverse() * (p * q) - q).length() < 1e-12);
        assert!(((p * p.inverse()) * q - q).length() < 1e-12);
        assert!((p.rotation.determinant() - 1.0).abs() < 1e-12);
    }
}
