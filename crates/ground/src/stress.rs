//! Vertical stress in the ground under loads on its surface: elastic half space (Boussinesq 1885) and 2:1 spread.
//!
//! Depth `z` m below the loaded surface, distances m, forces N, pressures Pa; pressing is positive. At the surface
//! itself the stress is the pressure under the load and nothing beside it. Elastic stress in a half space without
//! weight, one soil, vertical loads only; layers of other stiffness are not covered.

use crate::contact::not_pulling;
use crate::edge_text as text;
use evidence::{Source, Step, Trace};
use libm::{atan, atan2, cos, sin, sqrt};
use quantity::{Dimension, Quantity};
use std::borrow::Cow;
use std::f64::consts::{PI, TAU};

/// A rectangle on the surface that presses evenly: a tyre's patch, a pad, a mat.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Patch {
    /// Middle in plan, m.
    pub middle: [f64; 2],
    /// Full length along the patch's own first and second axis, m.
    pub size: [f64; 2],
    /// Direction of the first axis, rad counter-clockwise from the plan's x.
    pub heading: f64,
    /// Force on the ground, N; a patch that pulls presses nothing.
    pub force: f64,
}

impl Patch {
    /// Mean pressure under the patch, Pa.
    pub fn pressure(&self) -> f64 {
        not_pulling(self.force) / (self.size[0] * self.size[1])
    }

    /// Elastic stress `depth` below the plan point `at`, Pa: four corners by superposition.
    pub fn elastic_stress(&self, at: [f64; 2], depth: f64) -> f64 {
        let [u, v] = self.own_axes(at);
        self.pressure() * rectangle_influence(self.size, [u, v], depth)
    }

    /// Stress by 2:1 spread `depth` below the plan point `at`, Pa: even under the patch grown by half the depth on
    /// every side, nothing outside.
    pub fn spread_stress(&self, at: [f64; 2], depth: f64) -> f64 {
        let [u, v] = self.own_axes(at);
        let inside = u.abs() <= f64::midpoint(self.size[0], depth) && v.abs() <= f64::midpoint(self.size[1], depth);
        let stress = spread_two_to_one(self.force, self.size, depth);
        // What is not a number stays so: a place that cannot be told is not outside.
        if inside || (u + v + depth).is_nan() { stress } else { 0.0 }
    }

    /// A plan point along the patch's own axes, from its middle, m.
    pub(crate) fn own_axes(&self, at: [f64; 2]) -> [f64; 2] {
        let (s, c) = (sin(self.heading), cos(self.heading));
        let d = [at[0] - self.middle[0], at[1] - self.middle[1]];
        [d[0] * c + d[1] * s, d[1] * c - d[0] * s]
    }
}

/// Stress of many patches at one point.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct PatchStress {
    /// Boussinesq, Pa.
    pub elastic: f64,
    /// 2:1 spread, Pa.
    pub spread: f64,
}

impl PatchStress {
    /// The larger of both, Pa; NaN if either is.
    pub fn larger(self) -> f64 {
        if self.elastic.is_nan() || self.spread.is_nan() { f64::NAN } else { self.elastic.max(self.spread) }
    }
}

/// Share of the elastic stress below which a patch is not printed.
const MATTERS: f64 = 1e-4;

