//! A machine as it is today, and how it stands in a lift: what is read of it, and what is said of what
//! does not fit the machine.

use crate::faults_machine::plain;
use crate::folder::{demo, text};
use crate::shown;
use evidence::Certainty;
use jobfile::{Need, review_machine};
use machine::{BodyKind, Lock, Machine};
use planning::{FrontTyres, Job};
use quantity::Si;
use std::collections::BTreeMap;

const MACHINE: &str = "machines/demo-14.toml";

/// Replaces the first place of each.
fn changed(whole: &str, changes: &[(&str, &str)]) -> String {
    changes.iter().fold(whole.to_owned(), |text, (from, to)| {
        assert!(text.contains(from), "nothing to replace: {from}");
        text.replacen(from, to, 1)
    })
}

/// The demo job on a machine whose operator locks the axle and levels the frame.
fn able() -> BTreeMap<String, Vec<u8>> {
    let mut folder = demo();
    let machine = changed(&text(&folder, MACHINE), &[("lock = \"never\"", "lock = \"operator\"")]);
    let levelling = "\n[levelling]\npin_height = \"0.70 m\"\nrange = \"10°\"\nindicator_error = \"0.5°\"\n";
    folder.insert(MACHINE.into(), (machine + levelling).into_bytes());
    folder
}

fn job_in(mut folder: BTreeMap<String, Vec<u8>>, changes: &[(&str, &str)]) -> Result<Job, Vec<String>> {
    let job = changed(&text(&folder, "job.toml"), changes);
    folder.insert("job.toml".into(), job.clone().into_bytes());
    jobfile::read_job(&folder).map(|(job, _)| job).map_err(|faults| shown::all(&faults, &job))
}

fn machine(changes: &[(&str, &str)]) -> Machine {
    let text = changed(&plain(), changes);
    let read = jobfile::read_machine("m.toml", text.as_bytes());
    read.unwrap_or_else(|faults| panic!("{:#?}", shown::all(&faults, &text))).0
}

#[test]
fn a_machine_that_says_nothing_of_it_is_as_described() {
    let job = job_in(demo(), &[]).unwrap();
    let unit = &job.machines[0];
    assert_eq!((&unit.lock_tried, unit.flat), (&None, [false; 4]));
    assert!(unit.pressures.iter().all(Option::is_none) && unit.without.is_empty() && unit.added.is_empty());
    let lift = &job.lifts[0];
    assert_eq!((lift.levelled, lift.axle_locked, lift.front_tyres), (false, false, None));
    assert!(unit.machine.bodies.iter().all(|b| b.least.is_none()));
    assert_eq!((unit.machine.front.tyre.rim, unit.machine.front.tyre.stiffness), (None, None));
    assert!(unit.machine.rear.lock_angle.is_none());
}

#[test]
fn everything_of_today_is_read() {
    let today = r#"kept = "own"
axle_lock_tried = "J. Abreu, 06:55"
flat = ["rear-right", "front-left"]
measured_pressures = { front-right = "3.5 bar", rear-left = { value = "60 psi", source = "estimated" } }
without = ["counterweight", "rear axle and wheels"]
added = [
  { name = "counterweight of 1200", mass = "1200 kg", centre = ["-3.40 m", "0 m", "0.98 m"], part = "frame" },
  { name = "axle with ballast", mass = "990 kg", centre = ["-3.00 m", "0.02 m", "0.62 m"], part = "rear-axle" },
]
"#;
    let job = job_in(able(), &[("kept = \"own\"\n", today)]).unwrap();
    let unit = &job.machines[0];
    assert_eq!(unit.lock_tried.as_deref(), Some("J. Abreu, 06:55"));
    assert_eq!(unit.flat, [true, false, false, true], "front left, front right, rear left, rear right");
    let [None, Some(right), Some(left), None] = unit.pressures else { panic!("{:?}", unit.pressures) };
    assert!((right.si() - 3.5e5).abs() < 1e-6);
    // 1 psi is 1 lbf/in²: 4.448 221 615 260 5 N over 25.4 mm squared.
    assert!((left.si() - 60.0 * 4.448_221_615_260_5 / (0.0254 * 0.0254)).abs() < 1e-6);
    assert_eq!(unit.without, ["counterweight", "rear axle and wheels"]);
    let added: Vec<_> = unit.added.iter().map(|b| (b.kind, b.mass.si(), b.centre.y, b.least.is_none())).collect();
    assert_eq!(added, [(BodyKind::Frame, 1200.0, 0.0, true), (BodyKind::RearAxle, 990.0, 0.02, true)]);
    assert_eq!(unit.added[0].name, "counterweight of 1200");
    // The other machine of the job is as described.
    assert!(job.machines[1].added.is_empty() && job.machines[1].flat == [false; 4]);
    // What was measured stands on the input list, as the key or the value itself says.
    let certainty = |end: &str| job.inputs.iter().find(|i| i.name.ends_with(end)).map(|i| i.certainty);
    assert_eq!(certainty("measured_pressures.rear-left"), Some(Certainty::Estimated));
    assert!(certainty("measured_pressures.front-right").is_some());
}

