//! Terzaghi 1943, general shear, rough base: `q_ult = 1.3·c·N_c + q·N_q + 0.4·γ·B·N_γ` under a square (second hand),
//! 0.3 under a circle, 1.0 and 0.5 under a strip; a rectangle between, straight in `B/L` (from memory).
//! No depth factors, no leaning force, no slope.

use crate::TerzaghiFactors;
use crate::bearing::{Given, Term};

pub(crate) const CITATION: &str = "Terzaghi 1943";

/// None where friction is beyond the tables of `N_γ`.
pub(crate) fn terms(g: &Given<'_>) -> Option<[Term; 3]> {
    let n = TerzaghiFactors::of(&g.prandtl)?;
    let ratio = g.effective.ratio;
    let less = if g.effective.round { 0.4 } else { 0.2 };
    Some([
        Term { shape: 1.0 + 0.3 * ratio, ..Term::bare(n.n_c) },
        Term::bare(n.n_q),
        Term { shape: 1.0 - less * ratio, ..Term::bare(n.n_gamma) },
    ])
}
