//! The stand field: every cell against the single check at its place, whatever is proven without it.

use crate::never_pass::{demo, whole_demo};
use crate::sampled::Seeded;
use crate::samples::{plane, stork, varied};
use core::ops::ControlFlow;
use evidence::{Status, Verdict};
use geometry::DVec2;
use planning::{
    FieldSpec, Job, Reason, SetBacks, StandField, StandSearch, Worker, check_lift, check_plain_movement, refused_first,
};
use site::{Body, PlanShape, Thing, ThingKind, Zone, ZoneRule};

/// Verdict and first reason of the single check with the machine in the middle of the cell.
fn single(
    job: &Job,
    lift: usize,
    search: &StandSearch<'_>,
    i: usize,
    kept: &mut SetBacks,
) -> (Verdict, Option<Reason>) {
    let at = job.lifts[lift].from_stand(search.stand(i));
    let check = check_plain_movement(job, &at, kept).unwrap();
    (check.verdict(), refused_first(&check))
}

/// What was compared.
#[derive(Debug, Default)]
struct Compared {
    cells: usize,
    go: usize,
    condition: usize,
    by: std::collections::BTreeMap<String, usize>,
}

/// Compares some cells of a field with the single check.
fn compare(job: &Job, lift: usize, search: &StandSearch<'_>, cells: &[usize], found: &mut Compared) {
    let mut kept = SetBacks::default();
    kept.only_whether(true);
    let mut worker = Worker::new();
    let mut field = search.field();
    for &i in cells {
        field.fill([(i, search.ask(i, &mut worker))]);
        let (verdict, reason) = single(job, lift, search, i, &mut kept);
        let at = search.stand(i);
        assert_eq!(field.verdict(i), Some(verdict), "lift {lift} cell {i} at {at:?}: {:?} {reason:?}", field.cell(i));
        assert_eq!(field.reason(i), reason, "lift {lift} cell {i} at {at:?}");
        found.cells += 1;
        found.go += usize::from(verdict == Verdict::Go);
        found.condition += usize::from(verdict == Verdict::GoWithConditions);
        if let Some(reason) = reason {
            *found.by.entry(format!("{reason:?}")).or_default() += 1;
        }
    }
}

/// A cell from which the boom may well get to the landing.
fn likely(search: &StandSearch<'_>, job: &Job, lift: usize, random: &mut Seeded) -> usize {
    let grid = search.field().grid;
    let landing = &job.landings[job.lifts[lift].landing];
    let heading = match landing.approach {
        Some(a) => a.heading + random.within(-1.6, 1.6) * a.tolerance,
        None => random.within(0.0, core::f64::consts::TAU),
    };
    let at = landing.at - DVec2::new(heading.cos(), heading.sin()) * random.within(1.5, 9.5);
    grid.cell_at(at).unwrap()
}

