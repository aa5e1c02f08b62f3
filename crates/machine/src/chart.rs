//! Load charts: capacity zones in (reach, height).

use crate::chart_index::Index;
use crate::chart_polygon::{Edge, ON_EDGE, Window, bounds, contains};
use crate::{Datum, DeratingRow};
use geometry::DVec2;
use quantity::{Angle, Length, Mass};

/// What a load chart says: for one attachment, support state, rated load centre, set of tyres and
/// level condition.
#[derive(Debug, Clone)]
pub struct ChartParts {
    /// Id of the attachment it belongs to.
    pub attachment: String,
    /// Support state it belongs to.
    pub support: crate::SupportState,
    /// Id of the set of tyres it belongs to; `None`: the chart names none.
    pub tyres: Option<String>,
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
    /// The maker's table for load centres beyond the rated one, by rising load centre; may be empty.
    pub derating: Vec<DeratingRow>,
    /// Where it comes from, in words of the file ("plate in the cab").
    pub certainty: evidence::Certainty,
}

/// A chart drawn or read off by hand may be off by this much, m.
pub const DRAWING: f64 = 0.25;

/// A load chart, prepared for reading. Its parts are read through it and do not change any more.
#[derive(Debug, Clone)]
pub struct Chart {
    parts: ChartParts,
    border: Vec<Edge>,
    index: Index,
}

impl std::ops::Deref for Chart {
    type Target = ChartParts;
    fn deref(&self) -> &ChartParts {
        &self.parts
    }
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

impl Chart {
    /// Prepares a chart for reading. Whether the zones make sense is for [`crate::chart_problems`].
    pub fn new(parts: ChartParts) -> Self {
        let border = crate::chart_faults::border(&parts.zones);
        let index = Index::new(&parts.zones, &parts.not_permitted, &border);
        Self { parts, border, index }
    }

    /// Lowest capacity in the box of `point`; a zone touched only at its edge counts. The box must
    /// be covered whole: if the border of all zones runs through it, some of it is not permitted.
    /// Declared "not permitted" areas win over zones. Nothing is interpolated.
    pub fn read(&self, point: &ChartPoint) -> Reading {
        let window = Window::new(point.low, point.high);
        if !(window.low.is_finite() && window.high.is_finite()) {
            return Reading::Outside;
        }
        self.reading(self.index.lowest_covered(&window))
    }

    /// As [`Chart::read`], by a search through every edge of the chart: slow, and the measure for the
    /// index.
    pub fn read_by_search(&self, point: &ChartPoint) -> Reading {
        let window = Window::new(point.low, point.high);
        let finite = window.low.is_finite() && window.high.is_finite();
        if !finite || !self.index.bounds_hold(&window) {
            return Reading::Outside;
        }
        if self.not_permitted.iter().any(|area| window.meets(area)) || self.border.iter().any(|e| window.cut_by(*e)) {
            return Reading::Outside;
        }
        let centre = window.centre();
        let mut centre_covered = false;
        let mut found: Option<(f64, usize)> = None;
        for (i, zone) in self.zones.iter().enumerate() {
            let (zl, zh) = bounds(&zone.outline);
            let apart = zl.x > window.high.x + ON_EDGE
                || zh.x < window.low.x - ON_EDGE
                || zl.y > window.high.y + ON_EDGE
                || zh.y < window.low.y - ON_EDGE;
            if !apart && window.meets(&zone.outline) {
                centre_covered = centre_covered || contains(&zone.outline, centre);
                let capacity = zone.capacity.value;
                if found.is_none_or(|(c, _)| capacity < c) {
                    found = Some((capacity, i));
                }
            }
        }
        self.reading(found.map(|(_, zone)| zone).filter(|_| centre_covered))
    }

    fn reading(&self, zone: Option<usize>) -> Reading {
        zone.map_or(Reading::Outside, |zone| Reading::Within { capacity_kg: self.zones[zone].capacity.value, zone })
    }

    /// Lowest capacity of the zones that the box of `point` touches, where its far side lies on the
    /// chart. For positions passed on the way with the boom retracted: the boom gets no nearer, so
    /// what lies a little short of the chart's near border is read at that border. `boom` is the
    /// farthest reach at which the boom itself may stand, without what the load adds, m: where the
    /// near border lies farther out than that by more than a drawing error, the chart shows nothing
    /// for the retracted boom. Declared "not permitted" areas win over zones.
    pub fn read_on_the_way(&self, point: &ChartPoint, boom: f64) -> Reading {
        let heights = [point.low.y, point.at.y, point.high.y];
        if !heights.iter().all(|y| self.near_border(*y) <= boom + DRAWING) {
            return Reading::Outside;
        }
        let far = heights.iter().map(|y| self.near_border(*y) + ON_EDGE).fold(point.high.x, f64::max);
        let window = Window::new(point.low, DVec2::new(far, point.high.y));
        let finite = window.low.is_finite() && window.high.is_finite();
        if !finite || !heights.iter().all(|y| self.index.any_contains(DVec2::new(far, *y))) {
            return Reading::Outside;
        }
        self.reading(self.index.lowest_touched(&window))
    }

    /// Smallest reach at which any zone has the height `y`, m; infinite where none has.
    fn near_border(&self, y: f64) -> f64 {
        let crossings = self.index.edges_at(y).filter_map(|(a, b)| {
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
