//! The best order of a few tasks, by branch and bound over every order.

use super::tasks::{Schedule, Tasks};
use super::walk::Walk;

/// The best schedule: every order is looked at, but for those that a bound shows to be no better. From `best`, if any.
pub(crate) fn best(tasks: &Tasks, start: &Schedule) -> Schedule {
    let mut search = Search { best: start.clone(), cost: start.cost(tasks) };
    search.best.exact = true;
    search.below(&mut Walk::new(tasks));
    search.best
}

struct Search {
    best: Schedule,
    cost: (i64, i64),
}

impl Search {
    fn below(&mut self, walk: &mut Walk<'_>) {
        if self.hopeless(walk) {
            return;
        }
        let open: Vec<usize> = (0..walk.tasks.list.len()).filter(|t| walk.start[*t].is_none()).collect();
        let mut next: Vec<_> = open.iter().filter_map(|t| Some((walk.earliest(*t).ok()?, *t))).collect();
        if next.is_empty() {
            let cost = (walk.lost(), walk.cost);
            if cost < self.cost {
                self.cost = cost;
                self.best = walk.clone().schedule(true);
            }
            return;
        }
        next.sort_unstable();
        for (start, task) in next {
            let step = walk.place(task, start);
            self.below(walk);
            walk.back(step);
        }
    }

    /// True if nothing that goes on from here is better. What is placed later never lets a task start sooner, unless it
    /// makes room on a landing or brings what another takes away: only times are counted on.
    fn hopeless(&self, walk: &Walk<'_>) -> bool {
        let (mut lost, mut cost) = (0, walk.cost);
        for (task, t) in walk.tasks.list.iter().enumerate() {
            if walk.start[task].is_some() {
                continue;
            }
            let ends = walk.soonest(task) + t.lasts;
            if ends > t.due {
                lost += t.weight;
            } else {
                cost += t.weight * ends;
            }
        }
        lost > self.cost.0 || (lost == self.cost.0 && cost >= self.cost.1)
    }
}
