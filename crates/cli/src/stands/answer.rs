//! What `counterpoise stands` found, as programs read it. Lengths in m, areas in m², headings in degrees clockwise from
//! north.

use evidence::{Finding, Message, Verdict};
use planning::{FieldScene, FoundStand, Reason};
use serde::Serialize;

/// Version of the form.
pub(super) const STANDS_SCHEMA: &str = "counterpoise-stands/1";

/// The stands of the lifts that were asked for.
#[derive(Debug, Serialize, schemars::JsonSchema)]
pub(crate) struct StandsAnswer {
    /// Version of this form: "counterpoise-stands/1".
    pub(super) schema: String,
    /// One for each lift, in the order of the job.
    pub(super) lifts: Vec<LiftStands>,
}

/// The ground around the landing of one lift.
#[derive(Debug, Serialize, schemars::JsonSchema)]
pub(crate) struct LiftStands {
    /// Id of the lift.
    pub(super) lift: String,
    /// Its name for people.
    pub(super) name: String,
    /// Machine, for people.
    pub(super) machine: String,
    /// Attachment, for people.
    pub(super) attachment: String,
    /// What it stands on.
    pub(super) support: machine::SupportState,
    /// Load, for people.
    pub(super) load: String,
    /// Upper value of its mass, kg.
    pub(super) load_kg: f64,
    /// Landing, for people.
    pub(super) landing: String,
    /// How far from the landing was looked, m.
    pub(super) radius_m: f64,
    /// Area that was looked at, m²; 0 where it cannot be looked at.
    pub(super) area_m2: f64,
    /// Area in which a stand passes, m².
    pub(super) passing_m2: f64,
    /// Checks, by the id of their findings, that refuse any stand.
    pub(super) everywhere: Vec<String>,
    /// Area refused by each reason that goes with the place, the greatest first.
    pub(super) why_not: Vec<RefusedArea>,
    /// Stands that were checked whole and hold, the best first.
    pub(super) best: Vec<FoundStand>,
    /// For a lift that passes nowhere: changes that were tried and would do.
    pub(super) changes: Vec<Message>,
    /// What a stand gives in the places that were asked for.
    pub(super) at: Vec<PlaceAnswer>,
    /// Every cell; `null` where it cannot be looked at.
    pub(super) field: Option<FieldScene>,
}

/// Area that one reason refuses.
#[derive(Debug, Serialize, schemars::JsonSchema)]
pub(crate) struct RefusedArea {
    /// What refuses first there.
    pub(super) by: Reason,
    /// m².
    pub(super) area_m2: f64,
}

/// What a stand in one place gives: the whole check there.
#[derive(Debug, Serialize, schemars::JsonSchema)]
pub(crate) struct PlaceAnswer {
    /// East of the middle of the front axle, m.
    pub(super) east_m: f64,
    /// North, m.
    pub(super) north_m: f64,
    /// Heading, degrees clockwise from north.
    pub(super) heading_deg: f64,
    /// Verdict of the whole check there.
    pub(super) verdict: Verdict,
    /// What refuses it first; `null`: nothing.
    pub(super) by: Option<Reason>,
    /// Every finding there.
    pub(super) findings: Vec<Finding>,
    /// For a place that is refused: the nearest cell that passes; `null` where none does.
    pub(super) nearest: Option<NearestPlace>,
}

/// The nearest place that passes.
#[derive(Debug, Serialize, schemars::JsonSchema)]
pub(crate) struct NearestPlace {
    /// East, m.
    pub(super) east_m: f64,
    /// North, m.
    pub(super) north_m: f64,
    /// Heading, degrees clockwise from north.
    pub(super) heading_deg: f64,
    /// How far it is from the place asked for, m.
    pub(super) distance_m: f64,
}

impl LiftStands {
    /// Of the places asked for, else of the best stand.
    pub(super) fn verdict(&self) -> Verdict {
        if self.at.is_empty() {
            self.best.iter().map(|b| b.verdict).min().unwrap_or(Verdict::NoGo)
        } else {
            self.at.iter().map(|a| a.verdict).max().unwrap_or(Verdict::NoGo)
        }
    }
}
