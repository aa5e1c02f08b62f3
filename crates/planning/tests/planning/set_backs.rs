//! Set-backs kept from check to check: the same answers, solved once, and the lines that are drawn of them.

use crate::carried::{clay, job, trench};
use evidence::{Finding, Status};
use ground::Stated;
use planning::{
    Job, LineOf, SetBacks, SoilArea, check_lift, check_lift_with, lift_lines, plan_as_stated as plan, planning_lines,
};
use site::{OpenSides, Support};

/// Soil that holds the trench's side, but not under these wheels at the planning line.
fn weak(cohesion: f64) -> SoilArea {
    let mut soil = clay(1.0);
    soil.profile.layers[0].stated = Stated { undrained: None, drained: Some((cohesion, 25_f64.to_radians())) };
    soil.profile.water = Some(6.0);
    soil
}

fn beside(off: f64, soil: SoilArea) -> Job {
    let mut job = job();
    // A steeper line in a named person's name: equilibrium decides.
    let standing = OpenSides { line: Some((0.2, "A. Invented".into())), people_below: false, ..OpenSides::default() };
    let dig = trench(&job, off, standing, Support::None);
    job.surroundings.excavations = vec![dig];
    job.soils = vec![soil];
    job
}

fn edges(found: Vec<Finding>) -> Vec<Finding> {
    found.into_iter().filter(|f| f.check == "edges").collect()
}

/// A walk along and away from the trench, as a search makes it: every check gives what a check alone gives, and few are
/// solved.
#[test]
fn kept_set_backs_answer_as_fresh_ones_and_are_solved_once() {
    let mut kept = SetBacks::default();
    let (mut asked, mut refused) = (0, 0);
    for cohesion in [17e3, 26e3] {
        for step in 0..10 {
            let job = beside(0.7 + 0.3 * f64::from(step), weak(cohesion));
            let with = check_lift_with(&job, &job.lifts[0], &mut kept).unwrap();
            let alone = check_lift(&job, &job.lifts[0]).unwrap();
            assert_eq!(with.verdict(), alone.verdict());
            let found = edges(with.findings());
            assert_eq!(found, edges(alone.findings()));
            refused += usize::from(found.iter().any(|f| f.status == Status::NoGo));
            asked += 1;
        }
    }
    assert!(kept.solved() >= 2 && kept.solved() * 3 <= asked, "{} of {asked}", kept.solved());
    assert!(refused > 2 && refused < asked, "{refused} of {asked}");
}

/// The line that is drawn lies where the check turns.
#[test]
fn the_line_of_a_lift_is_where_its_check_turns() {
    let mut kept = SetBacks::default();
    let mut turned = [0, 0];
    for step in 0..14 {
        let job = beside(0.7 + 0.2 * f64::from(step), weak(17e3));
        let lines = lift_lines(&job, &job.lifts[0], &mut kept);
        let [line] = lines[..] else { panic!("{lines:?}") };
        assert!(line.of == LineOf::Wheels && line.excavation == 0 && line.distance > 1.0, "{line:?}");
        let check = check_lift_with(&job, &job.lifts[0], &mut kept).unwrap();
        let Some(found) = edges(check.findings()).into_iter().find(|f| f.demand.is_some()) else { continue };
        // Demand is the distance needed, limit the one there is.
        assert_eq!(found.demand.unwrap().si, line.distance);
        let far = found.limit.unwrap().si >= line.distance;
        assert_eq!(found.status, if far { Status::Go } else { Status::NoGo });
        turned[usize::from(far)] += 1;
    }
    assert!(turned.iter().all(|n| *n > 1), "{turned:?}");
}

#[test]
fn planning_lines_are_those_of_the_check_and_sand_keeps_everything_away() {
    let job = beside(2.0, weak(0.0));
    let [face] = lift_lines(&job, &job.lifts[0], &mut SetBacks::default())[..] else { panic!("one excavation") };
    assert_eq!(face.of, LineOf::Face);
    assert!((face.distance - 3.0 * 1.6).abs() < 1e-9, "{face:?}");
    let mut dig = job.surroundings.excavations[0].clone();
    dig.standing.line = None;
    let digs = [dig.clone(), site::Excavation { depth: None, ..dig }];
    let [line] = planning_lines(&digs, &[])[..] else { panic!("no line where the depth is not known") };
    assert!(line.of == LineOf::Planning && (line.distance - 1.5 * 1.6).abs() < 1e-9, "{line:?}");
    // Where nothing is stated of the soil, a lift asks no more than the line.
    let mut bare = job;
    bare.soils.clear();
    assert!(lift_lines(&bare, &bare.lifts[0], &mut SetBacks::default()).is_empty());
}

/// The plan of a job beside an open cut is the same plan every time, to its digest.
#[test]
fn the_plan_beside_a_cut_is_the_same_every_time() {
    let mut job = beside(2.6, weak(17e3));
    job.lifts.push(job.lifts[0].clone());
    job.lifts[1].id = "again".into();
    let (one, two) = (plan(&job), plan(&job));
    assert_eq!(one.digest, two.digest);
    assert_eq!(one.lifts[0].findings, one.lifts[1].findings);
}

fn one(job: &Job) -> Finding {
    let mut found = edges(check_lift(job, &job.lifts[0]).unwrap().findings());
    found.retain(|f| f.working.is_some());
    assert_eq!(found.len(), 1, "one finding for one excavation: {found:?}");
    found.remove(0)
}

