//! A cut through the site along a course.

use crate::{Body, Ground, Thing};
use geometry::DVec2;

/// A cut: ground and things along a course.
#[derive(Debug, Clone, PartialEq)]
pub struct Cut {
    /// Stations in order.
    pub stations: Vec<Station>,
}

/// One place of a cut.
#[derive(Debug, Clone, PartialEq)]
pub struct Station {
    /// Distance along the course, m.
    pub along: f64,
    /// Place in plan, m.
    pub at: DVec2,
    /// Ground height, m; `None` where not known.
    pub ground: Option<f64>,
    /// Accuracy of that height, m.
    pub accuracy: Option<f64>,
    /// Things over this place: index, underside (`None`: from the ground up), top (`None`: not known), m.
    pub things: Vec<(usize, Option<f64>, Option<f64>)>,
}

/// Cuts along `course` with a station at least every `step` m and at each corner.
pub fn profile(ground: &Ground, things: &[Thing], course: &[DVec2], step: f64) -> Cut {
    let mut stations = Vec::new();
    let mut along = 0.0;
    for w in course.windows(2) {
        let length = w[0].distance(w[1]);
        let pieces = (length / step.max(0.01)).ceil().clamp(1.0, 100_000.0) as usize;
        let first = usize::from(!stations.is_empty());
        for i in first..=pieces {
            let t = i as f64 / pieces as f64;
            stations.push(station(ground, things, w[0].lerp(w[1], t), along + length * t));
        }
        along += length;
    }
    Cut { stations }
}

fn station(ground: &Ground, things: &[Thing], at: DVec2, along: f64) -> Station {
    let known = ground.height(at);
    let over = things.iter().enumerate().filter_map(|(i, t)| {
        let (low, high) = t.bounds()?;
        (at.cmpge(low).all() && at.cmple(high).all()).then(|| over(t, at).map(|(base, top)| (i, base, top)))?
    });
    Station { along, at, ground: known.map(|k| k.0), accuracy: known.map(|k| k.1.accuracy), things: over.collect() }
}

/// Underside and top of a thing over a place; `None` if it does not stand there.
pub(crate) fn over(thing: &Thing, at: DVec2) -> Option<(Option<f64>, Option<f64>)> {
    match &thing.body {
        Body::Upright { shape, base, top } => shape.contains(at).then_some((*base, *top)),
        Body::Columns(c) => {
            let cell = ((at - c.south_west) / c.cell).floor();
            let inside = cell.x >= 0.0 && cell.y >= 0.0 && (cell.x as usize) < c.cols && (cell.y as usize) < c.rows;
            let top = inside.then(|| c.tops[cell.y as usize * c.cols + cell.x as usize])?;
            top.is_finite().then(|| (None, Some(f64::from(top))))
        }
    }
}
