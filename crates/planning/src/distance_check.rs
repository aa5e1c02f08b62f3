//! The quick look-up: from a distance and a height, inside or outside the chart. It never says go.

use geometry::DVec2;
use machine::{Chart, ChartPoint, Machine, ReachFrom, ReachTo, Reading, SupportState};
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
    /// Further reach that would still be inside, m.
    pub further_m: f64,
    /// Further height, m.
    pub higher_m: f64,
    /// Further load, kg.
    pub heavier_kg: f64,
    /// Load centre beyond the rated one, m: added to the reach.
    pub excess_m: f64,
    /// Names of the checks that were not made (text ids).
    pub not_checked: Vec<String>,
}

/// Why there is no answer.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum NoAnswer {
    /// The attachment is unknown to the machine.
    Attachment,
    /// No chart for this attachment and support state.
    Chart,
    /// The chart measures to another kind of point than the one given (hook against forks).
    Point,
}

/// Reads the chart for a distance. Boom flex counts outward; position is taken as measured.
pub fn distance_check(q: &DistanceQuestion<'_>) -> Result<DistanceAnswer, NoAnswer> {
    let attachment = q.machine.attachment(q.attachment).ok_or(NoAnswer::Attachment)?;
    let chart = q.machine.chart_for(q.attachment, q.support, q.load_centre).ok_or(NoAnswer::Chart)?;
    let reach = reach(q, chart).ok_or(NoAnswer::Point)?;
    let excess = (q.load_centre - chart.load_centre.si()).max(0.0);
    let cap = attachment.capacity_at_kg(q.load_centre).min(q.machine.greatest_capacity.si());
    let flex = q.machine.boom.flex;
    let capacity_at = |reach: f64, height: f64| -> Option<(f64, usize)> {
        let at = DVec2::new(reach, height);
        let point = ChartPoint { at, low: at, high: at + DVec2::new(flex + excess, 0.0) };
        match chart.read(&point) {
            Reading::Within { capacity_kg, zone } => Some((capacity_kg.min(cap), zone)),
            Reading::Outside => None,
        }
    };
    let here = capacity_at(reach, q.height);
    let inside = here.is_some_and(|(c, _)| q.mass <= c);
    let fits = |reach: f64, height: f64| capacity_at(reach, height).is_some_and(|(c, _)| q.mass <= c);
    let further = |step: &dyn Fn(f64) -> bool| if inside { last_that_fits(step) } else { 0.0 };
    Ok(DistanceAnswer {
        inside,
        capacity_kg: here.map(|(c, _)| c),
        zone: here.map(|(_, z)| chart.zones[z].name.clone()),
        reach_m: reach,
        further_m: further(&|d| fits(reach + d, q.height)),
        higher_m: further(&|d| fits(reach, q.height + d)),
        heavier_kg: here.map_or(0.0, |(c, _)| (c - q.mass).max(0.0)),
        excess_m: excess,
        not_checked: crate::checks_not_in_the_chart().iter().map(|t| t.id.to_owned()).collect(),
    })
}

fn reach(q: &DistanceQuestion<'_>, chart: &Chart) -> Option<f64> {
    let face = q.machine.front_face() - q.machine.front.x;
    let from_axle = match q.from {
        MeasuredFrom::FrontAxle => q.distance,
        MeasuredFrom::FrontTyreFace => q.distance + face,
    };
    let from_datum = match chart.datum.reach_from {
        ReachFrom::FrontAxle => from_axle,
        ReachFrom::FrontTyreFace => from_axle - face,
    };
    // Distances along the forks: heel, then the load's own centre, or the chart's rated centre.
    let heel = match q.to {
        MeasuredTo::ForkHeel => from_datum,
        MeasuredTo::LoadCentre => from_datum - q.load_centre,
        MeasuredTo::Hook => return (chart.datum.reach_to == ReachTo::Hook).then_some(from_datum),
    };
    match chart.datum.reach_to {
        ReachTo::ForkHeel => Some(heel),
        ReachTo::LoadCentre => Some(heel + chart.load_centre.si()),
        ReachTo::Hook => None,
    }
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
