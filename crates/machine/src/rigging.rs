//! What slings carry, and how far a hung load swings out.

use crate::text;
use evidence::{Source, Step, Trace};
use quantity::{Angle, Dimension as D, Mass, Quantity, Si};

/// What is left of a sling's limit where it is choked about the load (from memory).
pub const CHOKER: f64 = 0.8;

/// Angle out of plumb that is reckoned with where the job states none, rad: 3° (common practice).
pub const USUAL_SWING: f64 = 3.0 * core::f64::consts::PI / 180.0;

/// Rigging of a hung load.
#[derive(Debug, Clone)]
pub struct Hanging {
    /// Mass of slings, shackles, beams: included in the load's mass.
    pub rigging: Mass,
    /// From hook to the top of the load, m.
    pub drop: f64,
    /// Number of slings.
    pub legs: u32,
    /// Angle of the legs from the vertical.
    pub leg_angle: Angle,
    /// Working load limit of one leg, straight.
    pub leg_limit: Mass,
    /// How the slings hold the load; `None`: nobody stated it, reckoned as choked.
    pub hitch: Option<Hitch>,
    /// What the slings lie on.
    pub edges: Option<Edges>,
    /// Number of tag lines.
    pub tag_lines: u32,
    /// Shackles, links, beams with a limit of their own.
    pub fittings: Vec<Fitting>,
    /// How far it may swing out of plumb.
    pub swing: Swing,
}

/// How slings hold a load.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Hitch {
    /// Straight from hook to lifting point.
    Vertical,
    /// Choked about the load.
    Choker,
    /// Each sling under the load and both ends to the hook.
    Basket,
}

/// What slings lie on.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Edges {
    /// No edges: lifting points, or round.
    Smooth,
    /// Edges with protectors between.
    Protected,
    /// Edges, and nothing between.
    Bare,
}

/// A part of the rigging with a limit of its own.
#[derive(Debug, Clone)]
pub struct Fitting {
    /// Name for people.
    pub name: String,
    /// Its working load limit.
    pub limit: Mass,
    /// True where it takes the whole load; false: what one leg takes.
    pub whole: bool,
}

/// How far a hung load swings.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Swing {
    /// By an angle out of plumb.
    Angle(Angle),
    /// By a distance at the load's centre, m.
    Reach(f64),
}

impl Hanging {
    /// Force in the worst sling leg as a mass, kg.
    ///
    /// `S = W / (n · k · cos α)`: of three or more slings two carry, since lengths differ (common
    /// practice); in a basket each has two legs, `k = 2`; else `k = 1`.
    pub fn leg_mass_kg(&self, mass: f64, trace: &mut impl Trace) -> f64 {
        let legs = f64::from(self.legs.clamp(1, 2));
        let parts = if self.hitch == Some(Hitch::Basket) { 2.0 } else { 1.0 };
        let alpha = self.leg_angle.si();
        let leg = mass / (legs * parts * libm::cos(alpha));
        trace.step(|| Step {
            title: text::STEP_SLING.message(),
            formula: "S = W / (n · k · cos α),  n at most 2, k = 2 in a basket".into(),
            values: vec![
                ("W".into(), Quantity::new(mass, D::Mass)),
                ("n".into(), Quantity::number(legs)),
                ("k".into(), Quantity::number(parts)),
                ("α".into(), Quantity::from(self.leg_angle)),
            ],
            result: ("S".into(), Quantity::new(leg, D::Mass)),
            source: Source::Mechanics,
        });
        leg
    }

    /// What one leg may take as it is hitched, kg: the stated limit, less where it is choked, or
    /// where nobody stated the hitch.
    pub fn hitched_limit_kg(&self, trace: &mut impl Trace) -> f64 {
        let factor = match self.hitch {
            Some(Hitch::Vertical | Hitch::Basket) => return self.leg_limit.si(),
            Some(Hitch::Choker) | None => CHOKER,
        };
        let limit = factor * self.leg_limit.si();
        trace.step(|| Step {
            title: text::STEP_CHOKER.message(),
            formula: "L = c · L_1".into(),
            values: vec![("c".into(), Quantity::number(factor)), ("L_1".into(), Quantity::from(self.leg_limit))],
            result: ("L".into(), Quantity::new(limit, D::Mass)),
            source: Source::from_memory("ASME B30.9"),
        });
        limit
    }

    /// How far the load's centre swings out, m, hanging `below` m under the hook: `r = l · sin φ`, or
    /// as stated.
    pub fn swing_reach(&self, below: f64, trace: &mut impl Trace) -> f64 {
        match self.swing {
            Swing::Reach(reach) => reach,
            Swing::Angle(angle) => {
                let reach = below * libm::sin(angle.si());
                trace.step(|| Step {
                    title: text::STEP_SWING.message(),
                    formula: "r = l · sin φ".into(),
                    values: vec![("l".into(), Quantity::new(below, D::Length)), ("φ".into(), Quantity::from(angle))],
                    result: ("r".into(), Quantity::new(reach, D::Length)),
                    source: Source::Mechanics,
                });
                reach
            }
        }
    }
}
