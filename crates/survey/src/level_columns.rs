//! Which column of a level file holds what.

use crate::notes::{Notes, Refused};
use crate::text;
use crate::units::LengthUnit;

/// Columns as the job states them.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct LevelColumns {
    /// Point name or number.
    pub point: Option<Column>,
    /// Easting.
    pub east: Column,
    /// Northing.
    pub north: Column,
    /// Height.
    pub height: Column,
}

/// One column.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Column {
    /// By its name in the header line; case and spaces do not count.
    Name(String),
    /// By its place, from 1.
    Number(usize),
}

/// Columns found, from 0, with the units that the header names.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub(crate) struct Layout {
    pub(crate) point: Option<usize>,
    pub(crate) east: usize,
    pub(crate) north: usize,
    pub(crate) height: usize,
    pub(crate) plan_units: Vec<LengthUnit>,
    pub(crate) height_unit: Option<LengthUnit>,
    /// The first line is a header.
    pub(crate) has_header: bool,
}

/// A header line has at most one number; a line of data has three.
pub(crate) fn is_header(first: &[String]) -> bool {
    first.iter().filter(|f| f.trim().replace(',', ".").parse::<f64>().is_ok()).count() < 2
}

const POINTS: &[&str] = &["point", "p", "pt", "id", "name", "no", "number", "pointid", "punto"];
const EASTS: &[&str] = &["e", "x", "east", "easting", "eastings", "este"];
const NORTHS: &[&str] = &["n", "y", "north", "northing", "northings", "norte"];
const HEIGHTS: &[&str] =
    &["z", "h", "height", "elevation", "elev", "level", "rl", "altitude", "cota", "elevación", "nivel", "altura"];

/// Finds the columns: as stated, else by header names, else point, northing, easting, elevation
/// (and description), the order of survey data collectors, with a warning.
pub(crate) fn find(first: &[String], stated: Option<&LevelColumns>, notes: &mut Notes<'_>) -> Result<Layout, Refused> {
    let has_header = is_header(first);
    let names: Vec<(String, Option<String>)> = first.iter().map(|f| name_and_unit(f)).collect();
    let mut layout = Layout { has_header, ..Layout::default() };
    if let Some(columns) = stated {
        let mut place = |column: &Column| match column {
            Column::Number(n) if (1..=first.len()).contains(n) => Ok(n - 1),
            Column::Number(n) => Err(missing(&n.to_string(), first, notes)),
            Column::Name(name) => {
                let wanted = name_and_unit(name).0;
                let found = names.iter().position(|(n, _)| has_header && *n == wanted);
                found.ok_or_else(|| missing(name, first, notes))
            }
        };
        let (east, north, height) = (place(&columns.east), place(&columns.north), place(&columns.height));
        layout.point = columns.point.as_ref().map(place).transpose()?;
        (layout.east, layout.north, layout.height) = (east?, north?, height?);
    } else if has_header {
        let mut place = |wanted: &[&str], what: &str| {
            let mut hits = names.iter().enumerate().filter(|(_, (n, _))| wanted.contains(&n.as_str()));
            match (hits.next(), hits.next()) {
                (Some((at, _)), None) => Ok(at),
                (Some((a, _)), Some((b, _))) => {
                    let message = text::COLUMN_TWICE.with("first", first[a].trim()).with("second", first[b].trim());
                    Err(notes.refuse_line("survey::column-twice", 1, message, text::DO_STATE_COLUMNS))
                }
                (None, _) => Err(missing(what, first, notes)),
            }
        };
        let (east, north, height) = (place(EASTS, "easting"), place(NORTHS, "northing"), place(HEIGHTS, "elevation"));
        (layout.east, layout.north, layout.height) = (east?, north?, height?);
        layout.point = names.iter().position(|(n, _)| POINTS.contains(&n.as_str()));
    } else if first.len() >= 4 {
        notes.warn_line("survey::order-assumed", 1, text::ORDER_ASSUMED, text::DO_STATE_COLUMNS);
        layout = Layout { point: Some(0), north: 1, east: 2, height: 3, ..layout };
    } else {
        return Err(notes.refuse_line("survey::columns-unknown", 1, text::COLUMNS_UNKNOWN, text::DO_STATE_COLUMNS));
    }
    if layout.east == layout.north || layout.east == layout.height || layout.north == layout.height {
        let name = first[layout.east.max(layout.north).min(first.len() - 1)].trim();
        let message = text::COLUMN_TWICE.with("first", name).with("second", name);
        return Err(notes.refuse_line("survey::column-twice", 1, message, text::DO_STATE_COLUMNS));
    }
    if has_header {
        units(&names, &mut layout, notes)?;
    }
    Ok(layout)
}

