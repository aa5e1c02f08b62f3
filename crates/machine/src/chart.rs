//! Load charts: capacity zones in (reach, height).

use geometry::DVec2;
use quantity::{Angle, Length, Mass};
use serde::{Deserialize, Serialize};

/// What a load chart says: for one attachment, support state and rated load centre.
#[derive(Debug, Clone)]
pub struct ChartParts {
    /// Id of the attachment it belongs to.
    pub attachment: String,
    /// Support state it belongs to.
    pub support: crate::SupportState,
    /// Rated load centre from the fork face (0 for a hook).
    pub load_centre: Length,
    /// Height of the test load's centre above the forks, where the maker states it.
    pub load_centre_height: Option<Length>,
    /// What reach and height are measured between. No default.
    pub datum: Datum,
    /// How far out of level the chart still holds.
    pub level: LevelTolerance,
    /// Zones with their capacities.
    pub zones: Vec<Zone>,
    /// Areas declared "not permitted": they are not gaps.
    pub not_permitted: Vec<Vec<DVec2>>,
    /// Where it comes from, in words of the file ("plate in the cab").
    pub certainty: evidence::Certainty,
}

/// A load chart, prepared for reading. Its parts are read through it and do not change any more.
#[derive(Debug, Clone)]
pub struct Chart {
    parts: ChartParts,
    index: Index,
}

impl std::ops::Deref for Chart {
    type Target = ChartParts;
    fn deref(&self) -> &ChartParts {
        &self.parts
    }
}

/// What a chart's reach and height are measured between.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Datum {
    /// Where reach starts.
    pub reach_from: ReachFrom,
    /// What point of the load reach is measured to.
    pub reach_to: ReachTo,
    /// What height is measured to (from the ground).
    pub height_to: HeightTo,
}

/// Where reach is measured from.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, schemars::JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum ReachFrom {
    /// Front face of the front tyres, free radius.
    FrontTyreFace,
    /// Middle of the front axle.
    FrontAxle,
}

/// What point of the load reach is measured to.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, schemars::JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum ReachTo {
    /// The fork heel.
    ForkHeel,
    /// The point at the rated load centre.
    LoadCentre,
    /// The hook.
    Hook,
}

/// What height is measured to.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, schemars::JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum HeightTo {
    /// Top face of the forks.
    ForkTop,
    /// The hook.
    Hook,
}

/// How far out of level a chart still holds.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct LevelTolerance {
    /// Sideways.
    pub sideways: Angle,
    /// Fore and aft.
    pub fore_aft: Angle,
}

/// A zone of a chart.
#[derive(Debug, Clone, PartialEq)]
pub struct Zone {
    /// Name for people ("A", "3 t").
    pub name: String,
    /// Capacity anywhere in it.
    pub capacity: Mass,
    /// Corners in order, (reach, height), m. Closed by itself.
    pub outline: Vec<DVec2>,
}

/// A point to be read, with the box it may lie in.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ChartPoint {
    /// Nominal (reach, height), m.
    pub at: DVec2,
    /// Lower corner of the box.
    pub low: DVec2,
    /// Upper corner of the box.
    pub high: DVec2,
}

/// What a chart says of a box.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Reading {
    /// The whole box is covered; the lowest capacity in it and the zone that has it.
    Within {
        /// Lowest capacity, kg.
        capacity_kg: f64,
        /// Index of the zone that governs.
        zone: usize,
    },
    /// Some of the box lies in no zone: not permitted.
    Outside,
}

/// What speeds up reading: bounds of each zone, and the border of all zones together.
#[derive(Debug, Clone, Default)]
struct Index {
    boxes: Vec<(DVec2, DVec2)>,
    border: Vec<(DVec2, DVec2)>,
}

/// Points nearer than this to a border count as on it, m.
const ON_EDGE: f64 = 1e-9;

impl Chart {
    /// Prepares a chart for reading. Whether the zones make sense is for [`crate::chart_problems`].
    pub fn new(parts: ChartParts) -> Self {
        let boxes = parts.zones.iter().map(|z| bounds(&z.outline)).collect();
        let border = crate::chart_faults::border(&parts.zones);
        Self { parts, index: Index { boxes, border } }
    }

