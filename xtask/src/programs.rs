//! The project's folder and the programs that the commands start.

use std::ffi::{OsStr, OsString};
use std::path::{Path, PathBuf};
use std::process::{Command, Stdio};

/// The project: where it is and which cargo works on it.
pub(crate) struct Project {
    /// Folder of the workspace.
    pub(crate) root: PathBuf,
    cargo: OsString,
}

impl Project {
    /// The workspace above this package, as cargo told it, or the current folder.
    pub(crate) fn find() -> Result<Self, String> {
        let package = std::env::var_os("CARGO_MANIFEST_DIR").map(PathBuf::from);
        let root = match package.as_deref().and_then(Path::parent) {
            Some(root) => root.to_path_buf(),
            None => std::env::current_dir().map_err(|e| format!("no current folder: {e}"))?,
        };
        if !root.join("Cargo.lock").is_file() {
            return Err(format!("{} is not the project: start with `cargo xtask` inside it", root.display()));
        }
        Ok(Self { root, cargo: std::env::var_os("CARGO").unwrap_or_else(|| "cargo".into()) })
    }

    /// A path inside the project.
    pub(crate) fn path(&self, inside: &str) -> PathBuf {
        self.root.join(inside)
    }

    /// Cargo with arguments, in the project.
    pub(crate) fn cargo(&self, args: &[&str]) -> Command {
        let mut command = Command::new(&self.cargo);
        command.args(args).current_dir(&self.root);
        // What cargo told this program about itself is not meant for the next cargo.
        for (name, _) in std::env::vars_os() {
            if name.to_str().is_some_and(|n| n.starts_with("CARGO_PKG_") || n.starts_with("CARGO_MANIFEST_")) {
                command.env_remove(name);
            }
        }
        command
    }

    /// Folder that cargo builds into.
    pub(crate) fn target(&self) -> PathBuf {
        match std::env::var_os("CARGO_TARGET_DIR") {
            Some(dir) => self.root.join(dir),
            None => self.path("target"),
        }
    }

    /// The built command line.
    pub(crate) fn binary(&self) -> PathBuf {
        self.target().join("debug").join(format!("counterpoise{}", std::env::consts::EXE_SUFFIX))
    }
}

/// True on the machine that checks every change, where nothing may be left out.
pub(crate) fn is_ci() -> bool {
    std::env::var_os("CI").is_some()
}

/// Runs a program with its output on this terminal.
pub(crate) fn run(command: &mut Command) -> Result<(), String> {
    let status = command.stdin(Stdio::null()).status().map_err(|e| cannot_start(command, &e))?;
    if status.success() { Ok(()) } else { Err(format!("`{}` ended with {status}", shown(command))) }
}

/// Runs a program and takes its standard output; its errors go to this terminal.
pub(crate) fn output(command: &mut Command) -> Result<String, String> {
    let out = command.stdin(Stdio::null()).stderr(Stdio::inherit()).output().map_err(|e| cannot_start(command, &e))?;
    if !out.status.success() {
        return Err(format!("`{}` ended with {}", shown(command), out.status));
    }
    String::from_utf8(out.stdout).map_err(|_| format!("`{}` wrote something that is not text", shown(command)))
}

/// A program by name on the search path.
pub(crate) fn find(name: &str) -> Option<PathBuf> {
    let paths = std::env::var_os("PATH")?;
    std::env::split_paths(&paths).map(|dir| dir.join(name)).find(|file| is_program(file))
}

fn is_program(file: &Path) -> bool {
    #[cfg(unix)]
    {
        use std::os::unix::fs::PermissionsExt as _;
        file.metadata().is_ok_and(|m| m.is_file() && m.permissions().mode() & 0o111 != 0)
    }
    #[cfg(not(unix))]
    {
        file.is_file()
    }
}

fn cannot_start(command: &Command, why: &std::io::Error) -> String {
    format!("cannot start `{}`: {why}", command.get_program().display())
}

/// A command as one would type it.
pub(crate) fn shown(command: &Command) -> String {
    let program = Path::new(command.get_program()).file_name().unwrap_or(OsStr::new("?")).display().to_string();
    command.get_args().fold(program, |line, arg| format!("{line} {}", arg.display()))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_failing_program_is_an_error_that_names_it() {
        let why = run(Command::new("false").arg("--loud")).unwrap_err();
        assert!(why.starts_with("`false --loud` ended with"), "{why}");
        assert!(run(&mut Command::new("no-such-program-here")).unwrap_err().starts_with("cannot start"));
    }

    #[test]
    fn programs_are_found_on_the_path() {
        assert!(find("sh").is_some());
        assert!(find("no-such-program-here").is_none());
    }
}
