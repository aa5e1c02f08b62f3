//! The packages of the workspace, as cargo tells them.

use crate::json::Json;
use crate::programs::{Project, output};
use std::path::Path;

/// A package of the workspace.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(crate) struct Package {
    /// Its name for cargo.
    pub(crate) name: String,
    /// Its folder under `crates/`, or its folder's name elsewhere.
    pub(crate) room: String,
    /// What it depends on.
    pub(crate) dependencies: Vec<Dependency>,
    /// Names of its benches.
    pub(crate) benches: Vec<String>,
}

/// A dependency of a package.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(crate) struct Dependency {
    /// Name of the package it points at.
    pub(crate) name: String,
    /// Room it points at, for a package of this workspace.
    pub(crate) room: Option<String>,
    /// True if only tests need it.
    pub(crate) only_for_tests: bool,
}

/// Asks cargo.
pub(crate) fn packages(project: &Project) -> Result<Vec<Package>, String> {
    let mut command = project.cargo(&["metadata", "--format-version", "1", "--no-deps", "--locked"]);
    read(&output(&mut command)?)
}

/// Reads `cargo metadata --no-deps`.
fn read(text: &str) -> Result<Vec<Package>, String> {
    let json = Json::read(text)?;
    let packages = json.get("packages").map(Json::items).unwrap_or_default();
    if packages.is_empty() {
        return Err("cargo metadata names no package".into());
    }
    packages
        .iter()
        .map(|p| package(p).ok_or_else(|| "cargo metadata: a package without name or folder".into()))
        .collect()
}

fn package(json: &Json) -> Option<Package> {
    let manifest = Path::new(json.get("manifest_path")?.text()?);
    let benches = json.get("targets")?.items().iter().filter(|target| {
        target.get("kind").map(Json::items).unwrap_or_default().iter().any(|kind| kind.text() == Some("bench"))
    });
    Some(Package {
        name: json.get("name")?.text()?.to_owned(),
        room: folder_name(manifest.parent()?)?,
        dependencies: json.get("dependencies")?.items().iter().map(dependency).collect::<Option<_>>()?,
        benches: benches.filter_map(|t| Some(t.get("name")?.text()?.to_owned())).collect(),
    })
}

fn dependency(json: &Json) -> Option<Dependency> {
    Some(Dependency {
        name: json.get("name")?.text()?.to_owned(),
        room: json.get("path").and_then(Json::text).and_then(|p| folder_name(Path::new(p))),
        only_for_tests: json.get("kind")?.text() == Some("dev"),
    })
}

fn folder_name(path: &Path) -> Option<String> {
    Some(path.file_name()?.to_str()?.to_owned())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn names_rooms_and_kinds_are_read() {
        let text = r#"{"packages": [{"name": "counterpoise", "manifest_path": "/p/crates/cli/Cargo.toml",
            "targets": [{"name": "speed", "kind": ["bench"]}, {"name": "counterpoise", "kind": ["bin"]}],
            "dependencies": [
                {"name": "planning", "path": "/p/crates/planning", "kind": null},
                {"name": "serde", "kind": null},
                {"name": "jobfile", "path": "/p/crates/jobfile", "kind": "dev"}]}]}"#;
        let found = read(text).unwrap();
        assert_eq!(found[0].room, "cli");
        assert_eq!(found[0].benches, ["speed"]);
        let told: Vec<_> =
            found[0].dependencies.iter().map(|d| (d.name.as_str(), d.room.as_deref(), d.only_for_tests)).collect();
        assert_eq!(
            told,
            [("planning", Some("planning"), false), ("serde", None, false), ("jobfile", Some("jobfile"), true)]
        );
    }

    #[test]
    fn an_answer_without_packages_is_an_error() {
        assert!(read("{\"packages\": []}").is_err());
        assert!(read("{\"packages\": [{}]}").is_err());
    }
}
