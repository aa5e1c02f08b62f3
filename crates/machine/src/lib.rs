//! Machine description, boom kinematics, attachments, loads and load charts. Pure.
//!
//! Machine frame (ISO 8855 axes): x forward, y left, z up, origin on the ground plane under the
//! middle of the front axle, machine level on rigid ground.
//!
//! - [`Machine`]: bodies, axles, boom, stabilizers, attachments, charts, the maker's limits
//! - [`kinematics`]: where head, forks and load are for a boom position, and back (closed form)
//! - [`Chart`]: capacity zones in (reach, height); [`Chart::read`] takes the lowest in a box
//! - [`table_zones`], [`nested_zones`]: charts printed as a table, or as load lines, as zones
//! - [`chart_problems`], [`more_out_of_level`], [`rises`]: what is wrong with a chart, and what is to be confirmed
//! - [`Attachment`], [`Forks`] and other tools; [`forks`]: blade and load-centre limits
//! - [`same_mark`]: whether a serial number on the plate is the one of the file
//! - [`Load`]: mass and centre from parts or a ticket, with what is not sure
//! - [`materials`]: densities by material, each with its source
//! - [`Pallet`]: base and layers to parts with centres
//! - [`liquid`]: where a liquid goes when its tank tilts
//! - [`SteeringData`]: turning radii over tyres, and the circle of the machine's middle
//! - [`Hanging`]: force in a sling leg, swing of a hung load
//! - [`Defect`]: what may be wrong with a load

mod attachment;
mod blade_limits;
mod boom;
mod chart;
mod chart_choice;
mod chart_datum;
mod chart_derating;
mod chart_faults;
mod chart_index;
mod chart_levels;
mod chart_nested;
mod chart_polygon;
mod chart_rises;
mod chart_split;
mod chart_table;
mod defects;
mod description;
mod fork_pair;
pub mod forks;
mod identity;
pub mod kinematics;
pub mod liquid;
mod load;
pub mod load_part;
pub mod material_names;
mod materials;
mod pallet;
mod rigging;
mod steering;
pub mod text;
mod tools;
mod tyre_stiffness;

pub use attachment::{Attachment, AttachmentKind, BACKREST, CARRIAGE_HALF, Coupling, LatchSeen, LockSeen};
pub use boom::{Boom, BoomPosition, Section};
pub use chart::{Chart, ChartParts, ChartPoint, DRAWING, LevelTolerance, Reading, Zone};
pub use chart_choice::{ChartClash, OutOfLevel};
pub use chart_datum::{Datum, HeightTo, Measured, ReachFrom, ReachTo};
pub use chart_derating::{CentreRule, DeratingFault, DeratingRow, derating_fault};
pub use chart_faults::{ChartProblem, chart_problems, outline_is_bad};
pub use chart_levels::{MoreOutOfLevel, more_out_of_level};
pub use chart_nested::{NestedFault, nested_zones};
pub use chart_rises::{Rise, RisesWith, rises};
pub use chart_table::{ChartTable, Sector, TableAxes, TableLine, TableZone, table_areas, table_zones};
pub use defects::Defect;
pub use description::{
    Axle, Body, BodyKind, CarryPosition, Levelling, Limits, Lock, Machine, Outline, Outriggers, RearAxle, Slew,
    Stabilizers, SupportState, Tyre, WindAreas, WindLimit, WindMeasure,
};
pub use fork_pair::{BLADE_BREADTH, Blade, Carriage, Extensions, Forks, Shank, USUAL_COVER};
pub use identity::{same_mark, same_marks};
pub use liquid::Liquid;
pub use load::{Face, Load, LoadSource, Turned};
pub use load_part::{ByVolume, LoadPart, PartMass, Water};
pub use materials::{DAMP_SHARE, Form, Material, Origin, material, materials};
pub use pallet::{FLUSH, Layer, Overhang, Pallet, Stack};
pub use rigging::{CHOKE_ANGLE, CHOKER, Edges, Fitting, Hanging, Hitch, Lever, Swing, USUAL_SWING};
pub use steering::SteeringData;
pub use tools::{Bucket, Clamp, HOLD_RESERVE, Hold, Jib, OtherTool, Platform, UNSTATED_WIDTH};
pub use tyre_stiffness::{sidewall, tyre_stiffness};
