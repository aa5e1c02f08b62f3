//! Contacts by the engine's own solver: a small ball at every contact point on a plate of its own,
//! with friction that never slides. Where wheels roll, the ball turns on an axle square to the middle
//! plane, so that nothing holds it along the machine.

use crate::engine::{from_engine, insert, insert_machine, leans, to_engine};
use crate::{Bodies, HeldBy, Lump, Question, gravity, search};
use geometry::{DMat3, DVec3};
use quantity::STANDARD_GRAVITY as G;
use rapier3d_f64::math::{Pose, Rotation, Vector};
use rapier3d_f64::prelude::{
    CoefficientCombineRule, ColliderBuilder, ColliderHandle, ContactPair, PhysicsWorld, RevoluteJointBuilder,
    RigidBodyBuilder, RigidBodyHandle, SpringCoefficients,
};

/// Radius of the ball at a contact, m: what a lean of 1° moves its contact by is 0.3 mm.
const BALL: f64 = 0.02;
/// Mass of a ball that rolls, kg; taken from nobody, 0.01 % of a machine.
const WHEEL: f64 = 1.0;
/// Friction that holds at every tilt asked for.
const HOLDS: f64 = 10.0;
/// Friction of braked wheels with a free rear axle: it holds to 42°. With more a wheel that hardly
/// carries would hold all the same, and the wheels would jam against each other.
const BRAKED: f64 = 0.9;
/// Stiffness of what holds a rolling machine along its length, N/m: it only takes up what the pull of
/// gravity, which is known, leaves over.
const HOLD: f64 = 2e7;
/// Time of a step, s.
const STEP: f64 = 1.0 / 200.0;
/// Time in which the tilt grows from nothing, and softly ends: a jolt would tip it sooner.
const TILTS: f64 = 1.0;
/// Time allowed to fall after that, s. A body whose centre is 2 m from the edge falls as `cosh(1.9 t)`: what is
/// 0.01° beyond the onset has turned by more than [`FALLEN`] by then.
const ALLOWED: f64 = 5.0;
/// A turn that no standing machine makes on rigid contacts, rad.
const FALLEN: f64 = 0.02;
/// Slower than this for [`STILL`] steps after [`FIRST`] it is at rest, m/s and rad/s: what is 0.001°
/// beyond the onset is faster by then.
const REST: f64 = 1e-5;
const STILL: u32 = 20;
const FIRST: f64 = 1.2;
/// Time after which forces are read, s, and how long they are averaged.
const SETTLE: f64 = 1.0;
const READ: f64 = 0.5;

/// What holds a machine along its length whose wheels all roll: a force on two wheels at the ground.
#[derive(Debug, Clone, Copy)]
struct Hold {
    body: RigidBodyHandle,
    wheels: [usize; 2],
    /// By the weight on each; else both alike.
    by_weight: bool,
}

struct Rig {
    world: PhysicsWorld,
    bodies: Bodies,
    frame: RigidBodyHandle,
    plates: [ColliderHandle; 4],
    balls: [ColliderHandle; 4],
    hold: Option<Hold>,
}

fn rig(bodies: &Bodies, held: HeldBy) -> Rig {
    let mut world = PhysicsWorld::new();
    let p = &mut world.integration_parameters;
    p.dt = STEP;
    p.num_solver_iterations = 4;
    p.num_internal_pgs_iterations = 4;
    p.contact_recycling = false;
    p.contact_clustering = false;
    p.max_ccd_substeps = 0;
    p.static_contact_softness = SpringCoefficients::new(60.0, 5.0);
    p.warmstart_joints = true;

    let (frame, axle) = insert_machine(&mut world, bodies);
    let ground = world.insert_body(RigidBodyBuilder::fixed());
    let upright = Rotation::from_rotation_arc(Vector::Z, to_engine(bodies.normal));
    let rolls = bodies.axle.is_some() && held != HeldBy::EveryWheel;
    let friction = if bodies.axle.is_some() && !rolls { BRAKED } else { HOLDS };
    let mut plates = [ColliderHandle::invalid(); 4];
    let mut balls = plates;
    for (i, at) in bodies.contacts.into_iter().enumerate() {
        let middle = at - bodies.normal * 0.5;
        let plate = ColliderBuilder::cuboid(0.5, 0.5, 0.5)
            .position(Pose::from_parts(to_engine(middle), upright))
            .friction(friction)
            .friction_combine_rule(CoefficientCombineRule::Max);
        plates[i] = world.insert_collider(plate, Some(ground));
        let centre = at + bodies.normal * BALL;
        let on = if i < 2 { frame } else { axle };
        let ball = ColliderBuilder::ball(BALL).density(0.0).friction(friction);
        if rolls {
            let inertia = DMat3::from_diagonal(DVec3::splat(WHEEL * 0.1 * 0.1));
            let wheel = insert(&mut world, &Lump { mass: WHEEL, centre, inertia });
            let axis = to_engine(DVec3::X.cross(bodies.normal) * -1.0);
            let joint = RevoluteJointBuilder::new(axis)
                .local_anchor1(to_engine(centre))
                .local_anchor2(to_engine(centre))
                .contacts_enabled(false);
            world.insert_multibody_joint(on, wheel, joint);
            balls[i] = world.insert_collider(ball.translation(to_engine(centre)), Some(wheel));
        } else {
            balls[i] = world.insert_collider(ball.translation(to_engine(centre)), Some(on));
        }
    }
    let hold = bodies.axle.is_some().then_some(held).and_then(|held| match held {
        HeldBy::Front => Some(Hold { body: frame, wheels: [0, 1], by_weight: true }),
        HeldBy::Rear => Some(Hold { body: axle, wheels: [2, 3], by_weight: false }),
        HeldBy::EveryWheel => None,
    });
    Rig { world, bodies: *bodies, frame, plates, balls, hold }
}

