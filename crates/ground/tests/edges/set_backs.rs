//! Distance from an edge by rule and equilibrium, and the same in plan.

use evidence::{Silent, Working};
use ground::edge_rules::{Drop, EdgeGround, NamedSlope};
use ground::edge_strength::{Drainage, EdgeLayer, Exposure, edge_layers, layers_of};
use ground::set_back::{Distance, Edge, SetBack, SetBackGoverns, Side, Unknown, edge_factor, set_back};
use ground::set_back_map::{MapFault, Outline, SetBackMap};
use ground::set_back_store::SetBackStore;
use ground::wheel_row::WheelRow;
use ground::{GroundState, Layer, Profile, Stated};

fn edge(depth: f64) -> Edge {
    Edge {
        drop: Drop {
            depth,
            batter: 0.0,
            ground: EdgeGround::Firm,
            named: Some(NamedSlope { ratio: 0.2, person: "A. Invented".into() }),
        },
        side: Side::Open,
        layers: vec![EdgeLayer {
            bottom: 0.0,
            unit_weight: 19e3,
            drained: Some([8e3, 28f64.to_radians()]),
            undrained: Some(35e3),
        }],
        water: Some(-0.5),
        firm_base: None,
        exposure: Exposure { open_for: 4.0, undrained_for: Some(24.0), wetted: false },
        people_below: false,
    }
}

fn axle(force: f64) -> Vec<WheelRow> {
    let row = |behind| WheelRow { behind, across: 0.4, along: 0.3, contacts: vec![[0.0, force], [2.8, force / 2.0]] };
    vec![row(0.0), row(1.7)]
}

fn distance(edge: &Edge, rows: &[WheelRow]) -> Distance {
    match set_back(edge, rows, &mut Silent).unwrap() {
        SetBack::Distance(d) => d,
        other => panic!("{other:?}"),
    }
}

#[test]
fn the_distance_holds_and_a_little_nearer_does_not() {
    let (e, rows) = (edge(3.0), axle(90e3));
    let mut working = Working::default();
    let SetBack::Distance(d) = set_back(&e, &rows, &mut working).unwrap() else { panic!("a distance") };
    assert!(d.equilibrium > 0.1 && d.equilibrium < 9.0, "{d:?}");
    let section = e.section().unwrap();
    let factor = |a: f64| {
        let loads: Vec<_> = rows.iter().map(|r| r.strip(a, 3.0)).collect();
        edge_factor(&section, &loads).0
    };
    assert!(factor(d.equilibrium) >= d.required);
    assert!(factor(d.equilibrium - 0.012) < d.required);
    for i in 0..30 {
        let a = d.equilibrium + 0.2 * f64::from(i);
        assert!(factor(a) >= d.required - 2e-3, "{a}");
    }
    assert_eq!(working.steps.last().unwrap().result.1.si, d.from_crest);
    // Wedge and circle at the distance found are shown, the lower of them its factor.
    let shown: Vec<f64> = working.steps.iter().filter(|s| s.result.0 == "F").map(|s| s.result.1.si).collect();
    assert_eq!(shown.len(), 2);
    assert_eq!(shown[0].min(shown[1]), d.factor);
    assert_eq!(d.ends_after, Some(20.0));
}

#[test]
fn more_load_people_below_and_rain_ask_for_more() {
    let (e, rows) = (edge(2.5), axle(60e3));
    let base = distance(&e, &rows);
    assert!(distance(&e, &axle(120e3)).equilibrium > base.equilibrium);
    let people = Edge { people_below: true, ..e.clone() };
    let with_people = distance(&people, &rows);
    assert_eq!((base.required, with_people.required), (1.3, 1.5));
    assert!(with_people.equilibrium > base.equilibrium);
    let mut rained = e.clone();
    rained.exposure.wetted = true;
    match set_back(&rained, &rows, &mut Silent).unwrap() {
        SetBack::FaceFails { factor, required, drainage: Drainage::Drained } => assert!(factor < required),
        SetBack::Distance(d) => assert!(d.drainage == Drainage::Drained && d.equilibrium > base.equilibrium),
        other => panic!("{other:?}"),
    }
}

