//! A route as the picture reads it: only what is a number, stretches by gear, and the places that carry a number.

use crate::site_plan::sound;
use geometry::DVec2;
use planning::route::{Gear, RouteMargin, RoutePlan, Steering};
use quantity::Dimension;

/// A place on the way.
#[derive(Debug, Clone, Copy)]
pub(super) struct Place {
    pub(super) along: f64,
    pub(super) at: DVec2,
    /// Straight ahead of the machine, east and north.
    pub(super) ahead: DVec2,
    pub(super) height: f64,
    /// Low, nominal, high; rise over run.
    pub(super) slope_along: [f64; 3],
    pub(super) slope_across: [f64; 3],
    pub(super) speed: f64,
    pub(super) gear: Gear,
}

/// What changes at a numbered place.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Change {
    Begins,
    Gear(Gear),
    Steering(Steering),
    Ends,
}

/// Where the least of a kind is left.
#[derive(Debug, Clone)]
pub(super) struct Least {
    pub(super) margin: RouteMargin,
    pub(super) at: DVec2,
}

pub(super) struct Course {
    pub(super) places: Vec<Place>,
    /// Places with a number, in order: what changes there, and the index of the place.
    pub(super) numbered: Vec<(Change, usize)>,
    /// The machine's parts in its own frame.
    pub(super) outline: Vec<Vec<DVec2>>,
    pub(super) swept: Vec<Vec<DVec2>>,
    /// The least room to something, and the least that is left of slope or tilt.
    pub(super) room: Option<Least>,
    pub(super) ground: Option<Least>,
    pub(super) load: Option<String>,
    pub(super) length: f64,
    pub(super) reversed: f64,
    pub(super) gear_changes: usize,
    pub(super) time: f64,
}

impl Course {
    pub(super) fn of(route: &RoutePlan) -> Self {
        let mut places: Vec<Place> = Vec::with_capacity(route.profile.len());
        for s in &route.profile {
            let (sin, cos) = libm::sincos(s.heading_deg.to_radians());
            let triple = |r: &evidence::Ranged| [r.low, r.nominal, r.high];
            let place = Place {
                along: s.along_m,
                at: DVec2::from(s.at),
                ahead: DVec2::new(sin, cos),
                height: s.height_m,
                slope_along: triple(&s.slope_along),
                slope_across: triple(&s.slope_across),
                speed: s.speed_m_s,
                gear: s.gear,
            };
            let numbers = [place.along, place.height, place.speed, sin, cos];
            let whole = numbers.iter().chain(&place.slope_along).chain(&place.slope_across).all(|v| v.is_finite());
            // What goes back along the way is no place on it.
            let onward = places.last().is_none_or(|last| place.along >= last.along);
            if whole && onward && place.along.abs() < 1e6 && place.height.abs() < 1e6 && sound(place.at) {
                places.push(place);
            }
        }
        let rings = |rings: &[Vec<[f64; 2]>]| -> Vec<Vec<DVec2>> {
            let points = rings.iter().map(|ring| ring.iter().map(|p| DVec2::from(*p)).collect::<Vec<_>>());
            points.filter(|ring| ring.len() > 2 && ring.iter().all(|p| sound(*p))).collect()
        };
        let least = |room: bool| {
            let of = route.margins.iter().filter(|m| (m.left.dimension == Dimension::Length) == room);
            let whole = of.filter(|m| m.left.si.is_finite() && m.along_m.is_finite() && sound(DVec2::from(m.at)));
            whole
                .min_by(|a, b| a.left.si.total_cmp(&b.left.si))
                .map(|m| Least { margin: m.clone(), at: DVec2::from(m.at) })
        };
        Self {
            numbered: numbered(route, &places),
            places,
            outline: rings(&route.outline),
            swept: rings(&route.swept),
            room: least(true),
            ground: least(false),
            load: route.load.clone(),
            length: route.length_m,
            reversed: route.reversed_m,
            gear_changes: route.gear_changes,
            time: route.time_s,
        }
    }

    /// The machine's parts at a place, on site.
    pub(super) fn machine_at(&self, place: &Place) -> Vec<Vec<DVec2>> {
        let left = place.ahead.perp();
        let put = |p: &DVec2| place.at + place.ahead * p.x + left * p.y;
        self.outline.iter().map(|ring| ring.iter().map(put).collect()).collect()
    }

    /// Stretches driven in one gear, each with the place where the one before ended.
    pub(super) fn stretches(&self) -> Vec<(Gear, Vec<&Place>)> {
        let mut out: Vec<(Gear, Vec<&Place>)> = Vec::new();
        for (i, place) in self.places.iter().enumerate() {
            match out.last_mut().filter(|(gear, _)| *gear == place.gear) {
                Some((_, run)) => run.push(place),
                None => {
                    let before = i.checked_sub(1).map(|k| &self.places[k]);
                    out.push((place.gear, before.into_iter().chain([place]).collect()));
                }
            }
        }
        out
    }
}

/// Where it begins, where gear or steering changes, where it ends.
fn numbered(route: &RoutePlan, places: &[Place]) -> Vec<(Change, usize)> {
    let Some(last) = places.len().checked_sub(1) else { return Vec::new() };
    let nearest = |along: f64| {
        (0..places.len()).min_by(|a, b| (places[*a].along - along).abs().total_cmp(&(places[*b].along - along).abs()))
    };
    let mut out = vec![(Change::Begins, 0)];
    let mut along = 0.0;
    for pair in route.legs.windows(2) {
        along += pair[0].length_m;
        let change = if pair[0].gear != pair[1].gear {
            Change::Gear(pair[1].gear)
        } else if pair[0].steering != pair[1].steering {
            Change::Steering(pair[1].steering)
        } else {
            continue;
        };
        out.extend(nearest(along).map(|i| (change, i)));
    }
    out.push((Change::Ends, last));
    out
}
