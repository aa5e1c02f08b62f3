//! One task placed behind the other, each as early as those before it allow.
//!
//! The tasks of a machine, and those of a landing, keep the order in which they are placed. No schedule is lost by that:
//! put the tasks of any schedule in the order of their starts, and each can be placed here no later than it starts there.

use super::tasks::{Hindrance, Schedule, Seconds, Tasks};

/// What is placed so far.
#[derive(Debug, Clone)]
pub(crate) struct Walk<'t> {
    pub(crate) tasks: &'t Tasks,
    pub(crate) sequence: Vec<usize>,
    pub(crate) start: Vec<Option<Seconds>>,
    /// The last task of each machine.
    last: Vec<Option<usize>>,
    /// From when each landing is free.
    free: Vec<Seconds>,
    /// What lies on each landing, g.
    lies: Vec<i64>,
    stock: Vec<i64>,
    /// Weight times end of what is placed.
    pub(crate) cost: i64,
}

/// What a step back needs.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Step {
    last: Option<usize>,
    free: Seconds,
}

impl<'t> Walk<'t> {
    pub(crate) fn new(tasks: &'t Tasks) -> Self {
        Self {
            tasks,
            sequence: Vec::with_capacity(tasks.list.len()),
            start: vec![None; tasks.list.len()],
            last: vec![None; tasks.machines],
            free: vec![Seconds::MIN; tasks.lies.len()],
            lies: tasks.lies.clone(),
            stock: vec![0; tasks.kinds],
            cost: 0,
        }
    }

    pub(crate) fn end(&self, task: usize) -> Option<Seconds> {
        self.start[task].map(|start| start + self.tasks.list[task].lasts)
    }

    /// What lies on a landing now, g.
    pub(crate) fn lies(&self, landing: usize) -> i64 {
        self.lies[landing]
    }

    /// The earliest start of a task that is not placed yet.
    pub(crate) fn earliest(&self, task: usize) -> Result<Seconds, Hindrance> {
        self.earliest_by(task, self.tasks.list[task].due)
    }

    /// The same with another time by which it has to be done.
    pub(crate) fn earliest_by(&self, task: usize, due: Seconds) -> Result<Seconds, Hindrance> {
        let t = &self.tasks.list[task];
        let mut at = t.release.max(self.free[t.landing]);
        for &before in &t.after {
            at = at.max(self.end(before).ok_or(Hindrance::After(before))?);
        }
        if self.lies[t.landing] > t.room {
            return Err(Hindrance::Landing { excess: self.lies[t.landing].saturating_sub(t.room) });
        }
        if t.stock.is_some_and(|(kind, change)| self.stock[kind] + change < 0) {
            return Err(Hindrance::NotThere);
        }
        if let Some(last) = self.last[t.machine] {
            at = at.max(self.end(last).unwrap_or(at) + self.tasks.between[last][task]);
        }
        at = self.clear_of_others(task, at);
        if at + t.lasts > due { Err(Hindrance::Late { by: at + t.lasts - due }) } else { Ok(at) }
    }

    /// No start of a task that comes later is sooner than this, whatever comes between.
    pub(crate) fn soonest(&self, task: usize) -> Seconds {
        let t = &self.tasks.list[task];
        let placed = t.after.iter().filter_map(|before| self.end(*before));
        let machine = self.last[t.machine].and_then(|last| self.end(last));
        placed.chain(machine).fold(t.release.max(self.free[t.landing]), Seconds::max)
    }

    /// From `at` on, the first time that is free of what blocks it and of those it cannot go on beside.
    fn clear_of_others(&self, task: usize, mut at: Seconds) -> Seconds {
        let t = &self.tasks.list[task];
        loop {
            let overlaps = |from: Seconds, to: Seconds| (from < at + t.lasts && at < to).then_some(to);
            let blocked = t.blocked.iter().filter_map(|(from, to)| overlaps(*from, *to));
            let clash = &self.tasks.clash[task];
            let beside = self.sequence.iter().filter(|other| clash[**other]);
            let beside = beside.filter_map(|other| overlaps(self.start[*other]?, self.end(*other)?));
            match blocked.chain(beside).max() {
                Some(later) => at = later,
                None => return at,
            }
        }
    }

    pub(crate) fn place(&mut self, task: usize, start: Seconds) -> Step {
        let t = &self.tasks.list[task];
        let step = Step { last: self.last[t.machine], free: self.free[t.landing] };
        self.start[task] = Some(start);
        self.sequence.push(task);
        self.last[t.machine] = Some(task);
        self.free[t.landing] = start + t.lasts;
        self.lies[t.landing] += t.brings;
        if let Some((kind, change)) = t.stock {
            self.stock[kind] += change;
        }
        self.cost += t.weight * (start + t.lasts);
        step
    }

    /// Takes back what was placed last.
    pub(crate) fn back(&mut self, step: Step) {
        let Some(task) = self.sequence.pop() else { return };
        let t = &self.tasks.list[task];
        if let Some(start) = self.start[task].take() {
            self.cost -= t.weight * (start + t.lasts);
        }
        self.last[t.machine] = step.last;
        self.free[t.landing] = step.free;
        self.lies[t.landing] -= t.brings;
        if let Some((kind, change)) = t.stock {
            self.stock[kind] -= change;
        }
    }

    pub(crate) fn schedule(self, exact: bool) -> Schedule {
        Schedule { sequence: self.sequence, start: self.start, exact }
    }

    /// Always the first task of a list that can come next, until none can.
    pub(crate) fn along(tasks: &'t Tasks, list: &[usize]) -> Self {
        let mut walk = Self::new(tasks);
        let mut left = list.to_vec();
        while let Some((i, start)) = left.iter().enumerate().find_map(|(i, t)| Some((i, walk.earliest(*t).ok()?))) {
            let task = left.remove(i);
            walk.place(task, start);
        }
        walk
    }

    /// Weights of what is not placed.
    pub(crate) fn lost(&self) -> i64 {
        let left = self.tasks.list.iter().zip(&self.start).filter(|(_, start)| start.is_none());
        left.map(|(task, _)| task.weight).sum()
    }
}
