//! What holds for every beam: equilibrium, linearity, superposition, reciprocity, and a bound that no sampled
//! place exceeds.

use ground::beam::{Beam, BeamLoad, End, Solved, Span};
use ground::worst_place::{Effect, MovingStrip, worst_place};
use proptest::prelude::*;

fn span() -> impl Strategy<Value = Span> {
    (0.4..6.0_f64, 1e4..1e7_f64).prop_map(|(length, stiffness)| Span { length, stiffness })
}

fn end() -> impl Strategy<Value = End> {
    prop_oneof![Just(End::Simple), Just(End::Clamped), span().prop_map(End::Overhang)]
}

fn beam() -> impl Strategy<Value = Beam> {
    (end(), prop::collection::vec(span(), 1..6), end()).prop_map(|(l, s, r)| Beam::new(l, s, r).unwrap())
}

/// Loads by shares of the length.
fn loads() -> impl Strategy<Value = Vec<(bool, f64, f64, f64)>> {
    prop::collection::vec((any::<bool>(), 0.0..1.0_f64, 0.01..0.5_f64, -2e4..4e4_f64), 1..6)
}

fn laid(beam: &Beam, shares: &[(bool, f64, f64, f64)]) -> Vec<BeamLoad> {
    let l = beam.length();
    let one = |(point, at, wide, f): &(bool, f64, f64, f64)| {
        if *point {
            BeamLoad::Point { at: at * l, force: *f }
        } else {
            let from = at * (1.0 - wide) * l;
            BeamLoad::Strip { from, to: from + wide * l, intensity: f / l }
        }
    };
    shares.iter().map(one).collect()
}

/// Moment of a load about the left tip.
fn about_tip(load: BeamLoad) -> f64 {
    match load {
        BeamLoad::Point { at, force } => at * force,
        BeamLoad::Strip { from, to, .. } => load.force() * f64::midpoint(from, to),
    }
}

fn near(a: f64, b: f64, scale: f64) -> bool {
    (a - b).abs() <= 1e-7 * scale.max(1e-12)
}

/// Values at places spread over the beam.
fn sampled(s: &Solved, length: f64) -> Vec<[f64; 3]> {
    let at = |k: u32| {
        let x = length * f64::from(k) / 97.0;
        [s.moment_at(x).unwrap(), s.shear_at(x).unwrap(), s.sag_at(x).unwrap()]
    };
    (0..=96).map(at).collect()
}

