//! The cheapest free way from an end to carry: A* over the lattice, in which every edge is proven free before it counts.
//!
//! What an edge costs is the way of the head pin, so that the boom turns while it is retracted: a way that raises,
//! then extends, is cheaper than any other between the same ends. Each change of motion costs besides.
//!
//! Room is known at a node by measuring or by what a neighbour has less the way between (no point moves farther): most
//! nodes in the open are never measured. An edge is free where the mean room of both ends less half the way between is
//! enough; else it is halved. So nothing is jumped, as in [`crate::checks::swept`].

use super::guards::Guards;
use super::lattice::{Lattice, Motion};
use super::sound::Sound;
use crate::context::Context;
use crate::movement::Leg;
use machine::{Attachment, BoomPosition};
use std::cmp::Ordering;
use std::collections::BinaryHeap;

/// Room that must be left over, m: a little more than the check of the whole movement may take off for what it does
/// not resolve.
pub(crate) const LEFT: f64 = 0.012;

/// What a change of motion costs, m of way.
const TURN: f64 = 0.6;

/// Room of the nodes and freedom of the edges of one lattice, kept from search to search.
pub(crate) struct Field<'f> {
    ctx: &'f Context<'f>,
    attachment: &'f Attachment,
    guards: &'f Guards<'f, 'f>,
    pub(crate) lattice: Lattice,
    /// Least room that a node is known to have, and whether it was measured, m.
    room: Vec<(f64, bool)>,
    free: Vec<Known>,
    /// How often room was measured.
    pub(crate) measured: u32,
}

#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Known {
    Not,
    Free,
    Blocked,
}

/// A way through nodes, from the end to carry.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Found {
    /// Boom positions where the motion changes, from carry to the end, both included.
    pub(crate) through: Vec<BoomPosition>,
    /// For each leg between them whether the tool point runs straight.
    pub(crate) straight: Vec<bool>,
}

impl Found {
    fn legs(&self, ctx: &Context<'_>, attachment: &Attachment) -> Vec<Leg> {
        let ends = self.through.iter().zip(self.through.iter().skip(1)).zip(&self.straight);
        let leg = |((from, to), straight): ((&BoomPosition, &BoomPosition), &bool)| {
            if *straight { Leg::straight(ctx, attachment, *from, *to) } else { Leg::Even(*from, *to) }
        };
        ends.map(leg).collect()
    }
}

impl<'f> Field<'f> {
    pub(crate) fn new(
        ctx: &'f Context<'f>,
        attachment: &'f Attachment,
        guards: &'f Guards<'f, 'f>,
        lattice: Lattice,
    ) -> Self {
        let room = vec![(f64::NEG_INFINITY, false); lattice.nodes.len()];
        let free = vec![Known::Not; lattice.edges.len()];
        Self { ctx, attachment, guards, lattice, room, free, measured: 0 }
    }

    fn at(&mut self, node: u32) -> f64 {
        let (known, measured) = self.room[node as usize];
        if measured {
            return known;
        }
        self.measured += 1;
        let left = self.guards.room(self.lattice.nodes[node as usize]).left;
        self.room[node as usize] = (left, true);
        left
    }

    /// True if every point of the edge has room.
    fn is_free(&mut self, edge: u32) -> bool {
        let known = self.free[edge as usize];
        if known != Known::Not {
            return known == Known::Free;
        }
        let free = self.prove(edge);
        self.free[edge as usize] = if free { Known::Free } else { Known::Blocked };
        free
    }

    fn prove(&mut self, edge: u32) -> bool {
        let Lattice { edges, .. } = &self.lattice;
        let edge = edges[edge as usize];
        let leg = self.lattice.leg(self.ctx, self.attachment, &edge);
        let whole = travel(self.ctx, &leg);
        let [a, b] = edge.ends;
        for (from, to) in [(a, b), (b, a)] {
            let rest = self.room[from as usize].0 - whole;
            if rest >= LEFT {
                let known = &mut self.room[to as usize];
                known.0 = if known.1 { known.0 } else { known.0.max(rest) };
                return true;
            }
        }
        let ends = (self.at(a), self.at(b));
        let (ctx, attachment, guards) = (self.ctx, self.attachment, self.guards);
        let measured = &mut self.measured;
        leg_free_between(whole, ends, &mut |t| {
            *measured += 1;
            leg.at(ctx, attachment, t).map_or(f64::NEG_INFINITY, |boom| guards.room(boom).left)
        })
    }

