//! Against a published solver on random programmes, and by hand.
#![allow(clippy::unwrap_used, clippy::panic, reason = "tests")]

use super::{Least, Row, dot, minimise};
use microlp::{ComparisonOp, OptimizationDirection, Problem};
use proptest::prelude::*;

fn row(of: &[f64], low: f64, high: f64) -> Row {
    Row { of: of.to_vec(), low, high }
}

#[test]
fn a_corner_by_hand() {
    // x + 2y ≥ 4, 3x + y ≥ 6: least of x + y is at (1.6, 1.2).
    let rows = [row(&[1.0, 2.0], 4.0, f64::INFINITY), row(&[3.0, 1.0], 6.0, f64::INFINITY)];
    let Least::Found { bound, on_caps, at } = minimise(&rows, &[100.0; 2], &[1.0, 1.0]) else { panic!() };
    assert!((bound - 2.8).abs() < 1e-12 && !on_caps);
    assert!((at[0] - 1.6).abs() < 1e-12 && (at[1] - 1.2).abs() < 1e-12);
    // Nothing holds x and y from above but their caps.
    let Least::Found { bound, on_caps, .. } = minimise(&rows, &[100.0; 2], &[-1.0, -1.0]) else { panic!() };
    assert!(on_caps && (bound + 200.0).abs() < 1e-9);
}

#[test]
fn contradictions_and_numbers_that_are_none() {
    let rows = [row(&[1.0, 1.0], 5.0, 6.0), row(&[1.0, 1.0], 7.0, 8.0)];
    assert_eq!(minimise(&rows, &[10.0; 2], &[1.0, 0.0]), Least::Contradiction);
    assert_eq!(minimise(&[row(&[1.0], 2.0, 1.0)], &[10.0], &[1.0]), Least::Contradiction);
    assert_eq!(minimise(&[row(&[f64::NAN], 1.0, 2.0)], &[10.0], &[1.0]), Least::CannotTell);
    assert_eq!(minimise(&[row(&[1.0, 1.0], 1.0, 2.0)], &[10.0], &[1.0]), Least::CannotTell);
    assert!(matches!(minimise(&[], &[10.0], &[-2.0]), Least::Found { on_caps: true, .. }));
}

fn programme() -> impl Strategy<Value = (Vec<Row>, Vec<f64>)> {
    (1usize..9, 1usize..13).prop_flat_map(|(n, m)| {
        let factor = prop_oneof![2 => -5.0..5.0_f64, 1 => Just(0.0), 1 => (-3i32..4).prop_map(f64::from)];
        let one = (prop::collection::vec(factor.clone(), n), -8.0..8.0_f64, 0usize..4, 0.0..6.0_f64).prop_map(
            |(of, at, kind, wide)| {
                let (low, high) = match kind {
                    0 => (at, at),
                    1 => (at, at + wide),
                    2 => (f64::NEG_INFINITY, at),
                    _ => (at, f64::INFINITY),
                };
                Row { of, low, high }
            },
        );
        (prop::collection::vec(one, m), prop::collection::vec(factor, n))
    })
}

/// The same by the library.
fn by_library(rows: &[Row], cap: f64, cost: &[f64]) -> Option<f64> {
    let mut problem = Problem::new(OptimizationDirection::Minimize);
    let q: Vec<_> = cost.iter().map(|c| problem.add_var(*c, (0.0, cap))).collect();
    for r in rows {
        let terms: Vec<_> = q.iter().copied().zip(r.of.iter().copied()).collect();
        if r.low.is_finite() {
            problem.add_constraint(&terms, ComparisonOp::Ge, r.low);
        }
        if r.high.is_finite() {
            problem.add_constraint(&terms, ComparisonOp::Le, r.high);
        }
    }
    problem.solve().ok()?.into_solution().ok().map(|s| s.objective())
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(2000))]
    #[test]
    fn agrees_with_a_published_solver((rows, cost) in programme()) {
        let ours = minimise(&rows, &vec![50.0; cost.len()], &cost);
        match (&ours, by_library(&rows, 50.0, &cost)) {
            (Least::Found { bound, at, .. }, Some(theirs)) => {
                prop_assert!((bound - theirs).abs() < 1e-6 * (1.0 + theirs.abs()), "{bound} {theirs}");
                prop_assert!((dot(&cost, at) - bound).abs() < 1e-6 * (1.0 + bound.abs()));
            }
            (Least::Contradiction, None) => {}
            (ours, theirs) => prop_assert!(false, "{ours:?} {theirs:?}"),
        }
    }
}
