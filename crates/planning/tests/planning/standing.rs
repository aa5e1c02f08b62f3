//! Levelling, axle lock, tyres and bodies as found today: what a plan counts of them.

use crate::never_pass::demo;
use evidence::{Finding, Status};
use geometry::{DVec2, DVec3};
use machine::{Body, BodyKind, Levelling, Lock};
use planning::{FrontTyres, Job, check_lift};
use quantity::{Si, degrees, kilograms, pascals};
use site::{Grid, GroundSource, Terrain};

/// The demo's first lift alone, its machine able to level its frame and to lock its axle.
fn able() -> Job {
    let mut job = demo();
    job.lifts.truncate(1);
    let unit = &mut job.machines[job.lifts[0].machine];
    unit.machine.levelling = Some(Levelling { pin_height: 0.6, range: degrees(8.0), indicator_error: degrees(0.75) });
    unit.machine.rear.lock = Lock::Operator;
    job
}

/// The same on ground that falls to the machine's left by `slope` all over (rise over run).
fn aslant(slope: f64) -> Job {
    let mut job = able();
    let stand = job.lifts[0].stand;
    let rise = -DVec2::new(stand.heading.cos(), stand.heading.sin()).perp() * slope;
    let level = job.ground.height(stand.at).unwrap().0;
    let north_west = stand.at + DVec2::new(-20.0, 20.0);
    let heights = (0..41 * 41)
        .map(|i| {
            let at = DVec2::new(f64::from(i % 41) - 20.0, 20.0 - f64::from(i / 41));
            (level + rise.dot(at)) as f32
        })
        .collect();
    let grid = Grid { north_west, cell: DVec2::ONE, rows: 41, cols: 41, heights };
    let terrain = Terrain::Grid(grid);
    job.ground.surfaces = vec![GroundSource { name: "plane".into(), terrain, accuracy: 0.01, date: None }];
    job
}

/// The same with the machine that has stabilizers, on them; and that machine's index.
fn on_stabilizers(front_tyres: Option<FrontTyres>) -> (Job, usize) {
    let mut job = demo();
    let index = job.machines.iter().position(|m| m.machine.stabilizers.is_some()).unwrap();
    job.lifts.truncate(1);
    let lift = &mut job.lifts[0];
    (lift.machine, lift.support, lift.front_tyres) = (index, machine::SupportState::Stabilizers, front_tyres);
    (job, index)
}

fn finding(job: &Job, check: &str) -> Finding {
    let all = check_lift(job, &job.lifts[0]).unwrap().findings();
    all.into_iter().find(|f| f.check == check).unwrap_or_else(|| panic!("no finding {check}"))
}

fn named(job: &Job) {
    for f in check_lift(job, &job.lifts[0]).unwrap().findings() {
        assert!(planning::check_name(&f.check).is_some(), "{} has no name", f.check);
    }
}

fn status(job: &Job, check: &str) -> Option<Status> {
    let all = check_lift(job, &job.lifts[0]).unwrap().findings();
    all.into_iter().filter(|f| f.check == check).map(|f| f.status).max()
}

/// Tilt that remains over tilt required.
fn tilt(job: &Job) -> f64 {
    let f = finding(job, "tilt");
    f.limit.unwrap().si / f.demand.unwrap().si
}

#[test]
fn a_frame_levelled_boom_down_stands_within_the_charts_tolerance() {
    let mut job = aslant(libm::tan(0.06));
    assert_eq!(status(&job, "level"), Some(Status::NoGo));
    assert_eq!(finding(&job, "level").remedies[0].id, planning::text::DO_LEVEL_FRAME.id);
    let untouched = tilt(&job);
    job.lifts[0].levelled = true;
    let level = finding(&job, "level");
    assert_eq!((level.status, &*level.message.id), (Status::Condition, planning::text::LEVEL_FRAME.id));
    // What may stay is the indicator's error.
    assert!((level.demand.unwrap().si - 0.75_f64.to_radians()).abs() < 1e-9, "{level:?}");
    assert!(tilt(&job) > untouched, "{} {untouched}", tilt(&job));
    // It stands less well than on level ground: the wheels stay on the slope.
    let mut flat = aslant(0.0);
    flat.lifts[0].levelled = true;
    assert!(tilt(&flat) > tilt(&job), "{} {}", tilt(&flat), tilt(&job));
}

#[test]
fn levelling_that_ends_at_its_stop_leaves_the_rest() {
    let mut job = aslant(libm::tan(14.0_f64.to_radians()));
    job.lifts[0].levelled = true;
    let level = finding(&job, "level");
    assert_eq!((level.status, &*level.message.id), (Status::NoGo, planning::text::LEVEL_FRAME_STILL.id));
    assert!(level.demand.unwrap().si > 6.0_f64.to_radians(), "{level:?}");
}

