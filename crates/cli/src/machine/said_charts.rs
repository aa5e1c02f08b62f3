//! Load charts in words: what each belongs to, how it measures, what it allows at most and at least.

use super::{text, values};
use evidence::Certainty;
use geometry::DVec2;
use jobfile::{MachineReview, Seen, SeenValue};
use machine::{Chart, HeightTo, Machine, SupportState};
use quantity::Si;
use serde::{Deserialize, Serialize};
use wording::Wording;

/// A load chart. SI.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, schemars::JsonSchema)]
pub(crate) struct ChartSaid {
    /// The attachment: its name, or its id while the file has faults.
    pub(crate) attachment: String,
    /// What the machine stands on, in words.
    pub(crate) support: String,
    /// Rated load centre from the fork face, m; `null` for a hook or where it could not be read.
    pub(crate) load_centre_m: Option<f64>,
    /// From what and to what reach is measured, in words.
    pub(crate) reach: Option<String>,
    /// From what and to what height is measured, in words.
    pub(crate) height: Option<String>,
    /// How far out of level it holds, sideways and fore and aft, rad.
    pub(crate) level_rad: Option<(f64, f64)>,
    /// Number of zones that could be read.
    pub(crate) zones: usize,
    /// The zone with the greatest capacity.
    pub(crate) greatest: Option<ZoneSaid>,
    /// The zone with the least capacity.
    pub(crate) least: Option<ZoneSaid>,
    /// Number of areas declared as not permitted.
    pub(crate) not_permitted: usize,
    /// Where the chart comes from.
    pub(crate) source: Option<Certainty>,
}

/// A zone of a chart, with the box about it.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, schemars::JsonSchema)]
pub(crate) struct ZoneSaid {
    /// Its name.
    pub(crate) name: String,
    /// Its capacity, kg.
    pub(crate) capacity_kg: f64,
    /// Least and greatest reach in it, m.
    pub(crate) reach_m: (f64, f64),
    /// Least and greatest height in it, m.
    pub(crate) height_m: (f64, f64),
}

pub(super) fn charts(review: &MachineReview, w: Wording) -> Vec<ChartSaid> {
    match &review.machine {
        Some(machine) => machine.charts.iter().map(|chart| whole(machine, chart, w)).collect(),
        None => partly(&review.seen, w),
    }
}

pub(super) fn support(state: SupportState, w: Wording) -> String {
    w.text(planning::support_name(state))
}

fn whole(machine: &Machine, chart: &Chart, w: Wording) -> ChartSaid {
    let attachment = machine.attachment(&chart.attachment);
    let zones = chart.zones.iter().map(|z| zone(z.name.clone(), z.capacity.si(), &z.outline));
    let (greatest, least) = extremes(zones);
    ChartSaid {
        attachment: attachment.map_or_else(|| chart.attachment.clone(), |a| a.name.clone()),
        support: support(chart.support, w),
        load_centre_m: attachment.is_none_or(|a| !a.hangs()).then(|| chart.load_centre.si()),
        reach: Some(w.render(&planning::reach_text(chart))),
        height: Some(w.text(match chart.datum.height_to {
            HeightTo::ForkTop => text::EXPLAIN_HEIGHT_FORKS,
            HeightTo::Hook => text::EXPLAIN_HEIGHT_HOOK,
            HeightTo::LoadCentre => text::EXPLAIN_HEIGHT_CENTRE,
            HeightTo::HeadPin => text::EXPLAIN_HEIGHT_PIN,
        })),
        level_rad: Some((chart.level.sideways.si(), chart.level.fore_aft.si())),
        zones: chart.zones.len(),
        greatest,
        least,
        not_permitted: chart.not_permitted.len(),
        source: Some(chart.certainty),
    }
}

fn zone(name: String, capacity_kg: f64, outline: &[DVec2]) -> ZoneSaid {
    let low = outline.iter().copied().fold(DVec2::INFINITY, DVec2::min);
    let high = outline.iter().copied().fold(DVec2::NEG_INFINITY, DVec2::max);
    ZoneSaid { name, capacity_kg, reach_m: (low.x, high.x), height_m: (low.y, high.y) }
}

