//! Concrete and timber against hand calculations and printed tables.

use evidence::{Silent, Working};
use ground::concrete_age::{Age, Cement, beta_cc, strength_at};
use ground::section::{Rectangle, timber_capacity};
use ground::slab::{Section, control_perimeter};
use ground::timber::{Duration, Moisture, Timber, TimberUse};

#[test]
fn val_beta_cc_as_printed() {
    // Handbooks print these to two digits for 3, 7, 14 and 28 days.
    let printed = [
        (Cement::Rapid, [0.66, 0.82, 0.92, 1.0]),
        (Cement::Normal, [0.60, 0.78, 0.90, 1.0]),
        (Cement::Slow, [0.46, 0.68, 0.85, 1.0]),
    ];
    for (cement, row) in printed {
        for (days, share) in [3.0, 7.0, 14.0, 28.0].into_iter().zip(row) {
            let got = beta_cc(cement, days);
            assert!((got - share).abs() <= 0.0051, "{cement:?}, {days} days: {got}, printed {share}");
        }
    }
    // C30/37, class N, a week at 20 °C: 0.779 · 38 − 8.
    let week = Age { days: 7.0, celsius: Some(20.0) };
    let now = strength_at(30e6, Cement::Normal, Some(week), &mut Silent).unwrap().unwrap();
    assert!((now / 1e6 - 21.6).abs() < 0.05, "{now}");
}

#[test]
fn val_slab_section_by_hand() {
    // d = 150 mm, C25, 500 MPa, 10 mm bars at 150 mm: 524 mm² a metre. f_cd = 14.17 MPa, f_yd = 434.8 MPa,
    // x = 227,700/(0.8 · 14.17 · 1000) = 20.1 mm, z = 142.0 mm, M = 32.3 kN·m.
    let s = Section { depth: 0.150, concrete: 25e6, yield_strength: 500e6 };
    let mut working = Working::default();
    let moment = s.bending(523.6e-6, &mut working).unwrap();
    assert!((moment / 1e3 - 32.3).abs() < 0.05, "{moment}");
    assert_eq!(working.steps.last().unwrap().result.1.si, moment);
    // k = 2, ρ = 0.349 %: 0.12 · 2 · (8.73)^⅓ = 0.494; least 0.035 · 2.828 · 5 = 0.495 MPa.
    let shear = s.shear_stress(523.6e-6, &mut Silent).unwrap();
    assert!((shear / 1e6 - 0.495).abs() < 0.001, "{shear}");
    // d = 0.5 m, ρ = 1 %, C30: k = 1.632, 0.12 · 1.632 · 30^⅓ = 0.609 MPa.
    let thick = Section { depth: 0.5, concrete: 30e6, ..s };
    let shear = thick.shear_stress(5e-3, &mut Silent).unwrap();
    assert!((shear / 1e6 - 0.609).abs() < 0.001, "{shear}");
    // 300 × 300 mm, d = 200 mm: 4 · 300 + 4π · 200 = 3713 mm.
    let u = control_perimeter([0.3, 0.3], 0.2, [None, None]);
    assert!((u - 3.713).abs() < 5e-4, "{u}");
}

#[test]
fn val_timber_joist_by_hand() {
    // C24, 50 × 200 mm, service class 1, medium: f_m,d = 0.8 · 24/1.3 = 14.77 MPa, W = 333.3 cm³, M = 4.92 kN·m;
    // f_v,d = 2.46 MPa, V = ⅔ · 2.46 · 0.67 · 10,000 mm² = 11.0 kN.
    let c = timber_capacity(
        Rectangle { breadth: 0.05, depth: 0.2 },
        Timber::class("C24").unwrap(),
        TimberUse::solid(Moisture::Covered, Duration::Medium),
        &mut Silent,
    )
    .unwrap();
    assert!((c.moment / 1e3 - 4.92).abs() < 0.005, "{c:?}");
    assert!((c.shear / 1e3 - 11.0).abs() < 0.02, "{c:?}");
}

#[test]
fn what_is_not_known_of_concrete_has_no_strength() {
    let at = |age| strength_at(30e6, Cement::Normal, age, &mut Silent).unwrap();
    let age = |days, celsius| Some(Age { days, celsius });
    assert_eq!(at(None), None, "age");
    assert_eq!(at(age(3.0, Some(20.0))), None, "the clause asks for tests up to three days");
    assert_eq!(at(age(14.0, None)), None, "temperature");
    assert_eq!(at(age(100.0, Some(-2.0))), None, "frost");
    assert_eq!(at(age(400.0, None)), Some(30e6));
    assert_eq!(at(age(28.0, Some(20.0))), at(age(28.0, Some(30.0))), "no credit for warmth");
    assert!(at(age(14.0, Some(5.0))).unwrap() < at(age(14.0, Some(20.0))).unwrap());
    assert!(strength_at(30.0, Cement::Normal, age(-1.0, Some(f64::NAN)), &mut Silent).unwrap_err().list.len() == 3);
}
