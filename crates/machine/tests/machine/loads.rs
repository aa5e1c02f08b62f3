//! Built-up loads: pallets against an independent computation, ranges, turning, slings.
#![allow(clippy::disallowed_methods, reason = "tests")]

use evidence::{Ranged, Silent};
use geometry::DVec3;
use machine::load_part::{centre_range, combine};
use machine::{
    ByVolume, Edges, Fitting, Hanging, Hitch, Layer, Lever, LoadPart, Pallet, PartMass, Stack, Swing, USUAL_SWING,
    Water,
};
use proptest::prelude::*;
use quantity::{degrees, kilograms, radians};

/// Sums of a few dozen products of doubles, against results stored with nine digits.
const ROUND_OFF: f64 = 2e-9;

/// 300 random packs, stacked box by box with trimesh (validation/loads/packs.py).
#[test]
fn val_three_hundred_packs_against_trimesh() {
    let table = include_str!("../../../../validation/loads/packs.csv");
    let rows: Vec<(&str, Vec<f64>)> = table
        .lines()
        .skip(2)
        .map(|line| {
            let mut fields = line.split(',').skip(1);
            (fields.next().unwrap(), fields.map(|f| f.parse().unwrap()).collect())
        })
        .collect();
    let mut packs = 0;
    let mut pallet: Option<Pallet> = None;
    for (kind, v) in rows {
        let size = DVec3::new(v[2], v[3], v[4]);
        match (kind, &mut pallet) {
            ("base", p) => {
                let base = LoadPart::unplaced("base", Ranged::exact(v[0]));
                *p = Some(Pallet { base, base_size: size, layers: Vec::new(), wrap: None, overhang: 0.0 });
            }
            ("layer", Some(p)) => {
                let part = LoadPart::unplaced("layer", Ranged::exact(v[0] * v[1]));
                p.layers.push(Layer { part, size, count: v[1] as u32, ahead: v[5], left: v[6] });
            }
            ("wrap", Some(p)) => p.wrap = Some(LoadPart::unplaced("wrap", Ranged::exact(v[0]))),
            ("pack", Some(p)) => {
                let Stack { parts, size: stacked, .. } = p.stack();
                let (mass, centre) = combine(&parts);
                let wanted = DVec3::new(v[5], v[6], v[7]);
                assert!((mass - v[0]).abs() <= ROUND_OFF * mass, "mass {mass}, {}", v[0]);
                assert!((centre - wanted).length() <= ROUND_OFF, "centre {centre}, {wanted}");
                assert!((stacked - size).length() <= ROUND_OFF, "size {stacked}, {size}");
                packs += 1;
            }
            _ => panic!("{kind}"),
        }
    }
    assert_eq!(packs, 300, "a reference case went missing");
}

#[test]
fn overhang_is_told_beyond_the_stated_share_and_where_nothing_bears_it() {
    let pallet = |depth: f64, ahead: f64, overhang: f64| Pallet {
        base: LoadPart::unplaced("base", Ranged::exact(25.0)),
        base_size: DVec3::new(1.2, 1.0, 0.15),
        layers: vec![Layer {
            part: LoadPart::unplaced("boards", Ranged::exact(100.0)),
            size: DVec3::new(depth, 1.0, 0.1),
            count: 2,
            ahead,
            left: 0.0,
        }],
        wrap: None,
        overhang,
    };
    assert!(pallet(1.2, 0.0, 0.0).stack().overhangs.is_empty());
    let over = pallet(1.3, 0.0, 0.0).stack().overhangs;
    assert!((over[0].by - 0.05).abs() < 1e-12 && !over[0].unsupported, "{over:?}");
    assert!(pallet(1.3, 0.0, 0.05).stack().overhangs.is_empty(), "within 6 cm");
    assert_eq!(pallet(1.3, 0.02, 0.05).stack().overhangs.len(), 1);
    assert!(pallet(0.2, 0.61, 0.25).stack().overhangs[0].unsupported, "its middle is beyond the base");
}

