//! Another way for the boom where the plain movement is refused.
//!
//! Looked for in the boom's plane, angle and extension, with the forks level by gravity: from carry to clear above the
//! landing with the load on, and from the forks just free of the load back to carry. Straight down and straight out
//! stay as they are. At every point of a way that is found there is room to everything ([`guards`]), and the chart and
//! the load factor and tilt asked for hold ([`sound`]). The ways found become turning points ([`turns`]), these a
//! movement in the form of the plain one, and every check is made of that as of any other.
//!
//! - [`lattice`]: the plane as a graph
//! - [`find`]: the cheapest way through it; raising retracted, then extending, is the cheapest there is
//! - [`pieces`]: a way cut so that the chart can be read and the machine weighed for all of it

pub(crate) mod blocked;
pub(crate) mod find;
pub(crate) mod guards;
pub(crate) mod lattice;
pub(crate) mod pieces;
pub(crate) mod sound;
pub(crate) mod turns;

use crate::checks::chart::{self, Place};
use crate::checks::statics;
use crate::context::Context;
use crate::movement::Leg;
use crate::posed::{Posed, tool_point};
use find::{Field, Found, leg_free};
use guards::{Guards, Room};
use lattice::{Lattice, STEPS};
use machine::{Attachment, BoomPosition};
use sound::Sound;
use turns::{Turns, Way};

/// Why there is no other way.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) enum NoWay {
    /// At the landing the chart ends or the machine tips, or the boom does not get there: those checks say so.
    Landing,
    /// Something stands too near to the machine itself, to the boom in carry, or to the load as it is set down.
    End(End, Room),
    /// No way with the load from carry to the landing.
    Loaded,
    /// None without load from the landing back to carry.
    Bare,
}

/// What no movement changes.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum End {
    /// Frame and cab where they stand.
    Frame,
    /// Boom and load down in carry.
    Carry,
    /// Load and boom at the landing, straight down and straight out.
    Landing,
}

/// Turning points of a movement that is free, charted and does not tip the machine.
pub(crate) fn look_for(ctx: &Context<'_>, posed: &Posed, attachment: &Attachment) -> Result<Turns, NoWay> {
    let (Ok([above, down]), Some(movement)) = (posed.reach, &posed.movement) else { return Err(NoWay::Landing) };
    let guards = Guards::new(ctx, posed, attachment);
    let (carry, free) = (posed.carry, movement.free);
    if let Some(end) = too_near(ctx, attachment, &guards, carry, [above, down, free]) {
        return Err(end);
    }
    if !landing_passes(ctx, posed, attachment, [above, down]) {
        return Err(NoWay::Landing);
    }
    let mut none = NoWay::Loaded;
    for fine in STEPS {
        let lattice = Lattice::new(ctx, attachment, carry, [above, free], fine);
        let mut field = Field::new(ctx, attachment, &guards, lattice);
        let mut way = |end: usize, none: &mut NoWay| -> Option<Way> {
            let mut sound = Sound::new(ctx, posed, attachment, &field.lattice, end == 0, free);
            *none = if end == 0 { NoWay::Loaded } else { NoWay::Bare };
            let mut found = field.way(end, &mut sound)?;
            if fine.together {
                found = field.shortened(found, &sound);
            }
            let Found { through, straight } = found;
            Way::new(ctx, attachment, posed.footing.site_from_machine, &through, &straight)
        };
        if let Some(loaded) = way(0, &mut none)
            && let Some(bare) = way(1, &mut none)
        {
            return Ok(Turns { loaded, bare });
        }
    }
    Err(none)
}

/// What stands too near, however the boom gets from carry to the landing.
fn too_near(
    ctx: &Context<'_>,
    attachment: &Attachment,
    guards: &Guards<'_, '_>,
    carry: BoomPosition,
    [above, down, free]: [BoomPosition; 3],
) -> Option<NoWay> {
    let short = |end, room: Room| (room.left < 0.0 || room.left.is_nan()).then_some(NoWay::End(end, room));
    short(End::Frame, guards.room_of_frame()).or_else(|| short(End::Carry, guards.room(carry))).or_else(|| {
        [(above, down), (down, free)].into_iter().find_map(|(from, to)| {
            let leg = Leg::straight(ctx, attachment, from, to);
            if leg_free(ctx, attachment, guards, &leg, 0.0) {
                return None;
            }
            let at = |i: i32| leg.at(ctx, attachment, f64::from(i) / 20.0).map(|boom| guards.room(boom));
            let worst = (0..=20).filter_map(at).min_by(|a, b| a.left.total_cmp(&b.left))?;
            Some(NoWay::End(End::Landing, worst))
        })
    })
}

/// True if chart and tipping allow the load at the landing.
fn landing_passes(ctx: &Context<'_>, posed: &Posed, attachment: &Attachment, poses: [BoomPosition; 2]) -> bool {
    let Some(chart) = chart::choose(ctx, Some(posed)) else { return false };
    let charted = poses.iter().all(|boom| {
        let place = Place::landing(tool_point(ctx, attachment, *boom));
        let read = chart::read(ctx, posed, chart, attachment, place, &mut evidence::Silent);
        read.capacity.is_some_and(|capacity| ctx.load.mass_kg.high <= capacity)
    });
    charted && statics::landing_holds(ctx, posed, attachment)
}
