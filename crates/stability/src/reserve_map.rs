//! A chart against the machine's own statics, cell by cell: what it allows, what tips the machine there, and how
//! much tilt is left with the charted load.
//!
//! For each (reach, height) of the chart's own datum: boom position, forks level, machine level; charted
//! capacity; load that brings the machine to the point of tipping forward ([`crate::level_tipping_load`]);
//! least tilt in the worst direction with the charted load at its load centre, over front and rear lines and over the
//! side lines ([`crate::tilt_reserve`]). A capacity above the tipping load contradicts the machine's
//! description: one of both is wrong. Whether a margin is kept is judged only where somebody states one.

use crate::wind::WindLoad;
use crate::{LEVEL, LoadOnBoom, Loading, Masses, RearAxleState, Support, TippingLine, TipsOver};
use crate::{level_tipping_load, tilt_reserve, tipping_lines};
use evidence::Silent;
use geometry::{DVec2, DVec3};
use machine::{Attachment, Chart, ChartPoint, Machine, Reading, kinematics};
use quantity::Si;

/// Cells in one direction at most.
pub const MOST_CELLS: usize = 1000;

/// What a map is asked for.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct MapAsk {
    /// Cells along reach and along height; each from 1 to [`MOST_CELLS`].
    pub cells: [usize; 2],
    /// Rear axle.
    pub rear: RearAxleState,
    /// How many times the charted capacity somebody says may not tip it; `None`: not judged.
    pub margin: Option<f64>,
}

/// What a cell is flagged with.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum CellFlag {
    /// Nothing against it.
    None,
    /// Less than the stated margin.
    BelowMargin,
    /// The charted capacity is more than tips the machine, forward or to a side or backward: impossible.
    Tips,
}

/// A cell that the chart covers and the boom reaches, at its middle.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ReserveCell {
    /// Charted capacity, kg.
    pub charted: f64,
    /// Level forward tipping load, kg; infinite where no load there tips it forward.
    pub tipping: f64,
    /// Least tilt left fore and aft with the charted load, rad; below zero: tips.
    pub fore_aft: f64,
    /// Least tilt left sideways, rad.
    pub sideways: f64,
    /// What it is flagged with.
    pub flag: CellFlag,
}

impl ReserveCell {
    /// Tipping load over charted capacity.
    pub fn ratio(&self) -> f64 {
        self.tipping / self.charted
    }
}

/// A map.
#[derive(Debug, Clone, PartialEq)]
pub struct ReserveMap {
    /// Lowest corner, (reach, height), m.
    pub low: DVec2,
    /// Size of a cell, m.
    pub size: DVec2,
    /// Cells along reach and height.
    pub cells: [usize; 2],
    /// Row by row from below; `None`: nothing charted there, or the boom does not get there.
    pub values: Vec<Option<ReserveCell>>,
}

impl ReserveMap {
    /// Middle of a cell by its place in `values`, (reach, height), m.
    pub fn middle(&self, index: usize) -> DVec2 {
        let columns = self.cells[0].max(1);
        self.low + self.size * DVec2::new((index % columns) as f64 + 0.5, (index / columns) as f64 + 0.5)
    }

    /// Cells with their middles.
    pub fn known(&self) -> impl Iterator<Item = (DVec2, &ReserveCell)> {
        self.values.iter().enumerate().filter_map(|(i, c)| c.as_ref().map(|c| (self.middle(i), c)))
    }
}

/// The map of a chart over the box around its zones; `None` without zones, or with a number that is none.
pub fn reserve_map(machine: &Machine, attachment: &Attachment, chart: &Chart, ask: MapAsk) -> Option<ReserveMap> {
    let corners = || chart.zones.iter().flat_map(|z| z.outline.iter().copied());
    let low = corners().fold(DVec2::INFINITY, DVec2::min);
    let high = corners().fold(DVec2::NEG_INFINITY, DVec2::max);
    let cells = ask.cells.map(|n| n.clamp(1, MOST_CELLS));
    let size = (high - low) / DVec2::new(cells[0] as f64, cells[1] as f64);
    if !(low.is_finite() && high.is_finite()) {
        return None;
    }
    let mut map = ReserveMap { low, size, cells, values: Vec::new() };
    let place = Place::new(machine, attachment, chart, ask);
    map.values = (0..cells[0] * cells[1]).map(|i| place.cell(map.middle(i))).collect();
    Some(map)
}

/// What is the same for all cells.
struct Place<'m> {
    machine: &'m Machine,
    attachment: &'m Attachment,
    chart: &'m Chart,
    ask: MapAsk,
    lines: [TippingLine; 4],
    /// From the chart's point to the tool point.
    to_tool: DVec2,
    /// From the tool point to the load's centre.
    to_load: DVec3,
    /// Bodies that the boom does not move.
    bodies: Masses,
}

impl<'m> Place<'m> {
    fn new(machine: &'m Machine, attachment: &'m Attachment, chart: &'m Chart, ask: MapAsk) -> Self {
        let lines = tipping_lines(machine, Support { state: chart.support, rear: ask.rear });
        let centre = chart.load_centre.si();
        let up = chart.load_centre_height.map_or(centre, |h| h.si());
        Self {
            machine,
            attachment,
            chart,
            ask,
            lines,
            to_tool: chart.tool_at(machine, attachment, DVec2::ZERO),
            to_load: DVec3::new(centre, 0.0, up),
            bodies: Masses::without_boom(machine),
        }
    }

    fn cell(&self, at: DVec2) -> Option<ReserveCell> {
        let Reading::Within { capacity_kg: charted, .. } = self.chart.read(&ChartPoint::exact(at)) else {
            return None;
        };
        let tool = at + self.to_tool;
        let boom = kinematics::position_for(&self.machine.boom, self.attachment, tool, 0.0).ok()?;
        let bare = self.bodies.with_boom(self.machine, self.attachment, boom);
        let centre = DVec3::new(tool.x, 0.0, tool.y) + self.to_load;
        let tipping = level_tipping_load(&bare, &self.lines[0], centre).map_or(f64::INFINITY, |kg| kg.max(0.0));
        let masses = bare.with(LoadOnBoom { mass: charted, at: centre });
        let loading = Loading { masses, gravity: LEVEL, wind: WindLoad::NONE };
        let (mut fore_aft, mut sideways) = (f64::INFINITY, f64::INFINITY);
        for line in &self.lines {
            let tilt = tilt_reserve(&loading, line, &mut Silent);
            let least = match line.over {
                TipsOver::Front | TipsOver::Rear => &mut fore_aft,
                TipsOver::Left | TipsOver::Right => &mut sideways,
            };
            // A tilt that is not a number is never the least but one.
            *least = if tilt.is_nan() || tilt < *least { tilt } else { *least };
        }
        let stands = fore_aft >= 0.0 && sideways >= 0.0 && charted <= tipping;
        let keeps = self.ask.margin.is_none_or(|k| charted * k <= tipping);
        let flag = if !stands {
            CellFlag::Tips
        } else if keeps {
            CellFlag::None
        } else {
            CellFlag::BelowMargin
        };
        Some(ReserveCell { charted, tipping, fore_aft, sideways, flag })
    }
}
