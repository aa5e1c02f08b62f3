//! Lines and arcs that close into an outline become one area.
//!
//! The rule: only LINE and ARC, within one layer and one insert. Ends closer than [`JOIN`] are one
//! node. Only a node where exactly two ends meet joins them: where three meet, nobody knows which
//! two belong together. A chain that comes back to the node where it starts is an area, also where
//! other lines end in that one node; everything else stays as drawn.

use crate::dxf_outline::{Outline, outline};
use crate::dxf_shapes::{Drawn, area_of};
use crate::feature::{PlanPoint, Shape};
use geometry::DVec3;
use std::collections::BTreeMap;

/// Ends closer than this meet, m. Ours: closer than anything is set out on a site.
pub(crate) const JOIN: f64 = 0.005;

fn in_space(p: &PlanPoint) -> DVec3 {
    p.at.extend(p.height.unwrap_or(0.0))
}

/// Shapes after joining.
pub(crate) struct Joined {
    pub(crate) drawn: Vec<Drawn>,
    /// Outlines that were joined.
    pub(crate) count: usize,
    /// Of these, lines of the first edge of those that cross themselves and were cut apart.
    pub(crate) split: Vec<usize>,
}

/// Replaces closed chains by areas at the place of their first edge. All in file units: `near` is
/// the distance at which ends meet, `least` the smallest area. Coordinates must be below 2⁶² times
/// `near`.
pub(crate) fn joined(drawn: Vec<Drawn>, near: f64, least: f64, tests: &mut u64) -> Joined {
    let mut groups: BTreeMap<(&str, u32), Vec<usize>> = BTreeMap::new();
    for (i, d) in drawn.iter().enumerate().filter(|(_, d)| d.chain) {
        groups.entry((&d.feature.layer, d.instance)).or_default().push(i);
    }
    let mut areas: BTreeMap<usize, Vec<Vec<DVec3>>> = BTreeMap::new();
    let mut used = vec![false; drawn.len()];
    for members in groups.values().filter(|m| m.len() >= 2) {
        for chain in closed_chains(&drawn, members, near) {
            let points = chain.iter().flat_map(|&(i, turned)| {
                let Shape::Line(points) = &drawn[i].feature.shape else { return Vec::new() };
                let mut points: Vec<DVec3> = points.iter().map(in_space).collect();
                if turned {
                    points.reverse();
                }
                points
            });
            let parts = match outline(points.collect(), near, least, tests) {
                Outline::Area(corners) => vec![corners],
                Outline::Parts(parts) => parts,
                _ => continue,
            };
            for &(i, _) in &chain {
                used[i] = true;
            }
            if let Some(first) = chain.iter().map(|c| c.0).min() {
                areas.insert(first, parts);
            }
        }
    }
    let count = areas.len();
    let split = areas.iter().filter(|(_, parts)| parts.len() > 1).map(|(&i, _)| drawn[i].feature.place).collect();
    let mut out = Vec::with_capacity(drawn.len());
    for (i, d) in drawn.into_iter().enumerate() {
        if let Some(parts) = areas.remove(&i) {
            out.extend(parts.iter().map(|corners| {
                let mut area = d.clone();
                area.feature.shape = area_of(corners);
                area.chain = false;
                area
            }));
        } else if !used[i] {
            out.push(d);
        }
    }
    Joined { drawn: out, count, split }
}

/// Chains of edges that come back to their start: for each edge its index and whether it runs
/// backwards.
fn closed_chains(drawn: &[Drawn], members: &[usize], near: f64) -> Vec<Vec<(usize, bool)>> {
    let mut nodes = Nodes { near, places: Vec::new(), cells: BTreeMap::new() };
    // Edges between two nodes, and the edges at each node.
    let mut edges = Vec::new();
    for &i in members {
        let Shape::Line(points) = &drawn[i].feature.shape else { continue };
        let (Some(first), Some(last)) = (points.first(), points.last()) else { continue };
        let (a, b) = (nodes.at(in_space(first)), nodes.at(in_space(last)));
        if a != b {
            edges.push((i, a, b));
        }
    }
    let mut at_node: Vec<Vec<usize>> = vec![Vec::new(); nodes.places.len()];
    for (e, &(_, a, b)) in edges.iter().enumerate() {
        at_node[a].push(e);
        at_node[b].push(e);
    }
    let mut walked = vec![false; edges.len()];
    let mut chains = Vec::new();
    for start in 0..edges.len() {
        if walked[start] {
            continue;
        }
        let (first, a, b) = edges[start];
        walked[start] = true;
        let mut onward = |mut edge: usize, mut node: usize, goal: usize| {
            let mut way = Vec::new();
            while node != goal && at_node[node].len() == 2 {
                let next = if at_node[node][0] == edge { at_node[node][1] } else { at_node[node][0] };
                if walked[next] {
                    break;
                }
                walked[next] = true;
                let (i, from, to) = edges[next];
                way.push((i, from != node));
                node = if from == node { to } else { from };
                edge = next;
            }
            (way, node)
        };
        let (ahead, last) = onward(start, b, a);
        let (back, origin) = if last == a { (Vec::new(), a) } else { onward(start, a, last) };
        if last == origin {
            // What was walked backwards stands at the front, turned.
            let mut chain: Vec<(usize, bool)> = back.into_iter().rev().map(|(i, turned)| (i, !turned)).collect();
            chain.push((first, false));
            chain.extend(ahead);
            chains.push(chain);
        }
    }
    chains
}

struct Nodes {
    near: f64,
    places: Vec<DVec3>,
    cells: BTreeMap<[i64; 3], Vec<usize>>,
}

impl Nodes {
    /// The node here, or a new one.
    fn at(&mut self, p: DVec3) -> usize {
        let cell = (p / self.near).floor().to_array().map(|c| c as i64);
        for dx in -1..=1 {
            for dy in -1..=1 {
                for dz in -1..=1 {
                    let key = [cell[0].saturating_add(dx), cell[1].saturating_add(dy), cell[2].saturating_add(dz)];
                    let found = self
                        .cells
                        .get(&key)
                        .into_iter()
                        .flatten()
                        .find(|&&n| (self.places[n] - p).length() <= self.near);
                    if let Some(&node) = found {
                        return node;
                    }
                }
            }
        }
        self.places.push(p);
        self.cells.entry(cell).or_default().push(self.places.len() - 1);
        self.places.len() - 1
    }
}
