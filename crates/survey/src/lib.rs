//! Readers of survey files: from bytes to a ground surface, or every reason why not. Pure: no
//! files, no clock. Metres inside, whatever the file is in.
//!
//! - [`bring_in`]: files of every kind to a site, with a record of what became of each; [`place`] shapes as things
//! - [`write_stored`], [`read_stored`]: a site in one file
//! - [`read_ground`]: LAS, LAZ, GeoTIFF, LandXML, CSV levels or named layers of a drawing, told apart by first bytes and name
//! - [`read_tiles`]: several clouds or level files as one surface, without seams
//! - [`read_cloud`]: only the ground points and facts of a cloud, not triangulated
//! - [`grid_cloud`]: ground of clouds as a grid, in one pass, without keeping points
//! - [`GroundFilter`]: ground of unclassified clouds, only where the options ask for it
//! - [`things_above`]: what stands above the ground, whatever its class
//! - [`likely_conductors`]: spans that points hang on; a suggestion, and no proof of absence
//! - [`building_heights`]: roof inside an outline, ground around it
//! - [`class_heights_in`]: heights of one class inside a polygon, such as a roof
//! - [`landxml_surfaces`], [`landxml_plan`]: what is inside of a LandXML file; its points and lines
//! - [`GroundOptions`]: what the job states: units, window, columns, longest edge
//! - [`read_plan`], [`read_shapefile`]: shapes in plan: DXF, LandXML, GeoJSON, Shapefile
//! - [`Epsg`], [`LocalGrid`]: the coordinate systems of file and site, and the site's own grid
//!
//! Limits: heights are never transformed, and datum steps use no grid files; ground of a cloud is
//! what its file classes as ground (class 2) unless the filter is asked for, less patches that stand
//! up by cliffs all around; headers are checked against the byte length before anything is decoded
//! or allocated, so that a broken file costs neither memory nor time. `docs/survey-files.md` says in
//! the user's words what is read and what is refused.

mod arc_chords;
mod bring_in;
mod building_heights;
mod cell_outline;
mod class_heights;
mod cloud;
mod cloud_cells;
mod cloud_grid;
mod cloud_header;
mod cloud_raster;
mod cloud_records;
mod cloud_stream;
mod conductor_fit;
mod conductor_seeds;
mod conductors;
mod crs;
mod doubtful_ground;
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
mod epsg;
mod feature;
mod geo_keys;
mod geojson_file;
mod geotiff;
mod geotiff_cells;
mod geotiff_frame;
mod geotiff_points;
mod ground_filter;
mod ground_pick;
mod join_sites;
mod kind;
mod landxml;
mod landxml_document;
mod landxml_notes;
mod landxml_plan;
mod landxml_points;
mod landxml_reader;
mod landxml_surface;
mod late_ground;
mod level_columns;
mod levels;
mod local_grid;
mod notes;
mod options;
mod placement;
mod plan_rules;
mod plan_things;
mod plans;
mod projection;
mod raster_opening;
mod reading;
mod shape_repair;
mod shapefile;
mod shapefile_rings;
mod shapefile_table;
mod shapes;
mod stored;
mod systems;
pub mod text;
mod things_above;
mod tiles;
mod units;
mod well_known_text;
mod xml_scan;
mod xml_text;

pub use bring_in::{BringOptions, Brought, bring_in, known_area};
pub use building_heights::{BuildingHeights, building_heights};
pub use class_heights::{ClassHeights, class_heights_in};
pub use cloud::{CloudPoints, read_cloud};
pub use cloud_cells::{GroundCell, GroundCells};
pub use cloud_grid::{CloudGrid, grid_cloud};
pub use conductors::{ConductorOptions, LikelyConductors, LikelySpan, likely_conductors};
pub use epsg::Epsg;
pub use feature::{Attribute, Feature, PlanFacts, PlanPoint, PlanReading, Shape};
pub use ground_filter::GroundFilter;
pub use kind::FileKind;
pub use landxml::landxml_surfaces;
pub use landxml_plan::landxml_plan;
pub use landxml_surface::SurfaceFacts;
pub use late_ground::{SettledTops, Waiting};
pub use level_columns::{Column, LevelColumns};
pub use local_grid::{LocalGrid, LocalGridError};
pub use options::{GroundOptions, LONGEST_EDGE_CLOUD, LONGEST_EDGE_LEVELS, Window};
pub use plan_rules::{Becomes, HeightFrom, LayerRule, OnlyWhere, guess};
pub use plan_things::{Placed, PlanSource, place};
pub use plans::{read_plan, read_shapefile};
pub use reading::{Facts, GroundReading, UnitFacts, UnitSource};
pub use stored::{SourceRecord, StoreError, StoredSite, Used, read_stored, write_stored};
pub use systems::{ConvertError, convert};
pub use things_above::{ClassVotes, CloudThing, ThingColumn, ThingOptions, ThingsAbove, things_above};
pub use tiles::{read_ground, read_tiles};
pub use units::LengthUnit;
