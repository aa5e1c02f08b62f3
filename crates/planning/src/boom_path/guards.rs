//! Everything that boom and load must keep their distance from, and how much room is left at a boom position.
//!
//! The same parts, distances and demands as in the checks of lines, things and zones; a movement found with them passes
//! those checks.

use crate::checks::line;
use crate::checks::obstacle;
use crate::checks::parts::{moving, standing};
use crate::checks::swept::{Parts, worse};
use crate::checks::zones;
use crate::context::Context;
use crate::posed::{Posed, tool_point};
use geometry::{DVec3, Segment, Solid};
use machine::{Attachment, BoomPosition};
use site::{Thing, distance_thing};
use std::borrow::Cow;

/// What is kept away from.
enum Measure<'a> {
    Thing(Box<Cow<'a, Thing>>, Option<(DVec3, DVec3)>),
    Line(Vec<(f64, Segment)>),
}

/// Where a demand comes from, as its place in the job's lists.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Origin {
    Thing(usize),
    Line(usize),
    Zone(usize),
}

/// One demand.
struct Guard<'a> {
    origin: Origin,
    parts: Parts,
    required: f64,
    measure: Measure<'a>,
}

/// All of them, for a machine that stands so.
pub(crate) struct Guards<'c, 'a> {
    ctx: &'c Context<'a>,
    posed: &'c Posed,
    attachment: &'c Attachment,
    list: Vec<Guard<'a>>,
}

/// The least room left, m, and by which demand. Negative: so much is missing.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Room {
    pub(crate) left: f64,
    /// Distance required by that demand, m.
    pub(crate) required: f64,
    /// `None`: there is nothing to come near to.
    pub(crate) origin: Option<Origin>,
}

const OPEN: Room = Room { left: f64::INFINITY, required: 0.0, origin: None };

impl<'c, 'a> Guards<'c, 'a> {
    /// Everything within reach of the stand.
    pub(crate) fn new(ctx: &'c Context<'a>, posed: &'c Posed, attachment: &'c Attachment) -> Self {
        let job = ctx.job;
        let things = &job.surroundings.things;
        let mut list = Vec::new();
        if !things.is_empty() {
            for i in things.within(ctx.stand.at, obstacle::reach(ctx, Some(posed))) {
                let Some(thing) = things.get(i) else { continue };
                list.extend(obstacle::demands(ctx, Some(posed), thing).into_iter().map(|asked| {
                    let extent = asked.thing.extent();
                    let measure = Measure::Thing(Box::new(asked.thing), extent);
                    Guard { origin: Origin::Thing(i), parts: asked.parts, required: asked.required, measure }
                }));
            }
        }
        for (i, zone) in job.surroundings.zones.iter().enumerate().filter(|(_, zone)| zones::closed(zone)) {
            let column = zones::column(zone);
            let extent = column.extent();
            let measure = Measure::Thing(Box::new(Cow::Owned(column)), extent);
            list.push(Guard { origin: Origin::Zone(i), parts: Parts::All, required: ctx.policy.stand_error, measure });
        }
        let foot = ctx.machine.boom.foot;
        let foot = posed.footing.site_from_machine * DVec3::new(foot.x, 0.0, foot.y);
        for (i, known) in job.lines.iter().enumerate() {
            // What cannot be measured the check of lines says; no movement mends it.
            if let line::LineOutcome::Measured { required, .. } = line::asked(ctx, Some(posed), known) {
                let chords = line::chords(known, foot, line::boom_radius(ctx));
                let measure = Measure::Line(chords);
                list.push(Guard { origin: Origin::Line(i), parts: Parts::All, required, measure });
            }
        }
        Self { ctx, posed, attachment, list }
    }

    /// Room left round boom and load.
    pub(crate) fn room(&self, boom: BoomPosition) -> Room {
        let tool = tool_point(self.ctx, self.attachment, boom);
        let parts = moving(self.ctx, self.posed, tool, boom).map(|s| s.moved(self.posed.footing.site_from_machine));
        self.least(|of| if of == Parts::All { &parts[..] } else { &parts[..2] })
    }

    /// Room left round frame and cab, which stand still.
    pub(crate) fn room_of_frame(&self) -> Room {
        let parts: Vec<Solid> =
            standing(self.ctx).iter().map(|s| s.moved(self.posed.footing.site_from_machine)).collect();
        self.least(|_| &parts)
    }

    fn least<'s>(&self, parts: impl Fn(Parts) -> &'s [Solid]) -> Room {
        let mut least = OPEN;
        for guard in &self.list {
            // What is no nearer than this makes no less room.
            let enough = least.left + guard.required;
            let mut found = f64::INFINITY;
            for solid in parts(guard.parts) {
                found = worse(found, guard.measure.distance(solid, worse(found, enough)));
            }
            // Taking off what was added rounds: something far off would seem nearer than what is near.
            if found >= enough {
                continue;
            }
            // A distance or a demand that is no number leaves nothing.
            let left = found - guard.required;
            let left = if left.is_nan() { f64::NEG_INFINITY } else { left };
            if left < least.left {
                least = Room { left, required: guard.required, origin: Some(guard.origin) };
            }
        }
        least
    }
}

impl Measure<'_> {
    /// Distance of a solid, m; anything from `enough` up where it is no nearer.
    fn distance(&self, solid: &Solid, enough: f64) -> f64 {
        match self {
            Self::Thing(_, Some((low, high))) if site::least_distance(solid, *low, *high) >= enough => enough,
            Self::Thing(thing, _) => distance_thing(solid, thing).metres(),
            Self::Line(chords) => line::to_chords(solid, chords, enough),
        }
    }
}
