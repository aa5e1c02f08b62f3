//! Why a lift has no place in the order, and what would give it one: only what was tried is proposed.

use super::build::{Built, clock, whole_minutes};
use super::result::{LeftOut, WhyLeftOut};
use super::tasks::{Hindrance, Schedule, Seconds, Tasks};
use super::walk::Walk;
use crate::checks::kilograms;
use crate::{Job, text};
use evidence::Message;

/// Later than that is another day, s.
const LATEST: Seconds = 36 * 3600;

pub(super) fn left_out(job: &Job, built: &mut Built, schedule: &Schedule) -> Vec<LeftOut> {
    let mut out: Vec<LeftOut> = Vec::new();
    for (lift, kind, reason) in std::mem::take(&mut built.out) {
        let remedies = match kind {
            WhyLeftOut::Cycle => break_ring(job, lift),
            WhyLeftOut::NoGo => vec![text::ORDER_DO_SEE_FINDINGS.message()],
            WhyLeftOut::Crane => vec![text::ORDER_DO_CRANE_TIMES.message()],
            WhyLeftOut::NoStand => vec![text::ORDER_DO_CHOOSE_STAND.message()],
            _ => Vec::new(),
        };
        out.push(LeftOut { lift: job.lifts[lift].id.clone(), kind, reason, remedies });
    }
    let tasks = built.tasks.clone();
    let end = Walk::along(&tasks, &schedule.sequence);
    for task in (0..tasks.list.len()).filter(|t| schedule.start[*t].is_none()) {
        out.push(unplaced(job, built, &end, task));
    }
    out.sort_by(|a, b| a.lift.cmp(&b.lift));
    out
}

fn unplaced(job: &Job, built: &mut Built, end: &Walk<'_>, task: usize) -> LeftOut {
    let tasks = end.tasks;
    let lift = &job.lifts[built.parts[task].lift];
    let landing = job.landings.get(lift.landing).map_or("", |l| l.name.as_str());
    let (kind, reason, remedies) = match end.earliest(task) {
        Err(Hindrance::After(before)) => {
            let waits = text::ORDER_WAITS.with("lift", &job.lifts[built.parts[before].lift].id);
            (WhyLeftOut::Waits, waits, Vec::new())
        }
        Err(Hindrance::NotThere) => {
            let not_there = text::ORDER_NOT_THERE.with("landing", landing);
            (WhyLeftOut::NotThere, not_there, Vec::new())
        }
        Err(Hindrance::Landing { excess }) => {
            let reason = over(job, built, end, task, excess);
            (WhyLeftOut::Landing, reason, relieved(job, built, end, task, excess))
        }
        Err(Hindrance::Late { by }) => {
            let reason =
                text::ORDER_WINDOW_MISSED.with("until", clock(tasks.list[task].due)).with("by", whole_minutes(by));
            let mut remedies = Vec::new();
            remedies.extend(later(tasks, end, task));
            remedies.extend(instead_of(job, built, end, task));
            (WhyLeftOut::WindowMissed, reason, remedies)
        }
        // Not met: what can come next was placed.
        Ok(_) => (WhyLeftOut::NotKnown, text::ORDER_NOT_KNOWN.message(), Vec::new()),
    };
    LeftOut { lift: lift.id.clone(), kind, reason, remedies }
}

/// What lies on the landing, what may, and which lifts brought it.
fn over(job: &Job, built: &Built, end: &Walk<'_>, task: usize, excess: i64) -> Message {
    let lift = &job.lifts[built.parts[task].lift];
    let name = job.landings.get(lift.landing).map_or("", |l| l.name.as_str());
    let Some(room) = built.parts[task].room else {
        return text::ORDER_LANDING_NEVER.with("landing", name);
    };
    let brought: Vec<&str> =
        earlier(job, built, end, lift.landing).map(|(_, lift)| job.lifts[lift].id.as_str()).collect();
    let id = if brought.is_empty() { text::ORDER_LANDING_FULL } else { text::ORDER_LANDING_OVER };
    let message = id.with("landing", name).with("by", kilograms(excess as f64 / 1000.0));
    let message = message.with("may", kilograms(room.max(0.0)));
    if brought.is_empty() { message } else { message.with("lifts", brought.join(", ")) }
}

/// Tasks that brought something to a landing, with their lifts.
fn earlier<'b>(
    job: &'b Job,
    built: &'b Built,
    end: &'b Walk<'_>,
    landing: usize,
) -> impl Iterator<Item = (usize, usize)> + 'b {
    let there = end.sequence.iter().copied().filter(move |t| end.tasks.list[*t].landing == landing);
    let brought = there.filter(|t| end.tasks.list[*t].brings > 0);
    brought.map(|t| (t, built.parts[t].lift)).filter(|(_, l)| *l < job.lifts.len())
}