impl Rig {
    /// One step under a gravity.
    fn step(&mut self, gravity: DVec3) {
        self.world.gravity = to_engine(gravity * G);
        if let Some(hold) = self.hold {
            let weights = hold.wheels.map(|i| self.force(i));
            let sum = weights[0] + weights[1];
            let mass = self.bodies.mass();
            let b = &mut self.world.bodies[hold.body];
            let at = hold.wheels.map(|i| from_engine(*b.position() * to_engine(self.bodies.contacts[i])));
            let moved =
                (at[0].x + at[1].x - self.bodies.contacts[hold.wheels[0]].x - self.bodies.contacts[hold.wheels[1]].x)
                    / 2.0;
            let force = -mass * G * gravity.x - HOLD * moved - 1.4 * (HOLD * mass).sqrt() * b.linvel().x;
            let centre = from_engine(*b.position() * b.local_center_of_mass());
            b.reset_forces(true);
            b.reset_torques(true);
            for (at, weight) in at.into_iter().zip(weights) {
                let share = if hold.by_weight && sum > 0.0 { weight / sum } else { 0.5 };
                let push = DVec3::X * (force * share);
                b.add_force(to_engine(push), true);
                b.add_torque(to_engine((at - centre).cross(push)), true);
            }
        }
        self.world.step();
    }

    /// Force of the ground on contact `i`, square to it, N.
    fn force(&self, i: usize) -> f64 {
        let pair = self.world.narrow_phase.contact_pair(self.plates[i], self.balls[i]);
        let points = pair.into_iter().flat_map(ContactPair::manifolds).flat_map(|m| &m.points);
        points.map(|p| p.data.impulse).sum::<f64>() / STEP
    }
}

/// True if the machine still stands after [`ALLOWED`].
fn stands(bodies: &Bodies, held: HeldBy, tilt: f64, azimuth: f64) -> bool {
    let mut rig = rig(bodies, held);
    let mut still = 0;
    for step in 0..((TILTS + ALLOWED) / STEP) as u32 {
        let s = (f64::from(step) * STEP / TILTS).min(1.0);
        rig.step(gravity(tilt * s * s * (3.0 - 2.0 * s), azimuth));
        if leans(&rig.world, rig.frame) > FALLEN {
            return false;
        }
        let frame = &rig.world.bodies[rig.frame];
        let rests = frame.angvel().length() < REST && frame.linvel().length() < REST;
        still = if rests { still + 1 } else { 0 };
        if still > STILL && f64::from(step) * STEP > FIRST {
            return true;
        }
    }
    true
}

/// Tilt (rad) at which the machine goes over; `None` if it stands at 0.8 rad (46°).
pub fn onset(question: &Question, held: HeldBy, azimuth: f64) -> Option<f64> {
    let bodies = Bodies::of(question);
    search::onset(|tilt| stands(&bodies, held, tilt, azimuth))
}

/// Forces square to the ground, N, of a machine that stands; `None` if it does not.
pub fn forces(question: &Question, held: HeldBy, tilt: f64, azimuth: f64) -> Option<[f64; 4]> {
    let bodies = Bodies::of(question);
    let mut rig = rig(&bodies, held);
    let pull = gravity(tilt, azimuth);
    for _ in 0..(SETTLE / STEP) as usize {
        rig.step(pull);
    }
    let reads = (READ / STEP) as usize;
    let mut sum = [0.0; 4];
    for _ in 0..reads {
        rig.step(pull);
        for (i, s) in sum.iter_mut().enumerate() {
            *s += rig.force(i) / reads as f64;
        }
    }
    (leans(&rig.world, rig.frame) < FALLEN).then_some(sum)
}
