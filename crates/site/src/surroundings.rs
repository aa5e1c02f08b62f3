//! Everything around a machine but the ground's surface and the lines.

use crate::{Buried, Excavation, Things, Zone};

/// Everything that a machine could hit, fall into, break through or must keep out of.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Surroundings {
    /// What stands on the site.
    pub things: Things,
    /// What is dug.
    pub excavations: Vec<Excavation>,
    /// What lies in the ground.
    pub buried: Vec<Buried>,
    /// Parts with a rule of their own.
    pub zones: Vec<Zone>,
}
