//! What is dug into the ground or lies in it.

use crate::{PlanArea, PlanShape};
use evidence::Ranged;
use ground::buried::{BuriedKind as UnderWheels, FlexiblePipe};
use serde::{Deserialize, Serialize};

/// A hole in the ground: trench, pit, basement dig, cut.
#[derive(Debug, Clone, PartialEq)]
pub struct Excavation {
    /// Short id.
    pub id: String,
    /// Name for people.
    pub name: String,
    /// Top edge in plan, m.
    pub outline: PlanArea,
    /// Depth below the ground at its edge, m; `None`: not known.
    pub depth: Option<Ranged>,
    /// Soil of its sides; `None`: nobody has said.
    pub soil: Option<SoilType>,
    /// What holds its sides.
    pub support: Support,
    /// How its open sides stand.
    pub standing: OpenSides,
    /// Who saw or stated it.
    pub source: String,
}

/// How the open sides of an excavation stand.
#[derive(Debug, Clone, PartialEq)]
pub struct OpenSides {
    /// Level distance from toe to crest, m; 0: upright.
    pub batter: f64,
    /// Planning line, horizontal per vertical, that a competent person answers for, and who; `None`: the usual one.
    pub line: Option<(f64, String)>,
    /// Hours since it was cut.
    pub open_for: f64,
    /// Hours for which a named person lets undrained strength count; `None`: it does not count.
    pub undrained_for: Option<f64>,
    /// Rain, thaw or standing water since it was cut.
    pub wetted: bool,
    /// True if people may be in it, or nobody has said that they are not.
    pub people_below: bool,
}

impl Default for OpenSides {
    /// Nothing is known: upright, the usual line, people in it.
    fn default() -> Self {
        Self { batter: 0.0, line: None, open_for: 0.0, undrained_for: None, wetted: false, people_below: true }
    }
}

/// Soil of an excavation's sides after 29 CFR 1926 Subpart P, Appendix A. A competent person classifies it.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum SoilType {
    /// Stable rock.
    StableRock,
    /// Type A.
    TypeA,
    /// Type B.
    TypeB,
    /// Type C.
    TypeC,
}

/// What holds the sides of an excavation.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Support {
    /// Nothing: cut or sloped.
    None,
    /// Sheets, boxes or struts; who designed them for a load beside the edge, if anybody did.
    Supported {
        /// The designer; `None`: not known, and then no load beside it is known to be right.
        by: Option<String>,
    },
    /// Nobody has said.
    NotKnown,
}

/// Something in the ground.
#[derive(Debug, Clone, PartialEq)]
pub struct Buried {
    /// Short id.
    pub id: String,
    /// Name for people.
    pub name: String,
    /// What it is.
    pub kind: BuriedKind,
    /// Where, in plan.
    pub shape: PlanShape,
    /// Ground above its crown, m; `None`: not known.
    pub cover: Option<Ranged>,
    /// Pressure at its crown that its owner allows, Pa; `None`: not known.
    pub allowed_pressure: Option<f64>,
    /// How the wall of a pipe or culvert behaves; `None`: nobody has said.
    pub wall: Option<PipeWall>,
    /// What a named person says of the ground around it; `None`: nobody does.
    pub around: Option<GroundAround>,
    /// Who answers for what is known: an owner's plan, a trial pit, a locator.
    pub source: String,
}

/// How the wall of a pipe or culvert behaves under load.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum PipeWall {
    /// It does not give: concrete, clay, masonry.
    Rigid,
    /// The soil beside it holds it in shape: its deflection counts too.
    Flexible(FlexiblePipe),
}

/// What a named person says of the ground around a buried thing.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct GroundAround {
    /// Freshly filled; `None`: not said.
    pub fresh_fill: Option<bool>,
    /// Voids or washed-out soil beside it are possible; `None`: not said.
    pub voids: Option<bool>,
    /// Who says so.
    pub by: String,
}

/// What kind of thing lies in the ground.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum BuriedKind {
    /// A pipe.
    Pipe,
    /// A cable.
    Cable,
    /// A culvert.
    Culvert,
    /// A tank or chamber.
    Tank,
    /// A basement or vault.
    Basement,
    /// Ground that was dug and filled again.
    Backfill,
    /// A void: old cellar, mine, soakaway.
    Void,
}

impl BuriedKind {
    /// What it counts as under wheels. A pipe or culvert of which nobody has said how its wall behaves is unknown.
    pub fn under_wheels(self, wall: Option<PipeWall>) -> UnderWheels {
        match (self, wall) {
            (Self::Pipe | Self::Culvert, Some(PipeWall::Flexible(pipe))) => UnderWheels::Flexible(pipe),
            (Self::Pipe | Self::Culvert, Some(PipeWall::Rigid)) => UnderWheels::Rigid,
            (Self::Tank, _) => UnderWheels::Tank,
            (Self::Basement, _) => UnderWheels::Slab,
            (Self::Pipe | Self::Culvert | Self::Cable | Self::Backfill | Self::Void, _) => UnderWheels::Unknown,
        }
    }

    /// True of what has no wall to crush and no rating of its own: a cable, filled ground, a void.
    pub fn has_no_wall(self) -> bool {
        matches!(self, Self::Cable | Self::Backfill | Self::Void)
    }
}
