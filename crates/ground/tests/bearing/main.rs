//! Bearing, mats and settlement: properties, and comparisons with the outside.

#![allow(clippy::unwrap_used, clippy::disallowed_methods, reason = "tests")]

mod cases;
mod mat_working;
mod mats;
mod profiles;
mod properties;
mod tables;
mod val_factors;
mod val_groundhog;
mod val_mats;
mod val_presumed;
mod val_settlement;
mod val_worked;
