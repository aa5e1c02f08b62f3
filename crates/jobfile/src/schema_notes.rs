//! What reading asks for and finds, noted where somebody wants to know: schemas and explanations follow
//! from what the reader does, and from no second list of keys.

use crate::quantity_value::Bound;
use evidence::Certainty;
use quantity::{Dimension, Quantity};
use std::collections::BTreeMap;

/// What a key may hold. A key that may hold several has several.
#[derive(Debug, Clone, PartialEq)]
pub enum Kind {
    /// Text that is not empty.
    Text,
    /// True or false.
    YesNo,
    /// A whole number of at least `least`.
    Count {
        /// The least.
        least: i64,
    },
    /// One of some words.
    Words(Vec<String>),
    /// A day, in quotes or without.
    Date,
    /// A quantity that somebody decides.
    Quantity {
        /// What it measures.
        dimension: Dimension,
        /// What it may be.
        bound: Bound,
    },
    /// A quantity of the world: also as a table with `value` and `source`.
    Fact {
        /// What it measures.
        dimension: Dimension,
        /// What it may be.
        bound: Bound,
    },
    /// A list of so many quantities: a point, a range.
    Numbers {
        /// How many.
        count: usize,
        /// What each measures.
        dimension: Dimension,
        /// What each may be.
        bound: Bound,
    },
    /// A list of points of two lengths; plain numbers take the table's `unit`.
    Points {
        /// How many at least.
        least: usize,
        /// Greatest length either way, m.
        most: f64,
    },
    /// A plain number in a unit that the table states for all of them.
    Plain,
    /// Rows of a table; their entries are what the other kinds of the key say.
    Rows,
    /// A list; its entries are what the other kinds of the key say.
    List,
    /// A table.
    Table,
    /// A list of tables.
    Tables,
}

/// What reading asked of a key.
#[derive(Debug, Clone, PartialEq)]
pub struct KeyShape {
    /// The key.
    pub key: String,
    /// In how many tables of this kind it was required.
    pub required: usize,
    /// What it may hold, as far as values were met.
    pub kinds: Vec<Kind>,
}

/// What reading asked of all tables at one place, lists without their numbers.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct TableShape {
    /// How many such tables were read.
    pub met: usize,
    /// Its keys in the order in which they were asked for.
    pub keys: Vec<KeyShape>,
    /// True where the keys are ids that the user chose.
    pub keys_are_ids: bool,
}

impl TableShape {
    /// The shape of a key.
    pub fn key(&self, key: &str) -> Option<&KeyShape> {
        self.keys.iter().find(|k| k.key == key)
    }
    /// True where every table that was met had to have the key.
    pub fn requires(&self, key: &str) -> bool {
        self.met > 0 && self.key(key).is_some_and(|k| k.required >= self.met)
    }
    fn key_mut(&mut self, key: &str) -> &mut KeyShape {
        let at = self.keys.iter().position(|k| k.key == key).unwrap_or_else(|| {
            self.keys.push(KeyShape { key: key.to_owned(), required: 0, kinds: Vec::new() });
            self.keys.len() - 1
        });
        &mut self.keys[at]
    }
}

/// All tables of a kind of file, by place: "" for the file, `boom.section[]` for each `[[boom.section]]`.
pub type Shapes = BTreeMap<String, TableShape>;

/// A value that was read.
#[derive(Debug, Clone, PartialEq)]
pub enum SeenValue {
    /// Words of the user's own; several of a list with commas between, none of an empty list.
    Text(String),
    /// A word of the file format.
    Word(String),
    /// True or false.
    YesNo(bool),
    /// A whole number.
    Count(i64),
    /// One quantity, or those of a point or range.
    Quantities(Vec<Quantity>),
    /// Corners or points of a list, m.
    Points(Vec<geometry::DVec2>),
}

