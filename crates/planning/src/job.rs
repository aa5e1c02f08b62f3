//! Everything a plan is made from.

use crate::{Choose, Crane, Delivery, GroundFactors, LandingStrength, Pickup, Routine, SiteMat, SoilArea};
use geometry::DVec2;
use ground::pallet_feet::Feet;
use machine::{LatchSeen, Load, LockSeen, Machine, SupportState};
use quantity::{Length, Pressure, Speed};
use serde::{Deserialize, Serialize};
use site::{DayTime, Gate, Ground, Landing, PowerLine, Surroundings};

/// A package of lifts on one site.
#[derive(Debug, Clone)]
pub struct Job {
    /// Name for people.
    pub name: String,
    /// Site name.
    pub site: String,
    /// Date of the work, as written.
    pub date: String,
    /// True for demonstrations.
    pub invented: bool,
    /// Planner's name.
    pub planner: String,
    /// Machines of the job.
    pub machines: Vec<JobMachine>,
    /// Loads.
    pub loads: Vec<Load>,
    /// Ground.
    pub ground: Ground,
    /// Overhead lines.
    pub lines: Vec<PowerLine>,
    /// True if somebody states that no other overhead line is within reach of the stands.
    pub lines_complete: Option<String>,
    /// Landings.
    pub landings: Vec<Landing>,
    /// What is known of the strength of each landing, in the same order.
    pub strengths: Vec<LandingStrength>,
    /// What each load stands on, in the order of the loads; `None`: not stated.
    pub feet: Vec<Option<Feet>>,
    /// Gates and other narrow places.
    pub gates: Vec<Gate>,
    /// What stands, is dug, lies in the ground, and the zones.
    pub surroundings: Surroundings,
    /// Soil as it was found, by area; the first that reaches a place does not hide the others.
    pub soils: Vec<SoilArea>,
    /// Kinds of mats that lie ready.
    pub mats: Vec<SiteMat>,
    /// Lifts.
    pub lifts: Vec<Lift>,
    /// Places where loads wait.
    pub pickups: Vec<Pickup>,
    /// Other machines whose reach crosses the airspace.
    pub cranes: Vec<Crane>,
    /// Deliveries by slot.
    pub deliveries: Vec<Delivery>,
    /// Approved plans for families of lifts that are alike.
    pub routines: Vec<Routine>,
    /// Working hours; `None`: not stated.
    pub hours: Option<DayTime>,
    /// Required reserves and allowances.
    pub policy: Policy,
    /// What named persons accepted for the whole job.
    pub acceptances: Vec<Acceptance>,
    /// Doubtful inputs that were used all the same; printed with the plan.
    pub warnings: evidence::Faults,
    /// Where each input came from, for the input list of the documents.
    pub inputs: Vec<crate::InputLine>,
}

/// A machine on the job: the description and its state today.
#[derive(Debug, Clone)]
pub struct JobMachine {
    /// The machine.
    pub machine: Machine,
    /// Who did the pre-use inspection; `None`: not done.
    pub inspected_by: Option<String>,
    /// Reason if tagged out of service.
    pub tagged_out: Option<String>,
    /// How the lock of each attachment was seen this morning.
    pub attachment_lock: Vec<(String, LockSeen)>,
    /// How the hook latch of each jib was seen this morning.
    pub latches: Vec<(String, LatchSeen)>,
    /// Whose it is; `None`: nobody stated it.
    pub kept: Option<Kept>,
    /// What somebody read on the machine itself; `None`: nobody did.
    pub seen: Option<Seen>,
    /// Its last thorough examination; `None`: not known.
    pub examined: Option<Examination>,
    /// Seat belt, roll-over frame and cab door.
    pub cab: CabSeen,
    /// Who tried the rear axle's lock today and found that it holds; `None`: nobody.
    pub lock_tried: Option<String>,
    /// Tyres found flat: front left, front right, rear left, rear right.
    pub flat: [bool; 4],
    /// Tyre pressures as measured today, in the same order; `None`: not measured.
    pub pressures: [Option<Pressure>; 4],
    /// Names of bodies of the description that are not on the machine today: a counterweight taken off.
    pub without: Vec<String>,
    /// What is on it besides the description: a tool box, a heavier battery, a spare wheel.
    pub added: Vec<machine::Body>,
}

/// Whose a machine is: what of its history can be known.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, schemars::JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum Kept {
    /// Our own: its history is known.
    Own,
    /// Rented: its history is not.
    Rented,
    /// Not known whose; counts as rented.
    Unknown,
}

