//! What wheels and pads put on the ground. Pure. SI.
//!
//! - [`Contact`]: area and pressure under a tyre or a pad
//!
//! Strength of the ground is not computed here yet: a named person states it.

mod contact;
pub mod text;

pub use contact::Contact;
pub mod edge_rules;
pub mod edge_text;
pub mod input_fault;
pub mod lateral;
mod lateral_forms;
pub mod slip_circle;
pub mod slip_search;
pub mod slope_section;
pub mod stress;
pub mod wedge;
pub mod edge_strength;
pub mod set_back;
pub mod wheel_row;
pub mod buried;
pub mod set_back_map;
