//! Every unit against the definitions.
//!
//! Factors: NIST Special Publication 811, 2008 edition, annex B.8. A factor that it prints in bold is exact and is
//! given here whole; the others are given with the seven digits printed.

use crate::units::{AMBIGUOUS, Conversion, UNITS};
use crate::{Dimension as D, parse};
use uom::si::f64 as q;

/// Rounding of one multiplication or two.
const EXACT: f64 = 4.0 * f64::EPSILON;
/// Half a unit in the last of seven digits.
const PRINTED: f64 = 5e-7;

/// One of a unit in SI, and how near the figure is.
const DEFINITIONS: &[(D, &str, f64, f64)] = &[
    (D::Length, "m", 1.0, EXACT),
    (D::Length, "mm", 0.001, EXACT),
    (D::Length, "cm", 0.01, EXACT),
    (D::Length, "km", 1000.0, EXACT),
    (D::Length, "ft", 0.3048, EXACT),
    (D::Length, "in", 0.0254, EXACT),
    (D::Length, "yd", 0.9144, EXACT),
    (D::Length, "mi", 1609.344, EXACT),
    // B.6: 1200/3937 m, printed 3.048 006 E-01.
    (D::Length, "ftUS", 0.304_800_6, PRINTED),
    (D::Area, "m2", 1.0, EXACT),
    (D::Area, "mm2", 1e-6, EXACT),
    (D::Area, "cm2", 1e-4, EXACT),
    (D::Area, "ft2", 0.092_903_04, EXACT),
    (D::Area, "in2", 6.4516e-4, EXACT),
    (D::Area, "yd2", 0.836_127_36, EXACT),
    (D::Volume, "m3", 1.0, EXACT),
    (D::Volume, "L", 0.001, EXACT),
    (D::Volume, "cm3", 1e-6, EXACT),
    (D::Volume, "ft3", 2.831_685e-2, PRINTED),
    (D::Volume, "yd3", 0.764_554_9, PRINTED),
    (D::Volume, "US gal", 3.785_412e-3, PRINTED),
    (D::Mass, "kg", 1.0, EXACT),
    (D::Mass, "t", 1000.0, EXACT),
    (D::Mass, "g", 0.001, EXACT),
    (D::Mass, "lb", 0.453_592_37, EXACT),
    (D::Mass, "oz", 2.834_952e-2, PRINTED),
    (D::Mass, "short ton", 907.184_74, EXACT),
    (D::Mass, "long ton", 1_016.046_908_8, EXACT),
    (D::Angle, "°", 1.745_329e-2, PRINTED),
    (D::Angle, "rad", 1.0, EXACT),
    (D::Angle, "mrad", 0.001, EXACT),
    (D::Angle, "%", 0.009_999_666_686_665_238, EXACT), // atan 0.01 = 0.01 − 0.01³/3 + 0.01⁵/5 − …
    (D::Slope, "%", 0.01, EXACT),
    (D::Slope, "‰", 0.001, EXACT),
    (D::Slope, "°", 0.017_455_064_928_217_585, EXACT), // tan 1°
    (D::Slope, "rad", 1.557_407_724_654_902_3, EXACT), // tan 1
    (D::Ratio, "%", 0.01, EXACT),
    (D::Ratio, "‰", 0.001, EXACT),
    (D::Force, "N", 1.0, EXACT),
    (D::Force, "kN", 1000.0, EXACT),
    (D::Force, "MN", 1e6, EXACT),
    (D::Force, "lbf", 4.448_221_615_260_5, EXACT),
    (D::Force, "kip", 4448.222, PRINTED),
    (D::Force, "kgf", 9.806_65, EXACT),
    (D::Force, "tf", 9806.65, EXACT),
    (D::Moment, "N·m", 1.0, EXACT),
    (D::Moment, "kN·m", 1000.0, EXACT),
    (D::Moment, "lbf·ft", 1.355_818, PRINTED),
    (D::Moment, "kip·ft", 1355.818, PRINTED),
    (D::Pressure, "Pa", 1.0, EXACT),
    (D::Pressure, "kPa", 1000.0, EXACT),
    (D::Pressure, "MPa", 1e6, EXACT),
    (D::Pressure, "bar", 1e5, EXACT),
    (D::Pressure, "psi", 6894.757, PRINTED),
    (D::Pressure, "lbf/ft2", 47.880_26, PRINTED),
    (D::Pressure, "ksf", 47_880.26, PRINTED),
    (D::Pressure, "ksi", 6_894_757.0, PRINTED),
    (D::Pressure, "kgf/m2", 9.806_65, EXACT),
    (D::Pressure, "kgf/cm2", 98_066.5, EXACT),
    (D::Pressure, "tf/m2", 9806.65, EXACT),
    (D::Speed, "m/s", 1.0, EXACT),
    (D::Speed, "km/h", 1.0 / 3.6, EXACT),
    (D::Speed, "mph", 0.447_04, EXACT),
    (D::Speed, "ft/s", 0.3048, EXACT),
    (D::Speed, "kn", 0.514_444_4, PRINTED),
    (D::Voltage, "V", 1.0, EXACT),
    (D::Voltage, "kV", 1000.0, EXACT),
    (D::Density, "kg/m3", 1.0, EXACT),
    (D::Density, "t/m3", 1000.0, EXACT),
    (D::Density, "lb/ft3", 16.018_46, PRINTED),
    (D::Density, "lb/yd3", 0.593_276_4, PRINTED),
    (D::Density, "kN/m3", 1000.0 / 9.806_65, EXACT),
    (D::Density, "N/m3", 1.0 / 9.806_65, EXACT),
    (D::Stiffness, "kN/m", 1000.0, EXACT),
    (D::Stiffness, "N/m", 1.0, EXACT),
    (D::Stiffness, "kN/mm", 1e6, EXACT),
    (D::Stiffness, "lbf/ft", 14.593_90, PRINTED),
    (D::Stiffness, "lbf/in", 175.1268, PRINTED),
    (D::UnitWeight, "kN/m3", 1000.0, EXACT),
    (D::UnitWeight, "N/m3", 1.0, EXACT),
    (D::UnitWeight, "lbf/ft3", 157.0875, PRINTED),
    (D::SecondMoment, "m4", 1.0, EXACT),
    (D::SecondMoment, "cm4", 1e-8, EXACT),
    (D::SecondMoment, "mm4", 1e-12, EXACT),
    (D::SecondMoment, "in4", 4.162_314e-7, PRINTED),
];

