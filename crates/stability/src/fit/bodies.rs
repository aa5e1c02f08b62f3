//! What of a machine is unknown: how much weighs at the corners of where each part's centre may lie.
//!
//! A part of mass `m` whose centre lies in a box is the same, for every moment, as point masses
//! `q ≥ 0` at the box's corners with `Σq = m`. So every moment is linear in the `q`, whatever the
//! split of mass and centre. Sections lie on the boom line and move out with it; carriage and attachment move
//! with the head. Machine frame, m; masses in tonnes inside the programme.

use geometry::{DVec2, DVec3};
use machine::{Attachment, AttachmentKind, BoomPosition, Machine, kinematics};
use quantity::Si;

/// A part of the machine in the fit.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum FitPart {
    /// All that neither moves with the boom nor hangs on the rear axle: frame, cab, counterweight,
    /// operator, front axle.
    Chassis,
    /// Rear axle with wheels.
    RearAxle,
    /// A boom section, from the base outwards; all in one where the sections are not known.
    Section(usize),
    /// The carriage.
    Carriage,
    /// An attachment, by its place among those of the machine.
    Attachment(usize),
}

/// A coordinate of a part's centre.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum FitAxis {
    /// Ahead: of the front axle; of a section along the boom from its foot, retracted; of carriage and
    /// attachment ahead of the head pin.
    Ahead,
    /// Left of the middle; chassis only, all others lie in it.
    Left,
    /// Up: above the ground; of carriage and attachment above the head pin.
    Up,
}

/// A stated range; `low ≤ high`.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Between {
    /// Least.
    pub low: f64,
    /// Most.
    pub high: f64,
}

impl Between {
    /// A value and its uncertainty to either side as a share of it.
    pub fn about(value: f64, share: f64) -> Self {
        let by = value.abs() * share;
        Self { low: value - by, high: value + by }
    }

    pub(crate) fn sound(self) -> bool {
        self.low <= self.high && self.low.is_finite() && self.high.is_finite()
    }
}

/// A possible place of a point mass.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Spot {
    pub(crate) part: FitPart,
    place: Place,
    /// Coordinates that [`FitAxis`] counts.
    pub(crate) own: DVec3,
}

#[derive(Debug, Clone, Copy, PartialEq)]
enum Place {
    Fixed(DVec3),
    Boom { along: f64, share: f64 },
    Head(DVec2),
}

impl Spot {
    pub(crate) fn at(&self, machine: &Machine, boom: BoomPosition) -> DVec3 {
        match self.place {
            Place::Fixed(p) => p,
            Place::Boom { along, share } => {
                let (s, c) = libm::sincos(boom.angle);
                let out = along + share * boom.extension;
                DVec3::new(machine.boom.foot.x + c * out, 0.0, machine.boom.foot.y + s * out)
            }
            Place::Head(offset) => kinematics::on_carriage(&machine.boom, boom, offset),
        }
    }

    pub(crate) fn coordinate(&self, axis: FitAxis) -> f64 {
        match axis {
            FitAxis::Ahead => self.own.x,
            FitAxis::Left => self.own.y,
            FitAxis::Up => self.own.z,
        }
    }
}

/// Where the centres of parts may lie when nobody says more. Chassis: within the machine's outline, from the ground
/// to the cab's roof (it cannot lie elsewhere). Rear axle: at its place, up to twice its tyres' radius.
/// Sections: between boom foot and head. Carriage and attachment: around head pin and tool, wide on
/// purpose (ours).
pub(crate) fn usual(machine: &Machine, part: FitPart) -> [Between; 3] {
    let between = |low: f64, high: f64| Between { low, high };
    let flat = between(0.0, 0.0);
    match part {
        FitPart::Chassis => {
            let o = &machine.outline;
            let z = between(0.0, o.cab_top.max(o.frame_top));
            [between(o.rear, o.front), between(-o.half_width, o.half_width), z]
        }
        FitPart::RearAxle => {
            let axle = &machine.rear.axle;
            [between(axle.x, axle.x), flat, between(0.0, 2.0 * axle.tyre.free_radius.si())]
        }
        FitPart::Section(_) => [between(0.0, machine.boom.head_along), flat, flat],
        FitPart::Carriage => {
            let tool = tools(machine).fold(DVec2::ZERO, DVec2::max);
            let low = tools(machine).fold(0.0, |z, t| t.y.min(z));
            [between(-0.5, tool.x + 0.3), flat, between(low - 0.5, tool.y + 1.5)]
        }
        FitPart::Attachment(i) => {
            let Some(a) = machine.attachments.get(i) else { return [flat; 3] };
            let tool = a.tool_point();
            let beyond = match &a.kind {
                AttachmentKind::Forks(f) => f.longest(),
                AttachmentKind::Jib(_) => 0.3,
                _ => 3.0,
            };
            [between(-0.5, tool.x.max(0.0) + beyond), flat, between(tool.y.min(0.0) - 1.0, tool.y.max(0.0) + 2.0)]
        }
    }
}

fn tools(machine: &Machine) -> impl Iterator<Item = DVec2> + '_ {
    machine.attachments.iter().map(Attachment::tool_point)
}

/// All parts in their order. `sections`: their split of the extension is known.
pub(crate) fn parts(machine: &Machine, sections: bool) -> Vec<FitPart> {
    let count = if sections { machine.boom.sections.len() } else { 1 };
    [FitPart::Chassis, FitPart::RearAxle]
        .into_iter()
        .chain((0..count).map(FitPart::Section))
        .chain([FitPart::Carriage])
        .chain((0..machine.attachments.len()).map(FitPart::Attachment))
        .collect()
}

/// The corners of a part's box.
pub(crate) fn corners(machine: &Machine, part: FitPart, sections: bool, [x, y, z]: [Between; 3], out: &mut Vec<Spot>) {
    let ends = |b: Between| if b.low == b.high { vec![b.low] } else { vec![b.low, b.high] };
    for ahead in ends(x) {
        for left in ends(y) {
            for up in ends(z) {
                let own = DVec3::new(ahead, left, up);
                let mut push = |place| out.push(Spot { part, place, own });
                match part {
                    FitPart::Chassis | FitPart::RearAxle => push(Place::Fixed(own)),
                    FitPart::Carriage | FitPart::Attachment(_) => push(Place::Head(DVec2::new(ahead, up))),
                    FitPart::Section(i) if sections => {
                        push(Place::Boom { along: ahead, share: machine.boom.sections[i].share });
                    }
                    FitPart::Section(_) => {
                        push(Place::Boom { along: ahead, share: 0.0 });
                        push(Place::Boom { along: ahead, share: 1.0 });
                    }
                }
            }
        }
    }
}

/// `constant + per · r`: what a kilogram at `r` adds to something.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct PerMass {
    pub(crate) constant: f64,
    pub(crate) per: DVec3,
}

impl PerMass {
    pub(crate) const ONE: Self = Self { constant: 1.0, per: DVec3::ZERO };

    pub(crate) fn at(&self, r: DVec3) -> f64 {
        self.constant + self.per.dot(r)
    }
}
