//! What the landing carries, its edge, the room on it, and who sees it.

use crate::never_pass::demo;
use evidence::{Finding, Ranged, Silent, Status, Verdict};
use ground::carried::{Carried, governing};
use ground::landing_carries::{Runs, StandingLoad, Structure};
use ground::pallet_feet::{Feet, Sharing};
use ground::room::Area;
use planning::{EdgeGuard, Job, LyingThere, StandsOn, ToleranceOf, check_lift, plan_as_stated as plan};
use quantity::{Si, kilograms};

/// The first lift of the demo job alone: blocks to a scaffold bay, go.
fn bay() -> Job {
    let mut job = demo();
    job.lifts.truncate(1);
    job
}

/// The sixth: a beam to a slab that is three weeks old.
fn slab() -> Job {
    let mut job = demo();
    job.lifts = vec![job.lifts.remove(5)];
    job
}

fn findings(job: &Job, check: &str) -> Vec<Finding> {
    check_lift(job, &job.lifts[0]).unwrap().findings().into_iter().filter(|f| f.check == check).collect()
}

fn worst(job: &Job, check: &str) -> Option<Status> {
    findings(job, check).iter().map(|f| f.status).max()
}

/// Index of the landing of the only lift.
fn there(job: &Job) -> usize {
    job.lifts[0].landing
}

fn lying(mass: f64, place: Option<Area>) -> LyingThere {
    LyingThere { what: "tub".into(), mass: Ranged::exact(mass), place }
}

type Spoil = (&'static str, &'static str, Status, fn(&mut Job));

#[test]
fn what_nobody_states_or_what_is_wrong_is_no_pass() {
    let twin = bay();
    assert_eq!(check_lift(&twin, &twin.lifts[0]).unwrap().verdict(), Verdict::Go);
    let spoils: [Spoil; 16] = [
        ("no rating", "landing", Status::CannotTell, |j| j.landings[0].rating = None),
        ("a duty class alone", "landing", Status::CannotTell, |j| {
            j.landings[0].rating.as_mut().unwrap().mass = None;
            j.strengths[0].rating.class = Some(6);
        }),
        ("a pallet's rating with another one there", "landing", Status::CannotTell, |j| {
            j.landings[0].rating.as_mut().unwrap().mass = None;
            j.strengths[0].rating.pallet = Some(3000.0);
            j.strengths[0].lying = vec![lying(200.0, None)];
        }),
        ("no feet under a point load", "landing", Status::CannotTell, |j| {
            j.strengths[0].rating.point = Some((1e5, 0.1));
        }),
        ("full", "landing", Status::NoGo, |j| j.landings[0].occupied = kilograms(600.0)),
        ("full by what is listed", "landing", Status::NoGo, |j| j.strengths[0].lying = vec![lying(600.0, None)]),
        ("full of people", "landing", Status::NoGo, |j| j.strengths[0].people = Some(5)),
        ("push not rated", "landing", Status::Condition, |j| j.strengths[0].rating.push = None),
        ("push rated for less", "landing", Status::NoGo, |j| j.strengths[0].rating.push = Some(1e3)),
        ("edge not stated", "landing-edge", Status::Condition, |j| j.strengths[0].edge = None),
        ("edge opened", "landing-edge", Status::Condition, |j| j.strengths[0].edge = Some(EdgeGuard::Opened)),
        ("people at an open edge", "landing-edge", Status::NoGo, |j| j.strengths[0].edge = Some(EdgeGuard::NoGuard)),
        ("nobody says how many at an open edge", "landing-edge", Status::NoGo, |j| {
            j.strengths[0].edge = Some(EdgeGuard::NoGuard);
            j.strengths[0].people = None;
        }),
        ("something lies somewhere", "landing-room", Status::Condition, |j| {
            j.strengths[0].lying = vec![lying(10.0, None)];
        }),
        ("something lies where the load comes", "landing-room", Status::NoGo, |j| {
            j.strengths[0].lying = vec![lying(10.0, Some(Area { x: (0.5, 0.8), y: (1.0, 1.4) }))];
        }),
        ("nobody leads the load", "sight", Status::Condition, |j| j.lifts[0].signaller = None),
    ];
    for (what, check, status, spoil) in spoils {
        let mut job = bay();
        spoil(&mut job);
        assert_eq!(worst(&job, check), Some(status), "{what}");
        assert_ne!(check_lift(&job, &job.lifts[0]).unwrap().verdict(), Verdict::Go, "{what}");
        for finding in findings(&job, check).iter().filter(|f| f.status != Status::Go) {
            assert!(!finding.remedies.is_empty(), "{what}: what would mend it");
        }
    }
    let mut nothing = bay();
    nothing.strengths.clear();
    assert_ne!(check_lift(&nothing, &nothing.lifts[0]).unwrap().verdict(), Verdict::Go);
}

