//! Routes of a wheeled machine in plan. Pure; knows nothing of jobs, asks a map. Metres, radians.
//!
//! - [`PlanPose`]: middle of the front axle and heading, in the site frame
//! - [`shortest`], [`words`]: Reeds-Shepp's shortest ways with a least radius, all 48 words
//! - [`Steering`], [`Turning`]: two wheels, four wheels, crab, and how tight each turns
//! - [`Vehicle`], [`PlanBox`]: axles, turning, outline with the load
//! - [`Motion`]: driven with the wheels held, and how much larger an outline must be to hold all of it
//! - [`DriveMap`]: what the search asks of the world; [`GridMap`]: a world of cells
//! - [`Raster`]: closed cells with exact distances; a rectangle is tried quickly, and exactly where that
//!   does not decide
//! - [`TargetField`]: how far it is to a target around everything closed; once for a target
//! - [`route()`]: search over place and heading, forward and reverse: a [`Route`], or [`NoRoute`] with why
//! - [`swept`]: the ground that a machine passes over

mod clear;
mod distance_transform;
mod drive_map;
mod grid_map;
mod key_map;
mod lattice;
mod motion;
mod no_route;
mod plan_pose;
mod raster;
mod reeds_shepp;
mod refusal;
mod route;
mod search;
mod settings;
mod shorten;
mod steering;
mod swept;
mod target_field;
mod vehicle;
mod word_formulas;

pub use drive_map::{DriveMap, Going, Margin, Underway};
pub use grid_map::GridMap;
pub use motion::Motion;
pub use no_route::{Narrow, NoRoute};
pub use plan_pose::PlanPose;
pub use raster::{Raster, RasterFrame};
pub use reeds_shepp::{Bend, Word, distance, shortest, words};
pub use route::{Leg, OnWay, Route};
pub use search::route;
pub use settings::{Progress, Settings, Watch};
pub use steering::{Gear, SteeredAxle, Steering, Turning};
pub use swept::swept;
pub use target_field::TargetField;
pub use vehicle::{PlanBox, Spread, Vehicle, VehicleError};
