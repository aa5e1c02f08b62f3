//! A real folder, and folders made from literals.

use std::collections::BTreeMap;
use std::path::{Path, PathBuf};

/// A job folder on disk.
pub(crate) struct OnDisk(pub(crate) PathBuf);

impl jobfile::Folder for OnDisk {
    fn read(&self, path: &str) -> Option<Result<Vec<u8>, String>> {
        match std::fs::read(self.0.join(path)) {
            Ok(bytes) => Some(Ok(bytes)),
            Err(e) if e.kind() == std::io::ErrorKind::NotFound => None,
            Err(e) => Some(Err(e.to_string())),
        }
    }
}

/// The project's own folder.
pub(crate) fn project() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("../..")
}

/// The demo job's folder in memory, for tests that change it.
pub(crate) fn demo() -> BTreeMap<String, Vec<u8>> {
    let root = project().join("examples/demo-job");
    ["job.toml", "survey/levels.csv", "machines/demo-7.toml", "machines/demo-14.toml"]
        .into_iter()
        .map(|name| (name.to_owned(), std::fs::read(root.join(name)).unwrap()))
        .collect()
}

/// A file of the demo folder as text.
pub(crate) fn text(folder: &BTreeMap<String, Vec<u8>>, name: &str) -> String {
    String::from_utf8(folder[name].clone()).unwrap()
}
