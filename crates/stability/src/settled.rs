//! How a machine on rigid contacts comes to stand where the ground under its contacts is not one plane.
//!
//! In the machine frame the ground's common plane has a unit normal `n` and an offset `d`; a contact at `c` on
//! ground that is `h` over that plane touches where `n·c + d = h` (geometry). Rear axle free: the two front
//! contacts and the pin, which stands over the middle of its wheels, carry the frame, and the axle turns
//! until both wheels touch; beyond its oscillation it lies against its stop and is as one locked there.
//! Locked: three of the four contacts carry and the fourth hangs over its ground, those three whose forces all
//! press; only where all four touch do they share as equal springs ([`crate::reactions`]).

use crate::reactions::{Reactions, on_three};
use crate::support::{Points, points};
use crate::{Masses, RearAxleState, Stance, reactions, text};
use evidence::{Source, Step, TextId, Trace};
use geometry::{DVec2, DVec3};
use machine::{Machine, SupportState};
use quantity::{Dimension, Quantity, STANDARD_GRAVITY as G, Si};

/// Names of the contacts.
const CONTACTS: [TextId; 4] =
    [text::CONTACT_FRONT_LEFT, text::CONTACT_FRONT_RIGHT, text::CONTACT_REAR_LEFT, text::CONTACT_REAR_RIGHT];
/// Closer than this to the ground a contact touches it, m.
const TOUCHES: f64 = 1e-7;
/// Rounds of the search for the plane; each takes off more than nine tenths of what is left.
const ROUNDS: usize = 60;

/// A machine come to stand.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Settled {
    /// As asked, with the turn of a free rear axle against the frame.
    pub stance: Stance,
    /// Unit vector of gravity in the machine frame.
    pub gravity: DVec3,
    /// Roll of the frame against the ground's common plane, left side down, rad.
    pub roll: f64,
    /// Pitch of the frame against the ground's common plane, nose down, rad.
    pub pitch: f64,
    /// A contact that hangs over its ground: front left, front right, rear left, rear right.
    pub in_the_air: Option<usize>,
    /// A free rear axle lies against its stop.
    pub at_stop: bool,
    /// Force on each contact.
    pub reactions: Reactions,
}

/// Where the ground's plane lies in the machine frame.
#[derive(Debug, Clone, Copy)]
struct Plane {
    normal: DVec3,
    offset: f64,
}

impl Plane {
    /// Through three points of the machine over their ground. `None` where they stand in a line, or too steep.
    fn through(at: [DVec3; 3], heights: [f64; 3]) -> Option<Self> {
        let (u, v) = (at[1] - at[0], at[2] - at[0]);
        let whole = u.truncate().perp_dot(v.truncate());
        let mut up = 1.0;
        for _ in 0..ROUNDS {
            let (du, dv) = (heights[1] - heights[0] - up * u.z, heights[2] - heights[0] - up * v.z);
            let flat = DVec2::new(du * v.y - dv * u.y, u.x * dv - v.x * du) / whole;
            let next = (1.0 - flat.length_squared()).sqrt();
            // Not a number where it is steeper than upright, or the points stand in a line.
            if !next.is_finite() {
                return None;
            }
            let normal = flat.extend(next);
            if (next - up).abs() < 1e-15 {
                return Some(Self { normal, offset: heights[0] - normal.dot(at[0]) });
            }
            up = next;
        }
        None
    }

    fn over(&self, at: DVec3) -> f64 {
        self.normal.dot(at) + self.offset
    }

    /// Roll and pitch of the machine: rolled about its length first, then pitched about the ground's own
    /// cross axis, so that `n = (−sin p, −sin r cos p, cos r cos p)`.
    fn attitude(&self) -> (f64, f64) {
        let n = self.normal;
        (libm::atan2(-n.y, n.z), libm::asin((-n.x).clamp(-1.0, 1.0)))
    }

