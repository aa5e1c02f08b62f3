//! What wheels put on a buried pipe, culvert, tank or slab: stress at its crown, and what its owner allows.
//!
//! All wheels count as patches at the place along the crown, and the depth within what is known of its cover, where it
//! is pressed most. Boussinesq and 2:1 spread are both taken, the larger governs; impact by cover comes on the wheels,
//! the weight of the cover on top. A cover that may be none is not known. Nothing here says that a thing is strong enough without its owner's figure: unknown kind, cover, figure, recent backfill or
//! voids are named conditions.

use crate::buried_place::{over_range, worst_place};
use crate::cover::Cover;
use crate::edge_text as text;
use crate::input_fault::{InputFault, InputFaults};
use crate::stress::{Patch, patches_stress};
use evidence::{Silent, Source, Step, Trace};
use quantity::{Dimension, Quantity};

/// What lies in the ground.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum BuriedKind {
    /// A pipe or culvert that does not give: concrete, clay, masonry.
    Rigid,
    /// A pipe that the soil beside it holds in shape: plastic, corrugated steel.
    Flexible(FlexiblePipe),
    /// A tank.
    Tank,
    /// The roof of a basement or chamber.
    Slab,
    /// Nobody knows.
    Unknown,
}

/// A flexible pipe, for its deflection.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct FlexiblePipe {
    /// Mean radius, m.
    pub radius: f64,
    /// Bending stiffness of the wall per length, `E·I`, N·m (N·m² per m).
    pub wall: f64,
    /// Modulus of soil reaction `E′`, Pa.
    pub soil: f64,
    /// Bedding factor `K`, 0.083 to 0.110.
    pub bedding: f64,
    /// Deflection lag factor `D_L` on the soil's weight, 1.0 to 1.5.
    pub lag: f64,
    /// Deflection that its owner allows, as a share of the diameter; `None` where unknown.
    pub allowable: Option<f64>,
}

/// A buried thing under wheels.
#[derive(Debug, Clone, PartialEq)]
pub struct Buried {
    /// What it is.
    pub kind: BuriedKind,
    /// The crown in plan, from end to end, m; the same point twice for a small thing.
    pub crown: [[f64; 2]; 2],
    /// Half the breadth in plan over which wheels may press on it, m.
    pub half_breadth: f64,
    /// Least and greatest cover from the surface to the crown, m; `None` where unknown. From 0 up it is not known either.
    pub cover: Option<[f64; 2]>,
    /// Soils that may lie over it; the heaviest counts.
    pub soils: Vec<Cover>,
    /// Stress at the crown, of wheels and cover together, that its owner allows, Pa.
    pub allowable: Option<f64>,
    /// True if the backfill over it is recent, or nobody knows that it is not.
    pub recent_backfill: bool,
    /// True if voids or washed-out soil beside it cannot be ruled out.
    pub voids_possible: bool,
}

/// What has to be cleared by name before wheels may pass.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum BuriedCondition {
    /// The kind of thing is not known.
    Kind,
    /// Its cover is not known.
    Cover,
    /// Its owner's allowable stress is not known.
    Allowable,
    /// Of a flexible pipe: its owner's allowable deflection is not known.
    Deflection,
    /// Recent backfill.
    RecentBackfill,
    /// Voids cannot be ruled out.
    Voids,
}

/// What wheels put on a buried thing.
#[derive(Debug, Clone, PartialEq)]
pub struct BuriedStress {
    /// The numbers; none where the cover is not known.
    pub stress: Option<CrownStress>,
    /// Deflection as a share of the diameter; of flexible pipes, the greatest over the range of the cover.
    pub deflection: Option<f64>,
    /// Share of the allowable that is left, the lesser of stress and deflection; negative beyond. None where not told.
    pub reserve: Option<f64>,
    /// What has to be cleared first. Not empty: no pass, whatever the reserve.
    pub conditions: Vec<BuriedCondition>,
}

/// Stress at a crown, Pa.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct CrownStress {
    /// Where along the crown, plan, m.
    pub at: [f64; 2],
    /// How deep, m: of the range of the cover where the total is greatest.
    pub depth: f64,
    /// Wheels by Boussinesq, without impact.
    pub elastic: f64,
    /// Wheels by 2:1 spread, without impact.
    pub spread: f64,
    /// Impact, a share of the wheels' stress.
    pub impact: f64,
    /// Weight of the cover.
    pub soil: f64,
    /// The larger of both with impact, and the cover.
    pub total: f64,
}