#[test]
fn val_units_nist_sp_811() {
    for (dimension, unit, si, near) in DEFINITIONS {
        let got = parse(&format!("1 {unit}"), *dimension).unwrap().si;
        assert!((got - si).abs() <= near * si, "1 {unit} as {dimension:?}: got {got}, definition {si}");
    }
}

#[test]
fn every_unit_of_the_table_has_its_definition() {
    for unit in UNITS {
        let first = unit.spellings[0];
        let known = DEFINITIONS.iter().any(|(d, u, ..)| *d == unit.dimension && *u == first);
        assert!(known, "{first} of {:?} has no definition above", unit.dimension);
    }
    assert_eq!(UNITS.len(), DEFINITIONS.len(), "a definition above has no unit in the table");
}

#[test]
fn every_spelling_reads_as_its_own_unit() {
    for unit in UNITS {
        let one = parse(&format!("1 {}", unit.spellings[0]), unit.dimension).unwrap();
        for spelling in unit.spellings {
            for text in [format!("1 {spelling}"), format!("1{spelling}"), format!("  1  {spelling} ")] {
                assert_eq!(parse(&text, unit.dimension), Ok(one), "{text:?}");
            }
        }
    }
}

#[test]
fn no_spelling_means_two_things_in_one_dimension() {
    for (i, unit) in UNITS.iter().enumerate() {
        for other in UNITS[i + 1..].iter().filter(|o| o.dimension == unit.dimension) {
            for spelling in unit.spellings {
                assert!(!other.spellings.contains(spelling), "{spelling} of {:?}", unit.dimension);
            }
        }
        for (dimension, names, _) in AMBIGUOUS.iter().filter(|(d, ..)| *d == unit.dimension) {
            assert!(!unit.spellings.iter().any(|s| names.contains(s)), "{:?} of {dimension:?}", unit.spellings);
        }
        assert!(
            matches!(unit.conversion, Conversion::Factor(f) | Conversion::Tangent(f) | Conversion::ArcTangent(f) if f > 0.0)
        );
    }
}

