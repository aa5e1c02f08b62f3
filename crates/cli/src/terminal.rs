//! The terminal: the only place that prints.
#![expect(clippy::print_stdout, clippy::print_stderr, reason = "a command line speaks through these two")]

/// Columns to fill: 80, or fewer where COLUMNS says so.
pub(crate) fn width() -> usize {
    let columns = std::env::var("COLUMNS").ok().and_then(|c| c.parse::<usize>().ok());
    columns.unwrap_or(80).clamp(40, 100)
}

/// A line of a result.
pub(crate) fn line(text: &str) {
    println!("{text}");
}

/// A line beside the result: progress, warnings, faults.
pub(crate) fn error_line(text: &str) {
    eprintln!("{text}");
}

/// A value as JSON.
pub(crate) fn print_json(value: &impl serde::Serialize) {
    match serde_json::to_string_pretty(value) {
        Ok(json) => println!("{json}"),
        Err(e) => eprintln!("{e}"),
    }
}

/// A paragraph, wrapped, its lines after the first indented.
pub(crate) fn paragraph(text: &str, first: &str, rest: &str) {
    let options = textwrap::Options::new(width()).initial_indent(first).subsequent_indent(rest);
    for wrapped in textwrap::wrap(text, options) {
        println!("{wrapped}");
    }
}
