//! Words for the fixed terms of `evidence` and `quantity`.

use crate::{Wording, entry, ui};
use evidence::{Certainty, Message, Reading, Severity, Source, Status, TextId, Verdict};
use quantity::Dimension;

impl Wording {
    /// The verdict word: GO, GO WITH CONDITIONS, NO-GO.
    pub fn verdict(self, verdict: Verdict) -> String {
        self.text(match verdict {
            Verdict::Go => ui::VERDICT_GO,
            Verdict::GoWithConditions => ui::VERDICT_CONDITIONS,
            Verdict::NoGo => ui::VERDICT_NO_GO,
        })
    }

    /// One sentence that says what a verdict means for the reader.
    pub fn verdict_means(self, verdict: Verdict) -> String {
        self.text(match verdict {
            Verdict::Go => ui::VERDICT_GO_MEANS,
            Verdict::GoWithConditions => ui::VERDICT_CONDITIONS_MEANS,
            Verdict::NoGo => ui::VERDICT_NO_GO_MEANS,
        })
    }

    /// The word for a check's status.
    pub fn status(self, status: Status) -> String {
        self.text(match status {
            Status::Go => ui::STATUS_GO,
            Status::Condition => ui::STATUS_CONDITION,
            Status::CannotTell => ui::STATUS_CANNOT_TELL,
            Status::NoGo => ui::STATUS_NO_GO,
            Status::Stop => ui::STATUS_STOP,
        })
    }

    /// The name of a check, from a finding's `check`: "chart" is "Load chart".
    pub fn check(self, check: &str) -> String {
        self.render(&Message { id: format!("check-{check}").into(), args: Vec::new() })
    }

    /// The word for a fault's severity.
    pub fn severity(self, severity: Severity) -> String {
        self.text(match severity {
            Severity::Error => ui::SEVERITY_ERROR,
            Severity::Warning => ui::SEVERITY_WARNING,
        })
    }

    /// How sure a value is, as a phrase that follows it.
    pub fn certainty(self, certainty: Certainty) -> String {
        self.text(certainty_id(certainty))
    }

    /// Where a rule, formula or value comes from. A citation whose value was not read in the source says so in words.
    pub fn source(self, source: &Source) -> String {
        self.render(&match source {
            Source::Published { citation, read } => {
                let id = match read {
                    Reading::InSource => ui::SOURCE_PUBLISHED,
                    Reading::SecondHand => ui::SOURCE_SECOND_HAND,
                    Reading::FromMemory => ui::SOURCE_FROM_MEMORY,
                };
                match sentence_of(citation) {
                    Some(sentence) => id.with("citation", sentence),
                    None => id.with("citation", citation.as_ref()),
                }
            }
            Source::CommonPractice => ui::SOURCE_COMMON_PRACTICE.message(),
            Source::Mechanics => ui::SOURCE_MECHANICS.message(),
            Source::Input { place, certainty } => {
                ui::SOURCE_INPUT.with("place", place).with("certainty", certainty_id(*certainty))
            }
            Source::Person { name, statement } if statement.trim().is_empty() => {
                ui::SOURCE_PERSON_ONLY.with("name", name)
            }
            Source::Person { name, statement } => ui::SOURCE_PERSON.with("name", name).with("statement", statement),
        })
    }

    /// A reserve as a phrase: `12 % in reserve`, or `8.0 % beyond the limit`.
    pub fn reserve(self, reserve: f64) -> String {
        let share = quantity::Quantity::ratio(reserve.abs());
        let id = if reserve < 0.0 { ui::RESERVE_OVER } else { ui::RESERVE_OF };
        self.render(&id.with("share", share))
    }

    /// What a dimension is called: "a length", "a mass".
    pub fn dimension(self, dimension: Dimension) -> String {
        self.text(entry::dimension(dimension))
    }
}

/// Citations that are sentences rather than a document and clause, by their exact text in the source: what
/// they are called in a reader's language. Every other citation is a name and stays as it is.
const SENTENCES: [(&str, TextId); 2] = [
    ("tyre patch = wheel force / inflation pressure, handbook practice", ui::CITATION_TYRE_PATCH),
    ("ISO 22915-14 (kind of test; low confidence)", ui::CITATION_TILT_TESTS),
];

fn sentence_of(citation: &str) -> Option<TextId> {
    SENTENCES.iter().find(|(text, _)| *text == citation).map(|(_, id)| *id)
}

fn certainty_id(certainty: Certainty) -> TextId {
    match certainty {
        Certainty::Plate => ui::CERTAINTY_PLATE,
        Certainty::Manual => ui::CERTAINTY_MANUAL,
        Certainty::Chart => ui::CERTAINTY_CHART,
        Certainty::Weighed => ui::CERTAINTY_WEIGHED,
        Certainty::Ticket => ui::CERTAINTY_TICKET,
        Certainty::Measured => ui::CERTAINTY_MEASURED,
        Certainty::BuiltUp => ui::CERTAINTY_BUILT_UP,
        Certainty::Estimated => ui::CERTAINTY_ESTIMATED,
        Certainty::Stated => ui::CERTAINTY_STATED,
        Certainty::Invented => ui::CERTAINTY_INVENTED,
    }
}
