//! Reading of the kept tables.

use std::collections::BTreeMap;

/// Rows of a comma-separated text by column, quotes respected.
pub(crate) fn rows(text: &str) -> Vec<BTreeMap<String, String>> {
    let mut lines = text.lines();
    let header = cells(lines.next().unwrap());
    lines.map(|line| header.iter().cloned().zip(cells(line)).collect()).collect()
}

fn cells(line: &str) -> Vec<String> {
    let mut cells = vec![String::new()];
    let mut quoted = false;
    for c in line.chars() {
        match c {
            '"' => quoted = !quoted,
            ',' if !quoted => cells.push(String::new()),
            c => cells.last_mut().unwrap().push(c),
        }
    }
    cells
}

/// Numbers of a table.
pub(crate) fn numbers(text: &str) -> Vec<BTreeMap<String, f64>> {
    let number = |v: String| v.parse().unwrap_or(f64::NAN);
    rows(text).into_iter().map(|row| row.into_iter().map(|(k, v)| (k, number(v))).collect()).collect()
}

/// A file of the reference data folder beside the project, `../shared/reference`; none where it is absent, unless CI is set.
pub(crate) fn reference(name: &str) -> Option<String> {
    let path = std::path::Path::new(env!("CARGO_MANIFEST_DIR")).join("../../../shared/reference").join(name);
    let text = std::fs::read_to_string(path).ok();
    assert!(text.is_some() || std::env::var_os("CI").is_none(), "the reference data folder ../shared is absent");
    text
}