fn units(names: &[(String, Option<String>)], layout: &mut Layout, notes: &mut Notes<'_>) -> Result<(), Refused> {
    let mut read = |column: usize| match names[column].1.as_deref() {
        None => Ok(None),
        Some(unit) => LengthUnit::of_name(unit).map(Some).ok_or_else(|| {
            let message = text::COLUMN_UNIT.with("column", names[column].0.as_str()).with("unit", unit);
            notes.refuse_line("survey::unit-not-known", 1, message, text::DO_EXPORT_METRES)
        }),
    };
    let (east, north, height) = (read(layout.east), read(layout.north), read(layout.height));
    layout.plan_units = [east?, north?].into_iter().flatten().collect();
    layout.height_unit = height?;
    Ok(())
}

fn missing(column: &str, first: &[String], notes: &mut Notes<'_>) -> Refused {
    let found = first.iter().map(|f| f.trim()).collect::<Vec<_>>().join(", ");
    let message = text::COLUMN_MISSING.with("column", column).with("found", found);
    notes.refuse_line("survey::column-missing", 1, message, text::DO_STATE_COLUMNS)
}

/// "Z [m]" is ("z", "m"); "Point No." is ("pointno", none).
fn name_and_unit(field: &str) -> (String, Option<String>) {
    let field = field.trim().trim_start_matches(['\u{feff}', '#']);
    let (name, unit) = match field.split_once(['[', '(']) {
        Some((name, rest)) => (name, Some(rest.trim_end_matches([']', ')', ' ']).trim().to_owned())),
        None => (field, None),
    };
    (name.to_lowercase().chars().filter(|c| c.is_alphanumeric()).collect(), unit.filter(|u| !u.is_empty()))
}

#[cfg(test)]
mod tests {
    #![allow(clippy::unwrap_used, reason = "tests")]
    use super::*;

    fn layout(line: &str) -> Result<Layout, String> {
        let fields: Vec<String> = line.split(',').map(str::to_owned).collect();
        let mut notes = Notes::new("levels.csv");
        find(&fields, None, &mut notes).map_err(|_| notes.into_faults().list[0].code.clone())
    }

    #[test]
    fn names_in_any_order_with_units() {
        let found = layout("Point No,Northing [ft],Easting (ft),Level [US ft]").unwrap();
        assert_eq!((found.east, found.north, found.height), (2, 1, 3));
        assert_eq!(found.plan_units, [LengthUnit::Foot, LengthUnit::Foot]);
        assert_eq!(found.height_unit, Some(LengthUnit::UsSurveyFoot));
    }

    #[test]
    fn without_header_five_columns_are_data_collector_order() {
        let found = layout("1,5000.0,1000.0,12.5,PEG").unwrap();
        assert_eq!((found.point, found.north, found.east, found.height), (Some(0), 1, 2, 3));
        assert_eq!(layout("5000.0,1000.0,12.5").unwrap_err(), "survey::columns-unknown");
    }

    #[test]
    fn missing_doubled_and_odd_columns_are_refused() {
        assert_eq!(layout("point,x,y").unwrap_err(), "survey::column-missing");
        assert_eq!(layout("x,e,y,z").unwrap_err(), "survey::column-twice");
        assert_eq!(layout("x [furlong],y,z").unwrap_err(), "survey::unit-not-known");
    }
}
