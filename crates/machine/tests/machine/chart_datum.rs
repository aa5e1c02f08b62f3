//! Every datum a chart may have: where the point lies, level and with the forks tilted.

use crate::chart_reading::{chart, square, zone};
use geometry::DVec2;
use machine::{Attachment, AttachmentKind, Blade, Chart, Datum, Extensions, Forks, HeightTo, ReachFrom, ReachTo};
use quantity::{kilograms, metres};

fn forks() -> Attachment {
    let blade = |length: f64| Blade {
        capacity: Some(kilograms(2000.0)),
        load_centre: metres(0.6),
        length: metres(length),
        thickness_new: None,
        thickness_now: None,
        modified: None,
        angle: None,
        bent: None,
        shank: None,
        crack: None,
        lock: None,
        proof_load: None,
    };
    Attachment {
        id: "forks".into(),
        name: "forks".into(),
        kind: AttachmentKind::Forks(Forks {
            heel: DVec2::new(0.3, -0.6),
            blades: [blade(1.1), blade(1.2)],
            spread: 0.8,
            rated_load_centre: metres(0.6),
            carriage: None,
            extensions: None,
            tip_difference: None,
            checked: None,
        }),
        mass: kilograms(200.0),
        centre: DVec2::ZERO,
        capacity: kilograms(4000.0),
        coupling: None,
    }
}

fn measuring(reach_to: ReachTo, height_to: HeightTo, height: Option<f64>) -> Chart {
    let plain = chart(vec![zone("A", 1000.0, &square(0.0, 0.0, 5.0, 5.0))], vec![]);
    let mut parts = (*plain).clone();
    parts.datum = Datum { reach_from: ReachFrom::FrontAxle, reach_to, height_to };
    parts.load_centre = metres(0.5);
    parts.load_centre_height = height.map(metres);
    Chart::new(parts)
}

fn near(a: DVec2, b: [f64; 2]) -> bool {
    a.distance(DVec2::from_array(b)) < 1e-12
}

#[test]
fn points_with_level_forks() {
    let at = |to, height_to, height| measuring(to, height_to, height).measured(&forks(), 0.0);
    let heel = at(ReachTo::ForkHeel, HeightTo::ForkTop, None);
    assert!(near(heel.reach, [0.0, 0.0]) && near(heel.height, [0.0, 0.0]));
    let centre = at(ReachTo::LoadCentre, HeightTo::LoadCentre, Some(0.4));
    assert!(near(centre.reach, [0.5, 0.4]) && near(centre.height, [0.5, 0.4]));
    assert!(near(at(ReachTo::ForkTip, HeightTo::ForkTop, None).reach, [1.2, 0.0]), "the longer blade");
    for (length, tip) in [(1.9, 1.9), (1.0, 1.2)] {
        let mut forks = forks();
        let AttachmentKind::Forks(f) = &mut forks.kind else { panic!("forks") };
        f.extensions = Some(Extensions {
            length: metres(length),
            capacity: kilograms(1000.0),
            load_centre: metres(1.0),
            cover: 0.6,
            by: "plate".into(),
        });
        let measured = measuring(ReachTo::ForkTip, HeightTo::ForkTop, None).measured(&forks, 0.0);
        assert!(near(measured.reach, [tip, 0.0]), "the longest of blades and sleeves of {length} m");
    }
    let pin = at(ReachTo::HeadPin, HeightTo::HeadPin, None);
    assert!(near(pin.reach, [-0.3, 0.6]) && near(pin.height, [-0.3, 0.6]));
    assert!(at(ReachTo::ForkHeel, HeightTo::LoadCentre, None).height.y.is_nan(), "a height nobody states is none");
}

#[test]
fn tips_up_moves_the_points_about_the_head_pin() {
    let tilt = 0.1_f64;
    let (s, c) = libm::sincos(tilt);
    let chart = measuring(ReachTo::LoadCentre, HeightTo::LoadCentre, Some(0.4));
    let m = chart.measured(&forks(), tilt);
    assert!(near(m.reach, [0.5 * c - 0.4 * s, 0.5 * s + 0.4 * c]), "tips up: nearer and higher");
    let top = measuring(ReachTo::LoadCentre, HeightTo::ForkTop, Some(0.4)).measured(&forks(), tilt);
    assert!(near(top.height, [0.5 * c, 0.5 * s]));
    // The head pin is where heel and pin are fixed to each other: from the tilted heel back to it.
    let pin = measuring(ReachTo::HeadPin, HeightTo::HeadPin, None).measured(&forks(), tilt).reach;
    let heel_from_pin = DVec2::new(0.3 * c + 0.6 * s, 0.3 * s - 0.6 * c);
    assert!((pin + heel_from_pin).length() < 1e-12);
}
