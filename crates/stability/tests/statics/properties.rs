//! Properties that hold for any machine: monotony, mirror, units, agreement of two roads.

use crate::r1::r1;
use evidence::Silent;
use geometry::DVec3;
use machine::{BoomPosition, Machine, SupportState, kinematics};
use proptest::prelude::*;
use stability::wind::WindLoad;
use stability::{
    LEVEL, LoadOnBoom, Loading, Masses, RearAxleState, Stance, Support, TippingLine, TipsOver, gravity_for_slopes,
    level_tipping_load, load_factor, onset, reactions, restoring_moment, tilt_reserve, tipping_lines,
};

const STATES: [(SupportState, RearAxleState); 4] = [
    (SupportState::Tyres, RearAxleState::Free),
    (SupportState::Tyres, RearAxleState::Locked),
    (SupportState::Stabilizers, RearAxleState::Free),
    (SupportState::Stabilizers, RearAxleState::Locked),
];

fn loaded(machine: &Machine, angle: f64, extension: f64, mass: f64, left: f64) -> (Masses, LoadOnBoom) {
    let attachment = &machine.attachments[0];
    let boom = BoomPosition::level(angle.to_radians(), extension);
    let at = kinematics::tool_point(&machine.boom, attachment, boom) + DVec3::new(0.61, left, 0.5);
    (Masses::of(machine, attachment, boom), LoadOnBoom { mass, at })
}

