//! `calc stability`: tipping load and tilt at onset for a boom position.

use super::input::Input;
use crate::args::Said;
use crate::failure::Failure;
use crate::{Outcome, Run, terminal, text};
use evidence::Message;
use geometry::DVec3;
use jobfile::Bound;
use machine::{AttachmentKind, BoomPosition, Machine, SupportState, kinematics};
use quantity::{Dimension, Quantity, Si};
use serde::{Deserialize, Serialize};
use stability::wind::WindLoad;
use stability::{
    LEVEL, LoadOnBoom, Loading, Masses, OnSprings, RearAxleState, Springs, Stance, Support, TipsOver,
    level_tipping_load, on_springs, onset, tilt_reserve_on_springs, tipping_lines,
};

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
descent = "0°"               # steepest descent: 0 downhill ahead, 90 downhill to the left
# levelled_on = "8°"         # frame made upright on ground that falls so far to the left; the tilt
#                              then counts from there, levelling as it was
# front_stiffness = "900 kN/m"  # of one tyre or pad, and rear_stiffness: how contacts that give tip sooner
# rear_stiffness = "900 kN/m"
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

pub(super) const REAR: [(&str, RearAxleState); 2] = [("free", RearAxleState::Free), ("locked", RearAxleState::Locked)];

pub(crate) fn run(input: &Input, said: Said) -> Run {
    let root = input.document.root();
    let file = root.text("machine", "machine = \"machine.toml\"");
    let attachment = root.text("attachment", "attachment = \"forks\"");
    let angle = root.decision("boom_angle", Dimension::Angle, Bound::Any);
    let extension = root.decision("extension", Dimension::Length, Bound::NotNegative);
    let mass = root.decision("load", Dimension::Mass, Bound::NotNegative);
    let left = root.decision("load_left", Dimension::Length, Bound::Any);
    let ahead = root.decision("load_ahead", Dimension::Length, Bound::NotNegative);
    let up = root.decision("load_up", Dimension::Length, Bound::NotNegative);
    let state = root.choice("support", &SupportState::WORDS);
    let rear = root.choice("rear_axle", &REAR);
    let descent = root.decision("descent", Dimension::Angle, Bound::Any);
    let levelled = root.decision_or_none("levelled_on", Dimension::Angle, Bound::Any);
    let springs = springs(&root);
    root.done();
    if let Some(failure) = input.faults(said) {
        return Err(failure);
    }
    let (Some(file), Some(attachment), Some(angle), Some(extension), Some(mass), Some(left)) =
        (file, attachment, angle, extension, mass, left)
    else {
        return Err(Failure::new(input.document.faults(), said));
    };
    let (Some(ahead), Some(up), Some(state), Some(rear), Some(descent)) = (ahead, up, state, rear, descent) else {
        return Err(Failure::new(input.document.faults(), said));
    };
    let machine = input.machine(&file, said)?;
    in_range(&root, &machine, angle, extension, state);
    can_level(&root, &machine, levelled);
    let Some(found) = machine.attachment(&attachment) else {
        let known: Vec<_> = machine.attachments.iter().map(|a| a.id.as_str()).collect();
        root.fault(
            "attachment",
            text::NO_ATTACHMENT.with("attachment", &attachment).with("known", known.join(", ")),
            None,
        );
        return Err(failure(input, said));
    };
    if let Some(failure) = input.faults(said) {
        return Err(failure);
    }
    let boom = BoomPosition::level(angle, extension);
    let tool = kinematics::tool_point(&machine.boom, found, boom);
    let hook = matches!(found.kind, AttachmentKind::Jib(_));
    // A hung load acts at its hook, wherever its centre is below.
    let offset = |left: f64| if hook { DVec3::new(0.0, left, 0.0) } else { DVec3::new(ahead, left, up) };
    let stance = Stance::levelled(Support { state, rear }, levelled.unwrap_or(0.0));
    let lines = tipping_lines(&machine, stance);
    let bare = Masses::standing(&machine, found, boom, stance);
    let tipping = level_tipping_load(&bare, &lines[0], tool + offset(0.0));
    let loaded = bare.with(LoadOnBoom { mass, at: tool + offset(left) });
    let onset = onset(&loaded, &lines, descent);
    let soft = springs.map(|s| soft(&machine, stance, loaded, s));
    let result = StabilityResult {
        reach_m: tool.x + if hook { 0.0 } else { ahead } - machine.front_face(),
        lift_height_m: tool.z,
        level_tipping_load_kg: tipping,
        tilt_at_onset_deg: onset.map(|o| o.tilt.to_degrees()),
        tips_over: onset.map(|o| o.over),
        least_tilt_on_springs_deg: soft.map(|(tilt, _)| tilt.to_degrees()),
        forces_on_springs_n: soft.and_then(|(_, force)| force),
    };
    if said.json() {
        terminal::print_json(&result);
    } else {
        print(&result, said);
    }
    Ok(Outcome::Done)
}

