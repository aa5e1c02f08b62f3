//! Soil under the wheels, mats, edges and buried things in a lift: what is stated is used, what is missing never passes.

use crate::never_pass::demo;
use evidence::{Finding, Ranged, Status, Verdict};
use geometry::DVec2;
use ground::buried::FlexiblePipe;
use ground::mat_material::{MatMaterial, TimberClass};
use ground::mats::Mat;
use ground::presumed::{Code, find};
use ground::{GroundState, Layer, Profile, Stated};
use planning::{GroundFactors, Job, Matter, SiteMat, SoilArea, check_lift};
use site::{Buried, BuriedKind, Excavation, GroundAround, OpenSides, PipeWall, PlanArea, PlanShape, Support};

/// More than anything here presses, Pa.
const ENDLESS: f64 = 1e6;

const DEGREE: f64 = std::f64::consts::PI / 180.0;

/// The first lift of the demo job alone; nobody accepts the ground.
pub(crate) fn job() -> Job {
    let mut job = demo();
    job.lifts.truncate(1);
    job.acceptances.retain(|a| a.matter != Matter::GroundStrength);
    job.lifts[0].acceptances.retain(|a| a.matter != Matter::GroundStrength);
    job
}

fn findings(job: &Job, check: &str) -> Vec<Finding> {
    check_lift(job, &job.lifts[0]).unwrap().findings().into_iter().filter(|f| f.check == check).collect()
}

pub(crate) fn clay(c_u: f64) -> SoilArea {
    let layer = Layer {
        top: 0.0,
        thickness: f64::INFINITY,
        unit_weight: 19e3,
        stated: Stated { undrained: Some(c_u), drained: None },
        stiffness: None,
    };
    let profile = Profile { layers: vec![layer], water: Some(2.0), state: GroundState::AsStated };
    SoilArea { id: "c".into(), name: "Clay".into(), area: None, profile, presumed: None, by: "made".into() }
}

/// Stronger clay turns the ground from no-go to go once, and the printed working ends in the printed numbers.
#[test]
fn stronger_soil_turns_the_verdict_once() {
    let mut went = false;
    let mut refused = 0;
    for step in 1..60 {
        let mut job = job();
        job.soils.push(clay(f64::from(step) * 20e3));
        let found = findings(&job, "ground");
        let [one] = &found[..] else { panic!("soil under every wheel speaks alone: {found:?}") };
        let (demand, limit) = (one.demand.unwrap().si, one.limit.unwrap().si);
        assert_eq!(one.status, if demand <= limit { Status::Go } else { Status::NoGo });
        let last = one.working.as_ref().unwrap().steps.last().unwrap();
        assert!((last.result.1.si - limit).abs() <= 1e-9 * limit, "the working ends in the resistance");
        assert!(!(went && one.status == Status::NoGo), "no way back");
        went |= one.status == Status::Go;
        refused += usize::from(one.status == Status::NoGo);
    }
    assert!(went && refused > 2, "{refused}");
}

/// Less is asked by one factor of 2 than by one of 3; a wetted clay of which nothing else is known tells nothing.
#[test]
fn factors_and_states_count() {
    let share = |factors: GroundFactors| {
        let mut job = job();
        job.soils.push(clay(200e3));
        job.policy.ground_factors = factors;
        let one = findings(&job, "ground").remove(0);
        one.demand.unwrap().si / one.limit.unwrap().si
    };
    let (two, three) = (share(GroundFactors::One(2.0)), share(GroundFactors::One(3.0)));
    assert!((three / two - 1.5).abs() < 1e-9, "{two} {three}");
    assert!(share(GroundFactors::Da1) > 0.0 && share(GroundFactors::Da2) > 0.0 && share(GroundFactors::Da3) > 0.0);
    let mut wet = job();
    let mut soil = clay(400e3);
    soil.profile.state = GroundState::Wetted;
    wet.soils.push(soil);
    assert_eq!(findings(&wet, "ground")[0].status, Status::CannotTell);
}