#[test]
fn a_machine_without_levelling_is_not_levelled() {
    let mut job = aslant(libm::tan(0.06));
    job.lifts[0].levelled = true;
    let index = job.lifts[0].machine;
    job.machines[index].machine.levelling = None;
    assert_eq!(status(&job, "level"), Some(Status::NoGo));
}

#[test]
fn a_lock_counts_once_somebody_tried_it() {
    let mut job = able();
    let free = tilt(&job);
    job.lifts[0].axle_locked = true;
    assert_eq!(status(&job, "axle"), Some(Status::Condition));
    named(&job);
    // Free and locked are both reckoned: never better than free.
    let untried = tilt(&job);
    assert!((untried - free).abs() < 1e-12, "{untried} {free}");
    let index = job.lifts[0].machine;
    job.machines[index].lock_tried = Some("A. Invented".into());
    // It rests on what the operator does first.
    assert_eq!(status(&job, "axle"), Some(Status::Condition));
    assert!(tilt(&job) > free, "{} {free}", tilt(&job));
}

#[test]
fn a_lock_that_closes_by_boom_angle_counts_above_it_and_not_around_it() {
    let mut job = able();
    let index = job.lifts[0].machine;
    let free = tilt(&job);
    let unit = &mut job.machines[index];
    unit.lock_tried = Some("A. Invented".into());
    unit.machine.rear.lock = Lock::AboveBoomAngle;
    assert!((tilt(&job) - free).abs() < 1e-12, "nobody knows the angle");
    job.machines[index].machine.rear.lock_angle = Some(degrees(-20.0));
    let always = tilt(&job);
    assert!(always > free);
    job.machines[index].machine.rear.lock_angle = Some(degrees(80.0));
    assert!((tilt(&job) - free).abs() < 1e-12, "it never locks in this lift");
    // No place of the trigger is better than always locked, none is worse than never.
    for angle in 0..80 {
        job.machines[index].machine.rear.lock_angle = Some(degrees(f64::from(angle)));
        let between = tilt(&job);
        assert!(between >= free - 1e-12 && between <= always + 1e-12, "{angle}: {between}");
    }
}

#[test]
fn a_flat_tyre_is_no_go_and_leans_the_machine() {
    let job = able();
    let index = job.lifts[0].machine;
    for wheel in 0..4 {
        let mut flat = job.clone();
        flat.machines[index].flat[wheel] = true;
        assert_eq!(status(&flat, "tyres"), Some(Status::NoGo));
        named(&flat);
        if wheel < 2 {
            assert!(tilt(&flat) < tilt(&job), "wheel {wheel}");
        }
    }
}

#[test]
fn a_soft_tyre_leaves_less_and_a_hard_one_presses_more() {
    let job = able();
    let index = job.lifts[0].machine;
    let asked = job.machines[index].machine.front.tyre.pressure.unwrap().si();
    let with = |share: f64| {
        let mut job = job.clone();
        job.machines[index].pressures[0] = Some(pascals(asked * share));
        job
    };
    assert_eq!(status(&with(1.0), "tyres"), None);
    assert_eq!(status(&with(0.95), "tyres"), None);
    assert_eq!(status(&with(0.85), "tyres"), Some(Status::Condition));
    assert_eq!(status(&with(0.70), "tyres"), Some(Status::NoGo));
    assert_eq!(status(&with(1.2), "tyres"), Some(Status::Condition));
    assert_eq!(status(&with(1.3), "tyres"), Some(Status::NoGo));
    assert_eq!(status(&with(f64::NAN), "tyres"), Some(Status::CannotTell));
    assert!(tilt(&with(0.7)) < tilt(&job));
    let pressure = |job: &Job| finding(job, "ground").demand.unwrap().si;
    assert!(pressure(&with(1.2)) > pressure(&job));
}

