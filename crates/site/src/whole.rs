//! The whole site.

use crate::{Gate, Ground, Landing, PowerLine, Surroundings};

/// A site as surveyed and drawn: everything that a lift is checked against.
#[derive(Debug, Clone, Default)]
pub struct Site {
    /// Name for people.
    pub name: String,
    /// EPSG code of the site frame; `None`: a grid of the site's own, or not known.
    pub epsg: Option<u32>,
    /// Ground.
    pub ground: Ground,
    /// Overhead lines.
    pub lines: Vec<PowerLine>,
    /// Places that receive loads.
    pub landings: Vec<Landing>,
    /// Gates and other narrow places.
    pub gates: Vec<Gate>,
    /// What stands, is dug, lies in the ground, and the zones.
    pub surroundings: Surroundings,
}
