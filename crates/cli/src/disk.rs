//! A job folder on disk.

use std::path::{Path, PathBuf};

/// Larger files are not survey files of a building site; guards memory.
const LARGEST: u64 = 4 << 30;

/// Files of a job folder, by paths relative to it.
pub(crate) struct DiskFolder {
    root: PathBuf,
}

impl DiskFolder {
    pub(crate) fn new(root: &Path) -> Self {
        Self { root: root.to_owned() }
    }
}

impl jobfile::Folder for DiskFolder {
    fn read(&self, path: &str) -> Option<Result<Vec<u8>, String>> {
        if !jobfile::stays_inside(path) {
            return None;
        }
        let file = self.root.join(path);
        let meta = match std::fs::metadata(&file) {
            Ok(m) => m,
            Err(e) if e.kind() == std::io::ErrorKind::NotFound => return None,
            Err(e) => return Some(Err(e.to_string())),
        };
        if !meta.is_file() {
            return Some(Err("not a file".to_owned()));
        }
        if meta.len() > LARGEST {
            return Some(Err(format!("{} GiB is more than the 4 GiB that are read", meta.len() >> 30)));
        }
        Some(std::fs::read(&file).map_err(|e| e.to_string()))
    }
}
