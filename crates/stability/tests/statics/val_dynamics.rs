//! Braking, turning and stopping against textbooks. Numbers and sources: the reference data folder beside
//! the project, `../shared/reference`; tests that read it are left out without it, unless CI is set.

use crate::r1::r1;
use crate::val_tipping::reference;
use evidence::Silent;
use geometry::DVec3;
use machine::{Machine, SupportState};
use quantity::STANDARD_GRAVITY as G;
use stability::wind::WindLoad;
use stability::{
    Acceleration, LEVEL, Loading, Masses, RearAxleState, Support, Travel, Turn, coasting_distance, moving,
    stopping_distance, tilt_reserve, tipping_lines,
};

const LOCKED: Support = Support { state: SupportState::Tyres, rear: RearAxleState::Locked };

/// A body of that mass (kg) and centre (m) on R1's axles, with the track and base asked for.
fn car(mass: f64, centre: DVec3, half_track: f64, base: f64) -> (Machine, Loading) {
    let mut machine = r1();
    machine.front.half_track = half_track;
    machine.rear.axle.half_track = half_track;
    machine.rear.axle.x = -base;
    let masses = Masses { sprung: mass, sprung_moment: centre * mass, ..Masses::default() };
    (machine, Loading { masses, gravity: LEVEL, wind: WindLoad::NONE })
}

/// W19, Tayal, Engineering Mechanics, Example 15.20: 10 kN, 10 m/s, radius 100 m, centre 1 m up, track
/// 1.5 m: goes over at 27.12 m/s. The wheel forces printed there (4,660 and 5,340 N) leave out half of the
/// transfer; a moment balance gives 4,320 and 5,680 N.
#[test]
fn val_car_in_a_turn() {
    let (machine, loading) = car(10_000.0 / G, DVec3::new(-1.25, 0.0, 1.0), 0.75, 2.5);
    let lines = tipping_lines(&machine, LOCKED);
    let at = |speed: f64| moving(&loading, Acceleration::turning(Turn::Left, speed, 100.0));
    let turned = at(10.0).reactions(&machine, LOCKED);
    // Along the ground's normal: the apparent gravity leans to the right.
    let f = turned.force.map(|f| f * -at(10.0).loading.gravity.z);
    assert!(turned.stands);
    // The book takes g 9.81.
    assert!((f[0] + f[2] - 4320.4).abs() < 1.0 && (f[1] + f[3] - 5679.6).abs() < 1.0, "{f:?}");
    let reserve = |speed: f64| tilt_reserve(&at(speed).loading, &lines[3], &mut Silent);
    assert!(reserve(27.10) > 0.0 && reserve(27.13) < 0.0, "{}", reserve(27.12));
    // The roll-over threshold is half the track over the height: 0.75 g.
    let at_limit = moving(&loading, Acceleration { ahead: 0.0, left: 0.75 * G });
    assert!(tilt_reserve(&at_limit.loading, &lines[3], &mut Silent).abs() < 1e-12);
}

/// W20, Hibbeler & Gupta, Engineering Mechanics, Example 17.5, p. 733: 2,000 kg, centre 1.25 m behind
/// the front axle, 0.75 m ahead of the rear one, 0.3 m up, rear wheels slip with friction 0.25: 6.88 kN in
/// front, 12.74 kN behind, 1.59 m/s².
#[test]
fn val_accelerating_car() {
    let (machine, loading) = car(2000.0, DVec3::new(-1.25, 0.0, 0.3), 0.75, 2.0);
    let gain = 0.25 * 12_740.0 / 2000.0;
    let m = moving(&loading, Acceleration::starting(Travel::Ahead, gain));
    // As before: the apparent gravity leans back.
    let f = m.reactions(&machine, LOCKED).force.map(|f| f * -m.loading.gravity.z);
    assert!((gain - 1.59).abs() < 0.005);
    assert!((f[0] + f[1] - 6880.0).abs() < 10.0 && (f[2] + f[3] - 12_740.0).abs() < 10.0, "{f:?}");
    // Braking tail first leans the same way.
    let back = moving(&loading, Acceleration::braking(Travel::Back, gain));
    assert_eq!(back, m);
}

/// All 84 rows of `reference/stopping_distance_on_grade.csv` (AASHTO, Exhibit 3-2; W29). 15 mph 3 %
/// down and 30 mph 3 % up do not follow from the exhibit's own formula.
#[test]
fn val_stopping_distance_on_grade_all_rows() {
    const FOOT: f64 = 0.3048;
    let Some(text) = reference("reference/stopping_distance_on_grade.csv") else { return };
    let (mut rows, mut odd) = (0, Vec::new());
    for line in text.lines().skip(1) {
        let c: Vec<&str> = line.split(',').collect();
        let n = |i: usize| c[i].parse::<f64>().unwrap();
        let grade = n(1) / 100.0 * if c[2] == "down" { -1.0 } else { 1.0 };
        let got = stopping_distance(n(0) * 0.447_04, stability::REACTION, stability::SURE_BRAKING, grade) / FOOT;
        // Printed in whole feet, rounded up here and there; 1.47 and 30 stand there for 1.4667 and 29.9.
        if (got - n(3)).abs() > 1.0 + 0.003 * n(3) {
            odd.push((n(0), n(1), c[2].to_owned()));
        }
        rows += 1;
    }
    assert_eq!(rows, 84, "a reference case went missing");
    assert_eq!(odd, [(15.0, 3.0, "down".to_owned()), (30.0, 3.0, "up".to_owned())]);
}

/// W30, Bansal, Engineering Mechanics, Example 15.15, p. 549: 20/3 m/s up a slope of 5 in 100 with a
/// resistance of 8 N per kN: 39.05 m.
#[test]
fn val_coasting_up_a_grade() {
    // The book takes the slope's sine, and g 9.81.
    assert!((coasting_distance(20.0 / 3.0, 0.008, 0.05) - 39.06).abs() < 0.03);
}

/// The force on the outer wheels is the same by d'Alembert as on ground tilted by `atan(a/g)`.
#[test]
fn turning_is_a_tilt() {
    let (machine, loading) = car(9000.0, DVec3::new(-1.5, 0.1, 1.3), 0.9, 3.0);
    let m = moving(&loading, Acceleration { ahead: 0.0, left: 0.3 * G });
    assert!((m.loading.gravity - stability::gravity_for_slopes(0.0, -0.3)).length() < 1e-12);
    assert!((m.heavier - 1.09_f64.sqrt()).abs() < 1e-12);
    let f = m.reactions(&machine, LOCKED).force;
    assert!((f.iter().sum::<f64>() - 9000.0 * G * m.heavier).abs() < 1e-6);
}
