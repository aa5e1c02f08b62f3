//! What the planner chooses for a lift, where the job leaves it to it: machine, attachment, support state, stand; and what
//! would make a lift work that nothing does.
//!
//! - [`equipped`]: machine, attachment and support state
//! - [`look`]: the best stands around a landing, checked whole; each lift by itself
//! - [`settle`]: the stand, with those of the lifts before it
//! - [`StandFrom`]: whether a plan's stand was stated or found
//! - [`changes`]: the smallest changes that were tried and found to do

mod changes;
mod choose;
mod combinations;

pub use changes::changes;
pub use choose::StandFrom;
pub(crate) use choose::{Chosen, RADIUS, equipped, look, settle};
