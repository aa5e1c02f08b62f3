//! What a check says, as ids and typed arguments: no prose here. Pure.
//!
//! - [`Message`]: a text id with arguments; `wording` turns it into words
//! - [`Finding`]: one check's result: status, demand, limit, reserve, source, what to do
//! - [`Working`], [`Step`], [`Trace`]: the steps of a calculation, recorded only when asked for
//! - [`Source`], [`Certainty`]: where a value comes from and how sure it is
//! - [`Ranged`]: a value with its lower and upper bound
//! - [`Fault`], [`Faults`]: everything wrong with an input, each with code, place and hint
//! - [`messages!`]: declares a crate's text ids, so that a test can prove every one in every language

mod fault;
mod finding;
mod message;
mod ranged;
mod source;
mod working;

pub use fault::{Fault, Faults, Place, Severity};
pub use finding::{Comparison, Finding, Status, Verdict};
pub use message::{Arg, Message, TextId};
pub use ranged::Ranged;
pub use source::{Certainty, Reading, Source};
pub use working::{Silent, Step, Trace, Working};
