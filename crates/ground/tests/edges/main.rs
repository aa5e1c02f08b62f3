//! Stress in the ground, walls beside loads, edges and buried things.
#![allow(clippy::unwrap_used, clippy::panic, clippy::expect_used, reason = "tests")]
#![allow(clippy::disallowed_methods, reason = "the platform's sines are another hand's")]

mod buried_things;
mod edge_rules;
mod faults;
mod lateral;
mod set_back_scan;
mod set_back_stores;
mod set_backs;
mod slips;
mod stress;
mod tables;
mod wedges;
