//! What mats are made of: strengths as used in design, and stiffness.

use crate::step_values::{Value, number, pressure};
use crate::{Refusal, text};
use evidence::{Source, Step, Trace};

/// Values for bending a mat. Pa.
#[derive(Debug, Clone, PartialEq)]
pub struct MatMaterial {
    /// Design strength in bending.
    pub bending: f64,
    /// Design strength in shear.
    pub shear: f64,
    /// Modulus of elasticity, mean.
    pub modulus: f64,
    /// How it spreads a load.
    pub spreads: Spreads,
    /// Where the values come from.
    pub source: Source,
    /// What the strengths are made of.
    pub made: Made,
    /// What has come off the strengths because the force has no factor: 1 or [`FORCE_FACTOR`].
    pub force_factor: f64,
}

/// What design strengths are made of, Pa.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Made {
    /// Planks of a class.
    Timber(TimberClass),
    /// Steel of that yield strength.
    Steel(f64),
    /// Bending and shear as declared, and what divides them.
    Declared {
        /// Bending.
        bending: f64,
        /// Shear.
        shear: f64,
        /// Divides both.
        factor: f64,
    },
}

/// The greater factor on forces of EN 1990:2002, Table A1.2(B) (from memory): it comes off a mat's strengths where a set of
/// factors leaves the force as it is ([`crate::FactorSet::on_mat`]).
pub const FORCE_FACTOR: f64 = 1.5;

/// How a mat spreads a load.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Spreads {
    /// Along its planks only; across, as far as the pad itself stands on planks.
    AlongPlanks,
    /// Both ways, as a plate.
    BothWays,
}

/// Strength classes of timber: characteristic bending and shear, mean modulus (EN 338:2016, Table 1; from memory).
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[expect(missing_docs, reason = "the names of the classes are their own documentation")]
pub enum TimberClass {
    C16,
    C18,
    C24,
    C30,
    D30,
    D40,
    D50,
    D60,
    D70,
}

impl TimberClass {
    /// Every class with its name.
    pub const NAMED: [(&str, Self); 9] = [
        ("C16", Self::C16),
        ("C18", Self::C18),
        ("C24", Self::C24),
        ("C30", Self::C30),
        ("D30", Self::D30),
        ("D40", Self::D40),
        ("D50", Self::D50),
        ("D60", Self::D60),
        ("D70", Self::D70),
    ];

    /// Characteristic bending strength, characteristic shear strength, mean modulus, Pa.
    pub fn characteristic(self) -> [f64; 3] {
        let [f_m, f_v, e] = match self {
            Self::C16 => [16.0, 3.2, 8_000.0],
            Self::C18 => [18.0, 3.4, 9_000.0],
            Self::C24 => [24.0, 4.0, 11_000.0],
            Self::C30 => [30.0, 4.0, 12_000.0],
            Self::D30 => [30.0, 3.9, 11_000.0],
            Self::D40 => [40.0, 4.2, 13_000.0],
            Self::D50 => [50.0, 4.5, 14_000.0],
            Self::D60 => [60.0, 4.8, 17_000.0],
            Self::D70 => [70.0, 5.0, 20_000.0],
        };
        [f_m * 1e6, f_v * 1e6, e * 1e6]
    }
}

/// `k_mod` of solid timber outdoors (service class 3), short-term load (EN 1995-1-1:2004, Table 3.1; from memory).
pub const TIMBER_WET: f64 = 0.7;
/// `γ_M` of solid timber (EN 1995-1-1:2004, Table 2.3; from memory).
pub const TIMBER_FACTOR: f64 = 1.3;
/// Share of a plank's width without cracks that carries shear, `k_cr` (EN 1995-1-1:2004/A1:2008, 6.1.7; from memory).
pub const TIMBER_CRACKS: f64 = 0.67;

impl MatMaterial {
    /// Planks of a strength class, wet: `f_d = k_mod·f_k/γ_M`, shear on `k_cr` of the width.
    pub fn timber(class: TimberClass) -> Self {
        let [f_m, f_v, modulus] = class.characteristic();
        let design = TIMBER_WET / TIMBER_FACTOR;
        Self {
            bending: design * f_m,
            shear: design * TIMBER_CRACKS * f_v,
            modulus,
            spreads: Spreads::AlongPlanks,
            source: Source::from_memory("EN 338:2016, Table 1; EN 1995-1-1:2004, Tables 2.3, 3.1"),
            made: Made::Timber(class),
            force_factor: 1.0,
        }
    }

