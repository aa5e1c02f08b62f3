//! Attachments: the lock after a change, side shift, sleeves, bucket, clamp, hook.

use crate::never_pass::{demo, forks};
use evidence::{Finding, Ranged, Source, Status, Verdict};
use geometry::DVec2;
use machine::{
    Attachment, AttachmentKind, Bucket, Carriage, Clamp, Coupling, Extensions, Hold, LatchSeen, LockSeen, OtherTool,
};
use planning::{BulkDensity, Job, Lift, check_lift, plan_as_stated as plan};
use quantity::{kilograms, metres};

fn clean() -> Job {
    let mut job = demo();
    job.lifts.truncate(1);
    job
}

fn findings(job: &Job, lift: &Lift, check: &str) -> Vec<Finding> {
    check_lift(job, lift).unwrap().findings().into_iter().filter(|f| f.check == check).collect()
}

fn worst(job: &Job, check: &str) -> Status {
    findings(job, &job.lifts[0], check).iter().map(|f| f.status).max().unwrap()
}

/// Lifts of one machine with these attachments; `!` where the lift itself saw the lock. Says `c` where
/// the lock is a condition, `g` where it is seen.
fn locks(run: &str, morning: LockSeen, coupling: Option<Coupling>) -> String {
    let mut job = demo();
    let like = job.lifts[0].clone();
    let words: Vec<&str> = run.split(' ').collect();
    job.lifts = words
        .iter()
        .enumerate()
        .map(|(i, word)| Lift {
            id: i.to_string(),
            attachment: word.trim_end_matches('!').to_owned(),
            lock_seen: word.ends_with('!').then(|| "test".to_owned()),
            ..like.clone()
        })
        .collect();
    let unit = &mut job.machines[0];
    unit.attachment_lock = unit.machine.attachments.iter().map(|a| (a.id.clone(), morning)).collect();
    for a in &mut unit.machine.attachments {
        (a.coupling, a.capacity) = (coupling, kilograms(10_000.0));
    }
    unit.machine.greatest_capacity = kilograms(10_000.0);
    let mut out = String::new();
    for lift in &job.lifts {
        // The first finding of the check is about plate and lock.
        out.push(match findings(&job, lift, "attachment")[0].status {
            Status::Go => 'g',
            Status::Condition => 'c',
            Status::Stop => 's',
            other => panic!("{other:?}"),
        });
    }
    out
}

#[test]
fn a_look_at_the_lock_counts_until_the_next_change() {
    let quick = Some(Coupling::Quick);
    for (run, expected) in [
        ("forks forks forks", "cgg"),
        ("forks! forks forks", "ggg"),
        ("forks jib forks forks", "cccc"),
        ("forks! jib! forks forks!", "ggcg"),
        ("forks! jib forks! forks", "gcgg"),
        ("jib jib! jib forks", "cggc"),
    ] {
        assert_eq!(locks(run, LockSeen::Locked, quick), expected, "{run}");
        assert_eq!(locks(run, LockSeen::Locked, Some(Coupling::Pinned)), expected, "{run}, pinned");
        assert_eq!(locks(run, LockSeen::Locked, None), expected, "{run}, not stated: as quick");
    }
    // Bolted: the first lift comes after no change; a later one does.
    assert_eq!(locks("forks forks jib forks", LockSeen::Locked, Some(Coupling::Fixed)), "ggcc");
    assert_eq!(locks("forks forks! forks", LockSeen::NotSeen, quick), "cgg");
    assert_eq!(locks("forks! forks jib!", LockSeen::Open, quick), "sss", "open is open");
}

#[test]
fn lifts_of_another_machine_are_no_change() {
    let mut job = demo();
    let locked = |job: &Job, i: usize| findings(job, &job.lifts[i], "attachment")[0].status;
    // The third to fifth lift are the second machine's, forks all of them.
    assert_eq!([2, 3, 4].map(|i| locked(&job, i)), [Status::Go; 3]);
    // The first machine's jib among them changes nothing of that.
    job.lifts.swap(3, 5);
    assert_eq!(job.lifts[3].attachment, "jib");
    assert_eq!([2, 4, 5].map(|i| locked(&job, i)), [Status::Go; 3]);
    assert_eq!(locked(&job, 3), Status::Condition);
}

#[test]
fn carriages_ask_for_what_they_can_do() {
    let with = |carriage| {
        let mut job = clean();
        forks(&mut job).carriage = carriage;
        worst(&job, "attachment")
    };
    assert_eq!(with(Some(Carriage::Fixed)), Status::Go);
    assert_eq!(with(Some(Carriage::SideShift(0.1))), Status::Go);
    assert_eq!(with(Some(Carriage::Positioner { spread: (0.4, 1.2), side_shift: 0.0 })), Status::Go);
    for asks in [Some(Carriage::Tilting), Some(Carriage::Rotating), None] {
        assert_eq!(with(asks), Status::Condition, "{asks:?}");
    }
}

