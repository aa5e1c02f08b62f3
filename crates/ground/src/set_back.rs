//! How near to an edge wheels or pads may stand: the line from the toe, and equilibrium with a required factor.
//!
//! The wedge ([`crate::wedge`]) and the circle ([`crate::slip_search`]) are both asked, the lower factor counts. The
//! load comes nearer, from where it no longer matters inward, by spans of distance (`set_back_walk.rs`): a span is passed as a
//! whole, every place in it, or not at all. So no distance is allowed behind which a farther one fails, however short
//! the stretch on which it does. What is computed never undercuts the line: the larger distance counts, unless a named person's steeper line
//! replaces it. A supported side gives no distance: its designer is handed the load.

use crate::edge_rules::{Drop, PlanningLine, planning_line};
use crate::edge_strength::{Drainage, EdgeLayer, Exposure, layers_of, water_behind};
use crate::edge_text as text;
use crate::input_fault::{InputFault, InputFaults};
use crate::set_back_walk::{far, nearest, spread};
use crate::slope_section::{Crack, PoreWater, SlopeLayer, SlopeSection, Surcharge};
use crate::wedge::crack_depth;
use crate::wheel_row::{self, WheelRow};
use crate::{slip_search, wedge};
use evidence::{Source, Step, Trace};
use quantity::{Dimension, Quantity};

/// Required factor of safety; from memory.
pub const REQUIRED: f64 = 1.3;
/// The same with people below; from memory.
pub const REQUIRED_PEOPLE: f64 = 1.5;
/// Distances are found to this, m, and are given on the safe side of it.
pub const PRECISION: f64 = 0.01;

/// How the side of a drop stands.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Side {
    /// By the strength of the soil alone.
    Open,
    /// Shored, sheeted, walled: by a support of which its designer has to be asked.
    Supported,
}

/// An edge: everything that a distance depends on but the wheels.
#[derive(Debug, Clone, PartialEq)]
pub struct Edge {
    /// Depth, batter, kind of ground, named slope.
    pub drop: Drop,
    /// Open or supported.
    pub side: Side,
    /// Layers from the top down; empty where nothing is known.
    pub layers: Vec<EdgeLayer>,
    /// Height of the water table above the toe behind the face, m; `None` where nothing is known of it.
    pub water: Option<f64>,
    /// Depth below the crest of ground that no slip goes through, m.
    pub firm_base: Option<f64>,
    /// How long it has stood, and what befell it.
    pub exposure: Exposure,
    /// True if people may be below.
    pub people_below: bool,
}

/// What a distance from an edge comes to.
#[derive(Debug, Clone, PartialEq)]
pub enum SetBack {
    /// So far and no nearer.
    Distance(Distance),
    /// The face does not stand with the required factor, whatever stands on top.
    FaceFails {
        /// Its factor without load.
        factor: f64,
        /// What was required.
        required: f64,
        /// The strength that counts.
        drainage: Drainage,
    },
    /// The designer of the support decides, with [`crate::lateral`].
    Supported,
    /// Cannot tell: what is missing.
    Unknown(Vec<Unknown>),
}

/// What is not known of an edge.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Unknown {
    /// No layer is known.
    Soil,
    /// A layer has no strength of the kind that counts now.
    Strength(Drainage),
    /// The water table.
    Water,
}

/// A distance and what it rests on.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Distance {
    /// Least distance of the outer edge of tyre or mat from the crest, m.
    pub from_crest: f64,
    /// What decides.
    pub governs: SetBackGoverns,
    /// By the line alone.
    pub line: PlanningLine,
    /// By equilibrium alone, m.
    pub equilibrium: f64,
    /// Factor at `from_crest`.
    pub factor: f64,
    /// Factor without load.
    pub unloaded: f64,
    /// What was required.
    pub required: f64,
    /// The strength that counts.
    pub drainage: Drainage,
    /// Hours until undrained strength no longer counts and all this ends.
    pub ends_after: Option<f64>,
}

/// What decides a distance.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum SetBackGoverns {
    /// The line from the toe, or the least distance.
    Rule,
    /// A plane wedge.
    Wedge,
    /// A slip circle.
    Circle,
}

impl Edge {
    /// Everything that is wrong with edge and wheels.
    pub fn faults(&self, rows: &[WheelRow]) -> Vec<InputFault> {
        let mut out = InputFaults::default();
        wheel_row::look_at(rows, &mut out);
        out.append(self.own_faults());
        out.done().err().unwrap_or_default()
    }

