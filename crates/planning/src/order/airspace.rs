//! Who may not work at the same time: circles that machines sweep, and the reach of cranes.

use crate::{Crane, Job, Lift, Stand};
use geometry::DVec2;
use quantity::Si;

/// The part of the air that a lift may use: a circle about its stand, between two heights.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Airspace {
    /// Middle, m.
    pub centre: DVec2,
    /// Radius, m.
    pub radius: f64,
    /// Lowest and highest, m in the site's heights.
    pub heights: (f64, f64),
}

/// From the load's top to whatever of boom and carriage is above it, m (ours).
const ABOVE_LOAD: f64 = 1.5;

impl Airspace {
    /// The airspace of a lift from a stand: as far as the landing and the load there, the machine itself, from the ground
    /// to above the load over its landing. `None` where no stand is chosen.
    pub fn of(job: &Job, lift: &Lift, machine: usize, stand: Stand) -> Option<Self> {
        let (load, landing) = (job.loads.get(lift.load)?, job.landings.get(lift.landing)?);
        let outline = &job.machines.get(machine)?.machine.outline;
        if !stand.is_chosen() {
            return None;
        }
        let diagonal = |along: f64, across: f64| libm::hypot(along, across);
        let load_out = diagonal(load.depth, load.width) / 2.0;
        let machine = diagonal(outline.front.max(-outline.rear), outline.half_width);
        let drop = load.hanging.as_ref().map_or(0.0, |h| h.drop);
        let over = landing.level + landing.upstand + lift.clear.si() + load.height + drop + ABOVE_LOAD;
        Some(Self {
            centre: stand.at,
            radius: (stand.at.distance(landing.at) + load_out).max(machine),
            // What is under the boom counts down to the ground, wherever that is.
            heights: (f64::NEG_INFINITY, over),
        })
    }

    /// True unless both are known to stay apart; what is no number is not known.
    pub fn meets(&self, other: &Self, apart: f64) -> bool {
        let clear = self.centre.distance(other.centre) >= self.radius + other.radius + apart;
        let (low, high) = (self.heights.0.max(other.heights.0), self.heights.1.min(other.heights.1));
        let above = low >= high + apart;
        !(clear || above)
    }

    /// The airspace of a crane, its tail included.
    pub fn of_crane(crane: &Crane) -> Self {
        Self { centre: crane.at, radius: crane.radius.max(crane.tail.unwrap_or(0.0)), heights: crane.heights }
    }
}
