//! Reference machine R1, entered from the README of the reference data folder beside the project.

use geometry::{DVec2, DVec3};
use machine::*;
use quantity::{degrees, kilograms, metres, pascals};

fn body(kind: BodyKind, mass: f64, centre: [f64; 3]) -> Body {
    Body { kind, name: String::new(), mass: kilograms(mass), least: None, centre: DVec3::from_array(centre) }
}

fn axle(x: f64) -> Axle {
    let tyre =
        Tyre { free_radius: metres(0.6), width: metres(0.4), pressure: Some(pascals(4e5)), rim: None, stiffness: None };
    Axle { x, half_track: 1.0, tyre }
}

pub(crate) fn r1() -> Machine {
    let blade = Blade {
        capacity: Some(kilograms(2000.0)),
        load_centre: metres(0.61),
        length: metres(1.2),
        thickness_new: None,
        thickness_now: None,
        modified: Some(false),
        angle: None,
        shank: None,
        bent: None,
        crack: None,
        lock: None,
        proof_load: None,
    };
    let forks = Attachment {
        id: "forks".into(),
        name: "forks".into(),
        kind: AttachmentKind::Forks(Forks {
            heel: DVec2::new(0.40, -0.65),
            blades: [blade.clone(), blade],
            spread: 0.8,
            rated_load_centre: metres(0.61),
            carriage: None,
            extensions: None,
            tip_difference: None,
            checked: None,
        }),
        mass: kilograms(380.0),
        centre: DVec2::new(0.25, -0.30),
        capacity: kilograms(4000.0),
        coupling: None,
    };
    let section = |mass, centre_along, share| Section { mass: kilograms(mass), centre_along, share };
    Machine {
        id: "R1".into(),
        name: "R1".into(),
        invented: true,
        serial: None,
        tyres: None,
        counterweight: None,
        options: None,
        chart_number: None,
        greatest_capacity: kilograms(4000.0),
        bodies: vec![
            body(BodyKind::Frame, 8200.0, [-1.9, 0.0, 1.0]),
            body(BodyKind::FrontAxle, 1100.0, [0.0, 0.0, 0.6]),
            body(BodyKind::RearAxle, 1000.0, [-3.0, 0.0, 0.6]),
        ],
        front: axle(0.0),
        rear: RearAxle {
            axle: axle(-3.0),
            pin_height: 0.7,
            oscillation: degrees(10.0),
            lock: Lock::Operator,
            lock_angle: None,
        },
        levelling: Some(Levelling { pin_height: 0.7, range: degrees(12.0), indicator_error: degrees(0.5) }),
        outriggers: None,
        slew: None,
        steering: None,
        stabilizers: Some(Stabilizers { pad: DVec2::new(0.45, 1.2), pad_area: 0.16, rear_axle_free: false }),
        boom: Boom {
            foot: DVec2::new(-2.6, 1.9),
            angle_min: degrees(-3.0),
            angle_max: degrees(70.0),
            extension_max: metres(7.0),
            sections: vec![section(900.0, 2.4, 0.0), section(600.0, 2.8, 0.5), section(420.0, 3.6, 1.0)],
            head_along: 5.0,
            head_below: 0.35,
            carriage_mass: kilograms(0.0),
            carriage_centre: DVec2::ZERO,
            depth: 0.35,
            flex: 0.0,
        },
        attachments: vec![forks],
        charts: vec![],
        limits: Limits { carry: CarryPosition { angle: degrees(5.0), extension: metres(0.0) }, wind: None },
        outline: Outline {
            front: 0.6,
            rear: -4.3,
            half_width: 1.2,
            ground_clearance: 0.4,
            frame_top: 1.4,
            cab_top: 2.5,
            cab: (-2.0, -0.6),
        },
        wind_areas: WindAreas { frame_side: 6.0, frame_front: 4.0, frame_height: 1.3 },
    }
}