    /// Everything that is wrong with the edge itself.
    pub(crate) fn own_faults(&self) -> Vec<InputFault> {
        let mut out = InputFaults::default();
        self.exposure.look(&mut out);
        if let Some(water) = self.water {
            out.range(text::NAME_WATER_TABLE, water, Dimension::Length, [-500.0, 60.0]);
            out.order([text::NAME_WATER_TABLE, text::NAME_EDGE_DEPTH], [water, self.drop.depth], true);
        }
        out.append(planning_line(&self.drop, &mut evidence::Silent).err().unwrap_or_default());
        for layer in &self.layers {
            if let Some(c) = layer.undrained {
                out.range(text::NAME_COHESION, c, Dimension::Pressure, [0.0, 1e6]);
            }
        }
        // The rest as the slip calculations look at it; depth and batter were looked at above, and stand in here.
        let fit = |v: f64, least: f64, most: f64| if v.is_finite() { v.clamp(least, most) } else { least };
        let layers = self.layers.iter().map(|l| {
            let [cohesion, friction] = l.drained.unwrap_or_default();
            SlopeLayer { bottom: l.bottom, unit_weight: l.unit_weight, cohesion, friction }
        });
        let section = SlopeSection {
            depth: fit(self.drop.depth, 0.01, 60.0),
            batter: fit(self.drop.batter, 0.0, 300.0),
            layers: layers.collect(),
            firm_base: self.firm_base,
            water: PoreWater::Dry,
            crack: Crack::default(),
        };
        if !self.layers.is_empty() {
            out.append(section.faults(&[]));
        }
        out.done().err().unwrap_or_default()
    }

    /// The factor that is required.
    pub fn required(&self) -> f64 {
        if self.people_below { REQUIRED_PEOPLE } else { REQUIRED }
    }

    /// The cut with each strength that is solved, the one that counts first ([`Exposure::solved`]), or what is missing.
    ///
    /// # Errors
    /// What is not known.
    pub fn sections(&self) -> Result<Vec<(Drainage, SlopeSection)>, Vec<Unknown>> {
        let each = self.exposure.solved(&self.layers);
        each.into_iter().map(|drainage| Ok((drainage, self.section_with(drainage)?))).collect()
    }

    /// The cut with the strength that counts, or what is missing. In soil with cohesion a crack stands full of water.
    ///
    /// # Errors
    /// What is not known.
    pub fn section(&self) -> Result<SlopeSection, Vec<Unknown>> {
        self.section_with(self.exposure.drainage())
    }

    fn section_with(&self, drainage: Drainage) -> Result<SlopeSection, Vec<Unknown>> {
        let mut missing = Vec::new();
        let layers = layers_of(&self.layers, drainage);
        if self.layers.is_empty() {
            missing.push(Unknown::Soil);
        } else if layers.is_none() {
            missing.push(Unknown::Strength(drainage));
        }
        if self.water.is_none() {
            missing.push(Unknown::Water);
        }
        let (Some(layers), Some(water), true) = (layers, self.water, missing.is_empty()) else { return Err(missing) };
        let Drop { depth, batter, .. } = self.drop;
        let top = &layers[0];
        let crack = crack_depth(top.unit_weight, top.cohesion, top.friction, depth).min(
            // Not below the layer that has the cohesion.
            if layers.len() > 1 { top.bottom } else { f64::INFINITY },
        );
        Ok(SlopeSection {
            depth,
            batter,
            firm_base: self.firm_base.map(|base| base.max(depth)),
            water: water_behind(depth, batter, water),
            crack: Crack { depth: crack, water: crack },
            layers,
        })
    }
}

/// What one strength asks of a distance.
struct Reached<'a> {
    section: &'a SlopeSection,
    drainage: Drainage,
    unloaded: f64,
    equilibrium: f64,
    short: SetBackGoverns,
    /// Factor at the distance that this strength and the line ask.
    factor: f64,
}

impl Reached<'_> {
    /// Farther from the edge, or as far and with a lower factor there.
    fn worse_than(&self, other: &Self) -> bool {
        self.equilibrium > other.equilibrium || (self.equilibrium >= other.equilibrium && self.factor < other.factor)
    }
}

