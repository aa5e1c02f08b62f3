//! The machine from the front.

use super::sheet::{Along, Dimension, View};
use super::{Part, rectangle};
use crate::style::Ink;
use evidence::TextId;
use machine::Machine;
use quantity::Si;
use wording::ui;

pub(crate) fn view(machine: &Machine) -> View {
    let o = &machine.outline;
    let (front, rear) = (&machine.front, &machine.rear.axle);
    let (half, tyre) = (front.half_track, front.tyre.width.si());
    let wheel = |y: f64| {
        let sides = (y - tyre / 2.0, y + tyre / 2.0);
        Part::Outline(rectangle(sides, (0.0, 2.0 * front.tyre.free_radius.si())), Ink::Soft)
    };
    let body = (half - tyre / 2.0).max(0.2).min(o.half_width);
    let depth = machine.boom.depth / 2.0;
    let foot = machine.boom.foot.y;
    let mut parts = vec![
        Part::Dashed(rectangle((-o.half_width, o.half_width), (o.frame_top, o.cab_top))),
        Part::Outline(rectangle((-body, body), (o.ground_clearance, o.frame_top)), Ink::Body),
        wheel(-half),
        wheel(half),
        Part::Outline(rectangle((-depth, depth), (foot - depth, foot + depth)), Ink::Body),
        Part::Pin((0.0, foot)),
        // The overall width, where mirrors or steps stand out beyond the tyres.
        Part::Dashed(rectangle((-o.half_width, o.half_width), (o.ground_clearance, o.frame_top))),
    ];
    if let Some(s) = &machine.stabilizers {
        let pad = s.pad_area.max(0.0).sqrt() / 2.0;
        for y in [-s.pad.y, s.pad.y] {
            parts.push(Part::Outline(rectangle((y - pad, y + pad), (0.0, 0.08)), Ink::Soft));
        }
    }
    if let Some(o) = &machine.outriggers {
        let pad = o.pad_area.max(0.0).sqrt() / 2.0;
        for y in [-o.front.y, o.front.y] {
            parts.push(Part::Outline(rectangle((y - pad, y + pad), (0.0, 0.08)), Ink::Soft));
        }
    }

    let level =
        |name: TextId, from: f64, to: f64| Dimension { name, along: Along::Level { from: (from, 0.0), to: (to, 0.0) } };
    let mut dimensions = vec![
        level(ui::MACHINE_DIM_TYRE, half - tyre / 2.0, half + tyre / 2.0),
        level(ui::MACHINE_DIM_FRONT_TRACK, -half, half),
        level(ui::MACHINE_DIM_REAR_TRACK, -rear.half_track, rear.half_track),
        level(ui::MACHINE_DIM_WIDTH, -o.half_width, o.half_width),
    ];
    if let Some(s) = &machine.stabilizers {
        dimensions.push(level(ui::MACHINE_DIM_PADS, -s.pad.y, s.pad.y));
    }
    if let Some(o) = &machine.outriggers {
        dimensions.push(level(ui::MACHINE_DIM_OUTRIGGERS_FRONT, -o.front.y, o.front.y));
        dimensions.push(level(ui::MACHINE_DIM_OUTRIGGERS_REAR, -o.rear.y, o.rear.y));
    }
    dimensions.extend([
        Dimension { name: ui::MACHINE_DIM_FRAME_TOP, along: Along::UpLeft { at: (-o.half_width, o.frame_top) } },
        Dimension { name: ui::MACHINE_DIM_CAB_TOP, along: Along::UpLeft { at: (-o.half_width, o.cab_top) } },
        Dimension { name: ui::MACHINE_DIM_CLEARANCE, along: Along::UpRight { at: (body, o.ground_clearance) } },
        Dimension { name: ui::MACHINE_DIM_FOOT, along: Along::UpRight { at: (0.0, foot) } },
    ]);
    View { title: ui::MACHINE_FRONT, parts, dimensions, notes: vec![ui::MACHINE_CAB_ACROSS.message()] }
}
