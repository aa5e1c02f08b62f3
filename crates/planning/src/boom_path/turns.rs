//! Turning points of a movement, kept by their place on the site.
//!
//! A movement is looked for once for a lift. Where load, ground or wind are then changed, as the tolerances do, the same
//! places are passed again: the boom positions are reckoned anew from them, and the whole movement is checked anew. So
//! nothing is looked for a second time, and what a tolerance says holds for the movement that the operator is told.

use crate::context::Context;
use geometry::{DVec2, DVec3, Pose};
use machine::{Attachment, BoomPosition, kinematics};
use quantity::Si;

/// Most turning points of a way; a way with more is no instruction.
pub(crate) const MOST: usize = 10;

/// Turning points on the way with the load and on the way without it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Turns {
    /// From carry to clear above the landing.
    pub(crate) loaded: Way,
    /// From carry to the forks just free of the load.
    pub(crate) bare: Way,
}

/// The turning points between carry and one end.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Way {
    count: usize,
    at: [Turn; MOST],
    /// The last leg, to the end, runs straight.
    last_straight: bool,
}

/// One turning point.
#[derive(Debug, Clone, Copy, PartialEq)]
struct Turn {
    /// Tool point: ahead of the landing along the heading, to the left, and its level, m.
    tool: DVec3,
    /// The boom is retracted there.
    retracted: bool,
    /// The tool point runs straight to it.
    straight: bool,
}

impl Way {
    /// A way through boom positions, `through` from carry to the end with both, `straight` for each leg between
    /// them. `None`: too many.
    pub(crate) fn new(
        ctx: &Context<'_>,
        attachment: &Attachment,
        site_from_machine: Pose,
        through: &[BoomPosition],
        straight: &[bool],
    ) -> Option<Self> {
        let none = Turn { tool: DVec3::ZERO, retracted: false, straight: false };
        let mut way = Self { count: 0, at: [none; MOST], last_straight: straight.last().copied().unwrap_or(false) };
        let inner = through.len().saturating_sub(2);
        for (boom, straight) in through.iter().skip(1).take(inner).zip(straight) {
            let site = site_from_machine * crate::posed::tool_point(ctx, attachment, *boom);
            let aside = site.truncate() - ctx.landing.at;
            let forward = ahead(ctx);
            let tool = DVec3::new(aside.dot(forward), aside.dot(forward.perp()), site.z);
            *way.at.get_mut(way.count)? = Turn { tool, retracted: boom.extension <= 0.0, straight: *straight };
            way.count += 1;
        }
        Some(way)
    }

    /// Boom positions from carry to the end for a machine that stands so.
    pub(crate) fn positions(
        &self,
        ctx: &Context<'_>,
        attachment: &Attachment,
        site_from_machine: Pose,
        [carry, end]: [BoomPosition; 2],
    ) -> Vec<(BoomPosition, bool)> {
        let forward = ahead(ctx);
        let machine_from_site = site_from_machine.inverse();
        let mut out = Vec::with_capacity(self.count + 2);
        out.push((carry, false));
        for turn in self.at.iter().take(self.count) {
            let plan = ctx.landing.at + forward * turn.tool.x + forward.perp() * turn.tool.y;
            let tool = machine_from_site * plan.extend(turn.tool.z);
            let mut boom = nearest(ctx, attachment, DVec2::new(tool.x, tool.z), end.fork_tilt);
            if turn.retracted {
                boom.extension = 0.0;
            }
            out.push((boom, turn.straight));
        }
        out.push((end, self.last_straight));
        out
    }
}

fn ahead(ctx: &Context<'_>) -> DVec2 {
    let (sin, cos) = libm::sincos(ctx.stand.heading);
    DVec2::new(cos, sin)
}

/// Boom position with the tool point there, or as near to it as angle and extension go.
fn nearest(ctx: &Context<'_>, attachment: &Attachment, target: DVec2, fork_tilt: f64) -> BoomPosition {
    let boom = &ctx.machine.boom;
    if let Ok(there) = kinematics::position_for(boom, attachment, target, fork_tilt) {
        return there;
    }
    // The tool point of a head pin at the foot: what the carriage adds.
    let (sin, cos) = libm::sincos(fork_tilt);
    let tool = attachment.tool_point();
    let v = target - DVec2::new(tool.x * cos - tool.y * sin, tool.x * sin + tool.y * cos) - boom.foot;
    let along = (v.length_squared() - boom.head_below * boom.head_below).max(0.0).sqrt();
    let angle = libm::atan2(v.y, v.x) + libm::atan2(boom.head_below, along);
    BoomPosition {
        angle: angle.clamp(boom.angle_min.si(), boom.angle_max.si()),
        extension: (along - boom.head_along).clamp(0.0, boom.extension_max.si()),
        fork_tilt,
    }
}
