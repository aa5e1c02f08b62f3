//! What must hold of a pad on layers: nothing that somebody stated is passed over, and no state carries more than another.

use evidence::{Silent, Working};
use ground::settlement::{PressedPad, settlement_at, settlements};
use ground::{
    Footprint, GroundState, Layer, Load, PadOnProfile, Profile, Refusal, Stated, Stiffness, bearing_below_top,
    bearing_on_profile,
};
use proptest::prelude::*;

fn layer(top: f64, thickness: f64, stated: Stated) -> Layer {
    Layer { top, thickness, unit_weight: 18e3, stated, stiffness: None }
}

fn clay(c_u: f64) -> Stated {
    Stated { undrained: Some(c_u), drained: None }
}

fn carries(side: f64, layers: Vec<Layer>, water: f64, state: GroundState) -> Result<f64, Refusal> {
    let base = Footprint::Rectangle { width: side, length: 1.5 * side };
    let load = Load { vertical: 50e3, ..Load::default() };
    let pad = PadOnProfile { base, load, depth: 0.0, slope: 0.0 };
    let profile = Profile { layers, water: Some(water), state };
    bearing_on_profile(&pad, &profile, &mut Silent).map(|b| b.resistance)
}

/// A crust of that strength and thickness over what is soft, without end.
fn crust(side: f64, c_u: f64, thickness: f64, soft: Stated) -> Result<f64, Refusal> {
    let layers = vec![layer(0.0, thickness, clay(c_u)), layer(thickness, f64::INFINITY, soft)];
    carries(side, layers, 8.0, GroundState::AsStated)
}

/// 0.60 m of crust over mud were once too deep to ask.
#[test]
fn a_hard_crust_over_mud_is_asked_however_thick_it_is() {
    let over = |thickness| crust(0.25, 400e3, thickness, clay(3e3)).unwrap();
    let crust_alone = over(60.0);
    assert!(over(0.60) < 0.5 * crust_alone && over(0.60) / over(0.45) < 1.7, "{} {}", over(0.45), over(0.60));
}

proptest! {
    /// Twice the depth to the soft layer is no more than four times the area on it, and so four times what it bears.
    #[test]
    fn softer_ground_deeper_down_carries_more_and_never_by_a_jump(
        side in 0.15..1.5_f64, hard in 40e3..500e3_f64, soft in 2e3..40e3_f64, thickness in 0.05..6.0_f64,
        deeper in 1.0..1.3_f64, friction in proptest::option::of(20.0..35.0_f64),
    ) {
        let below = friction.map_or(clay(soft), |f| Stated { undrained: None, drained: Some((0.0, f.to_radians())) });
        let (near, far) = (crust(side, hard, thickness, below), crust(side, hard, thickness * deeper, below));
        let (near, far) = (near.unwrap(), far.unwrap());
        prop_assert!(far >= near * (1.0 - 1e-9), "{near} {far}");
        // Area as the square, a drained strength by depth and width as well.
        prop_assert!(far <= near * deeper.powi(3) * (1.0 + 1e-9), "{near} {far}");
    }

    #[test]
    fn no_state_of_the_ground_carries_more_than_it_was_stated_for(
        side in 0.2..1.5_f64, c_u in proptest::option::of(2e3..200e3_f64), cohesion in 0.0..20e3_f64,
        friction in proptest::option::of(15.0..40.0_f64), lower_c_u in proptest::option::of(2e3..200e3_f64),
        lower_friction in proptest::option::of(15.0..40.0_f64), thickness in 0.1..4.0_f64, water in 0.0..4.0_f64,
    ) {
        let stated = |undrained, friction: Option<f64>| {
            Stated { undrained, drained: friction.map(|f| (cohesion, f.to_radians())) }
        };
        let layers = || vec![
            layer(0.0, thickness, stated(c_u, friction)),
            layer(thickness, f64::INFINITY, stated(lower_c_u, lower_friction)),
        ];
        let of = |state| carries(side, layers(), water, state);
        for state in [GroundState::Wetted, GroundState::Thawing, GroundState::MeasuredFrozen] {
            let (as_stated, then) = (of(GroundState::AsStated), of(state));
            let less = match (&as_stated, &then) {
                (Ok(a), Ok(b)) => b <= &(a * (1.0 + 1e-12)),
                (_, Err(_)) => true,
                (Err(_), Ok(_)) => false,
            };
            prop_assert!(less, "{state:?}: {as_stated:?} {then:?}");
        }
    }

    #[test]
    fn a_boundary_that_goes_deeper_settles_less_and_never_by_a_jump(
        side in 0.2..1.0_f64, stiff in 20e6..200e6_f64, share in 0.01..0.5_f64, thickness in 0.1..8.0_f64,
        deeper in 1.0..1.1_f64, poisson in 0.0..0.5_f64,
    ) {
        let settles = |thickness: f64| {
            let one = |top: f64, thickness: f64, modulus: f64| Layer {
                stiffness: Some(Stiffness { modulus, poisson }),
                ..layer(top, thickness, Stated::default())
            };
            let layers = vec![one(0.0, thickness, stiff), one(thickness, f64::INFINITY, share * stiff)];
            let pad = PressedPad { at: [0.0; 2], sides: [side; 2], pressure: 100e3 };
            let profile = Profile { layers, water: None, state: GroundState::AsStated };
            settlement_at(&[pad], [0.0; 2], &profile).unwrap()
        };
        let (near, far) = (settles(thickness), settles(thickness * deeper));
        prop_assert!(far <= near * (1.0 + 1e-9), "{near} {far}");
        // What lies below a boundary settles by about one over its depth.
        prop_assert!(far >= near / deeper.powi(2), "{near} {far}");
    }
}

