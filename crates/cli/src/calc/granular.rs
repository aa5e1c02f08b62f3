//! `calc working-platform`: a granular platform over clay under a track, mat or pad: what it carries, or how thick it has to be.

use super::input::Input;
use super::on_ground::{self, OnGround};
use super::safety_input::loads;
use super::soil_text as words;
use crate::Run;
use crate::args::Said;
use evidence::{Message, Working};
use ground::platform::{FACTOR_HANDLING, FACTOR_STANDING, Platform};
use ground::{Contact, Refusal};
use jobfile::{Bound, Reader, undrained_strength};
use quantity::{Dimension, Quantity};
use serde::{Deserialize, Serialize};

pub(super) const EXAMPLE: &str = r#"# A platform of granular fill over clay, under a pad, a mat or a tyre's patch.
permanent = "70 kN"          # force by the machine's own weight
variable = "30 kN"           # by load, wind and movement
pad_width = "0.80 m"
pad_length = "1.20 m"
load = "standing"            # nobody can stop it from coming: factor 2; or
#                              "handling": it can be set down: factor 1.5
friction = "40°"             # of the platform's material
unit_weight = "19 kN/m³"     # of it; under water without the water's
cbr = "2 %"                  # of the clay; or undrained_strength, vane with
#                              plasticity, penetration_per_blow, cone_index or
#                              plate
thickness = "0.70 m"         # left out: how thick it has to be
"#;

/// Answer of the calculation. SI.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, schemars::JsonSchema)]
pub(crate) struct GranularResult {
    /// Pressure with its factor, Pa.
    pub(crate) demand_pa: f64,
    /// Thickness of the platform, stated or needed, m; 0: the clay carries it alone.
    pub(crate) thickness_m: f64,
    /// Pressure at failure with the stated thickness, Pa; `null`: none is stated.
    pub(crate) fails_at_pa: Option<f64>,
    /// Undrained strength of the clay that counts, Pa.
    pub(crate) clay_pa: f64,
    /// Platform and clay carry it.
    pub(crate) carries: bool,
    /// The steps.
    pub(crate) working: Working,
}

const FACTORS: [(&str, f64); 2] = [("standing", FACTOR_STANDING), ("handling", FACTOR_HANDLING)];

struct Asked {
    force: f64,
    factor: f64,
    platform: Platform,
    thickness: Option<f64>,
    steps: Working,
}

pub(crate) fn run(input: &Input, said: Said) -> Run {
    on_ground::run(input, said, "ground::no-platform", asked, answer)
}

fn asked(root: &Reader<'_>) -> Option<Asked> {
    root.stated();
    let loads = loads(root);
    let sides = ["pad_width", "pad_length"].map(|key| root.decision(key, Dimension::Length, Bound::Within(0.05, 20.0)));
    let factor = root.choice("load", &FACTORS);
    let friction = root.decision("friction", Dimension::Angle, Bound::Within(0.0, 1.2));
    let unit_weight = root.decision("unit_weight", Dimension::UnitWeight, Bound::Within(5e3, 27e3));
    let mut steps = Working::default();
    let clay = undrained_strength(root, &mut steps);
    let thickness = root.decision_or_none("thickness", Dimension::Length, Bound::UpTo(10.0));
    let thickness_wrong = root.has("thickness") && thickness.is_none();
    let clay = clay.ok()?;
    if clay.is_none() {
        root.missing("undrained_strength", "undrained_strength = \"40 kPa\"");
    }
    let (loads, [Some(a), Some(b)]) = (loads?, sides) else { return None };
    let platform =
        Platform { friction: friction?, unit_weight: unit_weight?, clay: clay?.low, width: a.min(b), length: a.max(b) };
    let force = loads.permanent + loads.variable;
    (!thickness_wrong).then_some(Asked { force, factor: factor?, platform, thickness, steps })
}

fn answer(asked: &Asked) -> Result<GranularResult, Refusal> {
    let mut working = asked.steps.clone();
    let area = asked.platform.width * asked.platform.length;
    let demand = Contact::Pad { area }.traced_pressure(asked.force * asked.factor, &mut working);
    let (thickness, fails_at) = match asked.thickness {
        Some(thickness) => (thickness, Some(asked.platform.bearing(thickness, &mut working)?)),
        None => (asked.platform.thickness(demand, &mut working)?, None),
    };
    Ok(GranularResult {
        demand_pa: demand,
        thickness_m: thickness,
        fails_at_pa: fails_at,
        clay_pa: asked.platform.clay,
        carries: fails_at.is_none_or(|q| demand <= q),
        working,
    })
}

impl OnGround for GranularResult {
    fn lines(&self) -> Vec<Message> {
        let pressure = |v: f64| Quantity::new(v, Dimension::Pressure);
        let thickness = Quantity::new(self.thickness_m, Dimension::Length);
        let verdict = match self.fails_at_pa {
            Some(q) => {
                let id = if self.carries { words::GRANULAR_CARRIES } else { words::GRANULAR_TOO_THIN };
                id.with("thickness", thickness).with("fails", pressure(q))
            }
            None if self.thickness_m > 0.0 => words::GRANULAR_NEEDED.with("thickness", thickness),
            None => words::GRANULAR_CLAY_ALONE.message(),
        };
        vec![verdict.with("demand", pressure(self.demand_pa)), words::GRANULAR_NOTE.message()]
    }

    fn working(&self) -> &Working {
        &self.working
    }

    fn holds(&self) -> bool {
        self.carries
    }
}