/// The total of the finding by hand: what lies there, each person at 113.398 kg, 1.4 times the load.
#[test]
fn the_total_is_what_anybody_adds_up() {
    let mut job = bay();
    job.strengths[0].lying = vec![lying(120.0, None)];
    job.landings[0].occupied = kilograms(30.0);
    let load = job.loads[job.lifts[0].load].mass_kg.high;
    let total = |job: &Job| findings(job, "landing")[0].demand.unwrap().si;
    assert!((total(&job) - (150.0 + 113.398 + 1.4 * load)).abs() < 1e-9);
    job.strengths[0].rating.allows_setting_down = Some(true);
    assert!((total(&job) - (150.0 + 113.398 + load)).abs() < 1e-9);
    job.strengths[0].rating.allows_setting_down = None;
    job.strengths[0].setting_down = Some(1.2);
    assert!((total(&job) - (150.0 + 113.398 + 1.2 * load)).abs() < 1e-9);
    job.strengths[0].people = None;
    assert!((total(&job) - (150.0 + 2.0 * 113.398 + 1.2 * load)).abs() < 1e-9);
}

/// What the finding proposes fits, and 1 % more than the most does not.
#[test]
fn what_is_proposed_was_reckoned() {
    let mut job = bay();
    job.landings[0].rating.as_mut().unwrap().mass = Some(kilograms(1500.0));
    let found = &findings(&job, "landing")[0];
    assert_eq!(found.status, Status::NoGo);
    let most = found
        .remedies
        .iter()
        .find(|r| r.id == "do-less-on-landing")
        .and_then(|r| {
            r.args.iter().find_map(|(_, a)| if let evidence::Arg::Quantity(q) = a { Some(q.si) } else { None })
        })
        .unwrap();
    let mut with = |mass: f64| {
        let load = job.lifts[0].load;
        job.loads[load].mass_kg = Ranged::exact(mass);
        worst(&job, "landing")
    };
    assert_eq!(with(most), Some(Status::Go));
    assert_eq!(with(most * 1.01), Some(Status::NoGo));
}

fn on(job: &Job, mass: f64, feet: &Feet) -> Carried {
    let at = there(job);
    let l = &job.landings[at];
    let s = &job.strengths[at];
    let mut whole = s.carries(l.rating.as_ref(), l.size.x * l.size.y, l.occupied.si(), s.people_counted());
    whole.to_near_edge = Some((l.size.x - job.loads[job.lifts[0].load].depth) / 2.0);
    let load = StandingLoad { mass, size: feet.size(), feet: Some(feet) };
    *governing(&whole.under(&load, &mut Silent).unwrap().carried).unwrap()
}

