//! Stress in the ground, walls beside loads, edges and buried things.
#![allow(clippy::unwrap_used, clippy::panic, clippy::expect_used, reason = "tests")]

mod edge_rules;
mod faults;
mod lateral;
mod slips;
mod stress;
mod tables;
mod wedges;
