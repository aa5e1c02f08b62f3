//! Contacts that give: wheel loads and lean, second order.
//!
//! A rigid sprung body on springs normal to the ground that push and never pull, with the rear axle
//! free about its pin or fixed at its angle. Sought are heave, roll, pitch and axle roll at which force
//! along the ground's normal and moments about axes in the ground balance, with full rotations, so that
//! the weight moves as the body leans (mechanics). Friction acts in the ground and holds every
//! contact, along the machine by its share of the weight; the tyres' sideways give and sliding are not in
//! it. Held by its rear wheels alone a machine with a free axle goes over sooner, aslant down to the rear
//! by up to 1° or so (own comparison, `validation/witness`); [`crate::tilt_reserve_on_springs`] counts
//! that. It stands if the balance is stable: the
//! symmetric part of its derivative is positive definite.

use crate::support::points;
use crate::{Masses, RearAxleState, Stance};
use geometry::DVec3;
use glam::{DMat4, DVec4};
use machine::{Machine, SupportState};
use quantity::STANDARD_GRAVITY as G;

/// Stiffness of one front and one rear contact, N/m.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Springs {
    /// Front left and front right, each.
    pub front: f64,
    /// Rear left and rear right, each.
    pub rear: f64,
}

/// Stiffness of a stabilizer pad with its leg and the frame, N/m: some millimetres under the pad's share
/// of the machine (our own figure). What the ground gives is not in it.
const PAD_STIFFNESS: f64 = 5e6;

impl Springs {
    /// Those of a machine's tyres by size and pressure ([`machine::tyre_stiffness`]), and of its pads.
    pub fn of(machine: &Machine, support: SupportState) -> Self {
        let one = |contact: usize, tyre: &machine::Tyre| {
            if machine.pad_area(support, contact).is_some() { PAD_STIFFNESS } else { machine::tyre_stiffness(tyre) }
        };
        Self { front: one(0, &machine.front.tyre), rear: one(2, &machine.rear.axle.tyre) }
    }
}

/// How a machine on springs stands.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum OnSprings {
    /// It stands.
    Stands {
        /// Force on each contact along the ground's normal, N: front left, front right, rear left,
        /// rear right.
        force: [f64; 4],
        /// Roll of the body against the ground, left side down, rad.
        roll: f64,
        /// Pitch of the body against the ground, nose down, rad.
        pitch: f64,
        /// Turn of the rear axle against the body, left end down, beyond that of the stance, rad: 0 where it
        /// is locked. Its stop is not known to the search.
        axle: f64,
    },
    /// No position holds it: it goes over. A finding of physics.
    Tips,
    /// The search did not end: nothing can be told.
    CannotTell,
}

/// Lean beyond which a body no longer counts as standing, rad (30°): contacts drawn flat mean
/// nothing there.
const GONE: f64 = 0.52;
/// Steps of the search at most.
const STEPS: usize = 400;
/// Damping of the motion for each unit of what is out of balance.
const DAMPING: f64 = 10.0;
/// Longest step, rad or m: contacts come and go on the way.
const LONGEST: f64 = 0.03;
/// From here on steps are halved until less is out of balance: hard contacts that come and go can
/// otherwise throw it to and fro for ever.
const PATIENT: usize = 60;
/// Halvings of one such step at most.
const HALVINGS: usize = 12;

/// Body and contacts for one question.
struct Body {
    front: [DVec3; 2],
    rear: [DVec3; 2],
    pin: DVec3,
    free: bool,
    sprung: f64,
    centre: DVec3,
    axle: f64,
    axle_centre: DVec3,
    gravity: DVec3,
    stiffness: [f64; 4],
    heights: [f64; 4],
}

/// Heave (m), roll left down, pitch nose down, and roll of a free rear axle left down, all against the
/// ground (rad).
type Q = [f64; 4];

/// Turned about x, left side down.
fn left_down(v: DVec3, roll: f64) -> DVec3 {
    let (s, c) = libm::sincos(roll);
    DVec3::new(v.x, v.y * c + v.z * s, v.z * c - v.y * s)
}

/// Turned about y, nose down.
fn nose_down(v: DVec3, pitch: f64) -> DVec3 {
    let (s, c) = libm::sincos(pitch);
    DVec3::new(v.x * c + v.z * s, v.y, v.z * c - v.x * s)
}

/// Where everything is for a `Q`, against the ground.
struct Placed {
    /// Front contacts, rear contacts.
    contacts: [DVec3; 4],
    centre: DVec3,
    axle_centre: DVec3,
    pin: DVec3,
}

