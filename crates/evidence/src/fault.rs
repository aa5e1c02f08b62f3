//! What is wrong with an input: code, place, what was expected, what to do.

use crate::Message;
use serde::{Deserialize, Serialize};

/// How bad a fault is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize, schemars::JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum Severity {
    /// Usable, but should be looked at; printed with every result.
    Warning,
    /// Not usable.
    Error,
}

/// Where in an input.
#[derive(Debug, Clone, PartialEq, Eq, Default, Serialize, Deserialize, schemars::JsonSchema)]
pub struct Place {
    /// File name relative to the job folder ("" when there is none).
    pub file: String,
    /// Key path in the file, such as `lift[2].stand.heading`.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub key: Option<String>,
    /// Line, from 1.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub line: Option<usize>,
    /// Column in characters, from 1.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub column: Option<usize>,
    /// Byte range in the file, for a caret.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub span: Option<(usize, usize)>,
}

/// One fault of an input.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, schemars::JsonSchema)]
pub struct Fault {
    /// Stable code, such as `quantity::missing-unit`.
    pub code: String,
    /// How bad.
    pub severity: Severity,
    /// Where.
    pub place: Place,
    /// What is wrong and what was expected.
    pub message: Message,
    /// What to do.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub hint: Option<Message>,
}

/// Every fault of an input, in the order found.
#[derive(Debug, Clone, PartialEq, Default, Serialize, Deserialize, schemars::JsonSchema)]
pub struct Faults {
    /// The faults.
    pub list: Vec<Fault>,
}

impl Faults {
    /// Adds one.
    pub fn push(&mut self, fault: Fault) {
        self.list.push(fault);
    }
    /// Adds an error at a place.
    pub fn error(&mut self, code: &str, place: Place, message: impl Into<Message>, hint: Option<Message>) {
        self.push(Fault { code: code.to_owned(), severity: Severity::Error, place, message: message.into(), hint });
    }
    /// Adds a warning at a place.
    pub fn warn(&mut self, code: &str, place: Place, message: impl Into<Message>, hint: Option<Message>) {
        self.push(Fault { code: code.to_owned(), severity: Severity::Warning, place, message: message.into(), hint });
    }
    /// True if any fault makes the input unusable.
    pub fn any_error(&self) -> bool {
        self.list.iter().any(|f| f.severity == Severity::Error)
    }
    /// Takes all of another list.
    pub fn append(&mut self, mut other: Self) {
        self.list.append(&mut other.list);
    }
}

impl Place {
    /// A whole file.
    pub fn file(name: &str) -> Self {
        Self { file: name.to_owned(), ..Self::default() }
    }
}
