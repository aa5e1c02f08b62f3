//! Stress and deflection of buried things.

use evidence::{Silent, Working};
use ground::buried::{
    Buried, BuriedCondition as C, BuriedKind, FlexiblePipe, buried_stress, impact_by_cover, iowa_deflection,
};
use ground::cover::Cover;
use ground::stress::{Patch, patches_stress};

fn pipe() -> FlexiblePipe {
    FlexiblePipe { radius: 0.15, wall: 2000.0, soil: 3e6, bedding: 0.1, lag: 1.5, allowable: Some(0.05) }
}

fn thing(kind: BuriedKind) -> Buried {
    Buried {
        kind,
        crown: [[-10.0, 0.4], [10.0, 0.4]],
        half_breadth: 0.15,
        cover: Some([1.2, 1.2]),
        soils: vec![Cover::even(19e3)],
        allowable: Some(120e3),
        recent_backfill: false,
        voids_possible: false,
    }
}

fn wheels(force: f64) -> Vec<Patch> {
    [[0.0, 0.9], [0.0, -0.9], [-2.8, 0.9], [-2.8, -0.9]]
        .map(|middle| Patch { middle, size: [0.35, 0.4], heading: 0.0, force })
        .into()
}

#[test]
fn the_worst_place_of_the_crown_is_found_and_everything_adds_up() {
    let (t, w) = (thing(BuriedKind::Rigid), wheels(50e3));
    let mut working = Working::default();
    let found = buried_stress(&t, &w, &mut working).unwrap();
    let s = found.stress.unwrap();
    assert!(found.conditions.is_empty());
    assert!((s.soil - 22.8e3).abs() < 1e-6);
    assert!((s.total - (1.0 + s.impact) * s.elastic.max(s.spread) - s.soil).abs() < 1e-6);
    assert!((found.reserve.unwrap() - (1.0 - s.total / 120e3)).abs() < 1e-12);
    assert_eq!(working.steps.last().unwrap().result.1.si, s.total);
    let mut most = 0.0_f64;
    for i in 0..4000 {
        for o in [0.25, 0.4, 0.55] {
            let at = [-10.0 + 0.005 * f64::from(i), o];
            most = most.max(patches_stress(&w, at, 1.2, &mut Silent).larger());
        }
    }
    assert!(s.elastic.max(s.spread) >= most * 0.9999, "{} {most}", s.elastic.max(s.spread));
}

#[test]
fn unknown_things_are_conditions_and_never_a_pass() {
    let mut t = thing(BuriedKind::Unknown);
    t.allowable = None;
    t.recent_backfill = true;
    t.voids_possible = true;
    let found = buried_stress(&t, &wheels(1e3), &mut Silent).unwrap();
    assert_eq!(found.conditions, [C::Kind, C::Allowable, C::RecentBackfill, C::Voids]);
    assert!(found.reserve.is_none() && found.stress.is_some());
    t.cover = None;
    let found = buried_stress(&t, &wheels(1e3), &mut Silent).unwrap();
    assert!(found.stress.is_none() && found.reserve.is_none() && found.conditions.contains(&C::Cover));
    let soft = BuriedKind::Flexible(FlexiblePipe { allowable: None, ..pipe() });
    let found = buried_stress(&thing(soft), &wheels(1e3), &mut Silent).unwrap();
    assert_eq!(found.conditions, [C::Deflection]);
}

#[test]
fn impact_dies_out_at_eight_feet() {
    assert_eq!(impact_by_cover(0.0), 0.33);
    assert!((impact_by_cover(1.2192) - 0.165).abs() < 1e-12, "half at 4 ft");
    assert_eq!(impact_by_cover(2.4384), 0.0);
    assert_eq!(impact_by_cover(9.0), 0.0);
    assert!(impact_by_cover(f64::NAN).is_nan());
}

