//! Onset of tipping and what is left before it. Closed form.
//!
//! Moment about a line through `P` with unit direction `u`: `M = m·g·(ĝ · a)` with
//! `a = u × (G − P)` and `ĝ` the unit vector of gravity in the machine frame; positive holds,
//! zero is the onset (moment balance of a rigid body on one edge).

use crate::{LoadOnBoom, Masses, TippingLine, TipsOver, text};
use evidence::{Silent, Source, Step, Trace};
use geometry::DVec3;
use quantity::{Dimension, Quantity, STANDARD_GRAVITY as G};

/// Gravity on level ground.
pub const LEVEL: DVec3 = DVec3::new(0.0, 0.0, -1.0);

/// Unit vector of gravity in the frame of a machine whose ground rises by `along` ahead (nose up)
/// and falls by `across` to the left, both as rise over run.
pub fn gravity_for_slopes(along: f64, across: f64) -> DVec3 {
    // The ground plane in machine axes: gravity leans backward when the nose is up, left when the left is low.
    DVec3::new(-along, across, -1.0).normalize()
}

/// Everything that loads the machine in one corner of the uncertain inputs.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Loading {
    /// Machine and load.
    pub masses: Masses,
    /// Unit vector of gravity in the machine frame.
    pub gravity: DVec3,
    /// Wind, whose direction is the worst for each line.
    pub wind: crate::wind::WindLoad,
}

/// `a = u × (G·m − P·m)`: first moment about the line, kg·m.
///
/// Where the rear axle hangs free, two more parts come through its pin `A`, which passes on every moment
/// but that about the machine's length `x̂` (moment balance of the axle):
/// - `u_yz × (G_A − A)_xy·m_A` of the axle's own weight where its centre is not straight under or over
///   the pin, with `u_yz` the part of `u` square to `x̂`
/// - `M·h·x̂` of the rear wheels where they hold the machine along its length (`h`,
///   [`TippingLine::held`]): their force is `−M·g·ĝ_x`, with `M` the whole mass
pub(crate) fn arm(masses: &Masses, line: &TippingLine) -> (f64, DVec3) {
    let (m, moment) = masses.counted(line.with_rear_axle);
    let own = line.along.cross(moment - line.point * m);
    if line.with_rear_axle {
        return (m, own);
    }
    (m, own + through_the_pin(masses, line))
}

/// Those two parts, kg·m.
///
/// What the axle's pull along the machine does by being higher or lower than the pin is left out: it
/// changes the onset by less than 0.1° (own comparison, `validation/witness`).
pub(crate) fn through_the_pin(masses: &Masses, line: &TippingLine) -> DVec3 {
    let off = (masses.axle_moment - line.pin * masses.axle).with_z(0.0);
    line.along.with_x(0.0).cross(off) + DVec3::X * (masses.total() * line.held)
}

/// Restoring moment about a line by weight and wind, N·m; negative: it tips.
pub fn restoring_moment(loading: &Loading, line: &TippingLine) -> f64 {
    restoring_of_weight(loading, line) - loading.wind.overturning(line)
}

fn restoring_of_weight(loading: &Loading, line: &TippingLine) -> f64 {
    let (_, a) = arm(&loading.masses, line);
    G * loading.gravity.dot(a)
}

/// Tilt at which tipping starts.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Onset {
    /// Tilt of the whole ground plane, rad.
    pub tilt: f64,
    /// Which way it goes over.
    pub over: TipsOver,
}

/// Tilt of a level ground plane in the direction of descent `azimuth` (rad, 0 = downhill ahead,
/// π/2 = downhill to the left) at which the machine starts to tip; `None` if it does not before 90°.
pub fn onset(masses: &Masses, lines: &[TippingLine], azimuth: f64) -> Option<Onset> {
    let (s, c) = libm::sincos(azimuth);
    let downhill = DVec3::new(c, s, 0.0);
    let mut first: Option<Onset> = None;
    for line in lines {
        let (_, a) = arm(masses, line);
        // ĝ(θ) = sin θ · downhill − cos θ · ẑ: M = sin θ · (a·d) − cos θ · a_z.
        let (along, level) = (a.dot(downhill), -a.z);
        let tilt = if level <= 0.0 {
            Some(0.0)
        } else if along < 0.0 {
            Some(libm::atan2(level, -along))
        } else {
            None
        };
        if let Some(tilt) = tilt
            && first.is_none_or(|f| tilt < f.tilt)
        {
            first = Some(Onset { tilt, over: line.over });
        }
    }
    first
}

/// Load at `at` (kg) at which the level machine is at the point of tipping over `line`; `None` if
/// no load there tips it that way.
pub fn level_tipping_load(masses: &Masses, line: &TippingLine, at: DVec3) -> Option<f64> {
    let (_, a) = arm(masses, line);
    let unit = line.along.cross(at - line.point);
    let (held, asked) = (-a.z, unit.z);
    (asked > 0.0).then(|| held / asked)
}

