//! Charts, forks and kinematics: properties and published numbers.
#![allow(missing_docs, clippy::unwrap_used, reason = "tests")]

mod chart_choice;
mod chart_datum;
mod chart_forms;
mod chart_index;
mod chart_nested_feet;
mod chart_reading;
mod chart_rises;
mod fork_inspection;
mod fork_limits;
mod kinematics;
mod liquids;
mod loads;
mod materials;
