//! Fork blades: published wear, moment and lever.

use evidence::Silent;
use geometry::DVec2;
use machine::forks::{BladeProblem, Look, Side, blade_problems, pair_capacity_kg, worn_capacity_share};
use machine::{Blade, Carriage, Extensions, Forks, Shank};
use proptest::prelude::*;
use quantity::{degrees, kilograms, metres};

pub(crate) fn blade(capacity: f64, now: f64) -> Blade {
    Blade {
        capacity: Some(kilograms(capacity)),
        load_centre: metres(0.6096),
        length: metres(1.2),
        thickness_new: Some(metres(0.050)),
        thickness_now: Some(metres(now)),
        modified: Some(false),
        angle: Some(degrees(90.0)),
        bent: Some(metres(0.0)),
        shank: Some(Shank { bent: metres(0.0), length: metres(0.5) }),
        crack: Some(false),
        lock: Some(true),
        proof_load: None,
    }
}

pub(crate) fn forks(left: Blade, right: Blade) -> Forks {
    Forks {
        heel: DVec2::ZERO,
        blades: [left, right],
        spread: 0.8,
        rated_load_centre: metres(0.6096),
        carriage: Some(Carriage::Fixed),
        extensions: None,
        tip_difference: Some(metres(0.0)),
        checked: Some("2027-01-10".into()),
    }
}

fn pair_kg(pair: &Forks, ahead: f64, left: f64) -> f64 {
    pair_capacity_kg(pair, ahead, left, &mut Silent).unwrap()
}

/// W33, trade inspection guidance quoting ISO 5057: 10 % wear takes 19 % of the strength (quoted as
/// 20 %), since bending capacity goes with the square of the thickness.
#[test]
fn val_ten_percent_wear_is_nineteen_percent_of_strength() {
    assert!((1.0 - worn_capacity_share(0.10) - 0.19).abs() < 1e-12);
    let at_limit = forks(blade(2000.0, 0.045), blade(2000.0, 0.050));
    assert!(
        matches!(blade_problems(&at_limit)[..], [BladeProblem::Worn(machine::forks::Side::Left, w)] if (w - 0.1).abs() < 1e-9)
    );
    assert!(blade_problems(&forks(blade(2000.0, 0.0451), blade(2000.0, 0.05))).is_empty());
}

#[test]
fn the_pair_carries_twice_the_lower_blade() {
    let pair = forks(blade(2000.0, 0.05), blade(1500.0, 0.05));
    assert!((pair_kg(&pair, 0.6096, 0.0) - 3000.0).abs() < 1e-9);
}

#[test]
fn beyond_the_load_centre_the_moment_stays_and_nearer_gives_no_credit() {
    let pair = forks(blade(2000.0, 0.05), blade(2000.0, 0.05));
    let at = |c: f64| pair_kg(&pair, c, 0.0);
    assert!((at(0.9144) - 4000.0 * 24.0 / 36.0).abs() < 1e-6, "36 in against 24 in");
    assert!((at(0.3) - 4000.0).abs() < 1e-9);
}

#[test]
fn the_worse_blade_takes_a_half_and_the_offset_over_the_spread() {
    let pair = forks(blade(2000.0, 0.05), blade(2000.0, 0.05));
    // 0.2 m off the middle of blades 0.8 m apart: three quarters on one blade.
    assert!((pair_kg(&pair, 0.5, 0.2) - 2000.0 / 0.75).abs() < 1e-9);
    assert!((pair_kg(&pair, 0.5, -0.2) - 2000.0 / 0.75).abs() < 1e-9);
}

#[test]
fn modified_and_unmeasured_blades_are_said() {
    let mut left = blade(2000.0, 0.05);
    left.modified = Some(true);
    let mut right = blade(2000.0, 0.05);
    right.thickness_now = None;
    right.modified = None;
    let problems = blade_problems(&forks(left, right));
    let [BladeProblem::Modified(Side::Left), BladeProblem::Unknown(decisive), BladeProblem::NotLookedAt(looks)] =
        &problems[..]
    else {
        panic!("{problems:?}")
    };
    assert_eq!((&decisive[..], &looks[..]), (&[Look::Wear][..], &[Look::Modified][..]));
}

