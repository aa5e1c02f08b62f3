//! Plane wedges against closed forms and against trying many angles.

use evidence::{Silent, Working};
use ground::slope_section::{Crack, PoreWater, SlopeLayer, SlopeSection, Surcharge, WATER};
use ground::wedge::{Wedge, crack_depth, worst_wedge};

pub(crate) fn cut(depth: f64, batter: f64, cohesion: f64, friction_degrees: f64) -> SlopeSection {
    SlopeSection {
        depth,
        batter,
        layers: vec![SlopeLayer { bottom: 0.0, unit_weight: 18e3, cohesion, friction: friction_degrees.to_radians() }],
        firm_base: None,
        water: PoreWater::Dry,
        crack: Crack::default(),
    }
}

fn worst(section: &SlopeSection, loads: &[Surcharge]) -> Wedge {
    worst_wedge(section, loads, &mut Silent).unwrap()
}

#[test]
fn val_vertical_cut_stands_to_4_c_over_gamma_and_cracked_to_two_thirds_of_it() {
    let (c, gamma) = (20e3, 18e3);
    let whole = worst(&cut(4.0 * c / gamma, 0.0, c, 0.0), &[]);
    assert!((whole.factor - 1.0).abs() < 1e-9, "{}", whole.factor);
    assert!((whole.angle.to_degrees() - 45.0).abs() < 1e-4);
    let depth = 8.0 / 3.0 * c / gamma;
    let cracked = SlopeSection { crack: Crack { depth: depth / 2.0, water: 0.0 }, ..cut(depth, 0.0, c, 0.0) };
    assert!((worst(&cracked, &[]).factor - 1.0).abs() < 1e-9);
    // With friction: 4c/γ · tan(45° + φ/2), Rankine.
    let phi = 25f64.to_radians();
    let high = 4.0 * c / gamma * (std::f64::consts::FRAC_PI_4 + phi / 2.0).tan();
    let drained = worst(&cut(high, 0.0, c, 25.0), &[]);
    assert!((drained.factor - 1.0).abs() < 1e-6, "{}", drained.factor);
}

/// Factor of one plane by the words of the formula, strip by strip.
fn by_hand(section: &SlopeSection, loads: &[Surcharge], exit: f64, t: f64) -> f64 {
    let crack = section.crack.before(exit);
    let (h, z) = (exit, crack.depth);
    let b = section.batter * h / section.depth;
    let angle = (1.0 / t).atan();
    let soil = section.layers[0];
    let back = (h - z) * t - b;
    let q: f64 = loads.iter().map(|s| s.pressure * (back.min(s.to) - s.from).max(0.0)).sum();
    let w = 0.5 * soil.unit_weight * ((h * h - z * z) * t - h * b) + q;
    let v = 0.5 * WATER * crack.water * crack.water;
    let mut u = 0.0;
    let length = (h - z) / angle.sin();
    if let PoreWater::Table(points) = &section.water {
        let n = 400;
        for i in 0..n {
            let up = (f64::from(i) + 0.5) / f64::from(n) * (h - z);
            u += WATER * (points[0][1] + h - up).max(0.0) * length / f64::from(n);
        }
    }
    u = u.max(0.5 * WATER * crack.water * length);
    (soil.cohesion * length + (w * angle.cos() - u - v * angle.sin()) * soil.friction.tan())
        / (w * angle.sin() + v * angle.cos())
}

#[test]
fn no_angle_and_no_exit_among_many_is_worse_than_the_one_found() {
    let mut cases = 0;
    for (i, batter) in [0.0, 0.6, 2.0].into_iter().enumerate() {
        for (j, from) in [0.3, 1.0, 2.5].into_iter().enumerate() {
            for water in [0.0, 0.4] {
                for phi in [0.0, 22.0, 38.0] {
                    let mut section = cut(2.6, batter, 6e3 + 3e3 * (i + j) as f64, phi);
                    section.crack = Crack { depth: water, water };
                    if water > 0.0 {
                        section.water = PoreWater::Table(vec![[0.0, -1.6]]);
                    }
                    let strip = Surcharge { from, to: from + 0.4, pressure: 60e3 };
                    let loads = [strip, Surcharge { from: from + 1.6, to: from + 2.0, pressure: 30e3 }];
                    // Water above a face that leans back stands in the air: not that case.
                    if water > 0.0 && batter > 0.0 {
                        section.water = PoreWater::Dry;
                    }
                    let found = worst(&section, &loads);
                    let mut least = f64::INFINITY;
                    for k in 1..=40 {
                        let exit = 2.6 * f64::from(k) / 40.0;
                        let first = batter * exit / 2.6 / (exit - section.crack.before(exit).depth);
                        for a in 1..1500 {
                            let t = first + 5.0 * (f64::from(a) / 1500.0).powi(2);
                            least = least.min(by_hand(&section, &loads, exit, t).max(0.0));
                        }
                    }
                    let name = format!("batter {batter} from {from} water {water} phi {phi}");
                    assert!(found.factor <= least * 1.002, "{name}: {} against {least}", found.factor);
                    let t = 1.0 / found.angle.tan();
                    let own = by_hand(&section, &loads, found.exit, t).max(0.0);
                    assert!((found.factor - own).abs() < 1e-3 * own.max(0.1), "{name}: {} or {own}", found.factor);
                    cases += 1;
                }
            }
        }
    }
    assert_eq!(cases, 54);
}