    /// A direction of the ground's plane seen from the machine.
    fn seen(&self, v: DVec3) -> DVec3 {
        let (roll, pitch) = self.attitude();
        seen_turned(v, roll, pitch)
    }
}

/// How a machine comes to stand, and its forces.
///
/// `gravity` is its unit vector against the ground's common plane ([`crate::gravity_for_slopes`]); `heights` of
/// the ground over that plane under front left, front right, rear left and rear right, m. `stance` has the
/// front axle's roll by levelling and the angle of a locked rear axle; a free one's turn is found. `masses` of
/// a stance. `None` where nothing can be told: numbers that are none, contacts in a line, ground too steep.
pub fn settled(
    machine: &Machine,
    stance: Stance,
    masses: impl Fn(Stance) -> Masses,
    gravity: DVec3,
    heights: [f64; 4],
) -> Option<Settled> {
    let tyres = stance.support.state != SupportState::Outriggers;
    let known = gravity.is_finite() && gravity.z < 0.0 && heights.iter().all(|h| h.is_finite());
    if !known {
        return None;
    }
    if stance.support.rear == RearAxleState::Locked || !tyres {
        return four(machine, stance, &masses(stance), gravity, heights);
    }
    let (plane, turn) = free_axle(machine, stance, heights)?;
    let most = machine.rear.oscillation.si();
    let stance = Stance { rear_roll: turn.clamp(-most, most), ..stance };
    let masses = masses(stance);
    if turn.abs() > most + 1e-9 {
        return four(machine, stance, &masses, gravity, heights).map(|s| Settled { at_stop: true, ..s });
    }
    let gravity = plane.seen(gravity);
    let (roll, pitch) = plane.attitude();
    let reactions = reactions(machine, stance, &masses, gravity);
    let known = reactions.force.iter().all(|f| f.is_finite());
    known.then_some(Settled { stance, gravity, roll, pitch, in_the_air: None, at_stop: false, reactions })
}

/// The ground's plane and the turn of a free rear axle against the frame, left end down, rad.
fn free_axle(machine: &Machine, stance: Stance, heights: [f64; 4]) -> Option<(Plane, f64)> {
    let middle = f64::midpoint(heights[2], heights[3]);
    let mut turn = 0.0;
    for _ in 0..ROUNDS {
        let p = points(machine, Stance { rear_roll: turn, ..stance });
        let under = (p.rear[0] + p.rear[1]) * 0.5;
        let plane = Plane::through([p.front[0], p.front[1], under], [heights[0], heights[1], middle])?;
        // Across the axle: n·(rl − rr) = h_rl − h_rr, with rl − rr = track · (0, cos, −sin).
        let (n, track) = (plane.normal, (p.rear[0] - p.rear[1]).length());
        let rise = (heights[2] - heights[3]) / (track * libm::hypot(n.y, n.z));
        let next = libm::atan2(n.y, n.z) - libm::asin(rise);
        if !next.is_finite() {
            return None;
        }
        if (next - turn).abs() < 1e-14 {
            return Some((plane, next));
        }
        turn = next;
    }
    None
}

/// On four contacts that the frame does not let go of.
fn four(machine: &Machine, stance: Stance, masses: &Masses, gravity: DVec3, heights: [f64; 4]) -> Option<Settled> {
    let p = points(machine, stance);
    let at = contacts(&p);
    let mut best: Option<Settled> = None;
    for out in 0..4 {
        let three = [0, 1, 2].map(|k| if k < out { k } else { k + 1 });
        let plane = Plane::through(three.map(|i| at[i]), three.map(|i| heights[i]))?;
        let gap = plane.over(at[out]) - heights[out];
        if gap < -TOUCHES {
            continue;
        }
        let gravity = plane.seen(gravity);
        let (roll, pitch) = plane.attitude();
        let settled =
            |in_the_air, reactions| Settled { stance, gravity, roll, pitch, in_the_air, at_stop: false, reactions };
        if gap <= TOUCHES {
            let locked = Stance { support: crate::Support { rear: RearAxleState::Locked, ..stance.support }, ..stance };
            let on_all = reactions(machine, locked, masses, gravity);
            return on_all.force.iter().all(|f| f.is_finite()).then(|| settled(None, on_all));
        }
        let on = on_three(&at, out, masses, gravity)?;
        // Of two ways to stand, that in which the weight lies inside: it rocks over to it.
        let least = |r: &Reactions| three_least(r, out);
        let better = best.as_ref().is_none_or(|b| {
            let before = b.in_the_air.map_or(f64::INFINITY, |o| three_least(&b.reactions, o));
            least(&on) > before
        });
        if better {
            best = Some(settled(Some(out), on));
        }
    }
    best
}

