//! `cargo xtask bench`: every bench of the workspace in release. Each one measures against a peer
//! or against brute force in the same run and prints the ratio; a time alone says little.

use crate::programs::{self, Project};
use crate::steps::Steps;
use crate::workspace;
use std::process::ExitCode;

/// Runs them one after another, so that none takes the other's processor.
pub(crate) fn run(project: &Project) -> ExitCode {
    let mut steps = Steps::new();
    let packages = match workspace::packages(project) {
        Ok(packages) => packages,
        Err(why) => {
            eprintln!("error: {why}");
            return ExitCode::FAILURE;
        }
    };
    for package in &packages {
        for bench in &package.benches {
            steps.must(&format!("bench: {} {bench}", package.name), || {
                let args = ["bench", "--locked", "--package", &package.name, "--bench", bench];
                programs::run(&mut project.cargo(&args))
            });
        }
    }
    steps.finish()
}
