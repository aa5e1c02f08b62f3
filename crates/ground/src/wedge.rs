//! Sliding of a wedge of soil on a plane out of an unsupported face: Coulomb 1776, with strips of load on top,
//! a tension crack and water.
//!
//! Factor of safety of a plane that leaves the face at depth `h` under the angle `θ`, with `t = cot θ`:
//!
//! `F = [c·(h − z)·(1 + t²) + ((W + Q)·t − ū·(h − z)·(1 + t²) − V)·tan φ] / [W + Q + V·t]`
//!
//! per metre along the edge; crack of depth `z`, water `V = ½·γ_w·z_w²` in it, mean pore pressure `ū` on the plane.
//! `W` and `Q` are linear in `t` between the places where the crack passes a strip's edge, so that `F` is a quadratic
//! over a linear function there: its least value per piece is exact, at an end or at a root of
//! `a₂d₁t² + 2a₂d₀t + (a₁d₀ − a₀d₁) = 0`. Only the depth of the exit is searched, in steps and then finer.
//! Mechanics; crack full of water with pressure running out to the face: Hoek & Bray (from memory).
//!
//! One soil: of several layers above the toe the least strength and the greatest weight are taken, the safe side.

use crate::edge_text as text;
use crate::input_fault::InputFault;
use crate::slope_section::{PoreWater, SlopeSection, Surcharge, WATER};
use evidence::{Source, Step, Trace};
use libm::{atan, sqrt, tan};
use quantity::{Dimension, Quantity};
use std::borrow::Cow;
use std::f64::consts::{FRAC_PI_2, FRAC_PI_4};

/// The plane that holds worst.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Wedge {
    /// Factor of safety.
    pub factor: f64,
    /// Angle of the plane from the level, rad.
    pub angle: f64,
    /// Depth at which it leaves the face, m below the crest.
    pub exit: f64,
    /// Distance from the crest at which it meets crack or surface, m.
    pub back: f64,
    /// Weight of the wedge, N per metre.
    pub weight: f64,
    /// Load on top of it, N per metre.
    pub load: f64,
    /// Length of the plane, m² per metre.
    pub area: f64,
    /// Cohesion on it, Pa.
    pub cohesion: f64,
    /// Angle of friction on it, rad.
    pub friction: f64,
    /// Water pressure square to it, N per metre.
    pub uplift: f64,
    /// Level push of the water in the crack, N per metre.
    pub thrust: f64,
    /// Depth of the crack, m, and how deep water stands in it.
    pub crack: [f64; 2],
}

impl Wedge {
    /// Its step, with everything that the formula needs.
    pub(crate) fn step(&self, loads: &[Surcharge], trace: &mut impl Trace) {
        trace.step(|| {
            let length = |v| Quantity::new(v, Dimension::Length);
            let force = |v| Quantity::new(v, Dimension::Stiffness);
            let mut values = vec![
                ("θ".into(), Quantity::new(self.angle, Dimension::Angle)),
                ("h".into(), length(self.exit)),
                ("z".into(), length(self.crack[0])),
                ("z_w".into(), length(self.crack[1])),
                ("c".into(), Quantity::new(self.cohesion, Dimension::Pressure)),
                ("φ".into(), Quantity::new(self.friction, Dimension::Angle)),
                ("A".into(), length(self.area)),
                ("W".into(), force(self.weight)),
                ("Q".into(), force(self.load)),
                ("U".into(), force(self.uplift)),
                ("V".into(), force(self.thrust)),
            ];
            values.extend(load_values(loads));
            Step {
                title: text::STEP_WEDGE.message(),
                formula: "F = (c·A + ((W + Q)·cos θ − U − V·sin θ)·tan φ) / ((W + Q)·sin θ + V·cos θ)".into(),
                values,
                result: ("F".into(), Quantity::number(self.factor)),
                source: Source::from_memory("Coulomb 1776"),
            }
        });
    }
}

