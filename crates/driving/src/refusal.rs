//! What to say where there is no way.

use crate::lattice::Step;
use crate::search::{Search, guide_at};
use crate::target_field::{open, room};
use crate::{DriveMap, Narrow, NoRoute, PlanPose, Raster, RasterFrame};
use geometry::DVec2;

/// The way is closed whatever the heading.
pub(crate) fn closed_off<M: DriveMap>(search: &Search<'_, M>, from: &PlanPose) -> NoRoute<M::What> {
    let to = search.field.target();
    if let Some(narrow) = narrowest(search, from) {
        return NoRoute::Narrow(narrow);
    }
    let raster = search.map.closed();
    let frame = raster.frame();
    let reached = flooded(raster, room(search.vehicle), guide_at(search.vehicle, from));
    let goal = guide_at(search.vehicle, to);
    let nearest = reached.iter().copied().map(|i| frame.centre(i)).min_by(|a, b| {
        a.distance(goal).total_cmp(&b.distance(goal)).then(a.x.total_cmp(&b.x)).then(a.y.total_cmp(&b.y))
    });
    let at = nearest.unwrap_or_else(|| guide_at(search.vehicle, from));
    let short = at.distance(goal);
    let shift = at - guide_at(search.vehicle, from);
    let nearest = PlanPose { at: from.at + shift, heading: from.heading };
    NoRoute::WalledIn { nearest, short, by: bounds(raster, at, search.vehicle.width()) }
}

/// The search ended without a way.
pub(crate) fn exhausted<M: DriveMap>(
    search: &Search<'_, M>,
    from: &PlanPose,
    nearest: &PlanPose,
    steps: &[Step],
) -> NoRoute<M::What> {
    if let Some(narrow) = too_narrow(search, from) {
        return NoRoute::Narrow(narrow);
    }
    let by = around(search, nearest, steps);
    NoRoute::WalledIn { nearest: *nearest, short: nearest.at.distance(search.field.target().at), by }
}

/// What bars the steps from a pose, each once.
pub(crate) fn around<M: DriveMap>(search: &Search<'_, M>, pose: &PlanPose, steps: &[Step]) -> Vec<M::What> {
    let mut by: Vec<_> = steps
        .iter()
        .filter_map(|step| {
            let forbidden = crate::clear::cost(search.map, search.vehicle, pose, step.motion()).err();
            forbidden.or_else(|| step.spreaded.barred(search.map, search.vehicle, pose))
        })
        .collect();
    by.sort_unstable();
    by.dedup();
    by
}

/// The narrowest place of the widest way, where it is narrower than the machine.
pub(crate) fn too_narrow<M: DriveMap>(search: &Search<'_, M>, from: &PlanPose) -> Option<Narrow<M::What>> {
    narrowest(search, from).filter(|n| n.width < n.needed)
}

/// The narrowest place of the widest way between start and target over open cells; `None` where no way leads at
/// all. Cells are opened from the roomiest on until start and target hang together: the last one is it.
fn narrowest<M: DriveMap>(search: &Search<'_, M>, from: &PlanPose) -> Option<Narrow<M::What>> {
    let raster = search.map.closed();
    let frame = raster.frame();
    let start = frame.index(guide_at(search.vehicle, from))?;
    let target = frame.index(guide_at(search.vehicle, search.field.target()))?;
    let mut cells: Vec<u32> = (0..frame.len()).filter(|i| raster.cell(*i).is_none()).map(|i| i as u32).collect();
    cells.sort_by(|a, b| {
        let room = |i: u32| raster.distance(i as usize);
        room(*b).total_cmp(&room(*a)).then(a.cmp(b))
    });
    let mut groups = Groups { of: (0..frame.len() as u32).collect() };
    let mut opened = vec![false; frame.len()];
    for cell in cells {
        let i = cell as usize;
        opened[i] = true;
        for j in neighbours(*frame, i).filter(|j| opened[*j]) {
            groups.join(i, j);
        }
        if opened[start] && opened[target] && groups.group(start) == groups.group(target) {
            let at = frame.centre(i);
            let width = across(raster, at);
            let between = bounds(raster, at, 0.5 * width + frame.cell);
            return Some(Narrow { at, width, needed: search.vehicle.width(), between });
        }
    }
    None
}

/// Clear width at a place across the direction to its nearest closed cell, m.
fn across<W: Copy>(raster: &Raster<W>, at: DVec2) -> f64 {
    let Some(nearest) = raster.nearest(at) else { return 2.0 * raster.clearance(at).1 };
    let direction = (at - raster.frame().centre(nearest)).normalize_or_zero();
    let step = raster.frame().cell / 16.0;
    let free = |sign: f64| {
        let most = (raster.frame().cols + raster.frame().rows) * 16;
        (1..=most).find(|k| raster.at(at + sign * step * *k as f64 * direction).is_some()).unwrap_or(most)
    };
    // Each side is known to a step; the closed cells begin within the last one.
    step * (free(1.0) + free(-1.0) - 1) as f64
}

/// Why the closed cells within a distance of a place are closed, each reason once.
fn bounds<W: Copy + Ord>(raster: &Raster<W>, at: DVec2, within: f64) -> Vec<W> {
    let frame = raster.frame();
    let mut out = Vec::new();
    if let Some((col, row)) = frame.column_row(at) {
        let reach = (within / frame.cell).ceil() as usize + 1;
        for r in row.saturating_sub(reach)..=(row + reach).min(frame.rows - 1) {
            for c in col.saturating_sub(reach)..=(col + reach).min(frame.cols - 1) {
                let i = r * frame.cols + c;
                let near = frame.centre(i).distance(at) <= within + frame.cell;
                out.extend(raster.cell(i).filter(|_| near));
            }
        }
    }
    out.sort_unstable();
    out.dedup();
    out
}

/// Open cells that hang together with the one at a place.
fn flooded<W: Copy>(raster: &Raster<W>, room: f64, from: DVec2) -> Vec<usize> {
    let frame = raster.frame();
    let Some(start) = frame.index(from) else { return Vec::new() };
    let mut seen = vec![false; frame.len()];
    let mut out = vec![start];
    seen[start] = true;
    let mut next = 0;
    while let Some(&i) = out.get(next) {
        next += 1;
        for j in neighbours(*frame, i) {
            if !seen[j] && open(raster, room, j) {
                seen[j] = true;
                out.push(j);
            }
        }
    }
    out
}

/// The up to eight cells around one.
fn neighbours(frame: RasterFrame, i: usize) -> impl Iterator<Item = usize> {
    let around = [(1, 0), (-1, 0), (0, 1), (0, -1), (1, 1), (1, -1), (-1, 1), (-1, -1)];
    around.into_iter().filter_map(move |(cols, rows)| frame.beside(i, cols, rows))
}

/// Cells that hang together, by their representatives.
struct Groups {
    of: Vec<u32>,
}

impl Groups {
    fn group(&mut self, mut i: usize) -> u32 {
        while self.of[i] as usize != i {
            self.of[i] = self.of[self.of[i] as usize];
            i = self.of[i] as usize;
        }
        i as u32
    }
    fn join(&mut self, a: usize, b: usize) {
        let (a, b) = (self.group(a), self.group(b));
        self.of[b as usize] = a;
    }
}
