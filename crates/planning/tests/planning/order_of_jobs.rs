//! The order of whole jobs: landings, windows, cranes, and what is said of lifts that have no place.

use crate::never_pass::demo;
use crate::ordering::Random;
use evidence::Verdict;
use geometry::DVec2;
use planning::order::{Candidate, JobOrder, OrderTimes, WhyLeftOut, order};
use planning::{Crane, Delivery, Job, Lift, Pickup, Stand, Task, check_lift};
use quantity::Si;
use site::DayTime;

/// The first lift of the demo job, blocks to a scaffold bay, so many times.
fn blocks(times: usize) -> Job {
    let mut job = demo();
    let one = job.lifts[0].clone();
    job.lifts = (1..=times).map(|i| Lift { id: format!("b{i}"), minutes: Some(10), ..one.clone() }).collect();
    job
}

/// Each as stated, with the verdict of its own checks.
fn candidates(job: &Job) -> Vec<Candidate> {
    job.lifts.iter().map(|l| Candidate::stated(l, check_lift(job, l).map(|c| c.verdict()))).collect()
}

fn ordered(job: &Job) -> JobOrder {
    order(job, &candidates(job), &OrderTimes::default())
}

fn ids(order: &JobOrder) -> Vec<&str> {
    order.lifts.iter().map(|l| l.lift.as_str()).collect()
}

fn at(hours: u16, minutes: u16) -> f64 {
    f64::from(hours * 60 + minutes)
}

/// A job as if the lifts of the order so far were done: what they brought lies on their landings.
fn with_done(job: &Job, order: &JobOrder, until: usize) -> Job {
    let mut job = job.clone();
    for done in &order.lifts[..until] {
        let lift = job.lifts.iter().find(|l| l.id == done.lift).unwrap().clone();
        let mass = job.loads[lift.load].mass_kg.high;
        let landing = &mut job.landings[lift.landing];
        let lies = landing.occupied.si() + if lift.task == Task::SetDown { mass } else { -mass };
        landing.occupied = quantity::kilograms(lies);
    }
    job
}

#[test]
fn no_landing_is_stacked_over_what_its_own_check_allows() {
    let job = blocks(6);
    let order = ordered(&job);
    assert!(!order.lifts.is_empty() && !order.left_out.is_empty(), "{order:#?}");
    // Each lift's own check, with what lies there by then: it passes for those that are done, and not for one more.
    for (i, done) in order.lifts.iter().enumerate() {
        let then = with_done(&job, &order, i);
        let lift = then.lifts.iter().find(|l| l.id == done.lift).unwrap();
        let landing = |job: &Job| {
            let findings = check_lift(job, lift).unwrap().findings();
            findings.into_iter().filter(|f| f.check == "landing").map(|f| f.status).max().unwrap()
        };
        assert!(landing(&then) <= evidence::Status::Condition, "{done:?}");
        let step = &order.landings[i];
        assert!(step.lay_kg <= step.may_lie_kg.unwrap(), "{step:?}");
    }
    let full = with_done(&job, &order, order.lifts.len());
    let findings = check_lift(&full, &full.lifts[0]).unwrap().findings();
    assert!(findings.iter().any(|f| f.check == "landing" && f.status == evidence::Status::NoGo));
    for left in &order.left_out {
        assert_eq!(left.kind, WhyLeftOut::Landing);
        assert_eq!(left.reason.id, "order-landing-over");
        assert!(left.reason.arg("by").is_some() && left.reason.arg("lifts").is_some());
    }
}

/// Beyond the most that an order takes, those that matter least are left out, whatever they are called.
#[test]
fn too_many_lifts_leave_out_the_lowest_priority() {
    let mut job = blocks(planning::order::MOST_LIFTS + 2);
    job.lifts[0].priority = Some(9);
    job.lifts[100].priority = Some(8);
    let all = candidates(&blocks(1));
    let all = vec![all[0].clone(); job.lifts.len()];
    let order = order(&job, &all, &OrderTimes::default());
    let many = order.left_out.iter().filter(|l| l.kind == WhyLeftOut::TooMany);
    assert_eq!(many.map(|l| l.lift.as_str()).collect::<Vec<_>>(), ["b1", "b101"]);
}

