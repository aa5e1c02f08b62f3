//! `calc buried`: what wheels put on a buried pipe, culvert, tank or slab, against what its owner allows.

use super::input::Input;
use super::{ground_input, ground_text as words, working};
use crate::args::Said;
use crate::{Outcome, Run, terminal};
use evidence::{Message, Working};
use ground::buried::{Buried, BuriedCondition, buried_stress};
use ground::cover::Cover;
use ground::stress::Patch;
use jobfile::{Bound, Reader, buried_keys};
use quantity::{Dimension, Quantity};
use serde::{Deserialize, Serialize};
use site::BuriedKind;

pub(crate) const EXAMPLE: &str = r#"# What wheels put on a buried thing, stated as a job's [[buried]] states it.
kind = "pipe"                # "cable", "culvert", "tank", "basement",
#                              "backfill" or "void"
wall = "rigid"               # of a pipe or culvert; a flexible one: see below
cover = "1.20 m"             # to the crown, with give_or_take; or "unknown"
allowed_pressure = "120 kPa" # at the crown, its owner's; left out: not known
around = { fresh_fill = false, voids = false, by = "G. Soil, trial pit 4" }
from = ["-10 m", "0.40 m"]   # its crown in plan, from here
to = ["10 m", "0.40 m"]      # to here
half_breadth = "0.15 m"
unit_weight = "19 kN/m³"     # of the cover
# Instead of wall = "rigid":
# [wall]
# diameter = "0.30 m"        # mean
# ring_stiffness = "8 kPa"   # or thickness and modulus of a plain wall
# soil_modulus = "3 MPa"     # E'
# deflection = "5 %"         # of the diameter, its owner's; left out: not known
# bedding = 0.1              # left out: 0.11
# lag = 1.5
[[contact]]
at = ["0 m", "0.90 m"]
size = ["0.35 m", "0.40 m"]
force = "48 kN"
[[contact]]
at = ["0 m", "-0.90 m"]
size = ["0.35 m", "0.40 m"]
force = "31 kN"
"#;

/// Answer of the calculation. SI.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, schemars::JsonSchema)]
pub(crate) struct BuriedResult {
    /// Where on the crown the wheels press most, plan, m; `null`: the cover is not known.
    pub(crate) at_m: Option<[f64; 2]>,
    /// How deep the crown lies there: of the range of its cover where the total is greatest, m.
    pub(crate) depth_m: Option<f64>,
    /// Wheels with impact, the larger of both ways, Pa.
    pub(crate) wheels_pa: Option<f64>,
    /// Weight of the cover, Pa.
    pub(crate) soil_pa: Option<f64>,
    /// Both together, Pa.
    pub(crate) total_pa: Option<f64>,
    /// Deflection of a flexible pipe as a share of its diameter.
    pub(crate) deflection: Option<f64>,
    /// Share of the allowable that is left; `null`: not told.
    pub(crate) reserve: Option<f64>,
    /// What has to be cleared by name first.
    pub(crate) conditions: Vec<BuriedNeed>,
}

/// What has to be cleared by name.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, schemars::JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub(crate) enum BuriedNeed {
    /// What it is.
    Kind,
    /// Its cover.
    Cover,
    /// The stress its owner allows.
    Allowable,
    /// The deflection its owner allows.
    Deflection,
    /// Recent backfill.
    RecentBackfill,
    /// Voids beside it.
    Voids,
}

pub(crate) fn run(input: &Input, said: Said) -> Run {
    let (thing, wheels) = ground_input::read(input, said, asked)?;
    let mut steps = Working::default();
    let found = buried_stress(&thing, &wheels, &mut steps).map_err(|f| ground_input::refused(input, said, &f))?;
    let stress = found.stress;
    let result = BuriedResult {
        at_m: stress.map(|s| s.at),
        depth_m: stress.map(|s| s.depth),
        wheels_pa: stress.map(|s| s.total - s.soil),
        soil_pa: stress.map(|s| s.soil),
        total_pa: stress.map(|s| s.total),
        deflection: found.deflection,
        reserve: found.reserve,
        conditions: found.conditions.iter().map(|c| need(*c)).collect(),
    };
    if said.json() {
        terminal::print_json(&result);
    } else {
        print(&result, &steps, said);
    }
    let kept = result.conditions.is_empty() && result.reserve.is_some_and(|r| r >= 0.0);
    Ok(if kept { Outcome::Done } else { Outcome::Outside })
}

