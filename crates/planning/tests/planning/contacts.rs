//! Least force on wheels, moment ratios, weight on the steering, and sudden events, against moments by hand
//! and against samples of the uncertain inputs.

use crate::never_pass::demo;
use evidence::{Arg, Finding, Message, Ranged, Status, Verdict};
use geometry::DVec2;
use planning::{Job, check_lift};

fn only(index: usize) -> Job {
    let mut job = demo();
    job.lifts = vec![job.lifts[index].clone()];
    job
}

fn findings(job: &Job, check: &str) -> Vec<Finding> {
    check_lift(job, &job.lifts[0]).unwrap().findings().into_iter().filter(|f| f.check == check).collect()
}

/// A number of a message, or of the message in it.
fn number(message: &Message, name: &str) -> f64 {
    match message.arg(name) {
        Some(Arg::Quantity(q)) => q.si,
        _ => match message.arg("what") {
            Some(Arg::Message(inner)) => number(inner, name),
            _ => f64::NAN,
        },
    }
}

fn inner(message: &Message) -> &str {
    match message.arg("what") {
        Some(Arg::Message(inner)) => &inner.id,
        _ => &message.id,
    }
}

fn times_as_heavy(index: usize, times: f64) -> Job {
    let mut job = only(index);
    let load = job.lifts[0].load;
    let mass = &mut job.loads[load].mass_kg;
    (mass.low, mass.nominal, mass.high) = (mass.low * times, mass.nominal * times, mass.high * times);
    job
}

#[test]
fn no_sample_of_the_uncertain_inputs_has_a_lighter_wheel() {
    for index in [0, 1, 4] {
        let job = only(index);
        let said = &findings(&job, "contacts")[0];
        let (worst, flex) = (number(&said.message, "share"), job.machines[job.lifts[0].machine].machine.boom.flex);
        assert!(worst.is_finite());
        let (sin, cos) = job.lifts[0].stand.heading.sin_cos();
        let mut samples = 0;
        for reach in [-job.policy.stand_error, 0.0, job.policy.stand_error + flex] {
            for share in [0.0, 0.5, 1.0] {
                let mut exact = job.clone();
                let landing = exact.lifts[0].landing;
                exact.landings[landing].at += DVec2::new(cos, sin) * reach;
                exact.policy.stand_error = 0.0;
                exact.machines[job.lifts[0].machine].machine.boom.flex = 0.0;
                let load = &mut exact.loads[job.lifts[0].load];
                for range in [&mut load.mass_kg, &mut load.centre_ahead, &mut load.centre_left] {
                    *range = Ranged::exact(range.low + share * (range.high - range.low));
                }
                let sample = number(&findings(&exact, "contacts")[0].message, "share");
                assert!(sample >= worst - 1e-9, "lift {index}: {sample} below {worst}");
                samples += 1;
            }
        }
        assert_eq!(samples, 9);
    }
}

#[test]
fn a_wheel_goes_light_and_then_off_the_ground_as_the_load_grows() {
    let mut last = f64::INFINITY;
    let mut seen = std::collections::BTreeSet::new();
    for step in 0..30 {
        let job = times_as_heavy(1, 0.5 + 0.05 * f64::from(step));
        let f = &findings(&job, "contacts")[0];
        let share = number(&f.message, "share");
        seen.insert(inner(&f.message).to_owned());
        match inner(&f.message) {
            "contacts-pressed" => assert!(f.status == Status::Go && share >= 0.05),
            "contacts-light" => assert!(f.status == Status::Condition && share > 0.0 && share < 0.05),
            "contacts-lifted" => assert_eq!(f.status, Status::Condition),
            other => panic!("{other}"),
        }
        assert_eq!(f.remedies.is_empty(), f.status == Status::Go);
        if share.is_finite() {
            assert!(share <= last + 1e-9, "{share} after {last}");
            last = share;
        }
    }
    assert_eq!(seen.len(), 3, "{seen:?}");
}

#[test]
fn the_moment_ratio_is_one_where_the_load_tips_it() {
    let mut both = [0, 0];
    for step in 0..40 {
        let job = times_as_heavy(1, 0.3 + 0.04 * f64::from(step));
        let ratio = number(&findings(&job, "contacts")[0].message, "ratio");
        // On rigid contacts, as the ratio is: the working has it.
        let working = findings(&job, "load-factor")[0].working.clone().unwrap();
        let step = working.steps.iter().find(|s| &*s.title.id == "working-load-factor").unwrap();
        let factor = step.result.1.si;
        if factor > 1.02 {
            assert!(ratio > 1.0, "factor {factor}, ratio {ratio}");
            both[0] += 1;
        } else if factor < 0.98 {
            assert!(ratio < 1.0, "factor {factor}, ratio {ratio}");
            both[1] += 1;
        }
    }
    assert!(both[0] > 5 && both[1] > 5, "{both:?}");
}

