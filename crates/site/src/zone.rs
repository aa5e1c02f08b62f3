//! Parts of a site with a rule of their own.

use crate::PlanShape;
use serde::{Deserialize, Serialize};

/// A part of the site with a rule.
#[derive(Debug, Clone, PartialEq)]
pub struct Zone {
    /// Short id.
    pub id: String,
    /// Name for people.
    pub name: String,
    /// Where, in plan.
    pub shape: PlanShape,
    /// What applies there.
    pub rule: ZoneRule,
    /// When it applies; empty: always.
    pub times: Vec<DayTime>,
    /// Who set it.
    pub by: String,
}

/// What applies in a zone.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", tag = "rule")]
pub enum ZoneRule {
    /// No machine, no part of it, no load.
    NoGo,
    /// People walk or work here.
    People,
    /// Driven in one direction only.
    OneWay {
        /// Direction of travel, inside angle (rad counter-clockwise from east).
        heading: f64,
    },
    /// Not driven faster.
    Speed {
        /// Greatest speed, m/s.
        most: f64,
    },
    /// Soft ground.
    Soft,
    /// Not driven where it is steeper.
    SlopeLimit {
        /// Steepest, rise over run.
        most: f64,
    },
}

/// A part of the day, local time. `from` later than `to` runs over midnight.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
pub struct DayTime {
    /// First minute, from midnight.
    pub from: u16,
    /// Minute at which it ends.
    pub to: u16,
}

impl DayTime {
    /// True in the minute `at`, from midnight.
    pub fn holds(self, at: u16) -> bool {
        if self.from <= self.to { at >= self.from && at < self.to } else { at >= self.from || at < self.to }
    }
}

impl Zone {
    /// True if it applies at a time of day; a time that is not known is one at which it does.
    pub fn applies(&self, at: Option<u16>) -> bool {
        self.times.is_empty() || at.is_none_or(|at| self.times.iter().any(|t| t.holds(at)))
    }
}
