//! The way of one lift: from where its load waits, or from a gate, to its stand and back.

use crate::checks::metres;
use crate::context::Context;
use crate::posed::tool_point;
use crate::route::{RefusalKind, RouteAsk, RoutePlan, RoutePose, RouteRefusal, TravelRules, route};
use crate::told::minutes;
use crate::way_around::{WayThing, around};
use crate::{Matter, Stand, Task, text};
use core::ops::ControlFlow;
use driving::{SteeredAxle, Turning};
use evidence::{Finding, Message, Source, Status};
use geometry::DVec2;
use machine::BoomPosition;
use quantity::Si;
use serde::{Deserialize, Serialize};

/// A lift's way in and out.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, schemars::JsonSchema)]
pub struct LiftWay {
    /// Name of where it begins and ends, for people.
    pub from: String,
    /// There: the posts of the gate, or the place of the load; east and north, m.
    pub begins: Vec<[f64; 2]>,
    /// What the site has near it, for pictures.
    pub around: Vec<WayThing>,
    /// To the stand; loaded where the load is brought. `null`: none was found.
    pub way_in: Option<RoutePlan>,
    /// Back again. `null`: none was found.
    pub way_out: Option<RoutePlan>,
    /// Why there is none: for the one of the two of which that is proven, else for the first that has none.
    pub refused: Option<RouteRefusal>,
    /// True if that is told of the way back.
    #[serde(default)]
    pub refused_out: bool,
}

/// Where a way begins: its name and the machine's pose.
struct Begin {
    name: String,
    pose: RoutePose,
    places: Vec<DVec2>,
}

/// Where the load waits, or the first gate with a place that the lift passes, or that the job has. `None`: nobody states any.
fn begin(ctx: &Context<'_>) -> Option<Begin> {
    let stand = ctx.stand;
    if let Some(place) = ctx.lift.from.and_then(|i| ctx.job.pickups.get(i)) {
        // Nobody states which way its forks go in: as it comes from the stand.
        let towards = place.at - stand.at;
        let heading = place.heading.unwrap_or_else(|| libm::atan2(towards.y, towards.x));
        let carry = BoomPosition { angle: ctx.machine.limits.carry.angle.si(), extension: 0.0, fork_tilt: 0.0 };
        let ahead = tool_point(ctx, ctx.attachment?, carry).x + ctx.load.depth / 2.0;
        let (sin, cos) = libm::sincos(heading);
        let pose = RoutePose { at: place.at - DVec2::new(cos, sin) * ahead, heading };
        return Some(Begin { name: place.name.clone(), pose, places: vec![place.at] });
    }
    let passed = ctx.lift.gates.iter().flatten().filter_map(|i| ctx.job.gates.get(*i));
    let gate = passed.chain(&ctx.job.gates).find(|g| g.posts.is_some())?;
    let [a, b] = gate.posts?;
    let middle = (a + b) / 2.0;
    let through = (b - a).perp();
    // Into the site: towards the stand.
    let inward = if through.dot(stand.at - middle) < 0.0 { -through } else { through };
    let pose = RoutePose { at: middle, heading: libm::atan2(inward.y, inward.x) };
    Some(Begin { name: gate.name.clone(), pose, places: vec![a, b] })
}

/// How tightly it turns, by its file. Crab is not used: how far its wheels turn that way no file states.
fn turning(ctx: &Context<'_>) -> Turning {
    let data = ctx.machine.steering;
    Turning {
        steered: SteeredAxle::Front,
        two_wheel: data.and_then(|d| d.rear_axle_radius(ctx.machine)),
        four_wheel: data.and_then(|d| d.four_wheel_middle_radius(ctx.machine)),
        crab: None,
    }
}

/// The way of a lift; `None` where nobody states from where.
pub(crate) fn way(ctx: &Context<'_>) -> Option<LiftWay> {
    let Begin { name, pose, places } = begin(ctx)?;
    let mut rules = TravelRules::default();
    if let Some(most) = ctx.machine.steering.and_then(|d| d.travel_speed) {
        // Not more than the maker gives; what is not a number is refused by the rules themselves.
        rules.pace = if most >= rules.pace { rules.pace } else { most };
    }
    let brings = ctx.lift.task == Task::SetDown;
    let ask = |loaded: bool| RouteAsk {
        machine: ctx.lift.machine,
        attachment: ctx.lift.attachment.clone(),
        load: loaded.then_some(ctx.lift.load),
        turning: turning(ctx),
        side_shift: ctx.lift.side_shift,
        at: None,
        rules,
    };
    let stand = ctx.stand;
    let out = Stand { at: pose.at, heading: pose.heading };
    let go = &mut |_| ControlFlow::Continue(());
    let way_in = route(ctx.job, &ask(brings), pose, stand, go);
    let way_out = route(ctx.job, &ask(!brings), stand.into(), out, go);
    // What is proven comes before what could only not be told.
    let mut refusals: Vec<_> = [(&way_in, false), (&way_out, true)]
        .into_iter()
        .filter_map(|(way, out)| way.as_ref().err().map(|r| ((**r).clone(), out)))
        .collect();
    refusals.sort_by_key(|(r, _)| r.kind.open());
    let (refused, refused_out) = refusals.into_iter().next().map_or((None, false), |(r, out)| (Some(r), out));
    let (way_in, way_out) = (way_in.ok(), way_out.ok());
    let passed = [&way_in, &way_out].into_iter().flatten().flat_map(|w| &w.profile).map(|s| DVec2::from(s.at));
    let near: Vec<DVec2> = passed.chain([pose.at, stand.at]).collect();
    let begins = places.iter().map(DVec2::to_array).collect();
    Some(LiftWay { from: name, begins, around: around(ctx.job, &near), way_in, way_out, refused, refused_out })
}

/// What is said of it.
///
/// A search that gave up proves nothing: then a named person's word for the way stands, as a condition. Where something is
/// missing for an answer, likewise.
pub(crate) fn finding(ctx: &Context<'_>, way: &LiftWay) -> Finding {
    let source = || Source::Mechanics;
    let from = way.from.as_str();
    if let (Some(there), Some(back)) = (&way.way_in, &way.way_out) {
        let message = text::WAY_FOUND
            .with("from", from)
            .with("length", metres(there.length_m))
            .with("time", minutes(there.time_s))
            .with("changes", there.gear_changes)
            .with("back", metres(back.length_m))
            .with("back_time", minutes(back.time_s));
        return Finding::new("route", Status::Go, message).source(source());
    }
    let Some(refused) = &way.refused else {
        return Finding::new("route", Status::CannotTell, text::WAY_UNKNOWN.with("from", from)).source(source());
    };
    let status = match (refused.kind.open(), ctx.accepted(Matter::Route)) {
        (true, Some(_)) => Status::Condition,
        (true, None) => Status::CannotTell,
        (false, _) => Status::NoGo,
    };
    let why = refused.why();
    let message: Message = if refused.kind == RefusalKind::Missing {
        text::WAY_LACKING.with("from", from).with("why", why)
    } else {
        text::WAY_NONE.with("from", from).with("what", refused.message.clone()).with("why", why)
    };
    let finding = Finding::new("route", status, message).source(source());
    // A word for a way driven empty says nothing of a load that swings.
    let hung = refused.kind == RefusalKind::Missing && ctx.hung();
    if hung { finding.remedy(text::DO_NOT_DRIVE_HUNG) } else { finding.remedy(refused.remedy.clone()) }
}