#[test]
fn every_side_has_its_ratio_in_the_working_and_the_least_is_said() {
    let job = only(0);
    let f = &findings(&job, "contacts")[0];
    let steps = &f.working.as_ref().unwrap().steps;
    let ratios: Vec<f64> =
        steps.iter().filter(|s| s.title.id == "working-side-moments").map(|s| s.result.1.si).collect();
    assert_eq!(ratios.len(), 4);
    let least = ratios.iter().copied().fold(f64::INFINITY, f64::min);
    assert!((least - number(&f.message, "ratio")).abs() < 1e-12);
    for step in steps.iter().filter(|s| s.title.id == "working-side-moments") {
        let of = |name: &str| step.values.iter().find(|(n, _)| n == name).unwrap().1.si;
        assert!((of("M_h") / (of("M_o") + of("M_w")) - step.result.1.si).abs() < 1e-9);
    }
}

#[test]
fn the_share_on_the_steering_follows_from_moments_about_the_front_axle() {
    for index in [0, 4, 5] {
        let job = only(index);
        let lift = &job.lifts[0];
        let machine = &job.machines[lift.machine].machine;
        let attachment = machine.attachment(&lift.attachment).unwrap();
        let angle = quantity::Si::si(&machine.limits.carry.angle);
        let f = &findings(&job, "steering")[0];
        let load = &job.loads[lift.load];
        // Level forks where the stand pitches the machine: by the finding's own posture within a hair.
        let boom = machine::BoomPosition { angle, extension: 0.0, fork_tilt: 0.0 };
        let tool = machine::kinematics::tool_point(&machine.boom, attachment, boom);
        let ahead = if load.hanging.is_some() { 0.0 } else { load.centre_ahead.high };
        let at = tool + geometry::DVec3::X * ahead;
        let mut all = vec![(load.mass_kg.high, at)];
        all.extend(machine.bodies.iter().map(|b| (quantity::Si::si(&b.mass), b.centre)));
        all.extend(machine::kinematics::boom_masses(&machine.boom, attachment, boom));
        let mass: f64 = all.iter().map(|(m, _)| m).sum();
        let moment: f64 = all.iter().map(|(m, at)| m * (machine.front.x - at.x)).sum();
        let share = moment / (mass * (machine.front.x - machine.rear.axle.x));
        let said = number(&f.message, "share");
        assert!((said - share).abs() < 0.01, "lift {index}: {said} by hand {share}");
        assert_eq!(f.status, Status::Go);
    }
    // A load that takes the weight off the rear axle.
    let heavy = times_as_heavy(0, 4.0);
    let f = &findings(&heavy, "steering")[0];
    assert_eq!((f.status, &*f.message.id), (Status::Condition, "steering-light"));
}

#[test]
fn a_sudden_stop_is_said_with_what_is_borne_and_never_a_refusal() {
    let mut last = f64::INFINITY;
    let (mut told, mut conditions) = (0, 0);
    for step in 0..20 {
        let job = times_as_heavy(4, 0.2 + 0.12 * f64::from(step));
        let all = findings(&job, "sudden");
        assert!(!all.is_empty());
        for f in &all {
            assert_ne!(Verdict::from(f.status), Verdict::NoGo, "{:?}", f.message);
            assert!(!f.remedies.is_empty() || f.status == Status::Go);
        }
        if &*all[0].message.id == "sudden-stop-tips" {
            assert!(!all[0].remedies.is_empty());
            let factor = number(&all[0].message, "factor");
            assert!((1.0..2.0).contains(&factor), "{factor}");
            assert!(factor <= last + 1e-3, "the heavier the less: {factor} after {last}");
            // 2 v / (g t) of more than the weight, t half a second.
            let speed = number(&all[0].message, "speed");
            assert!((speed - (factor - 1.0) * 9.806_65 * 0.5 / 2.0).abs() < 1e-9);
            // A stop from half a metre a second is to be borne, or it is a condition.
            if (speed - 0.5).abs() > 1e-3 {
                assert_eq!(all[0].status == Status::Condition, speed < 0.5, "{speed}");
            }
            last = factor;
            told += 1;
            conditions += usize::from(all[0].status == Status::Condition);
        }
    }
    assert!(told > 5 && conditions > 2 && conditions < told, "{told} {conditions}");
}

#[test]
fn what_is_no_number_is_never_told_as_enough() {
    let mut job = only(0);
    let load = job.lifts[0].load;
    job.loads[load].mass_kg = Ranged::exact(f64::NAN);
    for check in ["contacts", "steering", "sudden"] {
        for f in findings(&job, check) {
            assert_eq!(f.status, Status::CannotTell, "{check}: {:?}", f.message);
        }
    }
    let mut job = only(0);
    job.ground.surfaces.clear();
    assert_eq!(findings(&job, "contacts")[0].status, Status::CannotTell);
}
