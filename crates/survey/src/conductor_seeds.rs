//! Where lines may be in plan: Hough's transform (Duda and Hart 1972, Communications of the ACM
//! 15(1), 11-15) over cells that have few neighbours of their own height, block by block.

use crate::conductor_fit::HighPoints;
use geometry::DVec2;
use std::collections::BTreeMap;

/// Side of a cell, m.
const CELL: f64 = 0.5;
/// Neighbours are counted up to this many cells away, if their tops differ by at most [`LIKE`], m.
const AROUND: i64 = 3;
const LIKE: f64 = 1.5;
/// Of the 49 cells around, a wire or three side by side fill at most this many.
const FEW: usize = 24;
/// Blocks overlap by half.
const BLOCK: f64 = 40.0;
/// Least number of cells that make a seed.
const LEAST: usize = 10;
/// Seeds tried in a block.
const MOST_SEEDS: usize = 12;
/// Directions in half a turn, and width of a strip, m.
const DIRECTIONS: usize = 180;
const STRIP: f64 = 0.5;

/// A line in plan from one end to the other, m.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Seed {
    pub(crate) from: DVec2,
    pub(crate) to: DVec2,
}

/// Hands every seed to `take`, which uses points up; cells whose highest point is used vote no more.
pub(crate) fn each(points: &mut HighPoints, mut take: impl FnMut(&mut HighPoints, Seed)) {
    let cells = thin_cells(points);
    let mut blocks: BTreeMap<(i64, i64), Vec<usize>> = BTreeMap::new();
    for (i, (at, _)) in cells.iter().enumerate() {
        let (x, y) = ((at.x / BLOCK * 2.0).floor() as i64, (at.y / BLOCK * 2.0).floor() as i64);
        for (dx, dy) in [(0, 0), (-1, 0), (0, -1), (-1, -1)] {
            blocks.entry((x + dx, y + dy)).or_default().push(i);
        }
    }
    let turns: Vec<DVec2> = (0..DIRECTIONS)
        .map(|k| {
            let (sin, cos) = libm::sincos(k as f64 / DIRECTIONS as f64 * std::f64::consts::PI);
            DVec2::new(cos, sin)
        })
        .collect();
    for (&(x, y), members) in &blocks {
        let middle = DVec2::new(x as f64 + 1.0, y as f64 + 1.0) * (BLOCK / 2.0);
        let mut ballot = Ballot::new(middle, &turns);
        let mut left: Vec<usize> = members.clone();
        for &i in &left {
            ballot.count(cells[i].0, true);
        }
        for _ in 0..MOST_SEEDS {
            let Some((normal, offset)) = ballot.strongest() else { break };
            let on_line = |i: usize| (normal.dot(cells[i].0 - middle) - offset).abs() <= STRIP;
            let along = DVec2::new(-normal.y, normal.x);
            let shares = left.iter().filter(|&&i| on_line(i)).map(|&i| along.dot(cells[i].0 - middle));
            let (low, high) = shares.fold((f64::INFINITY, f64::NEG_INFINITY), |(l, h), s| (l.min(s), h.max(s)));
            let foot = middle + normal * offset;
            take(points, Seed { from: foot + along * low, to: foot + along * high });
            left.retain(|&i| {
                let stays = !on_line(i) && !points.is_used(cells[i].1);
                if !stays {
                    ballot.count(cells[i].0, false);
                }
                stays
            });
        }
    }
}

/// Middle and highest point of every cell with few neighbours of its own height.
fn thin_cells(points: &HighPoints) -> Vec<(DVec2, usize)> {
    let key = |at: DVec2| ((at.x / CELL).floor() as i64, (at.y / CELL).floor() as i64);
    let mut tops: BTreeMap<(i64, i64), usize> = BTreeMap::new();
    for (i, point) in points.list.iter().enumerate() {
        let top = tops.entry(key(point.truncate())).or_insert(i);
        if point.z > points.list[*top].z {
            *top = i;
        }
    }
    let alike = |(x, y): (i64, i64), z: f64| {
        (x - AROUND..=x + AROUND)
            .flat_map(|c| tops.range((c, y - AROUND)..=(c, y + AROUND)))
            .filter(|(_, i)| (points.list[**i].z - z).abs() <= LIKE)
            .count()
    };
    tops.iter()
        .filter(|&(&cell, &top)| alike(cell, points.list[top].z) <= FEW)
        .map(|(&(x, y), &top)| (DVec2::new(x as f64 + 0.5, y as f64 + 0.5) * CELL, top))
        .collect()
}

/// Strips across a block, in every direction.
const STRIPS: usize = (2.0 * BLOCK / STRIP) as usize;

/// How many cells lie in each strip.
struct Ballot<'a> {
    middle: DVec2,
    turns: &'a [DVec2],
    votes: Vec<u32>,
}

impl<'a> Ballot<'a> {
    fn new(middle: DVec2, turns: &'a [DVec2]) -> Self {
        Self { middle, turns, votes: vec![0; STRIPS * turns.len()] }
    }

    /// A cell comes in, or goes.
    fn count(&mut self, at: DVec2, comes: bool) {
        for (k, normal) in self.turns.iter().enumerate() {
            let strip = (normal.dot(at - self.middle) / STRIP).floor() + STRIPS as f64 / 2.0;
            if strip >= 0.0 && (strip as usize) < STRIPS {
                let votes = &mut self.votes[k * STRIPS + strip as usize];
                *votes = if comes { *votes + 1 } else { votes.saturating_sub(1) };
            }
        }
    }

    /// Normal and offset from the middle of the strip with most cells.
    fn strongest(&self) -> Option<(DVec2, f64)> {
        let (best, most) = self.votes.iter().enumerate().max_by_key(|&(i, v)| (*v, usize::MAX - i))?;
        if (*most as usize) < LEAST {
            return None;
        }
        let offset = ((best % STRIPS) as f64 + 0.5 - STRIPS as f64 / 2.0) * STRIP;
        Some((self.turns[best / STRIPS], offset))
    }
}
