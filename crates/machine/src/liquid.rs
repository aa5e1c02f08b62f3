//! A tank that is partly full: where the liquid goes when the tank tilts.
//!
//! The tank is a rectangular box. Tilted by θ about one of its sides, the surface stays level in
//! space, so that in the tank it slopes by `tan θ`. While it meets neither bottom nor lid, the
//! volume taken from one half and added to the other gives
//! `Δ = b²·tan θ / (12·h)` for a side `b` and a fill height `h` (mechanics: the wedges' moment
//! `2 · ½·(b/2)·(b/2·tan θ) · (b/3)` over the area `b·h`). Beyond that the liquid is a wedge, cut by
//! bottom or lid or both, and its centre is taken exactly.

use crate::text;
use evidence::{Ranged, Source, Step, Trace};
use geometry::DVec3;
use quantity::{Dimension as D, Quantity};

/// Tilt that is reckoned with where the job states none, rad: 5° (common practice).
pub const USUAL_TILT: f64 = 5.0 * core::f64::consts::PI / 180.0;

/// Share of the height from which a tank counts as full, so that nothing surges in it (ours).
pub const FULL: f64 = 0.95;

/// Liquid in a box.
#[derive(Debug, Clone, PartialEq)]
pub struct Liquid {
    /// Its mass, kg.
    pub mass_kg: Ranged,
    /// Inside of the tank: depth, width, height, m.
    pub tank: DVec3,
    /// Middle of the tank's bottom in the load's frame, m.
    pub at: DVec3,
    /// Height of the liquid in the level tank, m.
    pub fill: f64,
    /// Baffles break the surge; they hold no liquid back when it stays tilted.
    pub baffled: bool,
    /// A lid that holds the liquid.
    pub closed: bool,
    /// Greatest tilt that is reckoned with, either way, rad.
    pub tilt: f64,
}

/// How far the centre of a liquid moves in its tank.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Shift {
    /// Towards the low side, m.
    pub along: f64,
    /// Up, m.
    pub up: f64,
}

impl Liquid {
    /// Shift of the liquid's centre ahead or back, and left or right, at the greatest tilt.
    pub fn shifts(&self) -> [Shift; 2] {
        [self.tank.x, self.tank.y].map(|side| shift(side, self.tank.z, self.fill, self.tilt))
    }

    /// How far the surface rises at the lowest corner at most, tilted in any direction, were there no
    /// lid, m: half the diagonal times `tan θ`. Where the surface bares a part of the bottom it is less.
    pub fn rise(&self) -> f64 {
        libm::hypot(self.tank.x, self.tank.y) / 2.0 * libm::tan(self.tilt)
    }

    /// Room above the liquid, m.
    pub fn freeboard(&self) -> f64 {
        self.tank.z - self.fill
    }

    /// True where there is liquid enough to run, and room to run in.
    pub fn partly_full(&self) -> bool {
        self.fill < FULL * self.tank.z && self.fill > 0.0
    }

    /// The working of the shifts.
    pub fn trace(&self, trace: &mut impl Trace) {
        for (title, side, shift) in [
            (text::STEP_LIQUID_AHEAD, self.tank.x, self.shifts()[0]),
            (text::STEP_LIQUID_LEFT, self.tank.y, self.shifts()[1]),
        ] {
            trace.step(|| Step {
                title: title.message(),
                formula: "Δ = b² · tan θ / (12 · h),  exact wedge where the surface meets bottom or lid".into(),
                values: vec![
                    ("b".into(), Quantity::new(side, D::Length)),
                    ("h".into(), Quantity::new(self.fill, D::Length)),
                    ("H".into(), Quantity::new(self.tank.z, D::Length)),
                    ("θ".into(), Quantity::new(self.tilt, D::Angle)),
                ],
                result: ("Δ".into(), Quantity::new(shift.along, D::Length)),
                source: Source::Mechanics,
            });
        }
    }
}

/// Shift of the centre of a liquid `fill` high in a tank of `side` × `height`, tilted by `tilt`
/// (0 to less than 90°).
pub fn shift(side: f64, height: f64, fill: f64, tilt: f64) -> Shift {
    let t = libm::tan(tilt);
    let none = Shift { along: 0.0, up: 0.0 };
    if !(t > 0.0 && fill > 0.0 && side > 0.0) || fill >= height {
        return none;
    }
    let (area, half) = (side * fill, side / 2.0);
    if half * t <= fill.min(height - fill) {
        return Shift { along: side * side * t / (12.0 * fill), up: side * side * t * t / (24.0 * fill) };
    }
    // Exactly one form fits into the tank: a wedge on the bottom that stays under the lid, the tank
    // less a wedge of air under the lid that stays off the bottom, or what meets both.
    let wedge = libm::sqrt(2.0 * area / t);
    let air = libm::sqrt(2.0 * side * (height - fill) / t);
    let fits = |run: f64| run <= side && run * t <= height;
    // Moments about the level centre (half the side, half the fill): from the low wall, and up.
    let (from_wall, up) = if fits(wedge) {
        (wedge / 3.0, wedge * t / 3.0)
    } else if fits(air) {
        let gone = side * (height - fill);
        let whole = side * height;
        (
            (whole * half - gone * (side - air / 3.0)) / area,
            (whole * height / 2.0 - gone * (height - air * t / 3.0)) / area,
        )
    } else {
        // A full block at the low wall, then a triangle from lid to bottom.
        let run = height / t;
        let block = area / height - run / 2.0;
        let (a, b) = (block * height, run * height / 2.0);
        ((a * block / 2.0 + b * (block + run / 3.0)) / area, (a * height / 2.0 + b * height / 3.0) / area)
    };
    Shift { along: half - from_wall, up: up - fill / 2.0 }
}
