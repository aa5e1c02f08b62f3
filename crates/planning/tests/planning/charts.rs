//! Charts in a plan: derating tables, level conditions, tyres, datums.

use crate::never_pass::demo;
use evidence::{Finding, Message, Status, Verdict};
use geometry::DVec2;
use machine::{Chart, ChartParts, DeratingRow, ReachFrom};
use planning::{DistanceQuestion, Job, MeasuredFrom, MeasuredTo, distance_check, plan_as_stated as plan};
use quantity::{degrees, metres};

/// The demo's first lift with its chart changed.
fn with(change: impl FnOnce(&mut Job, &mut ChartParts)) -> Job {
    let mut job = demo();
    job.lifts.truncate(1);
    let mut parts = (*job.machines[0].machine.charts[0]).clone();
    change(&mut job, &mut parts);
    job.machines[0].machine.charts[0] = Chart::new(parts);
    job
}

fn chart_finding(job: &Job) -> Finding {
    plan(job).lifts[0].findings.iter().find(|f| f.check == "chart").unwrap().clone()
}

fn says(message: &Message, id: &str) -> bool {
    message.id == id
}

fn row(centre: f64, share: f64) -> DeratingRow {
    DeratingRow { load_centre: metres(centre), share, at_most: None }
}

/// Capacity that the chart finding holds the load against, kg.
fn limit(finding: &Finding) -> f64 {
    finding.limit.as_ref().map_or(f64::NAN, |q| q.si)
}

#[test]
fn a_derating_table_replaces_our_own_rules_and_is_named() {
    let farther = |job: &mut Job| {
        let load = &mut job.loads[0];
        load.centre_ahead = evidence::Ranged { low: 0.69, nominal: 0.70, high: 0.71 };
    };
    let ours = chart_finding(&with(|job, _| farther(job)));
    assert!(ours.working.as_ref().unwrap().steps.iter().any(|s| s.title.id == "working-excess-reach"));
    let rated = chart_finding(&with(|_, _| {}));
    let table = chart_finding(&with(|job, parts| {
        farther(job);
        parts.derating = vec![row(0.80, 0.9), row(1.0, 0.6)];
    }));
    let steps = &table.working.as_ref().unwrap().steps;
    assert!(steps.iter().any(|s| s.title.id == "working-derating"));
    assert!(!steps.iter().any(|s| s.title.id == "working-excess-reach" || s.title.id == "working-moment-cap"));
    assert!(says(&table.message, "chart-derated"), "{:?}", table.message);
    assert!((limit(&table) - 0.9 * limit(&rated)).abs() < 1e-9, "{} of {}", limit(&table), limit(&rated));

    let beyond = chart_finding(&with(|job, parts| {
        farther(job);
        parts.derating = vec![row(0.70, 0.9)];
    }));
    assert_eq!(beyond.status, Status::NoGo);
    assert!(says(&beyond.message, "chart-beyond-table") && !beyond.remedies.is_empty());
}

#[test]
fn a_chart_for_level_ground_counts_only_there() {
    let usual = with(|_, _| {});
    assert_eq!(plan(&usual).verdict, Verdict::Go);
    // A second chart with more capacity that holds on ground as level as none is.
    let strict = |tolerance: f64| {
        with(|job, parts| {
            let mut more = parts.clone();
            more.level.sideways = degrees(tolerance);
            more.level.fore_aft = degrees(tolerance);
            more.zones.iter_mut().for_each(|z| z.capacity *= 1.1);
            job.machines[0].machine.charts.push(Chart::new(more));
        })
    };
    let (at, usual_limit) = (|job: &Job| limit(&chart_finding(job)), limit(&chart_finding(&usual)));
    assert_eq!(at(&strict(0.01)), usual_limit, "the ground is not that level");
    assert!((at(&strict(1.99)) - 1.1 * usual_limit).abs() < 1e-9);
    // Where none holds: no-go by level, as with one chart.
    let none = with(|_, parts| parts.level.sideways = degrees(0.01));
    assert_eq!(plan(&none).verdict, Verdict::NoGo);
}

#[test]
fn a_chart_for_other_tyres_is_no_chart() {
    for fitted in [None, Some("air")] {
        let job = with(|job, parts| {
            parts.tyres = Some("foam".into());
            job.machines[0].machine.tyres = fitted.map(str::to_owned);
        });
        let plan = plan(&job);
        assert_eq!(plan.verdict, Verdict::NoGo);
        let finding = chart_finding(&job);
        assert!(says(&finding.message, "chart-other-tyres") && !finding.remedies.is_empty());
    }
    let fits = with(|job, parts| {
        parts.tyres = Some("foam".into());
        job.machines[0].machine.tyres = Some("foam".into());
    });
    // That the tyres were also looked at is another check's matter.
    assert_eq!(chart_finding(&fits).status, Status::Go);
}

