//! Small changes make small differences: nothing jumps where no contact comes or goes.

use crate::any_machine::{Case, any_case, least, seeded};
use geometry::DVec3;
use proptest::prelude::*;
use quantity::{Si, kilograms};

/// Every kind of input moved by a millionth: of a metre, of a radian, or of its own size.
const STEP: f64 = 1e-6;

type Change = (&'static str, fn(&mut Case));

const CHANGES: [Change; 17] = [
    ("load mass", |c| c.load.mass *= 1.0 + STEP),
    ("load ahead", |c| c.load.at.x += STEP),
    ("load left", |c| c.load.at.y += STEP),
    ("load up", |c| c.load.at.z += STEP),
    ("boom angle", |c| c.boom.angle += STEP),
    ("boom extension", |c| c.boom.extension += STEP),
    ("nose up", |c| c.gravity = (c.gravity - DVec3::X * STEP).normalize()),
    ("left down", |c| c.gravity = (c.gravity + DVec3::Y * STEP).normalize()),
    ("frame mass", |c| c.machine.bodies[0].mass = kilograms(c.machine.bodies[0].mass.si() * (1.0 + STEP))),
    ("frame centre", |c| c.machine.bodies[0].centre += DVec3::splat(STEP)),
    ("front track", |c| c.machine.front.half_track += STEP),
    ("wheelbase", |c| c.machine.rear.axle.x -= STEP),
    ("pin height", |c| c.machine.rear.pin_height += STEP),
    ("rear axle roll", |c| c.stance.rear_roll += STEP),
    ("front axle roll", |c| c.stance.front_roll += STEP),
    ("front stiffness", |c| c.springs.front *= 1.0 + STEP),
    ("gust", |c| c.gust *= 1.0 + STEP),
];

/// Radians of reserve for a metre, a radian or the whole of an input: a boom of 20 m that turns by 1 rad
/// moves its load by 20 m, over a centre of gravity some metres from its line.
const STEEPEST: f64 = 40.0;

proptest! {
    #![proptest_config(seeded())]

    #[test]
    fn a_millionth_of_any_input_changes_the_reserves_by_little(case in any_case()) {
        let (rigid, soft) = case.reserves();
        // What has tipped already has no reserve to speak of.
        prop_assume!(least(&soft).1 > 0.0);
        for (what, change) in CHANGES {
            let mut other = case.clone();
            change(&mut other);
            let (rigid_b, soft_b) = other.reserves();
            for i in 0..6 {
                let (by, by_soft) = ((rigid[i] - rigid_b[i]).abs() / STEP, (soft[i] - soft_b[i]).abs() / STEP);
                prop_assert!(by < STEEPEST, "{what}, line {i}: {by}");
                prop_assert!(by_soft < STEEPEST, "{what}, line {i} on springs: {by_soft}");
            }
        }
    }
}
