//! Strength of concrete before 28 days.

use crate::landing_range::Ranges;
use crate::text;
use evidence::{Faults, Source, Step, Trace};
use quantity::{Dimension, Quantity};

/// How fast the cement hardens: coefficient `s` of EN 1992-1-1:2004, 3.1.2(6), from memory.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Cement {
    /// Class R, `s = 0.20`.
    Rapid,
    /// Class N, `s = 0.25`.
    Normal,
    /// Class S, `s = 0.38`: also for a cement that is not known.
    Slow,
}

impl Cement {
    /// `s`.
    pub fn coefficient(self) -> f64 {
        match self {
            Self::Rapid => 0.20,
            Self::Normal => 0.25,
            Self::Slow => 0.38,
        }
    }
}

/// How old a slab is.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Age {
    /// Since casting, days.
    pub days: f64,
    /// Mean temperature of the concrete since then, °C; `None`: not known.
    pub celsius: Option<f64>,
}

/// Share of the 28 day mean strength at an age at 20 °C: `β_cc = exp(s (1 − √(28/t)))`, EN 1992-1-1:2004,
/// 3.1.2(6), from memory. `days` > 0; not held at 1 beyond 28 days.
pub fn beta_cc(cement: Cement, days: f64) -> f64 {
    libm::exp(cement.coefficient() * (1.0 - (28.0 / days).sqrt()))
}

/// Age that counts at another temperature, days: `t_T = t exp(13.65 − 4000/(273 + T))`, EN 1992-1-1:2004,
/// B.1(3), from memory; never more than the age itself (ours: no credit for warmth).
pub fn effective_days(days: f64, celsius: f64) -> f64 {
    // The printed constants give 0.998 at 20 °C, which is meant to be 1.
    if celsius >= 20.0 { days } else { days * libm::exp(13.65 - 4000.0 / (273.0 + celsius)) }
}

/// Characteristic strength (Pa) of concrete of class `f_ck` (Pa) at an age: `f_ck(t) = β_cc f_cm − 8 MPa` with
/// `f_cm = f_ck + 8 MPa` (EN 1992-1-1:2004, 3.1.2(5), from memory), `f_ck` from 28 days on.
///
/// `None`, cannot tell: the age is not known; not above 3 days of effective age, where the clause asks for
/// tests; younger than a year with no temperature known; frost on average.
///
/// # Errors
/// A class outside 8 to 90 MPa, an age below 0, a temperature outside −40 to 80 °C.
pub fn strength_at(f_ck: f64, cement: Cement, age: Option<Age>, trace: &mut impl Trace) -> Result<Option<f64>, Faults> {
    let mut ranges = Ranges::default();
    ranges.within("f_ck", f_ck, Dimension::Pressure, 8e6, 90e6);
    if let Some(age) = age {
        ranges.within("age.days", age.days, Dimension::Number, 0.0, 100_000.0);
        if let Some(celsius) = age.celsius {
            ranges.within("age.celsius", celsius, Dimension::Number, -40.0, 80.0);
        }
    }
    ranges.done(())?;
    let Some(age) = age else { return Ok(None) };
    // A slab that has seen a summer has hardened; one cast four weeks ago in the cold has not.
    let days = match age.celsius {
        Some(celsius) if celsius >= 0.0 => effective_days(age.days, celsius),
        None if age.days >= LONG_HARDENED => age.days,
        _ => return Ok(None),
    };
    if days <= 3.0 {
        return Ok(None);
    }
    if days >= 28.0 {
        return Ok(Some(f_ck));
    }
    let mean = f_ck + 8e6;
    let beta = beta_cc(cement, days);
    let now = beta * mean - 8e6;
    let named = |name: &'static str, si, dimension| (name.into(), Quantity::new(si, dimension));
    trace.step(|| Step {
        title: text::STEP_CONCRETE_AGE.message(),
        formula: "t_T = t · min(1; exp(13.65 − 4000 / (273 + T)))".into(),
        values: vec![
            named("t", age.days, Dimension::Number),
            named("T", age.celsius.unwrap_or(f64::NAN), Dimension::Number),
        ],
        result: named("t_T", days, Dimension::Number),
        source: Source::from_memory("EN 1992-1-1:2004, B.1(3)"),
    });
    trace.step(|| Step {
        title: text::STEP_CONCRETE_BETA.message(),
        formula: "β_cc = exp(s · (1 − √(28 / t_T)))".into(),
        values: vec![named("s", cement.coefficient(), Dimension::Number), named("t_T", days, Dimension::Number)],
        result: named("β_cc", beta, Dimension::Number),
        source: Source::from_memory("EN 1992-1-1:2004, 3.1.2(6)"),
    });
    trace.step(|| Step {
        title: text::STEP_CONCRETE_STRENGTH.message(),
        formula: "f_ck(t) = β_cc · (f_ck + 8 MPa) − 8 MPa".into(),
        values: vec![named("β_cc", beta, Dimension::Number), named("f_ck", f_ck, Dimension::Pressure)],
        result: named("f_ck(t)", now, Dimension::Pressure),
        source: Source::from_memory("EN 1992-1-1:2004, 3.1.2(5)"),
    });
    // Slow cement, low class, few days: nothing is left after the 8 MPa.
    Ok((now > 0.0).then_some(now))
}

/// Days after which a temperature is no longer asked for: a year holds a summer (ours).
pub const LONG_HARDENED: f64 = 365.0;
