//! Files of the project and of the reference data folder beside it.

use std::path::PathBuf;

pub(crate) fn path(relative: &str) -> PathBuf {
    PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("../..").join(relative)
}

pub(crate) fn read(relative: &str) -> Vec<u8> {
    std::fs::read(path(relative)).unwrap_or_else(|e| panic!("{relative}: {e}"))
}
