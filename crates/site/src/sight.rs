//! Whether one point can be seen from another.

use crate::{Distance, Ground, Thing, distance_thing};
use geometry::{Capsule, DVec3, Segment, Solid};

/// What hides a point.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Hidden {
    /// A thing, by index.
    Thing(usize),
    /// The ground, about here.
    Ground(DVec3),
    /// Nobody can tell: the ground, or the height of this thing, is not known.
    CannotTell(Option<usize>),
}

/// How often the ground is looked at along a line of sight, m.
const STEP: f64 = 0.25;

/// A straight line of sight from an eye to a point, both m in the site frame; `None`: in sight.
/// A check of geometry only: dirt, light, mirrors, the machine's own boom and load are not in it.
/// What is within the accuracy of thing or ground hides.
///
/// The thing in which the point itself lies or touches (a landing on a floor) does not hide it from
/// above: the last `near` m before the point are not looked at.
pub fn sight(ground: &Ground, things: &[Thing], eye: DVec3, point: DVec3, near: f64) -> Option<Hidden> {
    let length = eye.distance(point);
    if length <= near {
        return None;
    }
    let end = eye.lerp(point, 1.0 - near / length);
    let ray = Solid::Capsule(Capsule { axis: Segment { a: eye, b: end }, radius: 0.0 });
    let mut unknown = None;
    for (index, thing) in things.iter().enumerate() {
        match distance_thing(&ray, thing) {
            Distance::Metres(d) if d <= thing.accuracy => return Some(Hidden::Thing(index)),
            Distance::HeightUnknown(d) if d <= thing.accuracy => {
                unknown = unknown.or(Some(Hidden::CannotTell(Some(index))));
            }
            _ => {}
        }
    }
    let steps = (eye.distance(end) / STEP).ceil().clamp(1.0, 100_000.0) as usize;
    for i in 1..steps {
        let p = eye.lerp(end, i as f64 / steps as f64);
        match ground.height(p.truncate()) {
            Some((z, source)) if p.z <= z + source.accuracy => return Some(Hidden::Ground(p)),
            Some(_) => {}
            None => unknown = unknown.or(Some(Hidden::CannotTell(None))),
        }
    }
    unknown
}