/// A stated strength and a stated soil must both hold; soil elsewhere leaves the word to the person.
#[test]
fn a_person_cannot_speak_against_the_soil() {
    let mut accepted = demo();
    accepted.lifts.truncate(1);
    let before = findings(&accepted, "ground");
    assert!(before.iter().all(|f| f.status <= Status::Condition), "{before:?}");
    accepted.soils.push(clay(5e3));
    assert!(findings(&accepted, "ground").iter().any(|f| f.status == Status::NoGo));
    let at = accepted.lifts[0].stand.at + DVec2::splat(60.0);
    let outer = vec![at, at + DVec2::X, at + DVec2::ONE, at + DVec2::Y];
    accepted.soils[0].area = Some(PlanArea { outer, holes: Vec::new() });
    assert_eq!(findings(&accepted, "ground"), before);
}

/// A stiff mat lets a soil carry more; it never takes away.
#[test]
fn mats_spread_the_force() {
    let limit = |mat: Option<usize>| {
        let mut job = job();
        job.soils.push(clay(60e3));
        let steel = MatMaterial::steel_plate(355e6).unwrap();
        let oak = MatMaterial::timber(TimberClass::D40);
        for (name, material, thickness) in [("steel", steel, 0.04), ("oak", oak, 0.15)] {
            let mat = Mat { size: [1.5, 1.2], thickness, material };
            job.mats.push(SiteMat { id: name.into(), name: name.into(), mat });
        }
        job.lifts[0].mats = mat.into_iter().collect();
        let one = findings(&job, "ground").remove(0);
        one.demand.unwrap().si / one.limit.unwrap().si
    };
    let bare = limit(None);
    assert!(limit(Some(0)) < bare, "{} {bare}", limit(Some(0)));
    assert!(limit(Some(1)) < bare);
}

/// Described ground counts under mats, with the force as it is; under bare tyres it tells nothing, whatever the code presumes, and
/// a code that presumes nothing for a soil tells nothing under mats.
#[test]
fn a_presumed_value_counts_under_mats_and_never_under_tyres() {
    let asked = |code: Code, soil: &str, mat: Option<usize>| {
        let mut job = job();
        let presumed = find(code, soil);
        assert!(presumed.is_some(), "{soil}");
        job.soils.push(SoilArea { profile: Profile::default(), presumed, ..clay(1.0) });
        for (i, side) in [1.2, 1.5].into_iter().enumerate() {
            let material = MatMaterial::steel_plate(355e6).unwrap();
            let mat = Mat { size: [side; 2], thickness: 0.04, material };
            job.mats.push(SiteMat { id: format!("m{i}"), name: "Plate".into(), mat });
        }
        job.lifts[0].mats = mat.into_iter().collect();
        findings(&job, "ground").remove(0)
    };
    for (code, soil) in [(Code::Chicago, "solid rock"), (Code::Bs8004, "firm clay")] {
        assert_eq!(asked(code, soil, None).status, Status::CannotTell, "a tyre on {soil}");
    }
    assert_eq!(asked(Code::Bs8004, "soft clay and silt", Some(0)).status, Status::CannotTell);
    let rock = asked(Code::Chicago, "solid rock", Some(0));
    assert_eq!((rock.status, rock.message.id.as_ref()), (Status::Go, "soil-presumed"), "{rock:?}");
    let soft = asked(Code::Chicago, "clay, very soft", Some(0));
    assert_eq!((soft.status, soft.message.id.as_ref()), (Status::NoGo, "soil-presumed-weak"), "{soft:?}");
    // The same force without factors on both; more area under the larger plate.
    assert_eq!(rock.demand, soft.demand);
    let larger = asked(Code::Chicago, "clay, very soft", Some(1));
    assert!(larger.limit.unwrap().si > soft.limit.unwrap().si);
    let share = soft.limit.unwrap().si / rock.limit.unwrap().si;
    assert!((share - 23.9 / 9576.1).abs() < 1e-9, "{share}");
    // Beside an excavation it says nothing of whether the side slips.
    let mut job = job();
    let dig = trench(&job, 6.0, OpenSides::default(), Support::None);
    job.surroundings.excavations.push(dig);
    let presumed = find(Code::Chicago, "solid rock");
    job.soils.push(SoilArea { profile: Profile::default(), presumed, ..clay(1.0) });
    assert!(findings(&job, "edges").iter().any(|f| f.status == Status::CannotTell));
}

