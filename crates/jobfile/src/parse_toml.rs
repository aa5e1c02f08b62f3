//! TOML to [`Node`]s: every syntax error, and what could be read beside them.

use crate::node::{Entry, Node, SyntaxError, Table, Value};
use toml::Spanned;
use toml::de::{DeTable, DeValue};

/// Parses a document; after an error reading goes on behind it.
pub(crate) fn parse(text: &str) -> (Node, Vec<SyntaxError>) {
    let (root, errors) = DeTable::parse_recoverable(text);
    let errors = errors
        .iter()
        .map(|e| {
            let span = e.span().unwrap_or(0..0);
            SyntaxError {
                detail: e.message().to_owned(),
                span: (span.start.min(text.len()), span.end.min(text.len())),
                duplicate_key: e.message().starts_with("duplicate key"),
            }
        })
        .collect();
    // The root has no header of its own: what is missing in it is missing at the start of the file.
    (Node { value: Value::Table(table(root.get_ref())), span: (0, 0) }, errors)
}

fn table(table: &DeTable<'_>) -> Table {
    let mut entries: Vec<Entry> = table
        .iter()
        .map(|(key, value)| Entry {
            key: key.get_ref().to_string(),
            key_span: (key.span().start, key.span().end),
            node: node(value),
        })
        .collect();
    // The parser's map is sorted by key: back into the order of the file.
    entries.sort_by_key(|e| e.key_span);
    Table { entries }
}

fn node(value: &Spanned<DeValue<'_>>) -> Node {
    let span = value.span();
    let value = match value.get_ref() {
        DeValue::String(s) => Value::Text(s.to_string()),
        DeValue::Integer(i) => Value::Number(integer(i.as_str(), i.radix())),
        DeValue::Float(f) => Value::Number(f.as_str().to_owned()),
        DeValue::Boolean(b) => Value::Bool(*b),
        DeValue::Datetime(d) => Value::Date(d.to_string()),
        DeValue::Array(a) => Value::List(a.iter().map(node).collect()),
        DeValue::Table(t) => Value::Table(table(t)),
    };
    Node { value, span: (span.start, span.end) }
}

/// Hexadecimal, octal and binary integers as decimal digits.
fn integer(digits: &str, radix: u32) -> String {
    if radix == 10 {
        return digits.to_owned();
    }
    i64::from_str_radix(digits, radix).map_or_else(|_| digits.to_owned(), |n| n.to_string())
}
