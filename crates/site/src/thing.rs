//! What stands on a site and can be hit.

use crate::PlanShape;
use geometry::{DVec2, DVec3};
use serde::{Deserialize, Serialize};

/// Something that stands on the site.
#[derive(Debug, Clone, PartialEq)]
pub struct Thing {
    /// Short id.
    pub id: String,
    /// Name for people.
    pub name: String,
    /// What it is.
    pub kind: ThingKind,
    /// Where it is and how high.
    pub body: Body,
    /// Openings in it; of walls along a course and of outlines alike.
    pub openings: Vec<Opening>,
    /// How far it may lie or reach beyond what is given, in any direction, m.
    pub accuracy: f64,
    /// Where it comes from: a file with its place, or who says so.
    pub source: String,
}

/// What kind of thing it is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum ThingKind {
    /// A building, finished or not.
    Building,
    /// A wall or parapet that stands alone.
    Wall,
    /// A fence, hoarding or guard rail.
    Fence,
    /// A bay of scaffold.
    Scaffold,
    /// A floor slab or a roof deck with free edges.
    Floor,
    /// A bridge or beam that is passed under.
    Bridge,
    /// A tree or hedge.
    Tree,
    /// A mast, pole, tower or jib.
    Mast,
    /// Parked plant or a vehicle.
    Plant,
    /// A stack or store of material.
    Store,
    /// A store of fuel or gas.
    Fuel,
    /// A truck bay; its top is the deck.
    TruckBay,
    /// Something from a survey that nobody has named yet.
    Unnamed,
}

/// The room that a thing takes.
#[derive(Debug, Clone, PartialEq)]
pub enum Body {
    /// Straight up from a shape in plan.
    Upright {
        /// The shape.
        shape: PlanShape,
        /// Level of the underside, m; `None`: from the ground up.
        base: Option<f64>,
        /// Level of the top, m; `None`: not known, and then no clearance over it can be told.
        top: Option<f64>,
    },
    /// Columns from the ground up, as a survey sees it from above.
    Columns(Columns),
}

/// Square columns, each from the ground up to its top. `tops`: rows × cols, row-major from the
/// south-west, m; NaN where none stands.
#[derive(Debug, Clone, PartialEq)]
pub struct Columns {
    /// South-west corner of the south-west column, m.
    pub south_west: DVec2,
    /// Edge of a column, m.
    pub cell: f64,
    /// Number of rows.
    pub rows: usize,
    /// Number of columns in a row.
    pub cols: usize,
    /// Tops.
    pub tops: Vec<f32>,
}

/// An opening in a wall: a window, a door, the gap between two lifts of a scaffold.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Opening {
    /// One jamb in plan, m.
    pub from: DVec2,
    /// The other jamb.
    pub to: DVec2,
    /// Level of the sill, m.
    pub sill: f64,
    /// Level of the head, m.
    pub head: f64,
}

impl Columns {
    /// Every column: south-west corner and top.
    pub fn iter(&self) -> impl Iterator<Item = (DVec2, f64)> + '_ {
        self.tops.iter().enumerate().filter(|(_, top)| top.is_finite()).map(|(i, top)| {
            let (row, col) = (i / self.cols, i % self.cols);
            (self.south_west + DVec2::new(col as f64, row as f64) * self.cell, f64::from(*top))
        })
    }

    /// Highest top, m; `None` without columns.
    pub fn highest(&self) -> Option<f64> {
        self.iter().map(|c| c.1).reduce(f64::max)
    }
}

impl Thing {
    /// Level of its top, m; `None` where not known.
    pub fn top(&self) -> Option<f64> {
        match &self.body {
            Body::Upright { top, .. } => *top,
            Body::Columns(columns) => columns.highest(),
        }
    }

    /// Smallest and largest corner in plan, m.
    pub fn bounds(&self) -> Option<(DVec2, DVec2)> {
        match &self.body {
            Body::Upright { shape, .. } => shape.bounds(),
            Body::Columns(columns) => columns
                .iter()
                .map(|(corner, _)| (corner, corner + DVec2::splat(columns.cell)))
                .reduce(|(low, high), (l, h)| (low.min(l), high.max(h))),
        }
    }

    /// The box that holds it but for its accuracy, m; without limit up where its top is not known, and
    /// down where it stands on the ground. `None` for a thing without extent.
    pub fn extent(&self) -> Option<(DVec3, DVec3)> {
        let (low, high) = self.bounds()?;
        let base = match &self.body {
            Body::Upright { base, .. } => base.unwrap_or(f64::NEG_INFINITY),
            Body::Columns(_) => f64::NEG_INFINITY,
        };
        let top = self.top().unwrap_or(f64::INFINITY);
        // As its distance counts it: with a base over its top it is a plate at the top.
        Some((low.extend(base.min(top)), high.extend(top)))
    }
}
