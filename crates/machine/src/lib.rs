//! Machine description, boom kinematics, attachments, loads and load charts. Pure.
//!
//! Machine frame (ISO 8855 axes): x forward, y left, z up, origin on the ground plane under the
//! middle of the front axle, machine level on rigid ground.
//!
//! - [`Machine`]: bodies, axles, boom, stabilizers, attachments, charts, the maker's limits
//! - [`kinematics`]: where head, forks and load are for a boom position, and back (closed form)
//! - [`Chart`]: capacity zones in (reach, height); [`Chart::read`] takes the lowest in a box
//! - [`forks`]: blade and load-centre limits
//! - [`Load`]: mass and centre from parts or a ticket, with what is not sure

mod attachment;
mod boom;
mod chart;
mod chart_faults;
mod description;
pub mod forks;
pub mod kinematics;
mod load;
pub mod text;

pub use attachment::{Attachment, AttachmentKind, Blade, Forks, Jib, LockSeen};
pub use boom::{Boom, BoomPosition, Section};
pub use chart::{Chart, ChartParts, ChartPoint, Datum, HeightTo, LevelTolerance, ReachFrom, ReachTo, Reading, Zone};
pub use chart_faults::{ChartProblem, chart_problems};
pub use description::{
    Axle, Body, BodyKind, CarryPosition, Limits, Lock, Machine, Outline, Outriggers, RearAxle, Slew, Stabilizers,
    SupportState, Tyre, WindAreas, WindLimit, WindMeasure,
};
pub use load::{Hanging, Load, LoadPart, LoadSource};
