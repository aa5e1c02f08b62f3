//! What the planner chooses for a lift, where the job leaves it to it: machine, attachment, support state, stand; and what
//! would make a lift work that nothing does.
//!
//! - [`choose`]: the best that the job allows, checked whole
//! - [`StandFrom`]: whether a plan's stand was stated or found
//! - [`changes`]: the smallest changes that were tried and found to do

mod changes;
mod choose;
mod combinations;

pub use changes::changes;
pub use choose::StandFrom;
pub(crate) use choose::{Chosen, RADIUS, choose};
