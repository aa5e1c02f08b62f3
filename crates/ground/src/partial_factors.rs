//! Design values: sets of partial factors by name, or one factor.

use crate::mat_material::MatMaterial;
use crate::step_values::{force, number};
use crate::{Stated, Strength, text};
use evidence::{Source, Step, Trace};

/// A set of factors. EN 1997-1:2004, annex A, recommended values, from memory; a country's annex may differ.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum FactorSet {
    /// Design approach 1, combination 1: A1 + M1 + R1.
    Da1Combination1,
    /// Design approach 1, combination 2: A2 + M2 + R1.
    Da1Combination2,
    /// Design approach 2: A1 + M1 + R2.
    Da2,
    /// Design approach 3, structural actions: A1 + M2 + R3.
    Da3,
    /// One factor on the resistance, as stated; at least 1.
    Global(f64),
}

/// Characteristic vertical forces, N.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Loads {
    /// Own weight: it does not change.
    pub permanent: f64,
    /// What comes and goes: load, wind, what movement adds.
    pub variable: f64,
}

struct Values {
    permanent: f64,
    variable: f64,
    friction: f64,
    cohesion: f64,
    undrained: f64,
    bearing: f64,
}

impl FactorSet {
    /// Both combinations of design approach 1: each must hold.
    pub const DA1: [Self; 2] = [Self::Da1Combination1, Self::Da1Combination2];

    fn values(self) -> Values {
        let none = Values { permanent: 1.0, variable: 1.0, friction: 1.0, cohesion: 1.0, undrained: 1.0, bearing: 1.0 };
        let a1 = Values { permanent: 1.35, variable: 1.5, ..none };
        let m2 = |v: Values| Values { friction: 1.25, cohesion: 1.25, undrained: 1.4, ..v };
        match self {
            Self::Da1Combination1 => a1,
            Self::Da1Combination2 => m2(Values { variable: 1.3, ..none }),
            Self::Da2 => Values { bearing: 1.4, ..a1 },
            Self::Da3 => m2(a1),
            // Less than one would be more than the ground has; not a number stays so.
            Self::Global(f) => Values { bearing: if f < 1.0 { f64::NAN } else { f }, ..none },
        }
    }

    /// Where the factors come from.
    pub fn source(self) -> Source {
        match self {
            Self::Global(_) => Source::CommonPractice,
            _ => Source::from_memory("EN 1997-1:2004, annex A, Tables A.3, A.4, A.5"),
        }
    }

    /// Design strength: `c_u/γ_cu`, `c′/γ_c′`, `tan φ′/γ_φ′`.
    pub fn strength(self, characteristic: Strength) -> Strength {
        match characteristic {
            Strength::Undrained { c_u } => Strength::Undrained { c_u: self.undrained(c_u) },
            Strength::Drained { cohesion, friction } => {
                let (cohesion, friction) = self.drained(cohesion, friction);
                Strength::Drained { cohesion, friction }
            }
        }
    }

    /// Design values of everything stated of a soil.
    pub fn stated(self, characteristic: Stated) -> Stated {
        Stated {
            undrained: characteristic.undrained.map(|c_u| self.undrained(c_u)),
            drained: characteristic.drained.map(|(cohesion, friction)| self.drained(cohesion, friction)),
        }
    }

    fn undrained(self, c_u: f64) -> f64 {
        c_u / self.values().undrained
    }

    fn drained(self, cohesion: f64, friction: f64) -> (f64, f64) {
        let v = self.values();
        // Left as it is where nothing divides it: there and back would lose a digit.
        let friction = if v.friction == 1.0 { friction } else { libm::atan(libm::tan(friction) / v.friction) };
        (cohesion / v.cohesion, friction)
    }

    /// Design force, N.
    pub fn action(self, loads: Loads, trace: &mut impl Trace) -> f64 {
        let v = self.values();
        let design = v.permanent * loads.permanent + v.variable * loads.variable;
        trace.step(|| Step {
            title: text::STEP_DESIGN_ACTION.message(),
            formula: "V_d = γ_G·G + γ_Q·Q".into(),
            values: vec![
                number("γ_G", v.permanent),
                force("G", loads.permanent),
                number("γ_Q", v.variable),
                force("Q", loads.variable),
            ],
            result: force("V_d", design),
            source: self.source(),
        });
        design
    }

    /// What a mat is made of, as this set asks it: where the force has no factor, [`crate::mat_material::FORCE_FACTOR`] comes
    /// off its strengths. A mat's own strength is not soil's, and no factor on the ground covers it.
    pub fn on_mat(self, material: &MatMaterial) -> MatMaterial {
        match self {
            Self::Global(_) => material.under_plain_force(),
            _ => material.clone(),
        }
    }

    /// Design resistance (N) from one that was calculated with [`FactorSet::strength`].
    pub fn resistance(self, resistance: f64, trace: &mut impl Trace) -> f64 {
        let v = self.values();
        let design = resistance / v.bearing;
        trace.step(|| Step {
            title: text::STEP_DESIGN_RESISTANCE.message(),
            formula: "R_d = R/γ_R".into(),
            values: vec![force("R", resistance), number("γ_R", v.bearing)],
            result: force("R_d", design),
            source: self.source(),
        });
        design
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use evidence::Silent;

    #[test]
    fn factors_raise_forces_and_lower_strength() {
        let loads = Loads { permanent: 10e3, variable: 20e3 };
        let act = |s: FactorSet| s.action(loads, &mut Silent);
        assert_eq!(act(FactorSet::Da1Combination1), 43.5e3);
        assert_eq!(act(FactorSet::Da1Combination2), 36e3);
        assert_eq!(act(FactorSet::Global(2.0)), 30e3);
        let clay = Strength::Undrained { c_u: 70e3 };
        assert_eq!(FactorSet::Da1Combination2.strength(clay), Strength::Undrained { c_u: 70e3 / 1.4 });
        assert_eq!(FactorSet::Da2.strength(clay), clay);
        assert!((FactorSet::Da2.resistance(14e3, &mut Silent) - 10e3).abs() < 1e-9);
        assert_eq!(FactorSet::Global(2.5).resistance(25e3, &mut Silent), 10e3);
        let sand = Strength::Drained { cohesion: 5e3, friction: 0.6 };
        let Strength::Drained { cohesion, friction } = FactorSet::Da3.strength(sand) else { unreachable!() };
        assert!((cohesion - 4e3).abs() < 1e-9 && (libm::tan(friction) * 1.25 - libm::tan(0.6)).abs() < 1e-12);
    }

    /// Whoever counts own weight as variable, as a lift does, asks no less.
    #[test]
    fn all_as_variable_is_never_less() {
        for set in [
            FactorSet::Da1Combination1,
            FactorSet::Da1Combination2,
            FactorSet::Da2,
            FactorSet::Da3,
            FactorSet::Global(3.0),
        ] {
            for own in [0.0, 5e3, 20e3] {
                let (apart, whole) =
                    (Loads { permanent: own, variable: 20e3 - own }, Loads { permanent: 0.0, variable: 20e3 });
                assert!(set.action(whole, &mut Silent) >= set.action(apart, &mut Silent));
            }
        }
    }

    #[test]
    fn a_factor_below_one_gives_no_number() {
        assert!(FactorSet::Global(0.8).resistance(1.0, &mut Silent).is_nan());
        assert!(FactorSet::Global(f64::NAN).resistance(1.0, &mut Silent).is_nan());
    }
}