/// Where strips of load lie, from the crest, and what they press: values of a step.
pub(crate) fn load_values(loads: &[Surcharge]) -> Vec<(Cow<'static, str>, Quantity)> {
    let each = |(i, s): (usize, &Surcharge)| {
        let n = i + 1;
        [
            (format!("x_{n}").into(), Quantity::new(s.from, Dimension::Length)),
            (format!("x'_{n}").into(), Quantity::new(s.to, Dimension::Length)),
            (format!("q_{n}").into(), Quantity::new(s.pressure, Dimension::Pressure)),
        ]
    };
    loads.iter().enumerate().flat_map(each).collect()
}

/// One soil for the wedge.
#[derive(Debug, Clone, Copy)]
struct Soil {
    unit_weight: f64,
    cohesion: f64,
    tan_phi: f64,
}

/// Depth of a tension crack, m: `2c/(γ·√K_a)`, at most half the depth of the cut; Rankine, and Terzaghi 1943 for the
/// half (both from memory).
pub fn crack_depth(unit_weight: f64, cohesion: f64, friction: f64, depth: f64) -> f64 {
    (2.0 * cohesion / unit_weight * tan(FRAC_PI_4 + friction / 2.0)).min(depth / 2.0)
}

/// The worst plane of a section with strips of load, with its steps.
///
/// # Errors
/// Every fault of section and loads.
pub fn worst_wedge(
    section: &SlopeSection,
    loads: &[Surcharge],
    trace: &mut impl Trace,
) -> Result<Wedge, Vec<InputFault>> {
    let faults = section.faults(loads);
    if !faults.is_empty() {
        return Err(faults);
    }
    let wedge = worst_of_sound(section, loads);
    wedge.step(loads, trace);
    Ok(wedge)
}

/// The same for a section that was looked at.
pub(crate) fn worst_of_sound(section: &SlopeSection, loads: &[Surcharge]) -> Wedge {
    const STEPS: usize = 24;
    let soil = weakest(section);
    let high = section.depth;
    let at = |h: f64| plane_from(section, soil, loads, h);
    let step = high / STEPS as f64;
    let mut best = at(high);
    for i in 1..STEPS {
        let found = at(step * i as f64);
        if found.factor < best.factor {
            best = found;
        }
    }
    // Finer around the best exit: the step halves until it is a thousandth of the depth.
    let mut width = step / 2.0;
    while width > section.depth / 1000.0 {
        for h in [best.exit - width, best.exit + width] {
            if h > 0.0 && h <= high {
                let found = at(h);
                if found.factor < best.factor {
                    best = found;
                }
            }
        }
        width /= 2.0;
    }
    best
}

fn weakest(section: &SlopeSection) -> Soil {
    let last = section.layer_at(-section.depth);
    let above = section.layers.iter().take(last + 1);
    above.fold(Soil { unit_weight: 0.0, cohesion: f64::INFINITY, tan_phi: f64::INFINITY }, |s, l| Soil {
        unit_weight: s.unit_weight.max(l.unit_weight),
        cohesion: s.cohesion.min(l.cohesion),
        tan_phi: s.tan_phi.min(tan(l.friction)),
    })
}

