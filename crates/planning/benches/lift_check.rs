//! One full lift check (numbers and status, no working), against the target of 20 µs and against the
//! full findings with working of the same lifts. Prints microseconds and ratios of one run.
#![allow(
    missing_docs,
    clippy::unwrap_used,
    clippy::print_stdout,
    clippy::panic,
    clippy::disallowed_methods,
    reason = "a bench reads the clock"
)]

use ground::edge_rules::{Drop, EdgeGround};
use ground::edge_strength::{EdgeLayer, Exposure};
use ground::set_back::{Edge, SetBack, Side, set_back};
use ground::set_back_store::SetBackStore;
use ground::wheel_row::WheelRow;
use planning::{SetBacks, check_lift, check_lift_with, plan_as_stated as plan};
use std::collections::BTreeMap;
use std::hint::black_box;
use std::time::Instant;

fn median(mut run: impl FnMut(), inner: u32) -> f64 {
    let mut times: Vec<f64> = (0..31)
        .map(|_| {
            let start = Instant::now();
            for _ in 0..inner {
                run();
            }
            start.elapsed().as_secs_f64() / f64::from(inner)
        })
        .collect();
    times.sort_by(f64::total_cmp);
    times[times.len() / 2]
}

/// The first lift beside an open cut with stated soil, walked along it: set-backs solved for every check, against kept
/// ones; both must say the same everywhere.
fn beside_a_cut(demo: &planning::Job) {
    let mut job = demo.clone();
    let stand = job.lifts[0].stand;
    let forward = geometry::DVec2::new(stand.heading.cos(), stand.heading.sin());
    let corner = |along: f64, aside: f64| stand.at + forward * along - forward.perp() * (4.2 + aside);
    job.surroundings.excavations = vec![site::Excavation {
        id: "cut".into(),
        name: "Cut".into(),
        outline: site::PlanArea {
            outer: vec![corner(-30.0, 0.0), corner(30.0, 0.0), corner(30.0, 1.0), corner(-30.0, 1.0)],
            holes: Vec::new(),
        },
        depth: Some(evidence::Ranged::exact(1.6)),
        soil: Some(site::SoilType::TypeB),
        support: site::Support::None,
        standing: site::OpenSides { people_below: false, ..site::OpenSides::default() },
        source: "made".into(),
    }];
    let stated = ground::Stated { undrained: None, drained: Some((17e3, 25_f64.to_radians())) };
    let layer = ground::Layer { top: 0.0, thickness: f64::INFINITY, unit_weight: 19e3, stated, stiffness: None };
    let profile = ground::Profile { layers: vec![layer], water: Some(6.0), state: ground::GroundState::AsStated };
    let soil = planning::SoilArea {
        id: "s".into(),
        name: "Soil".into(),
        area: None,
        profile,
        presumed: None,
        by: "made".into(),
    };
    let lifts: Vec<planning::Lift> = (0..20)
        .map(|i| {
            let mut lift = job.lifts[0].clone();
            lift.stand.at = stand.at + forward * (0.05 * f64::from(i));
            lift
        })
        .collect();
    let plain = median(|| lifts.iter().for_each(|l| drop(black_box(check_lift(&job, l)))), 1) / 20.0;
    job.soils = vec![soil];
    let mut kept = SetBacks::default();
    for lift in &lifts {
        let with = check_lift_with(&job, lift, &mut kept).unwrap().findings();
        assert!(with.iter().any(|f| f.check == "edges"), "the cut is near enough to be asked of");
        assert_eq!(with, check_lift(&job, lift).unwrap().findings(), "kept and fresh set-backs disagree");
    }
    let start = Instant::now();
    for lift in &lifts {
        drop(black_box(check_lift(&job, lift)));
    }
    let each = start.elapsed().as_secs_f64() / 20.0;
    let again = median(|| lifts.iter().for_each(|l| drop(black_box(check_lift_with(&job, l, &mut kept)))), 1) / 20.0;
    println!(
        "  beside an open cut, 20 stands: solved for each {:.0} µs, kept {:.0} µs ({} solved), without stated soil {:.0} \
         µs: {:.1} times faster",
        each * 1e6,
        again * 1e6,
        kept.solved(),
        plain * 1e6,
        each / again
    );
    set_back_alone();
}