    /// The cheapest way from an end to carry that is free and sound.
    pub(crate) fn way(&mut self, end: usize, sound: &mut Sound<'_>) -> Option<Found> {
        const LAZY: u32 = 3;
        for tries in 0.. {
            sound.weighs = tries >= LAZY;
            let (found, edges) = self.cheapest(end, sound)?;
            if sound.weigh_legs(&found.legs(self.ctx, self.attachment)) {
                return Some(found);
            }
            // Every edge of the way is weighed, so that each try refuses all that fail on it.
            let failing = edges.iter().filter(|edge| !sound.weigh(&self.lattice, **edge)).count();
            if failing == 0 {
                return Some(found);
            }
        }
        None
    }

    fn cheapest(&mut self, end: usize, sound: &mut Sound<'_>) -> Option<(Found, Vec<u32>)> {
        let start = self.lattice.ends[end];
        if self.at(start) < LEFT || self.at(self.lattice.carry) < LEFT {
            return None;
        }
        let kinds = 9;
        let mut best = vec![f64::INFINITY; self.lattice.nodes.len() * kinds];
        let mut from: Vec<Option<(u32, u32)>> = vec![None; best.len()];
        let mut closed = vec![false; best.len()];
        let mut open = BinaryHeap::new();
        let first = Entry { total: self.lattice.estimate(start), cost: 0.0, state: start * kinds as u32 + 8, by: None };
        open.push(first);
        while let Some(entry) = open.pop() {
            let state = entry.state as usize;
            if closed[state] {
                continue;
            }
            if let Some((_, edge)) = entry.by
                && !(self.is_free(edge) && sound.edge(&self.lattice, edge))
            {
                continue;
            }
            closed[state] = true;
            from[state] = entry.by;
            let node = entry.state / kinds as u32;
            if node == self.lattice.carry {
                return Some(self.found(entry.state, &from, kinds as u32));
            }
            for edge in &self.lattice.at[node as usize] {
                if self.free[*edge as usize] == Known::Blocked || sound.refused(*edge) {
                    continue;
                }
                let e = &self.lattice.edges[*edge as usize];
                let forward = e.ends[0] == node;
                let to = if forward { e.ends[1] } else { e.ends[0] };
                let motion = kind(e.motion, &self.lattice.nodes[node as usize], &self.lattice.nodes[to as usize]);
                let turns = entry.by.is_some() && motion != entry.state % kinds as u32;
                let cost = entry.cost + e.cost + if turns { TURN } else { 0.0 };
                let state = to * kinds as u32 + motion;
                if cost < best[state as usize] && !closed[state as usize] {
                    // Not proven free yet: a dearer way to the same state must stay in the queue.
                    let by = Some((entry.state, *edge));
                    open.push(Entry { total: cost + self.lattice.estimate(to), cost, state, by });
                    if self.free[*edge as usize] == Known::Free && sound.known(*edge) {
                        best[state as usize] = cost;
                    }
                }
            }
        }
        None
    }

    /// The way back through the states, joined where the motion stays the same, and its edges.
    fn found(&self, last: u32, from: &[Option<(u32, u32)>], kinds: u32) -> (Found, Vec<u32>) {
        let node = |state: u32| self.lattice.nodes[(state / kinds) as usize];
        let (mut through, mut straight, mut edges) = (vec![node(last)], Vec::new(), Vec::new());
        let mut state = last;
        let mut motion = None;
        while let Some((before, edge)) = from[state as usize] {
            let here = state % kinds;
            let by = self.lattice.edges[edge as usize].motion;
            // Steps of both together are not in one line with each other.
            let turns = motion != Some(here) || by == Motion::Together;
            if turns && motion.is_some() {
                through.push(node(state));
            }
            if turns {
                straight.push(matches!(by, Motion::Straight(_)));
            }
            edges.push(edge);
            motion = Some(here);
            state = before;
        }
        through.push(node(state));
        (Found { through, straight }, edges)
    }

