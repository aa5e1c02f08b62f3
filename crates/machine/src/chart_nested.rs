//! Charts drawn as load lines, one inside the other: "inside this line up to X".
//!
//! Where outlines overlap the higher capacity counts; their borders take the lower, as everywhere.
//! A line of a higher capacity lies inside the lines of the next lower one, except for drawing error.
//! Lines become zones without overlap or holes that share their corners exactly.

use crate::Zone;
use crate::chart_faults::{SLIVER, middle, outline_of, polygon};
use crate::chart_split::without_holes;
use geo::{Area, BooleanOps, LineString, MultiPolygon, Polygon};
use geometry::DVec2;

/// Corners nearer than this are the same, m: far more than the rounding of the cuts.
const SAME: f64 = 1e-6;

/// Pieces smaller than this are rounding, m². Narrow ones that are larger stay: their lower capacity counts.
const SPECK: f64 = 1e-5;

/// What is wrong with nested load lines.
#[derive(Debug, Clone, PartialEq)]
pub enum NestedFault {
    /// Line `line` has more capacity than the lines around it and leaves them.
    Leaves {
        /// Index of the line.
        line: usize,
        /// Index of a line that it leaves.
        lower: usize,
        /// Area outside, m².
        area: f64,
        /// A point of it, (reach, height), m.
        at: DVec2,
    },
    /// The area between line `line` and those inside it cannot be cut into plain outlines.
    Uncut {
        /// Index of the line.
        line: usize,
    },
}

/// The zones of nested load lines, each with the index of the line it comes from; or everything wrong
/// with the lines. Outlines that cross themselves are for [`crate::outline_is_bad`].
pub fn nested_zones(lines: &[Zone]) -> Result<Vec<(usize, Zone)>, Vec<NestedFault>> {
    let mut faults = Vec::new();
    let mut steps: Vec<f64> = lines.iter().map(|l| l.capacity.value).collect();
    steps.sort_by(f64::total_cmp);
    steps.dedup();
    // From the outermost inward, each cut to what lies around it: a drawing error gives no more reach.
    let mut inside: Vec<MultiPolygon<f64>> = vec![MultiPolygon::new(Vec::new()); lines.len()];
    let mut around: Option<(MultiPolygon<f64>, usize)> = None;
    for step in &steps {
        let of_step = || lines.iter().enumerate().filter(|(_, l)| l.capacity.value == *step);
        for (i, line) in of_step() {
            let whole = MultiPolygon::new(vec![polygon(&line.outline)]);
            inside[i] = whole.clone();
            let Some((lower, first)) = &around else { continue };
            let beyond = whole.difference(lower);
            if beyond.unsigned_area() > 1e-9 {
                if let Some(piece) = beyond.iter().find(|p| is_wide(p)) {
                    let (area, at) = (beyond.unsigned_area(), middle(piece.exterior()));
                    faults.push(NestedFault::Leaves { line: i, lower: *first, area, at });
                }
                inside[i] = whole.intersection(lower);
            }
        }
        let union = geo::unary_union(of_step().flat_map(|(i, _)| inside[i].iter()));
        around = of_step().next().map(|(i, _)| (union, i));
    }
    if !faults.is_empty() {
        return Err(faults);
    }
    let mut pieces: Vec<(usize, Polygon<f64>)> = Vec::new();
    for (i, line) in lines.iter().enumerate() {
        let higher = lines.iter().zip(&inside).filter(|(l, _)| l.capacity.value > line.capacity.value);
        let higher = geo::unary_union(higher.flat_map(|(_, m)| m.iter()));
        let rest = if higher.0.is_empty() { inside[i].clone() } else { inside[i].difference(&higher) };
        pieces.extend(rest.into_iter().filter(|p| p.unsigned_area() > SPECK).map(|p| (i, p)));
    }
    let mut corners = Corners::new(lines);
    let rings: Vec<(usize, Vec<Vec<DVec2>>)> = pieces
        .iter()
        .map(|(i, p)| (*i, std::iter::once(p.exterior()).chain(p.interiors()).map(|r| corners.ring(r)).collect()))
        .collect();
    let mut out = Vec::new();
    for (i, rings) in rings {
        let rings: Vec<Vec<DVec2>> =
            rings.iter().map(|r| without_spikes(corners.on_edges(r))).filter(|r| r.len() >= 3).collect();
        let Some(plain) = without_holes(rings) else {
            faults.push(NestedFault::Uncut { line: i });
            continue;
        };
        out.extend(plain.into_iter().map(|outline| (i, outline)));
    }
    if faults.is_empty() { Ok(named(lines, out)) } else { Err(faults) }
}

