//! The boom's movement as the plan tells it: every position where the motion changes, and where the least is left.

use crate::boom_path::blocked;
use crate::boom_path::guards::{Guards, Room};
use crate::check::LiftCheck;
use crate::checks::chart::{self, Place};
use crate::checks::{angle, metres, reserve, spare};
use crate::context::Context;
use crate::movement::{Leg, Movement};
use crate::posed::{Posed, tool_point};
use crate::scene::View;
use crate::{BoomMovement, BoomStep, SmallestReserve, Task, steps, text};
use evidence::Message;
use geometry::DVec3;
use machine::{Attachment, BoomPosition, kinematics};

/// How far apart a leg is looked at for where the least is left, m.
const LOOK: f64 = 0.10;

/// Nearer than so many times the distance required, a thing is named to be watched.
const WATCH: f64 = 2.0;

/// The movement of a lift, in the order in which it is made. `None`: the boom does not get there.
pub(crate) fn boom_movement(check: &LiftCheck<'_>, posed: &Posed) -> Option<BoomMovement> {
    let (ctx, attachment, movement) = (&check.ctx, check.ctx.attachment?, posed.movement.as_ref()?);
    let guards = Guards::new(ctx, posed, attachment);
    let view = View::of(ctx, posed);
    let mut before: Option<BoomPosition> = None;
    let mut nearest: Option<(Room, BoomPosition, usize)> = None;
    let mut steps = Vec::new();
    for (number, turn) in turns(posed, movement, ctx.lift.task)?.into_iter().enumerate() {
        let mut what = turn.said(ctx, posed, attachment, before);
        if let Some(from) = before {
            let leg = turn.leg(ctx, attachment, from);
            let least = least_room(ctx, attachment, &guards, &leg);
            if let Some((room, at)) = least
                && nearest.is_none_or(|(known, ..)| reserve_of(&room) < reserve_of(&known))
            {
                nearest = Some((room, at, number));
            }
            let watched = least.filter(|(r, _)| !movement.plain && r.left < (WATCH - 1.0) * r.required);
            if let Some((room, origin)) = watched.and_then(|(r, _)| Some((r, r.origin?))) {
                what = text::STEP_WAY_WATCH
                    .with("what", what)
                    .with("thing", blocked::name(ctx, origin))
                    .with("distance", metres((room.left + room.required).max(0.0)));
            }
        }
        let tool = tool_point(ctx, attachment, turn.boom);
        let foot = DVec3::new(ctx.machine.boom.foot.x, 0.0, ctx.machine.boom.foot.y);
        let end = crate::scene::boom_end(ctx.machine, turn.boom);
        let (load, ..) = crate::scene::load_picture(&view, ctx, tool, turn.boom);
        steps.push(BoomStep {
            angle_rad: turn.boom.angle,
            extension_m: turn.boom.extension,
            tilt_rad: turn.boom.fork_tilt,
            tool: view.machine(tool),
            boom: [foot, end, kinematics::head(&ctx.machine.boom, turn.boom)].map(|p| view.machine(p)).to_vec(),
            load: if turn.loaded { load } else { Vec::new() },
            loaded: turn.loaded,
            straight: turn.straight,
            what,
        });
        before = Some(turn.boom);
    }
    let smallest = smallest(check, posed, attachment, movement, nearest.map(|(room, at, _)| (room, at)));
    let smallest = smallest.map(|(reserve, check, boom)| SmallestReserve {
        reserve,
        check: check.to_owned(),
        angle_rad: boom.angle,
        extension_m: boom.extension,
        tool: view.machine(tool_point(ctx, attachment, boom)),
    });
    Some(BoomMovement { steps, smallest, plain: movement.plain })
}

/// What is done to get to a position.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Doing {
    Starts,
    Moves,
    SetsDown,
    TakesUp,
    PullsOut,
    PushesIn,
}

/// A position where the motion changes.
#[derive(Debug, Clone, Copy)]
struct TurnOf {
    boom: BoomPosition,
    /// The tool point runs straight to it.
    straight: bool,
    loaded: bool,
    doing: Doing,
}

/// Every position in order.
fn turns(posed: &Posed, movement: &Movement, task: Task) -> Option<Vec<TurnOf>> {
    let [above, down] = posed.reach.ok()?;
    let [way_in, way_out] = &movement.ways;
    let forth = |way: &[(BoomPosition, bool)], loaded: bool| -> Vec<TurnOf> {
        let turn = |(boom, straight): &(BoomPosition, bool)| TurnOf {
            boom: *boom,
            straight: *straight,
            loaded,
            doing: Doing::Moves,
        };
        way.iter().map(turn).collect()
    };
    // Back, each leg belongs to the position before it.
    let back = |way: &[(BoomPosition, bool)], loaded: bool| -> Vec<TurnOf> {
        let turn = |((boom, _), (_, straight)): (&(BoomPosition, bool), &(BoomPosition, bool))| TurnOf {
            boom: *boom,
            straight: *straight,
            loaded,
            doing: Doing::Moves,
        };
        way.iter().zip(way.iter().skip(1)).rev().map(turn).collect()
    };
    let at = |boom, loaded, doing| TurnOf { boom, straight: true, loaded, doing };
    let mut all = match task {
        Task::SetDown => {
            let mut all = forth(way_in, true);
            all.push(at(down, true, Doing::SetsDown));
            all.push(at(movement.free, false, Doing::PullsOut));
            all.extend(back(way_out, false));
            all
        }
        Task::PickUp => {
            let mut all = forth(way_out, false);
            all.push(at(down, true, Doing::PushesIn));
            all.push(at(above, true, Doing::TakesUp));
            all.extend(back(way_in, true));
            all
        }
    };
    all.first_mut()?.doing = Doing::Starts;
    // A position that is already there is no step; that the load is let go of is one.
    all.dedup_by(|next, before| next.boom == before.boom && next.doing == Doing::Moves);
    Some(all)
}

