//! Strength of a reinforced slab, for each metre of its width: bending, shear, punching.

use crate::landing_range::Ranges;
use crate::text;
use evidence::{Faults, Source, Step, Trace};
use quantity::{Dimension, Quantity};

/// Partial factor of concrete, EN 1992-1-1:2004, table 2.1N, from memory.
pub const GAMMA_C: f64 = 1.5;
/// Partial factor of reinforcement, the same table.
pub const GAMMA_S: f64 = 1.15;
/// `α_cc` of 3.1.6: 1.0 is recommended there, 0.85 is the least that national annexes take (from memory).
pub const ALPHA_CC: f64 = 0.85;
/// Young's modulus of reinforcement, Pa: 3.2.7(4), from memory.
const STEEL_STIFFNESS: f64 = 200e9;

/// A slab's section as it is now.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Section {
    /// Effective depth `d`, m.
    pub depth: f64,
    /// Strength of the concrete at its age, `f_ck(t)`, Pa.
    pub concrete: f64,
    /// Yield strength of the reinforcement `f_yk`, Pa.
    pub yield_strength: f64,
}

impl Section {
    fn check(self, ranges: &mut Ranges) {
        ranges.within("depth", self.depth, Dimension::Length, 0.03, 2.0);
        ranges.within("concrete", self.concrete, Dimension::Pressure, 1e6, 90e6);
        ranges.within("yield_strength", self.yield_strength, Dimension::Pressure, 200e6, 700e6);
    }

    /// Bending moment (N·m for each metre) with `steel` m² of reinforcement a metre on the pulled side, by the
    /// rectangular block of EN 1992-1-1:2004, 3.1.7(3) and 6.1, from memory. Where the reinforcement would not
    /// yield before the concrete crushes, its stress follows from plane sections.
    ///
    /// # Errors
    /// Every value out of its range.
    pub fn bending(self, steel: f64, trace: &mut impl Trace) -> Result<f64, Faults> {
        let mut ranges = Ranges::default();
        self.check(&mut ranges);
        ranges.within("steel", steel, Dimension::Area, 0.0, 0.04 * self.depth.max(0.03));
        ranges.done(())?;
        let mpa = self.concrete / 1e6;
        let over = (mpa - 50.0).max(0.0);
        let (lambda, eta) = (0.8 - over / 400.0, 1.0 - over / 200.0);
        let crush = if over > 0.0 { (2.6 + 35.0 * libm::pow((90.0 - mpa) / 100.0, 4.0)) / 1e3 } else { 3.5e-3 };
        let f_cd = ALPHA_CC * self.concrete / GAMMA_C;
        let f_yd = self.yield_strength / GAMMA_S;
        let block = lambda * eta * f_cd;
        let yielding = steel * f_yd / block;
        let limit = crush / (crush + f_yd / STEEL_STIFFNESS) * self.depth;
        let x = if yielding <= limit {
            yielding
        } else {
            // block·x² + k·x − k·d = 0 with k = A_s E_s ε_cu.
            let k = steel * STEEL_STIFFNESS * crush;
            ((k * k + 4.0 * block * k * self.depth).sqrt() - k) / (2.0 * block)
        };
        let arm = self.depth - lambda * x / 2.0;
        let moment = block * x * arm;
        let named = |name: &'static str, si, dimension| (name.into(), Quantity::new(si, dimension));
        trace.step(|| Step {
            title: text::STEP_SLAB_BLOCK.message(),
            formula: "x = A_s · f_yd / (λ · η · f_cd)".into(),
            values: vec![
                named("A_s", steel, Dimension::Area),
                named("f_yd", f_yd, Dimension::Pressure),
                named("λ", lambda, Dimension::Number),
                named("η", eta, Dimension::Number),
                named("f_cd", f_cd, Dimension::Pressure),
            ],
            result: named("x", x, Dimension::Length),
            source: Source::from_memory("EN 1992-1-1:2004, 3.1.7(3)"),
        });
        trace.step(|| Step {
            title: text::STEP_SLAB_MOMENT.message(),
            formula: "m_Rd = λ · η · f_cd · x · (d − λ · x / 2)".into(),
            values: vec![
                named("f_cd", f_cd, Dimension::Pressure),
                named("x", x, Dimension::Length),
                named("d", self.depth, Dimension::Length),
            ],
            result: named("m_Rd", moment, Dimension::Moment),
            source: Source::from_memory("EN 1992-1-1:2004, 6.1"),
        });
        Ok(moment)
    }