pub(crate) fn trench(job: &Job, off: f64, standing: OpenSides, support: Support) -> Excavation {
    let lift = &job.lifts[0];
    let half = job.machines[lift.machine].machine.contacts(lift.support)[0].y;
    let forward = DVec2::new(lift.stand.heading.cos(), lift.stand.heading.sin());
    let corner = |along: f64, aside: f64| lift.stand.at + forward * along - forward.perp() * (half + off + aside);
    Excavation {
        id: "t".into(),
        name: "Trench".into(),
        outline: PlanArea {
            outer: vec![corner(-9.0, 0.0), corner(4.0, 0.0), corner(4.0, 1.0), corner(-9.0, 1.0)],
            holes: Vec::new(),
        },
        depth: Some(Ranged::plus_minus(1.5, 0.1)),
        soil: Some(site::SoilType::TypeB),
        support,
        standing,
        source: "made".into(),
    }
}

/// Farther from a trench the edge turns from no-go to go once, where the soil is stated and where it is not; a weak
/// face asks more than the line, and one that does not stand by itself refuses.
#[test]
fn an_edge_turns_the_verdict_once_and_weak_soil_asks_more() {
    let soil = |cohesion: f64, friction: f64| {
        let mut soil = clay(1.0);
        soil.profile.layers[0].stated = Stated { undrained: None, drained: Some((cohesion, friction * DEGREE)) };
        soil.profile.water = Some(6.0);
        soil
    };
    let first_go = |stated: Option<SoilArea>| {
        let mut first = None;
        for step in 1..=45 {
            let off = f64::from(step) * 0.2;
            let mut job = job();
            let dig = trench(&job, off, OpenSides::default(), Support::None);
            job.surroundings.excavations.push(dig);
            job.soils.extend(stated.clone());
            let worst = findings(&job, "edges")
                .iter()
                .filter(|f| f.working.is_some())
                .map(|f| f.status)
                .max()
                .unwrap_or(Status::Go);
            match (first, worst) {
                (None, Status::Go) => first = Some(off),
                (Some(at), other) => assert_eq!(other, Status::Go, "go at {at}, not at {off}"),
                _ => {}
            }
        }
        first
    };
    let line = first_go(None).unwrap();
    // 1.5 to 1 of 1.6 m, outside the tyre, with the stand's error.
    assert!(line > 1.5 * 1.6 && line < 1.5 * 1.6 + 0.8, "{line}");
    let firm = first_go(Some(soil(40e3, 30.0))).unwrap();
    assert!((firm - line).abs() < 0.21, "what is computed never undercuts the line: {firm} {line}");
    // Sand does not stand upright: nothing near it, out to three times the line.
    assert!(first_go(Some(soil(0.0, 30.0))).unwrap() > 3.0 * 1.5 * 1.6);
}

/// A support that somebody designed for loads is a condition; one that nobody names is not.
#[test]
fn a_supported_side_is_for_its_designer() {
    let status = |support: Support| {
        let mut job = job();
        let dig = trench(&job, 0.6, OpenSides::default(), support);
        job.surroundings.excavations.push(dig);
        findings(&job, "edges").iter().find(|f| f.working.is_some()).unwrap().status
    };
    assert_eq!(status(Support::Supported { by: Some("E. Engineer".into()) }), Status::Condition);
    assert_eq!(status(Support::Supported { by: None }), Status::NoGo);
    assert_eq!(status(Support::NotKnown), Status::NoGo);
}