/// The set-back alone: solved directly for the wheels as they press, against a question to the store that knows it.
fn set_back_alone() {
    let edge = Edge {
        drop: Drop { depth: 1.6, batter: 0.0, ground: EdgeGround::Firm, named: None },
        side: Side::Open,
        layers: vec![EdgeLayer {
            bottom: f64::INFINITY,
            unit_weight: 19e3,
            drained: Some([17e3, 25_f64.to_radians()]),
            undrained: None,
        }],
        water: Some(0.0),
        firm_base: None,
        exposure: Exposure { open_for: 0.0, undrained_for: None, wetted: false },
        people_below: false,
    };
    let row = |behind| WheelRow { behind, across: 0.4, along: 0.3, contacts: vec![[0.0, 42e3], [2.9, 18e3]] };
    let rows = [row(0.0), row(1.9)];
    let exact = set_back(&edge, &rows, &mut evidence::Silent).unwrap();
    let direct = median(|| drop(black_box(set_back(black_box(&edge), &rows, &mut evidence::Silent))), 1);
    let mut store = SetBackStore::default();
    let mut ask = || {
        let kind = store.kind(black_box(&edge)).unwrap();
        store.ask(kind, &rows).unwrap()
    };
    let needed = ask().needed();
    let asked = median(|| drop(black_box(ask())), 1000);
    let SetBack::Distance(exact) = exact else { panic!("the face stands by itself") };
    assert!(needed >= exact.from_crest - 0.01, "the store asks for less than the load itself");
    println!(
        "  the set-back alone: directly {:.2} ms, kept {:.2} µs: {:.0} times faster; {:.2} m against {needed:.2} m kept",
        direct * 1e3,
        asked * 1e6,
        direct / asked,
        exact.from_crest
    );
}

fn main() {
    let root = std::path::Path::new(env!("CARGO_MANIFEST_DIR")).join("../../examples/demo-job");
    let mut folder: BTreeMap<String, Vec<u8>> = BTreeMap::new();
    for file in ["job.toml", "survey/levels.csv", "machines/demo-7.toml", "machines/demo-14.toml"] {
        folder.insert(file.to_owned(), std::fs::read(root.join(file)).unwrap());
    }
    let (job, _) = jobfile::read_job(&folder).unwrap_or_else(|f| panic!("{:?}", f.list));
    if std::env::args().any(|a| a == "edges") {
        return beside_a_cut(&job);
    }
    println!("one lift check, median of 31 runs; target 20 µs");
    for lift in &job.lifts {
        let verdict = check_lift(&job, lift).unwrap().verdict();
        let check = median(|| drop(black_box(check_lift(black_box(&job), black_box(lift)))), 200);
        let findings = median(|| drop(black_box(check_lift(&job, lift).unwrap().findings())), 50);
        println!(
            "  {:<42} {:?}: {:>7.2} µs, {:.2} of the target; with findings and working {:.1} times",
            lift.name,
            verdict,
            check * 1e6,
            check / 20e-6,
            findings / check
        );
    }
    let whole = median(|| drop(black_box(plan(&job))), 5);
    println!("  whole plan of {} lifts: {:.0} µs", job.lifts.len(), whole * 1e6);

    beside_a_cut(&job);

    let chart = &job.machines[0].machine.charts[0];
    let mut x = 0.0;
    let read = median(
        || {
            x = (x + 0.37) % 9.0;
            let at = geometry::DVec2::new(x, 4.0);
            black_box(chart.read(&machine::ChartPoint { at, low: at - 0.1, high: at + 0.2 }));
        },
        10_000,
    );
    println!("chart read of {} zones: {:.0} ns", chart.zones.len(), read * 1e9);
}
