//! A liquid in a tilted tank against integration by strips.
#![allow(clippy::disallowed_methods, reason = "tests")]

use geometry::DVec3;
use machine::Liquid;
use machine::liquid::shift;
use proptest::prelude::*;

/// Strips of the integration.
const STRIPS: usize = 20_000;

/// Area and moments of a liquid whose surface is `c + t·x` over strips from 0 to `side`, held between
/// bottom and lid: (area, ∫x, ∫z).
fn strips(side: f64, height: f64, c: f64, t: f64) -> (f64, f64, f64) {
    let dx = side / STRIPS as f64;
    (0..STRIPS).fold((0.0, 0.0, 0.0), |(a, mx, mz), i| {
        let x = (i as f64 + 0.5) * dx;
        let z = (c + t * x).clamp(0.0, height);
        (a + z * dx, mx + x * z * dx, mz + z * z / 2.0 * dx)
    })
}

/// Shift of the centre by brute force: the surface is raised until the area is right.
fn by_strips(side: f64, height: f64, fill: f64, tilt: f64) -> (f64, f64) {
    let t = tilt.tan();
    let (mut low, mut high) = (-t * side - 1.0, height + 1.0);
    for _ in 0..70 {
        let middle = f64::midpoint(low, high);
        if strips(side, height, middle, t).0 < side * fill { low = middle } else { high = middle }
    }
    let (area, mx, mz) = strips(side, height, low, t);
    (mx / area - side / 2.0, mz / area - fill / 2.0)
}

#[test]
fn a_free_surface_shifts_by_the_formula() {
    let tilt = 5.0_f64.to_radians();
    let s = shift(1.0, 1.0, 0.5, tilt);
    assert!((s.along - tilt.tan() / 6.0).abs() < 1e-12);
    assert!((s.up - tilt.tan().powi(2) / 12.0).abs() < 1e-12);
    let none = shift(1.0, 1.0, 1.0, tilt);
    assert_eq!((none.along, none.up), (0.0, 0.0), "a full tank has no free surface");
}

/// All four cases by hand-picked tanks: free, bottom bared, lid met, both.
#[test]
fn every_case_agrees_with_strips() {
    for (side, height, fill, degrees) in [
        (1.0, 1.0, 0.5, 5.0),
        (1.0, 1.0, 0.02, 5.0),
        (1.0, 1.0, 0.98, 5.0),
        (2.0, 0.1, 0.05, 20.0),
        (2.0, 0.3, 0.10, 30.0),
        (2.0, 0.3, 0.20, 30.0),
        (0.8, 2.0, 1.2, 44.0),
    ] {
        agree(side, height, fill, f64::to_radians(degrees));
    }
}

fn agree(side: f64, height: f64, fill: f64, tilt: f64) {
    let (along, up) = by_strips(side, height, fill, tilt);
    let got = shift(side, height, fill, tilt);
    // Strips miss the corners of the wedge by the square of their width.
    let near = 1e-5 * side;
    assert!((got.along - along).abs() < near, "{side} {height} {fill} {tilt}: {got:?}, strips {along}");
    assert!((got.up - up).abs() < near, "{side} {height} {fill} {tilt}: {got:?}, strips {up}");
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 60, ..ProptestConfig::default() })]
    #[test]
    fn any_tank_agrees_with_strips(side in 0.2..3.0_f64, height in 0.1..2.5_f64, share in 0.01..0.99_f64, tilt in 0.001..0.78_f64) {
        agree(side, height, share * height, tilt);
    }

    /// The shift never shrinks with the tilt, and stays within the tank.
    #[test]
    fn more_tilt_never_shifts_less(side in 0.2..3.0_f64, height in 0.1..2.5_f64, share in 0.01..0.99_f64, tilt in 0.0..0.7_f64) {
        let (less, more) = (shift(side, height, share * height, tilt), shift(side, height, share * height, tilt + 0.05));
        prop_assert!(more.along >= less.along - 1e-9 && more.along <= side / 2.0);
    }
}

#[test]
fn the_surface_rises_most_over_the_diagonal() {
    let tank = Liquid {
        mass_kg: evidence::Ranged::exact(400.0),
        tank: DVec3::new(0.8, 0.6, 1.0),
        at: DVec3::ZERO,
        fill: 0.9,
        baffled: false,
        closed: false,
        tilt: 5.0_f64.to_radians(),
    };
    assert!((tank.rise() - 0.5 * 5.0_f64.to_radians().tan()).abs() < 1e-12);
    assert!((tank.freeboard() - 0.1).abs() < 1e-12 && tank.partly_full());
}
