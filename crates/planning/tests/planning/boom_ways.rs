//! Ways of the boom round what stands in its plain way.

use crate::boom_rig::Rig;
use crate::never_pass::demo;
use evidence::{Arg, Finding, Message, Status};
use geometry::DVec2;
use planning::{BoomMovement, Job, Plan, check_lift, plan};
use site::{Body, Grid, GroundSource, Opening, PlanArea, PlanShape, Terrain, Thing, ThingKind, distance_thing};

/// The demo's first lift alone with a third of its load, on a level plane at 100 m, known well, its landing so far ahead
/// of the stand (middle of the front axle) and so high over the plane, m.
pub(crate) fn scene(ahead: f64, height: f64) -> Job {
    let mut job = demo();
    job.lifts.truncate(1);
    job.lines.clear();
    job.policy.stand_error = 0.02;
    let north_west = DVec2::new(-60.0, 120.0);
    let grid = Grid { north_west, cell: DVec2::ONE * 10.0, rows: 19, cols: 19, heights: vec![100.0; 19 * 19] };
    let terrain = Terrain::Grid(grid);
    job.ground.surfaces = vec![GroundSource { name: "plane".into(), terrain, accuracy: 0.002, date: None }];
    let lift = &mut job.lifts[0];
    let unit = &mut job.machines[lift.machine];
    unit.machine.boom.flex = 0.02;
    let load = &mut job.loads[lift.load];
    for mass in [&mut load.mass_kg.low, &mut load.mass_kg.nominal, &mut load.mass_kg.high] {
        *mass *= 0.3;
    }
    let forward = DVec2::new(lift.stand.heading.cos(), lift.stand.heading.sin());
    let landing = &mut job.landings[lift.landing];
    landing.at = lift.stand.at + forward * ahead;
    landing.level = 100.0 + height;
    job
}

fn forward(job: &Job) -> DVec2 {
    DVec2::new(job.lifts[0].stand.heading.cos(), job.lifts[0].stand.heading.sin())
}

pub(crate) fn place(job: &Job, ahead: f64, aside: f64) -> DVec2 {
    job.lifts[0].stand.at + forward(job) * ahead + forward(job).perp() * aside
}

/// Something square to the heading, from `near` to `far` ahead of the stand and `half` to both sides, from `base` to
/// `top` over the plane, m.
pub(crate) fn block(job: &Job, name: &str, [near, far]: [f64; 2], half: f64, base: Option<f64>, top: f64) -> Thing {
    let outer = [(near, -half), (far, -half), (far, half), (near, half)]
        .map(|(ahead, aside)| place(job, ahead, aside))
        .to_vec();
    Thing {
        id: name.into(),
        name: name.into(),
        kind: ThingKind::Wall,
        body: Body::Upright {
            shape: PlanShape::Area(PlanArea { outer, holes: Vec::new() }),
            base: base.map(|b| 100.0 + b),
            top: Some(100.0 + top),
        },
        openings: Vec::new(),
        accuracy: 0.01,
        source: "made".into(),
    }
}

/// A house front from `near` on, as wide as `half` to both sides, with one opening in its front in the boom's plane.
pub(crate) fn house(job: &Job, [near, far]: [f64; 2], top: f64, [sill, head]: [f64; 2], width: f64) -> Thing {
    let mut house = block(job, "House", [near, far], 6.0, None, top);
    let jamb = |aside: f64| place(job, near, aside);
    house.openings =
        vec![Opening { from: jamb(-width / 2.0), to: jamb(width / 2.0), sill: 100.0 + sill, head: 100.0 + head }];
    house
}

pub(crate) fn with(mut job: Job, things: impl IntoIterator<Item = Thing>) -> Job {
    job.surroundings.things = things.into_iter().collect();
    job
}

pub(crate) fn finding(job: &Job, check: &str) -> Option<Finding> {
    check_lift(job, &job.lifts[0]).unwrap().findings().into_iter().find(|f| f.check == check)
}

/// The movement; `None` for a no-go.
pub(crate) fn movement(job: &Job) -> Option<BoomMovement> {
    check_lift(job, &job.lifts[0]).unwrap().movement()
}

fn said(message: &Message) -> Vec<String> {
    let inner = message.args.iter().filter_map(|(_, arg)| if let Arg::Message(m) = arg { Some(said(m)) } else { None });
    let mut all: Vec<String> = inner.flatten().collect();
    all.push(message.id.to_string());
    all
}

