//! What the pure rooms stand on: nothing that reads files, network, clock or randomness by itself.

use super::Breach;
use super::rooms::pure_rooms;
use crate::programs::{Project, output};
use crate::workspace::Package;

/// Packages that no pure room may have under it, directly or not.
const FORBIDDEN: [(&str, &str); 25] = [
    ("tokio", "runtime with sockets, files and timers"),
    ("mio", "sockets"),
    ("socket2", "sockets"),
    ("async-std", "runtime with sockets and files"),
    ("smol", "runtime with sockets and files"),
    ("axum", "web server"),
    ("hyper", "network"),
    ("reqwest", "network"),
    ("ureq", "network"),
    ("rustls", "network"),
    ("sqlx", "database"),
    ("rusqlite", "database"),
    ("rayon", "threads"),
    ("memmap2", "files"),
    ("tempfile", "files"),
    ("walkdir", "files"),
    ("dirs", "files and environment"),
    ("time", "clock"),
    ("chrono", "clock"),
    ("iana-time-zone", "clock"),
    ("getrandom", "randomness of the system"),
    ("rand", "randomness"),
    ("fastrand", "randomness"),
    ("clap", "environment and terminal"),
    ("tracing-subscriber", "logging"),
];

/// A package that is there all the same.
struct Exception {
    /// Package.
    name: &'static str,
    /// The direct dependencies that bring it.
    through: &'static str,
    /// Rooms in whose tree it may stand.
    rooms: &'static [&'static str],
    /// Why it does no harm. Each exception is proven to be needed, so that it goes when it can.
    reason: &'static str,
}

const EXCEPTIONS: [Exception; 3] = [
    Exception {
        name: "rand",
        through: "geo",
        rooms: &["machine", "stability", "site", "planning", "survey", "jobfile", "drawing", "exchange"],
        reason: "built without the system's randomness (no getrandom in the tree); only geo's sampling uses it, which we don't",
    },
    Exception {
        name: "chrono",
        through: "las",
        rooms: &["survey", "jobfile"],
        reason: "las keeps the creation date of a point file in its type; only writing a file asks for today, and we only read",
    },
    Exception {
        name: "iana-time-zone",
        through: "las, chrono",
        rooms: &["survey", "jobfile"],
        reason: "comes with chrono; asked only for local time, which nothing here wants",
    },
];

/// Asks cargo for the tree of every pure room.
pub(super) fn check(project: &Project, packages: &[Package]) -> Result<Vec<Breach>, String> {
    let mut out = Vec::new();
    let mut used = [false; EXCEPTIONS.len()];
    for room in pure_rooms(packages) {
        let args = ["tree", "--locked", "--edges", "normal", "--prefix", "none", "--format", "{p}", "--package", room];
        let tree = output(&mut project.cargo(&args))?;
        out.extend(breaches(room, &tree, &mut used));
    }
    for (exception, used) in EXCEPTIONS.iter().zip(used) {
        let Exception { name, through, reason, .. } = exception;
        if used {
            println!("excused: {name}, through {through}: {reason}");
        } else {
            let what = format!("{name} ({through}) is no longer in any tree; remove the exception");
            out.push(Breach::at("xtask/src/rules/dependencies.rs", None, what));
        }
    }
    Ok(out)
}

/// Forbidden packages in the tree of a room: one package a line, name first.
fn breaches(room: &str, tree: &str, used: &mut [bool; EXCEPTIONS.len()]) -> Vec<Breach> {
    let mut names: Vec<_> = tree.lines().filter_map(|l| l.split_whitespace().next()).collect();
    names.sort_unstable();
    names.dedup();
    let mut out = Vec::new();
    for (name, kind) in FORBIDDEN.iter().filter(|(name, _)| names.binary_search(name).is_ok()) {
        match EXCEPTIONS.iter().position(|e| e.name == *name && e.rooms.contains(&room)) {
            Some(i) => used[i] = true,
            None => out.push(Breach::at(
                room,
                None,
                format!("has {name} ({kind}) under it; `cargo tree --package {room} --edges normal --invert {name}` shows through what"),
            )),
        }
    }
    out
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn forbidden_packages_are_named_and_exceptions_hold_only_for_their_rooms() {
        let tree =
            "planning v0.1.0 (/p/crates/planning)\ngeo v0.33.1\nrand v0.10.4 (*)\ntokio v1.50.0\ntokio v1.50.0 (*)\n";
        let mut used = [false; EXCEPTIONS.len()];
        let found = breaches("planning", tree, &mut used);
        assert_eq!(found.len(), 1);
        assert!(found[0].what.starts_with("has tokio (runtime"), "{}", found[0].what);
        assert_eq!(used, [true, false, false]);
        assert_eq!(breaches("geometry", tree, &mut used).len(), 2, "geometry has no reason for rand");
    }

    #[test]
    fn a_name_that_only_begins_alike_passes() {
        assert_eq!(breaches("planning", "rand_core v0.10.1\ntimely v1.0.0\n", &mut [false; EXCEPTIONS.len()]), []);
    }

    #[test]
    fn every_exception_excuses_something_forbidden_and_says_why() {
        for e in &EXCEPTIONS {
            assert!(FORBIDDEN.iter().any(|(name, _)| *name == e.name), "{}", e.name);
            assert!(e.reason.len() > 20 && !e.rooms.is_empty(), "{}", e.name);
        }
    }
}