/// What is proposed for a full landing: a load taken away first gives the lift its place.
#[test]
fn taking_away_what_was_brought_makes_room() {
    let mut job = blocks(6);
    let before = ordered(&job);
    let left = before.left_out[0].clone();
    let away = left.remedies.iter().find(|m| m.id == "order-do-take-away").expect("a load may be taken away");
    let Some(evidence::Arg::Text(other)) = away.arg("lift") else { panic!("{away:?}") };
    let brought = job.lifts.iter().find(|l| l.id == *other).unwrap().clone();
    let after = job.lifts.iter().position(|l| l.id == *other).unwrap();
    job.lifts.push(Lift { id: "away".into(), task: Task::PickUp, after: vec![after], priority: Some(1), ..brought });
    let now = ordered(&job);
    assert!(now.lifts.len() >= before.lifts.len() + 2, "{:?}", ids(&now));
    let step = now.landings.iter().find(|s| s.lift == "away").unwrap();
    assert!(step.lies_kg < step.lay_kg && step.may_lie_kg.is_none());
}

#[test]
fn priorities_windows_and_what_comes_before() {
    let mut job = blocks(3);
    // A landing each, so that none is in the way of another.
    job.landings[job.lifts[0].landing].rating.as_mut().unwrap().mass = Some(quantity::kilograms(50_000.0));
    job.strengths[job.lifts[0].landing].rating.pallet = None;
    let plain = ordered(&job);
    assert_eq!(ids(&plain), ["b1", "b2", "b3"], "{:?}", plain.left_out);
    assert!(plain.exact && plain.lifts.iter().all(|l| l.stated));
    assert_eq!(plain.lifts[0].start_min, at(7, 0));
    assert_eq!(plain.lifts[2].end_min, evidence::Ranged::exact(at(7, 30)));
    assert!(plain.lifts[1].stays && !plain.lifts[0].stays);
    job.lifts[2].priority = Some(1);
    assert_eq!(ids(&ordered(&job)), ["b3", "b1", "b2"]);
    job.lifts[2].after = vec![1];
    assert_eq!(ids(&ordered(&job)), ["b2", "b3", "b1"]);
    job.lifts[0].window = Some(DayTime { from: 420, to: 431 });
    assert_eq!(ids(&ordered(&job)), ["b1", "b2", "b3"]);
    job.hours = Some(DayTime { from: 360, to: 900 });
    let early = ordered(&job);
    assert_eq!(ids(&early), ["b2", "b3", "b1"]);
    assert_eq!(early.lifts[0].start_min, at(6, 0));
    assert_eq!(early.lifts[2].start_min, at(7, 0));
    // A night shift: the small hours belong to it.
    job.hours = Some(DayTime { from: 1320, to: 360 });
    job.lifts[0].window = Some(DayTime { from: 60, to: 120 });
    let night = ordered(&job);
    assert_eq!((night.lifts[0].start_min, night.lifts[2].start_min), (at(22, 0), at(25, 0)));
}

