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

/// A scale or a delivery ticket says the mass, not where its centre is, how large the load is or what
/// the sling carries: those are estimates until they say otherwise.
pub(crate) fn beside_the_mass(of_the_mass: Certainty) -> Certainty {
    match of_the_mass {
        Certainty::Weighed | Certainty::Ticket => Certainty::Estimated,
        other => other,
    }
}

/// A shape factor is measured nowhere on a site: it is stated or estimated.
pub(crate) fn of_a_factor(around: Certainty) -> Certainty {
    match around {
        Certainty::Stated | Certainty::Invented => around,
        _ => Certainty::Estimated,
    }
}

/// The words as a list to show.
pub(crate) fn words() -> String {
    WORDS.map(|(w, _)| w).join(", ")
}

/// The word for a certainty.
pub(crate) fn word(certainty: Certainty) -> &'static str {
    WORDS.iter().find(|(_, c)| *c == certainty).map_or("", |(w, _)| w)
}
