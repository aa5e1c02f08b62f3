//! What stands above the ground in clouds, whatever its class: buildings, trees, masts, stacks.

use crate::cell_outline::grown_outline;
use crate::cloud_header::count;
use crate::cloud_raster::RasterPlan;
use crate::cloud_stream::{open_all, visit_all};
use crate::notes::{Notes, Refused};
use crate::options::GroundOptions;
use crate::raster_opening::fill_from_nearest;
use crate::text;
use evidence::Faults;
use geometry::{DVec2, DVec3};
use site::Terrain;
use std::collections::BTreeMap;

/// Most cells: 40 bytes each.
const MOST_CELLS: u64 = 8_000_000;

/// The class of ground points (LAS 1.4 R15, table 17).
const GROUND: u8 = 2;

/// What counts as standing above the ground, and as one thing. Values are ours.
#[derive(Debug, Clone, PartialEq)]
pub struct ThingOptions {
    /// Points up to this above the ground are ground, kerbs and grass, m.
    pub above: f64,
    /// Side of a cell, m.
    pub cell: f64,
    /// Cells next to each other, or with one between them, are one thing if their tops differ by
    /// no more than this, m. So a jib is not one thing with the house under it.
    pub step: f64,
    /// Things of fewer points that touch no other are left out, and counted.
    pub fewest_points: u32,
    /// Units, window and the rest, as for the ground.
    pub cloud: GroundOptions,
}

impl Default for ThingOptions {
    fn default() -> Self {
        Self { above: 0.5, cell: 0.5, step: 3.0, fewest_points: 3, cloud: GroundOptions::default() }
    }
}

/// Everything that stands above the ground.
#[derive(Debug, Clone, PartialEq)]
pub struct ThingsAbove {
    /// The things, highest first.
    pub things: Vec<CloudThing>,
    /// Points above the ground in things too small to be one (birds, dust, stray echoes).
    pub lone_points: u64,
    /// Cells over which the ground that was given knows nothing, as under buildings: there the
    /// nearest known ground was taken, for telling what stands up and for nothing else.
    pub cells_without_ground: u64,
    /// Warnings; none of them an error.
    pub notes: Faults,
}

/// Something that stands above the ground.
#[derive(Debug, Clone, PartialEq)]
pub struct CloudThing {
    /// Outline of its cells grown by one cell (so on the safe side), corners counter-clockwise, m.
    /// Courtyards are filled.
    pub outline: Vec<DVec2>,
    /// Lowest ground under it, m.
    pub base: f64,
    /// Its highest point, m.
    pub top: DVec3,
    /// Number of points above the ground.
    pub points: u64,
    /// Which classes the file gives its points: a hint only.
    pub votes: ClassVotes,
    /// Its cells with their tops. Below a top nothing is known to be free.
    pub columns: Vec<ThingColumn>,
}

/// One cell of a thing.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ThingColumn {
    /// Middle of the cell, m.
    pub at: DVec2,
    /// Highest point in it, m.
    pub top: f64,
}

/// How the points of a thing are classed. A mast may be "vegetation": never decide by it.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct ClassVotes {
    /// Class 6.
    pub building: u64,
    /// Classes 3 to 5.
    pub vegetation: u64,
    /// Classes 13 to 16: wires and towers.
    pub wire_or_tower: u64,
    /// Class 17, and 26 in some countries.
    pub bridge: u64,
    /// Classes 0 and 1.
    pub unclassified: u64,
    /// Every other.
    pub other: u64,
}

#[derive(Debug, Clone, Copy)]
struct Cell {
    ground: f32,
    top: f32,
    /// Place of the highest point from the corner of the raster, m.
    top_at: [f32; 2],
    points: u32,
    votes: [u16; 6],
}