/// Ids of the steps in order, without what is to be watched.
fn ids(moves: &BoomMovement) -> Vec<String> {
    moves.steps.iter().skip(1).filter_map(|s| said(&s.what).into_iter().next()).collect()
}

#[test]
fn with_nothing_in_the_way_the_plain_movement_is_taken() {
    for (ahead, height) in [(5.0, 1.0), (6.0, 4.0), (7.0, 6.0), (8.0, 2.0)] {
        let job = scene(ahead, height);
        let moves = movement(&job).unwrap();
        assert!(moves.plain, "{ahead} {height}");
        assert!(finding(&job, "movement").is_none());
        assert_eq!(
            ids(&moves),
            ["step-raise", "step-way-extend", "step-set-down", "step-withdraw", "step-way-retract", "step-way-lower"]
        );
        // Beside the way, far enough off, a mast changes nothing.
        let mut mast = block(&job, "Mast", [4.0, 4.2], 0.1, None, 12.0);
        if let Body::Upright { shape, .. } = &mut mast.body {
            *shape = PlanShape::Round { centre: place(&job, 4.0, 3.0), radius: 0.1 };
        }
        let moved = movement(&with(job, [mast])).unwrap();
        assert_eq!(moved.steps, moves.steps);
    }
}

#[test]
fn over_a_parapet_the_boom_goes_higher_before_it_extends_and_lowers_after() {
    let open = scene(7.0, 4.0);
    let plain = movement(&open).unwrap();
    for top in [2.9, 3.3] {
        let parapet = block(&open, "Parapet", [3.8, 4.0], 9.0, None, top);
        let job = with(scene(7.0, 4.0), [parapet]);
        let said = finding(&job, "movement").unwrap();
        assert_eq!(said.status, Status::Condition);
        assert_eq!(finding(&job, "obstacles").unwrap().status, Status::Go);
        let moves = movement(&job).unwrap();
        assert!(!moves.plain);
        assert_eq!(
            ids(&moves),
            [
                "step-raise",
                "step-way-extend",
                "step-way-lower",
                "step-set-down",
                "step-way-withdraw",
                "step-way-raise",
                "step-way-retract",
                "step-way-lower"
            ]
        );
        assert!(moves.steps[1].angle_rad > plain.steps[1].angle_rad + 0.03);
        // The landing's own positions stay.
        assert!((moves.steps[4].angle_rad - plain.steps[3].angle_rad).abs() < 1e-9);
        let least = moves.smallest.unwrap();
        assert!(least.reserve > 0.0 && least.reserve < 0.3, "{least:?}");
    }
    let job = with(scene(7.0, 4.0), [block(&open, "Parapet", [3.8, 4.0], 9.0, None, 3.6)]);
    let said = finding(&job, "movement").unwrap();
    assert_eq!((said.status, &*said.message.id), (Status::NoGo, "movement-landing"));
    assert!(movement(&job).is_none());
}

/// A line far behind the machine is never what is in the way.
#[test]
fn what_is_named_is_what_is_near() {
    let open = scene(7.0, 4.0);
    let mut refused = 0;
    for step in 0..12 {
        let top = 3.4 + 0.11 * f64::from(step);
        let mut job = with(scene(7.0, 4.0), [block(&open, "Parapet", [3.8, 4.0], 9.0, None, top)]);
        job.lines = demo().lines;
        let Some(said) = finding(&job, "movement").filter(|f| f.status == Status::NoGo) else { continue };
        refused += 1;
        let words = format!("{:?}", said.message);
        assert!(words.contains("Parapet") && !words.contains(&job.lines[0].name), "{top}: {words}");
    }
    assert!(refused > 8, "{refused}");
}

