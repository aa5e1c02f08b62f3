//! Slip circles against closed forms, a package of another hand, and a plain dense search.

use crate::wedges::cut;
use evidence::{Silent, Working};
use ground::slip_circle::{SlipCircle, SlipSolver};
use ground::slip_search::{WorstSlip, worst_slip};
use ground::slope_section::{Crack, PoreWater, SlopeLayer, SlopeSection, Surcharge};

fn worst(section: &SlopeSection, loads: &[Surcharge]) -> WorstSlip {
    worst_slip(section, loads, &mut Silent).unwrap().unwrap()
}

#[test]
fn val_taylor_vertical_cut_stands_to_3_83_c_over_gamma() {
    let (c, gamma) = (20e3, 18e3);
    let found = worst(&cut(3.83 * c / gamma, 0.0, c, 0.0), &[]);
    assert!((found.factor - 1.0).abs() < 0.004, "{} {:?}", found.factor, found.circle);
}

#[test]
fn val_acads_1a_simple_slope() {
    let section = SlopeSection {
        depth: 10.0,
        batter: 20.0,
        layers: vec![SlopeLayer { bottom: 0.0, unit_weight: 20e3, cohesion: 3e3, friction: 19.6f64.to_radians() }],
        firm_base: Some(15.0),
        water: PoreWater::Dry,
        crack: Crack::default(),
    };
    let found = worst(&section, &[]);
    eprintln!("{} tried {} refused {} {:?}", found.factor, found.tried, found.refused, found.circle);
    assert!((found.factor - 1.0).abs() < 0.015, "{} {:?}", found.factor, found.circle);
}

#[test]
fn dbg() {
    for (d, b, c, phi) in [(3.0, 0.0, 20e3, 0.0), (3.0, 1.5, 8e3, 25.0), (2.0, 3.0, 1e3, 32.0), (4.0, 2.0, 25e3, 0.0)] {
        for load in [0.0, 40e3] {
            let found = worst(&cut(d, b, c, phi), &[Surcharge { from: 1.0, to: 1.5, pressure: load }]);
            eprintln!("{d} {b} {c} {phi} {load}: {} n {} tried {} refused {} {:?}", found.factor, found.slices.len(), found.tried, found.refused, found.circle);
        }
    }
}
