//! The digits a person reads.

use crate::{Dimension as D, FOOT, Quantity, UnitSystem::*};

fn shown(si: f64, dimension: D, system: crate::UnitSystem) -> String {
    let displayed = Quantity::new(si, dimension).display(system);
    format!("{} {}", displayed.digits().unwrap(), displayed.unit)
}

#[test]
fn lengths_keep_what_a_clearance_needs() {
    assert_eq!(shown(1.22, D::Length, Si), "1.22 m");
    assert_eq!(shown(0.035, D::Length, Si), "0.035 m");
    assert_eq!(shown(0.0, D::Length, Si), "0.00 m");
    assert_eq!(shown(10.0 * FOOT, D::Length, Us), "10.00 ft");
    // one decimal of a foot would show both as 10.0
    assert_eq!(shown(3.035, D::Length, Us), "9.96 ft");
    assert_eq!(shown(0.035, D::Length, Us), "1.4 in");
    assert_eq!(shown(0.0, D::Length, Us), "0.0 in");
    assert_eq!(shown(-0.1, D::Length, Us), "-3.9 in");
}

#[test]
fn us_load_centres_are_inches_and_reaches_feet() {
    for inches in [18.0, 24.0, 36.0] {
        assert_eq!(shown(inches * crate::INCH, D::Length, Us), format!("{inches:.1} in"));
    }
    assert_eq!(shown(3.01 * FOOT, D::Length, Us), "3.01 ft");
    assert_eq!(shown(-4.0 * FOOT, D::Length, Us), "-4.00 ft");
}

#[test]
fn lengths_beside_each_other_have_one_unit() {
    let beside = |si: f64, largest: f64, system| {
        let displayed = Quantity::new(si, D::Length).display_beside(system, largest);
        format!("{} {}", displayed.digits().unwrap(), displayed.unit)
    };
    assert_eq!(beside(0.0076, 1.32, Us), "0.025 ft");
    assert_eq!(beside(0.6, 1.32, Us), "1.97 ft");
    assert_eq!(beside(-0.6, -1.32, Us), "-1.97 ft");
    assert_eq!(beside(0.0076, 0.6, Us), "0.3 in");
    assert_eq!(beside(0.0, 1.32, Us), "0.00 ft");
    assert_eq!(beside(0.6, 1.32, Si), "0.60 m");
}

#[test]
fn us_pressures_are_psf_without_false_digits() {
    assert_eq!(shown(600_000.0, D::Pressure, Us), "12530 psf");
    assert_eq!(shown(150_000.0, D::Pressure, Us), "3130 psf");
    assert_eq!(shown(40_000.0, D::Pressure, Us), "835 psf");
    assert_eq!(shown(400.0, D::Pressure, Us), "8.4 psf");
    assert_eq!(shown(f64::from(996) * crate::POUND_FORCE / (FOOT * FOOT), D::Pressure, Us), "996 psf");
}

#[test]
fn other_dimensions() {
    assert_eq!(shown(1850.0, D::Mass, Si), "1850 kg");
    assert_eq!(shown(4.5, D::Mass, Si), "4.5 kg");
    assert_eq!(shown(3_628.738_96, D::Mass, Us), "8000 lb");
    assert_eq!(shown(0.025, D::Ratio, Si), "2.5 %");
    assert_eq!(shown(0.33, D::Ratio, Si), "33 %");
    assert_eq!(shown(0.07, D::Slope, Si), "7.0 %");
    assert_eq!(shown(4_f64.to_radians(), D::Angle, Si), "4.0 °");
    assert_eq!(shown(42_500.0, D::Force, Si), "42.5 kN");
    assert_eq!(shown(350.0, D::Force, Si), "0.35 kN");
    assert_eq!(shown(400.0, D::Pressure, Si), "0.40 kPa");
    assert_eq!(shown(150_000.0, D::Pressure, Si), "150 kPa");
    assert_eq!(shown(9.8, D::Speed, Si), "9.8 m/s");
    assert_eq!(shown(9.8, D::Speed, Us), "22 mph");
    assert_eq!(shown(11_000.0, D::Voltage, Si), "11 kV");
    assert_eq!(shown(13_800.0, D::Voltage, Us), "13.8 kV");
    assert_eq!(shown(400.0, D::Voltage, Si), "0.40 kV");
    assert_eq!(shown(1.333_333, D::Number, Si), "1.33 ");
    assert_eq!(shown(2.0, D::Number, Si), "2 ");
    assert_eq!(shown(0.0065, D::Number, Si), "0.0065 ");
    assert_eq!(shown(0.0, D::Number, Si), "0.00 ");
    assert_eq!(shown(1.225, D::Density, Si), "1.2 kg/m³");
}

#[test]
fn a_rounded_zero_has_no_sign_and_nan_no_digits() {
    assert_eq!(shown(-0.000_04, D::Angle, Si), "0.0 °");
    assert_eq!(shown(-0.0, D::Mass, Si), "0 kg");
    for si in [f64::NAN, f64::INFINITY, f64::NEG_INFINITY] {
        assert_eq!(Quantity::new(si, D::Mass).display(Si).digits(), None);
        assert_eq!(Quantity::new(si, D::Length).display(Us).digits(), None);
    }
}

#[test]
fn an_axis_has_one_unit_for_all_its_ticks() {
    assert_eq!(D::Length.axis(Us).1, "ft");
    let (factor, unit) = D::Length.axis(Si);
    assert_eq!((factor, unit), (1.0, "m"));
}
