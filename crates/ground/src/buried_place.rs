//! Where on a buried thing, and how deep within what is known of its cover, wheels press most.
//!
//! Less cover is not always worse: beside a wheel the stress rises with depth before it falls, and the weight of the cover
//! always rises. So the whole range of the cover is looked at. Under a point load `ln σ` bends by no less than −2.5 in
//! `ln z` (mechanics: `σ ∝ z³/R⁵`), a sum of loads by no less than any of them, and impact adds less than −0.4: places a
//! [`STEP`] apart miss less than 0.1 % of the elastic stress in between. 2:1 spread only falls with depth but where a patch, or
//! several together, first reach the crown: where it has stepped up between two places, that depth is halved in.

use crate::buried::{Buried, CrownStress};
use crate::stress::{Patch, patches_stress};
use evidence::Silent;

/// Step of depth, as a share of it.
const STEP: f64 = 0.05;

/// Steps about each wheel along and across.
const REACH: i32 = 8;

/// How often the depth of a step of 2:1 is halved in: to a 5,000th of the depth.
const HALVINGS: usize = 8;

/// What presses on the crown at places of depth over the range of its cover, as `pressed` says of one. `low` is above 0.
pub(crate) fn over_range([low, high]: [f64; 2], pressed: impl Fn(f64) -> CrownStress) -> Vec<CrownStress> {
    let steps = (libm::log(high / low) / STEP).ceil();
    // A micrometre is the least cover that is told from none: no more than some 350 steps.
    let steps = if steps > 0.0 { steps.min(400.0) } else { 0.0 };
    let depth = |i: usize| low * libm::pow(high / low, i as f64 / steps);
    let mut out = vec![pressed(low)];
    out.extend((1..steps as usize).map(|i| pressed(depth(i))));
    if high > low {
        out.push(pressed(high));
    }
    for i in 1..out.len() {
        let (mut above, mut below) = (out[i - 1], out[i]);
        if below.spread < below.elastic || below.total <= above.total {
            continue;
        }
        for _ in 0..HALVINGS {
            let middle = pressed(f64::midpoint(above.depth, below.depth));
            if middle.total > below.total { below = middle } else { above = middle }
        }
        out.push(below);
    }
    out
}

/// The place of the crown where both ways' larger stress is greatest: under or beside every wheel, at every quarter
/// of the cover along the crown and across its breadth, then finer.
pub(crate) fn worst_place(thing: &Buried, wheels: &[Patch], cover: f64) -> [f64; 2] {
    let [a, b] = thing.crown;
    let d = [b[0] - a[0], b[1] - a[1]];
    let length = libm::hypot(d[0], d[1]);
    let along = if length > 0.0 { [d[0] / length, d[1] / length] } else { [1.0, 0.0] };
    let place = |s: f64, o: f64| [a[0] + along[0] * s - along[1] * o, a[1] + along[1] * s + along[0] * o];
    // 2:1 is even all over its area: of places that are alike by it, the one that is pressed most elastically is told.
    let stress = |s: f64, o: f64| {
        let both = patches_stress(wheels, place(s, o), cover, &mut Silent);
        both.larger() + 1e-6 * both.elastic
    };
    let step = (cover / 4.0).clamp(0.05, 1.0);
    let half = thing.half_breadth;
    let mut starts: Vec<(f64, f64)> = Vec::new();
    // Far from every wheel nothing governs: only the stretch that they reach is walked.
    let near = |w: &Patch| {
        let v = [w.middle[0] - a[0], w.middle[1] - a[1]];
        let s = (v[0] * along[0] + v[1] * along[1]).clamp(0.0, length);
        let o = (v[1] * along[0] - v[0] * along[1]).clamp(-half, half);
        (s, o)
    };
    for w in wheels {
        let (s, o) = near(w);
        // Beyond its ends and breadth all are the same place: each is asked once.
        let around = |middle: f64, low: f64, high: f64| {
            let mut places: Vec<f64> =
                (-REACH..=REACH).map(|i| (middle + step * f64::from(i)).clamp(low, high)).collect();
            places.dedup();
            places
        };
        let across = around(o, -half, half);
        for s in around(s, 0.0, length) {
            starts.extend(across.iter().map(|o| (s, *o)));
        }
        for other in wheels {
            let (t, p) = near(other);
            starts.push((f64::midpoint(s, t), f64::midpoint(o, p)));
        }
    }
    let mut best = ((0.0, 0.0), f64::NEG_INFINITY);
    for at in starts {
        let found = stress(at.0, at.1);
        if found > best.1 {
            best = (at, found);
        }
    }
    let mut step = step / 2.0;
    while step > 1e-3 {
        let mut better = false;
        for (ds, d_o) in [(step, 0.0), (-step, 0.0), (0.0, step), (0.0, -step)] {
            let at = ((best.0.0 + ds).clamp(0.0, length), (best.0.1 + d_o).clamp(-half, half));
            let found = stress(at.0, at.1);
            if found > best.1 {
                (best, better) = ((at, found), true);
            }
        }
        if !better {
            step /= 2.0;
        }
    }
    place(best.0.0, best.0.1)
}
