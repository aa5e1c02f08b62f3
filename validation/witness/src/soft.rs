//! Contacts as springs: at every step each spring's force is worked out from where its contact is, and
//! put on its body at the ground. Square to the ground it pushes and never pulls, with a damper that
//! stops the motion and leaves rest as it is. In the ground stiff holds keep each axle where it is.

use crate::engine::{from_engine, insert_machine, leans, to_engine};
use crate::{Bodies, Question, gravity, search};
use geometry::{DMat3, DVec3};
use quantity::STANDARD_GRAVITY as G;
use rapier3d_f64::prelude::{PhysicsWorld, RigidBody, RigidBodyHandle};

/// What holds the machine along its length, as shares of the pull.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Hold {
    /// Every contact by its share of the weight, as `stability::on_springs` has it.
    ByWeight,
    /// The front contacts, by their weight.
    Front,
    /// The rear contacts, by their weight.
    Rear,
}

/// Stiffness of the contacts and heights of the ground under them.
#[derive(Debug, Clone, Copy)]
pub struct Give {
    /// Each front contact, N/m.
    pub front: f64,
    /// Each rear contact, N/m.
    pub rear: f64,
    /// Height of the ground under front left, front right, rear left, rear right, m.
    pub heights: [f64; 4],
}

/// Where a machine on springs came to rest.
#[derive(Debug, Clone, Copy)]
pub struct Rest {
    /// Forces square to the ground, N.
    pub force: [f64; 4],
    /// Lean of the frame or the axle from where it began, rad.
    pub leans: f64,
}

/// Time of a step, s.
const STEP: f64 = 1.0 / 1000.0;
/// Stiffness in the ground, N/m for each axle: at 20° a machine of 15 t gives by 1 mm.
const HOLD: f64 = 4e7;
/// Damping of both, as a share of the critical one.
const DAMPED: f64 = 0.7;
/// Time in which the tilt comes nearer to what is asked by a factor of e, s: softly, since a machine
/// that swings over its rest near the onset would go over sooner.
const NEARS: f64 = 0.8;
/// Time for that, s: to 0.03 % of the tilt.
const TILTS: f64 = 5.0;
/// Time allowed to come to rest or to go over after that, s.
const ALLOWED: f64 = 60.0;
/// It goes over if it is faster from one look to the next, three times running; looks are so many steps
/// apart.
const LOOKS: u32 = 700;
const FASTER: u32 = 3;
/// Damping of the frame's turning about the ground, 1/s: without it a lean swings long. At rest it is
/// nothing.
const CALM: f64 = 4.0;
/// A lean from which no machine comes back, rad.
const FALLEN: f64 = 0.3;
/// Slower than this for [`STILL`] steps it is at rest: m/s, rad/s.
const REST: f64 = 2e-5;
const STILL: u32 = 50;

struct Rig<'a> {
    world: PhysicsWorld,
    bodies: &'a Bodies,
    frame: RigidBodyHandle,
    axle: RigidBodyHandle,
    give: Give,
    hold: Hold,
    force: [f64; 4],
    /// N·m·s, axes of the machine: it hardly turns.
    calm: DMat3,
}

/// Centre of a body where it is now. The engine keeps its own, of the beginning of the step.
fn centre(body: &RigidBody) -> DVec3 {
    from_engine(*body.position() * body.local_center_of_mass())
}

impl<'a> Rig<'a> {
    fn new(bodies: &'a Bodies, give: Give, hold: Hold) -> Self {
        let mut world = PhysicsWorld::new();
        let p = &mut world.integration_parameters;
        p.dt = STEP;
        p.num_solver_iterations = 1;
        let (frame, axle) = insert_machine(&mut world, bodies);
        let middle = bodies.contacts.iter().sum::<DVec3>() / 4.0;
        let calm = bodies.frame.inertia_about(middle) * CALM;
        Self { world, bodies, frame, axle, give, hold, force: [0.0; 4], calm }
    }

