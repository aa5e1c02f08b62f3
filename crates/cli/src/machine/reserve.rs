//! `machine reserve`: each load chart against the machine's own statics, cell by cell.

use crate::args::{ReserveArgs, SupportArg};
use crate::calc::text;
use crate::failure::Failure;
use crate::{Outcome, Run, terminal};
use evidence::Message;
use geometry::DVec2;
use machine::{Chart, Machine, SupportState};
use quantity::{Dimension, Quantity, Si};
use serde::{Deserialize, Serialize};
use stability::{CellFlag, MapAsk, RearAxleState, ReserveCell, ReserveMap, reserve_map};
use wording::Wording;

/// Charts against statics.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, schemars::JsonSchema)]
pub(crate) struct Reserves {
    /// The file.
    pub(crate) file: String,
    /// Margin that was asked for; `null`: none, nothing is judged but the impossible.
    pub(crate) margin: Option<f64>,
    /// True: the rear axle counted as locked.
    pub(crate) rear_locked: bool,
    /// One map a chart.
    pub(crate) charts: Vec<ChartReserve>,
}

/// The map of a chart.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, schemars::JsonSchema)]
pub(crate) struct ChartReserve {
    /// Attachment.
    pub(crate) attachment: String,
    /// What the machine stands on.
    pub(crate) support: SupportState,
    /// Rated load centre, m.
    pub(crate) load_centre_m: f64,
    /// Least reach of the map by the chart's datum, m.
    pub(crate) reach_m: f64,
    /// Least height, m.
    pub(crate) height_m: f64,
    /// Size of a cell along reach, m.
    pub(crate) cell_reach_m: f64,
    /// Size of a cell along height, m.
    pub(crate) cell_height_m: f64,
    /// Cells along reach.
    pub(crate) columns: usize,
    /// Cells along height.
    pub(crate) rows: usize,
    /// Cells row by row from below, each at its middle; `null`: nothing charted there or not reached.
    pub(crate) cells: Vec<Option<CellReserve>>,
}

/// A cell.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize, schemars::JsonSchema)]
pub(crate) struct CellReserve {
    /// Charted capacity, kg.
    pub(crate) charted_kg: f64,
    /// Level forward tipping load, kg; `null`: no load there tips it forward.
    pub(crate) tipping_kg: Option<f64>,
    /// Tipping load over charted capacity.
    pub(crate) ratio: Option<f64>,
    /// Least tilt left fore and aft with the charted load, worst direction, degrees.
    pub(crate) fore_aft_deg: f64,
    /// Least tilt left sideways, degrees.
    pub(crate) sideways_deg: f64,
    /// What is against it.
    pub(crate) flag: Flag,
}

/// What is against a cell.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, schemars::JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub(crate) enum Flag {
    /// Nothing.
    None,
    /// Keeps less than the margin.
    BelowMargin,
    /// The charted capacity tips the machine: chart or description is wrong.
    Tips,
}

pub(super) fn run(args: &ReserveArgs) -> Run {
    let machine = crate::check::read_machine(&args.file, args.said)?;
    let file = args.file.display().to_string();
    if args.margin.is_some_and(|m| !(1.0..=10.0).contains(&m)) {
        let message = text::RESERVE_BAD_MARGIN.message();
        return Err(Failure::one(args.said, "cli::bad-margin", "", message, None));
    }
    let wanted = args.support.map(|s| match s {
        SupportArg::Tyres => SupportState::Tyres,
        SupportArg::Stabilizers => SupportState::Stabilizers,
        SupportArg::Outriggers => SupportState::Outriggers,
    });
    let is_wanted = |c: &&Chart| {
        args.attachment.as_ref().is_none_or(|a| *a == c.attachment) && wanted.is_none_or(|s| s == c.support)
    };
    let rear = if args.rear_locked { RearAxleState::Locked } else { RearAxleState::Free };
    let ask = MapAsk { cells: [usize::from(args.cells); 2], rear, margin: args.margin };
    let maps: Vec<(&Chart, ReserveMap)> = machine
        .charts
        .iter()
        .filter(is_wanted)
        .filter_map(|c| Some((c, reserve_map(&machine, machine.attachment(&c.attachment)?, c, ask)?)))
        .collect();
    if maps.is_empty() {
        let known: Vec<_> = machine.charts.iter().map(|c| format!("{} ({})", c.attachment, c.support.word())).collect();
        let message =
            text::RESERVE_NO_CHART.with("known", if known.is_empty() { "–".to_owned() } else { known.join(", ") });
        return Err(Failure::one(args.said, "cli::no-chart", &file, message, None));
    }
    let flagged = maps.iter().any(|(_, m)| m.known().any(|(_, c)| c.flag != CellFlag::None));
    if args.said.json() {
        let charts = maps.iter().map(|(chart, map)| ChartReserve::new(chart, map)).collect();
        let (margin, rear_locked) = (args.margin, args.rear_locked);
        terminal::print_json(&Reserves { file, margin, rear_locked, charts });
    } else {
        print(&maps, &machine, args.margin, args.said.wording());
    }
    Ok(if flagged { Outcome::Outside } else { Outcome::Done })
}

