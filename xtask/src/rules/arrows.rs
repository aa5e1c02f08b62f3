//! Arrows between rooms run upward in the list only.

use super::Breach;
use super::rooms::{outside, place};
use crate::workspace::Package;

/// Dependencies of tests are exempt: a test may look down on what it prepares for.
pub(super) fn breaches(packages: &[Package]) -> Vec<Breach> {
    let mut out = Vec::new();
    for package in packages {
        if package.room == "xtask" {
            for dependency in &package.dependencies {
                let what = format!("depends on {}; xtask uses the standard library alone", dependency.name);
                out.push(Breach::at("xtask", None, what));
            }
            continue;
        }
        if outside(&package.room).is_some() {
            continue;
        }
        let Some(here) = place(&package.room) else {
            let what =
                "is not in the list of rooms; put it at its place in xtask/src/rules/rooms.rs and ARCHITECTURE.md";
            out.push(Breach::at(&package.room, None, what));
            continue;
        };
        for dependency in package.dependencies.iter().filter(|d| !d.only_for_tests) {
            let Some(room) = &dependency.room else { continue };
            let fault = match place(room) {
                Some(there) if there < here => continue,
                Some(_) => "which does not come before it in the list of rooms",
                None => "which is not a room",
            };
            out.push(Breach::at(&package.room, None, format!("depends on {room}, {fault}")));
        }
    }
    out
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::workspace::Dependency;

    fn package(room: &str, on: &[(&str, bool)]) -> Package {
        let dependencies = on.iter().map(|(name, only_for_tests)| Dependency {
            name: (*name).into(),
            room: (*name != "serde").then(|| (*name).into()),
            only_for_tests: *only_for_tests,
        });
        Package { name: room.into(), room: room.into(), dependencies: dependencies.collect(), benches: Vec::new() }
    }

    #[test]
    fn upward_and_foreign_and_test_arrows_pass() {
        let all = [package("planning", &[("machine", false), ("serde", false), ("jobfile", true)])];
        assert_eq!(breaches(&all), []);
        // The witness looks at the rooms, and none of them at it.
        assert_eq!(breaches(&[package("witness", &[("stability", false), ("jobfile", true)])]), []);
        assert_eq!(breaches(&[package("planning", &[("witness", false)])]).len(), 1);
    }

    #[test]
    fn downward_level_and_unknown_arrows_do_not() {
        assert_eq!(breaches(&[package("machine", &[("planning", false)])]).len(), 1);
        assert_eq!(breaches(&[package("machine", &[("machine", false)])]).len(), 1);
        assert_eq!(breaches(&[package("machine", &[("tools", false)])]).len(), 1);
        assert_eq!(breaches(&[package("attic", &[])]).len(), 1);
        assert_eq!(breaches(&[package("xtask", &[("serde", false)])]).len(), 1);
    }
}
