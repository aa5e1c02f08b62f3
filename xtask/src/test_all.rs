//! `cargo xtask test`: everything that has to hold, one dev profile for all of it.

use crate::programs::{self, Project, is_ci};
use crate::steps::{Done, Outcome, Steps};
use crate::web::Npm;
use crate::{browser, rules, wasm};
use std::process::ExitCode;

/// Runs all steps, also after one that failed, except those that rest on it.
pub(crate) fn run(project: &Project) -> ExitCode {
    let mut steps = Steps::new();
    let cargo = |args: &[&str]| programs::run(&mut project.cargo(args));

    steps.must("format", || cargo(&["fmt", "--all", "--check"]));
    rules::all(project, &mut steps);

    // The client comes before the first build of the server, which takes it into the binary.
    let npm = Npm::find(project);
    let installed = client(&npm, &mut steps);

    steps.must("clippy", || cargo(&["clippy", "--locked", "--workspace", "--all-targets", "--", "--deny", "warnings"]));
    steps.must("benches compile", || cargo(&["check", "--locked", "--workspace", "--benches"]));
    steps.must("tests", || cargo(&["test", "--locked", "--workspace", "--no-fail-fast"]));
    steps.must("documentation", || {
        let mut doc = project.cargo(&["doc", "--locked", "--workspace", "--no-deps"]);
        programs::run(doc.env("RUSTDOCFLAGS", "--deny warnings"))
    });
    steps.step("wasm32 build of the pure rooms", || wasm::build(project));
    let built = steps.must("build", || cargo(&["build", "--locked"]));

    if let (Ok(npm), true) = (&npm, installed) {
        steps.must("web: types of the API are fresh", || npm.script("check:api", &[]));
        steps.needs(built, "build", "web: browser tests", || browser_tests(project, npm));
    }
    steps.finish()
}

/// Packages, types, unit tests and build of the client; true if its packages are there.
fn client(npm: &Result<Npm, String>, steps: &mut Steps) -> bool {
    let npm = match npm {
        Ok(npm) => npm,
        Err(how) => {
            steps.step("web client", || left_out(how));
            return false;
        }
    };
    let name = "web: packages";
    let installed = steps.must(name, || npm.install());
    for (title, script) in [("web: types and markup", "check"), ("web: unit tests", "test"), ("web: build", "build")] {
        steps.needs(installed, name, title, || npm.script(script, &[]).map(|()| Outcome::Passed));
    }
    installed
}

fn browser_tests(project: &Project, npm: &Npm) -> Done {
    let chromium = match browser::find_or_install() {
        Ok(chromium) => chromium,
        Err(how) => return left_out(&how),
    };
    let binary = project.binary();
    let settings = [("COUNTERPOISE_BIN", binary.as_os_str()), ("CHROMIUM", chromium.as_os_str())];
    npm.script("e2e", &settings).map(|()| Outcome::Passed)
}

/// On a developer's machine a step may be left out; where every change is checked it may not.
fn left_out(how: &str) -> Done {
    if is_ci() { Err(how.to_owned()) } else { Ok(Outcome::LeftOut(how.to_owned())) }
}
