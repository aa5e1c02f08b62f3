//! Braking, starting and turning, quasi-static: the machine's acceleration as an apparent gravity
//! (d'Alembert), after which everything of statics holds.
//!
//! `g⃗′ = g·ĝ − a⃗` in the machine frame, `a⃗` along the ground: ahead when it gains speed ahead, back when
//! it brakes travelling ahead, `v²/R` towards the middle of a turn. Steering modes come in through the
//! radius alone.

use crate::{Loading, Reactions, Springs, Stance, reactions};
use geometry::DVec3;
use machine::Machine;
use quantity::STANDARD_GRAVITY as G;

/// Full service braking on dry ground, m/s²: what is asked of service brakes of heavy road vehicles,
/// about half of gravity (UN Regulation 13, category N, mean fully developed deceleration; from
/// memory). Where more is worse.
pub const FULL_BRAKING: f64 = 5.0;

/// How many times as hard an acceleration that begins suddenly and lasts counts against tipping: on tyres
/// a machine swings beyond its steady lean. Runs through time tipped from 84 % of the steady threshold on
/// springs on (own comparison, `validation/statics`); a third more covers every one of them.
pub const SUDDEN: f64 = 4.0 / 3.0;

/// Which way a machine travels.
#[derive(Debug, Clone, Copy, PartialEq, Eq, serde::Serialize, serde::Deserialize, schemars::JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum Travel {
    /// Boom first.
    Ahead,
    /// Tail first.
    Back,
}

/// Which way a machine turns, as seen from its seat.
#[derive(Debug, Clone, Copy, PartialEq, Eq, serde::Serialize, serde::Deserialize, schemars::JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum Turn {
    /// The middle of the turn lies on the left.
    Left,
    /// The middle of the turn lies on the right.
    Right,
}

/// Acceleration of a machine along its ground, m/s².
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Acceleration {
    /// Ahead.
    pub ahead: f64,
    /// To the left.
    pub left: f64,
}

impl Acceleration {
    /// Slowing down by `retardation` (m/s²); not a number below zero.
    pub fn braking(travel: Travel, retardation: f64) -> Self {
        let size = if retardation >= 0.0 { retardation } else { f64::NAN };
        Self { ahead: if travel == Travel::Ahead { -size } else { size }, left: 0.0 }
    }

    /// Gaining speed by `gain` (m/s²); not a number below zero.
    pub fn starting(travel: Travel, gain: f64) -> Self {
        let b = Self::braking(travel, gain);
        Self { ahead: -b.ahead, left: 0.0 }
    }

    /// Driving through a turn of `radius` (m, to the middle of the machine) at `speed` (m/s): `v²/R`
    /// towards its middle. Not a number for a speed below zero or a radius not above it.
    pub fn turning(turn: Turn, speed: f64, radius: f64) -> Self {
        let size = if speed >= 0.0 && radius > 0.0 { speed * speed / radius } else { f64::NAN };
        Self { ahead: 0.0, left: if turn == Turn::Left { size } else { -size } }
    }

    /// Both at once.
    #[must_use]
    pub fn and(self, other: Self) -> Self {
        Self { ahead: self.ahead + other.ahead, left: self.left + other.left }
    }

    /// As many times as much.
    #[must_use]
    pub fn times(self, factor: f64) -> Self {
        Self { ahead: self.ahead * factor, left: self.left * factor }
    }
}

/// A loading under apparent gravity.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Moving {
    /// With the apparent gravity's direction, and the wind scaled so that tilts and load factors hold as
    /// they are.
    pub loading: Loading,
    /// Size of the apparent gravity over that of gravity.
    pub heavier: f64,
}

/// A loading that accelerates. Its tilt that remains is the angle by which the apparent gravity may still
/// turn.
pub fn moving(loading: &Loading, a: Acceleration) -> Moving {
    let apparent = loading.gravity * G - DVec3::new(a.ahead, a.left, 0.0);
    let size = apparent.length();
    let heavier = size / G;
    let wind = loading.wind.scaled(1.0 / heavier);
    Moving { loading: Loading { masses: loading.masses, gravity: apparent / size, wind }, heavier }
}

impl Moving {
    /// Wheel or pad forces along the apparent gravity, N.
    pub fn reactions(&self, machine: &Machine, stance: impl Into<Stance>) -> Reactions {
        let r = reactions(machine, stance, &self.loading.masses, self.loading.gravity);
        Reactions { force: r.force.map(|f| f * self.heavier), stands: r.stands }
    }

    /// Stiffnesses for [`crate::tilt_reserve_on_springs`] of this loading, whose weight is counted
    /// with `g` only.
    pub fn springs(&self, springs: Springs) -> Springs {
        Springs { front: springs.front / self.heavier, rear: springs.rear / self.heavier }
    }
}

/// The greatest retardation (m/s², at most `most`) up to which all is well; 0 if nothing is well at rest.
/// What is well stays so for less.
pub fn greatest_retardation(
    loading: &Loading,
    travel: Travel,
    most: f64,
    well: impl Fn(&Moving, Acceleration) -> bool,
) -> f64 {
    let holds = |size: f64| {
        let braking = Acceleration::braking(travel, size);
        well(&moving(loading, braking), braking)
    };
    last_that(holds, most)
}

/// The last of 0 to `most` for which something holds that ends somewhere; by halving.
pub(crate) fn last_that(holds: impl Fn(f64) -> bool, most: f64) -> f64 {
    if holds(most) {
        return most;
    }
    let (mut low, mut high) = (0.0, most);
    for _ in 0..48 {
        let middle = f64::midpoint(low, high);
        if holds(middle) { low = middle } else { high = middle }
    }
    low
}

/// Share of all forces that the rear axle carries: on rough-terrain trucks it always steers.
pub fn rear_share(reactions: &Reactions) -> f64 {
    let all: f64 = reactions.force.iter().sum();
    let share = (reactions.force[2] + reactions.force[3]) / all;
    // Of a locked axle that tips only what presses is left, which says nothing of what steers.
    let cut = !reactions.stands && reactions.force.iter().all(|f| *f >= 0.0);
    if cut { share.min(0.0) } else { share }
}
