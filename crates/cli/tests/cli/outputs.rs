//! `plan --out`: complete or not at all.

use crate::support::{Scratch, run_in};
use std::fs;

fn names(folder: &std::path::Path) -> Vec<String> {
    let mut out: Vec<_> =
        fs::read_dir(folder).unwrap().map(|e| e.unwrap().file_name().to_string_lossy().into_owned()).collect();
    out.sort();
    out
}

/// The plan in the terminal says that, each in a line of its own, and no line is wider than 80 columns.
fn told(out: &str, sayings: [&str; 4]) {
    for line in out.lines() {
        assert!(line.chars().count() <= 80, "{line}");
    }
    for said in sayings {
        assert!(out.lines().any(|line| line.trim_start().starts_with(said)), "{said} is missing in\n{out}");
    }
}

#[test]
fn plan_sheet_drawings_and_plan_are_written_together() {
    let scratch = Scratch::with_demo("out");
    let said = run_in(&scratch.0, &["plan", "job", "--out", "sheets/today"], None);
    assert_eq!(said.code, 3, "{}", said.err);
    told(&said.out, ["Other stands", "What would make it work", "Off its place: up to", "Off its heading: up to"]);
    let out = scratch.0.join("sheets/today");
    assert_eq!(names(&out), ["drawings", "plan-sheet.pdf", "plan.json"]);
    let drawings = names(&out.join("drawings"));
    for what in ["side-view", "load-chart", "stand-field", "boom-movement"] {
        assert_eq!(drawings.iter().filter(|n| n.ends_with(&format!("-{what}.svg"))).count(), 9, "{what}: {drawings:?}");
    }
    assert!(fs::read(out.join("plan-sheet.pdf")).unwrap().starts_with(b"%PDF"));
    let plan: planning::Plan = serde_json::from_slice(&fs::read(out.join("plan.json")).unwrap()).unwrap();
    assert_eq!(plan.lifts.len(), 9);
    let ways = plan.lifts.iter().filter(|l| l.way.is_some()).count();
    assert!(ways >= 5 && drawings.len() == 4 * 9 + 2 * ways, "{ways} ways: {drawings:?}");
    assert_eq!(names(&scratch.0.join("sheets")), ["today"], "no temporary folder stays");

    // An earlier plan is replaced whole.
    fs::write(out.join("drawings/stale.svg"), "old").unwrap();
    let again =
        run_in(&scratch.0, &["plan", "job", "--lang", "es", "--out", "sheets/today", "--paper", "letter"], None);
    assert_eq!(again.code, 3);
    told(
        &again.out,
        ["Otros emplazamientos", "Qué lo haría posible", "Desvío del lugar: hasta", "Desvío del rumbo: hasta"],
    );
    assert!(!out.join("drawings/stale.svg").exists());
    assert_eq!(names(&scratch.0.join("sheets")), ["today"]);
}

#[test]
fn a_folder_with_other_things_is_left_alone() {
    let scratch = Scratch::with_demo("other");
    fs::create_dir(scratch.0.join("photos")).unwrap();
    fs::write(scratch.0.join("photos/site.txt"), "mine").unwrap();
    let said = run_in(&scratch.0, &["plan", "job", "--out", "photos"], None);
    assert_eq!(said.code, 1);
    assert!(said.err.contains("photos"), "{}", said.err);
    assert_eq!(names(&scratch.0.join("photos")), ["site.txt"]);
}

#[test]
fn a_faulty_job_writes_nothing() {
    let scratch = Scratch::with_demo("faulty");
    scratch.edit("job/job.toml", "mass = \"860 kg\"", "mass = \"860\"");
    let said = run_in(&scratch.0, &["plan", "job", "--out", "sheets"], None);
    assert_eq!(said.code, 1);
    assert_eq!(names(&scratch.0), ["job"]);
}

/// A folder with a plan in it is not ours if anything else is: least of all the job itself.
#[test]
fn the_job_folder_and_strange_plans_are_never_replaced() {
    let scratch = Scratch::with_demo("jobfolder");
    let plan = run_in(&scratch.0, &["plan", "job", "--format", "json"], None);
    fs::write(scratch.0.join("job/plan.json"), &plan.out).unwrap();
    let said = run_in(&scratch.0, &["plan", "job", "--out", "job"], None);
    assert_eq!(said.code, 1, "{}", said.err);
    assert!(scratch.0.join("job/job.toml").is_file() && scratch.0.join("job/survey/levels.csv").is_file());

    fs::create_dir(scratch.0.join("other")).unwrap();
    fs::write(scratch.0.join("other/plan.json"), "{\"schema\": \"another\"}").unwrap();
    assert_eq!(run_in(&scratch.0, &["plan", "job", "--out", "other"], None).code, 1);
    assert_eq!(names(&scratch.0.join("other")), ["plan.json"]);
}
