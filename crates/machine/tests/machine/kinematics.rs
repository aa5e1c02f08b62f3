//! Boom kinematics: forth and back, and R1's published reach and height.

use geometry::DVec2;
use machine::kinematics::{OutOfReach, position_for, tool_point};
use machine::{Attachment, AttachmentKind, Boom, BoomPosition, Jib, Section};
use proptest::prelude::*;
use quantity::{degrees, kilograms, metres};

fn boom() -> Boom {
    Boom {
        foot: DVec2::new(-2.6, 1.9),
        angle_min: degrees(-3.0),
        angle_max: degrees(70.0),
        extension_max: metres(7.0),
        sections: vec![Section { mass: kilograms(900.0), centre_along: 2.4, share: 0.0 }],
        head_along: 5.0,
        head_below: 0.35,
        carriage_mass: kilograms(0.0),
        carriage_centre: DVec2::ZERO,
        depth: 0.35,
        flex: 0.0,
    }
}

fn tool(at: [f64; 2]) -> Attachment {
    Attachment {
        id: "t".into(),
        name: "t".into(),
        kind: AttachmentKind::Jib(Jib { hook: DVec2::from_array(at) }),
        mass: kilograms(100.0),
        centre: DVec2::ZERO,
        capacity: kilograms(1000.0),
        coupling: None,
    }
}

proptest! {
    #[test]
    fn there_and_back(angle in -3.0..70.0_f64, ext in 0.0..7.0_f64, tilt in -5.0..5.0_f64, x in 0.0..2.0_f64, z in -1.0..0.5_f64) {
        let (b, t) = (boom(), tool([x, z]));
        let at = BoomPosition { angle: angle.to_radians(), extension: ext, fork_tilt: tilt.to_radians() };
        let p = tool_point(&b, &t, at);
        let back = position_for(&b, &t, DVec2::new(p.x, p.z), at.fork_tilt).unwrap();
        prop_assert!((back.angle - at.angle).abs() < 1e-9 && (back.extension - at.extension).abs() < 1e-9);
    }
}

#[test]
fn out_of_reach_says_what_it_would_take() {
    let (b, t) = (boom(), tool([0.4, -0.65]));
    let far = position_for(&b, &t, DVec2::new(20.0, 3.0), 0.0);
    assert!(matches!(far, Err(OutOfReach::Extension(e)) if e > 7.0));
    let high = position_for(&b, &t, DVec2::new(-2.0, 9.0), 0.0);
    assert!(matches!(high, Err(OutOfReach::Angle(a)) if a.to_degrees() > 70.0));
    let inside = position_for(&b, &t, DVec2::new(-2.2, 1.3), 0.0);
    assert!(matches!(inside, Err(OutOfReach::Extension(e)) if e < 0.0));
}