/// The ring without parts that go out and back the same way: cuts along shared edges leave such, as
/// thin as a rounding.
fn without_spikes(mut ring: Vec<DVec2>) -> Vec<DVec2> {
    let turns_back = |ring: &[DVec2], i: usize| {
        let n = ring.len();
        let (before, at, after) = (ring[(i + n - 1) % n], ring[i], ring[(i + 1) % n]);
        let (into, out) = (at - before, after - at);
        into.perp_dot(out).abs() <= SAME * into.length().max(out.length()) && into.dot(out) <= 0.0
    };
    while ring.len() >= 3 {
        let Some(i) = (0..ring.len()).find(|i| turns_back(&ring, *i)) else { break };
        ring.remove(i);
        ring.dedup();
        while ring.len() > 1 && ring.first() == ring.last() {
            ring.pop();
        }
    }
    ring
}

/// Zones with the name of their line, numbered where a line gives several.
fn named(lines: &[Zone], outlines: Vec<(usize, Vec<DVec2>)>) -> Vec<(usize, Zone)> {
    let count = |line: usize| outlines.iter().filter(|(i, _)| *i == line).count();
    let counts: Vec<usize> = (0..lines.len()).map(count).collect();
    let mut given = vec![0; lines.len()];
    let zone = |(i, outline): (usize, Vec<DVec2>)| {
        given[i] += 1;
        let line = &lines[i];
        let name = if counts[i] > 1 { format!("{} ({})", line.name, given[i]) } else { line.name.clone() };
        (i, Zone { name, capacity: line.capacity, outline })
    };
    outlines.into_iter().map(zone).collect()
}

/// Wider than a drawing error.
fn is_wide(p: &Polygon<f64>) -> bool {
    let length: f64 = p.exterior().lines().map(|l| libm::hypot(l.dx(), l.dy())).sum();
    p.unsigned_area() > SLIVER * length * 0.5
}

/// Corners of all zones; those that rounding set apart become one.
struct Corners {
    all: Vec<DVec2>,
}

impl Corners {
    fn new(lines: &[Zone]) -> Self {
        Self { all: lines.iter().flat_map(|l| l.outline.iter().copied()).collect() }
    }

    fn ring(&mut self, ring: &LineString<f64>) -> Vec<DVec2> {
        let mut out: Vec<DVec2> = Vec::new();
        for p in outline_of(ring) {
            let known = self.all.iter().find(|q| q.distance_squared(p) <= SAME * SAME).copied();
            let corner = known.unwrap_or_else(|| {
                self.all.push(p);
                p
            });
            if out.last() != Some(&corner) {
                out.push(corner);
            }
        }
        while out.len() > 1 && out.first() == out.last() {
            out.pop();
        }
        out
    }

    /// The ring with every known corner that lies on one of its edges.
    fn on_edges(&self, ring: &[DVec2]) -> Vec<DVec2> {
        let mut out = Vec::new();
        for (a, b) in crate::chart_polygon::edges(ring) {
            out.push(a);
            let d = b - a;
            let length = d.length();
            if length <= SAME {
                continue;
            }
            let mut on: Vec<(f64, DVec2)> = self
                .all
                .iter()
                .filter_map(|p| {
                    let along = (*p - a).dot(d) / length;
                    let off = (*p - a).perp_dot(d) / length;
                    (off.abs() <= SAME && along > SAME && along < length - SAME).then_some((along, *p))
                })
                .collect();
            on.sort_by(|p, q| p.0.total_cmp(&q.0));
            on.dedup_by(|p, q| p.1 == q.1);
            out.extend(on.into_iter().map(|(_, p)| p));
        }
        out
    }
}
