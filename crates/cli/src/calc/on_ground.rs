//! One calculation on stated ground, from reading to printing.

use super::input::Input;
use super::{ground_input, text as words, working};
use crate::args::Said;
use crate::failure::Failure;
use crate::{Outcome, Run, terminal};
use evidence::{Message, Working};
use ground::Refusal;
use jobfile::Reader;
use serde::Serialize;

/// What such a calculation found.
pub(super) trait OnGround: Serialize {
    /// In words, the verdict first; what no such calculation covers is said by [`run`].
    fn lines(&self) -> Vec<Message>;

    /// Its steps.
    fn working(&self) -> &Working;

    /// True if what was asked holds.
    fn holds(&self) -> bool;
}

/// Reads, answers and prints. `code`: of the fault where there is no answer.
pub(super) fn run<A, R: OnGround>(
    input: &Input,
    said: Said,
    code: &'static str,
    asked: impl FnOnce(&Reader<'_>) -> Option<A>,
    answer: impl FnOnce(&A) -> Result<R, Refusal>,
) -> Run {
    let asked = ground_input::read(input, said, asked)?;
    let refused = |r: Refusal| Failure::one(said, code, input.document.file(), r.message(), None);
    let found = answer(&asked).map_err(refused)?;
    if said.json() {
        terminal::print_json(&found);
    } else {
        let w = said.wording();
        for line in found.lines().iter().chain([&words::BEARING_NOTE.message()]) {
            terminal::paragraph(&w.render(line), "", "  ");
        }
        working::print(found.working(), None, said);
    }
    Ok(if found.holds() { Outcome::Done } else { Outcome::Outside })
}
