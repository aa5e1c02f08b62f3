//! Level points from comma-separated text.

use crate::cloud::refuse_empty_window;
use crate::crs::{CrsStatements, is_on_earth, is_plausible};
use crate::kind::{self, FileKind};
use crate::level_columns::{self, Layout};
use crate::notes::{Notes, Refused};
use crate::options::{GroundOptions, LONGEST_EDGE_LEVELS};
use crate::placement::{Placement, Settled};
use crate::reading::Facts;
use crate::text;
use crate::units::UnitStatement;
use geometry::{DVec2, DVec3};
use std::collections::BTreeMap;

/// Rows that are reported one by one; the rest as a number.
const MOST_ROWS_REPORTED: usize = 100;

/// Most rows, a day's work of a hundred surveyors.
const MOST_ROWS: usize = 1_000_000;

/// Heights at one place that differ by no more than this are one point measured twice, m.
const SAME_HEIGHT: f64 = 0.01;

struct Row {
    line: u64,
    name: String,
    /// As in the file.
    at: DVec3,
}

/// Reads every row; all bad rows are reported together.
pub(crate) fn points(
    bytes: &[u8],
    options: &GroundOptions,
    notes: &mut Notes<'_>,
) -> Result<(Vec<DVec3>, Facts), Refused> {
    if kind::is_utf16(bytes) {
        return Err(notes.refuse("survey::text-encoding", text::TEXT_UTF16, text::DO_SAVE_UTF8));
    }
    let delimiter = delimiter(bytes);
    let mut reader = csv::ReaderBuilder::new()
        .has_headers(false)
        .flexible(true)
        .delimiter(delimiter)
        .trim(csv::Trim::All)
        .from_reader(bytes.strip_prefix(b"\xEF\xBB\xBF").unwrap_or(bytes));
    let mut record = csv::ByteRecord::new();
    let mut layout: Option<Layout> = None;
    let mut rows = Vec::new();
    let mut bad = 0;
    loop {
        match reader.read_byte_record(&mut record) {
            Ok(true) => {}
            Ok(false) => break,
            Err(error) => {
                let message = text::DECODE_FAILED.with("detail", error.to_string());
                return Err(notes.refuse("survey::damaged", message, text::DO_COPY_AGAIN));
            }
        }
        let line = record.position().map_or(0, csv::Position::line);
        let fields: Vec<String> = record.iter().map(|f| String::from_utf8_lossy(f).trim().to_owned()).collect();
        if fields.iter().all(String::is_empty) {
            continue;
        }
        let layout = if let Some(layout) = &layout {
            layout
        } else {
            let found = level_columns::find(&fields, options.columns.as_ref(), notes)?;
            let is_header = found.has_header;
            let found = layout.insert(found);
            if is_header {
                continue;
            }
            found
        };
        match row(&fields, layout, delimiter, line) {
            Ok(row) if rows.len() < MOST_ROWS => rows.push(row),
            Ok(_) => {
                let message = text::TOO_MANY_POINTS.with("points", rows.len() + 1).with("most", MOST_ROWS);
                return Err(notes.refuse("survey::too-many-points", message, text::DO_CUT_OUT));
            }
            Err(problem) => {
                bad += 1;
                if bad <= MOST_ROWS_REPORTED {
                    notes.refuse_line("survey::bad-row", line, problem, text::DO_MEND_ROW);
                }
            }
        }
    }
    if bad > MOST_ROWS_REPORTED {
        let message = text::MORE_BAD_ROWS.with("count", bad - MOST_ROWS_REPORTED);
        notes.refuse("survey::bad-row", message, text::DO_MEND_ROW);
    }
    let Some(layout) = layout else {
        return Err(notes.refuse("survey::no-points", text::NO_POINTS, text::DO_EXPORT_AGAIN));
    };
    finish(&rows, &layout, options, notes)
}

/// What parts the fields: whichever of tab, semicolon and comma the first line has, in this order,
/// since a decimal comma stands beside the other two.
fn delimiter(bytes: &[u8]) -> u8 {
    let first = bytes.split(|&b| b == b'\n').find(|l| !l.trim_ascii().is_empty()).unwrap_or_default();
    [b'\t', b';'].into_iter().find(|d| first.contains(d)).unwrap_or(b',')
}

fn row(fields: &[String], layout: &Layout, delimiter: u8, line: u64) -> Result<Row, evidence::Message> {
    let number = |column: usize, what: evidence::TextId| {
        let field = fields.get(column).map_or("", String::as_str);
        if field.is_empty() {
            return Err(text::ROW_FIELD_EMPTY.with("column", what).with("place", column + 1));
        }
        let plain = if delimiter == b',' { field.to_owned() } else { field.replacen(',', ".", 1) };
        match plain.parse::<f64>() {
            Ok(value) if value.is_finite() => Ok(value),
            _ => Err(text::ROW_NOT_A_NUMBER.with("column", what).with("value", field)),
        }
    };
    let at = DVec3::new(
        number(layout.east, text::COLUMN_EAST)?,
        number(layout.north, text::COLUMN_NORTH)?,
        number(layout.height, text::COLUMN_HEIGHT)?,
    );
    let name = layout.point.and_then(|c| fields.get(c)).cloned().unwrap_or_default();
    Ok(Row { line, name, at })
}

