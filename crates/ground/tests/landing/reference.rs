//! Tables of the reference folder beside the project.

/// Rows of a table without its header; `None` without the folder.
pub(crate) fn reference(file: &str) -> Option<Vec<Vec<String>>> {
    let path = std::path::Path::new(env!("CARGO_MANIFEST_DIR")).join("../../../shared/reference").join(file);
    match std::fs::read_to_string(&path) {
        Ok(table) => Some(table.lines().skip(1).map(fields).collect()),
        Err(e) => {
            assert!(std::env::var_os("CI").is_none(), "the reference data must be there: {}: {e}", path.display());
            None
        }
    }
}

/// Fields of a line; those in quotes may hold commas.
fn fields(line: &str) -> Vec<String> {
    let (mut out, mut quoted) = (vec![String::new()], false);
    for c in line.chars() {
        match c {
            '"' => quoted = !quoted,
            ',' if !quoted => out.push(String::new()),
            c => out.last_mut().unwrap().push(c),
        }
    }
    out
}
