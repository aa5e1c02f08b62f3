//! How much may lie on a landing when a load comes: found by the landing's own check, not by a sum of its own.

use crate::checks::landing;
use crate::context::Context;
use crate::{Job, Lift, Task};
use evidence::{Ranged, Status};
use quantity::{Si, kilograms};
use site::{Ground, Surroundings};

/// Nothing heavier is looked for, kg.
const MOST: f64 = 1e7;

/// A copy of a job with what the check of a landing asks for, and nothing of the site around it.
pub(crate) struct Landings {
    job: Job,
}

impl Landings {
    pub(crate) fn new(job: &Job) -> Self {
        let bare = Job {
            name: String::new(),
            site: String::new(),
            date: String::new(),
            invented: job.invented,
            planner: String::new(),
            machines: job.machines.clone(),
            loads: job.loads.clone(),
            ground: Ground { surfaces: Vec::new() },
            lines: Vec::new(),
            lines_complete: None,
            landings: job.landings.clone(),
            strengths: job.strengths.clone(),
            feet: job.feet.clone(),
            gates: Vec::new(),
            surroundings: Surroundings::default(),
            soils: Vec::new(),
            mats: Vec::new(),
            lifts: Vec::new(),
            pickups: Vec::new(),
            cranes: Vec::new(),
            deliveries: Vec::new(),
            routines: Vec::new(),
            hours: None,
            policy: job.policy.clone(),
            acceptances: Vec::new(),
            inputs: Vec::new(),
            warnings: evidence::Faults::default(),
        };
        Self { job: bare }
    }

    /// Whether the landing takes the lift's load with so much more lying on it than stated, kg, its place not known.
    pub(crate) fn takes(&mut self, lift: &Lift, landing_index: usize, more: f64, share: f64) -> bool {
        let Some(place) = self.job.landings.get(landing_index) else { return false };
        let stated = place.occupied;
        let Some(load) = self.job.loads.get(lift.load) else { return false };
        let mass = load.mass_kg;
        self.job.landings[landing_index].occupied = kilograms((stated.si() + more).max(0.0));
        self.job.loads[lift.load].mass_kg =
            Ranged { low: mass.low * share, nominal: mass.nominal * share, high: mass.high * share };
        let here = Lift { landing: landing_index, task: Task::SetDown, ..lift.clone() };
        let status = Context::new(&self.job, &here).map_or(Status::CannotTell, |ctx| landing::status(&ctx));
        self.job.landings[landing_index].occupied = stated;
        self.job.loads[lift.load].mass_kg = mass;
        status <= Status::Condition
    }

    /// The most that may lie there besides what is stated, kg, when the lift's load comes, or a `share` of it; `None`: not
    /// even with the landing cleared. Rounded down: to a tenth of a kilogram the check has said yes.
    pub(crate) fn room(&mut self, lift: &Lift, landing_index: usize, share: f64) -> Option<f64> {
        let cleared = -self.job.landings.get(landing_index)?.occupied.si();
        if !self.takes(lift, landing_index, cleared, share) {
            return None;
        }
        // More on it never makes it better: bisection between a yes and a no.
        let (mut yes, mut no) = (cleared, 1.0_f64.max(cleared + 1.0));
        while self.takes(lift, landing_index, no, share) {
            yes = no;
            no *= 2.0;
            if no > MOST {
                return Some(MOST);
            }
        }
        while no - yes > 0.05 {
            let middle = f64::midpoint(yes, no);
            if self.takes(lift, landing_index, middle, share) { yes = middle } else { no = middle }
        }
        Some(yes)
    }
}
