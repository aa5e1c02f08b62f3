//! Tools other than forks.

use geometry::DVec2;
use quantity::Length;

/// A jib with a hook.
#[derive(Debug, Clone)]
pub struct Jib {
    /// Hook (bearing point of the sling) ahead of and above the head pin, level, m.
    pub hook: DVec2,
}

/// A bucket for loose material.
#[derive(Debug, Clone)]
pub struct Bucket {
    /// Back of its floor, ahead of and above the head pin, level, m.
    pub heel: DVec2,
    /// What it holds, m³.
    pub volume: f64,
    /// Width of the cutting edge, m.
    pub edge: f64,
    /// Load centre from the heel that its plate is rated at.
    pub rated_load_centre: Length,
}

/// A clamp that grips blocks between two arms.
#[derive(Debug, Clone)]
pub struct Clamp {
    /// Root of the arms at their underside, ahead of and above the head pin, level, m.
    pub heel: DVec2,
    /// Narrowest and widest load that it grips, m.
    pub grip: (f64, f64),
    /// Load centre from the heel that its plate is rated at.
    pub rated_load_centre: Length,
    /// Its own width, arms open, m; `None`: not stated.
    pub width: Option<f64>,
    /// Force of one arm and friction between pad and load, where both are known.
    pub hold: Option<Hold>,
}

/// What holds a load in a clamp.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Hold {
    /// Force of one arm, N.
    pub force: f64,
    /// Friction between pad and load.
    pub friction: f64,
}

/// What the holding force of a clamp is divided by: half of it may be used (common practice, from
/// memory).
pub const HOLD_RESERVE: f64 = 2.0;

impl Hold {
    /// Mass (kg) that two arms hold with the reserve: `W = 2 μ F / (2 g)`.
    pub fn mass_kg(self) -> f64 {
        2.0 * self.friction * self.force / (HOLD_RESERVE * quantity::STANDARD_GRAVITY)
    }
}

/// Another tool of the maker's list.
#[derive(Debug, Clone)]
pub struct OtherTool {
    /// Where the load stands against the tool, ahead of and above the head pin, level, m.
    pub heel: DVec2,
    /// Load centre from the heel that its plate is rated at.
    pub rated_load_centre: Length,
    /// Its own width, m; `None`: not stated.
    pub width: Option<f64>,
}

/// Width that a tool is taken to have beside lines and obstacles where nobody stated one, m (ours).
pub const UNSTATED_WIDTH: f64 = 3.0;

/// A basket, cage or platform for people. Files may list it; no lift is ever planned with it.
#[derive(Debug, Clone)]
pub struct Platform {
    /// Its floor at the carriage, ahead of and above the head pin, level, m.
    pub floor: DVec2,
}
