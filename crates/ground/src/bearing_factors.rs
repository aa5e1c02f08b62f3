//! Bearing capacity factors by author, dimensionless. Friction angles in radians.
//!
//! All are written so that nothing is divided by zero at `φ = 0`.

use crate::terzaghi_tables;
use core::f64::consts::PI;

/// `N_q` (Reissner 1924) and `N_c` (Prandtl 1921), used by Meyerhof, Hansen, Vesić and EN 1997-1:2004, D.4.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Prandtl {
    /// Angle of friction, rad.
    pub friction: f64,
    /// Its sine.
    pub sin: f64,
    /// Its cosine.
    pub cos: f64,
    /// Its tangent.
    pub tan: f64,
    /// `N_q − 1`, which keeps its digits where friction is small.
    pub n_q_less_1: f64,
    /// `N_q = exp(π·tan φ)·tan²(45° + φ/2)`.
    pub n_q: f64,
    /// `N_c = (N_q − 1)·cot φ`, at `φ = 0` its limit `π + 2`.
    pub n_c: f64,
}

impl Prandtl {
    /// The factors at `friction`, rad.
    pub fn of(friction: f64) -> Self {
        let (sin, cos) = libm::sincos(friction);
        let tan = sin / cos;
        // tan²(45° + φ/2) = (1 + sin φ)/(1 − sin φ)
        let n_q_less_1 = libm::expm1(PI * tan + libm::log1p(sin) - libm::log1p(-sin));
        let n_c = if tan == 0.0 { PI + 2.0 } else { n_q_less_1 / tan };
        Self { friction, sin, cos, tan, n_q_less_1, n_q: n_q_less_1 + 1.0, n_c }
    }

    /// `K_p = tan²(45° + φ/2)`, Rankine's coefficient of passive pressure.
    pub fn passive(&self) -> f64 {
        (1.0 + self.sin) / (1.0 - self.sin)
    }
}

/// `N_γ = (N_q − 1)·tan(1.4·φ)`, Meyerhof 1963.
pub fn n_gamma_meyerhof(p: &Prandtl) -> f64 {
    p.n_q_less_1 * libm::tan(1.4 * p.friction)
}

/// `N_γ = 1.5·(N_q − 1)·tan φ`, Hansen 1970.
pub fn n_gamma_hansen(p: &Prandtl) -> f64 {
    1.5 * p.n_q_less_1 * p.tan
}

/// `N_γ = 2·(N_q + 1)·tan φ`, Vesić 1973.
pub fn n_gamma_vesic(p: &Prandtl) -> f64 {
    2.0 * (p.n_q + 1.0) * p.tan
}

/// `N_γ = 2·(N_q − 1)·tan φ` for a rough base (`δ ≥ φ/2`), EN 1997-1:2004, D.4.
pub fn n_gamma_en1997(p: &Prandtl) -> f64 {
    2.0 * p.n_q_less_1 * p.tan
}

/// Factors of Terzaghi 1943 for a rough base.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct TerzaghiFactors {
    /// `N_c = (N_q − 1)·cot φ`, at `φ = 0` its limit `3π/2 + 1`.
    pub n_c: f64,
    /// `N_q = exp((3π/2 − φ)·tan φ)/(2·cos²(45° + φ/2))`.
    pub n_q: f64,
    /// `N_γ`: the lower of the two families of tables in print.
    pub n_gamma: f64,
}

impl TerzaghiFactors {
    /// The factors at `friction` (rad), or none above 45°, where the tables end.
    pub fn of(p: &Prandtl) -> Option<Self> {
        let n_gamma = terzaghi_tables::least(p)?;
        // 2·cos²(45° + φ/2) = 1 − sin φ
        let less_1 = libm::expm1((1.5 * PI - p.friction) * p.tan - libm::log1p(-p.sin));
        let n_c = if p.tan == 0.0 { 1.5 * PI + 1.0 } else { less_1 / p.tan };
        Some(Self { n_c, n_q: less_1 + 1.0, n_gamma })
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn factors_are_smooth_through_no_friction() {
        let (at, near) = (Prandtl::of(0.0), Prandtl::of(1e-9));
        assert_eq!(at.n_c, PI + 2.0);
        assert!((near.n_c - at.n_c).abs() < 1e-7 && (near.n_q - 1.0).abs() < 1e-7);
        let [at, near] = [at, near].map(|p| TerzaghiFactors::of(&p).map_or(f64::NAN, |t| t.n_c));
        assert!((at - 5.712).abs() < 1e-3 && (near - at).abs() < 1e-7);
        for n in [n_gamma_meyerhof, n_gamma_hansen, n_gamma_vesic, n_gamma_en1997] {
            assert!(n(&Prandtl::of(0.0)).abs() == 0.0);
        }
    }
}
