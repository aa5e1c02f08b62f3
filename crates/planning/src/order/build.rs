//! From a job and its lifts' candidates to tasks.

use super::airspace::Airspace;
use super::result::WhyLeftOut;
use super::stacking::Landings;
use super::tasks::{Seconds, Task, Tasks};
use super::times::OrderTimes;
use super::{Candidate, MOST_LIFTS};
use crate::{Job, Lift, Task as Way, USUAL_PRIORITY, text};
use evidence::{Message, Ranged, Verdict};
use machine::SupportState;
use quantity::Si;
use site::{DayTime, ZoneRule};

const DAY: Seconds = 86_400;

/// A lift that takes part: its place in the job, how long it takes.
#[derive(Debug, Clone)]
pub(super) struct Part {
    /// Index in `Job::lifts`, and of its candidate.
    pub(super) lift: usize,
    /// Minutes.
    pub(super) minutes: Ranged,
    /// Somebody stated them.
    pub(super) stated: bool,
    pub(super) conditions: Vec<Message>,
    /// kg, `None`: it takes away, or it can never be set down there.
    pub(super) room: Option<f64>,
}

/// Tasks, and what they came from in the same order.
pub(super) struct Built {
    pub(super) tasks: Tasks,
    pub(super) parts: Vec<Part>,
    /// Lifts that take no part, by index in the job.
    pub(super) out: Vec<(usize, WhyLeftOut, Message)>,
    pub(super) landings: Landings,
}

pub(super) fn build(job: &Job, candidates: &[Candidate], times: &OrderTimes) -> Built {
    let mut out = Vec::new();
    let mut drafts: Vec<(Part, Task)> = Vec::new();
    let mut landings = Landings::new(job);
    // By id: the same lifts in another order in the file make the same order of work.
    let mut by_id: Vec<usize> = (0..job.lifts.len()).collect();
    by_id.sort_by(|a, b| job.lifts[*a].id.cmp(&job.lifts[*b].id).then(a.cmp(b)));
    for lift in by_id {
        match draft(job, lift, candidates.get(lift), times, &mut landings) {
            Ok(draft) => drafts.push(draft),
            Err((why, reason)) => out.push((lift, why, reason)),
        }
    }
    // Too many: those that matter least have no place.
    let mut by_weight: Vec<usize> = (0..drafts.len()).collect();
    by_weight.sort_by_key(|i| std::cmp::Reverse(drafts[*i].1.weight));
    let mut over: Vec<usize> = by_weight.into_iter().skip(MOST_LIFTS).collect();
    over.sort_unstable();
    for i in over.into_iter().rev() {
        let (part, _) = drafts.remove(i);
        out.push((part.lift, WhyLeftOut::TooMany, text::ORDER_TOO_MANY.with("most", MOST_LIFTS)));
    }
    let (parts, list): (Vec<Part>, Vec<Task>) = drafts.into_iter().unzip();
    let mut tasks = Tasks {
        list,
        machines: job.machines.len(),
        lies: vec![0; job.landings.len()],
        kinds: 0,
        between: Vec::new(),
        clash: Vec::new(),
    };
    stock(job, &parts, &mut tasks);
    let mut built = Built { tasks, parts, out, landings };
    waits(job, &mut built);
    pairs(job, candidates, times, &mut built);
    built
}

