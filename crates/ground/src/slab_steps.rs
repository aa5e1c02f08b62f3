//! What a slab's loads come to, as steps of a working.

use crate::beam::Beam;
use crate::step_values::{force, length, pressure};
use crate::text;
use crate::worst_place::WorstPlace;
use evidence::{Source, Step, TextId};
use quantity::{Dimension, Quantity};

fn moment(symbol: &'static str, si: f64) -> (std::borrow::Cow<'static, str>, Quantity) {
    (symbol.into(), Quantity::new(si, Dimension::Moment))
}

/// A metre of slab under own weight and even load with their factors (Pa), and the pallet (N) at its worst place, spread
/// over the width that bends there (m). What counts is the bound, at most 1 % above what is reached.
pub(crate) fn bending(
    beam: &Beam,
    title: TextId,
    [own, beside]: [f64; 2],
    pallet: f64,
    (worst, width): (WorstPlace, f64),
) -> Step {
    let longest = beam.spans().iter().map(|s| s.length).fold(0.0, f64::max);
    Step {
        title: title.message(),
        formula: "m(u) of g_d, q_d and F/b_w on the feet from u;  m(u) ≤ m ≤ 1.01·m(u)".into(),
        values: vec![
            length("l", longest),
            pressure("g_d", own),
            pressure("q_d", beside),
            force("F", pallet),
            length("u", worst.place),
            length("b_w", width),
            moment("m(u)", worst.reached),
        ],
        result: moment("m", worst.bound),
        source: Source::Mechanics,
    }
}

/// All of the pallet (N) passing one section of that width (m), besides the even loads' shear (N/m).
pub(crate) fn wide_shear(pallet: f64, width: f64, even: f64) -> Step {
    Step {
        title: text::STEP_SLAB_WIDE_SHEAR.message(),
        formula: "v = F/b_v + v_even".into(),
        values: vec![force("F", pallet), length("b_v", width), force("v_even", even)],
        result: force("v", pallet / width + even),
        source: Source::Mechanics,
    }
}

/// A force (N) punching along a perimeter `u_1` (m) in a slab of that depth (m): EN 1992-1-1:2004, 6.4.2, 6.4.3, from memory.
pub(crate) fn punching(title: TextId, load: f64, around: f64, depth: f64) -> Step {
    Step {
        title: title.message(),
        formula: "v_Ed = F / (u_1 · d)".into(),
        values: vec![force("F", load), length("u_1", around), length("d", depth)],
        result: pressure("v_Ed", load / (around * depth)),
        source: Source::from_memory("EN 1992-1-1:2004, 6.4.2, 6.4.3"),
    }
}

/// The stress at the edge of a foot: 6.4.5(3), from memory.
pub(crate) fn crushing(load: f64, [a, b]: [f64; 2], depth: f64, stress: f64) -> Step {
    Step {
        title: text::STEP_FOOT_CRUSHING.message(),
        formula: "v_Ed = F / (2 · (a + b) · d)".into(),
        values: vec![force("F", load), length("a", a), length("b", b), length("d", depth)],
        result: pressure("v_Ed", stress),
        source: Source::from_memory("EN 1992-1-1:2004, 6.4.5(3)"),
    }
}
