//! What `survey --format json` prints.

use super::options::word;
use super::under::{self, Under, UnderJson};
use serde::Serialize;
use std::collections::BTreeMap;
use survey::{Brought, SettledTops, SourceRecord, known_area};

/// What is on the site, and what is not known of it. SI units.
#[derive(Serialize)]
pub(super) struct Summary<'a> {
    name: &'a str,
    epsg: Option<u32>,
    records: &'a [SourceRecord],
    surfaces: Vec<Surface<'a>>,
    things: usize,
    things_of_unknown_height: usize,
    /// Things with no known ground at their outline.
    things_waiting_for_ground: usize,
    /// What became of things that were on the site before.
    settled: SettledTops,
    lines: usize,
    lines_of_unknown_height: usize,
    lines_of_unknown_voltage: usize,
    excavations: usize,
    buried: usize,
    zones: usize,
    plans: Vec<Plan<'a>>,
    /// Ground under each footprint that was asked for.
    under: Vec<UnderJson<'a>>,
}

#[derive(Serialize)]
struct Surface<'a> {
    name: &'a str,
    date: Option<&'a str>,
    accuracy: f64,
    /// Ground of which the height is known, m².
    known_area: f64,
}

#[derive(Serialize)]
struct Plan<'a> {
    file: &'a str,
    placed: u64,
    height_unknown: u64,
    height_from_cloud: u64,
    without_ground: u64,
    guessed: BTreeMap<&'a str, &'static str>,
    unnamed: &'a BTreeMap<String, u64>,
    left_out: &'a BTreeMap<&'static str, u64>,
    idle_rules: &'a [String],
}

pub(super) fn summary<'a>(brought: &'a Brought, under: &'a [Under]) -> Summary<'a> {
    let site = &brought.stored.site;
    let around = &site.surroundings;
    Summary {
        name: &site.name,
        epsg: site.epsg,
        records: &brought.stored.records,
        surfaces: site
            .ground
            .surfaces
            .iter()
            .map(|s| Surface {
                name: &s.name,
                date: s.date.as_deref(),
                accuracy: s.accuracy,
                known_area: known_area(&s.terrain),
            })
            .collect(),
        things: around.things.len(),
        things_of_unknown_height: around.things.iter().filter(|t| t.top().is_none()).count(),
        things_waiting_for_ground: brought.stored.waiting.len(),
        settled: brought.settled,
        lines: site.lines.len(),
        lines_of_unknown_height: site.lines.iter().filter(|l| l.spans.is_empty()).count(),
        lines_of_unknown_voltage: site.lines.iter().filter(|l| l.voltage.is_none()).count(),
        excavations: around.excavations.len(),
        buried: around.buried.len(),
        zones: around.zones.len(),
        plans: brought
            .plans
            .iter()
            .map(|(file, placed)| Plan {
                file,
                placed: placed.placed,
                height_unknown: placed.height_unknown,
                height_from_cloud: placed.height_from_cloud,
                without_ground: placed.without_ground,
                guessed: placed.guessed.iter().map(|(layer, b)| (layer.as_str(), word(*b))).collect(),
                unnamed: &placed.unnamed,
                left_out: &placed.left_out,
                idle_rules: &placed.idle_rules,
            })
            .collect(),
        under: under.iter().map(under::json).collect(),
    }
}