/// Jobs of every kind: varied machines, loads, ground and wind, sometimes from any side, among things, zones and lines,
/// with people and soft ground.
fn job_for(random: &mut Seeded, larger: &machine::Machine) -> Job {
    let mut job = if random.index(2) == 0 {
        varied(random, larger)
    } else {
        // A lift against which nothing stands but its place.
        {
            let mut job = demo();
            job.lifts.truncate(1);
            let level = job.ground.height(job.lifts[0].stand.at).unwrap().0;
            // A chart that holds on any slope leaves it to the statics.
            let steep = random.index(2) == 0;
            let most = if steep { 0.11 } else { 0.012 };
            let mass = &mut job.loads[0].mass_kg;
            let times = random.within(0.4, if steep { 1.7 } else { 1.2 });
            *mass = evidence::Ranged::shares(mass.nominal * times, 0.02, 0.02);
            let slope = DVec2::new(random.or_end(-most, most), random.or_end(-most, most));
            job.ground = plane(job.landings[0].at, level, slope, random.or_end(0.0, 0.015));
            for chart in job.machines[0].machine.charts.iter_mut().filter(|_| steep) {
                let mut parts = (**chart).clone();
                parts.level.sideways = quantity::degrees(12.0);
                parts.level.fore_aft = quantity::degrees(12.0);
                parts.zones.iter_mut().for_each(|z| z.capacity = quantity::kilograms(20e3));
                *chart = machine::Chart::new(parts);
            }
            job
        }
    };
    let landing = job.lifts[0].landing;
    if random.index(2) == 0 {
        job.landings[landing].approach = None;
    }
    let around = |random: &mut Seeded, far: f64| {
        job.landings[landing].at + DVec2::new(random.within(-far, far), random.within(-far, far))
    };
    if random.index(2) == 0 {
        let centre = around(random, 6.0);
        let shape = PlanShape::Round { centre, radius: random.within(0.1, 1.0) };
        let top = (random.index(4) > 0).then(|| random.within(98.0, 112.0));
        job.surroundings.things.push(Thing {
            id: "made".into(),
            name: "Made".into(),
            kind: ThingKind::Mast,
            body: Body::Upright { shape, base: None, top },
            openings: Vec::new(),
            accuracy: 0.05,
            source: "made".into(),
        });
    }
    if random.index(3) == 0 {
        let shape = PlanShape::Round { centre: around(random, 6.0), radius: random.within(0.5, 2.0) };
        let rule = [ZoneRule::NoGo, ZoneRule::People, ZoneRule::Soft][random.index(3)];
        job.surroundings.zones.push(Zone {
            id: "made".into(),
            name: "Made".into(),
            shape,
            rule,
            times: Vec::new(),
            by: "made".into(),
        });
    }
    if random.index(4) == 0 {
        // Accepted for the lift alone: at its own stand, and at no other.
        let own = job.acceptances.split_off(random.index(job.acceptances.len()));
        job.lifts[0].acceptances.extend(own);
    }
    if random.index(4) == 0 {
        job.acceptances.retain(|a| a.matter != planning::Matter::GroundStrength);
    }
    job
}

/// How many random cells: 500, or as many as `COUNTERPOISE_CELLS` says.
fn cells_asked() -> usize {
    std::env::var("COUNTERPOISE_CELLS").ok().and_then(|n| n.parse().ok()).unwrap_or(500)
}

#[test]
fn every_random_cell_is_the_single_check() {
    let asked = cells_asked();
    let mut random = Seeded(77);
    let larger = stork();
    let mut found = Compared::default();
    while found.cells < asked {
        let job = job_for(&mut random, &larger);
        let search = StandSearch::new(&job, &job.lifts[0], FieldSpec::default()).unwrap();
        let mut worker = Worker::new();
        let mut cells = Vec::new();
        while cells.len() < 10 {
            let i = likely(&search, &job, 0, &mut random);
            // Few of the many that the boom cannot point at or does not get to.
            let plain = matches!(search.ask(i, &mut worker).by, Some(Reason::Approach | Reason::Reach));
            if !plain || random.index(6) == 0 {
                cells.push(i);
            }
        }
        compare(&job, 0, &search, &cells, &mut found);
    }
    eprintln!("{found:?}");
    // Every kind of answer was among them.
    assert!(found.go * 40 > asked && found.condition * 250 > asked, "{found:?}");
    for by in ["Approach", "Reach", "Level", "Chart", "Obstacles", "LoadFactor", "Ground", "Everywhere"] {
        assert!(found.by.get(by).is_some_and(|n| *n > 0), "no cell by {by}: {found:?}");
    }
}

/// The demo's lifts, the one on soil beside a trench too.
#[test]
fn cells_of_the_demo_are_the_single_check() {
    let job = whole_demo();
    let mut random = Seeded(5);
    let mut found = Compared::default();
    for lift in 0..job.lifts.len() {
        let search = StandSearch::new(&job, &job.lifts[lift], FieldSpec::default()).unwrap();
        let count = if lift == 6 { 12 } else { 24 };
        let cells: Vec<usize> = (0..count).map(|_| likely(&search, &job, lift, &mut random)).collect();
        compare(&job, lift, &search, &cells, &mut found);
    }
    assert!(found.go + found.condition > 10, "{found:?}");
}

