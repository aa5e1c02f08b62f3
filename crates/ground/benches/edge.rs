//! The worst slip circle of an edge against a plain dense search with the same circles; the map of a trench against
//! solving every cell by itself; how the map grows. Times, ratios and answers of the same run. Also the time for the
//! slopes of `validation/ground/edges/slopes.csv` beside the time that pyslope took for them when that file was made.
#![allow(missing_docs, clippy::unwrap_used, clippy::print_stdout, reason = "a bench prints")]
#![allow(clippy::disallowed_methods, reason = "a bench reads the clock")]

use evidence::Silent;
use ground::edge_rules::{Drop, EdgeGround, NamedSlope};
use ground::edge_strength::{EdgeLayer, Exposure};
use ground::set_back::{Edge, PRECISION, SetBack, Side, edge_factor, set_back};
use ground::set_back_map::{Outline, SetBackMap};
use ground::set_back_store::SetBackStore;
use ground::slip_circle::{SlipCircle, SlipSolver};
use ground::slip_search::{REACH, worst_slip};
use ground::slope_section::{Crack, PoreWater, SlopeLayer, SlopeSection, Surcharge};
use ground::wheel_row::WheelRow;
use std::hint::black_box;
use std::time::Instant;

fn section(depth: f64, batter: f64, soils: &[(f64, f64)]) -> SlopeSection {
    let layers = soils.iter().enumerate().map(|(i, (c, phi))| SlopeLayer {
        bottom: depth * (i as f64 + 1.0) * 0.6,
        unit_weight: 19e3,
        cohesion: *c,
        friction: phi.to_radians(),
    });
    SlopeSection {
        depth,
        batter,
        layers: layers.collect(),
        firm_base: None,
        water: PoreWater::Table(vec![[-batter - 0.5, -depth], [4.0 * depth, -0.5 * depth]]),
        crack: Crack::default(),
    }
}

/// The least factor of every exit, entry and turning of a dense grid.
fn dense(section: &SlopeSection, loads: &[Surcharge]) -> (f64, usize) {
    let mut solver = SlipSolver::new(section, loads);
    let (mut least, mut tried) = (f64::INFINITY, 0);
    let (w, h) = (section.batter, section.depth);
    let reach = loads.iter().map(|s| s.to).fold(0.0, f64::max) + REACH * h;
    for i in 1..=80 {
        let e = 4.0 * f64::from(i) / 80.0;
        let exit = if e <= 1.0 { [-w * e, -h * e] } else { [-w - (e - 1.0) * h, -h] };
        for j in 1..=160 {
            let entry = [reach * (f64::from(j) / 160.0).powi(2), -section.crack.before(-exit[1]).depth];
            if entry[1] <= exit[1] {
                continue;
            }
            let chord = (entry[1] - exit[1]).atan2(entry[0] - exit[0]);
            let most = (std::f64::consts::FRAC_PI_2 - chord).min(chord + 1.3);
            for k in 1..=60 {
                tried += 1;
                let circle = SlipCircle::through(exit, entry, most * f64::from(k) / 60.0);
                if let Ok(f) = solver.factor(&circle) {
                    least = least.min(f);
                }
            }
        }
    }
    (least, tried)
}

fn median_ms(mut one: impl FnMut()) -> f64 {
    let mut times: Vec<f64> = (0..15)
        .map(|_| {
            let start = Instant::now();
            one();
            start.elapsed().as_secs_f64() * 1e3
        })
        .collect();
    times.sort_by(f64::total_cmp);
    times[7]
}

fn slips() {
    let cases = [
        ("upright, clay, wheel at 1 m", section(2.0, 0.0, &[(20e3, 0.0)]), 1.0),
        ("battered, two layers", section(4.0, 2.0, &[(8e3, 26.0), (5e3, 30.0)]), 1.5),
        ("flat, four layers", section(6.0, 9.0, &[(3e3, 28.0), (6e3, 24.0), (2e3, 32.0), (4e3, 25.0)]), 2.0),
        ("battered, soft clay below", section(4.0, 4.0, &[(40e3, 0.0), (18e3, 0.0)]), 1.5),
    ];
    for (name, section, from) in cases {
        let loads = [
            Surcharge { from, to: from + 0.4, pressure: 45e3 },
            Surcharge { from: from + 1.7, to: from + 2.1, pressure: 30e3 },
        ];
        let found = worst_slip(&section, &loads, &mut Silent).unwrap().unwrap();
        let ms = median_ms(|| {
            black_box(worst_slip(black_box(&section), &loads, &mut Silent).unwrap());
        });
        let start = Instant::now();
        let (least, tried) = dense(&section, &loads);
        let dense_ms = start.elapsed().as_secs_f64() * 1e3;
        println!(
            "{name}: {ms:.2} ms, {} circles, F {:.4}; dense {dense_ms:.0} ms, {tried} circles, F {least:.4}; \
             {:.0} times faster, F {:+.2} %",
            found.tried,
            found.factor,
            dense_ms / ms,
            100.0 * (found.factor / least - 1.0)
        );
        assert!(found.factor < least * 1.01, "{name}: missed the worst circle");
    }
}