/// Impact on buried things as a share of the load: `0.33·(1 − 0.41·cover)`, cover in m, none from 2.44 m (8 ft) on;
/// AASHTO LRFD 3.6.2.2 (from memory).
pub fn impact_by_cover(cover: f64) -> f64 {
    let share = 0.33 * (1.0 - 0.125 * cover / 0.3048);
    if share < 0.0 { 0.0 } else { share }
}

/// Deflection of a flexible pipe as a share of its diameter, by the modified Iowa formula:
/// `Δ/D = K·(D_L·p_s + p_w) / (E·I/r³ + 0.061·E′)`, pressures at the crown of soil and wheels;
/// Spangler 1941, Watkins & Spangler 1958 (from memory). Crown pressure times diameter is the load per length.
pub fn iowa_deflection(pipe: &FlexiblePipe, soil: f64, wheels: f64) -> f64 {
    let r3 = pipe.radius * pipe.radius * pipe.radius;
    pipe.bedding * (pipe.lag * soil + wheels) / (pipe.wall / r3 + 0.061 * pipe.soil)
}

/// What `wheels` put on a buried thing, with its steps.
///
/// # Errors
/// Every number that is none or out of range.
pub fn buried_stress(
    thing: &Buried,
    wheels: &[Patch],
    trace: &mut impl Trace,
) -> Result<BuriedStress, Vec<InputFault>> {
    thing.look(wheels)?;
    let mut conditions = thing.conditions();
    let Some(cover) = thing.cover.filter(|c| c[0] > 0.0) else {
        return Ok(BuriedStress { stress: None, deflection: None, reserve: None, conditions });
    };
    let at_each = over_range(cover, |depth| thing.pressed(wheels, depth));
    let Some(&worst) = at_each.iter().reduce(|a, b| if a.total.is_nan() || a.total >= b.total { a } else { b }) else {
        conditions.push(BuriedCondition::Cover);
        return Ok(BuriedStress { stress: None, deflection: None, reserve: None, conditions });
    };
    let CrownStress { at, depth, impact, soil, total, .. } = worst;
    // The place was found for both ways together: both stresses are of that one place.
    let live = patches_stress(wheels, at, depth, trace);
    let pressure = |v| Quantity::new(v, Dimension::Pressure);
    trace.step(|| Step {
        title: text::STEP_IMPACT.message(),
        formula: "φ = 0.33·(1 − 0.125·z/0.3048 m), φ ≥ 0".into(),
        values: vec![("z".into(), Quantity::new(depth, Dimension::Length))],
        result: ("φ".into(), Quantity::ratio(impact)),
        source: Source::from_memory("AASHTO LRFD 3.6.2.2"),
    });
    trace.step(|| Step {
        title: text::STEP_CROWN.message(),
        formula: "σ = (1 + φ)·max(σ_B, σ_2:1) + Σ γ·z".into(),
        values: vec![
            ("φ".into(), Quantity::ratio(impact)),
            ("σ_B".into(), pressure(live.elastic)),
            ("σ_2:1".into(), pressure(live.spread)),
            ("Σ γ·z".into(), pressure(soil)),
            ("z".into(), Quantity::new(depth, Dimension::Length)),
            ("x".into(), Quantity::new(at[0], Dimension::Length)),
            ("y".into(), Quantity::new(at[1], Dimension::Length)),
        ],
        result: ("σ".into(), pressure(total)),
        source: Source::Mechanics,
    });
    let mut reserves: Vec<f64> = thing.allowable.map(|a| 1.0 - total / a).into_iter().collect();
    let deflection = if let BuriedKind::Flexible(pipe) = &thing.kind {
        // Another depth may flatten it more: soil lags, wheels do not.
        let flattens = |s: &CrownStress| iowa_deflection(pipe, s.soil, s.total - s.soil);
        let of = at_each.iter().fold(worst, |a, b| if flattens(b) > flattens(&a) { *b } else { a });
        let (share, soil, wheel_part) = (flattens(&of), of.soil, of.total - of.soil);
        trace.step(|| Step {
            title: text::STEP_IOWA.message(),
            formula: "Δ/D = K·(D_L·p_s + p_w) / (E·I/r³ + 0.061·E′)".into(),
            values: vec![
                ("K".into(), Quantity::number(pipe.bedding)),
                ("D_L".into(), Quantity::number(pipe.lag)),
                ("p_s".into(), pressure(soil)),
                ("p_w".into(), pressure(wheel_part)),
                ("E·I".into(), Quantity::new(pipe.wall, Dimension::Moment)),
                ("r".into(), Quantity::new(pipe.radius, Dimension::Length)),
                ("E′".into(), pressure(pipe.soil)),
                ("z".into(), Quantity::new(of.depth, Dimension::Length)),
            ],
            result: ("Δ/D".into(), Quantity::ratio(share)),
            source: Source::from_memory("Watkins & Spangler 1958, modified Iowa formula"),
        });
        reserves.extend(pipe.allowable.map(|a| 1.0 - share / a));
        Some(share)
    } else {
        None
    };
    let reserve = reserves.into_iter().reduce(|a, b| if a.is_nan() || a < b { a } else { b });
    if !total.is_finite() {
        conditions.push(BuriedCondition::Cover);
    }
    Ok(BuriedStress { stress: Some(worst), deflection, reserve, conditions })
}