/// Published sling angle factors: 1.000, 1.155, 1.414, 2.000 at 0, 30, 45, 60° from the vertical; by
/// statics two legs carry W/2 upward each.
#[test]
fn val_sling_angle_factors() {
    const TABLE_DIGIT: f64 = 0.0005;
    for (angle, factor) in [(0.0, 1.0), (30.0, 1.155), (45.0, 1.414), (60.0, 2.0)] {
        let got = hanging(2, angle, Some(Hitch::Vertical)).leg_mass_kg(1000.0, &EVEN, &mut Silent) / 500.0;
        assert!((got - factor).abs() <= TABLE_DIGIT, "{angle}°: {got}");
    }
}

const EVEN: Lever = Lever { off: 0.0, spread: 1.0, share: 0.5, outside: false };

fn hanging(legs: u32, angle: f64, hitch: Option<Hitch>) -> Hanging {
    Hanging {
        rigging_kg: Ranged::exact(10.0),
        picks: None,
        drop: 2.0,
        legs,
        leg_angle: degrees(angle),
        leg_limit: kilograms(1000.0),
        hitch,
        edges: Some(Edges::Smooth),
        tag_lines: 1,
        fittings: vec![Fitting { name: "shackle".into(), limit: kilograms(900.0), whole: false }],
        swing: Swing::Angle(radians(USUAL_SWING)),
    }
}

#[test]
fn of_many_slings_two_carry_a_basket_has_two_legs_and_a_choker_takes_less() {
    let middle = Ranged::exact(0.0);
    let leg = |legs, hitch| {
        let h = hanging(legs, 0.0, hitch);
        h.leg_mass_kg(1000.0, &h.lever((1.0, 2.0), middle, middle), &mut Silent)
    };
    assert_eq!([1, 2, 3, 4].map(|n| leg(n, Some(Hitch::Vertical))), [1000.0, 500.0, 500.0, 500.0]);
    assert_eq!(leg(1, Some(Hitch::Basket)), 500.0);
    let limit = |hitch| hanging(2, 0.0, hitch).hitched_limit_kg(&mut Silent);
    assert_eq!([Some(Hitch::Vertical), Some(Hitch::Choker), None].map(limit), [1000.0, 750.0, 750.0]);
}

/// A centre 1.0 m off the middle between lifting points 1.34 m to either side: the nearer leg takes
/// 2.34 / 2.68 of the weight.
#[test]
fn the_nearer_sling_takes_its_share_by_the_lever() {
    let exact = Ranged::exact;
    let h = Hanging { drop: 1.6, ..hanging(2, 40.0, Some(Hitch::Vertical)) };
    let along = h.lever((0.2, 4.5), exact(0.0), exact(-1.0));
    assert!((along.spread - 2.685).abs() < 0.001 && !along.outside, "{along:?}");
    assert!((along.share - 0.872).abs() < 0.001, "{along:?}");
    let leg = h.leg_mass_kg(400.0, &along, &mut Silent);
    assert!((leg - 400.0 * along.share / 40.0_f64.to_radians().cos()).abs() < 1e-9);
    // Stated lifting points count instead, the range of the centre at its worst end; off the shorter
    // side of the load nothing is levered.
    let stated = Hanging { picks: Some(2.0), ..h.clone() };
    let share = stated.lever((0.2, 4.5), exact(0.3), Ranged { low: -0.1, nominal: 0.2, high: 0.5 }).share;
    assert!((share - 0.75).abs() < 1e-12, "{share}");
    // Beyond the lifting points one leg has all of it; so it is where both hang plumb from the hook.
    assert!(stated.lever((0.2, 4.5), exact(0.0), exact(1.0)).outside);
    let plumb = hanging(2, 0.0, None).lever((0.2, 4.5), exact(0.0), exact(0.02));
    assert_eq!((plumb.outside, plumb.share), (true, 1.0));
    // Of four slings any two may carry: off either way counts.
    let four = Hanging { legs: 4, ..h }.lever((2.0, 4.5), exact(0.3), exact(0.4));
    assert!((four.share - (0.5 + 0.5 / four.spread)).abs() < 1e-12, "{four:?}");
}

