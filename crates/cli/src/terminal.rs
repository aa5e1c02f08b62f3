//! The terminal: the only place that prints.

use std::io::Write;

/// Columns to fill: 80, or fewer where COLUMNS says so.
pub(crate) fn width() -> usize {
    let columns = std::env::var("COLUMNS").ok().and_then(|c| c.parse::<usize>().ok());
    columns.unwrap_or(80).clamp(40, 100)
}

/// A line of a result.
pub(crate) fn line(text: &str) {
    write(&mut std::io::stdout().lock(), text);
}

/// A line beside the result: progress, warnings, faults.
pub(crate) fn error_line(text: &str) {
    write(&mut std::io::stderr().lock(), text);
}

/// Prints a value as JSON.
pub(crate) fn print_json(value: &impl serde::Serialize) {
    match serde_json::to_string_pretty(value) {
        Ok(json) => line(&json),
        Err(e) => error_line(&e.to_string()),
    }
}

/// A value as the text of a JSON file.
pub(crate) fn json(value: &impl serde::Serialize) -> String {
    serde_json::to_string_pretty(value).map(|json| json + "\n").unwrap_or_default()
}

/// A paragraph, wrapped, its lines after the first indented.
pub(crate) fn paragraph(text: &str, first: &str, rest: &str) {
    let options = textwrap::Options::new(width()).initial_indent(first).subsequent_indent(rest);
    for wrapped in textwrap::wrap(text, options) {
        line(&wrapped);
    }
}

/// A reader that has gone away (`| head`) is no reason to fail: the verdict stays in the exit code.
fn write(out: &mut impl Write, text: &str) {
    let _ = writeln!(out, "{text}");
}