/// A value that was read, and where it stands.
#[derive(Debug, Clone, PartialEq)]
pub struct Seen {
    /// Path in the file; lists count from 1.
    pub path: String,
    /// The value.
    pub value: SeenValue,
    /// Where it comes from, for values of the world.
    pub certainty: Option<Certainty>,
}

/// What was noted of one file.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Notes {
    /// What was asked.
    pub shapes: Shapes,
    /// What was read, in the order of reading.
    pub seen: Vec<Seen>,
    /// Paths of values that are still to be filled in.
    pub open: Vec<String>,
}

impl Notes {
    pub(crate) fn table(&mut self, path: &str) {
        self.shapes.entry(pattern(path)).or_default().met += 1;
    }

    pub(crate) fn keys_are_ids(&mut self, path: &str) {
        self.shapes.entry(pattern(path)).or_default().keys_are_ids = true;
    }

    pub(crate) fn asked(&mut self, path: &str, key: &str) {
        self.shapes.entry(pattern(path)).or_default().key_mut(key);
    }

    pub(crate) fn required(&mut self, path: &str, key: &str) {
        self.shapes.entry(pattern(path)).or_default().key_mut(key).required += 1;
    }

    pub(crate) fn kind(&mut self, path: &str, key: &str, kind: Kind) {
        // The entries of a list are read under the name of the list.
        let key = key.split('[').next().unwrap_or(key);
        let kinds = &mut self.shapes.entry(pattern(path)).or_default().key_mut(key).kinds;
        match &kind {
            // A word is read as text first.
            Kind::Words(_) => kinds.retain(|k| *k != Kind::Text),
            Kind::Text if kinds.iter().any(|k| matches!(k, Kind::Words(_))) => return,
            _ => {}
        }
        if !kinds.contains(&kind) {
            kinds.push(kind);
        }
    }

    pub(crate) fn seen(&mut self, path: String, value: SeenValue, certainty: Option<Certainty>) {
        let (around, key) = path.rsplit_once('.').unwrap_or(("", &path));
        let list =
            self.shapes.get(&pattern(around)).and_then(|t| t.key(key)).is_some_and(|k| k.kinds.contains(&Kind::List));
        let value = match (value, self.seen.iter().find(|s| s.path == path).map(|s| &s.value)) {
            // The texts of a list stand under one key.
            (SeenValue::Text(text), Some(SeenValue::Text(before))) if list && !before.is_empty() => {
                SeenValue::Text(format!("{before}, {text}"))
            }
            (value, _) => value,
        };
        let seen = Seen { path, value, certainty };
        match self.seen.iter_mut().find(|s| s.path == seen.path) {
            Some(earlier) => *earlier = seen,
            None => self.seen.push(seen),
        }
    }
}

/// `body[2].centre` as `body[].centre`.
pub fn pattern(path: &str) -> String {
    let mut out = String::with_capacity(path.len());
    let mut number = false;
    for c in path.chars() {
        match c {
            '[' => number = true,
            ']' => {
                number = false;
                out.push_str("[]");
            }
            _ if number => {}
            c => out.push(c),
        }
    }
    out
}

/// The path of a key in a table.
pub fn join(path: &str, key: &str) -> String {
    if path.is_empty() { key.to_owned() } else { format!("{path}.{key}") }
}

#[cfg(test)]
#[allow(clippy::unwrap_used, reason = "tests")]
mod tests {
    use super::*;

    #[test]
    fn numbers_of_lists_go() {
        assert_eq!(pattern("chart[12].zone[3].outline"), "chart[].zone[].outline");
        assert_eq!(pattern("boom"), "boom");
    }

    #[test]
    fn a_word_is_no_free_text() {
        let mut notes = Notes::default();
        notes.table("");
        notes.kind("", "support", Kind::Text);
        notes.kind("", "support", Kind::Words(vec!["tyres".into()]));
        notes.kind("", "support", Kind::Text);
        assert_eq!(notes.shapes[""].key("support").unwrap().kinds, [Kind::Words(vec!["tyres".into()])]);
    }
}
