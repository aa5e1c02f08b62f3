//! Faults of an input, in words.

use crate::{Wording, ui};
use evidence::{Fault, Message, Place};

/// A fault ready to show: what, where, what to do.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct RenderedFault {
    /// What is wrong and what was expected.
    pub title: String,
    /// File, line, column and key; "" where the fault names none.
    pub place: String,
    /// What to do.
    pub hint: Option<String>,
}

impl Wording {
    /// The words of a fault.
    pub fn fault(self, fault: &Fault) -> RenderedFault {
        RenderedFault {
            title: self.render(&fault.message),
            place: self.place(&fault.place),
            hint: fault.hint.as_ref().map(|hint| self.render(hint)),
        }
    }

    /// A place in words: `job.toml, line 14, column 7, at lift[2].stand`. Lines and columns are not grouped.
    pub fn place(self, place: &Place) -> String {
        let at = place_message(place);
        match &place.key {
            Some(key) if place.file.is_empty() => key.clone(),
            Some(key) => self.render(&ui::PLACE_KEY.with("place", at).with("key", key)),
            None if place.file.is_empty() => String::new(),
            None => self.render(&at),
        }
    }
}

fn place_message(place: &Place) -> Message {
    let file = &place.file;
    match (place.line, place.column) {
        (Some(line), Some(column)) => {
            ui::PLACE_COLUMN.with("file", file).with("line", line.to_string()).with("column", column.to_string())
        }
        (Some(line), None) => ui::PLACE_LINE.with("file", file).with("line", line.to_string()),
        (None, _) => ui::PLACE_FILE.with("file", file),
    }
}
