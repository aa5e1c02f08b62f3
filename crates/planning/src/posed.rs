//! The machine on the ground with the boom where the lift needs it.

use crate::context::Context;
use crate::movement::{Movement, by_turns, movement};
use crate::standing::{self, Levelled};
use geometry::{DVec2, DVec3, Pose};
use machine::kinematics::{self, OutOfReach};
use machine::{Attachment, BoomPosition};
use quantity::Si;
use site::footing::{Contacts, Footing, heights, on_heights};

/// A lift posed: all that the checks of level, chart, statics, lines and ground share.
#[derive(Debug, Clone)]
pub(crate) struct Posed {
    /// The ground under the contacts, the frame as it lies there.
    pub(crate) ground: Footing,
    /// The frame as it stands while the boom is up; differs from `ground` where it is levelled.
    pub(crate) footing: Footing,
    /// The frame levelled, where that is asked and the machine can.
    pub(crate) levelled: Option<Levelled>,
    /// Target of the tool point (heel or hook) at set-down, machine frame, m.
    pub(crate) target: DVec3,
    /// Boom carried for driving.
    pub(crate) carry: BoomPosition,
    /// Boom with the load clear above the landing, and at set-down; or why it does not get there.
    pub(crate) reach: Result<[BoomPosition; 2], OutOfReach>,
    /// The boom's movement, where it gets there.
    pub(crate) movement: Option<Movement>,
}

/// Why a lift cannot be posed.
#[derive(Debug, Clone, PartialEq)]
pub(crate) enum NotPosed {
    /// Ground heights that are known, by contact; at least one is not.
    Ground([Option<f64>; 4]),
    /// The attachment is unknown to the machine.
    Attachment,
}

impl NotPosed {
    /// Why, in words.
    pub(crate) fn why(&self) -> evidence::TextId {
        match self {
            Self::Ground(_) => crate::text::WHY_NO_GROUND,
            Self::Attachment => crate::text::WHY_NO_ATTACHMENT,
        }
    }

    /// What to do.
    pub(crate) fn remedy(&self) -> evidence::TextId {
        match self {
            Self::Ground(_) => crate::text::DO_SURVEY,
            Self::Attachment => crate::text::DO_LISTED_ATTACHMENT,
        }
    }
}

/// Why there are no statics: not posed, or the boom does not get there.
pub(crate) fn why_not(posed: Result<&Posed, &NotPosed>) -> (evidence::TextId, evidence::TextId) {
    match posed {
        Ok(_) => (crate::text::WHY_NO_REACH, crate::text::DO_LESS_REACH),
        Err(not) => (not.why(), not.remedy()),
    }
}

pub(crate) fn contacts(ctx: &Context<'_>) -> Contacts {
    let [front, rear] = ctx.machine.contacts(ctx.lift.support);
    Contacts { front_x: front.x, front_half: front.y, rear_x: rear.x, rear_half: rear.y }
}

/// The ground under the contacts with the stand where it is meant to be.
fn lies_there(ctx: &Context<'_>, contacts: &Contacts, at: DVec2) -> Result<Footing, site::footing::Unknown> {
    let heading = ctx.stand.heading;
    let mut surveyed = heights(&ctx.job.ground, at, heading, contacts)?;
    for (z, by) in surveyed.at.iter_mut().zip(ctx.lowered) {
        *z -= by;
    }
    if ctx.exact_ground {
        surveyed.accuracy = 0.0;
    }
    Ok(on_heights(at, heading, contacts, surveyed))
}

/// Widened by the stand's error: the same read with the stand off to each corner of that error counts too.
fn within_error(
    ctx: &Context<'_>,
    contacts: &Contacts,
    mut ground: Footing,
) -> Result<Footing, site::footing::Unknown> {
    let stand = ctx.stand;
    let error = ctx.policy.stand_error;
    if error > 0.0 {
        let (sin, cos) = libm::sincos(stand.heading);
        let ahead = DVec2::new(cos, sin) * error;
        for (x, y) in [(1.0, 1.0), (1.0, -1.0), (-1.0, 1.0), (-1.0, -1.0)] {
            ground.widen(&lies_there(ctx, contacts, stand.at + ahead * x + ahead.perp() * y)?);
        }
    }
    Ok(ground)
}

