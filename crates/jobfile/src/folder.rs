//! What a job may ask of its folder.

use std::collections::BTreeMap;

/// The files of a job, by path relative to the job folder with forward slashes. Shells answer
/// from disk or database, tests from a literal.
pub trait Folder {
    /// Bytes of a file: `None` when there is none, `Err` with the system's words when it cannot be read.
    fn read(&self, path: &str) -> Option<Result<Vec<u8>, String>>;
}

/// A folder held in memory.
impl Folder for BTreeMap<String, Vec<u8>> {
    fn read(&self, path: &str) -> Option<Result<Vec<u8>, String>> {
        self.get(path).map(|bytes| Ok(bytes.clone()))
    }
}

/// True for a path that stays in the folder on every system: relative, forward slashes, no `..`,
/// no empty or `.` parts, no drive letter, no control characters.
pub fn stays_inside(path: &str) -> bool {
    !path.is_empty()
        && !path.contains(['\\', ':'])
        && !path.chars().any(char::is_control)
        && path.split('/').all(|part| !part.is_empty() && part != "." && part != "..")
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn only_paths_inside_are_taken() {
        for good in ["job.toml", "machines/a.toml", "survey/levels 2.csv", "..a/b"] {
            assert!(stays_inside(good), "{good}");
        }
        for bad in ["", "/etc/hosts", "../a", "a/../b", "a//b", "./a", "C:a", "a\\b", "a/", "\\\\host\\a", "a\0b"] {
            assert!(!stays_inside(bad), "{bad:?}");
        }
    }
}
