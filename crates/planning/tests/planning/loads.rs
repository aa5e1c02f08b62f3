//! Loads with defects, tanks, long loads, rigging and gates: each says what it must, and the quick
//! verdict never differs from the findings.

use crate::never_pass::demo;
use evidence::{Certainty, Finding, Ranged, Status};
use geometry::DVec3;
use machine::{Defect, Edges, Fitting, Hitch, Liquid, Overhang, Swing, Water};
use planning::{Job, check_lift};
use quantity::{kilograms, radians};
use site::Gate;

/// Index of the demo's first lift (blocks on forks) and of the hung beam.
const BLOCKS: usize = 0;
const BEAM: usize = 5;

/// Findings of a check in one lift of the demo after a change; verdict and findings agree.
fn after(lift: usize, check: &str, change: impl FnOnce(&mut Job)) -> Vec<Finding> {
    let mut job = demo();
    change(&mut job);
    let done = check_lift(&job, &job.lifts[lift]).unwrap();
    let findings = done.findings();
    let worst = findings.iter().map(|f| f.status).max().unwrap();
    assert_eq!(done.verdict(), worst.into(), "quick verdict and findings");
    findings.into_iter().filter(|f| f.check == check).collect()
}

fn said(findings: &[Finding], id: &str) -> Option<Status> {
    findings.iter().find(|f| f.message.id == id).map(|f| f.status)
}

fn load(job: &mut Job, lift: usize) -> &mut machine::Load {
    let index = job.lifts[lift].load;
    &mut job.loads[index]
}

fn hanging(job: &mut Job) -> &mut machine::Hanging {
    load(job, BEAM).hanging.as_mut().unwrap()
}

#[test]
fn every_defect_says_what_it_is_and_what_to_do() {
    for (word, defect) in Defect::ALL {
        let found = after(BLOCKS, "load", |j| load(j, BLOCKS).defects = vec![defect]);
        // The blocks' water is not stated: see the next test.
        if defect == Defect::Wet {
            assert_eq!(said(&found, "defect-wet-not-counted"), Some(Status::CannotTell));
            continue;
        }
        let status = said(&found, &format!("defect-{word}"));
        assert_eq!(status, Some(defect.status()), "{word}");
        assert!(defect.status() >= Status::Condition, "{word} passed");
        assert!(found.iter().all(|f| f.message.id == "load-sound" || !f.remedies.is_empty()), "{word}");
    }
}

#[test]
fn a_wet_load_needs_its_water_counted_or_weighed() {
    let wet = |change: fn(&mut machine::Load)| {
        let found = after(BLOCKS, "load", |j| {
            load(j, BLOCKS).defects = vec![Defect::Wet];
            change(load(j, BLOCKS));
        });
        (said(&found, "defect-wet"), said(&found, "defect-wet-not-counted"))
    };
    let (counted, not) = ((Some(Status::Condition), None), (None, Some(Status::CannotTell)));
    assert_eq!(wet(|_| ()), not);
    assert_eq!(wet(|l| l.parts.iter_mut().for_each(|p| p.water = Water::Counted)), counted);
    assert_eq!(wet(|l| l.parts[1..].iter_mut().for_each(|p| p.water = Water::Counted)), not, "all but the pallet");
    assert_eq!(wet(|l| l.parts.clear()), not, "of a ticket");
    assert_eq!(wet(|l| l.certainty = Certainty::Weighed), counted);
}

#[test]
fn a_stand_tilts_a_tank_no_farther_than_was_reckoned_with() {
    let with = |tilt: f64| {
        after(BLOCKS, "load", |j| {
            load(j, BLOCKS).liquid = Some(Liquid { tilt: f64::to_radians(tilt), ..tank(0.3, true, true) });
        })
    };
    assert_eq!(said(&with(5.0), "load-tilts"), None);
    assert_eq!(said(&with(0.05), "load-tilts"), Some(Status::CannotTell));
}

#[test]
fn a_centre_beyond_the_lifting_points_is_not_lifted() {
    let off = |left: f64, picks: Option<f64>| {
        after(BEAM, "rigging", |j| {
            load(j, BEAM).centre_left = Ranged::exact(left);
            hanging(j).picks = picks;
        })
    };
    let force = |f: &[Finding]| f[0].demand.unwrap().si;
    // Drop 1.6 m at 40°: lifting points 1.34 m to either side.
    let ratio = force(&off(1.0, None)) / force(&off(0.0, None));
    assert!((ratio - 2.0 * (0.5 + 1.0 / 2.685)).abs() < 0.001, "{ratio}");
    assert_eq!(said(&off(1.4, None), "rigging-picks-unknown"), Some(Status::CannotTell));
    assert_eq!(said(&off(1.4, Some(2.4)), "rigging-tips"), Some(Status::NoGo));
    assert_eq!(said(&off(1.4, Some(3.0)), "rigging-tips"), None);
}

