//! A job's site as a drive meets it.

use super::bar::Bar;
use super::barriers::{Barrier, barriers};
use super::carried::Carried;
use super::rasters::{Rasters, frame};
use super::steadiness::Steadiness;
use super::{RouteAsk, RoutePose};
use crate::Job;
use driving::{DriveMap, Going, Margin, PlanBox, PlanPose, Raster, Spread, Underway, Vehicle};
use evidence::Ranged;
use geometry::DVec2;
use quantity::Si;
use site::ZoneRule;
use site::footing::{Footing, footing};

/// Way between two looks at slopes and zones, m.
const STATIONS: f64 = 0.5;

/// What a metre counts more for each unit of slope: 10 % counts half as much again (chosen for the search).
const SLOPE_COST: f64 = 5.0;

/// What a metre counts with the forks of an empty machine uphill on a grade on which they belong downhill.
const AGAINST_PRACTICE: f64 = 2.0;

/// How much the ground under a body may lift it beyond its wheels' plane for each metre of spread: slopes driven at most.
const LIFT: f64 = 0.5;

/// The site of a job for one machine with its load.
pub struct RouteMap<'a> {
    pub(crate) job: &'a Job,
    pub(crate) ask: &'a RouteAsk,
    pub(crate) carried: Carried,
    pub(crate) steady: Steadiness,
    pub(crate) barriers: Vec<Barrier<'a>>,
    /// How far the rear axle turns against the frame, rad.
    oscillation: f64,
    rasters: Rasters,
}

/// Slopes under a machine and what they leave.
#[derive(Debug, Clone)]
pub(crate) struct Slopes {
    pub(crate) footing: Footing,
    /// Tilt left beyond what is required, rad, and over which side.
    pub(crate) tilt: (f64, super::bar::Over),
}

impl<'a> RouteMap<'a> {
    pub(crate) fn new(
        job: &'a Job,
        ask: &'a RouteAsk,
        carried: Carried,
        steady: Steadiness,
        ends: (&RoutePose, &RoutePose),
    ) -> Option<Self> {
        let machine = &job.machines.get(ask.machine)?.machine;
        let barriers = barriers(job, ask, machine);
        let frame = frame(&job.ground, ends.0.at, ends.1.at);
        let rasters = Rasters::new(&job.ground, &job.surroundings, &barriers, &carried, frame);
        let oscillation = machine.rear.oscillation.si();
        Some(Self { job, ask, carried, steady, barriers, oscillation, rasters })
    }

    /// The machine as it is driven.
    pub fn vehicle(&self) -> &Vehicle {
        &self.carried.vehicle
    }

    pub(crate) fn loaded(&self) -> bool {
        self.ask.load.is_some()
    }

    pub(crate) fn slopes(&self, pose: &PlanPose) -> Option<Slopes> {
        let footing = footing(&self.job.ground, pose.at, pose.heading, &self.carried.contacts).ok()?;
        let tilt = self.steady.margin(range(footing.along), range(footing.across));
        Some(Slopes { footing, tilt })
    }

    /// True if a barrier is nearer than it may be to the machine at a pose, spread.
    pub(crate) fn near(&self, barrier: &Barrier<'_>, pose: &PlanPose, spread: Spread) -> bool {
        beyond(barrier.distance, self.distance(barrier, pose, spread))
    }

