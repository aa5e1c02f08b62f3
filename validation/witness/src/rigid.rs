//! Contacts by the engine's own solver: a small ball at every contact point on a plate of its own,
//! with friction that never slides. Where wheels roll, the ball turns on an axle square to the middle
//! plane, so that nothing holds it along the machine.

use crate::engine::{AHEAD, from_engine, insert_machine, to_engine, turned};
use crate::{Bodies, HeldBy, Lump, Question, gravity, search};
use geometry::{DMat3, DVec3};
use quantity::STANDARD_GRAVITY as G;
use rapier3d_f64::math::{Pose, Rotation, Vector};
use rapier3d_f64::prelude::{
    CoefficientCombineRule, ColliderBuilder, ColliderHandle, GenericJointBuilder, JointAxesMask, PhysicsWorld,
    RevoluteJointBuilder, RigidBodyBuilder, RigidBodyHandle, SpringCoefficients,
};

/// Radius of the ball at a contact, m: what a lean of 1° moves its contact by is 0.3 mm.
const BALL: f64 = 0.02;
/// Mass of a ball that rolls, kg; taken from nobody, 0.01 % of a machine.
const WHEEL: f64 = 1.0;
/// Friction that holds at every tilt asked for.
const FRICTION: f64 = 10.0;
/// Time of a step, s.
const STEP: f64 = 1.0 / 200.0;
/// Time allowed to fall, s. A body whose centre is 2 m from the edge falls as `cosh(1.9 t)`: what is
/// 0.01° beyond the onset has turned by more than [`FALLEN`] by then.
const ALLOWED: f64 = 3.0;
/// A turn that no standing machine makes on rigid contacts, rad.
const FALLEN: f64 = 0.02;
/// Time after which forces are read, s, and how long they are averaged.
const SETTLE: f64 = 1.0;
const READ: f64 = 0.5;

struct Rig {
    world: PhysicsWorld,
    frame: RigidBodyHandle,
    plates: [ColliderHandle; 4],
    balls: [ColliderHandle; 4],
    normal: DVec3,
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
    let mut plates = [ColliderHandle::invalid(); 4];
    let mut balls = plates;
    for (i, at) in bodies.contacts.into_iter().enumerate() {
        let middle = at - bodies.normal * 0.5;
        let plate = ColliderBuilder::cuboid(0.5, 0.5, 0.5)
            .position(Pose::from_parts(to_engine(middle), upright))
            .friction(FRICTION)
            .friction_combine_rule(CoefficientCombineRule::Max);
        plates[i] = world.insert_collider(plate, Some(ground));
        let centre = at + bodies.normal * BALL;
        let on = if i < 2 { frame } else { axle };
        let rolls = bodies.axle.is_some()
            && match held {
                HeldBy::Front => i >= 2,
                HeldBy::RearDifferential => true,
                HeldBy::EveryWheel => false,
            };
        let ball = ColliderBuilder::ball(BALL).density(0.0).friction(FRICTION);
        if rolls {
            let inertia = DMat3::from_diagonal(DVec3::splat(WHEEL * 0.1 * 0.1));
            let wheel = crate::engine::insert(&mut world, &Lump { mass: WHEEL, centre, inertia });
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
    if bodies.axle.is_some() && held == HeldBy::RearDifferential {
        // Both rear wheels together hold their middle along the machine, and nothing else.
        let middle = to_engine((bodies.contacts[2] + bodies.contacts[3]) * 0.5);
        let hold = GenericJointBuilder::new(JointAxesMask::LIN_X)
            .local_axis1(AHEAD)
            .local_axis2(AHEAD)
            .local_anchor1(middle)
            .local_anchor2(middle)
            .contacts_enabled(false);
        world.insert_impulse_joint(ground, axle, hold);
        // The rear balls themselves must not hold along the machine then: see `rolls`.
    }
    Rig { world, frame, plates, balls, normal: bodies.normal }
}

impl Rig {
    fn pull(&mut self, gravity: DVec3) {
        self.world.gravity = to_engine(gravity * G);
    }

    /// Force of the ground on contact `i`, N.
    fn force(&self, i: usize) -> DVec3 {
        let Some(pair) = self.world.narrow_phase.contact_pair(self.plates[i], self.balls[i]) else {
            return DVec3::ZERO;
        };
        let (mut impulse, flip) = (0.0, 1.0);
        for manifold in pair.manifolds() {
            for point in &manifold.points {
                impulse += point.data.impulse;
            }
        }
        let _ = from_engine(self.world.gravity);
        self.normal * (impulse * flip / STEP)
    }
}

/// True if the machine still stands after [`ALLOWED`].
fn stands(bodies: &Bodies, held: HeldBy, gravity: DVec3) -> bool {
    let mut rig = rig(bodies, held);
    rig.pull(gravity);
    for _ in 0..(ALLOWED / STEP) as usize {
        rig.world.step();
        if turned(&rig.world, rig.frame) > FALLEN {
            return false;
        }
    }
    true
}

pub fn debug(question: &Question, held: HeldBy, gravity: DVec3) {
    let bodies = Bodies::of(question);
    let mut rig = rig(&bodies, held);
    rig.pull(gravity);
    for k in 0..(ALLOWED / STEP) as usize {
        rig.world.step();
        if k % 40 == 0 {
            let b = &rig.world.bodies[rig.frame];
            println!("{k} {:?} {:?} {:?}", b.translation().to_array().map(|x| (x*1e4).round()/1e4), b.rotation().xyz().to_array().map(|x| (x*2e4).round()/1e4), [0,1,2,3].map(|i| rig.force(i).z.round()));
        }
    }
}

/// Tilt (rad) at which the machine goes over; `None` if it stands at 1 rad.
pub fn onset(question: &Question, held: HeldBy, azimuth: f64) -> Option<f64> {
    let bodies = Bodies::of(question);
    search::onset(|tilt| stands(&bodies, held, gravity(tilt, azimuth)))
}

/// Forces square to the ground, N, of a machine that stands; `None` if it does not.
pub fn forces(question: &Question, held: HeldBy, gravity: DVec3) -> Option<[f64; 4]> {
    let bodies = Bodies::of(question);
    let mut rig = rig(&bodies, held);
    rig.pull(gravity);
    for _ in 0..(SETTLE / STEP) as usize {
        rig.world.step();
    }
    let reads = (READ / STEP) as usize;
    let mut sum = [0.0; 4];
    for _ in 0..reads {
        rig.world.step();
        for (i, s) in sum.iter_mut().enumerate() {
            *s += rig.force(i).length() / reads as f64;
        }
    }
    (turned(&rig.world, rig.frame) < FALLEN).then_some(sum)
}