#[test]
fn every_cell_of_a_small_field_is_the_single_check() {
    let mut job = demo();
    job.landings[job.lifts[0].landing].approach = None;
    let spec = FieldSpec { radius: 9.0, cell: 0.5 };
    let search = StandSearch::new(&job, &job.lifts[0], spec).unwrap();
    let cells = search.coarse_to_fine();
    assert_eq!(cells.len(), search.field().grid.count());
    let mut found = Compared::default();
    compare(&job, 0, &search, &cells, &mut found);
    assert!(found.go + found.condition > 30, "{found:?}");
}

/// Steep ground under a chart that leaves it to the statics: go, conditions and refusals lie side by side.
#[test]
fn every_cell_where_statics_decides_is_the_single_check() {
    let mut job = demo();
    job.landings[job.lifts[0].landing].approach = None;
    let level = job.ground.height(job.lifts[0].stand.at).unwrap().0;
    job.ground = plane(job.landings[0].at, level, DVec2::new(0.06, 0.02), 0.01);
    for chart in &mut job.machines[0].machine.charts {
        let mut parts = (**chart).clone();
        parts.level.sideways = quantity::degrees(12.0);
        parts.level.fore_aft = quantity::degrees(12.0);
        parts.zones.iter_mut().for_each(|z| z.capacity = quantity::kilograms(20e3));
        *chart = machine::Chart::new(parts);
    }
    let search = StandSearch::new(&job, &job.lifts[0], FieldSpec { radius: 9.0, cell: 0.7 }).unwrap();
    let mut found = Compared::default();
    compare(&job, 0, &search, &search.coarse_to_fine(), &mut found);
    eprintln!("{found:?}");
    assert!(found.go > 10 && found.condition > 10, "{found:?}");
    let refused = |by: &str| found.by.get(by).copied().unwrap_or(0);
    assert!(refused("Tilt") + refused("LoadFactor") > 5, "{found:?}");
}

fn whole(search: &StandSearch<'_>) -> StandField {
    search.run(&mut |_, _, _| ControlFlow::Continue(()))
}

/// A field that keeps what weight does not change answers as a new one does, heavier, lighter and back, on soil and beside a
/// trench too.
#[test]
fn a_field_weighed_again_is_a_new_field() {
    let mut random = Seeded(31);
    let larger = stork();
    let mut differ = 0;
    let coarse = FieldSpec { radius: 10.0, cell: 0.8 };
    let demos = (0..7).map(|lift| (whole_demo(), lift));
    let made: Vec<_> = (0..24).map(|_| (job_for(&mut random, &larger), 0)).collect();
    for (mut job, lift) in demos.chain(made) {
        let old = job.clone();
        let mut kept = planning::WeighedField::new(&old, &old.lifts[lift], coarse).unwrap();
        let load = old.lifts[lift].load;
        let own = old.loads[load].mass_kg;
        let mut before = None;
        for share in [1.0, 0.6, 1.4, 0.2, 3.0, 1.0] {
            let mass = evidence::Ranged { low: own.low * share, nominal: own.nominal * share, high: own.high * share };
            kept.weigh(mass);
            job.loads[load].mass_kg = mass;
            let again = kept.run(&mut |_, _, _| ControlFlow::Continue(()));
            let new = whole(&StandSearch::new(&job, &job.lifts[lift], coarse).unwrap());
            assert_eq!(again, new, "lift {lift} at {share} of {own:?}");
            differ += usize::from(before.is_some_and(|b| b != again));
            before = Some(again);
        }
        // A range that is none passes nowhere, whatever was proven of sound ones.
        for mass in [evidence::Ranged { low: f64::NAN, ..own }, evidence::Ranged { low: own.high * 3.0, ..own }] {
            kept.weigh(mass);
            job.loads[load].mass_kg = mass;
            let again = kept.run(&mut |_, _, _| ControlFlow::Continue(()));
            assert_eq!(again, whole(&StandSearch::new(&job, &job.lifts[lift], coarse).unwrap()), "{mass:?}");
        }
    }
    assert!(differ > 60, "{differ} fields changed with the weight");
}

