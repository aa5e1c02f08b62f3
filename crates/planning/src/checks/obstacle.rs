//! Things on the site against every part of machine, boom and load over the whole movement.

use super::line::{boom_radius, lean_error};
use super::swept::{self, Parts};
use super::{metres, spare};
use crate::context::Context;
use crate::posed::{NotPosed, Posed, why_not};
use crate::text;
use evidence::{Finding, Source, Status, Step, Trace, Working};
use geometry::{DVec2, Solid};
use site::{Body, Opening, Thing, distance_thing, least_distance};
use std::borrow::Cow;

/// Room to a thing that stays whatever is known, m (common practice).
const ROOM: f64 = 0.30;

/// A thing whose top is no more than this below the landing's level is what the load is set on, m.
const SAME_LEVEL: f64 = 0.30;

/// What the things within reach get, by their index in the job's list, which is the order.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Obstacles {
    near: Vec<(usize, ThingOutcome)>,
    /// How many are out of reach, whatever the boom does.
    far: usize,
}

/// What one thing asks and what it gets.
#[derive(Debug, Clone, Copy, PartialEq)]
enum ThingOutcome {
    /// Least distance over the movement and the distance required, m.
    Measured {
        /// Least distance.
        distance: f64,
        /// Required.
        required: f64,
        /// False where the top is not known: then it is the distance in plan.
        height_known: bool,
    },
    /// The machine cannot be posed.
    NotChecked,
}

/// Room, accuracy of the thing, flex and lean of the boom, position of the stand.
fn required(ctx: &Context<'_>, posed: Option<&Posed>, thing: &Thing, trace: &mut impl Trace) -> f64 {
    let (flex, lean, stand) = (ctx.machine.boom.flex, lean_error(ctx, posed), ctx.policy.stand_error);
    let total = ROOM + thing.accuracy + flex + lean + stand;
    trace.step(|| Step {
        title: text::WORKING_THING_REQUIRED.message(),
        formula: "d = r + e + f + l + p".into(),
        values: vec![
            ("r".into(), metres(ROOM)),
            ("e".into(), metres(thing.accuracy)),
            ("f".into(), metres(flex)),
            ("l".into(), metres(lean)),
            ("p".into(), metres(stand)),
        ],
        result: ("d".into(), metres(total)),
        source: Source::CommonPractice,
    });
    total
}

/// True for a height that the load passes low over on purpose: no higher than the landing with what stands up at its edge,
/// since the load's underside passes only the lift's clear height above that.
fn low_at_landing(ctx: &Context<'_>, height: f64) -> bool {
    let landing = ctx.landing;
    (landing.level - SAME_LEVEL..=landing.level + landing.upstand).contains(&height)
}

/// True for the thing that the load comes to lie on: its top is the landing's level, under the landing.
fn carries_landing(ctx: &Context<'_>, thing: &Thing) -> bool {
    let Body::Upright { shape, top: Some(top), .. } = &thing.body else { return false };
    low_at_landing(ctx, *top) && shape.contains(ctx.landing.at)
}

/// The thing without its uppermost part, in which load and blades are set down.
fn cut_off(thing: &Thing) -> Thing {
    let mut thing = thing.clone();
    if let Body::Upright { top: Some(top), .. } = &mut thing.body {
        *top -= 2.0 * SAME_LEVEL;
    }
    thing
}

/// What any part could come near to, in plan from the stand, whatever the boom does, m: but for the
/// accuracy of the thing.
pub(crate) fn reach(ctx: &Context<'_>, posed: Option<&Posed>) -> f64 {
    let outline = &ctx.machine.outline;
    let tail = outline.rear.abs().max(outline.front.abs()) + outline.half_width;
    let room = ROOM + ctx.machine.boom.flex + lean_error(ctx, posed) + ctx.policy.stand_error;
    boom_radius(ctx).max(tail) + ctx.machine.boom.foot.x.abs() + room
}

