//! Soil under mats and under contacts close together: all that presses is asked, and what nobody stated never passes.

use crate::carried::{clay, job};
use evidence::{Arg, Finding, Silent, Status};
use geometry::DVec2;
use ground::mat_material::{MatMaterial, TimberClass};
use ground::mats::Mat;
use ground::{FactorSet, Footprint, Load, PadOnProfile, Stated, bearing_on_profile};
use planning::{GroundFactors, Job, SiteMat, SoilArea, check_lift};
use site::PlanArea;

fn ground(job: &Job) -> Vec<Finding> {
    check_lift(job, &job.lifts[0]).unwrap().findings().into_iter().filter(|f| f.check == "ground").collect()
}

fn worst(job: &Job) -> Status {
    ground(job).iter().map(|f| f.status).max().unwrap()
}

fn on_mats(mut job: Job, size: [f64; 2], thickness: f64, material: MatMaterial) -> Job {
    job.mats.push(SiteMat { id: "m".into(), name: "m".into(), mat: Mat { size, thickness, material } });
    job.lifts[0].mats = vec![0];
    job
}

/// Everything to the left of a line along the machine, `aside` metres to the right of its middle; or to the right of it.
fn half(job: &Job, aside: f64, left: bool, c_u: f64) -> SoilArea {
    let stand = job.lifts[0].stand;
    let along = DVec2::new(stand.heading.cos(), stand.heading.sin());
    let middle = stand.at - along.perp() * aside;
    let away = along.perp() * if left { 40.0 } else { -40.0 };
    let (a, b) = (middle - along * 40.0, middle + along * 40.0);
    let outer = vec![a, b, b + away, a + away];
    SoilArea { area: Some(PlanArea { outer, holes: Vec::new() }), ..clay(c_u) }
}

fn right_wheels(job: &Job) -> f64 {
    let lift = &job.lifts[0];
    job.machines[lift.machine].machine.contacts(lift.support)[0].y
}

/// The soil is stated as far as the middle of the right mats and a little farther: what is under the rest nobody stated.
#[test]
fn a_mat_half_off_the_stated_soil_is_not_on_it() {
    let steel = || MatMaterial::steel_plate(355e6).unwrap();
    let plated = || on_mats(job(), [1.5; 2], 0.04, steel());
    let at = right_wheels(&plated()) + plated().policy.stand_error + 0.05;
    for (to, known) in [(at, false), (at + 0.5, false), (at + 1.2, true)] {
        let mut job = plated();
        job.soils.push(half(&job, to, true, 400e3));
        assert_eq!(ground(&job).len(), if known { 1 } else { 2 }, "stated to {to} m");
        assert_eq!(worst(&job), if known { Status::Go } else { Status::CannotTell }, "stated to {to} m");
        // The rest is stated by another: no gap between.
        let rest = half(&job, to, false, 390e3);
        job.soils.push(rest);
        assert_eq!((ground(&job).len(), worst(&job)), (1, Status::Go), "both sides of {to} m");
    }
    // Soft ground under the outer half of the mats counts too.
    let mut job = plated();
    let at = right_wheels(&job) + job.policy.stand_error + 0.2;
    let (firm, soft) = (half(&job, at, true, 400e3), half(&job, at, false, 3e3));
    job.soils.extend([firm, soft]);
    assert_eq!(worst(&job), Status::NoGo);
}

/// What the finding sets against each other is what the mat gives whose strengths the factor on force has come off.
#[test]
fn a_mat_is_asked_with_the_factor_on_force() {
    let oak = MatMaterial::timber(TimberClass::D40);
    for (factors, set, of_mat) in
        [(GroundFactors::One(3.0), FactorSet::Global(3.0), 1.5), (GroundFactors::Da2, FactorSet::Da2, 1.0)]
    {
        let mut job = on_mats(job(), [1.5, 1.2], 0.06, oak.clone());
        job.policy.ground_factors = factors;
        job.soils.push(clay(150e3));
        let found = ground(&job).remove(0);
        let (demand, limit) = (found.demand.unwrap().si, found.limit.unwrap().si);
        let steps = &found.working.as_ref().unwrap().steps;
        let [f_m, pressure] = ["f_m", "p"].map(|r| steps.iter().find(|s| s.result.0 == r).unwrap());
        let by_hand = 0.7 * 40e6 / 1.3 / of_mat;
        assert!((f_m.result.1.si / by_hand - 1.0).abs() < 1e-9, "{set:?}");
        let works = ["B′", "L′"].map(|s| pressure.values.iter().find(|v| v.0 == s).unwrap().1.si);
        let base = Footprint::Rectangle { width: works[0], length: works[1] };
        let load = Load { vertical: demand, ..Load::default() };
        let pad = PadOnProfile { base, load, depth: 0.0, slope: 0.0 };
        let carries = bearing_on_profile(&pad, &job.soils[0].profile, &mut Silent).unwrap().resistance;
        let level = set.resistance(carries, &mut Silent);
        assert!(limit <= level * (1.0 + 1e-9) && limit > 0.8 * level, "less by the slope alone: {limit} {level}");
    }
}

/// Under a crust strong enough for each wheel alone, mud is pressed by all of them together, and the finding says so.
#[test]
fn deep_mud_is_pressed_by_all_together() {
    let over_mud = |thickness: f64, c_u: f64| {
        let mut job = job();
        let mut soil = clay(c_u);
        let mut crust = soil.profile.layers[0];
        crust.thickness = thickness;
        crust.stated = Stated { undrained: None, drained: Some((80e3, 0.7)) };
        soil.profile.layers[0].top = thickness;
        soil.profile.layers.insert(0, crust);
        soil.profile.water = Some(9.0);
        job.soils.push(soil);
        ground(&job).remove(0)
    };
    let who = |f: &Finding| match f.message.args.iter().find(|(n, _)| *n == "wheel") {
        Some((_, Arg::Message(m))) => m.id.to_string(),
        other => panic!("{other:?}"),
    };
    let found = over_mud(3.0, 3e3);
    assert!(who(&found).starts_with("group-"), "{:?}", found.message);
    let steps = &found.working.as_ref().unwrap().steps;
    assert_eq!(steps.last().unwrap().result.1.si, found.limit.unwrap().si);
    let area = steps.iter().find(|s| s.title.id == "working-group").unwrap();
    let v = |symbol: &str| area.values.iter().find(|v| v.0 == symbol).unwrap().1.si;
    let by_hand = (v("B") - 2.0 * v("e_B").abs()) * (v("L") - 2.0 * v("e_L").abs());
    let last = steps.iter().rfind(|s| s.result.0 == "R").unwrap();
    let whole = last.values.iter().find(|v| v.0 == "A′").unwrap().1.si;
    assert!((by_hand - whole).abs() < 1e-9 && (area.result.1.si - whole).abs() < 1e-9);
    assert!(who(&over_mud(3.0, 200e3)).starts_with("wheel-"));
    let mut refused = false;
    for c_u in [60e3, 20e3, 8e3, 3e3, 1.5e3, 0.5e3] {
        let status = over_mud(3.0, c_u).status;
        assert!(!(refused && status == Status::Go), "{c_u}");
        refused |= status == Status::NoGo;
    }
    assert!(refused);
}
