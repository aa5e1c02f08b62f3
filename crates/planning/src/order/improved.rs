//! A good order of many tasks: several simple rules, then tasks moved to other places while that helps.

use super::tasks::{Schedule, Seconds, Tasks};
use super::walk::Walk;

/// Orders that are tried at most from each start: a hundred lifts stay far below a second.
const TRIES: usize = 1500;

/// How far a task is moved, one after the other.
const MOVES: [usize; 11] = [1, 2, 3, 4, 5, 6, 8, 13, 21, 34, 55];

/// What a rule looks at: the task's start, how long it and the way to it take, and the task.
type Rule = fn(&Tasks, usize, Seconds) -> (i64, i64);

/// Small values first.
const RULES: [Rule; 4] = [
    // The dearest first.
    |tasks, t, start| (-tasks.list[t].weight, start + tasks.list[t].lasts),
    // What has to be done soonest.
    |tasks, t, start| (tasks.list[t].due, start - tasks.list[t].weight),
    // What ends soonest.
    |tasks, t, start| (start + tasks.list[t].lasts, -tasks.list[t].weight),
    // What costs most a second while it waits (weight over time: best on one machine without windows, W. E. Smith 1956,
    // from memory).
    |tasks, t, start| (start / 900, tasks.list[t].lasts * 1000 / tasks.list[t].weight.max(1)),
];

/// The best of what each rule, and the plain order, lead to.
pub(crate) fn improved(tasks: &Tasks) -> Schedule {
    let plain: Vec<usize> = (0..tasks.list.len()).collect();
    let starts = RULES.into_iter().map(|rule| by_rule(tasks, rule)).chain([Walk::along(tasks, &plain)]);
    let best = starts.map(|walk| moved(tasks, walk)).min_by_key(|walk| (walk.lost(), walk.cost));
    best.unwrap_or_else(|| Walk::new(tasks)).schedule(false)
}

/// Tasks moved to other places, and exchanged, while that makes it better.
fn moved<'t>(tasks: &'t Tasks, mut best: Walk<'t>) -> Walk<'t> {
    let mut list = whole(&best);
    let n = list.len();
    let mut tries = 0;
    loop {
        let before = (best.lost(), best.cost);
        for step in MOVES.into_iter().filter(|step| *step < n) {
            for (i, exchanged) in (0..n).flat_map(|i| [(i, false), (i, true)]) {
                let back = i.checked_sub(step).filter(|_| !exchanged);
                for to in [back, Some(i + step)].into_iter().flatten().filter(|to| *to < n) {
                    if tries >= TRIES {
                        return best;
                    }
                    tries += 1;
                    let mut other = list.clone();
                    if exchanged {
                        other.swap(i, to);
                    } else {
                        let task = other.remove(i);
                        other.insert(to, task);
                    }
                    let walk = Walk::along(tasks, &other);
                    if (walk.lost(), walk.cost) < (best.lost(), best.cost) {
                        list = whole(&walk);
                        best = walk;
                    }
                }
            }
        }
        if (best.lost(), best.cost) == before {
            return best;
        }
    }
}

fn by_rule(tasks: &Tasks, rule: Rule) -> Walk<'_> {
    let mut walk = Walk::new(tasks);
    loop {
        let open = (0..tasks.list.len()).filter(|t| walk.start[*t].is_none());
        let next = open.filter_map(|t| walk.earliest(t).ok().map(|start| (rule(tasks, t, start), t, start))).min();
        let Some((_, task, start)) = next else { return walk };
        walk.place(task, start);
    }
}

/// What is placed, and behind it what is not.
fn whole(walk: &Walk<'_>) -> Vec<usize> {
    let left = (0..walk.start.len()).filter(|t| walk.start[*t].is_none());
    walk.sequence.iter().copied().chain(left).collect()
}
