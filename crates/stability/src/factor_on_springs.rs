//! How many times the load tips a machine on springs.

use crate::{LineOnSprings, LoadOnBoom, Loading, TippingLine};
use geometry::DVec3;

/// Load factor on springs, at most `most`, with the line over which it tips: the share of the load at
/// which the tilt that remains ([`LineOnSprings::tilt`]) is used up. `None` where `most` of the load
/// still stands. 0 where it tips without load; NaN where the tilt is no number.
///
/// `bare` is without the load; `overturning` the wind's moment about each line, N·m. The tilt falls with the load over a line that the load tips.
pub fn load_factor_on_springs(
    lines: &[LineOnSprings],
    overturning: &[f64],
    bare: &Loading,
    load: LoadOnBoom,
    most: f64,
) -> Option<(f64, TippingLine)> {
    let mut found = None;
    let mut least = most;
    for (on, overturning) in lines.iter().zip(overturning) {
        let line = &on.rigid;
        let asked = -bare.gravity.dot(line.along.cross(load.at - line.point) + DVec3::X * line.held);
        // No line to which the load itself adds: more of it does not tip there.
        if asked <= 0.0 {
            continue;
        }
        let loading = |factor: f64| {
            let masses = bare.masses.with(LoadOnBoom { mass: load.mass * factor, at: load.at });
            Loading { masses, ..*bare }
        };
        if on.sine_at_least(&loading(least), *overturning) >= 0.0 {
            continue;
        }
        let tilt = |factor| on.tilt(&loading(factor));
        let there = tilt(least);
        if there.is_nan() {
            return Some((f64::NAN, *line));
        }
        if there >= 0.0 {
            continue;
        }
        let bare = tilt(0.0);
        if bare < 0.0 {
            return Some((0.0, *line));
        }
        let factor = last_that_stands((0.0, bare), (least, there), &tilt);
        (least, found) = (factor, Some((factor, *line)));
    }
    found
}

/// Where a tilt that falls goes through 0, within 0.01 % and on the side that stands: by
/// false position, now just short of it and now just beyond, so that both ends close in; every fourth
/// time by halving. `low` stands, `high` does not.
pub(crate) fn last_that_stands(mut low: (f64, f64), mut high: (f64, f64), tilt: &impl Fn(f64) -> f64) -> f64 {
    let mut step = 0;
    while high.0 - low.0 > 1e-4 * high.0 && step < 200 {
        step += 1;
        let slack = 2e-5 * high.0;
        let straight = low.0 + (high.0 - low.0) * low.1 / (low.1 - high.1);
        let next = match step % 4 {
            0 => f64::midpoint(low.0, high.0),
            2 => straight + slack,
            _ => straight - slack,
        };
        let next = next.clamp(low.0 + slack, high.0 - slack);
        let there = tilt(next);
        // What is no number does not stand.
        if there >= 0.0 { low = (next, there) } else { high = (next, there) }
    }
    low.0
}
