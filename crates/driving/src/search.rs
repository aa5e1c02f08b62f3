//! Search over place and heading.
//!
//! Hybrid A*: D. Dolgov, S. Thrun, M. Montemerlo, J. Diebel: Practical search techniques in path planning for
//! autonomous driving, AAAI workshop 2008; Path planning for autonomous vehicles in unknown semi-structured
//! environments, International Journal of Robotics Research 29 (2010) 485–501. A cell of the lattice keeps the exact
//! pose by which it was reached first at least cost; the estimate is the larger of the way around everything
//! closed (heading left aside) and of the shortest word (closed cells left aside); words tried now and then
//! end the way exactly at the target. The gear, and so the direction of travel, belongs to the state.
//!
//! It finds the ways of its lattice: that there is none in it does not prove that there is none at all.

use crate::clear::{self, Spreaded};
use crate::key_map::KeyMap;
use crate::lattice::{Lattice, Step, steps};
use crate::reeds_shepp::{self, Word};
use crate::refusal;
use crate::shorten::shorten;
use crate::target_field::guide;
use crate::{
    DriveMap, Gear, Leg, Motion, NoRoute, PlanPose, Progress, Route, Settings, Spread, Steering, TargetField, Vehicle,
    Watch,
};
use core::cmp::Ordering;
use std::collections::BinaryHeap;

/// Poses between two reports.
const REPORT: usize = 1024;

/// A pose reached.
#[derive(Debug, Clone)]
struct Node {
    pose: PlanPose,
    cost: f64,
    parent: u32,
    /// Index of the step by which it was reached; `u16::MAX` at the start.
    step: u16,
    closed: bool,
}

/// A node that waits.
struct Waiting {
    rank: f64,
    cost: f64,
    node: u32,
}

impl PartialEq for Waiting {
    fn eq(&self, other: &Self) -> bool {
        self.cmp(other) == Ordering::Equal
    }
}
impl Eq for Waiting {}
impl PartialOrd for Waiting {
    fn partial_cmp(&self, other: &Self) -> Option<Ordering> {
        Some(self.cmp(other))
    }
}
impl Ord for Waiting {
    /// The lowest rank is greatest, of the same rank the one nearest to the target, then the older.
    fn cmp(&self, other: &Self) -> Ordering {
        let rank = other.rank.total_cmp(&self.rank);
        rank.then_with(|| self.cost.total_cmp(&other.cost)).then_with(|| other.node.cmp(&self.node))
    }
}

/// A way on from a node to the target.
struct Ending {
    cost: f64,
    node: u32,
    motions: Vec<Motion>,
}

/// What a search works with.
pub(crate) struct Search<'a, M: DriveMap> {
    pub(crate) map: &'a M,
    pub(crate) vehicle: &'a Vehicle,
    pub(crate) field: &'a TargetField,
    pub(crate) settings: &'a Settings,
    /// The tightest mode and its radius, m: words are driven in it.
    pub(crate) tightest: (Steering, f64),
}

/// A way from `from` to the target of the field.
///
/// The map is asked for everything; the same questions and answers give the same way on every platform.
///
/// # Errors
/// [`NoRoute`] says why there is none, or that none was found.
pub fn route<M: DriveMap>(
    map: &M,
    vehicle: &Vehicle,
    field: &TargetField,
    from: PlanPose,
    settings: &Settings,
    watch: Watch<'_>,
) -> Result<Route, NoRoute<M::What>> {
    vehicle.check().map_err(NoRoute::Vehicle)?;
    let Some(tightest) = vehicle.tightest() else {
        return Err(NoRoute::Vehicle(crate::VehicleError::NoTurning));
    };
    let to = *field.target();
    if !from.is_finite() || !to.is_finite() {
        return Err(NoRoute::NotANumber);
    }
    if map.barred(&from, Spread::default()).is_some() {
        return Err(NoRoute::StartBarred(map.all_barred(&from)));
    }
    if map.barred(&to, Spread::default()).is_some() {
        return Err(NoRoute::TargetBarred(map.all_barred(&to)));
    }
    let search = Search { map, vehicle, field, settings, tightest };
    if let Some(why) = search.forbidden(&from) {
        return Err(NoRoute::StartBarred(why));
    }
    if let Some(why) = search.forbidden(&to) {
        return Err(NoRoute::TargetBarred(why));
    }
    if field.from(map.closed(), &from).is_infinite() {
        return Err(refusal::closed_off(&search, &from));
    }
    search.rounds(from, watch)
}