/// What a gauge said is measured, whatever the job says of its other values, but invented stays invented.
#[test]
fn a_measured_pressure_is_measured() {
    let key = "kept = \"own\"\nmeasured_pressures = { front-left = \"3.5 bar\" }\n";
    let pressure = |source: &str| {
        let mut folder = demo();
        let first = text(&folder, "job.toml").lines().find(|l| l.starts_with("source = ")).unwrap().to_owned();
        let job = changed(&text(&folder, "job.toml"), &[(&first, source)]);
        folder.insert("job.toml".into(), job.into_bytes());
        let job = job_in(folder, &[("kept = \"own\"\n", key)]).unwrap();
        job.inputs.iter().find(|i| i.name.ends_with("measured_pressures.front-left")).unwrap().certainty
    };
    assert_eq!(pressure("source = \"stated\""), Certainty::Measured);
    assert_eq!(pressure("source = \"estimated\""), Certainty::Measured);
    assert_eq!(pressure("source = \"invented\""), Certainty::Invented);
}

#[test]
fn how_a_machine_stands_in_a_lift_is_read() {
    let on_tyres = ("support = \"tyres\"\n", "support = \"tyres\"\nlevelled = true\naxle_locked = true\n");
    let job = job_in(able(), &[on_tyres]).unwrap();
    let (first, second) = (&job.lifts[0], &job.lifts[1]);
    assert_eq!((first.levelled, first.axle_locked, first.front_tyres), (true, true, None));
    assert_eq!((second.levelled, second.axle_locked), (false, false));
    for (word, state) in [("clear", FrontTyres::Clear), ("touching", FrontTyres::Touching)] {
        let down = format!("support = \"stabilizers\"\nfront_tyres = \"{word}\"\naxle_locked = true\n");
        let job = job_in(able(), &[("support = \"tyres\"\n", &down)]).unwrap();
        assert_eq!((job.lifts[0].front_tyres, job.lifts[0].axle_locked), (Some(state), true));
    }
}

/// That something is not done can be said of every machine.
#[test]
fn not_levelled_and_not_locked_need_no_levelling_and_no_lock() {
    for support in ["tyres", "stabilizers"] {
        let said = format!("support = \"{support}\"\nlevelled = false\naxle_locked = false\n");
        let job = job_in(demo(), &[("support = \"tyres\"\n", &said)]).unwrap();
        assert_eq!((job.lifts[0].levelled, job.lifts[0].axle_locked), (false, false));
    }
}

/// A lock above a boom angle, or one that is not known, is not the operator's.
#[test]
fn only_an_operator_locks() {
    for lock in ["never", "above-boom-angle", "unknown"] {
        let mut folder = able();
        let machine = changed(
            &text(&folder, MACHINE),
            &[
                ("lock = \"operator\"", &format!("lock = \"{lock}\"")),
                // Nor do the stabilizers.
                ("rear_axle = \"locked\"", "rear_axle = \"free\""),
            ],
        );
        folder.insert(MACHINE.into(), machine.into_bytes());
        let tried = ("kept = \"own\"\n", "kept = \"own\"\naxle_lock_tried = \"J. Abreu\"\n");
        let locked = ("support = \"tyres\"\n", "support = \"tyres\"\naxle_locked = true\n");
        let found = job_in(folder.clone(), &[locked]).unwrap_err();
        assert!(found.len() == 1 && found[0].contains("jobfile::axle-not-operators `true`"), "{lock}: {found:?}");
        // Trying it is possible wherever there may be one.
        let read = job_in(folder, &[tried]);
        assert_eq!(read.is_ok(), lock != "never", "{lock}");
    }
}

#[test]
fn a_lock_tried_by_nobody_yet_counts_as_not_tried() {
    let open = ("kept = \"own\"\n", "kept = \"own\"\naxle_lock_tried = \"FILL IN: name\"\n");
    assert_eq!(job_in(able(), &[open]).unwrap().machines[0].lock_tried, None);
    // A machine file that is still being written is not yet the machine that somebody tried.
    let mut folder = able();
    let draft = changed(&text(&folder, MACHINE), &[("mass = \"4650 kg\"", "mass = \"FILL IN 4650 kg\"")]);
    folder.insert(MACHINE.into(), draft.into_bytes());
    let tried = ("kept = \"own\"\n", "kept = \"own\"\naxle_lock_tried = \"J. Abreu\"\n");
    assert_eq!(job_in(able(), &[tried]).unwrap().machines[0].lock_tried.as_deref(), Some("J. Abreu"));
    assert_eq!(job_in(folder, &[tried]).unwrap().machines[0].lock_tried, None);
}

#[test]
fn places_still_to_be_filled_in_read() {
    let open = "kept = \"own\"\nflat = [\"FILL IN: which\", \"rear-left\"]\nwithout = [\"FILL IN: which\"]\n";
    let job = job_in(able(), &[("kept = \"own\"\n", open)]).unwrap();
    assert_eq!((job.machines[0].flat, job.machines[0].without.len()), ([false, false, true, false], 0));
    assert_eq!(job.warnings.list.iter().filter(|f| f.code == "jobfile::placeholder").count(), 2);
}