/// Stress of all `patches` together `depth` below `at`, Pa, both ways, with its steps.
pub fn patches_stress(patches: &[Patch], at: [f64; 2], depth: f64, trace: &mut impl Trace) -> PatchStress {
    let elastic = patches.iter().map(|p| p.elastic_stress(at, depth)).sum();
    let spread = patches.iter().map(|p| p.spread_stress(at, depth)).sum();
    let length = |v| Quantity::new(v, Dimension::Length);
    // The place asked, and the patches that matter there: where one lies along its own axes from the place.
    let place = || {
        let n = Quantity::number(patches.len() as f64);
        vec![("n".into(), n), ("x".into(), length(at[0])), ("y".into(), length(at[1])), ("z".into(), length(depth))]
    };
    let named = |i: usize, p: &Patch, load: (&str, Quantity)| {
        let [u, v] = p.own_axes(at);
        let i = i + 1;
        [
            (format!("{}_{i}", load.0).into(), load.1),
            (format!("l_{i}").into(), length(p.size[0])),
            (format!("b_{i}").into(), length(p.size[1])),
            (format!("u_{i}").into(), length(u)),
            (format!("v_{i}").into(), length(v)),
        ]
    };
    trace.step(|| {
        let mut values: Vec<(Cow<'static, str>, Quantity)> = place();
        for (i, p) in patches.iter().enumerate().filter(|(_, p)| p.elastic_stress(at, depth) > MATTERS * elastic) {
            values.extend(named(i, p, ("p", Quantity::new(p.pressure(), Dimension::Pressure))));
        }
        Step {
            title: text::STEP_STRESS_ELASTIC.message(),
            formula: "σ_z = Σ p_i · Σ ±I(m, n), m = (l/2 ± u)/z, n = (b/2 ± v)/z".into(),
            values,
            result: ("σ_z".into(), Quantity::new(elastic, Dimension::Pressure)),
            source: Source::from_memory("Boussinesq 1885; Newmark 1935, Fadum 1948 (rectangle corner)"),
        }
    });
    trace.step(|| {
        let mut values: Vec<(Cow<'static, str>, Quantity)> = place();
        for (i, p) in patches.iter().enumerate().filter(|(_, p)| p.spread_stress(at, depth) > 0.0) {
            values.extend(named(i, p, ("F", Quantity::new(p.force, Dimension::Force))));
        }
        Step {
            title: text::STEP_STRESS_SPREAD.message(),
            formula: "σ_z = Σ F_i / ((b_i + z) · (l_i + z))".into(),
            values,
            result: ("σ_z".into(), Quantity::new(spread, Dimension::Pressure)),
            source: Source::second_hand("FHWA-SA-02-054 Fig. 5-12, appendix B example 1 (2:1 spread)"),
        }
    });
    PatchStress { elastic, spread }
}

/// Stress under a point load, Pa: `σ_z = 3·P·z³ / (2π·R⁵)`, `R² = r² + z²`; Boussinesq 1885.
pub fn point_stress(force: f64, r: f64, z: f64) -> f64 {
    let square = r * r + z * z;
    3.0 * force * z * z * z / (TAU * square * square * sqrt(square))
}

/// Stress under an endless line load `per_metre` (N/m) at level distance `x`, Pa:
/// `σ_z = 2·q·z³ / (π·(x² + z²)²)`; Boussinesq, integrated.
pub fn line_stress(per_metre: f64, x: f64, z: f64) -> f64 {
    let square = x * x + z * z;
    2.0 * per_metre * z * z * z / (PI * square * square)
}

/// Stress under an endless strip of `width`, at level distance `x` from its middle, Pa:
/// `σ_z = (p/π)·(β + sin β·cos 2δ)`, `β` the angle the strip is seen under, `δ` of its bisector from the vertical;
/// Boussinesq, integrated.
pub fn strip_stress(pressure: f64, width: f64, x: f64, z: f64) -> f64 {
    if z <= 0.0 {
        return if x.abs() <= width / 2.0 { pressure } else { 0.0 };
    }
    let half = |edge: f64| {
        let t = atan(edge / z);
        t + sin(t) * cos(t)
    };
    pressure / PI * (half(x + width / 2.0) - half(x - width / 2.0))
}

/// Stress under the middle of a circle, Pa: `σ_z = p·(1 − (1 + (R/z)²)^(−3/2))`; Boussinesq, integrated.
pub fn circle_stress(pressure: f64, radius: f64, z: f64) -> f64 {
    if z <= 0.0 {
        return pressure;
    }
    let k = 1.0 + (radius / z) * (radius / z);
    pressure * (1.0 - 1.0 / (k * sqrt(k)))
}

/// Influence factor under the corner of a rectangle, of 1: `m = b/z`, `n = l/z`.
///
/// `I = (1/4π)·[2mn√V/(V + m²n²)·(V + 1)/V + atan2(2mn√V, V − m²n²)]`, `V = m² + n² + 1`; Newmark 1935, Fadum 1948.
/// `atan2` takes the arctangent in the second quadrant where `m²n² > V`.
pub fn corner_influence(m: f64, n: f64) -> f64 {
    let (mn, v) = (m * n, m * m + n * n + 1.0);
    let top = 2.0 * mn * sqrt(v);
    (top / (v + mn * mn) * (v + 1.0) / v + atan2(top, v - mn * mn)) / (2.0 * TAU)
}

/// Share of the pressure on a rectangle of `size` that is felt `depth` below the point `at`, its place from the
/// rectangle's middle; under it and outside it, corner by corner.
pub fn rectangle_influence(size: [f64; 2], at: [f64; 2], depth: f64) -> f64 {
    let [a, b] = [size[0] / 2.0, size[1] / 2.0];
    if depth <= 0.0 {
        return if at[0].abs() <= a && at[1].abs() <= b { 1.0 } else { 0.0 };
    }
    let corner = |x: f64, y: f64| corner_influence(x / depth, y / depth);
    corner(at[0] + a, at[1] + b) - corner(at[0] - a, at[1] + b) - corner(at[0] + a, at[1] - b)
        + corner(at[0] - a, at[1] - b)
}

/// Even stress by 2:1 spread at `depth`, Pa: `σ_z = F / ((b + z)·(l + z))`; FHWA-SA-02-054 Fig. 5-12, second hand.
pub fn spread_two_to_one(force: f64, size: [f64; 2], depth: f64) -> f64 {
    not_pulling(force) / ((size[0] + depth) * (size[1] + depth))
}
