//! Every unit against pint.

use crate::units::UNITS;
use crate::{Dimension as D, parse};

/// pint multiplies its definitions in another order: a few roundings.
const ROUND_OFF: f64 = 8.0 * f64::EPSILON;

/// One of every unit of the table in SI, by pint (validation/units/pint_units.py).
#[test]
fn val_units_pint() {
    let table = include_str!("../../../../validation/units/pint.csv");
    let rows: Vec<(&str, &str, f64)> = table
        .lines()
        .skip(2)
        .map(|line| {
            let mut fields = line.split(',');
            let mut next = || fields.next().unwrap();
            (next(), next(), next().parse().unwrap())
        })
        .collect();
    assert_eq!(rows.len(), UNITS.len(), "a unit has no row, or a row no unit");
    for unit in UNITS {
        let (name, dimension) = (unit.spellings[0], format!("{:?}", unit.dimension));
        let row = rows.iter().find(|(d, u, _)| *d == dimension && *u == name);
        let (.., si) = row.unwrap_or_else(|| panic!("{name} of {dimension} has no row"));
        let got = parse(&format!("1 {name}"), unit.dimension).unwrap().si;
        assert!((got - si).abs() <= ROUND_OFF * si, "1 {name}: ours {got}, pint {si}");
    }
    assert!(UNITS.iter().any(|u| u.dimension == D::Stiffness));
}
