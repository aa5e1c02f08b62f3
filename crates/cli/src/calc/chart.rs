//! `calc chart`: capacity of a load chart at a reach and height by the chart's own datum.

use super::input::Input;
use crate::args::Said;
use crate::failure::Failure;
use crate::{Outcome, Run, terminal, text};
use geometry::DVec2;
use jobfile::Bound;
use machine::{ChartPoint, Reading, SupportState};
use quantity::{Dimension, Quantity, Si};
use serde::{Deserialize, Serialize};

pub(crate) const EXAMPLE: &str = r#"# Capacity of a load chart at one point. Nothing is interpolated.
machine = "examples/demo-job/machines/demo-7.toml"   # relative to this file
attachment = "forks"
support = "tyres"            # "stabilizers" or "outriggers"
reach = "2.10 m"             # by the chart's own datum
height = "4.50 m"
box = "0.10 m"               # the point may lie this much to every side
load = "1200 kg"
load_centre = "0.60 m"       # from the fork face; 0 for a hook. Chooses among
#                              charts; no excess is added here
"#;

/// Answer of the calculation. SI.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, schemars::JsonSchema)]
pub(crate) struct ChartResult {
    /// Lowest capacity in the box, kg; `null` where the chart shows nothing.
    pub(crate) capacity_kg: Option<f64>,
    /// Zone that governs.
    pub(crate) zone: Option<String>,
    /// Share of the capacity left by the load: 0 at the limit, negative beyond.
    pub(crate) reserve: Option<f64>,
    /// Rated load centre of the chart, m.
    pub(crate) load_centre_m: f64,
}

pub(crate) fn run(input: &Input, said: Said) -> Run {
    let root = input.document.root();
    let file = root.text("machine", "machine = \"machine.toml\"");
    let attachment = root.text("attachment", "attachment = \"forks\"");
    let support = root.choice("support", &SupportState::WORDS);
    let reach = root.decision("reach", Dimension::Length, Bound::Any);
    let height = root.decision("height", Dimension::Length, Bound::Any);
    let half = root.decision("box", Dimension::Length, Bound::NotNegative);
    let load = root.decision("load", Dimension::Mass, Bound::ZeroTo(super::standing::HEAVIEST));
    let centre = root.decision("load_centre", Dimension::Length, Bound::NotNegative);
    root.done();
    if let Some(failure) = input.faults(said) {
        return Err(failure);
    }
    let (Some(file), Some(attachment), Some(support), Some(reach), Some(height), Some(half), Some(load), Some(centre)) =
        (file, attachment, support, reach, height, half, load, centre)
    else {
        return Err(Failure::new(input.document.faults(), said));
    };
    let machine = input.machine(&file, said)?;
    let people = |a: &machine::Attachment| matches!(a.kind, machine::AttachmentKind::Platform(_));
    if machine.attachment(&attachment).is_some_and(people) {
        root.fault("attachment", text::NO_PEOPLE.message(), Some(text::HINT_NO_PEOPLE.message()));
        return Err(input.faults(said).unwrap_or_else(|| Failure::new(input.document.faults(), said)));
    }
    let Some(chart) = machine.chart_for(&attachment, support, centre) else {
        root.fault("attachment", text::NO_CHART.with("attachment", &attachment), None);
        return Err(input.faults(said).unwrap_or_else(|| Failure::new(input.document.faults(), said)));
    };
    let at = DVec2::new(reach, height);
    let point = ChartPoint { at, low: at - DVec2::splat(half), high: at + DVec2::splat(half) };
    let (capacity, zone) = match chart.read(&point) {
        Reading::Within { capacity_kg, zone } => (Some(capacity_kg), Some(chart.zones[zone].name.clone())),
        Reading::Outside => (None, None),
    };
    let result = ChartResult {
        capacity_kg: capacity,
        zone,
        reserve: capacity.map(|c| 1.0 - load / c),
        load_centre_m: chart.load_centre.si(),
    };
    if said.json() {
        terminal::print_json(&result);
    } else {
        let w = said.wording();
        let say = |m: &evidence::Message| terminal::paragraph(&w.render(m), "", "  ");
        let kg = |si: f64| Quantity::new(si, Dimension::Mass);
        let length = |si: f64| Quantity::new(si, Dimension::Length);
        match (result.capacity_kg, &result.zone, result.reserve) {
            (Some(capacity), Some(zone), Some(reserve)) => {
                say(&text::CHART_CAPACITY.with("capacity", kg(capacity)).with("zone", zone));
                say(&text::CHART_RESERVE.with("mass", kg(load)).with("share", Quantity::ratio(reserve)));
            }
            _ => say(&text::CHART_OUTSIDE_HERE.with("reach", length(reach)).with("height", length(height))),
        }
    }
    Ok(if result.reserve.is_some_and(|r| r >= 0.0) { Outcome::Done } else { Outcome::Outside })
}
