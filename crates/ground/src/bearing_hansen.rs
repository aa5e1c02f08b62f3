//! Hansen 1970, "A revised and extended formula for bearing capacity". From memory but for shape, depth and `N_γ`;
//! compared with API RP 2GEO 2011, which follows it.
//!
//! For drained soil he writes `Q/A + c·cot φ = (q + c·cot φ)·N_q·s_q·d_q·i_q·g_q + ½·γ·B·N_γ·…`, so that cohesion's
//! term is `c·(N_q·s_q·d_q·i_q·g_q − 1)·cot φ`. For undrained soil he adds: `c_u·(π + 2)·(1 + s + d − i − g) + q`.

use crate::bearing::{Given, Term};
use crate::{Prandtl, Strength, bearing_vesic, n_gamma_hansen};
use core::f64::consts::PI;

pub(crate) const CITATION: &str = "Hansen 1970";

pub(crate) fn terms(g: &Given<'_>) -> [Term; 3] {
    let (ratio, slope, k) = (g.effective.ratio, g.case.slope, g.k);
    match g.case.strength {
        Strength::Undrained { .. } => {
            let i = 0.5 - 0.5 * libm::sqrt((1.0 - g.lean()).max(0.0));
            let s = 0.2 * (1.0 - 2.0 * i) * ratio;
            let together = 1.0 + s + 0.4 * k - i - 2.0 * slope / (PI + 2.0);
            [Term { shape: together.max(0.0), ..Term::bare(PI + 2.0) }, Term::bare(1.0), Term::bare(0.0)]
        }
        Strength::Drained { .. } => {
            let p = &g.prandtl;
            // H/(V + A′·c·cot φ)
            let lean = g.lean() * p.tan;
            let i_q = fifth(1.0 - 0.5 * lean);
            let i_gamma = fifth((1.0 - 0.7 * lean).max(0.0));
            let ground = fifth((1.0 - 0.5 * libm::tan(slope)).max(0.0));
            let q = Term {
                shape: 1.0 + i_q * ratio * p.sin,
                depth: 1.0 + bearing_vesic::depth(p) * k,
                inclination: i_q,
                ground,
                ..Term::bare(p.n_q)
            };
            let gamma = Term {
                shape: 1.0 - 0.4 * i_gamma * ratio,
                inclination: i_gamma,
                ground,
                ..Term::bare(n_gamma_hansen(p))
            };
            [by_correspondence(g, p, &q), q, gamma]
        }
    }
}

/// `N_c·k_c` with `k_c = (N_q·k_q − 1)/(N_q − 1)`; near `φ = 0` by its limit, which divides nothing.
fn by_correspondence(g: &Given<'_>, p: &Prandtl, q: &Term) -> Term {
    let k_c = if p.tan > 1e-7 {
        (q.together() - 1.0) / p.n_q_less_1
    } else {
        1.0 + (g.effective.ratio + 2.0 * g.k - 2.5 * g.lean()) / p.n_c
    };
    Term { shape: k_c.max(0.0), ..Term::bare(p.n_c) }
}

fn fifth(v: f64) -> f64 {
    v * v * v * v * v
}
