//! Sudden events, the second opinion and sliding: properties, hand values, and impossible inputs.

use crate::r1::r1;
use evidence::Silent;
use geometry::DVec3;
use machine::{BoomPosition, Machine, SupportState, kinematics};
use proptest::prelude::*;
use quantity::STANDARD_GRAVITY as G;
use stability::wind::{Part, WindLoad};
use stability::*;

const STATES: [Support; 3] = [
    Support { state: SupportState::Tyres, rear: RearAxleState::Free },
    Support { state: SupportState::Tyres, rear: RearAxleState::Locked },
    Support { state: SupportState::Stabilizers, rear: RearAxleState::Locked },
];

/// R1 with a load, and wind on it.
fn standing(
    machine: &Machine,
    angle: f64,
    ext: f64,
    mass: f64,
    gust: f64,
    slopes: (f64, f64),
) -> (Loading, LoadOnBoom) {
    let boom = BoomPosition::level(angle.to_radians(), ext);
    let attachment = &machine.attachments[0];
    let at = kinematics::tool_point(&machine.boom, attachment, boom) + DVec3::new(0.61, 0.1, 0.5);
    let load = LoadOnBoom { mass, at };
    let part = Part::new(text::PART_LOAD.message(), 2.0, 1.2, 1.4, at);
    let loading = Loading {
        masses: Masses::of(machine, attachment, boom).with(load),
        gravity: gravity_for_slopes(slopes.0, slopes.1),
        wind: WindLoad::of(gust, &[part], &mut Silent),
    };
    (loading, load)
}

