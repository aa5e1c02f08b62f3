//! What the ground gives under wheels and pads: it leans the machine and takes from what is left, never the other way.

use crate::never_pass::demo;
use evidence::{Finding, Status};
use ground::mat_material::MatMaterial;
use ground::mats::Mat;
use ground::{GroundState, Layer, Profile, Stated, Stiffness};
use machine::SupportState;
use planning::{Job, Matter, SiteMat, SoilArea, check_lift};

/// Strong clay of that stiffness, MPa.
fn soil(modulus: Option<f64>) -> SoilArea {
    let layer = Layer {
        top: 0.0,
        thickness: f64::INFINITY,
        unit_weight: 19e3,
        stated: Stated { undrained: Some(490e3), drained: None },
        stiffness: modulus.map(|m| Stiffness { modulus: m * 1e6, poisson: 0.3 }),
    };
    let profile = Profile { layers: vec![layer], water: Some(2.0), state: GroundState::AsStated };
    SoilArea { id: "c".into(), name: "Clay".into(), area: None, profile, presumed: None, by: "made".into() }
}

/// The demo's first lift; on stabilizers where the machine is to stand on pads.
fn job(pads: bool) -> Job {
    let mut job = demo();
    job.lifts.truncate(1);
    job.acceptances.retain(|a| a.matter != Matter::GroundStrength);
    job.lifts[0].acceptances.retain(|a| a.matter != Matter::GroundStrength);
    if pads {
        let index = job.machines.iter().position(|m| m.machine.stabilizers.is_some()).unwrap();
        let lift = &mut job.lifts[0];
        (lift.machine, lift.support) = (index, SupportState::Stabilizers);
        lift.front_tyres = Some(planning::FrontTyres::Clear);
    }
    job
}

fn on(pads: bool, soils: &[SoilArea]) -> Job {
    let mut job = job(pads);
    job.soils.extend_from_slice(soils);
    job
}

fn finding(job: &Job, check: &str) -> Option<Finding> {
    check_lift(job, &job.lifts[0]).unwrap().findings().into_iter().find(|f| f.check == check)
}

/// Reserve of tilt and of load factor.
fn left(job: &Job) -> [f64; 2] {
    ["tilt", "load-factor"].map(|check| finding(job, check).unwrap().reserve.unwrap())
}

fn demand(job: &Job) -> f64 {
    finding(job, "settlement").unwrap().demand.unwrap().si
}

/// From rock to mud, each softer ground leaves no more tilt and no more load, and leans the machine no less; the stiffest
/// leaves what firm ground does, and never more.
#[test]
fn softer_ground_never_leaves_more() {
    for pads in [false, true] {
        let firm = left(&on(pads, &[soil(None)]));
        assert_eq!(firm, left(&job(pads)), "soil without stiffness changes no number");
        let (mut before, mut leaned) = (firm, 0.0);
        for modulus in [1e6, 1000.0, 200.0, 80.0, 40.0, 20.0, 10.0, 5.0, 2.0, 1.0] {
            let now = on(pads, &[soil(Some(modulus))]);
            let (there, leans) = (left(&now), demand(&now));
            for (a, b) in there.iter().zip(before) {
                assert!(*a <= b + 1e-9, "{modulus} MPa: {there:?} after {before:?}");
            }
            assert!(leans >= leaned, "{modulus} MPa: {leans} after {leaned}");
            (before, leaned) = (there, leans);
        }
        assert!(before[0] < firm[0] - 0.01, "mud takes: {before:?} of {firm:?}");
        let rock = left(&on(pads, &[soil(Some(1e6))]));
        assert!((rock[0] - firm[0]).abs() < 1e-3, "{rock:?} {firm:?}");
    }
}