impl Body {
    /// A free axle turns about the ground under it and carries the pin; the body hangs on the pin and
    /// is held sideways by the ground under the front axle, so that it yaws a little as it rolls.
    fn placed(&self, q: &Q) -> Placed {
        let [heave, roll, pitch, axle] = *q;
        let up = DVec3::Z * heave;
        if !self.free {
            let to = |p: DVec3| nose_down(left_down(p, roll), pitch) + up;
            let [a, b] = self.front.map(to);
            let [c, d] = self.rear.map(to);
            return Placed {
                contacts: [a, b, c, d],
                centre: to(self.centre),
                axle_centre: to(self.axle_centre),
                pin: to(self.pin),
            };
        }
        let under = DVec3::new(self.pin.x, 0.0, 0.0);
        let with_axle = |p: DVec3| nose_down(under + left_down(p - under, axle), pitch) + up;
        let pin = with_axle(self.pin);
        let base = f64::midpoint(self.front[0].x, self.front[1].x) - self.pin.x;
        let aside = pin.y - self.pin.z * libm::sin(roll);
        let (s, c) = libm::sincos(-aside / base);
        let with_body = |p: DVec3| {
            let v = nose_down(left_down(p - self.pin, roll), pitch);
            pin + DVec3::new(v.x * c - v.y * s, v.x * s + v.y * c, v.z)
        };
        let [a, b] = self.front.map(with_body);
        let [c, d] = self.rear.map(with_axle);
        Placed { contacts: [a, b, c, d], centre: with_body(self.centre), axle_centre: with_axle(self.axle_centre), pin }
    }

    /// What is out of balance over the weight, signs as of a gradient, and the forces along the ground's
    /// normal (N). Contacts are held where they meet the ground: along the machine each with the same
    /// share of its force, sideways front and rear as the balance of yaw asks.
    fn balance(&self, q: &Q) -> (Q, [f64; 4]) {
        let placed = self.placed(q);
        let about = if self.free { placed.pin } else { DVec3::ZERO };
        let mut d = [0.0; 4];
        let mut add = |force: DVec3, at: DVec3, on_axle: bool| {
            d[0] -= force.z;
            d[2] -= force.dot(DVec3::Y.cross(at));
            // Body and axle each about the pin between them.
            d[if on_axle { 3 } else { 1 }] += force.dot(DVec3::X.cross(at - about));
        };
        add(self.gravity * (self.sprung * G), placed.centre, false);
        add(self.gravity * (self.axle * G), placed.axle_centre, self.free);
        let friction = self.gravity.x / self.gravity.z;
        let base = f64::midpoint(placed.contacts[0].x, placed.contacts[1].x) - placed.pin.x;
        // Moment of gravity and of the pull along the machine about an upright axis through the pin.
        let mut yaw = 0.0;
        for (mass, at) in [(self.sprung, placed.centre), (self.axle, placed.axle_centre)] {
            let pull = self.gravity * (mass * G);
            yaw += (at.x - placed.pin.x) * pull.y - at.y * pull.x;
        }
        let mut forces = [0.0; 4];
        for (i, at) in placed.contacts.into_iter().enumerate() {
            let pressed = self.heights[i] - at.z;
            if pressed > 0.0 {
                forces[i] = self.stiffness[i] * pressed;
                add(DVec3::new(friction * forces[i], 0.0, forces[i]), at.with_z(self.heights[i]), self.free && i >= 2);
                yaw -= at.y * friction * forces[i];
            }
        }
        let weight = (self.sprung + self.axle) * G;
        let front = -yaw / base;
        let rear = -weight * self.gravity.y - front;
        // The wheel that is pressed holds: at the ground under it.
        let height = |i: usize| {
            let (a, b) = (forces[i], forces[i + 1]);
            if a + b > 0.0 { (self.heights[i] * a + self.heights[i + 1] * b) / (a + b) } else { self.heights[i] }
        };
        let heights = [height(0), height(2)];
        add(DVec3::Y * front, DVec3::new(placed.pin.x + base, 0.0, heights[0]), false);
        add(DVec3::Y * rear, DVec3::new(placed.pin.x, 0.0, heights[1]), self.free);
        (d.map(|x| x / weight), forces)
    }

    /// Dimensions searched: the axle's roll only where it is free.
    fn unknowns(&self) -> usize {
        if self.free { 4 } else { 3 }
    }

    /// Derivative of what is out of balance, by central differences; row `i` by unknown `i`.
    fn derivative(&self, q: &Q) -> [[f64; 4]; 4] {
        const STEP: f64 = 1e-6;
        let n = self.unknowns();
        let mut h = [[0.0; 4]; 4];
        for i in 0..n {
            let (mut up, mut down) = (*q, *q);
            up[i] += STEP;
            down[i] -= STEP;
            let (a, b) = (self.balance(&up).0, self.balance(&down).0);
            for k in 0..n {
                h[i][k] = (a[k] - b[k]) / (2.0 * STEP);
            }
        }
        h
    }
}

