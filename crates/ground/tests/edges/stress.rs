//! Stress against tables of influence factors, worked examples, and sums of point loads.

use crate::tables::{number, shared};
use evidence::{Silent, Working};
use ground::stress::{
    Patch, circle_stress, corner_influence, line_stress, patches_stress, point_stress, rectangle_influence,
    spread_two_to_one, strip_stress,
};

/// Half of the last of five digits, and what five digits of the ratio leave.
const ROUNDED: f64 = 0.6e-5;

#[test]
fn val_rectangle_corner_rows_of_the_reference_table() {
    let Some(rows) = shared("stress_influence_rectangle.csv") else { return };
    assert_eq!(rows.len(), 400, "a row went missing");
    for row in rows {
        let (m, n, stated) = (number(&row, 1), number(&row, 2), number(&row, 3));
        let found = corner_influence(m, n);
        assert!((found - stated).abs() < ROUNDED, "m {m} n {n}: {found}, stated {stated}");
    }
}

#[test]
fn val_circle_point_strip_and_spread_rows_of_the_reference_table() {
    let Some(rows) = shared("stress_influence_other.csv") else { return };
    assert_eq!(rows.len(), 55, "a row went missing");
    for row in rows {
        let (ratio, stated) = (number(&row, 1), number(&row, 2));
        let found = match row[0].split(':').next().unwrap() {
            "circle centre" => circle_stress(1.0, 1.0, ratio),
            "point load I_B" => point_stress(1.0, ratio, 1.0),
            "strip centre" => strip_stress(1.0, 1.0, 0.0, ratio),
            "square 2" => spread_two_to_one(1.0, [1.0, 1.0], ratio),
            other => panic!("no such case: {other}"),
        };
        assert!((found - stated).abs() < ROUNDED, "{row:?}: {found}");
    }
}

#[test]
fn val_w02_two_to_one_under_square_footings() {
    let printed = [(3.0, [0.55, 0.16, 0.07, 0.04]), (4.6, [0.66, 0.26, 0.13, 0.08]), (6.1, [0.73, 0.33, 0.18, 0.12])];
    for (b, shares) in printed {
        for (z, share) in [1.05, 4.45, 8.3, 11.3].into_iter().zip(shares) {
            let found = spread_two_to_one(b * b, [b, b], z);
            assert!((found - share).abs() <= 0.0051, "B {b} z {z}: {found}");
        }
    }
}

#[test]
fn val_w13_under_the_middle_of_a_rectangle() {
    // Feet and lb/ft² go in as they are: the factor has no unit.
    let patch = Patch { middle: [0.0, 0.0], size: [5.0, 10.0], heading: 0.3, force: 2000.0 * 50.0 };
    assert!((patch.elastic_stress([0.0, 0.0], 12.5) - 262.4).abs() < 0.1);
}

#[test]
fn val_w14_newmark_at_a_corner() {
    assert!((corner_influence(0.4, 1.4) - 0.10941).abs() < ROUNDED);
    assert!((corner_influence(0.8, 1.6) - 0.17739).abs() < ROUNDED);
    // 100 t on 4.6 m × 14 m, 10 m under a corner: in t/m².
    let corner = rectangle_influence([4.6, 14.0], [2.3, 7.0], 10.0);
    assert!((corner * 100.0 / (4.6 * 14.0) - 0.1897).abs() < 1e-4);
}

#[test]
fn val_w15_point_load_beside_the_point() {
    assert!((point_stress(5.0, 5.0, 2.0) - 0.0042).abs() < 0.00005);
}

#[test]
fn a_patch_is_the_sum_of_its_pieces_wherever_one_looks() {
    let patch = Patch { middle: [3.0, -2.0], size: [0.6, 0.4], heading: 0.7, force: 50e3 };
    let n = 60;
    let (s, c) = patch.heading.sin_cos();
    for at in [[3.0, -2.0], [3.2, -1.9], [4.0, -2.5], [1.0, 1.0]] {
        for depth in [0.3, 1.0, 4.0] {
            let mut sum = 0.0;
            for i in 0..n {
                for j in 0..n {
                    let u = ((f64::from(i) + 0.5) / f64::from(n) - 0.5) * patch.size[0];
                    let v = ((f64::from(j) + 0.5) / f64::from(n) - 0.5) * patch.size[1];
                    let p = [patch.middle[0] + u * c - v * s, patch.middle[1] + u * s + v * c];
                    let r = (at[0] - p[0]).hypot(at[1] - p[1]);
                    sum += point_stress(patch.force / f64::from(n * n), r, depth);
                }
            }
            let found = patch.elastic_stress(at, depth);
            assert!((found / sum - 1.0).abs() < 2e-3, "{at:?} {depth}: {found} against {sum}");
        }
    }
}

