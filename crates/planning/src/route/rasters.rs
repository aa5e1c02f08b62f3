//! The part of a site that a route may lie in, as cells: quick answers for most poses, and what the search's estimate
//! rests on.

use super::bar::Bar;
use super::barriers::{Barrier, Piece};
use super::carried::Carried;
use driving::{Raster, RasterFrame};
use geometry::DVec2;
use site::{Body, Ground, Surroundings};

/// Ground beside the straight way from start to target that is looked at, m.
const AROUND: f64 = 60.0;

/// Side of a cell, m, and cells to a side at most: a larger area gets larger cells.
const CELL: f64 = 0.25;
const MOST: f64 = 1000.0;

/// How much steeper than its cell's middle the ground may rise within a body's length: taken off heights overhead, m.
const RISE: f64 = 0.5;

/// Within so many metres of a corner that hides what is behind it a metre counts more.
const BLIND_REACH: f64 = 4.0;
const BLIND: f32 = 0.5;

/// Things higher than a seated operator's eyes hide what is behind them, m (common practice).
const EYES: f64 = 2.0;

/// Cells of a site for one machine with its load.
#[derive(Debug, Clone)]
pub(crate) struct Rasters {
    /// Cells over which a part of the machine may meet something; to be looked at closely.
    pub(crate) body: Raster<Bar>,
    /// Cells over which a wheel may be where it must not.
    pub(crate) wheels: Raster<Bar>,
    /// Cells whose ground is not known: no wheel passes.
    pub(crate) unknown: Raster<Bar>,
    /// Cells over which no part of the machine may be.
    pub(crate) closed: Raster<Bar>,
    /// What a metre in each cell counts at least.
    pub(crate) costs: Vec<f32>,
}

/// The cells between two places, as far as the ground is surveyed.
pub(crate) fn frame(ground: &Ground, from: DVec2, to: DVec2) -> RasterFrame {
    let known = ground.surfaces.iter().filter_map(|s| s.terrain.bounds());
    let known = known.reduce(|a, b| (a.0.min(b.0), a.1.max(b.1)));
    let reach = DVec2::splat(AROUND.max(0.5 * from.distance(to)));
    let (mut low, mut high) = (from.min(to) - reach, from.max(to) + reach);
    if let Some((l, h)) = known {
        (low, high) = (low.max(l), high.min(h));
    }
    let size = (high - low).max(DVec2::ZERO);
    let cell = CELL.max(size.max_element() / MOST);
    let count = |length: f64| (length / cell).ceil().max(1.0) as usize;
    RasterFrame { corner: low, cell, cols: count(size.x), rows: count(size.y) }
}

