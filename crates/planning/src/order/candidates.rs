//! What a plan found out about its lifts, as the order takes it.

use super::Candidate;
use crate::{Job, Lift, LiftPlan, Plan, Stand};
use geometry::DVec2;

impl Candidate {
    /// A lift as it was planned: with the machine, attachment, support and stand that were stated or chosen for it.
    pub fn planned(job: &Job, lift: &Lift, plan: &LiftPlan) -> Self {
        // A plan names them for people: whatever the lift states comes first among those of that name.
        let named = |i: usize| job.machines.get(i).is_some_and(|unit| unit.machine.name == plan.machine);
        let machine =
            if named(lift.machine) { Some(lift.machine) } else { (0..job.machines.len()).find(|i| named(*i)) };
        let machine = machine.unwrap_or(lift.machine);
        let attachments = job.machines.get(machine).map_or(&[][..], |unit| &unit.machine.attachments);
        let mut of_that_name = attachments.iter().filter(|a| a.name == plan.attachment);
        let first = of_that_name.clone().find(|a| a.id == lift.attachment).or_else(|| of_that_name.next());
        let at = DVec2::new(plan.stand.east_m, plan.stand.north_m);
        let heading = geometry::heading_from_degrees(plan.stand.heading_deg);
        Self {
            verdict: Some(plan.verdict),
            machine,
            attachment: first.map_or_else(|| lift.attachment.clone(), |a| a.id.clone()),
            support: plan.support,
            stand: Stand { at, heading },
            boom: None,
            way: None,
            sweeps: None,
        }
    }

    /// Every lift of a job as it was planned. A lift that the plan does not have was not checked.
    pub fn of_plan(job: &Job, plan: &Plan) -> Vec<Self> {
        let of = |lift: &Lift| match plan.lifts.iter().find(|p| p.id == lift.id) {
            Some(planned) => Self::planned(job, lift, planned),
            None => Self::stated(lift, None),
        };
        job.lifts.iter().map(of).collect()
    }
}