#[test]
fn a_field_cut_short_says_what_is_not_yet_known() {
    let job = demo();
    let search = StandSearch::new(&job, &job.lifts[0], FieldSpec { radius: 8.0, cell: 0.2 }).unwrap();
    let all = whole(&search);
    assert_eq!(all.not_yet(), 0);
    let mut told = Vec::new();
    let part = search.run(&mut |field, done, of| {
        told.push((field.not_yet(), done, of));
        if done * 2 > of { ControlFlow::Break(()) } else { ControlFlow::Continue(()) }
    });
    let count = part.grid.count();
    assert!(part.not_yet() > 0 && part.not_yet() < count);
    assert!(told.iter().all(|(not_yet, done, of)| not_yet + done == *of && *of == count), "{told:?}");
    for (i, cell) in part.cells() {
        assert!(cell == all.cell(i) || (cell.placed.is_none() && part.verdict(i).is_none()), "cell {i}");
    }
    // Half of it is every second cell of every second row and more: spread over all of the disc.
    let corner = part.grid.cell_at(part.grid.centre + DVec2::new(-4.8, -4.8)).unwrap();
    assert!(part.cell(corner).placed.is_some());
}

#[test]
fn the_field_sums_up_why_not() {
    let job = demo();
    let search = StandSearch::new(&job, &job.lifts[0], FieldSpec { radius: 10.0, cell: 0.2 }).unwrap();
    let field = whole(&search);
    let sum: f64 = field.why_not().iter().map(|(_, area)| area).sum();
    let all = field.grid.count() as f64 * 0.04;
    assert!((sum + field.passing_area() - all).abs() < 1e-6, "{sum} and {} of {all}", field.passing_area());
    assert!(field.passing_area() > 2.0);
    // The stand that the job states lies in the part that passes.
    let stated = field.grid.cell_at(job.lifts[0].stand.at).unwrap();
    assert!(field.verdict(stated).is_some_and(|v| v != Verdict::NoGo), "{:?}", field.reason(stated));
}

/// What no stand can mend is said apart, and the ground still tells where it would be.
#[test]
fn a_lift_that_no_stand_mends_says_so() {
    let mut job = demo();
    job.machines[0].tagged_out = Some("hose".into());
    let search = StandSearch::new(&job, &job.lifts[0], FieldSpec { radius: 8.0, cell: 0.4 }).unwrap();
    let field = whole(&search);
    assert_eq!(field.everywhere[0].0, "machine");
    assert!(field.floor() >= Status::NoGo);
    assert!(field.passing_area() > 1.0);
    assert!(field.cells().all(|(i, _)| field.verdict(i) == Some(Verdict::NoGo)));
    assert!(field.cells().any(|(i, _)| field.reason(i) == Some(Reason::Everywhere)));
}

/// A hole in the survey is a hole, and stays one under any cell whose wheels may come over it.
#[test]
fn ground_that_nobody_surveyed_is_no_stand() {
    let mut job = demo();
    let stand = job.lifts[0].stand.at;
    let level = job.ground.height(stand).unwrap().0;
    job.ground = plane(stand, level, DVec2::ZERO, 0.02);
    let site::Terrain::Grid(grid) = &mut job.ground.surfaces[0].terrain else { panic!("a grid") };
    for i in 0..grid.heights.len() {
        let cell = DVec2::new((i % grid.cols) as f64, -((i / grid.cols) as f64)) * grid.cell;
        if (grid.north_west + cell - stand).length() < 1.5 {
            grid.heights[i] = f32::NAN;
        }
    }
    let search = StandSearch::new(&job, &job.lifts[0], FieldSpec { radius: 8.0, cell: 0.2 }).unwrap();
    let field = whole(&search);
    let there = field.grid.cell_at(stand).unwrap();
    assert_eq!(field.reason(there), Some(Reason::Survey));
    assert_eq!(field.cell(there).placed, Some(Status::CannotTell));
}

