//! Left and right: mirroring machine, load, ground and attitude swaps the answers.

use crate::any_machine::{Case, any_case, seeded};
use geometry::DVec3;
use proptest::prelude::*;
use stability::{OnSprings, TipsOver, load_factor, on_springs, reactions};

const FLIP: DVec3 = DVec3::new(1.0, -1.0, 1.0);

fn mirrored(case: &Case) -> Case {
    let mut m = case.clone();
    for body in &mut m.machine.bodies {
        body.centre *= FLIP;
    }
    m.load.at *= FLIP;
    m.gravity *= FLIP;
    m.stance.front_roll *= -1.0;
    m.stance.rear_roll *= -1.0;
    let [a, b, c, d] = case.heights;
    m.heights = [b, a, d, c];
    for face in [&mut m.part.front, &mut m.part.side] {
        face.at *= FLIP;
    }
    m
}

fn flipped(over: TipsOver) -> TipsOver {
    match over {
        TipsOver::Left => TipsOver::Right,
        TipsOver::Right => TipsOver::Left,
        ahead => ahead,
    }
}

/// Front, rear, right, left, right held, left held.
const LINES: [usize; 6] = [0, 1, 3, 2, 5, 4];
const CONTACTS: [usize; 4] = [1, 0, 3, 2];

proptest! {
    #![proptest_config(seeded())]

    #[test]
    fn a_mirrored_case_has_mirrored_answers(case in any_case()) {
        let other = mirrored(&case);
        let ((rigid, soft), (rigid_m, soft_m)) = (case.reserves(), other.reserves());
        for (i, k) in LINES.into_iter().enumerate() {
            prop_assert!((rigid[i] - rigid_m[k]).abs() < 1e-12, "line {i}: {} {}", rigid[i], rigid_m[k]);
            prop_assert!((soft[i] - soft_m[k]).abs() < 1e-12, "line {i} on springs: {} {}", soft[i], soft_m[k]);
        }
        let factor = |c: &Case| load_factor(&c.at_rest(), c.load, &c.lines(), &mut evidence::Silent);
        match (factor(&case), factor(&other)) {
            (None, None) => {}
            (Some((a, _)), Some((b, _))) => prop_assert!((a - b).abs() <= 1e-11 * a.abs().max(1.0), "{a} {b}"),
            (a, b) => return Err(TestCaseError::fail(format!("{a:?} {b:?}"))),
        }
        // Over which line it goes is told only where one is clearly the first.
        if let (Some((_, a)), Some((_, b))) = (factor(&case), factor(&other)) && case.load.at.y.abs() > 0.01 {
            prop_assert!(flipped(a) == b || (a == b && flipped(a) != a && rigid_sides_are_alike(&case)));
        }
    }

    #[test]
    fn mirrored_wheels_carry_the_same(case in any_case()) {
        let other = mirrored(&case);
        let (masses, masses_m) = (case.loading().masses, other.loading().masses);
        let weight = masses.total() * quantity::STANDARD_GRAVITY;
        let a = reactions(&case.machine, case.stance, &masses, case.gravity);
        let b = reactions(&other.machine, other.stance, &masses_m, other.gravity);
        prop_assert_eq!(a.stands, b.stands);
        for (i, k) in CONTACTS.into_iter().enumerate() {
            prop_assert!((a.force[i] - b.force[k]).abs() < 1e-9 * weight, "{:?} {:?}", a.force, b.force);
        }
        let on = |c: &Case, m| on_springs(&c.machine, c.stance, m, c.gravity, c.springs, c.heights);
        match (on(&case, &masses), on(&other, &masses_m)) {
            (
                OnSprings::Stands { force, roll, pitch, .. },
                OnSprings::Stands { force: other, roll: roll_m, pitch: pitch_m, .. },
            ) => {
                prop_assert!((roll + roll_m).abs() < 1e-7 && (pitch - pitch_m).abs() < 1e-7);
                for (i, k) in CONTACTS.into_iter().enumerate() {
                    prop_assert!((force[i] - other[k]).abs() < 1e-5 * weight, "{force:?} {other:?}");
                }
            }
            (OnSprings::Tips, OnSprings::Tips) | (OnSprings::CannotTell, OnSprings::CannotTell) => {}
            (a, b) => return Err(TestCaseError::fail(format!("{a:?} {b:?}"))),
        }
    }
}

/// True where the load tips left and right at nearly the same factor, so that either may be said.
fn rigid_sides_are_alike(case: &Case) -> bool {
    let side = |over| {
        let lines: Vec<_> = case.lines().into_iter().filter(|l| l.over == over).collect();
        load_factor(&case.at_rest(), case.load, &lines, &mut evidence::Silent).map_or(f64::INFINITY, |f| f.0)
    };
    let (left, right) = (side(TipsOver::Left), side(TipsOver::Right));
    (left - right).abs() < 1e-9 * left.abs()
}
