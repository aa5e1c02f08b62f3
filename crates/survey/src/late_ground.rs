//! Heights of things from what is around them: the ground at their outlines, and what clouds show there;
//! also for things that came before the ground did.

use crate::stored::StoredSite;
use geometry::DVec2;
use serde::{Deserialize, Serialize};
use site::{Body, Ground, PlanShape, Thing};

/// A top this far below the ground at its outline is none, m (ours: more than a step or a light well).
const BELOW_GROUND: f64 = 2.0;

/// Longest piece between two looks at the ground along an outline, m.
const LOOK: f64 = 2.0;

/// A thing with no known ground at its outline when it was brought in.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Waiting {
    /// Id of the thing.
    pub thing: String,
    /// Where it comes from.
    pub source: String,
    /// Its height above the ground, m; `None`: its level is known and is held against the ground.
    pub over_ground: Option<f64>,
}

/// What new ground and new clouds settled of things that were on the site before.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize)]
pub struct SettledTops {
    /// Things whose top was reckoned from the ground.
    pub from_ground: u64,
    /// Things whose top lies in the ground, and is not known any more.
    pub below_ground: u64,
    /// Things whose top was taken from what a cloud shows above the ground there.
    pub from_cloud: u64,
}

/// Settles the things that wait for ground where it is known now. With `clouds`, things of unknown height
/// are also looked up in what clouds show above the ground.
pub(crate) fn settle(stored: &mut StoredSite, clouds: bool) -> SettledTops {
    let mut out = SettledTops::default();
    let (ground, things) = (&stored.site.ground, &mut stored.site.surroundings.things);
    stored.waiting.retain(|waiting| {
        let thing = things.iter_mut().find(|t| t.id == waiting.thing && t.source == waiting.source);
        let Some(Body::Upright { shape, top, .. }) = thing.map(|t| &mut t.body) else { return false };
        let Some(under) = highest_ground(ground, shape) else { return true };
        if let Some(height) = waiting.over_ground {
            // What a cloud showed meanwhile may be higher.
            let reckoned = under + height;
            *top = Some(top.map_or(reckoned, |known| known.max(reckoned)));
            out.from_ground += 1;
        } else if below(*top, Some(under)) {
            *top = None;
            out.below_ground += 1;
        }
        false
    });
    if !clouds {
        return out;
    }
    let unknown = |thing: &Thing| matches!(&thing.body, Body::Upright { base: None, top: None, .. });
    let found: Vec<(usize, f64)> = (0..things.len())
        .filter(|i| unknown(&things[*i]))
        .filter_map(|i| match &things[i].body {
            Body::Upright { shape, .. } => Some((i, top_in_clouds(things, shape)?)),
            Body::Columns(_) => None,
        })
        .collect();
    for (i, level) in found {
        if let Body::Upright { top, .. } = &mut things[i].body {
            *top = Some(level);
            out.from_cloud += 1;
        }
    }
    out
}

/// True for a top in the ground: it is in another datum or unit, and no height at all.
pub(crate) fn below(top: Option<f64>, ground: Option<f64>) -> bool {
    top.zip(ground).is_some_and(|(top, ground)| top <= ground - BELOW_GROUND)
}

/// Highest known ground along the outlines of a shape, m, a little outside (under a roof nobody surveyed).
pub(crate) fn highest_ground(ground: &Ground, shape: &PlanShape) -> Option<f64> {
    let mut best: Option<f64> = None;
    for outline in shape.outlines() {
        let middle = outline.outer.iter().copied().fold(DVec2::ZERO, |a, b| a + b) / outline.outer.len().max(1) as f64;
        for (a, b) in outline.edges() {
            let pieces = (a.distance(b) / LOOK).ceil().clamp(1.0, 1000.0) as usize;
            for i in 0..pieces {
                let on = a.lerp(b, i as f64 / pieces as f64);
                let out = (on - middle).normalize_or_zero();
                for step in [0.0, 0.5, 1.0, 2.0] {
                    if let Some((z, source)) = ground.height(on + out * step) {
                        let z = z + source.accuracy;
                        best = Some(best.map_or(z, |b| b.max(z)));
                        break;
                    }
                }
            }
        }
    }
    best
}

/// Share of a shape that a cloud must show as standing, for its top to be taken from there. Ours: less
/// may be the edge of a neighbour.
const COVERED: f64 = 0.6;

/// The highest column of a cloud inside a shape, m, with the columns' accuracy added; `None` where the
/// cloud shows too little of it.
pub(crate) fn top_in_clouds(things: &[Thing], shape: &PlanShape) -> Option<f64> {
    let (low, high) = shape.bounds()?;
    let mut cells: Vec<(DVec2, f64, f64)> = Vec::new();
    let mut step = f64::INFINITY;
    for thing in things {
        let Body::Columns(columns) = &thing.body else { continue };
        let Some((l, h)) = thing.bounds() else { continue };
        if l.cmpgt(high).any() || h.cmplt(low).any() {
            continue;
        }
        step = step.min(columns.cell);
        let middle = DVec2::splat(columns.cell / 2.0);
        let inside = columns.iter().filter(|(corner, _)| shape.contains(*corner + middle));
        cells.extend(inside.map(|(corner, top)| (corner, top + thing.accuracy, columns.cell * columns.cell)));
    }
    let top = cells.iter().map(|c| c.1).reduce(f64::max)?;
    // Places of the same raster that lie in the shape: what a full cover would be.
    let size = ((high - low) / step).ceil();
    if size.x * size.y > 4e6 {
        return None;
    }
    let mut all = 0.0;
    for row in 0..size.y as usize {
        for col in 0..size.x as usize {
            let at = low + (DVec2::new(col as f64, row as f64) + 0.5) * step;
            all += f64::from(u8::from(shape.contains(at))) * step * step;
        }
    }
    // Cells of two things may lie over each other: each place counts once.
    cells.sort_by(|a, b| a.0.x.total_cmp(&b.0.x).then(a.0.y.total_cmp(&b.0.y)));
    cells.dedup_by(|a, b| a.0 == b.0);
    let covered: f64 = cells.iter().map(|c| c.2).sum();
    (all > 0.0 && covered >= COVERED * all).then_some(top)
}