#[test]
fn what_cannot_be_a_field_is_none() {
    let job = demo();
    for spec in [(0.0, 0.1), (-1.0, 0.1), (15.0, 0.0), (15.0, -0.1), (f64::NAN, 0.1), (15.0, f64::NAN), (1e9, 1e-3)] {
        let spec = FieldSpec { radius: spec.0, cell: spec.1 };
        assert!(StandSearch::new(&job, &job.lifts[0], spec).is_none(), "{spec:?}");
    }
    let mut nowhere = demo();
    let landing = nowhere.lifts[0].landing;
    nowhere.landings[landing].at.x = f64::NAN;
    assert!(StandSearch::new(&nowhere, &nowhere.lifts[0], FieldSpec::default()).is_none());
}

/// The demo as a plan with everything that looks around.
#[test]
fn the_demo_says_how_far_off_its_stands_may_be() {
    let plan = planning::plan(&whole_demo());
    for lift in &plan.lifts {
        let at = (lift.stand.east_m, lift.stand.north_m);
        eprintln!("{} {:?} {at:?} {:?}", lift.id, lift.verdict, lift.stand_tolerance);
        let said = lift.findings.iter().find(|f| f.check == "stand");
        assert_eq!(said.is_some(), lift.verdict != Verdict::NoGo);
        let field = lift.field.as_ref().unwrap();
        assert_eq!(field.runs.iter().map(|(_, count)| count).sum::<usize>(), field.side * field.side);
        assert!(field.strips().iter().all(|(kind, row, from, count)| {
            *kind < field.kinds.len() && *row < field.side && from + count <= field.side
        }));
        for other in &lift.other_stands {
            assert!(other.verdict != Verdict::NoGo);
            let away = DVec2::new(other.east_m - at.0, other.north_m - at.1).length();
            assert!(away >= 1.0, "lift {}: {away} m from its own", lift.id);
        }
    }
    assert_eq!(plan.lifts[0].verdict, Verdict::Go);
    assert_eq!(plan.lifts[4].verdict, Verdict::Go, "unloading of a truck");
    // Nothing of the demo mends a line that is in the way but the line itself.
    let ids = |i: usize| plan.lifts[i].changes.iter().map(|m| m.id.to_string()).collect::<Vec<_>>();
    assert_eq!(ids(2), ["change-line-dead"]);
    assert!(ids(1).contains(&"change-equipment".to_owned()), "{:?}", ids(1));
    let json = serde_json::to_string(&plan).unwrap();
    assert_eq!(serde_json::from_str::<planning::Plan>(&json).unwrap(), plan);
}

/// A lift whose stand is left to the planner gets one, and one that works nowhere says what would help.
#[test]
fn a_stand_that_is_left_to_the_planner_is_found() {
    let mut job = demo();
    let stated = job.lifts[0].stand;
    job.lifts.truncate(2);
    for lift in &mut job.lifts {
        lift.stand = planning::Stand::NOT_CHOSEN;
        lift.choose.stand = true;
    }
    let plan = planning::plan(&job);
    let found = &plan.lifts[0];
    assert_eq!(found.stand_from, planning::StandFrom::Found);
    assert_ne!(found.verdict, Verdict::NoGo);
    assert!(DVec2::new(found.stand.east_m, found.stand.north_m).distance(stated.at) < 6.0);
    let nowhere = &plan.lifts[1];
    assert_eq!((nowhere.stand_from, nowhere.verdict), (planning::StandFrom::Nowhere, Verdict::NoGo));
    assert!(nowhere.findings.iter().any(|f| f.message.id == "stand-nowhere"));
    assert!(!nowhere.changes.is_empty());
    assert!(nowhere.steps.is_empty(), "nobody is told how to make a lift that has no stand");
    let json = serde_json::to_string(&plan).unwrap();
    let back: planning::Plan = serde_json::from_str(&json).unwrap();
    assert!(back.lifts[1].stand.east_m.is_nan());
    // Everything left to the planner: it takes what does it.
    job.lifts[1].choose = planning::Choose::ALL;
    let plan = planning::plan(&job);
    assert_eq!(plan.lifts[1].stand_from, planning::StandFrom::Found, "{:?}", plan.lifts[1].governing_finding());
    assert_ne!(plan.lifts[1].support, machine::SupportState::Tyres);
}

