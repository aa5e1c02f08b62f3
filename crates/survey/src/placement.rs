//! From the numbers of a file to the site frame: unit, then coordinate system, then local grid.

use crate::crs::CrsStatements;
use crate::local_grid::LocalGrid;
use crate::notes::{Notes, Refused};
use crate::options::GroundOptions;
use crate::projection::Projection;
use crate::reading::UnitFacts;
use crate::systems::{self, Conversion};
use crate::units;
use geometry::{DVec2, DVec3};
use std::sync::Arc;

/// How the numbers of one file become metres in the site frame.
#[derive(Debug, Clone)]
pub(crate) struct Placement {
    /// Metres (or degrees) of the file's system in one of the file's numbers.
    horizontal: f64,
    vertical: f64,
    projection: Option<Arc<Projection>>,
    local: Option<LocalGrid>,
}

/// A placement with what is to be shown of it.
#[derive(Debug)]
pub(crate) struct Settled {
    pub(crate) placement: Placement,
    pub(crate) units: UnitFacts,
    /// Coordinate system of the file, or of file and site.
    pub(crate) crs: Option<String>,
}

/// Steps along an edge of a box, when it is carried into another system.
const STEPS: u32 = 8;

impl Placement {
    /// Works out how a file is placed; `corners` are the smallest and largest numbers in the file.
    ///
    /// Refused: unit or system unknown where it is needed, degrees without a system to project them
    /// to, systems that cannot be converted, numbers outside the system's area, swapped axes, a
    /// local grid that is none.
    pub(crate) fn settle(
        statements: &CrsStatements,
        corners: (DVec2, DVec2),
        options: &GroundOptions,
        notes: &mut Notes<'_>,
    ) -> Result<Settled, Refused> {
        systems::check_local(options, notes)?;
        let conversion = systems::conversion(statements, corners, options, notes)?;
        let (horizontal, units) = if conversion.degrees {
            (1.0, units::of_heights(statements, options, notes)?)
        } else {
            let units = units::resolve(&conversion.statements, options, notes)?;
            (units.horizontal.metres(), units)
        };
        conversion.check_area((corners.0 * horizontal, corners.1 * horizontal), notes)?;
        conversion.warn_datum(notes);
        let Conversion { projection, crs, .. } = conversion;
        let placement = Self {
            horizontal,
            vertical: units.vertical.metres(),
            projection: projection.map(Arc::new),
            local: options.local,
        };
        Ok(Settled { placement, units, crs })
    }

    /// East and north in the site frame, m; NaN where the projection has no answer.
    pub(crate) fn plan(&self, at: DVec2) -> DVec2 {
        self.of_metres(at * self.horizontal)
    }

    /// The same from metres (or degrees) of the file's system.
    #[inline]
    pub(crate) fn of_metres(&self, at: DVec2) -> DVec2 {
        let at = match &self.projection {
            None => at,
            Some(projection) => projection.apply(at).unwrap_or(DVec2::NAN),
        };
        self.local.map_or(at, |grid| grid.site(at))
    }

    /// A point of the site frame (m) in the numbers of the file; NaN where the projection has no answer.
    pub(crate) fn file(&self, site: DVec2) -> DVec2 {
        let at = self.local.map_or(site, |grid| grid.plan(site));
        let at = match &self.projection {
            None => at,
            Some(projection) => projection.back(at).unwrap_or(DVec2::NAN),
        };
        at / self.horizontal
    }

    /// Lengths along the axes in the site frame, m; only where [`Placement::keeps_axes`].
    pub(crate) fn length(&self, length: DVec2) -> DVec2 {
        length * self.horizontal * self.local.map_or(1.0, |grid| grid.scale)
    }

    /// Height in the site frame, m. Heights are never transformed, only their unit.
    pub(crate) fn height(&self, height: f64) -> f64 {
        height * self.vertical
    }

    /// Both together.
    pub(crate) fn point(&self, at: DVec3) -> DVec3 {
        self.plan(at.truncate()).extend(self.height(at.z))
    }

    /// True where metres of the file's system are metres in the site frame.
    pub(crate) fn is_plain(&self) -> bool {
        self.projection.is_none() && self.local.is_none()
    }

    /// True where rows and columns of the file stay along east and north: units, scale and shift only.
    pub(crate) fn keeps_axes(&self) -> bool {
        self.projection.is_none() && self.local.is_none_or(|grid| grid.keeps_axes())
    }

    /// The smallest upright box in the site frame that holds a box of the file.
    pub(crate) fn bounds(&self, low: DVec2, high: DVec2) -> (DVec2, DVec2) {
        around(low, high, |p| self.plan(p))
    }

    /// The same for a box in metres (or degrees) of the file's system, with heights in m.
    pub(crate) fn bounds_of_metres(&self, low: DVec3, high: DVec3) -> (DVec3, DVec3) {
        let (min, max) = around(low.truncate(), high.truncate(), |p| self.of_metres(p));
        (min.extend(low.z), max.extend(high.z))
    }

    /// The smallest upright box of the file's numbers that holds a box of the site frame.
    pub(crate) fn file_bounds(&self, low: DVec2, high: DVec2) -> (DVec2, DVec2) {
        around(low, high, |p| self.file(p))
    }
}

/// Edges of a box are followed in steps: straight lines of one system are not quite straight in another.
fn around(low: DVec2, high: DVec2, carry: impl Fn(DVec2) -> DVec2) -> (DVec2, DVec2) {
    let mut found = (DVec2::INFINITY, DVec2::NEG_INFINITY);
    for i in 0..=STEPS {
        let share = f64::from(i) / f64::from(STEPS);
        let at = low + (high - low) * share;
        for p in [DVec2::new(at.x, low.y), DVec2::new(at.x, high.y), DVec2::new(low.x, at.y), DVec2::new(high.x, at.y)]
        {
            let p = carry(p);
            found = (found.0.min(p), found.1.max(p));
        }
    }
    found
}
