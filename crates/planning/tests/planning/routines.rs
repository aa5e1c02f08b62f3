//! Routines: one plan for a family of alike lifts.

use crate::never_pass::demo;
use crate::sampled::Seeded;
use crate::samples::plane;
use evidence::{Ranged, Verdict};
use geometry::DVec2;
use planning::{
    FieldState, Job, Reason, Routine, RoutineHolds, RoutineLandings, RoutineLoad, RoutinePlan, SetBacks, Stand,
    WindInput, check_plain_movement, check_routine, plan, plan_as_stated,
};
use site::{PlanArea, PlanShape, Zone, ZoneRule};

/// The first lift of the demo job, blocks to a scaffold bay, on level ground, as a routine around its stand.
fn job() -> Job {
    let mut job = demo();
    job.lifts.truncate(1);
    let level = job.ground.height(job.lifts[0].stand.at).unwrap().0;
    job.ground = plane(job.landings[0].at, level, DVec2::ZERO, 0.01);
    job.routines = vec![Routine {
        id: "r".into(),
        name: "Blocks to the bay".into(),
        machine: job.lifts[0].machine,
        attachment: job.lifts[0].attachment.clone(),
        support: job.lifts[0].support,
        load: RoutineLoad::Like(job.lifts[0].load),
        landings: RoutineLandings::Named(vec![0]),
        stands: rectangle((29.7, 30.3), (28.5, 29.1)),
        stop_gust: quantity::metres_per_second(10.0),
        ground: 0.05,
        approved_by: Some("P. Lindqvist (invented)".into()),
    }];
    job
}

fn rectangle((west, east): (f64, f64), (south, north): (f64, f64)) -> PlanArea {
    let corners = [(west, south), (east, south), (east, north), (west, north)];
    PlanArea { outer: corners.map(|(x, y)| DVec2::new(x, y)).to_vec(), holes: Vec::new() }
}

fn planned(job: &Job) -> RoutinePlan {
    check_routine(job, &job.routines[0]).plan(job, &job.lifts)
}

fn outside(job: &Job) -> Vec<String> {
    planned(job).lifts[0].outside.iter().map(|m| m.id.to_string()).collect()
}

#[test]
fn it_holds_around_a_good_stand_and_the_lift_falls_within() {
    let job = job();
    let plan = planned(&job);
    assert_eq!(plan.holds, RoutineHolds::Everywhere, "{plan:#?}");
    assert!(plan.allows);
    let at = &plan.landings[0];
    assert!(at.why_not.is_empty() && at.area_m2 > 0.3);
    assert_eq!(outside(&job), [""; 0], "{plan:#?}");
}

