//! Immediate settlement of pads by elastic theory, the tilt that comes of it, and what the boom's head makes of that.

use crate::step_values::{angle, length, number, pressure};
use crate::{Profile, Refusal, Stiffness, text};
use core::f64::consts::PI;
use evidence::{Source, Step, Trace};

/// A rigid pad settles by that share of what the middle of a flexible one does (Bowles; from memory; π/4 of a circle is
/// exact, and less).
pub const RIGID: f64 = 0.93;

/// How deep the ground has to be known, in widths of the widest pad (ours). What is stated deeper counts too.
pub const KNOWN_TO: f64 = 4.0;

/// A pad that presses evenly.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct PressedPad {
    /// Middle, site x and y, m.
    pub at: [f64; 2],
    /// Sides along x and y, m.
    pub sides: [f64; 2],
    /// Pressure, Pa.
    pub pressure: f64,
}

/// Influence of a rectangle's corner on its own settlement between the surface and depth `h`: `F_1 + (1 − 2ν)/(1 − ν)·F_2` times
/// `B·(1 − ν²)`, in metres: `s = q/E·I` (Steinbrenner 1934; from memory, compared with integrals of Boussinesq's stresses).
/// Sides `l`, `b` in m; `h` may be infinite.
pub fn corner_influence(l: f64, b: f64, h: f64, poisson: f64) -> f64 {
    if !(l > 0.0 && b > 0.0 && h > 0.0) {
        return if l == 0.0 || b == 0.0 || h == 0.0 { 0.0 } else { f64::NAN };
    }
    let m = l / b;
    let root_m = libm::sqrt(1.0 + m * m);
    let (f1, f2) = if h.is_infinite() {
        (libm::log((1.0 + root_m) / m) * m + libm::log(m + root_m), 0.0)
    } else {
        let n = h / b;
        let root_n = libm::sqrt(1.0 + n * n);
        let root_mn = libm::sqrt(m * m + n * n);
        let root = libm::sqrt(m * m + n * n + 1.0);
        (
            m * libm::log((1.0 + root_m) * root_mn / (m * (1.0 + root)))
                + libm::log((m + root_m) * root_n / (m + root)),
            0.5 * n * libm::atan(m / (n * root)),
        )
    };
    let share = (1.0 - 2.0 * poisson) / (1.0 - poisson);
    b * (1.0 - poisson * poisson) / PI * (f1 + share * f2)
}

/// Influence (m) of a rectangle on the settlement of any point of the surface: four rectangles that meet in it.
pub fn point_influence(pad: &PressedPad, at: [f64; 2], h: f64, poisson: f64) -> f64 {
    let side = |i: usize| {
        let d = at[i] - pad.at[i];
        [0.5 * pad.sides[i] - d, 0.5 * pad.sides[i] + d]
    };
    let mut sum = 0.0;
    for x in side(0) {
        for y in side(1) {
            sum += (x * y).signum() * if x * y == 0.0 { 0.0 } else { corner_influence(x.abs(), y.abs(), h, poisson) };
        }
    }
    sum
}

/// Settlement (m) at a point of the surface by pads on a layered ground: layer by layer, each as the difference of what a
/// ground of its own stiffness gives down to its bottom and down to its top (Steinbrenner's way with layers). Every layer
/// counts, and the last that is stated goes down for ever.
///
/// # Errors
/// [`Refusal::NoStiffness`] where a layer has none, [`Refusal::NotExplored`] where layers end above [`KNOWN_TO`] widths.
/// [`Refusal::NoNumber`].
pub fn settlement_at(pads: &[PressedPad], at: [f64; 2], ground: &Profile) -> Result<f64, Refusal> {
    let mut sum = 0.0;
    for part in parts(pads, at, ground)? {
        sum += part.settles;
    }
    if sum.is_finite() { Ok(sum) } else { Err(Refusal::NoNumber) }
}

/// What one layer adds under one pad.
struct Part {
    pressure: f64,
    stiffness: Stiffness,
    top: f64,
    /// Infinite of the last.
    bottom: f64,
    /// Influence down to its top and to its bottom, m.
    influence: [f64; 2],
    settles: f64,
}

fn parts(pads: &[PressedPad], at: [f64; 2], ground: &Profile) -> Result<Vec<Part>, Refusal> {
    let widest = pads.iter().map(|p| p.sides[0].max(p.sides[1])).fold(0.0, f64::max);
    let layers = ground.below(0.0, KNOWN_TO * widest)?;
    let mut parts = Vec::with_capacity(layers.len() * pads.len());
    for (i, layer) in layers.iter().enumerate() {
        let stiffness = layer.stiffness.ok_or(Refusal::NoStiffness)?;
        let Stiffness { modulus, poisson } = stiffness;
        // The last that is stated goes down for ever, as a half-space.
        let bottom = if i + 1 == layers.len() { f64::INFINITY } else { layer.bottom() };
        for pad in pads {
            let sound = pad.pressure >= 0.0 && pad.sides.iter().all(|s| *s > 0.0 && s.is_finite());
            if !(sound && modulus > 0.0 && (0.0..=0.5).contains(&poisson)) {
                return Err(Refusal::NoNumber);
            }
            let above = if layer.top > 0.0 { point_influence(pad, at, layer.top, poisson) } else { 0.0 };
            let influence = [above, point_influence(pad, at, bottom, poisson)];
            let settles = pad.pressure / modulus * (influence[1] - influence[0]);
            parts.push(Part { pressure: pad.pressure, stiffness, top: layer.top, bottom, influence, settles });
        }
    }
    Ok(parts)
}

