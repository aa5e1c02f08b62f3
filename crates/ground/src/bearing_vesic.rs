//! Vesić 1973 (factors, shape, inclination) and 1975 (ground slope). Shape and depth second hand or read, as the
//! manual says; slope from memory.

use crate::bearing::{Given, Term};
use crate::{Prandtl, Strength, n_gamma_vesic};
use core::f64::consts::PI;

pub(crate) const CITATION: &str = "Vesić 1973, 1975";

pub(crate) fn terms(g: &Given<'_>) -> [Term; 3] {
    let (ratio, slope, k) = (g.effective.ratio, g.case.slope, g.k);
    match g.case.strength {
        Strength::Undrained { .. } => {
            let n_c = PI + 2.0;
            let c = Term {
                shape: 1.0 + ratio / n_c,
                depth: 1.0 + 0.4 * k,
                inclination: (1.0 - g.effective.exponent() * g.lean() / n_c).max(0.0),
                ground: 1.0 - 2.0 * slope / n_c,
                ..Term::bare(n_c)
            };
            // Without friction the wedge's own weight pushes down a slope: N_γ = −2·sin β.
            let down = Term::bare(-2.0 * libm::sin(slope));
            [c, Term { ground: ground(slope), ..Term::bare(1.0) }, down]
        }
        Strength::Drained { .. } => {
            let (p, [i_c, i_q, i_gamma]) = (&g.prandtl, g.leaning);
            let d = depth(p) * k;
            let g_q = ground(slope);
            // Not below zero: a slope as steep as friction leaves nothing of the cohesion's term.
            let g_c = if slope > 0.0 { (g_q - (1.0 - g_q) / p.n_q_less_1).max(0.0) } else { 1.0 };
            [
                Term {
                    shape: 1.0 + ratio * p.n_q / p.n_c,
                    // d_q − (1 − d_q)/(N_c·tan φ)
                    depth: 1.0 + d + depth_over_tan(p) * k / p.n_c,
                    inclination: i_c,
                    ground: g_c,
                    ..Term::bare(p.n_c)
                },
                Term { shape: 1.0 + ratio * p.tan, depth: 1.0 + d, inclination: i_q, ground: g_q, ..Term::bare(p.n_q) },
                Term { shape: 1.0 - 0.4 * ratio, inclination: i_gamma, ground: g_q, ..Term::bare(n_gamma_vesic(p)) },
            ]
        }
    }
}

/// `(1 − tan β)²`
fn ground(slope: f64) -> f64 {
    let rest = (1.0 - libm::tan(slope)).max(0.0);
    rest * rest
}

/// `2·tan φ·(1 − sin φ)²`: what `k` of one adds to `d_q` (Hansen 1970).
pub(crate) fn depth(p: &Prandtl) -> f64 {
    p.tan * depth_over_tan(p)
}

fn depth_over_tan(p: &Prandtl) -> f64 {
    2.0 * (1.0 - p.sin) * (1.0 - p.sin)
}
