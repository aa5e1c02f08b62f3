//! Worked examples of textbooks and a handbook, as `../shared/reference/worked-examples.md` lists them with their sources and
//! recomputes them. Tolerances: half a unit of the last digit printed, where factors are not rounded there; else said.

use crate::cases::{STRIP, buried, by, drained, load, rectangle, undrained};
use evidence::Silent;
use ground::two_layer::{Sides, TWO_TO_ONE, TwoLayers};
use ground::{BearingCase, Method, Prandtl, TerzaghiFactors, water_factors};

const LB: f64 = 4.448_221_615_260_5;
const FT: f64 = 0.3048;
const PCF: f64 = LB / (FT * FT * FT);

/// W01, FHWA-SA-02-054, appendix B, example 1: water at 9.1 m. No depth factor there, and the allowable pressure is printed
/// with factors rounded to two digits: 1106, 1242, 1369 kPa; unrounded 3 in 1000 more.
#[test]
fn val_w01_square_footing_with_water() {
    for (b, printed) in [(3.0, 1106.0), (4.6, 1242.0), (6.1, 1369.0)] {
        let (weight, beside) = water_factors(9.1, 6.0, 2.3);
        assert!((weight - 0.9027).abs() < 5e-5 && beside == 1.0);
        let case = BearingCase { credited_depth: 0.0, ..buried(rectangle(b, b), 2.3, 19.6e3, drained(0.0, 35.0)) };
        let case = BearingCase { unit_weight: weight * case.unit_weight, ..case };
        let allowable = by(&case, Method::Vesic).unwrap().ultimate / 3.0 / 1e3;
        assert!((allowable / printed - 1.0).abs() < 3e-3, "{b}: {allowable}");
    }
}

/// W03, the same, step 10: effective sides 4.45 and 4.37 m.
#[test]
fn val_w03_effective_sides() {
    let at = load(8070e3, [0.0; 2], [620.0 / 8070.0, 944.5 / 8070.0]);
    let e = rectangle(4.6, 4.6).effective(&at).unwrap();
    assert!((e.length - 4.446).abs() < 5e-4 && (e.width - 4.366).abs() < 5e-4, "{e:?}");
}

/// W04, Gunaratne 2006: 1574.8 kPa.
#[test]
fn val_w04_square_footing_on_dry_sand() {
    let q = by(&buried(rectangle(2.0, 2.0), 1.0, 17e3, drained(0.0, 35.0)), Method::Vesic).unwrap().ultimate;
    assert!((q - 1574.8e3).abs() < 60.0, "{q}");
}

/// W05, Gunaratne 2006, Terzaghi: 515 kPa with `N_γ` 2.168 of a third table; of it 0.4·γ·B·N_γ is 29.5 kPa, which the lower
/// of our tables makes less.
#[test]
fn val_w05_square_footing_by_terzaghi() {
    let case = buried(rectangle(2.0, 2.0), 2.0, 17e3, drained(20e3, 15.0));
    let got = by(&case, Method::Terzaghi).unwrap();
    let other_table = got.ultimate - got.terms[2] + 0.4 * 17e3 * 2.0 * 2.168;
    assert!((other_table - 515.0e3).abs() < 150.0, "{other_table}");
    assert!(got.ultimate < other_table);
}

/// W06, Smith, Example 8.3: 182.43 kPa; a third of the net and the overburden: 74.14 kPa.
#[test]
fn val_w06_rectangle_on_clay() {
    let case = buried(rectangle(2.0, 4.0), 1.0, 20e3, undrained(24e3));
    // The book takes N_c 5.14 and N_q/N_c for the shape, which is Vesić's.
    let q = by(&case, Method::Vesic).unwrap().ultimate;
    assert!((q - 182.43e3).abs() < 80.0, "{q}");
    let safe = (q - 20e3) / 3.0 + 20e3;
    assert!((safe - 74.14e3).abs() < 30.0, "{safe}");
}

/// W07, the same drained: 477.86 kPa.
#[test]
fn val_w07_rectangle_drained() {
    let case = buried(rectangle(2.0, 4.0), 1.0, 20e3, drained(0.0, 25.0));
    let q = by(&case, Method::Vesic).unwrap().ultimate;
    assert!((q - 477.86e3).abs() < 10.0, "{q}");
}

