//! What wheels and pads put on the ground. Pure. SI.
//!
//! - [`Contact`]: area and pressure under a tyre or a pad
//! - [`beam`]: continuous beams, exact; [`worst_place`]: a load that may stand anywhere on one
//!
//! Strength of the ground is not computed here yet: a named person states it.

pub mod beam;
mod beam_piece;
mod contact;
mod landing_range;
pub mod text;
pub mod worst_place;

pub use contact::Contact;