proptest! {
    #[test]
    fn force_angle_agrees_with_the_tilt_that_remains(
        angle in -3.0..70.0_f64, ext in 0.0..7.0_f64, mass in 0.0..4000.0_f64, gust in 0.0..25.0_f64,
        along in -0.3..0.3_f64, across in -0.3..0.3_f64, k in 0usize..3,
    ) {
        let machine = r1();
        let (loading, _) = standing(&machine, angle, ext, mass, gust, (along, across));
        for line in tipping_lines(&machine, STATES[k]) {
            let (tilt, second) = (tilt_reserve(&loading, &line, &mut Silent), force_angle(&loading, &line));
            prop_assume!(tilt.abs() > 1e-9);
            prop_assert_eq!(tilt > 0.0, second.angle > 0.0, "{} {}", tilt, second.angle);
            prop_assert_eq!(tilt > 0.0, second.measure > 0.0);
            // The tilt is the least turn of gravity in any direction: never more than about the line alone.
            if gust == 0.0 { prop_assert!(tilt.abs() <= second.angle.abs() + 1e-9); }
        }
    }

    #[test]
    fn force_angle_is_nothing_exactly_at_onset(
        angle in -3.0..70.0_f64, ext in 0.0..7.0_f64, mass in 0.0..2500.0_f64, azimuth in 0.0..360.0_f64, k in 0usize..3,
    ) {
        let machine = r1();
        let (loading, _) = standing(&machine, angle, ext, mass, 0.0, (0.0, 0.0));
        let lines = tipping_lines(&machine, STATES[k]);
        if let Some(o) = onset(&loading.masses, &lines, azimuth.to_radians()) && o.tilt > 0.0 {
            let (s, c) = azimuth.to_radians().sin_cos();
            let gravity = DVec3::new(c * o.tilt.sin(), s * o.tilt.sin(), -o.tilt.cos());
            let at_onset = Loading { gravity, ..loading };
            let angles = lines.iter().filter(|l| l.over == o.over).map(|l| force_angle(&at_onset, l).angle);
            prop_assert!(angles.fold(f64::INFINITY, f64::min).abs() < 1e-9);
        }
    }

    #[test]
    fn the_barrier_is_the_area_under_the_moment(
        angle in 0.0..60.0_f64, ext in 0.0..5.0_f64, mass in 0.0..1500.0_f64, gust in 0.0..15.0_f64,
        along in -0.05..0.05_f64, across in -0.05..0.05_f64, k in 0usize..3,
    ) {
        let machine = r1();
        let (loading, _) = standing(&machine, angle, ext, mass, gust, (along, across));
        for line in tipping_lines(&machine, STATES[k]) {
            let barrier = energy_to_tip(&loading, &line);
            if restoring_moment(&loading, &line) <= 0.0 {
                prop_assert!(barrier == 0.0);
                continue;
            }
            // Turned about the line in small steps, each with its moment; the wind's stays.
            let wind = loading.wind.overturning(&line);
            let (mut sum, step) = (0.0, 1e-4);
            for i in 0.. {
                let turned = step * (f64::from(i) + 0.5);
                let gravity = glam::DQuat::from_axis_angle(line.along, turned) * loading.gravity;
                let m = restoring_moment(&Loading { gravity, wind: WindLoad::NONE, ..loading }, &line) - wind;
                if m <= 0.0 { break; }
                sum += m * step;
            }
            prop_assert!((sum - barrier).abs() < 1e-3 * barrier + 5.0, "{sum} {barrier}");
        }
    }

    #[test]
    fn nothing_sudden_leaves_more_than_there_was(
        angle in -3.0..60.0_f64, ext in 0.0..5.0_f64, mass in 0.0..2000.0_f64, gust in 0.0..15.0_f64,
        drop in 0.0..0.4_f64, speed in 0.0..1.5_f64, time in 0.0..1.0_f64, k in 0usize..3,
    ) {
        let machine = r1();
        let (loading, load) = standing(&machine, angle, ext, mass, gust, (0.02, -0.03));
        let boom = BoomPosition::level(angle.to_radians(), ext);
        let moving = lowered(&machine, &machine.attachments[0], boom, Some(load));
        let lines = tipping_lines(&machine, STATES[k]);
        let deeper = worst_wheel_drop(&machine, STATES[k], &loading, drop + 0.05);
        for (i, s) in worst_wheel_drop(&machine, STATES[k], &loading, drop).iter().enumerate() {
            prop_assert!(s.reserve <= 1.0 + 1e-9 && deeper[i].reserve <= s.reserve + 1e-9, "{s:?} {:?}", deeper[i]);
        }
        let still = worst_wheel_drop(&machine, STATES[k], &loading, 0.0);
        for (i, line) in lines.iter().enumerate() {
            let there = tilt_reserve(&loading, line, &mut Silent) > 0.0;
            prop_assert!((still[i].reserve - if there { 1.0 } else { -1.0 }).abs() < 1e-6, "{:?}", still[i]);
            let front = stop_of_lowering(&loading, moving, speed, time, &lines[0]);
            prop_assert!(front.reserve <= 1.0 + 1e-9);
            let sooner = stop_of_lowering(&loading, moving, speed, time / 2.0, &lines[0]);
            prop_assert!(sooner.reserve <= front.reserve + 1e-12, "sooner is worse: {sooner:?} {front:?}");
        }
    }

    #[test]
    fn below_the_trip_speed_of_energy_nothing_tips_and_it_is_the_lesser(
        angle in -3.0..60.0_f64, ext in 0.0..5.0_f64, mass in 0.0..2000.0_f64, k in 0usize..3,
    ) {
        let machine = r1();
        let (loading, load) = standing(&machine, angle, ext, mass, 0.0, (0.0, 0.0));
        let boom = BoomPosition::level(angle.to_radians(), ext);
        let stance = Stance::from(STATES[k]);
        for line in tipping_lines(&machine, stance) {
            let inertia = inertia_at_least(&machine, &machine.attachments[0], boom, stance, Some(load), &line);
            let trip = trip_speed(&loading, &line, inertia);
            prop_assert!(trip.energy <= trip.impact * (1.0 + 1e-9), "{trip:?}");
            // Bodies as points about the line weigh at least as much as one point at their centre.
            let (m, moment) = loading.masses.counted(line.with_rear_axle);
            let d = line.along.cross(moment / m - line.point).length();
            prop_assert!(inertia >= m * d * d * (1.0 - 1e-12));
        }
    }
}

/// A block of 2 m × 2 m base, centre 1 m up, at rest on level ground: by hand.
#[test]
fn a_block_by_hand() {
    let mut machine = r1();
    machine.rear.axle.x = -2.0;
    let support = STATES[1];
    let masses = Masses { sprung: 1000.0, sprung_moment: DVec3::new(-1.0, 0.0, 1.0) * 1000.0, ..Masses::default() };
    let loading = Loading { masses, gravity: LEVEL, wind: WindLoad::NONE };
    let lines = tipping_lines(&machine, support);
    let rise = 2.0_f64.sqrt() - 1.0;
    for line in &lines {
        assert!((energy_to_tip(&loading, line) - 1000.0 * G * rise).abs() < 1e-6);
        let trip = trip_speed(&loading, line, 2000.0);
        assert!((trip.energy - (2.0 * G * rise).sqrt()).abs() < 1e-9);
        // Critical sliding velocity √(2 g I_o (R − h) / (m h²)).
        assert!((trip.impact - (2.0 * G * 2.0 * rise).sqrt()).abs() < 1e-9);
    }
    // Both left wheels drop by 0.2 m: 0.1 rad static, twice that taken from 45°; the crest sinks by 0.2 m.
    let s = wheel_drop(&machine, support, &loading, [0.2, 0.0, 0.2, 0.0])[2];
    assert!((s.tilt - (std::f64::consts::FRAC_PI_4 - 0.2)).abs() < 1e-9, "{s:?}");
    assert!((s.energy - 1000.0 * G * (rise - 0.2)).abs() < 1e-6);
    assert_eq!(s.criterion, Criterion::Energy);
    assert!((s.reserve - (rise - 0.2) / rise).abs() < 1e-9);
    // Slides at 0.5, tips at 1.
    let on_slope = Loading { gravity: gravity_for_slopes(0.0, 0.4), ..loading };
    let s = sliding(&on_slope, &lines, 0.5).unwrap();
    assert!((s.needed - 0.4).abs() < 1e-12 && (s.at_tipping - 1.0).abs() < 1e-9 && !s.slides);
    assert_eq!((s.first, sliding(&on_slope, &lines, 1.1).unwrap().first), (First::Slides, First::Tips));
}

