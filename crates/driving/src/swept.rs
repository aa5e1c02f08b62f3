//! The ground that a machine passes over.

use crate::clear::FINEST;
use crate::{PlanBox, Route, Vehicle};
use geometry::DVec2;

/// Convex outlines (corners counter-clockwise, m) whose union holds every rectangle of `outline` at every pose of
/// a route; each reaches over at most `step` m of the way.
///
/// Between two poses a corner moves on an arc; the arc lies within its sagitta `r (1 − cos ½Δ)` of the chord, which
/// the hull of both ends holds (Mechanics). So each hull is that of both rectangles made larger by the greatest
/// sagitta, and no piece of the way is left out.
pub fn swept(vehicle: &Vehicle, outline: &[PlanBox], route: &Route, step: f64) -> Vec<Vec<DVec2>> {
    let poses = route.poses(vehicle, step.max(FINEST));
    let mut out = Vec::new();
    for pair in poses.windows(2) {
        let motion = &route.legs[pair[1].leg].motion;
        let turn = motion.curvature * (pair[1].along - pair[0].along);
        for body in outline {
            let middle = DVec2::new(vehicle.pivot(motion.steering), 1.0 / motion.curvature);
            let far = body.corners().iter().map(|p| p.distance(middle)).fold(0.0, f64::max);
            let sagitta = if turn == 0.0 { 0.0 } else { far * (1.0 - libm::cos(0.5 * turn)) };
            let larger = body.spread(crate::Spread { along: sagitta, across: sagitta });
            let corners = [larger.corners_at(&pair[0].pose), larger.corners_at(&pair[1].pose)].concat();
            out.push(convex_hull(corners));
        }
    }
    out
}

/// Convex hull, counter-clockwise (A. M. Andrew, 1979: upper and lower chain).
fn convex_hull(mut points: Vec<DVec2>) -> Vec<DVec2> {
    points.sort_by(|a, b| a.x.total_cmp(&b.x).then(a.y.total_cmp(&b.y)));
    let chain = |points: &mut dyn Iterator<Item = DVec2>| {
        let mut out: Vec<DVec2> = Vec::new();
        for p in points {
            while out.len() >= 2 && (out[out.len() - 1] - out[out.len() - 2]).perp_dot(p - out[out.len() - 1]) <= 0.0 {
                out.pop();
            }
            out.push(p);
        }
        out.pop();
        out
    };
    let mut hull = chain(&mut points.iter().copied());
    hull.extend(chain(&mut points.iter().rev().copied()));
    hull
}