    /// A steel plate of that yield strength (Pa): elastic bending, `τ = f_y/√3` (EN 1993-1-1:2005, 6.2; from memory).
    ///
    /// # Errors
    /// [`Refusal::NoNumber`] outside 100 to 1300 MPa.
    pub fn steel_plate(yield_strength: f64) -> Result<Self, Refusal> {
        if !(100e6..=1300e6).contains(&yield_strength) {
            return Err(Refusal::NoNumber);
        }
        Ok(Self {
            bending: yield_strength,
            shear: yield_strength / libm::sqrt(3.0),
            modulus: 210e9,
            spreads: Spreads::BothWays,
            source: Source::from_memory("EN 1993-1-1:2005, 6.2"),
            made: Made::Steel(yield_strength),
            force_factor: 1.0,
        })
    }

    /// A mat whose maker or designer declares its values: strengths divided by `factor`, at least 1.
    ///
    /// # Errors
    /// [`Refusal::NoNumber`] for a value that is not above zero, or a factor below 1.
    pub fn declared(
        [bending, shear, modulus]: [f64; 3],
        factor: f64,
        spreads: Spreads,
        source: Source,
    ) -> Result<Self, Refusal> {
        let sound = [bending, shear, modulus].iter().all(|v| *v > 0.0 && v.is_finite());
        if !(sound && factor >= 1.0 && factor.is_finite()) {
            return Err(Refusal::NoNumber);
        }
        Ok(Self {
            bending: bending / factor,
            shear: shear / factor,
            modulus,
            spreads,
            source,
            made: Made::Declared { bending, shear, factor },
            force_factor: 1.0,
        })
    }

    /// Strengths less [`FORCE_FACTOR`], for a force without a factor.
    pub(crate) fn under_plain_force(&self) -> Self {
        let less = FORCE_FACTOR / self.force_factor;
        Self { bending: self.bending / less, shear: self.shear / less, force_factor: FORCE_FACTOR, ..self.clone() }
    }

    /// How the strengths come about.
    pub(crate) fn steps(&self, trace: &mut impl Trace) {
        let factor = || number("γ_F", self.force_factor);
        let [bending, shear]: [(&'static str, Vec<Value>); 2] = match self.made {
            Made::Timber(class) => {
                let [f_m, f_v, _] = class.characteristic();
                let (k_mod, gamma) = (|| number("k_mod", TIMBER_WET), || number("γ_M", TIMBER_FACTOR));
                let cracks = number("k_cr", TIMBER_CRACKS);
                [
                    ("f_m = k_mod·f_mk/(γ_M·γ_F)", vec![k_mod(), pressure("f_mk", f_m), gamma(), factor()]),
                    (
                        "f_v = k_mod·k_cr·f_vk/(γ_M·γ_F)",
                        vec![k_mod(), cracks, pressure("f_vk", f_v), gamma(), factor()],
                    ),
                ]
            }
            Made::Steel(f_y) => [
                ("f_m = f_y/γ_F", vec![pressure("f_y", f_y), factor()]),
                ("f_v = f_y/(√3·γ_F)", vec![pressure("f_y", f_y), factor()]),
            ],
            Made::Declared { bending, shear, factor: divides } => [
                ("f_m = f_mk/(γ_M·γ_F)", vec![pressure("f_mk", bending), number("γ_M", divides), factor()]),
                ("f_v = f_vk/(γ_M·γ_F)", vec![pressure("f_vk", shear), number("γ_M", divides), factor()]),
            ],
        };
        let of = [
            (text::STEP_MAT_STRENGTH, bending, pressure("f_m", self.bending)),
            (text::STEP_MAT_SHEAR_STRENGTH, shear, pressure("f_v", self.shear)),
        ];
        for (title, (formula, values), result) in of {
            trace.step(|| Step {
                title: title.message(),
                formula: formula.into(),
                values,
                result,
                source: self.source.clone(),
            });
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn stronger_classes_are_stronger_and_declared_values_are_checked() {
        let c = |t: TimberClass| MatMaterial::timber(t).bending;
        assert!(c(TimberClass::C16) < c(TimberClass::C24) && c(TimberClass::C24) < c(TimberClass::D40));
        assert!((c(TimberClass::C24) - 0.7 * 24e6 / 1.3).abs() < 1.0);
        assert!(MatMaterial::steel_plate(235.0).is_err(), "MPa meant");
        let bad = MatMaterial::declared([20e6, 2e6, 1e9], 0.5, Spreads::BothWays, Source::CommonPractice);
        assert_eq!(bad, Err(Refusal::NoNumber));
    }
}