fn with(off: f64, change: impl Fn(&mut site::Excavation)) -> Job {
    let mut job = job();
    let mut dig = trench(&job, off, OpenSides::default(), Support::None);
    change(&mut dig);
    job.surroundings.excavations = vec![dig];
    job
}

/// Nobody knows how deep: nothing is told as far as a dig may ask that needs no engineer.
#[test]
fn an_unknown_depth_may_be_as_deep_as_is_dug_without_an_engineer() {
    for (off, status) in
        [(5.0, Status::CannotTell), (7.0, Status::CannotTell), (12.0, Status::CannotTell), (13.5, Status::Go)]
    {
        assert_eq!(one(&with(off, |dig| dig.depth = None)).status, status, "{off}");
    }
}

/// Type B soil keeps its steeper line only while it is dry: rain on the face, or water in the soil beside it, makes it soft.
#[test]
fn wet_soil_is_soft_soil() {
    let needed = |wetted: bool, soils: Vec<SoilArea>| {
        let mut job = with(4.5, |dig| dig.standing.wetted = wetted);
        job.soils = soils;
        one(&job)
    };
    let by = |found: Finding| found.demand.unwrap().si;
    let firm = |water: Option<f64>| {
        let mut soil = clay(200e3);
        soil.profile.layers[0].stated = Stated { undrained: None, drained: Some((90e3, 0.6)) };
        soil.profile.water = water;
        soil
    };
    assert!((by(needed(false, Vec::new())) - 1.5 * 1.6).abs() < 1e-9);
    assert!((by(needed(true, Vec::new())) - 2.0 * 1.6).abs() < 1e-9);
    assert!((by(needed(false, vec![firm(Some(3.0))])) - 1.5 * 1.6).abs() < 1e-9);
    for water in [Some(1.0), None] {
        assert!((by(needed(false, vec![firm(water)])) - 2.0 * 1.6).abs() < 1e-9, "{water:?}");
    }
    let mut thawing = firm(Some(3.0));
    thawing.profile.state = ground::GroundState::Thawing;
    assert!(needed(false, vec![thawing]).status != Status::Go || by(needed(true, Vec::new())) > 1.5 * 1.6);
}

/// Deeper than 20 ft nothing passes without an engineer's name, however far the line says; far off it is no matter.
#[test]
fn deep_digs_are_an_engineers() {
    let told = |depth: f64, off: f64, support: Support| {
        one(&with(off, |dig| {
            dig.depth = Some(evidence::Ranged::exact(depth));
            dig.support = support.clone();
        }))
    };
    let deep = told(7.0, 14.0, Support::None);
    assert_eq!((deep.status, deep.message.id.as_ref()), (Status::CannotTell, "edge-needs-engineer"));
    assert!(deep.remedies.iter().any(|r| r.id == "do-name-engineer"), "{deep:?}");
    assert_eq!(told(7.0, 14.0, Support::NotKnown).status, Status::CannotTell);
    assert_eq!(told(7.0, 14.0, Support::Supported { by: None }).status, Status::CannotTell);
    assert_eq!(told(7.0, 14.0, Support::Supported { by: Some("E. Engineer".into()) }).status, Status::Go);
    assert_eq!(told(7.0, 4.0, Support::None).status, Status::NoGo, "too near stays too near");
    assert_eq!(told(6.0, 14.0, Support::None).status, Status::Go);
    assert_eq!(told(7.0, 23.0, Support::None).status, Status::Go);
}

/// An excavation that was looked at and is far enough is said so, out to three depths and 10 m.
#[test]
fn what_is_far_enough_is_said() {
    type Change = fn(&mut site::Excavation);
    let kinds: [(&str, Change); 5] = [
        ("plain", |_| {}),
        ("wet, upright line", |dig| {
            dig.standing.wetted = true;
            dig.standing.line = Some((0.0, "A. Invented".into()));
        }),
        ("supported", |dig| dig.support = Support::Supported { by: Some("E. Engineer".into()) }),
        ("nobody designed it", |dig| dig.support = Support::Supported { by: None }),
        ("nobody has said", |dig| dig.support = Support::NotKnown),
    ];
    for (name, change) in kinds {
        for soil in [None, Some(weak(60e3))] {
            for off in [5.5, 9.0, 13.5] {
                let mut job = with(off, change);
                job.soils.extend(soil.clone());
                let found = one(&job);
                assert_eq!(found.status, Status::Go, "{name} {off}: {found:?}");
                assert!(found.limit.unwrap().si >= found.demand.unwrap().si);
            }
        }
    }
    let far = with(40.0, |_| {});
    assert!(edges(check_lift(&far, &far.lifts[0]).unwrap().findings()).iter().all(|f| f.demand.is_none()));
}

/// What rain takes of a soil's state never lets a machine nearer than its dry state does.
#[test]
fn a_wetted_soil_is_asked_with_the_less_of_both_strengths() {
    let status = |state: ground::GroundState, hours: Option<f64>| {
        let mut soil = clay(7e3);
        soil.profile.layers[0].stated.drained = Some((30e3, 0.5));
        soil.profile.water = Some(6.0);
        soil.profile.state = state;
        let mut job = with(3.4, |dig| dig.standing.undrained_for = hours);
        job.soils = vec![soil];
        one(&job).status
    };
    assert_eq!(status(ground::GroundState::AsStated, Some(24.0)), Status::NoGo);
    assert_eq!(status(ground::GroundState::AsStated, None), Status::NoGo);
    assert_eq!(status(ground::GroundState::Wetted, Some(24.0)), Status::NoGo);
}
