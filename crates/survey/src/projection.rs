//! From one coordinate system to another.

use crate::epsg::System;
use geometry::DVec2;
use proj4rs::Proj;
use proj4rs::transform::transform;
use std::fmt;

/// Plan coordinates of one system in another: out of the projection to longitude and latitude, to
/// the other datum by way of WGS 84 if it is another, and into the other projection.
///
/// The datum step is the seven-parameter shift of each system's table line, in the position vector
/// convention (EPSG method 9606), of a point at height 0; between systems of one datum there is none.
pub(crate) struct Projection {
    from: Proj,
    to: Proj,
    degrees: (bool, bool),
}

/// Why two systems cannot be converted.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum NotConvertible {
    /// Their datums differ, and no shift without a grid file is known.
    NoShift,
    /// A projection that is not known here.
    Unknown,
}

/// Coordinates are rounded to this share of a metre: last bits differ between processors.
const PER_METRE: f64 = 1e6;

impl Projection {
    pub(crate) fn new(from: &System, to: &System) -> Result<Self, NotConvertible> {
        let same_datum = from.datum == to.datum;
        let proj = |system: &System| {
            let shift = match &system.shift {
                _ if same_datum => String::new(),
                Some(shift) => format!(" +towgs84={shift}"),
                None => return Err(NotConvertible::NoShift),
            };
            let words = format!("{}{shift} +no_defs", system.projection);
            Proj::from_proj_string(&words).map_err(|_| NotConvertible::Unknown)
        };
        let (a, b) = (proj(from)?, proj(to)?);
        if !a.has_inverse() || !b.has_inverse() || !a.has_forward() || !b.has_forward() {
            return Err(NotConvertible::Unknown);
        }
        Ok(Self { from: a, to: b, degrees: (from.unit.is_none(), to.unit.is_none()) })
    }

    /// A point of the first system (m, or degrees: longitude, latitude) in the second; `None` where
    /// the projection has no answer.
    pub(crate) fn apply(&self, at: DVec2) -> Option<DVec2> {
        convert(&self.from, &self.to, self.degrees, at)
    }

    /// The other way round.
    pub(crate) fn back(&self, at: DVec2) -> Option<DVec2> {
        convert(&self.to, &self.from, (self.degrees.1, self.degrees.0), at)
    }
}

fn convert(from: &Proj, to: &Proj, degrees: (bool, bool), at: DVec2) -> Option<DVec2> {
    let at = if degrees.0 { at * std::f64::consts::PI / 180.0 } else { at };
    let mut point = (at.x, at.y, 0.0);
    transform(from, to, &mut point).ok()?;
    let at = DVec2::new(point.0, point.1);
    let at = if degrees.1 { at * 180.0 / std::f64::consts::PI } else { (at * PER_METRE).round() / PER_METRE };
    at.is_finite().then_some(at)
}

impl fmt::Debug for Projection {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{} to {}", self.from.projname(), self.to.projname())
    }
}
