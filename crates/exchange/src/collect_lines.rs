//! Overhead lines as items.

use crate::about::DRAWN_HEIGHT;
use crate::collect_site::keyed;
use crate::item::{Drawn, Item, Position, Properties, Shape, number};
use crate::scene::{Under, flat};
use crate::{layer, text};
use geometry::DVec3;
use quantity::Si;
use serde_json::Value;
use site::{PowerLine, Span};

/// Chords that a span is drawn with. They are those that distances are taken to: none lies above the conductor, and
/// so each is lowered by about sag/576.
pub(crate) const CHORDS: usize = 24;

pub(crate) fn line(index: usize, line: &PowerLine, under: &Under<'_>) -> Item {
    let mut properties = Properties::default();
    properties.add("kind", "overhead-line");
    properties.add("name", line.name.as_str());
    properties.number("voltage_v", line.voltage.map(|v| v.si()));
    let conductor = line.spans.iter().map(points).collect::<Vec<_>>();
    let heights = conductor.iter().flatten().map(|p| p.z);
    properties.number("lowest_m", heights.reduce(f64::min));
    let supports: Vec<Value> = line
        .spans
        .iter()
        .map(|s| Value::Array([s.from.x, s.from.y, s.from.z, s.to.x, s.to.y, s.to.z].map(number).to_vec()))
        .collect();
    properties.add("supports_m", supports);
    properties.add("sag_m", line.spans.iter().map(|s| number(s.sag)).collect::<Vec<_>>());
    properties.number("survey_error_m", line.survey_error.si());
    properties.number("swing_m", line.swing.si());
    let dead = line.dead.as_ref();
    properties.add("confirmed_dead_by", dead.map(|d| d.owner.clone()));
    properties.add("permit", dead.map(|d| d.permit.clone()));
    properties.add("visibly_grounded", dead.map(|d| d.visibly_grounded));
    if let Some(covered) = &line.insulated {
        properties.add("insulated_by", covered.by.as_str());
        properties.add("insulation_permit", covered.permit.as_str());
    }

    let mut doubts = if line.voltage.is_none() { vec![text::VOLTAGE_NOT_KNOWN] } else { Vec::new() };
    if conductor.is_empty() {
        doubts.push(text::HEIGHT_NOT_KNOWN);
    }
    let (shape, drawn) = match (conductor.is_empty(), line.course.len() < 2) {
        (false, _) => {
            let known = |p: &DVec3| Position(p.truncate(), Some(p.z));
            let lines = conductor.iter().map(|c| c.iter().map(known).collect()).collect();
            (Shape::Lines(lines), conductor.into_iter().map(Drawn::Curve).collect())
        }
        (true, false) => {
            let over = |p: &geometry::DVec2| p.extend(under.height(*p).unwrap_or(under.floor) + DRAWN_HEIGHT);
            (Shape::Line(flat(&line.course)), vec![Drawn::Curve(line.course.iter().map(over).collect())])
        }
        (true, true) => (Shape::Nowhere, Vec::new()),
    };
    Item {
        layer: layer::LINE,
        key: keyed("line", index, ""),
        name: line.name.clone(),
        doubts,
        properties,
        shape,
        drawn,
    }
}

fn points(span: &Span) -> Vec<DVec3> {
    let chords = span.chords(CHORDS);
    let first = chords.first().map(|c| c.a);
    first.into_iter().chain(chords.iter().map(|c| c.b)).collect()
}
