//! Bytes of a job folder to a [`planning::Job`], or every fault at once. Pure.
//!
//! - [`read_job`]: `job.toml` with everything it names, from a [`Folder`]
//! - [`read_machine`]: one machine file
//! - [`read_table`]: any TOML or JSON file as a [`Document`], decoded key by key through [`Reader`]:
//!   every value is checked, every key not asked for is a fault
//! - [`soil_profile`], [`undrained_strength`], [`presumed_soil`]: soil by the keys that job files and single calculations share
//! - [`landing_rating`], [`landing_strength`], [`feet`]: what both state alike of a landing and of what a load stands on
//! - [`buried_keys`]: what both state alike of a buried thing
//! - [`starter_job`]: the files of a new job, with comments
//! - [`text`]: the ids of what faults say
//!
//! Places count lines, columns and list entries from 1. `docs/job-files.md` has every key.

mod accept_section;
mod answered;
mod attachment_section;
mod axle_section;
mod below_section;
mod body_section;
mod boom_section;
mod buried_keys;
mod certainty;
mod chart_datum;
mod chart_derating;
mod chart_grid;
mod chart_reach;
mod chart_report;
mod chart_section;
mod chart_zones;
mod complete;
mod crane_section;
mod csv_cells;
mod document;
mod feet_section;
mod fitted_section;
mod folder;
mod fork_section;
mod format;
mod gate_section;
mod ground_section;
mod hanging_section;
mod identity_section;
mod ids;
mod job_file;
mod landing_section;
mod landing_strength;
mod landing_structure;
mod lift_section;
mod lift_wishes;
mod limits;
mod line_index;
mod line_section;
mod liquid_section;
mod list_columns;
mod load_list;
mod load_mass;
mod load_part_section;
mod load_section;
mod machine_carried;
mod machine_file;
mod machine_section;
mod nearest;
mod needs;
mod needs_checks;
mod needs_rest;
mod node;
mod pallet_section;
mod parse_json;
mod parse_toml;
mod pickup_section;
mod placeholder;
mod plan_shape_keys;
mod policy_section;
mod quantity_value;
mod routine_section;
mod schema_fields;
mod schema_json;
mod schema_notes;
pub mod schema_words;
mod site_section;
mod soil_layers;
mod soil_presumed;
mod soil_section;
mod soil_strength;
mod stance_section;
mod starter;
mod steering_section;
mod table;
pub mod text;
mod thing_section;
mod zone_section;

pub use buried_keys::{BuriedKeys, buried_keys};
pub use complete::{COMPLETE_SITE, complete_job, job_shapes, machine_shapes};
pub use document::{Document, read_table};
pub use feet_section::{FEET_EXAMPLE, feet};
pub use folder::{Folder, stays_inside};
pub use job_file::{JOB_FILE, JOB_FORMAT, is_date, read_job};
pub use landing_strength::{RatingRead, note_faults, rating as landing_rating, strength as landing_strength};
pub use load_mass::usual_uncertainty;
pub use load_section::SHEET_WIND_FACTOR;
pub use machine_file::{MACHINE_FORMAT, read_machine};
pub use needs::{CheckNeeds, Lack, MachineReview, Need, Ready, review_machine};
pub use needs_checks::MACHINE_CHECKS;
pub use node::{Entry, Node, Table, Value};
pub use placeholder::PLACEHOLDER;
pub use quantity_value::{Bound, Fact};
pub use schema_fields::{Field, FileKind, field, fields};
pub use schema_json::file_schema;
pub use schema_notes::{KeyShape, Kind, Notes, Seen, SeenValue, Shapes, TableShape, join, pattern};
pub use soil_layers::soil_profile;
pub use soil_presumed::presumed_soil;
pub use soil_section::MAT_SPREADS;
pub use soil_strength::undrained_strength;
pub use starter::starter_job;
pub use table::{Faulty, Reader};