fn limit_over_demand(job: &Job, check: &str) -> f64 {
    let found = findings(job, &job.lifts[0], check);
    found[0].limit.unwrap().si / found[0].demand.unwrap().si
}

#[test]
fn a_side_shift_is_counted_everywhere() {
    let shifted = |shift: f64| {
        let mut job = clean();
        forks(&mut job).carriage = Some(Carriage::SideShift(0.30));
        job.lifts[0].side_shift = shift;
        job
    };
    let (straight, left, right) = (shifted(0.0), shifted(0.2), shifted(-0.2));
    assert_eq!(plan(&straight).verdict, Verdict::Go);
    assert_eq!(worst(&left, "attachment"), Status::Condition, "the chart may not allow it");
    for job in [&left, &right] {
        assert!(limit_over_demand(job, "tilt") <= limit_over_demand(&straight, "tilt"));
        assert!(limit_over_demand(job, "load-factor") <= limit_over_demand(&straight, "load-factor"));
        assert!(limit_over_demand(job, "line") <= limit_over_demand(&straight, "line"));
    }
    let one = [&left, &right].map(|j| limit_over_demand(j, "tilt") < limit_over_demand(&straight, "tilt") - 1e-3);
    assert!(one[0] || one[1], "a fifth of a metre shows on one side");
    // Standing as far to the right as the load is shifted to the left, the load comes to lie in the middle.
    let offset = |job: &Job| {
        let found = findings(job, &job.lifts[0], "approach");
        format!("{:?}", found[0].message.arg("offset"))
    };
    let mut beside = left.clone();
    let heading = beside.lifts[0].stand.heading;
    beside.lifts[0].stand.at += DVec2::new(heading.sin(), -heading.cos()) * 0.2;
    let miss = |job: &Job| match findings(job, &job.lifts[0], "approach")[0].message.arg("offset").unwrap() {
        evidence::Arg::Quantity(q) => q.si,
        other => panic!("{other:?}"),
    };
    assert!((miss(&beside) - miss(&straight)).abs() < 0.01, "{} {}", offset(&beside), offset(&straight));
    assert!((miss(&left) - miss(&straight)).abs() > 0.1);
    // More than the carriage has.
    assert_eq!(worst(&shifted(0.31), "attachment"), Status::NoGo);
    assert_eq!(worst(&shifted(f64::NAN), "attachment"), Status::NoGo);
}

#[test]
fn sleeves_carry_what_their_plate_says_and_only_over_enough_blade() {
    let with = |length: f64, capacity: f64, load_centre: f64| {
        let mut job = clean();
        forks(&mut job).extensions = Some(Extensions {
            length: metres(length),
            capacity: kilograms(capacity),
            load_centre: metres(load_centre),
            cover: 0.6,
            by: "test".into(),
        });
        job.lifts[0].extensions = Some(true);
        worst(&job, "forks")
    };
    assert_eq!(with(1.9, 3000.0, 0.9), Status::Go);
    assert_eq!(with(2.1, 3000.0, 0.9), Status::NoGo, "blades of 1.2 m fill too little of 2.1 m");
    assert_eq!(with(1.9, 1200.0, 0.9), Status::NoGo, "the load is 1295 kg");
    assert_eq!(with(1.9, 3000.0, 0.6), Status::NoGo, "the load centre may lie at 0.63 m");
}

/// The first lift with another tool in place of its forks, its charts kept.
fn tool(kind: impl Fn(DVec2) -> AttachmentKind) -> Job {
    let mut job = clean();
    let at = job.machines[0].machine.attachments[0].tool_point();
    let attachment: &mut Attachment = &mut job.machines[0].machine.attachments[0];
    attachment.kind = kind(at);
    job
}

