//! How much earlier a machine on springs tips than one on rigid contacts. Closed form.
//!
//! At the onset over a line all of the weight stands on that line's two supports, and the others have
//! just lost theirs: the forces are known by where the weight meets the line, and with them how far each
//! end has given. The ground's plane goes through the two given ends and the contact that has just
//! come free: that is how far the body is turned against the ground. The reserve shrinks by the part of
//! this turn about the axis of the worst tilt, while the line, moved up into the body by what its
//! contacts have given, lies a little nearer to the weight (geometry).

use crate::support::{Points, points};
use crate::tipping::arm;
use crate::{Loading, Masses, RearAxleState, Springs, Stance, TippingLine, TipsOver, tilt_reserve};
use evidence::Silent;
use geometry::DVec3;
use machine::{Machine, SupportState};
use quantity::STANDARD_GRAVITY as G;

/// A support of a line: where, and by how much it gives per newton.
#[derive(Debug, Clone, Copy, PartialEq)]
struct End {
    at: DVec3,
    give: f64,
    /// The pin is a point of the body: its tyres give below it, and the axle's weight is on them already.
    pin: bool,
}

/// How much more than the first order gives a lean (rad) counts: 15 %, and 0.8 % for each hundredth of a radian
/// that it leans, as the weight of a body that has leaned leans it further. With it no case of the search on
/// springs tipped earlier (own comparison, see the tests).
fn second_order(lean: f64) -> f64 {
    lean * (1.15 + 0.8 * lean)
}

/// A proof holds although the numbers are rounded.
const ROUND: f64 = 1.0 + 1e-9;

/// A tilt that must remain, with its sine and cosine at hand.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct KeptTilt {
    sin: f64,
    cos: f64,
}

impl KeptTilt {
    /// Of an angle from 0 to less than a quarter turn, rad; `None` for any other.
    pub fn of(tilt: f64) -> Option<Self> {
        let (sin, cos) = libm::sincos(tilt);
        (0.0..core::f64::consts::FRAC_PI_2).contains(&tilt).then_some(Self { sin, cos })
    }

    /// Its sine.
    pub fn sine(self) -> f64 {
        self.sin
    }
}

/// A tipping line whose supports give: its geometry, worked out once for many loadings.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct LineOnSprings {
    /// The line on rigid contacts.
    pub rigid: TippingLine,
    /// Where it goes.
    ends: [End; 2],
    /// From the first end to the second, unit vector.
    along: DVec3,
    /// m.
    length: f64,
    /// Turn of the body for each metre that the first and the second end gives, about each of the two
    /// contacts that come free, rad/m.
    turns: [[DVec3; 2]; 2],
    /// Turn and give of an end at most for each newton on the line, rad/N and m/N: wherever the weight
    /// meets it, as both go evenly with that.
    most: [f64; 2],
    /// Every spring is a positive number.
    sound: bool,
}

/// How a machine leans at the onset over a line, first order.
struct Lean {
    /// What the ends have given, m.
    give: [f64; 2],
    /// Turn of the body against the ground, rad.
    turned: DVec3,
    /// The part of it about the axis of the worst tilt, rad; not below zero.
    about_axis: f64,
}

impl LineOnSprings {
    /// For a line of [`crate::tipping_lines`] of the same machine and stance.
    pub fn of(machine: &Machine, stance: impl Into<Stance>, line: &TippingLine, springs: Springs) -> Self {
        let stance = stance.into();
        let p = points(machine, stance);
        let free = stance.support.rear == RearAxleState::Free && stance.support.state != SupportState::Outriggers;
        let (ends, lifted) = ends(&p, line.over, free, springs);
        let along = ends[1].at - ends[0].at;
        let turns = lifted.map(|t| {
            let at = [t, ends[0].at, ends[1].at];
            [turn(at, [0.0, -1.0, 0.0]), turn(at, [0.0, 0.0, -1.0])]
        });
        let length = along.length();
        let sound = springs.front > 0.0 && springs.rear > 0.0;
        let turn = |i: usize| ends[i].give * turns.iter().map(|t| t[i].length()).fold(0.0, f64::max);
        let most = [turn(0).max(turn(1)), ends[0].give.max(ends[1].give)];
        Self { rigid: *line, ends, along: along / length, length, turns, most, sound }
    }

    /// Where the weight meets the line at the onset says what each end gives, and that how it leans.
    ///
    /// Tilting the worst way, gravity stays in the plane of the tilt's axis and keeps its part along
    /// the line: from a centre `d` off the line it meets it `d · (ĝ·u) / ĝ_⊥` further along.
    fn lean(&self, loading: &Loading) -> Lean {
        let (mass, moment) = loading.masses.counted(self.rigid.with_rear_axle);
        let weight = mass * G;
        let arm = moment / mass - self.ends[0].at;
        let square = self.along.cross(arm).normalize();
        let gravity = loading.gravity;
        let (by, out) = (gravity.dot(square), gravity.dot(self.along));
        let down = (1.0 - by * by - out * out).max(0.0).sqrt();
        let distance = self.along.cross(arm).length();
        let share = ((arm.dot(self.along) + distance * out / down) / self.length).clamp(0.0, 1.0);
        let give = [(0, 1.0 - share), (1, share)].map(|(i, share): (usize, f64)| {
            let end = &self.ends[i];
            end.give * (weight * share + if end.pin { loading.masses.axle * G } else { 0.0 })
        });
        // The axis about which the worst tilt turns.
        let axis = gravity.cross(square).normalize();
        let [a, b] = self.turns.map(|[first, second]| first * give[0] + second * give[1]);
        let (turned, by) = if a.dot(axis) >= b.dot(axis) { (a, a.dot(axis)) } else { (b, b.dot(axis)) };
        Lean { give, turned, about_axis: if by < 0.0 { 0.0 } else { by } }
    }

