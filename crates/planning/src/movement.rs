//! The movement of the boom, leg by leg, as the operator's steps tell it.
//!
//! Setting down: raise retracted, extend, lower straight down, pull the forks straight out, retract,
//! lower to carry. Picking up: the same the other way round. A hook is unhooked instead of pulled out.
//! That is the plain movement. Where something stands in its way, [`crate::boom_path`] looks for turning
//! points ([`Turns`]) of another one, which is made here in the same form.

use crate::Task;
use crate::boom_path::turns::Turns;
use crate::context::Context;
use crate::posed::tool_point;
use geometry::{DVec2, DVec3, Pose};
use machine::{Attachment, AttachmentKind, BoomPosition, kinematics};

/// A boom movement in order.
#[derive(Debug, Clone)]
pub(crate) struct Movement {
    pub(crate) legs: Vec<Leg>,
    /// Loaded positions that are passed. On the plain movement those at which reach or height is greatest:
    /// carried, boom level (where it passes that), raised; on any other every piece of it. Clear of the landing
    /// and set down stand in [`crate::posed::Posed::reach`].
    pub(crate) on_the_way: Vec<Passed>,
    /// Positions passed without load, besides [`Self::free`]; none on the plain movement.
    pub(crate) bare: Vec<Passed>,
    /// Boom with the forks just free of the load; the set-down position for a hook.
    pub(crate) free: BoomPosition,
    /// How far the boom can pull the forks straight out, and how far it must, m.
    pub(crate) withdrawal: (f64, f64),
    /// Where the motion changes from carry to clear above the landing, both included, and from carry to the forks just
    /// free; with each whether the tool point runs straight to it.
    pub(crate) ways: [Vec<(BoomPosition, bool)>; 2],
    /// Raise retracted, extend, and back the same.
    pub(crate) plain: bool,
}

/// A position passed on the way, with the piece of the way that it stands for.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Passed {
    pub(crate) boom: BoomPosition,
    /// Where the piece ends; the same position where it stands for itself alone.
    pub(crate) until: BoomPosition,
    /// How far any point of boom or load may lie off the straight line between both, m.
    pub(crate) off: f64,
    /// Whether the machine is weighed where the piece begins and where it ends. Not where the piece before or after does
    /// so, nor along a leg on which every mass moves straight.
    pub(crate) weighed: [bool; 2],
}

impl Passed {
    /// The positions at which the machine is weighed.
    pub(crate) fn weighed(&self) -> impl Iterator<Item = BoomPosition> + use<> {
        [(self.boom, self.weighed[0]), (self.until, self.weighed[1])].into_iter().filter(|w| w.1).map(|w| w.0)
    }

    /// A position that the boom does not get to: no number, which neither chart nor weighing passes.
    pub(crate) fn out_of_reach() -> Self {
        Self::alone(BoomPosition { angle: f64::NAN, extension: f64::NAN, fork_tilt: f64::NAN })
    }

    pub(crate) fn alone(boom: BoomPosition) -> Self {
        Self { boom, until: boom, off: 0.0, weighed: [true, false] }
    }
}

/// One leg of a movement.
#[derive(Debug, Clone, Copy)]
pub(crate) enum Leg {
    /// Angle and extension run evenly.
    Even(BoomPosition, BoomPosition),
    /// The tool point runs straight, (x, z) in the machine's middle plane; forks keep their tilt.
    Straight {
        from: DVec2,
        to: DVec2,
        tilt: f64,
        /// How much farther the boom's end, off the head pin, may move than the tool point.
        end_turns: f64,
    },
}

impl Leg {
    /// A leg on which the tool point runs straight.
    pub(crate) fn straight(ctx: &Context<'_>, attachment: &Attachment, from: BoomPosition, to: BoomPosition) -> Self {
        let plane = |p: DVec3| DVec2::new(p.x, p.z);
        Self::Straight {
            from: plane(tool_point(ctx, attachment, from)),
            to: plane(tool_point(ctx, attachment, to)),
            tilt: from.fork_tilt,
            end_turns: 1.0 + ctx.machine.boom.head_below.abs() / ctx.machine.boom.head_along.max(0.1),
        }
    }

    /// Boom position at `t` from 0 to 1.
    pub(crate) fn at(&self, ctx: &Context<'_>, attachment: &Attachment, t: f64) -> Option<BoomPosition> {
        match *self {
            Self::Even(a, b) => Some(BoomPosition {
                angle: a.angle + (b.angle - a.angle) * t,
                extension: a.extension + (b.extension - a.extension) * t,
                fork_tilt: a.fork_tilt,
            }),
            Self::Straight { from, to, tilt, .. } => {
                kinematics::position_for(&ctx.machine.boom, attachment, from.lerp(to, t), tilt).ok()
            }
        }
    }

    /// Farthest that any point within `radius` of the boom's foot moves between `t0` and `t1`, m.
    /// On a straight leg head, carriage and load move with the tool point, and the boom between
    /// foot and head by less; its end, `head_below` off the head pin, turns besides by no more than
    /// the head moves over the boom's length.
    pub(crate) fn travel(&self, t0: f64, t1: f64, radius: f64) -> f64 {
        let share = (t1 - t0).abs();
        share
            * match *self {
                Self::Even(a, b) => (a.angle - b.angle).abs() * radius + (a.extension - b.extension).abs(),
                Self::Straight { from, to, end_turns, .. } => end_turns * from.distance(to),
            }
    }
}

