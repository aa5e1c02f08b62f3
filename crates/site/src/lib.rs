//! The site: ground surface, overhead lines, landings, clearances. Pure. Site frame, metres.
//!
//! - [`Site`]: all of it together
//! - [`Terrain`]: heights from a grid or a triangulation; a hole is `None`, never a number
//! - [`Tin`]: triangles from points, from points with breaklines and rings, or as a design gives them
//! - [`fit_plane`], [`Plane`]: slope, downhill direction and roughness of a piece of ground
//! - [`footprint_ground`]: heights, slopes and roughness under a rectangle, each with its range
//! - [`footing`]: ground under four contacts: the machine's pose on it, slope along and across
//! - [`PowerLine`], [`Span`]: conductors with sag; what is not known stays not known
//! - [`conductor`]: sag as parabola and catenary, with wind
//! - [`Surroundings`]: [`Thing`]s that stand, listed and indexed as [`Things`], [`Excavation`]s, [`Buried`] things, [`Zone`]s
//! - [`walls`]: the sides of a thing with its openings
//! - [`distance_thing`], [`ThingIndex`]: how near a part of a machine comes to them
//! - [`profile`], [`headroom`], [`sight`]: a cut through the site, room above a path, what a point is hidden by
//! - [`slopes`], [`SlopeStatistics`], [`aspects`], [`hillshade`], [`contours`]: relief of a grid, for pictures and standing places
//! - [`clearance`]: required distance by voltage and regime, with its clause
//! - [`Landing`]: the place that receives the load
//! - [`PlanArea`]: an area in plan with holes: distances, area, what is inside
//! - [`Gate`]: narrow places that it is driven through

mod below_ground;
pub mod clearance;
pub mod conductor;
mod contours;
mod distance_thing;
pub mod footing;
mod footprint;
mod gate;
mod headroom;
mod landing;
mod plan_area;
mod plan_shape;
mod plane_fit;
mod power_line;
mod profile;
mod relief;
mod sampled_grid;
mod sight;
mod slope;
mod surroundings;
mod terrain;
mod thing;
mod thing_index;
mod things;
mod tin;
mod tin_breaklines;
mod tin_buckets;
mod tin_faces;
mod tin_overlap;
mod tin_points;
mod tin_rings;
mod whole;
mod zone;

pub use below_ground::{Buried, BuriedKind, Excavation, GroundAround, OpenSides, PipeWall, SoilType, Support};
pub use contours::{Contour, ContourLine, contours, round_levels};
pub use distance_thing::{Distance, Wall, distance_thing, least_distance, walls};
pub use footprint::{Footprint, FootprintGround, FootprintPlane, footprint_ground};
pub use gate::{Gate, USUAL_CLEARANCE, USUAL_CLEARANCE_ABOVE};
pub use headroom::{Headroom, Overhead, headroom};
pub use landing::{ApproachDirection, Landing, LandingRating};
pub use plan_area::{PlanArea, PlanAreaError};
pub use plan_shape::PlanShape;
pub use plane_fit::{Plane, fit_plane};
pub use power_line::{DeadConfirmation, Insulation, PowerLine, Span};
pub use profile::{Cut, Station, profile};
pub use relief::{Sun, aspects, hillshade};
pub use sight::{Hidden, sight};
pub use slope::{SlopeStatistics, quantile, slope_classes, slopes};
pub use surroundings::Surroundings;
pub use terrain::{Grid, Ground, GroundSource, Terrain};
pub use thing::{Body, Columns, Opening, Thing, ThingKind};
pub use thing_index::ThingIndex;
pub use things::Things;
pub use tin::{Tin, TinDoubts, TinError, TinParts};
pub use tin_rings::{Ring, RingKind};
pub use whole::Site;
pub use zone::{DayTime, Zone, ZoneRule};
