//! EN 1997-1:2004, annex D.3 (undrained) and D.4 (drained), level ground and base. No depth factors there.
//! Second hand: a calculation sheet after it, reproduced to the digit; `s_c`, `i_c` and D.3 from memory.

use crate::bearing::{Given, Term};
use crate::{Strength, n_gamma_en1997};
use core::f64::consts::PI;

pub(crate) const CITATION: &str = "EN 1997-1:2004, D.3, D.4";

pub(crate) fn terms(g: &Given<'_>) -> [Term; 3] {
    let ratio = g.effective.ratio;
    match g.case.strength {
        Strength::Undrained { .. } => {
            let inclination = 0.5 * (1.0 + libm::sqrt((1.0 - g.lean()).max(0.0)));
            [Term { shape: 1.0 + 0.2 * ratio, inclination, ..Term::bare(PI + 2.0) }, Term::bare(1.0), Term::bare(0.0)]
        }
        Strength::Drained { .. } => {
            let (p, [i_c, i_q, i_gamma]) = (&g.prandtl, g.leaning);
            [
                // (s_q·N_q − 1)/(N_q − 1), with N_q − 1 = N_c·tan φ
                Term { shape: 1.0 + ratio * p.cos * p.n_q / p.n_c, inclination: i_c, ..Term::bare(p.n_c) },
                Term { shape: 1.0 + ratio * p.sin, inclination: i_q, ..Term::bare(p.n_q) },
                Term { shape: 1.0 - 0.3 * ratio, inclination: i_gamma, ..Term::bare(n_gamma_en1997(p)) },
            ]
        }
    }
}

/// `i_q = (1 − H/(V + A′·c·cot φ))^m`, `i_γ = (…)^(m+1)`, `i_c = i_q − (1 − i_q)/(N_c·tan φ)`; Vesić's too.
pub(crate) fn inclination(g: &Given<'_>) -> [f64; 3] {
    let (lean, p) = (g.lean(), &g.prandtl);
    let m = g.effective.exponent();
    let log = libm::log1p(-(lean * p.tan));
    let i_q_less_1 = libm::expm1(m * log);
    let i_q = 1.0 + i_q_less_1;
    let over_tan = if p.tan == 0.0 { -m * lean } else { i_q_less_1 / p.tan };
    let i_c = i_q + over_tan / p.n_c;
    [i_c.max(0.0), i_q, libm::exp((m + 1.0) * log)]
}
