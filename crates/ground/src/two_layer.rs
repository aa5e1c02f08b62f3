//! Two layers: a crust or a platform over something weaker. Three ways to fail; the least counts.
//!
//! 1. in the upper layer alone, as if it went down for ever;
//! 2. by load spread: the lower layer carries a larger base at its own top (common practice);
//! 3. by punching through the upper layer (Meyerhof & Hanna 1978, as Das gives it; second hand), where the strength
//!    along the punched sides is stated or follows safely.

use crate::step_values::{Value, length, number, pressure, weight};
use crate::{BearingCase, Effective, Footprint, Load, Refusal, Strength, least_bearing, text};
use core::f64::consts::PI;
use evidence::{Source, Step, Trace};

/// Spread of load per depth: 1 across for 2 down, on both sides together (the usual 2:1 rule).
pub const TWO_TO_ONE: f64 = 1.0;

/// A base on an upper layer over a lower one.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct TwoLayers {
    /// Base, forces, strength and unit weight of the upper layer, soil beside the base.
    pub upper: BearingCase,
    /// Thickness of the upper layer below the base, m.
    pub thickness: f64,
    /// Depth of the base below the surface, m.
    pub base_depth: f64,
    /// Vertical stress at the base's level, Pa: total where the lower strength is undrained, else effective.
    pub base_stress: f64,
    /// What the soil between the base and the lower layer adds to it, Pa.
    pub between: f64,
    /// Strength of the lower layer.
    pub lower: Strength,
    /// Unit weight that acts in the lower layer, N/m³.
    pub lower_weight: f64,
    /// How much wider the load becomes per depth: [`TWO_TO_ONE`] or less.
    pub spread: f64,
    /// What acts along the sides that punch through.
    pub sides: Sides,
}

/// Strength along the punched sides.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Sides {
    /// Not stated: a cohesive upper layer is credited with the lower layer's strength only, a frictional one with
    /// nothing (ours, the safe side of the published charts).
    NotStated,
    /// Adhesion `c_a` of a cohesive upper layer, Pa.
    Adhesion(f64),
    /// Punching coefficient `K_s` of a frictional upper layer.
    Coefficient(f64),
}

/// Pressures at failure on the effective area at the base, Pa.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct TwoLayerBearing {
    /// Upper layer alone.
    pub upper: f64,
    /// Load spread on the lower layer.
    pub spread: f64,
    /// Punching; none where the layers are not of the kinds that the method is for, or a force leans.
    pub punching: Option<f64>,
    /// The least.
    pub ultimate: f64,
    /// Vertical force at failure, N; of a strip, for a metre of it.
    pub resistance: f64,
}

impl TwoLayers {
    /// The least of the ways to fail.
    ///
    /// # Errors
    /// As [`least_bearing`], for either layer; [`Refusal::NoNumber`] for a thickness below zero or a spread outside
    /// 0 to 1.
    pub fn bearing(&self, trace: &mut impl Trace) -> Result<TwoLayerBearing, Refusal> {
        self.check()?;
        let upper = least_bearing(&self.upper, trace)?;
        let spread = self.by_spread(&upper.effective, trace)?;
        let punching = self.by_punching(&upper.effective, upper.ultimate, trace)?;
        let ultimate = upper.ultimate.min(spread).min(punching.unwrap_or(f64::INFINITY));
        trace.step(|| Step {
            title: text::STEP_TWO_LAYERS.message(),
            formula: "q_ult = min(q_1, q_2, q_3)".into(),
            values: {
                let mut v = vec![pressure("q_1", upper.ultimate), pressure("q_2", spread)];
                v.extend(punching.map(|p| pressure("q_3", p)));
                v
            },
            result: pressure("q_ult", ultimate),
            source: Source::CommonPractice,
        });
        let resistance = ultimate * upper.effective.area;
        Ok(TwoLayerBearing { upper: upper.ultimate, spread, punching, ultimate, resistance })
    }

    /// Pressure at failure on the effective area by the lower layer alone, Pa: the less of load spread and punching.
    ///
    /// # Errors
    /// As [`TwoLayers::bearing`], for the lower layer.
    pub fn lower_bearing(&self, trace: &mut impl Trace) -> Result<f64, Refusal> {
        self.check()?;
        let effective = self.upper.base.effective(&self.upper.load)?;
        let spread = self.by_spread(&effective, trace)?;
        Ok(self.by_punching(&effective, f64::INFINITY, trace)?.map_or(spread, |punching| spread.min(punching)))
    }

    fn check(&self) -> Result<(), Refusal> {
        let sizes = [self.thickness, self.base_depth, self.base_stress, self.between, self.lower_weight];
        let sound = sizes.iter().all(|v| *v >= 0.0 && v.is_finite()) && (0.0..=TWO_TO_ONE).contains(&self.spread);
        if sound { Ok(()) } else { Err(Refusal::NoNumber) }
    }