/// A pipe under the front wheels: more cover is less stress; its owner's figure decides, and a general word for what is
/// buried here clears nothing of it but that figure.
#[test]
fn a_buried_pipe_is_pressed_less_under_more_cover() {
    let asked = |cover: Option<f64>, allowed: Option<f64>, cleared: bool| {
        let mut job = job();
        let at = job.lifts[0].stand.at;
        job.surroundings.buried.push(Buried {
            id: "d".into(),
            name: "Drain".into(),
            kind: BuriedKind::Pipe,
            shape: PlanShape::Strip { course: vec![at - DVec2::X * 9.0, at + DVec2::X * 9.0], width: 0.5 },
            cover: cover.map(|c| Ranged::plus_minus(c, 0.05)),
            allowed_pressure: allowed,
            wall: cleared.then_some(PipeWall::Rigid),
            around: cleared.then(|| GroundAround { fresh_fill: Some(false), voids: Some(false), by: "G. Soil".into() }),
            source: "owner".into(),
        });
        findings(&job, "buried").into_iter().find(|f| f.message.id != "matter-open").unwrap()
    };
    let mut last = f64::INFINITY;
    // Deeper down the 2:1 spreads of both wheels of an axle meet, and the stress between them steps up.
    for cover in [0.4, 0.6, 0.9, 1.3] {
        let found = asked(Some(cover), Some(ENDLESS), true);
        assert_eq!(found.status, Status::Go);
        let stress = found.demand.unwrap().si;
        assert!(stress > 0.0 && stress < last, "{cover}: {stress}");
        last = stress;
        assert_eq!(asked(Some(cover), Some(0.5 * found.demand.unwrap().si), true).status, Status::NoGo);
        assert_eq!(asked(Some(cover), None, true).status, Status::Condition);
        // Fresh fill and voids are not ruled out where nobody says so of this pipe, nor is its wall known.
        assert_eq!(asked(Some(cover), Some(ENDLESS), false).status, Status::CannotTell);
        assert_eq!(asked(Some(cover), None, false).status, Status::CannotTell);
    }
    assert_eq!(asked(None, Some(ENDLESS), false).status, Status::CannotTell);
}

/// A void, filled ground or a cable of which nothing of its own is stated is not cleared by a word for the whole site, nor is a cover
/// that may be none.
#[test]
fn a_listed_thing_is_cleared_by_its_own_keys_and_not_by_a_general_word() {
    let clear = || Some(GroundAround { fresh_fill: Some(false), voids: Some(false), by: "G. Soil".into() });
    let asked = |kind: BuriedKind, cover: Option<Ranged>, around: Option<GroundAround>, answered: bool| {
        let mut job = job();
        let keeps = |a: &planning::Acceptance| answered || a.matter != Matter::Buried;
        job.acceptances.retain(keeps);
        job.lifts[0].acceptances.retain(keeps);
        let shape = PlanShape::Round { centre: job.lifts[0].stand.at, radius: 1.0 };
        let (wall, source) = (None, "owner".into());
        let (id, name, allowed_pressure) = ("d".into(), "Old thing".into(), None);
        job.surroundings.buried.push(Buried { id, name, kind, shape, cover, allowed_pressure, wall, around, source });
        let found = findings(&job, "buried").into_iter().find(|f| f.message.id != "matter-open").unwrap();
        assert!(!found.remedies.is_empty(), "says what is open: {found:?}");
        found.status
    };
    let deep = Some(Ranged::plus_minus(1.0, 0.1));
    for kind in [BuriedKind::Void, BuriedKind::Backfill, BuriedKind::Cable] {
        assert_eq!(asked(kind, deep, None, true), Status::CannotTell, "{kind:?}");
        assert_eq!(asked(kind, deep, clear(), false), Status::CannotTell, "{kind:?}");
        assert_eq!(asked(kind, deep, clear(), true), Status::Condition, "{kind:?}");
    }
    assert_eq!(asked(BuriedKind::Tank, deep, clear(), true), Status::Condition, "only its owner's figure is open");
    for kind in [BuriedKind::Tank, BuriedKind::Void, BuriedKind::Cable] {
        for cover in [None, Some(Ranged::exact(0.0)), Some(Ranged { low: 0.0, nominal: 0.3, high: 0.7 })] {
            assert_eq!(asked(kind, cover, clear(), true), Status::CannotTell, "{kind:?} {cover:?}");
        }
    }
    assert_eq!(asked(BuriedKind::Pipe, deep, clear(), true), Status::CannotTell, "its wall is nobody's general word");
}