/// The plan tells the order, keeps it in its JSON, and its tolerances hold for the same movement: with a third of the
/// load of a lift that bears far more, none has turned before anything is changed.
#[test]
fn the_plan_tells_the_order_and_what_else_it_bears() {
    let open = scene(7.0, 4.0);
    let job = with(scene(7.0, 4.0), [block(&open, "Parapet", [3.8, 4.0], 9.0, None, 2.9)]);
    let plan = plan(&job);
    let lift = &plan.lifts[0];
    let moves = lift.movement.as_ref().unwrap();
    assert!(!moves.plain);
    let at = lift.steps.iter().position(|s| s.id == "step-way-order").unwrap();
    assert!(lift.steps[..at].iter().any(|s| s.id == "step-read-level"));
    // The load is on: trial lift first, then every step that the movement has.
    assert_eq!(lift.steps[at + 1].id, "step-trial-lift");
    let told: Vec<_> = moves.steps.iter().skip(1).map(|s| s.what.clone()).collect();
    assert_eq!(lift.steps[at + 2..at + 2 + told.len()], told);
    assert_eq!(lift.steps[at + 2 + told.len()].id, "step-way-carry");
    for t in &lift.tolerances {
        assert!(t.at_worst.most > 0.0 && t.alone.as_ref().is_none_or(|b| b.most > 0.0), "{t:?}");
    }
    assert_eq!(lift.tolerances.len(), 6);
    let again: Plan = serde_json::from_str(&serde_json::to_string(&plan).unwrap()).unwrap();
    assert_eq!(again.lifts[0].movement, lift.movement);
}

#[test]
fn through_an_opening_nearly_level() {
    let open = scene(7.0, 1.2);
    for (sill, head, plain) in [(1.2, 4.0, false), (1.2, 3.6, false), (0.6, 3.3, true)] {
        let job = with(scene(7.0, 1.2), [house(&open, [3.8, 9.0], 9.0, [sill, head], 3.0)]);
        let found = finding(&job, "obstacles").unwrap();
        assert_eq!(found.status, Status::Go, "{sill} {head}: {found:?}");
        assert_eq!(movement(&job).unwrap().plain, plain, "{sill} {head}");
    }
    let narrow = with(scene(7.0, 1.2), [house(&open, [3.8, 9.0], 9.0, [1.2, 4.0], 1.5)]);
    let said = finding(&narrow, "movement").unwrap();
    assert_eq!((said.status, &*said.message.id), (Status::NoGo, "movement-none-narrow"));
    let missing = said.message.args.iter().find(|(name, _)| *name == "missing").unwrap();
    let Arg::Quantity(missing) = &missing.1 else { panic!("{missing:?}") };
    let required = finding(&narrow, "obstacles").unwrap().demand.unwrap().si;
    let load = &narrow.loads[narrow.lifts[0].load];
    let widest = load.width.max(2.0 * machine::CARRIAGE_HALF);
    assert!((missing.si - (widest + 2.0 * required - 1.5)).abs() < 1e-9);
    // What it says is missing is what it takes.
    let wider = house(&open, [3.8, 9.0], 9.0, [1.2, 4.0], 1.5 + missing.si + 0.04);
    assert!(movement(&with(scene(7.0, 1.2), [wider])).is_some());
}

/// A demand that is no number leaves no room anywhere, and nobody says how much is missing.
#[test]
fn a_distance_that_is_no_number_is_no_room() {
    let open = scene(7.0, 4.0);
    let mut parapet = block(&open, "Parapet", [3.8, 4.0], 9.0, None, 2.9);
    parapet.accuracy = f64::NAN;
    let said = finding(&with(scene(7.0, 4.0), [parapet]), "movement").unwrap();
    assert_eq!((said.status, &*said.message.id), (Status::NoGo, "movement-none-touches"));
}

/// The stand that is named passes every check there, not only those that go with place and weight.
#[test]
fn a_stand_that_is_named_passes_whole() {
    let open = scene(7.0, 4.0);
    let mut named = 0;
    for near in [3.0, 3.2, 3.4, 3.6, 3.8] {
        for top in [2.9, 3.3, 3.6, 4.0] {
            let job = with(scene(7.0, 4.0), [block(&open, "Parapet", [near, near + 0.2], 9.0, None, top)]);
            let Some(said) = finding(&job, "movement") else { continue };
            let tried = |said: &Finding| said.remedies.iter().any(|m| m.id.starts_with("do-stand-"));
            if said.status != Status::NoGo || !tried(&said) {
                continue;
            }
            named += 1;
            let mut unknown = job.clone();
            let mut line = demo().lines[0].clone();
            line.voltage = None;
            unknown.lines = vec![line];
            assert!(!tried(&finding(&unknown, "movement").unwrap()), "{near} {top}");
        }
    }
    assert!(named > 0);
}

