//! What people accepted by name: printed once in a document, with a number.

use crate::breakable::breakable;
use crate::lift_view::Say;
use evidence::Finding;
use planning::text;
use serde::Serialize;

/// A statement with its number and the lifts that rest on it.
#[derive(Serialize)]
struct Statement {
    number: usize,
    text: String,
    lifts: Vec<String>,
}

/// The statements found so far, in the order of the lifts.
#[derive(Default, Serialize)]
#[serde(transparent)]
pub(crate) struct Accepted {
    statements: Vec<Statement>,
    #[serde(skip)]
    lift: String,
}

impl Accepted {
    /// The findings that follow belong to this lift.
    pub(crate) fn begin(&mut self, lift: &str) {
        lift.clone_into(&mut self.lift);
    }
    /// Number of the statement on which a finding rests, counted from 1; `None` if it rests on none.
    pub(crate) fn number(&mut self, finding: &Finding, say: &Say) -> Option<usize> {
        if finding.message.id != text::MATTER_ACCEPTED.id {
            return None;
        }
        let text = say.message(&finding.message);
        let at = self.statements.iter().position(|s| s.text == text).unwrap_or_else(|| {
            let number = self.statements.len() + 1;
            self.statements.push(Statement { number, text, lifts: Vec::new() });
            number - 1
        });
        let statement = &mut self.statements[at];
        if statement.lifts.last() != Some(&breakable(&self.lift)) {
            statement.lifts.push(breakable(&self.lift));
        }
        Some(statement.number)
    }
}