#[test]
fn two_bodies_of_one_name_must_be_told_apart() {
    let mut folder = able();
    let renamed = changed(&text(&folder, MACHINE), &[("name = \"operator\"", "name = \"counterweight\"")]);
    folder.insert(MACHINE.into(), renamed.into_bytes());
    let off = ("kept = \"own\"\n", "kept = \"own\"\nwithout = [\"counterweight\"]\n");
    let found = job_in(folder, &[off]).unwrap_err();
    assert!(found.len() == 1 && found[0].contains("jobfile::bodies-of-one-name `\"counterweight\"`"), "{found:?}");
}

/// All that is wrong with a machine of today comes at once, and what its lifts say with it.
#[test]
fn a_fault_of_today_hides_none_of_the_lifts() {
    let today = "kept = \"own\"\nflat = [\"left\"]\nwithout = [\"roof\"]\n";
    let lift = "support = \"tyres\"\nlevelled = true\naxle_locked = true\nfront_tyres = \"clear\"\n";
    let found = job_in(demo(), &[("kept = \"own\"\n", today), ("support = \"tyres\"\n", lift)]).unwrap_err();
    let codes: Vec<&str> = found.iter().filter_map(|f| f.split(' ').nth(1)).collect();
    let wanted = ["bad-choice", "no-body-of-that-name", "no-levelling", "axle-not-operators", "front-tyres-misplaced"];
    assert_eq!(codes, wanted.map(|code| format!("jobfile::{code}")));
}

#[test]
fn tyres_and_lock_of_a_machine_file_are_read() {
    let machine = machine(&[
        ("mass = \"8200 kg\"", "mass = \"8200 kg\"\nleast = \"7900 kg\""),
        ("pressure = \"4.0 bar\" }", "pressure = \"solid\", rim = \"24 in\", stiffness = \"1.5 MN/m\" }"),
        (
            "pressure = \"4.0 bar\" }",
            "pressure = \"4.0 bar\", stiffness = { value = \"620 kN/m\", source = \"stated\" } }",
        ),
        ("lock = \"operator\"", "lock = \"above-boom-angle\"\nlock_angle = \"40°\""),
    ]);
    assert_eq!(machine.bodies[0].least.map(|m| m.si()), Some(7900.0));
    assert!(machine.bodies[1].least.is_none());
    let (front, rear) = (&machine.front.tyre, &machine.rear.axle.tyre);
    assert!((front.rim.unwrap().si() - 0.6096).abs() < 1e-12 && rear.rim.is_none());
    assert!((front.stiffness.unwrap() - 1.5e6).abs() < 1e-6 && (rear.stiffness.unwrap() - 6.2e5).abs() < 1e-6);
    assert_eq!((front.pressure, machine.rear.lock), (None, Lock::AboveBoomAngle));
    assert!((machine.rear.lock_angle.unwrap().si() - 40_f64.to_radians()).abs() < 1e-12);
    assert!((machine::tyre_stiffness(rear) - 6.2e5).abs() < 1e-6, "what is stated counts");
}

/// A tank may be empty, and a body may weigh always the same.
#[test]
fn the_least_may_be_nothing_or_all() {
    for least in ["0 kg", "8200 kg"] {
        machine(&[("mass = \"8200 kg\"", &format!("mass = \"8200 kg\"\nleast = \"{least}\""))]);
    }
}

/// Where the axle locks above a boom angle the angle is asked for, and nowhere else.
#[test]
fn the_angle_is_asked_for_where_the_axle_locks_by_itself() {
    let lacks = |lock: &str| {
        let text = changed(&plain(), &[("lock = \"operator\"", lock)]);
        let review = review_machine("m.toml", text.as_bytes());
        assert!(review.machine.is_some(), "{:?}", review.faults);
        let found = review.lacks.iter().find(|l| l.path == "rear_axle.lock_angle").cloned();
        assert!(!review.lacks.iter().any(|l| matches!(l.path.rsplit('.').next(), Some("rim" | "stiffness" | "least"))));
        found
    };
    for lock in ["lock = \"above-boom-angle\"", "lock = \"above-boom-angle\"\nlock_angle = \"unknown\""] {
        let lack = lacks(lock).unwrap();
        assert_eq!((lack.need, lack.checks), (Need::Useful, ["load-factor", "tilt"].as_slice()));
        assert_eq!(lack.without.map(|w| w.id), Some("without-axle"));
    }
    for lock in ["never", "operator", "unknown"] {
        assert!(lacks(&format!("lock = \"{lock}\"")).is_none(), "{lock}");
    }
    assert!(lacks("lock = \"above-boom-angle\"\nlock_angle = \"40°\"").is_none());
    assert!(machine(&[("lock = \"operator\"", "lock = \"above-boom-angle\"")]).rear.lock_angle.is_none());
}
