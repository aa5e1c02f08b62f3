//! Sideways pressure against closed forms, quadrature by another hand, and itself.

use crate::tables::{kept, number};
use evidence::{Silent, Working};
use ground::lateral::{LateralMethod, WallLoad, WallMovement, lateral_load, lateral_pressure, line_resultant};

use LateralMethod::{Elastic, Terzaghi};
use WallMovement::{Unyielding, Yielding};

#[test]
fn a_line_gives_its_closed_resultant_and_height() {
    for off in [0.3, 1.0, 4.0] {
        let found = lateral_load(&[WallLoad::Line { per_metre: 30e3, off }], Yielding, Elastic, 3.0, 0.0, &mut Silent);
        let [p, m] = line_resultant(30e3, off, 3.0);
        assert!((found.resultant / p - 1.0).abs() < 1e-6, "{off}: {} against {p}", found.resultant);
        assert!((found.height - (3.0 - m / p)).abs() < 1e-5, "{off}: {}", found.height);
    }
    // Endless wall: q/π; doubled 0.637 q.
    let deep = line_resultant(1.0, 1.0, 1e6)[0];
    assert!((2.0 * deep - std::f64::consts::FRAC_2_PI).abs() < 1e-6);
}

#[test]
fn val_lateral_resultants_by_scipy_quadrature() {
    let rows = kept("lateral.csv");
    assert!(rows.len() >= 40);
    for row in rows {
        let v = |i| number(&row, i);
        let load = match row[0].as_str() {
            "point" => WallLoad::Point { force: v(3), off: v(4), along: v(6) },
            "line" => WallLoad::Line { per_metre: v(3), off: v(4) },
            "strip" => WallLoad::Strip { pressure: v(3), off: [v(4), v(5)] },
            "patch" => WallLoad::Patch { pressure: v(3), off: [v(4), v(5)], along: [v(6), v(7)] },
            other => panic!("no such load: {other}"),
        };
        let movement = if row[1] == "doubled" { Unyielding } else { Yielding };
        let height = v(2);
        let found = lateral_load(&[load], movement, Elastic, height, 0.0, &mut Silent);
        assert!((found.resultant / v(8) - 1.0).abs() < 1e-4, "{row:?}: {}", found.resultant);
        assert!((found.height - v(9)).abs() < 1e-3 * height, "{row:?}: {}", found.height);
    }
}

#[test]
fn a_patch_that_runs_on_is_a_strip_and_a_small_one_a_point() {
    let at = |load, z| lateral_pressure(load, Yielding, Elastic, 4.0, 0.0, z);
    for z in [0.2, 1.0, 3.0] {
        let strip = at(WallLoad::Strip { pressure: 1e4, off: [0.5, 1.5] }, z);
        let long = at(WallLoad::Patch { pressure: 1e4, off: [0.5, 1.5], along: [-1e4, 1e4] }, z);
        assert!((long / strip - 1.0).abs() < 1e-6);
        let small = at(WallLoad::Patch { pressure: 1e4, off: [0.99, 1.01], along: [0.29, 0.31] }, z);
        let point = at(WallLoad::Point { force: 4.0, off: 1.0, along: 0.3 }, z);
        assert!((small / point - 1.0).abs() < 1e-3);
    }
}

#[test]
fn terzaghi_far_off_is_the_doubled_line_and_stops_growing_near() {
    let line = |off| WallLoad::Line { per_metre: 1e4, off };
    let doubled = lateral_pressure(line(2.0), Unyielding, Elastic, 4.0, 0.0, 1.0);
    let terzaghi = lateral_pressure(line(2.0), Unyielding, Terzaghi, 4.0, 0.0, 1.0);
    assert!((doubled / terzaghi - 1.0).abs() < 1e-9);
    let near = |off| lateral_pressure(line(off), Unyielding, Terzaghi, 4.0, 0.0, 1.0);
    assert_eq!(near(0.4), near(1.5));
    // 0.55 q in all for m ≤ 0.4, as his resultant says.
    let all = lateral_load(&[line(0.8)], Unyielding, Terzaghi, 4.0, 0.0, &mut Silent);
    assert!((all.resultant / 1e4 - 0.55).abs() < 0.01, "{}", all.resultant);
    // Points: 0.78 P/H at m ≤ 0.4 right before the load, over the depth.
    let point = WallLoad::Point { force: 1e4, off: 1.0, along: 0.0 };
    let before = lateral_load(&[point], Unyielding, Terzaghi, 4.0, 0.0, &mut Silent);
    let aside = lateral_load(&[point], Unyielding, Terzaghi, 4.0, 2.0, &mut Silent);
    assert!((before.resultant * 4.0 / 1e4 - 0.78).abs() < 0.02, "{}", before.resultant);
    assert!(aside.resultant < before.resultant);
}

#[test]
fn loads_add_up_and_the_working_ends_in_the_numbers() {
    let wheels = [
        WallLoad::Patch { pressure: 4e5, off: [1.0, 1.3], along: [-0.2, 0.2] },
        WallLoad::Patch { pressure: 4e5, off: [2.6, 2.9], along: [-0.2, 0.2] },
    ];
    let mut working = Working::default();
    let both = lateral_load(&wheels, Unyielding, Elastic, 3.0, 0.0, &mut working);
    let each: f64 =
        wheels.iter().map(|w| lateral_load(&[*w], Unyielding, Elastic, 3.0, 0.0, &mut Silent).resultant).sum();
    assert!((both.resultant / each - 1.0).abs() < 1e-12);
    assert_eq!(working.steps.len(), 2);
    assert_eq!(working.steps[0].result.1.si, both.resultant);
    assert_eq!(both.profile.len(), 41);
    let none = lateral_load(&[], Unyielding, Elastic, 3.0, 0.0, &mut Silent);
    assert_eq!((none.resultant, none.height), (0.0, 1.5));
}
