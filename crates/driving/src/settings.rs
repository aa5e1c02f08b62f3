//! How the search goes about it, and what counts as how far.

use core::ops::ControlFlow;

/// What counts as how many metres, and how finely is searched.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Settings {
    /// Headings told apart in a full turn.
    pub headings: u16,
    /// Side of the lattice's cells, m: within one, in a heading and a gear, one pose is kept. `None`: coarse cells
    /// first, those of the map last.
    pub place: Option<f64>,
    /// Length of a step at least, m.
    pub step: f64,
    /// A metre in reverse counts as that many, 1 or more.
    pub reverse: f64,
    /// A change of gear counts as that many metres.
    pub gear_change: f64,
    /// A change of steering mode counts as that many metres: stop, straighten the wheels, switch.
    pub steering_change: f64,
    /// Weight of the estimate of what remains, 1 or more: above 1 the search is faster, and its way costs
    /// at most about that many times as much as the cheapest of its lattice.
    pub weight: f64,
    /// Poses looked at in the last round before the search gives up.
    pub most: usize,
    /// Seconds that a change of gear or steering mode takes, s.
    pub pause: f64,
    /// Acceleration and braking that the time is worked out with, m/s².
    pub acceleration: f64,
}

impl Default for Settings {
    /// 72 headings; steps of 1.2 m; reverse counts half as much again, a change of gear 4 m, of steering mode
    /// 6 m; 3 s for a change, 0.5 m/s² (all common practice or chosen for the search).
    fn default() -> Self {
        Self {
            headings: 72,
            place: None,
            step: 1.2,
            reverse: 1.5,
            gear_change: 4.0,
            steering_change: 6.0,
            weight: 2.0,
            most: 150_000,
            pause: 3.0,
            acceleration: 0.5,
        }
    }
}

/// How far a search is.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Progress {
    /// Poses looked at.
    pub looked_at: usize,
    /// Estimated cost from the most promising pose to the target, m.
    pub left: f64,
}

/// Told now and then how far it is; ends the search by breaking.
pub type Watch<'a> = &'a mut dyn FnMut(Progress) -> ControlFlow<()>;