/// The weight over a thing is that of the layers above it, of the heaviest soil that lies there; the wheels stand as badly as the stand
/// may be wrong.
#[test]
fn cover_weighs_by_its_layers_and_the_stand_may_be_off() {
    let stress = |soils: Vec<SoilArea>, stand_error: f64, aside: f64| {
        let mut job = job();
        job.policy.stand_error = stand_error;
        let stand = job.lifts[0].stand;
        let along = DVec2::new(stand.heading.cos(), stand.heading.sin());
        let half = job.machines[job.lifts[0].machine].machine.contacts(job.lifts[0].support)[0].y;
        let beside = stand.at + along.perp() * (half + aside);
        job.soils = soils;
        job.surroundings.buried.push(Buried {
            id: "d".into(),
            name: "Drain".into(),
            kind: BuriedKind::Pipe,
            shape: PlanShape::Strip { course: vec![beside - along * 9.0, beside + along * 9.0], width: 0.3 },
            cover: Some(Ranged::exact(0.9)),
            allowed_pressure: Some(ENDLESS),
            wall: Some(PipeWall::Rigid),
            around: Some(GroundAround { fresh_fill: Some(false), voids: Some(false), by: "G. Soil".into() }),
            source: "owner".into(),
        });
        findings(&job, "buried").into_iter().find(|f| f.message.id != "matter-open").unwrap().demand.unwrap().si
    };
    let layered = |weights: [f64; 2], area: bool| {
        let mut soil = clay(100e3);
        let upper = Layer { thickness: 0.5, unit_weight: weights[0], ..soil.profile.layers[0] };
        let lower = Layer { top: 0.5, unit_weight: weights[1], ..soil.profile.layers[0] };
        soil.profile.layers = vec![upper, lower];
        if area {
            let at = job().lifts[0].stand.at;
            let corner = |x: f64, y: f64| at + DVec2::new(x, y);
            let outer = vec![corner(-30.0, -30.0), corner(30.0, -30.0), corner(30.0, 30.0), corner(-30.0, 30.0)];
            soil.area = Some(PlanArea { outer, holes: Vec::new() });
        }
        soil
    };
    let bare = stress(Vec::new(), 0.1, 0.0);
    let more = |soils: Vec<SoilArea>| stress(soils, 0.1, 0.0) - bare + 0.9 * 21e3;
    assert!((more(vec![layered([16e3, 20e3], false)]) - (0.5 * 16e3 + 0.4 * 20e3)).abs() < 1.0);
    assert!((more(vec![layered([16e3, 20e3], false), clay(100e3)]) - 0.9 * 19e3).abs() < 1.0, "the heavier");
    // Beside a stated area nobody has said what lies over the rest of it.
    assert!((more(vec![layered([16e3, 20e3], true)]) - 0.9 * 21e3).abs() < 1.0);
    assert!((more(vec![layered([22e3, 24e3], true)]) - (0.5 * 22e3 + 0.4 * 24e3)).abs() < 1.0);
    let mut last = 0.0;
    for error in [0.0, 0.1, 0.3, 0.6] {
        let found = stress(Vec::new(), error, 0.9);
        assert!(found > last, "{error}: {found}");
        last = found;
    }
}