fn scale(all: &[[f64; 3]], i: usize) -> f64 {
    all.iter().map(|v| v[i].abs()).fold(0.0, f64::max)
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(300))]

    #[test]
    fn forces_and_moments_balance(beam in beam(), shares in loads()) {
        let loads = laid(&beam, &shares);
        let s = beam.solve(&loads).unwrap();
        let size: f64 = loads.iter().map(|l| l.force().abs()).sum();
        let up: f64 = s.reactions.iter().map(|r| r.force).sum();
        prop_assert!(near(up, loads.iter().map(|l| l.force()).sum(), size), "{up}");
        // A clamp at the left turns the beam one way, one at the right the other.
        let middle = beam.length() / 2.0;
        let clamps: f64 = s.reactions.iter().map(|r| if r.at < middle { -r.moment } else { r.moment }).sum();
        let held: f64 = s.reactions.iter().map(|r| r.force * r.at).sum::<f64>() + clamps;
        prop_assert!(near(held, loads.iter().map(|l| about_tip(*l)).sum(), size * beam.length()), "{held}");
    }

    #[test]
    fn no_sample_is_beyond_the_extremes_and_they_are_reached(beam in beam(), shares in loads()) {
        let s = beam.solve(&laid(&beam, &shares)).unwrap();
        let all = sampled(&s, beam.length());
        let [m, v, y] = [0, 1, 2].map(|i| scale(&all, i));
        for [moment, shear, sag] in &all {
            prop_assert!(*moment <= s.sagging().value + 1e-9 * m && *moment >= s.hogging().value - 1e-9 * m);
            prop_assert!(shear.abs() <= s.shear().value.abs() + 1e-9 * v);
            prop_assert!(*sag <= s.sag().value + 1e-9 * y && *sag >= s.rise().value - 1e-9 * y);
        }
        let (most, least, low) = (s.sagging(), s.hogging(), s.sag());
        prop_assert!(near(s.moment_at(most.at).unwrap(), most.value, m) || most.value == 0.0);
        prop_assert!(near(s.moment_at(least.at).unwrap(), least.value, m) || least.value == 0.0);
        prop_assert!(near(s.sag_at(low.at).unwrap(), low.value, y) || low.value == 0.0);
    }

    #[test]
    fn supports_stay_where_they_are_and_slopes_are_continuous(beam in beam(), shares in loads()) {
        let s = beam.solve(&laid(&beam, &shares)).unwrap();
        let all = sampled(&s, beam.length());
        let most = scale(&all, 2);
        for r in &s.reactions {
            prop_assert!(near(s.sag_at(r.at).unwrap(), 0.0, most), "support at {}", r.at);
            let h = 1e-4;
            if r.at > h && r.at + h < beam.length() {
                let kink = s.sag_at(r.at - h).unwrap() - 2.0 * s.sag_at(r.at).unwrap() + s.sag_at(r.at + h).unwrap();
                // A kink would show as h times its angle; a curve as h² times its curvature.
                prop_assert!(kink.abs() <= 1e-9 + h * h * scale(&all, 0) / 1e4 + 1e-7 * most, "{kink}");
            }
        }
    }

    #[test]
    fn loads_add_and_scale(beam in beam(), one in loads(), two in loads(), k in -3.0..3.0_f64) {
        let (one, two) = (laid(&beam, &one), laid(&beam, &two));
        let times = |l: &BeamLoad| match *l {
            BeamLoad::Point { at, force } => BeamLoad::Point { at, force: k * force },
            BeamLoad::Strip { from, to, intensity } => BeamLoad::Strip { from, to, intensity: k * intensity },
        };
        let both: Vec<BeamLoad> = one.iter().copied().chain(two.iter().map(times)).collect();
        let of = |l: &[BeamLoad]| sampled(&beam.solve(l).unwrap(), beam.length());
        let (a, b, c) = (of(&one), of(&two), of(&both));
        for i in 0..3 {
            let size = scale(&a, i) + scale(&b, i) * k.abs();
            for ((a, b), c) in a.iter().zip(&b).zip(&c) {
                prop_assert!(near(a[i] + k * b[i], c[i], size));
            }
        }
    }

    #[test]
    fn a_load_here_sags_there_as_much_as_a_load_there_sags_here(beam in beam(), a in 0.0..1.0_f64, b in 0.0..1.0_f64) {
        let [a, b] = [a, b].map(|x| x * beam.length());
        let sag = |load: f64, seen: f64| {
            let s = beam.solve(&[BeamLoad::Point { at: load, force: 1e3 }]).unwrap();
            (s.sag_at(seen).unwrap(), s.sag().value.max(-s.rise().value))
        };
        let ((ab, most), (ba, also)) = (sag(a, b), sag(b, a));
        prop_assert!(near(ab, ba, most.max(also)), "{ab} {ba}");
    }
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(60))]

    #[test]
    fn no_place_of_the_load_exceeds_the_bound(beam in beam(), runner in 0.05..0.6_f64, gap in 0.1..0.5_f64,
                                              shares in loads(), which in 0..6_usize) {
        let effect = [Effect::Sagging, Effect::Hogging, Effect::Shear, Effect::Reaction(0), Effect::Lift(1), Effect::Sag][which];
        let long = beam.length();
        let (runner, gap) = (runner * long / 4.0, gap * long / 4.0);
        let strip = |from: f64, force| MovingStrip { from, to: from + runner, force };
        let moving = [strip(0.0, 5e3), strip(runner + gap, 8e3)];
        let reach = 2.0 * runner + gap;
        let fixed = laid(&beam, &shares);
        let worst = worst_place(&beam, &fixed, &moving, (-reach, long), effect, 0.01).unwrap();
        prop_assert!(worst.bound >= worst.reached);
        for k in 0..=400 {
            let u = -reach + (long + reach) * f64::from(k) / 400.0;
            let mut loads = fixed.clone();
            for s in moving {
                let intensity = s.force / (s.to - s.from);
                let (from, to) = ((u + s.from).max(0.0), (u + s.to).min(long));
                if to > from {
                    loads.push(BeamLoad::Strip { from, to, intensity });
                }
            }
            let s = beam.solve(&loads).unwrap();
            let value = match effect {
                Effect::Sagging => s.sagging().value,
                Effect::Hogging => -s.hogging().value,
                Effect::Shear => s.shear().value.abs(),
                Effect::Reaction(i) => s.reactions[i].force,
                Effect::Lift(i) => -s.reactions[i].force,
                Effect::Sag => s.sag().value,
            };
            prop_assert!(value <= worst.bound * (1.0 + 1e-12) + 1e-12, "{effect:?} at {u}: {value} {worst:?}");
        }
    }
}

#[test]
fn a_load_of_its_own_length_is_worst_in_the_middle_of_a_simple_span() {
    let beam = Beam::equal(1, Span { length: 4.0, stiffness: 1e6 }).unwrap();
    let moving = [MovingStrip { from: 0.0, to: 1.2, force: 10e3 }];
    let worst = worst_place(&beam, &[], &moving, (0.0, 2.8), Effect::Sagging, 1e-4).unwrap();
    let exact = 10e3 / 4.0 * (4.0 - 0.6);
    assert!(worst.reached <= exact + 1e-6 && worst.bound >= exact, "{worst:?} {exact}");
    assert!(worst.bound <= exact * 1.0002, "{worst:?}");
}

#[test]
fn every_fault_of_a_beam_and_its_loads_is_told_at_once() {
    let bad = Span { length: -2.0, stiffness: f64::NAN };
    let faults = Beam::new(End::Overhang(bad), vec![bad], End::Simple).unwrap_err();
    let keys: Vec<_> = faults.list.iter().map(|f| f.place.key.clone().unwrap()).collect();
    assert_eq!(keys, ["spans[0].length", "spans[0].stiffness", "left.length", "left.stiffness"]);
    assert!(Beam::new(End::Simple, vec![], End::Simple).is_err(), "nothing to rest on");

    let beam = Beam::equal(1, Span { length: 3.0, stiffness: 1e6 }).unwrap();
    let off = BeamLoad::Point { at: 3.5, force: f64::INFINITY };
    let turned = BeamLoad::Strip { from: 2.0, to: 1.0, intensity: 1.0 };
    let faults = beam.solve(&[off, turned]).unwrap_err();
    assert_eq!(faults.list.len(), 3, "{faults:?}");
    let millimetres = Beam::equal(1, Span { length: 2400.0, stiffness: 1e6 }).unwrap_err();
    assert_eq!(millimetres.list[0].hint.as_ref().unwrap().id, "landing-unit-slip");
}
