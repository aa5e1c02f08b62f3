//! Sections and loads that cannot be: every fault at once, and no number.

use crate::wedges::cut;
use evidence::Silent;
use ground::input_fault::InputFault;
use ground::slip_search::worst_slip;
use ground::slope_section::{Crack, PoreWater, SlopeLayer, Surcharge};
use ground::wedge::worst_wedge;

#[test]
fn every_fault_of_a_section_is_told_at_once() {
    let mut section = cut(0.0, -1.0, -5e3, 60.0);
    section.layers[0].unit_weight = 18.0;
    section.firm_base = Some(f64::NAN);
    section.water = PoreWater::Table(vec![[1.0, 2.0], [0.0, -1.0]]);
    section.crack = Crack { depth: 1.0, water: 2.0 };
    let loads = [Surcharge { from: -1.0, to: -2.0, pressure: f64::INFINITY }];
    let faults = worst_slip(&section, &loads, &mut Silent).unwrap_err();
    assert_eq!(worst_wedge(&section, &loads, &mut Silent).unwrap_err(), faults, "the same words for both");
    assert_eq!(faults.len(), 14, "{faults:#?}");
    assert!(faults.iter().any(|f| matches!(f, InputFault::NoNumber { .. })));
}

#[test]
fn a_unit_weight_in_another_unit_is_recognised() {
    for (given, meant) in [(18.0, 18e3), (1835.0, 1835.0 * 9.80665)] {
        let mut section = cut(2.0, 0.0, 10e3, 0.0);
        section.layers[0].unit_weight = given;
        let faults = section.faults(&[]);
        match &faults[..] {
            [InputFault::UnitWeightUnit { got, meant: m }] => {
                assert_eq!(got.si, given);
                assert!((m.si - meant).abs() < 1e-6);
            }
            other => panic!("{other:?}"),
        }
    }
    let mut section = cut(2.0, 0.0, 10e3, 0.0);
    section.layers[0].unit_weight = 0.0;
    assert!(matches!(section.faults(&[])[..], [InputFault::Range { .. }]));
}

#[test]
fn layers_go_down_and_water_stays_in_the_ground() {
    let layer = |bottom| SlopeLayer { bottom, unit_weight: 19e3, cohesion: 5e3, friction: 0.4 };
    let mut section = cut(2.0, 1.0, 0.0, 0.0);
    section.layers = vec![layer(1.0), layer(0.5), layer(0.0)];
    assert_eq!(section.faults(&[]).len(), 1);
    section.layers = vec![layer(0.5), layer(1.0), layer(0.0)];
    assert!(section.faults(&[]).is_empty());
    section.water = PoreWater::Table(vec![[-3.0, -1.0], [1.0, -1.0]]);
    assert_eq!(section.faults(&[]).len(), 1, "over the base");
    section.water = PoreWater::Table(vec![[-0.5, -1.0], [1.0, -0.5]]);
    assert!(section.faults(&[]).is_empty(), "in the face");
    section.layers.clear();
    assert!(!section.faults(&[]).is_empty());
}

#[test]
fn every_fault_has_its_message() {
    let mut section = cut(0.0, 0.0, 1.0, 0.0);
    section.layers[0].unit_weight = 18.0;
    section.crack = Crack { depth: 1.0, water: f64::NAN };
    let ids: Vec<String> = section.faults(&[]).iter().map(|f| f.message().id.to_string()).collect();
    assert_eq!(ids, ["ground-fault-range", "ground-fault-unit-weight", "ground-fault-order", "ground-fault-no-number"]);
}
