//! Inspection limits of fork blades against `../shared/reference/fork_inspection_limits.csv`, the
//! reference data folder beside the project; without it the test is left out, except where every
//! change is checked.

use crate::fork_limits::{blade, forks};
use machine::forks::{BladeProblem, YIELD_FACTOR, blade_problems, check_overdue, proof_factor, worn_capacity_share};
use machine::{Forks, Shank};
use quantity::{degrees, kilograms, metres};

fn rows() -> Option<Vec<(String, f64)>> {
    let file =
        std::path::Path::new(env!("CARGO_MANIFEST_DIR")).join("../../../shared/reference/fork_inspection_limits.csv");
    let Ok(table) = std::fs::read_to_string(file) else {
        assert!(std::env::var_os("CI").is_none(), "the reference data folder ../shared is absent");
        return None;
    };
    // The first field may be in quotes and hold a comma.
    let row = |line: &str| {
        let (item, rest) = match line.strip_prefix('"') {
            Some(quoted) => quoted.split_once("\",")?,
            None => line.split_once(',')?,
        };
        let limit = rest.split(',').next()?;
        // "any": already the least of it.
        Some((item.to_owned(), if limit == "any" { 0.0 } else { limit.parse().ok()? }))
    };
    Some(table.lines().skip(1).map(|line| row(line).unwrap_or_else(|| panic!("{line}"))).collect())
}

/// True if the blades, spoilt so, are out of service.
fn refused(spoil: impl FnOnce(&mut Forks)) -> bool {
    let mut pair = forks(blade(2000.0, 0.05), blade(2000.0, 0.05));
    spoil(&mut pair);
    !blade_problems(&pair).is_empty()
}

/// Share of a limit by which a case lies short of it or beyond it.
const STEP: f64 = 0.01;

#[test]
fn val_fork_inspection_limits_of_the_reference_table() {
    let Some(rows) = rows() else { return };
    assert_eq!(rows.len(), 9, "a reference row went missing");
    for (item, limit) in rows {
        // In service just short of the limit, out of service just beyond.
        let both = |case: &dyn Fn(f64) -> bool| {
            assert!(!case(limit * (1.0 - STEP)), "{item}: refused short of {limit}");
            assert!(case(limit * (1.0 + STEP)), "{item}: passed beyond {limit}");
        };
        match item.as_str() {
            "fork heel thickness" => {
                let case = |percent: f64| refused(|p| p.blades[1].thickness_now = Some(metres(0.05 * percent / 100.0)));
                assert!(case(limit * (1.0 - STEP)) && !case(limit * (1.0 + STEP)));
                assert!((worn_capacity_share(1.0 - limit / 100.0) - 0.81).abs() < 1e-12, "the row's own note");
            }
            "angle blade to shank" => both(&|deg| refused(|p| p.blades[0].angle = Some(degrees(deg)))),
            "height difference of the two blade tips" => {
                both(&|percent| refused(|p| p.tip_difference = Some(metres(1.2 * percent / 100.0))));
            }
            "straightness of blade or shank" => {
                both(&|percent| refused(|p| p.blades[1].bent = Some(metres(1.2 * percent / 100.0))));
                let shank = |percent: f64| Shank { bent: metres(0.5 * percent / 100.0), length: metres(0.5) };
                both(&|percent| refused(|p| p.blades[1].shank = Some(shank(percent))));
            }
            "interval" => {
                let months = limit as u32;
                assert_eq!(months, 12);
                assert!(!check_overdue("2026-04-12", "2027-04-12") && check_overdue("2026-04-12", "2027-04-13"));
                assert!(check_overdue("2027-04-13", "2027-04-12"), "a check of tomorrow is none");
                assert!(check_overdue("last year", "2027-04-12") && check_overdue("2027-04-12", ""));
            }
            "surface cracks" => {
                assert!(refused(|p| p.blades[0].crack = Some(true)) && !refused(|p| p.blades[0].crack = Some(false)));
            }
            "fork proof load, capacity to 5000 kg" => {
                assert_eq!((proof_factor(2000.0), proof_factor(5000.0)), (limit, limit));
                let case = |factor: f64| refused(|p| p.blades[0].proof_load = Some(kilograms(2000.0 * factor)));
                assert!(case(limit * (1.0 - STEP)) && !case(limit));
            }
            "fork proof load, capacity over 5000 kg" => assert_eq!(proof_factor(5001.0), limit),
            "fork design safety factor on yield" => {
                assert_eq!(YIELD_FACTOR, limit);
                assert!(proof_factor(1.0) < YIELD_FACTOR, "a proof load stays short of yield");
            }
            other => panic!("no test for the row {other}"),
        }
    }
}

#[test]
fn a_measured_value_that_is_no_number_is_refused() {
    let nan = f64::NAN;
    assert!(refused(|p| p.blades[0].angle = Some(degrees(nan))));
    assert!(refused(|p| p.tip_difference = Some(metres(nan))));
    assert!(refused(|p| p.blades[0].bent = Some(metres(nan))));
    assert!(refused(|p| p.blades[0].proof_load = Some(kilograms(nan))));
    assert!(matches!(blade_problems(&forks(blade(2000.0, nan), blade(2000.0, 0.05)))[..], [BladeProblem::Worn(..)]));
}
