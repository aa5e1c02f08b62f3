//! Sources of pure rooms: no file, network, environment, clock, thread, process or terminal.

use super::Breach;
use super::rooms::is_pure;
use super::rust_text::code_only;

/// Modules of the standard library that a pure room has no use for.
const MODULES: [(&str, &str); 5] = [
    ("fs", "take bytes as an argument"),
    ("net", "let a shell fetch it"),
    ("env", "take the setting as an argument"),
    ("process", "let a shell do it"),
    ("thread", "let a shell start threads"),
];

/// Names that a pure room has no use for, whatever they were imported as part of.
const NAMES: [(&str, &str); 10] = [
    ("stdin", "take bytes as an argument"),
    ("stdout", "return the text"),
    ("stderr", "return a fault"),
    ("SystemTime", "take the date as an argument"),
    ("Instant", "measure in a bench or a shell"),
    ("RandomState", "take a seed, or use an ordered map"),
    ("println!", "return a message or a fault"),
    ("eprintln!", "return a message or a fault"),
    ("print!", "return a message or a fault"),
    ("dbg!", "remove it"),
];

/// Breaches in one file of the repository; files outside `crates/<pure room>/src` have none.
pub(super) fn breaches(path: &str, text: &str) -> Vec<Breach> {
    if !is_source_of_pure_room(path) {
        return Vec::new();
    }
    let code = code_only(text);
    let mut out = Vec::new();
    for (i, line) in code.lines().enumerate() {
        for (word, instead) in NAMES {
            if says(line, word) {
                out.push(Breach::at(path, Some(i + 1), format!("`{word}` in a pure room; {instead}")));
            }
        }
    }
    for (at, _) in code.match_indices("std::") {
        let line = code[..at].matches('\n').count() + 1;
        for (module, instead) in MODULES {
            if first_segments(&code[at + 5..]).contains(&module) {
                out.push(Breach::at(path, Some(line), format!("`std::{module}` in a pure room; {instead}")));
            }
        }
    }
    out.sort_by_key(|b| b.line);
    out
}

fn is_source_of_pure_room(path: &str) -> bool {
    let mut parts = path.split('/');
    parts.next() == Some("crates")
        && parts.next().is_some_and(is_pure)
        && parts.next() == Some("src")
        && std::path::Path::new(path).extension().is_some_and(|e| e == "rs")
}

/// First names of what follows `std::`: one, or those of a group in braces.
fn first_segments(after: &str) -> Vec<&str> {
    let Some(group) = after.strip_prefix('{') else {
        return vec![word(after)];
    };
    let (mut depth, mut start, mut out) = (0_usize, 0, Vec::new());
    for (i, c) in group.char_indices() {
        match c {
            '{' => depth += 1,
            '}' if depth > 0 => depth -= 1,
            ',' | '}' if depth == 0 => {
                out.push(word(group[start..i].trim_start()));
                start = i + 1;
                if c == '}' {
                    break;
                }
            }
            _ => {}
        }
    }
    out
}

fn word(text: &str) -> &str {
    let end = text.find(|c: char| !(c.is_alphanumeric() || c == '_')).unwrap_or(text.len());
    &text[..end]
}

/// True if the line has `name` as a word of its own.
fn says(line: &str, name: &str) -> bool {
    let joins = |c: Option<char>| c.is_some_and(|c| c.is_alphanumeric() || c == '_');
    line.match_indices(name).any(|(at, _)| {
        let ends_in_sign = name.ends_with('!');
        !joins(line[..at].chars().next_back()) && (ends_in_sign || !joins(line[at + name.len()..].chars().next()))
    })
}

#[cfg(test)]
mod tests {
    use super::breaches;

    fn lines(text: &str) -> Vec<usize> {
        breaches("crates/planning/src/plan.rs", text).iter().filter_map(|b| b.line).collect()
    }

    #[test]
    fn every_way_out_is_seen() {
        for line in [
            "std::fs::read(p)",
            "use std::{fmt, fs};",
            "use std::{fmt, io::{self, Read}, net};",
            "let t = std::time::Instant::now();",
            "use std::time::SystemTime;",
            "println!(\"x\")",
            "std::env::var(k)",
            "std::thread::spawn(f)",
            "std::io::stdout().lock()",
        ] {
            assert_eq!(lines(line), [1], "{line}");
        }
    }

    #[test]
    fn harmless_code_passes() {
        for line in [
            "use std::{fmt, io::{self, Read}};",
            "env!(\"CARGO_PKG_VERSION\")",
            "// std::fs",
            "let s = \"std::fs\";",
            "let instant = blueprint(1);",
            "struct Instants; write!(f, \"\")",
            "#[cfg(test)]\nmod tests { use std::fs; }",
        ] {
            assert_eq!(lines(line), [0_usize; 0], "{line}");
        }
    }

    #[test]
    fn only_sources_of_pure_rooms_are_asked() {
        for path in
            ["crates/server/src/run.rs", "crates/planning/tests/a.rs", "xtask/src/main.rs", "crates/planning/src/a.md"]
        {
            assert_eq!(breaches(path, "std::fs::read(p)"), [], "{path}");
        }
    }

    #[test]
    fn the_line_is_right_and_a_group_may_be_long() {
        assert_eq!(lines("fn a() {}\n\nuse std::{\n    fmt,\n    fs,\n};"), [3]);
    }
}
