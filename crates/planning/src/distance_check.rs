//! The quick look-up: from a distance and a height, inside or outside the chart. It never says go.
//!
//! How level the ground is, nobody asked: of several charts for different ground all are read, and the
//! lowest counts.

use crate::checks::chart::Centre;
use geometry::DVec2;
use machine::{Attachment, AttachmentKind, Chart, ChartPoint, Machine, Reading, SupportState};
use quantity::Si;
use serde::{Deserialize, Serialize};

/// From where to where a distance was measured. Always asked, no default.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, schemars::JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum MeasuredFrom {
    /// From the front face of the front tyres.
    FrontTyreFace,
    /// From the middle of the front axle.
    FrontAxle,
}

/// The point a distance was measured to.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, schemars::JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum MeasuredTo {
    /// The fork face (heel).
    ForkHeel,
    /// The centre of the load.
    LoadCentre,
    /// The hook.
    Hook,
}

/// A question to the chart.
#[derive(Debug, Clone, Copy)]
pub struct DistanceQuestion<'a> {
    /// The machine.
    pub machine: &'a Machine,
    /// Attachment id.
    pub attachment: &'a str,
    /// Support state.
    pub support: SupportState,
    /// Load, kg.
    pub mass: f64,
    /// Distance of the load's centre from the fork face, m (0 for a hook).
    pub load_centre: f64,
    /// Distance as measured, m.
    pub distance: f64,
    /// From where.
    pub from: MeasuredFrom,
    /// To where.
    pub to: MeasuredTo,
    /// Height of the fork top or hook above the ground under the front tyres, m.
    pub height: f64,
}

/// The answer: inside or outside the chart, and how much further it would still be inside.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, schemars::JsonSchema)]
pub struct DistanceAnswer {
    /// True if the chart allows this load there. Never means "go".
    pub inside: bool,
    /// Capacity there, kg; `null` where the chart shows nothing.
    pub capacity_kg: Option<f64>,
    /// Zone that governs.
    pub zone: Option<String>,
    /// Reach by the chart's own datum, m.
    pub reach_m: f64,
    /// Height by the chart's own datum, m.
    pub height_m: f64,
    /// Further reach that would still be inside, m.
    pub further_m: f64,
    /// Further height, m.
    pub higher_m: f64,
    /// Further load, kg.
    pub heavier_kg: f64,
    /// Load centre beyond the rated one, m: added to the reach. 0 where the maker's derating table counts.
    pub excess_m: f64,
    /// Names of the checks that were not made (text ids).
    pub not_checked: Vec<String>,
}

/// Why there is no answer.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum NoAnswer {
    /// The attachment is unknown to the machine.
    Attachment,
    /// The attachment is a platform for people: every lift with it is an absolute stop.
    People,
    /// No chart for this attachment and support state.
    Chart,
    /// The chart measures to another kind of point than the one given (hook against forks).
    Point,
}

/// Reads the charts for a distance. Boom flex counts outward; position is taken as measured.
pub fn distance_check(q: &DistanceQuestion<'_>) -> Result<DistanceAnswer, NoAnswer> {
    let attachment = q.machine.attachment(q.attachment).ok_or(NoAnswer::Attachment)?;
    if matches!(attachment.kind, AttachmentKind::Platform(_)) {
        return Err(NoAnswer::People);
    }
    let charts = q.machine.charts_for(q.attachment, q.support, q.load_centre);
    let last = *charts.last().ok_or(NoAnswer::Chart)?;
    let tool = tool_point(q, attachment).ok_or(NoAnswer::Point)?;
    let plate = q.machine.greatest_capacity.si().min(attachment.capacity.si());
    let flex = q.machine.boom.flex;
    let counts = |chart: &Chart| Centre::of(chart, attachment, q.load_centre, attachment.hangs());
    let capacity_in = |chart: &Chart, tool: DVec2| -> Option<(f64, usize)> {
        let centre = counts(chart);
        let at = chart.point_of(q.machine, attachment, tool);
        let point = ChartPoint { at, low: at, high: at + DVec2::new(flex + centre.excess(), 0.0) };
        match chart.read(&point) {
            Reading::Within { capacity_kg, zone } => Some((centre.counted(chart, capacity_kg)?.min(plate), zone)),
            Reading::Outside => None,
        }
    };
    // The lowest of all charts, and the chart that has it; `None` where any shows nothing.
    let capacity_at = |tool: DVec2| -> Option<(f64, usize, &Chart)> {
        let mut lowest: Option<(f64, usize, &Chart)> = None;
        for &chart in &charts {
            let (capacity, zone) = capacity_in(chart, tool)?;
            if lowest.is_none_or(|(least, ..)| capacity < least) {
                lowest = Some((capacity, zone, chart));
            }
        }
        lowest
    };
    let here = capacity_at(tool);
    let fits = |tool: DVec2| capacity_at(tool).is_some_and(|(c, ..)| q.mass <= c);
    let inside = fits(tool);
    let further = |step: &dyn Fn(f64) -> bool| if inside { last_that_fits(step) } else { 0.0 };
    let governs = here.map_or(last, |(.., chart)| chart);
    let at = governs.point_of(q.machine, attachment, tool);
    Ok(DistanceAnswer {
        inside,
        capacity_kg: here.map(|(c, ..)| c),
        zone: here.map(|(_, zone, chart)| chart.zones[zone].name.clone()),
        reach_m: at.x,
        height_m: at.y,
        further_m: further(&|d| fits(tool + DVec2::new(d, 0.0))),
        higher_m: further(&|d| fits(tool + DVec2::new(0.0, d))),
        heavier_kg: here.map_or(0.0, |(c, ..)| (c - q.mass).max(0.0)),
        excess_m: counts(governs).excess(),
        not_checked: crate::checks_not_in_the_chart(q.machine).iter().map(|t| t.id.to_owned()).collect(),
    })
}

/// Fork heel or hook, (x, z) in the machine frame, m; `None` where the distance was measured to what
/// the attachment does not have.
fn tool_point(q: &DistanceQuestion<'_>, attachment: &Attachment) -> Option<DVec2> {
    let from = match q.from {
        MeasuredFrom::FrontAxle => q.machine.front.x,
        MeasuredFrom::FrontTyreFace => q.machine.front_face(),
    };
    let beyond = match (q.to, attachment.hangs()) {
        (MeasuredTo::ForkHeel, false) | (MeasuredTo::Hook, true) => 0.0,
        (MeasuredTo::LoadCentre, false) => q.load_centre,
        _ => return None,
    };
    Some(DVec2::new(from + q.distance - beyond, q.height))
}

/// The largest step up to the first that does not fit, to 1 mm, searched outward in steps of 5 cm
/// so that no gap wider than that is jumped.
fn last_that_fits(fits: &dyn Fn(f64) -> bool) -> f64 {
    const STEP: f64 = 0.05;
    let mut good = 0.0;
    let mut bad = STEP;
    while fits(bad) && bad < 100.0 {
        good = bad;
        bad += STEP;
    }
    while bad - good > 0.000_5 {
        let middle = f64::midpoint(good, bad);
        if fits(middle) { good = middle } else { bad = middle }
    }
    good
}