fn finish(
    rows: &[Row],
    layout: &Layout,
    options: &GroundOptions,
    notes: &mut Notes<'_>,
) -> Result<(Vec<DVec3>, Facts), Refused> {
    const PLACE: &str = "CSV";
    let statement = |u: &crate::LengthUnit| UnitStatement { factor: u.metres(), place: PLACE };
    let crs = CrsStatements {
        horizontal: layout.plan_units.iter().map(statement).collect(),
        vertical: layout.height_unit.iter().map(statement).collect(),
        ..CrsStatements::default()
    };
    let (low, high) = corners(rows.iter().map(|r| r.at));
    // One or two points of a list are too few to tell degrees by, and too few for a surface.
    let told = if rows.len() >= 3 { (low.truncate(), high.truncate()) } else { (DVec2::ZERO, DVec2::ZERO) };
    let Settled { placement, units, crs } = Placement::settle(&crs, told, options, notes)?;
    let mut points: Vec<(DVec3, u64)> = Vec::with_capacity(rows.len());
    for row in rows {
        let at = placement.point(row.at);
        if !is_on_earth(at) || !is_plausible(at.z) {
            let message = text::ROW_IMPLAUSIBLE.with("height", quantity::metres(at.z));
            notes.refuse_line("survey::bad-row", row.line, message, text::DO_MEND_ROW);
        } else {
            points.push((at, row.line));
        }
    }
    check_names(rows, notes);
    drop_repeated(&mut points, notes);
    if notes.any_error() {
        return Err(Refused);
    }
    if points.len() < 3 {
        let message = text::TOO_FEW_POINTS.with("points", points.len());
        return Err(notes.refuse("survey::too-few-points", message, text::DO_MORE_POINTS));
    }
    let (min, max) = corners(points.iter().map(|p| p.0));
    let facts = Facts {
        kind: FileKind::Levels,
        points: rows.len() as u64,
        ground_points: points.len() as u64,
        min: min.to_array(),
        max: max.to_array(),
        units,
        crs,
        unknown_cells: 0,
        cell: None,
        classes: BTreeMap::new(),
        withheld: 0,
    };
    let window = options.window.map(|w| w.grown(options.longest_edge.unwrap_or(LONGEST_EDGE_LEVELS)));
    let kept: Vec<DVec3> =
        points.into_iter().map(|p| p.0).filter(|p| window.is_none_or(|w| w.contains(p.truncate()))).collect();
    refuse_empty_window(&kept, &facts, notes)?;
    Ok((kept, facts))
}

fn corners(points: impl Iterator<Item = DVec3>) -> (DVec3, DVec3) {
    points.fold((DVec3::INFINITY, DVec3::NEG_INFINITY), |(l, h), p| (l.min(p), h.max(p)))
}

/// A point name that stands twice is often a row pasted twice, or two surveys mixed.
fn check_names(rows: &[Row], notes: &mut Notes<'_>) {
    let mut seen = BTreeMap::new();
    let mut reported = 0;
    for row in rows.iter().filter(|r| !r.name.is_empty()) {
        if let Some(first) = seen.insert(row.name.as_str(), row.line) {
            reported += 1;
            if reported <= MOST_ROWS_REPORTED {
                let message = text::NAME_TWICE.with("name", row.name.as_str()).with("first", line(first));
                notes.warn_line("survey::name-twice", row.line, message, text::DO_MEND_ROW);
            }
        }
    }
}

/// The same place with the same height is kept once; with two heights it is an error.
pub(crate) fn drop_repeated(points: &mut Vec<(DVec3, u64)>, notes: &mut Notes<'_>) {
    let mut order: Vec<usize> = (0..points.len()).collect();
    let plan = |i: usize, points: &[(DVec3, u64)]| -> DVec2 { points[i].0.truncate() };
    order.sort_by(|&a, &b| {
        let (p, q) = (plan(a, points), plan(b, points));
        p.x.total_cmp(&q.x).then(p.y.total_cmp(&q.y)).then(a.cmp(&b))
    });
    let mut dropped = vec![false; points.len()];
    let mut again = 0_usize;
    let mut apart = 0_usize;
    let mut first = 0;
    for k in 1..order.len() {
        if plan(order[k], points) != plan(order[first], points) {
            first = k;
            continue;
        }
        let ((a, line_a), (b, line_b)) = (points[order[first]], points[order[k]]);
        dropped[order[k]] = true;
        if (a.z - b.z).abs() <= SAME_HEIGHT {
            again += 1;
        } else {
            apart += 1;
            if apart <= MOST_ROWS_REPORTED {
                let message = text::TWO_HEIGHTS
                    .with("first", line(line_a))
                    .with("one", quantity::metres(a.z))
                    .with("other", quantity::metres(b.z));
                notes.refuse_line("survey::two-heights", line_b, message, text::DO_MEND_ROW);
            }
        }
    }
    if again > 0 {
        notes.warn("survey::repeated-rows", text::ROWS_REPEATED.with("count", again), text::DO_MEND_ROW);
    }
    let mut keep = dropped.iter().map(|d| !d);
    points.retain(|_| keep.next().unwrap_or(true));
}

fn line(n: u64) -> i64 {
    i64::try_from(n).unwrap_or(i64::MAX)
}
