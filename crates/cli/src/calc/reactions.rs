//! `calc reactions`: force on each contact as the machine stands, on rigid contacts and on tyres that give.

use super::input::Input;
use super::reactions_print::print;
use super::stance_input::Ground;
use super::standing::{Asks, Standing, given, one_a_side, stiffnesses};
use crate::args::Said;
use crate::{Outcome, Run, terminal};
use evidence::{Silent, Working};
use geometry::DVec3;
use machine::SupportState;
use quantity::Si;
use serde::{Deserialize, Serialize};
use stability::{
    Masses, OnSprings, Parts, RearAxleState, Settled, Springs, Stance, Support, TippingLine, TipsOver, moments,
    on_springs, seen_turned, settled, tipping_lines,
};

pub(crate) const EXAMPLE: &str = r#"# Force on each wheel or pad as the machine stands, on rigid contacts and on
# tyres that give: which is light or in the air, roll and pitch, what holds and
# what overturns. No wind, nothing moves.
machine = "validation/machines/r1.toml"   # relative to this file
attachment = "forks"
boom_angle = "30°"
extension = "2.00 m"
fork_tilt = "0°"             # tilted back; may be left out: level
load = "2000 kg"             # 0 kg: unladen
load_ahead = "0.61 m"        # centre from the fork face; 0 for a hook
load_left = "0 m"
load_up = "0.50 m"           # centre above the forks; 0 for a hook
support = "tyres"            # "stabilizers" or "outriggers"
rear_axle = "free"           # may oscillate; or "locked"
slope_along = "0 %"          # ground rises ahead
slope_across = "0 %"         # ground falls to the left
# Ground over that plane under front left, front right, rear left, rear right:
# ground_heights = ["0 m", "0 m", "0.10 m", "0 m"]
# front_roll = "3°"          # front axle against the frame by levelling, left
#                              end down
# rear_roll = "2°"           # angle at which the rear axle is locked, left end
#                              down
# front_stiffness = "900 kN/m"  # of one tyre or pad, and rear_stiffness; left
# rear_stiffness = "900 kN/m"   # out: by tyre size and pressure
"#;

/// Less of the weight than this on a contact is light.
pub(super) const LIGHT: f64 = 0.05;

/// Answer of the calculation. SI; angles in degrees, as their names say.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, schemars::JsonSchema)]
pub(crate) struct ReactionsResult {
    /// Weight of machine and load, N.
    pub(crate) weight_n: f64,
    /// On rigid contacts.
    pub(crate) rigid: StandsOn,
    /// On tyres and pads that give.
    pub(crate) on_tyres: StandsOn,
    /// What holds and what overturns over each tipping line, rigid contacts; empty where that cannot be told.
    pub(crate) lines: Vec<LineMoments>,
    /// It stands on rigid contacts and on tyres that give, and what holds is more than what overturns over
    /// every line.
    pub(crate) stands: bool,
    /// The steps of the calculation: forces on rigid contacts, and the line with the least ratio.
    pub(crate) working: Working,
}

/// How it stands on one kind of contacts.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, schemars::JsonSchema)]
pub(crate) struct StandsOn {
    /// Whether it does.
    pub(crate) finding: Stands,
    /// Forces, where it stands: front left, front right, rear left, rear right.
    pub(crate) contacts: Vec<ContactForce>,
    /// Share of the weight on the rear axle, which steers; `null`: it does not stand, or stands on outriggers.
    pub(crate) steered_share: Option<f64>,
    /// Roll of the body against level, left side down, degrees.
    pub(crate) roll_deg: Option<f64>,
    /// Pitch of the body against level, nose down, degrees.
    pub(crate) pitch_deg: Option<f64>,
    /// Turn of the rear axle against the frame, left end down, degrees.
    pub(crate) rear_axle_turn_deg: Option<f64>,
    /// A rear axle that may oscillate lies against its stop.
    pub(crate) at_stop: bool,
}

/// Whether a machine stands.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, schemars::JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub(crate) enum Stands {
    /// It stands.
    #[serde(rename = "stands")]
    Holds,
    /// It tips: no position holds it.
    Tips,
    /// Nothing can be told.
    CannotTell,
}

/// A contact.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize, schemars::JsonSchema)]
pub(crate) struct ContactForce {
    /// Force along gravity on rigid contacts, square to the ground's plane on tyres that give, N.
    pub(crate) force_n: f64,
    /// Share of all contact forces.
    pub(crate) share: f64,
    /// What that means.
    pub(crate) carries: Carries,
}

/// How much a contact carries.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, schemars::JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub(crate) enum Carries {
    /// At least a twentieth of the weight.
    Enough,
    /// Less.
    Light,
    /// Nothing: it is in the air.
    InTheAir,
}

/// Moments about a tipping line.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize, schemars::JsonSchema)]
pub(crate) struct LineMoments {
    /// Which way it would go over.
    pub(crate) over: TipsOver,
    /// Of all parts that hold, N·m.
    pub(crate) restoring_nm: f64,
    /// Of all parts that overturn, N·m.
    pub(crate) overturning_nm: f64,
    /// Restoring over overturning: 1 at the onset; `null`: nothing overturns.
    pub(crate) ratio: Option<f64>,
}

pub(crate) fn run(input: &Input, said: Said) -> Run {
    let asks = Asks { ground: Ground::Uneven, ..Asks::default() };
    let (standing, springs) = given(input, said, asks, stiffnesses)?;
    let result = answer(&standing, springs.unwrap_or_else(|| standing.springs()));
    if said.json() {
        terminal::print_json(&result);
    } else {
        print(&result, &standing, said);
    }
    Ok(if result.stands { Outcome::Done } else { Outcome::Outside })
}

