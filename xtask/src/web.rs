//! The web client: npm's part of the commands.

use crate::programs::{self, Project};
use std::path::PathBuf;
use std::process::Command;
use std::time::SystemTime;

/// The oldest Node that the client's tools take.
const NODE: (u32, u32) = (20, 19);

/// npm in the client's folder, with a Node that is new enough.
pub(crate) struct Npm {
    folder: PathBuf,
    npm: PathBuf,
}

impl Npm {
    /// Looks for npm and Node; the error says how to get them.
    pub(crate) fn find(project: &Project) -> Result<Self, String> {
        let how = format!(
            "the web client needs Node {}.{} or newer with npm: install it from nodejs.org or your system's packages",
            NODE.0, NODE.1
        );
        let (Some(npm), Some(node)) = (programs::find("npm"), programs::find("node")) else {
            return Err(how);
        };
        let version = programs::output(Command::new(node).arg("--version"))?;
        match parse_version(&version) {
            Some(found) if found >= NODE => Ok(Self { folder: project.path("web"), npm }),
            _ => Err(format!("this is Node {}; {how}", version.trim())),
        }
    }

    fn command(&self, args: &[&str]) -> Command {
        let mut command = Command::new(&self.npm);
        command.args(args).current_dir(&self.folder);
        // The browser tests use the system's browser.
        command.env("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1");
        command
    }

    /// Installs the packages of the lock, unless they are there already.
    pub(crate) fn install(&self) -> Result<(), String> {
        if self.is_installed() {
            println!("packages are as in web/package-lock.json already");
            return Ok(());
        }
        let lock = self.folder.join("package-lock.json").is_file();
        programs::run(&mut self.command(if lock { &["ci"] } else { &["install"] }))
    }

    fn is_installed(&self) -> bool {
        let age = |name: &str| -> Option<SystemTime> { self.folder.join(name).metadata().ok()?.modified().ok() };
        // npm writes this file when an installation is complete.
        let Some(done) = age("node_modules/.package-lock.json") else { return false };
        ["package.json", "package-lock.json"].iter().all(|f| age(f).is_some_and(|t| t <= done))
    }

    /// Runs a script of `web/package.json`.
    pub(crate) fn script(&self, name: &str, settings: &[(&str, &std::ffi::OsStr)]) -> Result<(), String> {
        let mut command = self.command(&["run", "--silent", name]);
        programs::run(command.envs(settings.iter().copied()))
    }
}

/// Major and minor of `v20.20.2`.
fn parse_version(text: &str) -> Option<(u32, u32)> {
    let mut parts = text.trim().strip_prefix('v')?.split('.');
    Some((parts.next()?.parse().ok()?, parts.next()?.parse().ok()?))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn versions_are_compared_as_numbers() {
        assert_eq!(parse_version("v20.20.2\n"), Some((20, 20)));
        assert!(parse_version("v8.9.0").unwrap() < NODE);
        assert!(parse_version("v100.0.0").unwrap() > NODE);
        assert_eq!(parse_version("20"), None);
    }
}
