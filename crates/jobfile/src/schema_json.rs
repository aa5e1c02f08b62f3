//! JSON Schema (2020-12) of job and machine files, from what reading them asks for.

use crate::complete::{job_shapes, machine_shapes};
use crate::quantity_value::{Bound, name};
use crate::schema_fields::{FileKind, field};
use crate::schema_notes::{KeyShape, Kind, Shapes, TableShape, join};
use crate::{placeholder, schema_words as words};
use evidence::Message;
use quantity::{Dimension, Quantity};
use serde_json::{Map, Value, json};
use std::collections::BTreeMap;

/// The JSON Schema of a kind of file; `say` has the words.
pub fn file_schema(kind: FileKind, say: &dyn Fn(&Message) -> String) -> Value {
    let shapes = match kind {
        FileKind::Machine => machine_shapes().shapes,
        FileKind::Job => job_shapes().shapes,
    };
    let writer = Writer { kind, shapes: &shapes, say };
    let mut schema = writer.table("");
    let title = match kind {
        FileKind::Machine => words::SCHEMA_MACHINE_TITLE,
        FileKind::Job => words::SCHEMA_JOB_TITLE,
    };
    if let Value::Object(root) = &mut schema {
        root.insert("$schema".into(), "https://json-schema.org/draft/2020-12/schema".into());
        root.insert("title".into(), say(&title.message()).into());
        root.insert("$defs".into(), writer.definitions());
    }
    schema
}

struct Writer<'a> {
    kind: FileKind,
    shapes: &'a Shapes,
    say: &'a dyn Fn(&Message) -> String,
}

/// A schema of one of several.
fn any_of(mut options: Vec<Value>) -> Value {
    if options.len() == 1 { options.remove(0) } else { json!({ "anyOf": options }) }
}

fn definition(dimension: Dimension) -> &'static str {
    match dimension {
        Dimension::Length => "length",
        Dimension::Area => "area",
        Dimension::Volume => "volume",
        Dimension::Mass => "mass",
        Dimension::Angle => "angle",
        Dimension::Slope => "slope",
        Dimension::Ratio => "share",
        Dimension::Number => "factor",
        Dimension::Force => "force",
        Dimension::Moment => "moment",
        Dimension::Pressure => "pressure",
        Dimension::Speed => "speed",
        Dimension::Voltage => "voltage",
        Dimension::Density => "density",
        Dimension::Stiffness => "stiffness",
        Dimension::UnitWeight => "unit-weight",
        Dimension::SecondMoment => "second-moment",
    }
}

const FILL_IN: &str = "to-fill-in";

fn reference(name: &str) -> Value {
    json!({ "$ref": format!("#/$defs/{name}") })
}