/// The finding is what `ground` says of the same landing; without feet nothing is told, without a direction the worse counts.
#[test]
fn a_slab_is_judged_by_what_it_is_made_of() {
    let mut job = slab();
    let load = job.lifts[0].load;
    let mass = job.loads[load].mass_kg.high;
    let feet = job.feet[load].clone().unwrap();
    let found = &findings(&job, "landing")[0];
    let direct = on(&job, mass, &feet);
    assert_eq!((found.demand.unwrap(), found.limit), (direct.demand, direct.limit));
    let steps = &found.working.as_ref().unwrap().steps;
    assert!(steps.iter().any(|s| s.formula.contains("β_cc")), "how strong it is by now is told");

    // Three runners under a heavier load: turned, they press otherwise.
    job.loads[load].mass_kg = Ranged::exact(2000.0);
    let at = there(&job);
    job.landings[at].rating = None;
    let runners = Feet::new((0.9, 1, 0.9), (3.0, 3, 0.1), Sharing::ByWidth).unwrap();
    job.feet[load] = Some(runners.clone());
    let share = |job: &Job| {
        let f = &findings(job, "landing")[0];
        assert!(f.demand.is_some(), "{f:?}");
        f.demand.unwrap().si / f.limit.unwrap().si
    };
    let turned = [Runs::Along, Runs::Across].map(|runs| {
        job.strengths[at].runs = Some(runs);
        assert!((share(&job) - on(&job, 2000.0, &runners).utilisation()).abs() < 1e-12);
        share(&job)
    });
    assert!(turned[0] != turned[1]);
    job.strengths[at].runs = None;
    assert_eq!(share(&job).to_bits(), turned[0].max(turned[1]).to_bits());
    job.feet[load] = None;
    assert_eq!(worst(&job, "landing"), Some(Status::CannotTell));
    // What the rating refuses stays refused, whatever else is not known.
    job.landings[at].rating = Some(site::LandingRating { mass: Some(kilograms(200.0)), by: "made".into() });
    assert_eq!(worst(&job, "landing"), Some(Status::NoGo));
}

/// What lies on a slab loads it; a pallet is no farther from the edge than the landing lets it be; a load smaller than any
/// pallet is still held against a rating.
#[test]
fn what_lies_there_edges_and_small_loads_count() {
    let mut job = slab();
    let (load, at) = (job.lifts[0].load, there(&job));
    job.landings[at].rating = None;
    let before = findings(&job, "landing").remove(0);
    assert_eq!(before.status, Status::Go);
    job.landings[at].occupied = kilograms(20_000.0);
    let full = findings(&job, "landing").remove(0);
    assert_eq!(full.status, Status::NoGo);
    assert!((full.demand.unwrap().si - (20_000.0 + 2.0 * 113.398) * 9.80665 / 5.0).abs() < 1e-6, "evenly on 5 m²");
    job.landings[at].occupied = kilograms(0.0);

    job.loads[load].mass_kg = Ranged::exact(2000.0);
    let mut punched = |edges: [Option<f64>; 2], guard: EdgeGuard| {
        let Structure::Slab(slab) = &mut job.strengths[at].structure else { panic!("a slab") };
        slab.to_edges = edges;
        job.strengths[at].edge = Some(guard);
        let f = findings(&job, "landing").remove(0);
        let steps = f.working.unwrap().steps;
        let around = steps.iter().filter(|s| s.formula.contains("u_1")).flat_map(|s| &s.values);
        around.filter(|(symbol, _)| symbol == "u_1").map(|(_, q)| q.si).fold(f64::INFINITY, f64::min)
    };
    let talked_away = punched([Some(50.0); 2], EdgeGuard::AlwaysClosed);
    let near = punched([Some(0.4), Some(50.0)], EdgeGuard::AlwaysClosed);
    assert_eq!(talked_away.to_bits(), near.to_bits(), "0.4 m is all that the landing leaves");
    assert!(punched([Some(50.0); 2], EdgeGuard::NoDrop) > near);

    let mut pipe = bay();
    let load = pipe.lifts[0].load;
    pipe.loads[load].depth = 0.15;
    assert_eq!(worst(&pipe, "landing"), Some(Status::Go));
}

