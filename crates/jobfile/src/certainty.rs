//! The words for where a value comes from.

use evidence::Certainty;

/// The words a file may use, with their meaning.
pub(crate) const WORDS: [(&str, Certainty); 10] = [
    ("plate", Certainty::Plate),
    ("manual", Certainty::Manual),
    ("chart", Certainty::Chart),
    ("weighed", Certainty::Weighed),
    ("ticket", Certainty::Ticket),
    ("measured", Certainty::Measured),
    ("built-up", Certainty::BuiltUp),
    ("estimated", Certainty::Estimated),
    ("stated", Certainty::Stated),
    ("invented", Certainty::Invented),
];

/// The words as a list to show.
pub(crate) fn words() -> String {
    WORDS.map(|(w, _)| w).join(", ")
}

/// The word for a certainty.
pub(crate) fn word(certainty: Certainty) -> &'static str {
    WORDS.iter().find(|(_, c)| *c == certainty).map_or("", |(w, _)| w)
}
