//! JSON to [`Node`]s. `serde_json` reads; its raw values keep where each one stands.

use crate::node::{Entry, Node, SyntaxError, Table, Value};
use serde::de::{MapAccess, Visitor};
use serde_json::value::RawValue;
use std::fmt;

/// Deeper nesting than this is an error, not a stack overflow.
const DEEPEST: usize = 64;

/// Parses a document; JSON has no recovery, so there is one syntax error at most.
pub(crate) fn parse(text: &str) -> (Node, Vec<SyntaxError>) {
    let mut errors = Vec::new();
    let node = serde_json::from_str::<&RawValue>(text).map_err(|e| syntax(text, &e)).map(|raw| {
        let mut reader = Reader { text, errors: &mut errors };
        reader.node(raw, 0)
    });
    match node {
        Ok(node) => (node, errors),
        Err(error) => (Node { value: Value::Table(Table::default()), span: (0, 0) }, vec![error]),
    }
}

struct Reader<'t, 'e> {
    text: &'t str,
    errors: &'e mut Vec<SyntaxError>,
}

impl<'t> Reader<'t, '_> {
    fn node(&mut self, raw: &'t RawValue, depth: usize) -> Node {
        let json = raw.get();
        let span = self.place(json);
        let value = if depth >= DEEPEST { None } else { self.value(json, depth) };
        let value = value.unwrap_or_else(|| {
            self.errors.push(SyntaxError { detail: String::from("nesting"), span, duplicate_key: false });
            Value::Nothing
        });
        Node { value, span }
    }

    fn value(&mut self, json: &'t str, depth: usize) -> Option<Value> {
        Some(match json.as_bytes().first()? {
            b'{' => {
                let pairs: Pairs<'t> = serde_json::from_str(json).ok()?;
                let mut table = Table::default();
                for (key, raw) in pairs.0 {
                    let node = self.node(raw, depth + 1);
                    let key_span = self.key_before(node.span);
                    if table.get(&key).is_some() {
                        self.errors.push(SyntaxError { detail: key, span: key_span, duplicate_key: true });
                    } else {
                        table.entries.push(Entry { key, key_span, node });
                    }
                }
                Value::Table(table)
            }
            b'[' => {
                let items: Vec<&'t RawValue> = serde_json::from_str(json).ok()?;
                Value::List(items.into_iter().map(|raw| self.node(raw, depth + 1)).collect())
            }
            b'"' => Value::Text(serde_json::from_str(json).ok()?),
            b't' => Value::Bool(true),
            b'f' => Value::Bool(false),
            b'n' => Value::Nothing,
            _ => Value::Number(json.to_owned()),
        })
    }

    /// Byte range of a piece that was cut from the text.
    fn place(&self, piece: &str) -> (usize, usize) {
        let start = (piece.as_ptr() as usize).saturating_sub(self.text.as_ptr() as usize).min(self.text.len());
        (start, (start + piece.len()).min(self.text.len()))
    }

    /// The key that stands before a value: back over space, colon and space to its closing quote,
    /// then to the opening one (an escaped quote has an odd number of backslashes before it).
    fn key_before(&self, value: (usize, usize)) -> (usize, usize) {
        let bytes = self.text.as_bytes();
        let before = self.text[..value.0].trim_end().trim_end_matches(':').trim_end();
        let end = before.len();
        let mut start = end.saturating_sub(1);
        while start > 0 {
            start -= 1;
            let slashes = bytes[..start].iter().rev().take_while(|&&b| b == b'\\').count();
            if bytes[start] == b'"' && slashes % 2 == 0 {
                break;
            }
        }
        (start, end)
    }
}

/// An object's pairs in their order, repeated keys included.
struct Pairs<'a>(Vec<(String, &'a RawValue)>);

impl<'de> serde::Deserialize<'de> for Pairs<'de> {
    fn deserialize<D: serde::Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        struct Collect;
        impl<'de> Visitor<'de> for Collect {
            type Value = Pairs<'de>;
            fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
                f.write_str("object")
            }
            fn visit_map<M: MapAccess<'de>>(self, mut map: M) -> Result<Self::Value, M::Error> {
                let mut pairs = Vec::new();
                while let Some(pair) = map.next_entry()? {
                    pairs.push(pair);
                }
                Ok(Pairs(pairs))
            }
        }
        deserializer.deserialize_map(Collect)
    }
}

fn syntax(text: &str, error: &serde_json::Error) -> SyntaxError {
    let start: usize = text.split_inclusive('\n').take(error.line().saturating_sub(1)).map(str::len).sum();
    let mut at = (start + error.column().saturating_sub(1)).min(text.len());
    while !text.is_char_boundary(at) {
        at -= 1;
    }
    // The parser puts its own line and column behind its words.
    let words = error.to_string();
    let detail = words.split(" at line ").next().unwrap_or(&words).to_owned();
    SyntaxError { detail, span: (at, at), duplicate_key: false }
}