/// The plain movement of a lift from carry over `above` to `down` and back.
pub(crate) fn movement(
    ctx: &Context<'_>,
    attachment: &Attachment,
    carry: BoomPosition,
    [above, down]: [BoomPosition; 2],
) -> Movement {
    let retracted = |angle: f64| BoomPosition { angle, extension: 0.0, fork_tilt: carry.fork_tilt };
    let under = blade_under_load(ctx, attachment);
    let (free, room) = pulled_out(ctx, attachment, down, under);
    let raised = retracted(above.angle);
    let mut legs = vec![Leg::Even(carry, raised), Leg::Even(raised, above)];
    legs.extend(at_landing(ctx, attachment, [above, down, free]));
    legs.extend([Leg::Even(free, retracted(free.angle)), Leg::Even(retracted(free.angle), carry)]);
    in_order(ctx, &mut legs);
    let mut on_the_way = vec![Passed::alone(carry), Passed::alone(raised)];
    if carry.angle < 0.0 && raised.angle > 0.0 {
        on_the_way.push(Passed::alone(retracted(0.0)));
    }
    let ways = [above, free].map(|end| [carry, retracted(end.angle), end].map(|boom| (boom, false)).to_vec());
    Movement { legs, on_the_way, bare: Vec::new(), free, withdrawal: (room, under), ways, plain: true }
}

/// The movement by turning points.
pub(crate) fn by_turns(
    ctx: &Context<'_>,
    attachment: &Attachment,
    carry: BoomPosition,
    [above, down]: [BoomPosition; 2],
    turns: &Turns,
    site_from_machine: Pose,
) -> Movement {
    let under = blade_under_load(ctx, attachment);
    let (free, room) = pulled_out(ctx, attachment, down, under);
    let ways = [
        turns.loaded.positions(ctx, attachment, site_from_machine, [carry, above]),
        turns.bare.positions(ctx, attachment, site_from_machine, [carry, free]),
    ];
    let [way_in, way_out] = [&ways[0], &ways[1]].map(|way| legs_between(ctx, attachment, way));
    let mut legs = way_in.clone();
    legs.extend(at_landing(ctx, attachment, [above, down, free]));
    legs.extend(way_out.iter().rev());
    in_order(ctx, &mut legs);
    let pieces = |legs: &[Leg]| crate::boom_path::pieces::of(ctx, attachment, legs);
    Movement {
        legs,
        on_the_way: pieces(&way_in),
        bare: pieces(&way_out),
        free,
        withdrawal: (room, under),
        ways,
        plain: false,
    }
}

/// The legs of a way.
fn legs_between(ctx: &Context<'_>, attachment: &Attachment, way: &[(BoomPosition, bool)]) -> Vec<Leg> {
    let leg = |(from, (to, straight)): (&(BoomPosition, bool), &(BoomPosition, bool))| {
        if *straight { Leg::straight(ctx, attachment, from.0, *to) } else { Leg::Even(from.0, *to) }
    };
    way.iter().zip(way.iter().skip(1)).map(leg).collect()
}

/// Straight down, and the forks straight out.
fn at_landing(ctx: &Context<'_>, attachment: &Attachment, [above, down, free]: [BoomPosition; 3]) -> [Leg; 2] {
    [Leg::straight(ctx, attachment, above, down), Leg::straight(ctx, attachment, down, free)]
}

fn in_order(ctx: &Context<'_>, legs: &mut [Leg]) {
    if ctx.lift.task == Task::PickUp {
        // The same positions, passed the other way round.
        legs.reverse();
    }
}

/// Length of blade or tool under the load, m; 0 for a hook, a bucket, a clamp.
fn blade_under_load(ctx: &Context<'_>, attachment: &Attachment) -> f64 {
    match &attachment.kind {
        AttachmentKind::Forks(f) if ctx.load.hanging.is_none() => f.longest().min(ctx.load.depth),
        // Not known how it lets go of the load: as if it lay under all of it.
        AttachmentKind::Other(_) if ctx.load.hanging.is_none() => ctx.load.depth,
        // A bucket tips out, a clamp opens.
        _ => 0.0,
    }
}

/// Boom after pulling the forks straight and level out by `length`, or as far as it goes, and how far.
fn pulled_out(ctx: &Context<'_>, attachment: &Attachment, down: BoomPosition, length: f64) -> (BoomPosition, f64) {
    let tool = tool_point(ctx, attachment, down);
    let (sin, cos) = libm::sincos(down.fork_tilt);
    let back = |d: f64| {
        let to = DVec2::new(tool.x - d * cos, tool.z - d * sin);
        kinematics::position_for(&ctx.machine.boom, attachment, to, down.fork_tilt)
    };
    if let Ok(free) = back(length) {
        return (free, length);
    }
    let (mut good, mut bad) = (0.0, length);
    while bad - good > 0.001 {
        let middle = f64::midpoint(good, bad);
        if back(middle).is_ok() { good = middle } else { bad = middle }
    }
    (back(good).unwrap_or(down), good)
}
