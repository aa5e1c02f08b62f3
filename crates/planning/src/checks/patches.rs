//! What the machine's wheels or pads touch, in plan: the patches that ground, edges and buried things are asked for.

use crate::context::Context;
use crate::posed::Posed;
use geometry::{DVec2, DVec3};
use ground::stress::Patch;
use quantity::Si;

/// Length of a tyre's patch where its pressure is not known, m (ours: short, so that it presses hard).
const SHORT: f64 = 0.15;

/// A wheel or pad without force still has a place; no side of its patch is shorter, m.
const LEAST_SIDE: f64 = 0.05;

/// The four contacts under these forces (N), in the order of the wheels. A pad counts as a square; a tyre's patch
/// is as wide as the tyre. Mats are not counted here: see [`super::bearing`].
pub(crate) fn patches(ctx: &Context<'_>, posed: &Posed, force: [f64; 4]) -> [Patch; 4] {
    let pose = posed.footing.site_from_machine;
    let on = crate::posed::contacts(ctx);
    let places = [
        (on.front_x, on.front_half),
        (on.front_x, -on.front_half),
        (on.rear_x, on.rear_half),
        (on.rear_x, -on.rear_half),
    ];
    std::array::from_fn(|i| {
        let (x, y) = places[i];
        let middle = (pose * DVec3::new(x, y, 0.0)).truncate();
        Patch { middle: middle.to_array(), size: size(ctx, force[i], i), heading: ctx.stand.heading, force: force[i] }
    })
}

/// Along and across the machine, m.
pub(crate) fn size(ctx: &Context<'_>, force: f64, i: usize) -> [f64; 2] {
    if let Some(area) = ctx.machine.pad_area(ctx.lift.support, i) {
        return [libm::sqrt(area); 2];
    }
    let width = super::tyres::tyre(ctx, i).width.si();
    let length = super::tyres::highest(ctx, i).map_or(SHORT, |inflation| force.max(0.0) / inflation / width);
    [length.max(LEAST_SIDE), width.max(LEAST_SIDE)]
}

/// Corners of a patch, m.
pub(crate) fn corners(patch: &Patch) -> [DVec2; 4] {
    let (sin, cos) = libm::sincos(patch.heading);
    let (along, across) = (DVec2::new(cos, sin) * patch.size[0] / 2.0, DVec2::new(-sin, cos) * patch.size[1] / 2.0);
    let middle = DVec2::from_array(patch.middle);
    [middle + along + across, middle + along - across, middle - along - across, middle - along + across]
}
