//! What the plan says a lift bears, against the plan of the job changed by hand.

use crate::never_pass::demo;
use evidence::{Ranged, Verdict};
use planning::{Job, LiftPlan, Tolerance, ToleranceOf, plan_as_stated as plan};
use quantity::{Si, metres_per_second};

/// Indexes of the demo's lifts that are not no-go.
const GO: [usize; 3] = [0, 4, 5];

fn only(index: usize) -> Job {
    let mut job = demo();
    job.lifts = vec![job.lifts[index].clone()];
    // The maker's wind limit is not part of what place and weight bear.
    for unit in &mut job.machines {
        if let Some(wind) = &mut unit.machine.limits.wind {
            wind.speed = metres_per_second(1000.0);
        }
    }
    job
}

fn planned(job: &Job) -> LiftPlan {
    plan(job).lifts.remove(0)
}

fn of(lift: &LiftPlan, what: ToleranceOf) -> &Tolerance {
    lift.tolerances.iter().find(|t| t.what == what).unwrap()
}

/// Every uncertain input at its nominal value.
fn nominal(job: &mut Job) {
    let load = job.lifts[0].load;
    let load = &mut job.loads[load];
    for range in [&mut load.mass_kg, &mut load.centre_ahead, &mut load.centre_left, &mut load.centre_up] {
        *range = Ranged::exact(range.nominal);
    }
    let machine = job.lifts[0].machine;
    job.machines[machine].machine.boom.flex = 0.0;
    job.policy.stand_error = 0.0;
    for surface in &mut job.ground.surfaces {
        surface.accuracy = 0.0;
    }
}

fn heavier(job: &mut Job, kg: f64) {
    let load = job.lifts[0].load;
    let mass = &mut job.loads[load].mass_kg;
    (mass.low, mass.nominal, mass.high) = (mass.low + kg, mass.nominal + kg, mass.high + kg);
}

fn aside(job: &mut Job, m: f64) {
    let load = job.lifts[0].load;
    let left = &mut job.loads[load].centre_left;
    (left.low, left.nominal, left.high) = (left.low + m, left.nominal + m, left.high + m);
}

fn windier(job: &mut Job, by: f64) {
    let wind = job.lifts[0].wind.as_mut().unwrap();
    wind.gust = metres_per_second(wind.gust.si() + by);
}

/// Changes a job by so much.
type Changing = fn(&mut Job, f64);

/// Passes just below what is borne, and turns just beyond by the check that is named.
fn turns_at(job: &Job, most: f64, turned_by: Option<&str>, margin: f64, change: Changing) {
    let verdict = |by: f64| {
        let mut changed = job.clone();
        change(&mut changed, by);
        planned(&changed)
    };
    let below = verdict((most - margin).max(0.0));
    assert_ne!(below.verdict, Verdict::NoGo, "{most}: {:?}", below.governing_finding());
    if let Some(check) = turned_by {
        let beyond = verdict(most + margin);
        assert_eq!(beyond.verdict, Verdict::NoGo, "{most} by {check}");
        let refuses = beyond.findings.iter().any(|f| f.check == check && Verdict::from(f.status) == Verdict::NoGo);
        assert!(refuses, "{check} refuses");
    }
}

#[test]
fn a_job_changed_by_hand_turns_where_the_plan_says() {
    let changes: [(ToleranceOf, f64, Changing); 3] = [
        (ToleranceOf::LoadMass, 0.004, heavier),
        (ToleranceOf::LoadAside, 0.002, aside),
        (ToleranceOf::Gust, 0.05, windier),
    ];
    let mut turned = 0;
    for index in GO {
        let job = only(index);
        let lift = planned(&job);
        assert_eq!(lift.tolerances.len(), if job.loads[job.lifts[0].load].hanging.is_some() { 5 } else { 6 });
        for (what, margin, change) in changes {
            let Some(t) = lift.tolerances.iter().find(|t| t.what == what) else { continue };
            let margin = if what == ToleranceOf::LoadMass { margin * t.planned.unwrap() } else { margin };
            let exact = {
                let mut exact = job.clone();
                nominal(&mut exact);
                exact
            };
            for (job, borne) in [(&job, &t.at_worst), (&exact, t.alone.as_ref().unwrap())] {
                if what == ToleranceOf::LoadAside {
                    // The worse of both sides: neither turns below it, one of them beyond.
                    let right: Changing = |job, m| aside(job, -m);
                    let left = borne.way.as_ref().is_none_or(|w| w.id == "side-left");
                    turns_at(job, borne.most, borne.turned_by.as_deref(), margin, if left { aside } else { right });
                    turns_at(job, borne.most, None, margin, if left { right } else { aside });
                } else {
                    turns_at(job, borne.most, borne.turned_by.as_deref(), margin, change);
                }
                turned += usize::from(borne.turned_by.is_some());
            }
        }
    }
    assert!(turned >= 12, "{turned} turned");
}

#[test]
fn there_is_more_to_spare_with_all_else_as_planned() {
    for index in GO {
        let lift = planned(&only(index));
        for t in &lift.tolerances {
            let Some(alone) = &t.alone else { continue };
            assert!(alone.most >= t.at_worst.most - 1e-9, "{index} {:?}", t.what);
            assert!(t.at_worst.most.is_finite() && t.at_worst.most >= 0.0);
        }
        // All at once bears no more of any one than that one alone.
        let steps = of(&lift, ToleranceOf::Together).at_worst.most;
        let mass = of(&lift, ToleranceOf::LoadMass);
        assert!(steps * planning::STEPS[0] * mass.planned.unwrap() <= mass.at_worst.most + 1.0, "{index}");
        let wheel = of(&lift, ToleranceOf::OneWheelLower).at_worst.most;
        assert!(steps * planning::STEPS[4] <= wheel + 1e-3, "{index}");
        assert!(steps * planning::STEPS[2] <= of(&lift, ToleranceOf::Slope).at_worst.most + 2e-4, "{index}");
    }
}

#[test]
fn a_lift_that_is_no_go_bears_nothing_and_says_so_by_an_empty_list() {
    for (i, lift) in plan(&demo()).lifts.iter().enumerate() {
        assert_eq!(lift.tolerances.is_empty(), lift.verdict == Verdict::NoGo, "{i}");
    }
}

#[test]
fn the_wind_finding_names_the_gust_at_which_place_and_weight_turn() {
    let job = only(0);
    let lift = planned(&job);
    let gust = of(&lift, ToleranceOf::Gust);
    let finding = lift.findings.iter().find(|f| f.check == "wind").unwrap();
    assert_eq!(finding.message.id, "wind-turns");
    let evidence::Arg::Quantity(said) = finding.message.arg("gust").unwrap() else { panic!("a speed") };
    let turns = gust.planned.unwrap() + gust.at_worst.most;
    assert!((said.si - turns).abs() < 1e-9);
    let evidence::Arg::Quantity(mean) = finding.message.arg("mean").unwrap() else { panic!("a speed") };
    // 1.73: from mean to gust at 10 m over open water (EN 1991-1-4, terrain 0, from memory): c_r = 1.26,
    // I_v = 0.123, c_e = (1 + 7 · 0.123) · 1.26² = 2.98.
    assert!((said.si / mean.si - 1.73).abs() < 0.01, "{} {}", said.si, mean.si);
}
