//! The table of outside checks in the engineering manual names every `val_…` test, and no other.

use super::Breach;
use std::collections::BTreeSet;

/// The page with the table.
pub(super) const PAGE: &str = "docs/engineering.md";

/// `files`: path and text of every file of the repository.
pub(super) fn breaches(files: &[(String, String)]) -> Vec<Breach> {
    let tested = |path: &str| ["crates/", "validation/"].iter().any(|folder| path.starts_with(folder));
    let rust = files.iter().filter(|(path, _)| tested(path) && is_rust(path));
    let tests: BTreeSet<&str> = rust.flat_map(|(_, text)| tests_in(text)).collect();
    let page = files.iter().find(|(path, _)| path == PAGE).map_or("", |(_, text)| text.as_str());
    let told: BTreeSet<&str> = page.lines().filter_map(row).collect();
    let missing =
        tests.difference(&told).map(|t| Breach::at(PAGE, None, format!("the test {t} is missing in the table")));
    let gone = told.difference(&tests).map(|t| Breach::at(PAGE, None, format!("names {t}, which is no test")));
    missing.chain(gone).collect()
}

fn is_rust(path: &str) -> bool {
    std::path::Path::new(path).extension().is_some_and(|e| e == "rs")
}

/// Names of the functions `val_…` in a Rust file.
fn tests_in(text: &str) -> impl Iterator<Item = &str> {
    text.lines().filter_map(|line| {
        let name = line.trim_start().strip_prefix("fn ")?.split('(').next()?;
        name.starts_with("val_").then_some(name)
    })
}

/// The test that a row of the table begins with.
fn row(line: &str) -> Option<&str> {
    let name = line.strip_prefix("| `")?.split('`').next()?;
    name.starts_with("val_").then_some(name)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn found(test: &str, page: &str) -> usize {
        let files = [
            ("crates/a/tests/a.rs".to_owned(), format!("#[test]\n    fn {test}() {{}}\nfn helper() {{}}\n")),
            (PAGE.to_owned(), page.to_owned()),
        ];
        breaches(&files).len()
    }

    #[test]
    fn the_table_and_the_tests_name_each_other() {
        assert_eq!(found("val_one", "| `val_one` | a book |\n"), 0);
        assert_eq!(found("val_one", "see `val_one`\n"), 1, "a mention is no row");
        assert_eq!(found("val_one", "| `val_one` | a |\n| `val_two` | b |\n"), 1);
        assert_eq!(found("regress_one", "| `test` | against |\n"), 0);
    }
}
