//! Forces on wheels or pads, rigid contacts.
//!
//! All contact forces are taken parallel to gravity (equal use of friction at every contact).
//! Rear axle free: axle loads by moments of the whole, the rear wheels by moments of the axle about its pin,
//! the front ones by what is left: determinate. Locked: four contacts with
//! equal stiffness, contacts in tension dropped until consistent.

use crate::support::points;
use crate::{Masses, RearAxleState, Stance, Support};
use geometry::{DVec2, DVec3};
use machine::Machine;
use quantity::STANDARD_GRAVITY as G;

/// Forces along gravity, N: front left, front right, rear left, rear right.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Reactions {
    /// Forces in the order front left, front right, rear left, rear right.
    pub force: [f64; 4],
    /// False if equilibrium asks a contact to pull: the machine tips.
    pub stands: bool,
}

/// A point seen along gravity on the ground plane z = 0.
pub(crate) fn along_gravity(p: DVec3, gravity: DVec3) -> DVec2 {
    (p - gravity * (p.z / gravity.z)).truncate()
}

/// Reactions of a machine; `gravity` is its unit vector in the machine frame (z < 0).
pub fn reactions(machine: &Machine, stance: impl Into<Stance>, masses: &Masses, gravity: DVec3) -> Reactions {
    let stance = stance.into();
    let p = points(machine, stance);
    match stance.support.rear {
        RearAxleState::Free => free(&p, masses, gravity),
        RearAxleState::Locked => locked(&p, masses, gravity),
    }
}

/// Greatest extra force on each contact for a unit overturning moment of the wind about the ground,
/// from any side, 1/m: over the altitude of the support triangle from that corner (rear axle free:
/// two front supports and the pin; the pin's share counted whole on either rear wheel, safe side).
/// Locked: over the altitude of the right-angled triangle of track and base, as one contact may be off the ground.
pub fn wind_on_contacts(machine: &Machine, support: Support) -> [f64; 4] {
    let p = points(machine, support.into());
    let flat = |q: DVec3| q.truncate();
    let altitude = |corner: DVec2, a: DVec2, b: DVec2| {
        let along = (b - a).normalize();
        (corner - a).perp_dot(along).abs()
    };
    let (left, right, pin) = (flat(p.front[0]), flat(p.front[1]), flat(p.pin));
    match support.rear {
        RearAxleState::Free => {
            let front = 1.0 / altitude(left, right, pin);
            let rear = 1.0 / altitude(pin, left, right);
            [front, front, rear, rear]
        }
        RearAxleState::Locked => {
            // With one contact off the ground: over the altitude of the right-angled triangle of the others.
            let (track, base) = (2.0 * left.y.min(p.rear[0].y), left.x - pin.x);
            [libm::hypot(track, base) / (track * base); 4]
        }
    }
}

/// Reactions of one stance and direction of gravity as they go with the masses: linear, worked out once for many.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct LinearReactions {
    points: crate::support::Points,
    rear: RearAxleState,
    gravity: DVec3,
    /// Force on each contact for a sprung kilogram at the origin, N/kg.
    mass: [f64; 4],
    /// For a kilogram-metre of its first moment, N/(kg·m).
    moment: [DVec3; 4],
}

impl LinearReactions {
    /// For every load of this machine.
    pub fn of(machine: &Machine, stance: impl Into<Stance>, gravity: DVec3) -> Self {
        let stance = stance.into();
        let none = [f64::NAN; 4];
        let points = points(machine, stance);
        let mut all = Self { points, rear: stance.support.rear, gravity, mass: none, moment: [DVec3::NAN; 4] };
        let unit = |sprung_moment| all.reckoned(&Masses { sprung: 1.0, sprung_moment, ..Masses::default() });
        let mass = unit(DVec3::ZERO);
        let [x, y, z] = DVec3::AXES.map(unit);
        all.moment = core::array::from_fn(|i| DVec3::new(x[i], y[i], z[i]) - DVec3::splat(mass[i]));
        all.mass = mass;
        all
    }

    fn reckoned(&self, masses: &Masses) -> [f64; 4] {
        match self.rear {
            RearAxleState::Free => free(&self.points, masses, self.gravity).force,
            RearAxleState::Locked => all_four(&self.points, masses, self.gravity),
        }
    }

    /// Forces of the rear axle's own weight, N.
    pub fn of_axle(&self, masses: &Masses) -> [f64; 4] {
        if masses.axle == 0.0 {
            return [0.0; 4];
        }
        self.reckoned(&Masses { sprung: 0.0, sprung_moment: DVec3::ZERO, ..*masses })
    }

    /// Those of [`reactions`] but for round-off, N, with those of the axle's own weight at hand. Where one is below zero, those
    /// of a locked axle are others: there no contact pulls.
    pub fn forces(&self, masses: &Masses, of_axle: &[f64; 4]) -> [f64; 4] {
        core::array::from_fn(|i| self.mass[i] * masses.sprung + self.moment[i].dot(masses.sprung_moment) + of_axle[i])
    }
}

