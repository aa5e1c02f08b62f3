//! The order of a job's lifts, as later stages read it. Times in minutes from midnight at the start of the day of work.

use evidence::{Message, Ranged};
use serde::{Deserialize, Serialize};

/// Version of the form.
pub const ORDER_SCHEMA: &str = "counterpoise-order/1";

/// The order of a job's lifts.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, schemars::JsonSchema)]
pub struct JobOrder {
    /// Version of this form: "counterpoise-order/1".
    pub schema: String,
    /// Lifts by their start.
    pub lifts: Vec<OrderedLift>,
    /// What lies on each landing after each lift.
    pub landings: Vec<LandingStep>,
    /// Lifts that have no place in it, by id.
    pub left_out: Vec<LeftOut>,
    /// True if no order of these lifts is better by priority and end, times as estimated.
    pub exact: bool,
    /// What the order rests on; none of it is certain.
    pub notes: Vec<Message>,
}

/// A lift in its place.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, schemars::JsonSchema)]
pub struct OrderedLift {
    /// Id of the lift.
    pub lift: String,
    /// Id of the machine.
    pub machine: String,
    /// Planned start, min.
    pub start_min: f64,
    /// End, min: at the soonest, likely, at the latest. Nothing that follows begins before the latest.
    pub end_min: Ranged,
    /// The way to its start from the machine's last stand, min; 0 for a machine's first.
    pub way_min: Ranged,
    /// True if the time was stated, false if it is an estimate.
    pub stated: bool,
    /// True if the machine stands where it stood before.
    pub stays: bool,
    /// What this lift asks of people.
    pub conditions: Vec<Message>,
}

/// What lies on a landing after a lift.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, schemars::JsonSchema)]
pub struct LandingStep {
    /// Id of the landing.
    pub landing: String,
    /// Id of the lift.
    pub lift: String,
    /// Mass that lies there then, besides what is listed by name in the job, upper value, kg.
    pub lies_kg: f64,
    /// Mass that may lie there at most when this lift's load comes, the same way, kg; `None`: a load was taken away.
    pub may_lie_kg: Option<f64>,
    /// Mass that lay there when it came, kg.
    pub lay_kg: f64,
}

/// A lift that has no place in the order.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, schemars::JsonSchema)]
pub struct LeftOut {
    /// Id of the lift.
    pub lift: String,
    /// Kind of reason.
    pub kind: WhyLeftOut,
    /// The reason, with numbers.
    pub reason: Message,
    /// What would give it a place; each was tried with the rest of the order as it is.
    pub remedies: Vec<Message>,
}

/// Kinds of reasons.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, schemars::JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum WhyLeftOut {
    /// Nobody has checked it.
    NotChecked,
    /// Its own checks forbid it.
    NoGo,
    /// No stand is chosen.
    NoStand,
    /// Its machine, load or landing is not in the job, or a time or way is no number.
    NotKnown,
    /// Its times leave none in common.
    WindowEmpty,
    /// It takes longer than its times leave.
    WindowShort,
    /// Others leave it no time in its window.
    WindowMissed,
    /// The landing would be over its limit.
    Landing,
    /// What it takes away is not there.
    NotThere,
    /// It waits for a lift that waits for it.
    Cycle,
    /// It waits for a lift that is left out.
    Waits,
    /// In the reach of a crane that may be at work at any time.
    Crane,
    /// More lifts than one order takes.
    TooMany,
}