/// Finds what stands above `ground`: every point that is neither withheld nor noise and lies more
/// than [`ThingOptions::above`] over it, in cells, joined to things.
///
/// A point that is classed as ground is held against the surface itself; every other against the
/// height of the ground in the middle of its cell.
///
/// # Errors
/// Every fault of every tile; options that cannot be; too many cells; a ground that knows nothing
/// where the cloud lies.
pub fn things_above(tiles: &[(&str, &[u8])], ground: &Terrain, options: &ThingOptions) -> Result<ThingsAbove, Faults> {
    let mut notes = Notes::new(tiles.first().map_or("", |t| t.0));
    let result = check(options, &mut notes);
    notes.finish(result)?;
    let (opened, mut faults) = open_all(tiles, &options.cloud)?;
    let mut notes = Notes::new(tiles.first().map_or("", |t| t.0));
    let window = options.cloud.window;
    let result = RasterPlan::of(&opened, window, options.cell, MOST_CELLS, &mut notes).and_then(|plan| match plan {
        Some(plan) => ground_cells(&plan, ground, &mut notes).map(|(cells, unknown)| Some((plan, cells, unknown))),
        None => Ok(None),
    });
    let (found, _) = notes.finish(result)?;
    let Some((plan, mut cells, unknown)) = found else {
        // Nothing of the clouds is in the window; they are read all the same, for their faults.
        visit_all(&opened, &mut faults, |_, _, _| {})?;
        return Ok(ThingsAbove { things: Vec::new(), lone_points: 0, cells_without_ground: 0, notes: faults });
    };
    visit_all(&opened, &mut faults, |_, frame, sample| {
        let point = frame.metres(sample.stored);
        let at = point.truncate();
        if !sample.is_something(point) || window.is_some_and(|w| !w.contains(at)) {
            return;
        }
        let Some(i) = plan.index(at) else { return };
        let under = if sample.class == GROUND { ground.height(at) } else { None };
        if point.z - under.unwrap_or(f64::from(cells[i].ground)) > options.above {
            cells[i].add(point, plan.corner, sample.class);
        }
    })?;
    let (things, lone_points) = joined(&plan, &cells, options);
    if lone_points > 0 {
        let mut notes = Notes::new(tiles.first().map_or("", |t| t.0));
        notes.warn("survey::lone-points", text::LONE_POINTS.with("count", count(lone_points)), text::DO_LOOK_THERE);
        let ((), more) = notes.finish(Ok(()))?;
        faults.append(more);
    }
    Ok(ThingsAbove { things, lone_points, cells_without_ground: unknown, notes: faults })
}

fn check(options: &ThingOptions, notes: &mut Notes<'_>) -> Result<(), Refused> {
    let good = (0.0..=100.0).contains(&options.above) && (0.0..=1000.0).contains(&options.step);
    if good { Ok(()) } else { Err(notes.refuse("survey::option", text::OPTION_ABSURD, text::DO_STATE_OPTION)) }
}

/// Empty cells with the ground under them, and how many of them had none of their own.
fn ground_cells(plan: &RasterPlan, ground: &Terrain, notes: &mut Notes<'_>) -> Result<(Vec<Cell>, u64), Refused> {
    let height = |i: usize| ground.height(plan.centre(i / plan.cols, i % plan.cols)).map_or(f32::NAN, |z| z as f32);
    let mut heights: Vec<f32> = (0..plan.cells()).map(height).collect();
    let unknown = heights.iter().filter(|z| z.is_nan()).count() as u64;
    if !fill_from_nearest(&mut heights, plan.rows, plan.cols) {
        return Err(notes.refuse("survey::no-ground-under", text::NO_GROUND_UNDER, text::DO_GIVE_GROUND_THERE));
    }
    let cell = |ground| Cell { ground, top: f32::NEG_INFINITY, top_at: [0.0; 2], points: 0, votes: [0; 6] };
    Ok((heights.into_iter().map(cell).collect(), unknown))
}

impl Cell {
    fn add(&mut self, point: DVec3, corner: DVec2, class: u8) {
        self.points = self.points.saturating_add(1);
        if point.z as f32 > self.top {
            self.top = point.z as f32;
            let at = point.truncate() - corner;
            self.top_at = [at.x as f32, at.y as f32];
        }
        let group = match class {
            6 => 0,
            3..=5 => 1,
            13..=16 => 2,
            17 | 26 => 3,
            0 | 1 => 4,
            _ => 5,
        };
        self.votes[group] = self.votes[group].saturating_add(1);
    }
}