impl Writer<'_> {
    fn say(&self, message: impl Into<Message>) -> String {
        (self.say)(&message.into())
    }

    fn table(&self, path: &str) -> Value {
        let empty = TableShape::default();
        let shape = self.shapes.get(path).unwrap_or(&empty);
        let mut properties = Map::new();
        let mut others = Value::Bool(false);
        for key in &shape.keys {
            if !shape.keys_are_ids || key.key == "source" {
                properties.insert(key.key.clone(), self.key(path, key));
            } else if !key.kinds.is_empty() {
                // One entry speaks for all.
                others = self.key(path, key);
            }
        }
        let required: Vec<&str> = shape.keys.iter().map(|k| k.key.as_str()).filter(|k| shape.requires(k)).collect();
        let mut out = json!({ "type": "object", "properties": properties, "additionalProperties": others });
        if !required.is_empty() {
            out["required"] = json!(required);
        }
        out
    }

    fn key(&self, path: &str, key: &KeyShape) -> Value {
        let path = join(path, &key.key);
        let mut options = self.options(&path, &key.kinds);
        let rows = key.kinds.contains(&Kind::Rows);
        if rows || key.kinds.contains(&Kind::List) {
            options = vec![json!({ "type": "array", "items": any_of(options) })];
        }
        if rows {
            options = vec![json!({ "type": "array", "items": any_of(options) })];
        }
        let mut out = any_of(options);
        if let Value::Object(out) = &mut out {
            out.insert("description".into(), self.description(&path, &key.kinds).into());
        }
        out
    }

    /// What the key is, where it is found, what it may be.
    fn description(&self, path: &str, kinds: &[Kind]) -> String {
        let mut said = Vec::new();
        if let Some(field) = field(self.kind, path) {
            said.push(self.say(field.what));
            said.extend(field.place.map(|place| self.say(words::SCHEMA_FOUND.with("place", place))));
        }
        said.extend(kinds.iter().filter_map(|kind| self.bounds(kind)));
        said.iter().map(|s| format!("{s}.")).collect::<Vec<_>>().join(" ")
    }

    fn bounds(&self, kind: &Kind) -> Option<String> {
        let (dimension, bound) = match kind {
            Kind::Quantity { dimension, bound }
            | Kind::Fact { dimension, bound }
            | Kind::Numbers { dimension, bound, .. } => (*dimension, *bound),
            Kind::Points { least, .. } => return Some(self.say(words::SCHEMA_POINTS.with("least", *least))),
            _ => return None,
        };
        let q = |si: f64| Quantity::new(si, dimension);
        Some(self.say(match bound {
            Bound::Any => return None,
            Bound::NotNegative => words::SCHEMA_NOT_NEGATIVE.message(),
            Bound::Positive => words::SCHEMA_MORE_THAN_ZERO.message(),
            Bound::UpTo(high) => words::SCHEMA_AT_MOST.with("high", q(high)),
            Bound::ZeroTo(high) => words::SCHEMA_ZERO_TO.with("high", q(high)),
            Bound::Within(low, high) => words::SCHEMA_WITHIN.with("low", q(low)).with("high", q(high)),
        }))
    }

    fn options(&self, path: &str, kinds: &[Kind]) -> Vec<Value> {
        let is_fact = kinds.iter().any(|k| matches!(k, Kind::Fact { .. }));
        let mut words: Vec<&str> = Vec::new();
        let mut options = Vec::new();
        for kind in kinds {
            match kind {
                Kind::List | Kind::Rows => {}
                Kind::Plain => options.push(json!({ "type": "number" })),
                Kind::Words(some) => {
                    let new: Vec<&str> = some.iter().map(String::as_str).filter(|w| !words.contains(w)).collect();
                    words.extend(new);
                }
                // The table of a fact is that of its value and source.
                Kind::Table if is_fact => {}
                Kind::Table => options.push(self.table(path)),
                Kind::Tables => {
                    options.push(json!({ "type": "array", "items": self.table(&format!("{path}[]")) }));
                }
                Kind::Text => options.push(json!({ "type": "string", "pattern": "\\S" })),
                Kind::YesNo => options.push(json!({ "type": "boolean" })),
                Kind::Count { least } => {
                    options.push(json!({ "type": "integer", "minimum": least, "maximum": 1_000_000 }));
                }
                Kind::Date => {
                    options.push(json!({ "type": "string", "pattern": "^[0-9]{4}-[0-9]{2}-[0-9]{2}$" }));
                    options.push(reference(FILL_IN));
                }
                Kind::Quantity { dimension, bound } => options.extend(quantity(*dimension, *bound)),
                Kind::Fact { dimension, bound } => {
                    options.extend(quantity(*dimension, *bound));
                    options.push(json!({
                        "type": "object",
                        "properties": { "value": any_of(quantity(*dimension, *bound)), "source": reference("source") },
                        "required": ["value"],
                        "additionalProperties": false,
                    }));
                }
                Kind::Numbers { count, dimension, bound } => {
                    let item = any_of(quantity(*dimension, *bound));
                    options.push(json!({ "type": "array", "items": item, "minItems": count, "maxItems": count }));
                }
                Kind::Points { least, .. } => {
                    let item = json!({ "anyOf": [{ "type": "number" }, reference("length")] });
                    let point = json!({ "type": "array", "items": item, "minItems": 2, "maxItems": 2 });
                    options.push(json!({ "type": "array", "items": point, "minItems": least }));
                }
            }
        }
        if path == "source" || path.ends_with(".source") {
            return vec![reference("source")];
        }
        if !words.is_empty() {
            options.push(json!({ "enum": words }));
            if path != "format" {
                options.push(reference(FILL_IN));
            }
        }
        options
    }

    fn definitions(&self) -> Value {
        let mut out: BTreeMap<&str, Value> = BTreeMap::new();
        let kinds = self.shapes.values().flat_map(|t| &t.keys).flat_map(|k| &k.kinds);
        for kind in kinds {
            let dimension = match kind {
                Kind::Quantity { dimension, .. } | Kind::Fact { dimension, .. } | Kind::Numbers { dimension, .. } => {
                    *dimension
                }
                Kind::Points { .. } => Dimension::Length,
                _ => continue,
            };
            let said = self.say(words::SCHEMA_QUANTITY.with("dimension", name(dimension)));
            out.insert(
                definition(dimension),
                json!({ "type": "string", "pattern": pattern(dimension), "description": format!("{said}.") }),
            );
        }
        let fill_in = self.say(words::SCHEMA_FILL_IN);
        out.insert(
            FILL_IN,
            json!({ "type": "string", "pattern": placeholder::PLACEHOLDER, "description": format!("{fill_in}.") }),
        );
        let source = self.shapes.get("").and_then(|root| root.key("source")).map(|k| k.kinds.as_slice());
        if let Some([Kind::Words(known)]) = source {
            let what = self.description("source", &[]);
            out.insert("source", json!({ "anyOf": [{ "enum": known }, reference(FILL_IN)], "description": what }));
        }
        json!(out)
    }
}

/// A quantity as text; plain numbers too where it has no unit.
fn quantity(dimension: Dimension, bound: Bound) -> Vec<Value> {
    let mut out = vec![reference(definition(dimension))];
    if matches!(dimension, Dimension::Number | Dimension::Ratio) {
        out.push(match bound {
            Bound::Any => json!({ "type": "number" }),
            Bound::NotNegative => json!({ "type": "number", "minimum": 0 }),
            Bound::Positive => json!({ "type": "number", "exclusiveMinimum": 0 }),
            Bound::UpTo(high) => json!({ "type": "number", "exclusiveMinimum": 0, "maximum": high }),
            Bound::ZeroTo(high) => json!({ "type": "number", "minimum": 0, "maximum": high }),
            Bound::Within(low, high) => json!({ "type": "number", "minimum": low, "maximum": high }),
        });
    }
    out
}

/// Wide enough for every spelling that is read: a digit, and behind it a unit where there must be one.
fn pattern(dimension: Dimension) -> &'static str {
    match dimension {
        Dimension::Slope | Dimension::Ratio | Dimension::Number => "[0-9]",
        _ => "[0-9].*[A-Za-z%°º‰'′’\"″”]",
    }
}
