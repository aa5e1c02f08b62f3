//! The site: ground surface, overhead lines, landings, clearances. Pure. Site frame, metres.
//!
//! - [`Terrain`]: heights from a grid or a triangulation; a hole is `None`, never a number
//! - [`Tin`]: triangles from points, from points with breaklines and rings, or as a design gives them
//! - [`footing`]: ground under four contacts: the machine's pose on it, slope along and across
//! - [`PowerLine`], [`Span`]: conductors with sag; what is not known stays not known
//! - [`clearance`]: required distance by voltage and regime, with its clause
//! - [`Landing`]: the place that receives the load
//! - [`Gate`]: narrow places that it is driven through

pub mod clearance;
pub mod footing;
mod gate;
mod landing;
mod power_line;
mod terrain;
mod tin;
mod tin_breaklines;
mod tin_buckets;
mod tin_faces;
mod tin_overlap;
mod tin_points;
mod tin_rings;

pub use gate::{Gate, USUAL_CLEARANCE, USUAL_CLEARANCE_ABOVE};
pub use landing::{ApproachDirection, Landing, LandingRating};
pub use power_line::{DeadConfirmation, PowerLine, Span};
pub use terrain::{Grid, Ground, GroundSource, Terrain};
pub use tin::{Tin, TinDoubts, TinError, TinParts};
pub use tin_rings::{Ring, RingKind};