#[test]
fn each_reason_and_its_remedy() {
    let mut job = blocks(3);
    job.landings[job.lifts[0].landing].rating.as_mut().unwrap().mass = Some(quantity::kilograms(50_000.0));
    job.strengths[job.lifts[0].landing].rating.pallet = None;
    let base = job.clone();
    let left = |job: &Job, candidates: &[Candidate]| {
        let order = order(job, candidates, &OrderTimes::default());
        order.left_out.into_iter().map(|l| (l.lift.clone(), l.kind, l)).collect::<Vec<_>>()
    };
    // Two lifts of 10 minutes in one window of 15.
    for i in [0, 1] {
        job.lifts[i].window = Some(DayTime { from: 480, to: 495 });
    }
    job.lifts[0].priority = Some(4);
    let found = left(&job, &candidates(&job));
    let [(id, kind, missed)] = &found[..] else { panic!("{found:#?}") };
    assert_eq!((id.as_str(), *kind), ("b2", WhyLeftOut::WindowMissed));
    let until = missed.remedies.iter().find(|m| m.id == "order-do-window").unwrap();
    assert_eq!(until.arg("until"), Some(&evidence::Arg::Text("08:20".into())));
    job.lifts[1].window = Some(DayTime { from: 480, to: 500 });
    assert!(left(&job, &candidates(&job)).is_empty(), "the window proposed is enough");
    job.lifts[1].window = Some(DayTime { from: 480, to: 499 });
    assert_eq!(left(&job, &candidates(&job)).len(), 1, "and none is needed less");
    let instead = missed.remedies.iter().find(|m| m.id == "order-do-leave");
    assert_eq!(instead, None, "nobody less urgent is in the way");
    job.lifts[0].priority = None;
    let found = left(&job, &candidates(&job));
    let instead = found[0].2.remedies.iter().find(|m| m.id == "order-do-leave").unwrap();
    assert_eq!(instead.arg("lift"), Some(&evidence::Arg::Text("b1".into())));

    let mut job = base.clone();
    (job.lifts[0].after, job.lifts[1].after, job.lifts[2].after) = (vec![1], vec![0], vec![0]);
    let found = left(&job, &candidates(&job));
    let kinds: Vec<_> = found.iter().map(|(id, kind, _)| (id.as_str(), *kind)).collect();
    assert_eq!(kinds, [("b1", WhyLeftOut::Cycle), ("b2", WhyLeftOut::Cycle), ("b3", WhyLeftOut::Waits)]);
    assert_eq!(found[0].2.reason.arg("lifts"), Some(&evidence::Arg::Text("b2, b1".into())));
    assert_eq!(found[0].2.remedies[0].id, "order-do-drop-after");
    job.lifts[0].after.clear();
    assert!(left(&job, &candidates(&job)).is_empty());

    let mut spoiled = base.clone();
    spoiled.lifts[0].window = Some(DayTime { from: 1080, to: 1140 });
    spoiled.lifts[1].window = Some(DayTime { from: 480, to: 485 });
    spoiled.lifts[2].task = Task::PickUp;
    spoiled.lifts[2].stand = Stand::NOT_CHOSEN;
    let found = left(&spoiled, &candidates(&spoiled));
    let kinds: Vec<_> = found.iter().map(|(_, kind, _)| *kind).collect();
    assert_eq!(kinds, [WhyLeftOut::WindowEmpty, WhyLeftOut::WindowShort, WhyLeftOut::NoStand]);

    let mut bad = candidates(&base);
    (bad[0].verdict, bad[1].verdict) = (None, Some(Verdict::NoGo));
    bad.truncate(2);
    let kinds: Vec<_> = left(&base, &bad).iter().map(|(_, kind, _)| *kind).collect();
    assert_eq!(kinds, [WhyLeftOut::NotChecked, WhyLeftOut::NoGo, WhyLeftOut::NotChecked]);
}

/// What is no number gives no lift a place.
#[test]
fn a_time_or_way_that_is_no_number_is_no_place() {
    let mut job = blocks(1);
    job.lifts[0].minutes = None;
    let whole = candidates(&job);
    assert_eq!(order(&job, &whole, &OrderTimes::default()).lifts.len(), 1);
    let nan = evidence::Ranged { low: 1.0, nominal: 2.0, high: f64::NAN };
    let mut boom = whole.clone();
    boom[0].boom = Some(nan);
    let times = OrderTimes { set_down: nan, ..OrderTimes::default() };
    for order in [order(&job, &boom, &OrderTimes::default()), order(&job, &whole, &times)] {
        assert!(order.lifts.is_empty());
        assert_eq!(order.left_out[0].kind, WhyLeftOut::NotKnown);
    }
    job.pickups.push(Pickup { id: "p".into(), name: "P".into(), at: DVec2::NAN, heading: None, level: None });
    job.lifts[0].from = Some(0);
    assert!(order(&job, &whole, &OrderTimes::default()).lifts.is_empty());
    job.pickups[0].at = DVec2::ZERO;
    let mut way = whole;
    way[0].way = Some(f64::NAN);
    assert!(order(&job, &way, &OrderTimes::default()).lifts.is_empty());
}

