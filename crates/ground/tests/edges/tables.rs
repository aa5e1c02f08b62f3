//! Tables of numbers: of the reference data folder beside the project, and those kept under `validation`.

/// Cells of each row without the heading, of a file beside the project; none where the folder is absent, except
/// where every change is checked.
pub(crate) fn shared(path: &str) -> Option<Vec<Vec<String>>> {
    let file = std::path::Path::new(env!("CARGO_MANIFEST_DIR")).join("../../../shared/reference").join(path);
    let Ok(text) = std::fs::read_to_string(file) else {
        assert!(std::env::var_os("CI").is_none(), "the reference data folder ../shared is absent");
        return None;
    };
    Some(rows(&text))
}

/// The same of a file under `validation/ground/edges`.
pub(crate) fn kept(path: &str) -> Vec<Vec<String>> {
    let file = std::path::Path::new(env!("CARGO_MANIFEST_DIR")).join("../../validation/ground/edges").join(path);
    rows(&std::fs::read_to_string(file).unwrap())
}

fn rows(text: &str) -> Vec<Vec<String>> {
    text.lines().filter(|l| !l.starts_with('#')).skip(1).map(cells).collect()
}

/// Cells may stand in quotes and then hold commas.
fn cells(line: &str) -> Vec<String> {
    let mut out = vec![String::new()];
    let mut quoted = false;
    for c in line.chars() {
        match c {
            '"' => quoted = !quoted,
            ',' if !quoted => out.push(String::new()),
            _ => out.last_mut().unwrap().push(c),
        }
    }
    out
}

/// A cell as a number.
pub(crate) fn number(row: &[String], i: usize) -> f64 {
    row[i].parse().unwrap_or_else(|_| panic!("{} in {row:?}", row[i]))
}
