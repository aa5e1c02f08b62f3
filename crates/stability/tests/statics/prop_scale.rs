//! Size and weight: a machine s times as large, s³ times as heavy, on springs s² times as stiff leans and
//! tips at the same angles and factors; so does one k times as heavy on springs k times as stiff.

use crate::any_machine::{Case, any_case, mapped, seeded};
use proptest::prelude::*;
use quantity::STANDARD_GRAVITY;
use stability::{OnSprings, load_factor, load_factor_on_springs, on_springs, reactions};

/// Lengths by `s`, masses by `m`, stiffness so that the springs give `s` times as much.
fn scaled(case: &Case, s: f64, m: f64) -> Case {
    let mut c = case.clone();
    c.machine = mapped(&case.machine, |v| v * s, |v| v * m);
    c.boom.extension *= s;
    c.load.at *= s;
    c.load.mass *= m;
    c.springs.front *= m / s;
    c.springs.rear *= m / s;
    c.heights = case.heights.map(|h| h * s);
    // Force of the wind by m: its area goes by s², its pressure by the square of the gust.
    c.gust *= (m / (s * s)).sqrt();
    for face in [&mut c.part.front, &mut c.part.side] {
        face.area *= s * s;
        face.at *= s;
    }
    c
}

fn same(a: &Case, b: &Case, m: f64) -> Result<(), TestCaseError> {
    let ((rigid, soft), (rigid_b, soft_b)) = (a.reserves(), b.reserves());
    for i in 0..6 {
        prop_assert!((rigid[i] - rigid_b[i]).abs() < 1e-9, "line {i}: {} {}", rigid[i], rigid_b[i]);
        prop_assert!((soft[i] - soft_b[i]).abs() < 1e-9, "line {i} on springs: {} {}", soft[i], soft_b[i]);
    }
    let factors = |c: &Case| {
        let at_rest = c.at_rest();
        let overturning = c.lines().map(|l| at_rest.wind.overturning(&l));
        let rigid = load_factor(&at_rest, c.load, &c.lines(), &mut evidence::Silent).map_or(1e9, |f| f.0);
        (rigid, load_factor_on_springs(&c.soft(), &overturning, &at_rest, c.load, 8.0).map_or(8.0, |f| f.0))
    };
    let ((r, s), (r_b, s_b)) = (factors(a), factors(b));
    prop_assert!((r - r_b).abs() <= 1e-9 * r.abs().max(1.0), "factor {r} {r_b}");
    prop_assert!((s - s_b).abs() <= 3e-4 * s.abs().max(1.0), "factor on springs {s} {s_b}");

    let (masses, masses_b) = (a.loading().masses, b.loading().masses);
    let weight = masses.total() * STANDARD_GRAVITY;
    let (f, f_b) =
        (reactions(&a.machine, a.stance, &masses, a.gravity), reactions(&b.machine, b.stance, &masses_b, b.gravity));
    prop_assert_eq!(f.stands, f_b.stands);
    for i in 0..4 {
        prop_assert!((f.force[i] - f_b.force[i] / m).abs() < 1e-8 * weight, "{:?} {:?}", f, f_b);
    }
    let on = |c: &Case, masses| on_springs(&c.machine, c.stance, masses, c.gravity, c.springs, c.heights);
    if let (
        OnSprings::Stands { force, roll, pitch, .. },
        OnSprings::Stands { force: force_b, roll: roll_b, pitch: pitch_b, .. },
    ) = (on(a, &masses), on(b, &masses_b))
    {
        prop_assert!(
            (roll - roll_b).abs() < 1e-6 && (pitch - pitch_b).abs() < 1e-6,
            "{roll} {roll_b} {pitch} {pitch_b}"
        );
        for i in 0..4 {
            prop_assert!((force[i] - force_b[i] / m).abs() < 1e-5 * weight, "{force:?} {force_b:?}");
        }
    }
    Ok(())
}

proptest! {
    #![proptest_config(seeded())]

    #[test]
    fn a_larger_machine_tips_at_the_same_angle(case in any_case(), s in 0.5..2.0_f64) {
        same(&case, &scaled(&case, s, s * s * s), s * s * s)?;
    }

    #[test]
    fn a_heavier_machine_on_harder_springs_tips_at_the_same_angle(case in any_case(), k in 0.3..3.0_f64) {
        same(&case, &scaled(&case, 1.0, k), k)?;
    }
}
