//! Who may not work at the same time: circles that machines sweep, and the reach of cranes.

use crate::{Crane, Job, Lift, Stand};
use geometry::{DVec2, DVec3};
use machine::BACKREST;
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

impl Airspace {
    /// The airspace of a lift from a stand: as far as the landing and the load there, the machine itself, from the ground
    /// to the highest that boom and load get, fully raised at its longest: which movement is taken is not known here.
    /// Without end where the ground is not known. `None` where no stand is chosen.
    pub fn of(job: &Job, lift: &Lift, machine: usize, stand: Stand) -> Option<Self> {
        let (load, landing) = (job.loads.get(lift.load)?, job.landings.get(lift.landing)?);
        let machine = &job.machines.get(machine)?.machine;
        let outline = &machine.outline;
        if !stand.is_chosen() {
            return None;
        }
        let diagonal = |along: f64, across: f64| libm::hypot(along, across);
        let load_out = diagonal(load.depth, load.width) / 2.0;
        let body = diagonal(outline.front.max(-outline.rear), outline.half_width);
        let boom = &machine.boom;
        // As if it stood straight up from its foot, which no tilt of the ground takes higher than its distance from the ground.
        let raised = boom.foot.length() + diagonal(boom.head_along + boom.extension_max.si(), boom.head_below);
        let tool = machine.attachments.iter().map(|a| a.tool_point().length()).fold(0.0, f64::max);
        let carried = DVec3::new(load.depth, load.width, load.height.max(BACKREST)).length() + boom.depth + boom.flex;
        let over = job.ground.height(stand.at).map_or(f64::INFINITY, |(ground, _)| ground + raised + tool + carried);
        Some(Self {
            centre: stand.at,
            radius: (stand.at.distance(landing.at) + load_out).max(body),
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
