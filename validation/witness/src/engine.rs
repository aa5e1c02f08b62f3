//! Putting bodies into the engine.

use crate::{Bodies, Lump};
use geometry::DVec3;
use rapier3d_f64::math::{Matrix, Vector};
use rapier3d_f64::prelude::{MassProperties, PhysicsWorld, RevoluteJointBuilder, RigidBodyBuilder, RigidBodyHandle};

/// A vector for the engine, which brings its own version of the same library.
pub(crate) fn to_engine(v: DVec3) -> Vector {
    Vector::from_array(v.to_array())
}

/// A vector from the engine.
pub(crate) fn from_engine(v: Vector) -> DVec3 {
    DVec3::from_array(v.to_array())
}

/// Unit vector along the axis `x`.
pub(crate) const AHEAD: Vector = Vector::new(1.0, 0.0, 0.0);

/// A body whose frame is the machine frame at the start.
pub(crate) fn insert(world: &mut PhysicsWorld, lump: &Lump) -> RigidBodyHandle {
    let inertia = Matrix::from_cols_array(&lump.inertia.to_cols_array());
    let mass = MassProperties::with_inertia_matrix(to_engine(lump.centre), lump.mass, inertia);
    world.insert_body(RigidBodyBuilder::dynamic().additional_mass_properties(mass).can_sleep(false))
}

/// Frame and, where it is free, the rear axle on its pin: (frame, body under the rear contacts).
pub(crate) fn insert_machine(world: &mut PhysicsWorld, bodies: &Bodies) -> (RigidBodyHandle, RigidBodyHandle) {
    let frame = insert(world, &bodies.frame);
    let Some(lump) = &bodies.axle else { return (frame, frame) };
    let axle = insert(world, lump);
    let at = to_engine(bodies.pin);
    let pin = RevoluteJointBuilder::new(AHEAD).local_anchor1(at).local_anchor2(at).contacts_enabled(false);
    world.insert_multibody_joint(frame, axle, pin);
    (frame, axle)
}

/// How far a body leans from where it began, rad; turning on the spot is no leaning.
pub(crate) fn leans(world: &PhysicsWorld, body: RigidBodyHandle) -> f64 {
    let up = *world.bodies[body].rotation() * Vector::Z;
    up.x.hypot(up.y).min(1.0).asin()
}
