//! One lift check among 0, 100, 1,000 and 10,000 things out of reach: its time as a ratio to the check with
//! none, and, of the same run, what it costs to look at the bounds of every thing once, and to ask every
//! thing exactly at a single pose of a single part; asking over the whole movement costs many times that.
//! Then the same with two posts within reach, which are searched over the whole movement. Median of 31.
//!
//! Measured on two busy cores, so that only ratios count: 0.9 to 1.2 times the check without any, with no
//! trend from 0 to 10,000; at 10,000, every thing exactly at one pose 20 times the check. Two posts within
//! reach: 8 times.
#![allow(
    missing_docs,
    clippy::unwrap_used,
    clippy::print_stdout,
    clippy::panic,
    clippy::disallowed_methods,
    reason = "a bench reads the clock"
)]

use geometry::{Capsule, DVec2, DVec3, Segment, Solid};
use planning::check_lift;
use site::{Body, PlanArea, PlanShape, Thing, ThingKind, distance_thing};
use std::collections::BTreeMap;
use std::hint::black_box;
use std::time::Instant;

/// Beyond the reach of any machine here, m.
const OUT_OF_REACH: f64 = 60.0;

struct Seeded(u64);
impl Seeded {
    fn next(&mut self) -> f64 {
        self.0 = self.0.wrapping_add(0x9E37_79B9_7F4A_7C15);
        let mut z = self.0;
        z = (z ^ (z >> 30)).wrapping_mul(0xBF58_476D_1CE4_E5B9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94D0_49BB_1331_11EB);
        ((z ^ (z >> 31)) >> 11) as f64 / (1u64 << 53) as f64
    }
}

fn thing(shape: PlanShape, top: f64) -> Thing {
    Thing {
        id: String::new(),
        name: String::new(),
        kind: ThingKind::Building,
        body: Body::Upright { shape, base: None, top: Some(top) },
        openings: Vec::new(),
        accuracy: 0.1,
        source: String::new(),
    }
}

/// One house, wall or tree on about 25 × 25 m around the stand, none of them within reach.
fn out_of_reach(count: usize, stand: DVec2, random: &mut Seeded) -> Vec<Thing> {
    (0..count)
        .map(|i| {
            let far = OUT_OF_REACH + (count as f64).sqrt() * 14.0 * random.next().sqrt();
            let at = stand + DVec2::from_angle(std::f64::consts::TAU * random.next()) * far;
            let (w, d) = (4.0 + 8.0 * random.next(), 4.0 + 6.0 * random.next());
            let shape = match i % 3 {
                0 => {
                    let corners = [(0.0, 0.0), (w, 0.0), (w, d), (0.6 * w, d), (0.6 * w, 1.4 * d), (0.0, 1.4 * d)];
                    let outer = corners.map(|(x, y)| at + DVec2::new(x, y)).to_vec();
                    PlanShape::Area(PlanArea { outer, holes: Vec::new() })
                }
                1 => PlanShape::Strip { course: vec![at, at + DVec2::new(w, d)], width: 0.3 },
                _ => PlanShape::Round { centre: at, radius: 0.2 * w },
            };
            thing(shape, 2.0 + 8.0 * random.next())
        })
        .collect()
}

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
    let (mut job, _) = jobfile::read_job(&folder).unwrap_or_else(|f| panic!("{:?}", f.list));
    job.lifts.truncate(1);
    let stand = job.lifts[0].stand.at;
    let axis = Segment { a: stand.extend(101.0), b: stand.extend(106.0) + DVec3::Y * 8.0 };
    let part = Solid::Capsule(Capsule { axis, radius: 0.3 });
    let checked = |job: &planning::Job| {
        let verdict = check_lift(job, &job.lifts[0]).unwrap().verdict();
        (median(|| drop(black_box(check_lift(black_box(job), &job.lifts[0]))), 20), verdict)
    };
    let (alone, verdict) = checked(&job);
    for count in [0, 100, 1_000, 10_000] {
        job.surroundings.things = out_of_reach(count, stand, &mut Seeded(count as u64)).into();
        let start = Instant::now();
        drop(black_box(check_lift(&job, &job.lifts[0])));
        let first = start.elapsed().as_secs_f64();
        let (check, same) = checked(&job);
        assert_eq!(same, verdict, "what is out of reach changes nothing");
        let things = &job.surroundings.things;
        let aside = |(low, high): (DVec2, DVec2)| (low - stand).max(stand - high).max(DVec2::ZERO).length();
        let far = |t: &Thing| t.bounds().is_some_and(|b| aside(b) > 20.0);
        let bounds = median(|| assert!(black_box(things).iter().all(far)), 1);
        let nearest =
            || things.iter().map(|t| distance_thing(black_box(&part), t).metres()).fold(f64::INFINITY, f64::min);
        let exact = median(|| assert!(nearest() > 20.0), 1);
        println!(
            "{count:>6} things: {:>7.1} µs, {:.2} times that without; bounds of every thing {:.2}, every thing exactly \
             {:.1} times the check; the first check, which makes the index, {:.2} ms",
            check * 1e6,
            check / alone,
            bounds / check,
            exact / check,
            first * 1e3,
        );
    }
    let post = |x: f64, y: f64| thing(PlanShape::Round { centre: stand + DVec2::new(x, y), radius: 0.1 }, 104.0);
    job.surroundings.things.extend([post(4.0, 2.0), post(-5.0, 4.0)]);
    let (near, _) = checked(&job);
    println!("two posts within reach besides: {:.1} times the check without", near / alone);
}
