//! Things on the site against every part of machine, boom and load over the whole movement.

use super::line::{boom_radius, lean_error};
use super::swept::{self, Parts};
use super::{metres, spare};
use crate::context::Context;
use crate::posed::{NotPosed, Posed, why_not};
use crate::text;
use evidence::{Finding, Source, Status, Step, Trace, Working};
use site::{Body, Distance, Thing, distance_thing};

/// Room to a thing that stays whatever is known, m (common practice).
const ROOM: f64 = 0.30;

/// A thing whose top is this near the landing's level is what the load is set on, m.
const SAME_LEVEL: f64 = 0.30;

/// What one thing asks and what it gets.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) enum ThingOutcome {
    /// Out of reach, whatever the boom does.
    Far,
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

/// True for the thing that the load comes to lie on: its top is the landing's level, under the landing.
fn carries_landing(ctx: &Context<'_>, thing: &Thing) -> bool {
    let Body::Upright { shape, top: Some(top), .. } = &thing.body else { return false };
    (top - ctx.landing.level).abs() <= SAME_LEVEL && shape.contains(ctx.landing.at)
}

/// The thing without its uppermost part, in which load and blades are set down.
fn cut_off(thing: &Thing) -> Thing {
    let mut thing = thing.clone();
    if let Body::Upright { top: Some(top), .. } = &mut thing.body {
        *top -= 2.0 * SAME_LEVEL;
    }
    thing
}

fn outcome(ctx: &Context<'_>, posed: Option<&Posed>, thing: &Thing) -> ThingOutcome {
    let required = required(ctx, posed, thing, &mut evidence::Silent);
    if let Some((low, high)) = thing.bounds() {
        let stand = ctx.lift.stand.at;
        let aside = (low - stand).max(stand - high).max(geometry::DVec2::ZERO).length();
        let outline = &ctx.machine.outline;
        let tail = outline.rear.abs().max(outline.front.abs()) + outline.half_width;
        if aside > boom_radius(ctx).max(tail) + ctx.machine.boom.foot.x.abs() + required {
            return ThingOutcome::Far;
        }
    }
    let (Some(posed), Some(attachment)) = (posed, ctx.attachment) else { return ThingOutcome::NotChecked };
    let parts = if carries_landing(ctx, thing) { Parts::WithoutTool } else { Parts::All };
    let mut height_known = true;
    let least = swept::least(ctx, posed, attachment, parts, required, |solid| match distance_thing(solid, thing) {
        Distance::Metres(d) => d,
        Distance::HeightUnknown(d) => {
            height_known = false;
            d
        }
    });
    // Load and forks come to its top on purpose, but never into its face below.
    let into_face = parts == Parts::WithoutTool
        && swept::least(ctx, posed, attachment, Parts::All, 0.0, |solid| {
            distance_thing(solid, &cut_off(thing)).metres()
        })
        .is_none_or(|d| d <= 0.0);
    match least.map(|distance| if into_face { 0.0 } else { distance }) {
        Some(distance) => ThingOutcome::Measured { distance, required, height_known },
        None => ThingOutcome::NotChecked,
    }
}

impl ThingOutcome {
    fn status(self) -> Status {
        match self {
            Self::Far => Status::Go,
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

/// `None` where the job lists no things.
pub(crate) fn status(ctx: &Context<'_>, posed: Option<&Posed>) -> Option<Status> {
    ctx.job.surroundings.things.iter().map(|t| outcome(ctx, posed, t).status()).max()
}

/// One finding for each thing within reach; one for all that are out of it.
pub(crate) fn findings(ctx: &Context<'_>, posed: Result<&Posed, &NotPosed>) -> Vec<Finding> {
    let things = &ctx.job.surroundings.things;
    let mut far = 0_usize;
    let mut out = Vec::new();
    for thing in things {
        let found = outcome(ctx, posed.ok(), thing);
        let named = |id: evidence::TextId| id.with("thing", &thing.name);
        match found {
            ThingOutcome::Far => far += 1,
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
    if far > 0 {
        let message = text::THINGS_FAR.with("count", far);
        out.push(Finding::new("obstacles", Status::Go, message).source(Source::Mechanics));
    }
    out
}
