//! Pallets on slabs.

use evidence::{Silent, Status};
use ground::beam::{Beam, End, Span};
use ground::carried::Part;
use ground::pallet_feet::{Feet, Sharing};
use ground::slab::{Section, control_perimeter, effective_width};
use ground::slab_check::{Bending, Slab};
use proptest::prelude::*;

fn slab(beam: Beam) -> Slab {
    Slab {
        beam,
        section: Some(Section { depth: 0.15, concrete: 25e6, yield_strength: 500e6 }),
        bending: Bending::Reinforced { bottom: 524e-6, top: 524e-6 },
        steel_across: 262e-6,
        own: 4.5e3,
        beside: 0.0,
        to_edges: [None, None],
    }
}

fn pallet() -> Feet {
    Feet::new((1.2, 3, 0.145), (1.0, 3, 0.1), Sharing::ByWidth).unwrap()
}

#[test]
fn a_pallet_bends_a_simple_slab_most_in_the_middle_over_its_effective_width() {
    let span = Span { length: 4.0, stiffness: 1e7 };
    let mut s = slab(Beam::equal(1, span).unwrap());
    s.own = 0.0;
    let flat = Feet::new((1.2, 1, 1.2), (1.0, 1, 1.0), Sharing::Even).unwrap();
    let all = s.under(20e3, &flat, &mut Silent).unwrap();
    let width = effective_width(1.0, 2.0, 4.0, None);
    assert!((width - 3.4).abs() < 1e-12);
    let exact = 1.5 * 20e3 / width / 4.0 * (4.0 - 0.6);
    let got = all[0];
    assert_eq!(got.part, Part::SlabSagging);
    assert!((exact..exact * 1.011).contains(&got.demand.si), "{got:?} {exact}");
    assert!(all.iter().all(|c| c.part != Part::SlabHogging), "nothing hogs");
}

#[test]
fn a_slab_whose_age_is_not_known_cannot_be_told_and_a_young_one_bears_less() {
    let beam = Beam::equal(2, Span { length: 4.0, stiffness: 1e7 }).unwrap();
    let known = slab(beam);
    let all = known.under(10e3, &pallet(), &mut Silent).unwrap();
    assert!(all.iter().all(|c| c.status() == Status::Go), "{all:?}");
    let unknown = Slab { section: None, ..known.clone() };
    for c in unknown.under(10e3, &pallet(), &mut Silent).unwrap() {
        assert_eq!(c.status(), Status::CannotTell, "{c:?}");
    }
    let section = Some(Section { depth: 0.15, concrete: 12e6, yield_strength: 500e6 });
    let young = Slab { section, ..known.clone() }.under(10e3, &pallet(), &mut Silent).unwrap();
    for (a, b) in all.iter().zip(&young) {
        assert!(b.utilisation() > a.utilisation(), "{a:?} {b:?}");
    }
    // Stated moments count by the share of strength, which is less than what the section itself keeps.
    let stated = |concrete| {
        let bending = Bending::Stated { sagging: 32e3, hogging: 32e3, full_strength: 25e6 };
        let section = Some(Section { depth: 0.15, concrete, yield_strength: 500e6 });
        Slab { section, bending, ..known.clone() }.under(10e3, &pallet(), &mut Silent).unwrap()[0].limit.unwrap().si
    };
    assert_eq!((stated(25e6), stated(12.5e6)), (32e3, 16e3));
    assert!(young[0].limit.unwrap().si > 32e3 * 12.0 / 25.0);
}

#[test]
fn a_free_edge_or_an_unknown_one_costs_punching_and_width() {
    let inside = control_perimeter([0.1, 0.1], 0.15, [None, None]);
    let edge = control_perimeter([0.1, 0.1], 0.15, [None, Some(0.1)]);
    let corner = control_perimeter([0.1, 0.1], 0.15, [Some(0.0), Some(0.0)]);
    assert!(inside > edge && edge > corner, "{inside} {edge} {corner}");
    assert_eq!(control_perimeter([0.1, 0.1], 0.15, [None, Some(10.0)]), inside, "a far edge is none");
    assert!(effective_width(1.0, 2.0, 4.0, Some(0.5)) < effective_width(1.0, 2.0, 4.0, None));
    assert_eq!(effective_width(1.0, 2.0, 4.0, Some(50.0)), effective_width(1.0, 2.0, 4.0, None));
}

#[test]
fn a_pallet_on_a_balcony_hogs() {
    let s = Span { length: 3.0, stiffness: 1e7 };
    let beam = Beam::new(End::Simple, vec![s], End::Overhang(Span { length: 1.5, stiffness: 1e7 })).unwrap();
    let all = slab(beam).under(10e3, &pallet(), &mut Silent).unwrap();
    assert!(all[1].demand.si > 1.35 * 4.5e3 * 1.5 * 1.5 / 2.0, "more than its own weight: {:?}", all[1]);
}

#[test]
fn too_much_steel_is_bounded_by_the_concrete_that_crushes() {
    let s = Section { depth: 0.15, concrete: 25e6, yield_strength: 500e6 };
    let moment = |steel| s.bending(steel, &mut Silent).unwrap();
    let most = moment(5.9e-3);
    let yielding = 5.9e-3 * 500e6 / 1.15;
    assert!(most < yielding * 0.15, "{most}");
    // Crushing at the very most over the whole depth.
    assert!(most < 0.8 * 14.2e6 * 0.15 * 0.6 * 0.15, "{most}");
}

proptest! {
    #[test]
    fn more_steel_depth_or_strength_is_never_weaker(steel in 1e-4..4e-3_f64, depth in 0.1..0.5_f64, mpa in 8.0..85.0_f64) {
        let at = |steel: f64, depth: f64, mpa: f64| {
            let s = Section { depth, concrete: mpa * 1e6, yield_strength: 500e6 };
            (s.bending(steel, &mut Silent).unwrap(), s.shear_stress(steel, &mut Silent).unwrap() * depth)
        };
        let base = at(steel, depth, mpa);
        for more in [at(steel * 1.01, depth, mpa), at(steel, depth * 1.01, mpa)] {
            prop_assert!(more.0 >= base.0 * (1.0 - 1e-12) && more.1 >= base.1 * (1.0 - 1e-12), "{base:?} {more:?}");
        }
    }
}

#[test]
fn every_fault_of_a_slab_is_told_at_once() {
    let mut s = slab(Beam::equal(1, Span { length: 4.0, stiffness: 1e7 }).unwrap());
    s.own = f64::NAN;
    s.to_edges = [Some(-1.0), None];
    let long = Feet::new((5.0, 1, 5.0), (1.0, 1, 1.0), Sharing::Even).unwrap();
    let faults = s.under(-1.0, &long, &mut Silent).unwrap_err();
    assert_eq!(faults.list.len(), 4, "{faults:?}");
    let pascals = Section { depth: 0.15, concrete: 30.0, yield_strength: 500.0 };
    let faults = pascals.bending(5e-4, &mut Silent).unwrap_err();
    assert_eq!(faults.list.len(), 2);
    assert!(faults.list.iter().all(|f| f.hint.as_ref().unwrap().id == "landing-unit-slip"));
}
