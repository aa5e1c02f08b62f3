//! What a site has beside a way, as far as a picture of it needs it.

use crate::{Job, planning_lines};
use geometry::DVec2;
use serde::{Deserialize, Serialize};
use site::{Body, PlanArea, ThingKind, ZoneRule};

/// So far beside the way things are shown, m.
const BESIDE: f64 = 8.0;

/// What something beside a way is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, schemars::JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum WayThingKind {
    /// A thing that stands.
    Thing,
    /// An excavation, by its top edge.
    Excavation,
    /// A zone that is closed to machines.
    Closed,
    /// A zone where people are: closed too.
    People,
    /// A zone with another rule.
    Zone,
    /// An overhead line, by its course in plan.
    Line,
}

/// Something beside a way.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, schemars::JsonSchema)]
pub struct WayThing {
    /// Name, for people.
    pub name: String,
    /// What it is.
    pub kind: WayThingKind,
    /// Of a thing: its kind, as in the job file.
    #[schemars(with = "Option<String>")]
    pub thing: Option<ThingKind>,
    /// Outlines in plan, or the ends of each piece of a line; east and north, m.
    pub outlines: Vec<Vec<[f64; 2]>>,
    /// Of an excavation: distance from its edge that no wheel comes nearer than, m; `null`: its depth is not known.
    pub set_back_m: Option<f64>,
}

/// What lies within some metres of a box around places.
pub(crate) fn around(job: &Job, near: &[DVec2]) -> Vec<WayThing> {
    let low = near.iter().copied().fold(DVec2::INFINITY, DVec2::min) - DVec2::splat(BESIDE);
    let high = near.iter().copied().fold(DVec2::NEG_INFINITY, DVec2::max) + DVec2::splat(BESIDE);
    let mut out = Vec::new();
    let mut put = |name: &str, kind, thing, outlines: Vec<Vec<DVec2>>, set_back_m: Option<f64>| {
        let seen = |ring: &Vec<DVec2>| {
            let a = ring.iter().copied().fold(DVec2::INFINITY, DVec2::min);
            let b = ring.iter().copied().fold(DVec2::NEG_INFINITY, DVec2::max);
            ring.iter().all(|p| p.is_finite()) && a.cmple(high).all() && b.cmpge(low).all()
        };
        let outlines: Vec<Vec<[f64; 2]>> =
            outlines.iter().filter(|r| seen(r)).map(|r| r.iter().map(DVec2::to_array).collect()).collect();
        if !outlines.is_empty() {
            out.push(WayThing { name: name.to_owned(), kind, thing, outlines, set_back_m });
        }
    };
    let outer = |areas: Vec<PlanArea>| areas.into_iter().map(|a| a.outer).collect::<Vec<_>>();
    let s = &job.surroundings;
    for zone in &s.zones {
        let kind = match zone.rule {
            ZoneRule::NoGo => WayThingKind::Closed,
            ZoneRule::People => WayThingKind::People,
            _ => WayThingKind::Zone,
        };
        put(&zone.name, kind, None, outer(zone.shape.outlines()), None);
    }
    let lines = planning_lines(&s.excavations, &job.soils);
    for (i, dig) in s.excavations.iter().enumerate() {
        let asked = lines.iter().filter(|l| l.excavation == i).map(|l| l.distance).reduce(f64::max);
        put(
            &dig.name,
            WayThingKind::Excavation,
            None,
            vec![dig.outline.outer.clone()],
            asked.filter(|d| d.is_finite()),
        );
    }
    for thing in &s.things {
        let outlines = match (&thing.body, thing.bounds()) {
            (Body::Upright { shape, .. }, _) => outer(shape.outlines()),
            // What a survey shows as columns, by the box that holds them.
            (Body::Columns(_), Some((a, b))) => vec![vec![a, DVec2::new(b.x, a.y), b, DVec2::new(a.x, b.y)]],
            (Body::Columns(_), None) => Vec::new(),
        };
        put(&thing.name, WayThingKind::Thing, Some(thing.kind), outlines, None);
    }
    for line in &job.lines {
        let spans = line.spans.iter().map(|s| vec![s.from.truncate(), s.to.truncate()]);
        let course = line.course.windows(2).map(<[DVec2]>::to_vec);
        put(&line.name, WayThingKind::Line, None, spans.chain(course).collect(), None);
    }
    out
}