/// A landing that is said to be ground, with a drop at its edge, is not passed over.
#[test]
fn ground_is_ground_where_the_survey_says_so() {
    let mut job = bay();
    job.strengths[0].stands = Some(StandsOn::Ground);
    job.strengths[0].edge = None;
    assert_eq!(worst(&job, "landing-edge"), Some(Status::Condition));
    let ground = job.ground.height(job.landings[0].at).unwrap().0;
    job.landings[0].level = ground + 0.3;
    assert_eq!(worst(&job, "landing-edge"), None);
    job.ground.surfaces.clear();
    assert_eq!(worst(&job, "landing-edge"), Some(Status::Condition), "unknown ground is no ground");
}

/// Where things lie counts from an edge that is not known without a direction of approach.
#[test]
fn places_count_from_a_known_edge_only() {
    let mut job = bay();
    job.strengths[0].lying = vec![lying(10.0, Some(Area { x: (0.0, 0.1), y: (0.0, 0.1) }))];
    assert_eq!(worst(&job, "landing-room"), Some(Status::Go));
    job.landings[0].approach = None;
    assert_eq!(worst(&job, "landing-room"), Some(Status::Condition));
}

/// What is proposed to be cleared would do; where a pallet's own rating is short nothing is proposed to be cleared.
#[test]
fn clearing_is_proposed_only_where_it_cures() {
    let remedies = |pallet: Option<f64>| {
        let mut job = bay();
        job.landings[0].occupied = kilograms(600.0);
        job.strengths[0].rating.pallet = pallet;
        findings(&job, "landing")[0].remedies.iter().map(|r| r.id.to_string()).collect::<Vec<_>>()
    };
    assert!(remedies(None).iter().any(|r| r == "do-clear-landing"));
    assert!(!remedies(Some(1000.0)).iter().any(|r| r == "do-clear-landing"));
}

/// A floor of the building may be judged without a rating; a scaffold never.
#[test]
fn a_scaffold_needs_its_rating() {
    let mut job = slab();
    let at = there(&job);
    job.landings[at].rating = None;
    assert_eq!(worst(&job, "landing"), Some(Status::Go));
    job.strengths[at].stands = Some(StandsOn::Scaffold);
    assert_eq!(worst(&job, "landing"), Some(Status::CannotTell));
    job.strengths[at].stands = None;
    assert_eq!(worst(&job, "landing"), Some(Status::CannotTell));
}

/// The status is kept for one mass; the tolerance for more load asks anew, and ends where a check by
/// hand turns, but for the hundredth by which the worst place of a load is bounded.
#[test]
fn what_is_kept_for_one_mass_is_not_said_of_another() {
    let mut job = slab();
    let (load, at) = (job.lifts[0].load, there(&job));
    job.landings[at].rating = None;
    // So much lies beside that the slab has little left.
    let mut beside = |pascals: f64| {
        let Structure::Slab(slab) = &mut job.strengths[at].structure else { panic!("a slab") };
        slab.beside = pascals;
        worst(&job, "landing") == Some(Status::Go)
    };
    let (mut low, mut high) = (1e3, 50e3);
    assert!(beside(low) && !beside(high));
    while high - low > 100.0 {
        let middle = f64::midpoint(low, high);
        if beside(middle) { low = middle } else { high = middle }
    }
    assert!(beside(low));
    let lift = plan(&job).lifts.remove(0);
    let borne = &lift.tolerances.iter().find(|t| t.what == ToleranceOf::LoadMass).unwrap().at_worst;
    assert_eq!(borne.turned_by.as_deref(), Some("landing"));
    let mass = job.loads[load].mass_kg;
    for (by, status) in [(-1.0, Status::Go), (1.0, Status::NoGo)] {
        let more = borne.most + by * 0.15 * mass.high;
        job.loads[load].mass_kg = Ranged { low: mass.low + more, nominal: mass.nominal + more, high: mass.high + more };
        assert_eq!(worst(&job, "landing"), Some(status), "{by}");
    }
}