impl Rasters {
    pub(crate) fn new(
        ground: &Ground,
        around: &Surroundings,
        barriers: &[Barrier<'_>],
        carried: &Carried,
        frame: RasterFrame,
    ) -> Self {
        let heights = heights(ground, &frame);
        let mut body = vec![None; frame.len()];
        let mut wheels = vec![None; frame.len()];
        let mut closed = vec![None; frame.len()];
        let unknown: Vec<Option<Bar>> = heights.iter().map(|z| z.is_none().then_some(Bar::UnknownGround)).collect();
        let half = frame.cell * core::f64::consts::FRAC_1_SQRT_2;
        let narrower =
            carried.vehicle.outline.first().map_or(0.0, |b| b.half_width - carried.wheels.half_width).max(0.0);
        for barrier in barriers {
            let keep = barrier.distance;
            // What only wheels keep, a wider body may overhang.
            let sure = keep - half - if barrier.wheels { narrower } else { 0.0 };
            for piece in barrier.pieces() {
                each_cell_within(&frame, &piece, keep + half, |i| {
                    let at = frame.centre(i);
                    let aside = piece.plan_distance(at);
                    // Over unknown ground no height is known.
                    let near = heights[i].map_or(aside - half, |z| piece.over(at, z, carried.height + RISE, half));
                    // What is no number is looked at closely, and bars there.
                    if near.is_nan() || keep.is_nan() || near <= keep {
                        let cell = if barrier.wheels { &mut wheels[i] } else { &mut body[i] };
                        cell.get_or_insert(barrier.bar);
                    }
                    // The estimate is about the body: what is too low for it closes a cell too.
                    let low = heights[i].is_some_and(|z| piece.surely(at, z, carried.body_top - RISE, half) <= keep);
                    if (barrier.stands_on_the_ground() && aside <= sure) || (low && !barrier.has_openings()) {
                        closed[i].get_or_insert(barrier.bar);
                    }
                });
            }
        }
        close_unknown(&frame, &unknown, narrower, &mut closed);
        let body = Raster::new(frame, body, Bar::Outside);
        let mut costs: Vec<f32> = (0..frame.len()).map(|i| 1.0 + near(body.distance(i))).collect();
        blind(around, &heights, &frame, &mut costs);
        Self {
            body,
            wheels: Raster::new(frame, wheels, Bar::Outside),
            unknown: Raster::new(frame, unknown, Bar::Outside),
            closed: Raster::new(frame, closed, Bar::Outside),
            costs,
        }
    }
}

/// What a metre counts more beside something to be looked at closely, from 3 m on.
fn near(distance: f64) -> f32 {
    (1.0 - distance / 3.0).max(0.0) as f32
}

/// Ground in the middle of each cell, m; `None` where it is not known there or at a corner.
fn heights(ground: &Ground, frame: &RasterFrame) -> Vec<Option<f64>> {
    let corner = |col: usize, row: usize| {
        ground.height(frame.corner + frame.cell * DVec2::new(col as f64, row as f64)).is_some()
    };
    // The area ends where the survey does: its rim belongs to it.
    let inner = |col: usize, row: usize| {
        let rim = col == 0 || row == 0 || col == frame.cols || row == frame.rows;
        rim || corner(col, row)
    };
    let known: Vec<bool> = (0..=frame.rows)
        .flat_map(|row| (0..=frame.cols).map(move |col| (col, row)))
        .map(|(c, r)| inner(c, r))
        .collect();
    (0..frame.len())
        .map(|i| {
            let (row, col) = (i / frame.cols, i % frame.cols);
            let at = |c: usize, r: usize| known[r * (frame.cols + 1) + c];
            let all = at(col, row) && at(col + 1, row) && at(col, row + 1) && at(col + 1, row + 1);
            ground.height(frame.centre(i)).filter(|_| all).map(|(z, _)| z)
        })
        .collect()
}

/// Calls `take` with each cell that may lie within a distance of a piece.
fn each_cell_within(frame: &RasterFrame, piece: &Piece<'_>, within: f64, mut take: impl FnMut(usize)) {
    let all = (frame.corner, frame.corner + frame.cell * DVec2::new(frame.cols as f64, frame.rows as f64));
    let bounds = piece.bounds().filter(|_| within.is_finite());
    let (low, high) = bounds.map_or(all, |(l, h)| (l - DVec2::splat(within), h + DVec2::splat(within)));
    let cell = |p: DVec2| (p - frame.corner) / frame.cell;
    let (a, b) = (cell(low).floor(), cell(high).floor());
    if b.x < 0.0 || b.y < 0.0 || a.x >= frame.cols as f64 || a.y >= frame.rows as f64 {
        return;
    }
    let (c0, r0) = (a.x.max(0.0) as usize, a.y.max(0.0) as usize);
    let (c1, r1) = ((b.x as usize).min(frame.cols - 1), (b.y as usize).min(frame.rows - 1));
    for row in r0..=r1 {
        for col in c0..=c1 {
            take(row * frame.cols + col);
        }
    }
}

/// Unknown ground closes a cell where it reaches so far around that no body keeps its wheels off it.
fn close_unknown(frame: &RasterFrame, unknown: &[Option<Bar>], narrower: f64, closed: &mut [Option<Bar>]) {
    let known = unknown.iter().map(|u| if u.is_none() { Some(Bar::UnknownGround) } else { None }).collect();
    let known = Raster::new(*frame, known, Bar::Outside);
    let reach = narrower + frame.cell * core::f64::consts::SQRT_2;
    for (i, cell) in closed.iter_mut().enumerate() {
        if unknown[i].is_some() && known.distance(i) > reach {
            cell.get_or_insert(Bar::UnknownGround);
        }
    }
}

/// Metres near corners of what is higher than the operator's eyes count more.
fn blind(around: &Surroundings, heights: &[Option<f64>], frame: &RasterFrame, costs: &mut [f32]) {
    for thing in &around.things {
        let Body::Upright { shape, base: None, top } = &thing.body else { continue };
        for corner in shape.outlines().into_iter().flat_map(|o| o.outer) {
            let ground = frame.index(corner).and_then(|i| heights[i]);
            let low = top.zip(ground).is_some_and(|(top, z)| top - z < EYES);
            let Some((col, row)) = frame.column_row(corner).filter(|_| !low) else { continue };
            let reach = (BLIND_REACH / frame.cell) as usize;
            for r in row.saturating_sub(reach)..=(row + reach).min(frame.rows - 1) {
                for c in col.saturating_sub(reach)..=(col + reach).min(frame.cols - 1) {
                    let i = r * frame.cols + c;
                    if frame.centre(i).distance(corner) < BLIND_REACH {
                        costs[i] = costs[i].max(1.0 + BLIND);
                    }
                }
            }
        }
    }
}