/// A load on forks at 0.5 g: 0.5 level; tilted back by 10° the slope holds some of it.
#[test]
fn a_load_on_forks_by_hand() {
    let braking = DVec3::new(0.5, 0.0, -1.0);
    assert!((friction_for_load(braking, 0.0) - 0.5).abs() < 1e-12);
    let tilted = (0.5_f64.atan() - 10.0_f64.to_radians()).tan();
    assert!((friction_for_load(braking, 10.0_f64.to_radians()) - tilted).abs() < 1e-12);
    // Pulled back onto the backrest only what goes sideways counts.
    assert!((friction_for_load(DVec3::new(-0.5, 0.2, -1.0), 0.0) - 0.2).abs() < 1e-12);
    assert!(friction_for_load(DVec3::Z, 0.0).is_infinite());
}

#[test]
fn impossible_inputs_are_never_a_number_that_passes() {
    let machine = r1();
    let (loading, load) = standing(&machine, 10.0, 0.0, 1000.0, 5.0, (0.0, 0.0));
    let lines = tipping_lines(&machine, STATES[0]);
    let tilt = |a: Acceleration| tilt_reserve(&moving(&loading, a).loading, &lines[0], &mut Silent);
    for bad in [-1.0, f64::NAN] {
        assert!(tilt(Acceleration::braking(Travel::Ahead, bad)).is_nan());
        assert!(tilt(Acceleration::starting(Travel::Back, bad)).is_nan());
        assert!(tilt(Acceleration::turning(Turn::Left, bad, 10.0)).is_nan());
        assert!(tilt(Acceleration::turning(Turn::Left, 2.0, bad)).is_nan());
        assert!(worst_wheel_drop(&machine, STATES[0], &loading, bad).iter().all(|s| s.reserve.is_nan()));
        assert!(stop_of_lowering(&loading, (500.0, DVec3::X), bad, 0.1, &lines[0]).reserve.is_nan());
        assert!(stop_of_lowering(&loading, (500.0, DVec3::X), 0.5, bad, &lines[0]).reserve.is_nan());
        assert!(load_dropped(&loading, LoadOnBoom { mass: bad, ..load }, 0.1, &lines[1]).reserve.is_nan());
        assert!(load_dropped(&loading, load, bad, &lines[1]).reserve.is_nan());
        assert!(trip_speed(&loading, &lines[0], bad).energy.is_nan());
        assert!(sliding(&loading, &lines, bad).is_none());
        assert!(stopping_distance(bad, 1.0, 0.5, 0.0).is_nan());
        assert!(stopping_distance(1.0, bad, 0.5, 0.0).is_nan());
        assert!(stopping_distance(1.0, 1.0, bad, 0.0).is_nan());
    }
    assert!(tilt(Acceleration::turning(Turn::Left, 2.0, 0.0)).is_nan());
    // A grade as steep as the brakes hold has no stop.
    assert!(stopping_distance(1.0, 1.0, 0.3, -0.3).is_infinite());
}

/// The load off a raised boom: R1 backward.
#[test]
fn a_dropped_load_swings_back_over_the_rear() {
    let machine = r1();
    let (loading, load) = standing(&machine, 65.0, 0.0, 2500.0, 0.0, (0.1, 0.0));
    let rear = tipping_lines(&machine, STATES[1])[1];
    let s = load_dropped(&loading, load, 0.2, &rear);
    let without = Loading { masses: loading.masses.pressing(2500.0, load.at * 2500.0, -1.0), ..loading };
    let slow = tilt_reserve(&without, &rear, &mut Silent);
    assert!(s.tilt < slow && s.reserve < 1.0, "{s:?} {slow}");
    assert!((s.energy - (energy_to_tip(&without, &rear) - 0.5 * 2500.0 * G * 0.2)).abs() < 1e-6);
}