/// A named person can clear the ground around one pipe alone, whose wall is stated; a flexible one is asked for its deflection too,
/// and what is left out of either stays open.
#[test]
fn one_pipe_is_cleared_by_its_own_person_and_a_flexible_one_by_its_deflection() {
    let pipe = FlexiblePipe { radius: 0.2, wall: 500.0, soil: 3e6, bedding: 0.11, lag: 1.5, allowable: Some(0.05) };
    let person = |fresh_fill, voids| Some(GroundAround { fresh_fill, voids, by: "G. Soil".into() });
    let asked = |wall: Option<PipeWall>, around: Option<GroundAround>, allowed: Option<f64>| {
        let mut job = job();
        job.acceptances.retain(|a| a.matter != Matter::Buried);
        job.lifts[0].acceptances.retain(|a| a.matter != Matter::Buried);
        let at = job.lifts[0].stand.at;
        job.surroundings.buried.push(Buried {
            id: "d".into(),
            name: "Main".into(),
            kind: BuriedKind::Pipe,
            shape: PlanShape::Strip { course: vec![at - DVec2::X * 9.0, at + DVec2::X * 9.0], width: 0.5 },
            cover: Some(Ranged::plus_minus(1.0, 0.05)),
            allowed_pressure: allowed,
            wall,
            around,
            source: "owner".into(),
        });
        findings(&job, "buried").into_iter().find(|f| f.message.id != "matter-open").unwrap()
    };
    let (rigid, clear) = (Some(PipeWall::Rigid), person(Some(false), Some(false)));
    let flexible = |allowable| Some(PipeWall::Flexible(FlexiblePipe { allowable, ..pipe }));
    let cleared = asked(rigid, clear.clone(), Some(ENDLESS));
    assert_eq!(cleared.status, Status::Go, "{cleared:?}");
    assert!(format!("{:?}", cleared.sources).contains("G. Soil"));
    for (wall, around, allowed) in [
        (rigid, None, Some(ENDLESS)),
        (rigid, person(None, Some(false)), Some(ENDLESS)),
        (rigid, person(Some(false), None), Some(ENDLESS)),
        (rigid, person(Some(true), Some(false)), Some(ENDLESS)),
        (rigid, person(Some(false), Some(true)), Some(ENDLESS)),
        (rigid, clear.clone(), None),
        (None, clear.clone(), Some(ENDLESS)),
        (flexible(None), clear.clone(), Some(ENDLESS)),
        (flexible(Some(0.3)), clear.clone(), None),
    ] {
        let found = asked(wall, around.clone(), allowed);
        assert_eq!(found.status, Status::CannotTell, "{wall:?} {around:?} {allowed:?}");
        assert!(!found.remedies.is_empty(), "says what is open: {found:?}");
    }
    let bears = asked(flexible(Some(0.3)), clear.clone(), Some(ENDLESS));
    assert_eq!((bears.status, bears.message.id.as_ref()), (Status::Go, "buried-flattens"), "{bears:?}");
    let share = bears.demand.unwrap().si;
    let flattened = asked(flexible(Some(0.99 * share)), clear.clone(), Some(ENDLESS));
    assert_eq!((flattened.status, flattened.message.id.as_ref()), (Status::NoGo, "buried-flattened"), "{flattened:?}");
    // Where the stress is nearer to its limit, the stress speaks.
    let pressed = asked(flexible(Some(0.3)), clear, Some(1e3));
    assert_eq!((pressed.status, pressed.message.id.as_ref()), (Status::NoGo, "buried-overloaded"), "{pressed:?}");
}

