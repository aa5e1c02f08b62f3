//! Mats: what must hold whatever their size.

use evidence::{Silent, Source, Working};
use ground::Refusal;
use ground::mat_material::{MatMaterial, Spreads, TimberClass};
use ground::mats::{Mat, MatLimit, PadOnMat, stacked};
use ground::needed_mat::{least_thickness, smallest_square};
use ground::settlement::{PressedPad, head_moves, settlements};
use ground::{GroundState, Layer, Profile, Stated, Stiffness};
use proptest::prelude::*;

fn oak(size: [f64; 2], thickness: f64) -> Mat {
    Mat { size, thickness, material: MatMaterial::timber(TimberClass::D40) }
}

fn plate(side: f64, thickness: f64) -> Mat {
    Mat { size: [side, side], thickness, material: MatMaterial::steel_plate(235e6).unwrap() }
}

fn pad(side: f64, force: f64) -> PadOnMat {
    PadOnMat { pad: [side, side], offset: [0.0; 2], force }
}

#[test]
fn a_thick_mat_works_whole_and_a_thin_one_near_the_pad() {
    let on = pad(0.4, 60e3);
    let thick = oak([1.0, 0.4], 0.15).under(&on, &mut Silent).unwrap();
    assert_eq!((thick.limit, thick.works), (MatLimit::Size, [1.0, 0.4]));
    assert!((thick.pressure - 150e3).abs() < 1e-6);
    // By hand: c 0.3 m, m = 150 kPa·0.3²/2 = 6.75 kN·m/m, σ = 6·m/t² = 1.8 MPa, τ = 1.5·150·0.3/0.15 = 450 kPa.
    assert!((thick.moment - 6750.0).abs() < 1e-6 && (thick.bending - 1.8e6).abs() < 1.0);
    assert!((thick.shear - 450e3).abs() < 1e-3);
    let thin = oak([1.0, 0.4], 0.03).under(&on, &mut Silent).unwrap();
    assert_ne!(thin.limit, MatLimit::Size);
    assert!(thin.works[0] < 1.0 && thin.pressure > thick.pressure);
    // Planks beside the pad do nothing.
    let wide = oak([1.0, 2.0], 0.15).under(&on, &mut Silent).unwrap();
    assert_eq!(wide.works, [1.0, 0.4]);
}

#[test]
fn a_load_off_the_mat_is_refused_and_one_off_its_middle_costs_twice() {
    let off = |x: f64| oak([1.0, 1.0], 0.2).under(&PadOnMat { offset: [x, 0.0], ..pad(0.4, 60e3) }, &mut Silent);
    assert_eq!(off(0.2).unwrap().works[0], 0.6);
    assert_eq!(off(0.31), Err(Refusal::OffMat));
    assert_eq!(off(f64::NAN), Err(Refusal::NoNumber));
}

#[test]
fn stacked_mats_spread_both_ways() {
    let mats = [oak([1.2, 1.2], 0.15), oak([1.2, 1.2], 0.15)];
    let on = pad(0.4, 80e3);
    let answers = stacked(&mats, &on, &mut Silent).unwrap();
    assert_eq!(answers.len(), 2);
    assert!(answers[1].pressure < 0.5 * answers[0].pressure, "{answers:?}");
    assert_eq!(stacked(&[], &on, &mut Silent), Err(Refusal::NoNumber));
}

#[test]
fn the_smallest_square_works_and_the_next_smaller_does_not() {
    let material = MatMaterial::steel_plate(355e6).unwrap();
    let ground = |_: [f64; 2]| Ok(100e3);
    let find =
        |largest, trace: &mut Working| smallest_square([0.4, 0.4], 90e3, 0.06, &material, largest, ground, trace);
    let mut working = Working::default();
    let (mat, answer) = find(3.0, &mut working).unwrap();
    assert!(answer.pressure <= 100e3 && answer.bending <= material.bending && answer.shear <= material.shear);
    assert_eq!(working.steps.last().unwrap().result.1.si, mat.size[0]);
    let smaller = Mat { size: mat.size.map(|s| s - 0.05), ..mat.clone() };
    assert!(smaller.under(&pad(0.4, 90e3), &mut Silent).unwrap().pressure > 100e3);
    assert_eq!(find(0.6, &mut Working::default()), Err(Refusal::NoMat { side: 0.6 }));
    // A thinner mat of that size does not.
    let (least, _) = least_thickness(&pad(0.4, 90e3), mat.size, &material, 0.06, 100e3).unwrap();
    assert!(least.thickness <= 0.06);
    let thinner = Mat { thickness: least.thickness - 0.005, ..least };
    assert!(thinner.under(&pad(0.4, 90e3), &mut Silent).unwrap().pressure > 100e3);
}