/// A clay whose short-term strength is the lesser: rain, or leaving the hours out, cannot make it hold.
#[test]
fn stating_less_of_the_time_never_lets_wheels_nearer() {
    let told = |c_u: f64, drained: [f64; 2], hours: Option<f64>, wetted: bool| {
        let mut e = edge(3.0);
        e.layers[0].undrained = Some(c_u);
        e.layers[0].drained = Some([drained[0], drained[1].to_radians()]);
        e.exposure = Exposure { open_for: 4.0, undrained_for: hours, wetted };
        e.people_below = true;
        e.drop.batter = 3.0;
        set_back(&e, &axle(40e3), &mut Silent).unwrap()
    };
    let needed = |told: &SetBack| match told {
        SetBack::Distance(d) => d.from_crest,
        _ => f64::INFINITY,
    };
    let mut bound_by_undrained = 0;
    for (c_u, drained) in [(12e3, [6e3, 28.0]), (20e3, [12e3, 34.0]), (26e3, [9e3, 30.0]), (60e3, [9e3, 30.0])] {
        let stated = told(c_u, drained, Some(24.0), false);
        for less in [
            told(c_u, drained, Some(24.0), true),
            told(c_u, drained, None, false),
            told(c_u, drained, Some(3.0), false),
        ] {
            assert!(needed(&less) >= needed(&stated), "{c_u}: {less:?} {stated:?}");
            match less {
                SetBack::Distance(Distance { drainage, ends_after, .. }) => {
                    assert_eq!(ends_after, None);
                    bound_by_undrained += usize::from(drainage == Drainage::Undrained);
                }
                SetBack::FaceFails { drainage, .. } => {
                    bound_by_undrained += usize::from(drainage == Drainage::Undrained);
                }
                other => panic!("{other:?}"),
            }
        }
    }
    assert!(bound_by_undrained >= 3, "{bound_by_undrained}");
    let face = told(12e3, [6e3, 28.0], None, false);
    assert!(matches!(face, SetBack::FaceFails { factor, .. } if factor < 1.5), "{face:?}");
}

#[test]
fn soil_that_is_not_as_it_was_stated_keeps_its_undrained_strength_as_a_bound_only() {
    let stated = Stated { undrained: Some(12e3), drained: Some((6e3, 0.5)) };
    let layer = Layer { top: 0.0, thickness: 9.0, unit_weight: 19e3, stated, stiffness: None };
    for (state, wet) in [(GroundState::AsStated, false), (GroundState::Wetted, true), (GroundState::Thawing, true)] {
        let profile = Profile { layers: vec![layer], water: None, state };
        let exposure = Exposure { open_for: 1.0, undrained_for: Some(9.0), wetted: false }.in_state(state);
        let layers = edge_layers(&profile);
        assert_eq!((layers[0].undrained, exposure.wetted), (Some(12e3), wet));
        assert_eq!(exposure.solved(&layers).len(), 1 + usize::from(wet));
    }
}

#[test]
fn the_line_is_not_undercut_without_a_name() {
    let mut e = edge(2.0);
    e.layers[0].undrained = Some(150e3);
    e.drop.named = None;
    let d = distance(&e, &axle(20e3));
    assert_eq!((d.from_crest, d.governs), (3.0, SetBackGoverns::Rule));
    assert!(d.equilibrium < 3.0 && d.factor >= d.required);
}

#[test]
fn what_is_not_known_gives_no_distance() {
    let rows = axle(40e3);
    let told = |change: &dyn Fn(&mut Edge)| {
        let mut e = edge(2.0);
        change(&mut e);
        set_back(&e, &rows, &mut Silent).unwrap()
    };
    assert_eq!(told(&|e| e.water = None), SetBack::Unknown(vec![Unknown::Water]));
    assert_eq!(told(&|e| e.layers.clear()), SetBack::Unknown(vec![Unknown::Soil]));
    let lapsed = |e: &mut Edge| {
        e.layers[0].drained = None;
        e.exposure.open_for = 25.0;
    };
    assert_eq!(told(&lapsed), SetBack::Unknown(vec![Unknown::Strength(Drainage::Drained)]));
    let nobody = |e: &mut Edge| {
        e.layers[0].drained = None;
        e.exposure.undrained_for = None;
    };
    assert_eq!(told(&nobody), SetBack::Unknown(vec![Unknown::Strength(Drainage::Drained)]));
    assert_eq!(told(&|e| e.side = Side::Supported), SetBack::Supported);
    let sand = told(&|e| {
        e.layers[0].drained = Some([0.0, 0.6]);
        e.layers[0].undrained = None;
    });
    assert!(matches!(sand, SetBack::FaceFails { factor, .. } if factor < 0.01), "{sand:?}");
}

#[test]
fn sand_between_clay_stays_drained() {
    let clay = EdgeLayer { bottom: 1.0, unit_weight: 18e3, drained: None, undrained: Some(40e3) };
    let sand = EdgeLayer { bottom: 2.0, unit_weight: 18e3, drained: Some([0.0, 0.5]), undrained: None };
    let got = layers_of(&[clay, sand], Drainage::Undrained).unwrap();
    assert_eq!((got[0].friction, got[1].friction), (0.0, 0.5));
    assert!(layers_of(&[clay, sand], Drainage::Drained).is_none());
}

#[test]
fn every_fault_of_edge_and_wheels_at_once() {
    let mut e = edge(f64::NAN);
    e.exposure.open_for = -1.0;
    e.water = Some(f64::INFINITY);
    let rows = [WheelRow { behind: -1.0, across: 0.0, along: f64::NAN, contacts: vec![] }];
    let faults = set_back(&e, &rows, &mut Silent).unwrap_err();
    assert_eq!(faults.len(), 7, "{faults:#?}");
    // A depth that is none hides nothing of the soil.
    let mut light = edge(0.0);
    light.layers[0].unit_weight = 18.0;
    assert_eq!(set_back(&light, &axle(1e4), &mut Silent).unwrap_err().len(), 2);
    let mut water_above = edge(2.0);
    water_above.water = Some(2.5);
    water_above.layers[0].unit_weight = 19.0;
    water_above.layers[0].drained = Some([-1.0, 60f64.to_radians()]);
    let faults = set_back(&water_above, &axle(1e4), &mut Silent).unwrap_err();
    assert_eq!(faults.len(), 4, "{faults:#?}");
}

