//! Fork blades: published wear, moment and lever.

use evidence::Silent;
use geometry::DVec2;
use machine::forks::{BladeProblem, blade_problems, pair_capacity_kg, worn_capacity_share};
use machine::{Blade, Forks};
use quantity::{kilograms, metres};

fn blade(capacity: f64, now: f64) -> Blade {
    Blade {
        capacity: kilograms(capacity),
        load_centre: metres(0.6096),
        length: metres(1.2),
        thickness_new: Some(metres(0.050)),
        thickness_now: Some(metres(now)),
        modified: Some(false),
    }
}

fn forks(left: Blade, right: Blade) -> Forks {
    Forks { heel: DVec2::ZERO, blades: [left, right], spread: 0.8, rated_load_centre: metres(0.6096) }
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
    assert!((pair_capacity_kg(&pair, 0.6096, 0.0, &mut Silent) - 3000.0).abs() < 1e-9);
}

#[test]
fn beyond_the_load_centre_the_moment_stays_and_nearer_gives_no_credit() {
    let pair = forks(blade(2000.0, 0.05), blade(2000.0, 0.05));
    let at = |c: f64| pair_capacity_kg(&pair, c, 0.0, &mut Silent);
    assert!((at(0.9144) - 4000.0 * 24.0 / 36.0).abs() < 1e-6, "36 in against 24 in");
    assert!((at(0.3) - 4000.0).abs() < 1e-9);
}

#[test]
fn the_worse_blade_takes_a_half_and_the_offset_over_the_spread() {
    let pair = forks(blade(2000.0, 0.05), blade(2000.0, 0.05));
    // 0.2 m off the middle of blades 0.8 m apart: three quarters on one blade.
    assert!((pair_capacity_kg(&pair, 0.5, 0.2, &mut Silent) - 2000.0 / 0.75).abs() < 1e-9);
    assert!((pair_capacity_kg(&pair, 0.5, -0.2, &mut Silent) - 2000.0 / 0.75).abs() < 1e-9);
}

#[test]
fn modified_and_unmeasured_blades_are_said() {
    let mut left = blade(2000.0, 0.05);
    left.modified = Some(true);
    let mut right = blade(2000.0, 0.05);
    right.thickness_now = None;
    right.modified = None;
    let problems = blade_problems(&forks(left, right));
    assert_eq!(problems.len(), 3);
    assert!(matches!(problems[0], BladeProblem::Modified(_)));
    assert!(matches!(problems[1], BladeProblem::WearUnknown));
    assert!(matches!(problems[2], BladeProblem::ModifiedUnknown));
}
