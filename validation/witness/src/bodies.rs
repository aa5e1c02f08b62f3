//! The two bodies, the four contacts and the pin.

use geometry::{DMat3, DVec3};
use machine::{Attachment, BodyKind, BoomPosition, Machine, SupportState, kinematics};
use quantity::Si;
use stability::{LoadOnBoom, RearAxleState, Stance};

/// What the statics is asked.
#[derive(Debug, Clone, Copy)]
pub struct Question<'a> {
    /// The machine.
    pub machine: &'a Machine,
    /// What it carries the load with.
    pub attachment: &'a Attachment,
    /// Where the boom is.
    pub boom: BoomPosition,
    /// The load.
    pub load: Option<LoadOnBoom>,
    /// What it stands on.
    pub stance: Stance,
}

/// Mass (kg), centre (m) and inertia about the centre (kg·m²) of a body.
#[derive(Debug, Clone, Copy)]
pub struct Lump {
    /// kg.
    pub mass: f64,
    /// m.
    pub centre: DVec3,
    /// kg·m², axes of the machine.
    pub inertia: DMat3,
}

/// A machine as rigid bodies.
#[derive(Debug, Clone, Copy)]
pub struct Bodies {
    /// Frame, front axle, boom, load; and the rear axle where it is not free.
    pub frame: Lump,
    /// The rear axle where it is free.
    pub axle: Option<Lump>,
    /// Front left, front right, rear left, rear right, m.
    pub contacts: [DVec3; 4],
    /// Where the rear axle's pin is, m.
    pub pin: DVec3,
    /// Unit vector square to the ground under every contact.
    pub normal: DVec3,
}

/// Radius of gyration of a single part about its own centre, m: a box of about 1.2 m, and an axle with
/// its wheels. It changes how fast a machine falls, not when.
const OF_PART: f64 = 0.35;
const OF_AXLE: f64 = 0.8;

fn lump(parts: &[(f64, DVec3)], own: f64) -> Lump {
    let mass: f64 = parts.iter().map(|(m, _)| m).sum();
    let centre = parts.iter().map(|(m, r)| *r * *m).sum::<DVec3>() / mass;
    let mut inertia = DMat3::from_diagonal([mass * own * own; 3].into());
    for (m, r) in parts {
        inertia += of_point(*m, *r - centre);
    }
    Lump { mass, centre, inertia }
}

/// Inertia of a point of mass, kg·m².
fn of_point(mass: f64, at: DVec3) -> DMat3 {
    (DMat3::IDENTITY * at.length_squared() - DMat3::from_cols(at * at.x, at * at.y, at * at.z)) * mass
}

impl Lump {
    /// Inertia about a point, kg·m².
    pub fn inertia_about(&self, point: DVec3) -> DMat3 {
        self.inertia + of_point(self.mass, self.centre - point)
    }
}

/// A point of an axle rolled about a pin in the middle plane, left side down.
fn rolled(p: DVec3, pin: f64, roll: f64) -> DVec3 {
    let about = DVec3::new(p.x, 0.0, pin);
    about + DMat3::from_rotation_x(-roll) * (p - about)
}

impl Bodies {
    /// The bodies of a question. The ground follows a front axle that is levelled.
    pub fn of(q: &Question) -> Self {
        let machine = q.machine;
        let state = q.stance.support.state;
        let front_pin = machine.levelling.map_or(0.0, |l| l.pin_height);
        let rear_pin = machine.rear.pin_height;
        let (front_roll, rear_roll) = (q.stance.front_roll, q.stance.rear_roll);
        let free = q.stance.support.rear == RearAxleState::Free && state != SupportState::Outriggers;

        let (mut frame, mut axle) = (Vec::new(), Vec::new());
        for body in &machine.bodies {
            match body.kind {
                BodyKind::Frame | BodyKind::Upper => frame.push((body.mass.si(), body.centre)),
                BodyKind::FrontAxle => frame.push((body.mass.si(), rolled(body.centre, front_pin, front_roll))),
                BodyKind::RearAxle => axle.push((body.mass.si(), rolled(body.centre, rear_pin, rear_roll))),
            }
        }
        frame.extend(kinematics::boom_masses(&machine.boom, q.attachment, q.boom).filter(|(m, _)| *m > 0.0));
        frame.extend(q.load.map(|l| (l.mass, l.at)));
        if !free {
            frame.append(&mut axle);
        }
        let [f, r] = machine.contacts(state);
        let mut contacts = [
            DVec3::new(f.x, f.y, 0.0),
            DVec3::new(f.x, -f.y, 0.0),
            DVec3::new(r.x, r.y, 0.0),
            DVec3::new(r.x, -r.y, 0.0),
        ];
        if state == SupportState::Tyres {
            contacts[0] = rolled(contacts[0], front_pin, front_roll);
            contacts[1] = rolled(contacts[1], front_pin, front_roll);
        }
        if state != SupportState::Outriggers {
            contacts[2] = rolled(contacts[2], rear_pin, rear_roll);
            contacts[3] = rolled(contacts[3], rear_pin, rear_roll);
        }
        Self {
            frame: lump(&frame, OF_PART),
            axle: free.then(|| lump(&axle, OF_AXLE)),
            contacts,
            pin: DVec3::new(machine.rear.axle.x, 0.0, rear_pin),
            normal: DVec3::new(0.0, front_roll.sin(), front_roll.cos()),
        }
    }

    /// Mass of everything, kg.
    pub fn mass(&self) -> f64 {
        self.frame.mass + self.axle.map_or(0.0, |a| a.mass)
    }
}