#[test]
fn wheels_of_one_side_count_together_where_their_lengths_meet() {
    let row =
        |apart: f64| WheelRow { behind: 0.0, across: 0.4, along: 0.5, contacts: vec![[0.0, 40e3], [apart, 40e3]] };
    assert!((row(20.0).per_metre(3.0) - 40e3 / 2.0).abs() < 1e-9);
    assert!((row(1.0).per_metre(3.0) - 80e3 / 3.0).abs() < 1e-9);
    let strip = row(20.0).strip(1.5, 3.0);
    assert_eq!((strip.from, strip.to), (1.5, 1.9));
    assert!((strip.pressure * 0.4 - 20e3).abs() < 1e-9);
    let broken = WheelRow { contacts: vec![[0.0, f64::NAN]], ..row(1.0) };
    assert!(broken.per_metre(3.0).is_nan());
}

/// A trench of that length from the origin, 1 m wide, two kinds of sides.
fn trench(length: f64) -> Outline {
    let points = vec![[0.0, 0.0], [length, 0.0], [length, 1.0], [0.0, 1.0]];
    Outline { points, edges: vec![0, 1, 0, 1] }
}

#[test]
fn the_map_agrees_with_single_distances_and_solves_alike_sides_once() {
    let rows = axle(80e3);
    let edges = [edge(2.5), Edge { people_below: true, ..edge(2.5) }];
    let map = SetBackMap::new(&[trench(20.0), trench(20.0)], &edges, &rows, &mut SetBackStore::default()).unwrap();
    assert_eq!(map.answers().len(), 2);
    let mut store = SetBackStore::default();
    let mut single = |edge: &Edge| {
        let kind = store.kind(edge).unwrap();
        let asked = store.ask(kind, &rows).unwrap().needed();
        let exact = distance(edge, &rows).from_crest;
        assert!(asked >= exact - 0.011 && asked < exact + 0.25, "{asked} {exact}");
        asked
    };
    let (side, end) = (single(&edges[0]), single(&edges[1]));
    let spare = |p| map.at(p).unwrap().spare;
    assert!((spare([10.0, -side - 0.5]) - 0.5).abs() < 1e-9);
    assert!((spare([-end - 0.5, 0.5]) - 0.5).abs() < 1e-9);
    assert!(spare([10.0, -side + 0.1]) < 0.0);
    assert!((spare([10.0, 0.4]) + 0.4 + side).abs() < 1e-9, "inside, out over the nearest side");
    let raster = map.raster([-3.0, -5.0], 0.25, [104, 44]);
    assert_eq!(raster.spare.len(), 104 * 44);
    for (col, row) in [(0, 0), (50, 10), (103, 43), (12, 20)] {
        let p = [-3.0 + 0.25 * col as f64, -5.0 + 0.25 * row as f64];
        assert_eq!(raster.spare[row * 104 + col], spare(p));
    }
}

#[test]
fn sides_of_which_nothing_is_told_keep_everything_away() {
    let rows = axle(80e3);
    let supported = Edge { side: Side::Supported, ..edge(2.0) };
    let unknown = Edge { layers: vec![], ..edge(2.0) };
    let map = SetBackMap::new(&[trench(20.0)], &[supported, unknown], &rows, &mut SetBackStore::default()).unwrap();
    assert!(map.at([10.0, -6.9]).unwrap().spare < 0.0);
    assert!(map.at([10.0, -7.1]).unwrap().spare > 0.0, "three depths and a metre");
    assert!(SetBackMap::new(&[], &[], &rows, &mut SetBackStore::default()).unwrap().at([0.0, 0.0]).is_none());
}

#[test]
fn depths_are_rounded_to_the_safe_side() {
    let rows = axle(80e3);
    let of = |depth| {
        let map =
            SetBackMap::new(&[trench(20.0)], &[edge(depth), edge(depth)], &rows, &mut SetBackStore::default()).unwrap();
        let Some(SetBack::Distance(d)) = map.answers().next() else { panic!() };
        d.from_crest
    };
    assert_eq!(of(2.41), of(2.45));
    assert!(of(2.41) >= distance(&edge(2.41), &rows).from_crest - 0.011);
}

#[test]
fn every_fault_of_a_map_by_its_place() {
    let bad = Outline { points: vec![[0.0, 0.0], [f64::NAN, 0.0]], edges: vec![0, 7] };
    let faults =
        SetBackMap::new(&[trench(5.0), bad], &[edge(2.0), edge(0.0)], &axle(1e4), &mut SetBackStore::default())
            .unwrap_err();
    let outline = faults.iter().filter(|f| matches!(f, MapFault::Outline { outline: 1, .. })).count();
    let edges = faults.iter().filter(|f| matches!(f, MapFault::Edge { edge: 1, .. })).count();
    assert_eq!((outline, edges > 0, faults.len()), (3, true, 3 + edges));
}