impl<M: DriveMap> Search<'_, M> {
    /// Searches first on a coarse lattice and for a short time. Where that ends in a dead end that the field does not
    /// see, since it leaves the heading aside, the field is made again with that place dearer. The last
    /// round is on the lattice of the map's own cells with the field as given, as long as it may take.
    fn rounds(&self, from: PlanPose, watch: Watch<'_>) -> Result<Route, NoRoute<M::What>> {
        let cell = self.map.closed().frame().cell;
        if let Some(place) = self.settings.place {
            return self.run(from, place, self.settings.most, &mut 0, watch);
        }
        let mut looked_at = 0;
        let mut ends = Vec::new();
        let mut most = FIRST_ROUND;
        let mut around = None;
        while most < self.settings.most && ends.len() < ROUNDS {
            let search = Search { field: around.as_ref().unwrap_or(self.field), ..*self };
            match search.run(from, COARSE * cell, most, &mut looked_at, &mut *watch) {
                Err(NoRoute::GaveUp { nearest, .. }) => ends.push(guide_at(self.vehicle, &nearest)),
                // On a finer lattice there may be a way where there is none on this one.
                Err(NoRoute::WalledIn { .. } | NoRoute::Narrow(_)) => break,
                done => return done,
            }
            around = Some(TargetField::around(self.map, self.vehicle, *self.field.target(), &ends));
            most += FIRST_ROUND;
        }
        match self.run(from, cell, self.settings.most, &mut looked_at, watch) {
            Err(NoRoute::GaveUp { nearest, short, by, looked_at }) => {
                let narrow = refusal::too_narrow(self, &from).map(NoRoute::Narrow);
                Err(narrow.unwrap_or(NoRoute::GaveUp { nearest, short, by, looked_at }))
            }
            done => done,
        }
    }

    /// Why a pose may be driven over neither forward nor in reverse; `None`: it may in one of them.
    fn forbidden(&self, pose: &PlanPose) -> Option<Vec<M::What>> {
        let straight = |length: f64| Motion { steering: self.tightest.0, curvature: 0.0, slant: 0.0, length };
        let going = |length: f64| self.map.going(&clear::underway(self.vehicle, pose, &straight(length), 0.0));
        let mut why = Vec::from([going(1.0).err()?, going(-1.0).err()?]);
        why.sort_unstable();
        why.dedup();
        Some(why)
    }

    /// One search; `looked_at` counts over all of them.
    fn run(
        &self,
        from: PlanPose,
        place: f64,
        most: usize,
        looked_at: &mut usize,
        watch: Watch<'_>,
    ) -> Result<Route, NoRoute<M::What>> {
        let steps = steps(self.map, self.vehicle, self.settings);
        let lattice = Lattice::new(self.settings, place);
        let mut nodes = vec![Node { pose: from, cost: 0.0, parent: u32::MAX, step: u16::MAX, closed: false }];
        let mut keys = KeyMap::new();
        let mut open = BinaryHeap::new();
        open.push(Waiting { rank: self.estimate(&from), cost: 0.0, node: 0 });
        let mut best: Option<Ending> = None;
        let mut nearest = (f64::INFINITY, 0_u32);
        let begun = *looked_at;
        let mut next_ending = begun;

        while let Some(Waiting { rank, node: at, cost: when }) = open.pop() {
            if best.as_ref().is_some_and(|b| rank >= b.cost) {
                break;
            }
            let node = &mut nodes[at as usize];
            if node.closed || when > node.cost {
                continue;
            }
            node.closed = true;
            let Node { pose, cost, step, .. } = node.clone();
            let left = self.field.from(self.map.closed(), &pose);
            if left < nearest.0 {
                nearest = (left, at);
            }
            *looked_at += 1;
            if looked_at.is_multiple_of(REPORT) && watch(Progress { looked_at: *looked_at, left }).is_break() {
                return Err(NoRoute::Stopped);
            }
            if *looked_at - begun > most {
                if best.is_some() {
                    break;
                }
                let nearest = nodes[nearest.1 as usize].pose;
                let short = nearest.at.distance(self.field.target().at);
                let by = refusal::around(self, &nearest, &steps);
                return Err(NoRoute::GaveUp { nearest, short, by, looked_at: *looked_at });
            }
            let before = steps.get(usize::from(step));
            if *looked_at > next_ending {
                // The further away, the less likely a word is free, and the longer it takes to see.
                next_ending = *looked_at + (left / (2.0 * self.tightest.1)) as usize;
                if let Some(ending) = self.ending(&pose, cost, before.map(Step::motion), best.as_ref().map(|b| b.cost))
                {
                    best = Some(Ending { node: at, ..ending });
                }
            }
            let sin_cos = libm::sincos(pose.heading);
            for (index, step) in steps.iter().enumerate() {
                let end = step.end(&pose, sin_cos);
                let least = cost + self.change(before.map(Step::motion), step.motion()) + self.counted(step.motion());
                let key = lattice.key(&end, step.gear, step.motion().steering);
                let fresh = nodes.len() as u32;
                let known = keys.get_or_insert(key, fresh);
                if known != fresh && (nodes[known as usize].closed || nodes[known as usize].cost <= least) {
                    continue;
                }
                if known == fresh {
                    // Reached by nothing yet: what comes of this step decides at what cost.
                    nodes.push(Node { pose: end, cost: f64::INFINITY, parent: at, step: index as u16, closed: false });
                }
                let left = self.field.from(self.map.closed(), &end);
                if left.is_infinite() || best.as_ref().is_some_and(|b| least + left >= b.cost) {
                    continue;
                }
                let Ok(there) = clear::cost(self.map, self.vehicle, &pose, step.motion()) else { continue };
                let there = least - self.counted(step.motion()) + there * self.factor(step.motion());
                if there >= nodes[known as usize].cost || step.spreaded.barred(self.map, self.vehicle, &pose).is_some()
                {
                    continue;
                }
                nodes[known as usize] = Node { pose: end, cost: there, parent: at, step: index as u16, closed: false };
                let estimate = self.estimate_with(&end, left);
                open.push(Waiting { rank: there + self.settings.weight * estimate, cost: there, node: known });
            }
        }
        match best {
            Some(ending) => Ok(self.found(&nodes, &steps, ending, *looked_at)),
            None => Err(refusal::exhausted(self, &from, &nodes[nearest.1 as usize].pose, &steps)),
        }
    }

    /// Estimated cost to the target, m.
    fn estimate(&self, pose: &PlanPose) -> f64 {
        self.estimate_with(pose, self.field.from(self.map.closed(), pose))
    }

    fn estimate_with(&self, pose: &PlanPose, around: f64) -> f64 {
        let (steering, radius) = self.tightest;
        let here = self.vehicle.pivot_at(steering, pose);
        let there = self.vehicle.pivot_at(steering, self.field.target());
        // A word is at most a turn on the spot at either end longer than the straight line, each π radii.
        if around >= here.at.distance(there.at) + core::f64::consts::TAU * radius {
            return around;
        }
        around.max(reeds_shepp::distance(&here, &there, radius))
    }

    /// What a metre of a motion counts as by its gear.
    pub(crate) fn factor(&self, motion: &Motion) -> f64 {
        if motion.gear() == Gear::Reverse { self.settings.reverse.max(1.0) } else { 1.0 }
    }

    /// What a motion counts as at least.
    fn counted(&self, motion: &Motion) -> f64 {
        motion.length.abs() * self.factor(motion)
    }

    /// What changing from one motion to the next counts as.
    pub(crate) fn change(&self, before: Option<&Motion>, after: &Motion) -> f64 {
        let Some(before) = before else { return 0.0 };
        let gear = if before.gear() == after.gear() { 0.0 } else { self.settings.gear_change };
        let steering = if before.steering == after.steering { 0.0 } else { self.settings.steering_change };
        gear + steering
    }

    /// The cheapest free word from a pose to the target, below a cost.
    fn ending(&self, from: &PlanPose, cost: f64, before: Option<&Motion>, below: Option<f64>) -> Option<Ending> {
        let to = *self.field.target();
        let found = self.word_between(from, &to, before, below.map_or(f64::INFINITY, |b| b - cost), TRIED)?;
        Some(Ending { cost: cost + found.0, node: 0, motions: found.1 })
    }

    /// The cheapest free word between two poses, below a cost: its cost with changes, and its motions. Only the
    /// `tried` cheapest words are tried.
    pub(crate) fn word_between(
        &self,
        from: &PlanPose,
        to: &PlanPose,
        before: Option<&Motion>,
        below: f64,
        tried: usize,
    ) -> Option<(f64, Vec<Motion>)> {
        let (steering, radius) = self.tightest;
        let (a, b) = (self.vehicle.pivot_at(steering, from), self.vehicle.pivot_at(steering, to));
        let counted = |motions: &[Motion]| {
            let mut last = before;
            let mut sum = 0.0;
            for motion in motions {
                sum += self.change(last, motion) + self.counted(motion);
                last = Some(motion);
            }
            sum
        };
        let mut ways: Vec<(f64, Vec<Motion>)> = reeds_shepp::words(&a, &b, radius)
            .iter()
            .map(|word| motions(word, steering, radius))
            .map(|motions| (counted(&motions), motions))
            .filter(|(cost, _)| *cost < below)
            .collect();
        ways.sort_by(|a, b| a.0.total_cmp(&b.0));
        ways.into_iter().take(tried).find_map(|(cost, motions)| {
            let cost = self.free_cost(from, &motions, cost)?;
            (cost < below).then_some((cost, motions))
        })
    }

    /// Cost of motions from a pose, if they are free; `counted` is what they cost at least.
    fn free_cost(&self, from: &PlanPose, motions: &[Motion], counted: f64) -> Option<f64> {
        // Most words that are not free meet something that a few poses far apart see.
        let mut pose = *from;
        for motion in motions {
            let parts = (motion.length.abs() / FAR_APART).ceil().max(1.0);
            for k in 1..=parts as usize {
                let at = motion.at(self.vehicle, &pose, motion.length * (k as f64 / parts));
                if self.map.barred(&at, Spread::default()).is_some() {
                    return None;
                }
            }
            pose = motion.end(self.vehicle, &pose);
        }
        let mut pose = *from;
        for motion in motions {
            let spreaded = Spreaded::new(self.map, self.vehicle, *motion, self.settings.step);
            if spreaded.barred(self.map, self.vehicle, &pose).is_some() {
                return None;
            }
            pose = motion.end(self.vehicle, &pose);
        }
        let mut pose = *from;
        let mut cost = counted;
        for motion in motions {
            let driven = clear::cost(self.map, self.vehicle, &pose, motion).ok()?;
            cost += (driven - motion.length.abs()) * self.factor(motion);
            pose = motion.end(self.vehicle, &pose);
        }
        Some(cost)
    }

    fn found(&self, nodes: &[Node], steps: &[Step], ending: Ending, looked_at: usize) -> Route {
        let mut motions = Vec::new();
        let mut at = ending.node;
        while let Some(step) = steps.get(usize::from(nodes[at as usize].step)) {
            motions.push(*step.motion());
            at = nodes[at as usize].parent;
        }
        motions.reverse();
        motions.extend(ending.motions);
        let from = nodes[0].pose;
        let legs = shorten(self, &legs(self.vehicle, from, &motions));
        let (cost, time) = self.cost_and_time(&legs);
        Route { legs, from, to: *self.field.target(), cost, time, looked_at }
    }

    /// What free legs cost, m, and how long they take, s.
    fn cost_and_time(&self, legs: &[Leg]) -> (f64, f64) {
        let mut cost = 0.0;
        let mut stretches = Vec::new();
        let mut before = None;
        for leg in legs {
            let m = &leg.motion;
            cost += self.change(before, m);
            let driven = clear::along(self.map, self.vehicle, &leg.from, m, |_, going, part| {
                cost += part * going.cost * self.factor(m);
                stretches.push((part, going.speed, m.gear(), m.steering));
            });
            // Joined legs are asked at other poses than their parts were: barred at one of them, it has no time.
            if driven.is_err() {
                return (f64::INFINITY, f64::INFINITY);
            }
            before = Some(m);
        }
        (cost, Route::time_of(&stretches, self.settings))
    }
}