#[test]
fn each_layer_must_lie_on_the_one_below_as_well() {
    let layer = |name: &str, depth: f64, ahead: f64| Layer {
        part: LoadPart::unplaced(name, Ranged::exact(100.0)),
        size: DVec3::new(depth, 1.0, 0.1),
        count: 1,
        ahead,
        left: 0.0,
    };
    let over = |low, high, overhang| {
        let base_size = DVec3::new(1.2, 1.0, 0.15);
        let base = LoadPart::unplaced("base", Ranged::exact(25.0));
        Pallet { base, base_size, layers: vec![low, high], wrap: None, overhang }.stack().overhangs
    };
    // Within the base, and its middle 0.4 m ahead of what bears it.
    let nothing = over(layer("sacks", 0.4, -0.4), layer("boards", 0.4, 0.4), 0.0);
    assert_eq!(nothing.len(), 1, "{nothing:?}");
    assert!(nothing[0].unsupported && nothing[0].over.as_deref() == Some("sacks"), "{nothing:?}");
    let wide = over(layer("sacks", 0.8, 0.0), layer("boards", 1.2, 0.0), 0.0);
    assert!(wide.len() == 1 && !wide[0].unsupported && (wide[0].by - 0.2).abs() < 1e-12, "{wide:?}");
    assert!(over(layer("sacks", 0.8, 0.0), layer("boards", 1.2, 0.0), 0.25).is_empty(), "a quarter is allowed");
}

#[test]
fn swing_is_length_times_sine() {
    let reach = hanging(2, 0.0, None).swing_reach(2.0, &mut Silent);
    assert!((reach - 2.0 * 3.0_f64.to_radians().sin()).abs() < 1e-12);
    let stated = Hanging { swing: Swing::Reach(0.4), ..hanging(2, 0.0, None) };
    assert_eq!(stated.swing_reach(2.0, &mut Silent), 0.4);
}

#[test]
fn water_widens_a_mass_upward_only() {
    let volume = |moisture: f64, soaked: f64| ByVolume {
        volume: 0.5,
        density: Ranged { low: 450.0, nominal: 600.0, high: 750.0 },
        packing: 0.9,
        moisture,
        soaked,
        count: 2.0,
        source: evidence::Source::Mechanics,
    };
    let (dry, wet) = (volume(0.0, 0.0).mass_kg(0.1, 0.1), volume(0.3, 0.0).mass_kg(0.1, 0.1));
    assert_eq!((dry.low, dry.nominal), (wet.low, wet.nominal));
    assert!((dry.nominal - 540.0).abs() < 1e-9 && (dry.high - 742.5).abs() < 1e-9, "{dry:?}");
    assert!((wet.high - dry.high * 1.3).abs() < 1e-9);
    let full = volume(0.0, 1.0).mass_kg(0.1, 0.1);
    assert!((full.high - dry.high - 1000.0).abs() < 1e-9 && full.nominal == dry.nominal, "two boxes of half a m³");
}

fn part(low: f64, high: f64, at: [f64; 3]) -> LoadPart {
    let mass_kg = Ranged { low, nominal: f64::midpoint(low, high), high };
    LoadPart {
        name: String::new(),
        mass: kilograms(mass_kg.nominal),
        mass_kg,
        centre: DVec3::from_array(at),
        how: PartMass::Stated,
        water: Water::NotStated,
    }
}

proptest! {
    /// Every combination of lowest and highest masses lies in the range, and its ends are met by one.
    #[test]
    fn the_range_of_the_centre_is_that_of_all_corners(
        parts in prop::collection::vec((1.0..100.0, 0.0..50.0, -2.0..2.0_f64, -1.0..1.0_f64, 0.0..3.0_f64), 1..7)
    ) {
        let parts: Vec<LoadPart> = parts.into_iter().map(|(m, r, x, y, z)| part(m, m + r, [x, y, z])).collect();
        let range = centre_range(&parts);
        let corners: Vec<DVec3> = (0_u32..1 << parts.len())
            .map(|bits| {
                let at = |i: usize| if bits >> i & 1 == 1 { parts[i].mass_kg.high } else { parts[i].mass_kg.low };
                let corner: Vec<LoadPart> =
                    (0..parts.len()).map(|i| LoadPart::point(kilograms(at(i)), parts[i].centre)).collect();
                combine(&corner).1
            })
            .collect();
        for axis in 0..3 {
            let low = corners.iter().map(|c| c[axis]).fold(f64::INFINITY, f64::min);
            let high = corners.iter().map(|c| c[axis]).fold(f64::NEG_INFINITY, f64::max);
            prop_assert!((range[axis].low - low).abs() < 1e-9, "{range:?} {low}");
            prop_assert!((range[axis].high - high).abs() < 1e-9, "{range:?} {high}");
        }
    }
}