    /// x of the datum that reach is measured from, machine frame, m.
    pub fn datum_x(&self, machine: &crate::Machine) -> f64 {
        match self.datum.reach_from {
            ReachFrom::FrontTyreFace => machine.front_face(),
            ReachFrom::FrontAxle => machine.front.x,
        }
    }

    /// How far ahead of the tool point (heel or hook) reach is measured to, m.
    pub fn measured_ahead(&self) -> f64 {
        match self.datum.reach_to {
            ReachTo::LoadCentre => self.load_centre.value,
            ReachTo::ForkHeel | ReachTo::Hook => 0.0,
        }
    }

    /// Lowest capacity in the box of `point`; a zone touched only at its edge counts. The box must
    /// be covered whole: if the border of all zones runs through it, some of it is not permitted.
    /// Declared "not permitted" areas win over zones. Nothing is interpolated.
    pub fn read(&self, point: &ChartPoint) -> Reading {
        let (low, high) = (point.low, point.high);
        if !(low.is_finite() && high.is_finite()) {
            return Reading::Outside;
        }
        if self.not_permitted.iter().any(|area| polygon_meets_box(area, low, high)) {
            return Reading::Outside;
        }
        if self.index.border.iter().any(|&(a, b)| crosses_inside(a, b, low, high)) {
            return Reading::Outside;
        }
        let centre = (low + high) * 0.5;
        let mut centre_covered = false;
        let mut found: Option<(f64, usize)> = None;
        for (i, zone) in self.zones.iter().enumerate() {
            let (zl, zh) = self.index.boxes[i];
            if zl.x > high.x + ON_EDGE || zh.x < low.x - ON_EDGE || zl.y > high.y + ON_EDGE || zh.y < low.y - ON_EDGE {
                continue;
            }
            if polygon_meets_box(&zone.outline, low, high) {
                centre_covered = centre_covered || contains(&zone.outline, centre);
                let capacity = zone.capacity.value;
                if found.is_none_or(|(c, _)| capacity < c) {
                    found = Some((capacity, i));
                }
            }
        }
        match found {
            Some((capacity_kg, zone)) if centre_covered => Reading::Within { capacity_kg, zone },
            _ => Reading::Outside,
        }
    }

    /// Lowest capacity of the zones that the box of `point` touches, where its far side lies on the
    /// chart. For positions passed on the way with the boom retracted: how much *nearer* than the
    /// chart's own border they lie is no question, since the boom gets no nearer; they are read at
    /// the near border at their height.
    pub fn read_on_the_way(&self, point: &ChartPoint) -> Reading {
        let heights = [point.low.y, point.high.y];
        let covered =
            |x: f64| heights.iter().all(|y| self.zones.iter().any(|z| contains(&z.outline, DVec2::new(x, *y))));
        let far = heights.iter().map(|y| self.near_border(*y) + ON_EDGE).fold(point.high.x, f64::max);
        let (low, high) = (point.low, DVec2::new(far, point.high.y));
        let finite = low.is_finite() && high.is_finite();
        if !finite || !covered(far) {
            return Reading::Outside;
        }
        if self.not_permitted.iter().any(|area| polygon_meets_box(area, low, high)) {
            return Reading::Outside;
        }
        let touched = self.zones.iter().enumerate().filter(|(_, z)| polygon_meets_box(&z.outline, low, high));
        let lowest = touched.min_by(|(_, a), (_, b)| a.capacity.value.total_cmp(&b.capacity.value));
        lowest.map_or(Reading::Outside, |(zone, z)| Reading::Within { capacity_kg: z.capacity.value, zone })
    }

