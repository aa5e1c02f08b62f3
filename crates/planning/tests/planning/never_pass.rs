//! A missing input never looks like a pass. Starting from a lift that is go, each fact is taken away
//! or spoilt in turn; the twin with everything in place stays go.

use crate::workspace;
use evidence::{Status, Verdict};
use machine::{LockSeen, Reading};
use planning::{CabSeen, Job, Kept, Matter, StopKind, check_lift, plan_as_stated as plan};
use std::collections::BTreeMap;

/// The first six lifts of the demo job, on ground of which only a person's word is known, with nothing on the site, nothing
/// said of where loads wait, and machines of which nobody says how they turn.
pub(crate) fn demo() -> Job {
    let mut job = whole_demo();
    job.lifts.truncate(6);
    for lift in &mut job.lifts {
        (lift.from, lift.gates, lift.priority) = (None, None, None);
    }
    job.soils.clear();
    job.mats.clear();
    job.surroundings = site::Surroundings::default();
    job.gates.clear();
    job.pickups.clear();
    job.deliveries.clear();
    job.routines.clear();
    job.hours = None;
    for unit in &mut job.machines {
        unit.machine.steering = None;
    }
    job
}

/// All of it.
pub(crate) fn whole_demo() -> Job {
    let mut folder: BTreeMap<String, Vec<u8>> = BTreeMap::new();
    for file in ["job.toml", "survey/levels.csv", "machines/demo-7.toml", "machines/demo-14.toml"] {
        folder.insert(file.to_owned(), workspace::read(&format!("examples/demo-job/{file}")));
    }
    match jobfile::read_job(&folder) {
        Ok((job, _)) => job,
        Err(faults) => panic!("{:#?}", faults.list),
    }
}

/// The demo's first lift alone.
fn clean() -> Job {
    let mut job = demo();
    job.lifts.truncate(1);
    job
}

