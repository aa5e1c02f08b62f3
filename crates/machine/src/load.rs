//! The load: mass and centre, and what is not sure.

use evidence::{Certainty, Ranged};
use quantity::{Angle, Mass};

/// One load as lifted.
///
/// Its own frame: origin on its underside, at the middle of its width, at the face that lies
/// against the fork face (`depth` runs forward from it); for hung loads the origin is the centre
/// of its top. x forward (depth), y left (width), z up.
#[derive(Debug, Clone)]
pub struct Load {
    /// Short id.
    pub id: String,
    /// Name for people.
    pub name: String,
    /// Total mass with pallet, packing and rigging, kg, with its range.
    pub mass_kg: Ranged,
    /// How the mass is known.
    pub certainty: Certainty,
    /// Distance of the centre of gravity from the face against the forks, m.
    pub centre_ahead: Ranged,
    /// Centre of gravity left of the middle, m.
    pub centre_left: Ranged,
    /// Centre of gravity above the underside, m.
    pub centre_up: Ranged,
    /// Depth (along the forks), m.
    pub depth: f64,
    /// Width, m.
    pub width: f64,
    /// Height, m.
    pub height: f64,
    /// Parts it was built from; empty for a ticket.
    pub parts: Vec<LoadPart>,
    /// How it came by its mass.
    pub source: LoadSource,
    /// Set where the load hangs from a hook.
    pub hanging: Option<Hanging>,
    /// True if someone confirmed that pallet, bands and wrap are sound.
    pub condition_seen: Option<bool>,
    /// Wind shape factor of the load.
    pub wind_factor: f64,
}

/// A part of a built-up load.
#[derive(Debug, Clone)]
pub struct LoadPart {
    /// Name for people.
    pub name: String,
    /// Its mass.
    pub mass: Mass,
    /// Its centre in the load's frame, m.
    pub centre: geometry::DVec3,
}

/// How the mass of a load came about.
#[derive(Debug, Clone, PartialEq)]
pub enum LoadSource {
    /// From parts.
    Parts,
    /// From a delivery ticket, by number.
    Ticket(String),
    /// Weighed or typed.
    Typed,
}

/// Rigging of a hung load.
#[derive(Debug, Clone)]
pub struct Hanging {
    /// Mass of slings, shackles, beams: included in the load's mass.
    pub rigging: Mass,
    /// From hook to the top of the load, m.
    pub drop: f64,
    /// Number of sling legs.
    pub legs: u32,
    /// Angle of the legs from the vertical.
    pub leg_angle: Angle,
    /// Working load limit of one leg.
    pub leg_limit: Mass,
    /// Tag lines are planned.
    pub tag_lines: bool,
}

impl Load {
    /// Mass, centre from parts: weighted means. Returns (mass kg, centre m).
    pub fn combine(parts: &[LoadPart]) -> (f64, geometry::DVec3) {
        use quantity::Si;
        let mass: f64 = parts.iter().map(|p| p.mass.si()).sum();
        let moment = parts.iter().fold(geometry::DVec3::ZERO, |sum, p| sum + p.centre * p.mass.si());
        (mass, if mass > 0.0 { moment / mass } else { geometry::DVec3::ZERO })
    }
}