#[test]
fn a_wheel_near_the_crest_breaks_off_less_than_the_whole_face() {
    let section = cut(5.0, 0.0, 25e3, 0.0);
    let near = worst(&section, &[Surcharge { from: 0.1, to: 0.5, pressure: 200e3 }]);
    assert!(near.exit < 4.0, "{near:?}");
    let far = worst(&section, &[Surcharge { from: 30.0, to: 30.4, pressure: 200e3 }]);
    let none = worst(&section, &[]);
    assert_eq!(far.factor, none.factor, "out of its reach");
    assert!(near.factor < none.factor);
}

#[test]
fn sand_does_not_stand_upright_and_water_makes_everything_worse() {
    assert!(worst(&cut(2.0, 0.0, 0.0, 35.0), &[]).factor < 1e-4);
    let dry = worst(&cut(2.5, 0.0, 12e3, 28.0), &[]).factor;
    let mut wet = cut(2.5, 0.0, 12e3, 28.0);
    wet.water = PoreWater::Table(vec![[0.0, -1.0]]);
    let wet_factor = worst(&wet, &[]).factor;
    wet.crack = Crack { depth: 1.0, water: 1.0 };
    assert!(wet_factor < dry && worst(&wet, &[]).factor < wet_factor);
    wet.water = PoreWater::Ratio(0.3);
    assert!(worst(&wet, &[]).factor < dry);
}

#[test]
fn cracks_are_as_deep_as_rankine_says_and_never_beyond_the_half() {
    assert!((crack_depth(18e3, 9e3, 0.0, 10.0) - 1.0).abs() < 1e-12);
    assert_eq!(crack_depth(18e3, 90e3, 0.0, 3.0), 1.5);
}

#[test]
fn the_working_ends_in_the_factor() {
    let mut working = Working::default();
    let w = worst_wedge(&cut(3.0, 0.5, 10e3, 20.0), &[], &mut working).unwrap();
    assert_eq!(working.steps[0].result.1.si, w.factor);
}

/// Everything that the printed formula needs is among the printed values.
#[test]
fn the_working_of_a_wedge_can_be_reckoned_again_from_what_it_prints() {
    let mut section = cut(3.0, 0.5, 14e3, 25.0);
    section.crack = Crack { depth: 0.9, water: 0.7 };
    section.water = PoreWater::Table(vec![[0.0, -2.4]]);
    let loads = [Surcharge { from: 0.4, to: 0.8, pressure: 60e3 }];
    let mut working = Working::default();
    let w = worst_wedge(&section, &loads, &mut working).unwrap();
    let v = |name: &str| working.steps[0].values.iter().find(|(n, _)| n == name).unwrap().1.si;
    let (sin, cos) = v("θ").sin_cos();
    let held = v("c") * v("A") + ((v("W") + v("Q")) * cos - v("U") - v("V") * sin) * v("φ").tan();
    let again = held / ((v("W") + v("Q")) * sin + v("V") * cos);
    assert!((again / w.factor - 1.0).abs() < 1e-9, "{again} {w:?}");
    assert!((v("V") - 0.5 * 9810.0 * v("z_w").powi(2)).abs() < 1e-6 && v("U") > 0.0 && v("V") > 0.0);
    assert!((v("A") - (v("h") - v("z")) / sin).abs() < 1e-9);
    assert_eq!([v("x_1"), v("x'_1"), v("q_1")], [0.4, 0.8, 60e3]);
}