    /// Smallest reach at which any zone has the height `y`, m; infinite where none has.
    fn near_border(&self, y: f64) -> f64 {
        let crossings = self.zones.iter().flat_map(|z| edges(&z.outline)).filter_map(|(a, b)| {
            let (low, high) = if a.y <= b.y { (a, b) } else { (b, a) };
            if y < low.y || y > high.y {
                return None;
            }
            let t = if high.y > low.y { (y - low.y) / (high.y - low.y) } else { 0.0 };
            Some(low.x + t * (high.x - low.x))
        });
        crossings.fold(f64::INFINITY, f64::min)
    }
}

impl ChartPoint {
    /// A point without uncertainty.
    pub fn exact(at: DVec2) -> Self {
        Self { at, low: at, high: at }
    }
}

pub(crate) fn bounds(outline: &[DVec2]) -> (DVec2, DVec2) {
    outline.iter().fold((DVec2::INFINITY, DVec2::NEG_INFINITY), |(l, h), p| (l.min(*p), h.max(*p)))
}

fn edges(outline: &[DVec2]) -> impl Iterator<Item = (DVec2, DVec2)> + '_ {
    (0..outline.len()).map(move |i| (outline[i], outline[(i + 1) % outline.len()]))
}

/// True inside or on the edge (crossing number; the edge by distance).
pub(crate) fn contains(outline: &[DVec2], p: DVec2) -> bool {
    let mut inside = false;
    for (a, b) in edges(outline) {
        let d = b - a;
        let t = if d.length_squared() > 0.0 { ((p - a).dot(d) / d.length_squared()).clamp(0.0, 1.0) } else { 0.0 };
        if (a + d * t).distance_squared(p) <= ON_EDGE * ON_EDGE {
            return true;
        }
        if (a.y > p.y) != (b.y > p.y) && p.x < a.x + (p.y - a.y) / (b.y - a.y) * (b.x - a.x) {
            inside = !inside;
        }
    }
    inside
}

/// True if the polygon and the closed box share a point (edges grown by [`ON_EDGE`]).
fn polygon_meets_box(outline: &[DVec2], low: DVec2, high: DVec2) -> bool {
    let grow = DVec2::splat(ON_EDGE);
    edges(outline).any(|(a, b)| clip(a, b, low - grow, high + grow).is_some()) || contains(outline, low)
}

/// True if the segment runs through the box's inside, so that some of the box is not covered. A box
/// without width or height is a line: a segment across it cuts it, one that lies along it is its
/// border. A single point is covered by the zone it lies in or bounds.
fn crosses_inside(a: DVec2, b: DVec2, low: DVec2, high: DVec2) -> bool {
    let size = high - low;
    let flat = |extent: f64| extent <= 2.0 * ON_EDGE;
    if flat(size.x) && flat(size.y) {
        return false;
    }
    let along = |p: f64, q: f64, at: f64| (p - at).abs() <= ON_EDGE && (q - at).abs() <= ON_EDGE;
    if (flat(size.y) && along(a.y, b.y, low.y)) || (flat(size.x) && along(a.x, b.x, low.x)) {
        return false;
    }
    let shrink = DVec2::new(if flat(size.x) { 0.0 } else { ON_EDGE }, if flat(size.y) { 0.0 } else { ON_EDGE });
    clip(a, b, low + shrink, high - shrink).is_some()
}

/// Parameters of the part of a segment inside a closed box (Liang–Barsky).
fn clip(a: DVec2, b: DVec2, low: DVec2, high: DVec2) -> Option<(f64, f64)> {
    if a.x.max(b.x) < low.x || a.x.min(b.x) > high.x || a.y.max(b.y) < low.y || a.y.min(b.y) > high.y {
        return None;
    }
    let d = b - a;
    let (mut t0, mut t1) = (0.0_f64, 1.0_f64);
    for (p, q) in [(-d.x, a.x - low.x), (d.x, high.x - a.x), (-d.y, a.y - low.y), (d.y, high.y - a.y)] {
        if p == 0.0 {
            if q < 0.0 {
                return None;
            }
        } else {
            let r = q / p;
            if p < 0.0 {
                t0 = t0.max(r);
            } else {
                t1 = t1.min(r);
            }
        }
    }
    (t0 <= t1).then_some((t0, t1))
}