    /// Shear stress (Pa) that the slab takes without shear reinforcement: `v_Rd,c = 0.18/γ_C k (100 ρ f_ck)^⅓`, at
    /// least `0.035 k^1.5 √f_ck` (MPa), `k = 1 + √(200 mm/d) ≤ 2`, `ρ ≤ 0.02`: EN 1992-1-1:2004, 6.2.2(1) and, with
    /// `ρ = √(ρ_x ρ_y)`, 6.4.4(1), from memory. No axial force. `steel`: m² a metre; 0 where not known.
    ///
    /// # Errors
    /// Every value out of its range.
    pub fn shear_stress(self, steel: f64, trace: &mut impl Trace) -> Result<f64, Faults> {
        let mut ranges = Ranges::default();
        self.check(&mut ranges);
        ranges.within("steel", steel, Dimension::Area, 0.0, 0.04 * self.depth.max(0.03));
        ranges.done(())?;
        let k = (1.0 + (0.2 / self.depth).sqrt()).min(2.0);
        let ratio = (steel / self.depth).min(0.02);
        let mpa = self.concrete / 1e6;
        let by_steel = 0.18 / GAMMA_C * k * libm::cbrt(100.0 * ratio * mpa);
        let least = 0.035 * k * k.sqrt() * mpa.sqrt();
        let stress = by_steel.max(least) * 1e6;
        let named = |name: &'static str, si, dimension| (name.into(), Quantity::new(si, dimension));
        trace.step(|| Step {
            title: text::STEP_SLAB_SHEAR.message(),
            formula: "v_Rd,c = max(0.18 / γ_C · k · (100 · ρ · f_ck)^(1/3); 0.035 · k^1.5 · √f_ck)".into(),
            values: vec![
                named("k", k, Dimension::Number),
                named("ρ", ratio, Dimension::Ratio),
                named("f_ck", self.concrete, Dimension::Pressure),
                named("γ_C", GAMMA_C, Dimension::Number),
            ],
            result: named("v_Rd,c", stress, Dimension::Pressure),
            source: Source::from_memory("EN 1992-1-1:2004, 6.2.2(1), 6.4.4(1)"),
        });
        Ok(stress)
    }

    /// Stress (Pa) at the edge of a loaded area that crushes the concrete: `0.4 ν f_cd`, `ν = 0.6 (1 − f_ck/250)`,
    /// EN 1992-1-1:2004 with A1:2014, 6.4.5(3) and 6.2.2(6), from memory.
    pub fn crushing_stress(self) -> f64 {
        0.4 * 0.6 * (1.0 - self.concrete / 250e6) * ALPHA_CC * self.concrete / GAMMA_C
    }
}

/// Length of the control perimeter at `2d` round a loaded area of `size` (m), EN 1992-1-1:2004, 6.4.2, from memory:
/// the least of one all round and those that run out at a free edge. `to_edges`: from the area to the nearest free
/// edge in either direction, m; `None` where there is none, 0 where not known.
pub fn control_perimeter(size: [f64; 2], depth: f64, to_edges: [Option<f64>; 2]) -> f64 {
    let [a, b] = size;
    let quarter = std::f64::consts::PI * depth;
    let all_round = 2.0 * (a + b) + 4.0 * quarter;
    let one_edge =
        |along: f64, away: f64, e: Option<f64>| e.map_or(all_round, |e| along + 2.0 * (away + e) + 2.0 * quarter);
    let corner = match to_edges {
        [Some(e), Some(f)] => a + b + quarter + e + f,
        _ => all_round,
    };
    all_round.min(one_edge(b, a, to_edges[0])).min(one_edge(a, b, to_edges[1])).min(corner)
}

/// Width of slab (m) that bends with a load of that `width` whose middle is `from_support` from the nearer support
/// of a `span`: `b + 2.4 x (1 − x/l)`, and near a free edge no more than half of that and the distance of the
/// load's middle from the edge. BS 8110-1:1997, 3.5.2.2, from memory.
pub fn effective_width(width: f64, from_support: f64, span: f64, middle_to_edge: Option<f64>) -> f64 {
    let x = from_support.clamp(0.0, span);
    near_edge(width + 2.4 * x * (1.0 - x / span), width, middle_to_edge)
}

/// The same on a cantilever: `b + 1.2 a` with the load's middle `a` from the support; IS 456:2000, 24.3.2.1, from
/// memory.
pub fn effective_width_on_cantilever(width: f64, from_support: f64, middle_to_edge: Option<f64>) -> f64 {
    near_edge(width + 1.2 * from_support.max(0.0), width, middle_to_edge)
}

/// The load's own width stands in any case: it lies on the slab.
fn near_edge(full: f64, width: f64, middle_to_edge: Option<f64>) -> f64 {
    middle_to_edge.map_or(full, |e| full.min(full / 2.0 + e)).max(width)
}
