//! How far one base settles at once, beside what the ground carries; or why that is not told.

use super::soil_text as words;
use evidence::{Message, Trace};
use ground::settlement::{PressedPad, settlements};
use ground::{Footprint, Profile, Refusal};
use quantity::{Dimension, Quantity};
use serde::{Deserialize, Serialize};

/// Immediate settlement of one base.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize, schemars::JsonSchema)]
pub(crate) struct Settles {
    /// Immediate settlement under the forces without factors, m; `null`: not told.
    pub(crate) settlement_m: Option<f64>,
    /// Why it is not told.
    pub(crate) not_told: Option<NotTold>,
}

/// Why a settlement is not told.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, schemars::JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub(crate) enum NotTold {
    /// A layer states no modulus.
    NoModulus,
    /// The layers end above four widths of the base.
    NotExplored,
    /// Only pads and mats on the surface are reckoned.
    NotOnSurface,
    /// A value is no number.
    NoNumber,
}

/// Of a base on the surface under `force` (N, without factors). A round base counts as the square of its area.
pub(super) fn settles(profile: &Profile, base: Footprint, force: f64, trace: &mut impl Trace) -> Settles {
    let sides = match base {
        Footprint::Rectangle { width, length } => [width, length],
        Footprint::Round { .. } => [base.area().sqrt(); 2],
    };
    let pad = PressedPad { at: [0.0; 2], sides, pressure: force / base.area() };
    match settlements(&[pad], profile, trace) {
        Ok(all) => Settles { settlement_m: all.first().copied(), not_told: None },
        Err(Refusal::NoStiffness) => not_told(NotTold::NoModulus),
        Err(Refusal::NotExplored { .. }) => not_told(NotTold::NotExplored),
        Err(_) => not_told(NotTold::NoNumber),
    }
}

/// Without a number.
pub(super) fn not_told(why: NotTold) -> Settles {
    Settles { settlement_m: None, not_told: Some(why) }
}

impl Settles {
    /// In words.
    pub(super) fn line(&self) -> Message {
        let why = match (self.settlement_m, self.not_told) {
            (Some(s), _) => return words::SETTLES.with("settlement", Quantity::new(s, Dimension::Length)),
            (None, Some(NotTold::NoModulus)) => words::NOT_TOLD_MODULUS,
            (None, Some(NotTold::NotExplored)) => words::NOT_TOLD_DEPTH,
            (None, Some(NotTold::NotOnSurface)) => words::NOT_TOLD_BASE,
            (None, Some(NotTold::NoNumber) | None) => words::NOT_TOLD_NUMBER,
        };
        words::SETTLES_NOT_TOLD.with("why", why)
    }
}