type Spoil = (&'static str, fn(&mut Job));

const SPOILS: [Spoil; 53] = [
    ("not inspected", |j| j.machines[0].inspected_by = None),
    ("tagged out", |j| j.machines[0].tagged_out = Some("hose".into())),
    ("people raised", |j| j.lifts[0].stops = vec![StopKind::RaisesPeople]),
    ("work in a thunderstorm", |j| j.lifts[0].stops = vec![StopKind::Thunderstorm]),
    ("nobody says whose machine it is", |j| j.machines[0].kept = None),
    ("a rented machine that nobody has read", |j| {
        j.machines[0].kept = Some(Kept::Rented);
        j.machines[0].seen = None;
    }),
    ("a rented machine without examination", |j| {
        j.machines[0].kept = Some(Kept::Rented);
        j.machines[0].examined = None;
    }),
    ("our own machine without examination", |j| j.machines[0].examined = None),
    ("read after the work", |j| seen(j).date = "2027-04-13".into()),
    ("read a year ago on a rented machine", |j| {
        j.machines[0].kept = Some(Kept::Rented);
        seen(j).date = "2026-04-12".into();
    }),
    ("blade not looked at for cracks", |j| forks(j).blades[1].crack = None),
    ("blade not measured for wear", |j| forks(j).blades[0].thickness_now = None),
    ("blade closed", |j| forks(j).blades[0].angle = Some(quantity::degrees(80.0))),
    ("shank bent", |j| forks(j).blades[0].shank.as_mut().unwrap().bent = quantity::metres(0.01)),
    ("load narrower than the blades stand apart", |j| j.loads[0].width = 0.4),
    ("centre at the tips", |j| j.loads[0].centre_ahead = evidence::Ranged::exact(1.19)),
    ("loose material on forks", |j| {
        let source = evidence::Source::CommonPractice;
        j.lifts[0].bulk_density = Some(planning::BulkDensity { high: 1600.0, source });
    }),
    ("another serial number", |j| seen(j).serial = Some("INVENTED-0015".into())),
    ("no chart in the cab", |j| seen(j).chart_in_cab = Some(false)),
    ("belt, frame or door faulty", |j| j.machines[0].cab = CabSeen::Faulty),
    ("blade not stamped", |j| forks(j).blades[0].capacity = None),
    ("blade cracked", |j| forks(j).blades[0].crack = Some(true)),
    ("blades not checked for years", |j| forks(j).checked = Some("2025-01-01".into())),
    ("sleeves that nobody declared", |j| j.lifts[0].extensions = Some(true)),
    ("shifted sideways without a side shift", |j| j.lifts[0].side_shift = 0.05),
    ("load not sound", |j| j.loads[0].condition_seen = Some(false)),
    ("attachment unknown", |j| j.lifts[0].attachment = "grab".into()),
    ("lock open", |j| j.machines[0].attachment_lock[0].1 = LockSeen::Open),
    ("no chart for the support state", |j| j.machines[0].machine.charts.retain(|c| c.support != j.lifts[0].support)),
    ("no charts at all", |j| j.machines[0].machine.charts.clear()),
    ("blade worn", |j| forks(j).blades[0].thickness_now = Some(quantity::metres(0.04))),
    ("blade modified", |j| forks(j).blades[1].modified = Some(true)),
    ("no wind stated", |j| j.lifts[0].wind = None),
    ("stop wind above the maker's", |j| {
        j.lifts[0].wind = Some(planning::WindInput { gust: quantity::metres_per_second(13.0) });
    }),
    ("lines not stated complete", |j| j.lines_complete = None),
    ("line of unknown voltage in reach", |j| {
        j.lines[0].voltage = None;
        for span in &mut j.lines[0].spans {
            span.from.y += 25.0;
            span.to.y += 25.0;
        }
    }),
    ("line of unknown height in reach", |j| {
        j.lines[0].course = vec![geometry::DVec2::new(0.0, 30.0), geometry::DVec2::new(60.0, 30.0)];
        j.lines[0].spans.clear();
    }),
    ("line said dead but not grounded", |j| {
        j.lines[0].dead =
            Some(site::DeadConfirmation { owner: "x".into(), permit: "1".into(), visibly_grounded: false });
        for span in &mut j.lines[0].spans {
            span.from.y += 25.0;
            span.to.y += 25.0;
        }
    }),
    ("ground strength not stated", |j| without(j, Matter::GroundStrength)),
    ("ground strength without a number", |j| j.acceptances[0].strength = None),
    ("ground too weak", |j| j.acceptances[0].strength = Some(quantity::pascals(100e3))),
    ("tyre pressure unknown", |j| {
        j.machines[0].machine.front.tyre.pressure = None;
        j.machines[0].machine.rear.axle.tyre.pressure = None;
    }),
    ("edges", |j| without(j, Matter::Edges)),
    ("buried", |j| without(j, Matter::Buried)),
    ("obstacles", |j| without(j, Matter::Obstacles)),
    ("people", |j| without(j, Matter::People)),
    ("route", |j| without(j, Matter::Route)),
    ("landing not rated", |j| j.landings[0].rating = None),
    ("landing shorter than the load", |j| j.landings[0].size.x = 0.3),
    ("landing narrower than the load", |j| j.landings[0].size.y = 0.9),
    ("the chart that is read holds only on level ground", |j| {
        let charts = &mut j.machines[0].machine.charts;
        let strict = |c: &machine::Chart, centre: f64, tolerance: f64| {
            let mut parts = (**c).clone();
            parts.load_centre = quantity::metres(centre);
            parts.level.sideways = quantity::degrees(tolerance);
            machine::Chart::new(parts)
        };
        // A generous chart for a nearer load centre stands first; the load needs the second.
        let second = strict(&charts[0], 0.61, 0.01);
        charts[0] = strict(&charts[0], 0.50, 5.0);
        charts.push(second);
    }),
    ("no ground", |j| j.ground.surfaces.clear()),
    ("mass not a number", |j| j.loads[0].mass_kg = evidence::Ranged::exact(f64::NAN)),
];

pub(crate) fn forks(job: &mut Job) -> &mut machine::Forks {
    match &mut job.machines[0].machine.attachments[0].kind {
        machine::AttachmentKind::Forks(f) => f,
        _ => panic!("forks come first"),
    }
}

fn seen(job: &mut Job) -> &mut planning::Seen {
    job.machines[0].seen.as_mut().unwrap()
}

fn without(job: &mut Job, matter: Matter) {
    job.acceptances.retain(|a| a.matter != matter);
}

#[test]
fn each_missing_or_spoilt_fact_is_no_go_and_the_safe_twin_passes() {
    let twin = clean();
    assert_eq!(plan(&twin).verdict, Verdict::Go, "{:#?}", plan(&twin).lifts[0].governing_finding());
    for (what, spoil) in SPOILS {
        let mut job = clean();
        spoil(&mut job);
        let plan = plan(&job);
        assert_eq!(plan.verdict, Verdict::NoGo, "{what} passed");
        let lift = &plan.lifts[0];
        let governing = lift.governing_finding().unwrap();
        assert!(governing.status >= Status::CannotTell, "{what}: {governing:?}");
        assert!(!governing.remedies.is_empty(), "{what}: says what to do: {governing:?}");
        assert!(lift.steps.is_empty(), "{what}: nobody is told how to make it");
    }
}

#[test]
fn the_quick_verdict_and_the_findings_never_disagree() {
    for spoil in std::iter::once(None).chain(SPOILS.iter().map(Some)) {
        let mut job = demo();
        if let Some((_, spoil)) = spoil {
            spoil(&mut job);
        }
        for lift in &job.lifts {
            let check = check_lift(&job, lift).unwrap();
            let worst = check.findings().iter().map(|f| f.status).max().unwrap();
            assert_eq!(check.verdict(), worst.into(), "{:?} {}", spoil.map(|s| s.0), lift.id);
        }
    }
}

#[test]
fn the_demo_has_the_verdicts_it_is_there_to_show() {
    let plan = plan(&demo());
    let said: Vec<_> =
        plan.lifts.iter().map(|l| (l.verdict, l.governing_finding().unwrap().check.to_string())).collect();
    assert_eq!(said.len(), 6);
    assert_eq!(said[0].0, Verdict::Go);
    assert_eq!(said[1], (Verdict::NoGo, "tilt".into()), "and beyond the chart, which the operator is told next");
    assert_eq!(said[2], (Verdict::NoGo, "line".into()));
    assert_eq!(said[3], (Verdict::NoGo, "level".into()));
    assert_eq!(said[4].0, Verdict::Go, "unloading of a truck");
    assert_eq!(said[5].0, Verdict::GoWithConditions, "hung load, lock not seen yet");
}

#[test]
fn same_job_same_plan_and_any_change_shows_in_the_digest() {
    let (a, b) = (plan(&demo()), plan(&demo()));
    assert_eq!(a, b);
    assert_eq!(a.digest.len(), 64);
    assert_eq!(planning::digest(&a), a.digest);
    let mut other = demo();
    other.loads[0].mass_kg.high += 0.001;
    assert_ne!(plan(&other).digest, a.digest);
    let json = serde_json::to_string(&a).unwrap();
    let back: planning::Plan = serde_json::from_str(&json).unwrap();
    assert_eq!(back, a, "a plan survives its JSON to the last bit");
}

#[test]
fn a_chart_reading_never_rises_with_the_load_or_the_reach_error() {
    let job = demo();
    let chart = &job.machines[0].machine.charts[0];
    for i in 0..40 {
        for k in 0..30 {
            let at = geometry::DVec2::new(f64::from(i) * 0.3, f64::from(k) * 0.5);
            let read = |half: f64| match chart.read(&machine::ChartPoint { at, low: at - half, high: at + half }) {
                Reading::Within { capacity_kg, .. } => capacity_kg,
                Reading::Outside => 0.0,
            };
            assert!(read(0.3) <= read(0.1) && read(0.1) <= read(0.0), "{at}");
        }
    }
}