    /// One step under a gravity, with the springs' forces as they are now.
    fn step(&mut self, gravity: DVec3) {
        self.world.gravity = to_engine(gravity * G);
        let quarter = self.bodies.mass() / 4.0;
        let body = |i: usize| if i < 2 { self.frame } else { self.axle };
        let mut at = [DVec3::ZERO; 4];
        let mut speed = at;
        for i in 0..4 {
            let b = &self.world.bodies[body(i)];
            at[i] = from_engine(*b.position() * to_engine(self.bodies.contacts[i]));
            let turning = from_engine(b.angvel()).cross(at[i] - centre(b));
            speed[i] = from_engine(b.linvel()) + turning;
        }
        for i in 0..4 {
            let k = if i < 2 { self.give.front } else { self.give.rear };
            let pressed = self.give.heights[i] - at[i].z;
            let push = k * pressed - 2.0 * DAMPED * (k * quarter).sqrt() * speed[i].z;
            self.force[i] = if pressed > 0.0 { push.max(0.0) } else { 0.0 };
        }
        // In the ground: each axle sideways, the whole or one axle along.
        let damp = 2.0 * DAMPED * (HOLD * quarter).sqrt() * 0.5;
        let share = |of: [usize; 2]| {
            let sum = self.force[of[0]] + self.force[of[1]];
            if sum > 0.0 { of.map(|i| self.force[i] / sum) } else { [0.5; 2] }
        };
        let mut hold = [DVec3::ZERO; 4];
        for pair in [[0, 1], [2, 3]] {
            let moved =
                (at[pair[0]].y + at[pair[1]].y - self.bodies.contacts[pair[0]].y - self.bodies.contacts[pair[1]].y)
                    / 2.0;
            let fast = f64::midpoint(speed[pair[0]].y, speed[pair[1]].y);
            for (i, s) in pair.into_iter().zip(share(pair)) {
                hold[i].y = -(HOLD * moved + damp * fast) * s;
            }
        }
        let who: &[usize] = match self.hold {
            Hold::ByWeight => &[0, 1, 2, 3],
            Hold::Front => &[0, 1],
            Hold::Rear => &[2, 3],
        };
        let sum: f64 = who.iter().map(|i| self.force[*i]).sum();
        let count = who.len() as f64;
        let moved = who.iter().map(|i| at[*i].x - self.bodies.contacts[*i].x).sum::<f64>() / count;
        let fast = who.iter().map(|i| speed[*i].x).sum::<f64>() / count;
        for i in who {
            let s = if sum > 0.0 { self.force[*i] / sum } else { 1.0 / count };
            hold[*i].x = -(HOLD * moved + damp * fast) * s;
        }
        for handle in [self.frame, self.axle] {
            let b = &mut self.world.bodies[handle];
            b.reset_forces(true);
            b.reset_torques(true);
        }
        for i in 0..4 {
            let (handle, push) = (body(i), hold[i].with_z(self.force[i]));
            let b = &mut self.world.bodies[handle];
            let torque = (at[i].with_z(self.give.heights[i]) - centre(b)).cross(push);
            b.add_force(to_engine(push), true);
            b.add_torque(to_engine(torque), true);
        }
        let b = &mut self.world.bodies[self.frame];
        let brake = self.calm * from_engine(b.angvel());
        b.add_torque(to_engine(-brake), true);
        self.world.step();
    }

    fn leans(&self) -> f64 {
        leans(&self.world, self.frame).max(leans(&self.world, self.axle))
    }

    fn rests(&self) -> bool {
        [self.frame, self.axle].iter().all(|h| {
            let b = &self.world.bodies[*h];
            b.angvel().length() < REST && b.linvel().length() < REST
        })
    }
}

/// Tilts to `tilt` and waits; `None` if it goes over.
fn settle(bodies: &Bodies, give: Give, hold: Hold, tilt: f64, azimuth: f64) -> Option<Rest> {
    let mut rig = Rig::new(bodies, give, hold);
    let (mut still, mut faster, mut speed) = (0, 0, f64::INFINITY);
    for step in 0..((TILTS + ALLOWED) / STEP) as u32 {
        let time = f64::from(step) * STEP;
        let part = if time < TILTS { tilt * (1.0 - (-time / NEARS).exp()) } else { tilt };
        rig.step(gravity(part, azimuth));
        if rig.leans() > FALLEN {
            return None;
        }
        if time < TILTS {
            continue;
        }
        still = if rig.rests() { still + 1 } else { 0 };
        if still > STILL {
            break;
        }
        if step % LOOKS == 0 {
            let now = rig.world.bodies[rig.frame].angvel().length();
            faster = if now > speed { faster + 1 } else { 0 };
            speed = now;
            if faster >= FASTER {
                return None;
            }
        }
    }
    Some(Rest { force: rig.force, leans: rig.leans() })
}

/// Tilt (rad) at which the machine goes over; `None` if it stands at 0.8 rad (46°).
pub fn onset(question: &Question, give: Give, hold: Hold, azimuth: f64) -> Option<f64> {
    let bodies = Bodies::of(question);
    search::onset(|tilt| settle(&bodies, give, hold, tilt, azimuth).is_some())
}

/// Where it comes to rest at a tilt; `None` if it goes over.
pub fn rest(question: &Question, give: Give, hold: Hold, tilt: f64, azimuth: f64) -> Option<Rest> {
    settle(&Bodies::of(question), give, hold, tilt, azimuth)
}
