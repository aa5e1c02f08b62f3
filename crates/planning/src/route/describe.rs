//! What is told of a way that was found.

use super::bar::Bar;
use super::map::RouteMap;
use super::route_plan::{RouteLeg, RouteMargin, RoutePlan, RouteStation};
use crate::text;
use driving::{DriveMap, Gear, OnWay, PlanBox, PlanPose, Route, Underway, swept};
use evidence::Message;
use quantity::{Dimension, Quantity, Si};
use std::collections::BTreeMap;

/// Way between the poses of a profile, m.
const STATION: f64 = 0.5;

/// The same where it is known that one of them is barred, m.
const CLOSELY: f64 = 0.02;

/// Way that a piece of swept ground reaches over, m.
const PIECE: f64 = 1.0;

/// # Errors
/// A pose of it at which the machine may not drive after all, or of which a margin is no number, with what bars it: the
/// search looks at other poses than people are told of, up to half a station away.
pub(crate) fn plan(map: &RouteMap<'_>, found: &Route) -> Result<RoutePlan, (PlanPose, Bar)> {
    // Without a time some pose is barred: it is looked for closely.
    let poses = found.poses(map.vehicle(), if found.time.is_finite() { STATION } else { CLOSELY });
    let mut profile = Vec::with_capacity(poses.len());
    let mut slowest = vec![f64::INFINITY; found.legs.len()];
    let mut least: BTreeMap<Bar, (f64, &OnWay)> = BTreeMap::new();
    for on in &poses {
        let underway = underway(found, on);
        let speed = map.going(&underway).map_err(|bar| (on.pose, bar))?.speed;
        slowest[on.leg] = slowest[on.leg].min(speed);
        profile.push(station(map, on, &underway, speed).ok_or((on.pose, Bar::UnknownGround))?);
        for margin in map.margins(&underway) {
            if !margin.left.is_finite() {
                return Err((on.pose, margin.of));
            }
            let entry = least.entry(margin.of).or_insert((margin.left, on));
            if margin.left < entry.0 {
                *entry = (margin.left, on);
            }
        }
    }
    if !found.time.is_finite() {
        return Err((found.to, Bar::UnknownGround));
    }
    let mut margins: Vec<(Bar, f64, &OnWay)> = least.into_iter().map(|(bar, (left, on))| (bar, left, on)).collect();
    margins.sort_by(|a, b| a.1.total_cmp(&b.1));
    let margins = margins
        .into_iter()
        .map(|(bar, left, on)| RouteMargin {
            of: bar.message(map.job),
            left: quantity(bar, left),
            along_m: on.along,
            at: on.pose.at.to_array(),
        })
        .collect();
    let legs = found.legs.iter().zip(slowest).map(|(leg, speed)| RouteLeg {
        gear: leg.motion.gear(),
        steering: leg.motion.steering,
        length_m: leg.motion.length.abs(),
        radius_m: (leg.motion.curvature != 0.0).then(|| 1.0 / leg.motion.curvature),
        slant_deg: leg.motion.slant.to_degrees(),
        speed_m_s: speed,
    });
    let pieces = swept(map.vehicle(), map.outline(), found, PIECE);
    Ok(RoutePlan {
        machine: map.job.machines.get(map.ask.machine).map_or_else(String::new, |m| m.machine.id.clone()),
        load: map.ask.load.and_then(|i| map.job.loads.get(i)).map(|l| l.name.clone()),
        legs: legs.collect(),
        length_m: found.length(),
        reversed_m: found.reversed(),
        gear_changes: found.gear_changes(),
        steering_changes: found.steering_changes(),
        time_s: found.time,
        profile,
        margins,
        outline: map.outline().iter().map(corners).collect(),
        swept: pieces.into_iter().map(|piece| piece.into_iter().map(|p| p.to_array()).collect()).collect(),
        notes: notes(map),
    })
}

fn corners(of: &PlanBox) -> Vec<[f64; 2]> {
    let w = of.half_width;
    vec![[of.rear, -w], [of.front, -w], [of.front, w], [of.rear, w]]
}

fn underway(found: &Route, on: &OnWay) -> Underway {
    let motion = &found.legs[on.leg].motion;
    let back = if motion.gear() == Gear::Reverse { core::f64::consts::PI } else { 0.0 };
    Underway {
        pose: on.pose,
        gear: motion.gear(),
        steering: motion.steering,
        curvature: motion.curvature,
        course: on.pose.heading + motion.slant + back,
    }
}

fn station(map: &RouteMap<'_>, on: &OnWay, underway: &Underway, speed: f64) -> Option<RouteStation> {
    let footing = map.slopes(&on.pose)?.footing;
    Some(RouteStation {
        along_m: on.along,
        at: on.pose.at.to_array(),
        heading_deg: geometry::heading_to_degrees(on.pose.heading),
        height_m: f64::midpoint(footing.heights[0], footing.heights[1]),
        slope_along: footing.along,
        slope_across: footing.across,
        speed_m_s: speed,
        gear: underway.gear,
    })
}

fn quantity(bar: Bar, left: f64) -> Quantity {
    match bar {
        Bar::Along | Bar::Across => Quantity::slope(left),
        Bar::Tilt(_) | Bar::Twist => Quantity::new(left, Dimension::Angle),
        _ => Quantity::new(left, Dimension::Length),
    }
}

fn notes(map: &RouteMap<'_>) -> Vec<Message> {
    let rules = &map.ask.rules;
    let carry = map.job.machines.get(map.ask.machine).map(|m| m.machine.limits.carry.angle.si());
    let carry = carry.filter(|angle| angle.is_finite()).map(|angle| Quantity::new(angle, Dimension::Angle));
    let mut out: Vec<Message> = carry.map(|angle| text::DRIVE_NOTE_CARRY.with("angle", angle)).into_iter().collect();
    out.push(
        text::DRIVE_NOTE_RULES
            .with("pace", Quantity::new(rules.pace, Dimension::Speed))
            .with("along", Quantity::slope(rules.along))
            .with("across", Quantity::slope(rules.across))
            .with("turning", Quantity::slope(rules.turning_across)),
    );
    out.push(if map.loaded() {
        let grade = Quantity::slope(rules.load_uphill);
        text::DRIVE_NOTE_UPHILL.with("grade", grade).with("clause", "29 CFR 1910.178(n)(7)(i)")
    } else {
        text::DRIVE_NOTE_EMPTY.message()
    });
    out.push(text::DRIVE_NOTE_NOT_LOOKED_AT.message());
    out
}
