//! Absolute stops: whatever else holds, each of them stops the lift and says what to do instead.

use crate::never_pass::{demo, forks};
use evidence::{Status, Verdict};
use geometry::DVec2;
use machine::{AttachmentKind, LockSeen, Platform};
use planning::{Job, StopKind, check_lift, plan_as_stated as plan};

type Spoil = (&'static str, fn(&mut Job));

/// Stops that follow from the machine and its attachment; the check that says them.
const FOLLOWING: [Spoil; 6] = [
    ("stops", |j| {
        for unit in &mut j.machines {
            for a in &mut unit.machine.attachments {
                a.kind = AttachmentKind::Platform(Platform { floor: DVec2::new(0.3, -0.6) });
            }
        }
    }),
    ("stops", |j| j.machines.iter_mut().for_each(|u| u.machine.charts.clear())),
    ("machine", |j| j.machines.iter_mut().for_each(|u| u.tagged_out = Some("hose".into()))),
    ("attachment", |j| {
        for unit in &mut j.machines {
            let all = unit.machine.attachments.iter();
            unit.attachment_lock = all.map(|a| (a.id.clone(), LockSeen::Open)).collect();
        }
    }),
    ("forks", |j| {
        j.lifts.truncate(1);
        forks(j).blades[0].modified = Some(true);
    }),
    ("forks", |j| {
        j.lifts.truncate(1);
        j.lifts[0].extensions = Some(true);
    }),
];

/// Every lift of the job is stopped by a finding of the check, which says what to do.
fn stopped(job: &Job, check: &str, what: &str) {
    let plan = plan(job);
    for lift in &plan.lifts {
        assert_eq!(lift.verdict, Verdict::NoGo, "{what}, lift {}", lift.id);
        let stop = lift.findings.iter().find(|f| f.check == check && f.status == Status::Stop);
        let stop = stop.unwrap_or_else(|| panic!("{what}, lift {}: no stop by {check}", lift.id));
        assert!(!stop.remedies.is_empty(), "{what}: says what to do");
        assert_eq!(lift.governing_finding().unwrap().status, Status::Stop, "{what}");
        assert!(lift.steps.is_empty(), "{what}");
    }
}

/// Everything else as bad as it gets.
fn ruined() -> Job {
    let mut job = demo();
    job.ground.surfaces.clear();
    job.acceptances.clear();
    job.lines_complete = None;
    for unit in &mut job.machines {
        (unit.inspected_by, unit.seen, unit.examined, unit.kept) = (None, None, None, None);
    }
    for load in &mut job.loads {
        load.mass_kg = evidence::Ranged::exact(f64::NAN);
    }
    job
}

#[test]
fn every_stop_stops_whatever_else_holds() {
    for (mut job, how) in [(demo(), "all in order"), (ruined(), "nothing in order")] {
        for stop in StopKind::ALL {
            for lift in &mut job.lifts {
                lift.stops = vec![stop];
            }
            stopped(&job, "stops", &format!("{stop:?}, {how}"));
        }
        for lift in &mut job.lifts {
            lift.stops = Vec::new();
        }
        for (check, spoil) in FOLLOWING {
            let mut job = job.clone();
            spoil(&mut job);
            stopped(&job, check, &format!("{check}, {how}"));
        }
    }
}

#[test]
fn each_stop_has_words_and_a_cure_of_its_own() {
    let mut job = demo();
    job.lifts.truncate(1);
    job.lifts[0].stops = StopKind::ALL.to_vec();
    let findings = check_lift(&job, &job.lifts[0]).unwrap().findings();
    let said: Vec<_> = findings.iter().filter(|f| f.status == Status::Stop).collect();
    assert_eq!(said.len(), StopKind::ALL.len());
    let distinct = |ids: Vec<String>| ids.iter().collect::<std::collections::BTreeSet<_>>().len();
    assert_eq!(distinct(said.iter().map(|f| f.message.id.to_string()).collect()), 10);
    assert_eq!(distinct(said.iter().map(|f| f.remedies[0].id.to_string()).collect()), 10);
}

#[test]
fn the_plan_says_what_ends_it() {
    let ids: Vec<_> = plan(&demo()).ends_when.iter().map(|m| m.id.to_string()).collect();
    for ends in ["rain", "frost", "digging", "scaffold", "defect", "shift", "values"] {
        assert!(ids.contains(&format!("ends-{ends}")), "{ends}");
    }
}