/// The demo's first lift, its load waiting south of the stand, and a machine that says how it turns.
fn fetched(radius: Option<f64>) -> Job {
    let mut job = demo();
    job.lifts.truncate(1);
    job.pickups.push(planning::Pickup {
        id: "stack".into(),
        name: "Stack in the yard".into(),
        at: DVec2::new(31.0, 22.0),
        heading: Some(core::f64::consts::FRAC_PI_2),
        level: None,
    });
    job.lifts[0].from = Some(0);
    job.machines[0].machine.steering = Some(machine::SteeringData {
        two_wheel_radius: None,
        four_wheel_radius: radius,
        crab: None,
        travel_speed: Some(2.0),
    });
    job
}

#[test]
fn a_lift_whose_load_waits_somewhere_has_its_way_there_and_back() {
    let plan = planning::plan(&fetched(Some(4.5)));
    let lift = &plan.lifts[0];
    let way = lift.way.as_ref().unwrap();
    assert_eq!(way.refused, None);
    let (there, back) = (way.way_in.as_ref().unwrap(), way.way_out.as_ref().unwrap());
    assert_eq!((there.load.is_some(), back.load.is_some()), (true, false), "loaded in, empty back");
    let end = there.profile.last().unwrap();
    let stand = DVec2::new(lift.stand.east_m, lift.stand.north_m);
    assert!(DVec2::from_array(end.at).distance(stand) < 0.3, "{:?}", end.at);
    assert!(there.length_m >= DVec2::from_array(there.profile[0].at).distance(stand) - 0.3);
    let said: Vec<_> = lift.findings.iter().filter(|f| f.check == "route").map(|f| f.message.id.to_string()).collect();
    assert!(said.contains(&"way-found".to_owned()), "{said:?}");
    let json = serde_json::to_string(&plan).unwrap();
    let back: planning::Plan = serde_json::from_str(&json).unwrap();
    assert_eq!(back.lifts[0].way.as_ref().unwrap().way_in.as_ref().unwrap().legs, there.legs);
}

#[test]
fn a_way_that_is_walled_off_or_not_known_is_no_pass() {
    // A wall round the stack: no way, whoever accepted it.
    let mut job = fetched(Some(4.5));
    job.pickups[0].at = DVec2::new(41.0, 14.0);
    let stack = job.pickups[0].at;
    for (a, b) in [
        (DVec2::new(-5.0, -5.0), DVec2::new(5.0, -4.6)),
        (DVec2::new(-5.0, 4.6), DVec2::new(5.0, 5.0)),
        (DVec2::new(-5.0, -5.0), DVec2::new(-4.6, 5.0)),
        (DVec2::new(4.6, -5.0), DVec2::new(5.0, 5.0)),
    ] {
        let outer = vec![stack + a, stack + DVec2::new(b.x, a.y), stack + b, stack + DVec2::new(a.x, b.y)];
        job.surroundings.things.push(Thing {
            id: "wall".into(),
            name: "Wall".into(),
            kind: ThingKind::Unnamed,
            body: Body::Upright {
                shape: PlanShape::Area(site::PlanArea { outer, holes: Vec::new() }),
                base: None,
                top: Some(120.0),
            },
            openings: Vec::new(),
            accuracy: 0.05,
            source: "made".into(),
        });
    }
    let plan = planning::plan(&job);
    let worst = |plan: &planning::Plan| {
        plan.lifts[0].findings.iter().filter(|f| f.check == "route").map(|f| f.status).max().unwrap()
    };
    assert!(worst(&plan) > Status::Go, "{:?}", plan.lifts[0].way.as_ref().unwrap().refused);
    let lift = &plan.lifts[0];
    assert!(lift.way.as_ref().unwrap().refused.is_some());
    if lift.verdict == Verdict::NoGo {
        assert!(lift.steps.is_empty() && lift.movement.is_none() && lift.stand_tolerance.is_none());
        assert!(lift.tolerances.is_empty() && lift.changes.is_empty(), "what helps a stand opens no way");
    }
    // How it turns nobody states: the person's word stands on a condition; without it nothing can be told.
    let mut job = fetched(None);
    assert_eq!(worst(&planning::plan(&job)), Status::Condition);
    job.acceptances.retain(|a| a.matter != planning::Matter::Route);
    assert_eq!(worst(&planning::plan_as_stated(&job)), Status::CannotTell);
}