fn edge(depth: f64) -> Edge {
    Edge {
        drop: Drop {
            depth,
            batter: 0.0,
            ground: EdgeGround::Firm,
            named: Some(NamedSlope { ratio: 0.2, person: "A. Invented".into() }),
        },
        side: Side::Open,
        layers: vec![EdgeLayer { bottom: 0.0, unit_weight: 19e3, drained: None, undrained: Some(30e3) }],
        water: Some(-0.5),
        firm_base: None,
        exposure: Exposure { open_for: 4.0, undrained_for: Some(24.0), wetted: false },
        people_below: false,
    }
}

/// A trench with that many depths along it, 1 m wide.
fn trench(length: f64, kinds: usize) -> Outline {
    let step = length / kinds as f64;
    let mut points: Vec<[f64; 2]> = (0..=kinds).map(|i| [step * i as f64, 0.0]).collect();
    points.extend((0..=kinds).rev().map(|i| [step * i as f64, 1.0]));
    let mut edges: Vec<usize> = (0..kinds).collect();
    edges.push(kinds - 1);
    edges.extend((0..kinds).rev());
    edges.push(0);
    Outline { points, edges }
}

fn maps() {
    let row = |behind| WheelRow { behind, across: 0.4, along: 0.3, contacts: vec![[0.0, 60e3], [2.8, 25e3]] };
    let rows = [row(0.0), row(1.7)];
    for (length, kinds) in [(50.0, 1), (100.0, 1), (50.0, 4), (50.0, 16)] {
        let edges: Vec<Edge> = (0..kinds).map(|i| edge(1.85 + 0.05 * i as f64)).collect();
        let outline = trench(length, kinds);
        let size = [(length + 16.0) as usize * 4, 17 * 4];
        let mut store = SetBackStore::default();
        let start = Instant::now();
        let map = SetBackMap::new(std::slice::from_ref(&outline), &edges, &rows, &mut store).unwrap();
        let solved = start.elapsed().as_secs_f64();
        let raster = map.raster([-8.0, -8.0], 0.25, size);
        let whole = start.elapsed().as_secs_f64();
        // Every 97th cell by itself; those over the trench are left out on both sides.
        let start = Instant::now();
        let (mut asked, mut differ, mut refused) = (0, 0, 0);
        for i in (0..raster.spare.len()).step_by(97) {
            let p = [-8.0 + 0.25 * (i % size[0]) as f64, -8.0 + 0.25 * (i / size[0]) as f64];
            let reading = map.at(p).unwrap();
            if reading.distance == 0.0 {
                continue;
            }
            asked += 1;
            let e = &edges[outline.edges[reading.side.corner]];
            let section = e.section().unwrap();
            let loads: Vec<_> = rows.iter().map(|r| r.strip(reading.distance, e.drop.depth)).collect();
            let stands = edge_factor(&section, &loads).0 >= e.required() && reading.distance >= 1.0;
            // A distance is found to a centimetre, on the safe side; rungs ask for more than the load itself.
            let allowed = reading.spare >= PRECISION;
            differ += usize::from(allowed && !stands);
            refused += usize::from(!allowed && stands);
        }
        let each = start.elapsed().as_secs_f64() / f64::from(asked as u32);
        let brute = each * raster.spare.len() as f64;
        println!(
            "map of {length} m, {kinds} kinds of sides, {} cells: {whole:.3} s (sides {solved:.3} s); each cell by \
             itself {brute:.0} s reckoned from {asked} cells; {:.0} times faster; {differ} of {asked} allowed \
             that fall short, {refused} refused that would hold",
            raster.spare.len(),
            brute / whole
        );
        assert!(differ == 0, "the map allows what falls short");
    }
}

/// The slopes that pyslope solved, with its times.
fn beside_pyslope() {
    let text = include_str!("../../../validation/ground/edges/slopes.csv");
    let (mut ours, mut theirs, mut slopes) = (0.0, 0.0, 0);
    for line in text.lines().filter(|l| l.contains(",worst,")) {
        let cells: Vec<&str> = line.split(',').collect();
        let v = |i: usize| cells[i].parse::<f64>().unwrap();
        let layer = |i: usize, bottom| SlopeLayer {
            bottom,
            unit_weight: v(i) * 1e3,
            cohesion: v(i + 1) * 1e3,
            friction: v(i + 2).to_radians(),
        };
        let section = SlopeSection {
            depth: v(0),
            batter: v(1),
            layers: vec![layer(2, v(5)), layer(6, 0.0)],
            firm_base: None,
            water: if cells[12].is_empty() { PoreWater::Dry } else { PoreWater::Table(vec![[0.0, -v(12)]]) },
            crack: Crack::default(),
        };
        let loads = [Surcharge { from: v(9), to: v(10), pressure: v(11) * 1e3 }];
        ours += median_ms(|| {
            black_box(worst_slip(&section, &loads, &mut Silent).unwrap());
        });
        theirs += v(18) * 1e3;
        slopes += 1;
    }
    let n = f64::from(slopes);
    println!(
        "{slopes} slopes of pyslope: {:.2} ms each; pyslope {:.0} ms each when slopes.csv was made; {:.0} times faster",
        ours / n,
        theirs / n,
        theirs / ours
    );
}