#[test]
fn a_bucket_needs_its_volume_and_what_that_weighs() {
    let bucket = |volume: Option<f64>, density: Option<f64>| {
        let mut job = tool(|heel| {
            AttachmentKind::Bucket(Bucket { heel, volume: 0.8, edge: 2.0, rated_load_centre: metres(0.61) })
        });
        job.lifts[0].bulk_volume = volume;
        job.lifts[0].bulk_density = density.map(|high| BulkDensity { high, source: Source::CommonPractice });
        worst(&job, "attachment")
    };
    // The load is taken as up to 1294.7 kg.
    let light = Some(1600.0);
    assert_eq!(bucket(Some(0.8), light), Status::Go);
    assert_eq!(bucket(Some(0.81), light), Status::NoGo);
    assert_eq!(bucket(Some(f64::NAN), light), Status::NoGo);
    assert_eq!(bucket(None, light), Status::CannotTell);
    assert_eq!(bucket(Some(0.8), Some(1650.0)), Status::NoGo, "1320 kg of gravel are written as 1295 kg");
    assert_eq!(bucket(Some(0.8), Some(f64::NAN)), Status::CannotTell);
    assert_eq!(bucket(Some(0.8), None), Status::CannotTell);
    let mut on_forks = clean();
    on_forks.lifts[0].bulk_volume = Some(0.1);
    assert_eq!(worst(&on_forks, "attachment"), Status::NoGo);
}

#[test]
fn what_a_bucket_weighs_and_what_was_written_stand_in_the_finding() {
    let mut job =
        tool(|heel| AttachmentKind::Bucket(Bucket { heel, volume: 1.0, edge: 2.0, rated_load_centre: metres(0.61) }));
    job.lifts[0].bulk_volume = Some(1.0);
    job.lifts[0].bulk_density = Some(BulkDensity { high: 2000.0, source: Source::CommonPractice });
    let all = findings(&job, &job.lifts[0], "attachment");
    let f = all.iter().find(|f| f.message.id == "bulk-mass-short").unwrap();
    assert_eq!((f.status, f.demand.unwrap().si), (Status::NoGo, 2000.0));
    assert!((f.limit.unwrap().si - job.loads[0].mass_kg.high).abs() < 1e-9);
    assert!(f.working.is_some() && !f.remedies.is_empty());
}

#[test]
fn declared_sleeves_are_on_or_the_entry_does_not_fit() {
    let with = |on: Option<bool>, declared: bool| {
        let mut job = clean();
        forks(&mut job).extensions = declared.then(|| Extensions {
            length: metres(1.9),
            capacity: kilograms(3000.0),
            load_centre: metres(0.9),
            cover: 0.6,
            by: "test".into(),
        });
        job.lifts[0].extensions = on;
        worst(&job, "forks")
    };
    assert_eq!(with(Some(true), true), Status::Go);
    assert_eq!(with(Some(false), true), Status::NoGo, "their length would be credited");
    assert_eq!(with(None, true), Status::Condition);
    assert_eq!(with(Some(true), false), Status::Stop);
    assert_eq!([with(Some(false), false), with(None, false)], [Status::Go; 2]);
}

/// The blades' middles are 0.80 m apart: 0.90 m over both.
#[test]
fn what_stands_on_the_blades_reaches_over_both() {
    let with = |width: f64, base: Option<f64>| {
        let mut job = clean();
        (job.loads[0].width, job.loads[0].base_width) = (width, base);
        worst(&job, "forks")
    };
    assert_eq!(with(0.90, None), Status::Go);
    assert_eq!(with(0.89, None), Status::NoGo);
    assert_eq!(with(0.40, None), Status::NoGo);
    assert_eq!(with(f64::NAN, None), Status::CannotTell);
    assert_eq!(with(1.20, Some(0.60)), Status::NoGo, "wide layers on a narrow base");
    assert_eq!(with(1.20, Some(1.00)), Status::Go);
}

/// Blades of 1.2 m: a condition beyond 0.72 m, no-go beyond 0.90 m, and longer with sleeves.
#[test]
fn a_centre_near_the_tips_is_refused() {
    let with = |centre: f64, sleeve: Option<f64>| {
        let mut job = clean();
        job.loads[0].centre_ahead = Ranged::exact(centre);
        job.loads[0].mass_kg = Ranged::exact(200.0);
        forks(&mut job).extensions = sleeve.map(|length| Extensions {
            length: metres(length),
            capacity: kilograms(3000.0),
            load_centre: metres(1.9),
            cover: 0.6,
            by: "test".into(),
        });
        job.lifts[0].extensions = sleeve.map(|_| true);
        worst(&job, "forks")
    };
    assert_eq!(with(0.72, None), Status::Go);
    assert_eq!(with(0.73, None), Status::Condition);
    assert_eq!(with(0.90, None), Status::Condition);
    assert_eq!(with(0.91, None), Status::NoGo);
    assert_eq!(with(1.19, None), Status::NoGo);
    assert_eq!(with(1.19, Some(2.0)), Status::Go);
    assert_eq!(with(1.51, Some(2.0)), Status::NoGo);
    assert_eq!(with(f64::NAN, None), Status::CannotTell);
}

