//! Charts, forks and kinematics: properties and published numbers.
#![allow(missing_docs, clippy::unwrap_used, reason = "tests")]

mod chart_reading;
mod fork_inspection;
mod fork_limits;
mod kinematics;
mod liquids;
mod loads;
mod materials;