    /// `q_2 = (q_low − Δσ)·(B′ + s·H)·(L′ + s·H)/(B′·L′)`: what the lower layer bears as a base of the spread size,
    /// less the weight of the soil in between. Credits no depth; the soil above counts as weight beside it.
    fn by_spread(&self, e: &Effective, trace: &mut impl Trace) -> Result<f64, Refusal> {
        let h = self.thickness;
        let (b, l) = (e.width + self.spread * h, e.length + self.spread * h);
        let wider = if l.is_finite() { b * l / (e.width * e.length) } else { b / e.width };
        let load = Load { eccentricity: [0.0; 2], horizontal: e.horizontal, vertical: self.upper.load.vertical };
        let case = BearingCase {
            base: Footprint::Rectangle { width: b, length: l },
            load,
            strength: self.lower,
            unit_weight: self.lower_weight,
            overburden: self.base_stress + self.between,
            credited_depth: 0.0,
            slope: self.upper.slope,
        };
        trace.step(|| Step {
            title: text::STEP_SPREAD_SIZE.message(),
            formula: "B_2 = B′ + s·H,  L_2 = L′ + s·H".into(),
            values: vec![
                length("B′", e.width),
                length("L′", e.length),
                number("s", self.spread),
                length("H", h),
                length("L_2", l),
            ],
            result: length("B_2", b),
            source: Source::CommonPractice,
        });
        // With its author and factors, so that it can be followed.
        let low = least_bearing(&case, trace)?.ultimate;
        let net = (low - self.between).max(0.0);
        let q = net * wider;
        trace.step(|| Step {
            title: text::STEP_SPREAD.message(),
            formula: "q_2 = (q_low − Δσ)·B_2·L_2 / (B′·L′)".into(),
            values: vec![
                pressure("q_low", low),
                pressure("Δσ", self.between),
                length("B_2", b),
                length("L_2", l),
                length("B′", e.width),
                length("L′", e.length),
            ],
            result: pressure("q_2", q),
            source: Source::CommonPractice,
        });
        Ok(q)
    }

    /// Clay on clay: `q = (1 + 0.2·B/L)·5.14·c_2 + (1 + B/L)·2·c_a·H/B + σ_0`; sand on clay:
    /// `q = (1 + 0.2·B/L)·5.14·c_2 + (1 + B/L)·γ_1·H²·(1 + 2·D/H)·K_s·tan φ_1/B + σ_0`; at most the upper layer's
    /// own. The stress that the weight of the soil makes on the sides is the one that acts: buoyant under water.
    fn by_punching(&self, e: &Effective, upper: f64, trace: &mut impl Trace) -> Result<Option<f64>, Refusal> {
        let Strength::Undrained { c_u: c_2 } = self.lower else { return Ok(None) };
        if e.push() > 0.0 || self.upper.slope > 0.0 {
            return Ok(None);
        }
        let (b, ratio, h, d) = (e.width, e.ratio, self.thickness, self.base_depth);
        let below = (1.0 + 0.2 * ratio) * (PI + 2.0) * c_2;
        let beside = self.base_stress;
        let (sides, formula, values): (f64, &'static str, Value) = match (self.upper.strength, self.sides) {
            (_, Sides::Adhesion(v) | Sides::Coefficient(v)) if !(v >= 0.0 && v.is_finite()) => {
                return Err(Refusal::NoNumber);
            }
            (Strength::Undrained { c_u }, sides) => {
                // More than the upper layer's own strength cannot act on its sides.
                let adhesion = if let Sides::Adhesion(a) = sides { a.min(c_u) } else { c_2.min(c_u) };
                let by = (1.0 + ratio) * 2.0 * adhesion * h / b;
                (by, "q_3 = (1 + 0.2·B/L)·(π + 2)·c_2 + (1 + B/L)·2·c_a·H/B + σ_0", pressure("c_a", adhesion))
            }
            (Strength::Drained { friction, .. }, Sides::Coefficient(k)) => {
                let acting = self.upper.unit_weight * h * (h + 2.0 * d);
                let by = (1.0 + ratio) * acting * k * libm::tan(friction) / b;
                let formula = "q_3 = (1 + 0.2·B/L)·(π + 2)·c_2 + (1 + B/L)·γ·H²·(1 + 2·D/H)·K_s·tan φ/B + σ_0";
                (by, formula, number("K_s·tan φ", k * libm::tan(friction)))
            }
            (Strength::Drained { .. }, _) => return Ok(None),
        };
        let q = (below + sides + beside).min(upper);
        trace.step(|| Step {
            title: text::STEP_PUNCHING.message(),
            formula: formula.into(),
            values: vec![
                pressure("c_2", c_2),
                values,
                length("B", b),
                number("B/L", ratio),
                length("H", h),
                length("D", d),
                weight("γ", self.upper.unit_weight),
                pressure("σ_0", beside),
            ],
            result: pressure("q_3", q),
            source: Source::second_hand("Meyerhof & Hanna 1978, in Das, Principles of Foundation Engineering, ch. 4"),
        });
        Ok(Some(q))
    }
}
