//! Reading a table key by key: every value asked for is checked, every key not asked for is a fault.

use crate::document::Document;
use crate::nearest::nearest;
use crate::node::{Node, Table, Value};
use crate::schema_notes::{Kind, SeenValue};
use crate::{certainty, placeholder, text};
use evidence::{Certainty, Message, Severity, TextId};
use std::cell::{Cell, RefCell};

/// A table of a file, with the path to it and the nearest `source` around it.
///
/// Ask for every key the table may have, then call [`Reader::done`]: the rest is unknown.
#[derive(Debug)]
pub struct Reader<'d> {
    document: &'d Document,
    table: &'d Table,
    span: (usize, usize),
    path: String,
    label: String,
    source: Cell<Option<Certainty>>,
    asked: RefCell<Vec<String>>,
    needed: RefCell<Vec<String>>,
}

/// No count in a file is greater.
const MOST_COUNT: i64 = 1_000_000;

/// Something could not be read, and the fault is said: for values whose absence means something.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Faulty;

impl<'d> Reader<'d> {
    pub(crate) fn new(
        document: &'d Document,
        table: &'d Table,
        span: (usize, usize),
        path: String,
        around: Option<Certainty>,
    ) -> Self {
        let label = path.clone();
        let source = Cell::new(around);
        let reader =
            Self { document, table, span, path, label, source, asked: RefCell::default(), needed: RefCell::default() };
        document.note(|n| n.table(&reader.path));
        reader.expects("source", || Kind::Words(certainty::WORDS.map(|(w, _)| w.to_owned()).to_vec()));
        if let Some(node) = reader.optional("source") {
            reader.source.set(reader.certainty(node).or(Some(Certainty::Estimated)));
        }
        reader
    }