    /// Tilt (rad) that the ground may still turn, in the worst direction, until the machine tips over the
    /// line; negative if it tips already. As [`crate::tilt_reserve`], and never more. Negative infinity
    /// where a spring is not a positive number.
    pub fn tilt(&self, loading: &Loading) -> f64 {
        if !self.sound {
            return f64::NEG_INFINITY;
        }
        let rigid = tilt_reserve(loading, &self.rigid, &mut Silent);
        let Lean { give, turned, about_axis: lean } = self.lean(loading);
        // It tips between the rigid tilt less the whole lean and the rigid tilt: the springs feel the
        // weight's part square to the ground.
        let cos = |tilt: f64| libm::cos(tilt.clamp(0.0, core::f64::consts::FRAC_PI_2));
        let (most, least) = (cos(rigid - lean), cos(rigid));
        // The ground's normal in the body: up, turned back.
        let normal = (DVec3::Z - turned.cross(DVec3::Z)).normalize();
        let up = |i: usize| if self.ends[i].pin { DVec3::ZERO } else { normal * (give[i] * least) };
        let (a, b) = (self.ends[0].at + up(0), self.ends[1].at + up(1));
        let given = TippingLine { point: a, along: (b - a).normalize(), ..self.rigid };
        let soft = tilt_reserve(loading, &given, &mut Silent) - second_order(lean) * most;
        // Where sinking brings the weight nearer to the line than the lean costs, that is not credited.
        if rigid < soft { rigid } else { soft }
    }

    /// What the tilt rests on, for the working: how far the two ends of the line have given at the onset (m)
    /// and how far the body has turned about the axis of the worst tilt (rad), first order.
    pub fn given(&self, loading: &Loading) -> ([f64; 2], f64) {
        let Lean { give, about_axis, .. } = self.lean(loading);
        (give, about_axis)
    }

    /// A lower bound of the sine of [`LineOnSprings::tilt`], without sines and arcsines, for searches over
    /// many corners; −1 where none is at hand.
    ///
    /// With `sin ψ = s ≥ 0` and `sin ω = w ≥ 0` the reserve on rigid contacts is `ψ − ω`; the lean and the
    /// line's own move take at most `β`, and `sin(x − β) ≥ (1 − β²/2)·sin x − β·cos x`. The line's move
    /// along the ground's normal brings it nearer to the weight's height, which helps. What harms is the
    /// part of the move square to gravity, seen from the centre, and, in the second order, the line's own
    /// slant (geometry).
    ///
    /// `overturning` is the wind's moment about the line ([`crate::wind::WindLoad::overturning`]), which
    /// a search has at hand.
    pub fn sine_at_least(&self, loading: &Loading, overturning: f64) -> f64 {
        let Some((rigid, _, distance)) = self.rigid_sine(loading, overturning) else { return -1.0 };
        let Lean { give, turned, about_axis: lean } = self.lean(loading);
        let beta = self.cost(loading, distance, lean, turned.length(), give[0].max(give[1]));
        less(rigid, beta)
    }

    /// A lower bound of [`LineOnSprings::sine_at_least`] that costs little: the lean at most, wherever the
    /// weight meets the line.
    pub fn sine_at_very_least(&self, loading: &Loading, overturning: f64) -> f64 {
        let Some((rigid, mass, distance)) = self.rigid_sine(loading, overturning) else { return -1.0 };
        // The axle's weight is on the pin's wheels besides: counted whole at the softer end.
        let weight = (mass + loading.masses.axle) * G;
        let [turn, give] = self.most.map(|m| m * weight);
        less(rigid, self.cost(loading, distance, turn, turn, give))
    }