#[test]
fn cranes_and_second_machines_wait_for_each_other() {
    let mut job = blocks(2);
    job.landings[job.lifts[0].landing].rating.as_mut().unwrap().mass = Some(quantity::kilograms(50_000.0));
    job.strengths[job.lifts[0].landing].rating.pallet = None;
    let crane = |times: Vec<DayTime>, radius| Crane {
        id: "t".into(),
        name: "Tower crane".into(),
        at: job.lifts[0].stand.at + DVec2::new(100.0, 0.0),
        radius,
        tail: None,
        heights: (job.landings[job.lifts[0].landing].level, 1000.0),
        times,
        rule: "ours waits".into(),
        by: "A".into(),
    };
    let morning = || vec![DayTime { from: 0, to: 600 }];
    let far = Job { cranes: vec![crane(morning(), 20.0)], ..job.clone() };
    assert_eq!(ordered(&far).lifts[0].start_min, at(7, 0));
    let near = Job { cranes: vec![crane(morning(), 98.0)], ..job.clone() };
    let order_near = ordered(&near);
    assert_eq!(order_near.lifts[0].start_min, at(10, 0));
    assert!(order_near.lifts[0].conditions.iter().any(|c| c.id == "order-crane-times"));
    let mut always = near.clone();
    always.cranes[0].times.clear();
    let left = &ordered(&always).left_out[0];
    assert_eq!((left.kind, left.reason.id.as_ref()), (WhyLeftOut::Crane, "order-crane-always"));
    assert_eq!(left.remedies[0].id, "order-do-crane-times");
    // Higher than the landing, but not than its boom gets fully raised.
    let mut over = near.clone();
    over.cranes[0].heights.0 = job.landings[job.lifts[0].landing].level + 6.0;
    assert_eq!(ordered(&over).lifts[0].start_min, at(10, 0));
    // People beside the stand until ten, and the same far away.
    let people = |east: f64| {
        let at = job.lifts[0].stand.at + DVec2::new(east, 0.0);
        let mut job = job.clone();
        job.surroundings.zones.push(site::Zone {
            id: "z".into(),
            name: "Footpath".into(),
            shape: site::PlanShape::Round { centre: at, radius: 1.0 },
            rule: site::ZoneRule::People,
            times: morning(),
            by: "A".into(),
        });
        // The verdict as it is without: what the zone's own check says is not asked here.
        order(&job, &candidates(&near), &OrderTimes::default())
    };
    assert_eq!(people(80.0).lifts[0].start_min, at(7, 0));
    let waits = people(3.0);
    assert_eq!(waits.lifts[0].start_min, at(10, 0));
    assert!(waits.lifts[0].conditions.iter().any(|c| c.id == "order-zone-times"));
    let mut above = near.clone();
    above.cranes[0].heights = (900.0, 1000.0);
    assert_eq!(ordered(&above).lifts[0].start_min, at(7, 0), "it swings far above");
    let mut unknown = near;
    unknown.cranes[0].heights = (f64::NAN, f64::NAN);
    assert_eq!(ordered(&unknown).lifts[0].start_min, at(10, 0), "heights that nobody knows are in the way");

    // A second machine beside the first, to another landing: they take turns.
    let mut two = job.clone();
    two.machines.push(two.machines[0].clone());
    two.landings.push(two.landings[two.lifts[0].landing].clone());
    two.strengths.push(two.strengths[two.lifts[0].landing].clone());
    (two.lifts[1].machine, two.lifts[1].landing) = (two.machines.len() - 1, two.landings.len() - 1);
    let beside = ordered(&two);
    assert_eq!((beside.lifts[0].start_min, beside.lifts[1].start_min), (at(7, 0), at(7, 10)));
    // Moved far off with its landing, both begin at once.
    let off = DVec2::new(0.0, 400.0);
    let last = two.landings.len() - 1;
    two.landings[last].at += off;
    two.lifts[1].stand.at += off;
    let stated: Vec<Candidate> = two.lifts.iter().map(|l| Candidate::stated(l, Some(Verdict::Go))).collect();
    let apart = order(&two, &stated, &OrderTimes::default());
    assert_eq!((apart.lifts[0].start_min, apart.lifts[1].start_min), (at(7, 0), at(7, 0)));
}

