//! What is dug into the ground or lies in it.

use crate::{PlanArea, PlanShape};
use evidence::Ranged;
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
    /// Who saw or stated it.
    pub source: String,
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
    /// Who answers for what is known: an owner's plan, a trial pit, a locator.
    pub source: String,
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
