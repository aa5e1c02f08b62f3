//! `calc rut`: whether a tyre's ruts stay as small as asked, deepen with every pass, or the wheel sinks.

use super::input::Input;
use super::on_ground::{self, OnGround};
use super::soil_text as words;
use crate::Run;
use crate::args::Said;
use evidence::{Message, Ranged, Silent, Working};
use ground::rutting::{Ruts, Rutting, SoftTyre, rut_pressure, rutting, sinking_pressure};
use ground::{Contact, Refusal};
use jobfile::{Bound, Reader, undrained_strength};
use quantity::{Dimension, Quantity};
use serde::{Deserialize, Serialize};

pub(super) const EXAMPLE: &str = r#"# Ruts of a tyre on soft ground.
force = "30 kN"              # on the tyre
tyre_pressure = "3 bar"
ruts = "small"               # under 5 cm after more than 1000 passes; or
#                              "deep": about 10 cm after fewer than 100
cone_index = "900 kPa"       # or undrained_strength, cbr, penetration_per_blow,
#                              vane with plasticity, plate
# With a cone index, the depth after one pass besides:
tyre_width = "0.40 m"
tyre_diameter = "1.30 m"
tyre_section = "0.30 m"      # height of its section
tyre_deflection = "0.05 m"   # how far the force presses it in on hard ground
"#;

/// Answer of the calculation. SI.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, schemars::JsonSchema)]
pub(crate) struct RutResult {
    /// Pressure under the tyre, Pa.
    pub(crate) pressure_pa: f64,
    /// Pressure up to which ruts stay as asked, Pa.
    pub(crate) stays_up_to_pa: f64,
    /// Pressure from which the wheel sinks, Pa.
    pub(crate) sinks_from_pa: f64,
    /// What happens.
    pub(crate) does: RutDoes,
    /// Depth of the rut after one pass by cone index, least to most, m; `null`: not asked for.
    pub(crate) after_one_pass_m: Option<[f64; 2]>,
    /// The steps.
    pub(crate) working: Working,
}

/// What a wheel does to the ground.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, schemars::JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub(crate) enum RutDoes {
    /// Ruts stay as small as asked.
    Stays,
    /// Ruts become deeper with every pass.
    Deepens,
    /// The wheel sinks.
    Sinks,
}

const RUTS: [(&str, Ruts); 2] = [("small", Ruts::Small), ("deep", Ruts::Deep)];

struct Asked {
    force: f64,
    inflation: f64,
    ruts: Ruts,
    strength: Ranged,
    /// Tyre and cone index, Pa.
    pass: Option<(SoftTyre, f64)>,
    steps: Working,
}

pub(crate) fn run(input: &Input, said: Said) -> Run {
    on_ground::run(input, said, "ground::no-rut", asked, answer)
}

fn asked(root: &Reader<'_>) -> Option<Asked> {
    root.stated();
    let force = root.decision("force", Dimension::Force, Bound::Within(1.0, 5e6));
    let inflation = root.decision("tyre_pressure", Dimension::Pressure, Bound::Within(2e4, 2e6));
    let ruts = root.choice("ruts", &RUTS);
    let mut steps = Working::default();
    let strength = undrained_strength(root, &mut steps);
    let keys = ["tyre_width", "tyre_diameter", "tyre_section", "tyre_deflection"];
    let some = keys.iter().any(|key| root.has(key));
    let sizes =
        keys.map(|key| if some { root.decision(key, Dimension::Length, Bound::Within(0.005, 5.0)) } else { None });
    let index = root.decision_or_none("cone_index", Dimension::Pressure, Bound::UpTo(1e7));
    let Some(strength) = strength.ok()? else {
        root.missing("cone_index", "cone_index = \"900 kPa\"");
        return None;
    };
    if some && !root.has("cone_index") {
        root.fault("tyre_width", words::RUT_NEEDS_CONE.message(), None);
        return None;
    }
    let force = force?;
    let pass = if some {
        let [Some(width), Some(diameter), Some(section), Some(deflection)] = sizes else { return None };
        if deflection >= section {
            root.fault("tyre_deflection", words::RUT_DEFLECTION.message(), None);
            return None;
        }
        Some((SoftTyre { force, width, diameter, section, deflection }, index?))
    } else {
        None
    };
    Some(Asked { force, inflation: inflation?, ruts: ruts?, strength, pass, steps })
}

fn answer(asked: &Asked) -> Result<RutResult, Refusal> {
    let mut working = asked.steps.clone();
    let pressure = Contact::Tyre { inflation: asked.inflation }.traced_pressure(asked.force, &mut working);
    let does = match rutting(pressure, asked.strength, asked.ruts, &mut working) {
        Rutting::Stays => RutDoes::Stays,
        Rutting::Deepens => RutDoes::Deepens,
        Rutting::Sinks => RutDoes::Sinks,
    };
    let after = match asked.pass {
        Some((tyre, index)) => Some(tyre.rut(index, &mut working)?),
        None => None,
    };
    Ok(RutResult {
        pressure_pa: pressure,
        stays_up_to_pa: rut_pressure(asked.strength.low, asked.ruts, &mut Silent),
        sinks_from_pa: sinking_pressure(asked.strength.low),
        does,
        after_one_pass_m: after.map(|range| [range.low, range.high]),
        working,
    })
}

impl OnGround for RutResult {
    fn lines(&self) -> Vec<Message> {
        let pressure = |v: f64| Quantity::new(v, Dimension::Pressure);
        let length = |v: f64| Quantity::new(v, Dimension::Length);
        let verdict = match self.does {
            RutDoes::Stays => words::RUT_STAYS,
            RutDoes::Deepens => words::RUT_DEEPENS,
            RutDoes::Sinks => words::RUT_SINKS,
        };
        let mut lines = vec![
            verdict
                .with("pressure", pressure(self.pressure_pa))
                .with("stays", pressure(self.stays_up_to_pa))
                .with("sinks", pressure(self.sinks_from_pa)),
        ];
        lines.extend(
            self.after_one_pass_m
                .map(|[low, high]| words::RUT_DEPTH.with("low", length(low)).with("high", length(high))),
        );
        lines.push(words::RUT_NOTE.message());
        lines
    }

    fn working(&self) -> &Working {
        &self.working
    }

    fn holds(&self) -> bool {
        self.does == RutDoes::Stays
    }
}
