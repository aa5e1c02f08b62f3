//! All 16 rows of `../shared/reference-machine/tipping.csv`: made by closed-form moment balance and
//! cross-checked there by tilting the bodies in MuJoCo 4.0.0. The reference data folder lies beside
//! the project; without it this test is left out, unless CI is set.

use crate::r1::r1;
use geometry::DVec3;
use machine::{BoomPosition, SupportState, kinematics};
use stability::{LoadOnBoom, Masses, RearAxleState, Support, TipsOver, level_tipping_load, onset, tipping_lines};

/// Half a unit of the last printed digit, and the tolerance asked for.
const DEGREES: f64 = 0.01;
const KILOGRAMS: f64 = 0.01;
const METRES: f64 = 0.0001;

pub(crate) fn reference(path: &str) -> Option<String> {
    let file = std::path::Path::new(env!("CARGO_MANIFEST_DIR")).join("../../../shared").join(path);
    if let Ok(text) = std::fs::read_to_string(&file) {
        Some(text)
    } else {
        assert!(std::env::var_os("CI").is_none(), "reference data missing: {path}");
        eprintln!("left out: needs the reference data folder beside the project ({path})");
        None
    }
}

#[test]
fn val_r1_tipping_all_rows() {
    let Some(text) = reference("reference-machine/tipping.csv") else { return };
    let machine = r1();
    let attachment = machine.attachment("forks").unwrap();
    let mut rows = 0;
    for line in text.lines().skip(1) {
        let c: Vec<&str> = line.split(',').collect();
        let n = |i: usize| c[i].parse::<f64>().unwrap();
        let (state, rear) = match c[5] {
            "free" => (SupportState::Tyres, RearAxleState::Free),
            "locked" => (SupportState::Tyres, RearAxleState::Locked),
            "stabilizers" => (SupportState::Stabilizers, RearAxleState::Locked),
            other => panic!("unknown support {other}"),
        };
        let boom = BoomPosition::level(n(1).to_radians(), n(2));
        let heel = kinematics::tool_point(&machine.boom, attachment, boom);
        let (reach, height) = (heel.x + 0.61 - machine.front_face(), heel.z);
        assert!((reach - n(7)).abs() < METRES && (height - n(8)).abs() < METRES, "case {}: {reach} {height}", c[0]);

        let at = heel + DVec3::new(0.61, n(4), 0.5);
        let lines = tipping_lines(&machine, Support { state, rear });
        let bare = Masses::of(&machine, attachment, boom);
        let tipping = level_tipping_load(&bare, &lines[0], heel + DVec3::new(0.61, 0.0, 0.5)).unwrap();
        assert!((tipping - n(9)).abs() < KILOGRAMS, "case {}: tipping load {tipping}, table {}", c[0], n(9));

        let loaded = bare.with(LoadOnBoom { mass: n(3), at });
        let found = onset(&loaded, &lines, n(6).to_radians()).unwrap();
        let tilt = found.tilt.to_degrees();
        assert!((tilt - n(10)).abs() < DEGREES, "case {}: tilt {tilt}, table {}", c[0], n(10));
        let over = match found.over {
            TipsOver::Front => "front",
            TipsOver::Rear => "rear",
            TipsOver::Left => "left",
            TipsOver::Right => "right",
        };
        assert_eq!(over, c[11].trim(), "case {}", c[0]);
        rows += 1;
    }
    assert_eq!(rows, 16, "a reference case went missing");
}