/// Something taken away first, half the load, another landing: each asked of the landing's own check.
fn relieved(job: &Job, built: &mut Built, end: &Walk<'_>, task: usize, excess: i64) -> Vec<Message> {
    let mut out = Vec::new();
    let lift = job.lifts[built.parts[task].lift].clone();
    let t = &end.tasks.list[task];
    let lies = |landing: usize| end.lies(landing) as f64 / 1000.0;
    // A place in time behind all others, were the landing no matter, or were it another one.
    let in_time = |landing: usize| {
        let mut tasks = end.tasks.clone();
        (tasks.list[task].room, tasks.list[task].landing) = (i64::MAX, landing);
        Walk::along(&tasks, &end.sequence).earliest(task).is_ok()
    };
    let here = in_time(lift.landing);
    if here && t.room > i64::MIN {
        let smallest = earlier(job, built, end, lift.landing)
            .filter(|(other, _)| end.tasks.list[*other].brings >= excess)
            .min_by_key(|(other, lift)| (end.tasks.list[*other].brings, job.lifts[*lift].id.clone()));
        if let Some((_, other)) = smallest {
            out.push(text::ORDER_DO_TAKE_AWAY.with("lift", &job.lifts[other].id));
        }
    }
    if here && built.landings.takes(&lift, lift.landing, lies(lift.landing), 0.5) {
        out.push(text::ORDER_DO_HALF.message());
    }
    let others = (0..job.landings.len()).filter(|l| *l != lift.landing && in_time(*l));
    let found: Vec<&str> = others
        .filter(|l| built.landings.takes(&lift, *l, lies(*l), 1.0))
        .map(|l| job.landings[l].name.as_str())
        .collect();
    if !found.is_empty() {
        out.push(text::ORDER_DO_OTHER_LANDING.with("landings", found.join(", ")));
    }
    out
}

/// The least delay at which the lift has a place among the others, all of which keep theirs in time.
fn later(tasks: &Tasks, end: &Walk<'_>, task: usize) -> Option<Message> {
    let best = (0..=end.sequence.len()).filter_map(|at| {
        let mut relaxed = tasks.clone();
        relaxed.list[task].due = LATEST;
        // In each place it may end as late as it has to, and no other may be lost.
        let mut list = end.sequence.clone();
        list.insert(at, task);
        let walk = in_order(&relaxed, &list)?;
        walk.end(task)
    });
    best.min().map(|until| text::ORDER_DO_WINDOW.with("until", clock(until + (60 - until % 60) % 60)))
}

/// A lift of less weight that is left out instead.
fn instead_of(job: &Job, built: &Built, end: &Walk<'_>, task: usize) -> Option<Message> {
    let tasks = end.tasks;
    let mut others: Vec<usize> = end.sequence.clone();
    others.retain(|other| tasks.list[*other].weight <= tasks.list[task].weight);
    others.sort_by_key(|other| (tasks.list[*other].weight, *other));
    for other in others {
        let list: Vec<usize> = end.sequence.iter().copied().filter(|t| *t != other).collect();
        for at in 0..=list.len() {
            let mut with = list.clone();
            with.insert(at, task);
            if in_order(tasks, &with).is_some() {
                return Some(text::ORDER_DO_LEAVE.with("lift", &job.lifts[built.parts[other].lift].id));
            }
        }
    }
    None
}

/// All tasks of a list in exactly that order; `None` if one has no place.
fn in_order<'t>(tasks: &'t Tasks, list: &[usize]) -> Option<Walk<'t>> {
    let mut walk = Walk::new(tasks);
    for task in list {
        let start = walk.earliest(*task).ok()?;
        walk.place(*task, start);
    }
    Some(walk)
}

/// Which `after` of the ring's lift would break it: without that one it waits for nobody who waits for it.
fn break_ring(job: &Job, lift: usize) -> Vec<Message> {
    let others = job.lifts[lift].after.iter().filter(|before| {
        let rest: Vec<usize> = job.lifts[lift].after.iter().copied().filter(|b| b != *before).collect();
        reaches(job, **before, lift) && !rest.iter().any(|b| reaches(job, *b, lift))
    });
    others.map(|before| text::ORDER_DO_DROP_AFTER.with("lift", &job.lifts[*before].id)).take(1).collect()
}

/// True if a lift waits for another, directly or over others.
fn reaches(job: &Job, from: usize, to: usize) -> bool {
    let mut seen = vec![from];
    let mut at = 0;
    while let Some(here) = seen.get(at).copied() {
        if here == to {
            return true;
        }
        if let Some(lift) = job.lifts.get(here) {
            for before in &lift.after {
                if !seen.contains(before) {
                    seen.push(*before);
                }
            }
        }
        at += 1;
    }
    false
}
