//! How far the outer edge of a tyre, pad or mat stays from an edge by rule, before anything is computed.
//!
//! A line rises from the toe of the drop at the slope of the ground; what stands on the surface stays outside it.
//! 1.5 horizontal to 1 vertical, 2 to 1 where soft, wet or backfilled, at least 1 m from the crest beside any drop
//! of 0.4 m, in rock too (common practice). Excavation slopes of 29 CFR 1926 Subpart P, appendix B, Table B-1 hold
//! without a load on top and give no distance for one ((c)(3)(iii): second hand); a steeper line than the default
//! is a named competent person's.

use crate::edge_text as text;
use crate::input_fault::{InputFault, InputFaults};
use evidence::{Source, Step, Trace};
use quantity::{Dimension, Quantity};

/// What the ground beside the edge is, as far as the rule asks.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum EdgeGround {
    /// Sound rock, stated so by somebody: the line is upright, the least distance stays.
    Rock,
    /// Firm natural soil, dry.
    Firm,
    /// Soft, wet, seeping, backfilled or disturbed soil; also soil of which nothing is known.
    Poor,
}

/// A steeper line than the default, in the name of the person who answers for it.
#[derive(Debug, Clone, PartialEq)]
pub struct NamedSlope {
    /// Horizontal per vertical.
    pub ratio: f64,
    /// Who.
    pub person: String,
}

/// A drop beside which something stands.
#[derive(Debug, Clone, PartialEq)]
pub struct Drop {
    /// Height from toe to crest, m.
    pub depth: f64,
    /// Level distance from toe to crest, m; 0 where the face is upright.
    pub batter: f64,
    /// What the ground is.
    pub ground: EdgeGround,
    /// Another slope of the line, if somebody answers for it.
    pub named: Option<NamedSlope>,
}

/// What decides the distance by rule.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum LineGoverns {
    /// The line from the toe.
    Line,
    /// The least distance from the crest.
    Least,
    /// The face is flatter than the line, and the drop too small for the least distance.
    Nothing,
}

/// Distance by rule.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct PlanningLine {
    /// Horizontal per vertical that was used.
    pub ratio: f64,
    /// Least distance of the outer edge of tyre or mat from the crest, m.
    pub from_crest: f64,
    /// The same from the toe, m.
    pub from_toe: f64,
    /// What decides.
    pub governs: LineGoverns,
    /// Deeper than [`ENGINEER_DEPTH`]: an engineer's design, whatever the line says.
    pub engineer: bool,
}

/// Least distance from a crest, m; common practice.
pub const LEAST_DISTANCE: f64 = 1.0;
/// Drop beside which the least distance is kept, m; common practice.
pub const LEAST_DROP: f64 = 0.4;
/// Depth beyond which an engineer designs the excavation, m: 20 ft; 29 CFR 1926.652(b), Table B-1, from memory.
pub const ENGINEER_DEPTH: f64 = 6.096;

impl EdgeGround {
    /// Default slope of the line, horizontal per vertical; common practice.
    pub fn default_ratio(self) -> f64 {
        match self {
            Self::Rock => 0.0,
            Self::Firm => 1.5,
            Self::Poor => 2.0,
        }
    }
}

/// Distance by rule, with its steps.
///
/// # Errors
/// Every number that is none or out of range, and a slope without a name.
pub fn planning_line(drop: &Drop, trace: &mut impl Trace) -> Result<PlanningLine, Vec<InputFault>> {
    let mut faults = InputFaults::default();
    faults.range(text::NAME_EDGE_DEPTH, drop.depth, Dimension::Length, [0.01, 60.0]);
    faults.range(text::NAME_EDGE_BATTER, drop.batter, Dimension::Length, [0.0, 300.0]);
    if let Some(named) = &drop.named {
        faults.range(text::NAME_EDGE_RATIO, named.ratio, Dimension::Number, [0.0, 10.0]);
        if named.person.trim().is_empty() {
            faults.push(InputFault::NoName { what: text::NAME_EDGE_RATIO });
        }
    }
    faults.done()?;
    let ratio = drop.named.as_ref().map_or(drop.ground.default_ratio(), |n| n.ratio);
    let line = (ratio * drop.depth - drop.batter).max(0.0);
    let least = if drop.depth >= LEAST_DROP { LEAST_DISTANCE } else { 0.0 };
    let from_crest = line.max(least);
    let governs = match (line, least) {
        (l, b) if l > b => LineGoverns::Line,
        (_, b) if b > 0.0 => LineGoverns::Least,
        _ => LineGoverns::Nothing,
    };
    trace.step(|| Step {
        title: text::STEP_PLANNING_LINE.message(),
        formula: "a = max(s·h − w, a_min)".into(),
        values: vec![
            ("s".into(), Quantity::number(ratio)),
            ("h".into(), Quantity::new(drop.depth, Dimension::Length)),
            ("w".into(), Quantity::new(drop.batter, Dimension::Length)),
            ("a_min".into(), Quantity::new(least, Dimension::Length)),
        ],
        result: ("a".into(), Quantity::new(from_crest, Dimension::Length)),
        source: match &drop.named {
            Some(n) => Source::Person { name: n.person.clone(), statement: format!("{} : 1", n.ratio) },
            None => Source::CommonPractice,
        },
    });
    Ok(PlanningLine {
        ratio,
        from_crest,
        from_toe: from_crest + drop.batter,
        governs,
        engineer: drop.depth > ENGINEER_DEPTH,
    })
}