/// Wheel or pad forces of a machine on springs.
///
/// `gravity` is its unit vector against the ground: (ahead, left, up along the ground's normal), as
/// for rigid contacts. `heights` of the ground under each contact against a common plane, m.
pub fn on_springs(
    machine: &Machine,
    stance: impl Into<Stance>,
    masses: &Masses,
    gravity: DVec3,
    springs: Springs,
    heights: [f64; 4],
) -> OnSprings {
    let stance = stance.into();
    // The points are those with the axles rolled; a free axle's roll is sought from there.
    let p = points(machine, stance);
    let free = stance.support.rear == RearAxleState::Free && stance.support.state != SupportState::Outriggers;
    let body = Body {
        front: p.front,
        rear: p.rear,
        pin: p.pin,
        free,
        sprung: masses.sprung,
        centre: masses.sprung_moment / masses.sprung,
        axle: masses.axle,
        axle_centre: if masses.axle > 0.0 { masses.axle_moment / masses.axle } else { p.pin },
        gravity,
        stiffness: [springs.front, springs.front, springs.rear, springs.rear],
        heights,
    };
    let valid = [springs.front, springs.rear].iter().all(|k| *k > 0.0 && k.is_finite());
    if !valid || !gravity.is_finite() || !body.centre.is_finite() || heights.iter().any(|h| !h.is_finite()) {
        return OnSprings::CannotTell;
    }
    search(&body)
}

/// `(J + shift) x = −d`.
fn damped(j: &[[f64; 4]; 4], d: &Q, shift: f64, n: usize) -> Option<Q> {
    let mut m = DMat4::IDENTITY;
    for (i, row) in j.iter().enumerate().take(n) {
        for (k, value) in row.iter().enumerate().take(n) {
            m.col_mut(i)[k] = value + if i == k { shift } else { 0.0 };
        }
    }
    let x = m.inverse() * -DVec4::from_array(*d);
    x.is_finite().then_some(x.to_array())
}

/// True if the symmetric part of `J + shift` is positive definite (Cholesky goes through).
fn holds(j: &[[f64; 4]; 4], shift: f64, n: usize) -> bool {
    let mut l = [[0.0; 4]; 4];
    for i in 0..n {
        for k in 0..=i {
            let sum: f64 = (0..k).map(|m| l[i][m] * l[k][m]).sum();
            let h = f64::midpoint(j[i][k], j[k][i]);
            if i == k {
                let rest = h + shift - sum;
                if rest.is_nan() || rest <= 0.0 {
                    return false;
                }
                l[i][i] = rest.sqrt();
            } else {
                l[i][k] = (h - sum) / l[k][k];
            }
        }
    }
    true
}

/// Follows the body from level and straight as a damped motion, in implicit steps that grow as it
/// comes to rest, until it rests or is gone.
fn search(body: &Body) -> OnSprings {
    let n = body.unknowns();
    let weight = (body.sprung + body.axle) * G;
    let mean = body.heights.iter().sum::<f64>() / 4.0;
    let mut q: Q = [mean - weight / body.stiffness.iter().sum::<f64>(), 0.0, 0.0, 0.0];
    for taken in 0..STEPS {
        if q[1].abs() > GONE || q[2].abs() > GONE || q[3].abs() > 2.0 * GONE {
            return OnSprings::Tips;
        }
        let (d, force) = body.balance(&q);
        let j = body.derivative(&q);
        let out = d.iter().take(n).fold(0.0_f64, |m, x| m.max(x.abs()));
        let mut shift = DAMPING * out;
        while !holds(&j, shift, n) {
            shift = (shift * 2.0).max(0.05);
            if shift > 1e9 {
                return OnSprings::CannotTell;
            }
        }
        let Some(step) = damped(&j, &d, shift, n) else { return OnSprings::CannotTell };
        let most = step.iter().take(n).fold(0.0_f64, |m, s| m.max(s.abs()));
        if most < 1e-10 && out < 1e-6 && holds(&j, 0.0, n) {
            let axle = if body.free { q[3] - q[1] } else { 0.0 };
            return OnSprings::Stands { force, roll: q[1], pitch: q[2], axle };
        }
        let mut length = (LONGEST / most).min(1.0);
        let moved = |length: f64| {
            let mut to = q;
            for i in 0..n {
                to[i] += step[i] * length;
            }
            to
        };
        let size = |d: &Q| d.iter().map(|x| x * x).sum::<f64>();
        if taken >= PATIENT {
            for _ in 0..HALVINGS {
                if size(&body.balance(&moved(length)).0) < size(&d) {
                    break;
                }
                length *= 0.5;
            }
        }
        q = moved(length);
    }
    OnSprings::CannotTell
}
