//! What wheels and pads put on the ground. Pure. SI.
//!
//! - [`Contact`]: area and pressure under a tyre or a pad
//!
//! Strength of the ground is not computed here yet: a named person states it.

mod contact;
pub mod text;

pub use contact::Contact;
