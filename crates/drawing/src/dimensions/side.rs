//! The machine from its right side, boom lowest and retracted.

use super::sheet::{Along, Dimension, View};
use super::{Part, rectangle};
use crate::style::Ink;
use evidence::TextId;
use machine::{AttachmentKind, BoomPosition, Machine, kinematics};
use quantity::Si;
use wording::ui;

/// Height of the fork face in the picture, m.
const FACE: f64 = 0.9;

pub(crate) fn view(machine: &Machine) -> View {
    let o = &machine.outline;
    let at = BoomPosition::level(machine.boom.angle_min.si(), 0.0);
    let (front, rear) = (&machine.front, &machine.rear.axle);
    let (front_r, rear_r) = (front.tyre.free_radius.si(), rear.tyre.free_radius.si());
    let mut parts = vec![
        Part::Outline(rectangle((o.rear, o.front), (o.ground_clearance, o.frame_top)), Ink::Body),
        Part::Outline(rectangle(o.cab, (o.frame_top, o.cab_top)), Ink::Glass),
    ];
    if let Some(s) = &machine.stabilizers {
        // A pad as square as its area.
        let half = s.pad_area.max(0.0).sqrt() / 2.0;
        parts.push(Part::Outline(rectangle((s.pad.x - half, s.pad.x + half), (0.0, 0.08)), Ink::Soft));
        parts.push(Part::Dashed(rectangle((s.pad.x - 0.06, s.pad.x + 0.06), (0.08, o.ground_clearance.max(0.2)))));
    }
    if let Some(o) = &machine.outriggers {
        let half = o.pad_area.max(0.0).sqrt() / 2.0;
        for x in [o.front.x, o.rear.x] {
            parts.push(Part::Outline(rectangle((x - half, x + half), (0.0, 0.08)), Ink::Soft));
        }
    }
    parts.push(Part::Wheel((rear.x, rear_r), rear_r));
    parts.push(Part::Wheel((front.x, front_r), front_r));
    let foot = (machine.boom.foot.x, machine.boom.foot.y);
    parts.push(Part::Outline(boom(machine, at), Ink::Body));
    parts.push(Part::Pin(foot));
    parts.push(Part::Pin((rear.x, machine.rear.pin_height)));
    let tool = machine.attachments.first().map(|a| (a, tool(machine, a, at)));
    let tip = tool.as_ref().and_then(|(_, line)| line.iter().copied().max_by(|a, b| a.0.total_cmp(&b.0)));
    let mut notes = Vec::new();
    if let Some((attachment, line)) = tool {
        parts.push(Part::Line(line));
        let pose = ui::MACHINE_POSE.with("attachment", &attachment.name).with("angle", machine.boom.angle_min);
        notes.push(pose);
    }

    let ground = |x: f64| (x, 0.0);
    let level = |name: TextId, from: (f64, f64), to: (f64, f64)| Dimension { name, along: Along::Level { from, to } };
    let left = |name: TextId, at: (f64, f64)| Dimension { name, along: Along::UpLeft { at } };
    let right = |name: TextId, at: (f64, f64)| Dimension { name, along: Along::UpRight { at } };
    let mut dimensions = vec![
        level(ui::MACHINE_DIM_WHEELBASE, ground(rear.x), ground(front.x)),
        level(ui::MACHINE_DIM_FOOT_BEHIND, foot, ground(front.x)),
        level(ui::MACHINE_DIM_REAR, (o.rear, o.ground_clearance), ground(rear.x)),
    ];
    if let Some(s) = &machine.stabilizers {
        dimensions.push(level(ui::MACHINE_DIM_PADS_AHEAD, ground(front.x), ground(s.pad.x)));
    }
    if let Some(o) = &machine.outriggers {
        dimensions.push(level(ui::MACHINE_DIM_OUTRIGGERS_ALONG, ground(o.rear.x), ground(o.front.x)));
    }
    if let Some(tip) = tip {
        dimensions.push(level(ui::MACHINE_DIM_LENGTH_TOOL, (machine.front_face(), front_r), tip));
    }
    let foremost = o.front.max(machine.front_face());
    dimensions.push(level(ui::MACHINE_DIM_LENGTH, (o.rear, o.ground_clearance), ground(foremost)));
    dimensions.extend([
        left(ui::MACHINE_DIM_REAR_RADIUS, (rear.x, rear_r)),
        left(ui::MACHINE_DIM_PIN, (rear.x, machine.rear.pin_height)),
        left(ui::MACHINE_DIM_FRAME_TOP, (o.rear, o.frame_top)),
        left(ui::MACHINE_DIM_FOOT, foot),
        left(ui::MACHINE_DIM_CAB_TOP, (o.cab.0, o.cab_top)),
        right(ui::MACHINE_DIM_CLEARANCE, (o.front, o.ground_clearance)),
        right(ui::MACHINE_DIM_FRONT_RADIUS, (front.x, front_r)),
    ]);
    View { title: ui::MACHINE_SIDE, parts, dimensions, notes }
}

/// The boom as a beam from its foot pin to the end of its line.
fn boom(machine: &Machine, at: BoomPosition) -> Vec<(f64, f64)> {
    let b = &machine.boom;
    let (sin, cos) = libm::sincos(at.angle);
    let (along, up) = ((cos, sin), (-sin * b.depth / 2.0, cos * b.depth / 2.0));
    let length = b.head_along + at.extension;
    let (x, z) = (b.foot.x, b.foot.y);
    let end = (x + along.0 * length, z + along.1 * length);
    vec![(x + up.0, z + up.1), (end.0 + up.0, end.1 + up.1), (end.0 - up.0, end.1 - up.1), (x - up.0, z - up.1)]
}

/// Head, fork face and blades, or the jib.
fn tool(machine: &Machine, attachment: &machine::Attachment, at: BoomPosition) -> Vec<(f64, f64)> {
    let b = &machine.boom;
    let flat = |p: geometry::DVec3| (p.x, p.z);
    let (sin, cos) = libm::sincos(at.angle);
    let length = b.head_along + at.extension;
    let end = (b.foot.x + cos * length, b.foot.y + sin * length);
    let head = flat(kinematics::head(b, at));
    let point = flat(kinematics::tool_point(b, attachment, at));
    match &attachment.kind {
        AttachmentKind::Forks(forks) => {
            let blade = forks.longest();
            let level = (head.1 - point.1).clamp(0.0, FACE);
            vec![end, head, (point.0, point.1 + level), (point.0, point.1 + FACE), point, (point.0 + blade, point.1)]
        }
        // Of other tools the file has one point: where the load stands or hangs.
        _ => vec![end, head, point],
    }
}
