//! What is shown reads back as what was shown; no text breaks the reader.

use crate::{Dimension as D, ParseError, Quantity, UnitSystem, parse};
use proptest::prelude::*;

const DIMENSIONS: [D; 17] = [
    D::Length,
    D::Area,
    D::Volume,
    D::Mass,
    D::Angle,
    D::Slope,
    D::Ratio,
    D::Number,
    D::Force,
    D::Moment,
    D::Pressure,
    D::Speed,
    D::Voltage,
    D::Density,
    D::Stiffness,
    D::UnitWeight,
    D::SecondMoment,
];

fn dimension() -> impl Strategy<Value = D> {
    (0..DIMENSIONS.len()).prop_map(|i| DIMENSIONS[i])
}

fn system() -> impl Strategy<Value = UnitSystem> {
    prop_oneof![Just(UnitSystem::Si), Just(UnitSystem::Us)]
}

/// From a tenth of a millimetre to a hundred thousand, both signs.
fn value() -> impl Strategy<Value = f64> {
    (-4.0..5.0_f64, any::<bool>()).prop_map(|(power, negative)| {
        let size = libm::exp10(power);
        if negative { -size } else { size }
    })
}

proptest! {
    #[test]
    fn shown_values_read_back(si in value(), dimension in dimension(), system in system()) {
        let displayed = Quantity::new(si, dimension).display(system);
        let digits = displayed.digits().unwrap();
        let back = parse(&format!("{digits} {}", displayed.unit), dimension);
        prop_assert!(back.is_ok(), "{digits} {}: {back:?}", displayed.unit);
        let ten = displayed.unit == "psf" && displayed.value.abs() >= 1000.0;
        let half_digit = if ten { 5.0 } else { 0.5 * libm::exp10(-(displayed.decimals as f64)) };
        let one = if displayed.unit == "in" { crate::INCH } else { 1.0 / dimension.axis(system).0 };
        let error = (back.unwrap().si - si).abs();
        prop_assert!(error <= half_digit * one * (1.0 + 1e-9) + 1e-12 * si.abs(), "{digits} {}: off by {error}", displayed.unit);
    }

    #[test]
    fn shown_values_with_a_decimal_comma_read_back_or_are_refused(si in value(), dimension in dimension(), system in system()) {
        let displayed = Quantity::new(si, dimension).display(system);
        let digits = displayed.digits().unwrap();
        let point = parse(&format!("{digits} {}", displayed.unit), dimension).unwrap();
        match parse(&format!("{} {}", digits.replace('.', ","), displayed.unit), dimension) {
            Ok(comma) => prop_assert_eq!(comma, point),
            Err(error) => prop_assert!(matches!(error, ParseError::AmbiguousSeparator { .. }), "{digits}: {error:?}"),
        }
    }

    #[test]
    fn values_shown_beside_larger_ones_read_back(si in value(), largest in value(), dimension in dimension(), system in system()) {
        let displayed = Quantity::new(si, dimension).display_beside(system, largest);
        let shown = format!("{} {}", displayed.digits().unwrap(), displayed.unit);
        prop_assert!(parse(&shown, dimension).is_ok(), "{shown}");
    }

    #[test]
    fn any_text_gives_a_finite_value_or_an_error_with_its_place(text in "\\PC{0,40}", dimension in dimension()) {
        check(&text, dimension)?;
    }

    #[test]
    fn near_quantities_give_a_finite_value_or_an_error_with_its_place(
        text in "[-+−]?[0-9., \u{a0}]{0,6}[/:e'\"]?[0-9]{0,3} ?(ft|in|m|kg|%|°|ton|N|V|H|k|²)?[ -]?[0-9/]{0,4} ?(in|m|\"|H)?",
        dimension in dimension(),
    ) {
        check(&text, dimension)?;
    }

    #[test]
    fn feet_and_inches_add_up(feet in 0_u32..200, inches in 0_u32..12) {
        let si = f64::from(feet) * 0.3048 + f64::from(inches) * 0.0254;
        for text in [format!("{feet} ft {inches} in"), format!("{feet}'{inches}\""), format!("{feet}'-{inches}\"")] {
            let got = parse(&text, D::Length).unwrap().si;
            prop_assert!((got - si).abs() < 1e-12 * si.max(1.0), "{text}: {got}");
        }
    }
}

fn check(text: &str, dimension: D) -> Result<(), TestCaseError> {
    match parse(text, dimension) {
        Ok(quantity) => prop_assert!(quantity.si.is_finite() && quantity.dimension == dimension),
        Err(error) => {
            let span = error.span();
            prop_assert!(text.get(span.clone()).is_some(), "{text:?}: span {span:?} of {error:?}");
        }
    }
    Ok(())
}
