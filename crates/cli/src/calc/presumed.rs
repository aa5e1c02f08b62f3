//! `calc presumed`: a pad or a mat against what a code presumes for a soil that is only described.

use super::base_input::{Stands, stands};
use super::input::Input;
use super::on_ground::{self, OnGround};
use super::safety_input::loads;
use super::soil_text as words;
use crate::Run;
use crate::args::Said;
use evidence::{Message, Working};
use ground::presumed::{Presumed, Under};
use ground::{Contact, Footprint, Refusal};
use jobfile::{Reader, presumed_soil};
use quantity::{Dimension, Quantity};
use serde::{Deserialize, Serialize};

pub(super) const EXAMPLE: &str = r#"# A pad or a mat on ground that is only described, by what a code presumes.
# Never a tyre. Reserve is in the presumed pressure; no factor comes on top.
permanent = "25 kN"          # force by the machine's own weight
variable = "15 kN"           # by load, wind and movement
pad_width = "1.20 m"         # or pad_diameter; of a mat the part that works
pad_length = "1.20 m"
presumed = { code = "bs-8004", soil = "firm clay" }
# code: "ibc", "chicago", "24-cfr-3285" or "bs-8004"; soil: in that code's
# words, which a wrong one lists
"#;

/// Answer of the calculation. SI.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, schemars::JsonSchema)]
pub(crate) struct PresumedResult {
    /// Code and clause.
    pub(crate) citation: String,
    /// Force, N.
    pub(crate) force_n: f64,
    /// Pressure of it under the base, Pa.
    pub(crate) pressure_pa: f64,
    /// Pressure that the code presumes, Pa.
    pub(crate) allowable_pa: f64,
    /// Pressure over that: more than 1 is too much.
    pub(crate) used: f64,
    /// Not more than presumed.
    pub(crate) carries: bool,
    /// The steps.
    pub(crate) working: Working,
}

struct Asked {
    stands: Stands,
    force: f64,
    presumed: &'static Presumed,
}

pub(crate) fn run(input: &Input, said: Said) -> Run {
    on_ground::run(input, said, "ground::nothing-presumed", asked, answer)
}

fn asked(root: &Reader<'_>) -> Option<Asked> {
    let loads = loads(root);
    let stands = stands(root);
    let presumed = presumed_soil(root).ok()?;
    if presumed.is_none() && !root.has("presumed") {
        root.missing("presumed", "presumed = { code = \"bs-8004\", soil = \"firm clay\" }");
    }
    let loads = loads?;
    Some(Asked { stands: stands?, force: loads.permanent + loads.variable, presumed: presumed? })
}

fn answer(asked: &Asked) -> Result<PresumedResult, Refusal> {
    let mut working = Working::default();
    let Stands::Pad(base) = asked.stands else { return Err(Refusal::PresumedUnderTyre) };
    let width = match base {
        Footprint::Rectangle { width, length } => width.min(length),
        Footprint::Round { .. } => base.area().sqrt(),
    };
    let pressure = Contact::Pad { area: base.area() }.traced_pressure(asked.force, &mut working);
    let allowable = asked.presumed.allowable(Under::PadOrMat { width }, &mut working)?;
    Ok(PresumedResult {
        citation: asked.presumed.code.citation().to_owned(),
        force_n: asked.force,
        pressure_pa: pressure,
        allowable_pa: allowable,
        used: pressure / allowable,
        carries: pressure <= allowable,
        working,
    })
}

impl OnGround for PresumedResult {
    fn lines(&self) -> Vec<Message> {
        let pressure = |v: f64| Quantity::new(v, Dimension::Pressure);
        let verdict = if self.carries { words::PRESUMED_CARRIES } else { words::PRESUMED_TOO_MUCH };
        vec![
            verdict
                .with("pressure", pressure(self.pressure_pa))
                .with("allowable", pressure(self.allowable_pa))
                .with("code", &self.citation)
                .with("used", Quantity::ratio(self.used)),
            words::PRESUMED_NOTE.message(),
        ]
    }

    fn working(&self) -> &Working {
        &self.working
    }

    fn holds(&self) -> bool {
        self.carries
    }
}
