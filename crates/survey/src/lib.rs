//! Readers of survey files: from bytes to a ground surface, or every reason why not. Pure: no
//! files, no clock. Metres inside, whatever the file is in.
//!
//! - [`read_ground`]: LAS, LAZ, GeoTIFF, CSV levels or named layers of a drawing, told apart by their first bytes and name
//! - [`read_plan`]: shapes of a drawing (DXF), in plan and with heights where it has them
//! - [`read_tiles`]: several clouds or level files as one surface, without seams
//! - [`read_cloud`]: only the ground points and facts of a cloud, not triangulated
//! - [`class_heights_in`]: heights of one class inside a polygon, such as a roof
//! - [`GroundOptions`]: what the job states: units, window, columns, longest edge
//! - [`slopes`], [`SlopeStatistics`]: Horn's 3 × 3 slope of a grid
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
mod dxf;
mod dxf_curves;
mod dxf_entities;
mod dxf_frame;
mod dxf_geodata;
mod dxf_ground;
mod dxf_groups;
mod dxf_hatch;
mod dxf_index;
mod dxf_join;
mod dxf_outline;
mod dxf_pairs;
mod dxf_shapes;
mod dxf_units;
mod dxf_words;
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
mod plans;
mod reading;
mod slope;
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
pub use plans::read_plan;
pub use reading::{Facts, GroundReading, UnitFacts, UnitSource};
pub use slope::{SlopeStatistics, slopes};
pub use tiles::{read_ground, read_tiles};
pub use units::LengthUnit;