/// Influence of a rectangle's middle: four quarters that meet there.
const MIDDLE: &str = "Δs = q/E·(I_2 − I_1),  I(z) = 4·B/2·(1 − ν²)/π·(F_1 + (1 − 2·ν)/(1 − ν)·F_2),  m = L/B,  n = 2·z/B,  \
    F_1 = m·ln((1 + √(1 + m²))·√(m² + n²)/(m·(1 + √(m² + n² + 1)))) + ln((m + √(1 + m²))·√(1 + n²)/(m + √(m² + n² + 1))),  \
    F_2 = n/2·atan(m/(n·√(m² + n² + 1)))";

impl Part {
    fn step(&self, pad: &PressedPad) -> Step {
        let mut values = vec![
            pressure("q", self.pressure),
            length("L", pad.sides[0]),
            length("B", pad.sides[1]),
            pressure("E", self.stiffness.modulus),
            number("ν", self.stiffness.poisson),
            length("z_1", self.top),
        ];
        // Without end: I_2 is that of a half-space.
        if self.bottom.is_finite() {
            values.push(length("z_2", self.bottom));
        }
        values.extend([length("I_1", self.influence[0]), length("I_2", self.influence[1])]);
        Step {
            title: text::STEP_SETTLEMENT_LAYER.message(),
            formula: MIDDLE.into(),
            values,
            result: length("Δs", self.settles),
            source: Source::from_memory("Steinbrenner 1934"),
        }
    }
}

/// Settlement (m) of each of several rigid pads, each under all: [`RIGID`] of its own middle, and what the others do there.
///
/// # Errors
/// As [`settlement_at`].
pub fn settlements(pads: &[PressedPad], ground: &Profile, trace: &mut impl Trace) -> Result<Vec<f64>, Refusal> {
    (0..pads.len()).map(|i| settlement_of(pads, i, ground, trace)).collect()
}

/// Settlement (m) of the rigid pad `i` under all of them.
///
/// # Errors
/// As [`settlement_at`]; [`Refusal::NoNumber`] where there is no such pad.
pub fn settlement_of(pads: &[PressedPad], i: usize, ground: &Profile, trace: &mut impl Trace) -> Result<f64, Refusal> {
    let pad = pads.get(i).ok_or(Refusal::NoNumber)?;
    let own = settlement_at(core::slice::from_ref(pad), pad.at, ground)?;
    let mut others = 0.0;
    for (_, other) in pads.iter().enumerate().filter(|(j, _)| *j != i) {
        others += settlement_at(core::slice::from_ref(other), pad.at, ground)?;
    }
    let s = RIGID * own + others;
    for part in parts(core::slice::from_ref(pad), pad.at, ground)? {
        trace.step(|| part.step(pad));
    }
    trace.step(|| Step {
        title: text::STEP_SETTLEMENT.message(),
        formula: "s = 0.93·s_0 + Σ s_i,  s_0 = Σ Δs".into(),
        values: vec![
            pressure("q", pad.pressure),
            length("L", pad.sides[0]),
            length("B", pad.sides[1]),
            length("s_0", own),
            length("Σ s_i", others),
        ],
        result: length("s", s),
        source: Source::from_memory("Steinbrenner 1934; rigid pads after Bowles"),
    });
    Ok(s)
}

/// Tilt (rad) from settlements `a` and `b` (m) of two pads that far apart (m), and how far it moves something at that height
/// (m) above them.
///
/// # Errors
/// [`Refusal::NoNumber`].
pub fn head_moves([a, b]: [f64; 2], apart: f64, height: f64, trace: &mut impl Trace) -> Result<(f64, f64), Refusal> {
    let sound =
        a.is_finite() && b.is_finite() && apart > 0.0 && apart.is_finite() && height >= 0.0 && height.is_finite();
    if !sound {
        return Err(Refusal::NoNumber);
    }
    let tilt = libm::atan2((a - b).abs(), apart);
    let moves = height * libm::sin(tilt);
    trace.step(|| Step {
        title: text::STEP_SETTLEMENT_TILT.message(),
        formula: "tan ω = |s_1 − s_2|/b".into(),
        values: vec![length("s_1", a), length("s_2", b), length("b", apart)],
        result: angle("ω", tilt),
        source: Source::Mechanics,
    });
    trace.step(|| Step {
        title: text::STEP_SETTLEMENT_HEAD.message(),
        formula: "u = h·sin ω".into(),
        values: vec![length("h", height), number("sin ω", libm::sin(tilt))],
        result: length("u", moves),
        source: Source::Mechanics,
    });
    Ok((tilt, moves))
}
