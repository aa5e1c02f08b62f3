//! `counterpoise order`: which lift when, by which machine.

mod csv;
mod print;
mod text;

use crate::args::OrderArgs;
use crate::failure::Failure;
use crate::threads::share_out;
use crate::{Outcome, Run, export, plan as job_plan, terminal};
use evidence::{Faults, Place, Verdict};
use planning::Job;
use planning::order::{Candidate, JobOrder, OrderTimes, order};

pub(crate) fn run(args: &OrderArgs) -> Run {
    let mut job = job_plan::job_of(&args.job, args.said)?;
    let changed = prioritised(&mut job, args)?;
    // Where nothing is left to the planner nobody need look around.
    let chooses = job.lifts.iter().any(|l| l.choose.any() || !l.stand.is_chosen());
    let plan = if chooses { planning::plan_shared_out(&job, &share_out) } else { planning::plan_as_stated(&job) };
    let candidates = Candidate::of_plan(&job, &plan);
    let order = order(&job, &candidates, &OrderTimes::default());
    if let Some(path) = &args.csv {
        let shown = path.display().to_string();
        let fail = |e: std::io::Error| Failure::cannot_write(args.said, &shown, &e.to_string());
        export::write(path, csv::list(&job, &order).as_bytes()).map_err(fail)?;
    }
    if args.said.json() {
        terminal::print_json(&order);
    } else {
        print::print(&job, &order, &changed, args.said.wording());
        if let Some(path) = &args.csv {
            let written = crate::text::WRITTEN.with("folder", path.display().to_string());
            terminal::line(&args.said.wording().render(&written));
        }
    }
    Ok(Outcome::Verdict(came_to(&order)))
}

/// A lift without a place is as a no-go; one with something to do first makes it conditional.
fn came_to(order: &JobOrder) -> Verdict {
    if !order.left_out.is_empty() || order.lifts.is_empty() {
        Verdict::NoGo
    } else if order.lifts.iter().any(|l| !l.conditions.is_empty()) {
        Verdict::GoWithConditions
    } else {
        Verdict::Go
    }
}

/// Gives the lifts the priorities asked for; which they are, as (index of the lift, priority).
///
/// # Errors
/// Every one that cannot be read or names a lift that the job does not have.
fn prioritised(job: &mut Job, args: &OrderArgs) -> Result<Vec<(usize, u8)>, Failure> {
    let mut wrong = Faults::default();
    let mut changed = Vec::new();
    for value in &args.priority {
        // An id may hold the sign itself.
        let parts = value.rsplit_once('=').map(|(id, number)| (id.trim(), number.trim().parse::<u8>()));
        let Some((id, Ok(priority @ 1..=9))) = parts else {
            let message = text::BAD_PRIORITY.with("value", value);
            wrong.error("cli::bad-priority", Place::default(), message, Some(text::HINT_PRIORITY.message()));
            continue;
        };
        match job.lifts.iter().position(|l| l.id == id) {
            Some(lift) => changed.push((lift, priority)),
            None => job_plan::unknown_lift(job, id, &mut wrong),
        }
    }
    if wrong.any_error() {
        return Err(Failure::new(wrong, args.said));
    }
    for &(lift, priority) in &changed {
        job.lifts[lift].priority = Some(priority);
    }
    Ok(changed)
}

/// A time of the day of work, "07:05"; of the day after with its count beyond 24 hours.
fn clock(minutes: f64) -> (String, bool) {
    let whole = minutes.ceil().max(0.0) as u32;
    (format!("{:02}:{:02}", whole / 60 % 24, whole % 60), whole >= 24 * 60)
}