/// A strip that no machine may enter halves the ground: the stand found is on the side where the load waits, on whichever
/// side it would be best without it.
#[test]
fn a_stand_to_which_no_way_leads_gives_place_to_the_next() {
    let mut job = fetched(Some(4.5));
    let landing = job.lifts[0].landing;
    let middle = job.landings[landing].at;
    let level = job.ground.height(job.lifts[0].stand.at).unwrap().0;
    job.landings[landing].approach = None;
    job.lifts[0].stand = planning::Stand::NOT_CHOSEN;
    job.lifts[0].choose.stand = true;
    job.ground = plane(middle, level, DVec2::ZERO, 0.02);
    job.pickups[0].heading = None;
    let mut sides = Vec::new();
    for side in [1.0, -1.0] {
        let mut job = job.clone();
        job.pickups[0].at = middle + DVec2::new(side * 12.0, 0.0);
        // Boom and load come down between both parts; what stands there is too low for them, and in a machine's way.
        for (from, to) in [(-60.0, -2.4), (2.4, 60.0)] {
            let outer = [(-0.2, from), (0.2, from), (0.2, to), (-0.2, to)].map(|(x, y)| middle + DVec2::new(x, y));
            job.surroundings.zones.push(Zone {
                id: "strip".into(),
                name: "Strip".into(),
                shape: PlanShape::Area(site::PlanArea { outer: outer.to_vec(), holes: Vec::new() }),
                rule: ZoneRule::NoGo,
                times: Vec::new(),
                by: "made".into(),
            });
        }
        job.surroundings.things.push(Thing {
            id: "crate".into(),
            name: "Crate".into(),
            kind: ThingKind::Unnamed,
            body: Body::Upright {
                shape: PlanShape::Round { centre: middle, radius: 0.8 },
                base: None,
                top: Some(level + 0.8),
            },
            openings: Vec::new(),
            accuracy: 0.05,
            source: "made".into(),
        });
        let plan = planning::plan(&job);
        let lift = &plan.lifts[0];
        assert_eq!(lift.stand_from, planning::StandFrom::Found, "{:?}", lift.governing_finding());
        assert_eq!(lift.way.as_ref().map(|w| w.refused.clone()), Some(None), "side {side}");
        sides.push((lift.stand.east_m - middle.x) * side);
    }
    assert!(sides.iter().all(|s| *s > 1.0), "{sides:?}");
}

/// Lifts planned in any order and on several threads, or some left out by who shares them out: the same plan.
#[test]
fn a_plan_shared_out_is_the_same_plan() {
    let job = demo();
    let alone = planning::plan(&job);
    let backwards = planning::plan_shared_out(&job, &|count, work| (1..count).rev().for_each(work));
    assert_eq!(alone.digest, backwards.digest);
    let threads = planning::plan_shared_out(&job, &|count, work| {
        std::thread::scope(|scope| {
            for k in 0..3 {
                scope.spawn(move || (k..count).step_by(3).for_each(work));
            }
        });
    });
    assert_eq!(alone.digest, threads.digest);
}

