//! `calc bearing`: what layered ground carries under a pad or a tyre, against a force with its factors.

use super::base_input::{Stands, stands};
use super::input::Input;
use super::on_ground::{self, OnGround};
use super::safety_input::{Safety, design, safety};
use super::settles::{NotTold, Settles, not_told, settles};
use super::soil_input::{SOIL_EXAMPLE, soil};
use super::text as words;
use crate::Run;
use crate::args::Said;
use evidence::{Message, Silent, Working};
use ground::{Contact, FactorSet, Footprint, Load, PadOnProfile, Profile, Refusal, Strength, bearing_on_profile};
use jobfile::{Bound, Reader};
use quantity::{Dimension, Quantity};
use serde::{Deserialize, Serialize};

const EXAMPLE: &str = r#"# What the ground carries under a pad or a tyre, layer by layer, by the most
# cautious of five authors; against the force with its factors.
permanent = "45 kN"          # force by the machine's own weight
variable = "30 kN"           # by load, wind and movement
factors = "one"              # "one" factor on the ground; or "DA1", "DA2" or
#                              "DA3" of EN 1997-1
factor = "2.0"               # with "one"
pad_width = "0.60 m"         # or pad_diameter = "0.60 m"
pad_length = "0.60 m"
# A tyre instead of a pad: tyre_pressure = "4.5 bar" and tyre_width = "0.40 m"
push = "2 kN"                # sideways, along the width
off_middle = "0.02 m"        # how far the force falls from the middle, along
#                              the width
depth = "0 m"                # of the base below the surface
slope = "0 %"                # of the ground
"#;

/// The commented example.
pub(super) fn example() -> String {
    format!("{EXAMPLE}{SOIL_EXAMPLE}")
}

/// Answer of the calculation. SI.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, schemars::JsonSchema)]
pub(crate) struct BearingResult {
    /// Force with its factors, N.
    pub(crate) force_n: f64,
    /// Force that the ground carries, with its factors, N.
    pub(crate) resistance_n: f64,
    /// Force over resistance: more than 1 is too much.
    pub(crate) used: f64,
    /// Mean pressure of the force on the effective area, Pa.
    pub(crate) pressure_pa: f64,
    /// Pressure at which the ground fails, before a factor on resistance, Pa.
    pub(crate) ultimate_pa: f64,
    /// The lower layer that governs, from 1 at the surface; `null`: the layer under the base does alone.
    pub(crate) lower_layer: Option<usize>,
    /// The strength that governs.
    pub(crate) strength: GoverningStrength,
    /// The ground carries it.
    pub(crate) carries: bool,
    /// How far it settles at once under the forces without factors; no part of what is compared.
    pub(crate) settlement: Settles,
    /// The steps.
    pub(crate) working: Working,
}

/// Which strength governs.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, schemars::JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub(crate) enum GoverningStrength {
    /// Before water can leave.
    Undrained,
    /// After water has left.
    Drained,
}

struct Asked {
    stands: Stands,
    push: f64,
    off_middle: f64,
    depth: f64,
    slope: f64,
    safety: Safety,
    profile: Profile,
    /// Of strengths that come from tests.
    steps: Working,
}

pub(crate) fn run(input: &Input, said: Said) -> Run {
    on_ground::run(input, said, "ground::no-bearing", asked, answer)
}

fn asked(root: &Reader<'_>) -> Option<Asked> {
    let safety = safety(root);
    let stands = stands(root);
    let push = root.decision("push", Dimension::Force, Bound::ZeroTo(5e6));
    let off_middle = root.decision("off_middle", Dimension::Length, Bound::ZeroTo(20.0));
    let depth = root.decision("depth", Dimension::Length, Bound::ZeroTo(20.0));
    let slope = root.decision("slope", Dimension::Slope, Bound::ZeroTo(2.0));
    let mut steps = Working::default();
    let profile = soil(root, &mut steps);
    Some(Asked {
        stands: stands?,
        push: push?,
        off_middle: off_middle?,
        depth: depth?,
        slope: libm::atan(slope?),
        safety: safety?,
        profile: profile?,
        steps,
    })
}

/// The set of factors with the least left governs.
fn answer(asked: &Asked) -> Result<BearingResult, Refusal> {
    let mut worst: Option<BearingResult> = None;
    for set in &asked.safety.sets {
        let one = with_set(asked, *set)?;
        if worst.as_ref().is_none_or(|w| one.used.total_cmp(&w.used).is_gt()) {
            worst = Some(one);
        }
    }
    worst.ok_or(Refusal::NoNumber)
}

fn with_set(asked: &Asked, set: FactorSet) -> Result<BearingResult, Refusal> {
    let mut working = asked.steps.clone();
    let characteristic = FactorSet::Global(1.0).action(asked.safety.loads, &mut Silent);
    let force = set.action(asked.safety.loads, &mut working);
    let base = match asked.stands {
        Stands::Pad(base) => base,
        Stands::Tyre { pressure, width } => {
            // The patch is that of the force itself; factors make no tyre larger.
            let contact = Contact::Tyre { inflation: pressure };
            contact.traced_pressure(characteristic, &mut working);
            Footprint::patch(contact.area(characteristic), width)
        }
    };
    // A push grows with the force that makes it.
    let push = asked.push * force / characteristic;
    let load = Load { vertical: force, horizontal: [push, 0.0], eccentricity: [asked.off_middle, 0.0] };
    let pad = PadOnProfile { base, load, depth: asked.depth, slope: asked.slope };
    let settlement = match asked.stands {
        Stands::Pad(base) if asked.depth == 0.0 => settles(&asked.profile, base, characteristic, &mut working),
        _ => not_told(NotTold::NotOnSurface),
    };
    let governs = bearing_on_profile(&pad, &design(&asked.profile, set), &mut working)?;
    let resistance = set.resistance(governs.resistance, &mut working);
    let strength = match governs.lower.map_or(governs.upper, |(_, s)| s) {
        Strength::Undrained { .. } => GoverningStrength::Undrained,
        Strength::Drained { .. } => GoverningStrength::Drained,
    };
    Ok(BearingResult {
        force_n: force,
        resistance_n: resistance,
        used: force / resistance,
        pressure_pa: force / base.effective(&load)?.area,
        ultimate_pa: governs.ultimate,
        lower_layer: governs.lower.map(|(i, _)| i + 1),
        strength,
        carries: force <= resistance,
        settlement,
        working,
    })
}

impl OnGround for BearingResult {
    fn lines(&self) -> Vec<Message> {
        let q = Quantity::new;
        let verdict = if self.carries { words::BEARING_CARRIES } else { words::BEARING_TOO_MUCH };
        let strength = match self.strength {
            GoverningStrength::Undrained => words::BEARING_UNDRAINED,
            GoverningStrength::Drained => words::BEARING_DRAINED,
        };
        vec![
            verdict
                .with("resistance", q(self.resistance_n, Dimension::Force))
                .with("force", q(self.force_n, Dimension::Force))
                .with("used", Quantity::ratio(self.used)),
            words::BEARING_PRESSURES
                .with("pressure", q(self.pressure_pa, Dimension::Pressure))
                .with("ultimate", q(self.ultimate_pa, Dimension::Pressure)),
            match self.lower_layer {
                Some(layer) => words::BEARING_LOWER_GOVERNS.with("layer", layer).with("strength", strength),
                None => words::BEARING_UPPER_GOVERNS.with("strength", strength),
            },
            self.settlement.line(),
        ]
    }

    fn working(&self) -> &Working {
        &self.working
    }

    fn holds(&self) -> bool {
        self.carries
    }
}
