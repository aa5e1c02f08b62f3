//! Strength and stiffness from tests on site. Each gives a range: the low end counts. All correlations from memory;
//! scatter is what their authors or reviewers name, or ours where it says so.

use crate::step_values::{Value, length, number, pressure};
use crate::{Refusal, text};
use evidence::{Ranged, Source, Step, Trace};

fn positive(values: &[f64]) -> Result<(), Refusal> {
    if values.iter().all(|v| *v > 0.0 && v.is_finite()) { Ok(()) } else { Err(Refusal::NoNumber) }
}

fn say(
    trace: &mut impl Trace,
    formula: &'static str,
    values: impl FnOnce() -> Vec<Value>,
    result: Value,
    source: &'static str,
) {
    trace.step(|| Step {
        title: text::STEP_SITE_TEST.message(),
        formula: formula.into(),
        values: values(),
        result,
        source: Source::from_memory(source),
    });
}

/// `c_u` (Pa) from a hand vane: `c_u = μ·s_v` with Bjerrum's factor as `μ = 1.7 − 0.54·log₁₀ PI`, at most 1 (Bjerrum 1972;
/// curve in Das). `plasticity` is the plasticity index in percent; where it is not known the whole range of μ counts, down to
/// 0.6. Scatter −30 % +20 %.
///
/// # Errors
/// [`Refusal::NoNumber`]; [`Refusal::OutsideMethod`] for a plasticity index of more than 150.
pub fn hand_vane(reading: f64, plasticity: Option<f64>, trace: &mut impl Trace) -> Result<Ranged, Refusal> {
    positive(&[reading, plasticity.unwrap_or(1.0)])?;
    let (low, high) = match plasticity {
        Some(index) if index > 150.0 => return Err(Refusal::OutsideMethod),
        Some(index) => {
            let mu = bjerrum(index);
            (mu, mu)
        }
        None => (0.6, 1.0),
    };
    let range = Ranged { low: 0.7 * low * reading, nominal: low * reading, high: 1.2 * high * reading };
    say(
        trace,
        "c_u = 0.7·μ·s_v,  μ = min(1.7 − 0.54·log₁₀ PI, 1)",
        || vec![pressure("s_v", reading), number("μ", low)],
        pressure("c_u", range.low),
        "Bjerrum 1972, curve in Das",
    );
    Ok(range)
}

/// Bjerrum's factor on a vane's reading.
pub fn bjerrum(plasticity: f64) -> f64 {
    (1.7 - 0.54 * libm::log10(plasticity)).clamp(0.5, 1.0)
}

/// `c_u` (Pa) of fine soil from its CBR in percent: `23 kPa·CBR` (Black & Lister 1979), `30 kPa·CBR` (Giroud & Noiray 1981)
/// at the high end, 15 kPa·CBR at the low end (ours: a third below). For CBR up to 10.
///
/// # Errors
/// [`Refusal::NoNumber`]; [`Refusal::OutsideMethod`] above 10 %: such soil is not judged by undrained strength.
pub fn cbr(percent: f64, trace: &mut impl Trace) -> Result<Ranged, Refusal> {
    positive(&[percent])?;
    if percent > 10.0 {
        return Err(Refusal::OutsideMethod);
    }
    let range = Ranged { low: 15e3 * percent, nominal: 23e3 * percent, high: 30e3 * percent };
    say(
        trace,
        "c_u = k·CBR",
        || vec![pressure("k", 15e3), number("CBR", percent)],
        pressure("c_u", range.low),
        "Black & Lister 1979; Giroud & Noiray 1981",
    );
    Ok(range)
}

/// Modulus of elasticity (Pa) from a CBR in percent: `E = 17.6·CBR^0.64 MPa` (Powell and others 1984, TRRL LR1132), for 2 to
/// 12 %; half to one and a half of it (ours).
///
/// # Errors
/// [`Refusal::NoNumber`], [`Refusal::OutsideMethod`].
pub fn modulus_from_cbr(percent: f64, trace: &mut impl Trace) -> Result<Ranged, Refusal> {
    positive(&[percent])?;
    if !(2.0..=12.0).contains(&percent) {
        return Err(Refusal::OutsideMethod);
    }
    let e = 17.6e6 * libm::pow(percent, 0.64);
    let range = Ranged { low: 0.5 * e, nominal: e, high: 1.5 * e };
    say(
        trace,
        "E = ½·17.6 MPa·CBR^0.64",
        || vec![number("CBR", percent)],
        pressure("E", range.low),
        "Powell and others 1984, TRRL LR1132",
    );
    Ok(range)
}

/// CBR in percent from a dynamic cone penetrometer (8 kg, 60° cone) by its `penetration` per blow, m: `log₁₀ CBR = 2.48 −
/// 1.057·log₁₀(mm/blow)` (TRL) and `CBR = 292/(mm/blow)^1.12` (Webster 1992); the lower of both less a third, the higher and a
/// third (ours).
///
/// # Errors
/// [`Refusal::NoNumber`]; [`Refusal::OutsideMethod`] for less than 1 or more than 100 mm a blow.
pub fn cone_penetrometer(penetration: f64, trace: &mut impl Trace) -> Result<Ranged, Refusal> {
    positive(&[penetration])?;
    let mm = 1e3 * penetration;
    if !(1.0..=100.0).contains(&mm) {
        return Err(Refusal::OutsideMethod);
    }
    let trl = libm::exp10(2.48 - 1.057 * libm::log10(mm));
    let army = 292.0 / libm::pow(mm, 1.12);
    let (low, high) = (trl.min(army), trl.max(army));
    let range = Ranged { low: low / 1.5, nominal: low, high: high * 1.5 };
    say(
        trace,
        "CBR = ⅔·min(10^(2.48 − 1.057·log₁₀ x), 292/x^1.12)",
        || vec![length("x", penetration)],
        number("CBR", range.low),
        "TRL, 60° cone; Webster 1992",
    );
    Ok(range)
}

