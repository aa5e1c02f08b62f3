//! `[[ground]]`: survey files, in order of priority.

use crate::document::code;
use crate::job_file::{Files, all, as_date};
use crate::limits::SITE;
use crate::node::{Node, Value};
use crate::placeholder::PLACEHOLDER;
use crate::quantity_value::Bound::UpTo;
use crate::schema_notes::Kind;
use crate::table::{Faulty, Reader};
use crate::text;
use evidence::{Certainty, Place};
use planning::InputLine;
use quantity::Dimension as D;
use site::GroundSource;
use survey::{
    Column, Epsg, GroundFilter, GroundOptions, GroundReading, LengthUnit, LevelColumns, Window, read_ground, read_tiles,
};

const UNITS: [(&str, LengthUnit); 6] = [
    ("m", LengthUnit::Metre),
    ("ft", LengthUnit::Foot),
    ("US ft", LengthUnit::UsSurveyFoot),
    ("mm", LengthUnit::Millimetre),
    ("cm", LengthUnit::Centimetre),
    ("in", LengthUnit::Inch),
];

pub(crate) fn surfaces(root: &Reader<'_>, files: &mut Files<'_>) -> Option<Vec<GroundSource>> {
    if !root.has("ground") && !root.has("site_from") {
        root.warning("ground", text::NO_GROUND, None);
    }
    let mut read = Vec::new();
    for t in root.tables("ground") {
        let (surface, open) = t.not_given_while_open(|t| surface(t, files));
        match surface {
            Some((surface, made_up)) if open || made_up => {
                t.warning("file", text::GROUND_LEFT_OUT.with("file", &surface.name), None);
            }
            surface => read.push(surface.map(|(surface, _)| surface)),
        }
    }
    all(read)
}

/// A surface, and true where its file says of itself that it is made up.
fn surface(t: &Reader<'_>, files: &mut Files<'_>) -> Option<(GroundSource, bool)> {
    let (one, many) = (t.optional("file"), t.optional("files"));
    let accuracy = t.si("accuracy", D::Length, UpTo(10.0));
    let date = t.optional("date").and_then(|node| as_date(t, node, "date"));
    let certainty = t.sourced(&Node { value: Value::Nothing, span: t.span() }, "file");
    let (units, height_units) = (unit(t, "units"), unit(t, "height_units"));
    let (file_crs, site_crs) = (epsg(t, "file_crs"), epsg(t, "site_crs"));
    let layers = layers(t);
    let options = GroundOptions {
        units: units.unwrap_or(None),
        height_units: height_units.unwrap_or(None),
        crs: t.text_or_none("crs"),
        longest_edge: t.decision_or_none("longest_edge", D::Length, UpTo(10_000.0)),
        window: window(t),
        columns: columns(t),
        surface: t.text_or_none("surface"),
        survey_points: t.yes_no("survey_points").unwrap_or(false),
        file_crs: file_crs.unwrap_or(None),
        site_crs: site_crs.unwrap_or(None),
        layers: layers.clone().unwrap_or(None),
        ground_filter: t.yes_no("filter_ground").unwrap_or(false).then(GroundFilter::default),
        ..GroundOptions::default()
    };
    t.done();
    if units.is_err() || height_units.is_err() || file_crs.is_err() || site_crs.is_err() || layers.is_err() {
        return None; // Read in another unit, the file would only have faults that it has not.
    }
    let opened = match (one, many) {
        (Some(node), None) => vec![files.open(t, node, "file")],
        (None, Some(node)) => t.as_list(node, "files")?.iter().map(|item| files.open(t, item, "files")).collect(),
        (Some(_), Some(_)) => {
            t.fault("files", text::EITHER_OR.with("first", "file").with("second", "files"), None);
            return None;
        }
        (None, None) => {
            t.missing("file", "file = \"survey/levels.csv\"");
            return None;
        }
    };
    let opened = all(opened)?;
    let names: Vec<&str> = opened.iter().map(|(name, _)| name.as_str()).collect();
    let name = names.join(", ");
    let reading = match &opened[..] {
        [(name, bytes)] => read_ground(name, bytes, &options),
        tiles => read_tiles(&tiles.iter().map(|(n, b)| (n.as_str(), b.as_slice())).collect::<Vec<_>>(), &options),
    };
    let GroundReading { terrain, facts, notes } = match reading {
        Ok(reading) => reading,
        Err(faults) => {
            files.faults.append(faults);
            return None;
        }
    };
    files.faults.append(notes);
    let (accuracy, certainty): (f64, Certainty) = (accuracy?, certainty?);
    files.inputs.push(InputLine {
        name: format!("ground[{name}]"),
        place: format!("{}:{} {}", t.document().file(), t.document().line(t.span()), t.path()),
        value: date.iter().cloned().chain([facts.ground_points.to_string()]).collect::<Vec<_>>().join("; "),
        certainty,
    });
    let made_up = made_up(&opened, files);
    Some((GroundSource { name, terrain, accuracy, date }, made_up))
}

