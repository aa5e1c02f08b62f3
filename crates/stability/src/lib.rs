//! Statics of a machine on rigid contacts. Pure. Machine frame, SI.
//!
//! - [`Masses`]: what weighs, where, and whether it hangs on the free rear axle
//! - [`Support`], [`Stance`], [`tipping_lines`]: what the machine stands on, how its axles are rolled
//!   under the frame, and the lines it tips over
//! - [`onset`]: tilt of the ground at which it starts to tip, for one direction of descent
//! - [`level_tipping_load`], [`load_factor`], [`tilt_reserve`]: how much is left
//! - [`reactions`]: force on each wheel or pad
//! - [`fit`]: bounds for a machine of which only part is known
//! - [`reserve_map`]: a chart against the machine's own statics, cell by cell
//! - [`on_platform`]: the slope at which it tips on a tilting platform
//! - [`wind`]: force of a gust on load, boom and frame
//!
//! Limits: rigid contacts, no tyre deflection, no dynamics. The onset of tipping is the limit;
//! what may catch the machine at the axle's stop is never credited.

pub mod fit;
mod lean;
mod linear;
mod masses;
mod reactions;
mod reserve_map;
mod springs;
mod stance;
mod support;
pub mod text;
mod tilting_platform;
mod tipping;
pub mod wind;

pub use lean::tilt_reserve_on_springs;
pub use masses::{LoadOnBoom, Masses};
pub use reactions::{Reactions, reactions, wind_on_contacts};
pub use reserve_map::{CellFlag, MOST_CELLS, MapAsk, ReserveCell, ReserveMap, reserve_map};
pub use springs::{OnSprings, Springs, on_springs};
pub use stance::Stance;
pub use support::{RearAxleState, Support, TippingLine, TipsOver, tipping_lines};
pub use tilting_platform::{
    OnPlatform, PLATFORM_STANDARD, PLATFORM_TESTS, PlatformTest, Turned, descent, on_platform, worst_orientation,
};
pub use tipping::{
    LEVEL, Loading, Onset, gravity_for_slopes, level_tipping_load, load_factor, onset, restoring_moment,
    sine_of_tilt_at_least, tilt_reserve,
};