impl Buried {
    /// What presses on the crown where it lies so deep.
    fn pressed(&self, wheels: &[Patch], depth: f64) -> CrownStress {
        let at = worst_place(self, wheels, depth);
        let live = patches_stress(wheels, at, depth, &mut Silent);
        let impact = impact_by_cover(depth);
        let soil = self.soils.iter().map(|s| s.stress(depth)).fold(0.0, |a, b| if a > b { a } else { b });
        let total = (1.0 + impact) * live.larger() + soil;
        CrownStress { at, depth, elastic: live.elastic, spread: live.spread, impact, soil, total }
    }

    fn conditions(&self) -> Vec<BuriedCondition> {
        let mut out = Vec::new();
        let mut need = |when: bool, what| {
            if when {
                out.push(what);
            }
        };
        need(matches!(self.kind, BuriedKind::Unknown), BuriedCondition::Kind);
        need(!self.cover.is_some_and(|c| c[0] > 0.0), BuriedCondition::Cover);
        need(self.allowable.is_none(), BuriedCondition::Allowable);
        need(
            matches!(self.kind, BuriedKind::Flexible(FlexiblePipe { allowable: None, .. })),
            BuriedCondition::Deflection,
        );
        need(self.recent_backfill, BuriedCondition::RecentBackfill);
        need(self.voids_possible, BuriedCondition::Voids);
        out
    }

    fn look(&self, wheels: &[Patch]) -> Result<(), Vec<InputFault>> {
        let mut out = InputFaults::default();
        for v in self.crown.iter().flatten() {
            out.range(text::NAME_CROWN, *v, Dimension::Length, [-1e8, 1e8]);
        }
        out.range(text::NAME_HALF_BREADTH, self.half_breadth, Dimension::Length, [0.0, 100.0]);
        if let Some([low, high]) = self.cover {
            out.range(text::NAME_COVER, low, Dimension::Length, [0.0, 50.0]);
            if high.is_nan() || high > low {
                out.range(text::NAME_COVER, high, Dimension::Length, [0.0, 50.0]);
            }
            out.order([text::NAME_COVER, text::NAME_COVER], [low, high], true);
        }
        if self.soils.is_empty() {
            out.push(InputFault::Missing { what: text::NAME_UNIT_WEIGHT });
        }
        for soil in &self.soils {
            out.unit_weight(soil.below);
            for [_, unit_weight] in &soil.layers {
                out.unit_weight(*unit_weight);
            }
        }
        if let Some(a) = self.allowable {
            out.range(text::NAME_ALLOWABLE, a, Dimension::Pressure, [1.0, 1e8]);
        }
        if let BuriedKind::Flexible(p) = &self.kind {
            out.range(text::NAME_PIPE_RADIUS, p.radius, Dimension::Length, [0.01, 10.0]);
            out.range(text::NAME_PIPE_WALL, p.wall, Dimension::Moment, [1e-3, 1e8]);
            out.range(text::NAME_SOIL_MODULUS, p.soil, Dimension::Pressure, [0.0, 1e8]);
            out.range(text::NAME_BEDDING, p.bedding, Dimension::Number, [0.083, 0.11]);
            out.range(text::NAME_LAG, p.lag, Dimension::Number, [1.0, 2.0]);
            if let Some(a) = p.allowable {
                out.range(text::NAME_DEFLECTION, a, Dimension::Ratio, [1e-4, 0.3]);
            }
        }
        if wheels.is_empty() {
            out.push(InputFault::Missing { what: text::NAME_CONTACT_FORCE });
        }
        for w in wheels {
            for v in w.middle {
                out.range(text::NAME_LOAD_PLACE, v, Dimension::Length, [-1e8, 1e8]);
            }
            for v in w.size {
                out.range(text::NAME_CONTACT_SIZE, v, Dimension::Length, [0.01, 20.0]);
            }
            out.range(text::NAME_HEADING, w.heading, Dimension::Angle, [-1e3, 1e3]);
            out.range(text::NAME_CONTACT_FORCE, w.force, Dimension::Force, [-1e6, 1e6]);
        }
        out.done()
    }
}