/// A rotten layer below four widths was once not there: 33 mm became 3 mm.
#[test]
fn soft_ground_below_four_widths_settles_too() {
    let settles = |thickness: f64| {
        let one = |top: f64, thickness: f64, modulus: f64| Layer {
            stiffness: Some(Stiffness { modulus, poisson: 0.3 }),
            ..layer(top, thickness, Stated::default())
        };
        let layers = vec![one(0.0, thickness, 20e6), one(thickness, f64::INFINITY, 0.3e6)];
        let pad = PressedPad { at: [0.0; 2], sides: [0.4; 2], pressure: 200e3 };
        let profile = Profile { layers, water: None, state: GroundState::AsStated };
        settlement_at(&[pad], [0.0; 2], &profile).unwrap()
    };
    let (before, after) = (settles(1.59), settles(1.61));
    assert!(after < before && after > 0.95 * before, "{before} {after}");
}

/// Two bases side by side on a crust of cemented gravel: together they bear on what lies deep below as one, and less than both alone.
#[test]
fn neighbours_press_deep_ground_together() {
    let gravel = Stated { undrained: None, drained: Some((60e3, 40.0_f64.to_radians())) };
    let profile = |thickness: f64| Profile {
        layers: vec![layer(0.0, thickness, gravel), layer(thickness, f64::INFINITY, clay(10e3))],
        water: Some(9.0),
        state: GroundState::AsStated,
    };
    let pad = |width: f64, length: f64| PadOnProfile {
        base: Footprint::Rectangle { width, length },
        load: Load { vertical: 50e3, ..Load::default() },
        depth: 0.0,
        slope: 0.0,
    };
    let alone = |t: f64| bearing_on_profile(&pad(0.4, 0.4), &profile(t), &mut Silent).unwrap().resistance;
    let both = |t: f64| bearing_below_top(&pad(0.4, 1.4), &profile(t), &mut Silent).unwrap().unwrap();
    assert!(both(0.2).resistance > 2.0 * alone(0.2), "near the top each bears for itself");
    assert!(both(1.8).resistance < 2.0 * alone(1.8), "{} {}", both(1.8).resistance, alone(1.8));
    assert_eq!(both(1.8).lower.map(|l| l.0), Some(1));
    let one = Profile { layers: vec![layer(0.0, 5.0, clay(300e3))], ..profile(1.0) };
    assert_eq!(bearing_below_top(&pad(0.4, 1.4), &one, &mut Silent), Ok(None));
    let dark = Profile { layers: vec![layer(0.0, 1.0, clay(300e3)), layer(1.0, 5.0, Stated::default())], ..one };
    assert_eq!(bearing_below_top(&pad(0.4, 1.4), &dark, &mut Silent), Err(Refusal::NoStrength));
}