/// Twins: the same with one thing beyond what it may be.
#[test]
fn what_is_beyond_makes_it_hold_nowhere() {
    type Spoil = (&'static str, fn(&mut Job), Option<Reason>);
    let spoils: [Spoil; 6] = [
        ("three times the load", |j| j.loads[0].mass_kg = Ranged::exact(j.loads[0].mass_kg.high * 3.0), None),
        ("out of reach", |j| j.routines[0].stands = rectangle((29.7, 30.3), (10.0, 10.6)), Some(Reason::Reach)),
        (
            "steeper than it allows",
            |j| {
                let level = j.ground.height(DVec2::new(30.0, 28.8)).unwrap().0;
                j.ground = plane(j.landings[0].at, level, DVec2::new(0.0, 0.02), 0.0);
                j.routines[0].ground = 0.015;
            },
            Some(Reason::Level),
        ),
        ("no number for the steepest", |j| j.routines[0].ground = f64::NAN, Some(Reason::Level)),
        (
            "beyond the survey",
            |j| {
                let level = j.ground.height(DVec2::new(30.0, 28.8)).unwrap().0;
                j.ground = plane(DVec2::new(900.0, 900.0), level, DVec2::ZERO, 0.0);
            },
            Some(Reason::Survey),
        ),
        ("nobody inspected the machine", |j| j.machines[0].inspected_by = None, None),
    ];
    for (name, spoil, by) in spoils {
        let mut job = job();
        spoil(&mut job);
        let plan = planned(&job);
        assert_eq!(plan.holds, RoutineHolds::Nowhere, "{name}: {:#?}", plan.landings[0].why_not);
        assert!(!plan.allows, "{name}");
        if let Some(by) = by {
            assert_eq!(plan.landings[0].why_not[0].by, by, "{name}");
        }
        assert!(!outside(&job).is_empty(), "{name}: the lift still falls within");
    }
}

#[test]
fn a_bad_patch_in_the_area_is_said_and_no_lift_there_falls_within() {
    let mut job = job();
    // Nobody may drive where the machine's left rear is for stands in the west.
    let shape = PlanShape::Round { centre: DVec2::new(27.75, 25.6), radius: 0.35 };
    job.surroundings.zones.push(Zone {
        id: "pit".into(),
        name: "Pit".into(),
        shape,
        rule: ZoneRule::NoGo,
        times: Vec::new(),
        by: "made".into(),
    });
    job.routines[0].stands = rectangle((28.9, 31.1), (28.5, 29.1));
    let plan = planned(&job);
    assert_eq!(plan.holds, RoutineHolds::InPart, "{plan:#?}");
    let at = &plan.landings[0];
    assert!(at.why_not.iter().any(|w| w.by == Reason::Obstacles), "{:?}", at.why_not);
    let refused: f64 = at.why_not.iter().map(|w| w.area_m2).sum();
    assert!((refused + at.holds_m2 - at.area_m2).abs() < 1e-9, "every cell is counted");
    let scene = at.field.as_ref().unwrap();
    let passes = scene.area_m2(FieldState::Go) + scene.area_m2(FieldState::Condition);
    assert!((passes - at.holds_m2).abs() < 1e-9 && scene.area_m2(FieldState::NotYet) == 0.0);
    // Without the patch it is a twin that holds on more.
    let mut without = job.clone();
    without.surroundings.zones.clear();
    assert!(planned(&without).landings[0].holds_m2 > at.holds_m2);
    // A stand in each cell that is refused, and in each that holds with all around it.
    let (mut within, mut not) = (0, 0);
    for x in 0..11 {
        let place = DVec2::new(29.0 + 0.2 * f64::from(x), 28.8);
        let mut job = job.clone();
        let to = job.landings[0].at - place;
        job.lifts[0].stand = Stand { at: place, heading: to.y.atan2(to.x) };
        let mut kept = SetBacks::default();
        let refused = check_plain_movement(&job, &job.lifts[0], &mut kept).unwrap().verdict() == Verdict::NoGo;
        let said = outside(&job);
        if refused {
            assert!(said.contains(&"routine-off-held".to_owned()), "{place}: {said:?}");
        }
        within += usize::from(said.is_empty());
        not += usize::from(refused);
    }
    assert!(within > 0 && not > 0, "{within} within, {not} refused");
}

/// On ground that is the same to both sides the mirrored area holds the same, reason by reason.
#[test]
fn mirrored_areas_hold_alike() {
    let mut job = job();
    job.lines.clear();
    job.loads[0].centre_left = Ranged::exact(0.0);
    let x = job.landings[0].at.x;
    job.routines[0].stands = rectangle((x - 2.05, x - 0.35), (26.95, 29.25));
    let west = planned(&job);
    job.routines[0].stands = rectangle((x + 0.35, x + 2.05), (26.95, 29.25));
    let east = planned(&job);
    let (a, b) = (&west.landings[0], &east.landings[0]);
    assert!((a.area_m2 - b.area_m2).abs() < 1e-9);
    assert!((a.holds_m2 - b.holds_m2).abs() < 1e-9, "{} {}", a.holds_m2, b.holds_m2);
    for (p, q) in a.why_not.iter().zip(&b.why_not) {
        assert_eq!(p.by, q.by);
        assert!((p.area_m2 - q.area_m2).abs() < 1e-9);
    }
    assert!(!a.why_not.is_empty(), "the outline reaches beyond what is allowed");
}

/// Wherever it holds, the single check passes: at the heaviest, lighter ones between the corners, and turned within 1°.
#[test]
fn held_places_pass_the_single_check_with_any_load_of_the_family() {
    let mut job = job();
    job.routines[0].stands = rectangle((28.6, 31.4), (26.5, 29.5));
    let plan = planned(&job);
    let scene = plan.landings[0].field.clone().unwrap();
    let held: Vec<DVec2> = scene
        .strips()
        .into_iter()
        .filter(|(kind, ..)| matches!(scene.kinds[*kind].state, FieldState::Go | FieldState::Condition))
        .flat_map(|(_, row, column, count)| (column..column + count).map(move |c| (row, c)))
        .map(|(row, column)| {
            let half = (scene.side / 2) as f64;
            DVec2::new(
                scene.centre.0 + (column as f64 - half) * scene.cell_m,
                scene.centre.1 + (row as f64 - half) * scene.cell_m,
            )
        })
        .collect();
    assert!(held.len() > 20, "{}", held.len());
    let mut random = Seeded(4711);
    let heaviest = job.loads[0].mass_kg.high;
    for _ in 0..60 {
        let at = held[random.index(held.len())];
        let to = job.landings[0].at - at;
        let mut job = job.clone();
        job.lifts[0].wind = Some(WindInput { gust: job.routines[0].stop_gust });
        job.loads[0].mass_kg = Ranged::exact(random.or_end(1.0, heaviest));
        let turned = random.within(-1.0, 1.0) * core::f64::consts::PI / 180.0 * 0.99;
        job.lifts[0].stand = Stand { at, heading: to.y.atan2(to.x) + turned };
        let check = check_plain_movement(&job, &job.lifts[0], &mut SetBacks::default()).unwrap();
        let mass = job.loads[0].mass_kg.high;
        assert_ne!(check.verdict(), Verdict::NoGo, "{at} with {mass} kg, turned {turned}");
    }
}

#[test]
fn every_way_out_of_a_routine_is_named() {
    type Spoil = (&'static str, fn(&mut Job));
    let spoils: [Spoil; 15] = [
        ("routine-off-not-approved", |j| j.routines[0].approved_by = None),
        ("routine-off-machine", |j| j.lifts[0].machine = 1),
        ("routine-off-attachment", |j| j.lifts[0].attachment = "jib".into()),
        ("routine-off-support", |j| j.lifts[0].support = machine::SupportState::Stabilizers),
        ("routine-off-task", |j| j.lifts[0].task = planning::Task::PickUp),
        ("routine-off-mass", |j| another_load(j).mass_kg.high += 5.0),
        ("routine-off-size", |j| another_load(j).height += 0.05),
        ("routine-off-centre", |j| another_load(j).centre_ahead.high += 0.05),
        ("routine-off-wind-factor", |j| another_load(j).wind_factor += 0.1),
        ("routine-off-landing", |j| j.lifts[0].landing = 1),
        ("routine-off-no-gust", |j| j.lifts[0].wind = None),
        ("routine-off-gust", |j| j.lifts[0].wind = Some(WindInput { gust: quantity::metres_per_second(11.0) })),
        ("routine-off-stand", |j| j.lifts[0].stand.at.x += 1.0),
        ("routine-off-no-stand", |j| j.lifts[0].stand = Stand::NOT_CHOSEN),
        ("routine-off-turned", |j| j.lifts[0].stand.heading += 0.03),
    ];
    for (id, spoil) in spoils {
        let mut job = job();
        spoil(&mut job);
        let said = outside(&job);
        assert!(said.contains(&id.to_owned()), "{id}: {said:?}");
    }
    // What is no number is outside.
    for spoil in [
        |j: &mut Job| another_load(j).mass_kg.high = f64::NAN,
        |j: &mut Job| another_load(j).depth = f64::NAN,
        |j: &mut Job| another_load(j).centre_left.low = f64::NAN,
        |j: &mut Job| j.lifts[0].wind = Some(WindInput { gust: quantity::metres_per_second(f64::NAN) }),
        |j: &mut Job| j.lifts[0].clear = quantity::metres(f64::NAN),
    ] {
        let mut job = job();
        spoil(&mut job);
        assert!(!outside(&job).is_empty());
    }
}

/// The lift's load as one of its own, besides that of the routine.
fn another_load(job: &mut Job) -> &mut machine::Load {
    let load = job.loads[job.lifts[0].load].clone();
    job.feet.resize(job.loads.len(), None);
    job.loads.push(load);
    job.feet.push(None);
    job.lifts[0].load = job.loads.len() - 1;
    job.loads.last_mut().unwrap()
}

#[test]
fn mass_and_size_alone_make_a_family_too() {
    let mut job = job();
    let load = &job.loads[0];
    let size = [load.depth, load.width, load.height];
    let mass = load.mass_kg.high;
    job.routines[0].load = RoutineLoad::UpTo { mass, size };
    let plan = planned(&job);
    assert_eq!(plan.holds, RoutineHolds::Everywhere, "{plan:#?}");
    assert_eq!(outside(&job), [""; 0]);
    job.routines[0].load = RoutineLoad::UpTo { mass: mass - 1.0, size };
    assert_eq!(outside(&job), ["routine-off-mass"]);
    job.routines[0].load = RoutineLoad::UpTo { mass: mass * 4.0, size };
    assert_eq!(planned(&job).holds, RoutineHolds::Nowhere);
    job.routines[0].load = RoutineLoad::UpTo { mass: f64::NAN, size };
    assert_eq!(planned(&job).holds, RoutineHolds::Nowhere);
}

#[test]
fn landings_in_an_area_and_references_that_point_nowhere() {
    let mut job = job();
    job.routines[0].landings = RoutineLandings::Within(rectangle((29.0, 31.0), (31.0, 33.0)));
    assert_eq!(planned(&job).landings.iter().map(|l| l.landing.as_str()).collect::<Vec<_>>(), ["bay"]);
    for spoil in [
        |j: &mut Job| j.routines[0].landings = RoutineLandings::Within(rectangle((0.0, 1.0), (0.0, 1.0))),
        |j: &mut Job| j.routines[0].landings = RoutineLandings::Named(vec![0, 99]),
        |j: &mut Job| j.routines[0].load = RoutineLoad::Like(99),
        |j: &mut Job| j.routines[0].machine = 99,
        |j: &mut Job| j.routines[0].attachment = "nothing of the kind".into(),
        |j: &mut Job| j.routines[0].stands = rectangle((29.96, 29.97), (28.96, 28.97)),
        |j: &mut Job| j.routines[0].stands = PlanArea { outer: Vec::new(), holes: Vec::new() },
    ] {
        let mut job = self::job();
        spoil(&mut job);
        let plan = planned(&job);
        assert_eq!((plan.holds, plan.allows), (RoutineHolds::Nowhere, false), "{plan:#?}");
        assert!(!plan.lifts[0].outside.is_empty());
    }
}

#[test]
fn plans_keep_routines_and_plans_as_stated_do_not_ask() {
    let job = job();
    let made = plan(&job);
    assert_eq!(made.routines.len(), 1);
    assert_eq!(planning::digest(&made), made.digest);
    let text = serde_json::to_string(&made).unwrap();
    let back: planning::Plan = serde_json::from_str(&text).unwrap();
    assert_eq!(back.routines, made.routines);
    assert!(plan_as_stated(&job).routines.is_empty());
    // Without routines nothing is asked.
    let bare = Job { routines: Vec::new(), ..job };
    assert!(plan(&bare).routines.is_empty());
}
