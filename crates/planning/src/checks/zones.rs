//! Zones against where the machine stands and what it sweeps.

use super::swept::{self, Parts};
use crate::context::Context;
use crate::posed::Posed;
use crate::{Matter, text};
use evidence::{Finding, Source, Status};
use geometry::{DVec2, DVec3};
use site::{Body, Thing, ThingKind, Zone, ZoneRule, distance_thing};

/// What is met, with the check that it belongs to.
pub(crate) struct Met {
    /// Id of the check.
    pub(crate) check: &'static str,
    pub(crate) status: Status,
    /// Name of the zone.
    pub(crate) zone: String,
    message: evidence::Message,
    remedy: evidence::TextId,
}

/// Plan places of the four contacts, m; empty where the machine cannot be posed.
fn contacts(ctx: &Context<'_>, posed: Option<&Posed>) -> Vec<DVec2> {
    let Some(posed) = posed else { return Vec::new() };
    let pose = posed.footing.site_from_machine;
    let on = crate::posed::contacts(ctx);
    [(on.front_x, on.front_half), (on.rear_x, on.rear_half)]
        .into_iter()
        .flat_map(|(x, half)| [(x, half), (x, -half)])
        .map(|(x, y)| (pose * DVec3::new(x, y, 0.0)).truncate())
        .collect()
}

/// The zone as a thing. Without a top it reaches up without end: the distance is the one in plan.
pub(crate) fn column(zone: &Zone) -> Thing {
    Thing {
        id: String::new(),
        name: zone.name.clone(),
        kind: ThingKind::Unnamed,
        body: Body::Upright { shape: zone.shape.clone(), base: None, top: None },
        openings: Vec::new(),
        accuracy: 0.0,
        source: String::new(),
    }
}

/// True for a zone over which nothing may come at any time.
pub(crate) fn closed(zone: &Zone) -> bool {
    matches!(zone.rule, ZoneRule::NoGo | ZoneRule::People) && zone.times.is_empty()
}

/// True if any part of machine or load comes over the zone in plan, during the lift.
fn swept_over(ctx: &Context<'_>, posed: &Posed, zone: &Zone) -> bool {
    let Some(attachment) = ctx.attachment else { return true };
    let column = column(zone);
    let margin = ctx.policy.stand_error;
    let least =
        swept::least(ctx, posed, attachment, Parts::All, margin, |solid, _| distance_thing(solid, &column).metres());
    least.is_none_or(|d| d.is_nan() || d <= margin)
}

/// Every zone that refuses something or asks for a condition.
pub(crate) fn met(ctx: &Context<'_>, posed: Option<&Posed>) -> Vec<Met> {
    let around = &ctx.job.surroundings;
    if around.zones.is_empty() {
        return Vec::new();
    }
    let mut out = Vec::new();
    let contacts = contacts(ctx, posed);
    let error = ctx.policy.stand_error;
    for zone in &around.zones {
        let named = |id: evidence::TextId| id.with("zone", &zone.name).with("by", &zone.by);
        match zone.rule {
            ZoneRule::NoGo | ZoneRule::People => {
                if posed.is_some_and(|p| swept_over(ctx, p, zone)) {
                    let always = zone.times.is_empty();
                    let (check, id, remedy) = match (zone.rule, always) {
                        (ZoneRule::NoGo, true) => ("obstacles", text::ZONE_NO_GO, text::DO_LEAVE_ZONE),
                        (ZoneRule::NoGo, false) => ("obstacles", text::ZONE_NO_GO_TIMES, text::DO_WAIT_FOR_ZONE),
                        (_, true) => ("people", text::ZONE_PEOPLE, text::DO_LEAVE_ZONE),
                        (_, false) => ("people", text::ZONE_PEOPLE_TIMES, text::DO_WAIT_FOR_ZONE),
                    };
                    let status = if always { Status::NoGo } else { Status::Condition };
                    let message = if always { named(id) } else { named(id).with("times", times(zone)) };
                    out.push(Met { check, status, zone: zone.name.clone(), message, remedy });
                }
            }
            ZoneRule::Soft => {
                if contacts.iter().any(|c| zone.shape.distance(*c) <= error) {
                    let accepted = ctx.accepted(Matter::GroundStrength).is_some();
                    let status = if accepted { Status::Condition } else { Status::CannotTell };
                    out.push(Met {
                        check: "ground",
                        status,
                        zone: zone.name.clone(),
                        message: named(text::ZONE_SOFT),
                        remedy: text::DO_LEAVE_ZONE,
                    });
                }
            }
            // Rules of driving: a stand does not break them.
            ZoneRule::OneWay { .. } | ZoneRule::Speed { .. } | ZoneRule::SlopeLimit { .. } => {}
        }
    }
    out
}

/// "07:00-09:30, 12:00-13:00": times of day are written alike in every language.
fn times(zone: &Zone) -> String {
    let clock = |m: u16| format!("{:02}:{:02}", m / 60, m % 60);
    zone.times.iter().map(|t| format!("{}-{}", clock(t.from), clock(t.to))).collect::<Vec<_>>().join(", ")
}

pub(crate) fn findings(met: &[Met]) -> Vec<Finding> {
    let said =
        |m: &Met| Finding::new(m.check, m.status, m.message.clone()).remedy(m.remedy).source(Source::CommonPractice);
    met.iter().map(said).collect()
}
