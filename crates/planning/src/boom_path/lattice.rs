//! The boom's plane as a graph: lines of equal angle and lines of equal extension, with the angles and extensions of
//! the ends among them, and lanes on which the tool point runs straight.
//!
//! Two lanes start at each end: level back (the line on which forks are pulled out, and on which a load goes
//! straight into an opening), and straight up. They are cut where they cross the lines.

use crate::context::Context;
use crate::movement::Leg;
use crate::posed::tool_point;
use geometry::DVec2;
use machine::{Attachment, BoomPosition, kinematics};
use quantity::Si;

/// How fine the lines are: step of angle (rad) and extension (m).
#[derive(Debug, Clone, Copy)]
pub(crate) struct Fineness {
    pub(crate) angle: f64,
    pub(crate) extension: f64,
    /// True where angle and extension may run together from line to line.
    pub(crate) together: bool,
}

const DEGREE: f64 = core::f64::consts::PI / 180.0;

/// The usual lines; and finer ones where the usual find no way.
pub(crate) const STEPS: [Fineness; 2] = [
    Fineness { angle: 2.0 * DEGREE, extension: 0.25, together: false },
    Fineness { angle: DEGREE, extension: 0.125, together: true },
];

/// How an edge is moved along.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Motion {
    /// Angle alone.
    Angle,
    /// Extension alone.
    Extension,
    /// Both evenly.
    Together,
    /// Tool point straight, along this lane.
    Straight(u8),
}

/// An edge between two nodes.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Edge {
    pub(crate) ends: [u32; 2],
    pub(crate) motion: Motion,
    pub(crate) cost: f64,
}

/// Nodes and edges.
pub(crate) struct Lattice {
    pub(crate) nodes: Vec<BoomPosition>,
    pub(crate) edges: Vec<Edge>,
    /// Edges of each node.
    pub(crate) at: Vec<Vec<u32>>,
    /// Nodes of carry and of the two ends.
    pub(crate) carry: u32,
    pub(crate) ends: [u32; 2],
    /// Radius of the head pin with the boom retracted, m.
    pub(crate) radius: f64,
}

/// A straight way costs more than the same in angle and extension one after the other, which is simpler to do. At
/// least the square root of two, so that the estimate of what is left is never too much.
const STRAIGHT: f64 = 1.5;

impl Lattice {
    /// Lines through carry and both ends.
    pub(crate) fn new(
        ctx: &Context<'_>,
        attachment: &Attachment,
        carry: BoomPosition,
        ends: [BoomPosition; 2],
        fine: Fineness,
    ) -> Self {
        let boom = &ctx.machine.boom;
        let fixed = [carry, ends[0], ends[1]];
        let angles = lines((boom.angle_min.si(), boom.angle_max.si()), fine.angle, fixed.map(|b| b.angle));
        let extensions = lines((0.0, boom.extension_max.si()), fine.extension, fixed.map(|b| b.extension));
        let (n, m) = (angles.len(), extensions.len());
        let mut nodes = Vec::with_capacity(n * m + 400);
        for angle in &angles {
            nodes.extend(extensions.iter().map(|e| BoomPosition {
                angle: *angle,
                extension: *e,
                fork_tilt: carry.fork_tilt,
            }));
        }
        let node = |i: usize, k: usize| (i * m + k) as u32;
        let of = |b: BoomPosition| {
            let place = |list: &[f64], x: f64| list.iter().position(|l| *l >= x).unwrap_or(list.len() - 1);
            node(place(&angles, b.angle), place(&extensions, b.extension))
        };
        let mut made = Self {
            carry: of(carry),
            ends: ends.map(of),
            radius: libm::hypot(boom.head_along, boom.head_below),
            nodes,
            edges: Vec::with_capacity(4 * n * m),
            at: Vec::new(),
        };
        let arc =
            |i: usize, j: usize, e: f64| (angles[j] - angles[i]) * libm::hypot(boom.head_along + e, boom.head_below);
        for i in 0..n {
            for k in 0..m {
                if k + 1 < m {
                    made.edge([node(i, k), node(i, k + 1)], Motion::Extension, extensions[k + 1] - extensions[k]);
                }
                if i + 1 < n {
                    made.edge([node(i, k), node(i + 1, k)], Motion::Angle, arc(i, i + 1, extensions[k]));
                }
                if fine.together && i + 1 < n && k + 1 < m {
                    let cost = arc(i, i + 1, extensions[k + 1]) + extensions[k + 1] - extensions[k];
                    made.edge([node(i, k), node(i + 1, k + 1)], Motion::Together, cost);
                    made.edge([node(i, k + 1), node(i + 1, k)], Motion::Together, cost);
                }
            }
        }
        for (lane, (end, up)) in [(0, false), (0, true), (1, false), (1, true)].into_iter().enumerate() {
            made.lane(ctx, attachment, lane as u8, end, up, [&angles, &extensions]);
        }
        made.at = vec![Vec::with_capacity(5); made.nodes.len()];
        for (i, edge) in made.edges.iter().enumerate() {
            for end in edge.ends {
                made.at[end as usize].push(i as u32);
            }
        }
        made
    }