fn answer(s: &Standing, springs: Springs) -> ReactionsResult {
    let masses = |stance| Masses::standing(&s.machine, &s.attachment, s.boom, stance).with(s.load);
    let rest = settled(&s.machine, s.stance, masses, s.loading.gravity, s.heights);
    let mut working = Working::default();
    let lines = rest.as_ref().map_or_else(Vec::new, |rest| {
        rest.steps(&s.machine, &masses(rest.stance), &mut working);
        lines(s, rest, &mut working)
    });
    let holds = !lines.is_empty() && lines.iter().all(|l| l.restoring_nm > l.overturning_nm);
    let rigid = rest.map_or_else(|| StandsOn::without(Stands::CannotTell), |rest| on_rigid(s, &rest));
    let on_tyres = on_tyres(s, springs, masses);
    let stands = holds && rigid.finding == Stands::Holds && on_tyres.finding == Stands::Holds;
    let weight_n = s.loading.masses.total() * quantity::STANDARD_GRAVITY;
    ReactionsResult { weight_n, rigid, on_tyres, lines, stands, working }
}

/// Each way it goes over, the worse where there are two lines; the steps of the least ratio.
fn lines(s: &Standing, rest: &Settled, working: &mut Working) -> Vec<LineMoments> {
    let parts =
        Parts { machine: &s.machine, attachment: &s.attachment, boom: s.boom, stance: rest.stance, load: s.load };
    let one = |line: TippingLine| {
        let m = moments(&parts, rest.gravity, &line, &mut Silent);
        let ratio = Some(m.ratio()).filter(|r| r.is_finite());
        let found = LineMoments { over: line.over, restoring_nm: m.restoring, overturning_nm: m.overturning, ratio };
        (found, line)
    };
    let size = |l: &LineMoments| l.ratio.unwrap_or(f64::INFINITY);
    let worse = |a: (LineMoments, TippingLine), b: (LineMoments, TippingLine)| {
        let spare = |l: &LineMoments| l.restoring_nm - l.overturning_nm;
        let first = size(&a.0).total_cmp(&size(&b.0)).then(spare(&a.0).total_cmp(&spare(&b.0)));
        if first.is_le() { a } else { b }
    };
    let all = one_a_side(tipping_lines(&s.machine, rest.stance).map(one), worse);
    if let Some((_, line)) = all.iter().min_by(|a, b| size(&a.0).total_cmp(&size(&b.0))) {
        moments(&parts, rest.gravity, line, working);
    }
    all.into_iter().map(|(found, _)| found).collect()
}

fn on_rigid(s: &Standing, rest: &Settled) -> StandsOn {
    if !rest.reactions.stands {
        return StandsOn { at_stop: rest.at_stop, ..StandsOn::without(Stands::Tips) };
    }
    StandsOn::with(s, rest.reactions.force, rest.gravity, rest.stance.rear_roll, rest.at_stop)
}

fn on_tyres(s: &Standing, springs: Springs, masses: impl Fn(Stance) -> Masses) -> StandsOn {
    let ask = |stance: Stance| on_springs(&s.machine, stance, &masses(stance), s.loading.gravity, springs, s.heights);
    let mut stance = s.stance;
    let mut found = ask(stance);
    let most = s.machine.rear.oscillation.si();
    let mut at_stop = false;
    if let OnSprings::Stands { axle, .. } = found
        && axle.abs() > most + 1e-9
    {
        // It lies against its stop, as one locked there.
        at_stop = true;
        let support = Support { rear: RearAxleState::Locked, ..stance.support };
        stance = Stance { support, rear_roll: most.copysign(axle), ..stance };
        found = ask(stance);
    }
    match found {
        OnSprings::Stands { force, roll, pitch, axle } => {
            let gravity = seen_turned(s.loading.gravity, roll, pitch);
            StandsOn::with(s, force, gravity, stance.rear_roll + axle, at_stop)
        }
        OnSprings::Tips => StandsOn { at_stop, ..StandsOn::without(Stands::Tips) },
        OnSprings::CannotTell => StandsOn { at_stop, ..StandsOn::without(Stands::CannotTell) },
    }
}

impl StandsOn {
    fn without(finding: Stands) -> Self {
        Self {
            finding,
            contacts: Vec::new(),
            steered_share: None,
            roll_deg: None,
            pitch_deg: None,
            rear_axle_turn_deg: None,
            at_stop: false,
        }
    }

    /// Forces (N) and gravity as the body sees it.
    fn with(s: &Standing, force: [f64; 4], gravity: DVec3, turn: f64, at_stop: bool) -> Self {
        let all: f64 = force.iter().sum();
        let one = |force_n: f64| {
            let share = force_n / all;
            // A millionth of the weight is what the searches leave open.
            let carries = if share < 1e-6 {
                Carries::InTheAir
            } else if share < LIGHT {
                Carries::Light
            } else {
                Carries::Enough
            };
            ContactForce { force_n, share, carries }
        };
        let wheels = s.stance.support.state != SupportState::Outriggers;
        Self {
            finding: Stands::Holds,
            contacts: force.map(one).to_vec(),
            steered_share: wheels.then_some((force[2] + force[3]) / all),
            roll_deg: Some(libm::atan2(gravity.y, -gravity.z).to_degrees()),
            pitch_deg: Some(libm::atan2(gravity.x, -gravity.z).to_degrees()),
            rear_axle_turn_deg: wheels.then_some(turn.to_degrees()),
            at_stop,
        }
    }
}