/// Every thing within reach; the index of the things' places leaves out the others unasked.
pub(crate) fn outcomes(ctx: &Context<'_>, posed: Option<&Posed>) -> Obstacles {
    let things = &ctx.job.surroundings.things;
    if things.is_empty() {
        return Obstacles { near: Vec::new(), far: 0 };
    }
    let within = things.within(ctx.stand.at, reach(ctx, posed));
    let near: Vec<_> = within.into_iter().filter_map(|i| Some((i, outcome(ctx, posed, things.get(i)?)))).collect();
    Obstacles { far: things.len() - near.len(), near }
}

/// What is asked of some parts of the machine for one thing.
pub(crate) struct Demand<'a> {
    pub(crate) parts: Parts,
    /// The thing, or what of it these parts must keep off.
    pub(crate) thing: Cow<'a, Thing>,
    /// Distance asked, m; 0: only not to touch.
    pub(crate) required: f64,
}

/// Everything that is asked for a thing. Most things ask their distance of every part. What the load comes to lie on,
/// and the sill of an opening at the landing's level, ask it of frame, cab and boom only: load, carriage and blades
/// pass low over it on purpose, but must not touch what is further down.
pub(crate) fn demands<'a>(ctx: &Context<'_>, posed: Option<&Posed>, thing: &'a Thing) -> Vec<Demand<'a>> {
    let required = required(ctx, posed, thing, &mut evidence::Silent);
    let whole = |parts| Demand { parts, thing: Cow::Borrowed(thing), required };
    let lower = |thing| Demand { parts: Parts::All, thing: Cow::Owned(thing), required: 0.0 };
    if carries_landing(ctx, thing) {
        return vec![whole(Parts::WithoutTool), lower(cut_off(thing))];
    }
    if thing.openings.iter().any(|o| sill_at_landing(ctx, o)) {
        let beside =
            Demand { parts: Parts::All, thing: Cow::Owned(sills_lowered(ctx, thing, f64::INFINITY)), required };
        return vec![whole(Parts::WithoutTool), beside, lower(sills_lowered(ctx, thing, 2.0 * SAME_LEVEL))];
    }
    vec![whole(Parts::All)]
}

/// True for an opening that the load goes through low over its sill, as over the landing's own edge: the boom's plane passes
/// it on the way to the landing.
pub(crate) fn sill_at_landing(ctx: &Context<'_>, opening: &Opening) -> bool {
    low_at_landing(ctx, opening.sill) && in_the_way_in(ctx, opening)
}

/// True if the boom's plane passes between the jambs, no farther from the stand than the load comes.
fn in_the_way_in(ctx: &Context<'_>, opening: &Opening) -> bool {
    let (sin, cos) = libm::sincos(ctx.stand.heading);
    let forward = DVec2::new(cos, sin);
    let [from, to] = [opening.from, opening.to].map(|p| p - ctx.stand.at);
    let [a, b] = [from, to].map(|p| p.dot(forward.perp()));
    if a * b > 0.0 || (a == 0.0 && b == 0.0) || !(a * b).is_finite() {
        return false;
    }
    let crossed = from.lerp(to, a / (a - b)).dot(forward);
    let farthest = (ctx.landing.at - ctx.stand.at).dot(forward) + ctx.load.depth;
    (0.0..=farthest).contains(&crossed)
}

/// The thing with those sills so much lower.
fn sills_lowered(ctx: &Context<'_>, thing: &Thing, by: f64) -> Thing {
    let mut thing = thing.clone();
    for opening in thing.openings.iter_mut().filter(|o| sill_at_landing(ctx, o)) {
        opening.sill -= by;
    }
    thing
}

fn outcome(ctx: &Context<'_>, posed: Option<&Posed>, thing: &Thing) -> ThingOutcome {
    let required = required(ctx, posed, thing, &mut evidence::Silent);
    let (Some(posed), Some(attachment)) = (posed, ctx.attachment) else { return ThingOutcome::NotChecked };
    let height_known = !matches!(thing.body, Body::Upright { top: None, .. });
    let mut least = f64::INFINITY;
    for asked in demands(ctx, Some(posed), thing) {
        let near = swept::least(ctx, posed, attachment, asked.parts, asked.required, to(&asked.thing));
        if asked.required > 0.0 {
            let Some(distance) = near else { return ThingOutcome::NotChecked };
            least = swept::worse(distance, least);
        } else if near.is_none_or(|d| d.is_nan() || d <= 0.0) {
            // Load and forks come to its top on purpose, but never into its face below.
            least = 0.0;
        }
    }
    // Nothing to measure to is not known, not far.
    let distance = if least.is_infinite() { f64::NAN } else { least };
    ThingOutcome::Measured { distance, required, height_known }
}