/// How many times the load would start to tip the machine as it stands, over the worst line;
/// `None`: no load there does. Wind and attitude stay as they are.
///
/// `masses` is without the load.
pub fn load_factor(
    bare: &Loading,
    load: LoadOnBoom,
    lines: &[TippingLine],
    trace: &mut impl Trace,
) -> Option<(f64, TipsOver)> {
    load_factor_in(bare, load, lines, |i| bare.wind.overturning(&lines[i]), trace)
}

/// The same where the wind's moment about each line is at hand, as a search has it.
///
/// `overturning` is in the order of `lines`; where it says nothing of a line the moment is no number.
pub fn load_factor_with(
    bare: &Loading,
    load: LoadOnBoom,
    lines: &[TippingLine],
    overturning: &[f64],
) -> Option<(f64, TipsOver)> {
    let about = |i: usize| overturning.get(i).copied().unwrap_or(f64::NAN);
    load_factor_in(bare, load, lines, about, &mut Silent)
}

fn load_factor_in(
    bare: &Loading,
    load: LoadOnBoom,
    lines: &[TippingLine],
    overturning: impl Fn(usize) -> f64,
    trace: &mut impl Trace,
) -> Option<(f64, TipsOver)> {
    let mut worst: Option<(f64, TippingLine, f64, f64)> = None;
    for (i, line) in lines.iter().enumerate() {
        let lever = line.along.cross(load.at - line.point) + DVec3::X * line.held;
        let asked = -G * bare.gravity.dot(lever);
        if asked > 0.0 {
            let held = restoring_of_weight(bare, line) - overturning(i);
            let factor = held / (asked * load.mass);
            if worst.is_none_or(|(w, ..)| factor < w) {
                worst = Some((factor, *line, held, asked));
            }
        }
    }
    let (factor, line, held, asked) = worst?;
    let tipping = held / asked;
    line_steps(bare, &line, trace);
    trace.step(|| Step {
        title: text::STEP_RESTORING.message(),
        formula: "M_r = m · g · (ĝ · a) − M_w  (without load)".into(),
        values: vec![
            ("m".into(), kg(bare.masses.counted(line.with_rear_axle).0)),
            ("g".into(), Quantity::number(G)),
            (
                "ĝ·a".into(),
                Quantity::new(
                    bare.gravity.dot(arm(&bare.masses, &line).1) / arm(&bare.masses, &line).0,
                    Dimension::Length,
                ),
            ),
            ("M_w".into(), nm(bare.wind.overturning(&line))),
        ],
        result: ("M_r".into(), nm(held)),
        source: Source::Mechanics,
    });
    trace.step(|| Step {
        title: text::STEP_TIPPING_LOAD.message(),
        formula: "W_t = M_r / (g · a_L)".into(),
        values: vec![
            ("M_r".into(), nm(held)),
            ("g".into(), Quantity::number(G)),
            ("a_L".into(), Quantity::new(asked / G, Dimension::Length)),
        ],
        result: ("W_t".into(), kg(tipping)),
        source: Source::Mechanics,
    });
    trace.step(|| Step {
        title: text::STEP_LOAD_FACTOR.message(),
        formula: "k = W_t / W".into(),
        values: vec![("W_t".into(), kg(tipping)), ("W".into(), kg(load.mass))],
        result: ("k".into(), Quantity::number(factor)),
        source: Source::CommonPractice,
    });
    Some((factor, line.over))
}

/// Tilt (rad) that the ground may still turn, in the worst direction, until the machine tips over
/// `line`; negative if it tips already.
///
/// With `a = u × Σm(r − P)`, elevation `ψ` of gravity over the plane of line and centre
/// (`sin ψ = ĝ·a / |a|`) and wind moment `M_w`, tilting by `δ` leaves
/// `g·|a|·sin(ψ − δ) − M_w`; so `δ = ψ − asin(M_w / (g·|a|))`.
pub fn tilt_reserve(loading: &Loading, line: &TippingLine, trace: &mut impl Trace) -> f64 {
    let (mass, a) = arm(&loading.masses, line);
    let size = a.length();
    if size == 0.0 || !size.is_finite() {
        return f64::NAN;
    }
    let psi = libm::asin((loading.gravity.dot(a) / size).clamp(-1.0, 1.0));
    let wind = loading.wind.overturning(line);
    let tilt = psi - libm::asin((wind / (G * size)).clamp(-1.0, 1.0));
    line_steps(loading, line, trace);
    trace.step(|| Step {
        title: text::STEP_TILT.message(),
        formula: "δ = asin((ĝ·a) / d) − asin(M_w / (m · g · d))".into(),
        values: vec![
            ("d".into(), Quantity::new(size / mass, Dimension::Length)),
            ("m".into(), kg(mass)),
            ("g".into(), Quantity::number(G)),
            ("M_w".into(), nm(wind)),
            ("ĝ_x".into(), Quantity::number(loading.gravity.x)),
            ("ĝ_y".into(), Quantity::number(loading.gravity.y)),
            ("ĝ_z".into(), Quantity::number(loading.gravity.z)),
        ],
        result: ("δ".into(), Quantity::new(tilt, Dimension::Angle)),
        source: Source::Mechanics,
    });
    tilt
}