#[test]
fn a_delivery_is_unloaded_in_its_slot() {
    let mut job = blocks(1);
    job.lifts[0].minutes = None;
    job.pickups.push(Pickup {
        id: "p".into(),
        name: "P".into(),
        at: job.lifts[0].stand.at,
        heading: None,
        level: None,
    });
    let slot = DayTime { from: 540, to: 600 };
    let load = job.lifts[0].load;
    job.deliveries.push(Delivery { id: "d".into(), loads: vec![load], slot, place: Some(0) });
    let found = ordered(&job);
    assert_eq!(found.lifts[0].start_min, at(9, 0));
    // Taking it up, boom and setting down by their ranges, on the spot: 2 to 11 minutes.
    assert_eq!(found.lifts[0].end_min, evidence::Ranged { low: 542.0, nominal: 544.5, high: 551.0 });
    assert!(!found.lifts[0].stated && found.notes.iter().any(|n| n.id == "order-times-usual"));
    assert!(found.notes.iter().any(|n| n.id == "order-hours-taken"));
    job.deliveries[0].slot = DayTime { from: 540, to: 545 };
    assert_eq!(ordered(&job).left_out[0].kind, WhyLeftOut::WindowShort);
    // From the stack in the yard it may be fetched any time after it came.
    job.pickups.push(Pickup { id: "yard".into(), ..job.pickups[0].clone() });
    job.lifts[0].from = Some(1);
    assert_eq!(ordered(&job).lifts[0].start_min, at(9, 0));
}

/// Lifts in another order in the file, a site seen in a mirror: the same order of work.
#[test]
fn the_order_hangs_on_no_order_of_the_file() {
    let mut job = blocks(7);
    let bay = job.lifts[0].landing;
    job.landings[bay].rating.as_mut().unwrap().mass = Some(quantity::kilograms(6000.0));
    job.strengths[bay].rating.pallet = None;
    let mut random = Random(0x5EED_0003);
    for (i, lift) in job.lifts.iter_mut().enumerate() {
        lift.minutes = Some(u16::try_from(5 + random.below(20)).unwrap());
        lift.priority = Some(u8::try_from(1 + random.below(9)).unwrap());
        lift.stand.at.x += 0.001 * i as f64;
    }
    job.lifts[4].after = vec![0];
    let verdict =
        |job: &Job| -> Vec<Candidate> { job.lifts.iter().map(|l| Candidate::stated(l, Some(Verdict::Go))).collect() };
    let want = order(&job, &verdict(&job), &OrderTimes::default());
    assert!(want.lifts.len() > 1);
    for _ in 0..10 {
        let mut other = job.clone();
        for i in (1..other.lifts.len()).rev() {
            let k = usize::try_from(random.below(i64::try_from(i + 1).unwrap())).unwrap();
            other.lifts.swap(i, k);
        }
        let place = |id: &str| other.lifts.iter().position(|l| l.id == id).unwrap();
        let waits = place("b1");
        let waiting = place("b5");
        other.lifts.iter_mut().for_each(|l| l.after.clear());
        other.lifts[waiting].after = vec![waits];
        assert_eq!(order(&other, &verdict(&other), &OrderTimes::default()), want);
    }
    let mut mirrored = job.clone();
    for landing in &mut mirrored.landings {
        landing.at.x = -landing.at.x;
    }
    for lift in &mut mirrored.lifts {
        lift.stand.at.x = -lift.stand.at.x;
    }
    assert_eq!(order(&mirrored, &verdict(&mirrored), &OrderTimes::default()), want);
    // It goes through its JSON unchanged.
    let json = serde_json::to_string(&want).unwrap();
    assert_eq!(serde_json::from_str::<JobOrder>(&json).unwrap(), want);
}