/// Two loads for one landing: the machine need not move between them.
#[test]
fn a_stand_that_does_for_two_lifts_is_shared() {
    let mut job = demo();
    let mut lighter = job.lifts[0].clone();
    lighter.id = "1b".into();
    job.loads.push(job.loads[lighter.load].clone());
    lighter.load = job.loads.len() - 1;
    let mass = &mut job.loads[lighter.load].mass_kg;
    *mass = evidence::Ranged::shares(mass.nominal * 0.5, 0.02, 0.02);
    job.lifts.truncate(1);
    job.lifts.push(lighter);
    for lift in &mut job.lifts {
        lift.stand = planning::Stand::NOT_CHOSEN;
        lift.choose.stand = true;
    }
    let plan = planning::plan(&job);
    let [first, second] = &plan.lifts[..] else { panic!("two lifts") };
    assert_eq!((first.shares_stand_with.as_deref(), second.shares_stand_with.as_deref()), (None, Some("1")));
    assert_eq!((first.stand.east_m, first.stand.north_m), (second.stand.east_m, second.stand.north_m));
    assert_ne!(second.verdict, Verdict::NoGo);
    // Another support state is another stand.
    job.lifts[1].support = machine::SupportState::Stabilizers;
    job.lifts[1].front_tyres = Some(planning::FrontTyres::Clear);
    assert_eq!(planning::plan(&job).lifts[1].shares_stand_with, None);
}

/// What somebody accepted for a stated stand is accepted there; what was seen of one attachment is not seen of another.
#[test]
fn what_was_accepted_or_seen_elsewhere_does_not_go_along() {
    let mut job = demo();
    job.lifts.truncate(1);
    let strength = job.acceptances.iter().position(|a| a.matter == planning::Matter::GroundStrength).unwrap();
    let word = job.acceptances.remove(strength);
    job.lifts[0].acceptances.push(word);
    job.lifts[0].choose.stand = true;
    // Where it is stated the person's word holds.
    assert_eq!(planning::plan(&job).lifts[0].stand_from, planning::StandFrom::Stated);
    assert!(planning::plan(&job).lifts[0].other_stands.is_empty(), "nobody answered for the ground anywhere else");
    // Too far away there: no other place takes over that word.
    job.lifts[0].stand.at.y -= 8.0;
    let plan = planning::plan(&job);
    assert_eq!(plan.lifts[0].verdict, Verdict::NoGo);
    assert_ne!(plan.lifts[0].stand_from, planning::StandFrom::Found);
}

/// The machine keeps out of what carries any landing, its pads too.
#[test]
fn no_machine_stands_in_a_landing_or_puts_a_pad_into_one() {
    let mut job = demo();
    job.lifts.truncate(1);
    let refused = |job: &Job| {
        let check = check_lift(job, &job.lifts[0]).unwrap();
        check.findings().into_iter().find(|f| f.check == "approach").unwrap()
    };
    assert_eq!(refused(&job).status, Status::Go);
    let stand = job.lifts[0].stand.at;
    let machine = job.machines[0].machine.clone();
    let pad = machine.stabilizers.as_ref().unwrap().pad;
    // Another deck beside the machine: clear of its frame and tyres, not of its pad.
    let mut beside = job.landings[0].clone();
    beside.size = DVec2::new(1.0, 1.0);
    let off = machine.outline.half_width.max(pad.y) + 0.5 + 0.45;
    beside.at = stand + DVec2::new(off, pad.x);
    job.landings.push(beside);
    job.strengths.push(job.strengths[0].clone());
    let last = job.landings.len() - 1;
    assert_eq!(refused(&job).status, Status::Go, "far enough from the frame");
    job.landings[last].at.x = stand.x + machine.outline.half_width + 0.5 + 0.2;
    assert_eq!(refused(&job).message.id, "approach-into", "nearer than 0.30 m and the stand error");
    job.strengths[last].stands = Some(planning::StandsOn::Ground);
    assert_eq!(refused(&job).status, Status::Go, "what lies on the ground carries nothing above it");
    // Its own landing without a direction of approach: the circle around it.
    let mut any = demo();
    any.landings[0].approach = None;
    any.lifts[0].stand.at = any.landings[0].at - DVec2::new(0.0, any.landings[0].size.length() / 2.0 + 0.2);
    assert_eq!(refused(&any).status, Status::NoGo);
}