/// What somebody read on the machine itself. What they did not read is `None`.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Seen {
    /// Who looked.
    pub by: String,
    /// The day, year-month-day.
    pub date: String,
    /// Serial number on the plate.
    pub serial: Option<String>,
    /// Tyres by their mark.
    pub tyres: Option<String>,
    /// Counterweight by its mark or mass.
    pub counterweight: Option<String>,
    /// Options fitted.
    pub options: Option<Vec<String>>,
    /// True if the load charts are in the cab.
    pub chart_in_cab: Option<bool>,
    /// True if the maker's manual is in the cab.
    pub manual_in_cab: Option<bool>,
    /// Number and revision of the charts in the cab.
    pub chart: Option<String>,
}

/// A thorough examination by a competent person.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Examination {
    /// The day it was made, year-month-day.
    pub date: String,
    /// The day until which it holds.
    pub next: String,
    /// Who made it.
    pub by: String,
}

/// How seat belt, roll-over frame and cab door were found.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, schemars::JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum CabSeen {
    /// All there and sound.
    Sound,
    /// One of them missing or faulty.
    Faulty,
    /// Nobody looked yet.
    NotSeen,
}

/// Required reserves: a named policy of the job.
#[derive(Debug, Clone, PartialEq)]
pub struct Policy {
    /// Who answers for values below the usual ones.
    pub by: Option<String>,
    /// Tilt that must remain fore and aft, as slope (0.07 = 7 %).
    pub tilt_fore_aft: f64,
    /// Tilt that must remain sideways, as slope (0.12 = 12 %).
    pub tilt_sideways: f64,
    /// Load factor at least.
    pub load_factor: f64,
    /// Position error of the stand along the heading and across, m.
    pub stand_error: f64,
    /// Operator's allowance on top of the legal distance to a line, m.
    pub line_allowance: f64,
    /// Distance to a line by site rule, where greater than the legal one, m.
    pub line_site_rule: f64,
    /// What is asked of the ground beyond what the wheels press.
    pub ground_factors: GroundFactors,
}

impl Default for Policy {
    /// 7 % fore-aft, 12 % sideways (after the ISO 22915-14 kind of test, from memory, low
    /// confidence), load factor 1.33 (common practice), 0.10 m stand error, 1.0 m operator's
    /// allowance (common practice).
    fn default() -> Self {
        Self {
            by: None,
            tilt_fore_aft: 0.07,
            tilt_sideways: 0.12,
            load_factor: 1.33,
            stand_error: 0.10,
            line_allowance: 1.0,
            line_site_rule: 0.0,
            ground_factors: GroundFactors::default(),
        }
    }
}

/// One load from a pick-up to a landing.
#[derive(Debug, Clone)]
pub struct Lift {
    /// Short id.
    pub id: String,
    /// Name for people.
    pub name: String,
    /// Index into `Job::machines`.
    pub machine: usize,
    /// Attachment id; may be unknown to the machine, which is no-go.
    pub attachment: String,
    /// Support state.
    pub support: SupportState,
    /// Index into `Job::loads`.
    pub load: usize,
    /// Where the machine stands.
    pub stand: Stand,
    /// Index into `Job::landings`.
    pub landing: usize,
    /// Whether the load is set down there or picked up from there.
    pub task: Task,
    /// Height above the landing's surface at which the load is carried in and out.
    pub clear: Length,
    /// Wind at which this lift stops.
    pub wind: Option<WindInput>,
    /// What would happen in this lift that is forbidden outright.
    pub stops: Vec<StopKind>,
    /// Who saw the attachment's lock closed for this lift, after any change.
    pub lock_seen: Option<String>,
    /// Who sees the load at its landing and leads it from there; `None`: nobody is named.
    pub signaller: Option<String>,
    /// How far the carriage is shifted to the left with the load on it, m.
    pub side_shift: f64,
    /// True if sleeves are pushed over the blades; `None`: not stated.
    pub extensions: Option<bool>,
    /// Indexes in `Job::mats` of the mats under each of its wheels or pads, the top one first; none: bare.
    pub mats: Vec<usize>,
    /// True if the frame is levelled before the boom goes up.
    pub levelled: bool,
    /// True if the operator locks the rear axle before the boom goes up.
    pub axle_locked: bool,
    /// How the front tyres are with the stabilizers down; `None`: not stated.
    pub front_tyres: Option<FrontTyres>,
    /// Volume of loose material in the bucket, m³; `None`: not stated.
    pub bulk_volume: Option<f64>,
    /// What that material weighs at most; `None`: not stated.
    pub bulk_density: Option<BulkDensity>,
    /// Indexes of the gates it passes with the load; `None`: nobody stated it.
    pub gates: Option<Vec<usize>>,
    /// What named persons accepted for this lift.
    pub acceptances: Vec<Acceptance>,
    /// What the planner may choose; a machine, attachment or support that was left out is then the first there is.
    pub choose: Choose,
    /// Index into `Job::pickups` of where the load waits; `None`: not stated.
    pub from: Option<usize>,
    /// Not to begin before, to be done by; `None`: any time.
    pub window: Option<DayTime>,
    /// Indexes into `Job::lifts` of those that must be done before it begins.
    pub after: Vec<usize>,
    /// 1 (first) to 9 (last); `None`: not stated, see [`USUAL_PRIORITY`](crate::USUAL_PRIORITY).
    pub priority: Option<u8>,
    /// How long it takes, as somebody states it, min; `None`: estimated.
    pub minutes: Option<u16>,
}