#[test]
fn behind_a_wall_there_is_no_way() {
    let open = scene(7.0, 4.0);
    let job = with(scene(7.0, 4.0), [block(&open, "Wall", [3.8, 4.0], 9.0, None, 30.0)]);
    assert!(movement(&job).is_none());
    assert_eq!(finding(&job, "movement").unwrap().status, Status::NoGo);
    assert_eq!(check_lift(&job, &job.lifts[0]).unwrap().verdict(), evidence::Verdict::NoGo);
}

/// Random scenes: a landing, and one to three things of the usual kinds in the boom's plane.
fn random_scene(random: &mut Seeded) -> (Job, Vec<Thing>) {
    let (ahead, height) = (random.between(6.5, 9.5), random.between(0.8, 6.0));
    let job = scene(ahead, height);
    let mut things = Vec::new();
    let near = random.between(3.6, ahead - 1.5);
    match random.below(4) {
        0 => things.push(block(&job, "Parapet", [near, near + 0.3], 9.0, None, random.between(0.5, height + 1.0))),
        1 => {
            let base = random.between(height, height + 4.0);
            things.push(block(&job, "Beam", [near, near + 0.5], 9.0, Some(base), base + 0.6));
        }
        2 => {
            let sill = height + random.between(-1.5, 0.2);
            let head = sill + random.between(2.0, 4.5);
            things.push(house(&job, [near, near + 12.0], 14.0, [sill, head], random.between(2.0, 4.0)));
        }
        _ => {
            things.push(block(&job, "Wall", [near, near + 0.2], 9.0, None, random.between(0.5, height)));
            let base = random.between(height + 1.5, height + 5.0);
            things.push(block(&job, "Beam", [near + 0.4, near + 0.9], 9.0, Some(base), base + 0.4));
        }
    }
    (job, things)
}

/// Every movement that is told keeps its distance and stays on the chart, sampled at 2,000 positions and more with
/// solids of its own; where there is nothing in the way, and only then, nothing but the plain one is told.
#[test]
fn every_movement_found_is_free_and_charted_at_2_000_positions() {
    let mut random = Seeded(7);
    let (mut plain, mut other, mut none) = (0, 0, 0);
    for case in 0..60 {
        let (job, things) = random_scene(&mut random);
        let job = with(job, things.clone());
        let Some(moves) = movement(&job) else {
            none += 1;
            continue;
        };
        if moves.plain {
            plain += 1;
        } else {
            other += 1;
        }
        let rig = Rig::new(&job);
        let lift = &job.lifts[0];
        let machine = &job.machines[lift.machine].machine;
        let attachment = machine.attachment(&lift.attachment).unwrap();
        let chart = machine.charts.iter().find(|c| c.attachment == lift.attachment).unwrap();
        let mass = job.loads[lift.load].mass_kg.high;
        let (level, upstand) = (job.landings[lift.landing].level, job.landings[lift.landing].upstand);
        let required = finding(&job, "obstacles").unwrap().demand.unwrap().si;
        let positions = rig.sampled(&moves, 2_000 / (moves.steps.len() - 1) + 1);
        assert!(positions.len() >= 2_000);
        for (boom, loaded) in &positions {
            let solids = rig.solids(boom.angle, boom.extension);
            for thing in &things {
                let over_sill = thing.openings.iter().any(|o| (-0.3..=upstand).contains(&(o.sill - level)));
                let mut seen = thing.clone();
                seen.openings.iter_mut().filter(|_| over_sill).for_each(|o| o.sill -= 50.0);
                for (part, solid) in solids.iter().enumerate() {
                    let thing = if part < 2 { thing } else { &seen };
                    let distance = distance_thing(solid, thing).metres();
                    assert!(distance >= required - 1e-6, "case {case}, part {part}: {distance} {required} {boom:?}");
                }
            }
            if *loaded && boom.extension > 0.5 {
                let tool = rig.pins(boom.angle, boom.extension)[2];
                let at = chart.point_of(machine, attachment, tool);
                let machine::Reading::Within { capacity_kg, .. } = chart.read(&machine::ChartPoint::exact(at)) else {
                    panic!("case {case}: off the chart at {at} {boom:?}")
                };
                assert!(mass <= capacity_kg, "case {case}: {capacity_kg} kg at {at}");
            }
        }
    }
    assert!(plain > 5 && other > 5 && none > 5, "{plain} {other} {none}");
}

