//! Things, zones, digs and buried things refuse a lift that meets them, and only that.

use crate::lines::sampled_parts;
use crate::never_pass::demo;
use evidence::{Finding, Status};
use geometry::DVec2;
use planning::{Job, check_lift};
use site::{
    Body, Buried, BuriedKind, DayTime, Excavation, PlanArea, PlanShape, Support, Thing, ThingKind, Zone, ZoneRule,
};

/// The first lift of the demo job alone, without acceptances about buried things.
fn job() -> Job {
    let mut job = demo();
    job.lifts.truncate(1);
    job
}

fn findings(job: &Job, check: &str) -> Vec<Finding> {
    check_lift(job, &job.lifts[0]).unwrap().findings().into_iter().filter(|f| f.check == check).collect()
}

/// A post of 0.2 m beside the straight way from the stand to the landing.
fn post(job: &Job, along: f64, aside: f64, top: Option<f64>) -> Thing {
    let lift = &job.lifts[0];
    let forward = DVec2::new(lift.stand.heading.cos(), lift.stand.heading.sin());
    let centre = lift.stand.at + forward * along + forward.perp() * aside;
    Thing {
        id: "post".into(),
        name: "Post".into(),
        kind: ThingKind::Mast,
        body: Body::Upright { shape: PlanShape::Round { centre, radius: 0.1 }, base: None, top },
        openings: Vec::new(),
        accuracy: 0.05,
        source: "made".into(),
    }
}

/// Moved aside step by step, a post turns from no-go to go once, at the required distance.
#[test]
fn a_post_beside_the_boom_turns_the_verdict_once() {
    let mut free = false;
    let mut refused = 0;
    for step in 0..80 {
        let mut job = job();
        let thing = post(&job, 2.0, f64::from(step) * 0.1, Some(200.0));
        job.surroundings.things.push(thing);
        let found = findings(&job, "obstacles");
        let about = found.iter().find(|f| f.demand.is_some()).unwrap();
        let (required, distance) = (about.demand.unwrap().si, about.limit.unwrap().si);
        assert_eq!(about.status == Status::NoGo, distance < required, "step {step}: {distance} of {required}");
        assert!(!(free && about.status == Status::NoGo), "step {step}: no way back");
        free |= about.status == Status::Go;
        refused += usize::from(about.status == Status::NoGo);
    }
    assert!(free && refused > 5, "{refused}");
}

/// What is not known never passes: the same post of unknown height cannot be told, where one of no height
/// would be passed over.
#[test]
fn a_post_of_unknown_height_under_the_boom_cannot_be_told() {
    let mut job = job();
    let thing = post(&job, 2.0, 0.0, None);
    job.surroundings.things.push(thing);
    let found = findings(&job, "obstacles");
    assert!(found.iter().any(|f| f.status == Status::CannotTell && f.demand.is_some()), "{found:#?}");
    let far = post(&job, 500.0, 0.0, None);
    job.surroundings.things = vec![far].into();
    assert!(findings(&job, "obstacles").iter().all(|f| f.status != Status::CannotTell));
}

/// A block with the landing on its top and its front face so far ahead of the stand.
fn block(job: &Job, face: f64) -> Thing {
    let lift = &job.lifts[0];
    let landing = &job.landings[lift.landing];
    let forward = DVec2::new(lift.stand.heading.cos(), lift.stand.heading.sin());
    let corner = |along: f64, aside: f64| lift.stand.at + forward * along + forward.perp() * aside;
    let outer = vec![corner(face, -9.0), corner(face + 30.0, -9.0), corner(face + 30.0, 9.0), corner(face, 9.0)];
    let mut block = post(job, 0.0, 0.0, None);
    let shape = PlanShape::Area(PlanArea { outer, holes: Vec::new() });
    block.body = Body::Upright { shape, base: None, top: Some(landing.level) };
    block
}

/// Load and forks driven into the front face of what carries the landing are a hit, set down on its top
/// they are not: landings from 1.5 to 7.5 m high, stands from near to far, against the corners of load and
/// backrest in 300 poses a leg.
#[test]
fn what_carries_the_landing_is_hit_in_its_face_and_not_on_its_top() {
    let (mut hit, mut clear) = (0, 0);
    for height in 0..5 {
        for back in 0..5 {
            let mut job = job();
            let (stand, back) = (job.lifts[0].stand, f64::from(back));
            let landing = job.lifts[0].landing;
            job.landings[landing].level = 101.5 + 1.5 * f64::from(height);
            job.lifts[0].stand.at -= DVec2::new(stand.heading.cos(), stand.heading.sin()) * back;
            let ahead = (job.landings[landing].at - job.lifts[0].stand.at).length();
            let Some((body, tool)) = sampled_parts(&job) else { continue };
            for face in [0.7, 1.2] {
                let face = ahead - face;
                let top = job.landings[landing].level;
                let along = |p: &geometry::DVec3| {
                    (p.truncate() - job.lifts[0].stand.at).dot(DVec2::new(stand.heading.cos(), stand.heading.sin()))
                };
                // How far the points get into what is further down than `under` from the top, m.
                let into = |points: &[geometry::DVec3], under: f64| {
                    let low = points.iter().map(|p| (along(p) - face).min(top - under - p.z));
                    low.fold(f64::NEG_INFINITY, f64::max)
                };
                job.surroundings.things = vec![block(&job, face)].into();
                let found = findings(&job, "obstacles");
                let about = found.iter().find(|f| f.demand.is_some()).unwrap();
                let distance = about.limit.unwrap().si;
                let what = format!("{height} {back} {face}: {distance}");
                if into(&tool, 0.6) > 0.02 {
                    hit += 1;
                    assert_eq!((about.status, distance), (Status::NoGo, 0.0), "{what}");
                } else if into(&tool, 0.6) < -0.25 && into(&body, 0.0) < -0.6 {
                    // The solids are drawn a little large round blades, backrest and boom.
                    clear += 1;
                    assert!(distance > 0.0, "{what}");
                }
            }
        }
    }
    assert!(hit > 8 && clear > 8, "{hit} {clear}");
}