/// On softer and softer ground the finding turns to no-go once, and a mat of the size that it names turns it back.
#[test]
fn settlement_refuses_once_and_the_mat_it_names_cures() {
    let mut refused = 0;
    let mut cured = 0;
    for modulus in [100.0, 50.0, 25.0, 12.0, 6.0, 3.0, 1.5, 0.8, 0.4] {
        let soft = on(true, &[soil(Some(modulus))]);
        let found = finding(&soft, "settlement").unwrap();
        let (demand, limit) = (found.demand.unwrap().si, found.limit.unwrap().si);
        assert_eq!(found.status, if demand <= limit { Status::Go } else { Status::NoGo });
        let steps = &found.working.as_ref().unwrap().steps;
        assert!(steps.iter().any(|s| s.result.0 == "θ" && (s.result.1.si - demand).abs() < 1e-12));
        if found.status == Status::Go {
            assert_eq!(refused, 0, "no way back at {modulus} MPa");
            continue;
        }
        refused += 1;
        let Some(cure) = found.remedies.iter().find(|m| m.id == "do-mats-settle") else { continue };
        let Some((_, evidence::Arg::Quantity(named))) = cure.args.iter().find(|(name, _)| *name == "side") else {
            panic!("{cure:?}")
        };
        let with_mats = |side: f64| {
            let mut matted = soft.clone();
            let steel = MatMaterial::steel_plate(355e6).unwrap();
            // So thick that all of it works, and 5 cm wider each way for where it comes to lie.
            let mat = Mat { size: [side + 0.1001; 2], thickness: 0.4, material: steel };
            matted.mats.push(SiteMat { id: "m".into(), name: "m".into(), mat });
            matted.lifts[0].mats = vec![0];
            finding(&matted, "settlement").unwrap().status
        };
        assert_eq!(with_mats(named.si), Status::Go, "{modulus} MPa: {named:?}");
        assert_ne!(with_mats(named.si - 0.11), Status::Go, "{modulus} MPa: a smaller one does");
        cured += 1;
    }
    assert!(refused > 1 && cured > 0, "{refused} {cured}");
}

/// The working holds what the sentence says: the contact that settles most, and in the pose that leans most the four of
/// which the two ends are made.
#[test]
fn the_working_ends_in_what_is_said() {
    for pads in [false, true] {
        let found = finding(&on(pads, &[soil(Some(15.0))]), "settlement").unwrap();
        let said = |name: &str| match found.message.args.iter().find(|(n, _)| *n == name) {
            Some((_, evidence::Arg::Quantity(q))) => q.si,
            other => panic!("{name}: {other:?}"),
        };
        let steps = &found.working.as_ref().unwrap().steps;
        let settled: Vec<f64> = steps.iter().filter(|s| s.result.0 == "s").map(|s| s.result.1.si).collect();
        let [most, a, b, c, d] = settled[..] else { panic!("{settled:?}") };
        assert!((most - said("settles")).abs() < 1e-12 && [a, b, c, d].iter().all(|s| *s <= most + 1e-12));
        let tilt = steps.iter().find(|s| s.result.0 == "ω").unwrap();
        let ends: Vec<f64> = tilt.values.iter().filter(|v| v.0.starts_with("s_")).map(|v| v.1.si).collect();
        let made = [[f64::midpoint(a, b), f64::midpoint(c, d)], [a, b], [c, d]];
        let is = |made: &[f64; 2]| (made[0] - ends[0]).abs() < 1e-12 && (made[1] - ends[1]).abs() < 1e-12;
        assert!(made.iter().any(|m| is(m) || is(&[m[1], m[0]])), "{ends:?} of {settled:?}");
        assert!((said("difference") - (ends[0] - ends[1]).abs()).abs() < 1e-12);
        assert!(said("moves") > said("difference"), "the head stands higher than the wheels apart");
    }
}

/// Not known under a pad is a condition with what to watch; under bare tyres, which give far more than soil, nothing is
/// said; without any soil nothing is said either.
#[test]
fn what_is_not_known_is_said() {
    let unknown = finding(&on(true, &[soil(None)]), "settlement").unwrap();
    assert_eq!(unknown.status, Status::Condition);
    assert!(format!("{:?}", unknown.message).contains("settlement-soil-no-stiffness"));
    assert!(!unknown.remedies.is_empty());
    assert_eq!(finding(&on(false, &[soil(None)]), "settlement"), None);
    assert_eq!(finding(&job(true), "settlement"), None);
    // Layers that end above what the pads reach.
    let mut shallow = soil(Some(30.0));
    shallow.profile.layers[0].thickness = 1.0;
    assert_eq!(finding(&on(true, &[shallow]), "settlement").unwrap().status, Status::Condition);
    let stated = finding(&on(true, &[soil(Some(60.0))]), "settlement").unwrap();
    assert_eq!(stated.status, Status::Go, "{:?}", stated.message);
}

/// Where a contact may stand on either of two soils, the softer gives and the stiffer does not: worse than each alone.
#[test]
fn of_two_soils_the_worse_counts_on_either_side() {
    let [soft, stiff] = [20.0, 80.0].map(|m| soil(Some(m)));
    let both = on(true, &[soft.clone(), stiff.clone()]);
    let [a, b] = [soft, stiff].map(|s| on(true, &[s]));
    assert!(demand(&both) > demand(&a) && demand(&a) > demand(&b));
    assert_eq!(left(&both), left(&a), "against tipping the softer one counts");
}

