//! The way of a machine over the site: from gate or pick-up to a stand and back, loaded or not.
//!
//! - [`RouteAsk`], [`TravelRules`]: which machine with what, how tightly it turns, the rules of driving
//! - [`route`]: the way, or why there is none
//! - [`RouteMap`]: the site as a drive meets it, made once; [`RouteMap::to`] prepares a target for any number of starts
//! - [`RoutePlan`], [`RouteRefusal`]: what is told of it
//!
//! Looked at: ground known under every wheel; slopes along and across under both axles, how far the rear
//! axle turns against the front, with the survey's accuracy against the tilt that
//! must remain in carry position and the rules of driving; excavations by their planning lines; things, lines and closed
//! zones against the machine with its load in carry position; one-way zones, speed, soft ground; speed in curves.
//! Not looked at: strength of the ground but for soft zones, what lies in it, gates (a gate may state its posts, but a way
//! goes as if there were no gate: only what is listed as a thing bars it), other machines.

mod ask;
mod bar;
mod barriers;
mod carried;
mod describe;
mod map;
mod rasters;
mod refuse;
mod route_plan;
mod steadiness;

pub use ask::{RouteAsk, RoutePose, TravelRules};
pub use bar::{Bar, Over};
pub use driving::{Gear, Steering};
pub use map::RouteMap;
pub use route_plan::{RefusalKind, RouteLeg, RouteMargin, RoutePlan, RouteRefusal, RouteStation};

use crate::{Job, Stand, text};
use carried::Carried;
use driving::{PlanPose, Settings, TargetField, Watch};
use evidence::{Message, TextId};
use steadiness::Steadiness;

/// Poses that the last round of a search looks at: a pose on the real ground takes longer than one among cells.
const MOST: usize = 12_000;

/// A target that a field was prepared for.
pub struct RouteTarget {
    field: TargetField,
}

/// A way from a pose to a stand.
///
/// # Errors
/// [`RouteRefusal`]: what is missing for an answer, all of it at once; or what is in the way, and where.
pub fn route(
    job: &Job,
    ask: &RouteAsk,
    from: RoutePose,
    to: Stand,
    watch: Watch<'_>,
) -> Result<RoutePlan, Box<RouteRefusal>> {
    let to = RoutePose::from(to);
    let map = route_map(job, ask, from, to)?;
    let target = map.to(to);
    map.route(&target, from, watch)
}

/// The site for ways between two places and what lies around them.
///
/// # Errors
/// Everything that is missing for any answer.
pub fn route_map<'a>(
    job: &'a Job,
    ask: &'a RouteAsk,
    from: RoutePose,
    to: RoutePose,
) -> Result<RouteMap<'a>, Box<RouteRefusal>> {
    let missing = |because: Vec<Message>| {
        let (message, remedy) = (text::DRIVE_MISSING.message(), text::DO_DRIVE_STATE.message());
        Box::new(RouteRefusal { kind: RefusalKind::Missing, message, because, at: None, remedy })
    };
    let mut faults = Vec::new();
    let unit = job.machines.get(ask.machine);
    let attachment = unit.and_then(|u| u.machine.attachment(&ask.attachment));
    let load = ask.load.map(|i| job.loads.get(i));
    let mut fault = |holds: bool, id: TextId| {
        if !holds {
            faults.push(id.message());
        }
    };
    fault(unit.is_some(), text::DRIVE_NO_MACHINE);
    fault(unit.is_none() || attachment.is_some(), text::WHY_NO_ATTACHMENT);
    fault(!matches!(load, Some(None)), text::DRIVE_NO_LOAD);
    let hung =
        load.flatten().is_some_and(|l| l.hanging.is_some()) || attachment.is_some_and(machine::Attachment::hangs);
    fault(load.is_none() || !hung, text::DRIVE_HUNG);
    fault(unit.is_none_or(|u| !u.flat.contains(&true)), text::DRIVE_FLAT);
    fault(unit.is_none_or(|u| u.machine.slew.is_none()), text::DRIVE_SLEWING);
    fault(attachment.is_none_or(|a| a.width().is_some()), text::DRIVE_NO_WIDTH);
    let turning = &ask.turning;
    let radius = |s| turning.radius(s).is_some();
    fault(radius(driving::Steering::TwoWheel) || radius(driving::Steering::FourWheel), text::DRIVE_NO_TURNING);
    fault(!job.ground.surfaces.is_empty(), text::DRIVE_NO_GROUND);
    fault(ask.rules.sound() && ask.side_shift.is_finite(), text::DRIVE_RULES);
    let sound = |p: &RoutePose| p.at.is_finite() && p.heading.is_finite();
    fault(sound(&from) && sound(&to), text::DRIVE_NO_PLACE);
    fault(job.lines_complete.is_some(), text::DRIVE_LINES_OPEN);
    let nowhere = job.lines.iter().filter(|l| {
        let grounded = l.dead.as_ref().is_some_and(|d| d.visibly_grounded);
        !grounded && l.spans.is_empty() && l.course.len() < 2
    });
    faults.extend(nowhere.map(|l| text::DRIVE_NO_LINE_PLACE.with("name", &l.name)));
    let (Some(unit), Some(attachment), true) = (unit, attachment, faults.is_empty()) else {
        return Err(missing(faults));
    };
    let load = load.flatten();
    let carried = Carried::new(unit, attachment, load, ask);
    let steady = Steadiness::new(unit, attachment, load, &carried, ask.side_shift, &job.policy);
    RouteMap::new(job, ask, carried, steady, (&from, &to))
        .ok_or_else(|| missing(vec![text::DRIVE_NO_MACHINE.message()]))
}

impl RouteMap<'_> {
    /// A target, prepared for ways from any start in the map's area.
    pub fn to(&self, target: RoutePose) -> RouteTarget {
        let pose = PlanPose { at: target.at, heading: target.heading };
        RouteTarget { field: TargetField::prepare(self, self.vehicle(), pose) }
    }

    /// A way to a prepared target.
    ///
    /// # Errors
    /// What is in the way, and where.
    pub fn route(
        &self,
        target: &RouteTarget,
        from: RoutePose,
        watch: Watch<'_>,
    ) -> Result<RoutePlan, Box<RouteRefusal>> {
        let from = PlanPose { at: from.at, heading: from.heading };
        let settings = Settings { most: MOST, ..Settings::default() };
        let found = driving::route(self, self.vehicle(), &target.field, from, &settings, watch);
        match found {
            Ok(found) => describe::plan(self, &found).map_err(|(pose, bar)| Box::new(refuse::spoilt(self, &pose, bar))),
            Err(none) => Err(Box::new(refuse::refusal(self, none))),
        }
    }
}
