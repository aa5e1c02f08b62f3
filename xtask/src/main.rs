//! The repository's own commands, on the standard library alone.
//!
//! - `cargo xtask run [--check]`: builds everything, plans the demo job, serves it
//! - `cargo xtask test`: formats, rules, lints, tests, documentation, wasm, web client, browser
//! - `cargo xtask rules`: only the rules of the repository
//! - `cargo xtask bench`: the benches in release, with their ratios
#![expect(clippy::print_stdout, clippy::print_stderr, reason = "a command speaks on its terminal")]
#![cfg_attr(test, allow(clippy::unwrap_used, reason = "tests"))]

mod bench;
mod browser;
mod http;
mod json;
mod programs;
mod rules;
mod run_demo;
mod steps;
mod test_all;
mod wasm;
mod web;
mod workspace;

use programs::Project;
use std::process::ExitCode;

const USAGE: &str = "\
usage: cargo xtask <command>

  run [--check]   build all, plan the demo job, write its documents, serve it
                  (--check: end after the server answered once)
  test            formats, rules, lints, tests, documentation, wasm, web client, browser tests
  rules           only the rules of the repository
  bench           the benches in release, with their ratios";

fn main() -> ExitCode {
    let args: Vec<String> = std::env::args().skip(1).collect();
    let args: Vec<&str> = args.iter().map(String::as_str).collect();
    let project = match Project::find() {
        Ok(project) => project,
        Err(why) => {
            eprintln!("error: {why}");
            return ExitCode::FAILURE;
        }
    };
    match args.as_slice() {
        ["run"] => run_demo::run(&project, run_demo::Until::Interrupted),
        ["run", "--check"] => run_demo::run(&project, run_demo::Until::AnsweredOnce),
        ["test"] => test_all::run(&project),
        ["rules"] => rules::run(&project),
        ["bench"] => bench::run(&project),
        _ => {
            eprintln!("{USAGE}");
            ExitCode::from(2)
        }
    }
}
