//! The site: ground surface, overhead lines, landings, clearances. Pure. Site frame, metres.
//!
//! - [`Terrain`]: heights from a grid or a triangulation; a hole is `None`, never a number
//! - [`fit_plane`], [`Plane`]: slope, downhill direction and roughness of a piece of ground
//! - [`footing`]: ground under four contacts: the machine's pose on it, slope along and across
//! - [`PowerLine`], [`Span`]: conductors with sag; what is not known stays not known
//! - [`clearance`]: required distance by voltage and regime, with its clause
//! - [`Landing`]: the place that receives the load
//! - [`Gate`]: narrow places that it is driven through

pub mod clearance;
pub mod footing;
mod gate;
mod landing;
mod plane_fit;
mod power_line;
mod terrain;

pub use gate::{Gate, USUAL_CLEARANCE, USUAL_CLEARANCE_ABOVE};
pub use landing::{ApproachDirection, Landing, LandingRating};
pub use plane_fit::{Plane, fit_plane};
pub use power_line::{DeadConfirmation, PowerLine, Span};
pub use terrain::{Grid, Ground, GroundSource, Terrain, Tin, TinError};
