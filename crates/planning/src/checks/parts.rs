//! Parts of the machine as solids for distances, and as areas for the wind. Machine frame, m.

use crate::context::Context;
use crate::posed::Posed;
use geometry::{Capsule, DVec3, OrientedBox, Pose, Segment, Solid};
use machine::{BoomPosition, kinematics};
use stability::wind::{Part, SHAPE_FACTOR};

/// Parts that stand still while the boom moves: frame and cab.
pub(crate) fn standing(ctx: &Context<'_>) -> [Solid; 2] {
    let o = &ctx.machine.outline;
    let upright = |x0: f64, x1: f64, z0: f64, z1: f64| {
        Solid::Box(OrientedBox {
            outer_from_box: Pose {
                rotation: geometry::DMat3::IDENTITY,
                translation: DVec3::new(f64::midpoint(x0, x1), 0.0, f64::midpoint(z0, z1)),
            },
            half: DVec3::new((x1 - x0).abs() / 2.0, o.half_width, (z1 - z0).abs() / 2.0),
        })
    };
    [upright(o.rear, o.front, 0.0, o.frame_top), upright(o.cab.0, o.cab.1, o.frame_top, o.cab_top)]
}

/// Parts that move with the boom: boom, carriage with tool, load.
pub(crate) fn moving(ctx: &Context<'_>, tool: DVec3, boom: BoomPosition) -> [Solid; 3] {
    let head = kinematics::head(&ctx.machine.boom, boom);
    let foot = DVec3::new(ctx.machine.boom.foot.x, 0.0, ctx.machine.boom.foot.y);
    let radius = ctx.machine.boom.depth;
    [
        Solid::Capsule(Capsule { axis: Segment { a: foot, b: head }, radius }),
        Solid::Capsule(Capsule { axis: Segment { a: head, b: tool }, radius }),
        load_solid(ctx, tool, boom),
    ]
}

fn load_solid(ctx: &Context<'_>, tool: DVec3, boom: BoomPosition) -> Solid {
    let load = ctx.load;
    if let Some(h) = &load.hanging {
        // From the hook down to the load's underside; the radius holds the load in any turn.
        let bottom = tool - DVec3::Z * (h.drop + load.height);
        Solid::Capsule(Capsule {
            axis: Segment { a: tool, b: bottom },
            radius: 0.5 * libm::hypot(load.depth, load.width),
        })
    } else {
        let carriage = Posed::carriage(tool, boom);
        let centre = DVec3::new(load.depth / 2.0, 0.0, load.height / 2.0);
        Solid::Box(OrientedBox {
            outer_from_box: Pose { rotation: carriage.rotation, translation: carriage * centre },
            half: DVec3::new(load.depth, load.width, load.height) / 2.0,
        })
    }
}

/// What the wind sees, each part with its larger area.
pub(crate) fn wind_parts(ctx: &Context<'_>, tool: DVec3, boom: BoomPosition, with_load: bool) -> Vec<Part> {
    let areas = &ctx.machine.wind_areas;
    let head = kinematics::head(&ctx.machine.boom, boom);
    let foot = DVec3::new(ctx.machine.boom.foot.x, 0.0, ctx.machine.boom.foot.y);
    let mut out = vec![
        Part {
            name: stability::text::PART_FRAME.message(),
            area: areas.frame_side.max(areas.frame_front),
            factor: SHAPE_FACTOR,
            at: DVec3::new(ctx.machine.outline.cab.0, 0.0, areas.frame_height),
        },
        Part {
            name: stability::text::PART_BOOM.message(),
            area: ctx.machine.boom.depth * foot.distance(head),
            factor: SHAPE_FACTOR,
            at: (foot + head) / 2.0,
        },
    ];
    if with_load {
        let load = ctx.load;
        // A hung load's wind acts on the machine at its hook.
        let at = match &load.hanging {
            Some(_) => tool,
            None => Posed::carriage(tool, boom) * DVec3::new(load.depth / 2.0, 0.0, load.height / 2.0),
        };
        out.push(Part {
            name: stability::text::PART_LOAD.message(),
            area: load.height * load.width.max(load.depth),
            factor: load.wind_factor,
            at,
        });
    }
    out
}
