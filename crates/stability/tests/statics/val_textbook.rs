//! Worked examples from textbooks, through the same functions that plans use.
//! Numbers and sources: the reference data folder beside the project, `reference/worked-examples.md`.

use crate::r1::r1;
use geometry::DVec3;
use machine::{Load, LoadPart, SupportState};
use stability::{LEVEL, LoadOnBoom, Masses, RearAxleState, Support, level_tipping_load, reactions, tipping_lines};

/// W18, Wickert & Lewis, An Introduction to Mechanical Engineering, ch. 4 (distances recovered
/// there as 24, 42 and 72 in): truck 3,500 lb, container 800 lb ahead of the front axle; each rear
/// wheel 888 lb, each front wheel 1,262 lb; tipping load 6,125 lb.
#[test]
fn val_forklift_wheel_forces_and_tipping_load() {
    const INCH: f64 = 0.0254;
    const POUND: f64 = 0.453_592_37;
    let mut machine = r1();
    machine.bodies.clear();
    machine.rear.axle.x = -72.0 * INCH;
    let at = DVec3::new(24.0 * INCH, 0.0, 0.8);
    let mut masses = Masses { sprung: 3500.0 * POUND, ..Masses::default() };
    masses.sprung_moment = DVec3::new(-42.0 * INCH, 0.0, 0.7) * masses.sprung;
    for rear in [RearAxleState::Free, RearAxleState::Locked] {
        let support = Support { state: SupportState::Tyres, rear };
        let tipping = level_tipping_load(&masses, &tipping_lines(&machine, support)[0], at).unwrap();
        assert!((tipping / POUND - 6125.0).abs() < 0.5, "tipping load {} lb", tipping / POUND);
        let r = reactions(&machine, support, &masses.with(LoadOnBoom { mass: 800.0 * POUND, at }), LEVEL);
        let pounds = r.force.map(|f| f / quantity::STANDARD_GRAVITY / POUND);
        for (got, want) in pounds.iter().zip([1262.5, 1262.5, 887.5, 887.5]) {
            assert!((got - want).abs() < 0.01, "{pounds:?}");
        }
    }
}

/// W16, Hibbeler & Gupta, Engineering Mechanics, Example 4.18, p. 141: resultant of vertical loads
/// 600 N down at (8, 0), 100 N up at (6, 5), 400 N down at (0, 10), 500 N down at (0, 0):
/// 1,400 N at x 3.0 m, y 2.5 m. Signed masses stand for the loads.
#[test]
fn val_combined_centre_of_four_loads() {
    let part = |mass: f64, x: f64, y: f64| LoadPart::point(quantity::kilograms(mass), DVec3::new(x, y, 0.0));
    let (mass, centre) =
        Load::combine(&[part(600.0, 8.0, 0.0), part(-100.0, 6.0, 5.0), part(400.0, 0.0, 10.0), part(500.0, 0.0, 0.0)]);
    assert!((mass - 1400.0).abs() < 1e-9);
    assert!((centre.x - 3.0).abs() < 1e-9, "moment about y 4,200 over 1,400");
    assert!((centre.y - 2.5).abs() < 1e-9, "moment about x 3,500 over 1,400");
}

/// W17, McLean, Engineering Mechanics, Problem 10.16, p. 166: three volumes, centroid (75.9, 28.0) mm.
#[test]
fn val_composite_centroid() {
    let part = |mass: f64, x: f64, y: f64| LoadPart::point(quantity::kilograms(mass), DVec3::new(x, y, 0.0));
    let (_, c) = Load::combine(&[part(1728.0, 60.0, 30.0), part(432.0, 140.0, 20.0), part(7.54, 60.0, 30.0)]);
    assert!((c.x - 75.9).abs() < 0.05 && (c.y - 28.0).abs() < 0.05, "{c}");
}

/// W32, Levinson, Statics and Strength of Materials, Example 4.4, p. 72: beam reactions under
/// loads 7,000, 1,000 and 3,000 lb, spacing 6, 9, 10, 5 in along 30 in: 6,600 and 4,400 lb. Front and
/// rear axles stand for the supports.
#[test]
fn val_beam_reactions() {
    let mut machine = r1();
    machine.rear.axle.x = -30.0;
    let mut masses = Masses::default();
    for (load, from_front) in [(7000.0, 6.0), (1000.0, 15.0), (3000.0, 25.0)] {
        masses = masses.with(LoadOnBoom { mass: load, at: DVec3::new(-from_front, 0.0, 0.0) });
    }
    let support = Support { state: SupportState::Tyres, rear: RearAxleState::Free };
    let f = reactions(&machine, support, &masses, LEVEL).force.map(|f| f / quantity::STANDARD_GRAVITY);
    assert!((f[0] + f[1] - 6600.0).abs() < 1e-6, "{f:?}");
    assert!((f[2] + f[3] - 4400.0).abs() < 1e-6, "{f:?}");
}

/// W21 and W23: wind on flat plates. W23's true value (billboard 20 × 40 ft, 100 mph, C 1.0, air
/// 0.075 lb/ft³): 20,058 lb; the published 300,000 lb forgot to convert. W22, Subramanya, 1000 Solved
/// Problems in Fluid Mechanics, Example 9.11, p. 201: 12.22 kN and 305.6 kN·m on a cylinder of
/// 2.5 m × 50 m at 80 km/h. Both with the air density of the example.
#[test]
fn val_wind_forces() {
    use stability::wind::{AIR_DENSITY, Part, WindLoad};
    let force = |gust: f64, area: f64, factor: f64, density: f64, height: f64| {
        let name = stability::text::PART_LOAD.message();
        let part = Part::new(name, area, 0.0, factor, DVec3::new(0.0, 0.0, height));
        let w = WindLoad::of(gust, &[part], &mut evidence::Silent);
        (w.front * density / AIR_DENSITY, w.front_moment.z * density / AIR_DENSITY)
    };
    let (f, _) = force(100.0 * 0.447_04, 800.0 * 0.092_903_04, 1.0, 0.075 * 0.453_592_37 / 0.028_316_846_592, 0.0);
    assert!((f / 4.448_221_615 - 20_058.0).abs() < 1.0, "{} lbf", f / 4.448_221_615);
    let (f, m) = force(80.0 / 3.6, 2.5 * 50.0, 0.33, 1.2, 25.0);
    assert!((f - 12_220.0).abs() < 5.0 && (m - 305_600.0).abs() < 100.0, "{f} {m}");
}
