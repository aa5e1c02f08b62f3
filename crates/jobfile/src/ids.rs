//! Ids: unique in their kind, and what refers to them.

use crate::node::Node;
use crate::table::Reader;
use crate::text;
use evidence::TextId;

/// The ids of one kind, in the order of the file, with the lines they stand in.
#[derive(Debug, Clone, Default)]
pub(crate) struct Ids {
    known: Vec<(String, usize)>,
    /// True where an entry's id could not be read: then a reference may be to that one.
    gap: bool,
}

impl Ids {
    /// The id of a table, which must be new.
    pub(crate) fn add(&mut self, t: &Reader<'_>) -> Option<String> {
        let Some(id) = t.text("id", "id = \"A1\"") else {
            self.gap = true;
            self.known.push((String::new(), 0));
            return None;
        };
        let first = self.known.iter().find(|(known, _)| *known == id).map(|(_, line)| *line);
        let line = t.optional("id").map_or(0, |node| t.document().line(node.span));
        // Kept although it is taken: the place in the list is the index.
        self.known.push((id.clone(), line));
        if let Some(line) = first {
            t.fault("id", text::DUPLICATE_ID.with("id", &id).with("line", line), None);
            return None;
        }
        Some(id)
    }

    /// The index of an id that a key names; unknown ids are faults.
    pub(crate) fn find(&self, t: &Reader<'_>, node: &Node, key: &str, id: &str, kind: TextId) -> Option<usize> {
        let found = self.known.iter().position(|(known, _)| known == id);
        if found.is_none() && !self.gap {
            let known: Vec<&str> = self.known.iter().map(|(k, _)| k.as_str()).collect();
            let hint = match crate::nearest::nearest(id, known.iter().copied()) {
                Some(near) => text::HINT_NEAREST.with("nearest", near),
                None => text::HINT_KNOWN.with("known", known.join(", ")),
            };
            t.fault_at(node, key, text::UNKNOWN_REFERENCE.with("kind", kind).with("id", id), Some(hint));
        }
        found
    }

    /// The index of the id under a key that must be there.
    pub(crate) fn reference(&self, t: &Reader<'_>, key: &str, kind: TextId) -> Option<usize> {
        let node = t.required(key, &format!("{key} = \"…\""))?;
        let id = t.as_text(node, key)?;
        self.find(t, node, key, id, kind)
    }
}
