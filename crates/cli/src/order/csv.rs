//! An order as a list for other programs: commas, decimal points, times of the day; one row a lift, the ones without a
//! place behind the others.

use super::clock;
use planning::Job;
use planning::order::JobOrder;

/// Names of the columns, with units.
const HEAD: [&str; 13] = [
    "place",
    "lift",
    "name",
    "machine",
    "start",
    "end_likely",
    "end_latest",
    "way_min",
    "landing",
    "lies (kg)",
    "may_lie (kg)",
    "left_out",
    "conditions",
];

pub(super) fn list(job: &Job, order: &JobOrder) -> String {
    let mut out = row(&HEAD.map(str::to_owned));
    let name = |id: &str| job.lifts.iter().find(|l| l.id == id).map_or_else(String::new, |l| l.name.clone());
    let number = |value: f64| format!("{value:.1}");
    for (i, lift) in order.lifts.iter().enumerate() {
        let step = order.landings.iter().find(|s| s.lift == lift.lift);
        out += &row(&[
            (i + 1).to_string(),
            lift.lift.clone(),
            name(&lift.lift),
            lift.machine.clone(),
            time(lift.start_min),
            time(lift.end_min.nominal),
            time(lift.end_min.high),
            number(lift.way_min.high),
            step.map_or_else(String::new, |s| s.landing.clone()),
            step.map_or_else(String::new, |s| number(s.lies_kg)),
            step.and_then(|s| s.may_lie_kg).map_or_else(String::new, number),
            String::new(),
            ids(&lift.conditions),
        ]);
    }
    for left in &order.left_out {
        let mut cells = [const { String::new() }; 13];
        cells[1].clone_from(&left.lift);
        cells[2] = name(&left.lift);
        // Kinds have one name in every language.
        cells[11] =
            serde_json::to_value(left.kind).ok().and_then(|k| k.as_str().map(str::to_owned)).unwrap_or_default();
        out += &row(&cells);
    }
    out
}

/// A time of the day; beyond midnight it is said so.
fn time(minutes: f64) -> String {
    let (time, next_day) = clock(minutes);
    if next_day { format!("{time} +1") } else { time }
}

fn ids(messages: &[evidence::Message]) -> String {
    messages.iter().map(|m| m.id.as_ref()).collect::<Vec<_>>().join(" ")
}

/// A row; a cell that a reader could misread stands in quotes (RFC 4180, section 2).
fn row(cells: &[String]) -> String {
    let quoted = |cell: &String| {
        if cell.contains([',', '"', '\n', '\r', ';']) {
            format!("\"{}\"", cell.replace('"', "\"\""))
        } else {
            cell.clone()
        }
    };
    cells.iter().map(quoted).collect::<Vec<_>>().join(",") + "\r\n"
}
