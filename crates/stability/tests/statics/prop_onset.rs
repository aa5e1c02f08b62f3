//! The reserve is what the ground may still turn: turned by it the worst way, nothing is left.

use crate::any_machine::{Case, any_case, least, seeded};
use geometry::DVec3;
use proptest::prelude::*;
use quantity::STANDARD_GRAVITY;
use stability::wind::WindLoad;
use stability::{LEVEL, Loading, OnSprings, Springs, TippingLine, on_springs, onset, reactions, restoring_moment};

/// On its own tyres and pads, up to half as stiff again or a third softer.
fn on_its_own(mut case: Case) -> Case {
    let own = Springs::of(&case.machine, case.stance.support.state);
    let by = |random: f64| 0.67 + 0.83 * (random - 4e5) / 2.6e6;
    case.springs = Springs { front: own.front * by(case.springs.front), rear: own.rear * by(case.springs.rear) };
    calm(case)
}

fn calm(mut case: Case) -> Case {
    case.gust = 0.0;
    case
}

/// Gravity turned by `tilt` the worst way for a line: towards where its moment falls fastest.
///
/// The moment goes with `ĝ · a`: three probes tell `a`, without knowing how it is made.
fn turned(case: &Case, line: &TippingLine, tilt: f64) -> DVec3 {
    let moment = |gravity: DVec3| {
        restoring_moment(&Loading { masses: case.loading().masses, gravity, wind: WindLoad::NONE }, line)
    };
    let a = DVec3::new(moment(DVec3::X), moment(DVec3::Y), moment(DVec3::Z)).normalize();
    let g = case.gravity;
    let aside = (a - g * g.dot(a)).normalize();
    g * tilt.cos() - aside * tilt.sin()
}

proptest! {
    #![proptest_config(seeded())]

    #[test]
    fn turned_by_the_reserve_nothing_holds_and_a_contact_is_free(case in any_case().prop_map(calm)) {
        let (rigid, _) = case.reserves();
        let (worst, tilt) = least(&rigid);
        prop_assume!(tilt > 0.001);
        let lines = case.lines();
        let gravity = turned(&case, &lines[worst], tilt);
        let masses = case.loading().masses;
        let weight = masses.total() * STANDARD_GRAVITY;
        let left = |i: usize| restoring_moment(&Loading { masses, gravity, wind: WindLoad::NONE }, &lines[i]);
        prop_assert!(left(worst).abs() < 1e-9 * weight, "{}", left(worst));
        for i in 0..6 {
            prop_assert!(left(i) > -1e-9 * weight, "another line goes first: {i}");
        }
        let r = reactions(&case.machine, case.stance, &masses, gravity);
        let (_, smallest) = least(&r.force);
        let [a, b, c, d] = r.force;
        if case.is_free() && worst >= 2 {
            // Wheels that share the pull along the machine: between held by the front and by the rear.
            prop_assert!(smallest > -0.002 * weight, "{:?}", r.force);
            return Ok(());
        }
        // A free axle that carries nothing still hangs a little aside of its pin where it is rolled.
        let free = match worst {
            0 => c + d,
            1 => a + b,
            _ => smallest,
        };
        prop_assert!(free.abs() < 1e-4 * weight && smallest > -1e-3 * weight, "{:?}", r.force);
        // A little further, and it does not stand.
        let beyond = turned(&case, &lines[worst], tilt + 1e-4);
        prop_assert!(!reactions(&case.machine, case.stance, &masses, beyond).stands);
    }

    #[test]
    fn the_reserve_is_the_least_onset_of_all_directions(case in any_case().prop_map(calm)) {
        let case = Case { gravity: LEVEL, ..case };
        let (_, closed) = least(&case.reserves().0);
        prop_assume!(closed > 0.0);
        let (masses, lines) = (case.loading().masses, case.lines());
        let at = |azimuth: f64| onset(&masses, &lines, azimuth).map_or(f64::INFINITY, |o| o.tilt);
        let step = std::f64::consts::TAU / 720.0;
        let all: Vec<f64> = (0..720).map(|i| at(f64::from(i) * step)).collect();
        let (place, found) = least(&all);
        prop_assert!(closed <= found + 1e-12, "reserve {closed} above the onset {found}");
        // Nearer and nearer to the worst direction: by thirds.
        let (mut low, mut high) = ((place as f64 - 1.0) * step, (place as f64 + 1.0) * step);
        for _ in 0..60 {
            let third = (high - low) / 3.0;
            if at(low + third) < at(high - third) { high -= third } else { low += third }
        }
        prop_assert!((at(f64::midpoint(low, high)) - closed).abs() < 1e-9, "{closed} {}", at(low));
    }

    #[test]
    fn on_springs_it_stands_shortly_before_and_tips_shortly_beyond(case in any_case().prop_map(on_its_own)) {
        let ((rigid, soft), lines) = (case.reserves(), case.lines());
        let (worst, tilt) = least(&soft);
        let lean = rigid[worst] - tilt;
        let turn = case.soft()[worst].given(&case.loading()).1;
        // Drawn flat, contacts mean little far from level.
        prop_assume!(tilt > 0.02 && rigid[worst] < 0.4);
        let masses = case.loading().masses;
        let at = |tilt: f64| {
            on_springs(&case.machine, case.stance, &masses, turned(&case, &lines[worst], tilt), case.springs, case.ground())
        };
        let free = case.is_free();
        let before = at(tilt - BEFORE - if free && worst == 0 { LIGHT_AXLE } else { 0.0 });
        prop_assert!(matches!(before, OnSprings::Stands { .. }), "line {worst} {tilt} {lean}: {before:?}");
        let beyond = tilt + 0.5 * lean.max(turn) + BEYOND + if free && worst >= 2 { HELD } else { 0.0 };
        let after = at(beyond);
        prop_assert!(!matches!(after, OnSprings::Stands { .. }), "line {worst} {tilt} {lean}: {after:?}");
    }
}

/// 0.06°, rad.
const BEFORE: f64 = 0.001;
/// 0.35°: in the search a rear axle that carries nearly nothing holds sideways without limit, and rolls under
/// its pin a little before the machine goes over forward. A real one would slide.
const LIGHT_AXLE: f64 = 0.006;
/// 0.1° besides half of what the springs cost, or of the body's turn, part of which sinking gives back.
const BEYOND: f64 = 0.001_75;
/// Held by the rear wheels alone it goes over sooner than with the pull shared: by up to 1° or so.
const HELD: f64 = 0.025;
