//! Every package takes the workspace's lints; every pure room is under the stricter settings of
//! `crates/clippy.toml`, and every other room has one of its own.
//!
//! Clippy takes the nearest `clippy.toml` from the package's folder upwards and no other. So a new
//! room is strict from its first line, and a shell must say that it is not.

use super::Breach;
use super::rooms::{is_pure, outside};
use crate::programs::Project;
use crate::workspace::Package;

/// Settings of the pure rooms.
pub(super) const STRICT: &str = "crates/clippy.toml";

pub(super) fn check(project: &Project, packages: &[Package]) -> Result<Vec<Breach>, String> {
    let mut out = Vec::new();
    if !project.path(STRICT).is_file() {
        out.push(Breach::at(STRICT, None, "is not there; it keeps the clock and sines out of the pure rooms"));
    }
    for package in packages {
        let beside = outside(&package.room);
        let folder = beside.map_or_else(|| format!("crates/{}", package.room), str::to_owned);
        let manifest = format!("{folder}/Cargo.toml");
        let text = std::fs::read_to_string(project.path(&manifest)).map_err(|e| format!("{manifest}: {e}"))?;
        if !takes_workspace_lints(&text) {
            out.push(Breach::at(&manifest, None, "does not take the workspace's lints: add [lints] workspace = true"));
        }
        let own = format!("{folder}/clippy.toml");
        let has_own = project.path(&own).is_file() || project.path(&format!("{folder}/.clippy.toml")).is_file();
        if is_pure(&package.room) && has_own {
            out.push(Breach::at(&own, None, format!("replaces {STRICT} in a pure room; remove it")));
        }
        if !is_pure(&package.room) && beside.is_none() && !has_own {
            out.push(Breach::at(
                &own,
                None,
                "is not there: a room that is not pure needs one, or the pure settings govern it",
            ));
        }
    }
    Ok(out)
}

fn takes_workspace_lints(manifest: &str) -> bool {
    let mut lines = manifest.lines().map(str::trim).skip_while(|l| *l != "[lints]").skip(1);
    lines.by_ref().take_while(|l| !l.starts_with('[')).any(|l| l.replace(' ', "") == "workspace=true")
}

#[cfg(test)]
mod tests {
    use super::takes_workspace_lints;

    #[test]
    fn the_lints_table_is_read() {
        assert!(takes_workspace_lints("[package]\nname = \"a\"\n\n[lints]\nworkspace = true\n"));
        assert!(!takes_workspace_lints("[package]\nversion.workspace = true\n"));
        assert!(!takes_workspace_lints("[lints]\n[dependencies]\nworkspace = true\n"));
        assert!(!takes_workspace_lints("[lints]\nworkspace = false\n"));
    }
}