#[test]
fn a_clamp_grips_within_its_range_and_holds_by_friction() {
    let clamp = |grip: (f64, f64), hold: Option<Hold>| {
        let kind = move |heel| {
            AttachmentKind::Clamp(Clamp { heel, grip, rated_load_centre: metres(0.61), width: Some(1.8), hold })
        };
        worst(&tool(kind), "attachment")
    };
    // The load is 1.00 m wide and up to 1294.7 kg; two arms with half in reserve hold μF/g.
    let holds = |kg: f64| Some(Hold { force: kg * 9.80665 / 0.5, friction: 0.5 });
    assert_eq!(clamp((0.4, 1.2), holds(1300.0)), Status::Condition, "sound material, nothing loose");
    assert_eq!(clamp((0.4, 1.2), holds(1290.0)), Status::NoGo);
    assert_eq!(clamp((0.4, 1.2), None), Status::Condition);
    assert_eq!(clamp((0.4, 0.99), holds(1300.0)), Status::NoGo);
    assert_eq!(clamp((1.01, 1.2), holds(1300.0)), Status::NoGo);
}

#[test]
fn another_tool_is_held_to_its_plate_and_its_chart() {
    let other = |capacity: f64| {
        let mut job =
            tool(|heel| AttachmentKind::Other(OtherTool { heel, rated_load_centre: metres(0.61), width: Some(1.2) }));
        job.machines[0].machine.attachments[0].capacity = kilograms(capacity);
        job
    };
    assert_eq!(worst(&other(4000.0), "attachment"), Status::Condition, "how it holds is not known here");
    assert_eq!(worst(&other(1000.0), "attachment"), Status::NoGo);
    let mut bare = other(4000.0);
    bare.machines[0].machine.charts.clear();
    assert_eq!(worst(&bare, "stops"), Status::Stop, "no chart of its own");
}

#[test]
fn a_hook_needs_its_latch() {
    let latch = |seen: Option<LatchSeen>| {
        let mut job = demo();
        job.lifts = vec![job.lifts[5].clone()];
        job.lifts[0].lock_seen = Some("test".into());
        job.machines[0].latches = seen.map(|s| ("jib".to_owned(), s)).into_iter().collect();
        worst(&job, "attachment")
    };
    assert_eq!(latch(Some(LatchSeen::Closes)), Status::Go);
    assert_eq!(latch(Some(LatchSeen::Faulty)), Status::NoGo);
    assert_eq!(latch(Some(LatchSeen::NotSeen)), Status::Condition);
    assert_eq!(latch(None), Status::Condition);
}

#[test]
fn blades_out_of_service_are_no_go_and_say_so_once() {
    let with = |spoil: fn(&mut machine::Forks)| {
        let mut job = clean();
        spoil(forks(&mut job));
        worst(&job, "forks")
    };
    assert_eq!(with(|_| {}), Status::Go);
    assert_eq!(with(|f| f.blades[0].angle = Some(quantity::degrees(94.0))), Status::NoGo);
    assert_eq!(with(|f| f.blades[1].bent = Some(metres(0.01))), Status::NoGo);
    assert_eq!(with(|f| f.blades[0].angle = Some(quantity::degrees(86.0))), Status::NoGo, "closed");
    assert_eq!(with(|f| f.blades[0].shank.as_mut().unwrap().bent = metres(0.02)), Status::NoGo);
    assert_eq!(with(|f| f.blades[0].shank = None), Status::Condition);
    assert_eq!(with(|f| f.blades[0].crack = None), Status::CannotTell);
    assert_eq!(with(|f| f.blades[1].thickness_now = None), Status::CannotTell);
    assert_eq!(with(|f| f.tip_difference = Some(metres(0.05))), Status::NoGo);
    assert_eq!(with(|f| f.blades[1].lock = Some(false)), Status::NoGo);
    assert_eq!(with(|f| f.blades[1].proof_load = Some(kilograms(4000.0))), Status::NoGo);
    assert_eq!(with(|f| f.checked = Some("2026-04-11".into())), Status::NoGo);
    assert_eq!(with(|f| f.blades[0].capacity = None), Status::CannotTell);
    assert_eq!(with(|f| f.blades[0].capacity = Some(kilograms(1900.0))), Status::Condition, "no pair");
    let mut job = clean();
    let pair = forks(&mut job);
    for blade in &mut pair.blades {
        (blade.angle, blade.bent, blade.crack, blade.lock, blade.modified) = (None, None, None, None, None);
        blade.thickness_now = None;
    }
    (pair.tip_difference, pair.checked) = (None, None);
    let open = findings(&job, &job.lifts[0], "forks");
    assert_eq!(open.iter().filter(|f| f.status == Status::Condition).count(), 1, "one finding, not seven");
    assert_eq!(open.iter().filter(|f| f.status == Status::CannotTell).count(), 1, "wear and cracks");
}
