//! From an entity's own axes to those of the drawing: facing direction, then block inserts.

use geometry::{DMat3, DVec3};

/// An affine map.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Frame {
    axes: DMat3,
    origin: DVec3,
}

impl Frame {
    pub(crate) const WORLD: Self = Self { axes: DMat3::IDENTITY, origin: DVec3::ZERO };

    /// The axes of a flat entity that faces `facing`: the "arbitrary axis algorithm" of the DXF
    /// reference (from memory). `None` if the direction has no length.
    pub(crate) fn facing(facing: DVec3) -> Option<Self> {
        let z = facing.try_normalize()?;
        let steep = z.x.abs() < 1.0 / 64.0 && z.y.abs() < 1.0 / 64.0;
        let x = if steep { DVec3::Y.cross(z) } else { DVec3::Z.cross(z) }.try_normalize()?;
        Some(Self { axes: DMat3::from_cols(x, z.cross(x), z), origin: DVec3::ZERO })
    }

    /// Moved, turned about z (radians), scaled.
    pub(crate) fn placed(origin: DVec3, turn: f64, scale: DVec3) -> Self {
        let axes = DMat3::from_cols(
            DVec3::new(libm::cos(turn), libm::sin(turn), 0.0) * scale.x,
            DVec3::new(-libm::sin(turn), libm::cos(turn), 0.0) * scale.y,
            DVec3::Z * scale.z,
        );
        Self { axes, origin }
    }

    /// What is first mapped by `inner`, then by this.
    pub(crate) fn after(&self, inner: &Self) -> Self {
        Self { axes: self.axes * inner.axes, origin: self.point(inner.origin) }
    }

    pub(crate) fn point(&self, p: DVec3) -> DVec3 {
        self.axes * p + self.origin
    }

    /// The most that a length can grow.
    pub(crate) fn stretch(&self) -> f64 {
        // The Frobenius norm is never below the spectral one.
        let [x, y, z] = [self.axes.x_axis, self.axes.y_axis, self.axes.z_axis];
        ((x.length_squared() + y.length_squared() + z.length_squared()) / 3.0)
            .sqrt()
            .max(x.length())
            .max(y.length())
            .max(z.length())
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    #[allow(clippy::unwrap_used, reason = "tests")]
    fn facing_down_mirrors_east() {
        let down = Frame::facing(DVec3::NEG_Z).unwrap();
        assert!((down.point(DVec3::new(3.0, 4.0, 5.0)) - DVec3::new(-3.0, 4.0, -5.0)).length() < 1e-12);
        assert_eq!(Frame::facing(DVec3::ZERO), None);
    }

    #[test]
    fn turned_scaled_moved() {
        let quarter =
            Frame::placed(DVec3::new(10.0, 0.0, 0.0), core::f64::consts::FRAC_PI_2, DVec3::new(2.0, 1.0, 1.0));
        assert!((quarter.point(DVec3::X) - DVec3::new(10.0, 2.0, 0.0)).length() < 1e-12);
        assert!((quarter.after(&quarter).point(DVec3::ZERO) - DVec3::new(10.0, 20.0, 0.0)).length() < 1e-12);
    }
}