/// The lower layer's own bearing is printed with its author and size, and its numbers give the printed ones.
#[test]
fn load_spread_can_be_followed_by_hand() {
    let layers = vec![layer(0.0, 0.5, clay(200e3)), layer(0.5, f64::INFINITY, clay(20e3))];
    let profile = Profile { layers, water: None, state: GroundState::AsStated };
    let base = Footprint::Rectangle { width: 1.5, length: 2.0 };
    let pad = PadOnProfile { base, load: Load { vertical: 50e3, ..Load::default() }, depth: 0.0, slope: 0.0 };
    let mut working = Working::default();
    let whole = bearing_on_profile(&pad, &profile, &mut working).unwrap();
    let last = working.steps.last().unwrap();
    assert_eq!((last.result.0.as_ref(), last.result.1.si), ("R", whole.resistance));
    let at = |symbol: &str| working.steps.iter().position(|s| s.result.0 == symbol).unwrap();
    let (size, spread) = (at("B_2"), at("q_2"));
    let value = |step: usize, symbol: &str| {
        working.steps[step].values.iter().find(|v| v.0 == symbol).map_or(f64::NAN, |v| v.1.si)
    };
    assert!((working.steps[size].result.1.si - 2.0).abs() < 1e-12 && (value(size, "L_2") - 2.5).abs() < 1e-12);
    let between: Vec<_> = working.steps[size..spread].iter().collect();
    assert!(between.iter().any(|s| s.title.id == "working-bearing-least"), "whose");
    assert!(between.iter().any(|s| s.result.0 == "N_c"), "by which factors");
    let own = between.iter().rfind(|s| s.result.0 == "q_ult").unwrap().result.1.si;
    assert!((own - value(spread, "q_low")).abs() < 1e-9);
    let by_hand = (own - value(spread, "Δσ")) * value(spread, "B_2") * value(spread, "L_2")
        / (value(spread, "B′") * value(spread, "L′"));
    assert!((by_hand - working.steps[spread].result.1.si).abs() < 1e-6);
}

/// Each layer of a settlement is printed with its stiffness, depths and influence, and gives by hand what is printed.
#[test]
fn a_settlement_can_be_followed_by_hand() {
    let one = |top: f64, thickness: f64, modulus: f64, poisson: f64| Layer {
        stiffness: Some(Stiffness { modulus, poisson }),
        ..layer(top, thickness, Stated::default())
    };
    let layers = vec![one(0.0, 0.5, 40e6, 0.3), one(0.5, 1.5, 8e6, 0.45), one(2.0, 9.0, 30e6, 0.2)];
    let profile = Profile { layers, water: None, state: GroundState::AsStated };
    let pad = PressedPad { at: [0.0; 2], sides: [0.8, 0.5], pressure: 150e3 };
    let mut working = Working::default();
    settlements(&[pad], &profile, &mut working).unwrap();
    let of: Vec<_> = working.steps.iter().filter(|s| s.result.0 == "Δs").collect();
    assert_eq!(of.len(), 3);
    let mut sum = 0.0;
    for step in &of {
        let v = |symbol: &str| step.values.iter().find(|v| v.0 == symbol).map_or(f64::NAN, |v| v.1.si);
        let (m, poisson) = (v("L") / v("B"), v("ν"));
        let influence = |z: f64| {
            let n = 2.0 * z / v("B");
            let (r, rm, rn, rmn) =
                ((m * m + n * n + 1.0).sqrt(), (1.0 + m * m).sqrt(), (1.0 + n * n).sqrt(), (m * m + n * n).sqrt());
            let f1 = m * ((1.0 + rm) * rmn / (m * (1.0 + r))).ln() + ((m + rm) * rn / (m + r)).ln();
            let f2 = n / 2.0 * (m / (n * r)).atan();
            4.0 * v("B") / 2.0 * (1.0 - poisson * poisson) / std::f64::consts::PI
                * (f1 + (1.0 - 2.0 * poisson) / (1.0 - poisson) * f2)
        };
        let bottom = if v("z_2").is_nan() { 1e7 } else { v("z_2") };
        assert!((influence(bottom) - v("I_2")).abs() < 1e-6 * v("I_2"), "{step:?}");
        assert!(v("z_1") == 0.0 || (influence(v("z_1")) - v("I_1")).abs() < 1e-9);
        let by_hand = v("q") / v("E") * (v("I_2") - v("I_1"));
        assert!((by_hand - step.result.1.si).abs() < 1e-12);
        sum += by_hand;
    }
    let last = working.steps.last().unwrap();
    assert!((last.values.iter().find(|v| v.0 == "s_0").unwrap().1.si - sum).abs() < 1e-12);
}