/// Even numbers from 0 to 1, the same in every run.
struct Dice(u64);

impl Dice {
    fn between(&mut self, low: f64, high: f64) -> f64 {
        self.0 = self.0.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
        low + (high - low) * ((self.0 >> 11) as f64 / (1_u64 << 53) as f64)
    }
}

/// A made cut in two layers under one to three rows of wheels.
fn made(dice: &mut Dice) -> (Edge, Vec<WheelRow>) {
    let mut edge = edge(dice.between(0.8, 4.5));
    let depth = edge.drop.depth;
    edge.drop.named = Some(NamedSlope { ratio: 0.0, person: "A. Invented".into() });
    edge.drop.batter = (depth * dice.between(-0.6, 1.0)).max(0.0);
    edge.water = Some(depth * dice.between(-1.0, 0.4));
    let undrained = dice.between(0.0, 1.0) < 0.5;
    edge.exposure.undrained_for = undrained.then_some(24.0);
    let layer = |i: usize, dice: &mut Dice| EdgeLayer {
        bottom: depth * (0.5 * i as f64 + dice.between(0.1, 0.4)),
        unit_weight: dice.between(16e3, 21e3),
        drained: Some([dice.between(4e3, 30e3), dice.between(18.0, 38.0).to_radians()]),
        undrained: undrained.then(|| dice.between(15e3, 70e3)),
    };
    edge.layers = (0..2).map(|i| layer(i, dice)).collect();
    let mut behind = 0.0;
    let rows = (0..=dice.between(0.0, 2.99) as usize).map(|_| {
        let contacts = vec![[0.0, dice.between(5e3, 90e3)], [dice.between(0.8, 3.2), dice.between(0.0, 60e3)]];
        let row = WheelRow { behind, across: dice.between(0.25, 0.7), along: dice.between(0.2, 0.6), contacts };
        behind += dice.between(0.8, 2.6);
        row
    });
    let rows = rows.collect();
    (edge, rows)
}

/// Distances against a dense scan of 200 places each, and against a walk of 12 places that trusts what lies between.
fn scans() {
    const PLACES: usize = 200;
    // What the search over circles itself is out by, as a share of the factor.
    const SEARCH: f64 = 0.004;
    let mut least = f64::INFINITY;
    let mut dice = Dice(11);
    let (mut told, mut unsafe_ones, mut missed, mut asked) = (0, 0, 0, Vec::new());
    let (mut ours, mut theirs) = (0.0, 0.0);
    while told < 60 {
        let (edge, rows) = made(&mut dice);
        let start = Instant::now();
        let SetBack::Distance(found) = set_back(&edge, &rows, &mut Silent).unwrap() else { continue };
        ours += start.elapsed().as_secs_f64();
        told += 1;
        let (section, depth, far) = (edge.section().unwrap(), edge.drop.depth, REACH * edge.drop.depth + 1.0);
        let factor = |a: f64| {
            let loads: Vec<_> = rows.iter().map(|r| r.strip(a, depth)).collect();
            edge_factor(&section, &loads).0
        };
        let start = Instant::now();
        let at = |i: usize| far * i as f64 / PLACES as f64;
        let factors: Vec<f64> = (0..=PLACES).map(|i| factor(at(i)) / found.required).collect();
        theirs += start.elapsed().as_secs_f64();
        let last = (0..=PLACES).rev().find(|i| factors[*i] < 1.0 - SEARCH);
        unsafe_ones += usize::from(last.is_some_and(|i| at(i) > found.equilibrium + PRECISION));
        let beyond = (0..=PLACES).filter(|i| at(*i) > found.equilibrium + PRECISION).map(|i| factors[i]);
        least = beyond.fold(least, f64::min);
        let next = last.map_or(0.0, |i| at(i + 1));
        asked.push(found.equilibrium - next);
        let coarse =
            (0..=12).rev().map(|i| far * (f64::from(i) / 12.0).powi(2)).take_while(|a| factor(*a) >= found.required);
        missed += usize::from(last.is_some_and(|i| coarse.last().is_some_and(|least| least < at(i) - 1e-9)));
    }
    asked.sort_by(f64::total_cmp);
    println!(
        "{told} made slopes, {:.1} ms each, a scan of {PLACES} places {:.1} times as long: {unsafe_ones} nearer than the \
         scan allows (least factor beyond, of the required: {least:.4}); beyond its last good place by {:.3} m in the middle, {:.3} m at most; steps of a 12-place walk \
         would have jumped over the last bad place {missed} times",
        ours / f64::from(told) * 1e3,
        theirs / ours,
        asked[asked.len() / 2],
        asked[asked.len() - 1]
    );
    assert_eq!(unsafe_ones, 0, "a distance is nearer than the scan allows");
}

fn main() {
    if std::env::args().any(|a| a == "scans") {
        return scans();
    }
    slips();
    scans();
    maps();
    beside_pyslope();
}
