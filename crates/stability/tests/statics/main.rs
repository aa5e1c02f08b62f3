//! Statics against published and independent numbers, and properties.
#![allow(
    missing_docs,
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::print_stderr,
    clippy::disallowed_methods,
    reason = "tests"
)]

mod any_machine;
mod dynamics;
mod fit;
mod peers;
mod prop_continuity;
mod prop_load;
mod prop_mirror;
mod prop_onset;
mod prop_scale;
mod properties;
mod r1;
mod reserve_map;
mod settled;
mod springs;
mod tilting_platform;
mod val_dynamics;
mod val_exposure;
mod val_frame;
mod val_levelled;
mod val_mujoco;
mod val_textbook;
mod val_time_runs;
mod val_tipping;
mod wind;
