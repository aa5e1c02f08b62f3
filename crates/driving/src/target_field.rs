//! How far it is to a target around everything closed, heading left aside: prepared once for a target.

use crate::{DriveMap, PlanPose, Raster, RasterFrame, Vehicle};
use geometry::DVec2;

/// Steps to 16 neighbours: (columns, rows, length in cells).
const STEPS: [(isize, isize, f32); 16] = {
    const D: f32 = core::f32::consts::SQRT_2;
    const K: f32 = 2.236_068;
    [
        (1, 0, 1.0),
        (-1, 0, 1.0),
        (0, 1, 1.0),
        (0, -1, 1.0),
        (1, 1, D),
        (1, -1, D),
        (-1, 1, D),
        (-1, -1, D),
        (2, 1, K),
        (2, -1, K),
        (-2, 1, K),
        (-2, -1, K),
        (1, 2, K),
        (1, -2, K),
        (-1, 2, K),
        (-1, -2, K),
    ]
};

/// How much longer the way in such steps is than the straight line, at most: `1 / cos(½ · atan ½)`, between
/// the directions of a straight and a knight's step.
const DETOUR: f64 = 1.027_8;

/// Room to either side, m, below which a passage counts as tight.
const TIGHT_ROOM: f64 = 0.75;

/// A metre in a tight passage counts as that many more: whether a long machine gets through it at all depends on
/// its heading, which the field leaves aside. A way around that is not much longer is tried first.
const TIGHT: f64 = 4.0;

/// A metre within [`DEAD_END_REACH`] m of a dead end of an earlier round counts as that many.
const DEAD_END: f64 = 20.0;
const DEAD_END_REACH: f64 = 4.0;

/// Cost of a metre beyond which nothing is told apart.
const MOST_COST: f64 = 1e3;

/// Costs from every cell to the target for the guide: the pivot in the tightest steering mode.
#[derive(Debug, Clone)]
pub struct TargetField {
    target: PlanPose,
    guide: f64,
    cost: Vec<f32>,
    cell: f64,
}

impl TargetField {
    /// Dijkstra's algorithm (1959) from the target over the cells in which the guide may be in some heading,
    /// by the map's least costs. The disc about the guide that lies within the outline in every heading
    /// must be clear of closed cells. Linear in cells: cells wait in buckets as wide as the least step, in
    /// which order does not matter (R. Dial, 1969).
    pub fn prepare<M: DriveMap>(map: &M, vehicle: &Vehicle, target: PlanPose) -> Self {
        Self::around(map, vehicle, target, &[])
    }

    /// The same with a search's dead ends, which count as many times as dear.
    pub(crate) fn around<M: DriveMap>(map: &M, vehicle: &Vehicle, target: PlanPose, ends: &[DVec2]) -> Self {
        let raster = map.closed();
        let frame = *raster.frame();
        let guide = guide(vehicle);
        let room = room(vehicle);
        let mut cost = vec![f32::INFINITY; frame.len()];
        let mut field = Self { target, guide, cost: Vec::new(), cell: frame.cell };
        let place = target.place(DVec2::new(guide, 0.0));
        let Some(start) = frame.index(place) else {
            field.cost = cost;
            return field;
        };
        let tight = |i: usize| {
            let at = frame.centre(i);
            let tight = if raster.distance(i) < room + TIGHT_ROOM { TIGHT } else { 1.0 };
            if ends.iter().any(|e| e.distance_squared(at) < DEAD_END_REACH * DEAD_END_REACH) { DEAD_END } else { tight }
        };
        let least: Vec<f32> = (0..frame.len())
            .map(|i| if open(raster, room, i) { (map.least_cost(i).min(MOST_COST) * tight(i)) as f32 } else { 0.0 })
            .collect();
        // Cells of the target itself count, however near something is: its pose was asked for.
        cost[start] = 0.0;
        let width = frame.cell as f32;
        let mut buckets: Vec<Vec<u32>> = vec![vec![start as u32]];
        let mut at = 0;
        while at < buckets.len() {
            let mut bucket = core::mem::take(&mut buckets[at]);
            for i in bucket.drain(..) {
                let i = i as usize;
                let here = cost[i];
                if (here / width) as usize != at {
                    continue;
                }
                for (cols, rows, length) in STEPS {
                    let Some(j) = frame.beside(i, cols, rows).filter(|j| least[*j] > 0.0) else { continue };
                    if cols.abs() + rows.abs() == 3 && jumped(&least, &frame, i, (cols, rows)) {
                        continue;
                    }
                    let over = 0.5 * (least[i].max(1.0) + least[j]);
                    let there = here + over * length * width;
                    if there < cost[j] {
                        cost[j] = there;
                        let b = ((there / width) as usize).max(at + 1);
                        if b >= buckets.len() {
                            buckets.resize(b + 1, Vec::new());
                        }
                        buckets[b].push(j as u32);
                    }
                }
            }
            at += 1;
        }
        field.cost = cost;
        field
    }

    /// The pose that it leads to.
    pub fn target(&self) -> &PlanPose {
        &self.target
    }

    /// Cost from a pose to the target, from below up to the size of cells, m; infinite where no way leads.
    pub fn from<W: Copy>(&self, raster: &Raster<W>, pose: &PlanPose) -> f64 {
        let at = pose.place(DVec2::new(self.guide, 0.0));
        let found = raster.frame().index(at).map_or(f64::INFINITY, |i| f64::from(self.cost[i]));
        // Both ends lie somewhere in their cells.
        (found / DETOUR - core::f64::consts::SQRT_2 * self.cell).max(0.0)
    }
}

/// True if a knight's step passes between two closed cells.
fn jumped(least: &[f32], frame: &RasterFrame, i: usize, (cols, rows): (isize, isize)) -> bool {
    let closed = |cols, rows| frame.beside(i, cols, rows).is_none_or(|j| least[j] == 0.0);
    closed(cols / 2, rows / 2) && closed(cols - cols / 2, rows - rows / 2)
}

/// x of the point that the field is about: the pivot of the tightest mode.
pub(crate) fn guide(vehicle: &Vehicle) -> f64 {
    vehicle.tightest().map_or(0.0, |(steering, _)| vehicle.pivot(steering))
}

/// Distance between cell middles from which on the guide may be in a cell in some heading, m.
///
/// It is the radius of the disc about the guide that lies within the outline, no less: a closed square holds the point
/// that lies in it as the guide lies in its own cell, and that one is as far away as the middles are.
pub(crate) fn room(vehicle: &Vehicle) -> f64 {
    // Distances are single precision.
    vehicle.inscribed(guide(vehicle)) * (1.0 - 1e-6)
}

/// True if the guide may be in a cell in some heading.
pub(crate) fn open<W: Copy>(raster: &Raster<W>, room: f64, cell: usize) -> bool {
    raster.cell(cell).is_none() && raster.distance(cell) >= room
}