/// As far from its stand what is accepted for a lift still holds, m (ours: a machine's width to either side).
const OWN_PLACE: f64 = 1.0;

impl Lift {
    /// True for the place that what is accepted for this lift is accepted for: its own stand, where it states one.
    pub fn own_place(&self, stand: Stand) -> bool {
        // Also what is not a number is no place of its own.
        !self.stand.is_chosen() || stand.at.distance(self.stand.at) <= OWN_PLACE
    }

    /// The lift from there: without what was accepted for another place.
    #[must_use]
    pub fn from_stand(&self, stand: Stand) -> Self {
        let mut lift = Self { stand, ..self.clone() };
        if !self.own_place(stand) {
            lift.acceptances.clear();
        }
        lift
    }
}

/// Front tyres of a machine with its stabilizers down.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, schemars::JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum FrontTyres {
    /// Off the ground: the pads carry.
    Clear,
    /// Still touching it: they carry a part.
    Touching,
}

/// Density of loose material, the highest to reckon with.
#[derive(Debug, Clone, PartialEq)]
pub struct BulkDensity {
    /// kg/m³.
    pub high: f64,
    /// Where it comes from.
    pub source: evidence::Source,
}

/// What is forbidden in every lift: no number can mend it.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, schemars::JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum StopKind {
    /// People raised: basket, forks, box.
    RaisesPeople,
    /// Somebody rides on machine, forks or load.
    Riders,
    /// Somebody under load or boom.
    UnderLoad,
    /// Load shared with another machine.
    SharedLoad,
    /// Pushing, pulling or dragging with the boom.
    Drags,
    /// Driving or levelling the frame with the boom up.
    DrivesBoomUp,
    /// Somebody steadies the load by hand.
    HandSteadied,
    /// The operator leaves the seat with the load raised.
    LeavesSeat,
    /// The operator works without the seat belt.
    NoBelt,
    /// Work goes on in a thunderstorm.
    Thunderstorm,
}

impl StopKind {
    /// Every one, in the order in which findings are listed.
    pub const ALL: [Self; 10] = [
        Self::RaisesPeople,
        Self::Riders,
        Self::UnderLoad,
        Self::SharedLoad,
        Self::Drags,
        Self::DrivesBoomUp,
        Self::HandSteadied,
        Self::LeavesSeat,
        Self::NoBelt,
        Self::Thunderstorm,
    ];
}

/// What a lift does at its landing. The two ends of a load's way are two lifts; between them it is
/// carried boom down.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, schemars::JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum Task {
    /// Brings the load and sets it down.
    SetDown,
    /// Takes the load away: off a truck, a stack, a floor.
    PickUp,
}

/// Where the machine stands: middle of the front axle on the ground.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Stand {
    /// East and north of the middle of the front axle, m.
    pub at: DVec2,
    /// Heading, inside angle (rad counter-clockwise from east).
    pub heading: f64,
}

impl Stand {
    /// No place yet: the planner is to choose one. Not a number, so that no check of it ever passes.
    pub const NOT_CHOSEN: Self = Self { at: DVec2::NAN, heading: f64::NAN };

    /// True for a place that somebody stated or that was chosen.
    pub fn is_chosen(&self) -> bool {
        self.at.is_finite() && self.heading.is_finite()
    }
}

/// The wind at which the lift stops.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct WindInput {
    /// Gust at the height of load and boom.
    pub gust: Speed,
}

/// Something a named person answers for.
#[derive(Debug, Clone, PartialEq)]
pub struct Acceptance {
    /// What.
    pub matter: Matter,
    /// Who, with function.
    pub by: String,
    /// In their words.
    pub statement: String,
    /// Stated ground strength under the patches, for [`Matter::GroundStrength`].
    pub strength: Option<Pressure>,
}

/// What can be accepted by name, where this version does not compute it.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize, schemars::JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum Matter {
    /// Strength of the ground under wheels or pads.
    GroundStrength,
    /// Excavations, slopes, drops near the machine.
    Edges,
    /// Pipes, culverts, tanks, voids, fill below the machine.
    Buried,
    /// Everything that boom, load, cab or tail could hit.
    Obstacles,
    /// People kept out from under and beside.
    People,
    /// Way in and out.
    Route,
}

impl Matter {
    /// Every matter, in the order in which findings are listed.
    pub const ALL: [Self; 6] =
        [Self::GroundStrength, Self::Edges, Self::Buried, Self::Obstacles, Self::People, Self::Route];
}
