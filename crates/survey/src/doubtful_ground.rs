//! Ground points that cannot be ground to stand on: patches that stand above their surroundings by
//! cliffs all around, such as roofs, stacks, vehicles and spikes in class 2.
//!
//! The rule (ours). Ground points are gathered to columns of about 1 m. A column whose points lie
//! more than [`CLIFF`] apart counts twice, with its lowest and its highest. Neighbours within three
//! columns are joined where they differ by at most [`CLIFF`]; what is joined is a patch. From every
//! column of a patch one looks in eight directions, up to [`SIGHT`] columns, for the first ground
//! beyond the patch. The patch is doubtful if it is at most [`LARGEST`] large, at least 19 of 20
//! looks end on ground more than [`CLIFF`] below, and no more looks end nowhere than on ground.
//!
//! A terrace between two retaining walls has higher ground on one side and stays; so does a
//! hillside, a ramp, and whatever is larger than [`LARGEST`].

use crate::notes::Notes;
use crate::text;
use geometry::{DVec2, DVec3};
use quantity::Quantity;
use std::collections::BTreeMap;
use std::ops::Range;

/// Side of a column, m.
pub(crate) const COLUMN: f64 = 1.0;
/// A step that no machine drives, m.
const CLIFF: f64 = 1.0;
/// Columns over which neighbours are joined.
const REACH: i64 = 3;
/// Columns over which one looks for the ground around.
const SIGHT: i64 = 10;
/// Largest patch, m²: the roof of a house. What is larger may be a raised yard.
const LARGEST: f64 = 200.0;
/// Patches that are told one by one.
const MOST_TOLD: usize = 5;

/// The ground points of one column. Rows are counted from the north, columns from the west.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Column {
    pub(crate) row: i64,
    pub(crate) col: i64,
    pub(crate) points: u32,
    pub(crate) low: f64,
    pub(crate) high: f64,
}

/// The doubtful patches of a ground.
#[derive(Debug, Default)]
pub(crate) struct Doubtful {
    corner: DVec2,
    size: f64,
    /// Heights from, to that are doubtful in a column.
    columns: BTreeMap<(i64, i64), (f64, f64)>,
    patches: Vec<Patch>,
}

#[derive(Debug, Clone, Copy, PartialEq)]
struct Patch {
    at: DVec2,
    points: u64,
    low: f64,
    high: f64,
    area: f64,
}

/// Leaves the points of doubtful patches out, with a warning.
pub(crate) fn leave_out(points: &mut Vec<DVec3>, notes: &mut Notes<'_>) {
    let Some(corner) =
        points.iter().map(|p| DVec2::new(p.x, p.y)).reduce(|a, b| DVec2::new(a.x.min(b.x), a.y.max(b.y)))
    else {
        return;
    };
    if !corner.is_finite() {
        return;
    }
    let mut keys: Vec<((i64, i64), f64)> = points.iter().map(|p| (key(corner, COLUMN, p.truncate()), p.z)).collect();
    keys.sort_unstable_by(|a, b| a.0.cmp(&b.0).then(a.1.total_cmp(&b.1)));
    let columns = keys
        .chunk_by(|a, b| a.0 == b.0)
        .map(|run| Column {
            row: run[0].0.0,
            col: run[0].0.1,
            points: run.len() as u32,
            low: run[0].1,
            high: run[run.len() - 1].1,
        })
        .collect();
    let doubtful = Doubtful::find(columns, corner, COLUMN);
    doubtful.warn(notes);
    if !doubtful.is_empty() {
        points.retain(|p| !doubtful.holds(p.truncate(), p.z));
    }
}

fn key(corner: DVec2, size: f64, at: DVec2) -> (i64, i64) {
    (((corner.y - at.y) / size).floor() as i64, ((at.x - corner.x) / size).floor() as i64)
}

