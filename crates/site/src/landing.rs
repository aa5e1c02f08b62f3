//! The place that receives the load.

use geometry::DVec2;
use quantity::Mass;

/// A landing: loading bay, floor edge, roof, stack, truck bed or ground.
#[derive(Debug, Clone)]
pub struct Landing {
    /// Short id.
    pub id: String,
    /// Name for people.
    pub name: String,
    /// Where the middle of the load's underside comes to lie, m.
    pub at: DVec2,
    /// Level of the surface it lies on, m in the site's heights.
    pub level: f64,
    /// Size (along the approach, across), m, for drawing.
    pub size: DVec2,
    /// Direction in which the load is carried in, with its tolerance; `None`: any, and the plan says so.
    pub approach: Option<ApproachDirection>,
    /// What it can carry.
    pub rating: Option<LandingRating>,
    /// What already lies there.
    pub occupied: Mass,
    /// Height of edge or guard that the load must be lifted over, above `level`, m.
    pub upstand: f64,
}

/// Direction of approach.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ApproachDirection {
    /// Heading of the machine, inside angle (rad counter-clockwise from east).
    pub heading: f64,
    /// Half the range allowed, rad.
    pub tolerance: f64,
}

/// What a landing may carry, by whom stated.
#[derive(Debug, Clone)]
pub struct LandingRating {
    /// Greatest mass on it at one time; `None`: rated in another way.
    pub mass: Option<Mass>,
    /// Who stated it.
    pub by: String,
}
