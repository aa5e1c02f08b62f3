//! Granular platform over clay, after the working-platform method of BRE report 470 (2004), which is from memory here.
//!
//! The platform punches through as a block; along its sides acts passive pressure with friction:
//! `R/A = c_u·N_c·s_c + (γ_p·D²/W)·K_p·tan δ·s_p`, `N_c = π + 2`, `s_c = 1 + 0.2·W/L`, `s_p = 1 + W/L`. The report reads
//! `K_p·tan δ` off a chart for `δ = ⅔·φ`; here `K_p` is Rankine's, which has no wall friction in it and is less: on the
//! safe side (ours). Never more than the platform's own bearing, `½·γ_p·W·N_γ·s_γ`, `s_γ = 1 − 0.3·W/L`.

use crate::step_values::{angle, length, number, pressure, weight};
use crate::{Prandtl, Refusal, n_gamma_en1997, text};
use core::f64::consts::PI;
use evidence::{Source, Step, Trace};

/// Strengths of the clay for which the method was made, Pa (from memory).
pub const CLAY: (f64, f64) = (20e3, 80e3);
/// Thinnest platform that is counted, m (from memory).
pub const THINNEST: f64 = 0.3;
/// Thickest platform over the width of the load for which the method was made (from memory).
pub const THICKEST: f64 = 1.5;
/// Factor on loads that the operator cannot stop from coming, such as standing and travelling (from memory).
pub const FACTOR_STANDING: f64 = 2.0;
/// Factor on loads that the operator sees coming and can set down (from memory).
pub const FACTOR_HANDLING: f64 = 1.5;

/// A platform on clay under a rectangle of load.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Platform {
    /// Angle of friction of its material, rad.
    pub friction: f64,
    /// Unit weight that acts, N/m³.
    pub unit_weight: f64,
    /// Undrained strength of the clay, Pa.
    pub clay: f64,
    /// Shorter side of the load, m.
    pub width: f64,
    /// Longer side, m.
    pub length: f64,
}

impl Platform {
    /// Pressure at failure (Pa) with a platform of that thickness (m).
    ///
    /// # Errors
    /// [`Refusal::OutsideMethod`] for clay, thickness or friction (30° to 50°) outside what the method is for.
    pub fn bearing(&self, thickness: f64, trace: &mut impl Trace) -> Result<f64, Refusal> {
        self.check()?;
        if !(THINNEST..=THICKEST * self.width).contains(&thickness) {
            return Err(Refusal::OutsideMethod);
        }
        let sides = self.sides() * thickness * thickness;
        let (clay, own) = (self.clay_alone(), self.own());
        let q = (clay + sides).min(own);
        self.own_step(trace);
        trace.step(|| Step {
            title: text::STEP_PLATFORM.message(),
            formula: "q = min(c_u·(π + 2)·(1 + 0.2·W/L) + γ·D²/W·K_p·tan(⅔·φ)·(1 + W/L), q_own)".into(),
            values: vec![
                pressure("c_u", self.clay),
                angle("φ", self.friction),
                weight("γ", self.unit_weight),
                length("D", thickness),
                length("W", self.width),
                length("L", self.length),
                number("K_p", Prandtl::of(self.friction).passive()),
                pressure("q_own", own),
            ],
            result: pressure("q", q),
            source: source(),
        });
        Ok(q)
    }

    /// Thickness (m) for which `demand` (Pa, with its factor) is carried; 0 where the bare clay does, without any
    /// platform. At least [`THINNEST`] otherwise.
    ///
    /// # Errors
    /// [`Refusal::OutsideMethod`] as [`Platform::bearing`], and where the platform's own material fails first or it
    /// would have to be thicker than the method goes.
    pub fn thickness(&self, demand: f64, trace: &mut impl Trace) -> Result<f64, Refusal> {
        self.check()?;
        if !(demand >= 0.0 && demand.is_finite()) {
            return Err(Refusal::NoNumber);
        }
        let missing = demand - self.clay_alone();
        let needed = if missing <= 0.0 { 0.0 } else { libm::sqrt(missing / self.sides()).max(THINNEST) };
        let fails = needed > 0.0 && (demand > self.own() || needed > THICKEST * self.width);
        if fails {
            return Err(Refusal::OutsideMethod);
        }
        self.own_step(trace);
        trace.step(|| Step {
            title: text::STEP_PLATFORM_THICKNESS.message(),
            formula: "q ≤ q_own,  D = √(W·(q − c_u·(π + 2)·(1 + 0.2·W/L)) / (γ·K_p·tan(⅔·φ)·(1 + W/L)))".into(),
            values: vec![
                pressure("q", demand),
                pressure("c_u", self.clay),
                angle("φ", self.friction),
                weight("γ", self.unit_weight),
                length("W", self.width),
                length("L", self.length),
                number("K_p", Prandtl::of(self.friction).passive()),
            ],
            result: length("D", needed),
            source: source(),
        });
        Ok(needed)
    }