/// What is known of a stand before its error and the movement are looked at: where the boom has to reach.
pub(crate) struct Aimed {
    contacts: Contacts,
    ground: Footing,
    fork_tilt: f64,
    /// Target of the tool point at set-down and clear above it, machine frame, m.
    target: [DVec3; 2],
    /// Boom with the load clear above the landing, and at set-down; or why it does not get there.
    reach: Result<[BoomPosition; 2], OutOfReach>,
}

impl Aimed {
    /// Target of the tool point at set-down, machine frame, m.
    pub(crate) fn target(&self) -> DVec3 {
        self.target[0]
    }

    /// True if the boom gets to the landing and clear above it.
    pub(crate) fn reaches(&self) -> bool {
        self.reach.is_ok()
    }
}

/// Aims a lift's boom from its stand at the landing, forks level by gravity, whatever the machine's own pitch.
pub(crate) fn aim(ctx: &Context<'_>) -> Result<Aimed, NotPosed> {
    let contacts = contacts(ctx);
    let ground = lies_there(ctx, &contacts, ctx.stand.at).map_err(NotPosed::Ground)?;
    let attachment = ctx.attachment.ok_or(NotPosed::Attachment)?;
    // How far the frame can be levelled, and where that puts it, goes with the ground as it is meant to be.
    let levelled = standing::levelled(ctx, &ground);
    let site_from_machine =
        levelled.map_or(ground.site_from_machine, |l| standing::footing_levelled(ctx, &ground, &l).site_from_machine);
    let machine_from_site = site_from_machine.inverse();
    let (s, c) = libm::sincos(ctx.stand.heading);
    let forward = DVec2::new(c, s);
    let tool_at = |lift_by: f64| -> DVec3 {
        let site = match &ctx.load.hanging {
            Some(h) => ctx.landing.at.extend(ctx.landing.level + ctx.load.height + h.drop + lift_by),
            // The load's middle comes to lie on the landing: the heel is half its depth short of it.
            None => (ctx.landing.at - forward * (ctx.load.depth * 0.5)).extend(ctx.landing.level + lift_by),
        };
        machine_from_site * site
    };
    let target = [tool_at(0.0), tool_at(ctx.clear())];
    let fork_tilt = -libm::atan(ground.along.nominal);
    let to = |p: DVec3| kinematics::position_for(&ctx.machine.boom, attachment, DVec2::new(p.x, p.z), fork_tilt);
    let above = to(target[1]);
    let reach = above.and_then(|a| to(target[0]).map(|b| [a, b]));
    Ok(Aimed { contacts, ground, fork_tilt, target, reach })
}

/// Poses a lift whose boom is aimed.
pub(crate) fn posed(ctx: &Context<'_>, aimed: Aimed) -> Result<Posed, NotPosed> {
    let Aimed { contacts, ground, fork_tilt, target, reach } = aimed;
    let attachment = ctx.attachment.ok_or(NotPosed::Attachment)?;
    let ground = within_error(ctx, &contacts, ground).map_err(NotPosed::Ground)?;
    let levelled = standing::levelled(ctx, &ground);
    let footing = levelled.map_or_else(|| ground.clone(), |l| standing::footing_levelled(ctx, &ground, &l));
    let limits = &ctx.machine.limits.carry;
    let carry = BoomPosition { angle: limits.angle.si(), extension: 0.0, fork_tilt };
    let movement = reach.ok().map(|poses| match &ctx.turns {
        None => movement(ctx, attachment, carry, poses),
        Some(turns) => by_turns(ctx, attachment, carry, poses, turns, footing.site_from_machine),
    });
    Ok(Posed { ground, footing, levelled, target: target[0], carry, reach, movement })
}

/// Poses a lift.
pub(crate) fn pose(ctx: &Context<'_>) -> Result<Posed, NotPosed> {
    aim(ctx).and_then(|aimed| posed(ctx, aimed))
}

impl Posed {
    /// Rotation from the carriage (x along the forks) to the machine frame.
    pub(crate) fn carriage(tool: DVec3, boom: BoomPosition) -> Pose {
        let (s, c) = libm::sincos(boom.fork_tilt);
        Pose::from_axes(DVec3::new(c, 0.0, s), DVec3::Y, tool)
    }
}

/// Fork heel or hook for a boom position, machine frame, m.
pub(crate) fn tool_point(ctx: &Context<'_>, attachment: &Attachment, boom: BoomPosition) -> DVec3 {
    kinematics::tool_point(&ctx.machine.boom, attachment, boom)
}
