//! `calc settlement`: how far pads settle at once, each under all of them, what they tilt, and what that moves above.

use super::input::Input;
use super::on_ground::{self, OnGround};
use super::soil_input::{SOIL_EXAMPLE, soil};
use super::soil_text as words;
use crate::Run;
use crate::args::Said;
use evidence::{Message, Silent, Working};
use ground::settlement::{PressedPad, head_moves, settlements};
use ground::{Profile, Refusal};
use jobfile::{Bound, Reader};
use quantity::{Dimension, Quantity};
use serde::{Deserialize, Serialize};

const EXAMPLE: &str = r#"# How far pads or mats settle at once, each under all of them.
height = "9 m"               # of what the tilt moves, such as the boom's head;
#                              left out: the tilt alone
"#;

const PADS: &str = r#"# Pads or mats: middle and sides in plan, force without factors.
[[pad]]
at = ["0 m", "0.9 m"]
size = ["0.60 m", "0.60 m"]
force = "48 kN"
[[pad]]
at = ["0 m", "-0.9 m"]
size = ["0.60 m", "0.60 m"]
force = "31 kN"
"#;

/// The commented example.
pub(super) fn example() -> String {
    format!("{EXAMPLE}{SOIL_EXAMPLE}{PADS}")
}

/// Answer of the calculation. SI.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, schemars::JsonSchema)]
pub(crate) struct SettlementResult {
    /// Each pad, in the order of the input.
    pub(crate) pads: Vec<SettledPad>,
    /// The steepest of all pairs; `null`: there is one pad.
    pub(crate) steepest: Option<SteepestPair>,
    /// The steps.
    pub(crate) working: Working,
}

/// One pad.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize, schemars::JsonSchema)]
pub(crate) struct SettledPad {
    /// Pressure under it, Pa.
    pub(crate) pressure_pa: f64,
    /// Immediate settlement, m.
    pub(crate) settlement_m: f64,
}

/// The two pads between which the ground tilts most.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize, schemars::JsonSchema)]
pub(crate) struct SteepestPair {
    /// Their numbers, from 1.
    pub(crate) pads: [usize; 2],
    /// Difference of their settlements, m.
    pub(crate) difference_m: f64,
    /// Tilt, degrees.
    pub(crate) tilt_deg: f64,
    /// How far that moves what is at the stated height, m; `null`: no height is stated.
    pub(crate) moves_m: Option<f64>,
}

struct Asked {
    pads: Vec<PressedPad>,
    height: Option<f64>,
    profile: Profile,
    steps: Working,
}

pub(crate) fn run(input: &Input, said: Said) -> Run {
    on_ground::run(input, said, "ground::no-settlement", asked, answer)
}

fn asked(root: &Reader<'_>) -> Option<Asked> {
    let height = root.decision_or_none("height", Dimension::Length, Bound::ZeroTo(100.0));
    let mut steps = Working::default();
    let profile = soil(root, &mut steps);
    let tables = root.tables("pad");
    let pads: Vec<Option<PressedPad>> = tables.iter().map(pad).collect();
    if tables.is_empty() {
        root.missing("pad", "[[pad]] with at, size and force");
    }
    let pads = pads.into_iter().collect::<Option<Vec<_>>>().filter(|pads| !pads.is_empty())?;
    for (i, one) in pads.iter().enumerate() {
        if pads[..i].iter().any(|other| apart(one, other) <= 0.0) {
            tables[i].fault("at", words::PADS_IN_ONE_PLACE.message(), None);
            return None;
        }
    }
    Some(Asked { pads, height, profile: profile?, steps })
}

fn pad(t: &Reader<'_>) -> Option<PressedPad> {
    let at = t.point("at", "at = [\"0 m\", \"0.9 m\"]", 1e3);
    let node = t.required("size", "size = [\"0.60 m\", \"0.60 m\"]");
    let size = node.and_then(|n| t.as_numbers::<2>(n, "size", Dimension::Length, Bound::Within(0.05, 20.0), None));
    let force = t.decision("force", Dimension::Force, Bound::ZeroTo(5e6));
    t.done();
    let [x, y] = size?;
    Some(PressedPad { at: at?.to_array(), sides: [x, y], pressure: force? / (x * y) })
}

fn apart(a: &PressedPad, b: &PressedPad) -> f64 {
    libm::hypot(a.at[0] - b.at[0], a.at[1] - b.at[1])
}

fn answer(asked: &Asked) -> Result<SettlementResult, Refusal> {
    let mut working = asked.steps.clone();
    let all = settlements(&asked.pads, &asked.profile, &mut working)?;
    let height = asked.height.unwrap_or(0.0);
    let mut steepest: Option<([usize; 2], f64)> = None;
    for (i, one) in asked.pads.iter().enumerate() {
        for (j, other) in asked.pads.iter().enumerate().skip(i + 1) {
            let (tilt, _) = head_moves([all[i], all[j]], apart(one, other), height, &mut Silent)?;
            if steepest.is_none_or(|(_, most)| tilt > most) {
                steepest = Some(([i, j], tilt));
            }
        }
    }
    let steepest = match steepest {
        None => None,
        Some(([i, j], _)) => {
            let between = apart(&asked.pads[i], &asked.pads[j]);
            let (tilt, moves) = head_moves([all[i], all[j]], between, height, &mut working)?;
            Some(SteepestPair {
                pads: [i + 1, j + 1],
                difference_m: (all[i] - all[j]).abs(),
                tilt_deg: tilt.to_degrees(),
                moves_m: asked.height.map(|_| moves),
            })
        }
    };
    let pads = asked.pads.iter().zip(all);
    let pads = pads.map(|(p, settlement_m)| SettledPad { pressure_pa: p.pressure, settlement_m }).collect();
    Ok(SettlementResult { pads, steepest, working })
}

impl OnGround for SettlementResult {
    fn lines(&self) -> Vec<Message> {
        let length = |v: f64| Quantity::new(v, Dimension::Length);
        let one = |(i, pad): (usize, &SettledPad)| {
            words::PAD_SETTLES
                .with("pad", i + 1)
                .with("settlement", length(pad.settlement_m))
                .with("pressure", Quantity::new(pad.pressure_pa, Dimension::Pressure))
        };
        let mut lines: Vec<Message> = self.pads.iter().enumerate().map(one).collect();
        if let Some(pair) = &self.steepest {
            lines.push(
                words::PADS_TILT
                    .with("one", pair.pads[0])
                    .with("other", pair.pads[1])
                    .with("difference", length(pair.difference_m))
                    .with("tilt", Quantity::new(pair.tilt_deg.to_radians(), Dimension::Angle)),
            );
            lines.extend(pair.moves_m.map(|m| words::TILT_MOVES.with("moves", length(m))));
        }
        lines.push(words::SETTLEMENT_NOTE.message());
        lines
    }

    fn working(&self) -> &Working {
        &self.working
    }

    // Nothing is asked that it could break.
    fn holds(&self) -> bool {
        true
    }
}
