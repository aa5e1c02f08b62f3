//! `[chart.table]`: capacities by boom angle and extension, or by height and reach.

use crate::chart_report::Places;
use crate::chart_zones::ZoneRead;
use crate::limits::{BOOM, CHART, MASS};
use crate::node::{Node, Value};
use crate::quantity_value::Bound::{self, UpTo, Within, ZeroTo};
use crate::schema_notes::Kind;
use crate::table::Reader;
use crate::text;
use evidence::Certainty;
use geometry::DVec2;
use machine::{
    Attachment, ChartTable, DRAWING, Datum, Machine, Sector, TableAxes, TableLine, table_areas, table_zones,
};
use quantity::{Dimension as D, metres};

/// Rows or columns at most.
const LARGEST: usize = 60;
/// Words for an entry that the chart leaves empty.
const NOTHING: [&str; 4] = ["-", "–", "—", "not permitted"];
/// Neighbouring lines nearer than this are one line printed twice, m, and rad (0.3°).
const NEAREST: (f64, f64) = (0.02, 0.005);

/// A table as read, not yet brought to (reach, height).
pub(crate) struct Grid {
    rows: Vec<TableLine>,
    columns: Vec<TableLine>,
    entries: Vec<Vec<Entry>>,
    by_angle: bool,
    span: (usize, usize),
}

#[derive(Clone, Copy)]
struct Entry {
    kg: Option<f64>,
    span: (usize, usize),
}

/// Reads the table; `unit` is the chart's unit of plain lengths.
pub(crate) fn grid(t: &Reader<'_>, unit: Option<&str>) -> Option<Grid> {
    let angle_unit = t.unit_of("angle_unit", D::Angle, "°");
    let capacity_unit = t.unit_of("capacity_unit", D::Mass, "kg");
    let by_angle = t.has("angles") || t.has("extensions");
    let right = std::f64::consts::FRAC_PI_2;
    let (rows, columns) = if by_angle {
        for key in ["reaches", "heights"].into_iter().filter(|key| t.has(key)) {
            t.fault(key, text::EITHER_OR.with("first", key).with("second", "angles"), None);
        }
        (
            axis(t, "angles", "angles = [\"0°\", \"20°\"]", D::Angle, Within(-right, right), angle_unit.as_deref()),
            axis(t, "extensions", "extensions = [\"0 m\", \"2 m\"]", D::Length, ZeroTo(BOOM), unit),
        )
    } else {
        let bound = Within(-CHART, CHART);
        (
            axis(t, "heights", "heights = [\"0 m\", \"2 m\"]", D::Length, bound, unit),
            axis(t, "reaches", "reaches = [\"1 m\", \"2 m\"]", D::Length, bound, unit),
        )
    };
    t.expects("capacity", || Kind::Rows);
    t.expects("capacity", || Kind::Words(NOTHING.map(str::to_owned).to_vec()));
    let node = t.required("capacity", "capacity = [[\"2000 kg\", \"1500 kg\"], [\"1800 kg\", \"-\"]]");
    let (shape, read) = match (&rows, &columns) {
        (Some(r), Some(c)) => (Some((r.lines.len(), c.lines.len())), node),
        _ => (None, node),
    };
    let entries = read.and_then(|n| matrix(t, n, shape, capacity_unit.as_deref()));
    t.done();
    let (rows, columns, mut entries) = (rows?, columns?, entries?);
    if rows.falls {
        entries.reverse();
    }
    if columns.falls {
        for row in &mut entries {
            row.reverse();
        }
    }
    let node = node?;
    let certainty: Certainty = t.sourced(node, "capacity")?;
    let value = format!("{} × {}", rows.lines.len(), columns.lines.len());
    t.document().record_as(t.label_of("capacity"), &t.path_of("capacity"), node.span, value, certainty);
    Some(Grid { rows: rows.lines, columns: columns.lines, entries, by_angle, span: node.span })
}

/// Lines of a table, rising; `falls` where they are printed the other way round.
struct Axis {
    lines: Vec<TableLine>,
    falls: bool,
}

fn axis(t: &Reader<'_>, key: &str, example: &str, dimension: D, bound: Bound, unit: Option<&str>) -> Option<Axis> {
    let node = t.required(key, example)?;
    let items = t.as_list(node, key)?;
    if !counts(t, node, key, items.len()) {
        return None;
    }
    // The missing unit of plain numbers is said once a list.
    let unitless = items.iter().find(|i| unit.is_none() && matches!(i.value, Value::Number(_)));
    if let Some(item) = unitless {
        t.as_quantity(item, key, dimension, bound, None);
        return None;
    }
    let line = |item: &Node| match &item.value {
        Value::Number(n) => format!("{n} {}", unit.unwrap_or_default()),
        Value::Text(written) => written.trim().to_owned(),
        _ => String::new(),
    };
    let read: Vec<Option<TableLine>> = items
        .iter()
        .map(|item| {
            let at = t.as_quantity(item, key, dimension, bound, unit)?;
            Some(TableLine { at, label: line(item) })
        })
        .collect();
    let mut lines: Vec<TableLine> = read.into_iter().collect::<Option<_>>()?;
    let falls = lines[0].at > lines[1].at;
    if falls {
        lines.reverse();
    }
    let nearest = if dimension == D::Angle { NEAREST.1 } else { NEAREST.0 };
    if !lines.windows(2).all(|w| w[1].at - w[0].at >= nearest) {
        t.fault_at(node, key, text::TABLE_ORDER.with("key", key), None);
        return None;
    }
    Some(Axis { lines, falls })
}

