//! What a job says of its work besides the lifts: what the planner may choose, where loads wait, when, and beside whom.

use geometry::DVec2;
use quantity::Speed;
use site::{DayTime, PlanArea};

/// What the planner may choose for a lift. Nothing: all of it is as stated.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
#[expect(clippy::struct_excessive_bools, reason = "four questions, each with a yes or no of its own")]
pub struct Choose {
    /// Where the machine stands.
    pub stand: bool,
    /// Which machine of the job does it.
    pub machine: bool,
    /// Which of the machine's attachments is on.
    pub attachment: bool,
    /// Tyres, stabilizers or outriggers.
    pub support: bool,
}

impl Choose {
    /// All of it.
    pub const ALL: Self = Self { stand: true, machine: true, attachment: true, support: true };

    /// True if there is anything to choose.
    pub fn any(self) -> bool {
        self.stand || self.machine || self.attachment || self.support
    }
}

/// A place where loads wait to be fetched: where trucks are unloaded, a stack in the yard.
#[derive(Debug, Clone, PartialEq)]
pub struct Pickup {
    /// Short id.
    pub id: String,
    /// Name for people.
    pub name: String,
    /// Middle of the load's underside, m.
    pub at: DVec2,
    /// Heading of a machine whose forks go in, inside angle (rad counter-clockwise from east); `None`: any.
    pub heading: Option<f64>,
    /// Level of the surface that loads lie on, m in the site's heights; `None`: the ground there.
    pub level: Option<f64>,
}

/// Another machine whose arm or load crosses the airspace: a tower crane, a concrete pump, a piling rig.
#[derive(Debug, Clone, PartialEq)]
pub struct Crane {
    /// Short id.
    pub id: String,
    /// Name for people.
    pub name: String,
    /// The axis it turns about, m.
    pub at: DVec2,
    /// How far from there arm or load reach, m.
    pub radius: f64,
    /// How far its tail swings, m; `None`: nothing behind the axis that matters.
    pub tail: Option<f64>,
    /// Lowest and highest of what swings, with the load, m in the site's heights.
    pub heights: (f64, f64),
    /// When it works; empty: always.
    pub times: Vec<DayTime>,
    /// Who has priority, in words.
    pub rule: String,
    /// Who says so.
    pub by: String,
}

/// A delivery: loads that come together in a slot of the day.
#[derive(Debug, Clone, PartialEq)]
pub struct Delivery {
    /// Short id.
    pub id: String,
    /// Indexes in `Job::loads`.
    pub loads: Vec<usize>,
    /// When it may be unloaded.
    pub slot: DayTime,
    /// Index in `Job::pickups` of where it is unloaded; `None`: not stated.
    pub place: Option<usize>,
}

/// One approved plan for a family of lifts that are alike: whoever keeps within it needs no plan for each.
#[derive(Debug, Clone, PartialEq)]
pub struct Routine {
    /// Short id.
    pub id: String,
    /// Name for people.
    pub name: String,
    /// Index in `Job::machines`.
    pub machine: usize,
    /// Attachment id; may be unknown to the machine, which is no-go.
    pub attachment: String,
    /// Support state.
    pub support: machine::SupportState,
    /// What it may lift.
    pub load: RoutineLoad,
    /// Where to.
    pub landings: RoutineLandings,
    /// Where the middle of its front axle stands, any heading that its landings allow.
    pub stands: PlanArea,
    /// Gust at the height of load and boom at which it stops.
    pub stop_gust: Speed,
    /// Steepest ground that it stands on, as a slope (0.07 = 7 %).
    pub ground: f64,
    /// Who approved it; `None`: nobody yet, and then it allows nothing.
    pub approved_by: Option<String>,
}

/// The loads of a routine.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum RoutineLoad {
    /// None is heavier, larger or less sure than this one: index in `Job::loads`.
    Like(usize),
    /// Up to a mass and a size.
    UpTo {
        /// kg, the most that it may really weigh.
        mass: f64,
        /// Depth along the forks, width, height, m.
        size: [f64; 3],
    },
}

/// The landings of a routine.
#[derive(Debug, Clone, PartialEq)]
pub enum RoutineLandings {
    /// These, by index in `Job::landings`.
    Named(Vec<usize>),
    /// Every landing whose middle lies in there.
    Within(PlanArea),
}
