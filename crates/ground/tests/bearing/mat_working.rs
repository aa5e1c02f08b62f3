//! What a mat's working prints gives by hand what it prints.

use evidence::{Source, Step, Working};
use ground::FactorSet;
use ground::mat_material::{MatMaterial, Spreads, TimberClass};
use ground::mats::{Mat, PadOnMat};

fn value(step: &Step, symbol: &str) -> f64 {
    step.values.iter().find(|v| v.0 == symbol).map_or(f64::NAN, |v| v.1.si)
}

fn near(a: f64, b: f64) -> bool {
    (a - b).abs() <= 1e-9 * b.abs()
}

/// Plates, pads longer one way than the other, off the middle, so that corners are cut off.
#[test]
fn stresses_follow_from_the_printed_numbers() {
    let steel = FactorSet::Global(2.0).on_mat(&MatMaterial::steel_plate(235e6).unwrap());
    let oak = FactorSet::Da2.on_mat(&MatMaterial::timber(TimberClass::D40));
    let mut cut = 0;
    for (material, thickness) in [(steel, 0.03), (oak, 0.15)] {
        for pad in [[0.3, 0.6], [0.6, 0.3], [0.4, 0.4]] {
            for offset in [[0.0; 2], [0.25, 0.0], [0.0, 0.25]] {
                let mat = Mat { size: [1.5, 1.2], thickness, material: material.clone() };
                let mut working = Working::default();
                let answer = mat.under(&PadOnMat { pad, offset, force: 90e3 }, &mut working).unwrap();
                let of = |symbol: &str| working.steps.iter().find(|s| s.result.0 == symbol).unwrap();
                let (bending, shear) = (of("σ"), of("τ"));
                let plate = material.spreads == Spreads::BothWays;
                let [p, c, t] = ["p", "c", "t"].map(|s| value(bending, s));
                let (k, a) = if plate { (value(bending, "k"), value(bending, "a")) } else { (0.0, 1.0) };
                let m_1 = p * (c * c / 2.0 + 2.0 * k * c * c / (3.0 * a));
                assert!(near(m_1, value(bending, "M_1")) && near(6.0 * m_1 / (t * t), bending.result.1.si));
                assert!(near(bending.result.1.si, answer.bending));
                let [p, c, t] = ["p", "c", "t"].map(|s| value(shear, s));
                let (k, a) = if plate { (value(shear, "k"), value(shear, "a")) } else { (0.0, 1.0) };
                assert!(near(1.5 * p * (c + k * c / a) / t, answer.shear) && near(shear.result.1.si, answer.shear));
                cut += usize::from(k > 0.0 && k < c * (1.0 - 1e-9));
                let stiff = working.steps.iter().find(|s| s.result.0 == "c_s");
                if let Some(s) = stiff {
                    let p_s = value(s, "F") / (value(s, "L_s") * value(s, "B_s"));
                    let gives = p_s * s.result.1.si.powi(3) / (8.0 * value(s, "E") * value(s, "t").powi(3) / 12.0);
                    assert!((gives / value(s, "g") - 1.0).abs() < 1e-6, "{gives}");
                }
            }
        }
    }
    assert!(cut > 0, "corners were cut off");
}

/// Each factor of the strengths is printed, that on the force among them where the set leaves the force as it is.
#[test]
fn strengths_follow_from_the_printed_factors() {
    let source = Source::Person { name: "A. Sample".into(), statement: "tested".into() };
    let timber = MatMaterial::timber(TimberClass::C24);
    let steel = MatMaterial::steel_plate(355e6).unwrap();
    let declared = MatMaterial::declared([40e6, 6e6, 9e9], 2.0, Spreads::BothWays, source).unwrap();
    for (set, factor) in [(FactorSet::Global(2.0), 1.5), (FactorSet::Da1Combination1, 1.0), (FactorSet::Da3, 1.0)] {
        let strengths = |material: &MatMaterial| {
            let material = set.on_mat(&set.on_mat(material));
            let mut working = Working::default();
            let pad = PadOnMat { pad: [0.4; 2], offset: [0.0; 2], force: 40e3 };
            let mat = Mat { size: [1.0; 2], thickness: 0.1, material: material.clone() };
            mat.under(&pad, &mut working).unwrap();
            let of = |symbol: &str| working.steps.iter().find(|s| s.result.0 == symbol).unwrap().clone();
            let (f_m, f_v) = (of("f_m"), of("f_v"));
            assert_eq!((f_m.result.1.si, f_v.result.1.si), (material.bending, material.shear));
            assert_eq!((value(&f_m, "γ_F"), value(&f_v, "γ_F")), (factor, factor), "{set:?}");
            (f_m, f_v)
        };
        let (m, v) = strengths(&timber);
        let by_hand = value(&m, "k_mod") * value(&m, "f_mk") / (value(&m, "γ_M") * factor);
        assert!(near(by_hand, m.result.1.si) && near(by_hand, 0.7 * 24e6 / 1.3 / factor));
        let by_hand = value(&v, "k_mod") * value(&v, "k_cr") * value(&v, "f_vk") / (value(&v, "γ_M") * factor);
        assert!(near(by_hand, v.result.1.si));
        let (m, v) = strengths(&steel);
        assert!(near(value(&m, "f_y") / factor, m.result.1.si));
        assert!(near(value(&v, "f_y") / (3.0_f64.sqrt() * factor), v.result.1.si));
        let (m, v) = strengths(&declared);
        assert!(near(value(&m, "f_mk") / (value(&m, "γ_M") * factor), m.result.1.si));
        assert!(near(value(&v, "f_vk") / (value(&v, "γ_M") * factor), v.result.1.si));
    }
}