impl Doubtful {
    /// Finds the doubtful patches. `columns`: sorted by row, then column, each once; `corner`: the
    /// north-west corner of row 0, column 0, m; `size`: side of a column, m.
    pub(crate) fn find(columns: Vec<Column>, corner: DVec2, size: f64) -> Self {
        let ground = Ground::of(columns);
        let area = |nodes: u32| f64::from(nodes) * size * size;
        let patches = ground.patches(|nodes| area(nodes) <= LARGEST);
        let mut members: BTreeMap<u32, Vec<usize>> = BTreeMap::new();
        for (node, &patch) in patches.of.iter().enumerate() {
            if area(patches.sizes[patch as usize]) <= LARGEST {
                members.entry(patch).or_default().push(node);
            }
        }
        let mut out = Self { corner, size, ..Self::default() };
        for nodes in members.values() {
            if ground.stands_alone(nodes, &patches.of) {
                out.add(&ground, nodes, area(nodes.len() as u32));
            }
        }
        out.patches.sort_by(|a, b| b.area.total_cmp(&a.area));
        out
    }

    fn add(&mut self, ground: &Ground, nodes: &[usize], area: f64) {
        let mut patch = Patch { at: DVec2::ZERO, points: 0, low: f64::INFINITY, high: f64::NEG_INFINITY, area };
        for &node in nodes {
            let Node { column, low, high } = ground.nodes[node];
            let whole = ground.columns[column];
            let middle = f64::midpoint(whole.low, whole.high);
            let (heights, points) = match ground.nodes_of(column).len() {
                1 => ((f64::NEG_INFINITY, f64::INFINITY), u64::from(whole.points)),
                _ if low > middle => ((middle, f64::INFINITY), 1),
                _ => ((f64::NEG_INFINITY, middle), 1),
            };
            let entry = self.columns.entry((whole.row, whole.col)).or_insert(heights);
            *entry = (entry.0.min(heights.0), entry.1.max(heights.1));
            let offset = DVec2::new(whole.col as f64 + 0.5, -(whole.row as f64) - 0.5) * self.size;
            patch.at += (self.corner + offset) / nodes.len() as f64;
            patch.points += points;
            (patch.low, patch.high) = (patch.low.min(low), patch.high.max(high));
        }
        self.patches.push(patch);
    }

    pub(crate) fn is_empty(&self) -> bool {
        self.patches.is_empty()
    }

    /// True for a ground point of a doubtful patch.
    pub(crate) fn holds(&self, at: DVec2, z: f64) -> bool {
        let heights = self.columns.get(&key(self.corner, self.size, at));
        heights.is_some_and(|&(from, to)| z >= from && z <= to)
    }

    /// One warning for each of the largest patches, one for the rest.
    pub(crate) fn warn(&self, notes: &mut Notes<'_>) {
        for patch in self.patches.iter().take(MOST_TOLD) {
            let message = text::GROUND_DOUBTFUL
                .with("points", i64::try_from(patch.points).unwrap_or(i64::MAX))
                .with("east", Quantity::number(patch.at.x.round()))
                .with("north", Quantity::number(patch.at.y.round()))
                .with("low", quantity::metres(patch.low))
                .with("high", quantity::metres(patch.high))
                .with("area", Quantity::number(patch.area));
            notes.warn("survey::doubtful-ground", message, text::DO_LOOK_THERE);
        }
        if let Some(more) = self.patches.len().checked_sub(MOST_TOLD).filter(|&n| n > 0) {
            let message = text::GROUND_DOUBTFUL_MORE.with("count", more);
            notes.warn("survey::doubtful-ground", message, text::DO_LOOK_THERE);
        }
    }
}

/// A column, or the lower or the upper end of one that spans a cliff.
#[derive(Debug, Clone, Copy)]
struct Node {
    column: usize,
    low: f64,
    high: f64,
}

struct Ground {
    columns: Vec<Column>,
    nodes: Vec<Node>,
    /// First node of each column, and one more at the end.
    first: Vec<usize>,
    rows: BTreeMap<i64, Range<usize>>,
}