    /// True where [`LineOnSprings::tilt`] is proven to be at least `kept` for every load of `loaded − bare` from none to
    /// all of it, in each of these directions of gravity, with no more of the wind's moment than `overturning` (N·m).
    /// False says nothing.
    ///
    /// With `a` the moment's arm, `ĝ·a ≥ |a| sin ψ + M_w/G cos ψ` makes the rigid tilt at least `ψ`, as
    /// `|a| ≥ √(|a|² − (M_w/G)²)`; of a load that grows `ĝ·a` is linear and `|a|` convex, so that what holds at both ends
    /// holds between. `ψ = kept + β` with the greatest lean `β` of all of them: the weight of the heaviest, and
    /// `|a| ≥ ĝ·a` no less than at either end. `sin(t + β) ≤ sin t + β cos t`.
    pub fn surely_keeps(
        &self,
        [bare, loaded]: [&Masses; 2],
        gravities: &[DVec3],
        overturning: f64,
        kept: KeptTilt,
    ) -> bool {
        let arms = [bare, loaded].map(|m| arm(m, &self.rigid));
        let held = arms.map(|(_, a)| least_held(gravities, a));
        let least = if held[0].is_nan() || held[0] < held[1] { held[0] } else { held[1] };
        let mass = arms[0].0.max(arms[1].0);
        let weight = (mass + bare.axle.max(loaded.axle)) * G;
        let [turn, give] = self.most.map(|m| m * weight);
        let slope = gravities.iter().map(|g| g.truncate().length_squared()).fold(0.0, f64::max).sqrt();
        let slant = give / self.length;
        let beta = second_order(turn) + give * (slope + turn) * mass / least + slant * slant;
        // Comparisons with what is no number are false.
        let sound = self.sound && least > 0.0 && beta <= 0.5;
        let wind = overturning / G;
        sound
            && (0..2)
                .all(|i| held[i] >= arms[i].1.length() * (kept.sin + beta * kept.cos) * ROUND + wind * kept.cos * ROUND)
    }

    /// Sine of the tilt that remains on rigid contacts, the mass that counts (kg) and its distance from the
    /// line (m); `None` where it tips, or nothing is known.
    fn rigid_sine(&self, loading: &Loading, overturning: f64) -> Option<(f64, f64, f64)> {
        let (mass, a) = arm(&loading.masses, &self.rigid);
        let size = a.length();
        let s = loading.gravity.dot(a) / size;
        let w = overturning / (G * size);
        let rigid = s * (1.0 - w * w).max(0.0).sqrt() - w * (1.0 - s * s).max(0.0).sqrt();
        (self.sound && s >= 0.0 && w <= 1.0 && rigid >= 0.0).then_some((rigid, mass, size / mass))
    }

    /// Tilt that a lean and the line's move take at most, rad.
    fn cost(&self, loading: &Loading, distance: f64, lean: f64, turn: f64, give: f64) -> f64 {
        let slope = loading.gravity.truncate().length();
        let slant = give / self.length;
        second_order(lean) + give * (slope + turn) / distance + slant * slant
    }
}

/// The least of `ĝ·a` over directions of gravity; not a number where one is none, or there is no direction.
pub(crate) fn least_held(gravities: &[DVec3], a: DVec3) -> f64 {
    let least = gravities
        .iter()
        .map(|g| g.dot(a))
        .reduce(|least, held| if least.is_nan() || least < held { least } else { held });
    least.unwrap_or(f64::NAN)
}

/// `sin(x − β)` at least, of `sin x ≥ 0`; −1 for a β beyond 1 rad.
fn less(sine: f64, beta: f64) -> f64 {
    if beta <= 1.0 { sine * (1.0 - 0.5 * beta * beta) - beta * (1.0 - sine * sine).max(0.0).sqrt() } else { -1.0 }
}

/// [`LineOnSprings::tilt`] of one loading.
pub fn tilt_reserve_on_springs(
    machine: &Machine,
    stance: impl Into<Stance>,
    loading: &Loading,
    line: &TippingLine,
    springs: Springs,
) -> f64 {
    LineOnSprings::of(machine, stance, line, springs).tilt(loading)
}

/// Rotation vector (rad, small) of a plane whose three points move up by `rise`.
pub(crate) fn turn(at: [DVec3; 3], rise: [f64; 3]) -> DVec3 {
    let (u, v) = (at[1] - at[0], at[2] - at[0]);
    let (du, dv) = (rise[1] - rise[0], rise[2] - rise[0]);
    let whole = u.x * v.y - u.y * v.x;
    let (by_x, by_y) = ((du * v.y - dv * u.y) / whole, (u.x * dv - v.x * du) / whole);
    DVec3::new(by_y, -by_x, 0.0)
}

/// The two supports of a line, and the contacts that come free.
fn ends(p: &Points, over: TipsOver, free: bool, springs: Springs) -> ([End; 2], [DVec3; 2]) {
    let front = |i: usize| End { at: p.front[i], give: 1.0 / springs.front, pin: false };
    let wheel = |i: usize| End { at: p.rear[i], give: 1.0 / springs.rear, pin: false };
    // The pin goes down by the mean of its two wheels.
    let rear = |i: usize| if free { End { at: p.pin, give: 0.5 / springs.rear, pin: true } } else { wheel(i) };
    match over {
        TipsOver::Front => ([front(0), front(1)], p.rear),
        TipsOver::Rear => ([wheel(1), wheel(0)], p.front),
        TipsOver::Left => ([rear(0), front(0)], if free { [p.front[1]; 2] } else { [p.front[1], p.rear[1]] }),
        TipsOver::Right => ([front(1), rear(1)], if free { [p.front[0]; 2] } else { [p.front[0], p.rear[0]] }),
    }
}