/// The same chart by another datum, its zones moved by the difference, says the same.
#[test]
fn another_datum_with_the_zones_moved_says_the_same() {
    let usual = limit(&chart_finding(&with(|_, _| {})));
    let machine = &demo().machines[0].machine;
    for (from, x) in [
        (ReachFrom::FrontAxle, 0.0),
        (ReachFrom::FrameFront, machine.outline.front),
        (ReachFrom::AheadOfFrontAxle(-0.4), -0.4),
        (ReachFrom::AheadOfFrontAxle(0.25), 0.25),
    ] {
        let moved = with(|_, parts| {
            let by = DVec2::new(machine.front_face() - x, 0.0);
            parts.datum.reach_from = from;
            parts.zones.iter_mut().for_each(|z| z.outline.iter_mut().for_each(|p| *p += by));
        });
        assert_eq!(limit(&chart_finding(&moved)), usual, "{from:?}");
    }
}

/// How level the ground is, the quick look does not know: the lowest of all charts counts.
#[test]
fn the_quick_look_reads_every_level_condition() {
    let job = with(|job, parts| {
        let mut less = parts.clone();
        less.level.sideways = degrees(0.5);
        less.zones.iter_mut().for_each(|z| z.capacity *= 0.5);
        job.machines[0].machine.charts.push(Chart::new(less));
    });
    let look = |job: &Job| {
        let machine = &job.machines[0].machine;
        let question = DistanceQuestion {
            machine,
            attachment: "forks",
            support: machine::SupportState::Tyres,
            mass: 100.0,
            load_centre: 0.6,
            distance: 2.1,
            from: MeasuredFrom::FrontTyreFace,
            to: MeasuredTo::LoadCentre,
            height: 4.5,
        };
        distance_check(&question).unwrap()
    };
    let (one, two) = (look(&with(|_, _| {})), look(&job));
    assert_eq!(two.capacity_kg.unwrap(), 0.5 * one.capacity_kg.unwrap());
    assert!((one.reach_m - 2.11).abs() < 1e-9 && one.height_m == 4.5);
    // Beyond the last row of a derating table nothing is inside.
    let derated = with(|_, parts| {
        parts.load_centre = metres(0.4);
        parts.derating = vec![row(0.5, 0.9)];
    });
    assert_eq!((look(&derated).inside, look(&derated).capacity_kg), (false, None));
}

/// A chart that shows nothing for the retracted boom: the lift does not begin, however good the landing.
#[test]
fn a_chart_that_begins_far_beyond_the_retracted_boom_is_a_no_go_on_the_way() {
    let usual = chart_finding(&with(|_, _| {}));
    assert_eq!(usual.status, Status::Go);
    let all = |from: f64| {
        chart_finding(&with(|_, parts| {
            let outline = [[from, -1.0], [8.0, -1.0], [8.0, 9.0], [from, 9.0]];
            let mut zone = parts.zones[0].clone();
            zone.outline = outline.iter().map(|p| DVec2::from_array(*p)).collect();
            parts.zones = vec![zone];
        }))
    };
    let at = usual.working.as_ref().unwrap().steps.iter().find(|s| s.title.id == "working-reach").unwrap().result.1.si;
    let near = all(0.0);
    assert_eq!(near.status, Status::Go);
    let far = all(at - 0.35);
    assert_eq!(far.status, Status::NoGo, "{:?}", far.message);
    assert!(says(&far.message, "chart-outside-on-the-way"), "{:?}", far.message);
}

fn look_at(machine: &machine::Machine, attachment: &str) -> Result<planning::DistanceAnswer, planning::NoAnswer> {
    distance_check(&DistanceQuestion {
        machine,
        attachment,
        support: machine::SupportState::Tyres,
        mass: 100.0,
        load_centre: 0.6,
        distance: 2.1,
        from: MeasuredFrom::FrontTyreFace,
        to: MeasuredTo::LoadCentre,
        height: 4.5,
    })
}

#[test]
fn the_quick_look_refuses_a_platform_for_people_and_names_the_turning_upper_part() {
    let mut machine = demo().machines[0].machine.clone();
    let slewing = |answer: &planning::DistanceAnswer| answer.not_checked.iter().any(|c| c == "check-slewing");
    assert!(!slewing(&look_at(&machine, "forks").unwrap()));
    machine.slew = Some(machine::Slew { axis: -1.0, range: degrees(180.0) });
    assert!(slewing(&look_at(&machine, "forks").unwrap()));
    let mut basket = machine.attachments[0].clone();
    basket.id = "basket".into();
    basket.kind = machine::AttachmentKind::Platform(machine::Platform { floor: DVec2::new(0.3, -0.6) });
    machine.attachments.push(basket);
    let mut parts = (*machine.charts[0]).clone();
    parts.attachment = "basket".into();
    machine.charts.push(Chart::new(parts));
    assert_eq!(look_at(&machine, "basket"), Err(planning::NoAnswer::People));
}
