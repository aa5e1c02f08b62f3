//! Where a value comes from and how sure it is.

use serde::{Deserialize, Serialize};

/// How sure a value of the user's is. Shown differently everywhere.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Serialize, Deserialize, schemars::JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum Certainty {
    /// Read from the machine's plate.
    Plate,
    /// From the maker's manual.
    Manual,
    /// From the chart in the cab.
    Chart,
    /// Weighed.
    Weighed,
    /// From a delivery ticket.
    Ticket,
    /// Measured on site.
    Measured,
    /// Built up from parts and densities.
    BuiltUp,
    /// Estimated by somebody.
    Estimated,
    /// Stated by a named person who answers for it.
    Stated,
    /// Invented for a demonstration or a test.
    Invented,
}

/// How a published source was read.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Serialize, Deserialize, schemars::JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum Reading {
    /// In the source itself.
    InSource,
    /// In somebody else's restatement: shown so.
    SecondHand,
    /// Not read, quoted from memory: shown so.
    FromMemory,
}

/// The source of a rule, a formula or a value of ours.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, schemars::JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum Source {
    /// A standard, law or book, by clause or page; the text is a citation, not translated.
    Published {
        /// Document and clause, for example "29 CFR 1926.600(a)(6)".
        citation: std::borrow::Cow<'static, str>,
        /// How it was read.
        read: Reading,
    },
    /// Common practice of the trade, no single source.
    CommonPractice,
    /// Mechanics: follows from equilibrium, no convention in it.
    Mechanics,
    /// The user's own file, with how sure it is.
    Input {
        /// File and key.
        place: String,
        /// How sure.
        certainty: Certainty,
    },
    /// A named person's acceptance.
    Person {
        /// Who.
        name: String,
        /// What they stated.
        statement: String,
    },
}

impl Source {
    /// A published source that was read.
    pub fn read(citation: &'static str) -> Self {
        Self::Published { citation: citation.into(), read: Reading::InSource }
    }
    /// A published source whose value was read in somebody else's restatement, and shown so.
    pub fn second_hand(citation: &'static str) -> Self {
        Self::Published { citation: citation.into(), read: Reading::SecondHand }
    }
    /// A published source quoted from memory, and shown so.
    pub fn from_memory(citation: &'static str) -> Self {
        Self::Published { citation: citation.into(), read: Reading::FromMemory }
    }
}