/// What one lift is on its own; what it waits for comes later.
fn draft(
    job: &Job,
    index: usize,
    candidate: Option<&Candidate>,
    times: &OrderTimes,
    landings: &mut Landings,
) -> Result<(Part, Task), (WhyLeftOut, Message)> {
    let lift = &job.lifts[index];
    let not_known = || (WhyLeftOut::NotKnown, text::ORDER_NOT_KNOWN.message());
    let candidate = candidate.ok_or((WhyLeftOut::NotChecked, text::ORDER_NOT_CHECKED.message()))?;
    if !candidate.stand.is_chosen() {
        return Err((WhyLeftOut::NoStand, text::ORDER_NO_STAND.message()));
    }
    match candidate.verdict {
        None => return Err((WhyLeftOut::NotChecked, text::ORDER_NOT_CHECKED.message())),
        Some(Verdict::NoGo) => return Err((WhyLeftOut::NoGo, text::ORDER_NO_GO.message())),
        Some(Verdict::Go | Verdict::GoWithConditions) => {}
    }
    let load = job.loads.get(lift.load).ok_or_else(not_known)?;
    if candidate.machine >= job.machines.len() || lift.landing >= job.landings.len() {
        return Err(not_known());
    }
    let (minutes, stated) = minutes(job, lift, candidate, times);
    if !(minutes.high.is_finite() && minutes.high > 0.0 && load.mass_kg.high.is_finite()) {
        return Err(not_known());
    }
    let lasts = seconds(minutes.high);
    let (release, due) = window(job, lift, times);
    if release >= due {
        let message = text::ORDER_WINDOW_EMPTY.with("from", clock(release)).with("to", clock(due));
        return Err((WhyLeftOut::WindowEmpty, message));
    }
    if due - release < lasts {
        let message = text::ORDER_WINDOW_SHORT.with("needs", whole_minutes(lasts));
        return Err((WhyLeftOut::WindowShort, message.with("has", (due - release) / 60)));
    }
    let mut conditions = Vec::new();
    if candidate.verdict == Some(Verdict::GoWithConditions) {
        conditions.push(text::ORDER_HAS_CONDITIONS.message());
    }
    let swept = candidate.sweeps.or_else(|| Airspace::of(job, lift, candidate.machine, candidate.stand));
    let mut blocked = cranes(job, swept, times, &mut conditions)?;
    blocked.extend(zones(job, swept, &mut conditions));
    let room = match lift.task {
        Way::SetDown => landings.room(lift, lift.landing, 1.0),
        Way::PickUp => None,
    };
    let room_g = match (lift.task, room) {
        (Way::PickUp, _) => i64::MAX,
        (Way::SetDown, Some(kg)) => grams_down(kg),
        (Way::SetDown, None) => i64::MIN,
    };
    let brings = match lift.task {
        Way::SetDown => grams_up(load.mass_kg.high),
        Way::PickUp => -grams_down(load.mass_kg.low.max(0.0)),
    };
    let priority = lift.priority.unwrap_or(USUAL_PRIORITY).clamp(1, 9);
    let task = Task {
        machine: candidate.machine,
        landing: lift.landing,
        release,
        due,
        lasts,
        weight: i64::from(10 - priority),
        after: Vec::new(),
        blocked,
        brings,
        room: room_g,
        stock: None,
    };
    Ok((Part { lift: index, minutes, stated, conditions, room }, task))
}

/// From when to when a lift may be, s: its own window, the slot its load comes in, working hours.
pub(super) fn window(job: &Job, lift: &Lift, times: &OrderTimes) -> (Seconds, Seconds) {
    let (mut from, mut to) = span(job.hours.unwrap_or(times.hours));
    let overnight = to > DAY;
    let work = (from, to);
    let placed = |part: DayTime| {
        let (a, b) = span(part);
        // In a shift over midnight the small hours are those of the next day.
        if overnight && b <= work.0 { (a + DAY, b + DAY) } else { (a, b) }
    };
    if let Some(own) = lift.window {
        let (a, b) = placed(own);
        (from, to) = (from.max(a), to.min(b));
    }
    for delivery in job.deliveries.iter().filter(|d| d.loads.contains(&lift.load)) {
        let (a, b) = placed(delivery.slot);
        from = from.max(a);
        // Only what is fetched off the truck has to be fetched while it is there.
        if lift.from.is_none() || delivery.place.is_none() || lift.from == delivery.place {
            to = to.min(b);
        }
    }
    (from, to)
}

fn span(time: DayTime) -> (Seconds, Seconds) {
    let (from, to) = (Seconds::from(time.from) * 60, Seconds::from(time.to) * 60);
    (from, if to <= from { to + DAY } else { to })
}

/// How long a lift takes, and whether that was stated: fetching, driving, boom, setting down, supports.
fn minutes(job: &Job, lift: &Lift, candidate: &Candidate, times: &OrderTimes) -> (Ranged, bool) {
    if let Some(minutes) = lift.minutes {
        return (Ranged::exact(f64::from(minutes)), true);
    }
    let most = job.machines.get(candidate.machine).and_then(|u| u.machine.steering?.travel_speed);
    let mut sum = candidate.boom.unwrap_or(times.boom) + times.set_down;
    if let Some(place) = pickup(job, lift).and_then(|i| job.pickups.get(i)) {
        let straight = place.at.distance(candidate.stand.at) * times.detour;
        sum = sum + times.pick_up + times.driving(candidate.way.unwrap_or(straight), most);
    }
    if candidate.support != SupportState::Tyres {
        sum = sum + times.support;
    }
    (sum, false)
}

/// Where its load waits: as stated, or where its delivery is unloaded.
pub(super) fn pickup(job: &Job, lift: &Lift) -> Option<usize> {
    let delivered = || job.deliveries.iter().filter(|d| d.loads.contains(&lift.load)).find_map(|d| d.place);
    lift.from.or_else(delivered)
}