    fn edge(&mut self, ends: [u32; 2], motion: Motion, cost: f64) {
        self.edges.push(Edge { ends, motion, cost });
    }

    /// Nodes and edges of a lane from an end, as far as angle and extension go.
    fn lane(
        &mut self,
        ctx: &Context<'_>,
        attachment: &Attachment,
        lane: u8,
        end: usize,
        up: bool,
        [angles, extensions]: [&[f64]; 2],
    ) {
        const PROBE: f64 = 0.05;
        let from = self.nodes[self.ends[end] as usize];
        let tool = tool_point(ctx, attachment, from);
        let (sin, cos) = libm::sincos(from.fork_tilt);
        let along = if up { DVec2::new(-sin, cos) } else { DVec2::new(-cos, -sin) };
        let at = |d: f64| {
            let to = DVec2::new(tool.x, tool.z) + along * d;
            kinematics::position_for(&ctx.machine.boom, attachment, to, from.fork_tilt).ok()
        };
        let m = extensions.len();
        let (mut last, mut last_at) = (self.ends[end], 0.0);
        let (mut near, mut passed) = (from, 0.0);
        while let Some(far) = at(passed + PROBE) {
            let until = passed + PROBE;
            let mut cuts: Vec<(f64, bool, usize)> = Vec::new();
            let mut cut = |list: &[f64], of: fn(&BoomPosition) -> f64, angle: bool| {
                let (a, b) = (of(&near), of(&far));
                for (i, line) in list.iter().enumerate() {
                    if (a - line) * (b - line) < 0.0 {
                        let (mut low, mut high) = (passed, until);
                        for _ in 0..40 {
                            let middle = f64::midpoint(low, high);
                            let before = at(middle).is_some_and(|p| (of(&p) - line) * (a - line) > 0.0);
                            if before { low = middle } else { high = middle }
                        }
                        cuts.push((low, angle, i));
                    }
                }
            };
            cut(angles, |b| b.angle, true);
            cut(extensions, |b| b.extension, false);
            cuts.sort_by(|p, q| p.0.total_cmp(&q.0));
            for (d, angle, i) in cuts {
                let Some(mut here) = at(d) else { continue };
                // On the line to the last digit.
                if angle {
                    here.angle = angles[i];
                } else {
                    here.extension = extensions[i];
                }
                let id = self.nodes.len() as u32;
                self.nodes.push(here);
                self.edge([last, id], Motion::Straight(lane), (d - last_at) * STRAIGHT);
                (last, last_at) = (id, d);
                let list = if angle { extensions } else { angles };
                let value = if angle { here.extension } else { here.angle };
                let above = list.iter().position(|l| *l > value).unwrap_or(list.len());
                for k in [above.checked_sub(1), (above < list.len()).then_some(above)].into_iter().flatten() {
                    let (row, column) = if angle { (i, k) } else { (k, i) };
                    let other = (row * m + column) as u32;
                    let there = self.nodes[other as usize];
                    let boom = &ctx.machine.boom;
                    let radius = libm::hypot(boom.head_along + here.extension, boom.head_below);
                    let (motion, cost) = if angle {
                        (Motion::Extension, (there.extension - here.extension).abs())
                    } else {
                        (Motion::Angle, (there.angle - here.angle).abs() * radius)
                    };
                    self.edge([id, other], motion, cost);
                }
            }
            (near, passed) = (far, until);
        }
    }

    /// Never more than what is left to carry, m.
    pub(crate) fn estimate(&self, node: u32) -> f64 {
        let (a, b) = (self.nodes[node as usize], self.nodes[self.carry as usize]);
        (a.angle - b.angle).abs() * self.radius + (a.extension - b.extension).abs()
    }

    /// The edge as a leg, from one of its ends to the other.
    pub(crate) fn leg(&self, ctx: &Context<'_>, attachment: &Attachment, edge: &Edge) -> Leg {
        let [a, b] = edge.ends.map(|i| self.nodes[i as usize]);
        match edge.motion {
            Motion::Straight(_) => Leg::straight(ctx, attachment, a, b),
            _ => Leg::Even(a, b),
        }
    }
}

/// Values from low to high no farther apart than `step`, with the fixed ones among them; none so near a fixed one
/// that the edge between them were idle.
fn lines((low, high): (f64, f64), step: f64, fixed: [f64; 3]) -> Vec<f64> {
    let count = ((high - low) / step).ceil().clamp(1.0, 1000.0) as usize;
    let even = (0..=count).map(|i| low + (high - low) * i as f64 / count as f64);
    let mut all: Vec<f64> = even.filter(|v| fixed.iter().all(|f| (f - v).abs() > 0.2 * step)).chain(fixed).collect();
    all.sort_by(f64::total_cmp);
    all.dedup();
    all
}