/// The zones with the greatest and the least capacity; none for the least where all are alike.
fn extremes(zones: impl Iterator<Item = ZoneSaid>) -> (Option<ZoneSaid>, Option<ZoneSaid>) {
    let (mut greatest, mut least): (Option<ZoneSaid>, Option<ZoneSaid>) = (None, None);
    for zone in zones {
        if greatest.as_ref().is_none_or(|g| zone.capacity_kg > g.capacity_kg) {
            greatest = Some(zone.clone());
        }
        if least.as_ref().is_none_or(|l| zone.capacity_kg < l.capacity_kg) {
            least = Some(zone);
        }
    }
    if greatest == least { (greatest, None) } else { (greatest, least) }
}

/// Charts of a file with faults, as far as their values could be read.
fn partly(seen: &[Seen], w: Wording) -> Vec<ChartSaid> {
    let count = seen.iter().filter_map(|s| number(&s.path, "chart[")).max().unwrap_or(0);
    (1..=count)
        .map(|i| {
            let of = |key: &str| seen.iter().find(|s| s.path == format!("chart[{i}].{key}"));
            let word = |key: &str| match of(key).map(|s| &s.value) {
                Some(SeenValue::Text(word) | SeenValue::Word(word)) => Some(word.clone()),
                _ => None,
            };
            let si = |key: &str| of(key).and_then(first);
            let inside = format!("chart[{i}].zone[");
            let last = seen.iter().filter_map(|s| number(&s.path, &inside)).max().unwrap_or(0);
            let zones = (1..=last).filter_map(|z| partly_zone(seen, &format!("{inside}{z}]")));
            let (greatest, least) = extremes(zones);
            let level = si("level_sideways").zip(si("level_fore_aft"));
            ChartSaid {
                attachment: word("attachment").unwrap_or_else(|| format!("chart[{i}]")),
                support: of("support").map(|s| values::say(s, w)).unwrap_or_default(),
                load_centre_m: si("load_centre").filter(|_| word("reach_to").as_deref() != Some("hook")),
                reach: reach(word("reach_from"), word("reach_to"), w),
                height: of("height_to").map(|s| values::say(s, w)),
                level_rad: level,
                zones: last,
                greatest,
                least,
                not_permitted: 0,
                source: of("load_centre").and_then(|s| s.certainty),
            }
        })
        .collect()
}

fn reach(from: Option<String>, to: Option<String>, w: Wording) -> Option<String> {
    let (from, to) = (from?, to?);
    let known = match (from.as_str(), to.as_str()) {
        ("front-tyre-face", "load-centre") => planning::text::DATUM_TYRE_LOAD_CENTRE,
        ("front-tyre-face", "fork-heel") => planning::text::DATUM_TYRE_HEEL,
        ("front-tyre-face", "hook") => planning::text::DATUM_TYRE_HOOK,
        ("front-axle", "load-centre") => planning::text::DATUM_AXLE_LOAD_CENTRE,
        ("front-axle", "fork-heel") => planning::text::DATUM_AXLE_HEEL,
        ("front-axle", "hook") => planning::text::DATUM_AXLE_HOOK,
        _ => return Some(format!("{from}, {to}")),
    };
    Some(w.text(known))
}

fn partly_zone(seen: &[Seen], path: &str) -> Option<ZoneSaid> {
    let of = |key: &str| seen.iter().find(|s| s.path == format!("{path}.{key}"));
    let name = match of("name").map(|s| &s.value) {
        Some(SeenValue::Text(name)) => name.clone(),
        _ => String::new(),
    };
    match of("outline").map(|s| &s.value) {
        Some(SeenValue::Points(outline)) => Some(zone(name, first(of("capacity")?)?, outline)),
        _ => None,
    }
}

fn first(seen: &Seen) -> Option<f64> {
    match &seen.value {
        SeenValue::Quantities(values) => values.first().map(|q| q.si),
        _ => None,
    }
}

/// The number of a list entry: 12 of `chart[12].unit` behind `chart[`.
fn number(path: &str, start: &str) -> Option<usize> {
    path.strip_prefix(start)?.split(']').next()?.parse().ok()
}
