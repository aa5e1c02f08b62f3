//! The site: ground surface, overhead lines, landings, clearances. Pure. Site frame, metres.
//!
//! - [`Terrain`]: heights from a grid or a triangulation; a hole is `None`, never a number
//! - [`footing`]: ground under four contacts: the machine's pose on it, slope along and across
//! - [`PowerLine`], [`Span`]: conductors with sag; what is not known stays not known
//! - [`clearance`]: required distance by voltage and regime, with its clause
//! - [`Landing`]: the place that receives the load
//! - [`PlanArea`]: an area in plan with holes: distances, area, what is inside
//! - [`Gate`]: narrow places that it is driven through

pub mod clearance;
pub mod footing;
mod gate;
mod landing;
mod plan_area;
mod power_line;
mod terrain;

pub use gate::{Gate, USUAL_CLEARANCE, USUAL_CLEARANCE_ABOVE};
pub use landing::{ApproachDirection, Landing, LandingRating};
pub use plan_area::{PlanArea, PlanAreaError};
pub use power_line::{DeadConfirmation, PowerLine, Span};
pub use terrain::{Grid, Ground, GroundSource, Terrain, Tin, TinError};