/// A table has at least two lines each way, and not more than anybody prints.
fn counts(t: &Reader<'_>, node: &Node, key: &str, found: usize) -> bool {
    let message = if found < 2 {
        text::LIST_TOO_SHORT.with("key", key).with("least", 2_usize).with("found", found)
    } else if found > LARGEST {
        text::LIST_TOO_LONG.with("key", key).with("most", LARGEST).with("found", found)
    } else {
        return true;
    };
    t.fault_at(node, key, message, None);
    false
}

fn matrix(t: &Reader<'_>, node: &Node, shape: Option<(usize, usize)>, unit: Option<&str>) -> Option<Vec<Vec<Entry>>> {
    let rows = t.as_list(node, "capacity")?;
    let wrong = |node: &Node, expected: usize, found: usize| {
        let message = text::LIST_LENGTH.with("key", "capacity").with("expected", expected).with("found", found);
        t.fault_at(node, "capacity", message, None);
    };
    let (expected_rows, expected_columns) = shape?;
    if rows.len() != expected_rows {
        wrong(node, expected_rows, rows.len());
        return None;
    }
    let nothing = |item: &Node| matches!(&item.value, Value::Text(t) if NOTHING.contains(&t.trim()));
    let plain = |item: &&Node| unit.is_none() && matches!(item.value, Value::Number(_));
    if let Some(item) = rows.iter().find_map(|row| match &row.value {
        Value::List(items) => items.iter().find(plain),
        _ => None,
    }) {
        t.as_quantity(item, "capacity", D::Mass, UpTo(MASS), None);
        return None;
    }
    let row = |row: &Node| {
        let items = t.as_list(row, "capacity")?;
        if items.len() != expected_columns {
            wrong(row, expected_columns, items.len());
            return None;
        }
        let entry = |item: &Node| {
            let kg =
                if nothing(item) { None } else { Some(t.as_quantity(item, "capacity", D::Mass, UpTo(MASS), unit)?) };
            Some(Entry { kg, span: item.span })
        };
        // All entries are read before one that is wrong ends the row.
        items.iter().map(entry).collect::<Vec<_>>().into_iter().collect::<Option<Vec<Entry>>>()
    };
    rows.iter().map(row).collect::<Vec<_>>().into_iter().collect()
}

impl Grid {
    /// Its zones in the chart's (reach, height), and the outlines of what it leaves empty.
    pub(crate) fn zones(
        self,
        t: &Reader<'_>,
        machine: &Machine,
        attachment: &Attachment,
        datum: &Datum,
        load_centre: f64,
        load_centre_height: Option<f64>,
    ) -> Option<(Vec<ZoneRead>, Vec<Vec<DVec2>>)> {
        let axes = if self.by_angle {
            self.within_boom(t, machine);
            let sector = Sector::new(machine, attachment, datum, load_centre, load_centre_height);
            if !sector.centre.is_finite() {
                return None;
            }
            TableAxes::AngleExtension(sector)
        } else {
            TableAxes::HeightReach
        };
        let capacity_kg = self.entries.iter().map(|row| row.iter().map(|e| e.kg).collect()).collect();
        let table = ChartTable { rows: self.rows, columns: self.columns, capacity_kg, axes };
        let zones = table_zones(&table);
        if zones.is_empty() {
            t.document().error(self.span, Some(&t.path_of("table")), text::TABLE_EMPTY.message(), None);
            return None;
        }
        let place = |(row, column): (usize, usize)| {
            let span = self.entries[row][column].span;
            Places { outline: span, capacity: span }
        };
        Some((zones.into_iter().map(|z| (z.zone, place(z.entry))).collect(), table_areas(&table)))
    }

    /// Extensions that the boom does not have are a slip of the unit, or another machine's chart.
    fn within_boom(&self, t: &Reader<'_>, machine: &Machine) {
        let most = machine.boom.extension_max.value;
        if let Some(last) = self.columns.last().filter(|c| c.at > most + DRAWING) {
            let message = text::TABLE_BEYOND_BOOM.with("extension", metres(last.at)).with("most", metres(most));
            t.document().error(self.span, Some(&t.path_of("table.extensions")), message, None);
        }
    }
}
