//! What happens all at once with the boom up: lowering that is stopped, and a load that is gone.
//!
//! How fast a boom lowers no file states. So lowering stopped at once presses with twice the weight of what
//! moves (a load put on suddenly; [`stability::stop_of_lowering`]), which is the most that a stop without a
//! blow can do. That is more than most lifts bear that are in order at rest: the load factor asked for is
//! 1.33, and twice the weight asks for 2. It lies in the operator's hand: lowered slowly and stopped softly
//! it never happens. So it is said with what is borne, as a multiple of the weight and as a speed for a stop
//! within [`SOFT`]; it is a condition where less than [`USUAL`] is borne, and no refusal.
//!
//! The same holds for a load that is gone at once: set down softly it does not happen. That it drops by
//! itself other checks stand against (forks, lock, rigging, the load's own condition).

use super::statics::{Statics, aside, load_at, side, springs, stances, tried, wind};
use super::{angle, fitted, kilograms, metres};
use crate::context::Context;
use crate::posed::{Posed, tool_point};
use crate::text;
use evidence::{Finding, Source, Status, Step, Trace, Working};
use geometry::DVec3;
use machine::{Attachment, BoomPosition};
use quantity::{Dimension, Quantity, STANDARD_GRAVITY as G, Si};
use stability::{
    LoadOnBoom, Loading, Masses, TippingLine, TipsOver, load_dropped, lowered, stop_of_lowering, tipping_lines,
};

/// Time of a soft stop, s (our own figure).
const SOFT: f64 = 0.5;
/// Speed at which a load comes down in usual work, m/s (our own figure).
const USUAL: f64 = 0.5;
/// So short a stop, s, that only the weight that presses counts and no blow.
const AT_ONCE: f64 = 1e-9;
/// Halvings of a share between 0 and 1.
const HALVINGS: u32 = 12;

/// A machine with its load, and which part of the weight moves or goes.
struct Case {
    loading: Loading,
    boom: BoomPosition,
    load: LoadOnBoom,
    lines: [TippingLine; 6],
}

/// What is left of one of the two.
#[derive(Debug, Clone, Copy)]
struct Left {
    /// Above zero where it is borne.
    value: f64,
    over: TipsOver,
    case: usize,
}

/// What both are reckoned with.
struct Events {
    /// Load at the landing, near and far.
    up: Vec<Case>,
    moving: Vec<(f64, DVec3)>,
}

fn events(ctx: &Context<'_>, posed: &Posed, attachment: &Attachment) -> Option<Events> {
    let gust = ctx.lift.wind.map(|w| w.gust.si());
    let cases = |boom: BoomPosition, ahead: f64| {
        let tool = tool_point(ctx, attachment, boom);
        let wind = wind(ctx, gust, boom).0;
        let places = aside(ctx, tool).map(|y| load_at(ctx, tool, boom, ahead, y));
        let mut out = Vec::with_capacity(8);
        for (stance, gravities) in stances(ctx, posed, boom) {
            let lines = tipping_lines(ctx.machine, stance);
            let described = Masses::standing(ctx.machine, attachment, boom, stance);
            for bare in fitted::changes(ctx, stance).into_iter().map(|change| described.and(change)) {
                for load in places.map(|at| LoadOnBoom { mass: ctx.load.mass_kg.high, at }) {
                    out.extend(gravities.iter().map(|gravity| {
                        let loading = Loading { masses: bare.with(load), gravity: *gravity, wind };
                        Case { loading, boom, load, lines }
                    }));
                }
            }
        }
        out
    };
    let tried = tried(ctx, posed, attachment)?;
    let loaded = tried.iter().filter(|t| t.landing);
    let up: Vec<Case> = loaded.flat_map(|t| cases(t.boom, t.ahead)).collect();
    let moving = up.iter().map(|c| lowered(ctx.machine, attachment, c.boom, Some(c.load))).collect();
    Some(Events { up, moving })
}

/// Tilt left (rad) over a line as lowering is stopped so that it presses with `1 + more` times the weight.
pub(super) fn stopped(loading: &Loading, moving: (f64, DVec3), more: f64, line: &TippingLine) -> f64 {
    let speed = more * G * AT_ONCE / 2.0;
    stop_of_lowering(loading, moving, speed, AT_ONCE, line).tilt
}

/// Keeps the lesser; what is no number is the least and stays it.
fn keep(worst: &mut Option<Left>, next: Left) {
    if worst.is_none_or(|w| !w.value.is_nan() && (next.value.is_nan() || next.value < w.value)) {
        *worst = Some(next);
    }
}

impl Events {
    /// Tilt left (rad) as lowering is stopped so that it presses with `1 + more` times the weight.
    fn stopped(&self, more: f64) -> Option<Left> {
        let mut worst = None;
        for (case, (c, moving)) in self.up.iter().zip(&self.moving).enumerate() {
            for line in &c.lines {
                let value = stopped(&c.loading, *moving, more, line);
                keep(&mut worst, Left { value, over: line.over, case });
            }
        }
        worst
    }

    /// Share left of what there is without the load as `share` of it is gone.
    fn gone(&self, ctx: &Context<'_>, share: f64) -> Option<Left> {
        let mut worst = None;
        for (case, c) in self.up.iter().enumerate() {
            let load = LoadOnBoom { mass: c.load.mass * share, ..c.load };
            let flex = give(ctx, load);
            for line in &c.lines {
                let value = load_dropped(&c.loading, load, flex, line).reserve;
                keep(&mut worst, Left { value, over: line.over, case });
            }
        }
        worst
    }
}

