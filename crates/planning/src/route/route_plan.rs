//! A route for people: the way, its profile, what is left where.

use crate::text;
use driving::{Gear, Steering};
use evidence::{Message, Ranged};
use quantity::Quantity;
use serde::{Deserialize, Serialize};

/// A way with everything that is told of it.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, schemars::JsonSchema)]
pub struct RoutePlan {
    /// Short id of the machine.
    pub machine: String,
    /// Name of what is carried; `null`: nothing.
    pub load: Option<String>,
    /// Stretches in order.
    pub legs: Vec<RouteLeg>,
    /// Length of the way, m.
    pub length_m: f64,
    /// Length driven in reverse, m.
    pub reversed_m: f64,
    /// How often the gear changes.
    pub gear_changes: usize,
    /// How often the steering mode changes.
    pub steering_changes: usize,
    /// Time at the speeds allowed, s, with starting, stopping and the changes of gear and steering.
    pub time_s: f64,
    /// Poses along the way with ground and slopes.
    pub profile: Vec<RouteStation>,
    /// What is left at least before each thing nearby, the least first.
    pub margins: Vec<RouteMargin>,
    /// The machine as it is driven, seen from above in its own frame, x ahead of the front axle and y to the left, m: body
    /// first, then what is ahead of it.
    pub outline: Vec<Vec<[f64; 2]>>,
    /// Ground that machine and load pass over: convex outlines, east and north, m; their union is it.
    pub swept: Vec<Vec<[f64; 2]>>,
    /// What the route rests on and what it does not look at.
    pub notes: Vec<Message>,
}

/// A stretch with the wheels held.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize, schemars::JsonSchema)]
pub struct RouteLeg {
    /// Boom first or tail first.
    pub gear: Gear,
    /// Steering mode.
    pub steering: Steering,
    /// Length, m.
    pub length_m: f64,
    /// Radius of the pivot's way, m, negative to the right; `null`: straight.
    pub radius_m: Option<f64>,
    /// Angle of the way to the heading in crab, degrees, positive to the left.
    pub slant_deg: f64,
    /// Lowest speed allowed on it, m/s.
    pub speed_m_s: f64,
}

/// A pose on the way.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize, schemars::JsonSchema)]
pub struct RouteStation {
    /// Way driven up to here, m.
    pub along_m: f64,
    /// East and north of the middle of the front axle, m.
    pub at: [f64; 2],
    /// Heading, degrees clockwise from north.
    pub heading_deg: f64,
    /// Ground under the middle of the front axle, m.
    pub height_m: f64,
    /// Slope along, rise over run, nose up positive, with the survey's accuracy.
    pub slope_along: Ranged,
    /// Slope across, rise over run, falling to the left positive.
    pub slope_across: Ranged,
    /// Speed allowed there, m/s.
    pub speed_m_s: f64,
    /// Boom first or tail first.
    pub gear: Gear,
}

/// What is left at least before something.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, schemars::JsonSchema)]
pub struct RouteMargin {
    /// Before what.
    pub of: Message,
    /// How much beyond what is required: a length, a slope or an angle.
    pub left: Quantity,
    /// Way driven up to there, m.
    pub along_m: f64,
    /// East and north of the middle of the front axle there, m.
    pub at: [f64; 2],
}

/// What kind of refusal.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, schemars::JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum RefusalKind {
    /// Something is missing for any answer.
    Missing,
    /// The machine may not stand where the way begins.
    StartBarred,
    /// The machine may not stand where the way ends.
    TargetBarred,
    /// Every way leads through a place that is too narrow.
    Narrow,
    /// What can be reached ends short of the target.
    WalledIn,
    /// Neither found nor ruled out.
    GaveUp,
    /// Ended from outside.
    Stopped,
}

impl RefusalKind {
    /// True if it is not shown that there is no way.
    pub fn open(self) -> bool {
        matches!(self, Self::Missing | Self::GaveUp | Self::Stopped)
    }
}

/// Why there is no way, in words.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, schemars::JsonSchema)]
pub struct RouteRefusal {
    /// Of what kind.
    pub kind: RefusalKind,
    /// Why.
    pub message: Message,
    /// What is in the way; several where several are.
    pub because: Vec<Message>,
    /// East and north where it ends, m.
    pub at: Option<[f64; 2]>,
    /// What to do.
    pub remedy: Message,
}

impl RouteRefusal {
    /// The first of what is in the way.
    pub fn why(&self) -> Message {
        self.because.first().cloned().unwrap_or_else(|| text::WAY_NO_REASON.message())
    }
}