#[test]
fn a_layer_over_the_edge_is_a_condition_and_an_unsupported_one_is_not_lifted() {
    let over = |unsupported| Overhang { layer: "boards".into(), over: None, by: 0.1, allowed: 0.0, unsupported };
    let one = after(BLOCKS, "load", |j| load(j, BLOCKS).overhangs = vec![over(false)]);
    assert_eq!(said(&one, "load-layer-overhangs"), Some(Status::Condition));
    let none = after(BLOCKS, "load", |j| load(j, BLOCKS).overhangs = vec![over(true)]);
    assert_eq!(said(&none, "load-layer-unsupported"), Some(Status::NoGo));
    let layer = |unsupported| vec![Overhang { over: Some("sacks".into()), ..over(unsupported) }];
    let below = after(BLOCKS, "load", |j| load(j, BLOCKS).overhangs = layer(false));
    assert_eq!(said(&below, "load-layer-over-layer"), Some(Status::Condition));
    let off = after(BLOCKS, "load", |j| load(j, BLOCKS).overhangs = layer(true));
    assert_eq!(said(&off, "load-layer-not-on-layer"), Some(Status::NoGo));
}

fn tank(fill: f64, baffled: bool, closed: bool) -> Liquid {
    let tilt = 5.0_f64.to_radians();
    let tank = DVec3::new(1.0, 0.8, 0.6);
    Liquid { mass_kg: Ranged::exact(300.0), tank, at: DVec3::new(0.6, 0.0, 0.1), fill, baffled, closed, tilt }
}

#[test]
fn tanks_surge_spill_or_stay_quiet() {
    let with = |l: Liquid| after(BLOCKS, "load", |j| load(j, BLOCKS).liquid = Some(l));
    assert_eq!(with(tank(0.3, true, true)).len(), 1, "baffles and a lid");
    assert_eq!(said(&with(tank(0.3, false, true)), "load-surges"), Some(Status::Condition));
    assert_eq!(with(tank(0.58, false, true)).len(), 1, "full: nothing surges");
    assert_eq!(said(&with(tank(0.3, true, false)), "load-open-tank"), Some(Status::Condition));
    // The surface rises by half the diagonal, 0.64 m, times tan 5°: 56 mm.
    assert_eq!(said(&with(tank(0.56, true, false)), "load-spills"), Some(Status::NoGo));
}

#[test]
fn long_loads_need_their_sag_and_a_signaller() {
    let long = |sag: Option<f64>| {
        after(BLOCKS, "load", |j| {
            load(j, BLOCKS).width = 4.0;
            load(j, BLOCKS).sag = sag;
        })
    };
    let unknown = long(None);
    assert_eq!(said(&unknown, "load-long-no-sag"), Some(Status::Condition));
    assert_eq!(said(&unknown, "load-ends-swing"), Some(Status::Condition));
    // The demo carries it in 0.30 m over the edge.
    assert_eq!(said(&long(Some(0.15)), "load-sag-clears"), Some(Status::Go));
    assert_eq!(said(&long(Some(0.25)), "load-sag-strikes"), Some(Status::NoGo));
}

#[test]
fn the_heavy_face_goes_against_the_carriage() {
    let advice = |f: &[Finding]| f[0].remedies.iter().map(|r| r.id.to_string()).collect::<Vec<_>>();
    let outside = after(BLOCKS, "load", |j| load(j, BLOCKS).centre_ahead = Ranged::plus_minus(0.72, 0.03));
    assert_eq!(advice(&outside), ["do-turn-load"]);
    let aside = after(BLOCKS, "load", |j| load(j, BLOCKS).centre_left = Ranged::plus_minus(0.05, 0.01));
    assert!(advice(&aside).contains(&"do-shift-load".to_owned()));
    assert!(outside[0].working.as_ref().is_some_and(|w| w.steps.len() > 4), "parts are shown");
}