fn need(c: BuriedCondition) -> BuriedNeed {
    match c {
        BuriedCondition::Kind => BuriedNeed::Kind,
        BuriedCondition::Cover => BuriedNeed::Cover,
        BuriedCondition::Allowable => BuriedNeed::Allowable,
        BuriedCondition::Deflection => BuriedNeed::Deflection,
        BuriedCondition::RecentBackfill => BuriedNeed::RecentBackfill,
        BuriedCondition::Voids => BuriedNeed::Voids,
    }
}

fn asked(root: &Reader<'_>) -> Option<(Buried, Vec<Patch>)> {
    root.stated();
    let keys = buried_keys(root);
    let from = root.point("from", "from = [\"-10 m\", \"0 m\"]", 1e6);
    let to = root.point("to", "to = [\"10 m\", \"0 m\"]", 1e6);
    let half_breadth = root.decision("half_breadth", Dimension::Length, Bound::ZeroTo(100.0));
    let unit_weight = root.decision("unit_weight", Dimension::UnitWeight, Bound::Positive);
    let wheels = ground_input::patches(root);
    let crown = [from?.to_array(), to?.to_array()];
    let keys = keys?;
    let around = keys.around.as_ref();
    let thing = Buried {
        kind: keys.kind.under_wheels(keys.wall),
        crown,
        half_breadth: half_breadth?,
        cover: keys.cover.map(|c| [c.low, c.high]),
        soils: vec![Cover::even(unit_weight?)],
        allowable: keys.allowed_pressure,
        // Left out is not "no": nobody said so.
        recent_backfill: keys.kind == BuriedKind::Backfill || around.and_then(|a| a.fresh_fill).unwrap_or(true),
        voids_possible: keys.kind == BuriedKind::Void || around.and_then(|a| a.voids).unwrap_or(true),
    };
    Some((thing, wheels))
}

fn print(r: &BuriedResult, steps: &Working, said: Said) {
    let w = said.wording();
    let say = |m: &Message| terminal::paragraph(&w.render(m), "", "  ");
    let pressure = |v| Quantity::new(v, Dimension::Pressure);
    if let (Some(total), Some(wheels), Some(soil)) = (r.total_pa, r.wheels_pa, r.soil_pa) {
        say(&words::BURIED_STRESS
            .with("total", pressure(total))
            .with("wheels", pressure(wheels))
            .with("soil", pressure(soil)));
    }
    if let Some(share) = r.deflection {
        say(&words::BURIED_DEFLECTION.with("share", Quantity::ratio(share)));
    }
    if let Some(reserve) = r.reserve {
        let id = if reserve >= 0.0 { words::BURIED_LEFT } else { words::BURIED_BEYOND };
        say(&id.with("share", Quantity::ratio(reserve.abs())));
    }
    for c in &r.conditions {
        say(&match c {
            BuriedNeed::Kind => words::BURIED_NO_KIND.message(),
            BuriedNeed::Cover => words::BURIED_NO_COVER.message(),
            BuriedNeed::Allowable => words::BURIED_NO_ALLOWABLE.message(),
            BuriedNeed::Deflection => words::BURIED_NO_DEFLECTION.message(),
            BuriedNeed::RecentBackfill => words::BURIED_BACKFILL.message(),
            BuriedNeed::Voids => words::BURIED_VOIDS.message(),
        });
    }
    say(&words::BURIED_NOTE.message());
    working::print(steps, None, said);
}