impl Ground {
    fn of(columns: Vec<Column>) -> Self {
        let mut nodes = Vec::with_capacity(columns.len());
        let mut first = Vec::with_capacity(columns.len() + 1);
        let mut rows: BTreeMap<i64, Range<usize>> = BTreeMap::new();
        for (column, c) in columns.iter().enumerate() {
            first.push(nodes.len());
            if c.high - c.low > CLIFF {
                nodes.push(Node { column, low: c.low, high: c.low });
                nodes.push(Node { column, low: c.high, high: c.high });
            } else {
                nodes.push(Node { column, low: c.low, high: c.high });
            }
            rows.entry(c.row).or_insert(column..column).end = column + 1;
        }
        first.push(nodes.len());
        Self { columns, nodes, first, rows }
    }

    fn nodes_of(&self, column: usize) -> Range<usize> {
        self.first[column]..self.first[column + 1]
    }

    /// The columns of a row from `west` to `east`.
    fn stretch(&self, row: i64, west: i64, east: i64) -> Range<usize> {
        let Some(range) = self.rows.get(&row) else { return 0..0 };
        let line = &self.columns[range.clone()];
        let begin = range.start + line.partition_point(|c| c.col < west);
        let end = range.start + line.partition_point(|c| c.col <= east);
        begin..end
    }

    /// Joins the nodes to patches.
    ///
    /// First the columns that touch, which is nearly all of a ground; then, from the patches that are
    /// still `small`, all columns in reach. Two large patches in reach of each other stay apart: neither
    /// is small, and more is asked of neither.
    fn patches(&self, small: impl Fn(u32) -> bool) -> Patches {
        let mut of: Vec<u32> = (0..self.nodes.len() as u32).collect();
        let mut below = 0;
        for (index, at) in self.columns.iter().enumerate() {
            if self.columns.get(index + 1).is_some_and(|c| (c.row, c.col) == (at.row, at.col + 1)) {
                self.join(&mut of, index, index + 1);
            }
            // Columns come in order, and so do those below them.
            let under = (at.row + 1, at.col);
            while self.columns.get(below).is_some_and(|c| (c.row, c.col) < under) {
                below += 1;
            }
            if self.columns.get(below).is_some_and(|c| (c.row, c.col) == under) {
                self.join(&mut of, index, below);
            }
        }
        let near = Patches::of(of.clone());
        for (index, at) in self.columns.iter().enumerate() {
            if !self.nodes_of(index).any(|n| small(near.sizes[near.of[n] as usize])) {
                continue;
            }
            for down in -REACH..=REACH {
                for other in self.stretch(at.row + down, at.col - REACH, at.col + REACH) {
                    if other != index {
                        self.join(&mut of, index, other);
                    }
                }
            }
        }
        Patches::of(of)
    }

    /// Joins the nodes of two columns that differ by no cliff.
    fn join(&self, parent: &mut [u32], one: usize, two: usize) {
        for a in self.nodes_of(one) {
            for b in self.nodes_of(two) {
                let (first, second) = (self.nodes[a], self.nodes[b]);
                if first.low - second.high <= CLIFF && second.low - first.high <= CLIFF {
                    let (a, b) = (root(parent, a as u32), root(parent, b as u32));
                    parent[a.max(b) as usize] = a.min(b);
                }
            }
        }
    }