/// With a mat the nearest edge is the mat's; of several soils beside a trench the worst counts, whichever is stated first; and
/// a slot under the middle of a tyre is stood in, though no corner is over it.
#[test]
fn edges_are_measured_from_the_mat_and_asked_of_every_soil() {
    let worst = |job: &Job| findings(job, "edges").into_iter().find(|f| f.working.is_some());
    let with = |mat: bool, soils: Vec<SoilArea>, off: f64| {
        let mut job = job();
        let dig = trench(&job, off, OpenSides::default(), Support::None);
        job.surroundings.excavations.push(dig);
        job.soils = soils;
        let material = MatMaterial::steel_plate(355e6).unwrap();
        job.mats.push(SiteMat {
            id: "m".into(),
            name: "m".into(),
            mat: Mat { size: [1.5, 1.5], thickness: 0.04, material },
        });
        job.lifts[0].mats = mat.then_some(0).into_iter().collect();
        job
    };
    let there = |job: &Job| worst(job).unwrap().limit.unwrap().si;
    let (bare, mat) = (there(&with(false, vec![], 2.0)), there(&with(true, vec![], 2.0)));
    let tyre = quantity::Si::si(&job().machines[job().lifts[0].machine].machine.front.tyre.width);
    assert!((bare - mat - (1.6 - tyre) / 2.0).abs() < 0.02, "{bare} {mat}");
    let drained = |cohesion: f64| {
        let mut soil = clay(1.0);
        soil.profile.layers[0].stated = Stated { undrained: None, drained: Some((cohesion, 30.0 * DEGREE)) };
        soil.profile.water = Some(6.0);
        soil
    };
    for soils in [vec![drained(40e3), drained(0.0)], vec![drained(0.0), drained(40e3)]] {
        assert_eq!(worst(&with(false, soils, 4.0)).unwrap().message.id, "face-fails");
    }
    let mut job = with(false, vec![], 2.0);
    let half = tyre / 2.0;
    let mut slot = trench(&job, -half, OpenSides::default(), Support::Supported { by: Some("E. Engineer".into()) });
    let square = (slot.outline.outer[3] - slot.outline.outer[0]).normalize();
    let [a, b] = [slot.outline.outer[0], slot.outline.outer[1]];
    slot.outline.outer =
        vec![a + square * half, b + square * half, b + square * (half + 0.05), a + square * (half + 0.05)];
    job.surroundings.excavations = vec![slot];
    assert_eq!(worst(&job).unwrap().message.id, "stands-in-excavation");
}

/// What is spoilt, and how.
type Spoil = (&'static str, fn(&mut Job));

/// The demo job's own lift on mats beside a trench, over a drain: go; bare, on one layer, nearer to the trench, or with the
/// drain's figure taken away it is none.
#[test]
fn the_lift_on_mats_of_the_demo_turns_with_each_that_carries_it() {
    let lift = || {
        let mut job = crate::never_pass::whole_demo();
        job.lifts.retain(|l| l.id == "7");
        job
    };
    let verdict = |job: &Job| check_lift(job, &job.lifts[0]).unwrap().verdict();
    assert_eq!(verdict(&lift()), Verdict::Go);
    let spoils: [Spoil; 6] = [
        ("bare", |j| j.lifts[0].mats.clear()),
        ("one layer", |j| j.lifts[0].mats.truncate(1)),
        ("soft below", |j| j.soils[0].profile.layers[1].stated.undrained = Some(8e3)),
        ("nearer to the trench", |j| j.lifts[0].stand.at.x += 1.2),
        ("a drain nobody rates", |j| j.surroundings.buried[0].allowed_pressure = None),
        ("soil ends under a mat", |j| {
            let area = j.soils[0].area.as_mut().unwrap();
            for corner in &mut area.outer {
                corner.y = corner.y.min(29.0);
            }
            j.acceptances.retain(|a| a.matter != Matter::GroundStrength);
        }),
    ];
    for (what, spoil) in spoils {
        let mut job = lift();
        spoil(&mut job);
        assert_ne!(verdict(&job), Verdict::Go, "{what}");
    }
}
