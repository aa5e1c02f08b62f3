//! What slings carry, and how far a hung load swings out.

use crate::text;
use evidence::{Ranged, Source, Step, Trace};
use quantity::{Angle, Dimension as D, Mass, Quantity, Si};

/// What is left of a sling's limit where it is choked about the load: the lower of the figures in the
/// trade (from memory). The limit on the sling's own tag governs.
pub const CHOKER: f64 = 0.75;

/// Angle of the choke from which [`CHOKER`] holds, rad: 120° (from memory).
pub const CHOKE_ANGLE: f64 = 2.0 * core::f64::consts::FRAC_PI_3;

/// Angle out of plumb that is reckoned with where the job states none, rad: 3° (common practice).
pub const USUAL_SWING: f64 = 3.0 * core::f64::consts::PI / 180.0;

/// Rigging of a hung load.
#[derive(Debug, Clone, PartialEq)]
pub struct Hanging {
    /// Mass of slings, shackles, beams with its range, kg: included in the load's mass.
    pub rigging_kg: Ranged,
    /// From hook to the top of the load, m.
    pub drop: f64,
    /// Number of slings.
    pub legs: u32,
    /// Angle of the legs from the vertical.
    pub leg_angle: Angle,
    /// Distance of the two lifting points along the load, m; `None`: as drop and leg angle make it.
    pub picks: Option<f64>,
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
#[derive(Debug, Clone, PartialEq)]
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

/// How a load's weight falls to the two slings that carry it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Lever {
    /// How far the centre may lie from the middle between the lifting points, m.
    pub off: f64,
    /// Distance of the lifting points, m.
    pub spread: f64,
    /// Share of the weight that the nearer sling takes; 1 where it takes all of it, or more.
    pub share: f64,
    /// True where the centre may not lie between the lifting points: the load tips in its slings.
    pub outside: bool,
}

impl Hanging {
    /// How the weight of a load of `size` (depth, width), whose centre lies `ahead` and `left` of the
    /// middle under the hook, falls to the slings.
    ///
    /// The nearer of two takes `½ + |x| / s` (lever; mechanics). With two slings `x` counts along the
    /// load's longer side. Of three or more two carry, whichever they are: `x` is the whole distance
    /// from the middle. `s` is stated, or twice `drop · tan α`. One sling takes everything.
    pub fn lever(&self, size: (f64, f64), ahead: Ranged, left: Ranged) -> Lever {
        let most = |r: Ranged| r.low.abs().max(r.high.abs());
        let (x, y) = (most(ahead), most(left));
        let spread = self.picks.unwrap_or_else(|| 2.0 * self.drop * libm::tan(self.leg_angle.si()));
        let off = match self.legs {
            0..=2 if size.0 > size.1 => x,
            0..=2 if size.0 < size.1 => y,
            0..=2 => x.max(y),
            _ => libm::hypot(x, y),
        };
        if self.legs < 2 {
            return Lever { off, spread: 0.0, share: 1.0, outside: false };
        }
        if off <= 0.0 {
            return Lever { off, spread, share: 0.5, outside: false };
        }
        // Also where the spread is no number.
        let inside = off < spread / 2.0;
        let share = if inside { 0.5 + off / spread } else { 1.0 };
        Lever { off, spread, share, outside: !inside }
    }

    /// Force in the worst sling leg as a mass, kg.
    ///
    /// `S = W · q / (k · cos α)` with the share `q` of the nearer sling ([`Hanging::lever`]): of three
    /// or more slings two carry, since lengths differ (common practice); in a basket each has two
    /// legs, `k = 2`; else `k = 1`.
    pub fn leg_mass_kg(&self, mass: f64, lever: &Lever, trace: &mut impl Trace) -> f64 {
        let parts = if self.hitch == Some(Hitch::Basket) { 2.0 } else { 1.0 };
        let alpha = self.leg_angle.si();
        let leg = mass * lever.share / (parts * libm::cos(alpha));
        if self.legs > 1 {
            trace.step(|| Step {
                title: text::STEP_LEVER.message(),
                formula: "q = ½ + x / s".into(),
                values: vec![
                    ("x".into(), Quantity::new(lever.off, D::Length)),
                    ("s".into(), Quantity::new(lever.spread, D::Length)),
                ],
                result: ("q".into(), Quantity::ratio(lever.share)),
                source: Source::Mechanics,
            });
        }
        trace.step(|| Step {
            title: text::STEP_SLING.message(),
            formula: "S = W · q / (k · cos α),  q = 1 for one sling, k = 2 in a basket".into(),
            values: vec![
                ("W".into(), Quantity::new(mass, D::Mass)),
                ("q".into(), Quantity::ratio(lever.share)),
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