/// Text files of levels that still hold the starter's marker.
fn made_up(opened: &[(String, Vec<u8>)], files: &mut Files<'_>) -> bool {
    let mut found = false;
    for (name, bytes) in opened {
        let Some(at) = std::str::from_utf8(bytes).ok().and_then(|levels| levels.find(PLACEHOLDER)) else { continue };
        let line = 1 + bytes.iter().take(at).filter(|&&b| b == b'\n').count();
        let place = Place { line: Some(line), ..Place::file(name) };
        let message = text::PLACEHOLDER.with("key", name);
        files.faults.warn(&code(text::PLACEHOLDER), place, message, Some(text::HINT_FILL_IN.message()));
        found = true;
    }
    found
}

/// `file_crs = "EPSG:28992"`; `None` where the job leaves it to the file.
fn epsg(t: &Reader<'_>, key: &str) -> Result<Option<Epsg>, Faulty> {
    let Some(node) = t.optional(key) else { return Ok(None) };
    let written = t.as_text(node, key).ok_or(Faulty)?;
    if let Some(code) = Epsg::of_text(written) {
        return Ok(Some(code));
    }
    let hint = text::HINT_EXAMPLE.with("example", format!("{key} = \"EPSG:25832\""));
    t.fault_at(node, key, text::BAD_EPSG.with("value", written), Some(hint));
    Err(Faulty)
}

/// `layers = ["DTM"]`: of a drawing, those that are ground.
fn layers(t: &Reader<'_>) -> Result<Option<Vec<String>>, Faulty> {
    let Some(node) = t.optional("layers") else { return Ok(None) };
    let items = t.as_list(node, "layers").ok_or(Faulty)?;
    let names: Option<Vec<String>> = items.iter().map(|item| t.as_text(item, "layers").map(str::to_owned)).collect();
    names.map(Some).ok_or(Faulty)
}

/// `None` where the job leaves the unit to the file.
fn unit(t: &Reader<'_>, key: &str) -> Result<Option<LengthUnit>, Faulty> {
    let Some(node) = t.optional(key) else { return Ok(None) };
    t.as_choice(node, key, &UNITS).map(Some).ok_or(Faulty)
}

/// `columns = { east = "E", north = "N", height = "Z" }`: of a level file, by name or by place from 1.
fn columns(t: &Reader<'_>) -> Option<LevelColumns> {
    let c = t.table_or_none("columns")?;
    let column = |key: &str, node: &Node| match &node.value {
        Value::Number(_) => {
            let place = c.count(key, "", 1)?;
            Some(Column::Number(usize::try_from(place).ok()?))
        }
        Value::Text(name) if !name.trim().is_empty() => Some(Column::Name(name.clone())),
        _ => {
            c.wrong_type(node, key, text::TYPE_TEXT);
            None
        }
    };
    for key in ["east", "north", "height", "point"] {
        c.expects(key, || Kind::Text);
        c.expects(key, || Kind::Count { least: 1 });
    }
    let needed = |key: &str| c.required(key, &format!("{key} = 2")).and_then(|node| column(key, node));
    let (east, north, height) = (needed("east"), needed("north"), needed("height"));
    let point = c.optional("point").and_then(|node| column("point", node));
    c.done();
    Some(LevelColumns { point, east: east?, north: north?, height: height? })
}

/// A rectangle to which a large survey is cut.
fn window(t: &Reader<'_>) -> Option<Window> {
    let w = t.table_or_none("window")?;
    let min = w.point("from", "from = [\"0 m\", \"0 m\"]", SITE);
    let max = w.point("to", "to = [\"60 m\", \"50 m\"]", SITE);
    w.done();
    let (min, max) = (min?, max?);
    if min.x >= max.x || min.y >= max.y {
        let low = quantity::metres(min.x);
        let high = quantity::metres(max.x);
        w.fault("to", text::ORDER.with("key", "window").with("low", low).with("high", high), None);
    }
    Some(Window { min, max })
}
