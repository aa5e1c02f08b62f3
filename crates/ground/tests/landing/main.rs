//! What a landing carries: properties, and comparisons with the outside.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic, reason = "tests")]

mod beam_properties;
mod val_beam;