/// On all four contacts, whatever their sign.
fn all_four(p: &crate::support::Points, masses: &Masses, gravity: DVec3) -> [f64; 4] {
    let contacts = [p.front[0], p.front[1], p.rear[0], p.rear[1]].map(|c| along_gravity(c, gravity));
    let centre = along_gravity(masses.centre(), gravity);
    spread(&contacts, [true; 4], masses.total() * G, centre).unwrap_or([f64::NAN; 4])
}

/// Both axles by moments of the whole machine: the pin turns about its own line only and hands on the
/// pull along the machine of the wheels below it, so that neither it nor the brakes' share move load from
/// axle to axle. The rear axle's sides by moments of the axle about the pin, the front's by those of the whole.
fn free(p: &crate::support::Points, masses: &Masses, gravity: DVec3) -> Reactions {
    let seen = |at: DVec3| along_gravity(at, gravity);
    let w = masses.total() * G;
    let centre = seen(masses.centre());
    let [fl, fr] = p.front.map(seen);
    let [rl, rr] = p.rear.map(seen);
    let axle = masses.axle * G;
    let pin_y = seen(p.pin).y;
    let axle_y = if masses.axle > 0.0 { seen(masses.axle_moment / masses.axle).y } else { 0.0 };
    // Three of the four unknowns as they depend on the rear axle's whole force.
    let sides = |rear: f64| {
        let pin = rear - axle;
        let left = (pin * pin_y + axle * axle_y - rear * rr.y) / (rl.y - rr.y);
        let right = rear - left;
        let front = w - rear;
        let front_left = (w * centre.y - left * rl.y - right * rr.y - front * fr.y) / (fl.y - fr.y);
        [front_left, front - front_left, left, right]
    };
    let out = |f: [f64; 4]| f[0] * fl.x + f[1] * fr.x + f[2] * rl.x + f[3] * rr.x - w * centre.x;
    // Linear in it: with both tracks square to the machine the two ends tell it.
    let (none, whole) = (out(sides(0.0)), out(sides(w)));
    let force = sides(w * none / (none - whole));
    Reactions { force, stands: force.iter().all(|f| *f >= 0.0) }
}

fn locked(p: &crate::support::Points, masses: &Masses, gravity: DVec3) -> Reactions {
    let contacts = [p.front[0], p.front[1], p.rear[0], p.rear[1]].map(|c| along_gravity(c, gravity));
    let w = masses.total() * G;
    let centre = along_gravity(masses.centre(), gravity);
    let mut active = [true; 4];
    // Each round drops one contact in tension; with two or fewer left there is no support.
    for _ in 0..4 {
        let Some(force) = spread(&contacts, active, w, centre) else { break };
        match (0..4).filter(|i| active[*i]).min_by(|a, b| force[*a].total_cmp(&force[*b])) {
            Some(i) if force[i] < -1e-9 * w => active[i] = false,
            _ => return Reactions { force, stands: true },
        }
    }
    let mut force = spread(&contacts, [true; 4], w, centre).unwrap_or([f64::NAN; 4]);
    for f in &mut force {
        *f = f.max(0.0);
    }
    Reactions { force, stands: false }
}

/// Reactions on three of four contacts, `out` left out: determinate. `None` where they stand in a line.
pub(crate) fn on_three(contacts: &[DVec3; 4], out: usize, masses: &Masses, gravity: DVec3) -> Option<Reactions> {
    let seen = contacts.map(|c| along_gravity(c, gravity));
    let w = masses.total() * G;
    let active = [0, 1, 2, 3].map(|i| i != out);
    let force = spread(&seen, active, w, along_gravity(masses.centre(), gravity))?;
    Some(Reactions { force, stands: force.iter().all(|f| *f >= -1e-9 * w) })
}

/// Forces `N_i = α + β x_i + γ y_i` on the active contacts (equal springs under a rigid body).
fn spread(contacts: &[DVec2; 4], active: [bool; 4], w: f64, centre: DVec2) -> Option<[f64; 4]> {
    if active.iter().filter(|a| **a).count() < 3 {
        return None;
    }
    let used = || contacts.iter().zip(active).filter(|(_, a)| *a).map(|(c, _)| *c);
    let mut m = glam::DMat3::ZERO;
    for c in used() {
        let v = DVec3::new(1.0, c.x, c.y);
        m += glam::DMat3::from_cols(v * v.x, v * v.y, v * v.z);
    }
    if m.determinant().abs() < 1e-9 {
        return None;
    }
    let k = m.inverse() * (DVec3::new(1.0, centre.x, centre.y) * w);
    let mut force = [0.0; 4];
    for i in 0..4 {
        if active[i] {
            force[i] = k.x + k.y * contacts[i].x + k.z * contacts[i].y;
        }
    }
    Some(force)
}
