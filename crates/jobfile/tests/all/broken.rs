//! Broken files and what is said of them: one table, a file of `tests/broken/` each.
//!
//! A case names the file it spoils and how, and keeps what a user is then told, word for word:
//!
//! ```toml
//! title = "A capacity without its unit"
//! base = "chart"                  # machine, chart (the same with one chart) or job (the demo job)
//! file = "job.toml"               # job only: which of its files is spoilt
//! [[change]]
//! from = 'capacity = "4000 kg"'   # must stand there; its first place is replaced
//! to = 'capacity = "4000"'
//! ```
//!
//! Instead of `change` a case may give `whole = '''…'''`, the spoilt file itself, or `append = '''…'''`.
//! `said` is written by the test with `COUNTERPOISE_WRITE_BROKEN=1`: look at it before
//! it is kept. A line that begins with `!` is a fault, one with `?` a warning, then place, key and
//! message; `→` says how to mend it.

use crate::folder;
use evidence::{Faults, Severity};
use std::collections::BTreeMap;
use std::fmt::Write as _;
use wording::{Language, Wording};

const BASES: [&str; 3] = ["machine", "chart", "job"];

/// Faults as a user reads them.
fn said(faults: &Faults) -> String {
    let wording = Wording::new(Language::English, quantity::UnitSystem::Si);
    let mut out = String::new();
    for fault in &faults.list {
        let mark = if fault.severity == Severity::Error { "!" } else { "?" };
        let shown = wording.fault(fault);
        writeln!(out, "{mark} {}: {}", shown.place, shown.title.trim_end()).unwrap();
        if let Some(hint) = shown.hint {
            writeln!(out, "  → {hint}").unwrap();
        }
    }
    out
}

fn text<'t>(case: &'t toml::Table, key: &str) -> Option<&'t str> {
    case.get(key).and_then(toml::Value::as_str)
}

/// The spoilt text.
fn spoilt(name: &str, case: &toml::Table, base: &str) -> String {
    if let Some(whole) = text(case, "whole") {
        return whole.to_owned();
    }
    let mut out = base.to_owned();
    let changes = case.get("change").and_then(toml::Value::as_array).cloned().unwrap_or_default();
    assert!(!changes.is_empty() || case.contains_key("append"), "{name}: nothing is spoilt");
    for change in changes {
        let change = change.as_table().unwrap().clone();
        let (from, to) = (text(&change, "from").unwrap(), text(&change, "to").unwrap());
        assert!(out.contains(from), "{name}: `{from}` does not stand in the file");
        out = out.replacen(from, to, 1);
    }
    out + text(case, "append").unwrap_or_default()
}

fn faults(name: &str, case: &toml::Table) -> Faults {
    let base = text(case, "base").unwrap();
    assert!(BASES.contains(&base), "{name}: base is one of {BASES:?}");
    if base == "job" {
        let mut demo = folder::demo();
        let file = text(case, "file").unwrap_or(jobfile::JOB_FILE);
        let changed = spoilt(name, case, &folder::text(&demo, file));
        demo.insert(file.to_owned(), changed.into_bytes());
        return match jobfile::read_job(&demo) {
            Ok((_, warnings)) => warnings,
            Err(faults) => faults,
        };
    }
    let whole = if base == "chart" { crate::faults_machine::with_chart() } else { crate::faults_machine::plain() };
    match jobfile::read_machine("machine.toml", spoilt(name, case, &whole).as_bytes()) {
        Ok((_, warnings)) => warnings,
        Err(faults) => faults,
    }
}

fn cases() -> BTreeMap<String, String> {
    let folder = folder::project().join("crates/jobfile/tests/broken");
    let files = std::fs::read_dir(&folder).unwrap().map(|entry| entry.unwrap().path());
    files
        .filter(|path| path.extension().is_some_and(|e| e == "toml"))
        .map(|path| (path.file_name().unwrap().to_string_lossy().into_owned(), std::fs::read_to_string(&path).unwrap()))
        .collect()
}

#[test]
fn each_broken_file_is_told_what_is_wrong_where_and_how_to_mend_it() {
    let write = std::env::var_os("COUNTERPOISE_WRITE_BROKEN").is_some();
    let mut differing = Vec::new();
    for (name, text_of_case) in cases() {
        let case: toml::Table = text_of_case.parse().unwrap_or_else(|e| panic!("{name}: {e}"));
        assert!(text(&case, "title").is_some_and(|t| !t.is_empty()), "{name}: no title");
        let faults = faults(&name, &case);
        assert!(!faults.list.is_empty(), "{name}: nothing is said of it");
        for fault in &faults.list {
            let place = &fault.place;
            assert!(!place.file.is_empty() && (place.line.is_some() || place.key.is_some()), "{name}: {fault:?}");
        }
        let now = said(&faults);
        if text(&case, "said") == Some(now.as_str()) {
            continue;
        }
        if write {
            let without = match text_of_case.split_once("said = '''\n") {
                Some((before, after)) => before.to_owned() + after.split_once("'''\n").map_or("", |(_, rest)| rest),
                None => text_of_case,
            };
            // Keys of the case itself stand before its list of changes.
            let (top, changes) = without.split_at(without.find("[[change]]").unwrap_or(without.len()));
            let written = format!("{}\nsaid = '''\n{now}'''\n\n{changes}", top.trim_end());
            let path = folder::project().join("crates/jobfile/tests/broken").join(&name);
            std::fs::write(path, format!("{}\n", written.trim_end())).unwrap();
        } else {
            differing.push(format!("{name}:\n{now}"));
        }
    }
    assert!(differing.is_empty(), "what is said has changed:\n{}", differing.join("\n"));
}
