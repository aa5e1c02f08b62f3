//! Meyerhof 1963. Shape and depth of the overburden's and the weight's term second hand, the rest from memory.
//!
//! He gives `s_q`, `s_γ`, `d_q`, `d_γ` for `φ > 10°` and one for `φ = 0`; between, we let them grow straight.

use crate::bearing::{Given, Term};
use crate::n_gamma_meyerhof;
use core::f64::consts::FRAC_PI_2;

pub(crate) const CITATION: &str = "Meyerhof 1963";

const TEN_DEGREES: f64 = core::f64::consts::PI / 18.0;

pub(crate) fn terms(g: &Given<'_>) -> [Term; 3] {
    let p = &g.prandtl;
    let friction = p.friction;
    let passive = p.passive();
    let grown = (friction / TEN_DEGREES).min(1.0);
    let ratio = g.effective.ratio;
    let depth = libm::sqrt(passive) * g.case.credited_depth / g.effective.full_width;
    let (i_q, i_gamma) = inclination(g, friction);
    let grow = |by: f64| 1.0 + 0.1 * grown * by;
    let (s, d) = (grow(passive * ratio), grow(depth));
    [
        Term { shape: 1.0 + 0.2 * passive * ratio, depth: 1.0 + 0.2 * depth, inclination: i_q, ..Term::bare(p.n_c) },
        Term { shape: s, depth: d, inclination: i_q, ..Term::bare(p.n_q) },
        Term { shape: s, depth: d, inclination: i_gamma, ..Term::bare(n_gamma_meyerhof(p)) },
    ]
}

/// `i_c = i_q = (1 − θ/90°)²`, `i_γ = (1 − θ/φ)²`, with `θ` the lean of the force.
fn inclination(g: &Given<'_>, friction: f64) -> (f64, f64) {
    if g.push == 0.0 {
        return (1.0, 1.0);
    }
    let lean = libm::atan2(g.push, g.case.load.vertical);
    let i = 1.0 - lean / FRAC_PI_2;
    let i_gamma = if lean < friction { 1.0 - lean / friction } else { 0.0 };
    (i * i, i_gamma * i_gamma)
}
