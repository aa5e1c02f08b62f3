//! What wheels and pads put on the ground. Pure. SI.
//!
//! - [`Contact`]: area and pressure under a tyre or a pad
//! - [`beam`]: continuous beams, exact; [`worst_place`]: a load that may stand anywhere on one
//! - [`section`], [`timber`], [`deck`], [`plank`]: boards and joists under a pallet on its feet ([`pallet_feet`])
//! - [`slab`], [`slab_check`], [`concrete_age`]: a slab's bending, shear and punching, also while it hardens
//! - [`bay`], [`duty_class`], [`forklift`]: a bay's own rating with what lies there, and what a rating is not
//! - [`room`]: room for the load, the people and the way back of the forks
//! - [`carried`]: demand and limit of a part, what governs, the largest load that fits
//!
//! Strength of the ground is not computed here yet: a named person states it.

pub mod bay;
pub mod beam;
mod beam_member;
mod beam_piece;
pub mod carried;
pub mod concrete_age;
mod contact;
pub mod deck;
pub mod duty_class;
mod even_load;
pub mod forklift;
mod landing_range;
pub mod pallet_feet;
pub mod plank;
pub mod room;
pub mod section;
pub mod slab;
pub mod slab_check;
pub mod text;
pub mod timber;
pub mod worst_place;

pub use contact::Contact;