#[test]
fn rigging_that_nobody_looked_at_is_a_condition_and_what_is_wrong_stops() {
    type Case = (&'static str, fn(&mut Job), Status);
    let cases: [Case; 7] = [
        ("rigging-edges-not-stated", |j| hanging(j).edges = None, Status::Condition),
        ("rigging-edges-bare", |j| hanging(j).edges = Some(Edges::Bare), Status::NoGo),
        ("rigging-no-hitch", |j| hanging(j).hitch = None, Status::Condition),
        ("rigging-no-tag-lines", |j| hanging(j).tag_lines = 0, Status::Condition),
        ("rigging-few-tag-lines", |j| hanging(j).tag_lines = 1, Status::Condition),
        ("rigging-swings", |j| hanging(j).swing = Swing::Angle(radians(0.1)), Status::Condition),
        (
            "rigging-fitting-overloaded",
            |j| {
                hanging(j).fittings = vec![Fitting { name: "beam".into(), limit: kilograms(400.0), whole: true }];
            },
            Status::NoGo,
        ),
    ];
    for (id, change, status) in cases {
        assert_eq!(said(&after(BEAM, "rigging", change), id), Some(status), "{id}");
    }
    let still = after(BEAM, "rigging", |j| hanging(j).swing = Swing::Reach(0.0));
    assert_eq!(still.len(), 1, "everything seen and stated: {still:#?}");
    // 0.75 of a limit just above what the leg takes is not enough when choked.
    let choked = after(BEAM, "rigging", |j| {
        hanging(j).leg_limit = kilograms(320.0);
        hanging(j).hitch = Some(Hitch::Choker);
    });
    assert_eq!(said(&choked, "rigging-overloaded"), Some(Status::NoGo));
    assert_eq!(said(&choked, "rigging-choked"), Some(Status::Condition), "the angle of the choke");
}

fn gate(width: f64, height: Option<f64>) -> Gate {
    Gate { id: "n".into(), name: "North gate".into(), width, height, clearance: 0.3, clearance_above: 0.2, posts: None }
}

#[test]
fn gates_are_passed_only_where_machine_and_load_fit_and_somebody_says_which() {
    let with = |passed: Option<Vec<usize>>, g: Gate, width: f64| {
        after(BLOCKS, "gate", |j| {
            j.gates = vec![g];
            j.lifts[BLOCKS].gates = passed;
            load(j, BLOCKS).width = width;
        })
    };
    assert!(after(BLOCKS, "gate", |_| ()).is_empty(), "no gates, no finding");
    assert_eq!(said(&with(None, gate(4.0, None), 1.0), "gate-not-stated"), Some(Status::CannotTell));
    assert_eq!(said(&with(Some(vec![7]), gate(4.0, None), 1.0), "gate-not-stated"), Some(Status::CannotTell));
    assert!(with(Some(Vec::new()), gate(4.0, None), 1.0).is_empty(), "passes none");
    assert_eq!(said(&with(Some(vec![0]), gate(4.0, None), 1.0), "gate-wide-enough"), Some(Status::Go));
    assert_eq!(said(&with(Some(vec![0]), gate(4.0, None), 3.5), "gate-narrow"), Some(Status::NoGo));
    // The machine itself is wider than the load.
    assert_eq!(said(&with(Some(vec![0]), gate(2.5, None), 1.0), "gate-narrow"), Some(Status::NoGo));
    assert_eq!(said(&with(Some(vec![0]), gate(4.0, Some(2.0)), 1.0), "gate-low"), Some(Status::NoGo));
    assert_eq!(said(&with(Some(vec![0]), gate(4.0, Some(6.0)), 1.0), "gate-high-enough"), Some(Status::Go));
    let tool = |width: Option<f64>, gate_width: f64| {
        after(BLOCKS, "gate", |j| {
            j.gates = vec![gate(gate_width, None)];
            j.lifts[BLOCKS].gates = Some(vec![0]);
            let attachment = &mut j.machines[0].machine.attachments[0];
            let heel = attachment.tool_point();
            attachment.kind = machine::AttachmentKind::Other(machine::OtherTool {
                heel,
                rated_load_centre: quantity::metres(0.61),
                width,
            });
        })
    };
    assert_eq!(said(&tool(Some(2.0), 4.0), "gate-wide-enough"), Some(Status::Go));
    assert_eq!(said(&tool(Some(3.6), 4.0), "gate-narrow"), Some(Status::NoGo), "the tool is the widest");
    assert_eq!(said(&tool(None, 4.0), "gate-tool-unknown"), Some(Status::CannotTell));
    assert_eq!(said(&tool(None, 2.5), "gate-narrow"), Some(Status::NoGo), "whatever the tool");
    let bucket = after(BLOCKS, "gate", |j| {
        j.gates = vec![gate(4.0, None)];
        j.lifts[BLOCKS].gates = Some(vec![0]);
        let attachment = &mut j.machines[0].machine.attachments[0];
        let heel = attachment.tool_point();
        attachment.kind = machine::AttachmentKind::Bucket(machine::Bucket {
            heel,
            volume: 1.0,
            edge: 3.5,
            rated_load_centre: quantity::metres(0.61),
        });
    });
    assert_eq!(said(&bucket, "gate-narrow"), Some(Status::NoGo), "its edge is wider than load and machine");
    let hung = after(BEAM, "gate", |j| {
        j.gates = vec![gate(9.0, Some(6.0))];
        j.lifts[BEAM].gates = Some(vec![0]);
    });
    assert_eq!(said(&hung, "gate-height-unknown"), Some(Status::CannotTell));
    assert_eq!(said(&hung, "gate-wide-enough"), Some(Status::Go));
}

/// The hook to the beam's middle is 1.75 m: 3° of swing is 9 cm.
#[test]
fn the_swing_of_a_hung_load_is_a_distance_that_the_reach_can_take() {
    let mut job = demo();
    let swing = load(&mut job, BEAM).swing(&mut evidence::Silent);
    assert!((swing - 1.77 * 3.0_f64.to_radians().sin()).abs() < 1e-9, "{swing}: lowest centre, 2 cm below the middle");
    assert_eq!(load(&mut job, BLOCKS).swing(&mut evidence::Silent), 0.0);
}