    /// Distance from a barrier to what must keep away from it, m, the machine at a pose, spread. Where the ground is
    /// not known, in plan.
    pub(crate) fn distance(&self, barrier: &Barrier<'_>, pose: &PlanPose, spread: Spread) -> f64 {
        let boxes = if barrier.wheels { core::slice::from_ref(&self.carried.wheels) } else { self.outline() };
        let reach = boxes.iter().flat_map(|b| b.spread(spread).corners()).map(DVec2::length).fold(0.0, f64::max);
        if let Some((low, high)) = barrier.bounds() {
            let aside = (low - pose.at).max(pose.at - high).max(DVec2::ZERO).length() - reach;
            if aside > barrier.distance + 5.0 {
                return aside;
            }
        }
        let rectangles: Vec<_> = boxes.iter().map(|b| b.spread(spread).corners_at(pose)).collect();
        let in_plan = barrier.to_rectangles(&rectangles);
        if barrier.stands_on_the_ground() || (in_plan.is_finite() && in_plan >= barrier.distance) {
            return in_plan;
        }
        let Some(slopes) = self.slopes(pose) else { return if in_plan.is_finite() { in_plan } else { f64::NAN } };
        let up = LIFT * (spread.along + spread.across);
        barrier.to_machine(&self.carried, slopes.footing.site_from_machine, (spread.along, spread.across, up))
    }

    fn zones_at(&self, pose: &PlanPose) -> impl Iterator<Item = (usize, &site::Zone)> {
        let wheels = self.carried.wheels.corners_at(pose);
        let middle = (wheels[0] + wheels[2]) * 0.5;
        let zones = self.job.surroundings.zones.iter().enumerate().filter(|(_, z)| z.applies(self.ask.at));
        zones.filter(move |(_, z)| {
            let drives =
                matches!(z.rule, ZoneRule::OneWay { .. } | ZoneRule::Speed { .. } | ZoneRule::SlopeLimit { .. });
            drives && wheels.iter().chain([&middle]).any(|p| z.shape.distance(*p) <= self.ask.rules.drift)
        })
    }
}

/// Both ends of a range.
pub(crate) fn range(r: Ranged) -> (f64, f64) {
    (r.low, r.high)
}

/// The larger of both ends' sizes; what is no number stays.
pub(crate) fn steepest(r: Ranged) -> f64 {
    if r.low.is_nan() || r.high.is_nan() { f64::NAN } else { r.low.abs().max(r.high.abs()) }
}

/// True unless surely no more than that.
fn beyond(value: f64, most: f64) -> bool {
    value.is_nan() || most.is_nan() || value > most
}