fn around_stand(job: &Job, radius: f64) -> PlanShape {
    PlanShape::Round { centre: job.lifts[0].stand.at, radius }
}

fn zone(job: &Job, rule: ZoneRule, times: Vec<DayTime>) -> Zone {
    let shape = around_stand(job, 3.0);
    Zone { id: "z".into(), name: "Zone".into(), shape, rule, times, by: "A. Planner".into() }
}

#[test]
fn zones_refuse_always_or_at_their_times() {
    let morning = || vec![DayTime { from: 420, to: 570 }];
    let cases = [
        (ZoneRule::NoGo, Vec::new(), "obstacles", Some(Status::NoGo)),
        (ZoneRule::NoGo, morning(), "obstacles", Some(Status::Condition)),
        (ZoneRule::People, Vec::new(), "people", Some(Status::NoGo)),
        (ZoneRule::People, morning(), "people", Some(Status::Condition)),
        (ZoneRule::Speed { most: 2.0 }, Vec::new(), "people", None),
    ];
    for (rule, times, check, expected) in cases {
        let mut job = job();
        let before = findings(&job, check).len();
        let set = zone(&job, rule, times.clone());
        job.surroundings.zones.push(set);
        let found = findings(&job, check);
        match expected {
            Some(status) => {
                assert_eq!(found.len(), before + 1, "{rule:?}");
                assert!(found.iter().any(|f| f.status == status && f.message.id.starts_with("zone-")), "{rule:?}");
            }
            None => assert_eq!(found.len(), before, "{rule:?}"),
        }
    }
}

#[test]
fn nobody_stands_in_a_dig_or_over_what_is_not_cleared() {
    let mut job = job();
    let at = job.lifts[0].stand.at;
    let corner = |x: f64, y: f64| at + DVec2::new(x, y);
    let outer = vec![corner(-5.0, -5.0), corner(5.0, -5.0), corner(5.0, 5.0), corner(-5.0, 5.0)];
    job.surroundings.excavations.push(Excavation {
        id: "t".into(),
        name: "Trench".into(),
        outline: PlanArea { outer, holes: Vec::new() },
        depth: None,
        soil: None,
        support: Support::NotKnown,
        standing: site::OpenSides::default(),
        source: "made".into(),
    });
    assert!(findings(&job, "edges").iter().any(|f| f.status == Status::NoGo));
    job.surroundings.excavations.clear();
    let shape = around_stand(&job, 4.0);
    job.surroundings.buried.push(Buried {
        id: "b".into(),
        name: "Drain".into(),
        kind: BuriedKind::Pipe,
        shape,
        cover: None,
        allowed_pressure: None,
        wall: None,
        around: None,
        source: "owner's plan".into(),
    });
    let over = |job: &Job| {
        let found = findings(job, "buried");
        found.into_iter().find(|f| f.message.id == "stands-over-buried").unwrap().status
    };
    assert_eq!(over(&job), Status::CannotTell, "the demo job's person spoke of what nobody listed");
    job.acceptances.retain(|a| a.matter != planning::Matter::Buried);
    job.lifts[0].acceptances.retain(|a| a.matter != planning::Matter::Buried);
    assert_eq!(over(&job), Status::CannotTell);
}

/// A trench along the right wheels: the distance is that of the nearest wheel, on whichever side it lies.
#[test]
fn a_trench_is_as_near_as_the_nearest_wheel() {
    for side in [1.0, -1.0] {
        let mut job = job();
        let stand = job.lifts[0].stand;
        let half = job.machines[job.lifts[0].machine].machine.contacts(job.lifts[0].support)[0].y;
        let forward = DVec2::new(stand.heading.cos(), stand.heading.sin());
        let left = forward.perp() * side;
        let corner = |along: f64, off: f64| stand.at + forward * along + left * (half + off);
        job.surroundings.excavations.push(Excavation {
            id: "t".into(),
            name: "Trench".into(),
            outline: PlanArea {
                outer: vec![corner(-8.0, 0.5), corner(3.0, 0.5), corner(3.0, 1.5), corner(-8.0, 1.5)],
                holes: Vec::new(),
            },
            depth: Some(evidence::Ranged::plus_minus(1.2, 0.1)),
            soil: None,
            support: Support::None,
            standing: site::OpenSides::default(),
            source: "made".into(),
        });
        let found = findings(&job, "edges");
        let near = found.iter().find(|f| f.message.id == "near-excavation").unwrap();
        assert_eq!(near.status, Status::NoGo);
        let Some(evidence::Arg::Quantity(distance)) = near.message.arg("distance") else { panic!("a distance") };
        // Half a metre, less the stand's error; levelled slopes shorten plan lengths by millimetres.
        let tyre = quantity::Si::si(&job.machines[job.lifts[0].machine].machine.front.tyre.width);
        let expected = 0.5 - tyre / 2.0 - job.policy.stand_error;
        assert!((distance.si - expected).abs() < 0.02, "{side}: {} {expected}", distance.si);
        job.surroundings.excavations[0].support = Support::Supported { by: Some("E. Engineer".into()) };
        assert!(findings(&job, "edges").iter().any(|f| f.message.id == "near-supported-excavation"));
        job.surroundings.excavations[0].depth = None;
        assert!(findings(&job, "edges").iter().any(|f| f.status == Status::CannotTell));
    }
}