/// Lower factor of wedge and circle, and which it was. NaN where neither gives one.
pub fn edge_factor(section: &SlopeSection, loads: &[Surcharge]) -> (f64, SetBackGoverns) {
    let plane = wedge::worst_of_sound(section, loads).factor;
    let circle = slip_search::worst_of_sound(section, loads).map_or(f64::NAN, |w| w.factor);
    // Without any circle the wedge alone is not the whole look.
    if circle.is_nan() || plane.is_nan() {
        (f64::NAN, SetBackGoverns::Circle)
    } else if plane < circle {
        (plane, SetBackGoverns::Wedge)
    } else {
        (circle, SetBackGoverns::Circle)
    }
}

/// Smallest distance from the crest at which the outermost of `rows` may stand, with its steps.
///
/// # Errors
/// Every fault of edge and rows.
pub fn set_back(edge: &Edge, rows: &[WheelRow], trace: &mut impl Trace) -> Result<SetBack, Vec<InputFault>> {
    let faults = edge.faults(rows);
    if !faults.is_empty() {
        return Err(faults);
    }
    let strips: Vec<Surcharge> = rows.iter().map(|row| row.strip(0.0, edge.drop.depth)).collect();
    of_strips(edge, &strips, trace)
}

/// The same of strips as they lie where the outermost row's outer edge is at the crest; edge and rows were looked at.
pub(crate) fn of_strips(edge: &Edge, strips: &[Surcharge], trace: &mut impl Trace) -> Result<SetBack, Vec<InputFault>> {
    let line = planning_line(&edge.drop, trace)?;
    if edge.side == Side::Supported {
        return Ok(SetBack::Supported);
    }
    let sections = match edge.sections() {
        Ok(sections) => sections,
        Err(missing) => return Ok(SetBack::Unknown(missing)),
    };
    let required = edge.required();
    // Of every strength that is solved the worst.
    let mut worst: Option<Reached<'_>> = None;
    for (drainage, section) in &sections {
        let drainage = *drainage;
        let unloaded = edge_factor(section, &[]).0;
        if unloaded.is_nan() || unloaded < required {
            return Ok(SetBack::FaceFails { factor: unloaded, required, drainage });
        }
        let (equilibrium, short) = nearest(section, required, strips);
        let Some(equilibrium) = equilibrium else {
            let far = far(section);
            let factor = edge_factor(section, &spread(strips, far, far)).0;
            return Ok(SetBack::FaceFails { factor, required, drainage });
        };
        let from_crest = line.from_crest.max(equilibrium);
        let factor = edge_factor(section, &spread(strips, from_crest, from_crest)).0;
        let reached = Reached { section, drainage, unloaded, equilibrium, short, factor };
        if worst.as_ref().is_none_or(|w| reached.worse_than(w)) {
            worst = Some(reached);
        }
    }
    let Some(Reached { section, drainage, unloaded, equilibrium, short, factor }) = worst else {
        return Ok(SetBack::Unknown(vec![Unknown::Soil]));
    };
    let from_crest = line.from_crest.max(equilibrium);
    // Wedge and circle where the wheels may come, with the strength that decides: the factor of the last step.
    let there = spread(strips, from_crest, from_crest);
    wedge::worst_of_sound(section, &there).step(&there, trace);
    if let Some(slip) = slip_search::worst_of_sound(section, &there) {
        slip.step(&there, trace);
    }
    let governs = if equilibrium > line.from_crest { short } else { SetBackGoverns::Rule };
    trace.step(|| Step {
        title: text::STEP_SET_BACK.message(),
        formula: "a = max(a_s, min{a : F(a') ≥ F_req, a' ≥ a})".into(),
        values: vec![
            ("a_s".into(), Quantity::new(line.from_crest, Dimension::Length)),
            ("F_req".into(), Quantity::number(required)),
            ("F(a)".into(), Quantity::number(factor)),
            ("a_F".into(), Quantity::new(equilibrium, Dimension::Length)),
        ],
        result: ("a".into(), Quantity::new(from_crest, Dimension::Length)),
        source: Source::from_memory("required factors 1.3, with people below 1.5"),
    });
    let ends_after = edge.exposure.left();
    Ok(SetBack::Distance(Distance {
        from_crest,
        governs,
        line,
        equilibrium,
        factor,
        unloaded,
        required,
        drainage,
        ends_after,
    }))
}