/// When cranes keep it from going on; one without times always does.
fn cranes(
    job: &Job,
    swept: Option<Airspace>,
    times: &OrderTimes,
    conditions: &mut Vec<Message>,
) -> Result<Vec<(Seconds, Seconds)>, (WhyLeftOut, Message)> {
    let mut blocked = Vec::new();
    for crane in &job.cranes {
        if swept.is_some_and(|s| !s.meets(&Airspace::of_crane(crane), times.apart)) {
            continue;
        }
        let said = |id: evidence::TextId| id.with("crane", &crane.name).with("rule", &crane.rule).with("by", &crane.by);
        if crane.times.is_empty() {
            return Err((WhyLeftOut::Crane, said(text::ORDER_CRANE_ALWAYS)));
        }
        conditions.push(said(text::ORDER_CRANE_TIMES));
        blocked.extend(crane.times.iter().flat_map(|t| every_day(*t)));
    }
    Ok(blocked)
}

/// When zones that are closed, or where people are, at times keep it from going on: those that its circle meets.
fn zones(job: &Job, swept: Option<Airspace>, conditions: &mut Vec<Message>) -> Vec<(Seconds, Seconds)> {
    let mut blocked = Vec::new();
    let kept = job.surroundings.zones.iter().filter(|z| matches!(z.rule, ZoneRule::NoGo | ZoneRule::People));
    for zone in kept.filter(|z| !z.times.is_empty()) {
        // What is no number is not known to stay outside.
        let outside = |s: Airspace| zone.shape.distance(s.centre) > s.radius + job.policy.stand_error;
        if swept.is_some_and(outside) {
            continue;
        }
        conditions.push(text::ORDER_ZONE_TIMES.with("zone", &zone.name).with("by", &zone.by));
        blocked.extend(zone.times.iter().flat_map(|t| every_day(*t)));
    }
    blocked
}

/// A time of the day, yesterday, today and tomorrow.
fn every_day(time: DayTime) -> [(Seconds, Seconds); 3] {
    let (from, to) = span(time);
    [-DAY, 0, DAY].map(|days| (from + days, to + days))
}

/// A load that a lift of this job sets down can be taken from there behind it; one that none sets down lies there from the
/// beginning, in `occupied` where that is large enough, and besides it otherwise.
fn stock(job: &Job, parts: &[Part], tasks: &mut Tasks) {
    // Lifts that have no place in the order count too: they do not bring it after all.
    let brought = |lift: &Lift| {
        job.lifts.iter().any(|l| l.task == Way::SetDown && (l.load, l.landing) == (lift.load, lift.landing))
    };
    let mut kinds: Vec<(usize, usize)> = Vec::new();
    for (part, task) in parts.iter().zip(&mut tasks.list) {
        let lift = &job.lifts[part.lift];
        if !brought(lift) {
            continue;
        }
        let kind = (lift.landing, lift.load);
        let at = kinds.iter().position(|k| *k == kind).unwrap_or_else(|| {
            kinds.push(kind);
            kinds.len() - 1
        });
        task.stock = Some((at, if lift.task == Way::SetDown { 1 } else { -1 }));
        if lift.task == Way::PickUp {
            // The very load that came: what was added for it goes.
            task.brings = -grams_up(job.loads[lift.load].mass_kg.high);
        }
    }
    tasks.kinds = kinds.len();
    let mut occupied: Vec<i64> = job.landings.iter().map(|l| grams_down(l.occupied.si())).collect();
    let mut taken: Vec<&Lift> = job.lifts.iter().filter(|l| l.task == Way::PickUp && !brought(l)).collect();
    taken.sort_by(|a, b| a.id.cmp(&b.id));
    for lift in taken {
        let (Some(there), Some(load)) = (occupied.get_mut(lift.landing), job.loads.get(lift.load)) else { continue };
        let least = grams_down(load.mass_kg.low.max(0.0));
        if *there >= least {
            *there -= least;
        } else {
            tasks.lies[lift.landing] += grams_up(load.mass_kg.high);
        }
    }
}

