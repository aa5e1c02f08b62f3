//! Zones, excavations and buried things against where the machine stands and what it sweeps.

use super::swept::{self, Parts};
use crate::context::Context;
use crate::posed::Posed;
use crate::{Matter, text};
use evidence::{Finding, Source, Status};
use geometry::{DVec2, DVec3};
use site::{Body, PlanArea, PlanShape, Support, Thing, ThingKind, Zone, ZoneRule, distance_thing};

/// What is met, with the check that it belongs to.
pub(crate) struct Met {
    /// Id of the check.
    pub(crate) check: &'static str,
    pub(crate) status: Status,
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

/// True if any part of machine or load comes over the zone in plan, during the lift.
fn swept_over(ctx: &Context<'_>, posed: &Posed, zone: &Zone) -> bool {
    let Some(attachment) = ctx.attachment else { return true };
    // Without a top it reaches up without end: the distance is the one in plan.
    let column = Thing {
        id: String::new(),
        name: String::new(),
        kind: ThingKind::Unnamed,
        body: Body::Upright { shape: zone.shape.clone(), base: None, top: None },
        openings: Vec::new(),
        accuracy: 0.0,
        source: String::new(),
    };
    let margin = ctx.policy.stand_error;
    let least =
        swept::least(ctx, posed, attachment, Parts::All, margin, |solid, _| distance_thing(solid, &column).metres());
    least.is_none_or(|d| d.is_nan() || d <= margin)
}

/// Every zone, excavation and buried thing that refuses something or asks for a condition.
pub(crate) fn met(ctx: &Context<'_>, posed: Option<&Posed>) -> Vec<Met> {
    let around = &ctx.job.surroundings;
    if around.zones.is_empty() && around.excavations.is_empty() && around.buried.is_empty() {
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
                    out.push(Met { check, status, message, remedy });
                }
            }
            ZoneRule::Soft => {
                if contacts.iter().any(|c| zone.shape.distance(*c) <= error) {
                    let accepted = ctx.accepted(Matter::GroundStrength).is_some();
                    let status = if accepted { Status::Condition } else { Status::CannotTell };
                    out.push(Met {
                        check: "ground",
                        status,
                        message: named(text::ZONE_SOFT),
                        remedy: text::DO_LEAVE_ZONE,
                    });
                }
            }
            // Rules of driving: a stand does not break them.
            ZoneRule::OneWay { .. } | ZoneRule::Speed { .. } | ZoneRule::SlopeLimit { .. } => {}
        }
    }
    for dig in &around.excavations {
        let shape = PlanShape::Area(dig.outline.clone());
        let aside = contacts.iter().map(|c| shape.distance(*c)).fold(f64::INFINITY, f64::min) - error;
        let set_back = dig.depth.map(|d| (SET_BACK * d.high).max(LEAST_SET_BACK));
        let named = |id: evidence::TextId| id.with("name", &dig.name);
        let found = if aside <= 0.0 {
            Some((Status::NoGo, named(text::STANDS_IN_EXCAVATION)))
        } else {
            match set_back {
                // What holds its sides was designed for a load beside it, by somebody who is named.
                Some(far) if aside < far && matches!(&dig.support, Support::Supported { by: Some(_) }) => {
                    Some((Status::Condition, said(named(text::NEAR_SUPPORTED_EXCAVATION), aside, far)))
                }
                Some(far) if aside < far => Some((Status::NoGo, said(named(text::NEAR_EXCAVATION), aside, far))),
                None if aside < UNKNOWN_DEPTH => {
                    Some((Status::CannotTell, said(named(text::NEAR_EXCAVATION_UNKNOWN), aside, UNKNOWN_DEPTH)))
                }
                _ => None,
            }
        };
        if let Some((status, message)) = found {
            out.push(Met { check: "edges", status, message, remedy: text::DO_OTHER_STAND });
        }
    }
    let under = footprint(&contacts);
    for buried in &around.buried {
        if lies_under(&under, &buried.shape, error) {
            let accepted = ctx.accepted(Matter::Buried).is_some();
            let status = if accepted { Status::Condition } else { Status::CannotTell };
            let message = text::STANDS_OVER_BURIED.with("name", &buried.name).with("by", &buried.source);
            out.push(Met { check: "buried", status, message, remedy: text::DO_CLEAR_BURIED });
        }
    }
    out
}

/// From the edge of an excavation to a wheel or pad at least so many times its depth: the planning line
/// of 1.5 to 1, for cuts without a slope (common practice; `docs/engineering.md`).
const SET_BACK: f64 = 1.5;

/// And never less than this, m (common practice).
const LEAST_SET_BACK: f64 = 1.0;

/// Beside an excavation of unknown depth nothing is told within this, m: a basement of 4 m at the
/// planning line.
const UNKNOWN_DEPTH: f64 = 6.0;

fn said(message: evidence::Message, aside: f64, far: f64) -> evidence::Message {
    message.with("distance", super::metres(aside.max(0.0))).with("required", super::metres(far))
}

/// The ground between the contacts: what lies under the machine, not only under a wheel.
fn footprint(contacts: &[DVec2]) -> Vec<DVec2> {
    let middle = contacts.iter().copied().fold(DVec2::ZERO, |a, b| a + b) / contacts.len().max(1) as f64;
    let mut corners = contacts.to_vec();
    let turn = |p: &DVec2| libm::atan2(p.y - middle.y, p.x - middle.x);
    corners.sort_by(|a, b| turn(a).total_cmp(&turn(b)));
    corners
}

/// True if a shape reaches under the machine, or within `error` of a contact.
fn lies_under(corners: &[DVec2], shape: &PlanShape, error: f64) -> bool {
    if corners.iter().any(|c| shape.distance(*c) <= error) {
        return true;
    }
    let area = PlanArea { outer: corners.to_vec(), holes: Vec::new() };
    corners.len() >= 3 && shape.outlines().iter().any(|outline| area.distance_to_area(outline) <= error)
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