proptest! {
    #[test]
    fn the_worst_direction_is_the_least_of_all_directions(
        angle in -3.0..70.0_f64, ext in 0.0..7.0_f64, mass in 0.0..2500.0_f64, left in -0.4..0.4_f64, k in 0usize..4,
    ) {
        let machine = r1();
        let (bare, load) = loaded(&machine, angle, ext, mass, left);
        let masses = bare.with(load);
        let lines = tipping_lines(&machine, Support { state: STATES[k].0, rear: STATES[k].1 });
        let loading = Loading { masses, gravity: LEVEL, wind: WindLoad::NONE };
        let closed = lines.iter().map(|l| tilt_reserve(&loading, l, &mut Silent)).fold(f64::INFINITY, f64::min);
        prop_assume!(closed > 0.0);
        let swept = (0..1440)
            .filter_map(|i| onset(&masses, &lines, (f64::from(i) * 0.25).to_radians()))
            .map(|o| o.tilt)
            .fold(f64::INFINITY, f64::min);
        // 0.25° steps miss the least by at most 1 − cos 0.125° of it.
        prop_assert!(swept >= closed - 1e-12 && swept <= closed * 1.00001 + 1e-9, "{closed} {swept}");
    }

    #[test]
    fn reserve_is_nothing_at_onset_and_moment_too(
        angle in -3.0..70.0_f64, ext in 0.0..7.0_f64, mass in 0.0..2500.0_f64, azimuth in 0.0..360.0_f64, k in 0usize..4,
    ) {
        let machine = r1();
        let (bare, load) = loaded(&machine, angle, ext, mass, 0.0);
        let masses = bare.with(load);
        let support = Support { state: STATES[k].0, rear: STATES[k].1 };
        let lines = tipping_lines(&machine, support);
        if let Some(o) = onset(&masses, &lines, azimuth.to_radians()) && o.tilt > 0.0 {
            let (s, c) = azimuth.to_radians().sin_cos();
            let gravity = DVec3::new(c * o.tilt.sin(), s * o.tilt.sin(), -o.tilt.cos());
            let loading = Loading { masses, gravity, wind: WindLoad::NONE };
            let of = |l: &&TippingLine| restoring_moment(&loading, l);
            let line = lines.iter().filter(|l| l.over == o.over).min_by(|a, b| of(a).total_cmp(&of(b))).unwrap();
            prop_assert!(restoring_moment(&loading, line).abs() < 1e-6 * masses.total() * 9.81);
            prop_assert!(tilt_reserve(&loading, line, &mut Silent).abs() < 1e-9);
        }
    }

    #[test]
    fn more_load_never_raises_the_load_factor_nor_the_forward_reserve(
        angle in -3.0..70.0_f64, ext in 0.0..7.0_f64, mass in 100.0..2500.0_f64, more in 1.0..500.0_f64,
    ) {
        let machine = r1();
        let lines = tipping_lines(&machine, Support { state: SupportState::Tyres, rear: RearAxleState::Free });
        let (bare, load) = loaded(&machine, angle, ext, mass, 0.0);
        let heavier = LoadOnBoom { mass: mass + more, ..load };
        let at_rest = Loading { masses: bare, gravity: LEVEL, wind: WindLoad::NONE };
        let factor = |l| load_factor(&at_rest, l, &lines, &mut Silent).map_or(f64::INFINITY, |f| f.0);
        prop_assert!(factor(heavier) <= factor(load));
        // Only loads beyond the front axle can tip it forward; nearer ones press it down.
        prop_assume!(load.at.x > 0.0);
        let reserve = |l: LoadOnBoom| {
            let loading = Loading { masses: bare.with(l), gravity: LEVEL, wind: WindLoad::NONE };
            tilt_reserve(&loading, &lines[0], &mut Silent)
        };
        prop_assert!(reserve(heavier) <= reserve(load) + 1e-12);
    }

    #[test]
    fn a_heavier_counterweight_never_lowers_the_forward_load(angle in -3.0..70.0_f64, ext in 0.0..7.0_f64, more in 0.0..900.0_f64) {
        let machine = r1();
        let mut heavier = r1();
        heavier.bodies[0].mass += quantity::kilograms(more);
        let support = Support { state: SupportState::Tyres, rear: RearAxleState::Free };
        let tipping = |m: &Machine| {
            let (bare, load) = loaded(m, angle, ext, 0.0, 0.0);
            level_tipping_load(&bare, &tipping_lines(m, support)[0], load.at)
        };
        if let (Some(a), Some(b)) = (tipping(&machine), tipping(&heavier)) {
            prop_assert!(b >= a - 1e-9);
        }
    }

    #[test]
    fn mirrored_load_and_slope_mirror_the_answer(
        angle in -3.0..70.0_f64, ext in 0.0..7.0_f64, mass in 0.0..2500.0_f64, left in -0.4..0.4_f64,
        along in -0.05..0.05_f64, across in -0.08..0.08_f64, k in 0usize..4,
    ) {
        let machine = r1();
        let support = Support { state: STATES[k].0, rear: STATES[k].1 };
        let lines = tipping_lines(&machine, support);
        let answer = |left: f64, across: f64| {
            let (bare, load) = loaded(&machine, angle, ext, mass, left);
            let masses = bare.with(load);
            let gravity = gravity_for_slopes(along, across);
            let loading = Loading { masses, gravity, wind: WindLoad::NONE };
            let of = |l: &TippingLine| tilt_reserve(&loading, l, &mut Silent);
            let tilt = |o| lines.iter().filter(|l| l.over == o).map(of).fold(f64::INFINITY, f64::min);
            (tilt(TipsOver::Left), tilt(TipsOver::Right), reactions(&machine, support, &masses, gravity))
        };
        let (a, b) = (answer(left, across), answer(-left, -across));
        prop_assert!((a.0 - b.1).abs() < 1e-9 && (a.1 - b.0).abs() < 1e-9);
        for (i, j) in [(0, 1), (1, 0), (2, 3), (3, 2)] {
            prop_assert!((a.2.force[i] - b.2.force[j]).abs() < 1e-5);
        }
    }

    #[test]
    fn reactions_carry_the_weight_and_its_moment(
        angle in -3.0..60.0_f64, ext in 0.0..3.0_f64, mass in 0.0..1500.0_f64, left in -0.3..0.3_f64, k in 0usize..4,
    ) {
        let machine = r1();
        let support = Support { state: STATES[k].0, rear: STATES[k].1 };
        let (bare, load) = loaded(&machine, angle, ext, mass, left);
        let masses = bare.with(load);
        let r = reactions(&machine, support, &masses, LEVEL);
        let weight = masses.total() * quantity::STANDARD_GRAVITY;
        prop_assert!((r.force.iter().sum::<f64>() - weight).abs() < 1e-6 * weight);
        if r.stands {
            let (fx, half) = if support.state == SupportState::Tyres { (0.0, 1.0) } else { (0.45, 1.2) };
            let places = [(fx, half), (fx, -half), (-3.0, 1.0), (-3.0, -1.0)];
            let mx: f64 = places.iter().zip(r.force).map(|(p, f)| p.0 * f).sum();
            let my: f64 = places.iter().zip(r.force).map(|(p, f)| p.1 * f).sum();
            let c = masses.centre();
            prop_assert!((mx - c.x * weight).abs() < 1e-5 * weight && (my - c.y * weight).abs() < 1e-5 * weight);
        }
    }

    #[test]
    fn axles_carry_what_the_whole_machine_asks_however_the_ground_falls(
        angle in -3.0..60.0_f64, ext in 0.0..3.0_f64, mass in 0.0..1500.0_f64, left in -0.3..0.3_f64,
        along in -0.2..0.2_f64, across in -0.2..0.2_f64, twist in -0.08..0.08_f64, k in 0usize..4,
    ) {
        let machine = r1();
        let stance = Stance { support: Support { state: STATES[k].0, rear: STATES[k].1 }, front_roll: 0.0, rear_roll: 0.0 };
        let twisted = Stance { rear_roll: twist, ..stance };
        let (bare, load) = loaded(&machine, angle, ext, mass, left);
        let masses = bare.with(load);
        let gravity = gravity_for_slopes(along, across);
        let fx = if STATES[k].0 == SupportState::Tyres { 0.0 } else { 0.45 };
        let weight = masses.total() * quantity::STANDARD_GRAVITY;
        // Moments about the rear wheels' line on the ground, forces along gravity; friction has no say.
        let centre = masses.centre();
        let front = weight * (centre.x - centre.z * gravity.x / gravity.z + 3.0) / (fx + 3.0);
        for stance in [stance, twisted] {
            let r = reactions(&machine, stance, &masses, gravity);
            if r.stands && stance.rear_roll == 0.0 {
                prop_assert!((r.force[0] + r.force[1] - front).abs() < 1e-6 * weight, "{:?} {front}", r.force);
            }
            prop_assert!(!r.stands || (r.force.iter().sum::<f64>() - weight).abs() < 1e-6 * weight);
        }
    }

    #[test]
    fn the_quick_bound_is_a_bound(
        angle in -3.0..70.0_f64, ext in 0.0..7.0_f64, mass in 0.0..9000.0_f64, gust in 0.0..60.0_f64, k in 0usize..4,
        soft in 2e5..5e6_f64,
    ) {
        let machine = r1();
        let support = Support { state: STATES[k].0, rear: STATES[k].1 };
        let lines = tipping_lines(&machine, support);
        let (bare, load) = loaded(&machine, angle, ext, mass, 0.2);
        let springs = stability::Springs { front: soft, rear: 7e5 };
        let part = stability::wind::Part::new(stability::text::PART_LOAD.message(), 3.0, 2.0, 1.8, load.at);
        let wind = WindLoad::of(gust, &[part], &mut Silent);
        let loading = Loading { masses: bare.with(load), gravity: gravity_for_slopes(0.03, -0.06), wind };
        for line in &lines {
            let soft = stability::LineOnSprings::of(&machine, support, line, springs);
            let overturning = loading.wind.overturning(line);
            let (tilt, least) = (soft.tilt(&loading), soft.sine_at_least(&loading, overturning));
            prop_assert!(soft.sine_at_very_least(&loading, overturning) <= least + 1e-12);
            prop_assert!(least <= tilt.sin() + 1e-9, "{:?} {least} {}", line.over, tilt.sin());
            prop_assert!(tilt <= tilt_reserve(&loading, line, &mut Silent), "tyres that give never help");
        }
    }

    #[test]
    fn wind_never_helps(angle in 0.0..70.0_f64, ext in 0.0..7.0_f64, gust in 0.0..20.0_f64, x in -2.0..8.0_f64, z in 0.5..12.0_f64) {
        let machine = r1();
        let (bare, load) = loaded(&machine, angle, ext, 800.0, 0.0);
        let lines = tipping_lines(&machine, Support { state: SupportState::Tyres, rear: RearAxleState::Free });
        let at = DVec3::new(x, 0.0, z);
        let part = stability::wind::Part::new(stability::text::PART_LOAD.message(), 2.0, 1.0, 1.8, at);
        let with = Loading { masses: bare.with(load), gravity: LEVEL, wind: WindLoad::of(gust, &[part], &mut Silent) };
        let without = Loading { wind: WindLoad::NONE, ..with };
        for line in &lines {
            prop_assert!(tilt_reserve(&with, line, &mut Silent) <= tilt_reserve(&without, line, &mut Silent) + 1e-12);
        }
    }
}