#[test]
fn a_flexible_pipe_is_held_by_its_soil_and_the_lesser_reserve_counts() {
    // By hand: 0.1·(1.5·20 + 50) kPa / (2000/0.15³ + 0.061·3 MPa).
    let by_hand = 0.1 * 80e3 / (2000.0 / 0.003_375 + 183e3);
    assert!((iowa_deflection(&pipe(), 20e3, 50e3) / by_hand - 1.0).abs() < 1e-12);
    let soft = FlexiblePipe { wall: 1.0, soil: 0.5e6, ..pipe() };
    let found = buried_stress(&thing(BuriedKind::Flexible(soft)), &wheels(50e3), &mut Silent).unwrap();
    let d = found.deflection.unwrap();
    assert!(d > 0.05 && (found.reserve.unwrap() - (1.0 - d / 0.05)).abs() < 1e-12);
    let stiff = buried_stress(&thing(BuriedKind::Flexible(pipe())), &wheels(50e3), &mut Silent).unwrap();
    let s = stiff.stress.unwrap();
    assert!(
        (stiff.reserve.unwrap() - (1.0 - s.total / 120e3).min(1.0 - stiff.deflection.unwrap() / 0.05)).abs() < 1e-12
    );
}

#[test]
fn every_fault_at_once() {
    let mut t = thing(BuriedKind::Flexible(FlexiblePipe { radius: 0.0, bedding: 1.0, ..pipe() }));
    t.cover = Some([-1.0, -1.0]);
    t.soils = vec![Cover::even(19.0)];
    t.allowable = Some(f64::NAN);
    let bad = Patch { middle: [0.0, f64::NAN], size: [0.0, 0.3], heading: 0.0, force: f64::INFINITY };
    let faults = buried_stress(&t, &[bad], &mut Silent).unwrap_err();
    assert_eq!(faults.len(), 8, "{faults:#?}");
    assert_eq!(buried_stress(&thing(BuriedKind::Rigid), &[], &mut Silent).unwrap_err().len(), 1);
}

/// Beside a wheel the stress rises with depth before it falls, and the cover's weight always rises: the greatest over a range is found
/// wherever in it it lies.
#[test]
fn the_worst_depth_within_the_range_of_a_cover_is_found() {
    let beside = Buried { crown: [[-10.0, 1.9], [10.0, 1.9]], ..thing(BuriedKind::Rigid) };
    let light = Buried { soils: vec![Cover::even(10e3)], ..beside.clone() };
    let at = |thing: &Buried, low: f64, high: f64, force: f64| {
        let ranged = Buried { cover: Some([low, high]), ..thing.clone() };
        buried_stress(&ranged, &wheels(force), &mut Silent).unwrap().stress.unwrap()
    };
    let mut inside = 0;
    for (thing, force) in [(&beside, 20e3), (&beside, 90e3), (&light, 90e3), (&thing(BuriedKind::Rigid), 90e3)] {
        for [low, high] in [[0.3, 0.9], [0.2, 2.4], [0.6, 1.1]] {
            let ranged = at(thing, low, high, force);
            assert!(ranged.depth >= low && ranged.depth <= high);
            for i in 0..=60 {
                let z = low + (high - low) * f64::from(i) / 60.0;
                let one = at(thing, z, z, force);
                assert!(one.total <= ranged.total * 1.002, "{low} {high} {z}: {one:?} {ranged:?}");
            }
            inside += usize::from(ranged.depth > low);
        }
    }
    assert!(inside >= 4, "{inside}");
    assert!(
        at(&beside, 0.3, 0.9, 90e3).total > at(&beside, 0.3, 0.3, 90e3).total * 1.2,
        "least cover is not worst here"
    );
}

#[test]
fn a_cover_that_may_be_none_is_not_known() {
    for cover in [[0.0, 0.0], [0.0, 0.8]] {
        let found =
            buried_stress(&Buried { cover: Some(cover), ..thing(BuriedKind::Rigid) }, &wheels(1e3), &mut Silent);
        let found = found.unwrap();
        assert!(found.stress.is_none() && found.conditions == [C::Cover] && found.reserve.is_none());
    }
}

#[test]
fn the_heaviest_soil_over_a_thing_counts_and_goes_on_below_its_last_layer() {
    let layers = Cover { layers: vec![[0.5, 16e3], [0.4, 20e3]], below: 22e3 };
    assert!((layers.stress(0.3) - 4.8e3).abs() < 1e-9);
    assert!((layers.stress(1.2) - (8e3 + 8e3 + 6.6e3)).abs() < 1e-9);
    assert_eq!(Cover { layers: vec![[f64::INFINITY, 18e3]], below: 21e3 }.stress(2.0), 36e3);
    let both = Buried { soils: vec![Cover::even(17e3), layers], ..thing(BuriedKind::Rigid) };
    let soil = buried_stress(&both, &wheels(1e3), &mut Silent).unwrap().stress.unwrap().soil;
    assert!((soil - 22.6e3).abs() < 1e-6, "{soil}");
}
