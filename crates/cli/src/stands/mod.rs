//! `counterpoise stands`: where a machine may stand for a lift, and why not elsewhere.

mod answer;
mod asked;
mod look;
mod print;
pub(crate) mod text;

use crate::args::StandsArgs;
use crate::{Outcome, Run, plan, terminal};
use evidence::Verdict;

pub(crate) use answer::StandsAnswer;

pub(crate) fn run(args: &StandsArgs) -> Run {
    let job = plan::job_of(&args.job, args.said)?;
    let asked = asked::asked(&job, args)?;
    let lifts: Vec<_> = asked.lifts.iter().map(|lift| look::look(&job, *lift, &asked)).collect();
    let answer = StandsAnswer { schema: answer::STANDS_SCHEMA.to_owned(), lifts };
    if args.said.json() {
        terminal::print_json(&answer);
    } else {
        print::print(&job, &answer, args.said.wording());
    }
    let worst = answer.lifts.iter().map(answer::LiftStands::verdict).max();
    Ok(Outcome::Verdict(worst.unwrap_or(Verdict::NoGo)))
}
