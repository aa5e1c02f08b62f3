//! Every file that git takes: no path of a machine, no unfinished work, no registry's host.

use super::Breach;
use std::path::Path;

/// Paths that belong to the machine this runs on.
pub(super) struct Machine {
    paths: Vec<String>,
}

impl Machine {
    /// The project's own folder, the reference data beside it, and the user's home.
    pub(super) fn here(root: &Path) -> Self {
        let beside = root.parent().map(|p| p.join("shared"));
        let home = std::env::var_os("HOME").map(std::path::PathBuf::from);
        let all = [Some(root.to_path_buf()), beside, home].into_iter().flatten();
        // A path of one part, such as `/`, would be found everywhere.
        Self {
            paths: all.filter(|p| p.components().count() > 1).filter_map(|p| Some(p.to_str()?.to_owned())).collect(),
        }
    }
}

/// Folders that begin paths of somebody's machine on any machine. Written in halves: this file is
/// looked at too.
const HOMES: [&str; 4] = [concat!("/ho", "me/"), concat!("/ro", "ot/"), concat!("/Us", "ers/"), concat!("/t", "mp/")];

/// Marks of unfinished or silenced work.
const MARKS: [&str; 5] = [
    concat!("TO", "DO"),
    concat!("FIX", "ME"),
    concat!("to", "do!("),
    concat!("unimple", "mented!("),
    concat!("#[ig", "nore"),
];

/// The same in tests of the web client.
const SKIPPED: [&str; 9] = [
    "test.skip(",
    "test.only(",
    "test.fixme(",
    "it.skip(",
    "it.only(",
    "describe.skip(",
    "describe.only(",
    "test.todo(",
    "it.todo(",
];

pub(super) fn breaches(path: &str, text: &str, machine: &Machine) -> Vec<Breach> {
    let mut out = Vec::new();
    let locks = matches!(file_name(path), "package-lock.json" | "Cargo.lock");
    let client = path.starts_with("web/");
    for (i, line) in text.lines().enumerate() {
        let mut breach = |what: String| out.push(Breach::at(path, Some(i + 1), what));
        for known in &machine.paths {
            if standing_alone(line, known) {
                breach(format!("`{known}` is a path of this machine"));
            }
        }
        for home in HOMES {
            if begins_path(line, home) {
                breach(format!("a path under `{home}` is a path of somebody's machine"));
            }
        }
        // Checksums in locks spell anything.
        if locks {
            if line.contains("\"resolved\": \"http") {
                breach(
                    "names the host it was fetched from; set omit-lockfile-registry-resolved=true in web/.npmrc".into(),
                );
            }
            continue;
        }
        for mark in MARKS {
            if standing_alone(line, mark) {
                breach(format!("`{mark}`: finish it or leave it out"));
            }
        }
        if client && SKIPPED.iter().any(|s| line.contains(s)) {
            breach("a test that is left out, or that leaves out the others".into());
        }
    }
    if names_registry(path, text) {
        out.push(Breach::at(path, None, "names a registry; that belongs to the machine, not to the project"));
    }
    out
}

fn file_name(path: &str) -> &str {
    path.rsplit('/').next().unwrap_or(path)
}

/// Settings that would send everybody's cargo or npm to one registry.
fn names_registry(path: &str, text: &str) -> bool {
    match (path, file_name(path)) {
        (_, ".npmrc") => text.lines().any(|l| l.contains("registry=") || l.contains("registry =")),
        (".cargo/config.toml", _) => {
            text.lines().any(|l| ["[source", "[registr", "registry"].iter().any(|s| l.trim_start().starts_with(s)))
        }
        _ => false,
    }
}

/// True if the line has `word` with no letter, digit or name-like sign on either side, where the
/// word itself ends in one.
fn standing_alone(line: &str, word: &str) -> bool {
    let joins = |c: Option<char>| c.is_some_and(|c| c.is_alphanumeric() || matches!(c, '_' | '-' | '.'));
    let open = |c: Option<char>| !c.is_some_and(|c| c.is_alphanumeric() || matches!(c, '_' | '-' | '.'));
    line.match_indices(word).any(|(at, _)| {
        let (before, after) = (line[..at].chars().next_back(), &line[at + word.len()..]);
        let ends_in_letter = word.chars().next_back().is_some_and(char::is_alphanumeric);
        // A full stop that ends a sentence joins nothing.
        let after_joins = joins(after.chars().next()) && !after.starts_with(". ") && after != ".";
        open(before) && !(ends_in_letter && after_joins)
    })
}

/// True if the line has a path that begins with `root`: not in the middle of a longer one.
fn begins_path(line: &str, root: &str) -> bool {
    line.match_indices(root).any(|(at, _)| {
        let before = line[..at].chars().next_back();
        let after = line[at + root.len()..].chars().next();
        !before.is_some_and(|c| c.is_alphanumeric() || matches!(c, '_' | '-' | '.' | '/' | '}' | ')' | '*'))
            && after.is_some_and(|c| c.is_alphanumeric() || matches!(c, '_' | '.'))
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    fn machine() -> Machine {
        Machine { paths: vec!["/build/main".into(), "/build/shared".into(), "/who".into()] }
    }
    fn count(path: &str, text: &str) -> usize {
        breaches(path, text, &machine()).len()
    }

    #[test]
    fn paths_of_the_machine_are_found() {
        for line in ["see /build/main/crates", "x=\"/build/shared\"", "cd /build/main.", "in /who/notes"] {
            assert_eq!(count("docs/a.md", line), 1, "{line}");
        }
        for home in HOMES {
            assert_eq!(count("a.rs", &format!("read(\"{home}ann/x\")")), 1, "{home}");
        }
    }

    #[test]
    fn paths_that_only_look_alike_pass() {
        for line in
            ["src=\"/build/main.ts\"", "../build/main", "web/build/main", "out/build/shared", "/whose", "${x}/tmp/a"]
        {
            assert_eq!(count("web/index.html", line), 0, "{line}");
        }
        let path = concat!("crates/ho", "me/src");
        assert_eq!(count("a.md", path), 0);
    }

    #[test]
    fn unfinished_work_is_found() {
        for mark in MARKS {
            assert_eq!(count("a.rs", &format!("  // {mark} later")), 1, "{mark}");
        }
        assert_eq!(count("web/tests/a.ts", &format!("test.{}('x', f)", "only")), 1);
        assert_eq!(count("a.ftl", "title = todo lo que falta, método"), 0, "Spanish for everything");
        assert_eq!(count("web/src/a.ts", "list.skip(1)"), 0);
    }

    #[test]
    fn locks_and_settings_name_no_registry() {
        let line = "      \"resolved\": \"https://packages.example/x.tgz\",";
        assert_eq!(count("web/package-lock.json", line), 1);
        assert_eq!(count("web/package-lock.json", &format!("\"integrity\": \"sha512-+{}/\"", MARKS[0])), 0);
        assert_eq!(count("web/.npmrc", "registry=https://packages.example"), 1);
        assert_eq!(count("web/.npmrc", "omit-lockfile-registry-resolved=true"), 0);
        assert_eq!(count(".cargo/config.toml", "[source.crates-io]\nreplace-with = \"x\""), 1);
        assert_eq!(count(".cargo/config.toml", "[alias]\nxtask = \"run\""), 0);
    }
}
