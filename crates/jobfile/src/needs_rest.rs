//! What a file says where reading did not get to: charts are read when the rest of the machine is known,
//! and are explained before.

use crate::certainty;
use crate::node::{Node, Table, Value};
use crate::placeholder;
use crate::schema_notes::{Kind, Seen, SeenValue, Shapes, join};
use evidence::Certainty;
use geometry::DVec2;
use quantity::{Dimension, Quantity};

/// Values of the tables of a list that can be read by themselves; nothing is said of the others.
pub(crate) fn list(shapes: &Shapes, root: &Table, key: &str) -> Vec<Seen> {
    let mut seen = Vec::new();
    let around = source(root, None);
    entries(shapes, root, (key, key), (around, None), &mut seen);
    seen
}

/// The nearest source and unit around a table.
type Around<'t> = (Option<Certainty>, Option<&'t str>);

fn entries<'t>(shapes: &Shapes, table: &'t Table, (key, list): (&str, &str), around: Around<'t>, seen: &mut Vec<Seen>) {
    let Some(Value::List(items)) = table.get(key).map(|n| &n.value) else { return };
    for (i, item) in items.iter().enumerate() {
        if let Value::Table(inner) = &item.value {
            let path = format!("{list}[{}]", i + 1);
            values(shapes, inner, &path, around, seen);
        }
    }
}

fn values<'t>(shapes: &Shapes, table: &'t Table, path: &str, around: Around<'t>, seen: &mut Vec<Seen>) {
    let Some(known) = shapes.get(&crate::pattern(path)) else { return };
    let certainty = source(table, around.0);
    let unit = word(table, "unit").or(around.1);
    for key in &known.keys {
        let Some(node) = table.get(&key.key) else { continue };
        let here = join(path, &key.key);
        if key.kinds.contains(&Kind::Tables) {
            entries(shapes, table, (&key.key, &here), (certainty, unit), seen);
            continue;
        }
        let certainty = match &node.value {
            Value::Table(inner) => source(inner, certainty),
            _ => certainty,
        };
        let value = key.kinds.iter().find_map(|kind| value(node, kind, unit));
        seen.extend(value.map(|value| Seen { path: here, value, certainty }));
    }
}

fn value(node: &Node, kind: &Kind, unit: Option<&str>) -> Option<SeenValue> {
    match (&node.value, kind) {
        (Value::Text(t), Kind::Words(words)) => words.contains(t).then(|| SeenValue::Word(t.clone())),
        (Value::Text(t), Kind::Text) => Some(SeenValue::Text(t.clone())),
        (Value::Bool(b), Kind::YesNo) => Some(SeenValue::YesNo(*b)),
        (Value::Table(t), Kind::Fact { dimension, .. }) => {
            number(t.get("value")?, *dimension, None).map(|q| SeenValue::Quantities(vec![q]))
        }
        (_, Kind::Fact { dimension, .. } | Kind::Quantity { dimension, .. }) => {
            number(node, *dimension, None).map(|q| SeenValue::Quantities(vec![q]))
        }
        (Value::List(items), Kind::Numbers { dimension, count, .. }) if items.len() == *count => {
            let values: Option<Vec<Quantity>> = items.iter().map(|i| number(i, *dimension, unit)).collect();
            values.map(SeenValue::Quantities)
        }
        (Value::List(items), Kind::Points { .. }) => {
            let point = |item: &Node| match &item.value {
                Value::List(pair) if pair.len() == 2 => {
                    let [x, y] = [&pair[0], &pair[1]].map(|n| number(n, Dimension::Length, unit));
                    Some(DVec2::new(x?.si, y?.si))
                }
                _ => None,
            };
            items.iter().map(point).collect::<Option<Vec<_>>>().map(SeenValue::Points)
        }
        _ => None,
    }
}

fn number(node: &Node, dimension: Dimension, unit: Option<&str>) -> Option<Quantity> {
    let plain = matches!(dimension, Dimension::Number | Dimension::Ratio);
    let written = match (&node.value, unit) {
        (Value::Text(t), _) => placeholder::behind(t).unwrap_or(t).to_owned(),
        (Value::Number(n), Some(unit)) => format!("{n} {unit}"),
        (Value::Number(n), None) if plain => n.clone(),
        _ => return None,
    };
    let as_number = plain && matches!(node.value, Value::Number(_));
    let read = quantity::parse(&written, if as_number { Dimension::Number } else { dimension }).ok()?;
    Some(Quantity::new(read.si, dimension))
}

fn word<'t>(table: &'t Table, key: &str) -> Option<&'t str> {
    match table.get(key).map(|n| &n.value) {
        Some(Value::Text(t)) => Some(t),
        _ => None,
    }
}

fn source(table: &Table, around: Option<Certainty>) -> Option<Certainty> {
    let written = word(table, "source");
    written.and_then(|w| certainty::WORDS.iter().find(|(known, _)| *known == w).map(|(_, c)| *c)).or(around)
}
