//! What the search asks of the world.

use crate::{Gear, PlanBox, PlanPose, Raster, Spread, Steering};
use core::fmt::Debug;
use core::hash::Hash;

/// A machine at a pose, underway.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Underway {
    /// The pose.
    pub pose: PlanPose,
    /// Which way it is driven.
    pub gear: Gear,
    /// Steering mode.
    pub steering: Steering,
    /// Curvature of the pivot's way, 1/m, left positive.
    pub curvature: f64,
    /// Direction in which it moves (rad counter-clockwise from east).
    pub course: f64,
}

/// What passing a pose costs.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Going {
    /// Cost of a metre there, 1 or more.
    pub cost: f64,
    /// Speed at most, m/s, above 0.
    pub speed: f64,
}

/// What is left at a pose before something would bar it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Margin<W> {
    /// Before what.
    pub of: W,
    /// How much: m, or in the unit that belongs to `of`.
    pub left: f64,
}

/// The world as a machine's driver meets it. It knows the machine, whether it is loaded and how the boom is
/// carried. Whatever is not known bars.
pub trait DriveMap {
    /// What can bar: small, ordered.
    type What: Copy + Ord + Hash + Debug;

    /// What stands in the way of the machine at a pose, or anywhere within `spread` of it. It must hold
    /// that what is not barred with a spread is not barred at any pose whose outline lies within it.
    fn barred(&self, pose: &PlanPose, spread: Spread) -> Option<Self::What>;

    /// Whether it may be driven over that pose as stated: slope, direction, rules. Asked along a motion
    /// at stations no further apart than [`Self::stations`] and at both its ends.
    ///
    /// # Errors
    /// What forbids it.
    fn going(&self, underway: &Underway) -> Result<Going, Self::What>;

    /// Greatest distance between two questions to [`Self::going`], m.
    fn stations(&self) -> f64;

    /// Everything that stands in the way at a pose, for telling people; at least what [`Self::barred`] gives.
    fn all_barred(&self, pose: &PlanPose) -> Vec<Self::What> {
        self.barred(pose, Spread::default()).into_iter().collect()
    }

    /// What is left at a pose before each thing nearby. Not asked in the search.
    fn margins(&self, underway: &Underway) -> Vec<Margin<Self::What>>;

    /// Ground that never passes, whatever the heading: the estimate rests on it. A cell counts as closed if no
    /// rectangle of the outline that holds the pivot may be over any point of it.
    fn closed(&self) -> &Raster<Self::What>;

    /// Least cost of a metre with the machine's pivot in a cell, 1 or more: a bound of [`Self::going`] from below.
    fn least_cost(&self, _cell: usize) -> f64 {
        1.0
    }

    /// Outline that must stay clear, for the spread between samples: usually the vehicle's.
    fn outline(&self) -> &[PlanBox];
}
