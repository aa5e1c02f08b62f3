//! Readers of survey files: from bytes to a ground surface, or every reason why not. Pure: no
//! files, no clock. Metres inside, whatever the file is in.
//!
//! - [`read_ground`]: LAS, LAZ, GeoTIFF or CSV levels, told apart by their first bytes and name
//! - [`read_tiles`]: several clouds or level files as one surface, without seams
//! - [`read_cloud`]: only the ground points and facts of a cloud, not triangulated
//! - [`class_heights_in`]: heights of one class inside a polygon, such as a roof
//! - [`GroundOptions`]: what the job states: units, window, columns, longest edge
//!
//! Limits: no reprojection; ground of a cloud is what its file classes as ground (class 2); no
//! rotated grids; headers are checked against the byte length before anything is decoded or
//! allocated, so that a broken file costs neither memory nor time. `docs/survey-files.md` says in
//! the user's words what is read and what is refused.

mod class_heights;
mod cloud;
mod cloud_header;
mod cloud_records;
mod crs;
mod feature;
mod geo_keys;
mod geotiff;
mod geotiff_cells;
mod geotiff_frame;
mod kind;
mod level_columns;
mod levels;
mod notes;
mod options;
mod placement;
mod reading;
pub mod text;
mod tiles;
mod units;
mod well_known_text;

pub use class_heights::{ClassHeights, class_heights_in};
pub use cloud::{CloudPoints, read_cloud};
pub use feature::{Attribute, Feature, PlanFacts, PlanPoint, PlanReading, Shape};
pub use kind::FileKind;
pub use level_columns::{Column, LevelColumns};
pub use options::{GroundOptions, LONGEST_EDGE_CLOUD, LONGEST_EDGE_LEVELS, Window};
pub use reading::{Facts, GroundReading, UnitFacts, UnitSource};
pub use tiles::{read_ground, read_tiles};
pub use units::LengthUnit;