#[test]
fn a_declared_mat_takes_its_values_from_who_declares_them() {
    let source = Source::Person { name: "A. Sample".into(), statement: "tested".into() };
    let m = MatMaterial::declared([40e6, 6e6, 1.2e9], 2.0, Spreads::BothWays, source.clone()).unwrap();
    let mut working = Working::default();
    Mat { size: [1.0, 1.0], thickness: 0.05, material: m }.under(&pad(0.3, 40e3), &mut working).unwrap();
    assert!(working.steps.iter().any(|s| s.source == source));
}

proptest! {
    #[test]
    fn a_thicker_or_larger_mat_never_presses_harder(
        side in 0.5..3.0_f64, t in 0.02..0.3_f64, force in 1e4..3e5_f64, more in 1.0..1.5_f64, steel in any::<bool>(),
    ) {
        let mat = |side: f64, t: f64| if steel { plate(side, t) } else { oak([side, side], t) };
        let press = |m: Mat| m.under(&pad(0.4, force), &mut Silent).unwrap();
        let one = press(mat(side, t));
        for other in [press(mat(side, t * more)), press(mat(side * more, t))] {
            prop_assert!(other.pressure <= one.pressure * (1.0 + 1e-9), "{one:?} {other:?}");
        }
        let m = if steel { plate(side, t) } else { oak([side, side], t) };
        let sound = one.bending <= m.material.bending * (1.0 + 1e-9) && one.shear <= m.material.shear * (1.0 + 1e-9);
        prop_assert!(sound, "{one:?}");
    }
}

fn clay(modulus: Option<f64>) -> Profile {
    let stiffness = modulus.map(|modulus| Stiffness { modulus, poisson: 0.4 });
    let layer = |top: f64, thickness: f64| Layer {
        top,
        thickness,
        unit_weight: 18e3,
        stated: Stated { undrained: Some(50e3), drained: None },
        stiffness,
    };
    Profile { layers: vec![layer(0.0, 1.0), layer(1.0, 9.0)], water: None, state: GroundState::AsStated }
}

#[test]
fn a_harder_pressed_pad_settles_more_and_a_neighbour_adds() {
    let at = |x: f64, pressure: f64| PressedPad { at: [x, 0.0], sides: [0.6, 0.6], pressure };
    let ask = |pads: &[PressedPad]| settlements(pads, &clay(Some(8e6)), &mut Silent).unwrap();
    let both = ask(&[at(0.0, 150e3), at(2.4, 80e3)]);
    let alone = ask(&[at(0.0, 150e3)])[0];
    assert!(both[0] > alone && both[0] > both[1] && both[1] > ask(&[at(2.4, 80e3)])[0]);
    let mut working = Working::default();
    let (tilt, moves) = head_moves([both[0], both[1]], 2.4, 14.0, &mut working).unwrap();
    assert!((moves - 14.0 * (both[0] - both[1]) / 2.4).abs() < 1e-3 * moves && tilt > 0.0);
    assert_eq!(working.steps.last().unwrap().result.1.si, moves);
    // Two layers of one stiffness are one.
    let one = Profile { layers: vec![Layer { thickness: 10.0, ..clay(Some(8e6)).layers[0] }], ..clay(None) };
    let s = settlements(&[at(0.0, 150e3)], &one, &mut Silent).unwrap()[0];
    assert!((s - alone).abs() < 1e-12);
    assert_eq!(settlements(&[at(0.0, 1.0)], &clay(None), &mut Silent), Err(Refusal::NoStiffness));
    assert_eq!(head_moves([f64::NAN, 0.0], 2.0, 1.0, &mut Silent), Err(Refusal::NoNumber));
}
