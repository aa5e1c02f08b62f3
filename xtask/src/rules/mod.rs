//! The rules of the repository that no compiler holds.
//!
//! - [`arrows`]: rooms depend only on rooms above them in the list
//! - [`dependencies`]: nothing under a pure room touches files, network, clock or randomness
//! - [`sources`]: nothing in a pure room's sources does either
//! - [`lints`]: every room takes the workspace's lints, every pure one the stricter clippy settings
//! - [`lint_proof`]: those settings really refuse what they list
//! - [`outside_checks`]: the engineering manual lists every test against the outside
//! - [`files`]: no path of a machine, no unfinished work, no registry's host in any file

mod arrows;
mod dependencies;
mod files;
mod lint_proof;
mod lints;
mod outside_checks;
mod rooms;
mod rust_text;
mod sources;

pub(crate) use rooms::pure_rooms;

use crate::programs::{Project, output};
use crate::steps::Steps;
use crate::workspace::{self, Package};
use std::fmt;
use std::process::{Command, ExitCode};

/// A place that breaks a rule.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(crate) struct Breach {
    /// File or room.
    place: String,
    /// Line, from 1, where there is one.
    line: Option<usize>,
    /// What is wrong, and what to do instead.
    what: String,
}

impl Breach {
    fn at(place: &str, line: Option<usize>, what: impl Into<String>) -> Self {
        Self { place: place.to_owned(), line, what: what.into() }
    }
}

impl fmt::Display for Breach {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self.line {
            Some(line) => write!(f, "{}:{line}: {}", self.place, self.what),
            None => write!(f, "{}: {}", self.place, self.what),
        }
    }
}

type Check = fn(&Project, &[Package]) -> Result<Vec<Breach>, String>;

/// `cargo xtask rules`.
pub(crate) fn run(project: &Project) -> ExitCode {
    let mut steps = Steps::new();
    all(project, &mut steps);
    steps.finish()
}

/// Every rule, one step each.
pub(crate) fn all(project: &Project, steps: &mut Steps) {
    let packages = workspace::packages(project);
    let with_packages = |check: Check| told(&check(project, packages.as_ref().map_err(Clone::clone)?)?);
    steps.must("rule: arrows between rooms run upward", || with_packages(|_, p| Ok(arrows::breaches(p))));
    steps.must("rule: dependencies of pure rooms", || with_packages(dependencies::check));
    steps.must("rule: sources of pure rooms", || {
        let files = tracked(project)?;
        told(&files.iter().flat_map(|(path, text)| sources::breaches(path, text)).collect::<Vec<_>>())
    });
    steps.must("rule: lints of every room", || with_packages(lints::check));
    steps.must("rule: clippy refuses clock and sines", || lint_proof::run(project));
    steps.must("rule: outside checks are listed", || told(&outside_checks::breaches(&tracked(project)?)));
    steps.must("rule: files of the repository", || {
        let machine = files::Machine::here(&project.root);
        let files = tracked(project)?;
        told(&files.iter().flat_map(|(path, text)| files::breaches(path, text, &machine)).collect::<Vec<_>>())
    });
}

fn told(breaches: &[Breach]) -> Result<(), String> {
    for breach in breaches {
        println!("{breach}");
    }
    match breaches.len() {
        0 => Ok(()),
        1 => Err("1 place breaks the rule".into()),
        n => Err(format!("{n} places break the rule")),
    }
}

/// Path and text of every file that git knows or would take; binary files are left out.
fn tracked(project: &Project) -> Result<Vec<(String, String)>, String> {
    let mut git = Command::new("git");
    git.args(["ls-files", "-z", "--cached", "--others", "--exclude-standard"]).current_dir(&project.root);
    let list = output(&mut git)?;
    let mut out = Vec::new();
    for path in list.split('\0').filter(|p| !p.is_empty()) {
        let file = project.path(path);
        // Deleted but still known to git: nothing to read.
        if !file.is_file() {
            continue;
        }
        let bytes = std::fs::read(&file).map_err(|e| format!("{path}: {e}"))?;
        if let Ok(text) = String::from_utf8(bytes) {
            out.push((path.to_owned(), text));
        }
    }
    if out.len() < 10 {
        return Err(format!("git names {} text files, expected the whole project", out.len()));
    }
    Ok(out)
}
