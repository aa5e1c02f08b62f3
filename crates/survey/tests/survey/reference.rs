//! Reference data and expected values.
//!
//! The data are the reference data folder beside the project, `../shared`. Tests that need it are
//! left out when it is absent, except where `CI` is set: then its absence is a failure.

use evidence::Faults;
use std::path::PathBuf;

pub(crate) fn root() -> PathBuf {
    PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("../../../shared/data")
}

/// True where the reference data are at hand.
pub(crate) fn present() -> bool {
    let present = root().is_dir();
    assert!(present || std::env::var_os("CI").is_none(), "the reference data folder ../shared is absent");
    present
}

/// The bytes of a reference file.
pub(crate) fn bytes(path: &str) -> Vec<u8> {
    std::fs::read(root().join(path)).unwrap_or_else(|e| panic!("{path}: {e}"))
}

/// Every file in a folder of the reference data with one of these extensions, sorted.
pub(crate) fn files(folder: &str, extensions: &[&str]) -> Vec<String> {
    let mut found: Vec<String> = std::fs::read_dir(root().join(folder))
        .unwrap()
        .map(|entry| entry.unwrap().path())
        .filter(|p| p.is_file() && extensions.iter().any(|e| p.extension().is_some_and(|x| x == *e)))
        .map(|p| format!("{folder}/{}", p.file_name().unwrap().to_string_lossy()))
        .collect();
    found.sort();
    found
}

/// `validation/survey/reference.json`, written by the script beside it.
pub(crate) fn expected() -> serde_json::Value {
    let path = PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("../../validation/survey/reference.json");
    serde_json::from_slice(&std::fs::read(path).unwrap()).unwrap()
}

/// A file of `validation`.
pub(crate) fn validation(path: &str) -> Vec<u8> {
    let path = PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("../../validation").join(path);
    std::fs::read(&path).unwrap_or_else(|e| panic!("{}: {e}", path.display()))
}

/// The codes, in order.
pub(crate) fn codes(faults: &Faults) -> Vec<&str> {
    faults.list.iter().map(|f| f.code.as_str()).collect()
}

/// The numbers of a JSON row.
pub(crate) fn numbers(row: &serde_json::Value) -> Vec<f64> {
    row.as_array().unwrap().iter().map(|v| v.as_f64().unwrap()).collect()
}

/// Rows of a CSV table under `validation/`, without its head.
pub(crate) fn table(name: &str) -> Vec<Vec<String>> {
    let path = PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("../../validation").join(name);
    let text = std::fs::read_to_string(path).unwrap();
    text.lines().skip(1).map(|line| line.split(',').map(str::to_owned).collect()).collect()
}
