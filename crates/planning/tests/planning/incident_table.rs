//! The incident table in the reference data folder beside the project, row by row.

use crate::workspace;
use std::collections::HashMap;

/// A row of the table by column.
pub(crate) struct Row(HashMap<String, String>);

impl Row {
    pub(crate) fn text(&self, column: &str) -> &str {
        self.0.get(column).unwrap_or_else(|| panic!("no column {column}"))
    }
    pub(crate) fn number(&self, column: &str) -> f64 {
        self.text(column).parse().unwrap_or_else(|e| panic!("{}: {column}: {e}", self.text("id")))
    }
}

/// Cells of comma separated text with quotes, row by row.
fn cells(text: &str) -> Vec<Vec<String>> {
    let (mut rows, mut row, mut cell, mut quoted) = (Vec::new(), Vec::new(), String::new(), false);
    let mut chars = text.chars().peekable();
    while let Some(c) = chars.next() {
        match c {
            '"' if quoted && chars.peek() == Some(&'"') => cell.extend(chars.next()),
            '"' => quoted = !quoted,
            ',' if !quoted => row.push(std::mem::take(&mut cell)),
            '\n' if !quoted => {
                row.push(std::mem::take(&mut cell));
                rows.push(std::mem::take(&mut row));
            }
            '\r' => {}
            c => cell.push(c),
        }
    }
    rows
}

/// Rows of the table, or `None` where the folder is missing and CI does not ask.
pub(crate) fn incidents() -> Option<Vec<Row>> {
    let Ok(text) = std::fs::read_to_string(workspace::path("../shared/incidents/incidents.csv")) else {
        assert!(std::env::var_os("CI").is_none(), "reference data missing: incidents.csv");
        eprintln!("left out: needs the reference data folder beside the project (incidents/incidents.csv)");
        return None;
    };
    let mut rows = cells(&text).into_iter();
    let names = rows.next()?;
    Some(rows.map(|r| Row(names.iter().cloned().zip(r).collect())).collect())
}
