//! Gates and other narrow places that loads are driven through.

use geometry::DVec2;

/// Room on either side of what passes, m, where the job states none (common practice).
pub const USUAL_CLEARANCE: f64 = 0.30;

/// Room above what passes, m, where the job states none (common practice).
pub const USUAL_CLEARANCE_ABOVE: f64 = 0.20;

/// A gate, a passage, a doorway.
#[derive(Debug, Clone, PartialEq)]
pub struct Gate {
    /// Short id.
    pub id: String,
    /// Name for people.
    pub name: String,
    /// Clear width, m.
    pub width: f64,
    /// Clear height, m; `None`: stated to be open above.
    pub height: Option<f64>,
    /// Room that must stay on either side, m.
    pub clearance: f64,
    /// Room that must stay above, m.
    pub clearance_above: f64,
    /// Where its two posts stand in plan, m; `None`: not stated.
    pub posts: Option<[DVec2; 2]>,
}