#[test]
fn strips_are_sums_of_lines_and_lines_of_points() {
    let n = 4000;
    let lines: f64 =
        (0..n).map(|i| line_stress(1.0 / f64::from(n), 0.2 + (f64::from(i) + 0.5) / f64::from(n), 0.8)).sum();
    assert!((strip_stress(1.0, 1.0, 0.7, 0.8) / lines - 1.0).abs() < 1e-6);
    let points: f64 =
        (-40_000..40_000).map(|i| point_stress(0.01, 0.5f64.hypot((f64::from(i) + 0.5) * 0.01), 0.8)).sum();
    assert!((line_stress(1.0, 0.5, 0.8) / points - 1.0).abs() < 1e-6);
}

#[test]
fn at_the_surface_there_is_the_pressure_itself_and_nothing_beside() {
    let patch = Patch { middle: [0.0, 0.0], size: [0.5, 0.5], heading: 0.0, force: 25e3 };
    assert_eq!(patch.elastic_stress([0.1, 0.1], 0.0), 100e3);
    assert_eq!(patch.elastic_stress([0.4, 0.1], 0.0), 0.0);
    assert!((patch.elastic_stress([0.1, 0.1], 1e-9) - 100e3).abs() < 1.0, "no jump below it");
    assert_eq!(strip_stress(7.0, 1.0, 0.2, 0.0), 7.0);
    assert_eq!(circle_stress(7.0, 1.0, 0.0), 7.0);
}

#[test]
fn wheels_add_up_and_the_working_says_both_ways() {
    let wheel = |x: f64, y: f64| Patch { middle: [x, y], size: [0.4, 0.3], heading: 0.0, force: 40e3 };
    let axle = [wheel(0.0, 0.8), wheel(0.0, -0.8)];
    let mut working = Working::default();
    let both = patches_stress(&axle, [0.0, 0.0], 2.0, &mut working);
    let one = patches_stress(&axle[..1], [0.0, 0.0], 2.0, &mut Silent);
    assert!((both.elastic / one.elastic - 2.0).abs() < 1e-12);
    assert_eq!(both.larger(), both.elastic.max(both.spread));
    assert_eq!(working.steps.len(), 2);
    assert_eq!(working.steps[0].result.1.si, both.elastic);
    assert_eq!(working.steps[1].result.1.si, both.spread);
    // And can be reckoned again from what they print, patch by patch.
    let v = |step: usize, name: &str| working.steps[step].values.iter().find(|(n, _)| n == name).map(|(_, q)| q.si);
    let (mut elastic, mut spread) = (0.0, 0.0);
    for i in 1..=v(0, "n").unwrap() as usize {
        let of = |step: usize, name: &str| v(step, &format!("{name}_{i}"));
        let z = v(0, "z").unwrap();
        if let Some(p) = of(0, "p") {
            let side =
                |size: &str, off: &str| [1.0, -1.0].map(|s| of(0, size).unwrap() / 2.0 + s * of(0, off).unwrap());
            for x in side("l", "u") {
                for y in side("b", "v") {
                    let sign = x.signum() * y.signum();
                    elastic += p * sign * corner_influence(x.abs() / z, y.abs() / z);
                }
            }
        }
        if let Some(force) = of(1, "F") {
            spread += force / ((of(1, "b").unwrap() + z) * (of(1, "l").unwrap() + z));
        }
    }
    assert!((elastic / both.elastic - 1.0).abs() < 1e-3, "{elastic} {both:?}");
    assert!((spread - both.spread).abs() <= 1e-9 * both.spread, "{spread} {both:?}");
}

#[test]
fn what_is_not_a_number_stays_so_and_what_pulls_presses_nothing() {
    let patch = |force| Patch { middle: [0.0, 0.0], size: [0.5, 0.5], heading: 0.0, force };
    let of = |force, at, z| patches_stress(&[patch(force)], at, z, &mut Silent);
    assert!(of(f64::NAN, [0.0, 0.0], 1.0).larger().is_nan());
    assert!(of(1e3, [f64::NAN, 0.0], 1.0).larger().is_nan());
    assert!(of(1e3, [0.0, 0.0], f64::NAN).larger().is_nan());
    assert_eq!(of(-1e3, [0.0, 0.0], 1.0).larger(), 0.0);
}