/// `after`, and lifts that can never come because of it.
fn waits(job: &Job, built: &mut Built) {
    let place = |parts: &[Part], lift: usize| parts.iter().position(|p| p.lift == lift);
    loop {
        let cycle = cycle(job, &built.parts);
        let waiting = built.parts.iter().enumerate().find_map(|(i, part)| {
            let lacks = |before: &&usize| place(&built.parts, **before).is_none();
            job.lifts[part.lift].after.iter().find(lacks).map(|before| (i, *before))
        });
        let (gone, why, reason) = match (cycle, waiting) {
            (Some(ring), _) => {
                let ids: Vec<&str> = ring.iter().map(|l| job.lifts[*l].id.as_str()).collect();
                (ring, WhyLeftOut::Cycle, text::ORDER_CYCLE.with("lifts", ids.join(", ")))
            }
            (None, Some((i, before))) => {
                let id = job.lifts.get(before).map_or("?", |l| l.id.as_str());
                (vec![built.parts[i].lift], WhyLeftOut::Waits, text::ORDER_WAITS.with("lift", id))
            }
            (None, None) => break,
        };
        for lift in gone {
            if let Some(i) = place(&built.parts, lift) {
                built.parts.remove(i);
                built.tasks.list.remove(i);
                built.out.push((lift, why, reason.clone()));
            }
        }
    }
    for i in 0..built.parts.len() {
        let after = &job.lifts[built.parts[i].lift].after;
        built.tasks.list[i].after = after.iter().filter_map(|before| place(&built.parts, *before)).collect();
    }
}

/// Lifts that wait for each other, if any do: indexes in the job.
fn cycle(job: &Job, parts: &[Part]) -> Option<Vec<usize>> {
    // Whoever waits for nobody that is left is taken out; what cannot be taken out waits in a ring, or for one.
    let mut left: Vec<usize> = parts.iter().map(|p| p.lift).collect();
    loop {
        let free = left.iter().position(|l| !job.lifts[*l].after.iter().any(|before| left.contains(before)));
        match free {
            Some(i) => left.remove(i),
            None => break,
        };
    }
    let mut way = vec![*left.first()?];
    loop {
        let here = way.last().copied()?;
        let next = job.lifts[here].after.iter().copied().find(|before| left.contains(before))?;
        if let Some(begin) = way.iter().position(|l| *l == next) {
            way.drain(..begin);
            way.reverse();
            return Some(way);
        }
        way.push(next);
    }
}

/// Ways between tasks of one machine, and which of two machines cannot go on at once.
fn pairs(job: &Job, candidates: &[Candidate], times: &OrderTimes, built: &mut Built) {
    let n = built.parts.len();
    built.tasks.between = vec![vec![0; n]; n];
    built.tasks.clash = vec![vec![false; n]; n];
    let of = |part: &Part| (&job.lifts[part.lift], &candidates[part.lift]);
    let swept: Vec<Option<Airspace>> = built
        .parts
        .iter()
        .map(of)
        .map(|(lift, c)| c.sweeps.or_else(|| Airspace::of(job, lift, c.machine, c.stand)))
        .collect();
    for i in 0..n {
        for k in (0..n).filter(|k| *k != i) {
            let ((_, from), (lift, to)) = (of(&built.parts[i]), of(&built.parts[k]));
            if from.machine == to.machine {
                built.tasks.between[i][k] = seconds(way_between(job, from, lift, to, times).high);
            } else {
                built.tasks.clash[i][k] = match (swept[i], swept[k]) {
                    (Some(a), Some(b)) => a.meets(&b, times.apart),
                    _ => true,
                };
            }
        }
    }
}

/// From one lift's stand to where the next begins: at the place where its load waits, or at its stand.
pub(super) fn way_between(job: &Job, from: &Candidate, lift: &Lift, to: &Candidate, times: &OrderTimes) -> Ranged {
    let most = job.machines.get(to.machine).and_then(|u| u.machine.steering?.travel_speed);
    let begins = pickup(job, lift).and_then(|i| job.pickups.get(i)).map_or(to.stand.at, |p| p.at);
    let mut way = times.driving(from.stand.at.distance(begins) * times.detour, most);
    if from.attachment != to.attachment {
        way = way + times.change;
    }
    way
}

/// Whole seconds, rounded up.
pub(super) fn seconds(minutes: f64) -> Seconds {
    // What is no number, or without end, lasts beyond every window.
    let long = minutes.is_nan() || minutes > 1e6;
    if long { 100 * DAY } else { (minutes * 60.0).ceil() as Seconds }
}

fn grams_up(kg: f64) -> i64 {
    (kg * 1000.0).ceil() as i64
}

fn grams_down(kg: f64) -> i64 {
    (kg * 1000.0).floor() as i64
}

pub(super) fn whole_minutes(seconds: Seconds) -> i64 {
    (seconds + 59) / 60
}

/// A time of the day for people.
pub(super) fn clock(at: Seconds) -> String {
    let minutes = at.div_euclid(60).rem_euclid(1440);
    format!("{:02}:{:02}", minutes / 60, minutes % 60)
}
