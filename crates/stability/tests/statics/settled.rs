//! How a machine comes to stand on uneven ground, and what holds and overturns it.

use crate::r1::r1;
use evidence::{Silent, Working};
use geometry::DVec3;
use machine::{BoomPosition, Machine, SupportState, kinematics};
use proptest::prelude::*;
use quantity::STANDARD_GRAVITY as G;
use stability::wind::WindLoad;
use stability::*;

const STATES: [Support; 3] = [
    Support { state: SupportState::Tyres, rear: RearAxleState::Free },
    Support { state: SupportState::Tyres, rear: RearAxleState::Locked },
    Support { state: SupportState::Stabilizers, rear: RearAxleState::Locked },
];

fn load(machine: &Machine, boom: BoomPosition, mass: f64, left: f64) -> LoadOnBoom {
    let tool = kinematics::tool_point(&machine.boom, &machine.attachments[0], boom);
    LoadOnBoom { mass, at: tool + DVec3::new(0.61, left, 0.5) }
}

/// Contacts of R1 with its rear axle turned, written out.
fn contacts(machine: &Machine, state: SupportState, rear_roll: f64) -> [DVec3; 4] {
    let [f, r] = machine.contacts(state);
    let (s, c) = rear_roll.sin_cos();
    let pin = machine.rear.pin_height;
    let turned = |y: f64| DVec3::new(r.x, y * c - pin * s, pin - y * s - pin * c);
    [DVec3::new(f.x, f.y, 0.0), DVec3::new(f.x, -f.y, 0.0), turned(r.y), turned(-r.y)]
}

/// Rolled left side down, then pitched nose down.
fn placed(p: DVec3, roll: f64, pitch: f64) -> DVec3 {
    let (s, c) = roll.sin_cos();
    let p = DVec3::new(p.x, p.y * c + p.z * s, p.z * c - p.y * s);
    let (s, c) = pitch.sin_cos();
    DVec3::new(p.x * c + p.z * s, p.y, p.z * c - p.x * s)
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(400))]

    /// Every contact that carries stands on its ground, the others above theirs, and forces balance.
    #[test]
    fn contacts_stand_on_their_ground_and_forces_balance(
        angle in -3.0..60.0_f64, ext in 0.0..4.0_f64, mass in 0.0..1500.0_f64, left in -0.3..0.3_f64,
        along in -0.06..0.06_f64, across in -0.06..0.06_f64,
        heights in prop::array::uniform4(-0.15..0.15_f64), lock in -0.1..0.1_f64, k in 0usize..3,
    ) {
        let machine = r1();
        let boom = BoomPosition::level(angle.to_radians(), ext);
        let locked = STATES[k].rear == RearAxleState::Locked;
        let stance = Stance { support: STATES[k], front_roll: 0.0, rear_roll: if locked { lock } else { 0.0 } };
        let load = load(&machine, boom, mass, left);
        let masses = |s| Masses::standing(&machine, &machine.attachments[0], boom, s).with(load);
        let ground = gravity_for_slopes(along, across);
        let rest = settled(&machine, stance, masses, ground, heights).unwrap();
        let at = contacts(&machine, STATES[k].state, rest.stance.rear_roll);
        let over: Vec<f64> = at.iter().zip(heights).map(|(p, h)| placed(*p, rest.roll, rest.pitch).z - h).collect();
        let carrying: Vec<usize> = (0..4).filter(|i| Some(*i) != rest.in_the_air).collect();
        for i in 0..4 {
            let gap = over[i] - over[carrying[0]];
            if carrying.contains(&i) { prop_assert!(gap.abs() < 2e-7, "{i} {over:?} {rest:?}") }
            else { prop_assert!(gap > -1e-9, "{i} {over:?} {rest:?}") }
        }
        // Gravity is the same vector.
        prop_assert!((placed(rest.gravity, rest.roll, rest.pitch) - ground).length() < 1e-12);
        prop_assume!(rest.reactions.stands);
        let m = masses(rest.stance);
        let (g, w) = (rest.gravity, m.total() * G);
        let sum: f64 = rest.reactions.force.iter().sum();
        prop_assert!((sum - w).abs() < 1e-6 * w);
        // About the weight's line: each force acts along gravity.
        let turning: DVec3 = at.iter().zip(rest.reactions.force).map(|(p, f)| (*p - m.centre()).cross(g) * f).sum();
        prop_assert!(turning.length() < 1e-5 * w, "{turning} {rest:?}");
    }

    /// On one plane it stands as without heights.
    #[test]
    fn level_heights_change_nothing(
        angle in -3.0..60.0_f64, ext in 0.0..4.0_f64, mass in 0.0..1500.0_f64,
        along in -0.1..0.1_f64, across in -0.1..0.1_f64, height in -1.0..1.0_f64, k in 0usize..3,
    ) {
        let machine = r1();
        let boom = BoomPosition::level(angle.to_radians(), ext);
        let load = load(&machine, boom, mass, 0.1);
        let masses = |s| Masses::standing(&machine, &machine.attachments[0], boom, s).with(load);
        let ground = gravity_for_slopes(along, across);
        let rest = settled(&machine, STATES[k].into(), masses, ground, [height; 4]).unwrap();
        let plain = reactions(&machine, STATES[k], &masses(STATES[k].into()), ground);
        prop_assert!(rest.reactions.stands == plain.stands && rest.in_the_air.is_none() && !rest.at_stop);
        for (a, b) in rest.reactions.force.iter().zip(plain.force) {
            prop_assert!((a - b).abs() < 1e-3, "{rest:?} {plain:?}");
        }
    }

    /// What holds less what overturns is the restoring moment.
    #[test]
    fn moments_of_the_parts_sum_to_the_restoring_moment(
        angle in -3.0..70.0_f64, ext in 0.0..7.0_f64, mass in 0.0..4000.0_f64, left in -0.5..0.5_f64,
        along in -0.2..0.2_f64, across in -0.2..0.2_f64, roll in -0.15..0.15_f64, k in 0usize..3,
    ) {
        let machine = r1();
        let boom = BoomPosition::level(angle.to_radians(), ext);
        let stance = Stance { support: STATES[k], front_roll: roll, rear_roll: -roll };
        let load = load(&machine, boom, mass, left);
        let attachment = &machine.attachments[0];
        let gravity = gravity_for_slopes(along, across);
        let masses = Masses::standing(&machine, attachment, boom, stance).with(load);
        let loading = Loading { masses, gravity, wind: WindLoad::NONE };
        let parts = Parts { machine: &machine, attachment, boom, stance, load };
        for line in tipping_lines(&machine, stance) {
            let m = moments(&parts, gravity, &line, &mut Silent);
            let whole = restoring_moment(&loading, &line);
            prop_assert!(m.restoring >= 0.0 && m.overturning >= 0.0);
            prop_assert!((m.restoring - m.overturning - whole).abs() < 1e-6 * (m.restoring + 1.0), "{m:?} {whole}");
            prop_assert_eq!(m.ratio() > 1.0, m.restoring > m.overturning);
        }
    }
}

