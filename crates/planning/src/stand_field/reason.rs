//! What refuses a stand: the first in a fixed order.

use crate::LiftCheck;
use crate::checks::approach;
use crate::posed::{NotPosed, aim};
use crate::text;
use evidence::{Status, TextId, Verdict};
use serde::{Deserialize, Serialize};

/// What refuses a stand.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize, schemars::JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum Reason {
    /// The ground under a wheel or pad, within the stand's error, is not known.
    Survey,
    /// From there the boom does not point at the landing within its approach direction, or the machine would stand in it.
    Approach,
    /// The boom does not get to the landing.
    Reach,
    /// Not level enough for the chart.
    Level,
    /// The chart.
    Chart,
    /// The load itself on so slanting a machine.
    Load,
    /// An overhead line.
    Line,
    /// Something that stands there, or a zone that no machine may enter.
    Obstacles,
    /// A zone where people are.
    People,
    /// The load factor.
    LoadFactor,
    /// The tilt that remains.
    Tilt,
    /// What the ground carries.
    Ground,
    /// How far the ground gives.
    Settlement,
    /// Ruts.
    Rutting,
    /// An edge.
    Edges,
    /// Something buried.
    Buried,
    /// Another check that goes with the stand.
    Other,
    /// What no stand can mend: machine, load, attachment, wind, landing. See [`super::StandField::everywhere`].
    Everywhere,
}

/// Every reason, in the order in which the first names a cell: what places are ruled out by, cheap and plain things first.
pub const ORDER: [Reason; 18] = [
    Reason::Survey,
    Reason::Approach,
    Reason::Reach,
    Reason::Level,
    Reason::Chart,
    Reason::Load,
    Reason::Line,
    Reason::Obstacles,
    Reason::People,
    Reason::LoadFactor,
    Reason::Tilt,
    Reason::Ground,
    Reason::Settlement,
    Reason::Rutting,
    Reason::Edges,
    Reason::Buried,
    Reason::Other,
    Reason::Everywhere,
];

impl Reason {
    /// Its name for people.
    pub fn name(self) -> TextId {
        match self {
            Self::Survey => text::REASON_SURVEY,
            Self::Approach => text::REASON_APPROACH,
            Self::Reach => text::REASON_REACH,
            Self::Level => text::CHECK_LEVEL,
            Self::Chart => text::CHECK_CHART,
            Self::Load => text::CHECK_LOAD,
            Self::Line => text::CHECK_LINE,
            Self::Obstacles => text::CHECK_OBSTACLES,
            Self::People => text::CHECK_PEOPLE,
            Self::LoadFactor => text::CHECK_LOAD_FACTOR,
            Self::Tilt => text::CHECK_TILT,
            Self::Ground => text::CHECK_GROUND,
            Self::Settlement => text::CHECK_SETTLEMENT,
            Self::Rutting => text::CHECK_RUTTING,
            Self::Edges => text::CHECK_EDGES,
            Self::Buried => text::CHECK_BURIED,
            Self::Other => text::REASON_OTHER,
            Self::Everywhere => text::REASON_EVERYWHERE,
        }
    }
}

/// Checks that go with the stand, by the id of their findings.
pub(crate) fn of_check(check: &str) -> Reason {
    match check {
        "approach" => Reason::Approach,
        "level" => Reason::Level,
        "chart" => Reason::Chart,
        "load" => Reason::Load,
        "line" => Reason::Line,
        "obstacles" => Reason::Obstacles,
        "people" => Reason::People,
        "load-factor" => Reason::LoadFactor,
        "tilt" => Reason::Tilt,
        "ground" => Reason::Ground,
        "settlement" => Reason::Settlement,
        "rutting" => Reason::Rutting,
        "edges" => Reason::Edges,
        "buried" => Reason::Buried,
        _ => Reason::Other,
    }
}

/// The reason of a whole check, by the same order; `None` where nothing refuses.
///
/// A stand whose boom is not pointed at the landing, or does not get there, is named so before anything that the machine's
/// room, the stand's error or the movement comes into.
pub fn refused_first(check: &LiftCheck<'_>) -> Option<Reason> {
    let ctx = &check.ctx;
    let refuses = |status: Status| status > Status::Condition;
    let placed = check.at_stand().iter().filter(|(_, s)| refuses(*s)).map(|(id, _)| of_check(id)).min();
    let first = placed.or_else(|| (check.verdict() == Verdict::NoGo).then_some(Reason::Everywhere))?;
    if placed.is_none() {
        return Some(first);
    }
    let early = match aim(ctx) {
        Err(not) => matches!(not, NotPosed::Ground(_)).then_some(Reason::Survey),
        Ok(aimed) if approach::pointed(ctx, aimed.target(), None).status() > Status::Condition => {
            Some(Reason::Approach)
        }
        Ok(aimed) if !aimed.reaches() => Some(Reason::Reach),
        Ok(_) if matches!(check.posed, Err(NotPosed::Ground(_))) => Some(Reason::Survey),
        Ok(_) => None,
    };
    Some(early.unwrap_or(first))
}