/// The worst angle of a plane that leaves the face at depth `h`.
fn plane_from(section: &SlopeSection, soil: Soil, loads: &[Surcharge], h: f64) -> Wedge {
    let crack = section.crack.before(h);
    let z = crack.depth;
    let length = h - z;
    let b = section.batter * h / section.depth;
    // Where the plane meets the crack, behind the crest: `length·t − b`.
    let back = |t: f64| length * t - b;
    let start = b / length;
    let mut ends: Vec<f64> =
        loads.iter().flat_map(|s| [s.from, s.to]).map(|x| (x + b) / length).filter(|t| *t > start).collect();
    ends.push(start);
    ends.sort_by(f64::total_cmp);
    ends.dedup();
    let v = 0.5 * WATER * crack.water * crack.water;
    let mut best: Option<(f64, f64)> = None;
    for (i, from) in ends.iter().enumerate() {
        let to = ends.get(i + 1).copied();
        // Load on the wedge is q0 + q1·t on this piece: full strips, and the one that the crack runs through.
        let middle = back(to.map_or(from + 1.0, |to| f64::midpoint(*from, to)));
        let (mut q0, mut q1) = (0.0, 0.0);
        for s in loads {
            if middle >= s.to {
                q0 += s.pressure * (s.to - s.from);
            } else if middle > s.from {
                q0 -= s.pressure * (b + s.from);
                q1 += s.pressure * length;
            }
        }
        let w1 = 0.5 * soil.unit_weight * (h * h - z * z) + q1;
        let w0 = -0.5 * soil.unit_weight * h * b + q0;
        let u = pore_on_plane(section, soil, h);
        let area = length;
        let a2 = soil.cohesion * area + (w1 - u) * soil.tan_phi;
        let a1 = w0 * soil.tan_phi;
        let a0 = soil.cohesion * area - (u + v) * soil.tan_phi;
        let (d1, d0) = (w1 + v, w0);
        let factor = |t: f64| {
            let driving = d1 * t + d0;
            // Nothing drives a wedge without weight; friction alone holds nothing there either.
            if driving > 1e-9 * (w1.abs() + d0.abs()) { (a2 * t * t + a1 * t + a0) / driving } else { f64::INFINITY }
        };
        let root = {
            let (qa, qb, qc) = (a2 * d1, 2.0 * a2 * d0, a1 * d0 - a0 * d1);
            let disc = qb * qb - 4.0 * qa * qc;
            (qa != 0.0 && disc >= 0.0).then(|| (-qb + sqrt(disc)) / (2.0 * qa))
        };
        // A hair inside the first end: at it the wedge has no width, and no weight.
        let first = if i == 0 { from + 1e-6 * (1.0 + from) } else { *from };
        let inside = root.filter(|t| *t > first && to.is_none_or(|to| *t < to));
        for t in [Some(first), to, inside].into_iter().flatten() {
            let f = factor(t).max(0.0);
            if best.is_none_or(|(least, _)| f < least) {
                best = Some((f, t));
            }
        }
    }
    let (factor, t) = best.unwrap_or((f64::NAN, f64::NAN));
    let reach = back(t);
    let slope = sqrt(1.0 + t * t);
    Wedge {
        factor,
        angle: if t > 0.0 { atan(1.0 / t) } else { FRAC_PI_2 },
        exit: h,
        back: reach,
        weight: 0.5 * soil.unit_weight * ((h * h - z * z) * t - h * b),
        load: loads.iter().map(|s| s.pressure * (reach.min(s.to) - s.from).max(0.0)).sum(),
        area: length * slope,
        cohesion: soil.cohesion,
        friction: atan(soil.tan_phi),
        uplift: pore_on_plane(section, soil, h) * slope,
        thrust: v,
        crack: [z, crack.water],
    }
}

/// Pore pressure on the plane times the height it spans, N/m, so that `U = this·√(1 + t²)`.
fn pore_on_plane(section: &SlopeSection, soil: Soil, h: f64) -> f64 {
    let crack = section.crack.before(h);
    let z = crack.depth;
    let length = h - z;
    let of_table = match &section.water {
        PoreWater::Dry => 0.0,
        // Of the weight as behind an upright face; a batter's wedge weighs less.
        PoreWater::Ratio(r) => r * 0.5 * soil.unit_weight * (h * h - z * z),
        PoreWater::Table(points) => {
            // The highest of the table behind the face, taken as level: the safe side.
            let top = points.iter().map(|p| p[1]).fold(f64::NEG_INFINITY, f64::max);
            let wet = (top + h).max(0.0);
            let dry_top = (wet - length).max(0.0);
            0.5 * WATER * (wet * wet - dry_top * dry_top)
        }
    };
    let of_crack = 0.5 * WATER * crack.water * length;
    of_table.max(of_crack)
}