proptest! {
    /// Contacts that give never leave more than rigid ones: energy, the speed at a kerb, a wheel that drops.
    #[test]
    fn what_is_sudden_is_never_more_hopeful_on_tyres(
        angle in -3.0..70.0_f64, ext in 0.0..7.0_f64, mass in 0.0..3000.0_f64, gust in 0.0..20.0_f64,
        along in -0.2..0.2_f64, across in -0.2..0.2_f64, drop in 0.0..0.4_f64, stiff in 2e5..1e8_f64, k in 0usize..3,
    ) {
        let machine = r1();
        let (loading, _) = standing(&machine, angle, ext, mass, gust, (along, across));
        let springs = Springs { front: stiff, rear: stiff * 0.8 };
        let lines = tipping_lines(&machine, STATES[k]);
        for line in lines {
            let soft = LineOnSprings::of(&machine, STATES[k], &line, springs);
            let (on, rigid) = (soft.energy_to_tip(&loading), energy_to_tip(&loading, &line));
            prop_assert!(on >= 0.0 && on <= rigid * (1.0 + 1e-9) + 1e-6, "{on} {rigid}");
            let (on, rigid) =
                (trip_speed_on_springs(&loading, &soft, 1e4), trip_speed(&loading, &line, 1e4));
            prop_assert!(on.energy <= rigid.energy * (1.0 + 1e-9) + 1e-6 && on.impact <= rigid.impact * (1.0 + 1e-9) + 1e-6);
        }
        let on = worst_wheel_drop_on_springs(&machine, STATES[k], &loading, drop, springs);
        let rigid = worst_wheel_drop(&machine, STATES[k], &loading, drop);
        for (on, rigid) in on.iter().zip(&rigid) {
            prop_assert!(on.reserve <= rigid.reserve + 1e-9, "{on:?} {rigid:?}");
        }
    }
}

/// On contacts as hard as rock what is sudden leaves what it leaves on rigid ones.
#[test]
fn hard_tyres_leave_what_rigid_contacts_leave() {
    let machine = r1();
    let (loading, _) = standing(&machine, 30.0, 2.0, 1500.0, 0.0, (0.02, 0.03));
    let springs = Springs { front: 1e12, rear: 1e12 };
    for state in STATES {
        let on = worst_wheel_drop_on_springs(&machine, state, &loading, 0.1, springs);
        for (on, rigid) in on.iter().zip(worst_wheel_drop(&machine, state, &loading, 0.1)) {
            assert!((on.reserve - rigid.reserve).abs() < 1e-4, "{on:?} {rigid:?}");
        }
        for line in tipping_lines(&machine, state) {
            let soft = LineOnSprings::of(&machine, state, &line, springs);
            let (on, rigid) = (soft.energy_to_tip(&loading), energy_to_tip(&loading, &line));
            assert!(on <= rigid + 1e-6 && on > 0.9999 * rigid, "{on} {rigid}");
        }
    }
}

/// The working ends with the numbers that are answered.
#[test]
fn the_working_of_driving_ends_with_what_is_answered() {
    let machine = r1();
    let (loading, _) = standing(&machine, 5.0, 0.0, 2000.0, 0.0, (-0.05, 0.03));
    let springs = Springs { front: 9e5, rear: 9e5 };
    let line = LineOnSprings::of(&machine, STATES[0], &tipping_lines(&machine, STATES[0])[0], springs);
    let last = |w: &evidence::Working| w.steps.last().unwrap().result.1.si;
    let mut w = evidence::Working::default();
    line.tilt_steps(&loading, &mut w);
    assert_eq!(last(&w), line.tilt(&loading));
    let trip = trip_speed_on_springs(&loading, &line, 1e4);
    trip_steps(&loading, &line, trip, &mut w);
    assert_eq!(last(&w), trip.energy);
    let drop = worst_wheel_drop_on_springs(&machine, STATES[0], &loading, 0.1, springs)[0];
    drop_steps(&loading, &line, 0.1, &drop, &mut w);
    assert_eq!(last(&w), drop.energy);
    stopping_step(3.0, 2.5, 0.3, -0.05, &mut w);
    assert!((last(&w) - stopping_distance(3.0, 2.5, 0.3, -0.05)).abs() < 1e-12);
    turning_step(3.0, 6.0, &mut w);
    assert!((last(&w) - Acceleration::turning(Turn::Left, 3.0, 6.0).left / G).abs() < 1e-12);
    moving_steps(&loading, Acceleration::braking(Travel::Ahead, 4.0), &mut w);
    let heavier = moving(&loading, Acceleration::braking(Travel::Ahead, 4.0 * SUDDEN)).heavier;
    assert_eq!(last(&w), heavier);
}