    /// Looks around from every node of a patch.
    fn stands_alone(&self, nodes: &[usize], patch_of: &[u32]) -> bool {
        let (mut drops, mut holds, mut nowhere) = (0_u64, 0_u64, 0_u64);
        for &node in nodes {
            let own = patch_of[node];
            let from = self.nodes[node];
            let at = self.columns[from.column];
            for other in self.nodes_of(from.column).filter(|&n| patch_of[n] != own) {
                if self.nodes[other].high < from.low { drops += 1 } else { holds += 1 }
            }
            for (down, right) in [(-1, 0), (-1, 1), (0, 1), (1, 1), (1, 0), (1, -1), (0, -1), (-1, -1)] {
                let hit = (1..=SIGHT).find_map(|step| {
                    let (row, col) = (at.row + down * step, at.col + right * step);
                    self.stretch(row, col, col).next()
                });
                match hit {
                    None => nowhere += 1,
                    Some(column) if self.nodes_of(column).any(|n| patch_of[n] == own) => {}
                    Some(column) => {
                        let level = self.nodes_of(column).any(|n| self.nodes[n].high >= from.low - CLIFF);
                        if level { holds += 1 } else { drops += 1 }
                    }
                }
            }
        }
        drops > 0 && holds * 20 <= drops + holds && nowhere <= drops
    }
}

/// Nodes joined to patches.
struct Patches {
    /// For every node the first node of its patch.
    of: Vec<u32>,
    /// At the first node of a patch, how many it has.
    sizes: Vec<u32>,
}

impl Patches {
    fn of(mut parent: Vec<u32>) -> Self {
        let mut sizes = vec![0; parent.len()];
        for node in 0..parent.len() {
            let first = root(&mut parent, node as u32);
            parent[node] = first;
            sizes[first as usize] += 1;
        }
        Self { of: parent, sizes }
    }
}

fn root(parent: &mut [u32], mut node: u32) -> u32 {
    while parent[node as usize] != node {
        parent[node as usize] = parent[parent[node as usize] as usize];
        node = parent[node as usize];
    }
    node
}

#[cfg(test)]
mod tests {
    use super::*;

    /// By the definition: every pair of nodes in reach, until nothing changes.
    fn by_definition(ground: &Ground) -> Vec<usize> {
        let mut of: Vec<usize> = (0..ground.nodes.len()).collect();
        let close = |a: usize, b: usize| {
            let (one, two) = (ground.nodes[a], ground.nodes[b]);
            let [p, q] = [one, two].map(|n| ground.columns[n.column]);
            let near = p.row.abs_diff(q.row).max(p.col.abs_diff(q.col)) <= REACH.unsigned_abs();
            one.column != two.column && near && one.low - two.high <= CLIFF && two.low - one.high <= CLIFF
        };
        loop {
            let before = of.clone();
            for a in 0..of.len() {
                for b in (0..of.len()).filter(|&b| close(a, b)) {
                    let first = of[a].min(of[b]);
                    (of[a], of[b]) = (first, first);
                }
            }
            if of == before {
                return of;
            }
        }
    }

    #[test]
    fn small_patches_are_those_of_the_definition() {
        let mut state = 0x0D0B_7F01_u64;
        let mut roll = |n: u64| {
            state = state.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
            (state >> 33) % n
        };
        let (mut large, mut small) = (0, 0);
        for round in 0..40 {
            let holes = 1 + round % 4;
            let mut columns = Vec::new();
            for (row, col) in (0..14).flat_map(|r| (0..16).map(move |c| (r, c))) {
                if roll(4) >= holes {
                    let low = (roll(4) * 3) as f64 + roll(10) as f64 / 10.0;
                    let high = low + if roll(6) == 0 { 5.0 } else { 0.1 };
                    columns.push(Column { row, col, points: 2, low, high });
                }
            }
            let ground = Ground::of(columns);
            for most in [1, 3, 20] {
                let patches = ground.patches(|nodes| nodes <= most);
                let expected = by_definition(&ground);
                for (node, &first) in expected.iter().enumerate() {
                    let size = expected.iter().filter(|&&f| f == first).count() as u32;
                    let got = patches.of[node];
                    assert_eq!(patches.sizes[got as usize] <= most, size <= most, "round {round}, node {node}");
                    if size <= most {
                        assert_eq!((got as usize, patches.sizes[got as usize]), (first, size));
                        small += 1;
                    } else {
                        large += 1;
                    }
                }
            }
        }
        assert!(small > 500 && large > 500, "{small} nodes in small patches, {large} in large ones");
    }
}
