//! Contact between machine and ground.

use crate::text;
use evidence::{Source, Step, Trace};
use quantity::{Dimension, Quantity};

/// What touches the ground.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Contact {
    /// A pneumatic tyre with its inflation pressure, Pa. Mean contact pressure equals the inflation
    /// pressure as a first estimate (handbook practice, from memory); stiff-walled tyres press harder.
    Tyre {
        /// Inflation pressure, Pa.
        inflation: f64,
    },
    /// A stabilizer pad of that area, m².
    Pad {
        /// Area, m².
        area: f64,
    },
}

impl Contact {
    /// Mean contact pressure under `force` (N), Pa.
    pub fn pressure(self, force: f64) -> f64 {
        match self {
            Self::Tyre { inflation } => inflation,
            Self::Pad { area } => not_pulling(force) / area,
        }
    }

    /// Contact area under `force` (N), m².
    pub fn area(self, force: f64) -> f64 {
        match self {
            Self::Tyre { inflation } => not_pulling(force) / inflation,
            Self::Pad { area } => area,
        }
    }

    /// [`Contact::pressure`], with its steps.
    pub fn traced_pressure(self, force: f64, trace: &mut impl Trace) -> f64 {
        let pressure = self.pressure(force);
        let f = ("F", Quantity::new(force, Dimension::Force));
        let p = ("p", Quantity::new(pressure, Dimension::Pressure));
        let a = ("A", Quantity::new(self.area(force), Dimension::Area));
        let memory = || Source::from_memory("tyre patch = wheel force / inflation pressure, handbook practice");
        let pair = |(s, q): (&'static str, Quantity)| (s.into(), q);
        match self {
            Self::Tyre { inflation } => {
                let p_i = ("p_i", Quantity::new(inflation, Dimension::Pressure));
                trace.step(|| Step {
                    title: text::STEP_TYRE_PRESSURE.message(),
                    formula: "p = p_i".into(),
                    values: vec![pair(p_i)],
                    result: pair(p),
                    source: memory(),
                });
                trace.step(|| Step {
                    title: text::STEP_TYRE_PATCH.message(),
                    formula: "A = F / p_i".into(),
                    values: vec![pair(f), pair(p_i)],
                    result: pair(a),
                    source: memory(),
                });
            }
            Self::Pad { .. } => trace.step(|| Step {
                title: text::STEP_PAD_PRESSURE.message(),
                formula: "p = F / A".into(),
                values: vec![pair(f), pair(a)],
                result: pair(p),
                source: Source::Mechanics,
            }),
        }
        pressure
    }
}

/// A contact in tension carries nothing; what is not a number stays so.
pub(crate) fn not_pulling(force: f64) -> f64 {
    if force < 0.0 { 0.0 } else { force }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_tyre_presses_with_its_inflation_and_a_pad_with_its_force() {
        let tyre = Contact::Tyre { inflation: 4e5 };
        assert_eq!(tyre.pressure(40e3), 4e5);
        assert!((tyre.area(40e3) - 0.1).abs() < 1e-12);
        let pad = Contact::Pad { area: 0.16 };
        assert!((pad.pressure(64e3) - 4e5).abs() < 1e-6);
        assert_eq!(pad.pressure(-5.0), 0.0, "a lifted pad presses nothing");
        assert!(pad.pressure(f64::NAN).is_nan(), "nothing is made of what is not a number");
    }

    #[test]
    fn working_ends_in_the_number_used() {
        let mut working = evidence::Working::default();
        let p = Contact::Pad { area: 0.16 }.traced_pressure(64e3, &mut working);
        assert_eq!(working.steps[0].result.1.si, p);
    }
}
