//! From the numbers of a file to the site frame: unit, then coordinate system, then local grid.

use crate::reading::UnitFacts;
use geometry::{DVec2, DVec3};

/// How the numbers of one file become metres in the site frame.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Placement {
    horizontal: f64,
    vertical: f64,
}

impl Placement {
    /// Only the units: the file is in the site's own coordinate system.
    pub(crate) fn of_units(units: UnitFacts) -> Self {
        Self { horizontal: units.horizontal.metres(), vertical: units.vertical.metres() }
    }

    /// East and north in the site frame, m.
    pub(crate) fn plan(&self, at: DVec2) -> DVec2 {
        at * self.horizontal
    }

    /// Height in the site frame, m. Heights are never transformed, only their unit.
    pub(crate) fn height(&self, height: f64) -> f64 {
        height * self.vertical
    }

    /// Both together.
    pub(crate) fn point(&self, at: DVec3) -> DVec3 {
        self.plan(at.truncate()).extend(self.height(at.z))
    }
}