/// The head's way counts towards things and lines: what is asked of them grows as the ground gets softer.
#[test]
fn the_boom_leans_towards_lines() {
    let asked = |modulus: Option<f64>| {
        let job = on(false, &[soil(modulus)]);
        let all = check_lift(&job, &job.lifts[0]).unwrap().findings();
        // Of a line the distance required is what must at least be there.
        all.into_iter().find(|f| f.check == "line" && f.demand.is_some()).unwrap().demand.unwrap().si
    };
    let (firm, some, soft) = (asked(None), asked(Some(20.0)), asked(Some(4.0)));
    assert!(firm < some && some < soft, "{firm} {some} {soft}");
}

/// Under bare tyres ruts go from small over deep to stuck as clay gets softer, by the tyre's pressure over its strength;
/// mats leave none, rain leaves the depth unknown, and granular soil is for bearing alone.
#[test]
fn ruts_deepen_as_clay_gets_softer() {
    let of = |c_u: f64| {
        let mut soil = soil(None);
        soil.profile.layers[0].stated.undrained = Some(c_u);
        finding(&on(false, &[soil]), "rutting").unwrap()
    };
    let pressure = of(100e3).demand.unwrap().si;
    assert!(pressure > 100e3, "a tyre's pressure: {pressure}");
    for (ratio, id, status) in [
        (2.79, "ruts-small", Status::Go),
        (2.81, "ruts-deep", Status::Condition),
        (3.29, "ruts-deep", Status::Condition),
        (3.31, "ruts-deepen", Status::NoGo),
        (5.14, "ruts-deepen", Status::NoGo),
        (5.15, "ruts-sinks", Status::NoGo),
    ] {
        let found = of(pressure / ratio);
        assert_eq!((found.message.id.as_ref(), found.status), (id, status), "{ratio}");
        assert!(planning::check_name(&found.check).is_some());
    }
    // A soft layer within the tyre's width counts, one deeper is for bearing.
    let layered = |crust: f64| {
        let mut soil = soil(None);
        let mut soft = soil.profile.layers[0];
        soil.profile.layers[0].thickness = crust;
        (soft.top, soft.stated.undrained) = (crust, Some(20e3));
        soil.profile.layers.push(soft);
        finding(&on(false, &[soil]), "rutting").unwrap().status
    };
    assert_eq!((layered(0.1), layered(1.0)), (Status::NoGo, Status::Go));
    // Under a film of sand too.
    let filmed = |state: GroundState| {
        let mut soil = soil(None);
        let mut soft = soil.profile.layers[0];
        (soil.profile.layers[0].thickness, soil.profile.state) = (0.02, state);
        soil.profile.layers[0].stated = Stated { undrained: None, drained: Some((0.0, 0.6)) };
        (soft.top, soft.stated) = (0.02, Stated { undrained: Some(20e3), drained: Some((2e3, 0.4)) });
        soil.profile.layers.push(soft);
        finding(&on(false, &[soil]), "rutting").unwrap().status
    };
    for state in [GroundState::AsStated, GroundState::Wetted, GroundState::Thawing] {
        assert_eq!(filmed(state), Status::NoGo, "rain and thaw do not help: {state:?}");
    }
    let mut wet = soil(None);
    wet.profile.state = GroundState::Wetted;
    wet.profile.layers[0].stated.drained = Some((0.0, 0.7));
    let wetted = finding(&on(false, &[wet.clone()]), "rutting").unwrap();
    assert_eq!((wetted.message.id.as_ref(), wetted.status), ("ruts-not-known", Status::Condition));
    wet.profile.layers[0].stated.undrained = None;
    assert_eq!(finding(&on(false, &[wet]), "rutting"), None);
    let mut matted = on(false, &[soil(None)]);
    let mat = Mat { size: [1.5; 2], thickness: 0.04, material: MatMaterial::steel_plate(355e6).unwrap() };
    matted.mats.push(SiteMat { id: "m".into(), name: "m".into(), mat });
    assert!(finding(&matted, "rutting").is_some());
    matted.lifts[0].mats = vec![0];
    assert_eq!(finding(&matted, "rutting"), None);
}

/// A wheel is asked on every soil that it may stand on, and where the front is on pads the rear wheels are asked.
#[test]
fn the_worst_soil_and_every_wheel_that_carries_is_asked() {
    let mut soft = soil(None);
    soft.profile.layers[0].stated.undrained = Some(20e3);
    for soils in [[soil(None), soft.clone()], [soft.clone(), soil(None)]] {
        assert_eq!(finding(&on(false, &soils), "rutting").unwrap().status, Status::NoGo);
    }
    let message = format!("{:?}", finding(&on(true, &[soft]), "rutting").unwrap().message);
    assert!(message.contains("wheel-rear-"), "{message}");
}
