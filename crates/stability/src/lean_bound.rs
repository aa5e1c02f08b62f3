//! How much the lean of a machine on springs can cost at most, for searches over many corners; and the
//! load factor on springs.

use crate::lean::{SECOND_ORDER, ends};
use crate::support::points;
use crate::{
    LoadOnBoom, Loading, Masses, RearAxleState, Springs, Stance, TippingLine, sine_of_tilt_at_least,
    tilt_reserve_on_springs,
};
use geometry::DVec3;
use machine::{Machine, SupportState};
use quantity::STANDARD_GRAVITY as G;

/// What the contacts of one line can give, whatever the corner.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct LeanBound {
    /// Turn of the body against the ground for each metre that an end of the line gives, at most, rad/m;
    /// the second order included.
    turn: f64,
    /// How far an end of the line gives at most: by itself (m), and for each kilogram on the line.
    give: f64,
    give_per_mass: f64,
    /// Length of the line seen from above, m.
    length: f64,
}

impl LeanBound {
    /// For a line of a machine whose rear axle weighs what `masses` says.
    ///
    /// The plane of two given ends (`g` each at most, `l` apart) and a contact that gives nothing
    /// (`d` from the line) turns by at most `√((g/d)² + (g/l)²)` (geometry).
    pub fn of(
        machine: &Machine,
        stance: impl Into<Stance>,
        line: &TippingLine,
        masses: &Masses,
        springs: Springs,
    ) -> Self {
        let stance = stance.into();
        let p = points(machine, stance);
        let free = stance.support.rear == RearAxleState::Free && stance.support.state != SupportState::Outriggers;
        let (ends, lifted) = ends(&p, line.over, free, masses, springs);
        let flat = ends[1].at.truncate() - ends[0].at.truncate();
        let length = flat.length();
        let away = lifted
            .iter()
            .map(|t| (flat.perp_dot(t.truncate() - ends[0].at.truncate()) / length).abs())
            .fold(f64::INFINITY, f64::min);
        Self {
            turn: SECOND_ORDER * libm::hypot(1.0 / away, 1.0 / length),
            give: ends.iter().map(|e| e.give * e.before).fold(0.0, f64::max),
            give_per_mass: ends.iter().map(|e| e.give * G).fold(0.0, f64::max),
            length,
        }
    }

    /// Tilt that the lean costs at most where `mass` (kg) counts, with its centre `distance` (m) from the
    /// line and the part of gravity along the ground at most `slope` (its sine), rad: the turn, and the
    /// line's own move by what its ends give.
    ///
    /// The line moves by `g` along the ground's normal, which brings it nearer to the weight's height: that
    /// helps. What harms is the part of the move square to gravity, seen from the centre at `distance`,
    /// and, in the second order, the line's own slant `g/l` (geometry).
    pub fn at(&self, mass: f64, distance: f64, slope: f64) -> f64 {
        let give = self.give + self.give_per_mass * mass;
        let turn = give * self.turn;
        let slant = give / self.length;
        turn + give * (slope + turn) / distance + slant * slant
    }
}

/// A machine on springs with its tipping lines, and for each line the bound of its lean and the wind's
/// moment.
#[derive(Debug, Clone, Copy)]
pub struct OnLines<'a> {
    /// The machine.
    pub machine: &'a Machine,
    /// What it stands on.
    pub stance: Stance,
    /// What its contacts give.
    pub springs: Springs,
    /// Its tipping lines.
    pub lines: &'a [TippingLine; 6],
    /// [`LeanBound`] of each.
    pub lean: &'a [LeanBound; 6],
    /// [`crate::wind::WindLoad::overturning`] about each, N·m.
    pub overturning: &'a [f64; 6],
}

/// Load factor on springs, at most `most`, with the line over which it tips: the share of the load at
/// which the tilt that remains ([`tilt_reserve_on_springs`]) is used up. `None` where `most` of the load
/// still stands. 0 where it tips without load; NaN where the tilt is no number.
///
/// `bare` is without the load. The tilt falls with the load over a line that the load tips, and is
/// sought by halving.
pub fn load_factor_on_springs(
    on: &OnLines<'_>,
    bare: &Loading,
    load: LoadOnBoom,
    most: f64,
) -> Option<(f64, TippingLine)> {
    let mut found = None;
    let mut least = most;
    for (i, line) in on.lines.iter().enumerate() {
        let asked = -bare.gravity.dot(line.along.cross(load.at - line.point) + DVec3::X * line.held);
        // No line to which the load itself adds: more of it does not tip there.
        if asked <= 0.0 {
            continue;
        }
        let loading = |factor: f64| {
            let masses = bare.masses.with(LoadOnBoom { mass: load.mass * factor, at: load.at });
            Loading { masses, ..*bare }
        };
        if sine_of_tilt_at_least(&loading(least), line, on.overturning[i], &on.lean[i]) >= 0.0 {
            continue;
        }
        let tilt = |factor| tilt_reserve_on_springs(on.machine, on.stance, &loading(factor), line, on.springs);
        let there = tilt(least);
        if there.is_nan() {
            return Some((f64::NAN, *line));
        }
        if there >= 0.0 {
            continue;
        }
        if tilt(0.0) < 0.0 {
            return Some((0.0, *line));
        }
        let (mut low, mut high) = (0.0, least);
        while high - low > 1e-4 * high {
            let middle = f64::midpoint(low, high);
            if tilt(middle) < 0.0 { high = middle } else { low = middle }
        }
        (least, found) = (low, Some((low, *line)));
    }
    found
}
