//! The browser of the browser tests: the system's chromium.

use crate::programs;
use std::path::PathBuf;
use std::process::Command;

/// Chromium, installed by apt-get where that is possible; the error says how to get it.
pub(crate) fn find_or_install() -> Result<PathBuf, String> {
    if let Some(set) = std::env::var_os("CHROMIUM").map(PathBuf::from) {
        return if set.is_file() { Ok(set) } else { Err(format!("CHROMIUM is {}, which is no file", set.display())) };
    }
    if let Some(found) = find() {
        return Ok(found);
    }
    let how = "the browser tests need chromium: on Debian `apt-get install chromium`, \
               elsewhere set CHROMIUM to the program";
    let Some(apt) = programs::find("apt-get") else { return Err(how.into()) };
    if !is_root() {
        return Err(format!("{how} (not root, so it is not installed here)"));
    }
    println!("installing Debian's chromium");
    let apt = |args: &[&str]| programs::run(Command::new(&apt).args(args).env("DEBIAN_FRONTEND", "noninteractive"));
    apt(&["update", "-q"])?;
    apt(&["install", "-q", "-y", "--no-install-recommends", "chromium", "fonts-liberation"])?;
    find().ok_or_else(|| how.into())
}

fn find() -> Option<PathBuf> {
    ["chromium", "chromium-browser"].iter().find_map(|name| programs::find(name))
}

fn is_root() -> bool {
    programs::output(Command::new("id").arg("-u")).is_ok_and(|id| id.trim() == "0")
}