#[test]
fn a_free_axle_lies_against_its_stop_and_then_lifts_a_wheel() {
    let machine = r1();
    let boom = BoomPosition::level(0.1, 0.0);
    let masses = |s| Masses::standing(&machine, &machine.attachments[0], boom, s);
    let rest = settled(&machine, STATES[0].into(), masses, LEVEL, [0.0, 0.0, 0.6, 0.0]).unwrap();
    assert!(rest.at_stop && rest.in_the_air.is_some(), "{rest:?}");
    assert!((rest.stance.rear_roll.to_degrees() + 10.0).abs() < 1e-9, "{rest:?}");
    let rest = settled(&machine, STATES[0].into(), masses, LEVEL, [0.0, 0.0, 0.3, 0.0]).unwrap();
    assert!(!rest.at_stop && rest.in_the_air.is_none(), "{rest:?}");
}

#[test]
fn what_is_no_number_is_not_told() {
    let machine = r1();
    let masses = |s| Masses::standing(&machine, &machine.attachments[0], BoomPosition::level(0.1, 0.0), s);
    for state in STATES {
        let ask = |g: DVec3, h: [f64; 4]| settled(&machine, state.into(), masses, g, h);
        assert!(ask(DVec3::NAN, [0.0; 4]).is_none());
        assert!(ask(LEVEL, [f64::NAN, 0.0, 0.0, 0.0]).is_none());
        assert!(ask(DVec3::Z, [0.0; 4]).is_none());
        assert!(ask(LEVEL, [9.0, 0.0, 0.0, 0.0]).is_none(), "steeper than upright");
    }
}

#[test]
fn the_working_has_weight_centre_and_forces() {
    let machine = r1();
    let masses = |s| Masses::standing(&machine, &machine.attachments[0], BoomPosition::level(0.1, 0.0), s);
    let rest = settled(&machine, STATES[0].into(), masses, LEVEL, [0.0; 4]).unwrap();
    let mut working = Working::default();
    rest.steps(&machine, &masses(rest.stance), &mut working);
    let forces: Vec<f64> = working.steps.iter().skip(3).map(|s| s.result.1.si).collect();
    assert_eq!(forces, rest.reactions.force);
    assert!((working.steps[0].result.1.si - forces.iter().sum::<f64>()).abs() < 1e-6);
}
