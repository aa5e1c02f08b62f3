//! The least of a distance over everything that a machine does in a lift: no tunnelling between poses.

use super::line::boom_radius;
use super::parts::{moving, standing};
use crate::context::Context;
use crate::posed::{Posed, tool_point};
use geometry::Solid;
use machine::Attachment;

/// The movement is searched until the least distance is known this well, m; it is then taken off.
const RESOLUTION: f64 = 0.01;

/// Which parts of the machine count.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Parts {
    /// All of it with the load.
    All,
    /// Frame, cab and boom: what has no business at the landing.
    WithoutTool,
}

/// The least distance over standing parts and the whole movement: a proven lower bound, exact to
/// [`RESOLUTION`] near `required` and to a fifth of the margin far from it; `None` where the machine
/// has no movement, NaN where any distance is.
///
/// `distance` is asked for a part in the site frame and for what is already found at that pose, m: a
/// part that is no nearer than that may give anything from there up.
///
/// Between two poses no point moves farther than [`crate::movement::Leg::travel`] says, so the
/// distance in between cannot fall below the mean of both ends less half of that. Intervals are halved
/// until that bound is close enough to the least found; what may be missing is taken off.
pub(crate) fn least(
    ctx: &Context<'_>,
    posed: &Posed,
    attachment: &Attachment,
    parts: Parts,
    required: f64,
    mut distance: impl FnMut(&Solid, f64) -> f64,
) -> Option<f64> {
    let site_from_machine = posed.footing.site_from_machine;
    let mut nearest = |solids: &[Solid]| {
        solids.iter().fold(f64::INFINITY, |least, s| worse(least, distance(&s.moved(site_from_machine), least)))
    };
    // Frame and cab stand still: once is enough.
    let mut found = nearest(&standing(ctx));
    let movement = posed.movement.as_ref()?;
    let radius = boom_radius(ctx);
    let counted = if parts == Parts::All { 4 } else { 2 };
    let mut proven = f64::INFINITY;
    for leg in &movement.legs {
        let mut at = |t: f64| -> Option<f64> {
            let boom = leg.at(ctx, attachment, t)?;
            let tool = tool_point(ctx, attachment, boom);
            Some(nearest(&moving(ctx, posed, tool, boom)[..counted]))
        };
        let mut stack = vec![(0.0, at(0.0)?, 1.0, at(1.0)?)];
        while let Some((t0, d0, t1, d1)) = stack.pop() {
            found = worse(found, worse(d0, d1));
            // Nothing is nearer than touching, and nothing worse than not known.
            if found <= 0.0 || found.is_nan() {
                return Some(if found.is_nan() { found } else { 0.0 });
            }
            let slack = RESOLUTION.max((found - required) * 0.2);
            let bound = (d0 + d1 - leg.travel(t0, t1, radius)) / 2.0;
            // With nothing to come near to, both sides are without limit.
            if bound >= found - slack || found.is_infinite() || t1 - t0 < 1e-9 {
                proven = proven.min(bound);
                continue;
            }
            let middle = f64::midpoint(t0, t1);
            let d = at(middle)?;
            stack.push((t0, d0, middle, d));
            stack.push((middle, d, t1, d1));
        }
    }
    Some(proven.min(found).max(0.0))
}

/// The lesser of two distances; NaN is worse than any.
pub(crate) fn worse(a: f64, b: f64) -> f64 {
    if a.is_nan() || a < b { a } else { b }
}