/// Boom down, load on the forks raises the lateral reserve: an unladen truck tips sideways sooner.
/// Boom up, the same load lowers it. Never count on the load to steady the machine.
#[test]
fn load_steadies_sideways_only_with_the_boom_down() {
    let machine = r1();
    let lines = tipping_lines(&machine, Support { state: SupportState::Tyres, rear: RearAxleState::Free });
    let reserve = |angle: f64, ext: f64, mass: f64| {
        let (bare, load) = loaded(&machine, angle, ext, mass, 0.0);
        let loading = Loading { masses: bare.with(load), gravity: LEVEL, wind: WindLoad::NONE };
        tilt_reserve(&loading, &lines[2], &mut Silent)
    };
    assert!(reserve(0.0, 0.0, 3000.0) > reserve(0.0, 0.0, 0.0));
    assert!(reserve(70.0, 7.0, 3000.0) < reserve(70.0, 7.0, 0.0));
}

/// A free rear axle hands the pull of its wheels, which acts at the ground, to the frame through a pin
/// that is higher: aslant down to the rear a machine that its rear wheels hold tips sooner, straight to a
/// side it does not, and never later.
#[test]
fn held_by_its_rear_wheels_it_tips_sooner_aslant_down_to_the_rear() {
    let machine = r1();
    let lines = tipping_lines(&machine, Support { state: SupportState::Tyres, rear: RearAxleState::Free });
    let (bare, load) = loaded(&machine, 60.0, 3.0, 3000.0, 0.0);
    let masses = bare.with(load);
    let tilt =
        |lines: &[TippingLine], azimuth: f64| onset(&masses, lines, azimuth.to_radians()).unwrap().tilt.to_degrees();
    // By hand: R1's 15,600 kg pulled at 0.7 m below the pin, about a line 1 in 3 aslant.
    for (azimuth, front, rear) in [(90.0, 14.6154, 14.6154), (110.0, 14.1690, 13.8201), (135.0, 16.1619, 15.2594)] {
        assert!((tilt(&lines[..4], azimuth) - front).abs() < 1e-3, "{azimuth}: {}", tilt(&lines[..4], azimuth));
        assert!((tilt(&lines[4..], azimuth) - rear).abs() < 1e-3, "{azimuth}: {}", tilt(&lines[4..], azimuth));
        assert!((tilt(&lines, azimuth) - rear).abs() < 1e-3);
    }
    // Locked, all of it acts on the ground.
    let locked = tipping_lines(&machine, Support { state: SupportState::Tyres, rear: RearAxleState::Locked });
    assert_eq!(locked[4..], locked[2..4]);
}
