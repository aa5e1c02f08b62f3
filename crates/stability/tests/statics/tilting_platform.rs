//! The tilting platform: turned as tests turn it, and the worst way.

use crate::r1::r1;
use geometry::DVec3;
use machine::{BoomPosition, SupportState, kinematics};
use proptest::prelude::*;
use stability::{
    LineOnSprings, LoadOnBoom, Masses, PLATFORM_STANDARD, PLATFORM_TESTS, RearAxleState, Springs, Support, TipsOver,
    Turned, descent, leans, on_platform, onset, tipping_lines,
};

const ALL: [Turned; 4] = [Turned::NoseDown, Turned::TailDown, Turned::LeftEdge, Turned::RightEdge];

fn support(k: usize) -> Support {
    let state = if k < 2 { SupportState::Tyres } else { SupportState::Stabilizers };
    Support { state, rear: if k.is_multiple_of(2) { RearAxleState::Free } else { RearAxleState::Locked } }
}

/// By hand: R1 has its front contacts at (0, ±1), the pin above (−3, 0), rear contacts at (−3, ±1).
#[test]
fn the_tilting_edge_lies_across_the_fall() {
    let free = tipping_lines(&r1(), support(0));
    let locked = tipping_lines(&r1(), support(1));
    let degrees = |lines: &[_], turned| descent(lines, turned).unwrap().to_degrees();
    assert!((degrees(&locked, Turned::LeftEdge) - 90.0).abs() < 1e-9);
    assert!((degrees(&locked, Turned::RightEdge) + 90.0).abs() < 1e-9);
    // The edge runs from (−3, 0) to (0, 1): outward is (−1, 3).
    let outward = 3.0_f64.atan2(-1.0).to_degrees();
    assert!((degrees(&free, Turned::LeftEdge) - outward).abs() < 1e-9);
    assert!((degrees(&free, Turned::RightEdge) + outward).abs() < 1e-9);
    assert_eq!(degrees(&free, Turned::NoseDown), 0.0);
}

proptest! {
    #[test]
    fn the_worst_orientation_is_never_later_than_the_tests(
        angle in -3.0..70.0_f64, ext in 0.0..7.0_f64, mass in 0.0..2500.0_f64, left in -0.4..0.4_f64, k in 0usize..4,
    ) {
        let machine = r1();
        let boom = BoomPosition::level(angle.to_radians(), ext);
        let at = kinematics::tool_point(&machine.boom, &machine.attachments[0], boom) + DVec3::new(0.61, left, 0.5);
        let masses = Masses::of(&machine, &machine.attachments[0], boom).with(LoadOnBoom { mass, at });
        let lines = tipping_lines(&machine, support(k));
        for turned in ALL {
            let found = on_platform(&masses, &lines, &[0.0; 6], turned).unwrap();
            let soft = lines.map(|l| LineOnSprings::of(&machine, support(k), &l, Springs::of(&machine, support(k).state)));
            let on_tyres = on_platform(&masses, &lines, &leans(&masses, &soft), turned).unwrap();
            prop_assert!(on_tyres.worst.unwrap().tilt <= found.worst.unwrap().tilt);
            if let (Some(soft), Some(rigid)) = (on_tyres.turned, found.turned) {
                prop_assert!(soft.tilt <= rigid.tilt && on_tyres.worst.unwrap().tilt <= soft.tilt + 1e-12);
            }
            let worst = found.worst.unwrap().tilt;
            if let Some(o) = found.turned {
                prop_assert!(worst <= o.tilt + 1e-12, "{worst} {}", o.tilt);
            }
            // The closed form is the least of a sweep all round.
            let swept = (0..1440)
                .filter_map(|i| onset(&masses, &lines, (f64::from(i) * 0.25).to_radians()))
                .map(|o| o.tilt)
                .fold(f64::INFINITY, f64::min);
            prop_assert!(swept >= worst - 1e-12 && swept <= worst * 1.00001 + 1e-9, "{worst} {swept}");
            let there = onset(&masses, &lines, found.worst_azimuth).unwrap();
            prop_assert!((there.tilt - worst).abs() < 1e-9);
            // Sideways the test's own edge goes last of all directions that only that edge sees.
            if turned == Turned::LeftEdge && found.worst.unwrap().over == TipsOver::Left {
                prop_assert!(found.turned.unwrap().tilt < worst * 1.2 + 1e-9);
            }
        }
    }
}

/// `../shared/reference/stability_test_slopes.csv` beside the project; left out without it, unless CI is set.
#[test]
fn val_slopes_of_the_platform_tests() {
    let file =
        std::path::Path::new(env!("CARGO_MANIFEST_DIR")).join("../../../shared/reference/stability_test_slopes.csv");
    let Ok(table) = std::fs::read_to_string(file) else {
        assert!(std::env::var_os("CI").is_none(), "reference data missing");
        eprintln!("left out: needs the reference data folder beside the project, `../shared`");
        return;
    };
    let mut rows = 0;
    for line in table.lines().filter(|l| l.contains(PLATFORM_STANDARD) && l.contains("variable-reach")) {
        let Some((_, rest)) = line.split_once("variable-reach truck,") else { continue };
        let Some(number) = rest.split(' ').next().and_then(|n| n.parse::<u32>().ok()) else { continue };
        let test = PLATFORM_TESTS.iter().find(|t| t.number == number).unwrap();
        let low = (test.slope[0] * 100.0).round();
        let high = (test.slope[1] * 100.0).round();
        let wanted = if low == high { format!(",{low},") } else { format!(",{low} to {high},") };
        assert!(line.contains(&wanted), "test {number}: {wanted} in {line}");
        assert_eq!(line.contains("longitudinal"), test.lengthwise, "test {number}");
        assert_eq!(line.contains("stacking"), test.stacking, "test {number}");
        assert_eq!(line.contains("unladen"), test.unladen, "test {number}");
        assert!(line.contains("from memory, not checked; LOW confidence"));
        rows += 1;
    }
    assert_eq!(rows, 5, "a row went missing");
}