/// `c_u` (Pa) from a cone index (Pa) of a hand penetrometer: `CI/12.5`, between `CI/15` and `CI/10`.
///
/// # Errors
/// [`Refusal::NoNumber`].
pub fn cone_index(index: f64, trace: &mut impl Trace) -> Result<Ranged, Refusal> {
    positive(&[index])?;
    let range = Ranged { low: index / 15.0, nominal: index / 12.5, high: index / 10.0 };
    let values = || vec![pressure("CI", index)];
    say(trace, "c_u = CI / 15", values, pressure("c_u", range.low), "cone index of fine soil, common range");
    Ok(range)
}

/// What a plate load test told.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct PlateTest {
    /// Diameter of the plate, m.
    pub diameter: f64,
    /// Pressure reached, Pa.
    pub pressure: f64,
    /// Settlement under it, m.
    pub settlement: f64,
}

impl PlateTest {
    /// `c_u` (Pa) of clay from the pressure reached: `q/((π + 2)·1.2)` under a round plate on the surface; ± 15 % (ours).
    /// Below failure the true strength is more. Tells of the soil to twice the diameter only: see [`PlateTest::depth`].
    ///
    /// # Errors
    /// [`Refusal::NoNumber`].
    pub fn undrained(&self, trace: &mut impl Trace) -> Result<Ranged, Refusal> {
        positive(&[self.diameter, self.pressure])?;
        let range = Ranged::shares(self.pressure / ((core::f64::consts::PI + 2.0) * 1.2), 0.15, 0.15);
        say(
            trace,
            "c_u = 0.85·q / (1.2·(π + 2))",
            || vec![pressure("q", self.pressure)],
            pressure("c_u", range.low),
            "bearing of a round plate on clay",
        );
        Ok(range)
    }

    /// Modulus of elasticity (Pa): `E = π/4·(1 − ν²)·q·d/s`, a rigid plate on an elastic half-space (Boussinesq); − 30 % + 30 %
    /// for bedding (ours).
    ///
    /// # Errors
    /// [`Refusal::NoNumber`].
    pub fn modulus(&self, poisson: f64, trace: &mut impl Trace) -> Result<Ranged, Refusal> {
        positive(&[self.diameter, self.pressure, self.settlement])?;
        if !(0.0..=0.5).contains(&poisson) {
            return Err(Refusal::NoNumber);
        }
        let stiff = self.pressure * self.diameter / self.settlement;
        let range = Ranged::shares(core::f64::consts::FRAC_PI_4 * (1.0 - poisson * poisson) * stiff, 0.3, 0.3);
        say(
            trace,
            "E = 0.7·π/4·(1 − ν²)·q·d/s",
            || {
                vec![
                    number("ν", poisson),
                    pressure("q", self.pressure),
                    length("d", self.diameter),
                    length("s", self.settlement),
                ]
            },
            pressure("E", range.low),
            "rigid plate on an elastic half-space, Boussinesq",
        );
        Ok(range)
    }

    /// Depth (m) that the test tells of: twice the diameter (common practice). A larger pad reaches deeper.
    pub fn depth(&self) -> f64 {
        2.0 * self.diameter
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use evidence::Silent;

    #[test]
    fn each_test_gives_a_range_with_its_middle_inside() {
        let plate = PlateTest { diameter: 0.3, pressure: 370e3, settlement: 0.01 };
        let all = [
            hand_vane(50e3, Some(40.0), &mut Silent),
            hand_vane(50e3, None, &mut Silent),
            cbr(2.0, &mut Silent),
            modulus_from_cbr(5.0, &mut Silent),
            cone_penetrometer(0.025, &mut Silent),
            cone_index(500e3, &mut Silent),
            plate.undrained(&mut Silent),
            plate.modulus(0.3, &mut Silent),
        ];
        for (i, r) in all.into_iter().enumerate() {
            let r = r.unwrap_or(Ranged::exact(f64::NAN));
            assert!(0.0 < r.low && r.low < r.nominal && r.nominal < r.high, "{i}: {r:?}");
        }
    }

    #[test]
    fn plastic_clay_is_weaker_than_its_vane_says_and_unknown_plasticity_counts_low() {
        assert_eq!(bjerrum(10.0), 1.0);
        assert!((bjerrum(100.0) - 0.62).abs() < 1e-12);
        let low = |pi| hand_vane(50e3, pi, &mut Silent).map_or(f64::NAN, |r| r.low);
        assert!(low(Some(60.0)) < low(Some(20.0)));
        assert!(low(None) <= low(Some(100.0)));
    }

    #[test]
    fn nothing_is_made_of_no_reading() {
        for bad in [0.0, -1.0, f64::NAN, f64::INFINITY] {
            assert_eq!(hand_vane(bad, None, &mut Silent), Err(Refusal::NoNumber));
            assert_eq!(cbr(bad, &mut Silent), Err(Refusal::NoNumber));
            assert_eq!(cone_penetrometer(bad, &mut Silent), Err(Refusal::NoNumber));
        }
        assert_eq!(cbr(30.0, &mut Silent), Err(Refusal::OutsideMethod));
    }
}
