//! One check of a lift with the search for another movement in it (plain movement refused, search, the other movement
//! checked in full) over a parapet, through an opening and behind a wall with no way, against the target of 10 ms; and
//! the same run's brute force: every position of a lattice of 1° and 0.125 m measured, with solids written beside the
//! checks. Prints milliseconds and ratios; what is answered is held to be what it should be.
#![allow(
    missing_docs,
    clippy::unwrap_used,
    clippy::print_stdout,
    clippy::panic,
    clippy::disallowed_methods,
    reason = "a bench reads the clock"
)]

use boom_rig::Rig;
use geometry::DVec2;
use planning::{Job, check_lift};
use site::{Body, Grid, GroundSource, Opening, PlanArea, PlanShape, Terrain, Thing, ThingKind, distance_thing};
use std::collections::BTreeMap;
use std::hint::black_box;
use std::time::Instant;

#[path = "../tests/planning/boom_rig.rs"]
#[allow(dead_code, reason = "shared with the tests, which ask more of it")]
mod boom_rig;

/// Seconds of one run, median of 15.
fn median<T>(mut run: impl FnMut() -> T) -> f64 {
    let mut times: Vec<f64> = (0..15)
        .map(|_| {
            let start = Instant::now();
            drop(black_box(run()));
            start.elapsed().as_secs_f64()
        })
        .collect();
    times.sort_by(f64::total_cmp);
    times[times.len() / 2]
}

/// The demo's first lift alone with a third of its load on a level plane, the landing so far ahead and so high, m.
fn scene(demo: &Job, ahead: f64, height: f64) -> Job {
    let mut job = demo.clone();
    job.lifts.truncate(1);
    job.lines.clear();
    job.soils.clear();
    job.policy.stand_error = 0.02;
    let (north_west, cell) = (DVec2::new(-60.0, 120.0), DVec2::splat(10.0));
    let terrain = Terrain::Grid(Grid { north_west, cell, rows: 19, cols: 19, heights: vec![100.0; 19 * 19] });
    job.ground.surfaces = vec![GroundSource { name: "plane".into(), terrain, accuracy: 0.002, date: None }];
    job.surroundings.excavations.clear();
    job.surroundings.buried.clear();
    let lift = &job.lifts[0];
    job.machines[lift.machine].machine.boom.flex = 0.02;
    let mass = &mut job.loads[lift.load].mass_kg;
    (mass.low, mass.nominal, mass.high) = (mass.low * 0.3, mass.nominal * 0.3, mass.high * 0.3);
    let landing = &mut job.landings[lift.landing];
    landing.at = lift.stand.at + DVec2::new(lift.stand.heading.cos(), lift.stand.heading.sin()) * ahead;
    landing.level = 100.0 + height;
    job
}

fn block(job: &Job, [near, far]: [f64; 2], top: f64, opening: Option<[f64; 2]>) -> Thing {
    let stand = job.lifts[0].stand;
    let forward = DVec2::new(stand.heading.cos(), stand.heading.sin());
    let place = |ahead: f64, aside: f64| stand.at + forward * ahead + forward.perp() * aside;
    let outer = [(near, -9.0), (far, -9.0), (far, 9.0), (near, 9.0)].map(|(x, y)| place(x, y)).to_vec();
    let shape = PlanShape::Area(PlanArea { outer, holes: Vec::new() });
    let hole = |[sill, head]: [f64; 2]| Opening {
        from: place(near, -1.5),
        to: place(near, 1.5),
        sill: 100.0 + sill,
        head: 100.0 + head,
    };
    Thing {
        id: "t".into(),
        name: "Thing".into(),
        kind: ThingKind::Wall,
        body: Body::Upright { shape, base: None, top: Some(100.0 + top) },
        openings: opening.map(hole).into_iter().collect(),
        accuracy: 0.01,
        source: "made".into(),
    }
}

fn main() {
    // Tests build and start every target; only `cargo bench` says so.
    if !std::env::args().any(|a| a == "--bench") {
        return;
    }
    let root = std::path::Path::new(env!("CARGO_MANIFEST_DIR")).join("../../examples/demo-job");
    let mut folder: BTreeMap<String, Vec<u8>> = BTreeMap::new();
    for file in ["job.toml", "survey/levels.csv", "machines/demo-7.toml", "machines/demo-14.toml"] {
        folder.insert(file.to_owned(), std::fs::read(root.join(file)).unwrap());
    }
    let (demo, _) = jobfile::read_job(&folder).unwrap_or_else(|f| panic!("{:?}", f.list));
    let cases = [
        ("over a parapet", scene(&demo, 7.0, 4.0), [3.8, 4.0], 2.9, None, true),
        ("over a higher one", scene(&demo, 7.0, 4.0), [3.8, 4.0], 3.3, None, true),
        ("through an opening", scene(&demo, 7.0, 1.2), [3.8, 9.0], 9.0, Some([1.2, 3.6]), true),
        ("behind a wall", scene(&demo, 9.0, 0.3), [3.8, 4.0], 30.0, None, false),
    ];
    println!("one search for a movement, median of 15 runs; target 10 ms");
    for (what, mut job, along, top, opening, found) in cases {
        let thing = block(&job, along, top, opening);
        job.surroundings.things = vec![thing].into();
        let lift = &job.lifts[0];
        let check = check_lift(&job, lift).unwrap();
        assert_eq!(check.movement().is_some_and(|m| !m.plain), found, "{what}");
        let time = median(|| check_lift(&job, lift));
        let rig = Rig::new(&job);
        let thing = &job.surroundings.things[0];
        let nearest = || {
            let mut free = 0_u32;
            for angle in -11..=71 {
                for out in 0..=74 {
                    let solids = rig.solids(f64::from(angle).to_radians(), f64::from(out) * 0.125);
                    free += u32::from(solids.iter().all(|s| distance_thing(s, thing).metres() > 0.4));
                }
            }
            free
        };
        assert!((100..6_225).contains(&nearest()), "some positions are free, some are not");
        let brute = median(nearest);
        println!(
            "  {what:<20} {:>6.2} ms, {:.2} of the target; every position of the lattice: {:.1} times that",
            time * 1e3,
            time / 10e-3,
            brute / time
        );
    }
}
