//! The binary `counterpoise`: a shell that maps arguments, files and the terminal to the engine.
//!
//! Exit codes: 0 go (or done), 4 go with conditions, 3 no-go, 1 fault of input, 2 usage.

mod args;
mod calc;
mod check;
mod disk;
mod export;
mod failure;
mod machine;
mod materials;
mod new_job;
mod order;
mod outputs;
mod plan;
mod plan_stand;
mod plan_text;
mod routine_text;
mod schema;
mod serve;
mod stands;
mod survey;
mod terminal;
mod text;
mod threads;

use args::{Cli, Command};
use clap::{CommandFactory, Parser};
use failure::Failure;
use std::process::ExitCode;

fn main() -> ExitCode {
    let cli = Cli::parse();
    let result = match cli.command {
        Command::Plan(args) => plan::run(&args),
        Command::Stands(args) => stands::run(&args),
        Command::Order(args) => order::run(&args),
        Command::Check(args) => check::run(&args),
        Command::Calc(args) => calc::run(&args),
        Command::Machine(args) => machine::run(&args),
        Command::Materials(args) => materials::run(&args),
        Command::New(args) => new_job::run(&args),
        Command::Survey(args) => survey::run(&args),
        Command::Serve(args) => serve::run(&args),
        Command::Schema(args) => schema::run(&args),
        Command::Completions { shell } => {
            clap_complete::generate(shell, &mut Cli::command(), "counterpoise", &mut std::io::stdout());
            Ok(Outcome::Done)
        }
    };
    match result {
        Ok(outcome) => outcome.code(),
        Err(failure) => failure.report(),
    }
}

/// What a command came to.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Outcome {
    /// Done, or inside the chart.
    Done,
    /// A verdict.
    Verdict(evidence::Verdict),
    /// Outside the chart (the quick look-up and single calculations).
    Outside,
    /// Said, and something is wrong with the input or missing from it.
    Faulty,
}

impl Outcome {
    fn code(self) -> ExitCode {
        use evidence::Verdict;
        ExitCode::from(match self {
            Self::Done | Self::Verdict(Verdict::Go) => 0,
            Self::Verdict(Verdict::GoWithConditions) => 4,
            Self::Verdict(Verdict::NoGo) | Self::Outside => 3,
            Self::Faulty => 1,
        })
    }
}

/// The result of a command.
pub(crate) type Run = Result<Outcome, Failure>;
