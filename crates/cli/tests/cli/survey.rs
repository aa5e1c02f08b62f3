//! `counterpoise survey` as a new user meets it.

use crate::support::{Scratch, run};

fn write(scratch: &Scratch, name: &str, text: &str) {
    std::fs::write(scratch.0.join(name), text).unwrap();
}

fn path(scratch: &Scratch, name: &str) -> String {
    scratch.0.join(name).display().to_string()
}

const LEVELS: &str = "point,e [m],n [m],z [m]\n1,0,0,100\n2,20,0,100\n3,20,20,101\n4,0,20,101\n";

#[test]
fn files_become_a_site_that_a_job_can_take() {
    let scratch = Scratch::new("survey");
    write(&scratch, "levels.csv", LEVELS);
    let site = path(&scratch, "plot.site");
    let (levels, picture, export) =
        (path(&scratch, "levels.csv"), path(&scratch, "plan.svg"), path(&scratch, "plot.geojson"));
    let said =
        run(&["survey", &levels, "--accuracy", "3 cm", "--into", &site, "--picture", &picture, "--export", &export]);
    assert_eq!(said.code, 0, "{}", said.err);
    assert!(said.out.contains("site_from") && said.out.contains("walk the ground"), "{}", said.out);
    assert!(said.out.lines().all(|l| l.chars().count() <= 80), "{}", said.out);
    assert!(std::fs::read_to_string(&picture).unwrap().starts_with("<svg"));
    let json: serde_json::Value = serde_json::from_slice(&std::fs::read(&export).unwrap()).unwrap();
    assert_eq!(json["type"], "FeatureCollection");
    let again = run(&["survey", &site]);
    assert!(again.code == 0 && again.out.contains("levels.csv"), "{}{}", again.out, again.err);
}

#[test]
fn what_is_missing_is_asked_for_and_nothing_is_written() {
    let scratch = Scratch::new("survey-missing");
    write(&scratch, "levels.csv", "e,n,z\n1,2,3\n4,5,6\n1,7,8\n");
    let (levels, site) = (path(&scratch, "levels.csv"), path(&scratch, "plot.site"));
    let said = run(&["survey", &levels, "--into", &site]);
    assert_eq!(said.code, 1);
    assert!(said.err.contains("--accuracy") && said.err.contains("--file-units"), "{}", said.err);
    assert!(!std::path::Path::new(&site).exists());
    let wrong = run(&["survey", &levels, "--layer", "A=castle", "--window", "1,2", "--shift", "1"]);
    assert_eq!(wrong.code, 1);
    for argument in ["--layer", "--window", "--shift"] {
        assert!(wrong.err.contains(argument), "{}", wrong.err);
    }
}

#[test]
fn a_plan_opens_in_other_programs() {
    let scratch = Scratch::with_demo("plan-export");
    let (job, out) = (path(&scratch, "job"), path(&scratch, "plan.geojson"));
    let said = run(&["plan", &job, "--export", &out]);
    assert_eq!(said.code, 3, "the demo job is no-go: {}", said.err);
    let json: serde_json::Value = serde_json::from_slice(&std::fs::read(&out).unwrap()).unwrap();
    assert!(json["features"].as_array().unwrap().len() >= 6, "six lifts at least");
    let wrong = run(&["plan", &job, "--export", &path(&scratch, "plan.doc")]);
    assert!(wrong.code == 1 && wrong.err.contains(".geojson"), "{}", wrong.err);
}
