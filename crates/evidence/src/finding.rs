//! One check's result, and the verdict of many.

use crate::{Message, Source, Working};
use quantity::Quantity;
use serde::{Deserialize, Serialize};

/// What a check says. Ordered from best to worst.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize, schemars::JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum Status {
    /// Within its limit with the required reserve.
    Go,
    /// Allowed on a stated condition.
    Condition,
    /// An input is missing, so it cannot be told: counts as no-go until answered or accepted by name.
    CannotTell,
    /// Beyond its limit.
    NoGo,
    /// An absolute stop: no number can mend it.
    Stop,
}

/// The verdict of a lift or a job. Ordered from best to worst.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize, schemars::JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum Verdict {
    /// Go.
    Go,
    /// Go with conditions.
    GoWithConditions,
    /// No-go.
    NoGo,
}

impl From<Status> for Verdict {
    fn from(status: Status) -> Self {
        match status {
            Status::Go => Self::Go,
            Status::Condition => Self::GoWithConditions,
            Status::CannotTell | Status::NoGo | Status::Stop => Self::NoGo,
        }
    }
}

/// How demand and limit of a finding stand to each other.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, schemars::JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum Comparison {
    /// The demand may be at most the limit: a load and a capacity.
    AtMost,
    /// What is there (the limit) must be at least what is required (the demand): a distance, a tilt.
    AtLeast,
}

/// One check's result.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, schemars::JsonSchema)]
pub struct Finding {
    /// Stable id of the check: "chart", "level", "tilt-reserve", … (declared in `planning`).
    pub check: std::borrow::Cow<'static, str>,
    /// What it says.
    pub status: Status,
    /// The sentence: what was found and by how much.
    pub message: Message,
    /// What is asked of the machine, ground or line.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub demand: Option<Quantity>,
    /// What it may be at most (or at least, where the message says so).
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub limit: Option<Quantity>,
    /// How the two compare.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub comparison: Option<Comparison>,
    /// How much is left before the limit, as a share of the limit: 0 at the limit, negative beyond.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub reserve: Option<f64>,
    /// What to do, each one sentence.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub remedies: Vec<Message>,
    /// Where the rule comes from.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub sources: Vec<Source>,
    /// The steps, where asked for.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub working: Option<Working>,
}

impl Finding {
    /// A finding with a sentence and nothing else yet.
    pub fn new(check: &'static str, status: Status, message: impl Into<Message>) -> Self {
        Self {
            check: check.into(),
            status,
            message: message.into(),
            demand: None,
            limit: None,
            comparison: None,
            reserve: None,
            remedies: Vec::new(),
            sources: Vec::new(),
            working: None,
        }
    }
    /// With demand and limit, and the reserve between them.
    #[must_use]
    pub fn measured(mut self, demand: impl Into<Quantity>, limit: impl Into<Quantity>, reserve: f64) -> Self {
        self.demand = Some(demand.into());
        self.limit = Some(limit.into());
        self.comparison = Some(Comparison::AtMost);
        self.reserve = Some(reserve);
        self
    }
    /// With what is required at least and what is there, and the reserve between them.
    #[must_use]
    pub fn at_least(self, required: impl Into<Quantity>, there: impl Into<Quantity>, reserve: f64) -> Self {
        Self { comparison: Some(Comparison::AtLeast), ..self.measured(required, there, reserve) }
    }
    /// With one more thing to do.
    #[must_use]
    pub fn remedy(mut self, message: impl Into<Message>) -> Self {
        self.remedies.push(message.into());
        self
    }
    /// With one more source.
    #[must_use]
    pub fn source(mut self, source: Source) -> Self {
        self.sources.push(source);
        self
    }
    /// With its working.
    #[must_use]
    pub fn working(mut self, working: Working) -> Self {
        self.working = Some(working);
        self
    }
}