/// How far boom and tyres give under the load, m: the boom by what its file states, the tyres by moments
/// about the two axles, `W ((1 + x/b)² / 2c_f + (x/b)² / 2c_r)` with `x` the load ahead of the front
/// contacts and `b` the base (mechanics).
pub(super) fn give(ctx: &Context<'_>, load: LoadOnBoom) -> f64 {
    let [front, rear] = ctx.machine.contacts(ctx.lift.support);
    let springs = springs(ctx);
    let lever = ((load.at.x - front.x) / (front.x - rear.x)).max(0.0);
    let tyres = (1.0 + lever) * (1.0 + lever) / (2.0 * springs.front) + lever * lever / (2.0 * springs.rear);
    ctx.machine.boom.flex.max(0.0) + load.mass * G * tyres
}

fn of_left(left: Option<Left>) -> Status {
    match left {
        Some(l) if l.value > 0.0 => Status::Go,
        Some(l) if l.value <= 0.0 => Status::Condition,
        _ => Status::CannotTell,
    }
}

/// By how much more than its weight what moves presses as it is stopped softly from the usual speed.
pub(super) fn usual_stop() -> f64 {
    2.0 * USUAL / (G * SOFT)
}

/// A stop from the usual speed is borne, or is not.
fn of_stop(events: &Events) -> Status {
    of_left(events.stopped(usual_stop())).max(match of_left(events.stopped(1.0)) {
        Status::CannotTell => Status::CannotTell,
        _ => Status::Go,
    })
}

/// `None` where there are no statics: load factor and tilt say so.
pub(crate) fn status(ctx: &Context<'_>, statics: Option<&Statics>, posed: Option<&Posed>) -> Option<Status> {
    statics?;
    let events = events(ctx, posed?, ctx.attachment?)?;
    Some(of_stop(&events).max(of_left(events.gone(ctx, 1.0))))
}

/// The greatest share up to 1 that is borne, by halving.
fn most(borne: impl Fn(f64) -> Option<Left>) -> f64 {
    let (mut good, mut bad) = (0.0, 1.0);
    for _ in 0..HALVINGS {
        let middle = f64::midpoint(good, bad);
        if borne(middle).is_some_and(|l| l.value > 0.0) { good = middle } else { bad = middle }
    }
    good
}

pub(crate) fn findings(ctx: &Context<'_>, statics: Option<&Statics>, posed: Option<&Posed>) -> Vec<Finding> {
    let events = match (statics, posed, ctx.attachment) {
        (Some(_), Some(p), Some(a)) => events(ctx, p, a),
        _ => None,
    };
    let Some(events) = events else { return Vec::new() };
    let (stopped, gone) = (events.stopped(1.0), events.gone(ctx, 1.0));
    let mut out = Vec::new();
    for (left, finding) in [(stopped, stop_finding as fn(&Context<'_>, &Events, Left) -> Finding), (gone, drop_finding)]
    {
        match (of_left(left), left) {
            (Status::Go, _) => {}
            (Status::Condition, Some(left)) => out.push(finding(ctx, &events, left)),
            _ => out.push(cannot_tell()),
        }
    }
    if out.is_empty() {
        out.push(Finding::new("sudden", Status::Go, text::SUDDEN_BORNE).source(Source::Mechanics));
    }
    out
}

fn stop_finding(_: &Context<'_>, events: &Events, left: Left) -> Finding {
    let more = most(|more| events.stopped(more));
    let mut working = Working::default();
    working.step(|| Step {
        title: text::WORKING_SUDDEN_STOP.message(),
        formula: "k = 1 + 2 · v / (g · t) ≤ 2".into(),
        values: vec![
            ("m".into(), kilograms(events.moving.get(left.case).map_or(f64::NAN, |m| m.0))),
            ("δ(2)".into(), angle(left.value)),
            ("t".into(), Quantity::number(SOFT)),
        ],
        result: ("k".into(), Quantity::number(1.0 + more)),
        source: Source::from_memory("twice the static change: any text on strength of materials"),
    });
    let message = text::SUDDEN_STOP_TIPS
        .with("factor", Quantity::number(1.0 + more))
        .with("side", side(left.over))
        .with("speed", Quantity::new(more * G * SOFT / 2.0, Dimension::Speed));
    Finding::new("sudden", of_stop(events), message)
        .remedy(text::DO_LOWER_SLOWLY)
        .source(Source::Mechanics)
        .working(working)
}

fn drop_finding(ctx: &Context<'_>, events: &Events, left: Left) -> Finding {
    let load = events.up.get(left.case).map(|c| c.load);
    let mut working = Working::default();
    working.step(|| Step {
        title: text::WORKING_SUDDEN_DROP.message(),
        formula: "r = min(δ(−W) / δ, 1 − ½ · W · f / E)".into(),
        values: vec![
            ("m".into(), kilograms(load.map_or(f64::NAN, |l| l.mass))),
            ("f".into(), metres(load.map_or(f64::NAN, |l| give(ctx, l)))),
        ],
        result: ("r".into(), Quantity::ratio(left.value)),
        source: Source::Mechanics,
    });
    let share = Quantity::ratio(most(|share| events.gone(ctx, share)));
    let message = text::SUDDEN_DROP_TIPS.with("share", share).with("side", side(left.over));
    Finding::new("sudden", Status::Condition, message)
        .remedy(text::DO_SET_DOWN_SOFTLY)
        .source(Source::Mechanics)
        .working(working)
}

fn cannot_tell() -> Finding {
    Finding::new("sudden", Status::CannotTell, text::SUDDEN_CANNOT_TELL)
        .remedy(text::DO_OTHER_MACHINE)
        .source(Source::Mechanics)
}
