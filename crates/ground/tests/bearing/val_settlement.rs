//! Settlement of a rectangle against integrals of Boussinesq's displacements (`validation/ground/bearing/outside.py`).

use crate::tables::numbers;
use ground::settlement::{PressedPad, point_influence};

/// The integral is singular under the load; SciPy was asked for seven digits of its parts.
const INTEGRAL: f64 = 1e-4;

#[test]
fn val_settlement_by_integrals_of_boussinesq() {
    let rows = numbers(include_str!("../../../../validation/ground/bearing/settlements.csv"));
    assert_eq!(rows.len(), 36);
    for row in rows {
        let pad = PressedPad { at: [0.0; 2], sides: [row["length_m"], row["width_m"]], pressure: row["pressure_pa"] };
        let at = [row["x_m"], row["y_m"]];
        let down_to = |h: f64| if h > 0.0 { point_influence(&pad, at, h, row["poisson"]) } else { 0.0 };
        let got = pad.pressure / row["modulus_pa"] * (down_to(row["bottom_m"]) - down_to(row["top_m"]));
        let there = row["settlement_m"];
        // Far off and shallow, almost nothing is left of two large parts.
        let scale = pad.pressure / row["modulus_pa"] * down_to(f64::INFINITY);
        assert!((got - there).abs() < INTEGRAL * scale, "{row:?}: {got}");
    }
}
