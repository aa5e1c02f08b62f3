//! Machine description, boom kinematics, attachments, loads and load charts. Pure.
//!
//! Machine frame (ISO 8855 axes): x forward, y left, z up, origin on the ground plane under the
//! middle of the front axle, machine level on rigid ground.
//!
//! - [`Machine`]: bodies, axles, boom, stabilizers, attachments, charts, the maker's limits
//! - [`kinematics`]: where head, forks and load are for a boom position, and back (closed form)
//! - [`Chart`]: capacity zones in (reach, height); [`Chart::read`] takes the lowest in a box
//! - [`table_zones`], [`nested_zones`]: charts printed as a table, or as load lines, as zones
//! - [`chart_problems`], [`rises`]: what is wrong with a chart, and what is to be confirmed
//! - [`forks`]: blade and load-centre limits
//! - [`Load`]: mass and centre from parts or a ticket, with what is not sure

mod attachment;
mod boom;
mod chart;
mod chart_choice;
mod chart_datum;
mod chart_derating;
mod chart_faults;
mod chart_index;
mod chart_nested;
mod chart_polygon;
mod chart_rises;
mod chart_split;
mod chart_table;
mod description;
pub mod forks;
pub mod kinematics;
mod load;
pub mod text;

pub use attachment::{Attachment, AttachmentKind, Blade, Forks, Jib, LockSeen};
pub use boom::{Boom, BoomPosition, Section};
pub use chart::{Chart, ChartParts, ChartPoint, LevelTolerance, Reading, Zone};
pub use chart_choice::{ChartClash, OutOfLevel};
pub use chart_datum::{Datum, HeightTo, Measured, ReachFrom, ReachTo};
pub use chart_derating::{CentreRule, DeratingFault, DeratingRow, derating_fault};
pub use chart_faults::{ChartProblem, chart_problems, outline_is_bad};
pub use chart_nested::{NestedFault, nested_zones};
pub use chart_rises::{Rise, RisesWith, rises};
pub use chart_table::{ChartTable, Sector, TableAxes, TableLine, TableZone, table_zones};
pub use description::{
    Axle, Body, BodyKind, CarryPosition, Limits, Lock, Machine, Outline, Outriggers, RearAxle, Slew, Stabilizers,
    SupportState, Tyre, WindAreas, WindLimit, WindMeasure,
};
pub use load::{Hanging, Load, LoadPart, LoadSource};