/// Turned about the stand and mirrored, the same site gives the same movement.
#[test]
fn a_mirrored_site_gives_the_mirrored_answer() {
    let mut random = Seeded(11);
    let mut other = 0;
    for _ in 0..12 {
        let (job, things) = random_scene(&mut random);
        let mirrored = things.iter().map(|thing| {
            let (at, forward) = (job.lifts[0].stand.at, forward(&job));
            let flip = |p: DVec2| {
                let d = p - at;
                at + forward * d.dot(forward) - forward.perp() * d.dot(forward.perp())
            };
            let mut thing = thing.clone();
            if let Body::Upright { shape: PlanShape::Area(area), .. } = &mut thing.body {
                area.outer.iter_mut().for_each(|p| *p = flip(*p));
                area.outer.reverse();
            }
            for o in &mut thing.openings {
                (o.from, o.to) = (flip(o.from), flip(o.to));
            }
            thing
        });
        let there = with(job.clone(), mirrored.collect::<Vec<_>>());
        let here = with(job.clone(), things);
        let (a, b) = (movement(&here), movement(&there));
        assert_eq!(a.is_some(), b.is_some());
        if let (Some(a), Some(b)) = (a, b) {
            other += usize::from(!a.plain);
            assert_eq!(a.plain, b.plain);
            assert_eq!(ids(&a), ids(&b));
            for (a, b) in a.steps.iter().zip(&b.steps) {
                assert!((a.angle_rad - b.angle_rad).abs() < 1e-9 && (a.extension_m - b.extension_m).abs() < 1e-9);
            }
        }
    }
    assert!(other > 0);
}

/// The forks' straight way out, of 1,000 positions: every point of it on the line to a nanometre, the forks level, by
/// inverse kinematics written here.
#[test]
fn forks_are_drawn_out_on_a_level_line() {
    let mut random = Seeded(5);
    let job = scene(6.0, 4.0);
    let rig = Rig::new(&job);
    let machine = &job.machines[job.lifts[0].machine].machine;
    let attachment = machine.attachment("forks").unwrap();
    let mut asked = 0;
    while asked < 1_000 {
        let down = (random.between(-0.15, 1.2), random.between(1.5, rig.longest));
        let heel = rig.pins(down.0, down.1)[2];
        let back = DVec2::from_angle(rig.tilt) * -1.2;
        let end = rig.solve(heel + back);
        if end.1 < 0.0 || end.1 > rig.longest || end.0 > 1.23 || end.0 < -0.19 {
            continue;
        }
        asked += 1;
        for i in 0..=20 {
            let to = heel + back * (f64::from(i) / 20.0);
            let boom = machine::kinematics::position_for(&machine.boom, attachment, to, rig.tilt).unwrap();
            let there = rig.pins(boom.angle, boom.extension)[2];
            let off = (there - heel).perp_dot(back.normalize());
            assert!(off.abs() < 1e-9 && there.distance(to) < 1e-9, "{off} {there} {to}");
            assert!((boom.fork_tilt - rig.tilt).abs() < 1e-15);
            let (angle, extension) = rig.solve(to);
            assert!((boom.angle - angle).abs() < 1e-9 && (boom.extension - extension).abs() < 1e-9);
        }
    }
    // And as the plan tells it.
    let moves = movement(&job).unwrap();
    assert_eq!(moves.steps[0].what.id, "step-way-start");
    let at = |i: usize| rig.pins(moves.steps[i].angle_rad, moves.steps[i].extension_m)[2];
    let drawn = at(4) - at(3);
    assert!((drawn.length() - 1.2).abs() < 1e-9 && drawn.perp_dot(DVec2::from_angle(rig.tilt)).abs() < 1e-9);
}

pub(crate) struct Seeded(pub(crate) u64);

impl Seeded {
    pub(crate) fn next(&mut self) -> f64 {
        self.0 = self.0.wrapping_add(0x9E37_79B9_7F4A_7C15);
        let mut z = self.0;
        z = (z ^ (z >> 30)).wrapping_mul(0xBF58_476D_1CE4_E5B9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94D0_49BB_1331_11EB);
        ((z ^ (z >> 31)) >> 11) as f64 / (1u64 << 53) as f64
    }

    pub(crate) fn between(&mut self, low: f64, high: f64) -> f64 {
        low + (high - low) * self.next()
    }

    pub(crate) fn below(&mut self, count: u32) -> u32 {
        (self.next() * f64::from(count)) as u32
    }
}
