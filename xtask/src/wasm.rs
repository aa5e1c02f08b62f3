//! The pure rooms built for wasm32, where a compiler with that target's library is at hand.

use crate::programs::{self, Project};
use crate::rules::pure_rooms;
use crate::steps::{Done, Outcome};
use crate::workspace;
use std::path::{Path, PathBuf};
use std::process::Command;

const TARGET: &str = "wasm32-unknown-unknown";
const HOW: &str = "needs the standard library of wasm32-unknown-unknown: `rustup target add wasm32-unknown-unknown`, \
                   or a Debian compiler that brings it (rustc with libstd-rust-dev-wasm32, version 1.95 or newer)";

/// Builds every pure room. Left out where no compiler has the target; a failure where one has.
pub(crate) fn build(project: &Project) -> Done {
    let packages = workspace::packages(project)?;
    let own = Path::new("rustc");
    let debian = Path::new("/usr/bin/rustc");
    let compiler = [own, debian].into_iter().find(|rustc| has_target(rustc));
    let Some(compiler) = compiler else { return Ok(Outcome::LeftOut(HOW.into())) };
    let mut command = project.cargo(&["build", "--locked", "--target", TARGET]);
    for room in pure_rooms(&packages) {
        command.args(["--package", room]);
    }
    if compiler == debian {
        // Another compiler: its own folder, so that neither throws away what the other built.
        command.env("RUSTC", debian).env("CARGO_TARGET_DIR", project.target().join("debian"));
    }
    programs::run(&mut command).map(|()| Outcome::Passed)
}

/// True if the compiler is there, is new enough, and has the target's library.
fn has_target(rustc: &Path) -> bool {
    let ask = |args: &[&str]| {
        let out = Command::new(rustc).args(args).stderr(std::process::Stdio::null()).output().ok()?;
        out.status.success().then(|| String::from_utf8_lossy(&out.stdout).into_owned())
    };
    let new_enough = ask(&["--version"]).as_deref().and_then(minor).is_some_and(|v| v >= 95);
    let library = ask(&["--print", "target-libdir", "--target", TARGET]).map(|dir| PathBuf::from(dir.trim()));
    new_enough && library.is_some_and(|dir| dir.is_dir())
}

/// The minor of `rustc 1.95.0 (…)`.
fn minor(version: &str) -> Option<u32> {
    version.strip_prefix("rustc 1.")?.split('.').next()?.parse().ok()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn versions_and_missing_compilers() {
        assert_eq!(minor("rustc 1.95.0 (59807616e 2026-04-14)"), Some(95));
        assert_eq!(minor("clang 19"), None);
        assert!(!has_target(Path::new("no-such-compiler")));
    }
}