    /// The document.
    pub fn document(&self) -> &'d Document {
        self.document
    }

    /// Where the table starts.
    pub fn span(&self) -> (usize, usize) {
        self.span
    }

    /// Path of the table in the file ("" for the whole file). Lists count from 1.
    pub fn path(&self) -> &str {
        &self.path
    }

    /// The nearest `source` around the table.
    pub fn source(&self) -> Option<Certainty> {
        self.source.get()
    }

    /// Reads values that the source of the table is not about: where they have none of their own,
    /// `instead` says what it means for them.
    pub(crate) fn aside<T>(&self, instead: fn(Certainty) -> Certainty, read: impl FnOnce(&Self) -> T) -> T {
        let around = self.source.get();
        self.source.set(around.map(instead));
        let value = read(self);
        self.source.set(around);
        value
    }

    /// The values of this table are measured, unless it says otherwise itself or everything is invented.
    pub fn measured(&self) {
        if self.table.get("source").is_none() && self.source.get() != Some(Certainty::Invented) {
            self.source.set(Some(Certainty::Measured));
        }
    }

    /// The values of this table are stated by whoever asks, unless it says otherwise itself: inputs of one calculation.
    pub fn stated(&self) {
        if self.source.get().is_none() {
            self.source.set(Some(Certainty::Stated));
        }
    }

    /// Path of a key of this table.
    pub fn path_of(&self, key: &str) -> String {
        if self.path.is_empty() { key.to_owned() } else { format!("{}.{key}", self.path) }
    }

    /// Name of a key of this table for people: as [`Reader::path_of`], with ids in place of numbers.
    pub fn label_of(&self, key: &str) -> String {
        if self.label.is_empty() { key.to_owned() } else { format!("{}.{key}", self.label) }
    }

    /// The value of a key that may be left out.
    pub fn optional(&self, key: &str) -> Option<&'d Node> {
        if !self.asked.borrow().iter().any(|k| k == key) {
            self.asked.borrow_mut().push(key.to_owned());
            self.document.note(|n| n.asked(&self.path, key));
        }
        self.table.get(key)
    }

    /// The value of a key that must be there; `example` is a line of the file that has it.
    pub fn required(&self, key: &str, example: &str) -> Option<&'d Node> {
        self.needs(key);
        let node = self.optional(key);
        if node.is_none() {
            self.missing(key, example);
        }
        node
    }

    /// Notes that this table must have the key, for schemas.
    pub(crate) fn needs(&self, key: &str) {
        if !self.needed.borrow().iter().any(|k| k == key) {
            self.needed.borrow_mut().push(key.to_owned());
            self.document.note(|n| n.required(&self.path, key));
        }
    }

    /// Notes what a key may hold, for schemas.
    pub(crate) fn expects(&self, key: &str, kind: impl FnOnce() -> Kind) {
        self.document.note(|n| n.kind(&self.path, key, kind()));
    }

    /// Notes that the keys of this table are ids of the user's.
    pub(crate) fn keys_are_ids(&self) {
        self.document.note(|n| n.keys_are_ids(&self.path));
    }

    /// Notes a value that was read.
    pub(crate) fn found(&self, key: &str, value: impl FnOnce() -> SeenValue, certainty: Option<Certainty>) {
        self.document.note(|n| n.seen(self.path_of(key), value(), certainty));
    }

    /// Says that a key is missing.
    pub fn missing(&self, key: &str, example: &str) {
        // Behind a grammar error a key may stand unseen.
        if !self.document.is_broken() {
            let message = text::MISSING_KEY.with("key", key);
            self.document.error(
                self.span,
                Some(&self.path_of(key)),
                message,
                Some(text::HINT_EXAMPLE.with("example", example)),
            );
        }
    }

    /// True if the key is there; counts as asked for.
    pub fn has(&self, key: &str) -> bool {
        self.optional(key).is_some()
    }

    /// A fault at the value of a key (at the table where it is missing).
    pub fn fault(&self, key: &str, message: impl Into<Message>, hint: Option<Message>) {
        let span = self.table.get(key).map_or(self.span, |n| n.span);
        self.document.error(span, Some(&self.path_of(key)), message.into(), hint);
    }

    /// A warning at the value of a key (at the table where it is missing).
    pub fn warning(&self, key: &str, message: impl Into<Message>, hint: Option<Message>) {
        let span = self.table.get(key).map_or(self.span, |n| n.span);
        self.document.report(Severity::Warning, span, Some(&self.path_of(key)), message.into(), hint);
    }

    /// A fault at a value.
    pub fn fault_at(&self, node: &Node, key: &str, message: impl Into<Message>, hint: Option<Message>) {
        self.document.error(node.span, Some(&self.path_of(key)), message.into(), hint);
    }

    /// Says that a value is of the wrong kind.
    pub fn wrong_type(&self, node: &Node, key: &str, expected: TextId) {
        let message = text::WRONG_TYPE.with("key", key).with("expected", expected).with("found", node.value.kind());
        self.fault_at(node, key, message, None);
    }

    /// Ends the reading of this table: keys not asked for are unknown.
    pub fn done(&self) {
        let asked = self.asked.borrow();
        for entry in self.table.entries.iter().filter(|e| !asked.contains(&e.key)) {
            let known = asked.iter().map(String::as_str);
            let hint = match nearest(&entry.key, known) {
                Some(near) => text::HINT_NEAREST.with("nearest", near),
                None => text::HINT_KNOWN.with("known", asked.join(", ")),
            };
            let message = text::UNKNOWN_KEY.with("key", &entry.key);
            self.document.error(entry.key_span, Some(&self.path_of(&entry.key)), message, Some(hint));
        }
    }

    /// The table under a key that may be left out.
    pub fn table_or_none(&self, key: &str) -> Option<Self> {
        let node = self.optional(key)?;
        self.as_table(node, key)
    }

    /// The table under a key that must be there.
    pub fn table(&self, key: &str, example: &str) -> Option<Self> {
        let node = self.required(key, example)?;
        self.as_table(node, key)
    }

    /// A value as a table.
    pub fn as_table(&self, node: &'d Node, key: &str) -> Option<Self> {
        self.expects(key, || if key.ends_with(']') { Kind::Tables } else { Kind::Table });
        if let Value::Table(table) = &node.value {
            let mut reader = Self::new(self.document, table, node.span, self.path_of(key), self.source());
            reader.label = self.label_of(&label(key, table));
            Some(reader)
        } else {
            self.wrong_type(node, key, text::TYPE_TABLE);
            None
        }
    }

    /// The tables of a list (`[[key]]`); none where the key is missing.
    pub fn tables(&self, key: &str) -> Vec<Self> {
        let Some(node) = self.optional(key) else { return Vec::new() };
        self.expects(key, || Kind::Tables);
        let Value::List(items) = &node.value else {
            self.wrong_type(node, key, text::TYPE_LIST);
            return Vec::new();
        };
        let number = |i: usize| format!("{key}[{}]", i + 1);
        items.iter().enumerate().filter_map(|(i, item)| self.as_table(item, &number(i))).collect()
    }

    /// The entries of a list.
    pub fn as_list(&self, node: &'d Node, key: &str) -> Option<&'d [Node]> {
        self.expects(key, || Kind::List);
        let items = self.entries(node, key)?;
        if items.is_empty() {
            self.found(key, || SeenValue::Text(String::new()), self.source());
        }
        Some(items)
    }

    /// The entries of a list whose kind is noted elsewhere.
    pub(crate) fn entries(&self, node: &'d Node, key: &str) -> Option<&'d [Node]> {
        if let Value::List(items) = &node.value {
            Some(items)
        } else {
            self.wrong_type(node, key, text::TYPE_LIST);
            None
        }
    }

    /// A value as text that is not empty.
    pub fn as_text(&self, node: &'d Node, key: &str) -> Option<&'d str> {
        self.expects(key, || Kind::Text);
        match &node.value {
            Value::Text(t) if t.trim().is_empty() => {
                self.fault_at(node, key, text::EMPTY_TEXT.with("key", key), None);
                None
            }
            Value::Text(t) if placeholder::is_open(t) && !self.left_open(node, key) => None,
            Value::Text(t) => {
                self.found(key, || SeenValue::Text(t.clone()), self.source());
                Some(t)
            }
            _ => {
                self.wrong_type(node, key, text::TYPE_TEXT);
                None
            }
        }
    }

    /// Text that must be there.
    pub fn text(&self, key: &str, example: &str) -> Option<String> {
        self.required(key, example).and_then(|n| self.as_text(n, key)).map(str::to_owned)
    }

    /// Text that may be left out.
    pub fn text_or_none(&self, key: &str) -> Option<String> {
        self.optional(key).and_then(|n| self.as_text(n, key)).map(str::to_owned)
    }

    /// True or false; `None` where left out or wrong.
    pub fn yes_no(&self, key: &str) -> Option<bool> {
        let node = self.optional(key)?;
        self.expects(key, || Kind::YesNo);
        if let Value::Bool(b) = node.value {
            self.found(key, || SeenValue::YesNo(b), self.source());
            Some(b)
        } else {
            self.wrong_type(node, key, text::TYPE_BOOL);
            None
        }
    }

    /// A whole number of at least `least` that must be there.
    pub fn count(&self, key: &str, example: &str, least: i64) -> Option<i64> {
        self.count_within(key, example, (least, MOST_COUNT))
    }

    /// A whole number from a least to a greatest that must be there.
    pub fn count_within(&self, key: &str, example: &str, within: (i64, i64)) -> Option<i64> {
        let node = self.required(key, example)?;
        self.as_count(node, key, within)
    }

    /// A whole number from a least to a greatest that may be left out.
    pub fn count_or_none(&self, key: &str, within: (i64, i64)) -> Option<i64> {
        self.optional(key).and_then(|node| self.as_count(node, key, within))
    }

    fn as_count(&self, node: &'d Node, key: &str, (least, most): (i64, i64)) -> Option<i64> {
        self.expects(key, || Kind::Count { least });
        let Value::Number(written) = &node.value else {
            self.wrong_type(node, key, text::TYPE_WHOLE);
            return None;
        };
        match written.replace('_', "").parse::<i64>() {
            Ok(n) if (least..=most).contains(&n) => {
                self.found(key, || SeenValue::Count(n), self.source());
                Some(n)
            }
            Ok(_) => {
                let message = text::OUT_OF_RANGE
                    .with("key", key)
                    .with("value", written)
                    .with("low", least.to_string())
                    .with("high", most.to_string());
                self.fault_at(node, key, message, None);
                None
            }
            Err(_) => {
                self.wrong_type(node, key, text::TYPE_WHOLE);
                None
            }
        }
    }

    /// One of some words.
    pub fn as_choice<T: Copy>(&self, node: &'d Node, key: &str, words: &[(&str, T)]) -> Option<T> {
        let written = self.as_text(node, key)?;
        self.expects(key, || Kind::Words(words.iter().map(|(w, _)| (*w).to_owned()).collect()));
        let found = words.iter().find(|(w, _)| *w == written).map(|(_, t)| *t);
        if found.is_some() {
            self.found(key, || SeenValue::Word(written.to_owned()), self.source());
        } else {
            let known = words.iter().map(|(w, _)| *w).collect::<Vec<_>>();
            let hint = match nearest(written, known.iter().copied()) {
                Some(near) => text::HINT_NEAREST.with("nearest", near),
                None => text::HINT_KNOWN.with("known", known.join(", ")),
            };
            self.fault_at(node, key, text::BAD_CHOICE.with("key", key).with("value", written), Some(hint));
        }
        found
    }

    /// One of some words, that must be there.
    pub fn choice<T: Copy>(&self, key: &str, words: &[(&str, T)]) -> Option<T> {
        let example = format!("{key} = \"{}\"", words.first().map_or("", |(w, _)| w));
        self.required(key, &example).and_then(|n| self.as_choice(n, key, words))
    }

    fn certainty(&self, node: &'d Node) -> Option<Certainty> {
        match &node.value {
            // Nobody has said it yet: no better than a guess.
            Value::Text(t) if placeholder::is_open(t) => self.left_open(node, "source").then_some(Certainty::Estimated),
            _ => self.as_choice(node, "source", &certainty::WORDS),
        }
    }
}

/// `load[4]` as `load[mixed]`, where the table has an id.
fn label(key: &str, table: &Table) -> String {
    match (key.split_once('['), table.get("id").map(|node| &node.value)) {
        (Some((list, _)), Some(Value::Text(id))) => format!("{list}[{id}]"),
        _ => key.to_owned(),
    }
}