    fn check(&self) -> Result<(), Refusal> {
        let sides = self.width > 0.0 && self.length >= self.width && self.unit_weight > 0.0;
        let sound = sides && self.width.is_finite() && self.unit_weight.is_finite();
        if !sound {
            return Err(Refusal::NoNumber);
        }
        let friction = 30.0_f64.to_radians() - 1e-12..=50.0_f64.to_radians() + 1e-12;
        let covered = (CLAY.0..=CLAY.1).contains(&self.clay) && friction.contains(&self.friction);
        if covered { Ok(()) } else { Err(Refusal::OutsideMethod) }
    }

    fn ratio(&self) -> f64 {
        self.width / self.length
    }
    fn clay_alone(&self) -> f64 {
        self.clay * (PI + 2.0) * (1.0 + 0.2 * self.ratio())
    }
    /// What the sides add, over thickness squared.
    fn sides(&self) -> f64 {
        let passive = Prandtl::of(self.friction).passive();
        self.unit_weight / self.width * passive * libm::tan(self.friction * 2.0 / 3.0) * (1.0 + self.ratio())
    }
    fn own_step(&self, trace: &mut impl Trace) {
        trace.step(|| {
            let factors = Prandtl::of(self.friction);
            Step {
                title: text::STEP_PLATFORM_OWN.message(),
                formula:
                    "q_own = ½·γ·W·N_γ·(1 − 0.3·W/L),  N_γ = 2·(N_q − 1)·tan φ,  N_q = exp(π·tan φ)·tan²(45° + φ/2)"
                        .into(),
                values: vec![
                    angle("φ", self.friction),
                    number("N_q", factors.n_q),
                    number("N_γ", n_gamma_en1997(&factors)),
                    weight("γ", self.unit_weight),
                    length("W", self.width),
                    length("L", self.length),
                ],
                result: pressure("q_own", self.own()),
                source: Source::second_hand("EN 1997-1:2004, annex D, D.4"),
            }
        });
    }
    fn own(&self) -> f64 {
        let n_gamma = n_gamma_en1997(&Prandtl::of(self.friction));
        0.5 * self.unit_weight * self.width * n_gamma * (1.0 - 0.3 * self.ratio())
    }
}

fn source() -> Source {
    Source::from_memory("BRE report 470, Working platforms for tracked plant, 2004")
}

#[cfg(test)]
mod tests {
    use super::*;
    use evidence::Silent;

    const ON_SOFT_CLAY: Platform = Platform { friction: 0.698, unit_weight: 20e3, clay: 25e3, width: 0.8, length: 1.2 };

    #[test]
    fn the_thickness_found_carries_what_was_asked() {
        let demand = 200e3;
        let t = ON_SOFT_CLAY.thickness(demand, &mut Silent).unwrap_or(f64::NAN);
        assert!(t > THINNEST && t < 1.2, "{t}");
        let q = ON_SOFT_CLAY.bearing(t, &mut Silent).unwrap_or(f64::NAN);
        assert!((q - demand).abs() < 1e-6, "{q}");
        assert_eq!(ON_SOFT_CLAY.thickness(100e3, &mut Silent), Ok(0.0), "the clay carries that bare");
    }

    #[test]
    fn its_own_bearing_is_printed_with_its_factors() {
        let mut working = evidence::Working::default();
        let thickness = ON_SOFT_CLAY.thickness(200e3, &mut working);
        assert!(thickness.is_ok() && ON_SOFT_CLAY.bearing(0.5, &mut working).is_ok());
        let own: Vec<_> = working.steps.iter().filter(|s| s.result.0 == "q_own").collect();
        assert_eq!(own.len(), 2);
        for step in own {
            let v = |symbol: &str| step.values.iter().find(|v| v.0 == symbol).map_or(f64::NAN, |v| v.1.si);
            let n_gamma = 2.0 * (v("N_q") - 1.0) * libm::tan(v("φ"));
            let q = 0.5 * v("γ") * v("W") * n_gamma * (1.0 - 0.3 * v("W") / v("L"));
            assert!((n_gamma - v("N_γ")).abs() < 1e-9 && (q - step.result.1.si).abs() < 1e-6);
        }
    }

    #[test]
    fn outside_its_range_the_method_gives_nothing() {
        let soft = Platform { clay: 10e3, ..ON_SOFT_CLAY };
        assert_eq!(soft.bearing(0.5, &mut Silent), Err(Refusal::OutsideMethod));
        assert_eq!(ON_SOFT_CLAY.bearing(0.1, &mut Silent), Err(Refusal::OutsideMethod));
        assert_eq!(ON_SOFT_CLAY.thickness(2e6, &mut Silent), Err(Refusal::OutsideMethod));
        assert_eq!(ON_SOFT_CLAY.thickness(f64::NAN, &mut Silent), Err(Refusal::NoNumber));
    }
}
