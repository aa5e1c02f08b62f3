//! What stands in the way where there is none, and by how much: the way with the most room at its narrowest place.
//!
//! Looked for on the coarse lattice at its nodes and the middles of its edges, without chart and tipping. It only
//! explains; what is refused was refused before.

use super::find::LEFT;
use super::guards::{Guards, Origin, Room};
use super::lattice::{Lattice, STEPS};
use super::look_for;
use crate::Stand;
use crate::check::check_context;
use crate::checks::obstacle;
use crate::context::Context;
use crate::posed::{Posed, pose};
use crate::set_backs::SetBacks;
use geometry::DVec2;
use machine::{Attachment, CARRIAGE_HALF};
use std::cmp::Ordering;
use std::collections::BinaryHeap;

/// What stands in the way.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) enum Blocked {
    /// There is room, but the chart ends or the machine tips.
    Chart,
    /// Every way touches it.
    Touches(Origin),
    /// So much room is missing on the best way, m.
    Short(Origin, f64),
    /// Its best opening is too low by so much for what has to go through, m.
    TooLow { origin: Origin, missing: f64, needed: f64 },
    /// The same, too narrow.
    TooNarrow { origin: Origin, missing: f64, needed: f64 },
}

/// What blocks the way to the landing, or without load back from it.
pub(crate) fn blocked(ctx: &Context<'_>, posed: &Posed, attachment: &Attachment, bare: bool) -> Blocked {
    let (Ok([above, _]), Some(movement)) = (posed.reach, &posed.movement) else { return Blocked::Chart };
    let guards = Guards::new(ctx, posed, attachment);
    let lattice = Lattice::new(ctx, attachment, posed.carry, [above, movement.free], STEPS[0]);
    let narrowest = widest(ctx, attachment, &guards, &lattice, usize::from(bare));
    let Some((room, origin)) = narrowest.filter(|r| r.left < LEFT).and_then(|r| Some((r, r.origin?))) else {
        return Blocked::Chart;
    };
    if let Some(opening) = opening(ctx, posed, origin) {
        return opening;
    }
    if room.left <= -room.required || room.required.is_nan() {
        Blocked::Touches(origin)
    } else {
        Blocked::Short(origin, LEFT - room.left)
    }
}

/// Least room on the way that has the most of it; `None` without any way.
fn widest(
    ctx: &Context<'_>,
    attachment: &Attachment,
    guards: &Guards<'_, '_>,
    lattice: &Lattice,
    end: usize,
) -> Option<Room> {
    let start = lattice.ends[end];
    let mut closed = vec![false; lattice.nodes.len()];
    let mut open = BinaryHeap::from([Widest { room: guards.room(lattice.nodes[start as usize]), node: start }]);
    while let Some(Widest { room, node }) = open.pop() {
        if core::mem::replace(&mut closed[node as usize], true) {
            continue;
        }
        if node == lattice.carry {
            return Some(room);
        }
        for edge in &lattice.at[node as usize] {
            let edge = &lattice.edges[*edge as usize];
            let to = if edge.ends[0] == node { edge.ends[1] } else { edge.ends[0] };
            if closed[to as usize] {
                continue;
            }
            let middle = lattice.leg(ctx, attachment, edge).at(ctx, attachment, 0.5);
            let rooms = middle.into_iter().chain([lattice.nodes[to as usize]]).map(|boom| guards.room(boom));
            let least = rooms.fold(room, |least, r| if r.left < least.left { r } else { least });
            open.push(Widest { room: least, node: to });
        }
    }
    None
}

/// Height of the blades under a load as the parts count them, m.
const BLADES: f64 = 0.10;

/// The opening of a thing that comes nearest to being large enough; `None` where it has none, or one is.
fn opening(ctx: &Context<'_>, posed: &Posed, origin: Origin) -> Option<Blocked> {
    let Origin::Thing(i) = origin else { return None };
    let thing = ctx.job.surroundings.things.get(i)?;
    let load = ctx.load;
    let required = obstacle::demands(ctx, Some(posed), thing).iter().map(|d| d.required).fold(0.0, f64::max);
    let tall = (load.height + BLADES).max(machine::BACKREST + BLADES);
    let wide = (load.width + ctx.lift.side_shift.abs()).max(2.0 * CARRIAGE_HALF);
    let lack = |o: &site::Opening| {
        // Over a sill at the landing's level it goes low on purpose.
        let over = if obstacle::sill_at_landing(ctx, o) { ctx.landing.level - o.sill + ctx.clear() } else { required };
        let height = if load.hanging.is_some() { f64::NEG_INFINITY } else { tall + over + required };
        let width = wide + 2.0 * required;
        (height - (o.head - o.sill), width - o.from.distance(o.to), height, width)
    };
    let worst = |l: &(f64, f64, f64, f64)| l.0.max(l.1);
    let best = thing.openings.iter().map(lack).min_by(|a, b| worst(a).total_cmp(&worst(b)))?;
    if worst(&best) <= 0.0 {
        None
    } else if best.0 >= best.1 {
        Some(Blocked::TooLow { origin, missing: best.0, needed: best.2 })
    } else {
        Some(Blocked::TooNarrow { origin, missing: best.1, needed: best.3 })
    }
}

/// Name of what stands in the way.
pub(crate) fn name(ctx: &Context<'_>, origin: Origin) -> String {
    let around = &ctx.job.surroundings;
    let name = match origin {
        Origin::Thing(i) => around.things.get(i).map(|t| &t.name),
        Origin::Zone(i) => around.zones.get(i).map(|z| &z.name),
        Origin::Line(i) => ctx.job.lines.get(i).map(|l| &l.name),
    };
    name.cloned().unwrap_or_default()
}

/// How far the machine would have to drive back along its heading, boom down in carry, for the lift to pass with any
/// movement, m; negative: forward. Half-metres up to 1.5 m are tried with every check; `None`: none of them.
pub(crate) fn other_stand(ctx: &Context<'_>) -> Option<f64> {
    let (sin, cos) = libm::sincos(ctx.stand.heading);
    let mut set_backs = SetBacks::default();
    set_backs.only_whether(true);
    [0.5, -0.5, 1.0, -1.0, 1.5, -1.5].into_iter().find(|back| {
        let stand = Stand { at: ctx.stand.at - DVec2::new(cos, sin) * *back, ..ctx.stand };
        let tried = Context { stand, turns: None, ..*ctx };
        let plain = check_context(tried, &mut set_backs);
        let passes = |check: &crate::LiftCheck<'_>| check.verdict() != evidence::Verdict::NoGo;
        if passes(&plain) {
            return true;
        }
        let (Ok(posed), Some(attachment)) = (pose(&plain.ctx), ctx.attachment) else { return false };
        look_for(&plain.ctx, &posed, attachment)
            .is_ok_and(|turns| passes(&check_context(Context { turns: Some(turns), ..tried }, &mut set_backs)))
    })
}

/// The roomiest first, among equals the earlier node.
struct Widest {
    room: Room,
    node: u32,
}

impl PartialEq for Widest {
    fn eq(&self, other: &Self) -> bool {
        self.cmp(other) == Ordering::Equal
    }
}

impl Eq for Widest {}

impl PartialOrd for Widest {
    fn partial_cmp(&self, other: &Self) -> Option<Ordering> {
        Some(self.cmp(other))
    }
}

impl Ord for Widest {
    fn cmp(&self, other: &Self) -> Ordering {
        self.room.left.total_cmp(&other.room.left).then_with(|| other.node.cmp(&self.node))
    }
}
