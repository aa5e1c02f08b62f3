//! The load: mass and centre, and what is not sure.

use crate::defects::Defect;
use crate::liquid::Liquid;
use crate::load_part::{self, LoadPart, Water};
use crate::pallet::Overhang;
use crate::rigging::{Hanging, Lever};
use evidence::{Certainty, Ranged, Trace};

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
    /// Width of the pallet's base, where it was built on one: that stands on the forks, m.
    pub base_width: Option<f64>,
    /// Parts it was built from; empty for a ticket.
    pub parts: Vec<LoadPart>,
    /// How it came by its mass.
    pub source: LoadSource,
    /// Set where the load hangs from a hook.
    pub hanging: Option<Hanging>,
    /// True if someone confirmed that pallet, bands and wrap are sound.
    pub condition_seen: Option<bool>,
    /// What was seen to be wrong with it.
    pub defects: Vec<Defect>,
    /// Layers of its pallet that reach over the base by more than they may.
    pub overhangs: Vec<Overhang>,
    /// Liquid in a tank that is part of it.
    pub liquid: Option<Liquid>,
    /// How far its ends hang below its underside on the forks, m; `None`: nobody stated it.
    pub sag: Option<f64>,
    /// Wind shape factor of the load.
    pub wind_factor: f64,
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

/// A face of a load.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Face {
    /// The one that now faces away from the machine.
    Far,
    /// The left one.
    Left,
    /// The right one.
    Right,
}

/// A load turned on the forks.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Turned {
    /// Face that then lies against the carriage.
    pub face: Face,
    /// Centre of gravity from that face, m.
    pub centre_ahead: f64,
    /// How much nearer that is than now, m.
    pub nearer: f64,
    /// Depth and width as turned, m.
    pub size: (f64, f64),
}

impl Load {
    /// Mass, centre from parts: weighted means. Returns (mass kg, centre m).
    pub fn combine(parts: &[LoadPart]) -> (f64, geometry::DVec3) {
        load_part::combine(parts)
    }

    /// The three other ways it could lie on the forks: turned half round, and a quarter either way.
    pub fn turned(&self) -> [Turned; 3] {
        let now = self.centre_ahead.nominal;
        let (ahead, left) = (now, self.centre_left.nominal);
        [
            (Face::Far, self.depth - ahead, (self.depth, self.width)),
            (Face::Left, self.width / 2.0 - left, (self.width, self.depth)),
            (Face::Right, self.width / 2.0 + left, (self.width, self.depth)),
        ]
        .map(|(face, centre_ahead, size)| Turned { face, centre_ahead, nearer: now - centre_ahead, size })
    }

    /// Radius of the circle that holds a hung load in any turn about its hook, its centre wherever it may
    /// be, m. Swing not counted.
    pub fn turning_radius(&self) -> f64 {
        let most = |r: Ranged| r.low.abs().max(r.high.abs());
        libm::hypot(self.depth / 2.0 + most(self.centre_ahead), self.width / 2.0 + most(self.centre_left))
    }

    /// Slope of the sling of a swinging load, run over fall: what pulls at the hook sideways as a share
    /// of the weight. Zero for a load that does not hang.
    pub fn swing_slope(&self) -> f64 {
        let Some(h) = &self.hanging else { return 0.0 };
        let length = h.drop + self.height - self.centre_up.low;
        let out = self.swing(&mut evidence::Silent);
        if out < length { out / (length * length - out * out).sqrt() } else { f64::INFINITY }
    }

    /// How far a hung load's centre swings out from under its hook, m: it adds to the reach. Zero for
    /// loads on forks.
    pub fn swing(&self, trace: &mut impl Trace) -> f64 {
        self.hanging.as_ref().map_or(0.0, |h| h.swing_reach(h.drop + self.height - self.centre_up.low, trace))
    }

    /// How far the underside of a hung load swings out and up from where it hangs plumb, m: the swing
    /// of its centre goes on to there, and no farther than straight above the hook. Zero for loads on
    /// forks.
    pub fn swing_below(&self) -> f64 {
        let Some(h) = &self.hanging else { return 0.0 };
        let down = h.drop + self.height;
        let out = down * self.swing_slope();
        if out < 2.0 * down { out } else { 2.0 * down }
    }

    /// How the weight of a hung load falls to its slings.
    pub fn lever(&self, hanging: &Hanging) -> Lever {
        hanging.lever((self.depth, self.width), self.centre_ahead, self.centre_left)
    }

    /// True if water that is in the load is in its mass: weighed with it, or stated of every part.
    pub fn water_counted(&self) -> bool {
        self.certainty == Certainty::Weighed
            || (!self.parts.is_empty() && self.parts.iter().all(|p| p.water != Water::NotStated))
    }

    /// The working of mass and centre, where it was built up.
    pub fn trace(&self, trace: &mut impl Trace) {
        if !self.parts.is_empty() {
            load_part::trace(&self.parts, trace);
        }
        if let Some(liquid) = &self.liquid {
            liquid.trace(trace);
        }
    }
}
