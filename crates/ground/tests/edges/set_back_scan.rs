//! Distances from an edge against a plain dense scan of the factor, over many made slopes.

use evidence::Silent;
use ground::edge_rules::{Drop, EdgeGround, NamedSlope};
use ground::edge_strength::{EdgeLayer, Exposure};
use ground::set_back::{Distance, Edge, PRECISION, SetBack, Side, edge_factor, set_back};
use ground::slip_search::REACH;
use ground::slope_section::Surcharge;
use ground::wheel_row::WheelRow;

/// Even numbers from 0 to 1, the same in every run.
pub(crate) struct Dice(u64);

impl Dice {
    pub(crate) fn new(seed: u64) -> Self {
        Self(seed)
    }
    pub(crate) fn between(&mut self, low: f64, high: f64) -> f64 {
        self.0 = self.0.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
        low + (high - low) * ((self.0 >> 11) as f64 / (1_u64 << 53) as f64)
    }
    pub(crate) fn pick(&mut self, of: usize) -> usize {
        self.between(0.0, of as f64 - 1e-9) as usize
    }
}

/// An open cut in one to three layers, in undrained or drained soil, wet or dry, upright or battered.
pub(crate) fn made_edge(dice: &mut Dice) -> Edge {
    let depth = dice.between(0.8, 4.5);
    let undrained = dice.pick(2) == 0;
    let layers = (1..=1 + dice.pick(3)).map(|i| EdgeLayer {
        bottom: depth * (0.45 * i as f64 + dice.between(0.0, 0.3)),
        unit_weight: dice.between(16e3, 21e3),
        drained: Some([dice.between(4e3, 30e3), dice.between(18.0, 38.0).to_radians()]),
        undrained: undrained.then(|| dice.between(15e3, 70e3)),
    });
    Edge {
        layers: layers.collect(),
        drop: Drop {
            depth,
            batter: if dice.pick(2) == 0 { 0.0 } else { depth * dice.between(0.2, 1.2) },
            ground: EdgeGround::Firm,
            named: Some(NamedSlope { ratio: 0.0, person: "A. Invented".into() }),
        },
        side: Side::Open,
        water: Some(depth * dice.between(-1.0, 0.4)),
        firm_base: None,
        exposure: Exposure { open_for: 1.0, undrained_for: undrained.then_some(24.0), wetted: false },
        people_below: dice.pick(2) == 0,
    }
}

/// One to three rows of wheels or pads.
pub(crate) fn made_rows(dice: &mut Dice) -> Vec<WheelRow> {
    let mut behind = 0.0;
    let rows = (0..=dice.pick(3)).map(|_| {
        let row = WheelRow {
            behind,
            across: dice.between(0.25, 0.7),
            along: dice.between(0.2, 0.6),
            contacts: vec![[0.0, dice.between(5e3, 90e3)], [dice.between(0.8, 3.2), dice.between(0.0, 60e3)]],
        };
        behind += dice.between(0.8, 2.6);
        row
    });
    rows.collect()
}

pub(crate) fn told(edge: &Edge, rows: &[WheelRow]) -> Option<Distance> {
    match set_back(edge, rows, &mut Silent).unwrap() {
        SetBack::Distance(d) => Some(d),
        _ => None,
    }
}

/// Farthest place of a dense scan at which the factor falls short, m; none where it never does.
fn last_short(edge: &Edge, rows: &[WheelRow], steps: usize) -> Option<f64> {
    let section = edge.section().unwrap();
    let depth = edge.drop.depth;
    let far = REACH * depth + 1.0;
    (0..=steps).rev().map(|i| far * i as f64 / steps as f64).find(|a| {
        let loads: Vec<_> = rows.iter().map(|r| r.strip(*a, depth)).collect();
        // A shade: what the search over circles itself is out by from one place to the next.
        edge_factor(&section, &loads).0 < edge.required() * 0.996
    })
}

/// Beyond the distance told no place of the scan falls short; and it asks no more than the scan by a little: what load
/// that helps would hold.
#[test]
fn no_place_of_a_dense_scan_beyond_the_distance_falls_short() {
    let mut dice = Dice::new(5);
    let (mut told_of, mut short, mut beyond) = (0, 0, Vec::new());
    while told_of < 16 {
        let (edge, rows) = (made_edge(&mut dice), made_rows(&mut dice));
        let Some(d) = told(&edge, &rows) else { continue };
        told_of += 1;
        let step = (REACH * edge.drop.depth + 1.0) / 200.0;
        match last_short(&edge, &rows, 200) {
            Some(last) => {
                short += 1;
                assert!(last <= d.equilibrium + PRECISION, "{last} {}: {edge:?} {rows:?}", d.equilibrium);
                beyond.push(d.equilibrium - last - step);
            }
            None => beyond.push(d.equilibrium - step),
        }
    }
    assert!(short > 5, "{short}");
    let much = beyond.iter().filter(|b| **b > 2.0 * PRECISION).count();
    assert!(much <= told_of / 10, "{much} of {told_of}");
}

/// A small tyre near the crest of a low battered cut goes down through the upper tenth of its face: the worst slip there
/// is found from one place to the next, and does not come and go.
#[test]
fn a_small_tyre_at_the_crest_is_followed_without_jumps() {
    let mut edge = made_edge(&mut Dice::new(4));
    let layer = |bottom, c_u| EdgeLayer { bottom, unit_weight: 18.7e3, drained: None, undrained: Some(c_u) };
    edge.drop.depth = 0.88;
    edge.drop.batter = 0.86;
    edge.layers = vec![layer(0.11, 35.4e3), layer(0.6, 54.7e3)];
    edge.water = Some(-0.43);
    edge.exposure = Exposure { open_for: 4.0, undrained_for: Some(24.0), wetted: false };
    edge.people_below = false;
    let section = edge.section().unwrap();
    let strip = |from: f64| Surcharge { from, to: from + 0.382, pressure: 158e3 };
    let factors: Vec<f64> = (0..14).map(|i| edge_factor(&section, &[strip(0.1 + 0.01 * f64::from(i))]).0).collect();
    for pair in factors.windows(2) {
        assert!((pair[1] / pair[0] - 1.0).abs() < 0.04, "{factors:?}");
    }
    assert!(factors[0] < 1.2 && factors[13] > 1.3, "{factors:?}");
}