/// Mass and centre that count for a line, the line itself, the arm and the wind's moment.
fn line_steps(loading: &Loading, line: &TippingLine, trace: &mut impl Trace) {
    let (mass, a) = arm(&loading.masses, line);
    let wind = loading.wind.overturning(line);
    trace.step(|| Step {
        title: text::STEP_COUNTED_MASS.message(),
        formula: "m = Σm_i".into(),
        values: vec![("m_A".into(), kg(loading.masses.axle)), ("m_rest".into(), kg(loading.masses.sprung))],
        result: ("m".into(), kg(mass)),
        source: Source::Mechanics,
    });
    let centre = loading.masses.counted(line.with_rear_axle).1 / mass;
    for (axis, symbol, value) in
        [(text::AXIS_X, "x_G", centre.x), (text::AXIS_Y, "y_G", centre.y), (text::AXIS_Z, "z_G", centre.z)]
    {
        trace.step(|| Step {
            title: text::STEP_CENTRE_OF_GRAVITY.with("axis", axis),
            formula: "Σ(m_i · r_i) / m".into(),
            values: vec![("m".into(), kg(mass))],
            result: (symbol.into(), Quantity::new(value, Dimension::Length)),
            source: Source::Mechanics,
        });
    }
    let hangs = !line.with_rear_axle && through_the_pin(&loading.masses, line) != DVec3::ZERO;
    if hangs {
        trace.step(|| through_the_pin_step(loading, line));
    }
    trace.step(|| Step {
        title: text::STEP_ARM.message(),
        formula: if hangs { "a = u × (G − P) + b/m,  d = |a|" } else { "a = u × (G − P),  d = |a|" }.into(),
        values: vec![
            ("P_x".into(), Quantity::new(line.point.x, Dimension::Length)),
            ("P_y".into(), Quantity::new(line.point.y, Dimension::Length)),
            ("P_z".into(), Quantity::new(line.point.z, Dimension::Length)),
            ("u_x".into(), Quantity::number(line.along.x)),
            ("u_y".into(), Quantity::number(line.along.y)),
            ("u_z".into(), Quantity::number(line.along.z)),
        ],
        result: ("d".into(), Quantity::new(a.length() / mass, Dimension::Length)),
        source: Source::Mechanics,
    });
    trace.step(|| {
        let worst = loading.wind.worst_direction(line);
        let [front, side] = loading.wind.levers(line);
        Step {
            title: text::STEP_WIND_MOMENT.message(),
            formula: "M_w = max −(|cos φ| · L_f + |sin φ| · L_s) · (cos φ, sin φ),  L = u × Σ F_i (r_i − P)".into(),
            values: vec![
                ("L_f,x".into(), nm(front.x)),
                ("L_f,y".into(), nm(front.y)),
                ("L_s,x".into(), nm(side.x)),
                ("L_s,y".into(), nm(side.y)),
                ("φ".into(), Quantity::new(worst.towards, Dimension::Angle)),
            ],
            result: ("M_w".into(), nm(wind)),
            source: Source::Mechanics,
        }
    });
}

/// What reaches the frame through the pin of a free rear axle: its own weight off the pin, and its
/// wheels where they hold the machine along its length.
fn through_the_pin_step(loading: &Loading, line: &TippingLine) -> Step {
    let masses = &loading.masses;
    let off = (masses.axle_moment - line.pin * masses.axle) / masses.axle;
    let length = |v: f64| Quantity::new(v, Dimension::Length);
    let mut values = Vec::new();
    if masses.axle > 0.0 {
        values.extend([("m_A".into(), kg(masses.axle)), ("x_A".into(), length(off.x)), ("y_A".into(), length(off.y))]);
    }
    if line.held != 0.0 {
        values.extend([("M".into(), kg(masses.total())), ("h".into(), length(line.held))]);
    }
    Step {
        title: if line.held == 0.0 { text::STEP_THROUGH_PIN } else { text::STEP_HELD_BY_REAR }.message(),
        formula: "b = m_A · (0, u_y, u_z) × (x_A, y_A, 0) + M · h · x̂,  h = −x̂ · (u × (R − P))".into(),
        values,
        // Its pull over the weight of the part that counts.
        result: (
            "ĝ·b/m".into(),
            length(loading.gravity.dot(through_the_pin(masses, line)) / masses.counted(line.with_rear_axle).0),
        ),
        source: Source::Mechanics,
    }
}

fn kg(value: f64) -> Quantity {
    Quantity::new(value, Dimension::Mass)
}
fn nm(value: f64) -> Quantity {
    Quantity::new(value, Dimension::Moment)
}
