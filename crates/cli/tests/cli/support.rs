//! Running the binary in a folder of its own.

use std::path::{Path, PathBuf};
use std::process::{Command, Stdio};

pub(crate) struct Said {
    pub(crate) code: i32,
    pub(crate) out: String,
    pub(crate) err: String,
}

pub(crate) fn root() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("../..")
}

/// Runs from the project's root.
pub(crate) fn run(args: &[&str]) -> Said {
    run_in(&root(), args, None)
}

pub(crate) fn run_in(folder: &Path, args: &[&str], input: Option<&str>) -> Said {
    let mut child = Command::new(env!("CARGO_BIN_EXE_counterpoise"))
        .args(args)
        .current_dir(folder)
        .env("COLUMNS", "80")
        .env("NO_COLOR", "1")
        .stdin(if input.is_some() { Stdio::piped() } else { Stdio::null() })
        .stdout(Stdio::piped())
        .stderr(Stdio::piped())
        .spawn()
        .unwrap();
    if let Some(input) = input {
        use std::io::Write;
        child.stdin.take().unwrap().write_all(input.as_bytes()).unwrap();
    }
    let done = child.wait_with_output().unwrap();
    Said {
        code: done.status.code().unwrap_or(-1),
        out: String::from_utf8(done.stdout).unwrap(),
        err: String::from_utf8(done.stderr).unwrap(),
    }
}

/// A folder that goes away with the test.
pub(crate) struct Scratch(pub(crate) PathBuf);

impl Scratch {
    pub(crate) fn new(name: &str) -> Self {
        let folder = std::env::temp_dir().join(format!("counterpoise-{name}-{}", std::process::id()));
        let _ = std::fs::remove_dir_all(&folder);
        std::fs::create_dir_all(&folder).unwrap();
        Self(folder)
    }

    /// With a copy of the demo job.
    pub(crate) fn with_demo(name: &str) -> Self {
        let scratch = Self::new(name);
        copy(&root().join("examples/demo-job"), &scratch.0.join("job"));
        scratch
    }

    pub(crate) fn edit(&self, file: &str, from: &str, to: &str) {
        let path = self.0.join(file);
        let text = std::fs::read_to_string(&path).unwrap();
        assert!(text.contains(from), "{file} has no {from:?}");
        std::fs::write(&path, text.replacen(from, to, 1)).unwrap();
    }
}

impl Drop for Scratch {
    fn drop(&mut self) {
        let _ = std::fs::remove_dir_all(&self.0);
    }
}

fn copy(from: &Path, to: &Path) {
    std::fs::create_dir_all(to).unwrap();
    for entry in std::fs::read_dir(from).unwrap() {
        let entry = entry.unwrap();
        let target = to.join(entry.file_name());
        if entry.file_type().unwrap().is_dir() {
            copy(&entry.path(), &target);
        } else {
            std::fs::copy(entry.path(), target).unwrap();
        }
    }
}
