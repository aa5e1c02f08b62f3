//! What wheels and pads put on the ground. Pure. SI.
//!
//! - [`Contact`]: area and pressure under a tyre or a pad
//! - [`stress`]: vertical stress under loads on the surface, Boussinesq and 2:1 spread
//! - [`buried`]: stress and deflection of buried things under wheels
//! - [`lateral`]: sideways pressure of loads on walls, for the wall's designer
//! - [`edge_rules`]: distance from an edge by rule
//! - [`slope_section`], [`wedge`], [`slip_circle`], [`slip_search`]: the cut through an edge, and how it may slip
//! - [`edge_strength`], [`wheel_row`]: which strength counts beside an edge, and wheels as strips of load
//! - [`set_back`], [`set_back_map`]: how near to an edge wheels may stand, for one edge and in plan
//! - [`input_fault`]: everything wrong with the numbers of these
//!
//! Strength of the ground under a wheel is not computed here yet: a named person states it.

pub mod buried;
mod contact;
pub mod edge_rules;
pub mod edge_strength;
pub mod edge_text;
pub mod input_fault;
pub mod lateral;
mod lateral_forms;
pub mod set_back;
pub mod set_back_map;
pub mod slip_circle;
pub mod slip_search;
pub mod slope_section;
pub mod stress;
pub mod text;
pub mod wedge;
pub mod wheel_row;

pub use contact::Contact;