#[test]
fn what_is_not_measured_is_told_at_once_and_wear_and_cracks_apart_from_the_rest() {
    assert_eq!(blade_problems(&forks(blade(2000.0, 0.05), blade(2000.0, 0.05))), []);
    let mut bare = blade(2000.0, 0.05);
    (bare.thickness_now, bare.modified, bare.angle, bare.bent) = (None, None, None, None);
    (bare.crack, bare.lock, bare.shank) = (None, None, None);
    let mut pair = forks(bare.clone(), bare);
    (pair.tip_difference, pair.checked) = (None, None);
    let problems = blade_problems(&pair);
    assert_eq!(problems.len(), 2, "{problems:?}");
    assert_eq!(problems[0], BladeProblem::Unknown(vec![Look::Wear, Look::Cracks]));
    assert!(matches!(&problems[1], BladeProblem::NotLookedAt(looks) if looks.len() == 7));
}

/// A blade beaten together is as wrong as one bent open.
#[test]
fn a_closed_angle_is_refused_as_an_open_one_is() {
    let at = |angle: f64| {
        let mut left = blade(2000.0, 0.05);
        left.angle = Some(degrees(angle));
        blade_problems(&forks(left, blade(2000.0, 0.05)))
    };
    assert!(at(87.0).is_empty() && at(93.0).is_empty());
    assert!(matches!(at(86.9)[..], [BladeProblem::Closed(Side::Left, a)] if (a.to_degrees() - 86.9).abs() < 1e-9));
    assert!(matches!(at(60.0)[..], [BladeProblem::Closed(..)]));
    assert!(matches!(at(93.1)[..], [BladeProblem::Opened(..)]));
}

/// 4 mm are 0.33 % of a blade of 1.2 m and 0.8 % of a shank of 0.5 m.
#[test]
fn a_shank_is_held_to_its_own_length() {
    let with = |blade_bent: f64, shank_bent: f64| {
        let mut right = blade(2000.0, 0.05);
        right.bent = Some(metres(blade_bent));
        right.shank = Some(Shank { bent: metres(shank_bent), length: metres(0.5) });
        blade_problems(&forks(blade(2000.0, 0.05), right))
    };
    assert!(with(0.004, 0.0025).is_empty());
    assert!(matches!(with(0.0, 0.004)[..], [BladeProblem::ShankBent(Side::Right, s)] if (s - 0.008).abs() < 1e-12));
    assert!(matches!(with(0.0, f64::NAN)[..], [BladeProblem::ShankBent(..)]));
}

#[test]
fn without_a_stamp_there_is_no_capacity_and_two_stamps_are_no_pair() {
    let mut blank = blade(2000.0, 0.05);
    blank.capacity = None;
    let pair = forks(blade(2000.0, 0.05), blank);
    assert_eq!(pair_capacity_kg(&pair, 0.5, 0.0, &mut Silent), None);
    assert_eq!(blade_problems(&pair), [BladeProblem::NoStamp(Side::Right)]);
    assert_eq!(blade_problems(&forks(blade(2000.0, 0.05), blade(1500.0, 0.05))), [BladeProblem::StampsDiffer]);
    let mut other = blade(2000.0, 0.05);
    other.load_centre = metres(0.5);
    assert_eq!(blade_problems(&forks(blade(2000.0, 0.05), other)), [BladeProblem::StampsDiffer]);
}

proptest! {
    #[test]
    fn a_worse_place_never_carries_more(
        ahead in 0.1..1.2_f64, more in 0.0..0.6_f64, left in -0.4..0.4_f64, off in 0.0..0.3_f64,
        capacity in 500.0..3000.0_f64, sleeves in 100.0..6000.0_f64,
    ) {
        let pair = forks(blade(2000.0, 0.05), blade(capacity, 0.05));
        let here = pair_kg(&pair, ahead, left);
        prop_assert!(pair_kg(&pair, ahead + more, left) <= here);
        prop_assert!(pair_kg(&pair, ahead, left + off * left.signum()) <= here);
        let mut longer = pair.clone();
        longer.extensions = Some(Extensions {
            length: metres(1.8), capacity: kilograms(sleeves), load_centre: metres(0.9), cover: 0.6, by: "test".into(),
        });
        prop_assert!(pair_kg(&longer, ahead, left) <= here.min(sleeves));
    }
}