impl DriveMap for RouteMap<'_> {
    type What = Bar;

    fn barred(&self, pose: &PlanPose, spread: Spread) -> Option<Bar> {
        let wheels = self.carried.wheels.spread(spread);
        if let Some(bar) = self.rasters.unknown.meets(&wheels, pose) {
            return Some(bar);
        }
        if self.rasters.wheels.meets(&wheels, pose).is_some() {
            let found = self.barriers.iter().find(|b| b.wheels && self.near(b, pose, spread));
            if let Some(barrier) = found {
                return Some(barrier.bar);
            }
        }
        let met = self.outline().iter().find_map(|b| self.rasters.body.meets(&b.spread(spread), pose))?;
        if met == Bar::Outside {
            return Some(met);
        }
        self.barriers.iter().find(|b| !b.wheels && self.near(b, pose, spread)).map(|b| b.bar)
    }

    fn going(&self, underway: &Underway) -> Result<Going, Bar> {
        let rules = &self.ask.rules;
        let slopes = self.slopes(&underway.pose).ok_or(Bar::UnknownGround)?;
        let (along, across) = (slopes.footing.along, slopes.footing.across);
        if beyond(steepest(along), rules.along) {
            return Err(Bar::Along);
        }
        // The rear axle runs on other ground than the front, which alone gives the roll.
        if beyond(steepest(across), rules.across) || beyond(steepest(slopes.footing.rear_across), rules.across) {
            return Err(Bar::Across);
        }
        if beyond(slopes.footing.twist, self.oscillation) {
            return Err(Bar::Twist);
        }
        if underway.curvature != 0.0 && beyond(steepest(across), rules.turning_across) {
            return Err(Bar::TurningAcross);
        }
        if beyond(0.0, slopes.tilt.0) {
            return Err(Bar::Tilt(slopes.tilt.1));
        }
        if self.loaded() && along.low < -rules.load_uphill {
            return Err(Bar::LoadDownhill);
        }
        let mut speed = rules.pace;
        for (i, zone) in self.zones_at(&underway.pose) {
            match zone.rule {
                // Also at right angles to it nobody expects a machine to come.
                ZoneRule::OneWay { heading } if beyond(-libm::cos(underway.course - heading), 0.0) => {
                    return Err(Bar::OneWay(i));
                }
                ZoneRule::Speed { most } if beyond(speed, most) => {
                    speed = if most > 0.0 { most } else { return Err(Bar::Zone(i)) }
                }
                ZoneRule::SlopeLimit { most } if beyond(steepest(along).max(steepest(across)), most) => {
                    return Err(Bar::ZoneSlope(i));
                }
                _ => {}
            }
        }
        if underway.curvature != 0.0 {
            let side = underway.curvature;
            let most = self.steady.sideways(range(along), range(across), side);
            let in_curve = (most / side.abs()).sqrt();
            // `min` would leave out what is no number.
            speed = if in_curve >= speed { speed } else { in_curve };
        }
        if speed.is_nan() || speed <= 0.0 {
            return Err(Bar::Tilt(super::bar::Over::Side));
        }
        let steep = libm::hypot(along.nominal, across.nominal);
        let practice = if !self.loaded() && along.high > rules.load_uphill { AGAINST_PRACTICE } else { 1.0 };
        let guide = self.vehicle().tightest().map_or(0.0, |(mode, _)| self.vehicle().pivot(mode));
        let cell = self.closed().frame().index(underway.pose.place(DVec2::new(guide, 0.0)));
        let least = cell.map_or(1.0, |i| self.least_cost(i));
        Ok(Going { cost: least * (1.0 + SLOPE_COST * steep) * practice, speed })
    }

    fn stations(&self) -> f64 {
        STATIONS
    }

    fn all_barred(&self, pose: &PlanPose) -> Vec<Bar> {
        let wheels = &self.carried.wheels;
        let mut out: Vec<Bar> = self.rasters.unknown.meets(wheels, pose).into_iter().collect();
        out.extend(self.outline().iter().find_map(|b| self.rasters.body.meets(b, pose)).filter(|b| *b == Bar::Outside));
        out.extend(self.barriers.iter().filter(|b| self.near(b, pose, Spread::default())).map(|b| b.bar));
        out.sort_unstable();
        out.dedup();
        out
    }

    fn margins(&self, underway: &Underway) -> Vec<Margin<Bar>> {
        let mut out = Vec::new();
        for barrier in &self.barriers {
            let left = self.distance(barrier, &underway.pose, Spread::default()) - barrier.distance;
            if left < 5.0 || left.is_nan() {
                out.push(Margin { of: barrier.bar, left });
            }
        }
        if let Some(slopes) = self.slopes(&underway.pose) {
            let rules = &self.ask.rules;
            out.push(Margin { of: Bar::Along, left: rules.along - steepest(slopes.footing.along) });
            let [front, rear] = [slopes.footing.across, slopes.footing.rear_across].map(steepest);
            // `max` would leave out what is no number.
            let across = if front.is_nan() || front > rear { front } else { rear };
            out.push(Margin { of: Bar::Across, left: rules.across - across });
            out.push(Margin { of: Bar::Twist, left: self.oscillation - slopes.footing.twist });
            out.push(Margin { of: Bar::Tilt(slopes.tilt.1), left: slopes.tilt.0 });
        }
        out
    }

    fn closed(&self) -> &Raster<Bar> {
        &self.rasters.closed
    }

    fn least_cost(&self, cell: usize) -> f64 {
        self.rasters.costs.get(cell).map_or(1.0, |c| f64::from(*c))
    }

    fn outline(&self) -> &[PlanBox] {
        &self.carried.vehicle.outline
    }
}
