//! An independent witness of the statics: the same machine as rigid bodies in a physics engine
//! (rapier, f64), stepped through time until it stands or goes over.
//!
//! Nothing here is taken from `stability` but the words for a stance: masses, contact points and
//! inertia are summed anew from the machine's description, and no tipping line is drawn. What the
//! engine finds is compared with `stability` in `tests/`.
//!
//! - [`Question`]: machine, boom, load and stance, as the statics is asked
//! - [`Bodies`]: the two bodies, four contacts and the pin that follow from it
//! - [`HeldBy`]: which wheels hold the machine along its length
//! - [`rigid`]: contacts by the engine's own solver, with friction
//! - [`soft`]: contacts as springs whose forces are worked out at every step
//! - [`draw`]: seeded machines and poses
//!
//! Machine frame, SI.

mod bodies;
pub mod draw;
mod engine;

pub mod rigid;
mod search;
pub mod soft;

pub use bodies::{Bodies, Lump, Question};
pub use search::gravity;

/// Which wheels hold the machine along its length. Sideways every wheel holds.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum HeldBy {
    /// The front wheels, each by its share of their weight; the rear ones roll.
    Front,
    /// The rear wheels, both alike as through their differential; the front ones roll.
    Rear,
    /// Every wheel is braked by itself: turning on the spot scrubs.
    EveryWheel,
}
