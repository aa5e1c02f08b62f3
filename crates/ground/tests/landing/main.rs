//! What a landing carries: properties, and comparisons with the outside.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic, reason = "tests")]

mod bays;
mod beam_properties;
mod decks;
mod reference;
mod rooms;
mod slabs;
mod val_beam;
mod val_concrete;
mod val_tables;
