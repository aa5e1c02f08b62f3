//! The gust at which a required tilt is just left. Closed form: the force goes with the square of the
//! speed. On tyres that give it is sought below that.

use crate::factor_on_springs::last_that_stands;
use crate::tipping::arm;
use crate::{LineOnSprings, Loading, TippingLine};
use quantity::STANDARD_GRAVITY as G;

/// Gust (m/s, at the height of load and boom) at which the tilt that remains over `line` has sunk to
/// `required` (rad).
///
/// `loading.wind` is that of the gust `gust` (m/s). With elevation `ψ` of gravity over the plane of line
/// and centre the tilt is `ψ − asin(M_w / (g·|a|))`, so that the required one is left at
/// `M_w = g·|a|·sin(ψ − δ_required)`; and `M_w ∝ v²` (mechanics).
///
/// 0 where the required tilt is not there without any wind; infinite where no wind overturns over
/// this line; not a number where nothing can be told: a gust, a required tilt below zero or a mass
/// that is no number, or no wind to scale from.
pub fn gust_at_limit(loading: &Loading, gust: f64, line: &TippingLine, required: f64) -> f64 {
    let (_, a) = arm(&loading.masses, line);
    let size = a.length();
    let overturning = loading.wind.overturning(line);
    let known = size > 0.0 && size.is_finite() && gust > 0.0 && gust.is_finite() && required >= 0.0;
    if !known || !overturning.is_finite() || loading.wind.greatest_force() <= 0.0 {
        return f64::NAN;
    }
    let left = libm::asin((loading.gravity.dot(a) / size).clamp(-1.0, 1.0)) - required;
    if left <= 0.0 {
        return 0.0;
    }
    if overturning == 0.0 {
        return f64::INFINITY;
    }
    gust * (G * size * libm::sin(left) / overturning).sqrt()
}

/// [`gust_at_limit`] on contacts that give: never more, and within 0.01 % on the side where the required
/// tilt is left.
pub fn gust_at_limit_on_springs(loading: &Loading, gust: f64, line: &LineOnSprings, required: f64) -> f64 {
    let rigid = gust_at_limit(loading, gust, &line.rigid, required);
    // Without wind over this line, no speed of it changes anything.
    let most = if rigid.is_finite() { rigid } else { gust };
    let spare = |v: f64| {
        let wind = loading.wind.scaled((v / gust) * (v / gust));
        line.tilt(&Loading { wind, ..*loading }) - required
    };
    let (calm, there) = (spare(0.0), spare(most));
    if rigid.is_nan() || calm.is_nan() || there.is_nan() {
        f64::NAN
    } else if calm < 0.0 {
        0.0
    } else if there >= 0.0 {
        rigid
    } else {
        last_that_stands((0.0, calm), (most, there), &spare)
    }
}
