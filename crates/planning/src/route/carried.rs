//! The machine as it is driven: boom in carry position, what it is in plan and in height.
//!
//! Parts are upright boxes from the ground up, in the machine frame. How low the boom is carried is the
//! operator's; so nothing passes under load or carriage, and heights are those of the maker's greatest angle.

use super::RouteAsk;
use crate::JobMachine;
use driving::{PlanBox, Vehicle};
use geometry::{DMat3, DVec3, OrientedBox, Pose, Solid};
use machine::{Attachment, BACKREST, BoomPosition, CARRIAGE_HALF, Load, kinematics};
use quantity::Si;
use site::footing::Contacts;

/// A machine with its boom carried.
#[derive(Debug, Clone)]
pub(crate) struct Carried {
    /// Boom at the maker's greatest carry angle, retracted, carriage level.
    pub(crate) boom: BoomPosition,
    /// Fork heel or hook, machine frame, m.
    pub(crate) tool: DVec3,
    /// Boxes in plan with their tops, m.
    parts: Vec<(PlanBox, f64)>,
    /// The rectangle that holds every wheel.
    pub(crate) wheels: PlanBox,
    /// Middles of the tyres' patches.
    pub(crate) contacts: Contacts,
    /// Highest point of the body, m.
    pub(crate) body_top: f64,
    /// Highest point of all, m.
    pub(crate) height: f64,
    /// As it is driven.
    pub(crate) vehicle: Vehicle,
}

impl Carried {
    pub(crate) fn new(unit: &JobMachine, attachment: &Attachment, load: Option<&Load>, ask: &RouteAsk) -> Self {
        let machine = &unit.machine;
        let boom = BoomPosition::level(machine.limits.carry.angle.si(), 0.0);
        let tool = kinematics::tool_point(&machine.boom, attachment, boom);
        let outline = &machine.outline;
        let body = PlanBox { rear: outline.rear, front: outline.front, half_width: outline.half_width };
        let end = machine.boom.foot.y + machine.boom.head_along * libm::sin(boom.angle);
        let boom_top = machine.boom.foot.y.max(end) + machine.boom.depth * core::f64::consts::FRAC_1_SQRT_2;
        let body_top = outline.frame_top.max(outline.cab_top).max(boom_top);
        let (blades, spread) = attachment.footprint();
        let shift = ask.side_shift.abs();
        let (depth, width, high) = load.map_or((0.0, 0.0, 0.0), |l| (l.depth, l.width, l.height));
        let mut parts = vec![(body, body_top)];
        // Head, carriage and backrest from the body to the forks' face.
        if tool.x > outline.front {
            let half_width = CARRIAGE_HALF.max(spread / 2.0) + shift;
            let neck = PlanBox { rear: outline.front, front: tool.x, half_width };
            parts.push((neck, boom_top.max(tool.z + BACKREST)));
        }
        let reach = depth.max(blades) + machine.boom.flex;
        let front = PlanBox {
            rear: tool.x.min(outline.front),
            front: (tool.x + reach).max(outline.front + 1e-3),
            half_width: (width.max(spread) / 2.0).max(CARRIAGE_HALF) + shift,
        };
        parts.push((front, tool.z + high.max(BACKREST)));
        let height = parts.iter().map(|(_, top)| *top).fold(0.0, f64::max);
        let tyre = |axle: &machine::Axle| {
            let (r, w) = (axle.tyre.free_radius.si(), axle.half_track + axle.tyre.width.si() / 2.0);
            (axle.x - r, axle.x + r, w)
        };
        let (f, r) = (tyre(&machine.front), tyre(&machine.rear.axle));
        let wheels = PlanBox { rear: f.0.min(r.0), front: f.1.max(r.1), half_width: f.2.max(r.2) };
        let contacts = Contacts {
            front_x: machine.front.x,
            front_half: machine.front.half_track,
            rear_x: machine.rear.axle.x,
            rear_half: machine.rear.axle.half_track,
        };
        let vehicle = Vehicle {
            wheelbase: machine.front.x - machine.rear.axle.x,
            turning: ask.turning,
            outline: parts.iter().map(|(b, _)| *b).collect(),
        };
        Self { boom, tool, parts, wheels, contacts, body_top, height, vehicle }
    }

    /// Parts as solids in the machine frame, each made larger along, across and up, m.
    pub(crate) fn solids(&self, along: f64, across: f64, up: f64) -> impl Iterator<Item = Solid> + '_ {
        self.parts.iter().map(move |(b, top)| {
            let low = DVec3::new(b.rear - along, -b.half_width - across, 0.0);
            let high = DVec3::new(b.front + along, b.half_width + across, top + up);
            let pose = Pose { rotation: DMat3::IDENTITY, translation: (low + high) * 0.5 };
            Solid::Box(OrientedBox { outer_from_box: pose, half: (high - low) * 0.5 })
        })
    }
}