/// Least force on the three that carry, N.
fn three_least(r: &Reactions, out: usize) -> f64 {
    (0..4).filter(|i| *i != out).map(|i| r.force[i]).fold(f64::INFINITY, f64::min)
}

fn contacts(p: &Points) -> [DVec3; 4] {
    [p.front[0], p.front[1], p.rear[0], p.rear[1]]
}

impl Settled {
    /// The working: weight, where it meets the ground's plane, and the forces, which balance about it. Contacts
    /// and centre are seen along gravity.
    pub fn steps(&self, machine: &Machine, masses: &Masses, trace: &mut impl Trace) {
        let seen = |p: DVec3| crate::reactions::along_gravity(p, self.gravity);
        let (contacts, centre) = (contacts(&points(machine, self.stance)).map(seen), seen(masses.centre()));
        let length = |v: f64| Quantity::new(v, Dimension::Length);
        let force = |v: f64| Quantity::new(v, Dimension::Force);
        let weight = masses.total() * G;
        trace.step(|| Step {
            title: text::STEP_WEIGHT.message(),
            formula: "W = g · Σm_i".into(),
            values: vec![
                ("g".into(), Quantity::number(G)),
                ("Σm".into(), Quantity::new(masses.total(), Dimension::Mass)),
            ],
            result: ("W".into(), force(weight)),
            source: Source::Mechanics,
        });
        for (axis, symbol, value) in [(text::AXIS_X, "x_W", centre.x), (text::AXIS_Y, "y_W", centre.y)] {
            trace.step(|| Step {
                title: text::STEP_SEEN_CENTRE.with("axis", axis),
                formula: "r_W = r_G − ĝ · z_G/ĝ_z".into(),
                values: vec![
                    ("ĝ_x".into(), Quantity::number(self.gravity.x)),
                    ("ĝ_y".into(), Quantity::number(self.gravity.y)),
                    ("ĝ_z".into(), Quantity::number(self.gravity.z)),
                    ("z_G".into(), length(masses.centre().z)),
                ],
                result: (symbol.into(), length(value)),
                source: Source::Mechanics,
            });
        }
        for (i, name) in CONTACTS.into_iter().enumerate() {
            trace.step(|| Step {
                title: text::STEP_CONTACT_FORCE.with("contact", name),
                formula: "ΣF_i = W,  ΣF_i · x_i = W · x_W,  ΣF_i · y_i = W · y_W".into(),
                values: vec![("x_i".into(), length(contacts[i].x)), ("y_i".into(), length(contacts[i].y))],
                result: ("F_i".into(), force(self.reactions.force[i])),
                source: Source::Mechanics,
            });
        }
    }
}

/// A direction given against the ground's plane as a body sees it that is rolled left side down by `roll`, then
/// pitched nose down by `pitch` (rad).
pub fn seen_turned(v: DVec3, roll: f64, pitch: f64) -> DVec3 {
    let (s, c) = libm::sincos(pitch);
    let level = DVec3::new(v.x * c - v.z * s, v.y, v.z * c + v.x * s);
    let (s, c) = libm::sincos(roll);
    DVec3::new(level.x, level.y * c - level.z * s, level.z * c + level.y * s)
}