/// W08, Das, Example 3.1: 67,269 lb with a factor of 4. `N_c` 17.69, `N_q` 7.44, `N_γ` 3.64 are rounded there.
#[test]
fn val_w08_square_footing_by_terzaghi_us_units() {
    let c = 320.0 * LB / (FT * FT);
    let case = buried(rectangle(5.0 * FT, 5.0 * FT), 3.0 * FT, 115.0 * PCF, drained(c, 20.0));
    let r = by(&case, Method::Terzaghi).unwrap().resistance / 4.0 / LB;
    assert!((r - 67_269.0).abs() < 20.0, "{r}");
    assert!((TerzaghiFactors::of(&Prandtl::of(20.0_f64.to_radians())).unwrap().n_gamma - 3.64).abs() < 1e-9);
}

/// W09, Das, Example 3.4: 151,738 lb on a foot of strip, force 0.5 ft off the middle.
#[test]
fn val_w09_strip_with_force_off_the_middle() {
    let case = BearingCase {
        load: load(1.0, [0.0; 2], [0.5 * FT, 0.0]),
        ..buried(rectangle(6.0 * FT, STRIP), 4.0 * FT, 110.0 * PCF, drained(0.0, 35.0))
    };
    let r = by(&case, Method::Vesic).unwrap();
    assert!((r.effective.width - 5.0 * FT).abs() < 1e-12);
    let per_foot = r.resistance * FT / LB;
    assert!((per_foot / 151_738.0 - 1.0).abs() < 5e-4, "{per_foot}");
}

/// W10, a calculation sheet after EN 1997-1, annex D: 94.9 kPa; the printed factors are rounded.
#[test]
fn val_w10_en_1997_inclined_and_off_the_middle() {
    let case = BearingCase {
        load: load(200e3, [60e3, 30e3], [30.0 / 200.0, 88.0 / 200.0]),
        ..buried(rectangle(1.0, 6.0), 0.75, 10e3, drained(0.0, 30.0))
    };
    let got = by(&case, Method::En1997).unwrap();
    assert!((got.effective.exponent() - 1.728).abs() < 5e-4);
    assert!((got.ultimate - 94.9e3).abs() < 50.0, "{}", got.ultimate);
}

fn two_layers(upper: BearingCase, thickness: f64, depth: f64, lower: f64, sides: Sides) -> TwoLayers {
    TwoLayers {
        upper,
        thickness,
        base_depth: depth,
        base_stress: upper.overburden,
        between: upper.unit_weight * thickness,
        lower: undrained(lower),
        lower_weight: upper.unit_weight,
        spread: TWO_TO_ONE,
        sides,
    }
}

/// W11, Das, Example 4.4: punching 656.4 kPa, the upper layer alone 715.84 kPa; 246.2 kN with a factor of 4.
#[test]
fn val_w11_stiff_clay_over_soft_clay() {
    let upper = BearingCase { credited_depth: 0.0, ..buried(rectangle(1.0, 1.5), 1.0, 16.8e3, undrained(120e3)) };
    let alone = by(&upper, Method::En1997).unwrap().ultimate;
    assert!((alone - 715.84e3).abs() < 300.0, "N_c 5.14 there: {alone}");
    let got = two_layers(upper, 1.0, 1.0, 48e3, Sides::Adhesion(108e3)).bearing(&mut Silent).unwrap();
    let punching = got.punching.unwrap();
    assert!((punching - 656.4e3).abs() < 200.0, "{punching}");
    assert!((punching * 1.5 / 4.0 - 246.2e3).abs() < 100.0);
    // Not stated, the sides carry less; load spread and authors may be lower still, and the least counts.
    let careful = two_layers(upper, 1.0, 1.0, 48e3, Sides::NotStated).bearing(&mut Silent).unwrap();
    assert!(careful.punching.unwrap() < punching && got.ultimate <= punching);
}

/// W12, Das, Example 4.3: 565.2 kN on a metre of strip. The companion prints 575.66, with the layer's thickness where the
/// depth of the base belongs; 282.6 kPa on 2 m.
#[test]
fn val_w12_dense_sand_over_soft_clay() {
    let sand = buried(rectangle(2.0, STRIP), 1.2, 17.5e3, drained(0.0, 40.0));
    let got = two_layers(sand, 1.5, 1.2, 30e3, Sides::Coefficient(2.5)).bearing(&mut Silent).unwrap();
    let punching = got.punching.unwrap();
    // The book works out 5.14·c + … = 282.6 kPa and prints it on a width of 2 m.
    assert!((punching * 2.0 - 565.2e3).abs() < 200.0, "{punching}");
    assert!(got.ultimate <= punching);
}
