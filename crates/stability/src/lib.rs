//! Statics of a machine on rigid contacts. Pure. Machine frame, SI.
//!
//! - [`Masses`]: what weighs, where, and whether it hangs on the free rear axle
//! - [`Support`], [`Stance`], [`tipping_lines`]: what the machine stands on, how its axles are rolled
//!   under the frame, and the lines it tips over
//! - [`onset`]: tilt of the ground at which it starts to tip, for one direction of descent
//! - [`level_tipping_load`], [`load_factor`], [`tilt_reserve`]: how much is left
//! - [`tilt_reserve_on_springs`], [`load_factor_on_springs`]: the same on tyres that give
//! - [`reactions`]: force on each wheel or pad
//! - [`settled`]: how it comes to stand on uneven ground, with its forces; [`moments`]: what holds, what overturns
//! - [`wind`]: force of a gust on load, boom and frame, for every direction; [`wind_parts`] what it sees
//!   of a machine, [`gust_at_limit`] the gust that a required tilt allows
//! - [`moving`]: braking, starting and turning as an apparent gravity
//! - [`wheel_drop`], [`stop_of_lowering`], [`load_dropped`], [`trip_speed`]: what happens all at once
//! - [`force_angle`]: a second opinion on the reserve; [`sliding`]: whether it slides before it tips
//! - [`stopping_distance`], [`coasting_distance`], [`friction_for_load`]: stopping, and the load then
//! - [`exposure`]: from forecast mean to gust at a height, by terrain
//! - [`fit`]: bounds for a machine of which only part is known
//! - [`reserve_map`]: a chart against the machine's own statics, cell by cell
//! - [`on_platform`]: the slope at which it tips on a tilting platform
//!
//! Limits: rigid contacts, no tyre deflection but for [`on_springs`]; what moves is quasi-static, or sudden
//! with a bound. The onset of tipping is the limit;
//! what may catch the machine at the axle's stop is never credited.

pub mod exposure;
mod factor_on_springs;
pub mod fit;
mod force_angle;
mod lean;
mod linear;
mod masses;
mod moment_ratio;
mod motion;
mod motion_steps;
mod reactions;
mod reserve_map;
mod settled;
mod sliding;
mod springs;
mod stance;
mod stopping;
mod sudden;
mod support;
pub mod text;
mod tilting_platform;
mod tip_energy;
mod tipping;
pub mod wind;
mod wind_direction;
mod wind_limit;
mod wind_parts;

pub use factor_on_springs::load_factor_on_springs;
pub use force_angle::{ForceAngle, force_angle};
pub use lean::{KeptTilt, LineOnSprings, tilt_reserve_on_springs};
pub use masses::{LoadOnBoom, Masses};
pub use moment_ratio::{Moments, Parts, machine_and_load, moments};
pub use motion::{Acceleration, FULL_BRAKING, Moving, SUDDEN, Travel, Turn, greatest_retardation, moving, rear_share};
pub use motion_steps::{drop_steps, moving_steps, stopping_step, trip_steps, turning_step};
pub use reactions::{LinearReactions, Reactions, reactions, wind_on_contacts};
pub use reserve_map::{CellFlag, MOST_CELLS, MapAsk, ReserveCell, ReserveMap, reserve_map};
pub use settled::{Settled, seen_turned, settled};
pub use sliding::{First, Sliding, first_as_it_grows, sliding};
pub use springs::{OnSprings, Springs, on_springs};
pub use stance::Stance;
pub use stopping::{
    REACTION, STEEL_ON_STEEL, SURE_BRAKING, WOOD_ON_STEEL, coasting_distance, friction_for_load, stopping_distance,
};
pub use sudden::{
    Criterion, Sudden, load_dropped, lowered, stop_of_lowering, surely_borne, surely_borne_by_all, wheel_drop,
    worst_wheel_drop, worst_wheel_drop_on_springs,
};
pub use support::{RearAxleState, Support, TippingLine, TipsOver, tipping_lines};
pub use tilting_platform::{
    OnPlatform, PLATFORM_STANDARD, PLATFORM_TESTS, PlatformTest, Turned, descent, leans, on_platform, worst_orientation,
};
pub use tip_energy::{TripSpeed, energy_to_tip, inertia_at_least, trip_speed, trip_speed_on_springs};
pub use tipping::{
    LEVEL, Loading, Onset, gravity_for_slopes, level_tipping_load, load_factor, load_factor_with, onset,
    restoring_moment, tilt_reserve,
};
pub use wind_direction::WorstWind;
pub use wind_limit::{gust_at_limit, gust_at_limit_on_springs};
pub use wind_parts::{LoadFaces, wind_parts};