pub(super) fn failure(input: &Input, said: Said) -> Failure {
    input.faults(said).unwrap_or_else(|| Failure::new(input.document.faults(), said))
}

/// Both stiffnesses or none.
fn springs(root: &jobfile::Reader<'_>) -> Option<Springs> {
    let [front, rear] = ["front_stiffness", "rear_stiffness"]
        .map(|key| root.decision_or_none(key, Dimension::Stiffness, Bound::Positive));
    for (key, here, other, there) in
        [("front_stiffness", front, "rear_stiffness", rear), ("rear_stiffness", rear, "front_stiffness", front)]
    {
        if here.is_some() && there.is_none() && !root.has(other) {
            root.fault(key, text::BOTH_STIFFNESSES.with("other", other), None);
        }
    }
    front.zip(rear).map(|(front, rear)| Springs { front, rear })
}

/// Least tilt (rad) over all lines until it tips on contacts that give, and their forces standing level.
fn soft(machine: &Machine, stance: Stance, masses: Masses, springs: Springs) -> (f64, Option<[f64; 4]>) {
    let loading = Loading { masses, gravity: LEVEL, wind: WindLoad::NONE };
    let tilt = tipping_lines(machine, stance).map(|l| tilt_reserve_on_springs(machine, stance, &loading, &l, springs));
    let force = match on_springs(machine, stance, &masses, LEVEL, springs, [0.0; 4]) {
        OnSprings::Stands { force, .. } => Some(force),
        OnSprings::Tips | OnSprings::CannotTell => None,
    };
    // A tilt that is not a number is not left out: then none is known.
    (tilt.into_iter().fold(f64::INFINITY, |least, t| if least.is_nan() || least < t { least } else { t }), force)
}

/// Levelling needs a machine that can, on its tyres, and so far.
fn can_level(root: &jobfile::Reader<'_>, machine: &Machine, levelled: Option<f64>) {
    match (levelled, machine.levelling) {
        (Some(_), None) => root.fault("levelled_on", text::NO_LEVELLING, None),
        (Some(by), Some(l)) if by.abs() > l.range.si() + 1e-9 => {
            root.fault("levelled_on", text::LEVELLED_OVER.with("range", l.range), None);
        }
        _ => {}
    }
}

pub(super) fn in_range(root: &jobfile::Reader<'_>, machine: &Machine, angle: f64, extension: f64, state: SupportState) {
    let b = &machine.boom;
    let slack = 1e-9;
    if angle < b.angle_min.si() - slack || angle > b.angle_max.si() + slack {
        let message = text::BOOM_RANGE
            .with("what", "boom_angle")
            .with("value", Quantity::new(angle, Dimension::Angle))
            .with("low", b.angle_min)
            .with("high", b.angle_max);
        root.fault("boom_angle", message, None);
    }
    if extension > b.extension_max.si() + slack {
        let message = text::BOOM_RANGE
            .with("what", "extension")
            .with("value", Quantity::new(extension, Dimension::Length))
            .with("low", Quantity::new(0.0, Dimension::Length))
            .with("high", b.extension_max);
        root.fault("extension", message, None);
    }
    if !machine.has(state) {
        root.fault("support", text::NO_SUCH_SUPPORT.with("support", planning::support_name(state)), None);
    }
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

pub(super) fn side(over: TipsOver) -> evidence::TextId {
    match over {
        TipsOver::Front => planning::text::SIDE_FRONT,
        TipsOver::Rear => planning::text::SIDE_REAR,
        TipsOver::Left => planning::text::SIDE_LEFT,
        TipsOver::Right => planning::text::SIDE_RIGHT,
    }
}
