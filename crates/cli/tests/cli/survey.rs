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

#[test]
fn the_ground_under_a_footprint_is_told_and_so_are_its_holes() {
    let scratch = Scratch::new("survey-under");
    write(&scratch, "levels.csv", LEVELS);
    let levels = path(&scratch, "levels.csv");
    let asked = |at: &str, more: &[&str]| {
        let size = ["--heading", "0°", "--footprint", "4 m x 2 m", "--at", at];
        run(&[&["survey", &levels, "--accuracy", "3 cm"], &size[..], more].concat())
    };
    // 1 m of rise over 20 m to the north.
    let said = asked("10 m, 10 m", &[]);
    assert!(said.code == 0 && said.out.contains("slope along the heading: 5.0"), "{}{}", said.out, said.err);
    assert!(asked("19.5 m, 10 m", &[]).out.contains("no ground known at"));
    assert!(asked("90 m, 10 m", &[]).out.contains("no ground known here"));
    let json: serde_json::Value =
        serde_json::from_str(&asked("10 m, 10 m", &["--at", "90 m, 10 m", "--format", "json"]).out).unwrap();
    let along = &json["under"][0]["plane"]["along"];
    let number = |end: &str| along[end].as_f64().unwrap();
    assert!((number("nominal") - 0.05).abs() < 1e-9 && number("low") < 0.04 && number("high") > 0.06, "{along}");
    assert_eq!(json["under"][1]["plane"], serde_json::Value::Null);
    assert_eq!(json["under"][1]["holes"].as_array().unwrap().len() as u64, json["under"][1]["places"]);
    let wrong = run(&["survey", &levels, "--at", "1, 2", "--heading", "north", "--footprint", "4 m"]);
    for argument in ["--at", "--heading", "--footprint"] {
        assert!(wrong.code == 1 && wrong.err.contains(argument), "{}", wrong.err);
    }
    assert_eq!(run(&["survey", &levels, "--at", "1 m, 2 m"]).code, 2, "without heading and size");
}

#[test]
fn a_plan_before_its_ground_and_a_picture_for_a_phone() {
    let scratch = Scratch::new("survey-order");
    write(&scratch, "levels.csv", LEVELS);
    let square = |kind: &str, w: f64| {
        format!(
            r#"{{"type":"Feature","properties":{{"kind":"{kind}","height":3}},"geometry":{{"type":"Polygon","coordinates":[[[{w},4],[{e},4],[{e},8],[{w},8],[{w},4]]]}}}}"#,
            e = w + 1.5
        )
    };
    let all: Vec<String> =
        (0..8).map(|i| square(if i < 6 { "shed" } else { "hedge" }, 1.0 + 2.0 * f64::from(i))).collect();
    write(&scratch, "plan.geojson", &format!(r#"{{"type":"FeatureCollection","features":[{}]}}"#, all.join(",")));
    let [levels, plan, site, picture] =
        ["levels.csv", "plan.geojson", "plot.site", "plan.svg"].map(|name| path(&scratch, name));
    let rules = ["--layer", "plan=building,where=kind=shed", "--layer", "plan=tree,where=kind=hedge"];
    let first = run(&[&["survey", &plan, "--file-units", "m", "--into", &site], &rules[..]].concat());
    assert!(first.code == 0 && first.out.contains("no known ground at their outline: 8"), "{}{}", first.out, first.err);
    let then = run(&[
        "survey",
        &levels,
        "--accuracy",
        "3 cm",
        "--into",
        &site,
        "--picture",
        &picture,
        "--picture-width",
        "360",
    ]);
    assert!(then.out.contains("reckoned from it now: the tops of 8 things"), "{}{}", then.out, then.err);
    assert!(!then.out.contains("no known ground at their outline"), "{}", then.out);
    let svg = std::fs::read_to_string(&picture).unwrap();
    assert!(svg.contains("viewBox=\"0 0 360 ") && svg.contains("data-part=\"numbers\""), "{svg}");
    assert!((1..=8).all(|i| svg.contains(&format!("plan {i}, top at 10"))), "every name stands below: {svg}");
    assert!(svg.contains("Tree or hedge") && svg.contains("Building"), "{svg}");
}
