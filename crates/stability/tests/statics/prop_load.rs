//! More load: never a greater factor, never more reserve over a line that the load tips.

use crate::any_machine::{Case, any_case, seeded};
use crate::r1::r1;
use evidence::Silent;
use geometry::DVec3;
use machine::{BoomPosition, SupportState, kinematics};
use proptest::prelude::*;
use stability::wind::WindLoad;
use stability::{
    LEVEL, LineOnSprings, LoadOnBoom, Loading, Masses, RearAxleState, Springs, Support, load_factor,
    load_factor_on_springs, tilt_reserve, tipping_lines,
};

/// Factors of a case: on rigid contacts and on springs; infinite where no load, or ten times as much as
/// there is, does not tip it.
fn factors(case: &Case) -> (f64, f64) {
    let at_rest = case.at_rest();
    let lines = case.lines();
    let rigid = load_factor(&at_rest, case.load, &lines, &mut Silent).map_or(f64::INFINITY, |f| f.0);
    let overturning = lines.map(|l| at_rest.wind.overturning(&l));
    let soft = load_factor_on_springs(&case.soft(), &overturning, &at_rest, case.load, rigid.min(10.0));
    (rigid, soft.map_or(rigid, |f| f.0))
}

proptest! {
    #![proptest_config(seeded())]

    #[test]
    fn load_times_factor_is_the_tipping_load_whatever_the_load(case in any_case(), times in 1.0..3.0_f64) {
        let mut heavier = case.clone();
        heavier.load.mass *= times;
        let ((rigid, soft), (rigid_more, soft_more)) = (factors(&case), factors(&heavier));
        prop_assert!(rigid_more <= rigid || rigid <= 0.0);
        prop_assert!(soft <= rigid && soft_more <= rigid_more, "contacts that give never help");
        if rigid.is_finite() {
            prop_assert!((rigid_more * times - rigid).abs() <= 1e-12 * rigid.abs().max(1.0));
        }
        // The search on springs ends within 0.01 %.
        prop_assert!(soft_more <= soft * 1.0002, "{soft} {soft_more}");
        if soft < 10.0 && soft_more * times < 10.0 && soft > 0.0 {
            prop_assert!((soft_more * times / soft - 1.0).abs() < 3e-4, "{soft} {soft_more} {times}");
        }
    }

    #[test]
    fn more_load_never_raises_the_reserve_over_a_line_that_it_tips(case in any_case(), more in 1.0..2000.0_f64) {
        let mut heavier = case.clone();
        heavier.load.mass += more;
        let ((rigid, soft), (rigid_more, soft_more)) = (case.reserves(), heavier.reserves());
        let lines = case.lines();
        for (i, line) in lines.iter().enumerate() {
            // Beyond the line as the machine stands: all of them, the front one among them.
            let lever = line.along.cross(case.load.at - line.point) + DVec3::X * line.held;
            if case.gravity.dot(lever) >= 0.0 || rigid[i] <= 0.0 {
                continue;
            }
            prop_assert!(rigid_more[i] <= rigid[i] + 1e-12, "{:?} {} {}", line.over, rigid[i], rigid_more[i]);
            prop_assert!(soft_more[i] <= soft[i] + 1e-12, "{:?} {} {}", line.over, soft[i], soft_more[i]);
        }
    }
}

/// R1 with its boom down and in: reserve sideways, without and with 3000 kg on the forks, degrees.
fn sideways(springs: Option<Springs>) -> [f64; 2] {
    let machine = r1();
    let support = Support { state: SupportState::Tyres, rear: RearAxleState::Free };
    let attachment = &machine.attachments[0];
    let boom = BoomPosition::level(0.0, 0.0);
    let at = kinematics::tool_point(&machine.boom, attachment, boom) + DVec3::new(0.61, 0.0, 0.5);
    let lines = tipping_lines(&machine, support);
    [0.0, 3000.0].map(|mass| {
        let masses = Masses::of(&machine, attachment, boom).with(LoadOnBoom { mass, at });
        let loading = Loading { masses, gravity: LEVEL, wind: WindLoad::NONE };
        let of = |l: &_| match springs {
            None => tilt_reserve(&loading, l, &mut Silent),
            Some(s) => LineOnSprings::of(&machine, support, l, s).tilt(&loading),
        };
        lines[2..].iter().map(of).fold(f64::INFINITY, f64::min).to_degrees()
    })
}

/// The load ahead of the front axle moves the centre of gravity to where the triangle is wide.
#[test]
fn boom_down_3000_kg_raise_the_sideways_reserve_of_r1_from_33_to_37_degrees() {
    for (springs, [bare, loaded]) in [(None, [32.70, 37.48]), (Some(Springs { front: 1e6, rear: 7e5 }), [31.64, 35.99])]
    {
        let found = sideways(springs);
        assert!(
            (found[0] - bare).abs() < 0.01 && (found[1] - loaded).abs() < 0.01,
            "{springs:?}: {:.2}° without load, {:.2}° with 3000 kg; expected {bare}° and {loaded}°",
            found[0],
            found[1]
        );
        assert!(found[1] > found[0]);
    }
}
