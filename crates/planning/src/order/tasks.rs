//! Lifts as tasks: what an order of them has to keep, in whole seconds and grams, so that no order of sums matters.

/// Seconds from midnight at the start of the day of work.
pub type Seconds = i64;

/// One lift.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Task {
    /// The machine that does it: one task at a time.
    pub machine: usize,
    /// The landing: one task at a time.
    pub landing: usize,
    /// Not to begin before.
    pub release: Seconds,
    /// To be done by.
    pub due: Seconds,
    /// How long it takes at most.
    pub lasts: Seconds,
    /// What each second of its end costs; more: sooner.
    pub weight: i64,
    /// Tasks that must be done before it begins.
    pub after: Vec<usize>,
    /// Times in which it cannot go on: from, to.
    pub blocked: Vec<(Seconds, Seconds)>,
    /// What lies on the landing afterwards besides, g; negative: taken away.
    pub brings: i64,
    /// What may lie there at most when it comes, besides what lay there at first, g.
    pub room: i64,
    /// A kind of load on a landing, and whether one comes (1) or goes (−1): it has to be there to go.
    pub stock: Option<(usize, i64)>,
}

/// All of them.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Tasks {
    /// The tasks.
    pub list: Vec<Task>,
    /// Number of machines.
    pub machines: usize,
    /// What lies on each landing at first besides what its checks know, g.
    pub lies: Vec<i64>,
    /// Number of kinds of [`Task::stock`].
    pub kinds: usize,
    /// From the end of one task to the start of another on the same machine: driving, changing attachments.
    pub between: Vec<Vec<Seconds>>,
    /// True where two tasks of different machines cannot go on at once.
    pub clash: Vec<Vec<bool>>,
}

/// When each task starts; `None`: it is left out.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Schedule {
    /// Tasks in the order in which they were placed.
    pub sequence: Vec<usize>,
    /// Start of each task.
    pub start: Vec<Option<Seconds>>,
    /// True if no order is better.
    pub exact: bool,
}

impl Schedule {
    /// What it costs: first the weights of what is left out, then weight times end of what is done.
    pub fn cost(&self, tasks: &Tasks) -> (i64, i64) {
        let mut cost = (0, 0);
        for (task, start) in tasks.list.iter().zip(&self.start) {
            match start {
                Some(start) => cost.1 += task.weight * (start + task.lasts),
                None => cost.0 += task.weight,
            }
        }
        cost
    }
}

/// Why a task cannot come next.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Hindrance {
    /// Another must be done before.
    After(usize),
    /// More lies on the landing than may: by so many grams.
    Landing {
        /// g.
        excess: i64,
    },
    /// What it takes away is not there.
    NotThere,
    /// It would end too late: by so many seconds.
    Late {
        /// s.
        by: Seconds,
    },
}
