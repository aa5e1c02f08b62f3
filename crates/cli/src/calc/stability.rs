//! `calc stability`: tipping load and tilt at onset for a boom position.

use super::input::Input;
use super::stance_input::Ground;
use super::standing::{Asks, Standing, given, side, stiffnesses};
use crate::args::Said;
use crate::{Outcome, Run, terminal, text};
use evidence::Message;
use geometry::DVec3;
use jobfile::{Bound, Reader};
use quantity::{Dimension, Quantity};
use serde::{Deserialize, Serialize};
use stability::{OnSprings, Springs, TipsOver, level_tipping_load, on_springs, onset, tipping_lines};

pub(crate) const EXAMPLE: &str = r#"# Tipping of a machine in one boom position, on rigid contacts.
machine = "validation/machines/r1.toml"   # relative to this file
attachment = "forks"
boom_angle = "60°"
extension = "3.00 m"
load = "3000 kg"
load_left = "0 m"            # centre of the load left of the middle
load_ahead = "0.61 m"        # from the fork face; 0 for a hook
load_up = "0.50 m"           # centre above the forks; 0 for a hook
support = "tyres"            # "stabilizers" or "outriggers"
rear_axle = "locked"         # or "free": may oscillate. Unknown counts as free
descent = "0°"               # steepest descent: 0 downhill ahead, 90 downhill
#                              to the left
# levelled_on = "8°"         # frame made upright on ground that falls so far to
#                              the left; the tilt then counts from there,
#                              levelling as it was
# front_stiffness = "900 kN/m"  # of one tyre or pad, and rear_stiffness: how
# rear_stiffness = "900 kN/m"   # contacts that give tip sooner
"#;

/// Answer of the calculation. SI; angles in degrees, as their names say.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, schemars::JsonSchema)]
pub(crate) struct StabilityResult {
    /// From the front face of the front tyres to the load's centre, m.
    pub(crate) reach_m: f64,
    /// Height of the fork top or hook above level ground, m.
    pub(crate) lift_height_m: f64,
    /// Load in the middle at which the level machine starts to tip forward, kg; `null`: none does.
    pub(crate) level_tipping_load_kg: Option<f64>,
    /// Tilt of the ground plane at which it starts to tip with the load, degrees; `null`: not before 90°.
    pub(crate) tilt_at_onset_deg: Option<f64>,
    /// Which way it goes over.
    pub(crate) tips_over: Option<TipsOver>,
    /// With stiffnesses: tilt in the worst direction at which it starts to tip on contacts that give,
    /// degrees; below zero: it tips as it stands.
    pub(crate) least_tilt_on_springs_deg: Option<f64>,
    /// With stiffnesses: force on each contact as it stands level, N: front left, front right, rear
    /// left, rear right; `null`: it does not stand, or the search did not end.
    pub(crate) forces_on_springs_n: Option<[f64; 4]>,
}

/// What the calculation asks besides the machine.
struct Asked {
    descent: f64,
    springs: Option<Springs>,
}

pub(crate) fn run(input: &Input, said: Said) -> Run {
    let asked = |root: &Reader<'_>| {
        let descent = root.decision("descent", Dimension::Angle, Bound::Any);
        let springs = stiffnesses(root);
        Some(Asked { descent: descent?, springs: springs? })
    };
    let asks = Asks { ground: Ground::Levelled, ..Asks::default() };
    let (standing, asked) = given(input, said, asks, asked)?;
    let result = answer(&standing, &asked);
    if said.json() {
        terminal::print_json(&result);
    } else {
        print(&result, said);
    }
    Ok(Outcome::Done)
}

fn answer(s: &Standing, asked: &Asked) -> StabilityResult {
    let lines = tipping_lines(&s.machine, s.stance);
    // The same load in the middle.
    let middle = DVec3::new(s.load.at.x, 0.0, s.load.at.z);
    let onset = onset(&s.loading.masses, &lines, asked.descent);
    let soft = asked.springs.map(|springs| soft(s, springs));
    StabilityResult {
        reach_m: s.load.at.x - s.machine.front_face(),
        lift_height_m: s.tool.z,
        level_tipping_load_kg: level_tipping_load(&s.bare(), &lines[0], middle),
        tilt_at_onset_deg: onset.map(|o| o.tilt.to_degrees()),
        tips_over: onset.map(|o| o.over),
        least_tilt_on_springs_deg: soft.map(|(tilt, _)| tilt.to_degrees()),
        forces_on_springs_n: soft.and_then(|(_, force)| force),
    }
}

/// Least tilt (rad) over all lines until it tips on contacts that give, and their forces standing level.
fn soft(s: &Standing, springs: Springs) -> (f64, Option<[f64; 4]>) {
    let tilt = s.soft_lines(springs).map(|line| line.tilt(&s.loading));
    let force = match on_springs(&s.machine, s.stance, &s.loading.masses, s.loading.gravity, springs, s.heights) {
        OnSprings::Stands { force, .. } => Some(force),
        OnSprings::Tips | OnSprings::CannotTell => None,
    };
    // A tilt that is not a number is not left out: then none is known.
    (tilt.into_iter().fold(f64::INFINITY, |least, t| if least.is_nan() || least < t { least } else { t }), force)
}

fn print(r: &StabilityResult, said: Said) {
    let w = said.wording();
    let say = |m: &Message| terminal::paragraph(&w.render(m), "", "  ");
    // Figures with the digits that comparing them by hand takes.
    let figure = |si: f64, dimension| w.worked(Quantity::new(si, dimension));
    say(&text::STABILITY_AT
        .with("reach", figure(r.reach_m, Dimension::Length))
        .with("height", figure(r.lift_height_m, Dimension::Length)));
    match r.level_tipping_load_kg {
        Some(kg) => say(&text::STABILITY_TIPPING_LOAD.with("mass", figure(kg, Dimension::Mass))),
        None => say(&text::STABILITY_NO_TIPPING_LOAD.message()),
    }
    match (r.tilt_at_onset_deg, r.tips_over) {
        (Some(tilt), Some(over)) if tilt > 0.0 => {
            let tilt = figure(tilt.to_radians(), Dimension::Angle);
            say(&text::STABILITY_ONSET.with("tilt", tilt).with("side", side(over)));
        }
        (Some(_), Some(over)) => say(&text::STABILITY_TIPPED.with("side", side(over))),
        _ => say(&text::STABILITY_NO_ONSET.message()),
    }
    if let Some(tilt) = r.least_tilt_on_springs_deg {
        say(&text::STABILITY_ON_SPRINGS.with("tilt", figure(tilt.to_radians(), Dimension::Angle)));
        match r.forces_on_springs_n {
            Some(force) => {
                let force = force.map(|f| figure(f, Dimension::Force));
                say(&text::STABILITY_FORCES.with("forces", force.join(", ")));
            }
            None => say(&text::STABILITY_NOT_ON_SPRINGS.message()),
        }
    }
}
