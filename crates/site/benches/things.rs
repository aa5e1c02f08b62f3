//! The thing nearest to a machine among 100, 1,000 and 10,000: the index as a ratio to asking every
//! thing exactly, in the same run. Best of five; both answers are compared.

#![allow(
    clippy::unwrap_used,
    clippy::print_stdout,
    clippy::disallowed_methods,
    reason = "a bench measures time and prints its result"
)]

use geometry::{Capsule, DVec2, DVec3, OrientedBox, Pose, Segment, Solid};
use site::{Body, PlanArea, PlanShape, Thing, ThingIndex, ThingKind, distance_thing};
use std::time::Instant;

/// Machines asked for in one round.
const ASKED: usize = 200;
/// Things farther than this are no matter, m.
const REACH: f64 = 10.0;

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

/// One thing on about 25 × 25 m, whatever their number: houses, walls, trees.
fn things(count: usize, random: &mut Seeded) -> Vec<Thing> {
    let side = (count as f64).sqrt() * 25.0;
    (0..count)
        .map(|i| {
            let at = DVec2::new(random.next(), random.next()) * side;
            let shape = match i % 3 {
                0 => {
                    let (w, d) = (4.0 + 8.0 * random.next(), 4.0 + 6.0 * random.next());
                    let corners = [(0.0, 0.0), (w, 0.0), (w, d), (0.6 * w, d), (0.6 * w, 1.4 * d), (0.0, 1.4 * d)];
                    let outer = corners.map(|(x, y)| at + DVec2::new(x, y)).to_vec();
                    PlanShape::Area(PlanArea { outer, holes: Vec::new() })
                }
                1 => {
                    let end = at + DVec2::new(6.0 * random.next(), 6.0 * random.next());
                    PlanShape::Strip { course: vec![at, end], width: 0.3 }
                }
                _ => PlanShape::Round { centre: at, radius: 0.5 + 2.0 * random.next() },
            };
            Thing {
                id: String::new(),
                name: String::new(),
                kind: ThingKind::Building,
                body: Body::Upright { shape, base: None, top: Some(2.0 + 8.0 * random.next()) },
                openings: Vec::new(),
                accuracy: 0.1,
                source: String::new(),
            }
        })
        .collect()
}

/// Frame, boom and load of a machine somewhere.
fn machine(side: f64, random: &mut Seeded) -> [Solid; 3] {
    let at = DVec3::new(random.next() * side, random.next() * side, 0.0);
    let (s, c) = (random.next() * std::f64::consts::TAU).sin_cos();
    let forward = DVec3::new(c, s, 0.0);
    let pose = |p: DVec3| Pose::from_axes(forward, forward.truncate().perp().extend(0.0), p);
    let cuboid = |p, half| Solid::Box(OrientedBox { outer_from_box: pose(p), half });
    let end = at + forward * 8.0 + DVec3::Z * 6.0;
    [
        cuboid(at + DVec3::Z, DVec3::new(2.5, 1.2, 1.0)),
        Solid::Capsule(Capsule { axis: Segment { a: at + DVec3::Z * 1.5, b: end }, radius: 0.3 }),
        cuboid(end, DVec3::new(0.6, 0.6, 0.5)),
    ]
}

fn main() {
    // Tests build and start every target; only `cargo bench` says so.
    if !std::env::args().any(|a| a == "--bench") {
        return;
    }
    for count in [100, 1_000, 10_000] {
        let mut random = Seeded(count as u64);
        let things = things(count, &mut random);
        let side = (count as f64).sqrt() * 25.0;
        let machines: Vec<[Solid; 3]> = (0..ASKED).map(|_| machine(side, &mut random)).collect();
        let built = Instant::now();
        let index = ThingIndex::new(&things);
        let built = built.elapsed().as_secs_f64();
        let (fast, found) = best(|| {
            let asked = machines.iter().map(|m| index.nearest(&things, m, REACH).map(|(_, d)| d.metres()));
            asked.collect::<Vec<_>>()
        });
        let (slow, all) = best(|| {
            let least = |m: &[Solid; 3]| {
                let every = things
                    .iter()
                    .flat_map(|t| m.iter().map(move |s| (distance_thing(s, t).metres() - t.accuracy).max(0.0)));
                every.fold(f64::INFINITY, f64::min)
            };
            machines.iter().map(|m| Some(least(m)).filter(|d| *d < REACH)).collect::<Vec<_>>()
        });
        assert_eq!(found, all);
        println!(
            "{count} things: index built in {:.2} ms; one machine {:.1} µs, every thing {:.1} µs: {:.0} times faster",
            built * 1e3,
            fast * 1e6 / ASKED as f64,
            slow * 1e6 / ASKED as f64,
            slow / fast
        );
    }
}

fn best<T>(run: impl Fn() -> T) -> (f64, T) {
    let mut least = f64::INFINITY;
    let mut last = None;
    for _ in 0..5 {
        let start = Instant::now();
        last = Some(run());
        least = least.min(start.elapsed().as_secs_f64());
    }
    (least, last.unwrap())
}