impl ChartReserve {
    fn new(chart: &Chart, map: &ReserveMap) -> Self {
        let finite = |x: f64| x.is_finite().then_some(x);
        let cell = |c: &ReserveCell| CellReserve {
            charted_kg: c.charted,
            tipping_kg: finite(c.tipping),
            ratio: finite(c.ratio()),
            fore_aft_deg: c.fore_aft.to_degrees(),
            sideways_deg: c.sideways.to_degrees(),
            flag: match c.flag {
                CellFlag::None => Flag::None,
                CellFlag::BelowMargin => Flag::BelowMargin,
                CellFlag::Tips => Flag::Tips,
            },
        };
        Self {
            attachment: chart.attachment.clone(),
            support: chart.support,
            load_centre_m: chart.load_centre.si(),
            reach_m: map.low.x,
            height_m: map.low.y,
            cell_reach_m: map.size.x,
            cell_height_m: map.size.y,
            columns: map.cells[0],
            rows: map.cells[1],
            cells: map.values.iter().map(|c| c.as_ref().map(cell)).collect(),
        }
    }
}

fn print(maps: &[(&Chart, ReserveMap)], machine: &Machine, margin: Option<f64>, w: Wording) {
    let say = |m: &Message| terminal::paragraph(&w.render(m), "  ", "    ");
    for (chart, map) in maps {
        let title = text::RESERVE_TITLE
            .with("attachment", machine.attachment(&chart.attachment).map_or("", |a| a.name.as_str()))
            .with("support", planning::support_name(chart.support))
            .with("centre", chart.load_centre)
            .with("count", map.known().count())
            .with("cells", map.values.len());
        terminal::paragraph(&w.render(&title), "", "  ");
        let worst = |of: fn(&ReserveCell) -> f64| map.known().min_by(|a, b| of(a.1).total_cmp(&of(b.1)));
        let (Some(ratio), Some(along), Some(across)) =
            (worst(ReserveCell::ratio), worst(|c| c.fore_aft), worst(|c| c.sideways))
        else {
            say(&text::RESERVE_NOTHING.message());
            continue;
        };
        let count = |flag| map.known().filter(|(_, c)| c.flag == flag).count();
        let tips = count(CellFlag::Tips);
        if tips > 0 {
            say(&text::RESERVE_TIPS.with("count", tips));
        }
        if ratio.1.tipping.is_finite() {
            let message = text::RESERVE_RATIO
                .with("ratio", Quantity::number(ratio.1.ratio()))
                .with("charted", Quantity::new(ratio.1.charted, Dimension::Mass))
                .with("tipping", Quantity::new(ratio.1.tipping, Dimension::Mass));
            say(&at(message, ratio.0));
        }
        for (id, (place, cell), tilt) in
            [(text::RESERVE_FORE_AFT, along, along.1.fore_aft), (text::RESERVE_SIDEWAYS, across, across.1.sideways)]
        {
            let message = id
                .with("tilt", Quantity::new(tilt, Dimension::Angle))
                .with("charted", Quantity::new(cell.charted, Dimension::Mass));
            say(&at(message, place));
        }
        let below = count(CellFlag::BelowMargin);
        match margin.map(Quantity::number) {
            None => say(&text::RESERVE_NOT_JUDGED.message()),
            Some(margin) if below > 0 => say(&text::RESERVE_BELOW.with("count", below).with("margin", margin)),
            Some(margin) if tips == 0 => say(&text::RESERVE_KEEPS.with("margin", margin)),
            Some(_) => {}
        }
        terminal::line("");
    }
    let say = |m: &Message| terminal::paragraph(&w.render(m), "", "");
    if machine.slew.is_some() {
        say(&text::RESERVE_AHEAD_ONLY.message());
    }
    say(&text::RESERVE_NOTE.message());
}

fn at(message: Message, at: DVec2) -> Message {
    let length = |si: f64| Quantity::new(si, Dimension::Length);
    message.with("reach", length(at.x)).with("height", length(at.y))
}