/// `uom` prints the same seven digits as its source, so that two tables from two hands agree.
#[test]
fn val_units_uom() {
    let cases: &[(D, &str, f64)] = &[
        (D::Length, "ft", q::Length::new::<uom::si::length::foot>(1.0).value),
        (D::Length, "in", q::Length::new::<uom::si::length::inch>(1.0).value),
        (D::Length, "yd", q::Length::new::<uom::si::length::yard>(1.0).value),
        (D::Length, "mi", q::Length::new::<uom::si::length::mile>(1.0).value),
        (D::Length, "ftUS", q::Length::new::<uom::si::length::foot_survey>(1.0).value),
        (D::Area, "ft2", q::Area::new::<uom::si::area::square_foot>(1.0).value),
        (D::Area, "in2", q::Area::new::<uom::si::area::square_inch>(1.0).value),
        (D::Area, "yd2", q::Area::new::<uom::si::area::square_yard>(1.0).value),
        (D::Volume, "ft3", q::Volume::new::<uom::si::volume::cubic_foot>(1.0).value),
        (D::Volume, "yd3", q::Volume::new::<uom::si::volume::cubic_yard>(1.0).value),
        (D::Volume, "L", q::Volume::new::<uom::si::volume::liter>(1.0).value),
        (D::Volume, "US gal", q::Volume::new::<uom::si::volume::gallon>(1.0).value),
        (D::Mass, "lb", q::Mass::new::<uom::si::mass::pound>(1.0).value),
        (D::Mass, "oz", q::Mass::new::<uom::si::mass::ounce>(1.0).value),
        (D::Mass, "t", q::Mass::new::<uom::si::mass::ton>(1.0).value),
        (D::Mass, "short ton", q::Mass::new::<uom::si::mass::ton_short>(1.0).value),
        (D::Mass, "long ton", q::Mass::new::<uom::si::mass::ton_long>(1.0).value),
        (D::Angle, "°", q::Angle::new::<uom::si::angle::degree>(1.0).value),
        (D::Force, "lbf", q::Force::new::<uom::si::force::pound_force>(1.0).value),
        (D::Force, "kip", q::Force::new::<uom::si::force::kip>(1.0).value),
        (D::Force, "kgf", q::Force::new::<uom::si::force::kilogram_force>(1.0).value),
        (D::Moment, "lbf·ft", q::Torque::new::<uom::si::torque::pound_force_foot>(1.0).value),
        (D::Pressure, "bar", q::Pressure::new::<uom::si::pressure::bar>(1.0).value),
        (D::Pressure, "psi", q::Pressure::new::<uom::si::pressure::psi>(1.0).value),
        (D::Pressure, "psf", q::Pressure::new::<uom::si::pressure::pound_force_per_square_foot>(1.0).value),
        (D::Pressure, "ksi", q::Pressure::new::<uom::si::pressure::kip_per_square_inch>(1.0).value),
        (D::Speed, "mph", q::Velocity::new::<uom::si::velocity::mile_per_hour>(1.0).value),
        (D::Speed, "km/h", q::Velocity::new::<uom::si::velocity::kilometer_per_hour>(1.0).value),
        (D::Speed, "ft/s", q::Velocity::new::<uom::si::velocity::foot_per_second>(1.0).value),
        (D::Speed, "kn", q::Velocity::new::<uom::si::velocity::knot>(1.0).value),
        (D::Voltage, "kV", q::ElectricPotential::new::<uom::si::electric_potential::kilovolt>(1.0).value),
        (D::Density, "lb/ft3", q::MassDensity::new::<uom::si::mass_density::pound_per_cubic_foot>(1.0).value),
        (D::Density, "lb/yd3", q::MassDensity::new::<uom::si::mass_density::pound_per_cubic_yard>(1.0).value),
        (D::Stiffness, "lbf/in", q::SurfaceTension::new::<uom::si::surface_tension::pound_force_per_inch>(1.0).value),
    ];
    for (dimension, unit, si) in cases {
        let got = parse(&format!("1 {unit}"), *dimension).unwrap().si;
        assert!((got - si).abs() <= PRINTED * si, "1 {unit}: ours {got}, uom {si}");
    }
}
