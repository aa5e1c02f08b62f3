//! What a chart's reach and height are measured between.
//!
//! Everything that reads a chart goes through [`Chart::datum`] and [`Chart::measured`]: the check of
//! a lift, the quick look, the pictures, and the reading of the file.

use crate::kinematics::tilted;
use crate::{Attachment, AttachmentKind, Chart, Machine};
use geometry::DVec2;
use quantity::Si;

/// What a chart's reach and height are measured between. No default.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Datum {
    /// Where reach starts.
    pub reach_from: ReachFrom,
    /// What point reach is measured to.
    pub reach_to: ReachTo,
    /// What height is measured to (from the ground).
    pub height_to: HeightTo,
}

/// Where reach is measured from.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum ReachFrom {
    /// Front face of the front tyres, free radius.
    FrontTyreFace,
    /// Middle of the front axle.
    FrontAxle,
    /// Foremost point of the machine without attachment, as its outline says.
    FrameFront,
    /// Middle of the stabilizer pads, or of the front outrigger pads.
    StabilizerPads,
    /// Foot pin of the boom.
    BoomFoot,
    /// Axis about which the upper part turns.
    TurntableCentre,
    /// A point so far ahead of the middle of the front axle (negative: behind), m.
    AheadOfFrontAxle(f64),
}

/// What point reach is measured to.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum ReachTo {
    /// The fork heel.
    ForkHeel,
    /// The point at the rated load centre.
    LoadCentre,
    /// The tip of the longest of blades and sleeves.
    ForkTip,
    /// The hook.
    Hook,
    /// The pin at the boom's head that carries the carriage.
    HeadPin,
}

/// What height is measured to.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum HeightTo {
    /// Top face of the forks, below the point that reach is measured to.
    ForkTop,
    /// The rated load centre, as high above the forks as the chart states.
    LoadCentre,
    /// The hook.
    Hook,
    /// The pin at the boom's head.
    HeadPin,
}

/// The two points that a chart's reach and height are measured to, from the tool point (heel or
/// hook), (ahead, up) in machine axes, m.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Measured {
    /// To the point whose reach counts.
    pub reach: DVec2,
    /// To the point whose height counts.
    pub height: DVec2,
}

impl Datum {
    /// Where reach starts, (x, z) in the machine frame, m. The boom foot counts at its own height:
    /// on a slope reach is level from there. All others count on the ground. Not a number where the
    /// machine has no such pads or turntable, so that nothing is read from it.
    pub fn start(&self, machine: &Machine) -> DVec2 {
        let on_ground = |x: f64| DVec2::new(x, 0.0);
        match self.reach_from {
            ReachFrom::FrontTyreFace => on_ground(machine.front_face()),
            ReachFrom::FrontAxle => on_ground(machine.front.x),
            ReachFrom::FrameFront => on_ground(machine.outline.front),
            ReachFrom::StabilizerPads => {
                let pads = machine.stabilizers.as_ref().map(|s| s.pad.x);
                on_ground(pads.or(machine.outriggers.as_ref().map(|o| o.front.x)).unwrap_or(f64::NAN))
            }
            ReachFrom::BoomFoot => machine.boom.foot,
            ReachFrom::TurntableCentre => on_ground(machine.slew.map_or(f64::NAN, |slew| slew.axis)),
            ReachFrom::AheadOfFrontAxle(x) => on_ground(machine.front.x + x),
        }
    }

    /// The points measured to, with the forks tilted by `fork_tilt` (rad, tips up positive) in the
    /// machine frame. The head pin stays where it is when the carriage tilts; all other points turn
    /// about it with the forks. Not a number where the chart measures to a height of the load
    /// centre that it does not state.
    pub fn measured(
        &self,
        load_centre: f64,
        load_centre_height: Option<f64>,
        attachment: &Attachment,
        fork_tilt: f64,
    ) -> Measured {
        let head_pin = -tilted(attachment.tool_point(), fork_tilt);
        let up = match self.height_to {
            HeightTo::LoadCentre => load_centre_height.unwrap_or(f64::NAN),
            HeightTo::ForkTop | HeightTo::Hook | HeightTo::HeadPin => 0.0,
        };
        let ahead = match self.reach_to {
            ReachTo::LoadCentre => load_centre,
            ReachTo::ForkTip => tip(attachment),
            ReachTo::ForkHeel | ReachTo::Hook | ReachTo::HeadPin => 0.0,
        };
        let on_forks = |ahead: f64, up: f64| tilted(DVec2::new(ahead, up), fork_tilt);
        let reach = match self.reach_to {
            ReachTo::HeadPin => head_pin,
            ReachTo::LoadCentre => on_forks(ahead, up),
            ReachTo::ForkHeel | ReachTo::ForkTip | ReachTo::Hook => on_forks(ahead, 0.0),
        };
        let height = match self.height_to {
            HeightTo::HeadPin => head_pin,
            HeightTo::LoadCentre => on_forks(load_centre, up),
            HeightTo::ForkTop | HeightTo::Hook => on_forks(ahead, 0.0),
        };
        Measured { reach, height }
    }
}

/// How far the tip of the longest of blades and sleeves lies from the heel, m; not a number without
/// blades.
fn tip(attachment: &Attachment) -> f64 {
    match &attachment.kind {
        AttachmentKind::Forks(f) => f.longest(),
        _ => f64::NAN,
    }
}

impl Chart {
    /// Where reach starts, (x, z) in the machine frame, m: [`Datum::start`].
    pub fn datum(&self, machine: &Machine) -> DVec2 {
        self.datum.start(machine)
    }

    /// The points measured to, from the tool point: [`Datum::measured`].
    pub fn measured(&self, attachment: &Attachment, fork_tilt: f64) -> Measured {
        let height = self.load_centre_height.map(|h| h.si());
        self.datum.measured(self.load_centre.si(), height, attachment, fork_tilt)
    }

    /// (reach, height) of a tool point (x, z) of the machine frame, machine and forks level, m.
    pub fn point_of(&self, machine: &Machine, attachment: &Attachment, tool: DVec2) -> DVec2 {
        let measured = self.measured(attachment, 0.0);
        DVec2::new(tool.x + measured.reach.x - self.datum(machine).x, tool.y + measured.height.y)
    }

    /// Tool point (x, z) in the machine frame of a (reach, height), machine and forks level, m.
    pub fn tool_at(&self, machine: &Machine, attachment: &Attachment, at: DVec2) -> DVec2 {
        at - self.point_of(machine, attachment, DVec2::ZERO)
    }
}