impl TurnOf {
    fn leg(&self, ctx: &Context<'_>, attachment: &Attachment, from: BoomPosition) -> Leg {
        if self.straight { Leg::straight(ctx, attachment, from, self.boom) } else { Leg::Even(from, self.boom) }
    }

    /// What is done to get there, in the terms of the cab.
    fn said(&self, ctx: &Context<'_>, posed: &Posed, attachment: &Attachment, from: Option<BoomPosition>) -> Message {
        let (to, clear) = (self.boom, metres(ctx.clear()));
        let both = |id: evidence::TextId| id.with("angle", angle(to.angle)).with("extension", metres(to.extension));
        let plain = posed.movement.as_ref().is_some_and(|m| m.plain);
        let start = || text::STEP_WAY_START.with("angle", angle(to.angle));
        let Some(from) = from else { return start() };
        match self.doing {
            Doing::Starts => return start(),
            Doing::SetsDown => return both(text::STEP_SET_DOWN).with("height", clear),
            Doing::TakesUp => return text::STEP_TAKE_AWAY.with("height", clear),
            Doing::PullsOut => {
                return if plain {
                    steps::lets_go(ctx).message()
                } else if steps::lets_go(ctx) == text::STEP_WITHDRAW {
                    text::STEP_WAY_WITHDRAW.message()
                } else {
                    text::STEP_WAY_LET_GO.message()
                };
            }
            Doing::PushesIn => return steps::takes(ctx).message(),
            Doing::Moves => {}
        }
        let (turned, moved) = (to.angle - from.angle, to.extension - from.extension);
        if self.straight {
            let way = tool_point(ctx, attachment, to) - tool_point(ctx, attachment, from);
            let (sin, cos) = libm::sincos(to.fork_tilt);
            let (out, up) = (way.x * cos + way.z * sin, way.z * cos - way.x * sin);
            return both(match (up.abs() > out.abs(), up > 0.0, out > 0.0) {
                (true, true, _) => text::STEP_WAY_STRAIGHT_UP,
                (true, false, _) => text::STEP_WAY_STRAIGHT_DOWN,
                (false, _, true) => text::STEP_WAY_STRAIGHT_IN,
                (false, _, false) => text::STEP_WAY_STRAIGHT_OUT,
            });
        }
        let still = |by: f64| by.abs() < 1e-6;
        match (still(turned), still(moved)) {
            (_, true) if turned > 0.0 && to.extension <= 0.0 => text::STEP_RAISE.with("angle", angle(to.angle)),
            (_, true) if turned > 0.0 => text::STEP_WAY_RAISE.with("angle", angle(to.angle)),
            (_, true) => text::STEP_WAY_LOWER.with("angle", angle(to.angle)),
            (true, false) if moved > 0.0 => text::STEP_WAY_EXTEND.with("extension", metres(to.extension)),
            (true, false) => text::STEP_WAY_RETRACT.with("extension", metres(to.extension)),
            (false, false) => both(text::STEP_WAY_TOGETHER),
        }
    }
}

/// Share of the distance there that is spare.
fn reserve_of(room: &Room) -> f64 {
    spare(room.required, room.left + room.required)
}

/// Where on the leg the least room is left to what asks for a distance.
fn least_room(
    ctx: &Context<'_>,
    attachment: &Attachment,
    guards: &Guards<'_, '_>,
    leg: &Leg,
) -> Option<(Room, BoomPosition)> {
    let length = leg.travel(0.0, 1.0, crate::checks::line::boom_radius(ctx));
    let count = (length / LOOK).ceil().clamp(1.0, 200.0) as usize;
    let at = |i: usize| leg.at(ctx, attachment, i as f64 / count as f64);
    let rooms = (0..=count).filter_map(|i| at(i).map(|boom| (guards.room(boom), boom)));
    rooms.filter(|(r, _)| r.origin.is_some() && r.required > 0.0).min_by(|(a, _), (b, _)| a.left.total_cmp(&b.left))
}

/// The least of chart, load factor, tilt and distances, with its check and the position.
fn smallest(
    check: &LiftCheck<'_>,
    posed: &Posed,
    attachment: &Attachment,
    movement: &Movement,
    nearest: Option<(Room, BoomPosition)>,
) -> Option<(f64, &'static str, BoomPosition)> {
    let ctx = &check.ctx;
    let mut all: Vec<(f64, &'static str, BoomPosition)> = Vec::new();
    if let (Some(chart), Ok(poses)) = (chart::choose(ctx, Some(posed)), posed.reach) {
        let landing = poses.map(|boom| (boom, Place::landing(tool_point(ctx, attachment, boom))));
        let passed = movement.on_the_way.iter().map(|p| (p.boom, Place::passed(ctx, attachment, p)));
        all.extend(landing.into_iter().chain(passed).map(|(boom, place)| {
            let read = chart::read(ctx, posed, chart, attachment, place, &mut evidence::Silent);
            (read.capacity.map_or(-1.0, |capacity| reserve(ctx.load.mass_kg.high, capacity)), "chart", boom)
        }));
    }
    if let Some(statics) = &check.statics {
        all.extend(statics.least_reserves(ctx));
    }
    all.extend(nearest.map(|(room, boom)| {
        let line = matches!(room.origin, Some(crate::boom_path::guards::Origin::Line(_)));
        (reserve_of(&room), if line { "line" } else { "obstacles" }, boom)
    }));
    all.into_iter().min_by(|a, b| a.0.total_cmp(&b.0))
}
