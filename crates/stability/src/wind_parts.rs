//! What the wind sees of a machine with its load: boxes, with their area seen along and across the
//! machine. Shielding is never credited.

use crate::text;
use crate::wind::{Face, Part, SHAPE_FACTOR};
use evidence::Message;
use geometry::{DVec3, Pose};
use machine::{Attachment, AttachmentKind, BACKREST, BoomPosition, CARRIAGE_HALF, Machine, kinematics};

/// A load as the wind sees it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct LoadFaces {
    /// Along the machine, m.
    pub depth: f64,
    /// Across the machine, m.
    pub width: f64,
    /// m.
    pub height: f64,
    /// Shape factor.
    pub factor: f64,
    /// Hangs from the hook.
    pub hangs: bool,
}

/// Depth of the forks under a load, m.
const BLADES: f64 = 0.1;

/// A box whose length along the machine points up by an angle.
#[derive(Clone, Copy)]
struct Seen {
    front: f64,
    side: f64,
}

/// Projections (m²) of a box of the size (along, across, up), its length turned up by the angle of
/// `direction` in the middle plane (exact for a box).
fn seen(size: DVec3, direction: DVec3) -> Seen {
    let d = direction.normalize_or(DVec3::X);
    Seen { front: size.y * (size.z * d.x.abs() + size.x * d.z.abs()), side: size.x * size.z }
}

/// All parts: frame, cab, boom, carriage with attachment, and the load where one is carried.
///
/// The stated areas of frame, cab and wheels are kept, and so is the height of their middle; the cab
/// takes the share that its box has of the side area.
///
/// A hung load's wind acts at the hook. That is exact as long as it hangs at rest: the rope is a
/// two-force member, so that what the load passes on (weight and wind together) goes through the hook
/// along the rope, and the load's own balance makes that pull equal to weight plus wind. It may turn,
/// so it shows its diagonal to every side.
pub fn wind_parts(
    machine: &Machine,
    attachment: &Attachment,
    boom: BoomPosition,
    load: Option<LoadFaces>,
) -> Vec<Part> {
    let mut parts = Vec::with_capacity(5);
    parts.extend(body(machine));
    let b = &machine.boom;
    let head = kinematics::head(b, boom);
    let foot = DVec3::new(b.foot.x, 0.0, b.foot.y);
    parts.push(pole(text::PART_BOOM.message(), foot, head, b.depth));
    let tool = kinematics::tool_point(b, attachment, boom);
    parts.push(match attachment.kind {
        AttachmentKind::Jib(_) => pole(text::PART_CARRIAGE.message(), head, tool, b.depth),
        _ => carriage(attachment, head, tool, boom),
    });
    parts.extend(load.map(|l| load_part(l, tool, boom)));
    parts
}

/// Frame with wheels, and cab.
fn body(machine: &Machine) -> [Part; 2] {
    let (areas, o) = (&machine.wind_areas, &machine.outline);
    let (side, front, middle) = (areas.frame_side, areas.frame_front, areas.frame_height);
    let cab_middle = f64::midpoint(o.frame_top, o.cab_top);
    let cab = (o.cab.1 - o.cab.0).abs() * (o.cab_top - o.frame_top).max(0.0);
    // No more than is there, and never so much that the rest would lie below the ground.
    let share =
        if side > 0.0 && cab_middle > 0.0 { (cab / side).min(middle / cab_middle).clamp(0.0, 1.0) } else { 0.0 };
    let rest = 1.0 - share;
    let rest_middle = if rest > 0.0 { (middle - share * cab_middle) / rest } else { middle };
    let part = |name: Message, share: f64, x: f64, z: f64| {
        Part::new(name, front * share, side * share, SHAPE_FACTOR, DVec3::new(x, 0.0, z))
    };
    [
        part(text::PART_FRAME.message(), rest, f64::midpoint(o.rear, o.front), rest_middle),
        part(text::PART_CAB.message(), share, f64::midpoint(o.cab.0, o.cab.1), cab_middle),
    ]
}

/// Boom or jib: as wide as deep.
fn pole(name: Message, from: DVec3, to: DVec3, depth: f64) -> Part {
    let along = to - from;
    let s = seen(DVec3::new(along.length(), depth, depth), along);
    Part::new(name, s.front, s.side, SHAPE_FACTOR, (from + to) / 2.0)
}

/// Carriage with backrest from the head to the fork face, and what is ahead of it: the blades, or a
/// tool taken as high as the backrest (ours: no height is stated). Seen along the machine the blades
/// lie within the carriage.
fn carriage(attachment: &Attachment, head: DVec3, tool: DVec3, boom: BoomPosition) -> Part {
    let (sin, cos) = libm::sincos(boom.fork_tilt);
    let direction = DVec3::new(cos, 0.0, sin);
    let carriage = Pose::from_axes(direction, DVec3::Y, tool);
    let back = -(carriage.inverse() * head).x.min(-0.1);
    let (reach, width) = attachment.footprint();
    let width = if width > 2.0 * CARRIAGE_HALF { width } else { 2.0 * CARRIAGE_HALF };
    let high = BACKREST + BLADES;
    let place = |x: f64, z: f64| carriage * DVec3::new(x, 0.0, z);
    let ahead = if matches!(attachment.kind, AttachmentKind::Forks(_)) { BLADES } else { high };
    let front = seen(DVec3::new(back + reach, width, high), direction).front;
    let areas = [back * high, reach * ahead];
    let middles = [place(-back / 2.0, high / 2.0 - BLADES), place(reach / 2.0, ahead / 2.0 - BLADES)];
    let side = areas[0] + areas[1];
    let middle = (middles[0] * areas[0] + middles[1] * areas[1]) / side;
    Part {
        name: text::PART_CARRIAGE.message(),
        front: Face { area: front, factor: SHAPE_FACTOR, at: place(0.0, high / 2.0 - BLADES) },
        side: Face { area: side, factor: SHAPE_FACTOR, at: middle },
    }
}

fn load_part(load: LoadFaces, tool: DVec3, boom: BoomPosition) -> Part {
    let name = text::PART_LOAD.message();
    if load.hangs {
        let area = load.height * libm::hypot(load.depth, load.width);
        return Part::new(name, area, area, load.factor, tool);
    }
    let (sin, cos) = libm::sincos(boom.fork_tilt);
    let direction = DVec3::new(cos, 0.0, sin);
    let s = seen(DVec3::new(load.depth, load.width, load.height), direction);
    let at = Pose::from_axes(direction, DVec3::Y, tool) * DVec3::new(load.depth / 2.0, 0.0, load.height / 2.0);
    Part::new(name, s.front, s.side, load.factor, at)
}
