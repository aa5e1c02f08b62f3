//! Force of a gust on parts, for every horizontal direction at once. Machine frame, SI.
//!
//! A part is taken as a box square to the machine: wind that pushes along `n = (cos φ, sin φ, 0)` meets
//! the projection of its faces and pushes along the wind with
//!
//! `F(φ) = q · (C_f A_f · |cos φ| + C_s A_s · |sin φ|)`,  `q = ½ ρ v²`.
//!
//! Not in it: lift, suction that turns the force away from the wind, shielding of one part by another
//! (never credited).

use crate::text;
use evidence::{Message, Source, Step, Trace};
use geometry::DVec3;
use quantity::{Dimension, Quantity};

/// Density of air, kg/m³ (EN 1991-1-4, 4.5, recommended value; from memory).
pub const AIR_DENSITY: f64 = 1.25;
/// Shape factor of sheets and boxes where none is stated (from memory).
pub const SHAPE_FACTOR: f64 = 1.8;

/// Wind on the whole machine with its load: sums over the parts, direction not yet chosen.
///
/// Wind in direction φ has the force `|cos φ| · front + |sin φ| · side`, and the same for the moments.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct WindLoad {
    /// Force of wind that blows along the machine, N.
    pub front: f64,
    /// `Σ F_i r_i` of that, N·m.
    pub front_moment: DVec3,
    /// Force of wind that blows across the machine, N.
    pub side: f64,
    /// `Σ F_i r_i` of that, N·m.
    pub side_moment: DVec3,
}

/// What the wind sees of a part from one side.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Face {
    /// Area projected along the wind, m².
    pub area: f64,
    /// Shape factor for wind from that side.
    pub factor: f64,
    /// Middle of the area, m, machine frame.
    pub at: DVec3,
}

/// A part that the wind sees.
#[derive(Debug, Clone, PartialEq)]
pub struct Part {
    /// Name.
    pub name: Message,
    /// Seen along the machine, from ahead or behind.
    pub front: Face,
    /// Seen across the machine, from left or right.
    pub side: Face,
}

impl Part {
    /// A part of one shape factor whose areas have one middle, m² and m.
    pub fn new(name: Message, front: f64, side: f64, factor: f64, at: DVec3) -> Self {
        Self { name, front: Face { area: front, factor, at }, side: Face { area: side, factor, at } }
    }
}

/// Pressure of a gust `v` (m/s), Pa.
pub fn gust_pressure(gust: f64) -> f64 {
    0.5 * AIR_DENSITY * gust * gust
}

impl WindLoad {
    /// No wind.
    pub const NONE: Self = Self { front: 0.0, front_moment: DVec3::ZERO, side: 0.0, side_moment: DVec3::ZERO };

    /// Force of a gust `v` (m/s) on parts.
    pub fn of(gust: f64, parts: &[Part], trace: &mut impl Trace) -> Self {
        let pressure = gust_pressure(gust);
        trace.step(|| Step {
            title: text::STEP_WIND_PRESSURE.message(),
            formula: "q = ½ · ρ · v²".into(),
            values: vec![
                ("ρ".into(), Quantity::new(AIR_DENSITY, Dimension::Density)),
                ("v".into(), Quantity::new(gust, Dimension::Speed)),
            ],
            result: ("q".into(), Quantity::new(pressure, Dimension::Pressure)),
            source: Source::from_memory("EN 1991-1-4:2005, 4.5"),
        });
        let mut sum = Self::NONE;
        for part in parts {
            let front = pressure * part.front.factor * part.front.area;
            let side = pressure * part.side.factor * part.side.area;
            sum.front += front;
            sum.front_moment += part.front.at * front;
            sum.side += side;
            sum.side_moment += part.side.at * side;
            trace.step(|| part_step(part, front, side));
        }
        sum
    }

    /// Both together.
    #[must_use]
    pub fn and(self, other: Self) -> Self {
        Self {
            front: self.front + other.front,
            front_moment: self.front_moment + other.front_moment,
            side: self.side + other.side,
            side_moment: self.side_moment + other.side_moment,
        }
    }

    /// So many times as much.
    #[must_use]
    pub fn scaled(self, times: f64) -> Self {
        Self {
            front: self.front * times,
            front_moment: self.front_moment * times,
            side: self.side * times,
            side_moment: self.side_moment * times,
        }
    }

    /// Force (N) and `Σ F_i r_i` (N·m) of wind that pushes along (`cos`, `sin`).
    pub(crate) fn in_direction(&self, cos: f64, sin: f64) -> (f64, DVec3) {
        let (c, s) = (cos.abs(), sin.abs());
        (self.front * c + self.side * s, self.front_moment * c + self.side_moment * s)
    }

    /// Greatest force of all directions, N: `√(F_f² + F_s²)`, the most of `F_f cos φ + F_s sin φ`.
    pub fn greatest_force(&self) -> f64 {
        libm::hypot(self.front, self.side)
    }

    /// Greatest moment about the ground of all directions, N·m: `√(S_f,z² + S_s,z²)`, exact where
    /// no part lies below the ground, and never too little.
    pub fn about_ground(&self) -> f64 {
        libm::hypot(self.front_moment.z, self.side_moment.z)
    }
}

fn part_step(part: &Part, front: f64, side: f64) -> Step {
    let length = |v: f64| Quantity::new(v, Dimension::Length);
    let mut values = vec![
        ("C_f".into(), Quantity::number(part.front.factor)),
        ("A_f".into(), Quantity::new(part.front.area, Dimension::Area)),
        ("x".into(), length(part.front.at.x)),
        ("z".into(), length(part.front.at.z)),
        ("F_f".into(), Quantity::new(front, Dimension::Force)),
        ("C_s".into(), Quantity::number(part.side.factor)),
        ("A_s".into(), Quantity::new(part.side.area, Dimension::Area)),
    ];
    if part.side.at != part.front.at {
        values.extend([("x_s".into(), length(part.side.at.x)), ("z_s".into(), length(part.side.at.z))]);
    }
    // Nearly always in the middle.
    for (symbol, y) in [("y", part.front.at.y), ("y_s", part.side.at.y)] {
        if y != 0.0 {
            values.push((symbol.into(), length(y)));
        }
    }
    Step {
        title: text::STEP_WIND_FORCE.with("part", part.name.clone()),
        formula: "F_f = q · C_f · A_f,  F_s = q · C_s · A_s".into(),
        values,
        result: ("F_s".into(), Quantity::new(side, Dimension::Force)),
        source: Source::from_memory("EN 1991-1-4:2005, 5.3"),
    }
}