#[test]
fn what_is_missing_or_added_or_may_be_lighter_counts() {
    let job = able();
    let index = job.lifts[0].machine;
    let factor = |job: &Job| {
        let f = finding(job, "load-factor");
        f.limit.unwrap().si / f.demand.unwrap().si
    };
    let frame = |j: &Job| j.machines[index].machine.bodies.iter().position(|b| b.kind == BodyKind::Frame).unwrap();
    // A part of the frame as its own body behind the rear axle.
    let mut parted = job.clone();
    let at = frame(&parted);
    let bodies = &mut parted.machines[index].machine.bodies;
    let rear = DVec3::new(-3.2, 0.0, 0.9);
    let whole = (bodies[at].mass.si(), bodies[at].centre);
    bodies[at].mass = kilograms(whole.0 - 400.0);
    bodies[at].centre = (whole.1 * whole.0 - rear * 400.0) / (whole.0 - 400.0);
    bodies.push(Body {
        kind: BodyKind::Frame,
        name: "ballast".into(),
        mass: kilograms(400.0),
        least: None,
        centre: rear,
    });
    assert!((factor(&parted) / factor(&job) - 1.0).abs() < 1e-9);

    let mut without = parted.clone();
    without.machines[index].without = vec!["ballast".into()];
    assert_eq!(status(&without, "machine"), Some(Status::NoGo));
    assert!(factor(&without) < factor(&job));
    let mut light = parted.clone();
    light.machines[index].machine.bodies.last_mut().unwrap().least = Some(kilograms(0.0));
    // As if it were not there, where that is worse.
    assert!((factor(&light) - factor(&without)).abs() < 1e-9);

    let mut added = job.clone();
    added.machines[index].added = vec![Body {
        kind: BodyKind::Frame,
        name: "lamp frame".into(),
        mass: kilograms(150.0),
        least: None,
        centre: DVec3::new(0.9, 0.0, 1.2),
    }];
    assert_eq!(status(&added, "machine"), Some(Status::Condition));
    assert!(factor(&added) < factor(&job));
}

#[test]
fn front_tyres_on_stabilizers_are_seen_clear() {
    let (mut job, _) = on_stabilizers(None);
    assert_eq!(status(&job, "tyres"), Some(Status::Condition));
    job.lifts[0].front_tyres = Some(FrontTyres::Touching);
    assert_eq!(status(&job, "tyres"), Some(Status::NoGo));
    job.lifts[0].front_tyres = Some(FrontTyres::Clear);
    assert_eq!(status(&job, "tyres"), None);
}

#[test]
fn carried_to_the_stand_nothing_is_levelled_locked_or_on_pads_yet() {
    // So steep that what governs is the machine as it is driven there.
    let mut job = aslant(libm::tan(13.5_f64.to_radians()));
    let unit = &mut job.machines[job.lifts[0].machine];
    unit.machine.levelling.as_mut().unwrap().range = degrees(16.0);
    unit.machine.rear.oscillation = degrees(17.0);
    job.lifts[0].levelled = true;
    let free = tilt(&job);
    let index = job.lifts[0].machine;
    job.machines[index].lock_tried = Some("A. Invented".into());
    job.lifts[0].axle_locked = true;
    let locked = tilt(&job);
    job.lifts[0].levelled = false;
    job.lifts[0].axle_locked = false;
    let driven = tilt(&job);
    assert!(locked >= free, "{locked} {free}");
    // The boom is down there: no better than that, however it stands later.
    assert!(driven < free, "{driven} {free}");
    let carried = |job: &Job| {
        let mut job = job.clone();
        job.lifts[0].clear = quantity::metres(0.05);
        tilt(&job)
    };
    assert!(carried(&job) <= free);
}

#[test]
fn what_was_added_never_makes_a_lift_pass() {
    let job = able();
    let index = job.lifts[0].machine;
    let mut ballast = job.clone();
    ballast.machines[index].added = vec![Body {
        kind: BodyKind::Frame,
        name: "ballast".into(),
        mass: kilograms(3000.0),
        least: None,
        centre: DVec3::new(-2.4, 0.0, 0.8),
    }];
    assert!(tilt(&ballast) <= tilt(&job) + 1e-12, "{} {}", tilt(&ballast), tilt(&job));
}

#[test]
fn a_flat_tyre_off_the_ground_is_told_all_the_same() {
    let (mut job, index) = on_stabilizers(Some(FrontTyres::Clear));
    job.machines[index].flat[0] = true;
    assert_eq!(status(&job, "tyres"), Some(Status::NoGo));
}

#[test]
fn stabilizers_that_lock_the_axle_count_where_no_other_lock_was_meant() {
    let (mut job, index) = on_stabilizers(Some(FrontTyres::Clear));
    job.machines[index].machine.stabilizers.as_mut().unwrap().rear_axle_free = false;
    let untried = tilt(&job);
    job.machines[index].lock_tried = Some("A. Invented".into());
    job.machines[index].machine.rear.lock = Lock::Operator;
    assert!((tilt(&job) - untried).abs() < 1e-12, "the operator's lock was tried, not the one of the pads");
    job.machines[index].machine.rear.lock = Lock::Never;
    assert!(tilt(&job) >= untried);
}
