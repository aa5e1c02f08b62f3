//! `calc stress`: vertical stress at a depth under contacts on the surface.

use super::input::Input;
use super::{ground_input, ground_text as words, working};
use crate::args::Said;
use crate::{Outcome, Run, terminal};
use evidence::Working;
use ground::input_fault::InputFault;
use ground::stress::{Patch, patches_stress};
use jobfile::{Bound, Reader};
use quantity::{Dimension, Quantity};
use serde::{Deserialize, Serialize};

pub(crate) const EXAMPLE: &str = r#"# Vertical stress in the ground under wheels and pads.
at = ["0 m", "0 m"]          # where, in plan
depth = "1.20 m"             # below the surface
# One for each wheel or pad: its middle in plan, lengths of its sides, force.
[[contact]]
at = ["0 m", "0.90 m"]
size = ["0.35 m", "0.40 m"]  # along the machine, across it
turned = "0°"                # anticlockwise, of the first side; left out: 0
force = "48 kN"
[[contact]]
at = ["0 m", "-0.90 m"]
size = ["0.35 m", "0.40 m"]
force = "31 kN"
"#;

/// Answer of the calculation. SI.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, schemars::JsonSchema)]
pub(crate) struct StressResult {
    /// Depth below the surface, m.
    pub(crate) depth_m: f64,
    /// Elastic half space (Boussinesq), Pa.
    pub(crate) elastic_pa: f64,
    /// Spread 2 down to 1 sideways, Pa.
    pub(crate) spread_pa: f64,
    /// The larger, Pa.
    pub(crate) larger_pa: f64,
}

pub(crate) fn run(input: &Input, said: Said) -> Run {
    let (at, depth, patches) = ground_input::read(input, said, asked)?;
    if patches.is_empty() {
        let missing = InputFault::Missing { what: ground::edge_text::NAME_CONTACT_FORCE };
        return Err(ground_input::refused(input, said, &[missing]));
    }
    let mut steps = Working::default();
    let found = patches_stress(&patches, at, depth, &mut steps);
    let result =
        StressResult { depth_m: depth, elastic_pa: found.elastic, spread_pa: found.spread, larger_pa: found.larger() };
    if said.json() {
        terminal::print_json(&result);
    } else {
        let w = said.wording();
        let pressure = |v| Quantity::new(v, Dimension::Pressure);
        let message = words::STRESS_RESULT
            .with("depth", Quantity::new(depth, Dimension::Length))
            .with("larger", pressure(result.larger_pa))
            .with("elastic", pressure(result.elastic_pa))
            .with("spread", pressure(result.spread_pa));
        terminal::paragraph(&w.render(&message), "", "  ");
        terminal::paragraph(&w.render(&words::STRESS_NOTE.message()), "", "  ");
        working::print(&steps, None, said);
    }
    Ok(Outcome::Done)
}

fn asked(root: &Reader<'_>) -> Option<([f64; 2], f64, Vec<Patch>)> {
    let at = root.point("at", "at = [\"0 m\", \"0 m\"]", 1e6);
    let depth = root.decision("depth", Dimension::Length, Bound::ZeroTo(200.0));
    let patches = ground_input::patches(root);
    Some((at?.to_array(), depth?, patches))
}