/// Joins cells to things; also the points in none.
fn joined(plan: &RasterPlan, cells: &[Cell], options: &ThingOptions) -> (Vec<CloudThing>, u64) {
    let mut parent: Vec<u32> = (0..cells.len() as u32).collect();
    let full = |i: usize| cells[i].points > 0;
    let close = |a: usize, b: usize| f64::from((cells[a].top - cells[b].top).abs()) <= options.step;
    for i in (0..cells.len()).filter(|&i| full(i)) {
        for j in beside(plan, i).filter(|&j| full(j) && close(i, j)) {
            unite(&mut parent, i, j);
        }
    }
    let mut points = vec![0_u64; cells.len()];
    for i in (0..cells.len()).filter(|&i| full(i)) {
        points[root(&mut parent, i)] += u64::from(cells[i].points);
    }
    // A crumb beside something else belongs to it.
    let fewest = u64::from(options.fewest_points);
    let crumbs: Vec<usize> =
        (0..cells.len()).filter(|&i| full(i)).filter(|&i| points[root(&mut parent, i)] < fewest).collect();
    for i in crumbs {
        let around: Vec<usize> = around(plan, i).filter(|&j| full(j)).collect();
        for j in around {
            unite(&mut parent, i, j);
        }
    }
    let mut members: BTreeMap<usize, Vec<usize>> = BTreeMap::new();
    for i in (0..cells.len()).filter(|&i| full(i)) {
        members.entry(root(&mut parent, i)).or_default().push(i);
    }
    let mut lone = 0;
    let mut things = Vec::new();
    for group in members.values() {
        let thing = thing(plan, cells, group);
        if thing.points < fewest { lone += thing.points } else { things.push(thing) }
    }
    things.sort_by(|a, b| b.top.z.total_cmp(&a.top.z));
    (things, lone)
}

fn thing(plan: &RasterPlan, cells: &[Cell], group: &[usize]) -> CloudThing {
    let row_col = |i: usize| (count((i / plan.cols) as u64), count((i % plan.cols) as u64));
    let own: Vec<(i64, i64)> = group.iter().map(|&i| row_col(i)).collect();
    let corner = |(row, col): (i64, i64)| plan.corner + DVec2::new(col as f64, -(row as f64)) * plan.cell;
    let mut out = CloudThing {
        outline: grown_outline(&own).into_iter().map(corner).collect(),
        base: f64::INFINITY,
        top: DVec3::NEG_INFINITY,
        points: 0,
        votes: ClassVotes::default(),
        columns: Vec::with_capacity(group.len()),
    };
    for &i in group {
        let cell = &cells[i];
        let top = f64::from(cell.top);
        out.points += u64::from(cell.points);
        out.base = out.base.min(f64::from(cell.ground));
        if top > out.top.z {
            out.top = (plan.corner + DVec2::new(f64::from(cell.top_at[0]), f64::from(cell.top_at[1]))).extend(top);
        }
        let [building, vegetation, wire, bridge, unclassified, other] = cell.votes.map(u64::from);
        out.votes.building += building;
        out.votes.vegetation += vegetation;
        out.votes.wire_or_tower += wire;
        out.votes.bridge += bridge;
        out.votes.unclassified += unclassified;
        out.votes.other += other;
        out.columns.push(ThingColumn { at: plan.centre(i / plan.cols, i % plan.cols), top });
    }
    out
}

/// Cells up to two away, each pair once.
fn beside(plan: &RasterPlan, i: usize) -> impl Iterator<Item = usize> {
    around(plan, i).filter(move |&j| j > i)
}

/// Cells up to two away.
fn around(plan: &RasterPlan, i: usize) -> impl Iterator<Item = usize> + use<> {
    let (row, col) = (i / plan.cols, i % plan.cols);
    let (rows, cols) = (plan.rows, plan.cols);
    (row.saturating_sub(2)..(row + 3).min(rows))
        .flat_map(move |r| (col.saturating_sub(2)..(col + 3).min(cols)).map(move |c| r * cols + c))
        .filter(move |&j| j != i)
}

fn unite(parent: &mut [u32], a: usize, b: usize) {
    let (a, b) = (root(parent, a), root(parent, b));
    parent[a.max(b)] = a.min(b) as u32;
}

fn root(parent: &mut [u32], node: usize) -> usize {
    let mut node = node as u32;
    while parent[node as usize] != node {
        parent[node as usize] = parent[parent[node as usize] as usize];
        node = parent[node as usize];
    }
    node as usize
}
