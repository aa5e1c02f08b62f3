//! The marker of what the starter job leaves open, and what it takes away.
//!
//! Text that holds the marker, and a value behind it (`"FILL IN 1200 kg"`), still read, so that a job
//! can be planned while it is being written. Each is a warning, and none may end in a go: where it
//! belongs to something that a person answers for, that counts as not given; anywhere else in a
//! job nothing that persons state counts; in a machine file the machine counts as not inspected.

use crate::node::Node;
use crate::table::Reader;
use crate::text;
use evidence::{Severity, TextId};

/// What stands in every text and value that is still to be filled in.
pub const PLACEHOLDER: &str = "FILL IN";

/// True for text that is still to be filled in.
pub(crate) fn is_open(text: &str) -> bool {
    text.contains(PLACEHOLDER)
}

/// The made-up value behind the marker.
pub(crate) fn behind(text: &str) -> Option<&str> {
    text.trim_start().strip_prefix(PLACEHOLDER).map(|rest| rest.trim_start_matches([':', ' ', ',']))
}

impl Reader<'_> {
    /// Says that a value is still to be filled in. False where the file may hold none: then it is a fault.
    pub(crate) fn left_open(&self, node: &Node, key: &str) -> bool {
        let document = self.document();
        let message = text::PLACEHOLDER.with("key", self.label_of(key));
        let (severity, hint) = match document.drafts.get() {
            Some(hint) => (Severity::Warning, hint),
            None => (Severity::Error, text::HINT_FILL_IN),
        };
        document.report(severity, node.span, Some(&self.path_of(key)), message, Some(hint.message()));
        document.open.set(document.open.get() + 1);
        document.note(|n| n.open.push(self.path_of(key)));
        severity == Severity::Warning
    }

    /// Reads something that counts as not given while a part of it is still to be filled in: true
    /// with what was read if so.
    pub(crate) fn not_given_while_open<T>(&self, read: impl FnOnce(&Self) -> T) -> (T, bool) {
        let document = self.document();
        let (before, around) = (document.open.get(), document.drafts.get());
        let inside: Option<TextId> = around.map(|_| text::HINT_FILL_IN);
        document.drafts.set(inside);
        let value = read(self);
        document.drafts.set(around);
        let open = document.open.replace(before) > before;
        (value, open)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_marker_is_found_and_ordinary_words_are_not() {
        assert!(is_open("FILL IN: name, function") && is_open("J. Abreu, FILL IN function"));
        assert!(!is_open("Fill in the trench was rolled on 3 April"));
        assert_eq!(behind("FILL IN 1200 kg"), Some("1200 kg"));
        assert_eq!(behind("1200 kg"), None);
    }
}
