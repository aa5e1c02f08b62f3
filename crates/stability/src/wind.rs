//! Force of a gust. `F = ½ ρ v² C A`, direction the worst one for each tipping line.
//!
//! Each part shows the larger of its side and front area whatever the direction: on the safe side.

use crate::{TippingLine, text};
use evidence::{Message, Source, Step, Trace};
use geometry::DVec3;
use quantity::{Dimension, Quantity};

/// Density of air, kg/m³ (EN 1991-1-4, 4.5, recommended value; from memory).
pub const AIR_DENSITY: f64 = 1.25;
/// Shape factor of sheets and boxes where none is stated (from memory).
pub const SHAPE_FACTOR: f64 = 1.8;

/// Wind on the whole machine with its load: sums over the parts, direction not yet chosen.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct WindLoad {
    /// Total force, N.
    pub force: f64,
    /// `Σ F_i r_i`, N·m, machine frame.
    pub moment: DVec3,
}

/// A part that the wind sees.
#[derive(Debug, Clone, PartialEq)]
pub struct Part {
    /// Name.
    pub name: Message,
    /// Largest area from any side, m².
    pub area: f64,
    /// Shape factor.
    pub factor: f64,
    /// Middle of the area, m, machine frame.
    pub at: DVec3,
}

impl WindLoad {
    /// No wind.
    pub const NONE: Self = Self { force: 0.0, moment: DVec3::ZERO };

    /// Force of a gust `v` (m/s) on parts.
    pub fn of(gust: f64, parts: &[Part], trace: &mut impl Trace) -> Self {
        let pressure = 0.5 * AIR_DENSITY * gust * gust;
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
            let force = pressure * part.factor * part.area;
            sum.force += force;
            sum.moment += part.at * force;
            trace.step(|| Step {
                title: text::STEP_WIND_FORCE.with("part", part.name.clone()),
                formula: "F = q · C · A".into(),
                values: vec![
                    ("q".into(), Quantity::new(pressure, Dimension::Pressure)),
                    ("C".into(), Quantity::number(part.factor)),
                    ("A".into(), Quantity::new(part.area, Dimension::Area)),
                    ("x".into(), Quantity::new(part.at.x, Dimension::Length)),
                    ("y".into(), Quantity::new(part.at.y, Dimension::Length)),
                    ("z".into(), Quantity::new(part.at.z, Dimension::Length)),
                ],
                result: ("F".into(), Quantity::new(force, Dimension::Force)),
                source: Source::from_memory("EN 1991-1-4:2005, 5.3"),
            });
        }
        sum
    }

    /// Greatest overturning moment about a line over all horizontal wind directions, N·m.
    ///
    /// A force `F·n` at `r` has the moment `F·n · (u × (r − P))` about the line; over all
    /// horizontal unit vectors `n` its greatest size is the horizontal part of `u × Σ F_i (r_i − P)`.
    pub fn overturning(&self, line: &TippingLine) -> f64 {
        let lever = line.along.cross(self.moment - line.point * self.force);
        // What holds the machine along its length holds against the wind too.
        libm::hypot(lever.x + self.force * line.held, lever.y)
    }
}
