//! The inputs, grouped by file and by what they belong to: many values in little room.

use crate::breakable::breakable;
use evidence::Certainty;
use planning::InputLine;
use serde::Serialize;
use wording::{Wording, ui};

/// A file with what was read in it.
#[derive(Serialize)]
pub(crate) struct InputFile {
    file: String,
    rows: Vec<InputRow>,
}

/// Values of one thing that are equally sure.
#[derive(Serialize)]
struct InputRow {
    name: String,
    values: Vec<InputValue>,
    certainty: String,
    assumed: bool,
    long: bool,
}

/// A value as written, with its line.
#[derive(Serialize)]
struct InputValue {
    name: String,
    value: String,
    line: String,
}

/// A thing, how sure its values are, and the values.
type Group = (String, Certainty, Vec<InputValue>);

/// Every input, in the plan's order within its file and thing.
pub(crate) fn inputs(lines: &[InputLine], wording: Wording) -> Vec<InputFile> {
    let mut files: Vec<(String, Vec<Group>)> = Vec::new();
    for input in lines {
        let (file, line) = place(&input.place);
        let (thing, name) = split(&input.name);
        let value = InputValue { name: breakable(name), value: breakable(&plain(&input.value)), line: line.to_owned() };
        let at = files.iter().position(|f| f.0 == file).unwrap_or_else(|| {
            files.push((file.to_owned(), Vec::new()));
            files.len() - 1
        });
        let rows = &mut files[at].1;
        if let Some(row) = rows.iter_mut().find(|r| r.0 == thing && r.1 == input.certainty) {
            row.2.push(value);
        } else {
            // Beside what belongs to the same thing.
            let after = rows.iter().rposition(|r| r.0 == thing).map_or(rows.len(), |i| i + 1);
            rows.insert(after, (thing.to_owned(), input.certainty, vec![value]));
        }
    }
    files
        .into_iter()
        .map(|(file, rows)| InputFile {
            file: breakable(&headed(&file, rows.iter().any(|r| r.2.iter().any(|v| !v.line.is_empty())), wording)),
            rows: rows
                .into_iter()
                .map(|(name, certainty, values)| InputRow {
                    long: name.len() + values.iter().map(|v| v.name.len() + v.value.len()).sum::<usize>() > 400,
                    name: breakable(&name),
                    values,
                    certainty: wording.certainty(certainty),
                    assumed: certainty == Certainty::Estimated,
                })
                .collect(),
        })
        .collect()
}

/// A file's heading; with line numbers it says what they are.
fn headed(file: &str, lines: bool, wording: Wording) -> String {
    if lines { wording.render(&ui::PLACE_LINE.with("file", file).with("line", ":n")) } else { file.to_owned() }
}

/// File and line of a place ("job.toml:19 ground[1].accuracy", "job.toml, load[0]").
fn place(place: &str) -> (&str, &str) {
    let head = place.split([' ', ',']).next().unwrap_or(place);
    match head.rsplit_once(':') {
        Some((file, line)) if !line.is_empty() && line.bytes().all(|b| b.is_ascii_digit()) => (file, line),
        _ => (head, ""),
    }
}

/// "load[tiles].size.depth" is of "load[tiles]"; a name without parts is its own.
fn split(name: &str) -> (&str, &str) {
    // A part of a list within keeps its number: "load[blocks].part[1]".
    let mut depth = 0_usize;
    let mut cut = None;
    for (i, c) in name.char_indices() {
        match c {
            '[' => depth += 1,
            ']' => {
                depth = depth.saturating_sub(1);
                cut = Some(i + 1);
            }
            ' ' if depth == 0 => return ("", name),
            _ => {}
        }
    }
    let cut = cut.or_else(|| name.find('.'));
    match cut.and_then(|c| name.get(c..).and_then(|rest| rest.strip_prefix('.')).map(|rest| (&name[..c], rest))) {
        Some(parts) => parts,
        None => ("", name),
    }
}

/// A list without its quotation marks.
fn plain(value: &str) -> String {
    if value.starts_with('[') { value.replace('"', "") } else { value.to_owned() }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn names_and_places_come_apart() {
        assert_eq!(split("load[tiles].size.depth"), ("load[tiles]", "size.depth"));
        assert_eq!(split("load[blocks].part[1].centre"), ("load[blocks].part[1]", "centre"));
        assert_eq!(split("policy.trial"), ("policy", "trial"));
        assert_eq!(split("wind at which to stop"), ("", "wind at which to stop"));
        assert_eq!(split("machine"), ("", "machine"));
        assert_eq!(split("a[é].ü"), ("a[é]", "ü"));
        assert_eq!(place("job.toml:19 ground[1].accuracy"), ("job.toml", "19"));
        assert_eq!(place("job.toml, load[0]"), ("job.toml", ""));
        assert_eq!(place(""), ("", ""));
    }

    #[test]
    fn values_of_a_thing_share_a_row_unless_one_is_less_sure() {
        let line = |name: &str, certainty| InputLine {
            name: name.into(),
            place: format!("job.toml:7 {name}"),
            value: "[\"1 m\", \"2 m\"]".into(),
            certainty,
        };
        let lines = [
            line("load[a].mass", Certainty::Ticket),
            line("load[a].size", Certainty::Ticket),
            line("load[a].left_out", Certainty::Estimated),
        ];
        let files = inputs(&lines, Wording::default());
        assert_eq!(files.len(), 1);
        assert_eq!(files[0].rows.iter().map(|r| r.values.len()).collect::<Vec<_>>(), [2, 1]);
        assert!(files[0].rows[1].assumed && !files[0].rows[0].assumed);
        assert_eq!(files[0].rows[0].values[0].value, "[1 m, 2 m]");
    }
}