/// Cells of the map to a cell of the lattice in all but the last round.
const COARSE: f64 = 4.0;

/// Poses looked at in the first round; each after it may look at that many more.
const FIRST_ROUND: usize = 3000;

/// Rounds before the last.
const ROUNDS: usize = 6;

/// Way between the poses at which a word is tried first, m.
const FAR_APART: f64 = 3.0;

/// Words tried between two poses, the cheapest first.
const TRIED: usize = 3;

/// A word as motions of a machine.
pub(crate) fn motions(word: &Word, steering: Steering, radius: f64) -> Vec<Motion> {
    let driven = word.pieces().iter().filter(|(_, length)| length.abs() > 1e-9);
    driven
        .map(|(bend, length)| Motion { steering, curvature: bend.sign() / radius, slant: 0.0, length: length * radius })
        .collect()
}

/// Motions in a row as legs; like ones are joined.
pub(crate) fn legs(vehicle: &Vehicle, from: PlanPose, motions: &[Motion]) -> Vec<Leg> {
    let mut out: Vec<Leg> = Vec::new();
    let mut pose = from;
    for motion in motions {
        let alike = |l: &Motion| {
            (l.steering, l.curvature, l.slant, l.gear())
                == (motion.steering, motion.curvature, motion.slant, motion.gear())
        };
        match out.last_mut().filter(|l| alike(&l.motion)) {
            Some(leg) => leg.motion.length += motion.length,
            None => out.push(Leg { from: pose, motion: *motion }),
        }
        pose = motion.end(vehicle, &pose);
    }
    out
}

/// The guide of a vehicle in the site.
pub(crate) fn guide_at(vehicle: &Vehicle, pose: &PlanPose) -> geometry::DVec2 {
    pose.place(geometry::DVec2::new(guide(vehicle), 0.0))
}
