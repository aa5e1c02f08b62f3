//! Finds the things near a part of a machine among many.

use crate::{Distance, Thing, distance_thing, least_distance};
use geometry::{DVec2, DVec3, Solid};
use rstar::{AABB, RTree, RTreeObject};

/// Things of a site by place, for distance queries.
#[derive(Debug, Clone)]
pub struct ThingIndex {
    tree: RTree<Place>,
    /// Largest accuracy of any thing: what a box may be short by.
    slack: f64,
    /// Things that can be anywhere: without extent, or with a number that is none.
    anywhere: Vec<usize>,
    count: usize,
}

#[derive(Debug, Clone)]
struct Place {
    index: usize,
    low: DVec3,
    high: DVec3,
    accuracy: f64,
}

impl Place {
    /// Distance in plan from a point to the box, m; 0 inside.
    fn aside(&self, at: DVec2) -> f64 {
        (self.low.truncate() - at).max(at - self.high.truncate()).max(DVec2::ZERO).length()
    }
}

impl RTreeObject for Place {
    type Envelope = AABB<[f64; 2]>;
    fn envelope(&self) -> Self::Envelope {
        AABB::from_corners([self.low.x, self.low.y], [self.high.x, self.high.y])
    }
}

impl ThingIndex {
    /// An index of these things; queries must be asked with the same list.
    pub fn new(things: &[Thing]) -> Self {
        let places: Vec<Place> = things.iter().enumerate().filter_map(|(i, t)| place(i, t)).collect();
        let slack = places.iter().map(|p| p.accuracy).fold(0.0, f64::max);
        let known = |(i, t): &(usize, &Thing)| t.accuracy.is_finite() && place(*i, t).is_some();
        let anywhere = things.iter().enumerate().filter(|t| !known(t)).map(|(i, _)| i).collect();
        Self { tree: RTree::bulk_load(places), slack, anywhere, count: things.len() }
    }

    /// Indices, rising, of the things of which any part could lie within `reach` m of a point in plan,
    /// with their accuracy. What can be anywhere is always among them: without extent, or with a number
    /// that is none. All of them where place or reach is no number.
    pub fn within(&self, at: DVec2, reach: f64) -> Vec<usize> {
        if !at.is_finite() || !reach.is_finite() {
            return (0..self.count).collect();
        }
        let r = DVec2::splat(reach + self.slack);
        let around = AABB::from_corners((at - r).into(), (at + r).into());
        let near = self.tree.locate_in_envelope_intersecting(&around).filter(|p| p.aside(at) <= reach + p.accuracy);
        let mut found: Vec<usize> = near.map(|p| p.index).chain(self.anywhere.iter().copied()).collect();
        found.sort_unstable();
        found.dedup();
        found
    }

    /// The thing nearest to any of the solids within `reach` m, with the distance after its
    /// accuracy is taken off; `None` where nothing is so near. Equal distances: the earlier in the list.
    pub fn nearest(&self, things: &[Thing], solids: &[Solid], reach: f64) -> Option<(usize, Distance)> {
        let mut best: Option<(usize, Distance)> = None;
        let mut least = reach;
        for solid in solids {
            for place in self.near(solid, least) {
                let bound = least_distance(solid, place.low, place.high) - place.accuracy;
                let earlier = best.is_some_and(|(index, _)| place.index < index);
                if bound > least || (bound == least && !earlier) {
                    continue;
                }
                let found = taken_off(distance_thing(solid, &things[place.index]), place.accuracy);
                let metres = found.metres();
                if metres < least || (metres <= least && best.is_none_or(|(index, _)| place.index < index)) {
                    least = metres;
                    best = Some((place.index, found));
                }
            }
        }
        best
    }

    fn near(&self, solid: &Solid, reach: f64) -> impl Iterator<Item = &Place> {
        let (centre, radius) = solid.bounding_sphere();
        let r = radius + reach + self.slack;
        self.tree.locate_in_envelope_intersecting(&AABB::from_corners(
            [centre.x - r, centre.y - r],
            [centre.x + r, centre.y + r],
        ))
    }
}

fn taken_off(distance: Distance, accuracy: f64) -> Distance {
    let less = |d: f64| (d - accuracy).max(0.0);
    match distance {
        Distance::Metres(d) => Distance::Metres(less(d)),
        Distance::HeightUnknown(d) => Distance::HeightUnknown(less(d)),
    }
}

fn place(index: usize, thing: &Thing) -> Option<Place> {
    let (low, high) = thing.extent()?;
    let known = low.truncate().is_finite() && high.truncate().is_finite();
    known.then_some(Place { index, low, high, accuracy: thing.accuracy })
}