/// Distance of a part to the thing, or what is already found, where its box is no nearer than that.
pub(crate) fn to(thing: &Thing) -> impl Fn(&Solid, f64) -> f64 + '_ {
    let extent = thing.extent();
    move |solid, found| match extent {
        Some((low, high)) if least_distance(solid, low, high) >= found => found,
        _ => distance_thing(solid, thing).metres(),
    }
}

impl ThingOutcome {
    fn status(self) -> Status {
        match self {
            Self::NotChecked => Status::CannotTell,
            Self::Measured { distance, required, height_known } => {
                if distance >= required {
                    Status::Go
                } else if height_known || distance.is_nan() {
                    Status::NoGo
                } else {
                    Status::CannotTell
                }
            }
        }
    }
}

impl Obstacles {
    /// The thing that refuses by most.
    pub(crate) fn refusing<'a>(&self, job: &'a crate::Job) -> Option<&'a Thing> {
        let refused = self.near.iter().filter(|(_, o)| o.status() > Status::Condition);
        let short = |o: &ThingOutcome| match *o {
            ThingOutcome::Measured { distance, required, .. } => distance - required,
            ThingOutcome::NotChecked => f64::INFINITY,
        };
        let most = refused.min_by(|(_, a), (_, b)| short(a).total_cmp(&short(b)));
        job.surroundings.things.get(most?.0)
    }

    /// `None` where the job lists no things.
    pub(crate) fn status(&self) -> Option<Status> {
        let far = (self.far > 0).then_some(Status::Go);
        self.near.iter().map(|(_, o)| o.status()).chain(far).max()
    }
}

/// One finding for each thing within reach; one for all that are out of it.
pub(crate) fn findings(ctx: &Context<'_>, found: &Obstacles, posed: Result<&Posed, &NotPosed>) -> Vec<Finding> {
    let mut out = Vec::new();
    let near = found.near.iter().filter_map(|(i, o)| Some((ctx.job.surroundings.things.get(*i)?, *o)));
    for (thing, found) in near {
        let named = |id: evidence::TextId| id.with("thing", &thing.name);
        match found {
            ThingOutcome::NotChecked => {
                let (why, remedy) = why_not(posed);
                let message = named(text::THING_NOT_CHECKED).with("why", why);
                out.push(Finding::new("obstacles", found.status(), message).remedy(remedy).source(Source::Mechanics));
            }
            ThingOutcome::Measured { distance, required: needed, .. } => {
                let mut working = Working::default();
                required(ctx, posed.ok(), thing, &mut working);
                working.step(|| Step {
                    title: text::WORKING_THING_NEAREST.message(),
                    formula: "d_min = min over movement and parts".into(),
                    values: Vec::new(),
                    result: ("d_min".into(), metres(distance)),
                    source: Source::Mechanics,
                });
                let (id, remedy) = match found.status() {
                    Status::Go => (text::THING_CLEAR, None),
                    Status::CannotTell => (text::THING_HEIGHT_UNKNOWN, Some(text::DO_MEASURE_THING.message())),
                    _ => (text::THING_NEAR, Some(text::DO_THING_AWAY.with("distance", metres(needed - distance)))),
                };
                let message = named(id).with("distance", metres(distance)).with("required", metres(needed));
                let finding = Finding::new("obstacles", found.status(), message)
                    .at_least(metres(needed), metres(distance), spare(needed, distance))
                    .source(Source::CommonPractice)
                    .working(working);
                out.push(match remedy {
                    Some(remedy) => finding.remedy(remedy),
                    None => finding,
                });
            }
        }
    }
    if found.far > 0 {
        let message = text::THINGS_FAR.with("count", found.far);
        out.push(Finding::new("obstacles", Status::Go, message).source(Source::Mechanics));
    }
    out
}