    /// The same way with fewer turns where angle and extension run together in one leg that is free and sound.
    pub(crate) fn shortened(&self, found: Found, sound: &Sound<'_>) -> Found {
        if found.through.len() <= 3 {
            return found;
        }
        let mut short = Found { through: vec![found.through[0]], straight: Vec::new() };
        let mut i = 0;
        while i + 1 < found.through.len() {
            let good = |k: usize| {
                let leg = Leg::Even(found.through[i], found.through[k]);
                leg_free(self.ctx, self.attachment, self.guards, &leg, LEFT) && sound.leg(&leg)
            };
            // From one end to the next it stays as found.
            let far = ((i + 2)..found.through.len()).rev().find(|k| good(*k));
            let next = far.unwrap_or(i + 1);
            short.straight.push(far.is_none() && found.straight[i]);
            short.through.push(found.through[next]);
            i = next;
        }
        short
    }
}

/// Direction of a motion as a small number: a turn is where it changes.
fn kind(motion: Motion, from: &BoomPosition, to: &BoomPosition) -> u32 {
    let up = u32::from(to.angle > from.angle);
    let out = u32::from(to.extension > from.extension);
    match motion {
        Motion::Angle => up,
        Motion::Extension => 2 + out,
        // Whichever way: each step of it is short, and words for it are the same.
        Motion::Together => 4,
        Motion::Straight(lane) => 5 + u32::from(lane % 2),
    }
}

/// Farthest that any point of boom or load moves on the leg, m. Head, carriage and load keep their tilt: they move with
/// the head pin, no point of the boom moves farther, and a hung load hangs straight down from its hook.
fn travel(ctx: &Context<'_>, leg: &Leg) -> f64 {
    let boom = &ctx.machine.boom;
    let longest = match leg {
        Leg::Even(a, b) => a.extension.max(b.extension),
        Leg::Straight { .. } => 0.0,
    };
    leg.travel(0.0, 1.0, libm::hypot(boom.head_along + longest, boom.head_below))
}

/// True if the leg is proven to have room from one end to the other.
pub(crate) fn leg_free(
    ctx: &Context<'_>,
    attachment: &Attachment,
    guards: &Guards<'_, '_>,
    leg: &Leg,
    left: f64,
) -> bool {
    let mut at =
        |t: f64| leg.at(ctx, attachment, t).map_or(f64::NEG_INFINITY, |boom| guards.room(boom).left - left + LEFT);
    let ends = (at(0.0), at(1.0));
    leg_free_between(travel(ctx, leg), ends, &mut at)
}

fn leg_free_between(whole: f64, ends: (f64, f64), at: &mut dyn FnMut(f64) -> f64) -> bool {
    let mut stack = vec![(0.0, ends.0, 1.0, ends.1)];
    while let Some((t0, d0, t1, d1)) = stack.pop() {
        // What is no number is no room.
        if !(d0 >= LEFT && d1 >= LEFT) {
            return false;
        }
        let moved = whole * (t1 - t0);
        if (d0 + d1 - moved) / 2.0 >= LEFT {
            continue;
        }
        // Room that has all but gone between two places so near is not there.
        if moved < 0.002 {
            return false;
        }
        let middle = f64::midpoint(t0, t1);
        let d = at(middle);
        stack.push((t0, d0, middle, d));
        stack.push((middle, d, t1, d1));
    }
    true
}

/// A state in the queue: the cheapest first, among equals the earlier number.
struct Entry {
    total: f64,
    cost: f64,
    state: u32,
    by: Option<(u32, u32)>,
}

impl PartialEq for Entry {
    fn eq(&self, other: &Self) -> bool {
        self.cmp(other) == Ordering::Equal
    }
}

impl Eq for Entry {}

impl PartialOrd for Entry {
    fn partial_cmp(&self, other: &Self) -> Option<Ordering> {
        Some(self.cmp(other))
    }
}

impl Ord for Entry {
    fn cmp(&self, other: &Self) -> Ordering {
        let by = |e: &Self| e.by.map_or(u64::MAX, |(state, edge)| u64::from(state) << 32 | u64::from(edge));
        other
            .total
            .total_cmp(&self.total)
            .then_with(|| other.state.cmp(&self.state))
            .then_with(|| by(other).cmp(&by(self)))
    }
}
