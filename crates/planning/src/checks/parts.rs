//! Parts of the machine as solids for distances, and as areas for the wind. Machine frame, m.

use crate::context::Context;
use crate::posed::Posed;
use geometry::{Capsule, DVec3, OrientedBox, Pose, Segment, Solid};
use machine::{Attachment, AttachmentKind, BACKREST, BoomPosition, CARRIAGE_HALF, kinematics};
use stability::LoadFaces;

/// Parts that stand still while the boom moves: frame and cab, and the legs with their pads that are down.
pub(crate) fn standing(ctx: &Context<'_>) -> Vec<Solid> {
    let o = &ctx.machine.outline;
    let between = |(x0, x1): (f64, f64), (y0, y1): (f64, f64), (z0, z1): (f64, f64)| {
        let (low, high) = (DVec3::new(x0, y0, z0), DVec3::new(x1, y1, z1));
        Solid::Box(OrientedBox {
            outer_from_box: Pose { rotation: geometry::DMat3::IDENTITY, translation: (low + high) / 2.0 },
            half: ((high - low) / 2.0).abs(),
        })
    };
    let wide = (-o.half_width, o.half_width);
    let mut out =
        vec![between((o.rear, o.front), wide, (0.0, o.frame_top)), between(o.cab, wide, (o.frame_top, o.cab_top))];
    // From pad to pad across the frame, as high as the frame: how the leg runs is not described.
    out.extend(feet(ctx).map(|foot| between(foot.along, (-foot.half, foot.half), (0.0, o.frame_top))));
    out
}

/// A pair of legs with their pads: from where to where along the machine, and how far out, m.
pub(crate) struct Feet {
    pub(crate) along: (f64, f64),
    pub(crate) half: f64,
}

/// Those that are down in the lift's support state.
pub(crate) fn feet<'c>(ctx: &'c Context<'_>) -> impl Iterator<Item = Feet> + use<'c> {
    let contacts = ctx.machine.contacts(ctx.lift.support);
    [(0, contacts[0]), (2, contacts[1])].into_iter().filter_map(move |(i, at)| {
        let side = libm::sqrt(ctx.machine.pad_area(ctx.lift.support, i)?) / 2.0;
        Some(Feet { along: (at.x - side, at.x + side), half: at.y + side })
    })
}

/// Parts that move with the boom: boom, head, carriage, load with blades.
pub(crate) fn moving(ctx: &Context<'_>, posed: &Posed, tool: DVec3, boom: BoomPosition) -> [Solid; 4] {
    let b = &ctx.machine.boom;
    let foot = DVec3::new(b.foot.x, 0.0, b.foot.y);
    let (sin, cos) = libm::sincos(boom.angle);
    let end = foot + DVec3::new(cos, 0.0, sin) * (b.head_along + boom.extension);
    let head = kinematics::head(b, boom);
    // A square section of that depth lies within 0.71 of it from the boom line.
    let radius = b.depth * core::f64::consts::FRAC_1_SQRT_2;
    let capsule = |a, b| Solid::Capsule(Capsule { axis: Segment { a, b }, radius });
    [
        capsule(foot, end),
        capsule(end, head),
        carriage_solid(ctx, tool, head, boom, radius),
        load_solid(ctx, posed, tool, boom),
    ]
}

/// Carriage and backrest at the fork face, wherever the side shift is, or the jib from head to hook.
fn carriage_solid(ctx: &Context<'_>, tool: DVec3, head: DVec3, boom: BoomPosition, radius: f64) -> Solid {
    match ctx.attachment.map(|a| &a.kind) {
        Some(AttachmentKind::Jib(_)) | None => Solid::Capsule(Capsule { axis: Segment { a: head, b: tool }, radius }),
        Some(_) => {
            let carriage = Posed::carriage(tool, boom);
            let back = (carriage.inverse() * head).x.min(-0.1);
            let half_width = CARRIAGE_HALF.max(ctx.attachment.map_or(0.0, |a| a.footprint().1) / 2.0);
            let shift = ctx.lift.side_shift;
            let half = DVec3::new(-back / 2.0, half_width + shift.abs() / 2.0, f64::midpoint(BACKREST, 0.1));
            let centre = DVec3::new(back / 2.0, shift / 2.0, (BACKREST - 0.1) / 2.0);
            Solid::Box(OrientedBox {
                outer_from_box: Pose { rotation: carriage.rotation, translation: carriage * centre },
                half,
            })
        }
    }
}

fn load_solid(ctx: &Context<'_>, posed: &Posed, tool: DVec3, boom: BoomPosition) -> Solid {
    let load = ctx.load;
    if let Some(h) = &load.hanging {
        // By gravity from the hook down to the load's underside; the radius holds the load in any
        // turn about its hook, wherever its centre of gravity is, and swung out to any side.
        let down = posed.footing.site_from_machine.inverse().turn(DVec3::NEG_Z);
        let radius = load.turning_radius() + ctx.lift.side_shift.abs() + load.swing_below();
        let bottom = tool + down * (h.drop + load.height);
        return Solid::Capsule(Capsule { axis: Segment { a: tool, b: bottom }, radius });
    }
    let carriage = Posed::carriage(tool, boom);
    let (blades, spread) = ctx.attachment.map_or((0.0, 0.0), machine::Attachment::footprint);
    // A side shift may be in or out: the solid holds both.
    let shift = ctx.lift.side_shift;
    let size = DVec3::new(load.depth.max(blades), load.width.max(spread) + shift.abs(), load.height + 0.1);
    let centre = DVec3::new(size.x / 2.0, shift / 2.0, size.z / 2.0 - 0.1);
    Solid::Box(OrientedBox {
        outer_from_box: Pose { rotation: carriage.rotation, translation: carriage * centre },
        half: size / 2.0,
    })
}

/// What the wind sees, with or without the load.
pub(crate) fn wind_parts(
    ctx: &Context<'_>,
    attachment: &Attachment,
    boom: BoomPosition,
    with_load: bool,
) -> Vec<stability::wind::Part> {
    let load = ctx.load;
    let faces = LoadFaces {
        depth: load.depth,
        width: load.width,
        height: load.height,
        factor: load.wind_factor,
        hangs: load.hanging.is_some(),
    };
    stability::wind_parts(ctx.machine, attachment, boom, with_load.then_some(faces))
}
