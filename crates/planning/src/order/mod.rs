//! The order of a job's lifts: which machine does which lift when, so that no landing is stacked over its limit.
//!
//! - [`order`]: the order of a job, from what was found out about each lift ([`Candidate`])
//! - [`Tasks`], [`solve`]: the bare question, in seconds and grams. Up to [`EXACT`] lifts the best order; beyond, the best
//!   of several rules, improved by moving lifts while that helps. The same lifts always give the same order.
//! - [`OrderTimes`]: how long things take. Times are ranges, and nothing begins before the latest end of what it waits for.
//! - [`Airspace`]: circles that machines sweep; two that meet, or one and a crane at work, do not go on at once
//!
//! What lies on a landing counts with the masses' upper values, with the landing's own check deciding for each load how much
//! may lie there when it comes. Where each load will lie on its landing is not decided here.

mod airspace;
mod build;
mod candidates;
mod exact;
mod improved;
mod reasons;
mod result;
mod stacking;
mod tasks;
mod times;
mod walk;

pub use airspace::Airspace;
pub use result::{JobOrder, LandingStep, LeftOut, ORDER_SCHEMA, OrderedLift, WhyLeftOut};
pub use tasks::{Hindrance, Schedule, Seconds, Task, Tasks};
pub use times::OrderTimes;

use crate::{Job, Lift, Stand, Task as Way, text};
use build::{Built, build, clock, way_between};
use evidence::{Message, Ranged, Verdict};
use machine::SupportState;
use walk::Walk;

/// Up to so many lifts the order is the best there is.
pub const EXACT: usize = 8;

/// Lifts that an order takes in at most. Of more, those of the lowest priority are left out, by name, among equals by id.
pub const MOST_LIFTS: usize = 250;

/// What was found out about a lift: how it is to be done, and whether it may be.
#[derive(Debug, Clone, PartialEq)]
pub struct Candidate {
    /// What its checks say; `None`: they were not made, and it has no place in the order.
    pub verdict: Option<Verdict>,
    /// Index in `Job::machines`.
    pub machine: usize,
    /// Attachment id.
    pub attachment: String,
    /// Support state.
    pub support: SupportState,
    /// Where the machine stands.
    pub stand: Stand,
    /// Minutes for boom up, out and back; `None`: [`OrderTimes::boom`].
    pub boom: Option<Ranged>,
    /// Length of the way from where the load waits to the stand, m; `None`: the straight line with [`OrderTimes::detour`].
    pub way: Option<f64>,
    /// What it sweeps; `None`: [`Airspace::of`].
    pub sweeps: Option<Airspace>,
}

impl Candidate {
    /// A lift as it is stated.
    pub fn stated(lift: &Lift, verdict: Option<Verdict>) -> Self {
        Self {
            verdict,
            machine: lift.machine,
            attachment: lift.attachment.clone(),
            support: lift.support,
            stand: lift.stand,
            boom: None,
            way: None,
            sweeps: None,
        }
    }
}

/// The order of a job's lifts. `candidates`: one for each lift, in the order of the job; a lift without one is not checked.
pub fn order(job: &Job, candidates: &[Candidate], times: &OrderTimes) -> JobOrder {
    let mut built = build(job, candidates, times);
    let schedule = solve(&built.tasks);
    let left_out = reasons::left_out(job, &mut built, &schedule);
    let (lifts, landings) = told(job, candidates, times, &built, &schedule);
    JobOrder {
        schema: ORDER_SCHEMA.to_owned(),
        lifts,
        landings,
        left_out,
        exact: schedule.exact,
        notes: notes(job, times, &built),
    }
}

/// The best order of up to [`EXACT`] tasks, a good one of more.
pub fn solve(tasks: &Tasks) -> Schedule {
    let good = improved::improved(tasks);
    if tasks.list.len() <= EXACT { exact::best(tasks, &good) } else { good }
}

/// A good order however few they are: what [`solve`] starts from.
pub fn solve_by_rules(tasks: &Tasks) -> Schedule {
    improved::improved(tasks)
}

/// Tasks in the order of a list, each as early as it can, those left out that cannot: what any order is worth.
pub fn follow(tasks: &Tasks, list: &[usize]) -> Schedule {
    Walk::along(tasks, list).schedule(false)
}

fn told(
    job: &Job,
    candidates: &[Candidate],
    times: &OrderTimes,
    built: &Built,
    schedule: &Schedule,
) -> (Vec<OrderedLift>, Vec<LandingStep>) {
    let mut placed: Vec<(Seconds, usize)> =
        schedule.start.iter().enumerate().filter_map(|(t, start)| Some(((*start)?, t))).collect();
    placed.sort_unstable();
    let mut last: Vec<Option<usize>> = vec![None; job.machines.len()];
    let mut lies = built.tasks.lies.clone();
    let (mut lifts, mut landings) = (Vec::new(), Vec::new());
    for (start, t) in placed {
        let (part, task) = (&built.parts[t], &built.tasks.list[t]);
        let (lift, to) = (&job.lifts[part.lift], &candidates[part.lift]);
        let from = last[task.machine].replace(part.lift).map(|before| &candidates[before]);
        let way = from.map_or(Ranged::exact(0.0), |from| way_between(job, from, lift, to, times));
        let start_min = start as f64 / 60.0;
        lifts.push(OrderedLift {
            lift: lift.id.clone(),
            machine: job.machines[task.machine].machine.id.clone(),
            start_min,
            end_min: part.minutes + Ranged::exact(start_min),
            way_min: way,
            stated: part.stated,
            stays: from.is_some_and(|from| from.stand == to.stand),
            conditions: part.conditions.clone(),
        });
        let stated = quantity::Si::si(&job.landings[task.landing].occupied);
        let kg = |grams: i64| stated + grams as f64 / 1000.0;
        let lay_kg = kg(lies[task.landing]);
        lies[task.landing] += task.brings;
        landings.push(LandingStep {
            landing: job.landings[task.landing].id.clone(),
            lift: lift.id.clone(),
            lies_kg: kg(lies[task.landing]),
            may_lie_kg: if lift.task == Way::SetDown { part.room.map(|room| stated + room) } else { None },
            lay_kg,
        });
    }
    (lifts, landings)
}

/// What the order rests on.
fn notes(job: &Job, times: &OrderTimes, built: &Built) -> Vec<Message> {
    let mut out = Vec::new();
    if job.hours.is_none() {
        let at = |minutes: u16| clock(Seconds::from(minutes) * 60);
        out.push(text::ORDER_HOURS_TAKEN.with("from", at(times.hours.from)).with("to", at(times.hours.to)));
    }
    if built.parts.iter().any(|part| !part.stated) {
        out.push(match &times.by {
            Some(by) => text::ORDER_TIMES_STATED.with("by", by),
            None => text::ORDER_TIMES_USUAL.message(),
        });
    }
    let stacked = (0..job.landings.len())
        .filter(|l| built.tasks.list.iter().filter(|t| t.landing == *l && t.brings > 0).count() > 1);
    for landing in stacked {
        out.push(text::ORDER_PLACES_OPEN.with("landing", &job.landings[landing].name));
    }
    out
}
