//! Why there is no way.

use crate::{PlanPose, VehicleError};
use geometry::DVec2;

/// Why no way was found.
#[derive(Debug, Clone, PartialEq)]
pub enum NoRoute<W> {
    /// The vehicle is not described well enough to be driven.
    Vehicle(VehicleError),
    /// Start or target is no number.
    NotANumber,
    /// The machine may not stand at the start.
    StartBarred(Vec<W>),
    /// The machine may not stand at the target.
    TargetBarred(Vec<W>),
    /// Every way from start to target leads through a place narrower than the machine.
    Narrow(Narrow<W>),
    /// What can be reached from the start ends short of the target.
    WalledIn {
        /// The pose reached that is nearest to the target. Where the search was not needed to see it, its
        /// heading is that of the start.
        nearest: PlanPose,
        /// Straight distance from there to the target, m.
        short: f64,
        /// What bounds it there.
        by: Vec<W>,
    },
    /// Neither found nor ruled out within the poses that the search may look at.
    GaveUp {
        /// The pose reached that is nearest to the target.
        nearest: PlanPose,
        /// Straight distance from there to the target, m.
        short: f64,
        /// What bars the steps from there.
        by: Vec<W>,
        /// Poses looked at.
        looked_at: usize,
    },
    /// Ended from outside.
    Stopped,
}

/// The widest way's narrowest place.
#[derive(Debug, Clone, PartialEq)]
pub struct Narrow<W> {
    /// Where.
    pub at: DVec2,
    /// Its clear width between closed cells, m. Cells are closed whole, so on the ground it may be up to two cells
    /// wider.
    pub width: f64,
    /// Width of the machine with its load, m.
    pub needed: f64,
    /// What it lies between.
    pub between: Vec<W>,
}
